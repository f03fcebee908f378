"""A phone of 360 by 740: what has to be tapped or read stands on the screen whole, and stays there."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from bowstring.page.old_numbers import bar_text
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from page_acting import at_card, choose, look_at, open_panel, wait_for
from started_page import FILLED

TWO = {"arc-chord": "38' 6\"", "arc-sagitta": "4' 2-1/2\""}


def begin(phone: Page, fields: dict[str, str]) -> None:
    """A new job with some fields filled in, on its numbers."""
    open_panel(phone, "jobs")
    phone.locator("#clear").tap()
    phone.wait_for_selector("html:not([data-panel])")
    phone.evaluate(FILLED, fields)
    phone.wait_for_selector("html:not([data-stale])")


def bottom(page: Page, what: str) -> float:
    box = page.locator(what).bounding_box()
    assert box
    return box["y"] + box["height"]


def top(page: Page, what: str) -> float:
    box = page.locator(what).bounding_box()
    assert box
    return box["y"]


def test_the_side_is_asked_with_the_turn_and_can_be_left_open(phone: Page) -> None:
    begin(phone, TWO)
    wait_for(phone, "computed")
    phone.locator("#ask-open").tap()
    expect(phone.locator("#panel-hand h2")).to_contain_text(say("numbers.panel_hand"))
    hands = phone.locator("#side label.hand")
    expect(hands.first).to_contain_text("Arc LEFT of A-B")
    expect(hands.first).to_contain_text("Curve turns RIGHT")
    expect(hands.last).to_contain_text("Arc RIGHT of A-B")
    expect(hands.last).to_contain_text("Curve turns LEFT")
    sizes = hands.first.locator("b").evaluate_all("(all) => all.map((one) => getComputedStyle(one).fontSize)")
    assert len(sizes) == 2 and len(set(sizes)) == 1, sizes  # neither fact is the smaller print
    # Nothing of the last answer is under the bar at the thumb.
    assert bottom(phone, "#side label.option") <= top(phone, "#panel-hand .thumb")
    hands.first.tap()
    wait_for(phone, "computed")
    expect(phone.locator("#ask-hand-said")).to_have_text("LEFT from A facing B, turns RIGHT")


def test_a_changed_unit_leaves_its_two_answers_and_the_typed_number_on_the_screen(phone: Page) -> None:
    begin(phone, {"arc-chord": "24", "arc-radius": "30", "tolerance": "1/4", "spacing": "3"})
    open_panel(phone, "fine")
    choose(phone, "unit", "m")
    phone.locator("#panel-fine .thumb .btn.first").tap()
    phone.wait_for_selector("html:not([data-panel])")
    expect(phone.locator("#unit-note")).to_be_visible()
    for answer in ("#unit-keep", "#unit-back"):
        expect(phone.locator(answer)).to_be_in_viewport(ratio=1)
        assert bottom(phone, answer) <= top(phone, "#face-numbers")
    phone.locator("#arc-sagitta").tap()
    expect(phone.locator("#keys")).to_be_visible()
    field = phone.locator("#arc-sagitta").bounding_box()
    assert field and field["y"] >= bottom(phone, ".bar") and field["y"] + field["height"] <= top(phone, "#keys")
    phone.locator("#keys [data-key=done]:visible").tap()
    phone.locator("#unit-back").tap()
    expect(phone.locator("#unit-note")).to_be_hidden()


DAY = {**TWO, "side": "right", "drawn_to": "face"}


def test_the_folded_checks_stay_open_and_under_the_fingers(phone: Page) -> None:
    begin(phone, DAY)
    look_at(phone, "checks")
    wait_for(phone, "computed")
    fold = phone.locator("#checks-more")
    fold.locator("summary").tap()
    fields = fold.locator("input")
    first, second = (fields.nth(place).get_attribute("id") for place in range(2))
    before = bottom(phone, f"#{second}")
    fields.first.tap()
    for key in ("3", "inches", "Next"):
        phone.locator("#keys").get_by_role("button", name=key, exact=True).tap()
    wait_for(phone, "computed")
    expect(phone.locator(f"#{first}")).to_have_value('3"')
    expect(phone.locator("#checks-more .verdict")).to_have_count(1)
    expect(fold).to_have_attribute("open", "")
    expect(phone.locator(f"#{second}")).to_be_focused()
    expect(phone.locator(f"#{second}")).to_be_in_viewport(ratio=1)
    assert bottom(phone, f"#{second}") <= max(before, top(phone, "#keys"))
    phone.locator("#keys [data-key=done]:visible").tap()
    wait_for(phone, "computed")
    expect(fold).to_have_attribute("open", "")
    expect(fields.first).to_be_in_viewport(ratio=0.5)


def test_a_new_job_begins_at_its_top_and_the_old_one_has_its_numbers_for_a_name(phone: Page) -> None:
    begin(phone, DAY)
    phone.evaluate("document.getElementById('numbers-face').scrollTop = 400")
    assert phone.evaluate("document.getElementById('numbers-face').scrollTop") > 0
    open_panel(phone, "jobs")
    expect(phone.locator("#job-list [aria-current]")).to_contain_text("Chord 38' 6\", mid-ordinate 4' 2-1/2\"")
    phone.locator("#clear").tap()
    phone.wait_for_selector("html:not([data-panel])")
    expect(phone.locator("#undo-said")).to_have_text(say("page.undo_clear"))
    assert phone.evaluate("document.getElementById('numbers-face').scrollTop") == 0


def test_the_way_on_names_the_step_that_is_next(phone: Page) -> None:
    begin(phone, DAY)
    expect(phone.locator("#to-step")).to_have_text(say("numbers.go"))
    look_at(phone, "stakes")
    for card in (1, 2):
        wait_for(phone, "computed")
        at_card(phone, card)
        phone.locator("#stakes [data-do=done]").tap()
    look_at(phone, "numbers")
    expect(phone.locator("#to-step")).to_have_text(say("numbers.go_on", step=3))
    phone.locator("#to-step").tap()
    wait_for(phone, "computed")
    expect(phone.locator("#stakes .card")).to_have_attribute("data-card", "3")


LINES = """(text) => {
  const said = document.getElementById("status");
  const before = said.textContent;
  said.textContent = text;
  const range = document.createRange();
  range.selectNodeContents(said);
  const lines = new Set([...range.getClientRects()].map((one) => Math.round(one.top)));
  const { top, bottom } = range.getBoundingClientRect();
  const bar = said.closest(".bar").getBoundingClientRect();
  said.textContent = before;
  return { lines: lines.size, inside: bar.top <= top && bottom <= bar.bottom && bar.height <= 48.5 };
}"""


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_stands_by_old_numbers_is_said_in_two_lines_of_the_bar(phone: Page, language: str) -> None:
    """Of stakes, of pins beside a string, of a line's arcs, and of the forms' cards."""
    begin(phone, DAY)
    look_at(phone, "checks")
    wait_for(phone, "computed")
    many = ["A0", "B0", *(f"K{number}" for number in range(1, 16))]
    olds: list[dict[int, list[str]]] = [
        {0: ["K1", "K2"]}, {0: many}, {0: ["PA", "PB", *many]}, {4: many}, {2: many, 14: many},
        {12: many, 14: many, 16: many},
    ]  # fmt: skip
    speak(language)
    try:
        texts = [*map(bar_text, olds), say("stood.state_forms")]
    finally:
        speak(LANGUAGES[0])
    told = {text: phone.evaluate(LINES, text) for text in texts}
    assert {text: one for text, one in told.items() if one["lines"] > 2 or not one["inside"]} == {}
