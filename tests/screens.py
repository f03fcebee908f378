"""Every screen of the page, one after the other, in whatever language it speaks."""

from __future__ import annotations

from collections.abc import Iterator

from playwright.sync_api import Page, expect

from page_acting import at_card, choose, close_panel, look_at, open_desk, open_panel, show_example, wait_for

FACES = ("numbers", "stakes", "checks", "build", "paper", "why")
PANELS = ("hand", "line", "ends", "way", "fine", "method", "rest")
HANDED = ("qr", "messages", "files")
CARDS = 6
"""Cards that are looked at: the ticket, the ends, the first stakes."""


def screens(page: Page) -> Iterator[str]:
    """Bring up every panel, face and kind of card of the example in turn; yield what each is."""
    yield from _handed_over(page)
    for panel in PANELS:
        open_panel(page, panel)
        yield panel
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        yield face
    yield from _cards(page)
    choose(page, "drawn_to", "unsure")  # what must not be built
    look_at(page, "stakes")
    expect(page.locator("#stakes .stopbox")).to_be_visible()
    yield "a stop"


def _handed_over(page: Page) -> Iterator[str]:
    open_desk(page)
    yield "jobs"
    close_panel(page)
    show_example(page)
    open_desk(page)
    for what in HANDED:
        page.click(f"[data-hand={what}]")
        expect(page.locator("#handed > *").first).to_be_visible()
        yield f"handed over: {what}"


def _cards(page: Page) -> Iterator[str]:
    look_at(page, "stakes")
    wait_for(page, "computed")
    for number in range(1, CARDS):
        at_card(page, number)
        yield f"card {number}"
        page.locator("#stakes [data-do=done]").click()
    at_card(page, CARDS)
    page.locator("#card-head").click()
    expect(page.locator("#stakes .steplist")).to_be_visible()
    yield "all steps"
    page.go_back()
    page.locator("#stakes [data-do=got]").click()
    page.wait_for_selector("#stakes .got")
    page.locator("#stakes .got input").nth(1).fill("1 ft")
    expect(page.locator("#stakes .then")).to_be_visible()
    yield "what was got"
