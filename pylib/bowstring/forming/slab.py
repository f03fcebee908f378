"""A slab between two arcs about one center, its ends square to the curve."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, hypot, sin, sqrt
from typing import Literal

from bowstring.geometry.arc import Arc

Lies = Literal["inside", "outside", "both"]
"""Where the slab lies from the line that the job gives: toward the center, away from it, or half to each side."""


@dataclass(frozen=True)
class Slab:
    """A slab on an arc.

    Attributes:
        inner: radius in metres of the edge that is nearer the center.
        width: metres, along a radius.
        angle: the central angle of both edges, radians, above 0 and below two pi.

    Raises ``ValueError`` where the width leaves no inner edge.
    """

    inner: float
    width: float
    angle: float

    def __post_init__(self) -> None:
        if not (self.inner > 0 and self.width > 0 and self.angle > 0):
            raise ValueError("a slab needs an inner edge, a width and an angle")

    @classmethod
    def along(cls, line: Arc, width: float, lies: Lies) -> Slab:
        """Return the slab of a width (metres) along the line that was set.

        Raises ``ValueError`` where the slab would reach the center.

        >>> Slab.along(Arc.of_angle(20.0, 0.5), 1.5, "inside").inner
        18.5
        """
        toward = {"inside": width, "outside": 0.0, "both": width / 2}[lies]
        return cls(line.radius - toward, width, 2 * line.half_angle)

    @property
    def outer(self) -> float:
        """The radius of the outer edge, metres."""
        return self.inner + self.width

    @property
    def middle(self) -> float:
        """The radius of the center line, metres."""
        return self.inner + self.width / 2

    @property
    def area(self) -> float:
        """The area, square metres: the center line's length times the width, exactly, since
        (Ro² - Ri²)/2 = (Ro + Ri)/2 (Ro - Ri)."""
        return self.middle * self.angle * self.width

    def line(self, radius: float) -> Arc:
        """Return the arc of another radius (metres) about the same center: a face, a row of stakes, a dig limit.

        Raises ``ValueError`` where the radius isn't above 0.
        """
        if radius <= 0:
            raise ValueError("no line stands at or behind the center")
        return Arc.of_angle(radius, self.angle / 2)

    def diagonal(self, share: float) -> float:
        """Return the distance in metres from a mark on one edge to the mark on the other that is ``share`` of the
        angle farther on (law of cosines): what squares the two edges to each other.

        >>> slab = Slab(57 * 0.3048, 5 * 0.3048, 0.7949616)
        >>> round(slab.diagonal(1 / 8) / 0.3048, 4)
        7.7374
        """
        half = sin(self.angle * share / 2)
        return hypot(self.width, 2 * half * sqrt(self.outer * self.inner))

    def narrowed(self, slip: float) -> float:
        """Return by how much the width comes out too small where the far end of a width stick, held at the outer edge,
        stands ``slip`` metres off square along the edge.

        The stick's end lies at the radius sqrt((Ro - w cos p)² + (w sin p)²), with sin p = slip/w.
        Raises ``ValueError`` for a slip of more than the width.
        """
        if not 0 <= slip <= self.width:
            raise ValueError("a slip is at most the width")
        along = sqrt(self.width**2 - slip**2)
        return hypot(self.outer - along, slip) - self.inner


@dataclass(frozen=True)
class Taper:
    """A slab whose width changes evenly with the angle, along an outer edge that is an arc.

    Attributes:
        outer: radius in metres of the outer edge.
        first, last: widths in metres at the two ends.
        angle: radians.

    Raises ``ValueError`` where a width isn't above 0 or reaches the center.
    """

    outer: float
    first: float
    last: float
    angle: float

    def __post_init__(self) -> None:
        if not (min(self.first, self.last) > 0 and max(self.first, self.last) < self.outer and self.angle > 0):
            raise ValueError("a taper needs two widths under the outer radius")

    def width(self, share: float) -> float:
        """Return the width in metres at a share of the angle, 0 to 1."""
        return self.first + (self.last - self.first) * share

    @property
    def area(self) -> float:
        """The area, square metres: half the integral of Ro² - r² over the angle, with r = Ro - w and w even in it."""
        mean = (self.first + self.last) / 2
        squares = (self.first**2 + self.first * self.last + self.last**2) / 3
        return self.angle * (self.outer * mean - squares / 2)

    def inner_point(self, share: float) -> tuple[float, float]:
        """Return where the inner edge stands at a share of the angle: metres from the center, x along the first end."""
        radius, turned = self.outer - self.width(share), self.angle * share
        return radius * cos(turned), radius * sin(turned)
