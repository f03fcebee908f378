"""Whether the slopes along a line keep their limits."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.line.pieces import Hand
from bowstring.forming.line.tops import LineGrade
from bowstring.report.forming.grade_limits import FORM_ERROR, LEVEL_ERROR
from bowstring.report.forming.slopes import RAMP, USUAL_CROSS_LIMIT, USUAL_LIMIT, down, is_over
from bowstring.report.lined.grade_said import LineSettled
from bowstring.report.lined.plan import LinePlan


@dataclass(frozen=True)
class LineJudged:
    """The slopes of a line's grade against their limits.

    Attributes:
        piece, hand: the edge that runs the steepest, the piece from 0; worst: its slope, as a size; limit: what it may.
        across, across_limit: the steepest slope across, and what it may be.
        hold: the most that the middle, or the drawn line, may run, rounded down to 0.01 %; ``None`` where both tops
            decide it.
        ramp: whether the edges would keep a ramp's limit, where they don't keep the walk's.
    """

    piece: int
    hand: Hand
    worst: float
    limit: float
    across: float
    across_limit: float
    hold: float | None
    ramp: bool

    @property
    def runs(self) -> str:
        """``over``, ``near`` (a form's own error may bring it over) or ``ok``."""
        if is_over(self.worst, self.limit):
            return "over"
        return "near" if self.worst > 0 and is_over(self.worst + FORM_ERROR, self.limit) else "ok"

    @property
    def falls(self) -> str:
        """The same across."""
        if is_over(self.across, self.across_limit):
            return "over"
        return "near" if self.across > 0 and is_over(self.across + LEVEL_ERROR, self.across_limit) else "ok"


def judge(plan: LinePlan, settled: LineSettled) -> LineJudged:
    """Return the slopes of what is settled, against what the job allows, or what is usual."""
    said, grade = plan.said.grade, settled.grade
    limit = USUAL_LIMIT if said.most_running is None else said.most_running
    number, hand = grade.steepest
    worst = abs(grade.slope(number, hand))
    return LineJudged(
        piece=number,
        hand=hand,
        worst=worst,
        limit=limit,
        across=grade.across_slope,
        across_limit=USUAL_CROSS_LIMIT if said.most_cross is None else said.most_cross,
        hold=None if settled.by_tops else _hold(grade, limit),
        ramp=is_over(worst, limit) and limit < RAMP and not is_over(worst, RAMP),
    )


def _hold(grade: LineGrade, limit: float) -> float | None:
    """Return the most that it may run, rounded down to 0.01 %, and proved on the edge that runs steepest."""
    slope = round(down(grade.most_running(limit)), 4)
    for held in (slope, round(slope - 1e-4, 4)):
        tried = LineGrade(grade.slab, grade.start, held, grade.cross, grade.crown, grade.on_line)
        if held >= 0 and not is_over(tried.slope(*tried.steepest), limit):
            return held
    return None
