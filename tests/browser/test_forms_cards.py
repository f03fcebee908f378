"""The forms' cards on a phone: after the layout's last one, one tap each, whole, back once a number changes."""

from __future__ import annotations

from typing import Any

import pytest
from playwright.sync_api import Page, expect

from bowstring import answering
from bowstring.faces.passes import count, layout_cards
from bowstring.faces.stakes import stakes_html
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES, TAGS
from page_acting import PATIENCE, choose, close_panel, look_at, reload, type_in, wait_for
from slab_jobs import ALL, METRIC, WALK
from whole_card import WHOLE, torn

SHORT = {"levels": "1", "width": "5 ft", "slab-thickness": "4 in", "slab-base": "4 in", "grade-slope": "2"}
KINDS = ["hubs", "dig", "base", "line", "stakes", "boards", "tops", "pour"]
FILLED: dict[str, Any] = {
    "arc": {"radius": "10 ft", "chord": "20 ft"},
    "drawn_to": "face",
    "side": "left",
    "grade": {"slope": 1, "high": "A", "low": "outside"},
    "board": {"level": "clear"},
}
JOBS: dict[str, dict[str, Any]] = {
    "walk": {**WALK, "slab": {**WALK["slab"], "base": "4 in", "footing_width": "12 in", "footing_depth": "8 in"}},
    "tapered": {**ALL, "grade": WALK["grade"]},
    "metric": {**METRIC, "side": "right"},
    "far hubs": {**WALK, "offset": "8 ft", "toward": "outside", "driven": "hub"},
    "filled": {**FILLED, "slab": {"thickness": "4 in", "base": "4 in", "fills": True}},
    "rounded end": {**FILLED, "slab": {"thickness": "4 in", "base": "4 in", "fills": True, "sides": "15 ft"}},
    "both ends, off": {
        **FILLED,
        "offset": "3 ft",
        "toward": "outside",
        "driven": "hub",
        "slab": {"thickness": "4 in", "fills": True, "sides": "15' 3-5/8\"", "both_ends": True},
    },
    "both ends": {
        **FILLED,
        "slab": {"thickness": "4 in", "base": "4 in", "fills": True, "sides": "15' 3-5/8\"", "both_ends": True},
    },
    "against a building": {
        **FILLED,
        "slab": {"thickness": "4 in", "base": "4 in", "fills": True, "sides": "15 ft", "back": "against"},
    },
    "nothing bends": {
        **FILLED,
        "arc": {"radius": "7 ft", "chord": "14 ft"},
        "slab": {"thickness": "5 in", "base": "4 in", "fills": True, "sides": "19 ft"},
    },
    "filled, near": {
        **FILLED,
        "offset": "6 in",
        "toward": "outside",
        "driven": "hub",
        "slab": {"thickness": "4 in", "base": "4 in", "fills": True},
    },
    "rounded end, near": {
        **FILLED,
        "offset": "6 in",
        "toward": "outside",
        "driven": "hub",
        "slab": {"thickness": "4 in", "base": "4 in", "fills": True, "sides": "15 ft"},
    },
    "both ends low": {
        **FILLED,
        "grade": {"slope": 1, "high": "A", "low": "inside"},
        "slab": {"thickness": "4 in", "base": "4 in", "fills": True, "sides": "12 ft", "both_ends": True},
    },
    "one old end": {**WALK, "slab": {**WALK["slab"], "base": "4 in", "at_A": "against"}},
    "between old walks": {
        **ALL,
        "grade": WALK["grade"],
        "board": {},
        "slab": {**ALL["slab"], "at_A": "against", "at_B": "against"},
    },
    "no slope": {key: value for key, value in WALK.items() if key != "grade"},
}


@pytest.fixture
def short(page: Page) -> Page:
    """The example with one round of halving and a slab."""
    for name, text in SHORT.items():
        type_in(page, name, text)
    choose(page, "edge", "outside")
    choose(page, "grade-high", "B")
    choose(page, "grade-low", "inside")
    close_panel(page)
    page.set_viewport_size({"width": 360, "height": 740})
    look_at(page, "stakes")
    wait_for(page, "computed")
    return page


def on_card(page: Page, number: int) -> None:
    """Wait for a card by its running number."""
    page.wait_for_selector(f"#stakes .card[data-card='{number}']", timeout=PATIENCE)
    wait_for(page, "computed")
    page.evaluate("delete document.documentElement.dataset.turned")  # a second tap so soon would be a glove's


def walk_to_forms(page: Page) -> int:
    """Do every card of the layout; return how many they are."""
    number = 1
    while page.locator("#stakes .card").get_attribute("data-kind") != "checks":
        page.locator("#stakes .thumb [data-do=done]").click()
        number += 1
        on_card(page, number)
    page.locator("#stakes .thumb [data-do=skip]").click()
    on_card(page, number + 1)
    return number


def kind(page: Page) -> str:
    return page.locator("#stakes .card").get_attribute("data-kind") or ""


def test_the_forms_are_walked_after_the_layout_and_stay_done(short: Page) -> None:
    layout = walk_to_forms(short)
    for place, what in enumerate(KINDS, 1):
        on_card(short, layout + place)
        assert kind(short) == f"form_{what}"
        expect(short.locator("#card-head")).to_have_text(f"Forms {place} of {len(KINDS)}")
        assert short.evaluate(WHOLE) == dict.fromkeys(("top", "low", "wide", "thumb", "tabs", "still"), True)
        expect(short.locator("#stakes .pips i.d")).to_have_count(place - 1)
        if place < len(KINDS):
            short.locator("#stakes .thumb [data-do=done]").click()
    short.locator("#stakes .thumb [data-do=done]").click()
    short.wait_for_selector("#face-paper:not([hidden])")
    reload(short)
    wait_for(short, "computed")
    look_at(short, "stakes")
    on_card(short, layout + len(KINDS))
    expect(short.locator("#stakes .pips i.d")).to_have_count(len(KINDS))


def test_a_number_of_the_slab_that_changes_brings_back_the_cards_that_have_it(short: Page) -> None:
    layout = walk_to_forms(short)
    for place in range(1, 4):
        short.locator("#stakes .thumb [data-do=done]").click()
        on_card(short, layout + place + 1)
    type_in(short, "slab-base", "6 in")
    close_panel(short)
    look_at(short, "stakes")
    on_card(short, layout + KINDS.index("base") + 1)
    expect(short.locator("#stakes .steps .changed")).to_have_text(say("forming.changed"))
    expect(short.locator("#stakes .pips i.d")).to_have_count(2)
    short.locator("#stakes .thumb [data-do=done]").click()
    on_card(short, layout + KINDS.index("line") + 1)
    expect(short.locator("#stakes .card")).not_to_contain_text(say("forming.changed"))
    expect(short.locator("#stakes .pips i.d")).to_have_count(3)


def test_back_takes_a_card_of_the_forms_back_and_undo_puts_it_there(short: Page) -> None:
    layout = walk_to_forms(short)
    short.locator("#stakes .thumb [data-do=done]").click()
    on_card(short, layout + 2)
    short.locator("#stakes .thumb [data-do=back]").click()
    on_card(short, layout + 1)
    expect(short.locator("#stakes .pips i.d")).to_have_count(0)
    short.locator("#stakes .thumb [data-do=back]").click()
    on_card(short, layout)
    assert kind(short) == "checks"


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_card_is_whole_without_scrolling(spanish: Page, language: str) -> None:
    look_at(spanish, "stakes")
    wait_for(spanish, "computed")
    spanish.evaluate("tag => (document.documentElement.lang = tag)", TAGS[language])
    found = {}
    for name, job in JOBS.items():
        speak(language)
        try:
            told = answering(job)  # type: ignore[arg-type]
            first = len(layout_cards(told))
            assert count(told) - first >= 6
            old = [f"{card['kind']}-00000000" for card in told["form_cards"]]  # each says that it changed, too
            cards = [stakes_html(told, number, (), None, old) for number in range(first + 1, count(told) + 1)]
        finally:
            speak(LANGUAGES[0])
        found[name] = torn(spanish, cards)
    spanish.evaluate("tag => (document.documentElement.lang = tag)", TAGS["spanish"])
    assert {name: cards for name, cards in found.items() if cards} == {}
