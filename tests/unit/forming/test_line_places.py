"""Where a line's pieces lie: stations, joins, headings, the way back, closing; and where its slab lies over itself."""

from __future__ import annotations

from math import cos, degrees, hypot, pi, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bowstring.forming.line.line import TEN_FEET, THREE_METRES, Line
from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.runs import ORIGIN, Pose, Run, loop_area
from bowstring.forming.line.simple import NoCurve
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.tangents import closed
from bowstring.geometry.plane import Point, distance
from unit.forming.walked import lines, walk

WALK = Line((Straight(20.0), Bend.of(31.0, radians(70)), Bend.of(24.0, radians(-40)), Straight(8.5)))
"""A curved walk of four pieces, in feet: straight, left, right, straight."""


def test_a_walk_of_four_pieces() -> None:
    """Worked out by hand from R I and the sines and cosines of 70 and 30 degrees."""
    assert [piece.length for piece in WALK.pieces] == pytest.approx([20, 37.874, 16.755, 8.5], abs=5e-4)
    assert WALK.length == pytest.approx(83.129, abs=5e-4)
    ends = [(20, 0), (49.130, 20.397), (59.683, 32.974), (67.044, 37.224)]
    headings = [0, 70, 30, 30]
    for run, end, heading in zip(WALK.runs, ends, headings, strict=True):
        assert run.end.point == pytest.approx(end, abs=5e-4)
        assert degrees(run.end.heading) == pytest.approx(heading)
    slab = LineSlab(WALK, 3.0, 3.0)
    radii = [[1 / abs(part.run.curvature) for part in edge.runs if part.run.curvature]
             for edge in (slab.left_edge, slab.right_edge)]  # fmt: skip
    assert radii[0] == pytest.approx([28, 27]) and radii[1] == pytest.approx([34, 21])
    assert slab.overlaps == ()


def test_a_kink_of_two_degrees() -> None:
    line = Line((Straight(2.0), Straight(3.0, radians(2)), Bend.of(4.0, 1.0)))
    kinked, tangent = line.joins
    assert kinked.station == 2.0 and degrees(kinked.kink) == pytest.approx(2) and not kinked.tangent
    assert kinked.looks(TEN_FEET) / 0.0254 == pytest.approx(4.25, abs=1 / 16)  # 4-1/4 in, to the nearest eighth
    assert kinked.looks(THREE_METRES) == pytest.approx(0.1047, abs=5e-5)
    assert tangent.tangent and tangent.looks() == 0 and tangent.station == 5.0


@given(lines(kinks=True))
def test_the_places_are_those_of_a_plain_walk(line: Line) -> None:
    for run, row in zip(line.runs, walk(line), strict=True):
        for share in (0, len(row) // 2, len(row) - 1):
            place = run.at(run.length * share / (len(row) - 1))
            assert place.point == pytest.approx(tuple(row[share, :2]), abs=1e-8)
            assert place.heading == pytest.approx(row[share, 2], abs=1e-9)


@given(lines(kinks=True), st.floats(0, 1))
def test_the_way_back_goes_by_the_same_places(line: Line, share: float) -> None:
    back = line.reversed()
    assert back.length == pytest.approx(line.length)
    assert distance(back.end.point, line.start.point) < 1e-8
    station = line.length * share
    assert distance(line.at(station).point, back.at(back.length * (1 - share)).point) < 1e-8
    again = back.reversed()
    assert [piece.kink for piece in again.pieces] == [piece.kink for piece in line.pieces]
    assert [join.kink for join in back.joins] == [-join.kink for join in reversed(line.joins)]


@given(lines(kinks=True))
def test_a_mirror_turns_every_left_to_a_right(line: Line) -> None:
    image = line.mirrored()
    for one, other in zip(line.runs, image.runs, strict=True):
        ahead, left = (one.end.point.minus(line.start.point).dot(way) for way in (line.start.ahead, line.start.left))
        way = other.end.point.minus(line.start.point)
        assert (way.dot(line.start.ahead), way.dot(line.start.left)) == pytest.approx((ahead, -left), abs=1e-8)


@given(lines(kinks=True, most=4))
def test_a_closed_line_ends_at_its_start(line: Line) -> None:
    assume(len(line.pieces) > 1)
    try:
        ring = closed(line)
    except NoCurve as none:  # its start is where it ends, or straight behind: no arc goes there
        assume(none.key not in ("same", "behind"))
        raise
    assert ring.closing.gap < 1e-7
    assert ring.joins[-1].tangent
    turned = sum(piece.kink + piece.turn for piece in ring.pieces) + ring.closing.turn
    assert turned / (2 * pi) == pytest.approx(round(turned / (2 * pi)), abs=1e-9)


@given(st.floats(-0.4, 0.4), st.floats(0.1, 7), st.floats(-2, 2))
def test_a_run_tells_where_a_point_beside_it_is(curvature: float, along: float, left: float) -> None:
    run = Run(Pose(Point(3.0, -2.0), 0.7), 7.0, curvature)
    beside = run.at(along).aside(left)
    assert run.along(beside.point) == pytest.approx(along, abs=1e-7)
    assert run.across(beside.point) == pytest.approx(left, abs=1e-9)
    assert run.holds(run.along(beside.point))


def test_a_circles_area_is_its_loops() -> None:
    half = Run(ORIGIN, pi * 2, 0.5)
    assert loop_area([half, Run(half.end, pi * 2, 0.5)]) == pytest.approx(4 * pi)
    assert Run(ORIGIN, 2 * pi * 0.75 * 2, -0.5).sliver == pytest.approx(-2 * (1.5 * pi - sin(1.5 * pi)))
    assert Run(ORIGIN, 1.0, 1e-9).sliver == pytest.approx(1e-9 / 12, rel=1e-9)


def test_stations_belong_to_one_piece() -> None:
    assert [WALK.place_of(station)[0] for station in (0, 19.9, 20, 40, 60, 75, WALK.length)] == [0, 0, 1, 1, 2, 3, 3]
    for off in (-0.001, WALK.length + 0.001):
        with pytest.raises(ValueError, match="station"):
            WALK.at(off)


def test_what_makes_no_line_is_refused() -> None:
    for pieces in ((), (Straight(1.0, 0.1),), (Straight(1.0), Straight(1.0, pi))):
        with pytest.raises(ValueError, match=r"piece|back"):
            Line(pieces)
    for length in (0.0, -1.0, float("inf"), float("nan")):
        with pytest.raises(ValueError, match="length"):
            Straight(length)
    for radius, turn in ((0.0, 1.0), (-1.0, 1.0), (1.0, 0.0)):
        with pytest.raises(ValueError, match="radius"):
            Bend.of(radius, turn)


@pytest.mark.parametrize("turn", [radians(240), radians(-240)])
def test_a_loop_that_crosses_its_own_way_is_told(turn: float) -> None:
    """A straight, most of a circle and a straight that runs out across the first."""
    line = Line((Straight(30.0), Bend.of(5.0, turn), Straight(30.0)))
    assert LineSlab(line, 1.0, 1.0).overlaps == ((0, 2),)
    short = Line((Straight(30.0), Bend.of(5.0, turn), Straight(3.0)))
    assert LineSlab(short, 1.0, 1.0).overlaps == ()


def test_a_slab_that_only_touches_itself_does_not_overlap() -> None:
    """Two turns back, 10 and 6 m wide: the last straight runs 4 m beside the first."""
    line = Line((Straight(20.0), Bend.of(5.0, pi), Straight(3.0), Bend.of(3.0, pi), Straight(3.0)))
    for half, told in ((0.9, False), (1.999, False), (2.0, False), (2.002, True), (2.5, True)):
        assert bool(LineSlab(line, half, half).overlaps) == told


def test_a_ring_that_closes_does_not_overlap() -> None:
    pad = Line((Straight(10.0), Bend.of(5.0, pi), Straight(10.0), Bend.of(5.0, pi)))
    assert pad.closing.gap < 1e-12 and abs(pad.closing.turn) < 1e-12
    assert LineSlab(pad, 1.0, 1.0).overlaps == ()
    assert LineSlab(pad, 1.0, 1.0).area == pytest.approx(2 * (20 + 10 * pi))
    past = Line((*pad.pieces, Straight(0.01)))
    assert LineSlab(past, 1.0, 1.0).overlaps == ((0, 4),)


def test_a_second_turn_of_one_circle_overlaps() -> None:
    for count, told in ((2, False), (3, True)):
        line = Line((Bend.of(5.0, 3.0),) * count)
        assert bool(LineSlab(line, 1.0, 1.0).overlaps) == told


def test_a_kinked_heading_is_the_next_pieces() -> None:
    line = Line((Straight(2.0), Straight(3.0, radians(30))))
    assert line.at(2.0).heading == pytest.approx(radians(30))
    assert hypot(*line.end.point) == pytest.approx(hypot(2 + 3 * cos(radians(30)), 3 * sin(radians(30))))
