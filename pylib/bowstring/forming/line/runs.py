"""Where a straight or an arc lies: a place with a heading, and so much of one bend from there.

Lengths are metres, angles radians, counted anticlockwise: a bend to the left is above 0, one to the right below.
One formula serves both, since a straight is an arc of curvature 0: from a place with heading h, after a length s along
curvature k, the chord is 2 sin(ks/2)/k long and points along h + ks/2 (half the central angle; simple curves, any
surveying text).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import atan2, copysign, cos, hypot, pi, sin, sqrt
from typing import NamedTuple

from bowstring.geometry.plane import Point, left_of
from bowstring.geometry.roots import sine_shortfall


class Pose(NamedTuple):
    """A place on a line and which way the line goes there: metres, and radians anticlockwise from the x axis."""

    point: Point
    heading: float

    @property
    def ahead(self) -> Point:
        """The vector of length 1 along the line."""
        return Point(cos(self.heading), sin(self.heading))

    @property
    def left(self) -> Point:
        """The vector of length 1 square to the line, to its left."""
        return left_of(self.ahead)

    def aside(self, left: float) -> Pose:
        """Return the place ``left`` metres to the left (negative: to the right), with the same heading."""
        return Pose(self.point.plus(self.left, left), self.heading)

    def on(self, length: float) -> Pose:
        """Return the place ``length`` metres straight ahead (negative: behind)."""
        return Pose(self.point.plus(self.ahead, length), self.heading)

    def turned(self, angle: float) -> Pose:
        """Return the same place with the heading turned by ``angle`` radians to the left."""
        return Pose(self.point, self.heading + angle)


ORIGIN = Pose(Point(0.0, 0.0), 0.0)
"""Where a line begins of which nothing else is said."""


@dataclass(frozen=True)
class Run:
    """A straight or an arc where it lies.

    Attributes:
        start: where it begins.
        length: metres along it.
        curvature: radians a metre, 1/R to the left, -1/R to the right, 0 for a straight.
    """

    start: Pose
    length: float
    curvature: float = 0.0

    @property
    def turn(self) -> float:
        """By how much it turns to the left, radians: its length times its curvature (L = R I)."""
        return self.length * self.curvature

    def at(self, along: float) -> Pose:
        """Return the place ``along`` metres from the start; past an end the run is carried on."""
        half = self.curvature * along / 2
        chord = 2 * sin(half) / self.curvature if self.curvature else along
        return Pose(self.start.turned(half).on(chord).point, self.start.heading + 2 * half)

    @cached_property
    def end(self) -> Pose:
        """Where it ends."""
        return self.at(self.length)

    def along(self, point: Point) -> float:
        """Return how far along the run its place nearest to ``point`` stands, metres, the run being carried on.

        Of an arc from half a turn before the start to half a turn past it: the angle from the radius at the start to
        the one through the point.
        """
        way = point.minus(self.start.point)
        ahead, left = way.dot(self.start.ahead), way.dot(self.start.left)
        if not self.curvature:
            return ahead
        return atan2(self.curvature * ahead, 1 - self.curvature * left) / self.curvature

    def holds(self, along: float) -> bool:
        """Return whether a place so far along, as ``along`` has it, is on the run, whole turns left out."""
        if self.curvature and along < 0:
            along += 2 * pi / abs(self.curvature)
        return 0 <= along <= self.length

    def across(self, point: Point) -> float:
        """Return how far to the left of the run, carried on, a point stands, metres.

        For an arc R - |point - centre|, from the power of the point, so that a flat arc keeps its digits.
        """
        way = point.minus(self.start.point)
        off = way.dot(self.start.left)
        if not self.curvature:
            return off
        power = off - self.curvature * way.dot(way) / 2
        return 2 * power / (1 + sqrt(max(1 - 2 * self.curvature * power, 0.0)))

    def aside(self, left: float) -> Run:
        """Return the run ``left`` metres to the left all along: parallel, or concentric with radius R - left.

        Raises ``ValueError`` where the arc has no radius left.

        >>> round(Run(ORIGIN, 3.0, 0.1).aside(4.0).length, 9)
        1.8
        """
        share = 1 - self.curvature * left
        if share <= NO_RADIUS:
            raise ValueError("no edge stands at or behind the center")
        return Run(self.start.aside(left), self.length * share, self.curvature / share)

    def part(self, before: float, after: float) -> Run:
        """Return the run without ``before`` metres at its start and ``after`` at its end."""
        return Run(self.at(before), self.length - before - after, self.curvature)

    @property
    def sliver(self) -> float:
        """The area between the run and its chord, square metres, above 0 where it bends to the left.

        (R²/2)(I - sin I), a circle's segment, written for a flat arc as L² (1 - sin(I)/I) / (2 I).
        """
        angle = abs(self.turn)
        if not angle:
            return 0.0
        return copysign(self.length**2 * _shortfall(angle) / (2 * angle), self.turn)


NO_RADIUS = 1e-9
"""An edge with less than this part of its line's radius has none: the rest is a float's dust."""


def _shortfall(angle: float) -> float:
    """1 - sin(x)/x, beyond half a turn, too, where no digits are lost."""
    return sine_shortfall(angle) if angle < pi else 1 - sin(angle) / angle


def loop_area(runs: list[Run]) -> float:
    """Return the area inside a closed row of runs, square metres, above 0 where they go round anticlockwise.

    Each run adds half the cross product of its ends and its sliver (Green's theorem; the surveyor's double areas with
    the segments between arcs and chords).
    """
    origin = runs[0].start.point
    total = 0.0
    for run in runs:
        total += run.start.point.minus(origin).cross(run.end.point.minus(origin)) / 2 + run.sliver
    return total


def between(start: Point, end: Point) -> Run:
    """Return the straight from one point to another."""
    way = end.minus(start)
    return Run(Pose(start, atan2(way.y, way.x)), hypot(*way))
