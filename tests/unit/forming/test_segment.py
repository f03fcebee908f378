"""A slab that fills a curve, against shapely's polygons and sums by hand."""

from __future__ import annotations

from math import pi, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon, box

from bowstring.forming.rest import within
from bowstring.forming.segment import Segment
from bowstring.geometry.arc import Arc

FOOT = 0.3048
PIECES = 6000
halves, radii, shares = st.floats(0.02, 3.05), st.floats(0.5, 80), st.floats(0.02, 0.98)


def polygon(arc: Arc) -> Polygon:
    """The slab as a polygon of many sides; between points of a flat arc it lacks (angle/n)²/6 of a sector at most."""
    points = [arc.point_at(place / PIECES) for place in range(PIECES + 1)]
    return Polygon([(point.x, point.y) for point in points])


@given(halves, radii)
def test_the_area_is_shapelys(half: float, radius: float) -> None:
    arc = Arc.of_angle(radius, half)
    assert Segment(arc).area == pytest.approx(polygon(arc).area, rel=1e-6)


@given(halves, radii, shares)
def test_the_area_to_a_line_square_to_the_string_is_shapelys(half: float, radius: float, share: float) -> None:
    arc = Arc.of_angle(radius, half)
    made = Segment(arc)
    cut = box(-made.before - 1, -1, -made.before + share * made.wide, made.deep + 1)
    assert made.area_to(share) == pytest.approx(polygon(arc).intersection(cut).area, abs=1e-6 * made.area)
    assert made.area_to(1.0) == pytest.approx(made.area, rel=1e-9)
    assert made.area_to(0.0) == 0.0


@given(halves, radii, shares)
def test_the_height_at_a_place_is_shapelys(half: float, radius: float, share: float) -> None:
    arc = Arc.of_angle(radius, half)
    made = Segment(arc)
    place = share * made.wide
    line = LineString([(place - made.before, -1), (place - made.before, made.deep + 1)])
    _x, low, _x2, high = polygon(arc).intersection(line).bounds
    assert made.height(place) == pytest.approx((low, high), abs=2e-6 * radius)


@given(halves, radii, st.floats(0.01, 1.2))
def test_what_is_near_both_forms_is_shapelys(half: float, radius: float, part: float) -> None:
    """What is left is within a smaller circle about the same center, and off the string."""
    arc = Arc.of_angle(radius, half)
    made = Segment(arc)
    wide = part * radius
    rest = 0.0
    if wide < radius:
        circle = Arc.of_angle(radius - wide, pi - 1e-9)
        points = [circle.point_at(place / PIECES) for place in range(PIECES)]
        disc = Polygon([(one.x - circle.centre.x + arc.centre.x, one.y - circle.centre.y + arc.centre.y)
                        for one in points])  # fmt: skip
        rest = disc.intersection(box(-9 * radius, wide, 9 * radius, 9 * radius)).area
    assert within(made, wide) == pytest.approx(made.area - rest, abs=2e-6 * radius**2)


def test_sums_by_hand() -> None:
    half_round = Segment(Arc.of_angle(10 * FOOT, pi / 2))
    assert half_round.area / FOOT**2 == pytest.approx(50 * pi)
    assert (half_round.wide / FOOT, half_round.deep / FOOT) == pytest.approx((20, 10))
    quarter = Segment(Arc.of_angle(20.0, pi / 4))
    assert quarter.area == pytest.approx(400 * (pi / 4 - 0.5))  # a quarter disc less its right triangle
    most = Segment(Arc.of_angle(10.0, 5 * pi / 6))  # 300 degrees
    assert most.area == pytest.approx(100 * pi - 50 * (pi / 3 - sqrt(3) / 2))
    assert (most.wide, most.deep, most.before) == pytest.approx((20, 10 + 10 * sqrt(3) / 2, 5))


def test_a_flat_one_keeps_its_digits() -> None:
    made = Segment(Arc.of_angle(1e5, 1e-4))
    assert made.area == pytest.approx(2 / 3 * made.wide * made.deep, rel=1e-8)  # of a parabola two thirds


def test_outside_of_it_there_is_no_slab() -> None:
    with pytest.raises(ValueError, match="no slab"):
        Segment(Arc.of_angle(1.0, 1.0)).height(5.0)
