"""What a job says of the tops along its line, settled: a grade, what it waits for, or two things that don't agree."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from bowstring.forming.line.pieces import Hand
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.tops import LineGrade
from bowstring.job.grade import GradeSaid
from bowstring.report.forming.grade_said import LIP, STEEPEST_OF_ALL, Clash
from bowstring.report.forming.plan import USUAL_CROSS
from bowstring.report.lined.plan import LinePlan

Wait = Literal["slope", "high", "low", "low_hand", "width", "wrong", "line"]
"""What is open; ``low_hand``: inside or outside is said of a line, which says nothing; ``line``: the line itself."""

ENDS = {"A": "start", "B": "end"}
"""The ends of a line, by what a job calls them."""


@dataclass(frozen=True)
class LineSettled:
    """Tops that a job settles; ``by_tops``: the slope follows from the tops at both ends; ``cross_taken``: nothing says
    the cross slope."""

    grade: LineGrade
    by_tops: bool
    cross_taken: bool

    @property
    def low(self) -> Hand | None:
        """The lower edge, ``None`` where neither is."""
        return None if not self.grade.cross else "right" if self.grade.cross > 0 else "left"

    @property
    def low_end(self) -> str | None:
        """The lower end of the middle, ``start`` or ``end``; ``None`` where neither is."""
        return None if not self.grade.running else "start" if self.grade.running > 0 else "end"


@dataclass(frozen=True)
class LineClash:
    """Two things that are said and don't agree, as ``grade_said.Clashing`` has them; ``by_tops``: the grade that meets
    both tops, ``by_slope``: the one of the slope."""

    what: Clash
    by_tops: LineGrade | None = None
    by_slope: LineGrade | None = None


def settle(plan: LinePlan) -> LineSettled | LineClash | Wait:
    """Return the tops that a plan settles, what clashes, or what has to be said first."""
    said = plan.said.grade
    wait = _waits(said)
    if wait:
        return wait
    if said.crown is not None and (said.cross or said.low):
        return LineClash("crown")
    if plan.wrong is not None:
        return "wrong"
    if plan.slab is None:
        return "width"
    if plan.asks:
        return "line"
    start, cross, taken = said.start or 0.0, _cross(said), said.cross is None and said.crown is None
    if said.end is None:
        return LineSettled(_by_slope(said, plan.slab, start, cross, said.high), False, taken)
    return _by_tops(plan, plan.slab, (start, said.end), cross)


def _waits(said: GradeSaid) -> Wait | None:
    if said.end is None and said.slope is None:
        return "slope"
    if said.end is None and said.slope and said.high is None:
        return "high"
    if said.crown is None and said.cross != 0 and said.low not in ("left", "right"):
        return "low" if said.low is None else "low_hand"
    return None


def _cross(said: GradeSaid) -> float:
    """Return the cross slope, positive where the left edge is higher."""
    if said.crown is not None:
        return 0.0
    size = USUAL_CROSS if said.cross is None else said.cross
    return -size if said.low == "left" else size


def _by_slope(said: GradeSaid, slab: LineSlab, start: float, cross: float, high: str | None) -> LineGrade:
    slope = said.slope or 0.0
    return LineGrade(slab, start, -slope if high == "A" else slope, cross, said.crown or 0.0, on_line=said.on_line)


def _by_tops(plan: LinePlan, slab: LineSlab, tops: tuple[float, float], cross: float) -> LineSettled | LineClash:
    """Settle the tops that the left edge must meet at both ends: a slope that is said beside them must, too."""
    said, (start, end) = plan.said.grade, tops
    grade = LineGrade.between(slab, start, end, cross, said.crown or 0.0, on_line=said.on_line)
    if abs(grade.running) > STEEPEST_OF_ALL:
        return LineClash("steep", grade)
    agreed = min(LIP, plan.plan.layout.job.tape.mark)
    upward = "A" if grade.running < 0 else "B"
    if said.slope is not None:
        by_slope = _by_slope(said, slab, start, cross, said.high or upward)
        if abs(by_slope.climbed[-1] + start - end) > agreed:
            return LineClash("top", grade, by_slope)
    if said.high and said.high != upward and abs(end - start) > agreed:
        return LineClash("high", grade)
    return LineSettled(grade, True, said.cross is None and said.crown is None)
