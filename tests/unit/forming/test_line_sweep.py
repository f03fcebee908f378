"""A slab along random lines, swept: areas up to a front, its places on both edges, and joints, against shapely."""

from __future__ import annotations

from itertools import pairwise
from math import pi, radians

import numpy as np
import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon

from bowstring.forming.joints import offered
from bowstring.forming.joints import panels as panels_of_arc
from bowstring.forming.line.edges import Edge, NoEdge
from bowstring.forming.line.line import Line
from bowstring.forming.line.panels import LinePanels, fewest, spread
from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.sides import part_of, point_on, sides_of
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.sweep import Sweep
from bowstring.forming.partly import bands_to
from bowstring.forming.slab import Slab
from unit.forming.walked import STEP, lines, union

sides = st.one_of(st.just(0.0), st.floats(0.3, 1.9))
shares = st.floats(0, 1)


def sweep_of(line: Line, left: float, right: float) -> Sweep:
    """The sweep of a slab that doesn't lie over itself, or no example."""
    assume(left + right > 0)
    try:
        slab = LineSlab(line, left, right)
    except NoEdge:
        assume(False)
        raise
    assume(not slab.overlaps)
    return Sweep(slab)


def traced(edge: Edge, start: float, end: float) -> list[tuple[float, float]]:
    """The points of an edge between two places along it."""
    points = []
    for run in part_of(edge, start, end):
        count = max(2, int(abs(run.turn) / STEP) + 2)
        points += [tuple(run.at(along).point) for along in np.linspace(0, run.length, count)]
    return points


def until(sweep: Sweep, left: float, right: float) -> Polygon:
    """The slab up to a front, by the points of both edges."""
    one, other = traced(sweep.slab.left_edge, 0, left), traced(sweep.slab.right_edge, 0, right)
    return Polygon([*one, *other[::-1]])


def cut_at(line: Line, piece: int, share: float) -> Line:
    """The line without what lies past a share of a piece."""
    own = line.pieces[piece]
    part = (
        Straight(own.length * share, own.kink)
        if isinstance(own, Straight)
        else Bend.of(own.radius, own.turn * share, own.kink)
    )
    return Line((*line.pieces[:piece], part), line.start)


@settings(deadline=None, max_examples=40)
@given(lines(), sides, sides, st.data())
def test_the_area_up_to_a_square_front_is_shapelys(line: Line, left: float, right: float, data: st.DataObject) -> None:
    """Against the strips of the pieces before it, put together from their centers."""
    sweep = sweep_of(line, left, right)
    piece, share = data.draw(st.integers(0, len(line.pieces) - 1)), data.draw(st.floats(0.01, 1))
    shape = union(cut_at(line, piece, share), left, right)
    at = sweep.share_across(piece, share)
    assert sweep.area_to(at) == pytest.approx(shape.area, rel=1e-6)
    front, place = sweep.front(at), line.runs[piece].at(line.pieces[piece].length * share)
    for edge, along, off in ((sweep.slab.left_edge, front.left, left), (sweep.slab.right_edge, front.right, -right)):
        assert tuple(point_on(edge, along)) == pytest.approx(tuple(place.aside(off).point), abs=1e-7)


@settings(deadline=None, max_examples=40)
@given(lines(kinks=True, most=4), sides, sides, shares)
def test_the_area_up_to_any_front_is_shapelys(line: Line, left: float, right: float, share: float) -> None:
    """At kinks, too, where it turns about the inner corner."""
    sweep = sweep_of(line, left, right)
    front = sweep.front(share)
    assume(front.left > 0.01 and front.right > 0.01)
    shape = until(sweep, *front)
    assume(shape.is_valid)  # a front that turns may cross the edge of a piece that bends back toward the kink
    assert sweep.area_to(share) == pytest.approx(shape.area, rel=2e-6, abs=2e-6)


@settings(deadline=None, max_examples=40)
@given(lines(kinks=True, most=5), sides, sides)
def test_a_sweep_goes_on_from_start_to_end(line: Line, left: float, right: float) -> None:
    sweep = sweep_of(line, left, right)
    for first, then in pairwise(np.linspace(0, 1, 14)):
        assert sweep.area_to(first) < sweep.area_to(then)
        before, after = sweep.front(first), sweep.front(then)
        assert before.left <= after.left + 1e-9 and before.right <= after.right + 1e-9
    assert sweep.front(0.0) == pytest.approx((0, 0), abs=1e-9)
    assert sweep.front(1.0) == pytest.approx((sweep.slab.left_edge.length, sweep.slab.right_edge.length))
    assert sweep.area_to(1.0) == pytest.approx(sweep.slab.area, rel=1e-12)


@settings(deadline=None, max_examples=40)
@given(lines(kinks=True, most=5), sides, sides)
def test_the_turns_round_a_kink_are_its_area(line: Line, left: float, right: float) -> None:
    sweep = sweep_of(line, left, right)
    for number, one in enumerate(sweep.stretches):
        if one.turns:
            turned = sum(sweep.turned(turn, turn.end) for turn in one.turns)
            assert turned == pytest.approx(sweep._areas[number + 1] - sweep._areas[number], rel=1e-6, abs=1e-7)


@settings(deadline=None, max_examples=40)
@given(lines(kinks=True), sides, sides)
def test_sides_are_the_edges_pieces(line: Line, left: float, right: float) -> None:
    sweep = sweep_of(line, left, right)
    for edge in (sweep.slab.left_edge, sweep.slab.right_edge):
        found = sides_of(edge)
        assert [side.length for side in found] == pytest.approx(list(edge.lengths))
        for side, run in zip(found, line.runs, strict=True):
            low, high = side.square
            middle = (low + high) / 2
            off = run.at(run.length * middle).aside(edge.left).point
            assert tuple(point_on(edge, side.at(middle))) == pytest.approx(tuple(off), abs=1e-7)
            assert side.share(side.at(middle)) == pytest.approx(middle)


@settings(deadline=None, max_examples=40)
@given(lines(most=4), st.floats(0.4, 1.9), st.floats(0.4, 1.9), st.floats(0.1, 0.6), shares)
def test_bands_along_both_edges_are_shapelys(line: Line, left: float, right: float, wide: float, share: float) -> None:
    """The strips along both edges of the line that is cut off at the front."""
    sweep = sweep_of(line, left, right)
    number, part = sweep._stretch(share)
    piece = sweep.stretches[number].first[0]
    assume(part > 0.01)
    cut = cut_at(line, piece, part)
    wide = min(wide, (left + right) / 2)
    strips = [union(cut, left, wide - left), union(cut, wide - right, right)]
    assert sweep.bands_to(wide, share) == pytest.approx(sum(one.area for one in strips), rel=1e-6)
    assert sweep.bands_to(left + right, share) == pytest.approx(sweep.area_to(share))


@settings(deadline=None, max_examples=40)
@given(st.floats(3, 60), st.floats(0.1, 4), st.booleans(), st.floats(0.5, 2), st.floats(0.3, 3), shares)
def test_one_arc_is_as_the_arc_alone(
    radius: float, turn: float, to_left: bool, width: float, most: float, share: float
) -> None:
    line = Line((Bend.of(radius, turn if to_left else -turn),))
    sweep, ring = Sweep(LineSlab(line, width / 2, width / 2)), Slab(radius - width / 2, width, turn)
    outer = 1 if to_left else 0
    made, alone = fewest(sweep, most), offered(ring, most)[0]
    assert made.count == alone.count
    assert [mark.front[outer] for mark in made.marks] == pytest.approx(list(alone.outer))
    assert [mark.front[1 - outer] for mark in made.marks] == pytest.approx(list(alone.inner))
    assert (made.longest, made.shortest) == pytest.approx((alone.outside, alone.inside))
    assert made.ratio == pytest.approx(alone.ratio)
    assert spread(sweep, 7).sides[0][outer] == pytest.approx(panels_of_arc(ring, 7).outside)
    assert sweep.bands_to(0.2, share) == pytest.approx(bands_to(ring, 0.2, share))
    assert sweep.area_to(share) == pytest.approx(ring.area * share)


def across(made: LinePanels, number: int) -> LineString:
    """The joint at the end of a panel, as a line."""
    slab, front = made.sweep.slab, made.marks[number - 1].front
    return LineString([point_on(slab.left_edge, front.left), point_on(slab.right_edge, front.right)])


@settings(deadline=None, max_examples=40)
@given(lines(kinks=True, most=4), st.floats(0.4, 1.2), st.floats(0.4, 1.2), st.floats(1, 4))
def test_joints_part_the_slab_as_shapely_has_it(line: Line, left: float, right: float, most: float) -> None:
    """Each is as long as the mark says and square but at kinks, and none cuts another; panels make up the slab."""
    sweep = sweep_of(line, left, right)
    made = fewest(sweep, most)
    joints = [across(made, number) for number in range(1, made.count)]
    for joint, mark in zip(joints, made.marks, strict=False):
        assert joint.length == pytest.approx(mark.length, rel=1e-6)
        if mark.share is not None:
            assert mark.length == pytest.approx(left + right)
    for one, other in pairwise(joints):
        assert shapely.distance(one, other) > 1e-6
    filled = [0.0, *(made.share(number) for number in range(1, made.count + 1))]
    assert all(before < after for before, after in pairwise(filled))
    for number, share in enumerate(filled[1:], 1):
        assert tuple(sweep.front(share)) == pytest.approx(tuple(made.marks[number - 1].front), abs=1e-5)
    assert sum(one for one, _other in made.sides) == pytest.approx(sweep.slab.left_edge.length)
    assert sum(other for _one, other in made.sides) == pytest.approx(sweep.slab.right_edge.length)


@settings(deadline=None, max_examples=40)
@given(lines(), sides, sides, st.floats(0.5, 4))
def test_no_panel_of_a_tangent_line_is_longer_than_the_most(line: Line, left: float, right: float, most: float) -> None:
    sweep = sweep_of(line, left, right)
    made = fewest(sweep, most)
    assert made.longest <= most * (1 + 1e-7)
    fewer = [LinePanels(sweep, (*made.counts[:at], one - 1, *made.counts[at + 1 :]))
             for at, one in enumerate(made.counts) if one > 1]  # fmt: skip
    assert all(one.longest > most * (1 - 1e-7) for one in fewer)
    assert len(made.marks) == sum(made.counts)
    assert all(made.corner(join) == pi / 2 for join in range(len(line.pieces) - 1))


@settings(deadline=None, max_examples=40)
@given(lines(), sides, sides, st.floats(0.5, 4), st.floats(0.1, 0.4), st.floats(0.6, 0.9))
def test_a_joint_that_has_to_stand_on_a_line_does(
    line: Line, left: float, right: float, most: float, one: float, other: float
) -> None:
    sweep, last = sweep_of(line, left, right), len(line.pieces) - 1
    stops = tuple((one, other) if piece == last else () for piece in range(last + 1))
    made = fewest(sweep, most, stops)
    assert made.longest <= most * (1 + 1e-7)
    assert {one, other} <= {mark.share for mark in made.marks if mark.piece == last}
    assert len(spread(sweep, 1, stops).marks) == last + 3


def test_a_square_corner_by_hand() -> None:
    """Legs of 6 and 4 m turning left, 1 m to each hand: the miter goes from (7, -1) to (5, 1)."""
    sweep = Sweep(LineSlab(Line((Straight(6.0), Straight(4.0, radians(90)))), 1.0, 1.0))
    made = spread(sweep, 5)
    assert made.counts == (3, 2)
    # Even along the outer form of 7 m: joints at 7/3 and 14/3.
    assert [mark.front for mark in made.marks] == [
        pytest.approx(front) for front in ((7 / 3, 7 / 3), (14 / 3, 14 / 3), (5, 7), (5.5, 9.5), (8, 12))
    ]
    assert made.marks[2].length == pytest.approx(8**0.5)
    assert made.corner(0) == pytest.approx(radians(45))
    assert (made.longest, made.shortest) == pytest.approx((2.5, 1 / 3))
    # Up to the miter: 5 m of 2 m, and half of the square of 2 m.
    assert sweep.area_to(made.share(3)) == pytest.approx(12)
    assert sweep.front(made.share(3)) == pytest.approx((5, 7))


def test_a_short_piece_between_kinks_to_both_hands() -> None:
    """No front stands square to it: the two miters share it."""
    kinked = (Straight(8.0), Straight(2.0, radians(80)), Straight(8.0, radians(-80)))
    sweep = Sweep(LineSlab(Line(kinked), 1.5, 1.5))
    low, high = sweep.square[1]
    assert low > high and len(sweep.stretches) == 3
    for share in np.linspace(0.34, 0.66, 12):
        assert sweep.area_to(share) == pytest.approx(until(sweep, *sweep.front(share)).area)
    assert sweep.front(LinePanels(sweep, (1, 1, 1)).share(1)) == pytest.approx(sweep.on_join(0))
    assert sweep.front(LinePanels(sweep, (1, 1, 1)).share(2)) == pytest.approx(sweep.on_join(1))
