"""Past a kink: B from A, along and square to what comes before it, done as the sentence says on a plan of our own."""

from __future__ import annotations

import re
from cmath import exp
from math import radians

import pytest

from bowstring import answering, read_link, write_link
from bowstring.units.lengths import read_length
from unit.report.test_line_before import FOOT, HANDS, arc, job_of, walked

MARK = 1 / 8 / 12 / 2
"""Half an eighth of an inch in feet: what a number printed to the eighth may be off by."""

LENGTH = r"(\d+' \d+(?:-\d/\d)?\")"


def feet(text: str) -> float:
    return read_length(text, "ft-in", "x").metres / FOOT


def told(*line: dict[str, object], **more: object) -> str:
    answer = answering(job_of(*line, **more))
    text = answer["steps"][0]["text"]
    assert answer["stops"] == [] and answer["lined"] is not None
    b = answer["lined"]["b_from_a"]
    end = "B0" if "offset" in more else "B"
    assert bool(b) == (f"{end} not set yet?" in text) and (not b or b in answer["cards"][1]["notes"])
    assert not b or (b.startswith((f"No {end}? Set ", f"No {end}? Find D")) and f" to {end}." in b)
    assert all(len(one.split()) <= 14 for one in re.split(r"[.?] ", b)) and b.count(":") <= 1  # of the check alone
    long = text.partition(f"{end} not set yet?")[2]
    assert re.findall(LENGTH, b) == re.findall(LENGTH, long)
    assert re.findall("LEFT|RIGHT", b) == re.findall("LEFT|RIGHT", long) and ("back to" in b) == ("back to" in long)
    return long


def set_by(text: str, behind: complex, a: complex) -> tuple[complex, float]:
    """B as the sentence says, from the mark behind A and A, and what the mark to B must read."""
    on = re.search(rf"past A0? by {LENGTH}", text)
    back = re.search(rf"measure back {LENGTH} on the line", text)
    off = re.search(rf"square off {LENGTH} to the (LEFT|RIGHT)", text)
    check = re.search(rf"must read {LENGTH}", text)
    assert bool(on) != bool(back) and off and check
    way = (a - behind) / abs(a - behind)
    along = feet(on[1]) if on else -feet(back[1])  # type: ignore[index]
    return a + way * along + way * HANDS[off[2].lower()] * feet(off[1]), feet(check[1])


@pytest.mark.parametrize("kink", ["20 left", "20 right", "100 left", "100 right"])
@pytest.mark.parametrize("turn", HANDS)
@pytest.mark.parametrize("length", [40, 7.5])
def test_b_past_a_kink_after_a_straight(length: float, turn: str, kink: str) -> None:
    text = told({"straight": f"{length} ft"}, arc(29, 70, turn, kink=kink))
    start, way = 5 + 2j, exp(1j)
    a = start + way * length
    degrees, hand = kink.split()
    b, _ahead = walked(a, way * exp(HANDS[hand] * radians(float(degrees))), 29, 70, turn)
    back = min(10.0, length)
    assert f"{int(back)}' {round(back % 1 * 12)}\" back" in text and ("begins" in text) == (length < 10)
    set_b, check = set_by(text, a - back * way, a)
    assert abs(set_b - b) <= 2 * MARK
    assert abs(check - abs(b - (a - back * way))) <= MARK


@pytest.mark.parametrize("kink", ["20 left", "60 right"])
@pytest.mark.parametrize("turn", HANDS)
@pytest.mark.parametrize("before", HANDS)
def test_b_past_a_kink_after_an_arc_is_told_off_that_arc_s_chord(before: str, turn: str, kink: str) -> None:
    text = told(arc(20, 60, before), arc(29, 70, turn, kink=kink))
    d, way = 1 - 3j, exp(0.3j)
    a, ahead = walked(d, way, 20, 60, before)
    degrees, hand = kink.split()
    b, _ahead = walked(a, ahead * exp(HANDS[hand] * radians(float(degrees))), 29, 70, turn)
    assert "Find D, where arc 1 begins" in text
    set_b, check = set_by(text, d, a)
    assert abs(set_b - b) <= 2 * MARK and abs(check - abs(b - d)) <= MARK


def test_b_on_the_line_itself_has_no_hand() -> None:
    text = told({"straight": "20 ft"}, arc(29, 70, "left", kink="35 right"))  # half the central angle, Euclid III.32
    chord = answering(job_of(arc(29, 70, "left")))["arc_shown"]["chord"]
    assert f"past A by {chord}: B." in text and "square off" not in text


def test_nothing_is_told_where_something_else_sets_b() -> None:
    kinked = ({"straight": "20 ft"}, arc(29, 70, "left", kink="20 left"))
    assert told(*kinked)
    assert not told({"straight": "20 ft"}, arc(29, 70, "left"))
    assert not told(arc(29, 70, "left"))
    asked = answering(job_of({"straight": "20 ft"}, arc(29, 70, "left", kink="20")))
    assert asked["stops"] and asked["lined"] is not None and not asked["lined"]["b_from_a"]


def test_with_a_short_tape_the_check_that_it_does_not_reach_is_left_out() -> None:
    line = (arc(60, 70, "left"), arc(29, 70, "left", kink="20 right"))
    assert "must read" in told(*line)
    assert "must read" not in told(*line, tape={"length": "60 ft"})


def test_offset_stakes_are_told_from_the_drawn_ends() -> None:
    job = job_of({"straight": "20 ft"}, arc(29, 70, "left", kink="20 right"), offset="2 ft", toward="outside")
    text = answering(read_link(write_link(job)))["steps"][0]["text"]
    assert "past A0 by" in text and "S to B0 must read" in text
