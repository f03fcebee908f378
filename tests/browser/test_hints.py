"""What a field's hint says goes with the unit that is chosen."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Page, expect

from page_acting import choose, reveal


def test_a_metric_job_has_no_hint_in_feet(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740)
    reveal(page, "spacing")
    hint = page.locator("#spacing-help")
    expect(hint).to_have_text("Blank: 4 ft.", use_inner_text=True)
    choose(page, "unit", "mm")
    expect(hint).to_have_text("Blank: 1.2 m.", use_inner_text=True)
    page.reload()
    reveal(page, "spacing")
    expect(hint).to_have_text("Blank: 1.2 m.", use_inner_text=True)
    choose(page, "unit", "ft")
    expect(hint).to_have_text("Blank: 4 ft.", use_inner_text=True)
