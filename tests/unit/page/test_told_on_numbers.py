"""What the numbers face tells beside its rows: what of the example still stands, what the stakes follow, which edge."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.words import say

EXAMPLE = {"unit": "ft-in", "start": "ends", **fields_of_job(dict(DEMO))}
PLAIN = {"unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face"}
FOUND = {"found-chord-0": "38' 0-3/4\"", "found-chord-1": "38' 0-3/4\"", "found-tape": "level", "found-hold": "radius"}


def told(call: str, fields: dict[str, str]) -> dict[str, Any]:
    asked = {"fields": fields, "focus": "", "short": False, "drawn": False, "panel": ""}
    made: dict[str, Any] = json.loads(handle(call, json.dumps(asked)))
    return made


def fills(html: str) -> list[dict[str, str]]:
    return [json.loads(unescape(text)) for text in re.findall(r'data-fill="([^"]*)"', html)]


def text_of(html: str) -> str:
    return " ".join(unescape(re.sub("<[^>]*>", "", html)).split())


# --- the example


def test_the_example_as_it_is_says_nothing_of_itself() -> None:
    assert told("numbers", EXAMPLE)["of_example"] == ""
    tried = {
        **EXAMPLE,
        "done": "1 2",
        "ticket": "B-4417",
        "method": "halving",
        "got-0-stake": "M",
        "got-0-sagitta": "5'",
    }
    assert told("numbers", tried)["of_example"] == ""


def test_an_edited_example_says_what_of_it_still_stands_and_lets_it_go() -> None:
    edited = {**EXAMPLE, "arc-chord": "41 ft", "title": "Our own walk"}
    html = told("numbers", edited)["of_example"]
    assert "pond, west bed, 2 more" in text_of(html)
    for name in ("ends", "hand", "line", "tolerance"):
        assert say(f"numbers.of_example_{name}") in text_of(html)
    assert say("numbers.of_example_title") not in text_of(html)
    (gone,) = fills(html)
    left = {**edited, **gone}
    assert {name for name, text in left.items() if text} - {"unit", "start"} == {"arc-chord", "arc-sagitta", "title"}
    assert told("numbers", left)["of_example"] == ""


def test_what_is_the_examples_by_chance_is_somebodys_own() -> None:
    same = {**PLAIN, "tolerance": "1/4 in", "levels": "3", "driven": "hub"}
    assert {name: EXAMPLE.get(name) for name in ("tolerance", "levels", "side")} == {
        name: same[name] for name in ("tolerance", "levels", "side")
    }
    assert told("numbers", same)["of_example"] == ""


# --- the chord found


def test_what_the_stakes_follow_is_told_once_the_chord_found_is_taken() -> None:
    fields = {**PLAIN, **FOUND}
    shown = answering(job_of_fields(fields))["arc_shown"]
    follows = text_of(told("numbers_later", fields)["follows"])
    assert shown["chord"] == "38' 0-3/4\"" in follows
    assert str(shown["sagitta"]) in follows and str(shown["radius"]) in follows and shown["sagitta"] != "5' 3\""


@pytest.mark.parametrize("change", [
    {"found-chord-0": "", "found-chord-1": "", "found-hold": "", "found-tape": ""},
    {"found-chord-0": "38' 0-1/8\"", "found-chord-1": "38 ft", "found-hold": ""},
    {"found-hold": ""},
    {"arc-sagitta": ""},
])  # fmt: skip
def test_nothing_is_told_where_they_follow_the_drawing(change: dict[str, str]) -> None:
    """None found, or as drawn; nothing chosen to be held, which is a stop; no arc at all."""
    assert told("numbers_later", {**PLAIN, **FOUND, **change})["follows"] == ""


# --- a centerline with a width

MIDDLE = {**PLAIN, "drawn_to": "centre", "width": "5' 0-1/4\""}


def edges(fields: dict[str, str]) -> tuple[dict[str, str], list[dict[str, str]]]:
    made = told("numbers", fields)
    return made["lines"]["line"], fills(made["echoes"].get("offset", ""))


def test_of_a_width_about_a_centerline_the_edge_is_asked() -> None:
    line, answers = edges(MIDDLE)
    assert (line["state"], line["asked"]) == ("open", say("numbers.edge_asked"))
    assert told("numbers", MIDDLE)["ask"] == "line"
    assert [answer["toward"] for answer in answers] == ["centre", "outside", ""]
    half = (5 + 0.25 / 12) / 2 * 0.3048
    for answer, out in zip(answers, (-half, half, 0.0), strict=True):
        said = {**MIDDLE, **answer}
        line, again = edges(said)
        assert line["state"] == "said" and again == []
        arcs = answering(job_of_fields(said))
        assert arcs["staked"]["radius"] - arcs["arc"]["radius"] == pytest.approx(out, abs=1e-7)


@pytest.mark.parametrize("change", [
    {"width": ""}, {"drawn_to": "face"}, {"offset": "1 ft", "toward": "outside"}, {"width": "five"},
])  # fmt: skip
def test_no_edge_is_asked_where_there_is_no_choice(change: dict[str, str]) -> None:
    line, answers = edges({**MIDDLE, **change})
    assert line["state"] != "open" and answers == []


# --- other names


def test_the_mid_ordinates_other_names_are_told_in_its_help() -> None:
    tell = told("numbers", PLAIN)["tell"]
    for name in ("rise", "sagitta", "middle ordinate"):
        assert name in text_of(tell["arc-sagitta"])
        assert all(name not in text_of(text) for field, text in tell.items() if field != "arc-sagitta")


# --- an offset without its side


OFF = {**PLAIN, "drawn_to": "face", "offset": "2'"}


def test_an_offset_without_its_side_asks_for_it_beside_the_field_and_stops_nothing() -> None:
    made, later = told("numbers", OFF), told("numbers_later", OFF)
    line = made["lines"]["line"]
    assert (line["state"], line["asked"]) == ("open", say("numbers.side_asked"))
    assert made["ask"] == later["ask"] == "line"
    assert made["state"] == later["state"] == {"sign": "ask", "text": say("numbers.state_open", count=1)}
    assert "line" not in later["lines"]  # what the keystroke said stays
    assert [error["id"] for error in later["errors"]] == ["toward"]  # and the choice says what it waits for
    answers = fills(made["echoes"]["offset"])
    assert answers == [{"toward": "centre"}, {"toward": "outside"}]
    for answer, out in zip(answers, (-2 * 0.3048, 2 * 0.3048), strict=True):
        said = {**OFF, **answer}
        assert told("numbers", said)["lines"]["line"]["state"] == "said"
        assert fills(told("numbers", said)["echoes"]["offset"]) == []
        arcs = answering(job_of_fields(said))
        assert arcs["staked"]["radius"] - arcs["arc"]["radius"] == pytest.approx(out, abs=1e-9)


@pytest.mark.parametrize("offset", ["0", "two"])
def test_no_side_is_asked_of_no_offset(offset: str) -> None:
    made = told("numbers", {**OFF, "offset": offset})
    assert fills(made["echoes"].get("offset", "")) == []
    assert made["lines"]["line"]["state"] != "open"


# --- pins set off as far as a board is thick


PINS = {**PLAIN, "drawn_to": "face", "offset": "1-1/2 in", "toward": "outside", "diameter": "3/4 in"}


def test_of_pins_as_far_off_as_a_board_is_thick_their_edge_is_told_and_their_centers_offered() -> None:
    """A board of 2 in is 1-1/2 in dressed (PS 20, American Softwood Lumber Standard), and half a pin is 3/8 in."""
    echo = told("numbers", PINS)["echoes"]["offset"]
    assert say("numbers.pins_edge") in text_of(echo) and fills(echo) == [{"offset": '1-7/8"'}]
    set_so = {**PINS, **fills(echo)[0]}
    assert fills(told("numbers", set_so)["echoes"]["offset"]) == []
    arcs = answering(job_of_fields(set_so))
    assert arcs["staked"]["radius"] - arcs["arc"]["radius"] == pytest.approx(1.875 * 0.0254, abs=1e-12)
    odd = fills(told("numbers", {**PINS, "diameter": "5/8 in"})["echoes"]["offset"])  # no mark of its tape
    arcs = answering(job_of_fields({**PINS, **odd[0]}))
    assert arcs["staked"]["radius"] - arcs["arc"]["radius"] == pytest.approx(1.8125 * 0.0254, abs=1e-9)


@pytest.mark.parametrize(("changes", "asked"), [
    ({"diameter": ""}, True), ({"driven": "hub", "diameter": ""}, False), ({"offset": "2 in"}, False),
])  # fmt: skip
def test_no_centers_are_offered_where_none_can_be_told(changes: dict[str, str], asked: bool) -> None:
    echo = told("numbers", {**PINS, **changes})["echoes"]["offset"]
    assert fills(echo) == [] and (say("numbers.pins_edge") in text_of(echo)) is asked
