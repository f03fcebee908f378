"""A browser that is killed outright: what was typed a moment before is there again."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, expect

from bowstring.words import say
from page_acting import kill_browser, open_desk, type_in, wait_for

MOMENT = 1.0  # seconds between the last key and the end: less than a browser holds a write to its simple storage back
SETTLED = 7.0  # seconds after which it has written all: what is typed then is a new write


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="finds the browser's processes in /proc")
def test_a_killed_browser_loses_nothing_that_stood_for_a_moment(
    profile: Callable[..., BrowserContext], site_url: str, tmp_path: Path
) -> None:
    page = profile("phone", site_url).new_page()
    page.goto(site_url)
    wait_for(page, "computed")
    page.click("#clear")
    page.locator("#form-job").evaluate("fold => fold.open = true")
    for name, text in (("title", "First"), ("arc-chord", "44 ft"), ("arc-sagitta", "6 ft")):
        type_in(page, name, text)
    time.sleep(SETTLED)
    page.click("#clear")
    for name, text in (("title", "Second"), ("arc-chord", "45 ft"), ("arc-sagitta", "6.5 ft")):
        type_in(page, name, text)
    expect(page.locator("#kept")).to_have_text(f"{say('page.kept_kept')} Second")
    time.sleep(MOMENT)
    kill_browser(tmp_path / "phone")

    page = profile("phone", site_url).new_page()
    page.goto(site_url)
    expect(page.locator("#title")).to_have_value("Second")
    assert page.locator("#arc-sagitta").input_value() == "6.5 ft"
    open_desk(page)
    rows = page.locator("#job-list li")
    expect(rows).to_have_count(2)
    rows.filter(has_text="First").locator("button").first.click()
    assert page.locator("#arc-chord").input_value() == "44 ft"
    rows.filter(has_text="Second").get_by_text(say("page.desk_remove")).click()
    rows.filter(has_text="Second").get_by_text(say("page.desk_remove_surely")).click()
    expect(rows).to_have_count(1)
    time.sleep(MOMENT)
    page.reload()
    wait_for(page, "computed")
    open_desk(page)
    expect(rows).to_have_count(1)
    assert page.locator("#title").input_value() == "First"
