"""No check asks for a distance that a step measured or read, whatever its two marks are called."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import bowstring
from bowstring.analysis.checks import Check
from bowstring.analysis.taped import independent
from bowstring.construction import Bisect, Recipe, Take
from bowstring.errors import BadJob
from bowstring.geometry.plane import Point
from bowstring.sheet.text import sheet_text
from helping import about
from unit.report.test_hands import jobs

NEAR = 1e-6
"""Metres: one place."""


def taped(answer: dict[str, Any]) -> list[tuple[complex, complex]]:
    """The two places of every distance that the sheet's steps measure or read: from the answer, and by what a sliding
    tip and a string's middle are."""
    at = places(answer)
    found = []
    for step in answer["steps"]:
        names = step["names"]
        pairs = [(one["from"], one["to"]) for one in [*step["measures"], *step["readings"]] if "distance" in one]
        if step["stake"] and "read the same" in step["text"]:
            pairs += [(names["start"], step["stake"]), (step["stake"], names["end"])]
        if "from both ends" in step["text"]:
            pairs += [(names["start"], names["peg"]), (names["peg"], names["end"])]
        pairs += [(end, mark) for mark in step["marks"] if mark.startswith("mid ")
                  for end in (names["start"], names["end"])]  # fmt: skip
        found += [(at[one], at[other]) for one, other in pairs]
    return found


def places(answer: dict[str, Any]) -> dict[str, complex]:
    return {mark["name"]: complex(mark["x"], mark["y"]) for mark in answer["marks"]}


def same(pair: tuple[complex, complex], other: tuple[complex, complex]) -> bool:
    return any(abs(pair[0] - one) <= NEAR and abs(pair[1] - two) <= NEAR for one, two in (other, other[::-1]))


@settings(max_examples=80, deadline=None)
@given(job=jobs(), got=st.booleans(), twin=st.booleans())
def test_no_check_is_a_distance_that_a_step_has(job: dict[str, Any], got: bool, twin: bool) -> None:
    if got and job["method"] == "halving":
        job = {**job, "got": [{"stake": "M", "sagitta": 1.001 * rise(job)}]}
    if twin and job["method"] == "tapes" and "offset" not in job:  # a known mark on B: another name for one place
        job = {**job, "known": [{"name": "nail", "x": chord(job), "y": 0}], "tapes_from": ["A", "nail"]}
    try:
        answer = bowstring.answering(job)
    except BadJob:
        return
    at, steps = places(answer), taped(answer)
    assert steps
    for check in answer["checks"]:
        with about(job, check["from"], check["to"]):
            assert not any(same((at[check["from"]], at[check["to"]]), pair) for pair in steps)


def rise(job: dict[str, Any]) -> float:
    return float(bowstring.answering({**job, "levels": 1})["staked"]["sagitta"])


def chord(job: dict[str, Any]) -> float:
    return float(bowstring.answering({**job, "levels": 1})["staked"]["chord"])


def test_two_names_of_one_place_are_one() -> None:
    """A pull from a nail at B is a pull from B; a middle is read from both ends; both directions."""
    job = {"unit": "m", "arc": {"radius": 20, "central_angle": 60}, "levels": 2, "method": "tapes", "side": "left",
           "drawn_to": "face"}  # fmt: skip
    plain = bowstring.answering(job)
    nail = bowstring.answering({**job, "known": [{"name": "nail", "x": 20, "y": 0}], "tapes_from": ["nail", "A"]})
    assert [(one["from"], one["to"]) for one in plain["checks"]] == [(one["from"], one["to"]) for one in nail["checks"]]
    recipe = Recipe({"N": Point(4.0, 5e-7)})
    recipe.do("ends", 0, [Take("A", Point(0.0, 0.0)), Take("B", Point(4.0, 0.0))])
    recipe.do("middle", 1, [Bisect("mid M", "A", "B")])
    at = {**recipe.at, "mid A-N": Point(2.0, 3e-7), "K": Point(2.0, 2e-6)}
    tried = [Check("half", *pair, 2.0, 1.0, None, 1, Point(1.0, 0.0), {}) for pair in
             (("A", "mid A-N"), ("mid M", "N"), ("N", "mid M"), ("A", "K"), ("A", "B"))]  # fmt: skip
    assert [(one.start, one.end) for one in independent(tried, recipe.steps, at)] == [("A", "K"), ("A", "B")]


@pytest.mark.parametrize(("levels", "left"), [(1, False), (2, True), (3, True)])
def test_half_chords_stand_under_the_step_that_reads_them(levels: int, left: bool) -> None:
    job = {"unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": levels, "side": "left", "drawn_to": "face"}
    answer = bowstring.answering(job)
    assert bool(answer["checks"]) is left
    assert not any(check["kind"] == "half" for check in answer["checks"])
    text = " ".join(sheet_text(answer).split())
    assert ("Every distance among these stakes is read by a step" in text) is not left
    at = places(answer)
    for step in answer["steps"]:
        if step["stake"]:
            half = {(one["from"], one["to"]): one for one in step["readings"] if "mid" not in one["from"] + one["to"]}
            ends = step["names"]["start"], step["names"]["end"]
            assert set(half) == {(ends[0], step["stake"]), (step["stake"], ends[1])}
            for (one, other), reading in half.items():
                assert reading["distance"] == pytest.approx(abs(at[other] - at[one]), abs=1e-9)
                assert reading["shown"] == step["half_chord"]
