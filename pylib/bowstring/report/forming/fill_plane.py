"""What a job says of the top of a slab that fills its curve, settled: a plane, what it waits for, or what clashes."""

from __future__ import annotations

from dataclasses import dataclass
from math import floor
from typing import Literal

from bowstring.forming.pad import Filled
from bowstring.forming.plane import Plane
from bowstring.report.forming.grade_limits import FORM_ERROR, LEVEL_ERROR
from bowstring.report.forming.grade_said import LIP, STEEPEST_OF_ALL, Wait, cross_of, waits_for
from bowstring.report.forming.plan import Plan, of_curve
from bowstring.report.forming.slopes import USUAL_CROSS_LIMIT, USUAL_LIMIT, is_over

PlaneClash = Literal["top", "high", "crown", "steep"]


@dataclass(frozen=True)
class SettledPlane:
    """A plane that a job settles.

    Attributes:
        by_tops: its slope along the string follows from the tops at both ends; cross_taken: nothing says the slope off
            the string.
        limit, across_limit: what is allowed, of the steepest slope of all and off the string.
    """

    plane: Plane
    by_tops: bool
    cross_taken: bool
    limit: float
    across_limit: float

    @property
    def over(self) -> bool:
        """Whether its steepest slope is past the limit."""
        return is_over(self.plane.greatest, self.limit)

    @property
    def across_over(self) -> bool:
        """Whether it is too steep off the string."""
        return is_over(self.plane.away, self.across_limit)

    @property
    def near(self) -> bool:
        """Whether a form's own error may bring it over."""
        return not self.over and self.plane.greatest > 0 and is_over(self.plane.greatest + FORM_ERROR, self.limit)

    @property
    def across_near(self) -> bool:
        """The same off the string."""
        away = abs(self.plane.away)
        return not self.across_over and away > 0 and is_over(away + LEVEL_ERROR, self.across_limit)

    @property
    def hold(self) -> float | None:
        """The most that it may run along the string, rounded down to 0.01 %; ``None`` where nothing would do."""
        most = None if self.by_tops else self.plane.most_along(self.limit)
        if most is None:
            return None
        slope = round(floor(most * 1e4 + 1e-9) / 1e4, 4)
        kept = Plane(self.plane.start, slope, self.plane.away)
        return slope if not is_over(kept.greatest, self.limit) else round(slope - 1e-4, 4)


@dataclass(frozen=True)
class ClashingPlane:
    """Two things that are said and don't agree; ``by_tops``, ``by_slope``: the slopes that each of them has."""

    what: PlaneClash
    by_tops: float = 0.0
    by_slope: float = 0.0


def settle_plane(plan: Plan, filled: Filled) -> SettledPlane | ClashingPlane | Wait:
    """Return the plane that a plan settles, what clashes, or what has to be said first."""
    said = plan.said.grade
    if said.crown is not None:
        return ClashingPlane("crown")
    low = of_curve(said.low, plan.layout.side)
    wait = waits_for(said, low)
    if wait:
        return wait
    start, away = said.start or 0.0, cross_of(said, low)
    limit = USUAL_LIMIT if said.most_running is None else said.most_running
    across_limit = USUAL_CROSS_LIMIT if said.most_cross is None else said.most_cross
    by_slope = -(said.slope or 0.0) if said.high == "A" else said.slope or 0.0
    along = by_slope
    if said.end is not None:
        along = (said.end - start) / filled.arc.chord
        clash = _clash(plan, filled, along)
        if clash:
            return clash
    return SettledPlane(Plane(start, along, away), said.end is not None, said.cross is None, limit, across_limit)


def _clash(plan: Plan, filled: Filled, along: float) -> ClashingPlane | None:
    """Return what doesn't agree with the tops at both ends."""
    said = plan.said.grade
    if abs(along) > STEEPEST_OF_ALL:
        return ClashingPlane("steep", along)
    agreed = min(LIP, plan.layout.job.tape.mark)
    upward = "A" if along < 0 else "B"
    if said.slope is not None:
        by_slope = -said.slope if (said.high or upward) == "A" else said.slope
        if abs(by_slope - along) * filled.arc.chord > agreed:
            return ClashingPlane("top", along, by_slope)
    if said.high and said.high != upward and abs(along) * filled.arc.chord > agreed:
        return ClashingPlane("high", along)
    return None
