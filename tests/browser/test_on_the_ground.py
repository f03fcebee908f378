"""What is written down on a card, and the way that the checks send somebody back to one."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.words import say
from page_acting import at_card, choose, close_panel, look_at, show_example, type_in, wait_for

OUT = "29' 1-7/8\""  # Q1 to B of the example, far enough out for Q1 to be suspected


@pytest.fixture
def page(phone: Page) -> Page:
    return phone


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
        at_card(page, number + 1)
    last = int(card.get_attribute("data-card") or 0)
    page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-kind", "checks")
    page.evaluate(f"location.hash = '#stakes-{last - 1}'")
    expect(card).to_have_attribute("data-stake", str(before["stake"]))
    page.locator("#stakes [data-do=got]").click()
    field = page.locator("#stakes .got input").nth(1)
    field.fill(f"{off['distance'] + 0.003:.4f} m")
    expect(page.locator("#stakes .then")).to_be_visible()
    page.locator("#keys").get_by_role("button", name="Done", exact=True).click()  # the buttons stand there again
    page.locator("#stakes [data-do=use-got]").click()
    expect(card).to_have_attribute("data-kind", "checks")  # the last stake stands: nothing hangs on the one before it
    page.evaluate(f"location.hash = '#stakes-{last - 1}'")
    expect(card).to_contain_text(say("card.stands_alone", stake=before["stake"], off="").split(". ")[1])
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
    page.locator("#checks .suspect [data-do=go][data-stake=Q1]").click()  # nothing was set from it wrong
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


def test_whoever_comes_to_a_suspect_by_the_steps_has_its_old_readings_cleared_too(page: Page) -> None:
    card = set_again(page)
    look_at(page, "checks")
    wait_for(page, "computed")
    page.evaluate("card => (location.hash = `#stakes-${card}`)", card)  # as from the list of steps, not by the button
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", str(card))
    wait_for(page, "computed")
    page.locator("[data-do=done]").click()
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", str(card + 1))
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(page.locator("#checks .anew")).to_contain_text("was set again")
    expect(page.locator("#checks [data-check='Q1-B'][data-nth='0']")).to_have_value("")
    expect(page.locator("#checks .suspect")).to_have_count(0)


def test_the_checks_are_passed_for_now_and_stay_undone(page: Page) -> None:
    look_at(page, "stakes")
    wait_for(page, "computed")
    last = int(page.locator("#stakes-list li").count())
    page.evaluate("card => (location.hash = `#stakes-${card}`)", last)
    expect(page.locator("#stakes .card")).to_have_attribute("data-kind", "checks")
    wait_for(page, "computed")
    skip = page.locator("#stakes [data-do=skip]")
    expect(skip).to_have_text(say("card.do.skip"))
    assert skip.evaluate("one => one.scrollWidth <= one.clientWidth && one.scrollHeight <= one.clientHeight")
    skip.click()
    expect(page).to_have_url(re.compile("#paper$"))
    look_at(page, "stakes")
    wait_for(page, "computed")
    expect(page.locator("#stakes .card")).not_to_have_attribute("data-kind", "checks")  # the first that isn't done
    expect(page.locator("#stakes .pips i")).not_to_have_count(0)
    expect(page.locator("#stakes .pips .d")).to_have_count(0)


TWICE = "button => { button.click(); button.click(); }"

HELD = """() => {
  const real = window.setTimeout;
  window.held = [];
  window.free = () => { window.setTimeout = real; for (const act of window.held) act(); };
  window.setTimeout = (act, time, ...more) => (time === 700 ? window.held.push(act) : real(act, time, ...more));
}"""
"""The moment after a card turned lasts until the test ends it, however busy the machine is."""

FREE = "() => window.free()"


def test_a_glove_s_second_tap_does_nothing_and_a_press_after_a_moment_does(page: Page) -> None:
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.evaluate(HELD)
    done, card = page.locator("[data-do=done]"), page.locator("#stakes .card")

    def turned_to(number: int) -> None:
        expect(card).to_have_attribute("data-card", str(number))
        wait_for(page, "computed")

    done.evaluate(TWICE)
    turned_to(2)
    done.evaluate(TWICE)  # the next card is there by now: a second tap that comes late
    page.locator("[data-do=list]").first.evaluate("one => one.focus()")
    turned_to(2)
    page.wait_for_function("window.held.length")
    assert page.evaluate("window.held.length") == 1, "only one card was turned"
    page.evaluate("window.held.pop()()")
    done.evaluate("button => button.click()")
    turned_to(3)
    page.locator("[data-do=back]").evaluate("button => button.click()")  # who goes back means the next press
    turned_to(2)
    done.evaluate(TWICE)
    turned_to(3)
    page.wait_for_function("window.held.length === 2")
    page.evaluate(FREE)


# The answer of which `window.withheld` is a part comes when the test says so.
WITHHELD = """
window.Worker = class extends Worker {
  postMessage(asked, ...words) {
    const send = () => super.postMessage(asked, ...words);
    if (window.withheld && asked.payload?.includes(window.withheld)) window.answer = send;
    else send();
  }
};
"""


DONE_CARDS = """Object.entries(localStorage).filter(([key]) => key.startsWith("bowstring.2.job."))
  .map(([, text]) => JSON.parse(text).fields.done)"""


def test_until_a_moment_after_the_next_card_is_there_done_does_nothing(open_page: Callable[..., Page]) -> None:
    """However late it comes: the moment doesn't begin at the tap, or a step would be ticked that nobody saw."""
    page = open_page(360, 740, before=WITHHELD)
    page.evaluate("""window.withheld = '"card":2'""")
    show_example(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.wait_for_function("'answer' in window")  # the next card is being made ahead, and takes its time
    page.evaluate(HELD)
    done, card = page.locator("#stakes [data-do=done]"), page.locator("#stakes .card")
    done.click()
    expect(page.locator("html[data-turned]")).to_have_count(1)
    page.evaluate(
        "() => { for (const act of window.held.splice(0)) act(); }"
    )  # as if the moment had passed since the tap
    page.evaluate("() => { window.withheld = ''; window.answer(); }")
    expect(card).to_have_attribute("data-card", "2")
    wait_for(page, "computed")
    done.evaluate(TWICE)
    page.wait_for_function("window.held.length")
    expect(card).to_have_attribute("data-card", "2")
    assert page.evaluate(DONE_CARDS) == ["1"]
    page.evaluate("window.held.pop()()")
    done.click()
    expect(card).to_have_attribute("data-card", "3")
    assert page.evaluate(DONE_CARDS) == ["1 2"]
    page.evaluate(FREE)


def test_a_key_that_is_held_presses_done_once(page: Page) -> None:
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.locator("[data-do=done]").focus()
    page.keyboard.down("Enter")
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", "2")
    expect(page.locator("html[data-turned]")).to_have_count(0)
    wait_for(page, "computed")
    page.locator("[data-do=done]").focus()
    for _ in range(3):
        page.keyboard.down("Enter")  # held: each is a repeat
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", "2")
    page.keyboard.up("Enter")
    page.keyboard.press("Enter")
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", "3")


def test_who_went_elsewhere_meanwhile_goes_on_with_the_next_card(page: Page) -> None:
    card = set_again(page)
    look_at(page, "paper")
    wait_for(page, "computed")
    page.go_back()
    wait_for(page, "computed")
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", str(card))
    page.locator("[data-do=done]").click()
    expect(page).to_have_url(re.compile(f"#stakes-{card + 1}$"))


# Nothing is in the way.
CLEARED = """() => {
  for (const one of document.querySelectorAll("#form [name^=ground-]"))
    if (one.type === "radio") one.checked = "blank" in one.dataset;
    else one.value = "";
  document.getElementById("form").dispatchEvent(new InputEvent("input", { bubbles: true }));
}"""


def at_work(open_page: Callable[..., Page], last: int) -> Page:
    """The example on a phone, with nothing in the way, its first steps done, up to one."""
    page = open_page(360, 740)
    show_example(page)
    page.evaluate(CLEARED)
    wait_for(page, "computed")
    look_at(page, "stakes")
    wait_for(page, "computed")
    for number in range(1, last + 1):
        at_card(page, number)
        wait_for(page, "computed")
        page.locator("#stakes [data-do=done]").click()
    at_card(page, last + 1)
    return page


def test_the_old_numbers_are_kept_and_what_moves_no_stake_stays(open_page: Callable[..., Page]) -> None:
    page = at_work(open_page, 5)
    look_at(page, "numbers")
    type_in(page, "arc-chord", "39 ft")
    type_in(page, "title", "Dock walk")
    type_in(page, "width", "6 ft")
    close_panel(page)
    wait_for(page, "computed")
    expect(page.locator("#status")).to_contain_text("Old numbers: M")
    look_at(page, "checks")
    wait_for(page, "computed")
    expect(page.locator("#checks .old")).to_contain_text("The numbers here are newer.")
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.locator("#stakes [data-do=stood]").click()
    expect(page.locator("#undo-said")).to_have_text("Set back: Chord 39 ft to 38 ft.")
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", "6")
    fields = ("#arc-chord", "#title", "#width")
    assert [page.locator(one).input_value() for one in fields] == ["38 ft", "Dock walk", "6 ft"]
    page.locator("#undo-take").click()
    expect(page.locator("#stakes [data-do=stood]")).to_be_visible()
    assert [page.locator(one).input_value() for one in fields] == ["39 ft", "Dock walk", "6 ft"]


def test_with_other_ends_the_next_done_keeps_the_ticks_by_what_is_done(open_page: Callable[..., Page]) -> None:
    """A, its straight and B off it were never done: they are open, and the stakes that stand are done."""
    page = at_work(open_page, 5)
    assert page.evaluate(DONE_CARDS) == ["1 2 3 4 5"]
    choose(page, "start", "one-end")
    choose(page, "turn", "right")
    close_panel(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    card = page.locator("#stakes .card")
    expect(card).to_have_attribute("data-card", "2")
    assert page.evaluate(DONE_CARDS) == ["1 2 3 4 5"], "as long as no card is turned all may be as it was"
    for number in (2, 3):
        at_card(page, number)
        wait_for(page, "computed")
        page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-card", "7")
    assert page.evaluate(DONE_CARDS) == ["1 2 3 4 5 6"]
