"""Tops of forms: slopes along and across, crowns, the bed and the rod."""

from __future__ import annotations

from cmath import rect
from itertools import pairwise
from math import pi, radians

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.band import CENTER, INNER, OUTER, Band
from bowstring.forming.grades import EDGES, Grade, crown, cut_or_fill, rod
from bowstring.forming.slab import Lies, Slab

FOOT = 0.3048
slabs = st.builds(Slab, st.floats(1, 80), st.floats(0.5, 5), st.floats(0.1, 5.5))
bands = st.builds(Band.of, slabs)
lies: st.SearchStrategy[Lies] = st.sampled_from(["inside", "outside", "both"])
tapers = st.builds(
    Band.tapered, st.floats(6, 80), st.floats(0.1, 5.5), st.tuples(st.floats(0.5, 5), st.floats(0.5, 5)), lies
)
runnings, crosses, crowns = st.floats(-0.12, 0.12), st.floats(-0.03, 0.03), st.sampled_from([0.0, 0.05])
grades = st.builds(Grade, bands | tapers, st.just(0.3), runnings, crosses, crowns)
tapered = st.builds(Grade, tapers, st.just(0.3), runnings, crosses, crowns)
lines = st.sampled_from([OUTER, CENTER, INNER])
RIGHT = 1e-4
"""To which a slope is stated: 0.01 %."""


def place(band: Band, across: float, share: float) -> complex:
    """Where a line stands, in the plane."""
    return rect(band.radius(across, share), band.angle * share)


def climbs(grade: Grade, across: float, share: float, step: float = 1e-5) -> float:
    """The slope of a line at a place from its own tops and its own places: rise over the distance between two."""
    back, on = share - step, share + step
    run = abs(place(grade.band, across, on) - place(grade.band, across, back))
    return (grade.top(on, across) - grade.top(back, across)) / run


@given(grades, lines, st.floats(0, 1))
def test_the_slope_along_any_line_is_that_of_its_own_tops(grade: Grade, across: float, share: float) -> None:
    """To 0.01 %, against a numerical derivative of the tops; with a crown, too, and where the width changes."""
    assert climbs(grade, across, share) == pytest.approx(grade.slope_at(across, share), abs=RIGHT / 10)


@given(grades, st.floats(0, 1))
def test_nowhere_is_an_edge_steeper_than_stated(grade: Grade, share: float) -> None:
    for across in EDGES:
        assert abs(climbs(grade, across, share)) <= grade.steepest(across) + 1e-6


@given(tapered)
def test_somewhere_an_edge_is_as_steep_as_stated(grade: Grade) -> None:
    """To 0.01 %, over four hundred places of the edge."""
    for across in EDGES:
        found = max(abs(climbs(grade, across, number / 400)) for number in range(401))
        assert grade.steepest(across) == pytest.approx(found, abs=RIGHT)


@given(bands, runnings, crosses)
def test_one_width_has_one_slope_inside(band: Band, running: float, cross: float) -> None:
    """Steeper than the center line by the radii, Rc/Ri."""
    grade, (center, inner) = Grade(band, 0, running, cross), (band.ends(CENTER)[0], band.ends(INNER)[0])
    assert grade.steepest(INNER) == pytest.approx(abs(running) * center / inner)


@given(bands, runnings, crosses, st.floats(0, 1))
def test_the_tops_of_one_width_are_the_formula_s(band: Band, running: float, cross: float, share: float) -> None:
    """z = z0 + g Rc a - x d."""
    grade, width = Grade(band, 0.3, running, cross), band.width(0)
    for across in (0.0, 0.3, 1.0):
        by_hand = 0.3 + running * band.ends(CENTER)[0] * band.angle * share - cross * width * across
        assert grade.top(share, across) == pytest.approx(by_hand, abs=1e-12)


@given(tapers, runnings, crosses, st.floats(0, 1))
def test_a_taper_keeps_both_slopes_at_each_place(band: Band, running: float, cross: float, share: float) -> None:
    grade = Grade(band, 0.3, running, cross)
    across = (grade.top(share, OUTER) - grade.top(share, INNER)) / band.width(share)
    assert across == pytest.approx(cross, abs=1e-9) and grade.top(0, OUTER) == pytest.approx(0.3)
    assert climbs(grade, CENTER, share) == pytest.approx(running, abs=RIGHT / 10)


def test_a_walk_at_the_limit_is_over_it_inside() -> None:
    """5.0 % along R 20 ft at the center of a 5-ft walk is 5.71 % inside, 4.44 % outside (worked by hand)."""
    band = Band.of(Slab(17.5, 5, 1.0))
    grade = Grade(band, 0, 0.05, 0)
    assert grade.steepest(INNER) == pytest.approx(0.0571, abs=5e-5)
    assert grade.steepest(OUTER) == pytest.approx(0.0444, abs=5e-5)
    assert Grade(band, 0, grade.most_running(0.05), 0).steepest(INNER) == pytest.approx(0.05)


@given(grades, st.floats(0.01, 0.1))
def test_the_most_that_keeps_a_limit_keeps_it_and_no_more_does(grade: Grade, limit: float) -> None:
    most, sign = grade.most_running(limit), -1 if grade.running < 0 else 1
    if most <= 1e-3:  # the taper alone is nearly past the limit: nothing is offered
        return

    def held(slope: float) -> float:
        tried = Grade(grade.band, 0.3, sign * slope, grade.cross, grade.crown)
        steepest = [(tried.slope_at(across, number / 500)) * sign for across in EDGES for number in range(501)]
        return max(steepest)

    assert held(most) <= limit + 1e-9 and held(most + RIGHT) > limit


@given(bands | tapers, st.floats(-1, 1), st.floats(-1, 1), crosses)
def test_the_slope_between_two_tops_meets_both(band: Band, start: float, end: float, cross: float) -> None:
    grade = Grade.between(band, start, end, cross)
    assert grade.top(0, OUTER) == pytest.approx(start, abs=1e-12)
    assert grade.top(1, OUTER) == pytest.approx(end, abs=1e-9)


def test_a_quarter_inch_a_foot_is_one_in_48() -> None:
    """The cross slope limit of the 2010 ADA Standards, 403.3, 1:48, is exactly 1/4 in per foot."""
    grade = Grade(Band.of(Slab(10 * FOOT, 4 * FOOT, radians(60))), 0, 0, 1 / 48)
    assert grade.top(0.5, INNER) / 0.0254 == pytest.approx(-1.0)


@given(st.floats(1, 12), st.floats(0.01, 0.3), st.integers(0, 6))
def test_on_a_parabola_each_rise_is_a_quarter_of_the_one_before(width: float, rise: float, level: int) -> None:
    half = width / 2 / 2**level  # half a chord that ends in the crown
    above = crown(width, rise, width / 2) - crown(width, rise, width / 2 - half)
    next_rise = crown(width, rise, width / 2 - half / 2) - (rise - above / 2)
    assert next_rise == pytest.approx(above / 4, rel=1e-6)


@given(slabs, st.floats(0.01, 0.1))
def test_a_crown_is_steepest_at_its_edges(slab: Slab, rise: float) -> None:
    """Against a numerical derivative across, at a hundred places."""
    grade, step = Grade(Band.of(slab), 0, 0.02, 0, rise), 1e-6
    falls = [
        abs(grade.top(0.4, across + step) - grade.top(0.4, across)) / (step * slab.width)
        for across in (number / 100 for number in range(100))
    ]
    assert grade.across_slope() == pytest.approx(max(falls), rel=1e-4)
    assert grade.top(0.4, OUTER) == pytest.approx(grade.top(0.4, INNER))
    assert grade.top(0.4, CENTER) - grade.top(0.4, OUTER) == pytest.approx(rise)


def test_cut_fill_and_rod() -> None:
    assert cut_or_fill(top=1.0, thickness=0.1, base=0.1, ground=0.9) == pytest.approx(0.1)
    assert cut_or_fill(top=1.0, thickness=0.1, base=0.1, ground=0.7) == pytest.approx(-0.1)
    assert rod(1.52, 0.3) == pytest.approx(1.22)


def test_a_band_needs_two_edges() -> None:
    for outer, inner, angle in (
        ((5.0, 5.0), (0.0, 1.0), 1.0),
        ((5.0, 2.0), (3.0, 3.0), 1.0),
        ((5.0, 5.0), (3.0, 3.0), 0.0),
    ):
        with pytest.raises(ValueError, match="two edges"):
            Band(outer, inner, angle)


@given(bands | tapers, lines, st.floats(0.01, 1))
def test_a_line_is_as_long_as_many_short_chords_of_it(band: Band, across: float, share: float) -> None:
    places = [place(band, across, share * number / 1000) for number in range(1001)]
    by_chords = sum(abs(on - back) for back, on in pairwise(places))
    assert band.length(across, share) == pytest.approx(by_chords, rel=(band.angle / 1000) ** 2 + 1e-6)


def test_a_half_circle_s_center_line() -> None:
    assert Band.of(Slab(9.0, 2.0, pi)).length(CENTER) == pytest.approx(10 * pi)
