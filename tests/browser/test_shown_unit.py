"""A device that shows lengths in another unit than the job's: the job, its link and what is kept stay as they are."""

from __future__ import annotations

import re
from collections.abc import Callable

from playwright.sync_api import Page, expect

from bowstring import read_link
from page_acting import look_at, open_desk, show_example, type_in, wait_for

TOLD = "Shown in meters. The job is in feet and inches."


def link_of(page: Page) -> str:
    look_at(page, "numbers")
    open_desk(page)
    expect(page.locator("#link-text")).not_to_have_value("")
    return page.locator("#link-text").input_value()


def shown_in(page: Page, unit: str) -> None:
    open_desk(page)
    with page.expect_navigation():
        page.select_option("#shown", unit)
    wait_for(page, "computed")


def test_metres_are_chosen_on_the_device_and_the_job_stays_as_it_is(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740, has_touch=True, is_mobile=True)
    wait_for(page, "computed")
    show_example(page)
    type_in(page, "title", "Seen twice")  # the job is somebody's own by now, and kept
    wait_for(page, "computed")
    link = link_of(page)
    said = page.locator("#notices .shown-in")
    expect(said).to_be_hidden()

    shown_in(page, "m")
    expect(page.locator("#shown")).to_have_value("m")
    for face in ("numbers", "stakes", "checks", "build", "paper", "why"):
        look_at(page, face)
        wait_for(page, "computed")
        expect(said).to_have_text(TOLD)
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.locator("#stakes [data-do=done]").click()  # the locate ticket; the next one has A to B
    card = page.locator("#stakes .card")
    expect(card).to_have_attribute("data-card", "2")
    expect(card).to_contain_text(re.compile(r"\d\.\d{3} m"))
    assert not re.search(r"\d' ?\d|\d\"", card.inner_text())
    assert link_of(page) == link

    look_at(page, "checks")
    wait_for(page, "computed")
    row = page.locator("#checks li").filter(has=page.locator("input[data-check]")).first
    must = row.locator(".must b").inner_text()
    assert must.endswith("m")
    bare = must.split()[0]
    row.locator("input").first.focus()
    decimal, feet = (page.locator(f"#keys [data-pad={name}]") for name in ("decimal", "feet"))
    expect(decimal).to_be_visible()
    expect(feet).to_be_hidden()
    row.locator("input").first.fill(bare)
    row.locator("input").first.blur()
    expect(row.locator("input").first).to_have_value(must)
    expect(row.locator(".verdict")).to_contain_text("Dead on.")
    assert link_of(page) == link

    shown_in(page, "")
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(said).to_be_hidden()
    expect(row.locator(".must b")).to_have_text(re.compile(r"\d\""))
    row.locator("input").first.focus()
    expect(feet).to_be_visible()
    expect(decimal).to_be_hidden()
    expect(row.locator("input").first).to_have_value(must)
    expect(row.locator(".verdict")).to_contain_text(f"{must} was read as")
    assert link_of(page) == link and read_link(link).get("unit", "ft-in") == "ft-in"
