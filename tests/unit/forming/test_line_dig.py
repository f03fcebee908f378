"""The dig along a line: its outlines and its area, held against shapely's own buffers and unions."""

from __future__ import annotations

from math import cos, radians, sin

import pytest
from shapely.geometry import LineString, Point, Polygon
from shapely.ops import unary_union

from bowstring.forming.line.line import Line
from bowstring.forming.line.outline import dig_of, dug_area, outlines_of
from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.slab import LineSlab

LEFT_RIGHT = Line((Straight(6.0), Bend.of(12.0, radians(70)), Straight(3.0), Bend.of(9.0, -radians(50)), Straight(4.0)))
KINKED = Line((Straight(6.0), Bend.of(11.0, radians(60)), Straight(4.0, -radians(20)), Straight(5.0, radians(30))))


def walked(line: Line) -> LineString:
    """The line itself as a chain of a great many chords."""
    return LineString(
        [tuple(run.at(run.length * step / 2000).point) for run in line.runs for step in range(2001)]
    ).simplify(0.0)


def beside(line: Line, left: float, right: float, past: float = 0.0) -> float:
    """The area within so much of each hand of a line, its ends flat, its kinks mitred, by shapely; ``past``: the line
    run straight on past both its ends."""
    along = walked(line)
    if past:
        points = [*along.coords]
        for end in (0, -1):
            heading = (line.start if end == 0 else line.end).heading
            reach = -past if end == 0 else past
            on = (points[end][0] + reach * cos(heading), points[end][1] + reach * sin(heading))
            points = [on, *points] if end == 0 else [*points, on]
        along = LineString(points)
    hands = [
        along.buffer(reach, cap_style="flat", join_style="mitre", mitre_limit=20, single_sided=True)
        for reach in (left, -right)
        if reach
    ]
    return float(unary_union(hands).area)


@pytest.mark.parametrize("line", [LEFT_RIGHT, KINKED])
@pytest.mark.parametrize(("left", "right"), [(0.75, 0.75), (0.0, 1.5), (1.5, 0.0)])
@pytest.mark.parametrize("past", [0.15, 0.3, 0.6])
def test_the_area_of_the_dig_is_that_of_a_wider_strip_run_on_past_both_ends(
    line: Line, left: float, right: float, past: float
) -> None:
    slab = LineSlab(line, left, right)
    area = dug_area(slab, past)
    assert area is not None
    far = beside(line, left + past, right + past, past)
    assert area == pytest.approx(far, rel=2e-6)
    assert area > beside(line, left + past, right + past) + 1.9 * past * (left + right + 2 * past)
    dig = dig_of(slab, past)
    assert dig and sum(Polygon([tuple(point) for point in one]).area for one in outlines_of(dig)) == pytest.approx(
        far, rel=1e-4
    )


@pytest.mark.parametrize("line", [LEFT_RIGHT, KINKED])
@pytest.mark.parametrize("ends", ["A", "B", ""])
def test_the_dig_runs_on_past_the_ends_that_are_free_alone(line: Line, ends: str) -> None:
    """By shapely: the wider strip, and a piece as wide past each such end."""
    slab, past = LineSlab(line, 0.75, 0.5), 0.3
    wide, strip = 1.25 + 2 * past, beside(line, 0.75 + past, 0.5 + past)
    assert dug_area(slab, past, past_ends=ends) == pytest.approx(strip + len(ends) * past * wide, rel=2e-6)
    dig = dig_of(slab, past, past_ends=ends)
    assert dig is not None
    dug = unary_union([Polygon([tuple(point) for point in one]) for one in outlines_of(dig)])
    places = {"A": line.start.on(-past / 2).point, "B": line.end.on(past / 2).point}
    assert {end for end, place in places.items() if dug.contains(Point(*place))} == {*ends}


@pytest.mark.parametrize("line", [LEFT_RIGHT, KINKED])
def test_the_outlines_of_all_pieces_are_the_slab(line: Line) -> None:
    slab = LineSlab(line, 0.5, 1.0)
    pieces = [Polygon([tuple(point) for point in outline]) for outline in outlines_of(slab)]
    assert all(piece.is_valid for piece in pieces) and len(pieces) == len(line.pieces)
    assert sum(piece.area for piece in pieces) == pytest.approx(slab.area, rel=1e-4)
    assert unary_union(pieces).area == pytest.approx(slab.area, rel=1e-4)  # and none lies over another


def test_a_dig_that_reaches_a_center_or_lies_over_itself_has_no_area() -> None:
    tight = LineSlab(Line((Straight(3.0), Bend.of(1.6, radians(90)), Straight(3.0))), 1.4, 0.0)
    assert dig_of(tight, 0.1) is not None and dug_area(tight, 0.1) is not None
    assert dig_of(tight, 0.3) is None and dug_area(tight, 0.3) is None
    hairpin = LineSlab(Line((Straight(9.0), Bend.of(1.5, radians(180)), Straight(9.0))), 0.6, 0.6)
    assert not hairpin.overlaps and dug_area(hairpin, 0.5) is not None
    back = Line((Straight(9.0), Bend.of(1.5, radians(200)), Straight(6.0)))
    near = LineSlab(back, 0.3, 0.3)
    assert not near.overlaps and dug_area(near, 0.8) is None  # both legs' digs meet


def test_a_closed_line_has_no_ends_to_dig_past() -> None:
    ring = Line((Bend.of(8.0, radians(180)), Straight(5.0), Bend.of(8.0, radians(180)), Straight(5.0)))
    assert ring.is_closed and ring.run_on(0.3) is ring
    area = dug_area(LineSlab(ring, 0.5, 0.5), 0.3)
    assert area == pytest.approx((16 * 3.141592653589793 + 10) * 1.6, rel=1e-9)  # as long as its middle, 1.6 m wide
    assert not LEFT_RIGHT.is_closed
