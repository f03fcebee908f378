"""Checks on a phone: the row just read stays where it was, and what the readings say is in sight."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Page, expect

from page_acting import look_at, show_example, wait_for

TOP = "row => row.getBoundingClientRect().top"


def read(page: Page, check: str, text: str, nth: int = 0) -> float:
    """Type a reading, leave its field, and return by how much its row has moved on the screen."""
    row = page.locator(f"#checks li[data-check='{check}']")
    field = row.locator(f"input[data-nth='{nth}']")
    field.fill(text)
    before = float(row.evaluate(TOP))
    field.evaluate("field => field.blur()")
    wait_for(page, "computed")
    return float(row.evaluate(TOP)) - before


def test_the_row_read_last_stays_and_its_verdict_comes_into_sight(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740)
    show_example(page)
    look_at(page, "checks")
    wait_for(page, "computed")
    assert abs(read(page, "R2-R3-M", '4-3/8"')) < 1
    assert abs(read(page, "Q1-B", "29' 1-7/8\"")) < 1
    page.locator("#checks .face-checks").evaluate("face => face.scrollTo(0, 9999)")
    line = page.locator("#checks .line")
    expect(line).to_be_in_viewport(ratio=1)
    line.click()
    expect(page.locator("#checks .found")).to_be_in_viewport()
    top = page.locator("#checks .face-checks").evaluate("face => face.scrollTop")
    page.locator("#checks .face-checks").evaluate("face => face.scrollTo(0, 9999)")
    page.locator("[data-tab=checks]").click()  # once more, while it is looked at
    assert page.locator("#checks .face-checks").evaluate("face => face.scrollTop") == 0
    wait_for(page, "computed")
    read(page, "Q1-B", "29' 1-7/8\"", 1)  # taped again: what is wrong is told from its beginning
    head = page.locator("#checks .checks-head")
    face = page.locator("#checks .face-checks")
    expect(head).to_be_in_viewport()
    assert abs(float(head.evaluate(TOP)) - float(face.evaluate(TOP))) < 2 and top > 0


def test_a_reading_that_is_typed_over_keeps_no_verdict_of_the_old_one(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740)
    show_example(page)
    look_at(page, "checks")
    wait_for(page, "computed")
    read(page, "R2-R3-M", '9-3/8"')
    row = page.locator("#checks li[data-check='R2-R3-M']")
    verdict, field = row.locator(".verdict > p"), row.locator("input[data-nth='0']")
    expect(verdict).to_contain_text("OUT")
    field.fill('4-3/8"')
    expect(verdict).to_be_hidden()
    field.fill('9-3/8"')  # as it was: the verdict is of that again
    expect(verdict).to_be_visible()
    read(page, "R2-R3-M", '4"')
    expect(verdict).to_contain_text("IN")
