"""Points and vectors in the plane, in metres."""

from __future__ import annotations

from math import atan2, cos, hypot, sin, sqrt
from typing import NamedTuple


class Point(NamedTuple):
    """A point, or a vector, with coordinates in metres."""

    x: float
    y: float

    def plus(self, other: Point, times: float = 1.0) -> Point:
        """Return this point moved by ``times`` the vector ``other``."""
        return Point(self.x + times * other.x, self.y + times * other.y)

    def minus(self, other: Point) -> Point:
        """Return the vector from ``other`` to this point."""
        return Point(self.x - other.x, self.y - other.y)

    def dot(self, other: Point) -> float:
        """Return the scalar product, in square metres."""
        return self.x * other.x + self.y * other.y

    def cross(self, other: Point) -> float:
        """Return the signed area of the parallelogram, positive when ``other`` lies to the left of this vector."""
        return self.x * other.y - self.y * other.x


def distance(a: Point, b: Point) -> float:
    """Return the distance between two points in metres."""
    return hypot(b.x - a.x, b.y - a.y)


def middle(a: Point, b: Point) -> Point:
    """Return the point halfway between two points."""
    return Point((a.x + b.x) / 2, (a.y + b.y) / 2)


def unit_vector(a: Point, b: Point) -> Point:
    """Return the vector of length 1 that points from ``a`` to ``b``.

    Raises ``ZeroDivisionError`` when the two are one point.
    """
    length = distance(a, b)
    return Point((b.x - a.x) / length, (b.y - a.y) / length)


def left_of(direction: Point) -> Point:
    """Return the vector turned a quarter turn to the left (anticlockwise)."""
    return Point(-direction.y, direction.x)


def cross_of_tapes(a: Point, from_a: float, b: Point, from_b: float, left: bool) -> Point | None:
    """Return where a tape of ``from_a`` held at ``a`` meets one of ``from_b`` held at ``b``.

    ``left`` chooses the crossing on the left hand of somebody who walks from ``a`` to ``b``. Lengths in metres;
    ``None`` when the tapes can't meet.

    >>> cross_of_tapes(Point(0.0, 0.0), 3.0, Point(5.0, 0.0), 4.0, left=True)
    Point(x=1.8, y=2.4)
    """
    if from_b < from_a:  # from the shorter tape's end, where a far one loses no digits
        return cross_of_tapes(b, from_b, a, from_a, not left)
    base = distance(a, b)
    if base == 0:
        return None
    along = ((base - from_b) * (base + from_b) + from_a * from_a) / (2 * base)
    square = (from_a - along) * (from_a + along)
    if square < 0:
        return None
    direction = unit_vector(a, b)
    out = square**0.5 if left else -(square**0.5)
    return a.plus(direction, along).plus(left_of(direction), out)


def nearest_of_tapes(a: Point, from_a: float, b: Point, from_b: float) -> Point:
    """Return the place between two tapes that don't meet: on their line, in the middle of what is left between them.

    That is where the tips come closest, whether the tapes are too short to meet or one reaches past the other.

    >>> nearest_of_tapes(Point(0.0, 0.0), 4.0, Point(10.0, 0.0), 4.0)
    Point(x=5.0, y=0.0)
    """
    base = distance(a, b)
    direction = unit_vector(a, b)
    if from_a + from_b < base:
        return a.plus(direction, (from_a + base - from_b) / 2)
    if from_a > from_b:  # past b
        return a.plus(direction, (from_a + base + from_b) / 2)
    return a.plus(direction, (base - from_b - from_a) / 2)


def turned(direction: Point, angle: float) -> Point:
    """Return a vector turned by ``angle`` radians, anticlockwise."""
    c, s = cos(angle), sin(angle)
    return Point(direction.x * c - direction.y * s, direction.x * s + direction.y * c)


def angle_between(vertex: Point, a: Point, b: Point) -> float:
    """Return the angle at ``vertex`` between the directions to ``a`` and ``b``, 0 to pi radians."""
    first, second = a.minus(vertex), b.minus(vertex)
    return abs(atan2(first.cross(second), first.dot(second)))


def signed_angle(vertex: Point, a: Point, b: Point) -> float:
    """Return the angle at ``vertex`` from the direction of ``a`` to that of ``b``, -pi to pi, anticlockwise.

    >>> round(signed_angle(Point(0.0, 0.0), Point(1.0, 0.0), Point(0.0, 2.0)), 6)
    1.570796
    """
    first, second = a.minus(vertex), b.minus(vertex)
    return atan2(first.cross(second), first.dot(second))


def where_line_leaves(origin: Point, direction: Point, centre: Point, radius: float) -> Point:
    """Return where a ray leaves the circle around ``centre``: its farther crossing.

    ``direction`` of length 1, ``radius`` in metres. A ray that passes the circle by gives its point nearest to it.

    >>> where_line_leaves(Point(0.0, 0.0), Point(1.0, 0.0), Point(3.0, 0.0), 2.0)
    Point(x=5.0, y=0.0)
    """
    along = direction.dot(centre.minus(origin))
    off = direction.cross(centre.minus(origin))
    square = (radius - off) * (radius + off)
    return origin.plus(direction, along + sqrt(square) if square > 0 else along)


def level_length(on_the_ground: float, fall: float) -> float:
    """Return the level length in metres of a taped slope length with its fall: sqrt(S² - h²).

    Raises ``ValueError`` when the fall isn't less than the length.

    >>> level_length(5.0, 3.0)
    4.0
    """
    if fall >= on_the_ground:
        raise ValueError("the fall is as long as the tape")
    return sqrt((on_the_ground - fall) * (on_the_ground + fall))
