"""An edge beside the line that was set: so far off it at its first end, so far at its last, evenly in between."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import asinh, cos, hypot, sin

from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point


@dataclass(frozen=True)
class Edge:
    """An edge of a slab on an arc; its ends are square to the arc.

    Attributes:
        line: the arc that was set.
        first, last: how far off it the edge runs at the ends, metres along a radius, positive away from the center. The
            distance changes evenly with the angle.

    Raises ``ValueError`` where the edge reaches the center.

    >>> from math import pi
    >>> round(Edge(Arc.of_angle(1.0, pi / 4), 0.0, pi / 2).length, 6)  # r = 1 + t over a right angle
    3.234505
    """

    line: Arc
    first: float
    last: float

    def __post_init__(self) -> None:
        if self.line.radius + min(self.first, self.last) <= 0:
            raise ValueError("no edge runs through the center or behind it")

    @property
    def is_arc(self) -> bool:
        """Whether it is a concentric arc; one that comes nearer or goes off is none."""
        return self.first == self.last

    @cached_property
    def arc(self) -> Arc:
        """The concentric arc of the edge's first end: the edge itself where ``is_arc``."""
        return self.line.concentric(self.first)

    def offset(self, share: float) -> float:
        """Return how far off the line the edge runs at a share of the angle, 0 to 1; metres."""
        return self.first + (self.last - self.first) * share

    def radius(self, share: float) -> float:
        """Return the distance from the center at a share of the angle, metres."""
        return self.line.radius + self.offset(share)

    def point(self, share: float) -> Point:
        """Return where the edge is at a share of the angle, in the frame of the line's chord (see ``Arc.point_at``)."""
        there, off = self.line.point_at(share), self.offset(share)
        turned = self.line.half_angle * (2 * share - 1)
        return Point(there.x + off * sin(turned), there.y + off * cos(turned))

    @cached_property
    def chord(self) -> float:
        """Metres from end to end."""
        ends = self.point(0).minus(self.point(1))
        return self.arc.chord if self.is_arc else hypot(ends.x, ends.y)

    def own(self, share: float) -> Point:
        """Return the place at a share of the angle off the edge's own string: x along it from the first end, y square
        off it, positive on the side on which an arc bulges."""
        if self.is_arc:
            return self.arc.point_at(share)
        start, end = self.point(0), self.point(1)
        string, there = end.minus(start), self.point(share).minus(start)
        return Point(string.dot(there) / self.chord, string.cross(there) / self.chord)

    @cached_property
    def length(self) -> float:
        """Metres along the edge.

        With r even in the angle and b its change for a radian, the integral of sqrt(r² + b²): (r h + b² asinh(r/b))/2b
        from end to end, h = hypot(r, b); written without the differences, so that a b of 0 is an arc.
        """
        angle = 2 * self.line.half_angle
        first, last = self.radius(0), self.radius(1)
        change = (self.last - self.first) / angle
        near, far = hypot(first, change), hypot(last, change)
        both = first + last
        turned = asinh((last - first) * both / (last * near + first * far))
        return angle / 2 * (far + first * both / (near + far)) + change / 2 * turned
