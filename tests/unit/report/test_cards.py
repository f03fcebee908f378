"""The cards of work: every kind of step has one, in few words, with its own numbers and on the true hand."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.report.card_table import AS_GOT, PARTS
from bowstring.report.cards import TAKEN
from bowstring.report.caution import STOPS
from bowstring.report.ways_out import SETTLES
from bowstring.words import catalogue
from card_jobs import JOBS, told
from helping import about, answer_to
from unit.report.test_stops import PLAIN as STOPPED_PLAIN
from unit.report.test_stops import STOPPED

MOST = 14
NO_STEPS = {"got_short", "back_short", "corner_hand", "onto_first", "onto_next", "stands_alone",
            "stake_got_alone", "far_check"}  # fmt: skip
"""Sentences about a step that are no step's own."""

BESIDE = ("locate", "checks", "board")


def words(text: str) -> int:
    return sum(1 for part in text.split() if re.search(r"\w", part))


def is_said_in_few_words(card: Mapping[str, Any]) -> bool:
    """Whether a card of the forms has a short sentence, two numbers at the most, and a short word for each."""
    texts = [
        card["text"],
        *(one["label"] for one in card["numbers"]),
        *([card["right"]["text"]] if card["right"] else []),
    ]
    return len(card["numbers"]) <= 2 and words(card["text"]) > 1 and all(0 < words(text) <= MOST for text in texts)


def test_every_kind_of_step_has_its_card() -> None:
    """A step can't be written down without a sentence: so the sentences are all kinds that there are."""
    messages = catalogue()
    kinds = {key.removeprefix("step.") for key in messages if key.startswith("step.")} - NO_STEPS
    assert kinds == set(PARTS) | set(AS_GOT)
    assert all(f"card.{kind}" in messages for kind in AS_GOT)
    for kind, parts in PARTS.items():
        for part in parts:
            assert f"card.{part.text or kind}" in messages, kind
            assert not part.right or part.right == "square" or f"card.right.{part.right}" in messages, kind
            for label, _source in part.numbers:
                assert f"card.label.{label}" in messages, (kind, label)


def test_every_kind_of_card_was_made_here() -> None:
    seen = {card["kind"] for name in JOBS for card in told(name)["cards"]}
    assert seen == (set(PARTS) - set(TAKEN)) | set(AS_GOT) | set(BESIDE)


@pytest.mark.parametrize("name", JOBS)
def test_a_card_is_said_in_few_words(name: str) -> None:
    for card in told(name)["cards"]:
        with about(card["number"], card["kind"], card["text"]):
            assert 1 < words(card["text"]) <= MOST
            assert all(words(one["label"]) <= MOST for one in card["numbers"])
            assert len(card["numbers"]) <= 2
            assert card["right"] is None or words(card["right"]["text"]) <= MOST


@pytest.mark.parametrize("name", JOBS)
def test_a_card_has_the_numbers_of_its_step_and_leaves_none_out(name: str) -> None:
    answer = told(name)
    cards, steps = answer["cards"], answer["steps"]
    assert [card["number"] for card in cards] == list(range(1, len(cards) + 1))
    assert sorted({number for card in cards for number in card["steps"]}) == [step["number"] for step in steps]
    for step in steps:
        shown = [one["shown"] for one in step["measures"]]
        mine = [card for card in cards if step["number"] in card["steps"] and card["kind"] not in BESIDE]
        told_ = [one["shown"] for card in mine for one in card["numbers"]]
        with about(step["kind"], told_, shown):
            allowed = {*shown, step["deflection"]}
            assert set(told_) <= allowed or len({n for card in mine for n in card["steps"]}) > 1
            right = [card["right"]["shown"] for card in mine if card["right"]]
            left_out = set(shown) - set(told_) - set(right)
            # plunged, an instrument shows the deflection; on the string an offset is none
            assert not left_out or step["kind"] == "sight_back" or step["kind"].startswith("parallel_over")


def test_the_card_of_a_stake_by_halving() -> None:
    """Chord 38 ft, mid-ordinate 5 ft 3 in: radius 37 ft 0-1/8 in. The half string is 19 ft, the short chord the root
    of 19² + 5.25²: 19.712 ft."""
    cards = {card["stake"]: card for card in told("halving")["cards"]}
    m, q1 = cards["M"], cards["Q1"]
    assert m["text"] == "String A to B. From its midpoint, square off to the LEFT. Drive M."
    assert [(one["disc"], one["label"], one["shown"]) for one in m["numbers"]] == [
        (1, "string's midpoint, from A or B", "19' 0\""),
        (2, "square off to the LEFT, facing B", "5' 3\""),
    ]
    assert m["right"]["shown"] == "19' 8-1/2\"" and "Tape the offset again." in m["right"]["more"]
    assert (q1["where"], q1["title"], q1["main"]) == ("round 2, Q1", "Q1, on A to M", "1' 4\"")
    assert any("Cap steel stakes" in note for note in m["notes"]) and not q1["notes"]


def test_the_first_card_asks_for_the_ticket_and_the_last_for_the_checks() -> None:
    cards = told("a board")["cards"]
    first, checks, board = cards[0], cards[-2], cards[-1]
    assert "811" in first["text"] and "Ticket in?" in first["text"] and "working days" in " ".join(first["notes"])
    assert (checks["kind"], board["kind"]) == ("checks", "board")
    assert board["numbers"][0]["shown"] == told("a board")["on_line"]["overrun"]["length_shown"]
    assert told("halving")["cards"][-1]["kind"] == "checks"


@pytest.mark.parametrize("method", ["halving", "ordinates", "tangent", "produced"])
def test_the_string_has_a_card_where_it_is_worked_from(method: str) -> None:
    assert "string" in [card["kind"] for card in told(method)["cards"]]


@pytest.mark.parametrize("method", ["tapes", "angles", "coordinates", "centre"])
def test_no_string_is_asked_for_that_nobody_works_from(method: str) -> None:
    cards = told(method)["cards"]
    assert "string" not in [card["kind"] for card in cards]
    (string,) = [step["number"] for step in told(method)["steps"] if step["kind"] == "string"]
    assert any(string in card["steps"] for card in cards)


SIDES = re.compile(r"\b(LEFT|RIGHT|left|right)\b")
OTHER = {"LEFT": "RIGHT", "RIGHT": "LEFT", "left": "right", "right": "left"}


def mirrored(value: Any) -> Any:
    if isinstance(value, str):
        return SIDES.sub(lambda found: OTHER[found[0]], value)
    if isinstance(value, Mapping):
        return {key: mirrored(one) for key, one in value.items() if key != "right"} | (
            {"right": mirrored(value["right"])} if "right" in value else {}
        )
    return [mirrored(one) for one in value] if isinstance(value, list) else value


@pytest.mark.parametrize("name", JOBS)
def test_every_hand_turns_with_the_curve_s(name: str) -> None:
    left, right = told(name)["cards"], told(name, side="right")["cards"]
    assert mirrored(left) == right
    assert re.search("LEFT|RIGHT", str(left))


def test_a_slope_stands_beside_its_number() -> None:
    card = next(card for card in told("on a slope")["cards"] if card["stake"] == "M")
    half = card["numbers"][0]
    step = next(step for step in told("on a slope")["steps"] if step["stake"] == "M")
    assert half["shown"] == step["measures"][0]["shown"] and step["measures"][0]["slope_shown"] in half["slope"]


def test_landmarks_stand_on_the_card_that_finds_them() -> None:
    cards = told("halving", ends={"A": "lamp post", "B": "gate pier"})["cards"]
    (card,) = [card for card in cards if "A: lamp post" in card["notes"]]
    assert card["kind"] == "have_ends" and "B: gate pier" in card["notes"]


def test_every_stop_has_its_way_out() -> None:
    assert SETTLES.keys() == STOPS


@pytest.mark.parametrize("changes", STOPPED.values(), ids=STOPPED)
def test_the_ways_out_stand_in_the_order_of_the_stops(changes: dict[str, Any]) -> None:
    answer = answer_to({**STOPPED_PLAIN, **changes})
    assert [way["stop"] for way in answer["ways_out"]] == answer["stops"] != []
    for way in answer["ways_out"]:
        assert words(way["text"]) <= MOST and words(way["button"]) <= 8
        assert way["fields"] or way["panel"] is not None


def test_a_method_that_cant_be_is_changed_for_the_advised_one() -> None:
    beds = {**DEMO, "method": "ordinates"}
    answer = answer_to(beds)
    (way,) = answer["ways_out"]
    assert way["fields"]["method"] == answer["advice"]["method"] and way["panel"] is None
    again = answer_to({**beds, **way["fields"]})
    assert not again["stops"]


def test_after_another_chord_was_taped_its_card_tells_both_and_must_read_neither() -> None:
    job = {key: value for key, value in DEMO.items() if key != "found"} | {"arc": {"chord": "30 ft", "sagitta": "3 ft"}}

    def card(reads: str) -> dict[str, Any]:
        found = {"chord": [reads, reads], "tape": "level", "hold": "radius", "sure": True}
        return next(one for one in answer_to({**job, "found": found})["cards"] if one["kind"] == "have_ends")

    other = card("30 ft 0-1/2 in")
    assert "Drawing 30' 0\". Taped: 30' 0-1/2\"." in other["notes"]
    assert [one["label"] for one in other["numbers"]] == ["A to B, as taped"]
    same = card("30 ft")
    assert [one["label"] for one in same["numbers"]] == ["A to B must read"] and "taped" not in str(same["notes"])


LABELED = re.compile(r"square off to the .+, (facing|your back to) (\w+)$")
LOOKS = re.compile(r"([Ff]acing|[Bb]ack to|[Ss]tring \w+ to|toward|ordinate) (\w+)")


@pytest.mark.parametrize("name", JOBS)
def test_a_sentence_that_squares_off_can_be_read_one_way_only(name: str) -> None:
    """Who carries a line on past a point faces away from it: then the sentence itself says what he faces, as the
    number's small line does. Otherwise he faces as he tapes."""
    for card in told(name)["cards"]:
        found = [match for one in card["numbers"] if (match := LABELED.search(one["label"]))]
        if not found or "quare off" not in card["text"] or card["kind"].startswith("stake"):
            continue
        looks = LOOKS.findall(card["text"])
        with about(card["kind"], card["text"], found[0].group(0)):
            if re.search(r"Carry|Run (past|the line)|back|At the string's", card["text"]):
                assert looks[-1][0].lower() in ("facing", "back to")
            assert looks[-1][1] == found[0].group(2)
            assert (looks[-1][0].lower() == "back to") == (found[0].group(1) == "your back to")


def test_who_carries_the_line_of_two_hubs_on_faces_the_one_behind() -> None:
    """By hand: A0 at the left end of its chord, the curve above it, the center below. A lies 3 ft farther from the
    center: 3 sin 37.5 past A0, 3 cos 37.5 above the chord. That is to the left of who faces B0."""
    job = {"bowstring": 1, "arc": {"radius": "28 ft", "central_angle": "75"}, "side": "left", "drawn_to": "face",
           "offset": "3 ft", "toward": "outside", "driven": "hub"}  # fmt: skip
    card = next(card for card in answer_to(job)["cards"] if card["kind"].startswith("offset_away"))
    assert [one["shown"] for one in card["numbers"]] == ["1' 9-7/8\"", "2' 4-1/2\""]
    assert card["text"] == "Run the line B0-A0 past A0. Facing B0, square off LEFT. Set A."
