"""What is written down on a card, and the way that the checks send somebody back to one."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.words import say
from page_acting import look_at, show_example, wait_for

OUT = "29' 1-7/8\""  # Q1 to B of the example, far enough out for Q1 to be suspected


@pytest.fixture
def page(open_page: Callable[..., Page]) -> Page:
    page = open_page(360, 740)
    show_example(page)
    return page


def test_the_ticket_is_kept_where_it_is_written_and_done_needs_no_second_tap(page: Page) -> None:
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.locator("#ticket").fill("B-4417")
    page.locator("#called").press_sequentially("Mon 8 am")
    wait_for(page, "computed")
    expect(page.locator("#called")).to_have_value("Mon 8 am")
    page.locator("[data-do=done]").click()
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", "2")
    look_at(page, "paper")
    expect(page.locator("#paper .firsts li").first).to_contain_text("Ticket B-4417, called Mon 8 am.")
    page.reload()
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.locator("[data-do=back]").click()
    expect(page.locator("#ticket")).to_have_value("B-4417")


def test_what_was_got_is_used_and_forgotten_and_only_what_hangs_on_it_is_unticked(page: Page) -> None:
    steps = answering(dict(DEMO))["steps"]  # type: ignore[arg-type]
    stake = next(step for step in reversed(steps) if step["stake"])
    off = next(one for one in stake["measures"] if "distance" in one and one["to"] == stake["stake"])
    before = next(step for step in reversed(steps) if step["stake"] and step is not stake)
    look_at(page, "stakes")
    wait_for(page, "computed")
    card = page.locator("#stakes .card")
    while card.get_attribute("data-stake") != stake["stake"]:
        number = int(card.get_attribute("data-card") or 0)
        page.locator("#stakes [data-do=done]").click()
        expect(card).to_have_attribute("data-card", str(number + 1))
    last = int(card.get_attribute("data-card") or 0)
    page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-kind", "checks")
    page.evaluate(f"location.hash = '#stakes-{last - 1}'")
    expect(card).to_have_attribute("data-stake", str(before["stake"]))
    page.locator("#stakes [data-do=got]").click()
    field = page.locator("#stakes .got input").nth(1)
    field.fill(f"{off['distance'] + 0.003:.4f} m")
    page.locator("#stakes [data-do=use-got]").click()
    expect(card).to_have_attribute("data-kind", "checks")  # the last stake stands: nothing hangs on the one before it
    page.evaluate(f"location.hash = '#stakes-{last - 1}'")
    expect(card).to_contain_text(say("card.stands_alone", stake=before["stake"]).split(". ")[1])
    page.locator("#stakes [data-do=got]").click()
    page.locator("#stakes .got .forget").click()
    wait_for(page, "computed")
    expect(card).to_have_attribute("data-stake", str(before["stake"]))
    page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-kind", "checks")


def set_again(page: Page) -> int:
    """Read a check out twice, follow the checks to the suspect, and return its card."""
    look_at(page, "checks")
    wait_for(page, "computed")
    for nth in range(2):
        reading = page.locator(f"#checks [data-check='Q1-B'][data-nth='{nth}']")
        reading.fill(OUT)
        reading.press("Tab")
        expect(page.locator(f"#checks [data-check='Q1-B'][data-nth='{nth}']")).to_have_value(OUT)
        wait_for(page, "computed")
    page.locator("#checks .suspect [data-do=go]").first.click()
    wait_for(page, "computed")
    return int(page.locator("#stakes .card").get_attribute("data-card") or 0)


def test_a_stake_that_the_checks_sent_to_leads_back_to_them(page: Page) -> None:
    set_again(page)
    page.locator("[data-do=done]").click()
    expect(page).to_have_url(re.compile("#checks$"))


def test_a_stake_that_was_set_again_has_its_checks_taped_anew(page: Page) -> None:
    """What was read of it before says nothing of where it stands now."""
    look_at(page, "checks")
    wait_for(page, "computed")
    page.locator("#checks [data-check='R3-R4-Q2'][data-nth='0']").fill('4"')
    page.locator("#checks [data-check='R3-R4-Q2'][data-nth='0']").press("Tab")
    set_again(page)
    page.locator("[data-do=done]").click()
    wait_for(page, "computed")
    expect(page.locator("#checks .anew")).to_contain_text("was set again")
    expect(page.locator("#checks [data-check='Q1-B'][data-nth='0']")).to_have_value("")
    expect(page.locator("#checks [data-check='Q1-B'][data-nth='1']")).to_have_count(0)
    expect(page.locator("#checks li.out")).to_have_count(0)
    expect(page.locator("#checks [data-check='R3-R4-Q2'][data-nth='0']")).to_have_value('4"')
    page.reload()
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(page.locator("#checks .anew")).to_contain_text("was set again")


def test_who_went_elsewhere_meanwhile_goes_on_with_the_next_card(page: Page) -> None:
    card = set_again(page)
    look_at(page, "paper")
    wait_for(page, "computed")
    page.go_back()
    wait_for(page, "computed")
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", str(card))
    page.locator("[data-do=done]").click()
    expect(page).to_have_url(re.compile(f"#stakes-{card + 1}$"))
