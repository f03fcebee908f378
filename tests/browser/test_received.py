"""A link from somebody else: it opens as the sender's sheet, and what changes a number of it goes on as a copy."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from bowstring import write_link
from bowstring.words import say
from lined_jobs import FIVE
from page_acting import look_at, open_desk, type_in, wait_for

JOB = {"bowstring": 1, "title": "Lodge drive", "arc": {"chord": "44 ft", "sagitta": "6 ft"}, "side": "left",
       "drawn_to": "face", "method": "halving", "levels": 2}  # fmt: skip
KEPT = """() => Object.keys(localStorage).filter((key) => key.startsWith("bowstring.2.job."))
  .map((key) => JSON.parse(localStorage.getItem(key)).fields)"""
SIGN = "html[data-sheet=computed]:not([data-stale])"


@pytest.fixture
def sent(open_page: Callable[..., Page]) -> Page:
    """The page on a phone, opened by a link."""
    page = open_page(360, 740, f"#{write_link(JOB)}")  # type: ignore[arg-type]
    page.wait_for_selector(f"{SIGN}[data-face=stakes] #card-head")
    return page


def tap_done(page: Page) -> None:
    wait_for(page, "computed")
    expect(page.locator("html[data-turned]")).to_have_count(0)  # so soon after another tap it would be a glove's second
    page.locator("#stakes [data-do=done]").evaluate("button => button.click()")
    wait_for(page, "computed")


def test_a_link_opens_on_the_stakes_and_says_that_it_was_sent(sent: Page) -> None:
    assert sent.url.endswith("#stakes")
    expect(sent.locator("#sent-said")).to_have_text(say("page.sent"))
    expect(sent.locator("#sent")).to_be_in_viewport()
    (kept,) = sent.evaluate(KEPT)
    assert kept["arc-chord"] == "44 ft" and kept["received"].startswith("Lodge drive ")


def test_on_a_desk_what_was_sent_stands_above_the_numbers_and_hides_none_of_them(
    open_page: Callable[..., Page],
) -> None:
    page = open_page(1280, 720, f"#{write_link(JOB)}")  # type: ignore[arg-type]
    page.wait_for_selector(f"{SIGN}[data-face=stakes] #card-head")
    said, drawing = (page.locator(place).bounding_box() for place in ("#sent", "#live-drawing svg"))
    assert said and drawing and said["y"] + said["height"] <= drawing["y"]
    tabs, face = (page.locator(place).bounding_box() for place in (".tabs", "#face-stakes"))
    assert tabs and face and tabs["y"] + tabs["height"] == face["y"] and tabs["height"] < 60


def test_a_job_without_a_title_is_called_by_its_numbers_and_leads_to_them(open_page: Callable[..., Page]) -> None:
    untitled = {key: value for key, value in JOB.items() if key != "title"}
    page = open_page(360, 740, f"#{write_link(untitled)}")  # type: ignore[arg-type]
    page.wait_for_selector(f"{SIGN}[data-face=stakes] #card-head")
    named = "Chord 44' 0\", mid-ordinate 6' 0\""
    expect(page.locator("#job-name")).to_have_text(named)
    page.locator("#sent button").click()
    wait_for(page, "computed")
    expect(page.locator("#arc-chord")).to_be_in_viewport()
    expect(page.locator("#sent button")).to_be_hidden()
    page.locator("[data-tab=checks] .badge").evaluate("badge => { badge.textContent = '2'; badge.hidden = false }")
    open_desk(page)
    expect(page.locator("#job-list li").first).to_contain_text(named)
    page.locator("#clear").click()  # what the badge told was of the job before
    expect(page.locator("#job-name")).to_have_text(say("page.new_job"))
    expect(page.locator("[data-tab] .badge:visible")).to_have_count(0)


def test_done_and_readings_are_no_change(sent: Page) -> None:
    tap_done(sent)
    tap_done(sent)
    expect(sent.locator("#sent")).to_be_hidden()  # it was read
    look_at(sent, "checks")
    wait_for(sent, "computed")
    first = sent.locator("#checks input[data-check]").first
    first.fill("12 ft")
    first.dispatch_event("change")
    (kept,) = sent.evaluate(KEPT)
    assert kept["done"] == "1 2" and kept["read-0-value"] == "12 ft"
    assert kept["received"].startswith("Lodge drive ") and "parent" not in kept


def test_a_number_typed_makes_a_copy_that_names_what_it_came_from(sent: Page) -> None:
    tap_done(sent)
    (before,) = sent.evaluate(KEPT)
    look_at(sent, "numbers")
    type_in(sent, "arc-chord", "45 ft")
    type_in(sent, "arc-sagitta", "7 ft")  # the copy itself is changed: no third one
    wait_for(sent, "computed")
    copy, first = sorted(sent.evaluate(KEPT), key=lambda fields: "received" in fields)
    assert first == before
    assert copy["parent"] == first["received"] and "received" not in copy
    assert (copy["arc-chord"], copy["arc-sagitta"], first["arc-chord"]) == ("45 ft", "7 ft", "44 ft")
    open_desk(sent)
    rows = sent.locator("#job-list li")
    expect(rows).to_have_count(2)
    expect(rows.filter(has=sent.locator("[aria-current]"))).to_contain_text(say("page.desk_copy"))
    rows.filter(has_text=say("page.desk_received")).locator("button").first.click()
    wait_for(sent, "computed")
    assert sent.locator("#arc-chord").input_value() == "44 ft"


def test_a_copy_says_so_until_work_begins(sent: Page) -> None:
    look_at(sent, "numbers")
    type_in(sent, "arc-chord", "45 ft")
    expect(sent.locator("#sent-said")).to_have_text(say("page.copied"))
    look_at(sent, "stakes")
    tap_done(sent)
    expect(sent.locator("#sent")).to_be_hidden()


def test_the_link_opened_again_has_what_was_done_since(sent: Page) -> None:
    tap_done(sent)
    other = write_link({**JOB, "title": "Elsewhere"})  # type: ignore[arg-type]
    for link, title in ((other, "Elsewhere"), (write_link(JOB), "Lodge drive")):  # type: ignore[arg-type]
        sent.evaluate("link => (location.hash = link)", link)
        sent.click("#offer-open")
        expect(sent.locator("#title")).to_have_value(title)
        wait_for(sent, "computed")
    assert sorted(kept.get("done", "") for kept in sent.evaluate(KEPT)) == ["", "1"]
    assert len(sent.evaluate(KEPT)) == 2


def test_another_arc_of_a_sent_line_is_staked_without_a_copy(open_page: Callable[..., Page], site_url: str) -> None:
    """No number changed: what came by the link is what is staked, and opened once more it goes on there."""
    link = write_link({**FIVE, "title": "Creek", "at": 2})  # type: ignore[typeddict-item]
    page = open_page(360, 740, f"#{link}")
    page.wait_for_selector(f"{SIGN}[data-face=stakes] #card-head")
    for at in (4, 2, 4):
        page.locator(f"#stakes [data-do=line-at][data-at='{at}']").first.click()
        expect(page.locator("#stakes .of-line").first).to_contain_text(f"Piece {at} of 5")
        wait_for(page, "computed")
        expect(page.locator("#sent-said")).to_have_text(say("page.sent"))
        (kept,) = page.evaluate(KEPT)
        assert kept["received"].startswith("Creek ") and "parent" not in kept
    tap_done(page)
    page.goto("about:blank")
    page.goto(f"{site_url}#{link}")
    page.wait_for_selector(f"{SIGN}[data-face=stakes] #card-head")
    (kept,) = page.evaluate(KEPT)
    assert kept["received"].startswith("Creek ") and kept["done"] == "1"
    page.locator("[data-tab=stakes]").click()
    page.locator("[data-tab=numbers]").click()
    type_in(page, "arc-radius", "53 ft")
    wait_for(page, "computed")
    assert len(page.evaluate(KEPT)) == 2  # a number that changes goes on as a copy, as ever
