"""The arc from any of the 21 pairs, held against the 50-digit reference from very flat to nine tenths of a
circle.

Bounds: recomputed givens to 1e-12, every figure to max(1e-12, 8 kappa 2^-53), kappa the pair's condition
number."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest

from helping import all_hold, in_metres, misses, names_number, solve
from reference import NEED_UNDER_180, PAIRS, Reference, allowed, arc_of, kappa, solutions

# 1 mm on 100 m is 0.0046 degrees; 103 and 267 stand beside the turning points of the two-solution pairs.
ANGLES = (
    "0.0045836624",
    "0.05",
    "1",
    "12",
    "45",
    "90",
    "103",
    "120",
    "170",
    "179.99",
    "190",
    "230",
    "267",
    "300",
    "324",
)
RADIUS = {"m": "37.3", "ft": "132.8125", "mm": "6100"}
TWO_ARCS = (("radius", "chord"), ("sagitta", "arc_length"), ("sagitta", "tangent_length"))


def _possible(pair: tuple[str, str], degrees: str) -> bool:
    return float(degrees) < 180 or not NEED_UNDER_180 & set(pair)


@cache
def givens(pair: tuple[str, str], degrees: str, unit: str) -> dict[str, float]:
    """The pair's two figures of a known arc, rounded to the numbers that a job can hold."""
    flattest = degrees == ANGLES[0]
    known = arc_of("1250000" if flattest else RADIUS[unit], degrees)
    return {field: float(known.figures[field]) for field in pair}


@cache
def references(pair: tuple[str, str], degrees: str, unit: str) -> tuple[Reference, ...]:
    """Every arc that has exactly those two numbers, in metres, smallest angle first."""
    given = givens(pair, degrees, unit)
    first, second = pair
    return tuple(solutions(first, in_metres(first, given[first], unit), second, in_metres(second, given[second], unit)))


IN_FEET = ("0.0045836624", "120", "324")
"""What feet could change is the scale: every angle in metres, the flattest, one in the middle and the most in feet."""

CASES = [
    (pair, degrees, unit)
    for pair in PAIRS
    for unit, angles in (("m", ANGLES), ("ft", IN_FEET))
    for degrees in angles
    if _possible(pair, degrees)
]
DOUBLE = [
    (pair, degrees)
    for pair in TWO_ARCS
    for degrees in ANGLES
    if _possible(pair, degrees) and (pair[1] != "arc_length" or float(degrees) > 180)
]


def case_id(value: Any) -> str:
    return "+".join(value) if isinstance(value, tuple) else str(value)


def agrees_with_the_reference(pair: tuple[str, str], degrees: str, unit: str) -> None:
    want = references(pair, degrees, unit)[0]
    got = solve(givens(pair, degrees, unit), unit)["arc"]
    assert not misses(got, want, allowed(*pair, want))
    for field in pair:
        exact = in_metres(field, givens(pair, degrees, unit)[field], unit)
        assert abs(got[field] / exact - 1) <= 1e-12, f"recomputed {field}"


@pytest.mark.parametrize("pair", PAIRS, ids=case_id)
def test_pair_against_reference(pair: tuple[str, str]) -> None:
    all_hold({f"{case[1]} in {case[2]}": case for case in CASES if case[0] == pair}, agrees_with_the_reference)


@pytest.mark.parametrize(("pair", "degrees"), DOUBLE, ids=case_id)
def test_greater_takes_the_larger_of_two_arcs(pair: tuple[str, str], degrees: str) -> None:
    """Said of the job or in the arc: by turns, for it's the same key read at two places."""
    where = ("job", "arc")[DOUBLE.index((pair, degrees)) % 2]
    found = references(pair, degrees, "m")
    assert len(found) == 2
    given: dict[str, Any] = dict(givens(pair, degrees, "m"))
    outside = {"greater": True} if where == "job" else {}
    inside = {"greater": True} if where == "arc" else {}
    got = solve({**given, **inside}, "m", **outside)["arc"]
    assert not misses(got, found[1], allowed(*pair, found[1]))
    for field in pair:
        assert abs(got[field] / given[field] - 1) <= 1e-12, f"recomputed {field}"


@pytest.mark.parametrize(("pair", "degrees"), DOUBLE, ids=case_id)
def test_two_arcs_are_named_with_both_radii(pair: tuple[str, str], degrees: str) -> None:
    small, large = references(pair, degrees, "m")
    cautions = solve(givens(pair, degrees, "m"), "m", mark="0.001 m")["cautions"]
    radii = [float(one.figures["radius"]) for one in (small, large)]
    assert any(all(names_number(text, radius, 0.001) for radius in radii) for text in cautions), cautions


@pytest.mark.parametrize("degrees", ["20", "230"])
@pytest.mark.parametrize("pair", [pair for pair in PAIRS if pair not in TWO_ARCS], ids=case_id)
def test_greater_changes_nothing_where_one_arc_fits(pair: tuple[str, str], degrees: str) -> None:
    if not _possible(pair, degrees):
        degrees = "150"
    given = givens(pair, degrees, "m")
    assert solve(dict(given), "m", greater=True)["arc"] == solve(dict(given), "m")["arc"]


@pytest.mark.parametrize("degrees", ["1", "100", "170"])
def test_greater_changes_nothing_for_sagitta_and_arc_length_under_180(degrees: str) -> None:
    given = givens(("sagitta", "arc_length"), degrees, "m")
    assert solve(dict(given), "m", greater=True)["arc"] == solve(dict(given), "m")["arc"]


def test_sagitta_and_arc_length_turn_double_exactly_between_the_printed_ratios() -> None:
    for ratio, count in ((0.3182, 1), (0.3184, 2), (0.3622, 2)):
        small = solve({"sagitta": ratio * 10, "arc_length": 10.0})["arc"]
        large = solve({"sagitta": ratio * 10, "arc_length": 10.0}, greater=True)["arc"]
        assert (small["central_angle"] != large["central_angle"]) == (count == 2), ratio
        if count == 2:
            assert 180 < small["central_angle"] < large["central_angle"] < 360


SEMICIRCLES = [
    {"radius": 10, "chord": 20},
    {"radius": 10, "sagitta": 10},
    {"chord": 20, "sagitta": 10},
    {"radius": 10, "central_angle": 180},
    {"chord": 20, "central_angle": 180},
    {"sagitta": 10, "central_angle": 180},
    {"points": [[0, 0], [10, 10], [20, 0]]},
]


@pytest.mark.parametrize("unit", ["m", "ft", "mm"])
@pytest.mark.parametrize("given", SEMICIRCLES, ids=lambda given: "+".join(given))
def test_semicircle(given: dict[str, Any], unit: str) -> None:
    scale = {"m": 1.0, "ft": 0.3048, "mm": 0.001}[unit]
    got = solve(given, unit, greater=True)["arc"]
    assert got["tangent_length"] is None and got["external"] is None
    for field, exact in (("radius", 10), ("chord", 20), ("sagitta", 10), ("arc_length", 31.415926535897932)):
        assert got[field] == pytest.approx(exact * scale, rel=1e-12)
    assert got["central_angle"] == pytest.approx(180, rel=1e-12)


@pytest.mark.parametrize(("degrees", "null"), [(179.5, False), (180, True), (180.5, True), (324, True)])
def test_tangent_and_external_are_null_from_180_degrees_up(degrees: float, null: bool) -> None:
    got = solve({"radius": 12.0, "central_angle": degrees})["arc"]
    assert (got["tangent_length"] is None) == null
    assert (got["external"] is None) == null


def test_a_stray_kappa_would_show() -> None:
    """The bound is not so wide that it lets a wrong digit through: for most pairs it is the plain 1e-12."""
    tight = sum(allowed(*pair, references(pair, degrees, unit)[0]) < 1.1e-12 for pair, degrees, unit in CASES)
    assert tight > 0.6 * len(CASES)
    assert kappa("chord", "sagitta", arc_of(37.3, "0.0045836624")) < 2.1
