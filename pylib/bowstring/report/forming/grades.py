"""The grades, told."""

from __future__ import annotations

from bowstring.job.terms import LINE_ENDS
from bowstring.report.forming.end_joints import top_shown, tops_told
from bowstring.report.forming.grade_base import asks, base_lines
from bowstring.report.forming.grade_limits import Judged, judge
from bowstring.report.forming.grade_row import open_row, two_lines
from bowstring.report.forming.grade_rows import across_rows, digs_of, has_of, rows_of
from bowstring.report.forming.grade_said import Clashing, Settled, settle
from bowstring.report.forming.grade_stops import row_of_clash, stop_of, too_steep, ways_of, ways_of_clash
from bowstring.report.forming.grade_told import conclusion, judged_lines, level_drops, notes, warnings
from bowstring.report.forming.grade_water import lowest, water
from bowstring.report.forming.ground_far import far_stop
from bowstring.report.forming.levels import read_from, read_short
from bowstring.report.forming.near_cut import near_cut
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forming.slopes import USUAL_CROSS_LIMIT, USUAL_LIMIT, percent
from bowstring.report.forming.wall_heights import below_told, levels_of
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_grades import GradesPart, TopRow
from bowstring.words import say


def report_grades(plan: Plan) -> GradesPart | None:
    """Return the answer's ``grades``, ``None`` where something has to be said first."""
    settled = settle(plan)
    if isinstance(settled, str):
        return None
    return _stopped(plan, settled) if isinstance(settled, Clashing) else _told(plan, settled)


def row_of_grades(plan: Plan, part: GradesPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is None:
        wait = settle(plan)
        assert isinstance(wait, str)
        return open_row(plan, wait)
    panel = "slope" if part["state"] == "stop" else ""
    return {"key": "grades", "state": part["state"], "text": part["short"], "more": part["more"], "panel": panel}


def _told(plan: Plan, settled: Settled) -> GradesPart:
    """Tell tops that are settled; where the job stops past a limit, or its ground can't be, none of them."""
    grade, judged = settled.grade, judge(plan, settled)
    part, rows = _slopes(plan, settled, judged), rows_of(plan, grade)
    far = far_stop(plan, rows, grade.start)
    if far:
        return part | {"state": "stop", "short": far[0]["head"], "more": far[1], "ways": [], "stop": far[0]}
    if part["stop"]:
        return part
    drop, most = level_drops(plan, judged)
    level = _is_level_wall(plan, settled)
    part |= {
        "asks": [*asks(plan, rows, grade.start), *meets(plan, rows)],
        "base": list(base_lines(plan)),
        "below": below_told(plan, level=level),
        "levels": levels_of(plan, grade.start, level=level),
        "digs": digs_of(rows),
    }
    if level:  # of every stake the same: its lines say it once
        return part | {"conclusion": [say("walled.level_top")], "notes": [say("walled.level_how")]}
    part |= {
        "conclusion": conclusion(plan, settled),
        "across": across_rows(plan, grade),
        "drop": "" if grade.crown else drop,
        "most_drop": "" if grade.crown else most,
        "lowest": lowest(plan, grade),
        "water": "" if is_wall(plan) else water(plan, grade),
        "rows": rows,
        "heads": [say("grades.head_height"), *([say("grades.feet")] if "feet" in has_of(rows) else [])],
        "has": has_of(rows),
        "notes": list(notes(plan, settled, judged)),
    }
    return part


def meets(plan: Plan, rows: list[TopRow]) -> list[str]:
    """Return what tops the slopes make where the slab meets concrete that stands there."""
    stakes = [row for row in rows if row["kind"] == "stake"]
    ends = zip(LINE_ENDS, (stakes[0], stakes[-1]), strict=True)
    tops = {end: [top_shown(plan, top) for top in (row["outside"], row["inside"]) if top] for end, row in ends}
    return tops_told(plan, {end: (texts[0], texts[-1]) for end, texts in tops.items()})


def _slopes(plan: Plan, settled: Settled, judged: Judged) -> GradesPart:
    """Return a part with the slopes, judged; of a wall, on which nobody walks, they are told alone."""
    grade = settled.grade
    short, more = two_lines(plan, settled, judged)
    part = empty(plan)
    part |= {
        "state": "usual",
        "short": short,
        "more": more,
        "running": grade.running,
        "high": settled.high,
        "cross": abs(grade.cross),
        "low": settled.low,
        "crown": grade.crown or None,
        "slopes": [{"line": line, "slope": slope, "shown": percent(slope)} for line, slope in judged.slopes.items()],
        "steepest": judged.steepest,
        "limit": judged.limit,
        "cross_limit": judged.across_limit,
        "hold": judged.hold,
        "stop": None,
    }
    if is_wall(plan):
        near = near_cut(plan, grade)
        return part | {"state": "near", "more": near[0], "warnings": [near[1]]} if near else part
    stop = too_steep(plan, settled, judged)
    return part | {
        "state": "stop" if stop else _state(judged),
        "judged": list(judged_lines(plan, settled, judged)),
        "ways": ways_of(plan, settled, judged),
        "stop": stop,
        "warnings": list(warnings(plan, judged)),
    }


def _is_level_wall(plan: Plan, settled: Settled) -> bool:
    """Tell whether it's a wall's top that is level all over: one line says it."""
    grade = settled.grade
    return is_wall(plan) and not grade.running and not grade.cross and not grade.crown


def _state(judged: Judged) -> str:
    told = judged.runs_over or judged.falls_over or judged.runs_near or judged.falls_near
    return "near" if told else "usual"


def _stopped(plan: Plan, clash: Clashing) -> GradesPart:
    """Tell that two things don't agree."""
    short, more = row_of_clash(plan, clash)
    part = empty(plan)
    part |= {
        "state": "stop",
        "short": short,
        "more": more,
        "stop": stop_of(plan, clash),
        "ways": ways_of_clash(plan, clash),
    }
    return part


def empty(plan: Plan) -> GradesPart:
    """Return a part without a number of the tops."""
    said = plan.said.grade
    return {
        "state": "stop",
        "short": "",
        "more": "",
        "conclusion": [],
        "judged": [],
        "running": None,
        "high": None,
        "cross": None,
        "low": None,
        "crown": None,
        "across": [],
        "slopes": [],
        "steepest": "",
        "limit": USUAL_LIMIT if said.most_running is None else said.most_running,
        "cross_limit": USUAL_CROSS_LIMIT if said.most_cross is None else said.most_cross,
        "hold": None,
        "drop": "",
        "most_drop": "",
        "lowest": [],
        "water": "",
        "rows": [],
        "sides": ["outside", "inside"],
        "heads": [],
        "read_from": read_from(plan.tape, said, "A"),
        "read_short": read_short(plan.tape, said),
        "has": [],
        "below": [],
        "levels": None,
        "digs": [],
        "ways": [],
        "stop": None,
        "asks": [],
        "warnings": [],
        "base": [],
        "notes": [],
        "cautions": [] if is_wall(plan) else [say("grades.local_code")],
    }
