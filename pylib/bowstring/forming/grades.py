"""How high the forms stand: a running slope along the center line, a cross slope along the radius."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.slab import Slab


@dataclass(frozen=True)
class Grade:
    """Tops of the forms of a slab, by z = z0 + g Rc a + x d.

    Attributes:
        slab: its edges.
        start: the top at the first end of the outer edge, metres.
        running: rise over run along the center line, positive where the last end is higher.
        cross: rise over run along the radius, positive where the outer edge is higher.
    """

    slab: Slab
    start: float
    running: float
    cross: float

    @classmethod
    def between(cls, slab: Slab, start: float, end: float, cross: float) -> Grade:
        """Return the grade whose outer edge meets two tops, in metres, at its ends: the running slope follows."""
        return cls(slab, start, (end - start) / (slab.middle * slab.angle), cross)

    def top(self, share: float, inward: float) -> float:
        """Return the top at a share of the angle, ``inward`` metres from the outer edge along the radius; metres."""
        return self.start + self.running * self.slab.middle * self.slab.angle * share - self.cross * inward

    def slope_at(self, radius: float) -> float:
        """Return the running slope along the line of a radius, metres: the same rise over another length.

        >>> round(Grade(Slab(57.0, 5.0, 0.8), 0.0, 0.02, 0.015).slope_at(57.0), 5)
        0.02088
        """
        return self.running * self.slab.middle / radius

    @property
    def steepest(self) -> float:
        """The running slope along the inner edge, where it is steepest, as a size."""
        return abs(self.slope_at(self.slab.inner))

    def most_running(self, limit: float) -> float:
        """Return the most that the center line may run for the inner edge to keep a limit."""
        return limit * self.slab.inner / self.slab.middle


def crown(width: float, rise: float, across: float) -> float:
    """Return how high a parabolic crown stands ``across`` metres from one edge, metres above the edges.

    ``width`` from edge to edge and ``rise`` in the middle, metres. On a parabola each half's mid-ordinate is a
    quarter of the one before, exactly: here the rule of the quarter holds.

    >>> crown(8.0, 0.16, 2.0)
    0.12
    """
    part = 2 * across / width - 1
    return rise * (1 - part * part)


def cut_or_fill(top: float, thickness: float, base: float, ground: float) -> float:
    """Return how much is dug (positive) or filled (negative) under a form's top, metres: ``thickness`` of the slab,
    ``base`` of its bed, ``ground`` the height measured there."""
    return ground - (top - thickness - base)


def rod(height_of_instrument: float, top: float) -> float:
    """Return what a rod reads that stands on a top, metres."""
    return height_of_instrument - top
