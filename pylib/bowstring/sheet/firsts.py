"""What is done before the first stake, each in a line or two: a row of boxes to tick on a sheet of paper."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.geometry.plane import Point
from bowstring.job.terms import OTHER
from bowstring.report.alone import edges_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow
from bowstring.report.places import far_back
from bowstring.sheet.facing import away_hand, curve_hand
from bowstring.words import is_said, say


@dataclass(frozen=True)
class First:
    """A step that sets no stake, by its number in the answer."""

    number: int
    text: str


def firsts(answer: Answer) -> list[First]:
    """Return the steps of an answer that set no stake: the ends, what proves them, the string, pegs, the center."""
    first = next((step["number"] for step in answer["steps"] if step["stake"] is not None), 0)
    return [First(step["number"], _in_turn(answer, step, first)) for step in answer["steps"] if step["stake"] is None]


def _in_turn(answer: Answer, step: StepRow, first: int) -> str:
    """The step in short; of one that comes after stakes, after which: their table stands under it on the sheet."""
    told, number = _short(answer, step), step["number"]
    return say("paper.first_after", before=number - 1, told=told) if 0 < first < number else told


STRINGS = ("string", "string_up", "string_taped", "ends_taped", "string_middle")
"""Kinds of cards on which the string from A to B is stretched, or what is taped where none is."""


def _told(answer: Answer, step: StepRow) -> str:
    """The kind of a step as its card tells it: a string that no stake is set by isn't stretched, as long as no forms
    are squared off it."""
    if step["kind"] != "string":
        return step["kind"]
    kinds = [card["kind"] for card in answer["cards"] if step["number"] in card["steps"]]
    strung = [kind for kind in kinds if kind in STRINGS]
    if not strung:
        edges = edges_of(answer)
        later = edges is not None and edges["edge"] == "fills" and not answer["offset"]
        return step["kind"] if not kinds else "no_string_yet" if later else "no_string"
    return strung[0] if strung[0] != "string_middle" else step["kind"]


def _landmarks(answer: Answer, step: StepRow) -> dict[str, str]:
    """The drawn line's ends with what they are at, where the stakes have ends of their own."""
    if not answer["offset"] or not step["kind"].startswith(("have_", "set_")):
        return {}
    ends, names = answer["ends"], step["names"]
    told = (("start", ends["A"]), ("end", ends["B"]))
    return {
        part: say("paper.end", name=names[part], landmark=landmark)
        for part, landmark in told
        if landmark and part in names
    }


def back_shown(answer: Answer, step: StepRow) -> str:
    """How far back on a straight its mark is set, empty for a step that sets none."""
    at = {mark["name"]: Point(mark["x"], mark["y"]) for mark in answer["marks"]}
    return far_back(at, step["marks"], answer["unit"] != "m")


def _short(answer: Answer, step: StepRow) -> str:
    """The step in short, or its own sentence where there is no shorter one."""
    key = f"paper.first.{_told(answer, step)}"
    if not is_said(key):
        return step["text"]
    shown = [measure["text"] for measure in step["measures"]]
    side = answer["side"]
    values = {
        **step["names"],
        **_landmarks(answer, step),
        **{f"m{number}": text for number, text in enumerate(shown)},
        "rest": shown[-1] if shown else "",
        "hand": curve_hand(answer),
        "back": back_shown(answer, step),
        "away": away_hand(answer),
        "bend_hand": say(f"paper.{step['names']['bend']}") if "bend" in step["names"] else "",
        # seen along the straight, away from S, the curve turns to the other hand than it lies on from A to B
        "turn": say(f"paper.{OTHER[side]}") if side else say("paper.hand_unknown"),
    }
    b = answer["lined"]["b_from_a"] if answer["lined"] and step["kind"].startswith("have_ends") else ""
    return f"{say(key, **values)} {b}".rstrip()
