"""The tops along a line in sentences: the row, the conclusion, what is judged, how the numbers are read."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot

from bowstring.forming.line.tops import HANDS
from bowstring.report.forming.end_joints import tops_told
from bowstring.report.forming.grade_base import base_lines
from bowstring.report.forming.grade_limits import level_length
from bowstring.report.forming.grade_told import across_limit_of, aim_of
from bowstring.report.forming.grade_water import SLOWEST
from bowstring.report.forming.heights import elevation, size_of, tape_of_heights
from bowstring.report.forming.levels import over
from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.slopes import USUAL_CROSS_LIMIT, USUAL_LIMIT, beside, is_over, percent
from bowstring.report.forming.wall_heights import below_told, levels_told
from bowstring.report.lined.grade_limits import LineJudged
from bowstring.report.lined.grade_said import LineSettled
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def two_lines(plan: LinePlan, settled: LineSettled, judged: LineJudged) -> tuple[str, str]:
    """Return a conclusion in a few words, and the second fact."""
    if is_wall(plan.plan):
        return _climb(plan, settled, "row"), _across_short(plan, settled)
    piece, unit = name_of(plan, judged.piece + 1), _unit(plan)
    limit, across_limit = percent(judged.limit), across_limit_of(judged.across_limit)
    slope, across = beside(judged.worst, judged.limit), beside(judged.across, judged.across_limit)
    kind = "crown" if settled.grade.crown else "cross"
    if judged.runs == "over":
        middle = percent(settled.grade.running)
        return say("lined.short_over", piece=piece, slope=slope), say(
            f"lined.more_over_{judged.hand}{_by_line(settled)}", limit=limit, middle=middle
        )
    if judged.falls == "over":
        return say(f"grades.short_{kind}_over", slope=across), say("grades.more_across_over", limit=across_limit)
    if judged.runs == "near":
        text = say("lined.short_near", piece=piece, slope=slope, limit=limit)
        return text, say(f"grades.more_near_{unit}")
    if judged.falls == "near":
        text = say(f"grades.short_{kind}_near", slope=across, limit=across_limit)
        return text, say(f"lined.more_across_near_{unit}")
    across = _across_short(plan, settled)
    return _climb(plan, settled, "row"), say("lined.more_runs", across=across, slope=percent(judged.worst)) if (
        judged.worst
    ) else across


def _unit(plan: LinePlan) -> str:
    return "feet" if plan.tape.feet else "metric"


def _climb(plan: LinePlan, settled: LineSettled, where: str) -> str:
    up = settled.grade.climbed[-1]
    key = "level" if not up else "up" if up > 0 else "down"
    return say(f"lined.{where}_{key}", height=size_of(plan.tape, up))


def _drop(plan: LinePlan, settled: LineSettled) -> str:
    return size_of(plan.tape, abs(settled.grade.cross) * settled.grade.slab.width)


def _across_short(plan: LinePlan, settled: LineSettled) -> str:
    if settled.grade.crown:
        return say("grades.has_crown", height=size_of(plan.tape, settled.grade.crown))
    if settled.low is None:
        return say("grades.level_across")
    return say(f"lined.low_{settled.low}", drop=_drop(plan, settled))


def conclusion(plan: LinePlan, settled: LineSettled) -> str:
    """Return how high the end stands over the start, and how one form stands to the other."""
    if settled.grade.crown:
        across = say("grades.forms_crown", height=size_of(plan.tape, settled.grade.crown))
    elif settled.low is None:
        across = say("grades.forms_level")
    else:
        across = say(f"lined.form_low_{settled.low}", drop=_drop(plan, settled))
    return f"{_climb(plan, settled, 'end')} {across}"


def over_text(plan: LinePlan, judged: LineJudged) -> str:
    """Return what is too steep: along an edge, else across."""
    if judged.runs == "over":
        slope, piece = beside(judged.worst, judged.limit), name_of(plan, judged.piece + 1)
        return say(f"lined.too_steep_{judged.hand}", piece=piece, slope=slope, limit=percent(judged.limit))
    slope, limit = beside(judged.across, judged.across_limit), across_limit_of(judged.across_limit)
    return say("grades.across_too_steep", slope=slope, limit=limit)


def _by_line(settled: LineSettled) -> str:
    """The end of a sentence's key where the slope runs along the drawn line, and that isn't the middle."""
    return ".line" if settled.grade.on_line and settled.grade.slab.left != settled.grade.slab.right else ""


def along_of(settled: LineSettled) -> str:
    """Return along what the top runs: its ``middle``, or the edge that the drawn line is; empty where it is level."""
    grade = settled.grade
    if not grade.running:
        return ""
    return ("left" if grade.slab.right else "right") if _by_line(settled) else "middle"


def over_why(settled: LineSettled, judged: LineJudged) -> Iterator[str]:
    """Return why an edge is too steep, and what keeps the limit."""
    if judged.runs != "over":
        return
    if is_over(judged.worst, abs(settled.grade.running)):
        yield say(f"lined.less_length{_by_line(settled)}", slope=percent(settled.grade.running))
    if judged.hold is not None:
        yield say(f"lined.hold{_by_line(settled)}", slope=percent(judged.hold))
    else:
        yield say("lined.change_tops")
    if judged.limit == USUAL_LIMIT:
        yield say("grades.past_it_a_ramp", limit=percent(judged.limit))


def lines(plan: LinePlan, settled: LineSettled, judged: LineJudged) -> Iterator[str]:
    """Return how and why, the most needed first."""
    if not is_wall(plan.plan):
        yield from _judged(plan, settled, judged)
        yield _water(settled)
    yield from _from_where(plan)
    yield from _shape(settled)
    yield from _under(plan, settled)
    no_cut = (say("grades.to_base"), say("walled.to_base"))
    yield from (line for line in base_lines(plan.plan) if line not in no_cut)
    if plan.said.grade.ground:
        yield say("lined.no_ground")
    yield from _notes(plan, settled, judged)


def meets(plan: LinePlan, settled: LineSettled) -> list[str]:
    """Return what tops the slopes make where the slab meets concrete that stands there."""
    grade, tape, last = settled.grade, plan.tape, len(plan.line.pieces) - 1
    unit, places = "ft" if tape.feet else "m", {"A": (0, 0.0), "B": (last, 1.0)}
    tops = {end: [grade.top_at(*place, hand) for hand in HANDS] for end, place in places.items()}
    if plan.said.grade.start is not None:
        shown = {end: [f"{elevation(tape, top)} {unit}" for top in both] for end, both in tops.items()}
    else:
        shown = {end: [over(tape, top, grade.start).shown for top in both] for end, both in tops.items()}
    return tops_told(plan.plan, {end: (both[0], both[1]) for end, both in shown.items()})


def _under(plan: LinePlan, settled: LineSettled) -> list[str]:
    """Return how far the footing and the dig are under a wall's top."""
    grade = settled.grade
    level = not grade.running and not grade.cross and not grade.crown
    return [*below_told(plan.plan, level=level), *(levels_told(plan.plan, grade.start) if level else ())]


def paper_lines(plan: LinePlan, settled: LineSettled, judged: LineJudged) -> list[str]:
    """Return what the form sheet says of the tops: above what they are, and what is judged."""
    kinked = any(not join.tangent for join in settled.grade.slab.line.joins)
    corners = [say("lined.at_corners")] if kinked else []
    corners += meets(plan, settled)
    along = [say(f"lined.slope_{line}", slope=percent(settled.grade.running)) for line in [along_of(settled)] if line]
    if is_wall(plan.plan):
        return [*_from_where(plan), *along, *corners, *_under(plan, settled)]
    told = _judged(plan, settled, judged)
    if judged.worst and judged.runs == "ok":
        next(told, "")  # what is signed off has the steepest slope, and its limit
    return [*_from_where(plan), *along, *corners, *told]


def _judged(plan: LinePlan, settled: LineSettled, judged: LineJudged) -> Iterator[str]:
    """Yield what is judged, the steepest slope first."""
    limit = across_limit_of(judged.across_limit)
    if judged.worst:
        piece, slope = name_of(plan, judged.piece + 1), beside(judged.worst, judged.limit)
        key = f"lined.runs_{judged.hand}_{judged.runs}"
        yield say(key, piece=piece, slope=slope, limit=percent(judged.limit))
    yield from over_why(settled, judged)
    if judged.runs == "near":
        yield say(f"grades.near_why_{_unit(plan)}", limit=percent(judged.limit))
    if not judged.across:
        return
    verdict = "over" if judged.falls == "over" else "ok"
    if settled.grade.crown:
        yield say(f"grades.crown_{verdict}", slope=beside(judged.across, judged.across_limit), limit=limit)
    else:
        drop, most = level_drops_of(plan, judged)
        yield say(f"grades.cross_{verdict}_{_unit(plan)}", drop=drop, most=most, limit=limit)
    if judged.falls == "over":
        yield (
            over_text(plan, judged)
            if judged.runs != "over"
            else say("grades.across_too_steep", slope=beside(judged.across, judged.across_limit), limit=limit)
        )
    elif judged.falls == "near":
        yield say(f"grades.across_near_why_{_unit(plan)}", limit=limit)


def level_drops_of(plan: LinePlan, judged: LineJudged) -> tuple[str, str]:
    """As ``grade_told.level_drops``: what stands under one end of a level, and the most that may."""
    marks, length = tape_of_heights(plan.tape), level_length(plan.tape)
    if judged.falls == "over":
        return marks.show_past(judged.across * length, judged.across_limit * length)
    return aim_of(plan.tape, judged.across * length, judged.across_limit * length)


def _water(settled: LineSettled) -> str:
    """Return where the water goes."""
    low, end = settled.low, settled.low_end
    if settled.grade.crown:
        return say(f"lined.water_crown_{end}" if end else "grades.water_edges")
    if low is None:
        return say(f"lined.water_{end}" if end else "grades.water_none")
    return say(f"lined.water_{low}_{end}" if end else f"lined.water_{low}")


def _from_where(plan: LinePlan) -> Iterator[str]:
    """Return above what the heights are."""
    start, tape = plan.said.grade.start, plan.tape
    if start is None:
        yield say("lined.above_start")
    else:
        yield say("lined.starts_at", level=f"{elevation(tape, start)} {'ft' if tape.feet else 'm'}")


def _shape(settled: LineSettled) -> Iterator[str]:
    """Return how the slab runs and falls between the tops."""
    grade = settled.grade
    if grade.running:
        key = "by_tops" if settled.by_tops else "slope"
        yield say(f"lined.{key}_{along_of(settled)}", slope=percent(grade.running))
    if settled.low:
        yield say(f"lined.no_banking_{settled.low}")
    if any(not join.tangent for join in grade.slab.line.joins):
        yield say("lined.at_corners")
        if is_over(grade.twisted, abs(grade.cross)):
            yield say("lined.twisted", slope=percent(grade.twisted))
    if grade.crown:
        yield say("grades.quarter_rule")


def _notes(plan: LinePlan, settled: LineSettled, judged: LineJudged) -> Iterator[str]:
    grade = settled.grade
    if settled.cross_taken and grade.cross:
        yield say("grades.cross_taken", slope=percent(grade.cross))
    across = max(abs(grade.cross), 2 * grade.crown / grade.slab.width)  # a crown's mean, from its middle to an edge
    wall = is_wall(plan.plan)
    if not wall and 0 < hypot(across, grade.running) < SLOWEST:
        yield say(f"grades.slow_{_unit(plan)}")
    if plan.tape.unit == "ft-in":
        yield say("grades.each_rounded")
        yield say("grades.inches_govern")
    if wall:
        return
    if judged.limit == USUAL_LIMIT:
        yield say("grades.source_running")
    if judged.across_limit == USUAL_CROSS_LIMIT:
        yield say("grades.source_cross")
