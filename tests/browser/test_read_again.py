"""Readings of stakes that are set again are gone with them, Undo gives both back, and the bar leads to what is out."""

from __future__ import annotations

import re
from collections.abc import Callable

from playwright.sync_api import Page, expect

from bowstring import answering
from bowstring.demo import DEMO
from page_acting import at_card, choose, look_at, show_example, wait_for

ANSWER = answering(DEMO)
CARDS = {card["stake"]: card["number"] for card in ANSWER["cards"] if card["stake"]}
MUST = {row["key"]: row["shown"] for row in ANSWER["checks"]}


def walked(open_page: Callable[..., Page]) -> Page:
    """Every stake set, card by card, and every check read dead on."""
    page = open_page(360, 740)
    show_example(page)
    look_at(page, "stakes")
    for number in range(1, max(CARDS.values()) + 1):
        at_card(page, number)
        page.locator("[data-do=done]").click()
    wait_for(page, "computed")
    look_at(page, "checks")
    wait_for(page, "computed")
    for key, text in MUST.items():
        read(page, key, text)
    expect(page.locator("#checks li.in")).to_have_count(len(MUST))
    return page


def read(page: Page, key: str, text: str) -> None:
    field = page.locator(f"#checks input[data-check='{key}']").first
    field.fill(text)
    field.evaluate("one => one.blur()")
    wait_for(page, "computed")


def typed(page: Page) -> dict[str, str]:
    rows = page.locator("#checks input[data-check]").evaluate_all(
        "all => all.map(one => [one.dataset.check, one.value]).filter(([, text]) => text)"
    )
    return dict(rows)


def test_on_the_new_hand_no_old_reading_counts(open_page: Callable[..., Page]) -> None:
    page = walked(open_page)
    choose(page, "side", "right")
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(page.locator("#checks li.waits")).to_have_count(len(MUST))
    look_at(page, "stakes")
    page.locator("[data-do=restart]").click()
    wait_for(page, "computed")
    look_at(page, "checks")
    wait_for(page, "computed")
    assert typed(page) == {}
    expect(page.locator("#checks .anew")).to_contain_text("set again")


def test_undo_gives_back_what_setting_again_took(open_page: Callable[..., Page]) -> None:
    page = walked(open_page)
    choose(page, "side", "right")
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.locator("[data-do=restart]").click()
    page.locator("#undo-take").click()
    wait_for(page, "computed")
    look_at(page, "checks")
    wait_for(page, "computed")
    assert typed(page).keys() == MUST.keys()
    expect(page.locator("#checks li.waits")).to_have_count(len(MUST))


def test_a_card_that_is_walked_again_takes_what_was_read_at_its_stake(open_page: Callable[..., Page]) -> None:
    page = walked(open_page)
    look_at(page, "stakes")
    last = CARDS["R4"]
    at_card(page, last + 1)
    page.locator("[data-do=back]").click()
    at_card(page, last)
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(page.locator("#checks li.waits")).to_have_attribute("data-check", "R3-R4-Q2")
    expect(page.locator("#status")).to_have_text("1 check waits")
    assert typed(page).keys() == MUST.keys()
    look_at(page, "stakes")
    at_card(page, last)
    page.locator("[data-do=done]").click()
    wait_for(page, "computed")
    look_at(page, "checks")
    wait_for(page, "computed")
    assert typed(page).keys() == MUST.keys() - {"R3-R4-Q2"}


def test_the_bar_leads_to_the_check_that_is_out(open_page: Callable[..., Page]) -> None:
    page = walked(open_page)
    read(page, "Q1-B", "29' 1-7/8\"")
    page.locator("#checks .face-checks").evaluate("face => face.scrollTo(0, 0)")
    expect(page.locator("#status")).to_have_text("1 check out")
    out = page.locator("#checks li.out")
    for face in ("checks", "stakes"):
        look_at(page, face)
        wait_for(page, "computed")
        page.locator("#status").click()
        expect(page).to_have_url(re.compile("#checks$"))
        expect(out).to_be_focused()
        expect(out).to_be_in_viewport()
