"""What a job says of the tops, settled: a grade, what it waits for, or two things that don't agree."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from bowstring.forming.band import CENTER, INNER, OUTER, Band
from bowstring.forming.grades import Grade
from bowstring.job.grade import GradeSaid
from bowstring.report.forming.plan import LIES, USUAL_CROSS, Plan, of_curve
from bowstring.units.slopes import STEEPEST

Wait = Literal["slope", "high", "low", "width", "no_inner"]
Clash = Literal["top", "high", "crown", "steep"]

STEEPEST_OF_ALL = STEEPEST / 100

LIP = 0.25 * 0.0254
"""Metres: what a shoe or a wheel meets without being stopped (2010 ADA Standards 303.2, from memory)."""


@dataclass(frozen=True)
class Settled:
    """Tops that a job settles.

    Attributes:
        by_tops: the slope follows from the tops at both ends; agrees: a slope is said beside them.
        low: ``outside`` or ``inside``, ``None`` where neither edge is lower; cross_taken: nothing says the cross slope.
    """

    grade: Grade
    by_tops: bool
    agrees: bool
    low: str | None
    cross_taken: bool

    @property
    def high(self) -> str | None:
        """The end that is higher along the line that it runs by."""
        return None if not self.grade.running else "B" if self.grade.running > 0 else "A"


@dataclass(frozen=True)
class Clashing:
    """Two things that are said and don't agree.

    Attributes:
        what: ``top`` (a slope and the top at B), ``high`` (the high end and the tops), ``crown`` (a crown and a cross
            slope or a low edge), ``steep`` (tops so far apart that nobody forms it).
        by_tops: the grade that meets both tops; by_slope: the one of the slope.
    """

    what: Clash
    by_tops: Grade | None = None
    by_slope: Grade | None = None


def line_in(plan: Plan) -> float:
    """Return where in the band the line lies along which the slope runs, a share of its width from the outer edge."""
    drawn = {"outside": OUTER, "inside": INNER}.get(plan.edge or "", CENTER)
    return drawn if plan.said.grade.on_line else CENTER


def band_of(plan: Plan) -> Band | None:
    """Return both edges of a plan's slab, tapered where it says another width at B; ``None`` without an inner edge."""
    if plan.slab is None or plan.edge is None:
        return None
    far = plan.said.slab.far_width
    if far is None or far == plan.width:
        return Band.of(plan.slab)
    try:
        widths = plan.slab.width, far
        return Band.tapered(plan.line.radius, plan.slab.angle, widths, LIES[plan.edge])
    except ValueError:
        return None


def settle(plan: Plan) -> Settled | Clashing | Wait:
    """Return the tops that a plan settles, what clashes, or what has to be said first: nothing here is assumed that
    would turn them."""
    said = _flat_wall(plan)
    low = of_curve(said.low, plan.layout.side)
    wait = waits_for(said, low)
    if wait:
        return wait
    if said.crown is not None and (said.cross or said.low):
        return Clashing("crown")
    if plan.waits:
        return "width"
    band = band_of(plan)
    if band is None:
        return "no_inner"
    start, cross = said.start or 0.0, cross_of(said, low)
    if said.end is None:
        return _settled(said, _by_slope(plan, band, start, cross, said.high), by_tops=False)
    return _by_tops(plan, band, start, cross)


def _flat_wall(plan: Plan) -> GradeSaid:
    """Return what is said of the tops; a wall's is level across as long as nothing says another one."""
    said = plan.said.grade
    if plan.said.slab.is_wall and said.cross is None and said.low is None and said.crown is None:
        return GradeSaid(**{**vars(said), "cross": 0.0})
    return said


def waits_for(said: GradeSaid, low: str | None) -> Wait | None:
    """Return what has to be said of the slopes first; ``low``: the low edge, as far as it is known."""
    if said.end is None and said.slope is None:
        return "slope"
    if said.end is None and said.slope and said.high is None:
        return "high"
    if said.crown is None and said.cross != 0 and low is None:
        return "low"
    return None


def cross_of(said: GradeSaid, low: str | None) -> float:
    """Return the cross slope, positive where the outer edge is higher."""
    if said.crown is not None:
        return 0.0
    size = USUAL_CROSS if said.cross is None else said.cross
    return -size if low == "outside" else size


def _by_slope(plan: Plan, band: Band, start: float, cross: float, high: str | None) -> Grade:
    said = plan.said.grade
    slope = said.slope or 0.0
    return Grade(band, start, -slope if high == "A" else slope, cross, said.crown or 0.0, line_in(plan))


def _by_tops(plan: Plan, band: Band, start: float, cross: float) -> Settled | Clashing:
    """Settle the tops that both ends must meet: a slope that is said beside them must bring B to its top, too."""
    said = plan.said.grade
    assert said.end is not None
    grade = Grade.between(band, start, said.end, cross, said.crown or 0.0, line_in(plan))
    if abs(grade.running) > STEEPEST_OF_ALL:
        return Clashing("steep", grade)
    agreed = min(LIP, plan.layout.job.tape.mark)
    upward = "A" if grade.running < 0 else "B"
    if said.slope is not None:
        by_slope = _by_slope(plan, band, start, cross, said.high or upward)
        if abs(by_slope.top(1.0, 0.0) - said.end) > agreed:
            return Clashing("top", grade, by_slope)
    climbed = abs(grade.running) * band.length(grade.along)
    if said.high and said.high != upward and climbed > agreed:
        return Clashing("high", grade)
    return _settled(said, grade, by_tops=True)


def _settled(said: GradeSaid, grade: Grade, *, by_tops: bool) -> Settled:
    low = None if not grade.cross else "inside" if grade.cross > 0 else "outside"
    taken = said.cross is None and said.crown is None
    return Settled(grade, by_tops, by_tops and said.slope is not None, low, taken)
