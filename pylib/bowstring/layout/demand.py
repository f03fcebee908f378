"""What a job asks of its stakes: how near their places on the drawing, and how near the fair curve through their
neighbours. Nobody sees a pad that lies 1/8 in aside; everybody sees a stake 1/8 in out of line with its neighbours."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.job.job import Job
from bowstring.layout.rows import Row

PLACE, FAIR = "place", "fair"

LIKELY_TOLERANCE = 0.05
"""Metres: nobody sets forms to a coarser tolerance (common practice, no source)."""


@dataclass(frozen=True)
class Demand:
    """Metres that a stake may be off its place across the arc, and off the mid-ordinate over its two neighbours."""

    tolerance: float | None
    fair: float | None

    @property
    def limit(self) -> float | None:
        """What ``need`` is held to."""
        return self.fair if self.tolerance is None else self.tolerance

    def need(self, row: Row) -> float:
        """Return what a method comes to, metres, on the scale of the limit: by whichever of the two is the harder."""
        if self.fair is None:
            return row.expected
        if self.tolerance is None:
            return row.fair_95
        return max(row.expected, row.fair_95 * self.tolerance / self.fair)

    def holds(self, row: Row) -> bool | None:
        """Tell whether a method holds both at 95 %, ``None`` where nothing is asked."""
        return None if self.limit is None else self.need(row) <= self.limit

    @property
    def of_place(self) -> Demand:
        """The same without the fair curve."""
        return Demand(self.tolerance, None)

    @property
    def of_fair(self) -> Demand:
        """The same without the place."""
        return Demand(None, self.fair)


def demand_of(job: Job) -> Demand:
    """Return what a job asks."""
    return Demand(job.tolerance, job.fair)


def decided(demand: Demand, best: Row, by_place: Row) -> str | None:
    """Return which of the two the choice of a method hung on: ``fair`` where the place alone would have chosen another,
    or where it is the harder for the one chosen. ``None`` where nothing is asked."""
    if demand.limit is None:
        return None
    if demand.fair is None:
        return PLACE
    if best is not by_place or demand.tolerance is None or demand.need(best) > best.expected:
        return FAIR
    return PLACE


def any_in_place(demand: Demand, rows: Sequence[Row]) -> bool:
    """Tell whether a method that could be taken holds the tolerance."""
    return any(demand.of_place.holds(row) for row in rows if row.sound)
