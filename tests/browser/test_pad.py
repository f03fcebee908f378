"""Straight sides behind a filled curve, on the page: asked for only there, shown on every page of the build."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from browser.test_build_face import PAGES, keeps_within_every_screen, open_row
from page_acting import choose, close_panel, look_at, reveal, type_in, wait_for

ASKED = "[data-field='slab-sides'], [data-field='slab-both_ends']"


@pytest.fixture
def pad(page: Page) -> Page:
    """The build of the example as a pad with a rounded end."""
    choose(page, "slab-fills", "yes")
    type_in(page, "slab-sides", "12 ft")
    type_in(page, "slab-thickness", "4 in")
    type_in(page, "grade-slope", "2")
    choose(page, "grade-high", "B")
    choose(page, "grade-low", "inside")
    close_panel(page)
    page.set_viewport_size({"width": 360, "height": 740})
    look_at(page, "build")
    wait_for(page, "computed")
    return page


def test_sides_are_asked_for_only_where_the_slab_fills_its_curve(pad: Page) -> None:
    reveal(pad, "slab-fills")
    expect(pad.locator(ASKED).first).to_be_visible()
    expect(pad.locator("#slab-told")).to_contain_text("Fills the curve, with sides")
    choose(pad, "slab-fills", "")
    for asked in pad.locator(ASKED).all():
        expect(asked).to_be_hidden()
    choose(pad, "slab-fills", "yes")
    expect(pad.locator("#slab-sides")).to_have_value("12 ft")
    pad.locator("#slab-both_ends").check()
    close_panel(pad)
    look_at(pad, "build")
    wait_for(pad, "computed")
    expect(pad.locator("#build-edges")).to_contain_text("Ends R")


def test_every_page_keeps_within_every_screen(pad: Page) -> None:
    for name in PAGES:
        open_row(pad, name)
        keeps_within_every_screen(pad, name)


def test_a_building_at_its_back_is_drawn_over_the_measures_and_under_the_build(pad: Page) -> None:
    """In the page's own Python, whose classes aren't those of the tests."""
    reveal(pad, "slab-back")
    choose(pad, "slab-back", "against")
    close_panel(pad)
    expect(pad.locator("svg#live")).to_contain_text("building")
    look_at(pad, "build")
    wait_for(pad, "computed")
    for name in ("edges", "pour"):
        open_row(pad, name)
        expect(pad.locator("#build figure").first).to_contain_text("building")
        pad.locator("#build .back").click()


def test_the_low_edge_is_asked_for_in_the_words_of_what_is_poured(pad: Page) -> None:
    reveal(pad, "grade-low")
    low = pad.locator("#grade-low [data-value='inside']")

    def shown() -> str:
        return low.inner_text().strip()

    assert shown() == "across from the curve"
    close_panel(pad)
    reveal(pad, "slab-both_ends")
    pad.locator("#slab-both_ends").check()
    close_panel(pad)
    reveal(pad, "grade-low")
    assert shown() == "the other curve"
    close_panel(pad)
    reveal(pad, "slab-fills")
    choose(pad, "slab-fills", "")
    close_panel(pad)
    reveal(pad, "grade-low")
    assert shown() == "the inside"
