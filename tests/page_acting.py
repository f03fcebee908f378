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


def type_in(page: Page, name: str, text: str) -> None:
    page.locator(f"[id='{name}']").fill(text)


def beside(page: Page, name: str, what: str) -> str:
    return page.locator(f"[id='{name}-{what}']").inner_text()


def unfold(page: Page) -> None:
    """Open every part of the form that is folded away."""
    folds = page.locator("#form details:not([open]) > summary")
    while folds.count():
        folds.first.click()


def choose(page: Page, name: str, value: str) -> None:
    """Choose one of several answers."""
    page.locator(f"input[name='{name}'][value='{value}']").check()


def open_desk(page: Page) -> None:
    """Unfold the kept jobs, links and files."""
    page.locator("#desk").evaluate("fold => fold.open = true")


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
