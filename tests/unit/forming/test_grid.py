"""Joints of a slab that fills its curve, against shapely and sums by hand."""

from __future__ import annotations

from math import asin, cos, degrees, hypot, pi, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.grid import GridJoint, grid, squarish
from bowstring.forming.joints import NARROW, RATIO
from bowstring.forming.segment import Segment
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point

FOOT = 0.3048
slabs = st.builds(lambda half, radius: Segment(Arc.of_angle(radius, half)), st.floats(0.1, 3.0), st.floats(1, 30))
counts = st.integers(2, 7)


def places(filled: Segment, joint: GridJoint) -> list[Point]:
    """Where a joint meets the curve, in the frame of the string."""
    return [filled.arc.point_at(at / filled.arc.arc_length) for at in joint.arc]


@given(slabs, counts, counts)
def test_every_joint_meets_the_curve_where_it_is_told(filled: Segment, columns: int, rows: int) -> None:
    made = grid(filled, columns, rows)
    near = 1e-6 * filled.arc.radius
    assert (len(made.square), len(made.along)) == (columns - 1, rows - 1)
    for joint in made.square:
        for point in places(filled, joint):
            assert point.x + filled.before == pytest.approx(joint.at, abs=near)
        low, high = filled.height(joint.at)
        assert sorted(point.y for point in places(filled, joint)) == pytest.approx(
            [low, high] if low else [high], abs=near
        )
    for joint in made.along:
        first, last = places(filled, joint)
        assert (first.y, last.y) == pytest.approx((joint.at, joint.at), abs=near)
        assert first.x + last.x == pytest.approx(filled.arc.chord, abs=near)


@given(slabs, counts, counts)
def test_the_corner_is_the_angle_between_a_joint_and_the_curve(filled: Segment, columns: int, rows: int) -> None:
    made = grid(filled, columns, rows)
    step = 1e-6
    for way, joint in [*(((0, 1), one) for one in made.square), *(((1, 0), one) for one in made.along)]:
        share = joint.arc[0] / filled.arc.arc_length
        before, after = (filled.arc.point_at(share + aside) for aside in (-step, step))
        x, y = after.x - before.x, after.y - before.y
        between = asin(min(1.0, abs(x * way[1] - y * way[0]) / hypot(x, y)))
        assert joint.corner == pytest.approx(between, abs=1e-4)


@given(slabs, st.floats(0.5, 5))
def test_panels_are_short_enough_and_near_to_square(filled: Segment, most: float) -> None:
    columns, rows = squarish(filled, most)
    made = grid(filled, columns, rows)
    assert made.longest <= most * (1 + 1e-8)
    if filled.deep >= NARROW:
        assert made.ratio <= RATIO * (1 + 1e-8)


def test_a_half_round_by_hand() -> None:
    """R 10 ft: 20 ft wide, 10 ft deep. In four and two panels, joints stand at 5, 10, 15 ft and 5 ft off the string."""
    filled = Segment(Arc.of_angle(10 * FOOT, pi / 2))
    assert squarish(filled, 5 * FOOT) == (4, 2)
    made = grid(filled, 4, 2)
    assert [joint.at / FOOT for joint in made.square] == pytest.approx([5, 10, 15])
    assert [joint.arc[0] / FOOT for joint in made.square] == pytest.approx([10 * pi / 3, 5 * pi, 20 * pi / 3])
    assert [degrees(joint.corner) for joint in made.square] == pytest.approx([60, 90, 60])
    (half_way,) = made.along
    assert [at / FOOT for at in half_way.arc] == pytest.approx([10 * pi / 6, 50 * pi / 6])
    assert degrees(half_way.corner) == pytest.approx(60)
    assert made.ratio == pytest.approx(1)


def test_past_a_half_circle_joints_beside_the_string_run_from_curve_to_curve() -> None:
    """300 degrees of R 10: 20 wide, the string from 5 to 15. The joint at 2.5 meets the curve twice."""
    filled = Segment(Arc.of_angle(10.0, 5 * pi / 6))
    joint = grid(filled, 8, 1).square[0]
    turned = asin(-0.75)
    assert joint.arc == pytest.approx((10 * (5 * pi / 6 - pi - turned), 10 * (5 * pi / 6 + turned)))
    assert degrees(joint.corner) == pytest.approx(90 - degrees(-turned))
    assert cos(turned) > sin(0.5)  # both places lie off the string


def test_no_panel_is_none() -> None:
    filled = Segment(Arc.of_angle(1.0, 1.0))
    with pytest.raises(ValueError, match="one panel"):
        grid(filled, 0, 1)
    with pytest.raises(ValueError, match="length"):
        squarish(filled, 0.0)
