"""Where two straights or arcs, carried on, cross."""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from bowstring.forming.line.runs import Run
from bowstring.geometry.plane import Point, left_of


def crossings(first: Run, second: Run) -> list[Point]:
    """Return where two runs, carried on, cross: none, one or two places.

    Seen from the first one's end, a run is n.x - k x.x/2 + c = 0 (a circle through its start with left normal n, a
    straight where the curvature k is 0). Subtracting one such equation from the other, each times the other's
    curvature, leaves the straight line through both crossings.
    """
    origin = first.end.point
    one = _Circle.of(first.end.left, Point(0.0, 0.0), first.curvature)
    other = _Circle.of(second.start.left, second.start.point.minus(origin), second.curvature)
    if abs(one.curvature) > abs(other.curvature):
        one, other = other, one
    if other.curvature == 0:
        bottom = one.normal.cross(other.normal)
        if bottom == 0:
            return []
        x = (other.normal.y * -one.rest + one.normal.y * other.rest) / bottom
        y = (-one.normal.x * other.rest + other.normal.x * one.rest) / bottom
        return [origin.plus(Point(x, y))]
    share = one.curvature / other.curvature
    axis = one.normal.minus(Point(share * other.normal.x, share * other.normal.y))
    rest = one.rest - share * other.rest
    square = axis.dot(axis)
    if square == 0:  # one circle, or two about one center
        return []
    foot, way = Point(-axis.x * rest / square, -axis.y * rest / square), left_of(axis)
    return [origin.plus(foot).plus(way, times) for times in other.met_by(foot, way)]


@dataclass(frozen=True)
class _Circle:
    """n.x - k x.x/2 + c = 0: a circle of curvature k, a straight where that is 0."""

    normal: Point
    curvature: float
    rest: float

    @classmethod
    def of(cls, normal: Point, at: Point, curvature: float) -> _Circle:
        """The circle through ``at`` with the left normal ``normal`` there."""
        return cls(normal.plus(at, curvature), curvature, -normal.dot(at) - curvature * at.dot(at) / 2)

    def met_by(self, foot: Point, way: Point) -> list[float]:
        """How many times ``way`` from ``foot`` the circle is met: the roots of a quadratic, without a difference of
        nearly equal numbers."""
        a = -self.curvature * way.dot(way) / 2
        b = self.normal.dot(way) - self.curvature * foot.dot(way)
        c = self.normal.dot(foot) - self.curvature * foot.dot(foot) / 2 + self.rest
        under = b * b - 4 * a * c
        if under < 0:
            return []
        larger = -(b + (sqrt(under) if b >= 0 else -sqrt(under))) / 2
        return [larger / a, c / larger] if larger else [0.0]
