"""A slab seen from above as an outline of many corners, and what stands in it."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import acos, ceil, cos, pi, sin

from bowstring.forming.edge import Edge
from bowstring.forming.pad import Filled, Pad
from bowstring.geometry.outlines import SKIN, TOUCH, distance_to_side, holds, inside_of, within
from bowstring.geometry.plane import Point, distance

ENDS = ("A", "B")
"""The ends of a line that the dig of a band may run on past."""

_BOW = 1e-4
"""Metres: a side of the outline leaves its arc by less, a small part of what counts as a touch."""

_MOST = 720


def _shares(edge: Edge) -> list[float]:
    """Shares of the angle so close that the outline stays on its arc."""
    largest = max(edge.radius(0), edge.radius(1))
    step = 2 * acos(1 - _BOW / largest) if largest > _BOW else 1.0
    count = min(_MOST, max(8, ceil(2 * edge.line.half_angle / step)))
    return [number / count for number in range(count + 1)]


def outline_of_band(outer: Edge, inner: Edge, past: float = 0.0) -> list[Point]:
    """Return the outline of what lies between two edges, so far past each of them, metres, in the frame of their line.

    Its ends are square to the line at A and B. An inner edge stops at the center.
    """
    least = -outer.line.radius * (1 - 1e-9)
    far = Edge(outer.line, outer.first + past, outer.last + past)
    near = Edge(inner.line, max(least, inner.first - past), max(least, inner.last - past))
    shares = _shares(far)
    return [*(far.point(share) for share in shares), *(near.point(share) for share in reversed(shares))]


def ends_of_band(outer: Edge, inner: Edge, past: float, past_ends: Sequence[str] = ENDS) -> list[list[Point]]:
    """Return the outlines of what is dug past A and past B, or past one of them alone, so far straight on past each,
    metres: a rectangle each, as wide there as ``outline_of_band``."""
    least = -outer.line.radius * (1 - 1e-9)
    far = Edge(outer.line, outer.first + past, outer.last + past)
    near = Edge(inner.line, max(least, inner.first - past), max(least, inner.last - past))
    ends = []
    for share, onward in [one for end, one in zip(ENDS, ((0, -past), (1, past)), strict=True) if end in past_ends]:
        turned = outer.line.half_angle * (2 * share - 1)
        on = Point(onward * cos(turned), -onward * sin(turned))
        first, last = far.point(share), near.point(share)
        ends.append([first, first.plus(on), last.plus(on), last])
    return ends


def dug_between(outer: Edge, inner: Edge, past: float, past_ends: Sequence[str] = ENDS) -> float | None:
    """Return the area of the dig, so far past both edges of what lies between them, and past both of its ends or one of
    them alone, square metres.

    ``None`` where its ends meet, as those of a curve that all but closes do: the sum would count that place twice.

    >>> from math import pi
    >>> from bowstring.geometry.arc import Arc
    >>> line = Arc.of_angle(3.0, pi / 4)
    >>> round(dug_between(Edge(line, 0.0, 0.0), Edge(line, -1.0, -1.0), 0.5) - 2.5 * pi, 9)  # two ends, 2 by 1/2
    2.0
    """
    ends = ends_of_band(outer, inner, past, past_ends)
    if ends and outer.line.half_angle > pi / 2 and stands_in(*ends_of_band(outer, inner, past)):
        return None
    wide = sum(distance(end[0], end[3]) for end in ends)
    return area_between(outer, inner, past) + past * wide


def area_between(outer: Edge, inner: Edge, past: float = 0.0) -> float:
    """Return the area between two edges, so far past each of them, square metres; an inner edge stops at the center.

    With the edges' distances even in the angle the area of a radian is a square in it: Simpson's rule is exact.

    >>> from math import pi
    >>> from bowstring.geometry.arc import Arc
    >>> line = Arc.of_angle(3.0, pi / 4)
    >>> round(area_between(Edge(line, 0.0, 0.0), Edge(line, -1.0, -1.0)) / pi, 9)  # a quarter of 9 - 4
    1.25
    """
    ends = (outer.radius(share) + past for share in (0.0, 0.5, 1.0))
    insides = (max(0.0, inner.radius(share) - past) for share in (0.0, 0.5, 1.0))
    first, middle, last = (out**2 - into**2 for out, into in zip(ends, insides, strict=True))
    return outer.line.half_angle * (first + 4 * middle + last) / 6


def outline_of_fill(filled: Filled) -> list[Point]:
    """Return the outline of a slab that fills its curve, metres, in the frame of its string."""
    curve = [filled.arc.point_at(share) for share in _shares(Edge(filled.arc, 0.0, 0.0))]
    if not isinstance(filled, Pad):
        return curve
    back = [filled.back_of(place) for place in reversed(curve)]
    return [*curve, *(back if filled.both else (back[0], back[-1]))]


def stands_in(thing: Sequence[Point], outline: Sequence[Point]) -> bool:
    """Return whether a thing stands in an outline, by more than a touch: with a part of it, or all around it.

    >>> square = [Point(0.0, 0.0), Point(2.0, 0.0), Point(2.0, 2.0), Point(0.0, 2.0)]
    >>> beside = [Point(2.0, 0.0), Point(3.0, 0.0), Point(3.0, 2.0)]
    >>> stands_in(beside, square), stands_in([one.minus(Point(0.1, 0.0)) for one in beside], square)
    (False, True)
    """
    if apart(thing, outline) > 0:
        return False
    if any(within(outline, corner) for corner in thing):
        return True
    inside = sum(inside_of(outline, one, other) for one, other in pairwise([*thing, thing[0]]))
    return inside > TOUCH or holds(thing, outline[0])


def apart(thing: Sequence[Point], outline: Sequence[Point]) -> float:
    """Return how far apart the boxes around two outlines are at least, metres; 0 where they overlap."""
    gap = 0.0
    for axis in (0, 1):
        here, there = [point[axis] for point in thing], [point[axis] for point in outline]
        gap = max(gap, min(here) - max(there), min(there) - max(here))
    return gap


def stands_near(thing: Sequence[Point], outline: Sequence[Point], within: float) -> bool:
    """Return whether a thing stands nearer to an outline than so many metres, by more than a touch."""
    if apart(thing, outline) >= within - SKIN:
        return False
    pairs = ((thing, outline), (outline, thing))
    gaps = (
        distance_to_side(point, one, other)
        for points, sides in pairs
        for point in points
        for one, other in pairwise([*sides, sides[0]])
    )
    return min(gaps) < within - SKIN or stands_in(thing, outline)
