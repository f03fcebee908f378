"""What a teacher does on the wall, for the browser tests."""

from __future__ import annotations

import re

from playwright.sync_api import Page, expect

from page_acting import look_at, type_in, wait_for

WALL = "#wall .picture svg"


def wall_of_the_example(page: Page) -> Page:
    """Open the wall of the example, whose page this is, from the face that tells why."""
    page.set_viewport_size({"width": 1280, "height": 720})
    type_in(page, "title", "Bandstand walk")  # kept from now on
    look_at(page, "why")
    wait_for(page, "computed")
    page.locator("[data-do=wall]").click()
    page.wait_for_selector(WALL)
    if page.locator("#wall .spoken").is_visible():  # it was asked for in the test before
        page.keyboard.press("p")
    return page


def at(page: Page, place: str) -> None:
    expect(page).to_have_url(re.compile(f"#wall-{place}$"))


def said(page: Page) -> str:
    return page.locator("#wall [role=status]").text_content() or ""
