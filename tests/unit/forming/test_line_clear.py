"""How far a place is from a slab along a line, against shapely's polygons of the same slab."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.geometry import Point as Spot

from bowstring.forming.line.clear import clearance, nearest_piece
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.slab import LineSlab
from bowstring.geometry.plane import Point
from unit.forming.test_line_slab import sides, slab_of
from unit.forming.walked import lines, union, walk

ROUGH = 2e-4
"""Metres: what an arc of chords of a thousandth of a radian is off (R 62 m: 8e-6), and what the drawn kites add."""


@given(lines(kinks=True, most=4), sides, sides, st.floats(0, 1), st.floats(-9, 9))
def test_it_is_shapelys_distance(line: Line, left: float, right: float, share: float, off: float) -> None:
    slab = slab_of(line, left, right)
    rows = walk(line)
    row = rows[int(share * (len(rows) - 1))]
    place = row[int(share * (len(row) - 1))]
    spot = Point(place[0] + off * 0.6, place[1] + off * 0.8)
    expected = shapely.distance(union(line, left, right), Spot(*spot))
    assert clearance(slab, spot) == pytest.approx(expected, abs=ROUGH)


@given(lines(kinks=True, most=4), sides, sides)
def test_on_the_line_it_is_none_and_past_an_edge_no_more_than_that(line: Line, left: float, right: float) -> None:
    slab = slab_of(line, left, right)
    assume(left > 0 and right > 0)
    for run in line.runs:
        assert clearance(slab, run.at(run.length / 2).point) == 0
        assert clearance(slab, run.at(run.length / 2).aside(left + 0.5).point) <= 0.5 + 1e-9


def test_another_piece_may_be_nearer_than_ones_own() -> None:
    """Out 10 m, back by half a turn of R 2 m, 1 m wide: 2 m off the middle of the one leg is 1.5 m off the other's."""
    hairpin = LineSlab(Line((Straight(10.0), Bend.of(2.0, 3.141592653589793), Straight(10.0))), 0.5, 0.5)
    assert clearance(hairpin, Point(3.0, -2.0)) == pytest.approx(1.5)
    assert clearance(hairpin, Point(3.0, 2.0)) == pytest.approx(1.5)
    assert clearance(hairpin, Point(3.0, 3.0)) == pytest.approx(0.5)  # the other leg's edge is at 3.5 m
    assert clearance(hairpin, Point(3.0, 4.0)) == 0
    assert [nearest_piece(hairpin, Point(3.0, y)) for y in (1.0, 3.0, 4.0)] == [0, 2, 2]
