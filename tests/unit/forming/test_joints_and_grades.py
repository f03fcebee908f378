"""Panels and tops of forms."""

from __future__ import annotations

from math import pi, radians

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bowstring.forming.grades import Grade, crown, cut_or_fill, rod
from bowstring.forming.joints import offered, panels
from bowstring.forming.slab import Slab

FOOT = 0.3048
slabs = st.builds(Slab, st.floats(1, 80), st.floats(0.5, 5), st.floats(0.1, 5.5))


def test_panels_of_a_walk() -> None:
    """5-ft walk, R 20 ft at the center line, 90°, 5 ft at most: 8 panels of 4.42 and 3.44 ft, or 7 (by hand)."""
    walk = Slab(17.5, 5, pi / 2)
    eight, seven = offered(walk, 5)
    assert (eight.count, seven.count) == (8, 7)
    assert eight.outside == pytest.approx(4.42, abs=5e-3) and eight.inside == pytest.approx(3.44, abs=5e-3)
    assert seven.outside == pytest.approx(5.05, abs=5e-3)
    assert eight.outside_marks()[-1] + eight.outside == pytest.approx(walk.outer * walk.angle)
    assert len(eight.inside_marks()) == 7


@given(slabs, st.floats(0.5, 6))
def test_the_fewest_panels_that_are_short_enough(slab: Slab, most: float) -> None:
    first, *rest = offered(slab, most)
    assert first.outside <= most * (1 + 1e-8)
    assert first.count * first.outside == pytest.approx(slab.outer * slab.angle)
    if rest:
        assert rest[0].count == first.count - 1 and rest[0].outside > most * (1 - 1e-8)
    else:
        assert first.count == 1
    assert first.ratio >= 1


@given(st.integers(1, 40), st.floats(0.5, 6))
def test_a_length_of_whole_panels_takes_no_panel_more(count: int, most: float) -> None:
    slab = Slab(10.0, 1.0, count * most / 11.0)
    assume(slab.angle < 6)
    assert offered(slab, most)[0].count == count


def test_no_panel_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one"):
        panels(Slab(10, 1, 1), 0)
    with pytest.raises(ValueError, match="length"):
        offered(Slab(10, 1, 1), 0)


@given(slabs, st.floats(-0.12, 0.12), st.floats(-0.03, 0.03), st.floats(0, 1))
def test_the_slope_along_any_edge_is_that_of_its_own_tops(
    slab: Slab, running: float, cross: float, share: float
) -> None:
    """To 0.01 %, against a numerical derivative of the tops."""
    grade, step = Grade(slab, 0.3, running, cross), 1e-4
    for inward in (0.0, slab.width / 3, slab.width):
        radius = slab.outer - inward
        rise = grade.top(share + step, inward) - grade.top(share - step, inward)
        assert rise / (radius * slab.angle * 2 * step) == pytest.approx(grade.slope_at(radius), abs=1e-6)
    assert grade.steepest == pytest.approx(abs(grade.slope_at(slab.inner)))


def test_a_walk_at_the_limit_is_over_it_inside() -> None:
    """5.0 % along R 20 ft at the center of a 5-ft walk is 5.71 % inside, 4.44 % outside (worked by hand)."""
    grade = Grade(Slab(17.5, 5, 1.0), 0, 0.05, 0)
    assert grade.slope_at(17.5) == pytest.approx(0.0571, abs=5e-5)
    assert grade.slope_at(22.5) == pytest.approx(0.0444, abs=5e-5)
    assert Grade(Slab(17.5, 5, 1.0), 0, grade.most_running(0.05), 0).steepest == pytest.approx(0.05)


@given(slabs, st.floats(-1, 1), st.floats(-1, 1), st.floats(-0.03, 0.03))
def test_the_slope_between_two_tops_meets_both(slab: Slab, start: float, end: float, cross: float) -> None:
    grade = Grade.between(slab, start, end, cross)
    assert grade.top(0, 0) == pytest.approx(start) and grade.top(1, 0) == pytest.approx(end, abs=1e-12)
    assert grade.top(0, 0) - grade.top(0, slab.width) == pytest.approx(cross * slab.width)


def test_a_quarter_inch_a_foot_is_one_in_48() -> None:
    """The cross slope limit of the 2010 ADA Standards, 403.3, 1:48, is exactly 1/4 in per foot."""
    slab = Slab(10 * FOOT, 4 * FOOT, radians(60))
    grade = Grade(slab, 0, 0, 1 / 48)
    assert grade.top(0.5, slab.width) / 0.0254 == pytest.approx(-1.0)


@given(st.floats(1, 12), st.floats(0.01, 0.3), st.integers(0, 6))
def test_on_a_parabola_each_rise_is_a_quarter_of_the_one_before(width: float, rise: float, level: int) -> None:
    half = width / 2 / 2**level  # half a chord that ends in the crown
    above = crown(width, rise, width / 2) - crown(width, rise, width / 2 - half)
    next_rise = crown(width, rise, width / 2 - half / 2) - (rise - above / 2)
    assert next_rise == pytest.approx(above / 4, rel=1e-6)


def test_cut_fill_and_rod() -> None:
    assert cut_or_fill(top=1.0, thickness=0.1, base=0.1, ground=0.9) == pytest.approx(0.1)
    assert cut_or_fill(top=1.0, thickness=0.1, base=0.1, ground=0.7) == pytest.approx(-0.1)
    assert rod(1.52, 0.3) == pytest.approx(1.22)
