"""Work is kept: over a reload and a killed tab; and where nothing can be kept the page says so."""

from __future__ import annotations

import json
import math
import time
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import Page, expect

from bowstring import answer, write_link
from bowstring.job.jobfile import TEXT_LIMIT
from bowstring.page.fields import MOST_FIELDS
from bowstring.words import say
from page_acting import (
    PATIENCE,
    choose,
    kill,
    open_desk,
    open_panel,
    sheet_of,
    show_example,
    type_in,
    wait_for,
)

JOB = {"bowstring": 1, "title": "Lodge drive", "arc": {"chord": "44 ft", "sagitta": "6 ft"}, "side": "left"}
KEY = "bowstring.2.job."
NO_STORAGE = "Object.defineProperty(window, 'localStorage', { get() { throw new Error('none') } });"
FULL_STORAGE = """window.withRoom = Storage.prototype.setItem;
Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
0"""


def new_job(page: Page) -> None:
    """Begin a new job, from the panel of the jobs."""
    open_panel(page, "jobs")
    page.click("#clear")
    page.wait_for_selector("html:not([data-panel])")


def test_every_edit_survives_a_reload_a_sentence_half_typed_too(page: Page) -> None:
    type_in(page, "arc-chord", "44 ft")
    type_in(page, "arc-sagitta", "6 fee")  # no length yet
    choose(page, "drawn_to", "unsure")
    page.reload()
    assert page.locator("#arc-chord").input_value() == "44 ft", "there before Python is"
    assert page.locator("#arc-sagitta").input_value() == "6 fee"
    expect(page.locator("input[name=drawn_to][value=unsure]")).to_be_checked()
    wait_for(page, "refused")


def test_a_killed_tab_loses_nothing(own_page: Page, site_url: str) -> None:
    page = own_page
    wait_for(page, "computed")
    type_in(page, "arc-chord", "47 ft")
    context = page.context
    with page.expect_event("crash"):
        kill(page)
    other = context.new_page()
    other.goto(site_url)
    assert other.locator("#arc-chord").input_value() == "47 ft"


def test_several_jobs_are_kept_by_name_and_opened_again(page: Page) -> None:
    page.evaluate("localStorage.clear()")
    for title, chord in (("First", "41 ft"), ("Second", "42 ft")):
        new_job(page)
        type_in(page, "title", title)
        type_in(page, "arc-chord", chord)
        type_in(page, "arc-sagitta", "5 ft")
        wait_for(page, "computed")
    open_desk(page)
    rows = page.locator("#job-list li")
    expect(rows).to_have_count(2)
    rows.filter(has_text="First").locator("button").first.click()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "41 ft"
    assert "First" in sheet_of(page)
    open_desk(page)
    second = rows.filter(has_text="Second").locator("button")
    second.nth(1).click()
    expect(rows).to_have_count(1)
    expect(page.locator("#undo-said")).to_have_text(say("page.undo_remove"))
    page.click("#undo-take")
    expect(rows).to_have_count(2)
    second.nth(1).click()
    expect(rows).to_have_count(1)
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#title").input_value() == "First"


def test_an_emptied_form_is_brought_back(page: Page) -> None:
    type_in(page, "arc-chord", "44 ft")
    new_job(page)
    assert page.locator("#arc-chord").input_value() == ""
    page.click("#undo-take")
    assert page.locator("#arc-chord").input_value() == "44 ft"
    open_desk(page)
    expect(page.locator("#job-list li")).to_have_count(1)


def test_without_a_storage_the_page_works_and_says_that_nothing_is_kept(open_page: Callable[..., Page]) -> None:
    page = open_page(before=NO_STORAGE)
    wait_for(page, "computed")
    show_example(page)
    type_in(page, "arc-chord", "44 ft")
    wait_for(page, "computed")
    open_panel(page, "jobs")
    expect(page.locator("#kept")).to_have_text(say("page.kept_none"))


def test_with_a_full_storage_the_page_works_and_says_that_nothing_is_kept(page: Page) -> None:
    page.evaluate(FULL_STORAGE)
    type_in(page, "arc-chord", "44 ft")
    wait_for(page, "computed")
    expect(page.locator("#kept")).to_have_text(say("page.kept_full"))
    open_desk(page)
    expect(page.locator("#full")).to_contain_text(say("page.full"))
    page.evaluate("Storage.prototype.setItem = window.withRoom; 0")
    type_in(page, "arc-chord", "45 ft")
    expect(page.locator("#kept")).to_contain_text(say("page.kept_kept"))
    expect(page.locator("#full")).to_be_hidden()


def test_with_a_full_storage_the_oldest_jobs_are_offered_as_files(page: Page) -> None:
    jobs = {f"old{number}jobjob": f"Walk {number}" for number in range(3)}
    for number, (name, title) in enumerate(jobs.items()):
        text = json.dumps(
            {"fields": {"title": title, "arc-chord": "44 ft", "arc-sagitta": "6 ft"}, "edited": number + 1}
        )
        page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY + name, text])
    page.evaluate(FULL_STORAGE)
    type_in(page, "arc-chord", "44 ft")
    open_desk(page)
    given: list[str] = []
    page.on("download", lambda download: given.append(download.suggested_filename))
    page.click("#full-out")
    until = time.monotonic() + PATIENCE / 1000
    while len(given) < len(jobs) and time.monotonic() < until:
        page.wait_for_timeout(50)
    assert sorted(given) == [f"bowstring-walk-{number}.json" for number in range(3)]
    page.evaluate("Storage.prototype.setItem = window.withRoom; 0")
    type_in(page, "arc-chord", "45 ft")
    expect(page.locator("#kept")).to_contain_text(say("page.kept_kept"))


DAMAGED = (
    "no json",
    "[]",
    "null",
    '{"fields": []}',
    '{"fields": {"arc-chord": 38}}',
    '{"fields": {"arc chord": "38"}}',
    json.dumps({"fields": {f"got-{row}-stake": "M" for row in range(MOST_FIELDS + 1)}}),
    json.dumps({"fields": {"arc-chord": "9" * TEXT_LIMIT}}),
)


def stored(jobs: dict[str, str]) -> str:
    """A script that puts jobs into the storage, the first one as the one that was open, before the page's own runs."""
    lines = [f"localStorage.setItem({json.dumps(KEY + name)}, {json.dumps(text)});" for name, text in jobs.items()]
    lines.append(f"localStorage.setItem('bowstring.2.open', '{next(iter(jobs))}');")
    return f"if (location.protocol === 'http:') {{ {' '.join(lines)} }}"


def test_what_is_read_back_is_checked_and_a_damaged_job_stays_away_from_the_form(
    open_page: Callable[..., Page],
) -> None:
    """What is damaged can't be opened; of what is sound a field that the form hasn't is left out."""
    sound = json.dumps({"fields": {"title": "Sound", "arc-chord": "44 ft", "arc-sagitta": "6 ft", "strange": "1"}})
    jobs = {f"abcdefgh1{number}": text for number, text in enumerate(DAMAGED)}
    page = open_page(before=stored({**jobs, "abcdefgh2": sound}))
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("numbers.state_missing_2"))
    open_desk(page)
    rows = page.locator("#job-list li")
    expect(rows).to_have_count(len(DAMAGED) + 1)
    bad = rows.filter(has_not_text="Sound")
    for place in range(len(DAMAGED)):
        expect(bad.nth(place)).to_contain_text(say("page.desk_unreadable"))
        expect(bad.nth(place).locator("button").first).to_be_disabled()
    rows.filter(has_text="Sound").locator("button").first.click()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "44 ft"


def test_a_job_goes_into_a_file_and_comes_back(page: Page, tmp_path: Path) -> None:
    new_job(page)
    for name, text in (("arc-chord", "44 ft"), ("arc-sagitta", "6 ft")):
        type_in(page, name, text)
    type_in(page, "title", "Lodge drive")
    choose(page, "side", "left")
    wait_for(page, "computed")
    open_desk(page)
    with page.expect_download() as download:
        page.click("#file-out")
    assert download.value.suggested_filename == "bowstring-lodge-drive.json"
    file = tmp_path / "job.json"
    download.value.save_as(file)
    assert answer(json.loads(file.read_text("utf-8")))["arc"] == answer(dict(JOB))["arc"]
    new_job(page)
    page.set_input_files("#file-in", file)
    expect(page.locator("#title")).to_have_value("Lodge drive")
    wait_for(page, "computed")
    assert page.locator("#arc-sagitta").input_value() == "6 ft"


def test_a_job_full_of_obstacles_is_opened_and_kept(page: Page, tmp_path: Path) -> None:
    """40 obstacles of 60 corners: its file and its fields are over 100,000 characters."""
    turns = [2 * math.pi * corner / 60 for corner in range(60)]
    ground = [
        {
            "name": f"bed {number}",
            "stops": "feet",
            "outline": [
                [f"{9 * number + 3 * math.cos(turn):.12f}", f"{3 * math.sin(turn) - 99:.12f}"] for turn in turns
            ],
        }
        for number in range(40)
    ]
    file = tmp_path / "job.json"
    job = {"unit": "m", "title": "Beds", "arc": {"chord": "44", "sagitta": "6"}, "ground": ground}
    file.write_text(json.dumps(job, indent=1))
    assert file.stat().st_size > 106_300
    new_job(page)
    page.set_input_files("#file-in", file)
    expect(page.locator("#title")).to_have_value("Beds", timeout=PATIENCE)
    last = page.locator("#ground-39-outline").input_value()
    assert last.count(";") == 59
    page.reload()
    assert page.locator("#title").input_value() == "Beds"
    assert page.locator("#ground-39-outline").input_value() == last


def test_a_link_opens_at_once_over_the_example_and_asks_over_work(open_page: Callable[..., Page]) -> None:
    link = write_link(JOB)
    page = open_page(path=f"#{link}")
    wait_for(page, "computed")
    assert page.locator("#title").input_value() == "Lodge drive"
    assert page.url.endswith("#stakes"), "a reload finds the kept job, not the link again"
    type_in(page, "arc-chord", "45 ft")
    other = write_link({**JOB, "title": "Elsewhere"})
    page.evaluate(f"location.hash = '{other}'")
    expect(page.locator("#offer")).to_contain_text("Elsewhere")
    assert page.locator("#title").input_value() == "Lodge drive"
    page.click("#offer-leave")
    expect(page.locator("#offer")).to_be_hidden()
    assert page.locator("#arc-chord").input_value() == "45 ft"
    open_desk(page)
    type_in(page, "link-in", f"https://example.org/#{other}")
    page.click("#link-open")
    page.click("#offer-open")
    wait_for(page, "computed")
    assert page.locator("#title").input_value() == "Elsewhere"
    expect(page.locator("#job-list li")).to_have_count(3)  # as it was sent, the copy with another chord, and this one


def test_a_link_opens_from_the_address_as_a_messenger_left_it(open_page: Callable[..., Page]) -> None:
    link = write_link(JOB)
    coded = "".join(f"%{ord(sign):02X}" for sign in link)
    for left in (
        f"{link}.",
        coded,
        coded.replace("%", "%25"),
        f"utm_source=mail&{link}",
        f"{link}&ref=b1",
        f"%E2%80%8B{link}%29",
    ):
        page = open_page(path=f"#{left}")
        wait_for(page, "computed")
        expect(page.locator("#title")).to_have_value("Lodge drive")


def open_over_nothing(page: Page, link: str) -> None:
    """Open a link where nothing stands that would be asked about."""
    new_job(page)
    page.evaluate("localStorage.clear()")
    page.evaluate(f"location.hash = '{link}'")
    expect(page.locator("#title")).to_have_value("Lodge drive")
    wait_for(page, "computed")


def test_the_link_opened_twice_doesn_t_overwrite_what_was_changed_since(page: Page) -> None:
    link = write_link(JOB)
    open_over_nothing(page, link)
    type_in(page, "arc-chord", "45 ft")
    open_desk(page)
    type_in(page, "link-in", link)
    page.click("#link-open")
    page.click("#offer-open")
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "44 ft"
    open_desk(page)
    rows = page.locator("#job-list li")
    expect(rows).to_have_count(2)
    rows.filter(has_not=page.locator("[aria-current]")).locator("button").first.click()
    assert page.locator("#arc-chord").input_value() == "45 ft"


def test_the_job_that_stands_in_the_fields_is_not_offered_as_another(page: Page) -> None:
    link = write_link(JOB)
    open_over_nothing(page, link)
    open_desk(page)
    type_in(page, "link-in", f"The drive: https://example.org/#{link} - see you")
    page.click("#link-open")
    expect(page.locator("#open-wrong")).to_have_text(say("page.desk_open_already"))
    expect(page.locator("#open-wrong")).to_be_in_viewport()
    expect(page.locator("#offer")).to_be_hidden()
