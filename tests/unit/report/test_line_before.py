"""The tangent at A from the piece before it, step by step on a plan of our own: a crew does what the sentences say.

The plan is walked in feet with the plain rule of a circle, apart from the package: north is ahead at the start.
"""

from __future__ import annotations

import re
from cmath import exp, phase
from math import cos, pi, radians, sin, sqrt

import pytest

from bowstring import answering
from bowstring.job.form import JobForm
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow

FOOT = 0.3048
LEFT, RIGHT = 1j, -1j
HANDS = {"left": LEFT, "right": RIGHT}


def job_of(*line: dict[str, object], **more: object) -> JobForm:
    return {"bowstring": 1, "drawn_to": "face", "line": list(line), "at": len(line), **more}  # type: ignore[typeddict-item, return-value]


def arc(radius: float, angle: float, turn: str, **more: object) -> dict[str, object]:
    return {"arc": {"radius": f"{radius} ft", "central_angle": f"{angle}"}, "turn": turn, **more}


def walked(place: complex, ahead: complex, radius: float, angle: float, turn: str) -> tuple[complex, complex]:
    """Where an arc ends that begins at a place in a direction, and its direction there: turned about its center."""
    centre = place + ahead * HANDS[turn] * radius
    turned = exp(HANDS[turn] * radians(angle))
    return centre + (place - centre) * turned, ahead * turned


def lengths_of(step: StepRow) -> dict[tuple[str, str], float]:
    return {(one["from"], one["to"]): one["distance"] / FOOT for one in step["measures"] if "distance" in one}


def set_beyond(answer: Answer, a: complex, s: complex) -> complex:
    """B as the step says that goes on from S and A."""
    step = answer["steps"][1]
    assert step["kind"] in ("from_straight", "from_straight_back")
    along, off, _chord = lengths_of(step).values()
    way = (a - s) / abs(a - s)
    turn = re.search(r"to the (left|right) \(facing away from S\)", step["text"])
    assert turn is not None
    return a + way * along * (1 if step["kind"] == "from_straight" else -1) + way * HANDS[turn[1]] * off


@pytest.mark.parametrize("turn", HANDS)
@pytest.mark.parametrize("before", HANDS)
@pytest.mark.parametrize(("radius", "angle"), [(31, 70), (6, 20), (20, 180), (20, 220), (200, 4)])
def test_off_the_arc_before_it_the_tangent_is_set_by_numbers(
    radius: float, angle: float, before: str, turn: str
) -> None:
    """S from A and D as the sentence says, then B: both where the plan has them, within what no tape tells."""
    answer = answering(job_of(arc(radius, angle, before), arc(24, 40, turn), start="one-end"))
    d = 3 - 7j
    a, ahead = walked(d, 1 + 0j, radius, angle, before)
    step = answer["steps"][0]
    lengths = lengths_of(step)
    to_d = (d - a) / abs(d - a)
    hand = re.search(r"to the (left|right), facing D", step["text"])
    assert hand is not None
    along = lengths.get(("A", "foot S"), 0.0) * (-1 if step["kind"] == "have_arc_past" else 1)
    off = lengths[("A" if angle == 180 else "foot S", "S")]
    s = a + to_d * along + to_d * HANDS[hand[1]] * off
    back = lengths[("A", "S")]
    assert s == pytest.approx(a - back * ahead, abs=1e-9)
    assert lengths[("D", "S")] == pytest.approx(abs(d - s), abs=1e-9)
    # The law of cosines: no step goes by that distance.
    chord, half = 2 * radius * sin(radians(angle / 2)), radians(angle / 2)
    assert lengths[("D", "S")] == pytest.approx(sqrt(chord**2 + back**2 - 2 * chord * back * cos(half)))
    assert set_beyond(answer, a, s) == pytest.approx(walked(a, ahead, 24, 40, turn)[0], abs=1e-9)
    assert answer["stops"] == []


@pytest.mark.parametrize(("radius", "angle", "back"), [(31, 70, 10), (6, 20, 2), (1, 30, 2 * sin(radians(15)))])
def test_s_stands_no_farther_behind_than_the_arc_before_is_wide(radius: float, angle: float, back: float) -> None:
    """Whole feet up to the chord, 10 at most; a chord under a foot is taken as it is. By arithmetic: 6 ft and 20
    degrees have a chord of 2.08 ft."""
    step = answering(job_of(arc(radius, angle, "left"), arc(24, 40, "right")))["steps"][0]
    assert lengths_of(step)[("A", "S")] == pytest.approx(back)


def test_on_a_metric_tape_s_stands_at_half_metres() -> None:
    line = [{"arc": {"radius": "4 m", "central_angle": angle}, "turn": "left"} for angle in ("70", "40")]
    step = answering({**job_of(*line), "unit": "m"})["steps"][0]
    assert lengths_of(step)[("A", "S")] * FOOT == pytest.approx(3.0)  # the chord is 4.589 m


@pytest.mark.parametrize(("length", "kind"), [("9 ft 11 in", "have_straight_short"), ("10 ft", "have_straight")])
def test_a_straight_that_is_shorter_than_a_crew_goes_back_is_used_whole(length: str, kind: str) -> None:
    answer = answering(job_of({"straight": length}, arc(24, 40, "right")))
    step = answer["steps"][0]
    assert step["kind"] == kind
    a, ahead = 1 + 2j, exp(1j * pi / 7)
    if kind == "have_straight":
        assert "at least 10 ft" in step["text"] and not step["measures"]
        return
    back = lengths_of(step)[("A", "S")]
    assert back == pytest.approx(9 + 11 / 12) and "at least" not in step["text"] and "9' 11\"" in step["text"]
    b = set_beyond(answer, a, a - back * ahead)
    assert b == pytest.approx(walked(a, ahead, 24, 40, "right")[0], abs=1e-9)
    assert phase((b - a) / ahead) == pytest.approx(-radians(20))  # half the central angle, Euclid III.32


def test_with_a_short_tape_nothing_is_checked_that_it_does_not_reach() -> None:
    answer = answering(job_of(arc(60, 70, "left"), arc(24, 40, "right"), tape={"length": "50 ft"}))
    step = answer["steps"][0]
    assert ("D", "S") not in lengths_of(step) and "Check" not in step["text"]  # 61 ft
    assert ("A", "S") in lengths_of(step)


def test_offset_stakes_start_from_the_drawn_ends() -> None:
    answer = answering(job_of(arc(31, 70, "left"), arc(24, 40, "left"), offset="2 ft", toward="outside"))
    assert lengths_of(answer["steps"][0])[("A0", "S")] == pytest.approx(10.0)
    assert answer["steps"][0]["marks"][:2] == ["A0", "D"]
