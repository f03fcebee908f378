"""From an empty page to the first stake on a phone, counted in taps; each card whole; Back, Done, and what was got."""

from __future__ import annotations

import json
import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Locator, Page, expect

from bowstring import answer, answering
from bowstring.demo import DEMO
from bowstring.page.fields import fields_of_job
from bowstring.words import say
from card_jobs import EVERYDAY, job
from page_acting import at_card, choose, close_panel, look_at, open_panel, reload, show_example, type_in, wait_for
from started_page import FILLED
from whole_card import WHOLE

MOST_TAPS, MOST_TAPS_FOUND = 12, 4
DONES = 3  # of the taps: work on the ground that comes before the first stake
MOST_WORDS_EMPTY, MOST_WORDS_CARD = 120, 60
PHONE = {"has_touch": True, "is_mobile": True, "device_scale_factor": 2}
SCREEN = 740


# How far what scrolls has gone since then: another face may have been made meanwhile, with more that does.
TOPS = """() => {
  const all = [document.scrollingElement, ...document.querySelectorAll(".scroll")];
  window.tops = new Map(all.map((one) => [one, one.scrollTop]));
}"""
SCROLLED = """() => Math.max(
  ...[...window.tops].filter(([one]) => one.isConnected).map(([one, top]) => Math.abs(one.scrollTop - top)))"""


class Thumb:
    """One thumb on a phone: counts its taps but for those on keys, and how far it has to scroll to reach a thing."""

    def __init__(self, page: Page) -> None:
        self.page, self.taps, self.scrolled = page, 0, 0.0

    def tap(self, what: str | Locator) -> None:
        place = self.page.locator(what) if isinstance(what, str) else what
        self.page.wait_for_selector("html:not([data-stale])")  # nothing is put in its place under the thumb
        expect(place).to_be_visible()
        self.page.evaluate(TOPS)
        place.scroll_into_view_if_needed()
        self.scrolled = max(self.scrolled, self.page.evaluate(SCROLLED))
        place.tap()
        self.taps += 1

    def type(self, keys: str) -> None:
        for key in keys.split():
            self.page.locator("#keys").get_by_role("button", name=key, exact=True).tap()


def number_on(page: Page) -> str:
    return page.locator("#stakes dl.nums").inner_text()


def test_the_first_stake_s_numbers_within_twelve_taps(open_page: Callable[..., Page]) -> None:
    page = open_page(360, SCREEN, **PHONE)
    wait_for(page, "computed")
    thumb = Thumb(page)
    thumb.tap("#arc-chord")
    thumb.type("4 1 feet Next")  # the next key brings the next field: no tap besides
    expect(page.locator("#arc-sagitta")).to_be_focused()
    thumb.type("5 feet 3 inches Done")
    wait_for(page, "computed")
    thumb.tap("#ask-open")
    thumb.tap(page.locator("#side label.hand").first)
    thumb.tap("#ask-open")
    expect(page.locator("#panel-line")).to_be_visible()
    thumb.tap("#drawn_to label:has(input[value=face])")
    thumb.tap("#panel-line .btn.first")
    thumb.tap("#to-step")
    wait_for(page, "computed")
    told = answering({"arc": {"chord": "41'", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face"})
    first = next(card for card in told["cards"] if card["stake"])
    for number in range(1, first["number"]):
        expect(page.locator("#stakes .card")).to_have_attribute("data-card", str(number))
        thumb.tap("#stakes [data-do=done]")
    expect(page.locator("#stakes .card")).to_have_attribute("data-stake", first["stake"] or "")
    for number in first["numbers"]:
        assert number["shown"] in number_on(page)
        expect(page.locator("#stakes dl.nums")).to_be_in_viewport(ratio=1)
    assert first["number"] - 1 <= DONES
    assert thumb.taps <= MOST_TAPS, thumb.taps
    assert thumb.scrolled <= SCREEN


def lay_out(page: Page, fields: dict[str, str]) -> None:
    """Have a job's fields typed, and its first card shown."""
    page.evaluate(FILLED, fields)
    expect(page.locator("#arc-chord")).to_have_value(fields["arc-chord"])
    look_at(page, "stakes")
    wait_for(page, "computed")


WALK = {"arc-chord": "41 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face", "tolerance": "1/2 in"}


def begin(page: Page) -> None:
    """Empty the form of a page that is used in turn, and lay the walk out."""
    open_panel(page, "jobs")
    page.locator("#clear").tap()
    page.wait_for_selector("html:not([data-panel])")
    lay_out(page, WALK)


def done(page: Page, times: int = 1) -> None:
    for _ in range(times):
        card = int(page.locator("#stakes .card").get_attribute("data-card") or 0)
        page.locator("#stakes [data-do=done]").tap()
        at_card(page, card + 1)
        wait_for(page, "computed")


def measures_of(page: Page) -> list[str]:
    """The numbers of the card on screen, as they are shown."""
    return page.locator("#stakes dl.nums dd").all_inner_texts()


def test_a_found_chord_that_differs_is_taken_up_within_four_taps(phone: Page) -> None:
    begin(phone)
    done(phone)  # to the card that has the chord taped
    expect(phone.locator("#stakes .card")).to_contain_text("41' 0\"")
    thumb = Thumb(phone)
    thumb.tap("#stakes [data-do=got]")
    for field in ("f0", "f1"):
        thumb.tap(f"#got-{field}")
        phone.locator(f"#got-{field}").fill("41' 0-1/2\"")
    thumb.tap(phone.locator("#stakes .choices button").first)
    phone.wait_for_selector("html:not([data-panel])")
    wait_for(phone, "computed")
    assert thumb.taps <= MOST_TAPS_FOUND, thumb.taps
    assert phone.locator("#found-chord-0").input_value() == "41' 0-1/2\""
    expect(phone.locator("#stakes")).to_contain_text("41' 0-1/2\"")
    held = phone.locator("#found-hold input:checked").get_attribute("value")
    found = {"chord": ["41' 0-1/2\"", "41' 0-1/2\""], "tape": "level", "hold": held}
    told = answering({"arc": {"chord": "41 ft", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face",
                      "tolerance": "1/2 in", "found": found})  # fmt: skip
    first = next(card for card in told["cards"] if card["stake"])
    while phone.locator("#stakes .card").get_attribute("data-stake") != first["stake"]:
        done(phone)
    assert measures_of(phone) == [number["shown"] for number in first["numbers"]]


# How many words a card has without its drawing: what stands in elements of its own are words of their own.
WORDS = """() => {
  const walker = document.createTreeWalker(document.querySelector("#stakes .card"), NodeFilter.SHOW_TEXT);
  let text = "";
  while (walker.nextNode()) if (!walker.currentNode.parentElement.closest("svg")) text += ` ${walker.currentNode.data}`;
  return text.split(/\\s+/).filter((word) => /[a-zA-Z0-9]/.test(word)).length;
}"""


@pytest.mark.parametrize("method", EVERYDAY)
def test_each_card_is_whole_without_scrolling(phone: Page, method: str) -> None:
    made = job(method)
    open_panel(phone, "jobs")
    phone.locator("#clear").tap()
    phone.wait_for_selector("html:not([data-panel])")
    lay_out(phone, fields_of_job(made))
    told = answering(made)
    assert not told["stops"]
    for one in told["cards"]:
        at_card(phone, one["number"])
        wait_for(phone, "computed")
        whole = phone.evaluate(WHOLE)
        assert all(whole.values()), (one["number"], whole)
        assert phone.evaluate(WORDS) <= MOST_WORDS_CARD, one["number"]
        if one["kind"] == "checks":
            break  # nobody goes on from here with no check read
        phone.locator("#stakes [data-do=done]").tap()


def test_back_goes_back_a_card_a_face_and_a_panel(phone: Page) -> None:
    begin(phone)
    card = phone.locator("#stakes .card")
    done(phone, 2)
    look_at(phone, "checks")
    phone.go_back()
    expect(phone.locator("#face-stakes")).to_be_visible()
    expect(card).to_have_attribute("data-card", "3")
    phone.go_back()
    expect(card).to_have_attribute("data-card", "2")
    phone.go_forward()
    expect(card).to_have_attribute("data-card", "3")
    open_list(phone)
    phone.go_back()
    phone.wait_for_selector("html:not([data-panel])")
    expect(card).to_have_attribute("data-card", "3")
    look_at(phone, "numbers")
    open_panel(phone, "fine")
    phone.go_back()
    expect(phone.locator("#panel-fine")).to_be_hidden()
    expect(phone.locator("#face-numbers")).to_be_visible()
    phone.go_back()
    expect(card).to_have_attribute("data-card", "3")


def open_list(page: Page) -> None:
    page.locator("#card-head").tap()
    expect(page.locator("#stakes .steplist")).to_be_visible()


def test_the_place_is_kept_through_a_reload(phone: Page) -> None:
    begin(phone)
    done(phone, 3)
    reload(phone)
    wait_for(phone, "computed")
    expect(phone.locator("#face-stakes")).to_be_visible()
    expect(phone.locator("#stakes .card")).to_have_attribute("data-card", "4")
    open_list(phone)
    expect(phone.locator("#stakes .steplist .d")).to_have_count(3)
    look_at(phone, "why")
    reload(phone)
    wait_for(phone, "computed")
    expect(phone.locator("#face-why")).to_be_visible()


def test_a_tab_opened_anew_comes_up_at_the_card(phone: Page) -> None:
    begin(phone)
    done(phone, 3)
    other = phone.context.new_page()
    other.goto(re.sub("#.*", "", phone.url))
    wait_for(other, "computed")
    expect(other.locator("#stakes .card")).to_have_attribute("data-card", "4")
    other.close()


def test_done_can_be_undone(phone: Page) -> None:
    begin(phone)
    done(phone, 2)
    expect(phone.locator("#undo-said")).to_have_text(say("page.undo_done"))
    phone.locator("#undo-take").tap()
    expect(phone.locator("#undo")).to_be_hidden()
    look_at(phone, "numbers")
    look_at(phone, "stakes")
    wait_for(phone, "computed")
    expect(phone.locator("#stakes .card")).to_have_attribute("data-card", "2")
    open_list(phone)
    expect(phone.locator("#stakes .steplist .d")).to_have_count(1)


def numbers_of_all(page: Page) -> dict[int, list[str]]:
    """The numbers of every card, as the list of all steps leads to them."""
    count = int(re.findall(r"\d+", page.locator("#card-head").inner_text())[-1])
    found = {}
    for number in range(1, count + 1):
        open_list(page)
        page.locator(f"#stakes .steplist [data-step='{number}']").tap()
        at_card(page, number)
        wait_for(page, "computed")
        found[number] = measures_of(page)
    return found


def test_something_else_got_changes_the_later_cards_only(phone: Page) -> None:
    """A middle stake set 1/4 in too far out, within the tolerance: what is set from it comes back onto the arc."""
    begin(phone)
    before = numbers_of_all(phone)
    told = answering({"arc": {"chord": "41 ft", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face",
                      "tolerance": "1/2 in"})  # fmt: skip
    first = next(card for card in told["cards"] if card["stake"])
    open_list(phone)
    phone.locator(f"#stakes .steplist [data-step='{first['number']}']").tap()
    phone.locator("#stakes [data-do=got]").tap()
    fields = phone.locator("#stakes .got input")
    expect(fields.first).not_to_have_value("")  # prefilled with what this card says
    rise = next(
        fields.nth(place) for place in range(fields.count()) if fields.nth(place).input_value().startswith("5'")
    )
    rise.tap()
    Thumb(phone).type("Clear 5 feet 3 1/4 Done")
    expect(rise).to_have_value("5' 3-1/4\"")
    phone.locator("#stakes [data-do=use-got]").tap()
    phone.wait_for_selector("html:not([data-panel])")
    wait_for(phone, "computed")
    after = numbers_of_all(phone)
    assert {n: after[n] for n in after if n < first["number"]} == {n: before[n] for n in before if n < first["number"]}
    changed = [number for number in after if after[number] != before.get(number)]
    assert [number for number in changed if number > first["number"]], "the later ones come back onto the arc"
    assert before.keys() == after.keys()


def test_a_stop_shows_its_button_and_using_it_settles_it(phone: Page) -> None:
    begin(phone)
    pond = {
        "ground-0-name": "pond",
        "ground-0-stops": "feet",
        "ground-0-outline": "8 ft, -9 ft; 33 ft, -9 ft; 33 ft, 0.5 ft; 8 ft, 0.5 ft",
    }
    shed = {**pond, "ground-0-name": "shed", "ground-0-stops": "tape"}
    lay_out(phone, {**WALK, **shed, "method": "rule", "levels": "3"})
    expect(phone.locator("#stakes .stopped")).to_be_visible()
    expect(phone.locator("#status")).to_have_text(say("page.state_stop"))
    expect(phone.locator("#stakes [data-do=done]")).to_have_count(0)
    way = phone.locator("#stakes .thumb button")
    expect(way).to_have_attribute("data-do", "fill")
    method = json.loads(way.get_attribute("data-fill") or "{}")["method"]
    way.tap()
    wait_for(phone, "computed")
    expect(phone.locator("#stakes .stopped")).to_have_count(0)
    expect(phone.locator("#stakes .card")).to_have_attribute("data-card", "1")
    expect(phone.locator(f"input[name=method][value={method}]")).to_be_checked()


def test_a_stop_that_is_a_question_leads_to_it(phone: Page) -> None:
    begin(phone)
    choose(phone, "drawn_to", "unsure")
    close_panel(phone)
    look_at(phone, "stakes")
    wait_for(phone, "computed")
    phone.locator("#stakes .thumb button").tap()
    expect(phone.locator("#panel-line")).to_be_visible()
    choose(phone, "drawn_to", "face")
    phone.locator("#panel-line .btn.first").tap()
    look_at(phone, "stakes")
    wait_for(phone, "computed")
    expect(phone.locator("#stakes .stopped")).to_have_count(0)


def words_on(page: Page, place: str) -> int:
    """How many words stand on screen, those that only a screen reader finds left out."""
    return int(page.evaluate("""(place) => {
      const walker = document.createTreeWalker(document.querySelector(place), NodeFilter.SHOW_TEXT);
      let text = "";
      while (walker.nextNode()) {
        const { parentElement: parent } = walker.currentNode;
        if (!parent.checkVisibility() || parent.closest(".unseen, style, title, desc")) continue;
        text += ` ${walker.currentNode.data}`;
      }
      return text.split(/\\s+/).filter((word) => /[a-zA-Z0-9]/.test(word)).length;
    }""", place))  # fmt: skip


def test_empty_numbers_have_few_words_and_nothing_red(open_page: Callable[..., Page]) -> None:
    page = open_page(360, SCREEN, **PHONE)
    wait_for(page, "computed")
    assert words_on(page, "body") <= MOST_WORDS_EMPTY
    expect(page.locator("[data-state=wrong], [aria-invalid=true], [data-bad]")).to_have_count(0)
    expect(page.locator("#ask-bar")).to_be_hidden()
    type_in(page, "arc-chord", "41 ft")
    wait_for(page, "computed")
    expect(page.locator("[data-state=wrong], [aria-invalid=true], [data-bad]")).to_have_count(0)
    show_example(page)
    radius = answer(dict(DEMO))["arc_shown"]["radius"]  # type: ignore[index]
    assert page.locator("#arc-radius").get_attribute("placeholder") == radius
