"""How clear of an obstacle a string, tape or sight passes, against shapely's plane geometry.

The arc is that of the 3-4-5 triangle: chord 40 m, sagitta 10 m, radius 25 m.
"""

from __future__ import annotations

import re
from math import asin
from typing import cast

import pytest
from hypothesis import assume, given
from shapely import LineString, Polygon
from shapely.ops import substring

from bowstring import answer
from bowstring.analysis.obstructions import CLEAR
from bowstring.analysis.reach import Limits, blocks_of
from bowstring.construction import Recipe
from bowstring.geometry.arc import Arc
from bowstring.geometry.outlines import BY_END, Circle, brushes, gap_to
from bowstring.geometry.plane import Point, distance
from bowstring.job.form import JobForm
from bowstring.job.obstacles import Obstacle
from bowstring.methods.catalogue import BY_NAME
from bowstring.methods.method import recipe_of, stakes_for
from bowstring.methods.setting import Setting
from bowstring.units.sizes import INCH
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from outline_shapes import spots, stars

ARC = Arc.of_angle(25.0, asin(0.8))


def ordinates() -> Recipe:
    setting = Setting(ARC)
    stakes = stakes_for(BY_NAME["ordinates"], setting, levels=2, spacing=None)
    return recipe_of(BY_NAME["ordinates"], setting, stakes)


def test_a_string_passes_a_trunk_by_the_width_of_a_hand_and_no_less() -> None:
    """A trunk 1 m thick beside the chord, at 2.9, 3 and 3.1 in from the string, and by a hair; 3 in of clearance:
    common practice, no source."""
    for inches, stops in ((0.0, True), (0.01, True), (2.9, True), (3.0, False), (3.1, False), (12.0, False)):
        oak = Obstacle("oak", True, Circle.around(Point(20.0, -(0.5 + inches * INCH)), 0.5))
        blocks = blocks_of(ARC, ordinates(), Limits(1e6, {}, [oak]))
        blocked = [one for one in blocks if {one.start, one.end} == {"A", "B"}]
        assert bool(blocked) is stops, inches
        assert all(one.gap == pytest.approx(inches * INCH) for one in blocked)


@given(stars(), spots, spots)
def test_how_near_a_way_passes_is_shapelys(outline: list[Point], a: Point, b: Point) -> None:
    assume(distance(a, b) > 1e-3)
    assert gap_to(outline, a, b) == pytest.approx(Polygon(outline).distance(LineString([a, b])), abs=1e-9)


@given(stars(), spots, spots)
def test_a_way_that_is_clear_all_along_is_free_and_one_that_comes_near_in_its_middle_is_not(
    outline: list[Point], a: Point, b: Point
) -> None:
    """Against shapely: the outline grown by the clearance, and the way without what lies by its ends."""
    assume(distance(a, b) > 2 * BY_END + 0.1)
    shape, whole, clear = Polygon(outline), LineString([a, b]), 0.3
    inner = substring(whole, BY_END, whole.length - BY_END)
    assume(all(abs(shape.distance(line) - clear) > 1e-4 for line in (whole, inner)))
    if shape.distance(whole) > clear:
        assert not brushes(outline, a, b, clear)
    if shape.distance(inner) < clear:
        assert brushes(outline, a, b, clear)


@pytest.mark.parametrize(
    ("end", "stops"),
    [((9.0, 0.0), True), ((9.0, -0.02), True), ((9.0, -0.5), True), ((9.0, -2.0), False), ((4.0, -9.0), False)],
)
def test_a_stake_may_stand_against_a_wall_that_its_string_runs_away_from(end: tuple[float, float], stops: bool) -> None:
    """A wall along y = 0, the stake at its middle: 0.6 m out the strings are 0, 2, 60 and 223 mm off it, and more."""
    wall = [Point(0, 0), Point(9, 0), Point(9, 2), Point(0, 2)]
    for a, b in ((Point(4.0, 0.0), Point(*end)), (Point(*end), Point(4.0, 0.0))):
        assert brushes(wall, a, b, 3 * INCH) is stops


def test_a_string_may_not_come_nearer_to_a_trunk_than_its_own_stake_stands() -> None:
    """A stake stands 2 in from a trunk; the string from it runs away from that trunk, or past it by an inch."""
    stake, trunk = Point(0.0, 0.0), Circle.around(Point(0.15 + 2 * INCH, 0.0), 0.15)
    assert not brushes(trunk, stake, Point(-5.0, 0.1), 3 * INCH)
    assert not brushes(trunk, stake, Point(0.0, 9.0), 3 * INCH)
    ahead = Circle.around(Point(0.3, 0.15 + INCH), 0.15)
    assert distance(stake, ahead.centre) - 0.15 > 2 * INCH
    assert brushes(ahead, stake, Point(9.0, 0.0), 3 * INCH)


# The job's own cards and words. A chord of 38 ft, and an oak 1 ft thick behind it, 10 ft from A.


def with_oak(behind: str, **more: object) -> JobForm:
    oak = {"name": "oak", "stops": "tape", "at": ["10 ft", f"-{behind}"], "diameter": "1 ft"}
    job = {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face", "method": "halving"}
    return cast("JobForm", {**job, "ground": [oak], **more})


@pytest.mark.parametrize(("behind", "gap"), [("9 in", '3"'), ("1 ft", '6"'), ("17 in", '11"')])
def test_a_card_says_that_its_string_passes_something_by_less_than_a_foot(behind: str, gap: str) -> None:
    """Half of 1 ft is the trunk's own."""
    answered = answer(with_oak(behind))
    assert not answered["stops"]
    string = next(card for card in answered["cards"] if card["kind"] == "string")
    assert say("card.note.close", what="oak", gap=gap) in string["notes"]


def test_a_card_of_several_pulls_says_which_of_them_passes_close() -> None:
    """K1 is set from A and from B by tapes; the oak stands beside the tape from A."""
    job = {**with_oak("9 in"), "method": "tapes", "levels": 1}
    job["ground"] = [{"name": "oak", "stops": "tape", "at": ["6 ft", "2' 10\""], "diameter": "1 ft"}]
    notes = [note for card in answer(cast("JobForm", job))["cards"] for note in card["notes"] if "oak" in note]
    assert any(re.fullmatch(r"A-K1: \S+ clear of oak\.", note) for note in notes), notes


def test_nothing_is_said_of_what_stands_a_foot_off_or_stops_no_tape() -> None:
    pond = with_oak("9 in")
    pond["ground"][0]["stops"] = "feet"
    for job in (with_oak("19 in"), pond):
        assert "oak" not in " ".join(note for card in answer(job)["cards"] for note in card["notes"])


def test_what_is_too_near_stops_its_method_and_is_told_with_how_near_it_passes() -> None:
    answered = answer(with_oak("8 in"))
    assert answered["stops"]
    near = say("block.string_near", start="A", end="B", gap='2"', what="oak", clear='3"')
    for behind, told in (("8 in", near), ("2 in", say("block.string", start="A", end="B", what="oak"))):
        halving = next(row for row in answer(with_oak(behind))["methods"] if row["method"] == "halving")
        assert told in [one["text"] for one in halving["blocks"]]


def test_in_metres_it_is_75_millimetres() -> None:
    def job(behind: float) -> JobForm:
        oak = {"name": "oak", "stops": "tape", "at": [3.0, -behind], "diameter": 0.3}
        return with_oak("1 ft", unit="m", arc={"chord": 12, "sagitta": 1.6}, ground=[oak])

    for behind, strung in ((0.22, False), (0.226, True)):
        kinds = {step["kind"] for step in answer(job(behind))["steps"]}
        assert ("string" in kinds, "string_none" in kinds) == (strung, not strung)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_field_says_how_clear_a_string_passes(language: str) -> None:
    speak(language)
    try:
        assert f"{CLEAR[True] / INCH:g} in" in say("form.ground_stops.help")
        assert f"{CLEAR[False] * 1000:g} mm" in say("form.ground_stops.help.metric")
    finally:
        speak("english")
