"""One page that many tests use in turn: Python starts in it once, and each test finds it as if it had just come up."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import suppress

import pytest
from playwright.sync_api import Browser, BrowserContext, Error, Page

from bowstring.demo import DEMO
from bowstring.page.fields import fields_of_job
from page_acting import PATIENCE, wait_for

EXAMPLE = {"unit": "ft-in", **fields_of_job(dict(DEMO))}
# Nothing is left of what was typed, opened, kept or said: in the fields, on the device, on the screen.
EMPTIED = """async () => {
  const at = (id) => document.getElementById(id);
  if (!at("offer").hidden) at("offer-leave").click();
  if (at("wall")) document.querySelector("[data-tab=why]").click();
  while (at("wall")) await new Promise((resolve) => setTimeout(resolve, 10));
  const shut = document.querySelector(".panel:not([hidden]) [data-do=panel-close]");
  if (shut) shut.click();
  else if ("panel" in document.documentElement.dataset) history.back(); // one of the stakes' own
  while ("panel" in document.documentElement.dataset) await new Promise((resolve) => setTimeout(resolve, 10));
  at("clear").click(); // and back to the numbers
  document.dispatchEvent(new Event("visibilitychange")); // what still waits to be kept is kept before all is removed
  const database = await new Promise((resolve) => {
    const request = indexedDB.open("bowstring.1");
    request.onsuccess = () => resolve(request.result);
  });
  await new Promise((resolve) => {
    const change = database.transaction("kept", "readwrite");
    change.objectStore("kept").clear();
    change.oncomplete = resolve;
  });
  database.close();
  localStorage.clear();
  sessionStorage.clear();
  for (const fold of document.querySelectorAll("#form details, #panel-jobs details")) fold.open = false;
  at("open-wrong").textContent = at("link-in").value = "";
  document.activeElement.blur();
  scrollTo({ top: 0, behavior: "instant" });
}"""
# Row by row: the next one stands there when the one before is used.
FILLED = """(fields) => {
  const form = document.getElementById("form");
  const missing = () => Object.keys(fields).some((name) => !form.elements[name]);
  let passes = Object.keys(fields).length;
  for (let whole = false; !whole && passes; passes -= 1) {
    whole = !missing();
    for (const control of form.elements) {
      if (control.type === "radio") control.checked = control.checked || fields[control.name] === control.value;
      else if (control.name in fields) control.value = fields[control.name];
    }
    form.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }
}"""


class StartedPage:
    """A page in a profile of its own; ``faults`` is the list that what goes wrong unseen is noted in, ``before`` a
    script that runs before the page's own."""

    def __init__(self, browser: Browser, address: str, before: str = "", **options: object) -> None:
        self.browser, self.address, self.before, self.options = browser, address, before, options
        self.size = options["viewport"]
        self.context: BrowserContext | None = None
        self.faults: list[str] = []

    def begin(self) -> Page:
        """Return the page with the example typed into its fields; where it can't be had again, started anew."""
        if self.context is not None:
            with suppress(Error):
                return self._again(self.context)
        self.close()
        context = self.context = self.browser.new_context(service_workers="block", **self.options)  # type: ignore[arg-type]
        context.set_default_timeout(PATIENCE)
        context.on("request", lambda request: self._look(request.url))
        context.on("page", self._listen)
        if self.before:
            context.add_init_script(self.before)
        page = context.new_page()
        page.goto(self.address)
        wait_for(page, "computed")
        page.evaluate(FILLED, EXAMPLE)
        wait_for(page, "computed")
        return page

    def in_turn(self, faults: list[str], request: pytest.FixtureRequest) -> Iterator[Page]:
        """Give the page to one test, as its fixture; nothing may have gone wrong unseen when that ends."""
        self.faults, failed = faults, request.session.testsfailed
        yield self.begin()
        if request.session.testsfailed > failed:
            self.close()  # whatever state it's in: the next one gets a new one
        assert faults == []

    def _again(self, context: BrowserContext) -> Page:
        context.set_offline(False)
        page, *others = context.pages
        for other in others:
            other.close()
        page.set_viewport_size(self.size)  # type: ignore[arg-type]
        page.emulate_media(media="null", color_scheme="null", reduced_motion="null")
        page.wait_for_selector("html[data-sheet=computed], html[data-sheet=refused]")  # Python is up: it may be anew
        page.evaluate(EMPTIED)
        page.evaluate(FILLED, EXAMPLE)
        wait_for(page, "computed")
        return page

    def _look(self, url: str) -> None:
        if not url.startswith((self.address, "data:", "blob:")):
            self.faults.append(f"request: {url}")

    def _listen(self, page: Page) -> None:
        page.on("pageerror", lambda error: self.faults.append(f"exception: {error}"))
        page.on("console", lambda line: line.type == "error" and self.faults.append(f"console: {line.text}"))

    def close(self) -> None:
        if self.context is not None:
            with suppress(Error):
                self.context.close()
            self.context = None
