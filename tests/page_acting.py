"""What a person does on the page, for the browser tests: typing, choosing, waiting for the sheet."""

from __future__ import annotations

import contextlib
import os
import signal
from pathlib import Path

from playwright.sync_api import Error, Page

PATIENCE = 60_000  # milliseconds


def sign(page: Page) -> str | None:
    return page.locator("html").get_attribute("data-sheet")


def wait_for(page: Page, wanted: str) -> None:
    """Wait until the sheet is of that sign and belongs to the fields as they are."""
    page.wait_for_selector(f"html[data-sheet={wanted}]:not([data-stale])", timeout=PATIENCE)


# Bring a field on the screen, as somebody does who looks for it: its face, its panel, its folds.
REVEAL = """(id) => {
  const field = document.getElementById(id) ?? document.querySelector(`#form [name="${id}"]`);
  const panel = field.closest(".panel")?.id.replace("panel-", "") ?? "";
  const shut = document.querySelector(".panel:not([hidden]) [data-do=panel-close]");
  const open = document.querySelector(".panel:not([hidden])")?.id.replace("panel-", "") ?? "";
  if (panel !== open) {
    if (shut) shut.click();
    const face = document.querySelector("[data-tab=numbers]");
    if (document.getElementById("face-numbers").hidden) face.click();
  }
  if (panel && panel !== open) document.querySelector(`#ask-${panel}`).click();
  for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
}"""


def reveal(page: Page, name: str) -> None:
    """Bring a field of the form on the screen, by its id or its name."""
    page.evaluate(REVEAL, name)


def type_in(page: Page, name: str, text: str) -> None:
    reveal(page, name)
    page.locator(f"[id='{name}']").fill(text)


def beside(page: Page, name: str, what: str) -> str:
    return page.locator(f"[id='{name}-{what}']").text_content() or ""


def choose(page: Page, name: str, value: str) -> None:
    """Choose one of several answers."""
    reveal(page, name)
    page.locator(f"input[name='{name}'][value='{value}']").check(force=True)


def look_at(page: Page, face: str) -> None:
    """Turn to a face and wait until it's there."""
    close_panel(page)
    page.locator(f"[data-tab='{face}']").evaluate("tab => tab.click()")
    page.wait_for_selector(f"html[data-face={face}]")


def close_panel(page: Page) -> None:
    page.evaluate("document.querySelector('.panel:not([hidden]) [data-do=panel-close]')?.click()")
    page.wait_for_selector("html:not([data-panel])")


def show_example(page: Page) -> None:
    """Have the example shown, and wait until Python has worked it out."""
    page.locator("#ask-example").evaluate("button => button.click()")
    page.wait_for_selector("html[data-sheet=computed]:not([data-stale])", timeout=PATIENCE)


def sheet_of(page: Page) -> str:
    """What the long sheet of the job in the fields says, every part of it."""
    look_at(page, "paper")
    wait_for(page, "computed")
    page.evaluate("document.getElementById('appendix').open = true")
    page.wait_for_selector("#sheet .part", timeout=PATIENCE)
    return page.locator("#sheet").inner_text()


def open_desk(page: Page) -> None:
    """Open the panel of the kept jobs, links and files, with its folds."""
    if page.locator("#panel-jobs").is_hidden():
        page.locator("#menu").click()
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
