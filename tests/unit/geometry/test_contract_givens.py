"""More givens than two, the degree of curve, and three points, against the 50-digit reference."""

from __future__ import annotations

import math
from typing import Any

import pytest
from mpmath import mp, mpf

import bowstring
from helping import metres, misses, solve
from reference import (
    DOUBLE_ROUNDING,
    FIELDS,
    PAIRS,
    Reference,
    allowed,
    arc_of,
    kappa,
    solutions,
    through,
    through_kappa,
)

MARK = mpf("0.005")
"""Metres: the usual mark of a metre job."""


def may_differ(field: str, value: str, found: Reference) -> Any:
    """Return what the contract lets a given differ: a mark, or half a unit of its last place after the point."""
    places = value.partition(".")[2]
    half = mpf(10) ** -len(places) / 2 if places else mpf(0)
    return max(half, mp.degrees(MARK / found.figures["radius"]) if field == "central_angle" else MARK)


def best(given: dict[str, str]) -> tuple[tuple[str, str], Reference, Any, Any]:
    """Return the contract's best pair for decimal givens (metres, degrees), its arc, its score and the next
    best score: how many don't agree, then the worst difference in parts of what it may be."""
    ranked = []
    for order, (a, b) in enumerate(PAIRS):
        if a not in given or b not in given:
            continue
        for found in solutions(a, mpf(given[a]), b, mpf(given[b])):
            if all(found.figures[f] is not None for f in given):
                off = [abs(mpf(v) - found.figures[f]) / may_differ(f, v, found) for f, v in given.items()]
                score = (sum(one > 1 for one in off), max(off))
                ranked.append((score, order, (a, b), found))
    ranked.sort(key=lambda row: row[:2])
    return ranked[0][2], ranked[0][3], ranked[0][0], ranked[1][0]


def typed(given: dict[str, str]) -> dict[str, Any]:
    return {f: v if f == "central_angle" else v + " m" for f, v in given.items()}


MANY = {
    "all-seven": {
        "radius": "37.12",
        "chord": "47.72",
        "sagitta": "8.68",
        "arc_length": "51.83",
        "central_angle": "80.00",
        "tangent_length": "31.15",
        "external": "11.34",
    },
    "radius-slipped": {"radius": "38.12", "chord": "47.72", "sagitta": "8.68", "arc_length": "51.83"},
    "sagitta-slipped": {"radius": "37.12", "chord": "47.72", "sagitta": "8.98", "central_angle": "80.0"},
    "coarse-radius": {"radius": "37", "chord": "47.721", "sagitta": "8.684"},
    "fine-angle": {"chord": "47.7", "central_angle": "80.0012", "arc_length": "51.8"},
    "greater-by-sagitta": {"radius": "10.01", "chord": "16.00", "sagitta": "16.04"},
    "greater-by-angle": {"sagitta": "18.660", "arc_length": "52.360", "central_angle": "300.0"},
    "flat": {"radius": "1250.0", "chord": "100.000", "sagitta": "1.000"},
    "tangent-and-external": {"tangent_length": "31.15", "external": "11.34", "chord": "47.70"},
}


@pytest.mark.parametrize("given", MANY.values(), ids=MANY.keys())
def test_best_pair_of_many_givens(given: dict[str, str]) -> None:
    pair, want, score, runner_up = best(given)
    assert runner_up[0] > score[0] or runner_up[1] - score[1] > 1e-9, "a case must not hang on a tie"
    answer = solve(typed(given))
    assert not misses(answer["arc"], want, allowed(*pair, want))
    rows = {row["field"]: row for row in answer["given"]}
    assert len(answer["given"]) == len(rows) and set(rows) == set(given)
    for field, row in rows.items():
        value, computed = mpf(given[field]), want.figures[field]
        assert row["value"] == pytest.approx(float(value), rel=1e-14)
        assert row["computed"] == pytest.approx(float(computed), rel=float(allowed(*pair, want)))
        assert row["difference"] == pytest.approx(row["value"] - row["computed"], abs=1e-12)
        agrees = abs(value - computed) <= may_differ(field, given[field], want) * (1 + mpf("1e-9"))
        assert row["agrees"] is bool(agrees), (field, row)


def test_the_cases_tell_agreeing_from_disagreeing() -> None:
    verdicts = {row["agrees"] for given in MANY.values() for row in solve(typed(given))["given"]}
    assert verdicts == {True, False}


def test_ties_go_to_the_first_pair_in_the_contracts_order() -> None:
    """Radius 5, chord 6, sagitta 1 agree exactly, so every pair scores nothing and any of them gives the
    same arc."""
    answer = solve({"sagitta": 1, "chord": 6, "radius": 5})
    assert not misses(answer["arc"], solutions("radius", 5, "chord", 6)[0], mpf("1e-12"))
    assert all(row["agrees"] for row in answer["given"])


def test_the_order_of_the_keys_in_the_job_changes_nothing() -> None:
    forward = solve({"radius": "5.0 m", "chord": "8.0 m", "sagitta": "2.1 m"})
    backward = solve({"sagitta": "2.1 m", "chord": "8.0 m", "radius": "5.0 m"})
    assert forward["arc"] == backward["arc"]


def test_two_givens_are_not_listed() -> None:
    assert not solve({"radius": 5, "chord": 6})["given"]


def test_feet_and_inches_are_exact_and_agree_within_a_mark() -> None:
    """20' 0" and 2' 0-1/8" make a radius of 25' 10-1/2": a radius of 26' 6" is no rounding of it."""
    given = {"chord": "20' 0\"", "sagitta": "2' 0-1/8\"", "radius": "26' 6\""}
    answer = solve(given, "ft-in")
    assert [row["agrees"] for row in answer["given"]].count(False) == 1
    assert answer["stops"]
    within = solve({**given, "radius": "25' 10-1/2\""}, "ft-in")
    assert all(row["agrees"] for row in within["given"])


@pytest.mark.parametrize("unit", ["ft", "m", "ft-in"])
@pytest.mark.parametrize("degree", [0.25, 1, 8, "10° 30'"])
def test_degree_stands_for_a_radius_per_100_feet_of_arc(degree: Any, unit: str) -> None:
    value = mpf("10.5") if isinstance(degree, str) else mpf(degree)
    radius = 100 * mpf("0.3048") * 180 / (mp.pi * value)
    want = arc_of(radius, "25.5")
    assert not misses(solve({"degree": degree, "central_angle": "25.5"}, unit)["arc"], want, mpf("1e-12"))


@pytest.mark.parametrize("other", [f for f in FIELDS if f != "radius"])
def test_degree_with_any_other_given(other: str) -> None:
    radius = 100 * mpf("0.3048") * 180 / (mp.pi * 12)
    given = float(arc_of(radius, 40).figures[other])
    want = solutions("radius", radius, other, mpf(given))[0]
    assert not misses(metres({"degree": 12, other: given}), want, allowed("radius", other, want))


TURNS = (0.0, 33.0, 90.0, 145.5, 180.0, 270.0, 301.25)
SHIFTS = ((0.0, 0.0), (1000.25, -2500.5), (-31.0, 7.75))
POINT_ARCS = (
    ("0.5", 0.5),
    ("20", 0.07),
    ("90", 0.9),
    ("179", 0.35),
    ("180", 0.25),
    ("200", 0.5),
    ("270", 0.03),
    ("324", 0.97),
)


@pytest.mark.parametrize("hand", [1, -1], ids=["left", "right"])
@pytest.mark.parametrize(("degrees", "share"), POINT_ARCS)
def test_three_points_turned_and_shifted(degrees: str, share: float, hand: int) -> None:
    half, radius = math.radians(float(degrees)) / 2, 37.3
    for turn, shift in [(turn, SHIFTS[i % 3]) for i, turn in enumerate(TURNS)]:
        points = []
        for where in (0.0, share, 1.0):
            angle = math.radians(turn) + hand * (half - 2 * half * where)
            points.append([shift[0] + radius * math.cos(angle), shift[1] + radius * math.sin(angle)])
        want = through(*points)
        fields = FIELDS if degrees != "180" else FIELDS[:5]  # beside 180 degrees the last two run to infinity
        bound = max(mpf("1e-12"), 8 * through_kappa(points, fields) * DOUBLE_ROUNDING)
        assert bound < 1e-6
        got = bowstring.answering({"unit": "m", "levels": 1, "arc": {"points": points}})["arc"]
        for field in fields:
            if want.figures[field] is None:
                assert got[field] is None
            else:
                assert abs(got[field] / want.figures[field] - 1) <= bound, field


def test_points_may_carry_units() -> None:
    plain = metres({"points": [[0, 0], [5.0, 1.25], [10, 0]]})
    with_units = metres({"points": [["0 m", "0 m"], ["5000 mm", "1.25 m"], ["10 m", "0 m"]]})
    for field in FIELDS:
        assert with_units[field] == pytest.approx(plain[field], rel=1e-12)


def test_points_curving_right_are_not_laid_out_left_in_silence() -> None:
    """Going from the first point to the third, a middle point below the line lies on the right hand."""
    answer = solve({"points": [[0, 0], [5, -1], [10, 0]]})
    left = solve({"points": [[0, 0], [5, 1], [10, 0]]})
    assert left["side"] == "left"
    assert answer["side"] == "right" or len(answer["cautions"]) > len(left["cautions"])


def test_kappa_of_points_is_finite_on_the_grid() -> None:
    assert 0.9 < through_kappa([[0, 0], [10, 1], [20, 0]]) < 100
    assert kappa("radius", "chord", arc_of(1, 60)) < 5
