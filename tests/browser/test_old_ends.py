"""An end that meets old concrete, on the page: asked for in a fold of the slab's panel, hidden of a pad, drawn."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from browser.test_build_face import PAGES, keeps_within_every_screen, open_row
from page_acting import choose, close_panel, look_at, reveal, type_in, wait_for


@pytest.fixture
def ended(page: Page) -> Page:
    """The build of the example as a walk that begins and ends at old concrete."""
    type_in(page, "width", "5 ft")
    choose(page, "edge", "outside")
    type_in(page, "slab-thickness", "4 in")
    expect(page.locator("#form-ends")).not_to_have_attribute("open", "")
    for end in "AB":
        reveal(page, f"slab-at_{end}")
        choose(page, f"slab-at_{end}", "against")
    type_in(page, "grade-slope", "2")
    choose(page, "grade-high", "B")
    choose(page, "grade-low", "inside")
    close_panel(page)
    page.set_viewport_size({"width": 360, "height": 740})
    look_at(page, "build")
    wait_for(page, "computed")
    return page


def test_every_page_says_it_and_keeps_within_every_screen(ended: Page) -> None:
    said = {"edges": "against the old concrete", "boards": "lap the boards", "joints": "isolation joint at A",
            "grades": "Shoot the old concrete there", "pour": ""}  # fmt: skip
    expect(ended.locator("#build figure, #build .draw").first).to_contain_text("hatched: old concrete")
    for name in PAGES:
        open_row(ended, name)
        expect(ended.locator("#build .page")).to_contain_text(said[name])
        keeps_within_every_screen(ended, name)


def test_a_pad_has_no_such_ends_and_the_line_says_them(ended: Page) -> None:
    look_at(ended, "numbers")
    wait_for(ended, "computed")
    expect(ended.locator("#face-numbers")).to_contain_text("A and B against old concrete")
    reveal(ended, "slab-fills")
    expect(ended.locator("#form-ends")).to_be_visible()
    choose(ended, "slab-fills", "yes")
    expect(ended.locator("#form-ends")).to_be_hidden()
