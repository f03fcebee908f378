"""What a person does on the page, for the browser tests: typing, choosing, waiting for the sheet."""

from __future__ import annotations

import contextlib
import os
import signal
from pathlib import Path

from playwright.sync_api import Error, Page, expect

from bowstring.demo import DEMO

PATIENCE = 60_000  # milliseconds


def sign(page: Page) -> str | None:
    return page.locator("html").get_attribute("data-sheet")


def wait_for(page: Page, wanted: str) -> None:
    """Wait until the sheet is of that sign and belongs to the fields as they are."""
    page.wait_for_selector(f"html[data-sheet={wanted}]:not([data-stale])", timeout=PATIENCE)


# In which panel a field of the form stands, empty on the face itself, and which panel is open.
PANELS = """(id) => {
  const field = document.getElementById(id) ?? document.querySelector(`#form [name="${id}"]`);
  const name = (panel) => panel?.id.replace("panel-", "") ?? "";
  return [name(field.closest(".panel")), name(document.querySelector(".panel:not([hidden])"))];
}"""
UNFOLD = """(id) => {
  const field = document.getElementById(id) ?? document.querySelector(`#form [name="${id}"]`);
  for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
}"""


def reveal(page: Page, name: str) -> None:
    """Bring a field on the screen, by its id or its name, as somebody does who looks for it: its face, its panel,
    its folds."""
    panel, shown = page.evaluate(PANELS, name)
    if panel != shown:
        close_panel(page)
        if page.locator("#face-numbers").is_hidden():
            look_at(page, "numbers")
        if panel:
            open_panel(page, panel)
    page.evaluate(UNFOLD, name)


def type_in(page: Page, name: str, text: str) -> None:
    reveal(page, name)
    page.locator(f"[id='{name}']").fill(text)


def beside(page: Page, name: str, what: str) -> str:
    return page.locator(f"[id='{name}-{what}']").text_content() or ""


def choose(page: Page, name: str, value: str) -> None:
    """Choose one of several answers."""
    reveal(page, name)
    page.locator(f"input[name='{name}'][value='{value}']").evaluate("choice => choice.click()")


def look_at(page: Page, face: str) -> None:
    """Turn to a face; what it shows is there when ``wait_for`` says so."""
    close_panel(page)
    page.locator(f"[data-tab='{face}']").evaluate("tab => tab.click()")
    page.wait_for_selector(f"#face-{face}:not([hidden])")


def open_panel(page: Page, name: str) -> None:
    """Open a panel of the numbers, or the one of the jobs."""
    page.locator("#menu" if name == "jobs" else f"#ask-{name}").evaluate("button => button.click()")
    page.wait_for_selector(f"#panel-{name}:not([hidden])")


# The panels of the stakes have no button of their own to be left by: there the phone's Back does it.
SHUT = """() => {
  const shut = document.querySelector(".panel:not([hidden]) [data-do=panel-close]");
  if (shut) shut.click();
  else if ("panel" in document.documentElement.dataset) history.back();
}"""


def close_panel(page: Page) -> None:
    page.evaluate(SHUT)
    page.wait_for_selector("html:not([data-panel])")


def rested(page: Page) -> None:
    """Go on as if a while had passed since the card turned: for 0.7 s a second tap is taken for a glove's."""
    page.evaluate("() => { delete document.documentElement.dataset.turned; }")


def reload(page: Page) -> None:
    """Load the page anew at the place that its own script wrote last, which the browser takes up a moment later."""
    expect(page).to_have_url(page.evaluate("location.href"))
    page.reload()


def at_card(page: Page, number: int) -> None:
    """Wait until that card of the stakes is on the screen, and have it rested."""
    page.wait_for_selector(f"#stakes .card[data-card='{number}']", timeout=PATIENCE)
    rested(page)


def show_example(page: Page) -> None:
    """Have the example shown, and wait until Python has worked it out."""
    page.locator("#ask-example").evaluate("button => button.click()")
    expect(page.locator("#title")).to_have_value(str(DEMO["title"]))
    wait_for(page, "computed")


def sheet_of(page: Page) -> str:
    """What the long sheet of the job in the fields says, every part of it."""
    look_at(page, "paper")
    wait_for(page, "computed")
    page.evaluate("document.getElementById('appendix').open = true")
    page.wait_for_selector("#sheet .part", timeout=PATIENCE)
    return page.locator("#sheet").text_content() or ""  # what is off the screen isn't laid out, and told all the same


def open_desk(page: Page) -> None:
    """Open the panel of the kept jobs, links and files, with its folds."""
    if page.locator("#panel-jobs").is_hidden():
        open_panel(page, "jobs")
    page.evaluate("document.querySelectorAll('#panel-jobs details').forEach((fold) => (fold.open = true))")


def kill(page: Page) -> None:
    """Kill the process of a page, as a phone does that runs out of memory."""
    with contextlib.suppress(Error):  # what should answer is gone
        page.goto("chrome://crash", timeout=PATIENCE)


def kill_browser(folder: Path) -> None:
    """Kill the browser that uses a profile's folder, at once with all its processes: as a battery that gives out."""
    for process in Path("/proc").glob("[0-9]*"):
        with contextlib.suppress(OSError):
            command = (process / "cmdline").read_bytes().split(b"\0")
            if f"--user-data-dir={folder}".encode() in command:
                os.kill(int(process.name), signal.SIGKILL)
