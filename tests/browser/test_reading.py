"""The page as it is read: by a screen reader's rules, in light and dark, on a phone and on a wall."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from accessible import hold_accessible as held
from page_acting import choose, look_at, open_desk, open_panel, show_example, wait_for

# The card's head is hit by more than it shows.
SMALL = """() => [...document.querySelectorAll(
    'button, .as-button, summary, nav a, .option, input[type=text], select'
)].filter((one) => one.id !== "card-head" && one.checkVisibility() && one.getBoundingClientRect().height < 47.5)
  .map((one) => one.outerHTML.slice(0, 80))"""
SIZES = ((360, 740), (820, 1180), (1280, 800), (1920, 1080))
DESK = 1100
FACES = ("numbers", "stakes", "checks", "paper", "why")
PANELS = ("hand", "line", "ends", "way", "fine", "method", "rest")


def test_axe_finds_nothing_wrong(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740, bypass_csp=True)
    wait_for(page, "computed")
    held(page, "an empty form")
    open_desk(page)
    held(page, "jobs")
    show_example(page)
    open_desk(page)
    for what in ("qr", "messages", "files"):
        page.click(f"[data-hand={what}]")
        expect(page.locator("#handed > *").first).to_be_visible()
        held(page, f"handed over: {what}")
    for panel in PANELS:
        open_panel(page, panel)
        held(page, panel)
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        held(page, face)
    look_at(page, "stakes")
    wait_for(page, "computed")
    card = page.locator("#stakes .card")
    for number in range(1, 6):
        expect(card).to_have_attribute("data-card", str(number))
        held(page, f"card {number}")
        page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-card", "6")
    page.locator("#card-head").click()
    expect(page.locator("#stakes .steplist")).to_be_visible()
    held(page, "all steps")
    page.go_back()
    page.locator("#stakes [data-do=got]").click()
    page.wait_for_selector("#stakes .got")
    page.locator("#stakes .got input").nth(1).fill("1 ft")
    expect(page.locator("#stakes .then")).to_be_visible()
    held(page, "what was got")
    choose(page, "drawn_to", "unsure")  # what must not be built
    look_at(page, "stakes")
    expect(page.locator("#stakes .stopbox")).to_be_visible()
    held(page, "a stop")


@pytest.mark.parametrize(("width", "height"), [(1280, 720), (740, 360)])
def test_axe_finds_nothing_wrong_beside_each_other(open_page: Callable[..., Page], width: int, height: int) -> None:
    """On a desk two faces stand beside each other; on a phone on its side the page scrolls as a whole."""
    page = open_page(width, height, bypass_csp=True)
    wait_for(page, "computed")
    held(page, "an empty form")
    show_example(page)
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        held(page, face)
    for panel in ("hand", "way", "jobs"):
        open_panel(page, panel)
        held(page, panel)


@pytest.mark.parametrize("face", FACES)
def test_nothing_is_cut_off_at_any_width(page: Page, face: str) -> None:
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        look_at(page, "stakes" if face == "numbers" and width >= DESK else face)
        page.wait_for_selector("html[data-sheet=computed]:not([data-stale])")
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        small = page.evaluate(SMALL)
        assert small == [], f"at {width} px a gloved finger misses these"
