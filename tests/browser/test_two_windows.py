"""Two windows on one job: what each changes is held together field by field; where both changed one, it's asked."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Page, expect

from bowstring.words import say
from page_acting import open_desk, type_in, wait_for


# The second window of a context hears of nothing that is kept by another.
DEAF = """if (location.protocol === "http:" && localStorage.getItem("bowstring.2.open")) {
  addEventListener("storage", (event) => event.stopImmediatePropagation(), true);
}"""


def two(open_page: Callable[..., Page], before: str = "") -> tuple[Page, Page]:
    """Two windows of one device with one job open in both."""
    one = open_page(before=before)
    wait_for(one, "computed")
    type_in(one, "arc-chord", "41 ft")
    type_in(one, "arc-sagitta", "5 ft")
    one.wait_for_selector("html:not([data-stale])")
    other = one.context.new_page()
    other.goto(one.url)
    wait_for(other, "computed")
    expect(other.locator("#arc-chord")).to_have_value("41 ft")
    return one, other


def test_changes_of_different_fields_come_together(open_page: Callable[..., Page]) -> None:
    one, other = two(open_page)
    type_in(one, "title", "Boathouse curb")
    expect(other.locator("#title")).to_have_value("Boathouse curb")
    type_in(other, "tolerance", "1/4 in")
    expect(one.locator("#tolerance")).to_have_value("1/4 in")
    expect(one.locator("#title")).to_have_value("Boathouse curb")
    expect(one.locator("#elsewhere")).to_be_hidden()
    one.reload()
    expect(one.locator("#title")).to_have_value("Boathouse curb")
    expect(one.locator("#tolerance")).to_have_value("1/4 in")


def test_where_both_changed_one_field_both_values_are_there_to_choose_from(open_page: Callable[..., Page]) -> None:
    one, other = two(open_page, DEAF)
    # A window that slept has heard of nothing: what it hears is kept from it.
    type_in(one, "title", "North walk")
    type_in(other, "title", "South walk")
    notice = other.locator("#elsewhere")
    expect(notice).to_contain_text(say("page.elsewhere_both"))
    expect(notice.locator("button")).to_have_text(["South walk", "North walk"])
    expect(one.locator("#title")).to_have_value("North walk")
    notice.get_by_role("button", name="South walk").click()
    expect(notice).to_be_hidden()
    expect(other.locator("#title")).to_have_value("South walk")
    expect(one.locator("#title")).to_have_value("South walk")
    expect(one.locator("#arc-chord")).to_have_value("41 ft")


def test_a_job_that_was_deleted_elsewhere_is_said_to_be_and_may_be_kept(open_page: Callable[..., Page]) -> None:
    one, other = two(open_page)
    open_desk(other)
    other.locator("#job-list li button").nth(1).click()
    notice = one.locator("#elsewhere")
    expect(notice).to_contain_text(say("page.elsewhere_gone"))
    notice.get_by_role("button", name=say("page.elsewhere_keep")).click()
    expect(notice).to_be_hidden()
    open_desk(other)
    expect(other.locator("#job-list li")).to_have_count(1)


def test_what_was_deleted_or_cleared_is_brought_back(open_page: Callable[..., Page]) -> None:
    page = open_page()
    wait_for(page, "computed")
    type_in(page, "arc-chord", "41 ft")
    open_desk(page)
    page.locator("#job-list li button").nth(1).click()
    expect(page.locator("#job-list li")).to_have_count(0)
    page.click("#undo-take")
    expect(page.locator("#job-list li")).to_have_count(1)
    page.locator("#job-list li button").first.click()
    expect(page.locator("#arc-chord")).to_have_value("41 ft")
    open_desk(page)
    page.click("#clear")
    expect(page.locator("#arc-chord")).to_have_value("")
    page.click("#undo-take")
    expect(page.locator("#arc-chord")).to_have_value("41 ft")
