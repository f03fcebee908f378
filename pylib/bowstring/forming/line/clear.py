"""How far from the concrete of a slab along a line a place stands: whatever piece of it is the nearest."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.runs import Run, between
from bowstring.forming.line.slab import LineSlab
from bowstring.geometry.plane import Point, distance

DUST = 1e-9
"""Metres: an edge of the concrete is concrete."""


def clearance(slab: LineSlab, place: Point) -> float:
    """Return how far a place is from a slab's concrete, metres; 0 on it.

    Exact: the concrete is each piece's own band, what lies between the square ends and the miter outside of a kink, and
    nothing else. Off it the nearest place is on an edge or on an end of the slab (elementary geometry).
    """
    if any(_on_band(slab, run, place) for run in slab.line.runs) or _on_miter(slab, place):
        return 0.0
    return min(_far(run, place) for run in _outline(slab))


def nearest_piece(slab: LineSlab, place: Point) -> int:
    """Return the number, from 0, of the piece whose concrete, or whose edge, is the nearest to a place."""
    bands = [number for number, run in enumerate(slab.line.runs) if _on_band(slab, run, place)]
    if bands:
        return bands[0]
    edges = (*slab.left_edge.runs, *slab.right_edge.runs)
    return min(edges, key=lambda part: _far(part.run, place)).piece


def _on_band(slab: LineSlab, run: Run, place: Point) -> bool:
    across = run.across(place)
    return -slab.right - DUST <= across <= slab.left + DUST and run.holds(run.along(place))


def _on_miter(slab: LineSlab, place: Point) -> bool:
    """Whether a place is between the square ends of two pieces and the miter outside of their kink."""
    line = slab.line
    for number, join in enumerate(line.joins):
        off = -slab.right if join.kink > 0 else slab.left
        if join.tangent or not off:
            continue
        before, after = line.runs[number].end, line.runs[number + 1].start
        on = (slab.right_edge if join.kink > 0 else slab.left_edge).ends[number][1]
        corners = (join.place.point, before.aside(off).point, before.aside(off).on(on).point, after.aside(off).point)
        if _inside(corners, place):
            return True
    return False


def _inside(corners: tuple[Point, ...], place: Point) -> bool:
    """Whether a place is in a polygon that bulges all around, or on its edge."""
    turns = [
        end.minus(start).cross(place.minus(start))
        for start, end in zip(corners, (*corners[1:], corners[0]), strict=True)
    ]
    return min(turns) >= 0 or max(turns) <= 0


def _outline(slab: LineSlab) -> Iterator[Run]:
    left, right = slab.left_edge.runs, slab.right_edge.runs
    yield from (part.run for part in (*left, *right))
    yield between(left[0].run.start.point, right[0].run.start.point)
    yield between(left[-1].run.end.point, right[-1].run.end.point)


def _far(run: Run, place: Point) -> float:
    """How far a place is from a run, metres."""
    ends = min(distance(place, run.start.point), distance(place, run.end.point))
    return min(ends, abs(run.across(place))) if run.holds(run.along(place)) else ends
