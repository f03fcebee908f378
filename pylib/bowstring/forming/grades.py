"""How high the forms stand: a running slope along the center line, and across it a slope or a crown."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from bowstring.forming.band import CENTER, INNER, OUTER, Band
from bowstring.forming.steepest import turning

EDGES = (OUTER, INNER)


@dataclass(frozen=True)
class Grade:
    """Tops of a slab: the center line climbs evenly along its length, and across it each place falls or is crowned.

    With one width it is z = z0 + g Rc a - x d, a the angle from the first end and d inward from the outer edge; where
    the slope runs along the drawn line, Rc is that line's radius.

    Attributes:
        band: its edges.
        start: the top at the first end of the outer edge, metres.
        running: rise over run along the center line, positive where the last end is higher.
        cross: rise over run along the radius, positive where the outer edge is higher.
        crown: how far the middle stands over the straight line across, metres.
        along: where in the band the line lies along which it runs, a share of its width from the outer edge.
    """

    band: Band
    start: float
    running: float
    cross: float
    crown: float = 0.0
    along: float = CENTER

    @classmethod
    def between(
        cls, band: Band, start: float, end: float, cross: float, crown: float = 0.0, along: float = CENTER
    ) -> Grade:
        """Return the grade whose outer edge meets two tops, in metres, at its ends: the running slope follows."""
        climbed = end - start - cross * band.widens * along
        return cls(band, start, climbed / band.length(along), cross, crown, along)

    def at(self, running: float) -> Grade:
        """Return the same tops by another running slope."""
        return Grade(self.band, self.start, running, self.cross, self.crown, self.along)

    def top(self, share: float, across: float) -> float:
        """Return the top at a share of the angle and a share of the width from the outer edge, metres."""
        return self._straight(share, across) + crown(1.0, self.crown, across)

    def _straight(self, share: float, across: float) -> float:
        """Return the top without the crown, which is the same at every share."""
        there = self._tops.get(share)
        if there is None:
            band, along = self.band, self.along
            on_it = self.start - self.cross * band.width(0.0) * along + self.running * band.length(along, share)
            there = self._tops[share] = on_it, self.cross * band.width(share)
        on_it, falls = there
        return on_it + falls * (self.along - across)

    @cached_property
    def _tops(self) -> dict[float, tuple[float, float]]:
        """The top on the line that it runs by and what it falls across, by the share: asked for both edges, often."""
        return {}

    def slope_at(self, across: float, share: float = 0.0) -> float:
        """Return the running slope along a line at a share of the angle: its own climb over its own length.

        >>> from bowstring.forming.slab import Slab
        >>> round(Grade(Band.of(Slab(57.0, 5.0, 0.8)), 0.0, 0.02, 0.015).slope_at(INNER), 5)
        0.02088
        """
        climb = self.running * self.band.pace(self.along, share) + self._widening(across)
        return climb / self.band.pace(across, share)

    def _widening(self, across: float) -> float:
        """Return what a taper adds to a line's climb over the whole angle: farther out is higher by the cross slope."""
        return self.cross * self.band.widens * (self.along - across)

    def steepest(self, across: float) -> float:
        """Return the running slope along a line where it is steepest, as a size.

        With one width it is the same everywhere; on a taper it is looked at wherever it may turn.
        """
        band = self.band
        if not band.widens:
            return abs(self.slope_at(across))
        shares = turning(self.running, self._widening(across), band.squared(self.along), band.squared(across))
        return max(abs(self.slope_at(across, share)) for share in shares)

    def most_running(self, limit: float) -> float:
        """Return the most that it may run, in this grade's direction, for both edges to keep a limit;
        below 0 where the taper alone is past it."""
        return min(self._most_by(across, limit) for across in EDGES)

    def _most_by(self, across: float, limit: float) -> float:
        band, added = self.band, self._widening(across)
        forward = added if self.running >= 0 else -added
        shares = turning(limit, -forward, band.squared(across), band.squared(self.along)) if band.widens else (0.0,)
        return min((limit * band.pace(across, share) - forward) / band.pace(self.along, share) for share in shares)

    def across_slope(self) -> float:
        """Return the steepest slope across, as a size: a crown's is at its edges, four times its height over the
        width."""
        narrowest = min(self.band.width(0.0), self.band.width(1.0))
        return abs(self.cross) + 4 * self.crown / narrowest


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
