"""Givens that contradict each other are never built in silence, and a correct drawing is never stopped."""

from __future__ import annotations

from math import cos, degrees, hypot, radians, sin, tan
from random import Random
from typing import Any

import pytest

from bowstring.geometry.arc import Arc
from bowstring.geometry.given import Given
from bowstring.geometry.givens import settle
from helping import about, solve

MARK = 0.0254 / 8
FOOT = 0.3048
SAID = {"side": "left", "drawn_to": "face"}


def drawn(radius: float, angle: float) -> dict[str, float]:
    """Return an arc's figures by their definitions, its lengths but the radius to the nearest eighth of an inch."""
    half = radians(angle / 2)
    exact = {"chord": 2 * radius * sin(half), "sagitta": radius * (1 - cos(half)), "arc_length": 2 * radius * half}
    if angle < 180:
        exact["tangent_length"] = radius * tan(half)
    rounded = {name: round(value / MARK) * MARK for name, value in exact.items()}
    return {"radius": radius, "central_angle": angle, **rounded}


def drawings(count: int, low: int, high: int) -> list[dict[str, float]]:
    """Return drawings with whole feet of radius and whole degrees; arc length and tangent on every other one."""
    lots = Random(13)
    rows = []
    for number in range(count):
        figures = drawn(lots.randint(6, 120) * FOOT, lots.randint(low, high))
        extra = [("arc_length",), ("tangent_length",), ("arc_length", "tangent_length"), ()][number % 4]
        names = ("radius", "central_angle", "chord", "sagitta", *extra)
        rows.append({name: figures[name] for name in names if name in figures})
    return rows


def disagreeing(figures: dict[str, float]) -> list[str]:
    givens = [Given(name, value) for name, value in figures.items()]
    arc = settle(givens, False, MARK).arc
    return [given.field for given in givens if not given.agrees(arc, MARK)]


def test_correct_drawings_are_never_stopped() -> None:
    for figures in drawings(400, 8, 300):
        with about(figures):
            assert disagreeing(figures) == []


def moved(figures: dict[str, float], name: str, marks: int) -> dict[str, float]:
    step = degrees(MARK / figures["radius"]) if name == "central_angle" else MARK
    return {**figures, name: figures[name] + marks * step}


@pytest.mark.parametrize("marks", [3, -3])
@pytest.mark.parametrize("name", ["chord", "sagitta", "arc_length", "tangent_length", "radius", "central_angle"])
def test_one_given_moved_by_three_marks_always_stops(name: str, marks: int) -> None:
    """From 45 to 90 degrees, where three marks in any of them are over a mark in another."""
    seen = 0
    for figures in drawings(400, 45, 90):
        if name in figures:
            seen += 1
            with about(figures):
                assert disagreeing(moved(figures, name, marks))
    assert seen >= 200


@pytest.mark.parametrize("marks", [3, -3])
@pytest.mark.parametrize("name", ["chord", "sagitta"])
def test_a_chord_or_mid_ordinate_moved_by_three_marks_stops_at_any_angle(name: str, marks: int) -> None:
    for figures in drawings(400, 8, 300):
        figures.pop("tangent_length", None)  # it may be moved by less than a mark of the radius near a half circle
        with about(figures):
            assert disagreeing(moved(figures, name, marks))


def nearest_miss(figures: dict[str, float], near: Arc) -> float:
    """Return the least worst difference in marks that any arc near one has from figures, by a search of its own."""
    radius, half, step = near.radius, near.half_angle, 8 * MARK

    def worst(radius: float, half: float) -> float:
        arc = Arc.of_angle(radius, half)
        apart = [abs(value - arc.measures()[name]) for name, value in figures.items() if name != "central_angle"]
        return max(*apart, abs(radians(figures["central_angle"]) - 2 * half) * radius) / MARK

    best = worst(radius, half)
    while step > MARK / 500:
        around = [(r, a) for r in (-1, 0, 1) for a in (-1, 0, 1)]
        found = min((worst(radius + r * step, half + a * step / radius), r, a) for r, a in around)
        if found[0] < best:
            best, radius, half = found[0], radius + found[1] * step, half + found[2] * step / radius
        else:
            step /= 2
    return best


def test_what_is_not_stopped_really_lies_within_a_mark_of_one_arc() -> None:
    """Three marks in a flat arc's radius hide in the rounding of the rest: one arc has all within a mark."""
    silent = 0
    for figures in drawings(200, 8, 170):
        for name in figures:
            changed = moved(figures, name, 3)
            if not disagreeing(changed):
                silent += 1
                with about(name, changed):
                    near = Arc.of_angle(changed["radius"], radians(changed["central_angle"] / 2))
                    assert nearest_miss(changed, near) <= 1.0 + 1e-6
    assert silent


CONTRADICTIONS: dict[str, tuple[str, dict[str, Any], str, str]] = {
    "a long arc length": ("m", {"chord": 12, "sagitta": 2, "arc_length": 12.5}, "12.500 m", "12.870 m"),
    "a radius of other numbers": ("ft-in", {"chord": "30", "sagitta": "4", "radius": "39"}, "4' 0\"", "3' 0\""),
    "a whole foot is exact": ("ft-in", {"chord": "38 ft", "sagitta": "5' 3\"", "radius": "37' 6\""}, "5' 3\"", "5' 2"),
    "minutes are exact to half of one": ("m", {"radius": 100, "chord": 20, "central_angle": "11°30'"}, "11.5°", "11.4"),
}


@pytest.mark.parametrize(("unit", "arc", "typed", "computed"), CONTRADICTIONS.values(), ids=CONTRADICTIONS)
def test_a_contradiction_stops_and_tells_both_values(unit: str, arc: dict[str, Any], typed: str, computed: str) -> None:
    (stop,) = solve(arc, unit, **SAID)["stops"]
    assert typed in stop and computed in stop


def test_a_difference_within_its_rounding_is_told_and_stops_nothing() -> None:
    answer = solve({"chord": "12.5", "sagitta": "2", "radius": "10.7"}, **SAID)
    assert answer["stops"] == [] and all(row["agrees"] for row in answer["given"])
    (text,) = [text for text in answer["cautions"] if "within its rounding" in text]
    assert "12.500 m" in text and "12.4579 m" in text


def test_nothing_is_told_where_no_given_differs_by_a_mark() -> None:
    answer = solve({"chord": "12", "sagitta": "2", "radius": "10"}, levels=2, **SAID)
    assert answer["cautions"] == [] and answer["stops"] == []


def test_one_odd_given_of_five_is_the_only_one_accused() -> None:
    arc = {"chord": "15.1089", "sagitta": "5.4915", "external": "17.7989", "tangent_length": "24.485",
           "central_angle": "172.457"}  # fmt: skip
    answer = solve(arc, **SAID)
    (stop,) = answer["stops"]
    assert "172.457°" in stop and "144.05" in stop
    assert [row["field"] for row in answer["given"] if not row["agrees"]] == ["central_angle"]
    radius = answer["arc"]["radius"]
    assert radius == pytest.approx(hypot(15.1089 / 2, radius - 5.4915), abs=0.001)


@pytest.mark.parametrize("odd", ["radius", "chord", "sagitta", "arc_length", "central_angle", "tangent_length"])
def test_whichever_given_is_odd_the_others_build_the_arc(odd: str) -> None:
    true = drawn(40 * FOOT, 100)
    wrong = {**true, odd: true[odd] * 1.04}
    settled = settle([Given(name, value) for name, value in wrong.items()], False, MARK)
    assert settled.odd is not None and settled.odd.field == odd
    assert settled.arc.radius == pytest.approx(40 * FOOT, abs=MARK)
    assert disagreeing(wrong) == [odd]


def test_a_degree_of_curve_agrees_within_what_changes_the_arc_by_a_mark() -> None:
    arc = Arc.of_angle(100.0, radians(20))
    value = arc.degree_of_curve
    for marks, agrees in ((0.9, True), (1.1, False), (-0.9, True), (-1.1, False)):
        changed = value * (1 + marks * MARK / arc.arc_length)
        assert Given("degree", changed).agrees(arc, MARK) is agrees
    assert Given("degree", value + 0.004, 0.01).agrees(arc, MARK)
    assert not Given("degree", value + 0.006, 0.01).agrees(arc, MARK)
