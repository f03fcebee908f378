"""The hand is asked for, never assumed, and every sheet and drawing says it in the same words, or none where it isn't
known."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from html import unescape
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob, answer, read_link, write_link
from bowstring.drawings.mistakes import mistakes_svg
from bowstring.drawings.siteplan import site_plan_svg
from bowstring.faces.numbers import numbers
from bowstring.faces.paper import paper_html
from bowstring.methods.catalogue import BY_NAME
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.sheet.blocks import Drawing
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.drawn import drawn
from bowstring.sheet.html import sheet_html
from bowstring.sheet.outline import outline
from bowstring.sheet.short import short_text
from bowstring.sheet.text import sheet_text
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to

ARC = {"chord": "40 ft", "sagitta": "8 ft"}
STARTS = ("ends", "one-end", "corner", "neither")
HAND = re.compile(r"\b(left|right)\b", re.IGNORECASE)
NO_HAND = re.compile(r"right (angle|tri)\w*|(is|be|are) left|left over|all right", re.IGNORECASE)
"""What has one of the two words and means no side."""


def texts_in(value: object) -> Iterator[str]:
    if isinstance(value, Mapping):
        for inner in value.values():
            yield from texts_in(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from texts_in(inner)
    elif isinstance(value, str):
        yield value


def drawings(told: Any) -> Iterator[str]:
    """Yield every drawing that an answer has."""
    for section in outline(told):
        for block in section.blocks:
            if isinstance(block, Drawing) and block.kind != "mistake":
                yield drawn(block, told, "d")
    yield site_plan_svg(told, id="s")
    for row in told["mistakes"]:
        yield mistakes_svg(told, row["kind"], id="m")


def hands_in(text: str) -> list[str]:
    return HAND.findall(NO_HAND.sub("", re.sub(r"\s+", " ", text)))


def flowing(svg: str) -> str:
    """Return a drawing's words in one line, wherever its lines were broken."""
    return " ".join(re.sub(r"<[^>]*>", " ", svg).split())


@pytest.mark.parametrize("start", STARTS)
@pytest.mark.parametrize("turn", ["left", "right"])
def test_turn_is_what_somebody_walking_in_finds(turn: str, start: str) -> None:
    """On the ground, where y is turned over for a curve on the right: the way from S through A, then on to B."""
    told = answer_to({"arc": ARC, "start": start, "turn": turn, "drawn_to": "face", "levels": 2})
    up = -1 if told["side"] == "right" else 1
    at = {mark["name"]: (mark["x"], up * mark["y"]) for mark in told["marks"]}
    # The straight's direction at A: square to the radius, and for the walker with the curve ahead.
    radius, chord, sagitta = (told["staked"][name] for name in ("radius", "chord", "sagitta"))
    ahead = ((radius - sagitta) / radius, up * chord / 2 / radius)
    if "S" in at:
        back = (at["A"][0] - at["S"][0], at["A"][1] - at["S"][1])
        assert ahead[0] * back[1] == pytest.approx(ahead[1] * back[0], abs=1e-9)
        assert ahead[0] * back[0] + ahead[1] * back[1] > 0
    for name in ("M", "B"):
        cross = ahead[0] * (at[name][1] - at["A"][1]) - ahead[1] * (at[name][0] - at["A"][0])
        assert ("left" if cross > 0 else "right") == turn
    assert told["side"] == {"left": "right", "right": "left"}[turn]
    assert not told["stops"]


def test_side_and_turn_that_say_one_thing_are_taken_and_opposite_ones_are_refused() -> None:
    assert answer_to({"arc": ARC, "side": "left", "turn": "right"})["side"] == "left"
    with pytest.raises(BadJob) as refused:
        answer({"arc": ARC, "side": "left", "turn": "left"})
    assert refused.value.field == "turn"
    with pytest.raises(BadJob):
        answer({"arc": ARC, "turn": "straight on"})


@pytest.mark.parametrize("start", STARTS)
@pytest.mark.parametrize("method", BY_NAME)
def test_a_job_without_a_hand_stops_and_names_none_anywhere(method: str, start: str) -> None:
    marks = [{"mark": "A", "x": 0, "y": 0}, {"mark": "B", "x": "40 ft", "y": 0}]
    job = {"arc": ARC, "method": method, "centre": "reachable", "start": start, "drawn_to": "face",
           "tolerance": "1/4 in", "control": {"marks": marks}, "levels": 2}  # fmt: skip
    told = answer_to(job)
    assert told["side"] is None
    (stop,) = [text for text in told["stops"] if "isn't given" in text]
    assert "walking" in stop if start == "one-end" else "facing B" in stop
    texts = [*texts_in(told), sheet_text(told), sheet_html(told), stakes_csv(told), *drawings(told)]
    assert [text for text in texts if hands_in(text)] == []
    assert "drawing" not in told["stakes"][0]


@pytest.mark.parametrize("start", STARTS)
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("method", ["halving", "ordinates", "tapes"])
def test_every_sheet_and_drawing_says_the_hand_in_the_same_words(method: str, side: str, start: str) -> None:
    told = answer_to({"arc": ARC, "method": method, "start": start, "side": side, "drawn_to": "face", "levels": 2})
    other = {"left": "right", "right": "left"}[side]
    if start == "one-end":
        assert told["hand"] == say("hand.walking", turn=other, hand=side)
    else:
        assert told["hand"] == say("hand.standing", hand=side, turn=other)
    assert told["hand"] in " ".join(sheet_text(told).split())
    (string,) = [step for step in told["steps"] if step["kind"] in ("string", "string_taped")]
    assert told["hand"] in string["text"]
    pictures = [flowing(svg) for svg in drawings(told) if "on your" in flowing(svg)]
    assert pictures and all(told["hand"] in picture for picture in pictures)
    for text in (sheet_text(told), *pictures):
        assert f"on your {other}" not in " ".join(text.split())


def test_three_points_give_the_hand_and_three_sides_do_not() -> None:
    points = {"points": [["0", "0"], ["10 ft", "-3 ft"], ["20 ft", "0"]]}
    by_points = answer_to({"arc": points, "drawn_to": "face"})
    assert by_points["side"] == "right" and by_points["stops"] == []
    assert answer_to({"arc": points, "drawn_to": "face", "turn": "left"})["stops"] == []
    assert any("three points put" in text for text in answer_to({"arc": points, "turn": "right"})["stops"])
    by_sides = answer_to({"arc": {"three_sides": ["10.5 ft", "10.5 ft", "20 ft"]}, "drawn_to": "face"})
    assert by_sides["side"] is None and len(by_sides["stops"]) == 1


@pytest.mark.parametrize("line", ["face", "back", "centre", "center", "flow line", "lip"])
def test_a_job_that_says_its_line_is_not_stopped_for_it(line: str) -> None:
    told = answer_to({"arc": ARC, "side": "left", "drawn_to": line})
    assert told["stops"] == [] and told["drawn_to"] == ("centre" if line == "center" else line)
    for sheet in (sheet_text(told), sheet_html(told)):
        assert say(f"sheet.drawn_to_{told['drawn_to']}") in " ".join(sheet.split())


@pytest.mark.parametrize("line", [{}, {"drawn_to": "unsure"}])
def test_a_job_that_does_not_say_its_line_stops(line: dict[str, str]) -> None:
    (stop,) = answer_to({"arc": ARC, "side": "left", **line})["stops"]
    assert "flow line or lip" in stop


@given(
    start=st.sampled_from(STARTS),
    said=st.sampled_from([{}, {"side": "left"}, {"side": "right"}, {"turn": "left"}, {"turn": "right"},
                          {"side": "left", "turn": "right"}, {"side": "right", "turn": "left"}]),
)  # fmt: skip
def test_a_hand_comes_through_the_form_a_file_and_a_link(start: str, said: dict[str, str]) -> None:
    job: Any = {"arc": ARC, "start": start, "drawn_to": "face", "levels": 1, **said}
    side = said.get("side") or {"left": "right", "right": "left"}.get(said.get("turn", ""))
    for one in (job, json.loads(json.dumps(job)), job_of_fields(fields_of_job(job)), read_link(write_link(job))):
        told = answer(one, whole=False)
        assert told["side"] == side and bool(told["stops"]) == (side is None)
    fields = fields_of_job(job)
    assert {"side", "turn"} & set(fields) == ({("turn" if start == "one-end" else "side")} if side else set())


def test_a_hand_that_the_form_no_longer_shows_is_not_taken() -> None:
    """Somebody says left for both ends, then finds one end only: which way it turns is asked anew."""
    fields = {"arc-chord": "40 ft", "arc-sagitta": "8 ft", "side": "left", "start": "one-end"}
    assert answer(job_of_fields(fields))["side"] is None
    assert answer(job_of_fields({**fields, "turn": "left"}))["side"] == "right"


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("start", ["ends", "one-end"])
def test_wherever_the_curves_hand_is_said_the_turn_stands_beside_it(side: str, start: str, language: str) -> None:
    """An arc that lies left of its chord turns right for who walks from A to B: the first face, the title and the card
    of its string, both sides of paper (its front where few stakes leave room) and the short sheet say both."""
    speak(language)
    other = {"left": "right", "right": "left"}[side]
    said = {"turn": other} if start == "one-end" else {"side": side}
    told = answer({"arc": ARC, "method": "halving", "start": start, "side": side, "drawn_to": "face", "levels": 3})
    hand, turn = (say(f"numbers.hand.{one}") for one in (side, other))
    line = numbers({"arc-chord": "40'", "arc-sagitta": "8'", "start": start, **said})["lines"]["hand"]["text"]
    string = next(card for card in told["cards"] if card["kind"] == "string")
    for text in (line, string["title"], string["text"], short_text(told)):
        assert hand in text and turn in text, text
    paper = " ".join(unescape(re.sub(r"<[^>]+>", " ", paper_html(told))).split())
    assert f"{hand} {say('paper.turns', turn=turn)}" in paper
    assert say("paper.safe_hand", hand=hand, turn=turn) in paper


def test_a_lines_arc_after_an_arc_has_no_straight_to_walk_along() -> None:
    line = [{"straight": "14 ft"}, *({"arc": {"radius": "30 ft", "central_angle": "40"}, "turn": turn}
                                     for turn in ("right", "left"))]  # fmt: skip
    job = {"bowstring": 1, "line": line, "drawn_to": "face", "edge": "left", "width": "5 ft", "start": "one-end"}
    assert answer_to({**job, "at": 2})["hand"] == say("hand.walking", turn="right", hand="left")
    after = answer_to({**job, "at": 3})["hand"]
    assert after == say("hand.walking_arc", turn="left", hand="right") and "straight" not in after
