"""The quarter rule, the rounded numbers and the checks, replayed here with a few lines of arithmetic of our
own."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import pytest

from halving_jobs import JOBS, answer

KINDS = pytest.mark.parametrize("name", JOBS)
MARKS = {
    "flat": 0.001,
    "broad": 0.0254 / 8,
    "semicircle": 0.003048,
    "beyond": 0.005,
    "nine-tenths": 0.001,
    "to-centre": 0.0254 / 8,
    "outside": 0.005,
    "right-hand": 0.005,
    "one-level": 0.005,
}  # metres
TOLERANCES = {
    "flat": None,
    "broad": 0.00635,
    "semicircle": 0.006096,
    "beyond": 0.01,
    "nine-tenths": 0.005,
    "to-centre": 0.003175,
    "outside": 0.02,
    "right-hand": 0.01,
    "one-level": 0.01,
}


def printed_ends(got: dict[str, Any], mark: float) -> list[tuple[float, float]]:
    """Where the numbers, to the mark, put A and B from the drawn line's ends: along its chord, then square off it."""
    chord, offset = got["staked"]["chord"], got["offset"]
    if offset is None:
        return [(0.0, 0.0), (chord, 0.0)]
    half = math.radians(got["arc"]["central_angle"]) / 2
    out = offset["distance"] * (1 if offset["toward"] == "outside" else -1)
    along, up = out * math.sin(half), out * math.cos(half)
    x = along - math.copysign(round(abs(along) / mark) * mark, along)
    y = -up + math.copysign(round(abs(up) / mark) * mark, up)
    return [(x, y), (chord - x, y)]


def staked_out(
    got: dict[str, Any], sagittae: list[float], ends: list[tuple[float, float]] | None = None
) -> list[tuple[str, float]]:
    """Halve from A to B with these sagittae, each level from its own stakes: each stake's name and miss (m,
    outward)."""
    points = ends or [(0.0, 0.0), (got["staked"]["chord"], 0.0)]
    for sagitta in sagittae:
        following = [points[0]]
        for (ax, ay), (bx, by) in pairwise(points):
            long = math.hypot(bx - ax, by - ay)
            # left of the way from A to B, where the arc is
            out_x, out_y = -(by - ay) / long, (bx - ax) / long
            following += [((ax + bx) / 2 + sagitta * out_x, (ay + by) / 2 + sagitta * out_y), (bx, by)]
        points = following
    centre = (got["staked"]["chord"] / 2, got["staked"]["sagitta"] - got["staked"]["radius"])
    names = [stake["name"] for stake in got["stakes"]]
    return [
        (name, math.dist(point, centre) - got["staked"]["radius"]) for name, point in zip(names, points, strict=True)
    ]


def worst(misses: list[tuple[str, float]]) -> tuple[float, str]:
    """The largest miss and the first stake that has it (equal to a nanometre)."""
    largest = max(abs(miss) for _, miss in misses)
    name, miss = next((n, m) for n, m in misses if abs(m) >= largest - 1e-9)
    return miss, name


@KINDS
def test_rule_of_thumb(name: str) -> None:
    got = answer(name)
    first, levels = got["staked"]["sagitta"], JOBS[name]["levels"]
    miss, at = worst(staked_out(got, [first / 4**level for level in range(levels)]))
    assert got["rule"]["worst_miss"] == pytest.approx(miss, abs=1e-8)
    if levels > 1:
        assert got["rule"]["at"] == at
        assert miss < 0, "the quarter rule is always short"
    tolerance = TOLERANCES[name]
    assert got["rule"]["holds"] is (None if tolerance is None else abs(miss) <= tolerance)


def test_the_rule_holds_somewhere_and_fails_somewhere() -> None:
    assert {answer(name)["rule"]["holds"] for name in JOBS} == {None, True, False}


@KINDS
def test_rounding_replay(name: str) -> None:
    got = answer(name)
    mark = MARKS[name]
    shown = [round(row["sagitta"] / mark) * mark for row in got["halving"]]
    for row in got["halving"]:
        assert abs((row["sagitta"] / mark) % 1 - 0.5) > 1e-6 or name == "semicircle", "the case must not hang on a tie"
    miss, at = worst(staked_out(got, shown, printed_ends(got, mark)))
    assert got["rounding"]["worst_miss"] == pytest.approx(miss, abs=1e-8)
    if abs(miss) > 1e-9:
        assert got["rounding"]["at"] == at


def pair_of(row: dict[str, Any]) -> frozenset[str]:
    return frozenset((row["from"], row["to"]))


@KINDS
def test_checks_never_repeat_a_measure(name: str) -> None:
    got = answer(name)
    measured = {pair_of(m) for step in got["steps"] for m in step["measures"] if "distance" in m}
    pairs = [pair_of(check) for check in got["checks"]]
    assert len(set(pairs)) == len(pairs)
    assert not set(pairs) & measured


@KINDS
def test_there_is_something_to_check_with(name: str) -> None:
    if JOBS[name]["levels"] > 1:
        assert answer(name)["checks"]


@KINDS
def test_every_check_is_the_distance_of_its_marks(name: str) -> None:
    got = answer(name)
    marks = {mark["name"]: (mark["x"], mark["y"]) for mark in got["marks"]}
    marks |= {stake["name"]: (stake["x"], stake["y"]) for stake in got["stakes"]}
    for check in got["checks"]:
        real = math.dist(marks[check["from"]], marks[check["to"]])
        assert check["distance"] == pytest.approx(real, rel=1e-9, abs=1e-12 * got["staked"]["radius"]), check
        assert check["shown"].strip()


def freedom(got: dict[str, Any], length: Any, stakes: list[str]) -> float:
    """The sum of |d length / d across| over these stakes, each moved a micrometre along its own radius both
    ways.

    The contract lists A and B among the stakes, so a check that touches them counts them like the rest.
    """
    centre = (got["staked"]["chord"] / 2, got["staked"]["sagitta"] - got["staked"]["radius"])
    place = {stake["name"]: (stake["x"], stake["y"]) for stake in got["stakes"]}
    total = 0.0
    for moving in stakes:
        lengths = []
        for by in (1e-6, -1e-6):
            (x, y), away = place[moving], math.dist(place[moving], centre)
            moved = {moving: (x + by * (x - centre[0]) / away, y + by * (y - centre[1]) / away)}
            lengths.append(length({**place, **moved}))
        total += abs(lengths[0] - lengths[1]) / 2e-6
    return total


@KINDS
def test_blind_is_under_one_mark(name: str) -> None:
    for check in answer(name)["checks"]:
        if TOLERANCES[name] is None:
            assert check["allowed"] is None and not check["blind"], check
        else:
            assert check["blind"] is (check["allowed"] < MARKS[name]), check


@KINDS
def test_allowed_between_two_stakes(name: str) -> None:
    got, tolerance = answer(name), TOLERANCES[name]
    names, seen = {stake["name"] for stake in got["stakes"]}, 0
    for check in got["checks"]:
        one, two = check["from"], check["to"]
        if tolerance is not None and {one, two} <= names:
            total = freedom(got, lambda at, one=one, two=two: math.dist(at[one], at[two]), [one, two])
            assert check["allowed"] == pytest.approx(tolerance * total, rel=1e-4, abs=1e-9), check
            seen += 1
    at = {stake["name"]: (stake["x"], stake["y"]) for stake in got["stakes"]}
    far = "Q2" not in at or math.dist(at["A"], at["Q2"]) > got["site"]["tape"]["length"]  # then none can be taped
    assert seen or tolerance is None or far


@KINDS
def test_alternate_ordinates_feel_three_stakes(name: str) -> None:
    """A middle ordinate over alternate stakes moves with its stake and with both stakes that carry the
    chord."""
    got, tolerance = answer(name), TOLERANCES[name]
    order, seen = [stake["name"] for stake in got["stakes"]], 0
    for check in got["checks"]:
        if check["kind"] != "alternate" or tolerance is None:
            continue
        (own,) = {check["from"], check["to"]} & set(order)
        before, after = order[order.index(own) - 1], order[order.index(own) + 1]

        def ordinate(at: Any, own: str = own, before: str = before, after: str = after) -> float:
            middle = [(p + q) / 2 for p, q in zip(at[before], at[after], strict=True)]
            return math.dist(at[own], middle)

        assert check["distance"] == pytest.approx(ordinate({s["name"]: (s["x"], s["y"]) for s in got["stakes"]}))
        total = freedom(got, ordinate, [own, before, after])
        assert check["allowed"] == pytest.approx(tolerance * total, rel=1e-4), check
        seen += 1
    assert seen or tolerance is None or JOBS[name]["levels"] == 1


@KINDS
def test_spot_ordinates_feel_their_stake(name: str) -> None:
    """An ordinate from the long chord moves at least with its own stake, at most with the two chord ends as
    well."""
    got, tolerance = answer(name), TOLERANCES[name]
    chord, seen = got["staked"]["chord"], 0
    marks = {mark["name"]: (mark["x"], mark["y"]) for mark in got["marks"]}
    for check in got["checks"]:
        if check["kind"] != "ordinate" or tolerance is None:
            continue
        own, foot = check["to"], check["from"]
        assert marks[foot] == pytest.approx((check["along"], 0.0), abs=1e-9), "an ordinate stands on the chord A-B"
        away = math.dist(marks[own], (chord / 2, got["staked"]["sagitta"] - got["staked"]["radius"]))
        upright = abs(marks[own][1] - got["staked"]["sagitta"] + got["staked"]["radius"]) / away
        assert tolerance * upright * (1 - 1e-6) <= check["allowed"] <= tolerance * (upright + 1) * (1 + 1e-6), check
        seen += 1
    assert seen or tolerance is None or JOBS[name]["levels"] < 3 or name in ("beyond", "nine-tenths")
