"""The row of the grades on the first screen."""

from __future__ import annotations

from bowstring.report.forming.grade_limits import Judged
from bowstring.report.forming.grade_said import Settled, Wait
from bowstring.report.forming.grade_told import across_limit_of, climbed, drops, limit_of
from bowstring.report.forming.heights import size_of
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forming.slopes import beside, percent
from bowstring.report.forms.build import BuildRow
from bowstring.words import say

PANELS: dict[Wait, str] = {"slope": "slope", "high": "slope", "low": "slope", "width": "slab", "no_inner": "slab"}


def open_row(plan: Plan, wait: Wait) -> BuildRow:
    """Return the row of grades that wait for something."""
    key = "_".join(["width", *plan.waits]) if wait == "width" else wait
    text = say("grades.open" if wait == "slope" else f"grades.open_{key}")
    more = say(f"grades.more_{wait}")
    return {"key": "grades", "state": "open", "text": text, "more": more, "panel": PANELS[wait]}


def two_lines(plan: Plan, settled: Settled, judged: Judged) -> tuple[str, str]:
    """Return a conclusion in a few words, and the second fact."""
    limit, across_limit = limit_of(judged.limit), across_limit_of(judged.across_limit)
    slope, across = beside(judged.worst, judged.limit), beside(judged.across, judged.across_limit)
    unit = "feet" if plan.tape.feet else "metric"
    kind = "crown" if settled.grade.crown else "cross"
    if is_wall(plan):
        return _plainly(plan, settled)
    if judged.runs_over:
        text = say(f"grades.short_over_{judged.steepest}", slope=slope)
        return text, say("grades.more_over", center=percent(judged.slopes["center"]), limit=limit)
    if judged.falls_over:
        return say(f"grades.short_{kind}_over", slope=across), say("grades.more_across_over", limit=across_limit)
    if judged.runs_near:
        text = say(f"grades.short_near_{judged.steepest}", slope=slope, limit=limit)
        return text, say(f"grades.more_near_{unit}")
    if judged.falls_near:
        text = say(f"grades.short_{kind}_near", slope=across, limit=across_limit)
        return text, say(f"grades.more_across_near_{unit}")
    return _usual(plan, settled, judged)


def _usual(plan: Plan, settled: Settled, judged: Judged) -> tuple[str, str]:
    text, across = _plainly(plan, settled)
    if not judged.worst:
        return text, across
    if settled.low == judged.steepest:
        return text, say("grades.more_low_runs", across=across, slope=percent(judged.worst))
    return text, say(f"grades.more_runs_{judged.steepest}", across=across, slope=percent(judged.worst))


def _plainly(plan: Plan, settled: Settled) -> tuple[str, str]:
    """How high B stands, and how one edge stands to the other; nothing judged: of a wall that is all."""
    grade = settled.grade
    up = climbed(grade)
    text = say(f"grades.{'level' if not up else 'up' if up > 0 else 'down'}", height=size_of(plan.tape, up))
    if grade.crown:
        across = say("grades.has_crown", height=size_of(plan.tape, grade.crown))
    elif settled.low is None:
        across = say("grades.level_across")
    else:
        first, last = (size_of(plan.tape, drop) for drop in drops(grade))
        key = f"grades.low_{settled.low}"
        across = say(key, drop=first) if first == last else say(f"{key}_taper")
    return text, across
