"""A stake that was set wrong, and what was set from it: the checks lead through all of their cards, and back."""

from __future__ import annotations

import json
import re
from collections.abc import Callable

from playwright.sync_api import Page, expect

from bowstring import answering
from bowstring.demo import DEMO
from page_acting import look_at, show_example, wait_for


def test_what_was_set_from_a_stake_comes_again_after_it_and_then_the_checks(open_page: Callable[..., Page]) -> None:
    """The button's own cards are taken, so that the walk is that of whatever the readings name."""
    page = open_page(360, 740)
    show_example(page)
    look_at(page, "checks")
    wait_for(page, "computed")
    cards = {card["stake"]: card["number"] for card in answering(DEMO)["cards"] if card["stake"]}
    then = [cards["R1"], cards["R2"]]
    for nth in range(2):
        reading = page.locator(f"#checks [data-check='Q1-B'][data-nth='{nth}']")
        reading.fill("29' 1-7/8\"")
        reading.press("Tab")
        wait_for(page, "computed")
    button = page.locator("#checks .suspect [data-do=go]").first
    button.evaluate("(one, then) => { one.dataset.then = then }", json.dumps(then))
    first = int(button.get_attribute("data-step") or 0)
    button.click()
    for card in (first, *then):
        wait_for(page, "computed")
        expect(page.locator("#stakes .card")).to_have_attribute("data-card", str(card))
        expect(page.locator("html[data-turned]")).to_have_count(0)
        page.locator("[data-do=done]").click()
    expect(page).to_have_url(re.compile("#checks$"))
