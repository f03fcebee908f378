"""What a phone of 360 dots shows: nothing stands over a field that is typed in, and no number is broken."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Page, expect

from page_acting import close_panel, look_at, open_panel, show_example, wait_for

PLACE = "one => { const { top, bottom, left } = one.getBoundingClientRect(); return [top, bottom, left]; }"


def test_fields_keys_and_rings_fit(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740, has_touch=True, is_mobile=True)
    show_example(page)
    open_panel(page, "fine")
    page.locator("#tolerance").tap()
    (_top, bottom, _left), (keys, *_) = (page.locator(at).evaluate(PLACE) for at in ("#tolerance", "#keys"))
    assert bottom + 5 <= keys  # its ring, too
    expect(page.locator("#panel-fine > .thumb")).to_be_hidden()  # the keys have a Done of their own
    close_panel(page)
    open_panel(page, "ends")
    first, second = (page.locator(f"#ends-{end}").evaluate(PLACE) for end in "AB")
    assert first[:2] == second[:2]
    close_panel(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    step = page.locator(".card .steps button")
    page.keyboard.press("Tab")
    step.focus()
    ring = step.evaluate(
        "one => parseFloat(getComputedStyle(one).outlineOffset) + parseFloat(getComputedStyle(one).outlineWidth)"
    )
    assert step.evaluate(PLACE)[2] - ring >= 0
