"""The page as it is read: by a screen reader's rules, in light and dark, on a phone and on a wall."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page

from accessible import hold_accessible
from page_acting import look_at, open_panel, show_example, wait_for
from screens import FACES, screens

# The card's head is hit by more than it shows; nobody taps what says that all is answered.
SMALL = """() => [...document.querySelectorAll(
    'button, .as-button, summary, nav a, .option, input[type=text], select'
)].filter((one) => one.id !== "card-head" && !one.disabled && one.checkVisibility())
  .filter((one) => one.getBoundingClientRect().height < 47.5)
  .map((one) => one.outerHTML.slice(0, 80))"""
SIZES = ((360, 740), (820, 1180), (1280, 800), (1920, 1080))
DESK = 1100


def test_axe_finds_nothing_wrong(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740, bypass_csp=True)
    wait_for(page, "computed")
    hold_accessible(page, "an empty form")
    for what in screens(page):
        hold_accessible(page, what)


def test_axe_finds_nothing_wrong_in_spanish(spanish: Page) -> None:
    """In another language no color is another: the dark needn't be looked at."""
    for what in screens(spanish):
        hold_accessible(spanish, what, ("light",))


def test_axe_finds_nothing_wrong_in_british(open_page: Callable[..., Page]) -> None:
    """Beside each other on a desk, where two faces are looked at a time."""
    page = open_page(1280, 720, locale="en-GB", bypass_csp=True)
    wait_for(page, "computed")
    assert page.locator("html").get_attribute("lang") == "en-GB"
    show_example(page)
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        hold_accessible(page, face, ("light",))
    open_panel(page, "jobs")
    hold_accessible(page, "jobs", ("light",))


@pytest.mark.parametrize(("width", "height"), [(1280, 720), (740, 360)])
def test_axe_finds_nothing_wrong_beside_each_other(open_page: Callable[..., Page], width: int, height: int) -> None:
    """On a desk two faces stand beside each other; on a phone on its side the page scrolls as a whole."""
    page = open_page(width, height, bypass_csp=True)
    wait_for(page, "computed")
    hold_accessible(page, "an empty form")
    show_example(page)
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        hold_accessible(page, face)
    for panel in ("hand", "way", "jobs"):
        open_panel(page, panel)
        hold_accessible(page, panel)


@pytest.mark.parametrize("face", FACES)
def test_nothing_is_cut_off_at_any_width(page: Page, face: str) -> None:
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        look_at(page, "stakes" if face == "numbers" and width >= DESK else face)
        page.wait_for_selector("html[data-sheet=computed]:not([data-stale])")
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        small = page.evaluate(SMALL)
        assert small == [], f"at {width} px a gloved finger misses these"
