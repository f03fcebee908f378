"""Whether the slopes keep their limits, and what would."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from bowstring.forming.band import CENTER, INNER, OUTER
from bowstring.forming.grades import Grade
from bowstring.report.forming.grade_said import Settled
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.slopes import RAMP, USUAL_CROSS_LIMIT, USUAL_LIMIT, down, is_over
from bowstring.units.tape import Tape

Line = Literal["outside", "center", "inside"]
LINES: dict[Line, float] = {"outside": OUTER, "center": CENTER, "inside": INNER}

FORM_ERROR = 0.125 / 120
"""A form's top is set to 1/8 in in 10 ft (UFGS 02753): a slope this near its limit may come out over it."""

LEVEL_ERROR = 0.125 / 48
"""1/8 in under a 4-ft level (common practice, no source): the same across."""


@dataclass(frozen=True)
class Judged:
    """The slopes of a grade against their limits.

    Attributes:
        slopes: the running slope along each line where it is steepest, as sizes; steepest: the edge with the larger.
        limit, across_limit: what is allowed; across: the steepest slope across.
        hold: the most that the center line, or the drawn line, may run, rounded down to 0.01 %; ``None`` where both
            tops decide it, or no slope would keep the limit; on_line: the slope runs along the drawn line.
        by_tops: both tops decide the slope.
        ramp: whether the edges would keep a ramp's limit, where they don't keep the walk's.
    """

    slopes: dict[Line, float]
    steepest: Literal["outside", "inside"]
    limit: float
    across: float
    across_limit: float
    hold: float | None
    by_tops: bool
    ramp: bool
    on_line: bool = False

    @property
    def worst(self) -> float:
        """The running slope that is held against the limit."""
        return self.slopes[self.steepest]

    @property
    def runs_over(self) -> bool:
        """Whether an edge runs steeper than it may."""
        return is_over(self.worst, self.limit)

    @property
    def falls_over(self) -> bool:
        """Whether it falls steeper across than it may."""
        return is_over(self.across, self.across_limit)

    @property
    def runs_near(self) -> bool:
        """Whether a form's own error may bring an edge over its limit."""
        return not self.runs_over and is_over(self.worst + FORM_ERROR, self.limit) and self.worst > 0

    @property
    def falls_near(self) -> bool:
        """The same across."""
        return not self.falls_over and is_over(self.across + LEVEL_ERROR, self.across_limit) and self.across > 0


def judge(plan: Plan, settled: Settled) -> Judged:
    """Return the slopes of what is settled, against what the job allows, or what is usual."""
    said, grade = plan.said.grade, settled.grade
    limit = USUAL_LIMIT if said.most_running is None else said.most_running
    slopes: dict[Line, float] = {line: grade.steepest(across) for line, across in LINES.items()}
    steepest: Literal["outside", "inside"] = "outside" if slopes["outside"] > slopes["inside"] else "inside"
    over = is_over(slopes[steepest], limit)
    return Judged(
        slopes=slopes,
        steepest=steepest,
        limit=limit,
        across=grade.across_slope(),
        across_limit=USUAL_CROSS_LIMIT if said.most_cross is None else said.most_cross,
        hold=None if settled.by_tops else _hold(grade, limit),
        by_tops=settled.by_tops,
        ramp=over and limit < RAMP and not is_over(slopes[steepest], RAMP),
        on_line=grade.along != CENTER,
    )


def _hold(grade: Grade, limit: float) -> float | None:
    """Return the most that it may run, rounded down to 0.01 %, and proved on both edges."""
    slope = round(down(grade.most_running(limit)), 4)
    for held in (slope, round(slope - 1e-4, 4)):
        if held < 0:
            return None
        running = -held if grade.running < 0 else held
        tried = Grade(grade.band, grade.start, running, grade.cross, grade.crown, grade.along)
        if not any(is_over(tried.steepest(across), limit) for across in (OUTER, INNER)):
            return held
    return None


def level_length(tape: Tape) -> float:
    """Return the length of the spirit level by which a cross slope is told: 4 ft, or 1.2 m."""
    return 4 * 0.3048 if tape.feet else 1.2
