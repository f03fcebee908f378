"""Jobs that version 0.1 kept: taken over once, with what they meant, and left where they were."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping

from playwright.sync_api import Page, expect

from bowstring.job.link import read_link
from page_acting import open_desk, type_in, wait_for

BEFORE, NOW = "bowstring.1.", "bowstring.2."
WALK = {"title": "Old walk", "unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5 ft", "side": "left"}
PIT = {"title": "Old pit", "unit": "ft-in", "arc-radius": "12 ft", "arc-central_angle": "90", "method": "centre"}


def kept_before(jobs: Mapping[str, tuple[Mapping[str, str] | None, int]], opened: str) -> str:
    """A script that keeps jobs as version 0.1 did, once: those without fields can't be read."""
    lines = [
        f"localStorage.setItem({json.dumps(BEFORE + 'job.' + name)}, "
        f"{json.dumps('no job' if fields is None else json.dumps({'fields': fields, 'edited': edited}))});"
        for name, (fields, edited) in jobs.items()
    ]
    lines.append(f"localStorage.setItem('{BEFORE}open', '{opened}');")
    return f"if (location.protocol === 'http:' && !localStorage['{BEFORE}open']) {{ {' '.join(lines)} }}"


def kept_now(page: Page) -> dict[str, dict[str, str]]:
    """Every job under the new prefix that can be read, by its title."""
    texts = page.evaluate(f"Object.entries(localStorage).filter(([key]) => key.startsWith('{NOW}job.'))")
    jobs = [json.loads(text)["fields"] for _key, text in texts if text.startswith("{")]
    return {job["title"]: job for job in jobs}


def test_they_are_taken_over_with_their_meaning(open_page: Callable[..., Page]) -> None:
    jobs = {"walkwalk1": (WALK, 2000), "pitpitpit": (PIT, 1000), "brokenone": (None, 0)}
    page = open_page(before=kept_before(jobs, "walkwalk1"))
    wait_for(page, "computed")
    assert page.locator("#title").input_value() == "Old walk", "the job that was open comes up"
    assert kept_now(page) == {
        "Old walk": {**WALK, "method": "halving"},
        "Old pit": {**PIT, "method": "centre", "centre": "reachable"},
    }
    open_desk(page)
    expect(page.locator("#link-text")).not_to_have_value("")  # made while nobody waits
    said = read_link(page.locator("#link-text").input_value())
    assert said["method"] == "halving"
    expect(page.locator("#job-list li")).to_have_count(3)
    for name, (fields, edited) in jobs.items():
        text = page.evaluate(f"localStorage['{BEFORE}job.{name}']")
        assert text == ("no job" if fields is None else json.dumps({"fields": fields, "edited": edited})), (
            "left as it was"
        )


def test_they_are_taken_over_once(open_page: Callable[..., Page]) -> None:
    page = open_page(before=kept_before({"walkwalk1": (WALK, 2000), "pitpitpit": (PIT, 1000)}, "walkwalk1"))
    wait_for(page, "computed")
    type_in(page, "arc-chord", "39 ft")
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "39 ft"
    assert len(kept_now(page)) == 2
    open_desk(page)
    remover = page.locator("#job-list li").filter(has_text="Old pit").locator("button").nth(1)
    remover.click()
    expect(page.locator("#job-list li")).to_have_count(1)
    page.reload()
    wait_for(page, "computed")
    assert set(kept_now(page)) == {"Old walk"}, "a job that was deleted stays away"


def test_what_an_older_page_writes_on_is_a_job_of_its_own(open_page: Callable[..., Page]) -> None:
    page = open_page(before=kept_before({"walkwalk1": (WALK, 2000)}, "walkwalk1"))
    wait_for(page, "computed")
    type_in(page, "arc-chord", "39 ft")
    older = json.dumps({"fields": {**WALK, "title": "Written on", "arc-chord": "41 ft"}, "edited": 5000})
    page.evaluate(f"text => localStorage.setItem('{BEFORE}job.walkwalk1', text)", older)
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "39 ft", "nothing that was typed here is overwritten"
    assert {title: job["arc-chord"] for title, job in kept_now(page).items()} == {
        "Old walk": "39 ft",
        "Written on": "41 ft",
    }


def test_a_full_storage_moves_them(open_page: Callable[..., Page]) -> None:
    full = """const room = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, text) {
      const both = Object.keys(this).some((name) => name.startsWith('bowstring.1.job.')) && key.includes('2.job');
      if (both) throw new Error('full');
      return room.call(this, key, text);
    };"""
    page = open_page(before=kept_before({"walkwalk1": (WALK, 2000)}, "walkwalk1") + full)
    wait_for(page, "computed")
    assert set(kept_now(page)) == {"Old walk"}
    assert page.evaluate(f"localStorage['{BEFORE}job.walkwalk1'] ?? null") is None
