"""Where each piece of a line begins, and how a straight goes on past an arc: against sums of chords by hand."""

from __future__ import annotations

from cmath import exp
from math import radians, sin, tan
from typing import Any

import pytest

import bowstring
from bowstring.units.lengths import read_length
from bowstring.units.tape import make_tape
from bowstring.words import say
from lined_jobs import CREEK, FIVE, KINKED

FOOT = 0.3048
MARK = 0.6 / 12 / 8
"""Feet: half a mark of 1/8 in, and what a float adds."""


def page(job: dict[str, Any]) -> Any:
    return next(one for one in bowstring.answering(job)["lined"]["pages"] if one["key"] == "line")  # type: ignore


def begins(job: dict[str, Any]) -> list[list[str]]:
    return next(one["rows"] for one in page(job)["tables"] if one["key"] == "begins")


def feet(text: str) -> float:
    number, _, hand = text.partition('" ')
    size = 0.0 if number == '0"' else read_length(number.rstrip('"') + '"', "ft-in", "at").metres / FOOT
    return -size if hand in ("behind", "right") else size


def places(job: dict[str, Any]) -> list[complex]:
    """Ends of the pieces in feet: an arc's chord is 2 R sin(I/2), half its angle off its tangent (any surveying
    text)."""
    at, heading, found = 0j, 0.0, []
    for piece in job["line"]:
        if "kink" in piece:
            size, hand = piece["kink"].split()
            heading += radians(float(size)) * (1 if hand == "left" else -1)
        if "straight" in piece:
            at += (read_length(piece["straight"], "ft-in", "at").metres / FOOT) * exp(1j * heading)
        else:
            radius = read_length(piece["arc"]["radius"], "ft-in", "at").metres / FOOT
            angle = radians(float(piece["arc"]["central_angle"])) * (1 if piece["turn"] == "left" else -1)
            at += 2 * radius * sin(abs(angle) / 2) * exp(1j * (heading + angle / 2))
            heading += angle
        found.append(at)
    return found


@pytest.mark.parametrize("job", [FIVE, CREEK, KINKED])
def test_each_piece_begins_where_the_chords_come_to(job: dict[str, Any]) -> None:
    rows, expected = begins(job), places(job)
    assert len(rows) == len(expected)
    for (_name, _at, ahead, off), place in zip(rows, expected, strict=True):
        assert feet(ahead) == pytest.approx(place.real, abs=MARK)
        assert feet(off) == pytest.approx(place.imag, abs=MARK)
    assert rows[-1][0] == say("lined.the_end")


def test_what_lies_behind_the_start_is_told_so() -> None:
    back = {**CREEK, "line": [{"arc": {"radius": "30 ft", "central_angle": "170"}, "turn": "right"},
                              {"straight": "15 ft"}]}  # fmt: skip
    (_name, _at, ahead, off), (_end, _far, behind, _off) = begins(back)
    assert feet(ahead) == pytest.approx(60 * sin(radians(85)) * sin(radians(5)), abs=MARK) and off.endswith("right")
    assert behind.endswith("behind")
    title = next(one["title"] for one in page(back)["tables"] if one["key"] == "begins")
    assert say("lined.first_arc") in title  # an arc has no straight to look along, but its tangent


def test_a_straight_past_an_arc_runs_from_its_pi_through_b() -> None:
    """T = R tan(I/2), by any route-surveying handbook."""
    lines = " ".join(page(FIVE)["lines"])
    for arc, radius, angle, straight in (("Arc 2", 42, 32, "Straight 3"), ("Arc 4", 52, 36, "Straight 5")):
        tangent = make_tape("ft-in", None).show(radius * FOOT * tan(radians(angle / 2)))
        assert say("lined.straight_on", straight=straight, arc=arc, tangent=tangent) in lines
    assert "Straight 1" not in lines


def test_past_a_kink_or_a_half_turn_no_such_direction_is_told() -> None:
    assert "*Straight 3:*" not in " ".join(page(KINKED)["lines"])
    half = {**CREEK, "line": [{"arc": {"radius": "30 ft", "central_angle": "185"}, "turn": "right"},
                              {"straight": "15 ft"}]}  # fmt: skip
    assert "PI" not in " ".join(page(half)["lines"])
