"""The hand that a step prints is the hand on which its mark lies, for somebody who faces as printed."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import bowstring
from bowstring.errors import BadJob
from helping import about

METHODS = ("centre", "halving", "rule", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
FACING = re.compile(
    r"(?:to|on) the (?:OTHER way, to the )?(left|right) \(facing (?:away from ([^ ()]+)|([^ ()]+) from ([^ ()]+))\)"
)


@st.composite
def jobs(draw: st.DrawFn) -> dict[str, Any]:
    """Arcs of 5 to 340 degrees, both hands, every method and start, on the line or off it, halved before or not."""
    job: dict[str, Any] = {
        "unit": "m", "mark": "1 mm", "drawn_to": "face", "centre": "reachable",
        "arc": {"radius": draw(st.floats(4, 80)), "central_angle": draw(st.floats(5, 340))},
        "method": draw(st.sampled_from(METHODS)), "side": draw(st.sampled_from(("left", "right"))),
        "start": draw(st.sampled_from(("ends", "one-end", "corner", "neither"))),
        "levels": draw(st.integers(1, 3)),
    }  # fmt: skip
    if job["method"] == "ordinates":
        job["halve_first"] = draw(st.integers(0, 3))
        if draw(st.booleans()):
            job["parallel"] = draw(st.sampled_from((-9, -2, 1, 6, 25)))
        if draw(st.booleans()):
            del job["levels"]
    if job["method"] == "tangent":
        job["tangent_from"] = draw(st.sampled_from(("A", "B", "both")))
    if draw(st.booleans()):
        job |= {"offset": draw(st.floats(0.05, 1.5)), "toward": draw(st.sampled_from(("centre", "outside")))}
    return job


def place(answer: dict[str, Any], mark: str) -> complex:
    """Where a mark is, seen from above: in the answer's frame the curve is always on the left of A-B."""
    (one,) = [one for one in answer["marks"] if one["name"] == mark]
    where = complex(one["x"], one["y"])
    return where if answer["side"] == "left" else where.conjugate()


def lies_left(answer: dict[str, Any], way: complex, foot: str, mark: str) -> bool:
    """Whether a mark is on the left of somebody at ``foot`` who faces along ``way``."""
    return bool((way.conjugate() * (place(answer, mark) - place(answer, foot))).imag > 0)


def assert_hands(answer: dict[str, Any]) -> int:
    """Every hand printed with its line is the true one; how many that were."""
    seen = 0
    for step in answer["steps"]:
        for hand, away, ahead, back in FACING.findall(step["text"]):
            if not step["marks"] or step["kind"] == "string":
                continue
            mark = step["marks"][-1]
            feet = [one["from"] for one in step["measures"] if one.get("to") == mark and "distance" in one]
            foot = next(
                (name for name in feet if name.startswith(("mid", "foot", "tan", "par", "F"))), back or feet[-1]
            )
            start, end = (back, ahead) if ahead else (away, step["names"]["start"])
            way = place(answer, end) - place(answer, start)
            with about(step["text"]):
                assert lies_left(answer, way, foot, mark) is (hand == "left")
            seen += 1
    return seen


@settings(max_examples=80, deadline=None)
@given(job=jobs())
def test_every_printed_hand_is_the_true_one(job: dict[str, Any]) -> None:
    try:
        answer = bowstring.answering(job)
    except BadJob:
        return
    with about(job):
        seen = assert_hands(answer)
        squared = [step for step in answer["steps"] if step["kind"] in SQUARED]
        assert seen >= len(squared)


SQUARED = {
    "stake", "stake_back", "ordinate", "tangent_offset", "tangent_offset_past", "swing", "cross", "peg", "peg_back",
    "peg_square", "from_straight", "from_straight_back", "offset_away_arc", "offset_away_back", "offset_toward_arc",
    "offset_toward_back",
}  # fmt: skip
"""The steps whose sentence has to say a hand and a line."""


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("angle", [45, 150, 205, 207, 250, 320])
def test_ordinates_after_halving_go_by_their_own_string(angle: float, side: str) -> None:
    """From A-Q1, Q1-M and so on; somebody who faces B from A would turn the other way past some 206 degrees."""
    answer = bowstring.answering(
        {"unit": "m", "arc": {"radius": 10, "central_angle": angle}, "spacing": 1, "method": "ordinates",
         "halve_first": 2, "side": side, "drawn_to": "face"}
    )  # fmt: skip
    steps = [step for step in answer["steps"] if step["kind"] == "ordinate"]
    assert len(steps) >= 4
    chain = ["A", "Q1", "M", "Q2", "B"]
    for step in steps:
        hand, _away, last, first = FACING.findall(step["text"])[0]
        assert (first, last) in list(pairwise(chain)) and hand == side
        assert {step["names"]["start"], step["names"]["end"]} == {first, last}
    rows = next(table["rows"] for table in answer["tables"] if table["kind"] == "ordinate")
    for row, step in zip(rows, steps, strict=True):  # told as one walks from A to B, so that one hand goes for all
        assert row[1] == f"{step['names']['first']} to {step['names']['last']}"
        assert row[2].endswith(f" from {step['names']['start']}")
    assert assert_hands(answer) >= len(steps)


def test_a_foot_on_a_smaller_chord_is_its_own_mark() -> None:
    """The same stake has a foot on the string A to B too, for a check: each keeps its place."""
    for spacing, times in ((12, 1), (5, 2), (3, 1)):
        answer = bowstring.answering(
            {"unit": "m", "arc": {"radius": 50, "central_angle": 45}, "spacing": spacing, "method": "ordinates",
             "halve_first": times, "side": "left", "drawn_to": "face"}
        )  # fmt: skip
        at = {mark["name"]: complex(mark["x"], mark["y"]) for mark in answer["marks"]}
        assert len(at) == len(answer["marks"])
        for step in answer["steps"]:
            for measure in step["measures"]:
                assert abs(at[measure["to"]] - at[measure["from"]]) == pytest.approx(measure["distance"], abs=1e-9)
        for check in answer["checks"]:
            assert abs(at[check["to"]] - at[check["from"]]) == pytest.approx(check["distance"], abs=1e-9)
