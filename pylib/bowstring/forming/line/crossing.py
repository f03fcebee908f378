"""Where a slab along a line lies over itself: the line has come round across its own way.

A slab's outline, with ends square to the line, crosses itself just where the slab overlaps. The outline is drawn in by
a hair on all sides first, so that a slab that only touches itself (a ring that closes, two walks side by side) does
not count.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import pi
from typing import NamedTuple

from bowstring.forming.line.edges import Edge
from bowstring.forming.line.line import Line
from bowstring.forming.line.meets import crossings
from bowstring.forming.line.pieces import Bend, Piece, Straight
from bowstring.forming.line.runs import Run, between
from bowstring.geometry.plane import Point, distance

HAIR = 0.0005
"""Metres by which the outline is drawn in: less than any tape's mark."""

CORNER = 1e-6
"""Metres: two neighbours of the outline that meet so near to their shared corner meet there and nowhere else."""


TANGENT = 1e-6
"""The sine of the angle under which two neighbours of the outline are tangent."""


class Overlap(NamedTuple):
    """Two pieces of the line, by number from 0, the first not after the second, whose slabs lie over each other."""

    first: int
    second: int


class _Part(NamedTuple):
    """One part of the outline: where it lies, whose piece it is, and the corners of a box around it."""

    run: Run
    piece: int
    low: Point
    high: Point


def overlaps(line: Line, left: float, right: float) -> tuple[Overlap, ...]:
    """Return where a slab that reaches ``left`` and ``right`` metres from a line lies over itself.

    Raises ``NoEdge`` where an edge can't follow the line.
    """
    hair = min(HAIR, (left + right) / 8, min(piece.length for piece in line.pieces) / 8)
    drawn_in = _shortened(line, hair)
    parts = _outline(drawn_in, left - hair, right - hair)
    found = {Overlap(min(one.piece, other.piece), max(one.piece, other.piece)) for one, other in _crossed(parts)}
    found.update(_ends_covered(drawn_in, left - hair, right - hair))
    return tuple(sorted(found))


def _shortened(line: Line, hair: float) -> Line:
    """The line without a hair's length at both ends."""
    pieces: list[Piece] = list(line.pieces)
    for place in (0, -1):
        piece = pieces[place]
        length = piece.length - hair
        pieces[place] = (
            Straight(length, piece.kink)
            if isinstance(piece, Straight)
            else Bend.of(piece.radius, piece.turn * length / piece.length, piece.kink)
        )
    return Line(tuple(pieces), line.runs[0].at(hair))


def _outline(line: Line, left: float, right: float) -> list[_Part]:
    """The outline's parts in the order in which they follow one another, round and round."""
    last = len(line.pieces) - 1
    one, other = Edge(line, left).runs, Edge(line, -right).runs
    parts = [(part.run, part.piece) for part in one]
    parts.append((between(one[-1].run.end.point, other[-1].run.end.point), last))
    parts.extend((part.run, part.piece) for part in reversed(other))
    parts.append((between(other[0].run.start.point, one[0].run.start.point), 0))
    return [_Part(run, piece, *_box(run)) for run, piece in parts]


def _box(run: Run) -> tuple[Point, Point]:
    """Two corners of a box that holds a run: its ends and, of an arc, the places farthest to each side."""
    points = [run.start.point, run.end.point]
    if run.curvature:
        for quarter in range(4):
            heading = quarter * pi / 2
            turned = (heading - run.start.heading) % (2 * pi)
            if run.curvature < 0:
                turned -= 2 * pi
            if abs(turned) <= abs(run.turn):
                points.append(run.at(turned / run.curvature).point)
    xs, ys = [point.x for point in points], [point.y for point in points]
    return Point(min(xs), min(ys)), Point(max(xs), max(ys))


def _crossed(parts: list[_Part]) -> Iterator[tuple[_Part, _Part]]:
    """Yield every two parts of an outline that cross."""
    count = len(parts)
    for number, one in enumerate(parts):
        for later in range(number + 1, count):
            other = parts[later]
            if one.low.x > other.high.x or other.low.x > one.high.x:
                continue
            if one.low.y > other.high.y or other.low.y > one.high.y:
                continue
            if later - number in (1, count - 1):
                if _neighbours_cross(one.run, other.run):
                    yield one, other
            elif any(_on_both(one.run, other.run, point) for point in crossings(one.run, other.run)):
                yield one, other


def _on_both(one: Run, other: Run, point: Point) -> bool:
    """Whether a place where two runs cross, carried on, is on both themselves."""
    return one.holds(one.along(point)) and other.holds(other.along(point))


def _neighbours_cross(one: Run, other: Run) -> bool:
    """Whether two runs that share a corner cross elsewhere, too.

    Tangent ones never do: two circles, or a circle and a straight, that touch have that one place in common.
    """
    ends = [(a, b) for a in (one.start, one.end) for b in (other.start, other.end)]
    a, b = min(ends, key=lambda pair: distance(pair[0].point, pair[1].point))
    if abs(a.ahead.cross(b.ahead)) < TANGENT:
        return False
    return any(distance(point, a.point) > CORNER and _on_both(one, other, point) for point in crossings(one, other))


def _ends_covered(line: Line, left: float, right: float) -> Iterator[Overlap]:
    """Yield where the middle of an end lies on another piece: a line that runs on over its own start on one circle."""
    last = len(line.pieces) - 1
    for own, place in ((0, line.runs[0].start), (last, line.end)):
        point = place.aside((left - right) / 2).point
        for number, run in enumerate(line.runs):
            if number != own and run.holds(run.along(point)) and -right < run.across(point) < left:
                yield Overlap(min(own, number), max(own, number))
