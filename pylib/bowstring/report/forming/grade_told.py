"""The tops in sentences: the conclusion, what is judged, how to read the numbers."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.band import CENTER, INNER, OUTER
from bowstring.forming.grades import Grade
from bowstring.report.forming.grade_limits import Judged, level_length
from bowstring.report.forming.grade_said import Settled
from bowstring.report.forming.grade_water import is_slow
from bowstring.report.forming.heights import elevation, size_of, tape_of_heights
from bowstring.report.forming.levels import reading
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forming.quantities import fine_tape
from bowstring.report.forming.slopes import USUAL_CROSS_LIMIT, USUAL_LIMIT, beside, percent
from bowstring.units.tape import Tape
from bowstring.words import say


def climbed(grade: Grade) -> float:
    """Return how far B's outer top stands above A's, metres."""
    return grade.top(1.0, OUTER) - grade.top(0.0, OUTER)


def drops(grade: Grade) -> tuple[float, float]:
    """Return how far the lower edge stands under the other at A and at B, metres."""
    return abs(grade.cross) * grade.band.width(0.0), abs(grade.cross) * grade.band.width(1.0)


def limit_of(limit: float) -> str:
    """Return a running limit as it is told."""
    return percent(limit)


def across_limit_of(limit: float) -> str:
    """Return a limit across as it is told: the usual one as the ratio that it is."""
    return "1:48" if limit == USUAL_CROSS_LIMIT else percent(limit)


def conclusion(plan: Plan, settled: Settled) -> list[str]:
    """Return how high B stands over A, and how one form stands to the other."""
    grade = settled.grade
    up = climbed(grade)
    key = "level" if not up else "up" if up > 0 else "down"
    return [say(f"grades.B_{key}", height=size_of(plan.tape, up)), _across(plan, settled)]


def _across(plan: Plan, settled: Settled) -> str:
    grade = settled.grade
    if grade.crown:
        return say("grades.forms_crown", height=size_of(plan.tape, grade.crown))
    if settled.low is None:
        return say("grades.forms_level")
    first, last = (size_of(plan.tape, drop) for drop in drops(grade))
    key = f"grades.form_low_{settled.low}"
    return say(key, drop=first) if first == last else say(f"{key}_taper", drop=first, far=last)


def aim_of(tape: Tape, drop: float, limit: float) -> tuple[str, str]:
    """Return what a crew aims at under one end of a level, and the most that may stand there, of a drop that is within
    its limit, metres: where the nearest mark to it is that limit already, the aim is the last finer mark short of
    it."""
    marks, finest = tape_of_heights(tape), fine_tape(tape)
    most = marks.down(limit)
    aim = marks.round(drop)
    finer = finest.down(drop)
    if aim < most or finer >= most:
        return marks.show(min(aim, most)), marks.show(most)
    return finest.show(finer), marks.show(most)


def level_drops(plan: Plan, judged: Judged) -> tuple[str, str]:
    """Return what stands under one end of a level by the cross slope, and the most that may: where it holds the second
    is rounded down and the first is not past it; where it doesn't, both are told so finely that they differ."""
    marks, length = tape_of_heights(plan.tape), level_length(plan.tape)
    if judged.falls_over:
        return marks.show_past(judged.across * length, judged.across_limit * length)
    return aim_of(plan.tape, judged.across * length, judged.across_limit * length)


def judged_lines(plan: Plan, settled: Settled, judged: Judged) -> Iterator[str]:
    """Return whether the slopes hold."""
    if judged.worst:
        verdict = "over" if judged.runs_over else "near" if judged.runs_near else "ok"
        slope = beside(judged.worst, judged.limit)
        yield say(f"grades.runs_{judged.steepest}_{verdict}", slope=slope, limit=limit_of(judged.limit))
    if not judged.across:
        return
    verdict = "over" if judged.falls_over else "ok"
    limit = across_limit_of(judged.across_limit)
    if settled.grade.crown:
        yield say(f"grades.crown_{verdict}", slope=beside(judged.across, judged.across_limit), limit=limit)
        return
    drop, most = level_drops(plan, judged)
    unit = "feet" if plan.tape.feet else "metric"
    yield say(f"grades.cross_{verdict}_{unit}", drop=drop, most=most, limit=limit)


def warnings(plan: Plan, judged: Judged) -> Iterator[str]:
    """Return what is over a limit or near it, and what would bring it over."""
    unit = "feet" if plan.tape.feet else "metric"
    if judged.runs_over:
        yield over_line(judged)
        yield from over_why(judged)
    elif judged.runs_near:
        yield say(f"grades.near_why_{unit}", limit=limit_of(judged.limit))
    if judged.falls_over:
        slope = beside(judged.across, judged.across_limit)
        yield say("grades.across_too_steep", slope=slope, limit=across_limit_of(judged.across_limit))
    elif judged.falls_near:
        yield say(f"grades.across_near_why_{unit}", limit=across_limit_of(judged.across_limit))


def over_line(judged: Judged) -> str:
    """Return that an edge is too steep."""
    key = "walk" if judged.limit == USUAL_LIMIT else "job"
    slope = beside(judged.worst, judged.limit)
    return say(f"grades.too_steep_{judged.steepest}_{key}", slope=slope, limit=limit_of(judged.limit))


def over_why(judged: Judged) -> Iterator[str]:
    """Return why an edge is too steep, and what keeps the limit."""
    if judged.steepest == "inside" and judged.slopes["center"] < judged.worst:
        yield say("grades.less_length", slope=percent(judged.slopes["center"]))
    if judged.hold is not None:
        yield say("grades.hold_or_ask.line" if judged.on_line else "grades.hold_or_ask", slope=percent(judged.hold))
    else:
        yield say("grades.change_tops" if judged.by_tops else "grades.no_slope_holds")
    if judged.limit == USUAL_LIMIT:
        yield say("grades.past_it_a_ramp", limit=limit_of(judged.limit))


def _by_radii(plan: Plan, grade: Grade) -> str:
    """Return by how much the inner edge is steeper than the center line, and why."""
    center, inside = grade.band.radius(CENTER, 0.0), grade.band.radius(INNER, 0.0)
    radii = {"center": plan.tape.show(center), "inside": plan.tape.show(inside)}
    return say("grades.by_radii", ratio=f"{center / inside:.3f}", **radii)


def notes(plan: Plan, settled: Settled, judged: Judged) -> Iterator[str]:
    """Return what was taken, which stands on the fold, and how the numbers are read."""
    if settled.cross_taken:
        yield say("grades.cross_taken", slope=percent(settled.grade.cross))
    yield from from_where(plan, settled.grade.start)
    yield from _along(plan, settled, judged)
    yield from _across_notes(plan, settled)
    if plan.tape.unit == "ft-in":
        yield say("grades.each_rounded")
        yield say("grades.inches_govern")
    if is_wall(plan):
        return
    if judged.limit == USUAL_LIMIT:
        yield say("grades.source_running")
    if judged.across_limit == USUAL_CROSS_LIMIT:
        yield say("grades.source_cross")


def from_where(plan: Plan, start: float) -> Iterator[str]:
    """Return above what the heights are, and what the rod reads there."""
    said, tape = plan.said.grade, plan.tape
    if said.start is None:
        yield say("grades.above_A")
    else:
        yield say("grades.starts_at", level=f"{elevation(tape, start)} {'ft' if tape.feet else 'm'}")
    if said.instrument is not None and said.instrument >= start:
        yield say("grades.rod_at_A", reading=elevation(tape, reading(tape, said.instrument, start)))


def _along(plan: Plan, settled: Settled, judged: Judged) -> Iterator[str]:
    """Return how each line runs, and why the inner edge is steeper."""
    grade = settled.grade
    if settled.by_tops:
        yield say(
            "grades.slope_follows.line" if judged.on_line else "grades.slope_follows", slope=percent(grade.running)
        )
    elif judged.on_line and grade.running:
        yield say("grades.on_line", slope=percent(grade.running))
    if grade.running:
        texts = {line: percent(slope) for line, slope in judged.slopes.items()}
        key = "grades.along_taper" if grade.band.widens else "grades.along"
        yield say(key, center=texts["center"], outside=texts["outside"], inside=texts["inside"])
    if grade.band.widens:
        yield say("grades.by_width")
    elif grade.running:
        yield _by_radii(plan, grade)


def _across_notes(plan: Plan, settled: Settled) -> Iterator[str]:
    """Return what a crown is, and whether it drains."""
    grade = settled.grade
    if grade.crown:
        yield say("grades.quarter_rule")
    if is_slow(grade) and not is_wall(plan):
        yield say("grades.slow_feet" if plan.tape.feet else "grades.slow_metric")
