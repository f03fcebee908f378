"""A browser that is killed outright: what was typed a moment before is there again."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from bowstring.words import say
from page_acting import PATIENCE, kill_browser, open_desk, type_in, wait_for

# How often a text stands in the second copy, the browser's database: what is there is soon on the disk.
COPIES = """async (text) => {
  const done = (request) => new Promise((resolve) => (request.onsuccess = () => resolve(request.result)));
  const database = await done(indexedDB.open("bowstring.1"));
  const texts = await done(database.transaction("kept").objectStore("kept").getAll());
  database.close();
  return texts.filter((one) => one.includes(text)).length;
}"""


def until(told: Callable[[], bool]) -> None:
    end = time.monotonic() + PATIENCE / 1000
    while not told():
        assert time.monotonic() < end
        time.sleep(0.05)


def in_simple_storage(profile: Path, text: str) -> bool:
    """Whether the browser has written a text of its simple storage to the disk: it holds it back for some seconds."""
    files = (profile / "Default" / "Local Storage" / "leveldb").glob("*.log")
    return any(text.encode() in file.read_bytes() for file in files)


def new_job(page: Page) -> None:
    open_desk(page)
    page.click("#clear")


def typed_and_only_in_the_second_copy(page: Page, profile: Path) -> str:
    """Type a text that the second copy has and the disk has of the first one not; return it.

    On a busy machine the browser may have written both by the time anybody looks: then it proves nothing, and another
    is typed.
    """
    for inches in range(1, 40):
        text = f"6 ft {inches / 4:g} in"
        type_in(page, "arc-sagitta", text)
        until(lambda text=text: page.evaluate(COPIES, text) == 1)  # type: ignore[misc]
        if not in_simple_storage(profile, text):
            return text
    raise AssertionError("the browser wrote every text at once")


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="finds the browser's processes in /proc")
def test_a_killed_browser_loses_nothing_that_stood_for_a_moment(
    profile: Callable[..., BrowserContext], site_url: str, tmp_path: Path
) -> None:
    page = profile("phone", site_url).new_page()
    page.goto(site_url)
    wait_for(page, "computed")
    new_job(page)
    for name, text in (("title", "First"), ("arc-chord", "44 ft"), ("arc-sagitta", "6 ft")):
        type_in(page, name, text)
    until(lambda: in_simple_storage(tmp_path / "phone", '"arc-sagitta":"6 ft"'))  # what is typed now is a new write
    new_job(page)
    for name, text in (("title", "Second"), ("arc-chord", "45 ft")):
        type_in(page, name, text)
    expect(page.locator("#kept")).to_have_text(f"{say('page.kept_kept')} Second")
    last = typed_and_only_in_the_second_copy(page, tmp_path / "phone")
    kill_browser(tmp_path / "phone")

    page = profile("phone", site_url).new_page()
    page.goto(site_url)
    expect(page.locator("#title")).to_have_value("Second")
    assert page.locator("#arc-sagitta").input_value() == last
    open_desk(page)
    rows = page.locator("#job-list li")
    expect(rows).to_have_count(2)
    rows.filter(has_text="First").locator("button").first.click()
    expect(page.locator("#arc-chord")).to_have_value("44 ft")
    open_desk(page)
    rows.filter(has_text="Second").get_by_text(say("page.desk_remove")).click()
    expect(rows).to_have_count(1)
    until(lambda: page.evaluate(COPIES, last) == 0)
    page.reload()
    wait_for(page, "computed")
    open_desk(page)
    expect(rows).to_have_count(1)
    assert page.locator("#title").input_value() == "First"
