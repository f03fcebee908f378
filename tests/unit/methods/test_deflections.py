"""Deflection angles: off the tangent, with the angle off the long chord beside, from the mark that is sighted."""

from __future__ import annotations

import cmath
import re
from math import degrees
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import bowstring
from bowstring.errors import BadJob
from bowstring.sheet.text import sheet_text
from helping import about

HALF_SECOND = 0.5 / 3600 + 1e-9
"""Degrees: what an angle shown to the second may differ by."""

SIGHTED = {"ends": "B", "neither": "B", "one-end": "S", "corner": "P"}


def answer_of(**keys: Any) -> Any:
    return bowstring.answering({"unit": "m", "drawn_to": "face", "method": "angles", "levels": 3, "side": "left",
                                **keys})  # fmt: skip


def read_dms(shown: str) -> float:
    whole, minutes, seconds = (int(part) for part in re.findall(r"\d+", shown))
    return whole + minutes / 60 + seconds / 3600


@settings(max_examples=60, deadline=None)
@given(
    radius=st.floats(5, 200), angle=st.floats(5, 195), start=st.sampled_from(sorted(SIGHTED)),
    side=st.sampled_from(("left", "right")), offset=st.sampled_from((None, 0.3)),
)  # fmt: skip
def test_each_angle_is_that_of_its_marks(
    radius: float, angle: float, start: str, side: str, offset: float | None
) -> None:
    """By the circle: off the tangent half the arc's angle to the stake, off the long chord half of what is left."""
    off = {} if offset is None else {"offset": offset, "toward": "outside"}
    try:
        answer = answer_of(arc={"radius": radius, "central_angle": angle}, start=start, side=side, **off)
    except BadJob as why:
        assert (why.key == "start.no_corner" and angle > 179) or why.key == "method.angles_turn_back"
        return
    sighted = "B" if off else SIGHTED[start]
    at = {mark["name"]: complex(mark["x"], mark["y"]) for mark in answer["marks"]}
    steps = [step for step in answer["steps"] if step["stake"]]
    for number, step in enumerate(steps, 1):
        (turned,) = [one for one in step["measures"] if "angle" in one]
        assert (turned["at"], turned["from"], turned["to"]) == ("A", sighted, step["stake"])
        ways = [at[turned[mark]] - at["A"] for mark in ("from", "to")]
        with about(step["text"]):
            assert turned["angle"] == pytest.approx(abs(degrees(cmath.phase(ways[1] / ways[0]))), abs=1e-6)
            deflection = angle / 2 * number / 8
            assert read_dms(step["deflection"]) == pytest.approx(deflection, abs=HALF_SECOND)
            assert read_dms(step["off_chord"]) == pytest.approx(angle / 2 - deflection, abs=HALF_SECOND)
            assert f"deflection {step['deflection']} off the tangent" in step["text"]
            assert step["off_chord"] in step["text"] and turned["shown"] in step["text"]
            from_straight = deflection if sighted == "P" else 180 - deflection if sighted == "S" else None
            if from_straight is not None:
                assert turned["angle"] == pytest.approx(from_straight, abs=1e-6)
    assert all([row[1], row[2]] == [step["deflection"], step["off_chord"]]
               for row, step in zip(answer["tables"][0]["rows"], steps, strict=True))  # fmt: skip


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(("start", "hand"), [("ends", True), ("corner", False), ("one-end", False)])
def test_the_hand_to_turn(start: str, hand: bool, side: str) -> None:
    """From B the curve is on the hand that the job says; off the tangent it falls away to the other."""
    answer = answer_of(arc={"radius": 30, "central_angle": 60}, start=start, side=side)
    other = {"left": "right", "right": "left"}[side]
    for step in answer["steps"]:
        if step["stake"]:
            first = step["text"].split(" to the ")[1].split()[0].rstrip(",.;")
            assert first == (side if hand else other)
            if start == "one-end":
                assert step["text"].split(" to the ")[2].split()[0].rstrip(",.;") == side


def test_the_trade_s_names_stand_where_there_are_straights() -> None:
    """PC, PT and PI beside the sheet's own A, B and P; none where nobody sees a straight."""
    arc = {"radius": 30, "central_angle": 60}
    named = {start: sheet_text(answer_of(arc=arc, start=start)) for start in SIGHTED}
    assert all(name in named["corner"] for name in ("A (PC)", "B (PT)", "P (PI)"))
    assert "A (PC)" in named["one-end"] and "the PT" in named["one-end"] and "PI)" not in named["one-end"]
    assert not any(name in named[start] for start in ("ends", "neither") for name in ("PC", "PT", "(PI)"))
    off = answer_of(arc=arc, start="corner", offset=0.3, toward="outside", method="halving")
    assert any("A0 (PC)" in step["text"] for step in off["steps"])


def test_a_wrong_end_no_longer_turns_what_is_sighted_on_the_corner() -> None:
    """B's own error went into every angle that was turned from B."""
    arc, loose = {"radius": 30, "central_angle": 60}, [{"name": "B", "x": 30, "y": 0, "sigma": "20 mm"}]

    def worst(**keys: Any) -> float:
        return max(stake["sigma_across"] for stake in answer_of(arc=arc, **keys)["stakes"] if stake["level"])

    assert worst(start="ends", known=loose) > 1.5 * worst(start="corner", known=loose)
    assert worst(start="corner", known=loose) == pytest.approx(worst(start="corner"), rel=1e-9)
