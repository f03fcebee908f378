"""A slab with one rounded end or two, against shapely's polygons and sums by hand."""

from __future__ import annotations

import itertools
from math import acos, asin, degrees, hypot, pi, radians, sqrt

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.affinity import scale, translate
from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union

from bowstring.forming.grid import grid, rows_of, squarish
from bowstring.forming.joints import LEAST_CORNER, RATIO
from bowstring.forming.pad import Pad, takes_sides
from bowstring.forming.rest import within
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point

FOOT = 0.3048
PIECES = 3000
halves, radii, shares = st.floats(0.02, pi / 2), st.floats(0.5, 80), st.floats(0.02, 0.98)
parts = st.floats(0.05, 4)  # of the string: how long the sides are
pads = st.builds(
    lambda half, radius, part, both: Pad(made := Arc.of_angle(radius, half), part * made.chord, both),
    halves, radii, parts, st.booleans(),
)  # fmt: skip


def polygon(made: Pad) -> Polygon:
    """The slab put together of a segment, a rectangle and the segment turned over, as polygons of many sides."""
    arc = made.arc
    points = [arc.point_at(place / PIECES) for place in range(PIECES + 1)]
    curve = Polygon([(point.x, point.y) for point in points])
    pieces = [curve, box(0, -made.sides, arc.chord, 1e-9 * arc.chord)]
    if made.both:
        pieces.append(translate(scale(curve, 1, -1, origin=(0, 0)), 0, -made.sides))
    return unary_union(pieces)


@given(pads)
def test_the_area_is_shapelys(made: Pad) -> None:
    assert made.area == pytest.approx(polygon(made).area, rel=1e-6)


@given(pads, shares)
def test_the_area_up_to_a_front_is_shapelys(made: Pad, share: float) -> None:
    whole, wide = polygon(made), made.arc.chord
    across = box(-1, -1e4, share * wide, 1e4)
    assert made.area_to(share) == pytest.approx(whole.intersection(across).area, abs=1e-6 * made.area)
    back = box(-1, made.foot - 1, wide + 1, made.foot + share * made.deep)
    assert made.area_from_back(share) == pytest.approx(whole.intersection(back).area, abs=1e-6 * made.area)
    assert (made.area_to(1.0), made.area_from_back(1.0)) == pytest.approx((made.area, made.area), rel=1e-9)
    assert (made.area_to(0.0), made.area_from_back(0.0)) == pytest.approx((0.0, 0.0), abs=1e-9 * made.area)


@given(pads, shares)
def test_the_height_at_a_place_is_shapelys(made: Pad, share: float) -> None:
    place = share * made.wide
    _x, low, _x2, high = polygon(made).intersection(LineString([(place, -1e4), (place, 1e4)])).bounds
    assert made.height(place) == pytest.approx((low, high), abs=2e-6 * made.arc.radius)


@given(pads, st.floats(0.01, 0.8))
def test_what_is_near_all_forms_is_shapelys(made: Pad, part: float) -> None:
    """What is left lies within a smaller circle about the same center, or straight behind that, and off the sides."""
    arc, wide = made.arc, part * made.arc.chord / 2
    inner = arc.radius - wide
    circle = Arc.of_angle(inner, asin((arc.chord / 2 - wide) / inner))
    points = [circle.point_at(place / PIECES) for place in range(PIECES + 1)]
    up = arc.sagitta - wide - circle.sagitta
    under = Polygon([(wide, -9e3), *((one.x + wide, one.y + up) for one in points), (arc.chord - wide, -9e3)])
    left = under.intersection(box(wide, wide - made.sides if not made.both else -9e3, arc.chord - wide, 9e3))
    if made.both:
        left = left.intersection(translate(scale(under, 1, -1, origin=(0, 0)), 0, -made.sides))
    assert within(made, wide) == pytest.approx(made.area - left.area, abs=4e-6 * made.area)
    drawn_in = polygon(made).buffer(-wide, join_style="mitre").area  # simplified by a hundredth of the band
    assert within(made, wide) == pytest.approx(made.area - drawn_in, abs=5e-3 * made.area)


@given(pads, st.floats(0.02, 2.0))
def test_the_dig_is_shapelys_with_its_corners_square(made: Pad, past: float) -> None:
    """Drawn out by the band, corners run on until they meet; against a building nothing is dug past its face. Shapely
    moves its lines by a hundredth of the band before it draws them out."""
    assume(past < made.arc.radius)
    wide = polygon(made).buffer(past, join_style="mitre", mitre_limit=99)
    moved = 0.01 * past * wide.length
    assert made.dug(past) == pytest.approx(wide.area, abs=moved)
    if not made.both:
        to_face = wide.intersection(box(-9e3, -made.sides, 9e3, 9e3)).area
        assert Pad(made.arc, made.sides, against=True).dug(past) == pytest.approx(to_face, abs=moved)


def test_sums_by_hand() -> None:
    """A half circle of R 10 ft before a rectangle of 20 by 15: 157.08 and 300 square feet, 25 ft on either diagonal."""
    made = Pad(Arc.of_angle(10 * FOOT, pi / 2), 15 * FOOT)
    assert made.area / FOOT**2 == pytest.approx(50 * pi + 300)
    assert made.diagonal / FOOT == pytest.approx(25)
    assert (made.deep / FOOT, made.wide / FOOT, made.foot / FOOT) == pytest.approx((25, 20, -15))
    assert made.tangent and degrees(made.joined) == pytest.approx(180)
    both = Pad(made.arc, made.sides, both=True)
    assert (both.area / FOOT**2, both.deep / FOOT) == pytest.approx((100 * pi + 300, 35))
    low = Pad(Arc.of_angle(20.0, pi / 6), 5.0)
    assert not low.tangent and degrees(low.joined) == pytest.approx(120)
    assert low.area == pytest.approx(400 * (pi / 6 - sqrt(3) / 4) + 100)


@given(pads, shares)
def test_diagonals_and_corners_are_those_of_the_coordinates(made: Pad, share: float) -> None:
    place = made.arc.point_at(share)
    first, last = made.back_of(Point(0.0, 0.0)), made.back_of(Point(made.arc.chord, 0.0))
    assert hypot(last.x, last.y) == pytest.approx(made.diagonal)
    assert hypot(first.x - made.arc.chord, first.y) == pytest.approx(made.diagonal)
    twin, there = made.back_of(place), polygon(made)
    assert there.boundary.distance(LineString([(twin.x, twin.y), (twin.x, twin.y - 1e-9)])) < 1e-5 * made.arc.radius


def test_no_sides_run_back_from_more_than_a_half_circle() -> None:
    assert takes_sides(Arc.of_angle(3.0, asin(1.0)))
    for arc, sides in ((Arc.of_angle(3.0, pi / 2 + 1e-3), 2.0), (Arc.of_angle(3.0, 1.0), 0.0)):
        with pytest.raises(ValueError, match="straight sides"):
            Pad(arc, sides)


@given(pads, st.integers(1, 5), st.integers(1, 7))
def test_joints_meet_the_edge_where_they_are_told(made: Pad, columns: int, rows: int) -> None:
    joints, near, half = grid(made, columns, rows), 1e-6 * made.arc.radius, made.arc.chord / 2
    assert (len(joints.square), len(joints.along)) == (columns - 1, rows - 1)
    for joint in joints.square:
        (at,) = joint.arc
        assert made.arc.point_at(at / made.arc.arc_length).x == pytest.approx(joint.at, abs=near)
    offs = [joint.at for joint in joints.along]
    assert offs == sorted(offs) and all(made.foot < off < made.arc.sagitta for off in offs)
    for joint in joints.along:
        edges = polygon(made).intersection(LineString([(-1.0, joint.at), (2 * half + 1, joint.at)])).bounds
        if not joint.arc:
            assert -made.sides <= joint.at <= 0
            assert (edges[0], edges[2]) == pytest.approx((0, 2 * half), abs=near)
            continue
        assert joint.at > 0 or (made.both and joint.at < -made.sides)
        found = [made.arc.point_at(at / made.arc.arc_length) for at in joint.arc]
        off = joint.at if joint.at > 0 else -made.sides - joint.at
        assert [point.y for point in found] == pytest.approx([off, off], abs=near)
        assert (found[0].x, found[1].x) == pytest.approx((edges[0], edges[2]), abs=1e-4 * half)
    levels = [made.foot, *offs, made.arc.sagitta]
    depths = [after - before for before, after in itertools.pairwise(levels)]
    assert min(depths) > 0
    assert (min(joints.depths), max(joints.depths)) == pytest.approx((min(depths), max(depths)), rel=1e-6)


@given(pads, st.integers(1, 5), st.integers(1, 7))
def test_no_joint_along_the_string_meets_the_curve_sharply(made: Pad, columns: int, rows: int) -> None:
    for joint in grid(made, columns, rows).along:
        assert degrees(joint.corner) >= LEAST_CORNER - 1e-6


@given(pads, st.floats(0.8, 5))
def test_panels_are_short_enough(made: Pad, most: float) -> None:
    assume(made.deep < 12 * most and made.wide < 12 * most)
    columns, rows = squarish(made, most)
    assert grid(made, columns, rows).longest <= max(most, made.arc.sagitta + 2 * FOOT) * (1 + 1e-8)
    assert rows_of(made, columns, most) >= 1


def test_a_round_ended_pad_goes_into_squares() -> None:
    """20 ft wide, a half circle and 10 ft of sides: 20 by 20, in two by two of 10 ft."""
    made = Pad(Arc.of_angle(10 * FOOT, pi / 2), 10 * FOOT)
    assert squarish(made, 10 * FOOT) == (2, 2)
    joints = grid(made, 2, 2)
    assert (joints.ratio, joints.end) == (pytest.approx(1), None)
    assert [joint.at for joint in joints.along] == pytest.approx([0.0])


def test_a_shallow_end_takes_a_deeper_row() -> None:
    """30 ft wide, a rise of 3 ft and 15 ft of sides: in even rows of 9 ft no joint meets the curve, in rows of 6 ft
    the last would stand 3 ft inside, and in rows of 1.8 ft the last stands a foot down the sides."""
    rise, half = 3 * FOOT, 15 * FOOT
    arc = Arc.of_angle((half**2 + rise**2) / (2 * rise), acos(1 - 2 * rise**2 / (half**2 + rise**2)))
    made = Pad(arc, 15 * FOOT)
    assert arc.chord / FOOT == pytest.approx(30)
    assert [joint.at / FOOT for joint in grid(made, 3, 2).along] == pytest.approx([-6])
    many = grid(made, 3, 10)
    assert many.along[-1].at / FOOT == pytest.approx(-1)
    assert many.end is not None and many.end / FOOT == pytest.approx(4)
    assert many.deep / FOOT == pytest.approx(14 / 9)
    assert many.ratio == pytest.approx(10 / (14 / 9)) and many.ratio > RATIO
    assert radians(LEAST_CORNER) > arc.half_angle
