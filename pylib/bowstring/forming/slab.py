"""A slab between two arcs about one center, its ends square to the curve."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, sin, sqrt
from typing import Literal

from bowstring.forming.edge import Edge
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
        stands ``slip`` metres off square along the edge; see ``narrowed``."""
        return narrowed(self.outer, -self.width, slip)


def narrowed(radius: float, reach: float, slip: float) -> float:
    """Return how much too near a line of a radius the far end of a stick stands that is held at it and ``slip`` metres
    off square along it.

    ``reach``: the stick's length, metres, below 0 where it points to the center. Its end lies at the radius
    sqrt((R + w cos p)² + (w sin p)²), with sin p = slip/w; the difference is written without cancelling.
    Raises ``ValueError`` for a slip of more than the stick.

    >>> round(narrowed(62.0, -5.0, 0.25) * 12, 2)
    0.08
    """
    length = abs(reach)
    if not 0 <= slip <= length:
        raise ValueError("a slip is at most the stick")
    along = sqrt((length - slip) * (length + slip))
    lost = slip * slip / (length + along)  # of the stick's length, w - w cos p
    there = hypot(radius + (along if reach > 0 else -along), slip)
    return 2 * radius * lost / (there + radius + reach)


OFF: dict[Lies, tuple[float, float]] = {"inside": (0.0, -1.0), "outside": (1.0, 0.0), "both": (0.5, -0.5)}
"""How far off the line the outer and the inner edge run, as parts of the width, positive away from the center."""


@dataclass(frozen=True)
class Taper:
    """A slab whose width changes evenly with the angle, from one end of the line to the other.

    Attributes:
        radius: metres, of the line that was set: the outer edge, the inner one or the middle, by ``lies``.
        first, last: widths in metres at the two ends.
        angle: radians.

    Raises ``ValueError`` where a width isn't above 0 or reaches the center.
    """

    radius: float
    first: float
    last: float
    angle: float
    lies: Lies = "inside"

    def __post_init__(self) -> None:
        inward = -OFF[self.lies][1] * max(self.first, self.last)
        if not (min(self.first, self.last) > 0 and inward < self.radius and self.angle > 0):
            raise ValueError("a taper needs two widths that leave an inner edge")

    def width(self, share: float) -> float:
        """Return the width in metres at a share of the angle, 0 to 1."""
        return self.first + (self.last - self.first) * share

    @property
    def area(self) -> float:
        """The area, square metres: half the integral of ro² - ri² = w (ro + ri) over the angle, with w even in it and
        ro + ri = 2 R + (its two parts of the width) w."""
        mean = (self.first + self.last) / 2
        squares = (self.first**2 + self.first * self.last + self.last**2) / 3
        return self.angle * (self.radius * mean + sum(OFF[self.lies]) * squares / 2)

    @property
    def outside(self) -> Edge:
        """The edge away from the center."""
        return self._edge(OFF[self.lies][0])

    @property
    def inside(self) -> Edge:
        """The edge toward the center."""
        return self._edge(OFF[self.lies][1])

    def _edge(self, part: float) -> Edge:
        return Edge(Arc.of_angle(self.radius, self.angle / 2), part * self.first, part * self.last)
