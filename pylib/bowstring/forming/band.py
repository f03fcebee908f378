"""A slab between two edges about one center, each at a radius of its own that changes evenly with the angle.

A slab of one width has two arcs for edges; one that tapers has an arc on the line that is set, and on the other side a
curve that draws evenly nearer to it.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from bowstring.forming.edge import Edge
from bowstring.forming.slab import Lies, Slab
from bowstring.geometry.arc import Arc

OUTER, CENTER, INNER = 0.0, 0.5, 1.0
"""Places across the band: shares of its width from the outer edge."""


@dataclass(frozen=True)
class Band:
    """Both edges of a slab.

    Attributes:
        outer, inner: each edge's radius at the first end and at the last, metres.
        angle: radians.

    Raises ``ValueError`` where an end has no width or no inner edge.
    """

    outer: tuple[float, float]
    inner: tuple[float, float]
    angle: float

    def __post_init__(self) -> None:
        ends = zip(self.outer, self.inner, strict=True)
        if not (self.angle > 0 and all(outer > inner > 0 for outer, inner in ends)):
            raise ValueError("a band needs two edges and an angle")

    @classmethod
    def of(cls, slab: Slab) -> Band:
        """Return the band of a slab of one width."""
        return cls((slab.outer, slab.outer), (slab.inner, slab.inner), slab.angle)

    @classmethod
    def tapered(cls, radius: float, angle: float, widths: tuple[float, float], lies: Lies) -> Band:
        """Return the band along a line that is an arc, by its widths at the two ends, metres.

        >>> Band.tapered(20.0, 0.5, (1.0, 1.5), "both")
        Band(outer=(20.5, 20.75), inner=(19.5, 19.25), angle=0.5)
        """
        inward = {"inside": 1.0, "outside": 0.0, "both": 0.5}[lies]
        first, last = widths
        return cls(
            (radius + first * (1 - inward), radius + last * (1 - inward)),
            (radius - first * inward, radius - last * inward),
            angle,
        )

    def ends(self, across: float) -> tuple[float, float]:
        """Return the radii, at the two ends, of the line that runs at a share of the width from the outer edge."""
        (outer, far_outer), (inner, far_inner) = self.outer, self.inner  # no loop: asked hundreds of times a key
        return outer + (inner - outer) * across, far_outer + (far_inner - far_outer) * across

    def radius(self, across: float, share: float) -> float:
        """Return the radius of that line at a share of the angle, metres."""
        first, last = self.ends(across)
        return first + (last - first) * share

    def width(self, share: float) -> float:
        """Return the width at a share of the angle, metres along the radius."""
        return self.radius(OUTER, share) - self.radius(INNER, share)

    @property
    def widens(self) -> float:
        """By how much the last end is wider than the first, metres."""
        return self.width(1.0) - self.width(0.0)

    def pace(self, across: float, share: float) -> float:
        """Return how fast the length along a line grows with the share: metres along it for the whole angle."""
        first, last = self.ends(across)
        return hypot(self.angle * (first + (last - first) * share), last - first)

    def squared(self, across: float) -> tuple[float, float, float]:
        """Return the square of the pace along a line as a polynomial of the share, the constant first."""
        first, last = self.ends(across)
        turned, more = self.angle**2, last - first
        return turned * first**2 + more**2, 2 * turned * first * more, turned * more**2

    def length(self, across: float, share: float = 1.0) -> float:
        """Return the length along a line from the first end to a share of the angle, metres, below 0 before that end:
        in closed form, see ``Edge.length``."""
        half = self.angle * share / 2
        if not half:  # a share so small that nothing is left of it, too
            return 0.0
        first, last = self.ends(across)
        return Edge(Arc.of_angle(first, half), 0.0, (last - first) * share).length
