"""Outlines on the ground: what is inside one, how much of a straight way runs through it, how near one passes it, and
whether it is sound."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import cos, hypot, pi, sin, sqrt

from bowstring.geometry.plane import Point, distance, unit_vector

TOUCH = 0.005
"""Metres: less of a tape inside an outline is a touch (common practice, no source)."""

SKIN = TOUCH / 2
"""Metres: what lies no deeper inside an outline than this lies along it. A straight way square through something
thicker than ``TOUCH`` is deeper in its middle, so nothing that counts is lost."""

SPARE = 1e-6
"""Metres: what is as clear as it has to be is clear, whatever a float's last digits are."""

BY_END = 0.6
"""Metres (2 ft): so far from a stake that stands close to something a string may still be as close as the stake; a
string that leaves at 7 degrees is a hand's width clear by then (common practice, no source)."""

SIDES_OF_CIRCLE = 72
"""Corners of the outline around a circle: they stand less than a thousandth of its radius outside it."""


class Circle(tuple[Point, ...]):
    """A circle's outline: its sides touch the circle, so it is never smaller; what is inside the circle itself says.

    >>> tree = Circle.around(Point(5.0, 0.0), 1.0)
    >>> len(tree), inside_of(tree, Point(0.0, 0.0), Point(9.0, 0.0))
    (72, 2.0)
    """

    centre: Point
    radius: float

    @classmethod
    def around(cls, centre: Point, radius: float) -> Circle:
        """Return the circle of a radius in metres."""
        out, part = radius / cos(pi / SIDES_OF_CIRCLE), 2 * pi / SIDES_OF_CIRCLE
        circle = cls(Point(centre.x + out * cos(part * side), centre.y + out * sin(part * side))
                     for side in range(SIDES_OF_CIRCLE))  # fmt: skip
        circle.centre, circle.radius = centre, radius
        return circle

    def on_way(self, a: Point, b: Point) -> float:
        """Return how much of the straight way from ``a`` to ``b`` lies inside, metres; none where it only touches."""
        whole = distance(a, b)
        if whole == 0 or distance_to_side(self.centre, a, b) >= self.radius - SKIN:
            return 0.0
        way = unit_vector(a, b)
        middle = way.dot(self.centre.minus(a))
        half = sqrt(max(self.radius**2 - way.cross(self.centre.minus(a)) ** 2, 0.0))
        return max(min(middle + half, whole) - max(middle - half, 0.0), 0.0)

    def holds(self, point: Point) -> bool:
        """Return whether a point is inside, by more than ``SKIN``."""
        return distance(self.centre, point) < self.radius - SKIN


def distance_to_side(point: Point, a: Point, b: Point) -> float:
    """Return the distance in metres from a point to the straight way from ``a`` to ``b``, its ends included."""
    way = b.minus(a)
    square = way.dot(way)
    part = min(max(point.minus(a).dot(way) / square, 0.0), 1.0) if square else 0.0
    return distance(point, a.plus(way, part))


def inside_of(outline: Sequence[Point], a: Point, b: Point) -> float:
    """Return how much of the straight way from ``a`` to ``b`` lies inside an outline, metres.

    The way is cut where it crosses a side; each piece is inside or outside as its middle is. What lies along a side
    is outside.

    >>> square = [Point(1.0, -1.0), Point(3.0, -1.0), Point(3.0, 1.0), Point(1.0, 1.0)]
    >>> inside_of(square, Point(0.0, 0.0), Point(9.0, 0.0))
    2.0
    """
    if isinstance(outline, Circle):
        return outline.on_way(a, b)
    way = b.minus(a)
    length = hypot(way.x, way.y)
    if length == 0:
        return 0.0
    # How far each corner is to the left of the way, times its length: all on one side is what most outlines are.
    sides = [way.x * (corner.y - a.y) - way.y * (corner.x - a.x) for corner in outline]
    if min(sides) > 0 or max(sides) < 0:
        return 0.0
    cuts = {0.0, 1.0}
    for number, (corner, side) in enumerate(zip(outline, sides, strict=True)):
        before, last = outline[number - 1], sides[number - 1]
        # A side that lies along the way needs no cut of its own: its neighbours end there.
        if side == last or (side > 0 and last > 0) or (side < 0 and last < 0):
            continue
        part = last / (last - side)
        x, y = before.x + part * (corner.x - before.x), before.y + part * (corner.y - before.y)
        along = (way.x * (x - a.x) + way.y * (y - a.y)) / (length * length)
        if 0 < along < 1:
            cuts.add(along)
    ends = sorted(cuts)
    return length * sum(end - start for start, end in pairwise(ends) if within(outline, a.plus(way, (start + end) / 2)))


def within(outline: Sequence[Point], point: Point) -> bool:
    """Return whether a point is inside an outline and not on its line, by more than ``SKIN``."""
    if isinstance(outline, Circle):
        return outline.holds(point)
    return holds(outline, point) and all(
        distance_to_side(point, one, other) > SKIN
        for one, other in zip(outline, [*outline[1:], outline[0]], strict=True)
    )


def gap_to(outline: Sequence[Point], a: Point, b: Point) -> float:
    """Return how near the straight way from ``a`` to ``b`` passes an outline, metres; 0 where they meet, or where it
    lies inside.

    Two shapes that don't meet are nearest at a corner of one of them.

    >>> square = [Point(1.0, -1.0), Point(3.0, -1.0), Point(3.0, 1.0), Point(1.0, 1.0)]
    >>> gap_to(square, Point(0.0, 1.5), Point(9.0, 1.5)), gap_to(square, Point(0.0, 0.5), Point(9.0, 0.5))
    (0.5, 0.0)
    """
    if isinstance(outline, Circle):
        return max(distance_to_side(outline.centre, a, b) - outline.radius, 0.0)
    sides = list(zip(outline, [*outline[1:], outline[0]], strict=True))
    if holds(outline, a) or holds(outline, b) or any(_cross(a, b, *side) for side in sides):
        return 0.0
    return min(
        *(distance_to_side(corner, a, b) for corner in outline),
        *(distance_to_side(end, *side) for end in (a, b) for side in sides),
    )


def brushes(outline: Sequence[Point], a: Point, b: Point, clear: float) -> bool:
    """Return whether a straight way passes an outline nearer than ``clear``, metres.

    A stake at its end may stand nearer, against a wall say: within ``BY_END`` of an end the way may be as near as that
    end itself, and no nearer.

    >>> wall = [Point(0.0, 0.0), Point(9.0, 0.0), Point(9.0, 2.0), Point(0.0, 2.0)]
    >>> brushes(wall, Point(0.0, 0.0), Point(9.0, 0.0), 0.05), brushes(wall, Point(0.0, 0.0), Point(9.0, -5.0), 0.05)
    (True, False)
    """
    length = distance(a, b)
    clear -= SPARE
    if length == 0 or gap_to(outline, a, b) >= clear:
        return False
    reach = min(BY_END, length / 2)
    way = unit_vector(a, b)
    inner_a, inner_b = a.plus(way, reach), b.plus(way, -reach)
    if length > 2 * reach and gap_to(outline, inner_a, inner_b) < clear:
        return True
    return any(
        gap_to(outline, end, inner) < min(gap_to(outline, end, end), clear) - SKIN
        for end, inner in ((a, inner_a), (b, inner_b))
    )


def holds(outline: Sequence[Point], point: Point) -> bool:
    """Return whether a point is inside an outline: a ray from it crosses the sides an odd number of times."""
    inside = False
    for one, other in zip(outline, [*outline[1:], outline[0]], strict=True):
        if (one.y > point.y) != (other.y > point.y):
            x = one.x + (point.y - one.y) / (other.y - one.y) * (other.x - one.x)
            inside ^= point.x < x
    return inside


def fault_of(outline: Sequence[Point]) -> str | None:
    """Return why an outline encloses nothing that can be told: ``thin`` (a tape across it would seem to touch it only)
    or ``crossed`` (two of its sides meet that aren't neighbours); ``None`` where it is sound.

    >>> fault_of([Point(0.0, 0.0), Point(2.0, 2.0), Point(2.0, 0.0), Point(0.0, 2.0)])
    'crossed'
    """
    sides = list(zip(outline, [*outline[1:], outline[0]], strict=True))
    one, other = max(sides, key=lambda side: distance(*side))
    way = unit_vector(one, other)
    if max(abs(way.cross(corner.minus(one))) for corner in outline) <= TOUCH:
        return "thin"
    for number, side in enumerate(sides):
        for later in range(number + 1, len(sides)):
            if later - number in (1, len(sides) - 1):
                # Neighbours share a corner; they may not lie on each other.
                shared, ends = (side[1], (side[0], sides[later][1])) if later == number + 1 else (
                    side[0], (side[1], sides[later][0]))  # fmt: skip
                a, b = (end.minus(shared) for end in ends)
                if abs(a.cross(b)) <= 1e-12 * hypot(*a) * hypot(*b) and a.dot(b) > 0:
                    return "crossed"
            elif _cross(*side, *sides[later]):
                return "crossed"
    area = abs(sum(one.cross(other) for one, other in sides)) / 2
    # A strip's area over half of what runs round it is its width, nearly.
    return "thin" if area <= TOUCH * sum(distance(*side) for side in sides) / 2 else None


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two straight ways have a place in common."""
    if max(a.x, b.x) < min(c.x, d.x) or max(c.x, d.x) < min(a.x, b.x):
        return False
    if max(a.y, b.y) < min(c.y, d.y) or max(c.y, d.y) < min(a.y, b.y):
        return False
    first, second = b.minus(a), d.minus(c)
    return (
        first.cross(c.minus(a)) * first.cross(d.minus(a)) <= 0
        and second.cross(a.minus(c)) * second.cross(b.minus(c)) <= 0
    )
