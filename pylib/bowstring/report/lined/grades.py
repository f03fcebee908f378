"""The grades along a line, told."""

from __future__ import annotations

from bowstring.report.forming.plan import is_wall
from bowstring.report.forms.build_lined import LinedGrades, LinedPage
from bowstring.report.lined.grade_limits import judge
from bowstring.report.lined.grade_said import LineClash, LineSettled, Wait, settle
from bowstring.report.lined.grade_tables import rod_lines, tables
from bowstring.report.lined.grade_told import (
    conclusion,
    lines,
    meets,
    over_text,
    over_why,
    two_lines,
)
from bowstring.report.lined.grade_told import paper_lines as paper_of
from bowstring.report.lined.grade_wrong import clash_texts
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

_PANELS: dict[Wait, str] = {"width": "slab", "wrong": "slab", "line": "line"}


def short_of(plan: LinePlan) -> LinedGrades | None:
    """Return the answer's ``grades``, ``None`` where something has to be said first."""
    settled = settle(plan)
    if not isinstance(settled, LineSettled):
        return None
    judged = judge(plan, settled)
    return {"running": settled.grade.running, "steepest": judged.worst, "limit": judged.limit}


def told_of(plan: LinePlan) -> LineSettled | None:
    """Return the tops that are told: none where something has to be said first, two things clash, or it stops."""
    settled = settle(plan)
    if not isinstance(settled, LineSettled):
        return None
    judged = judge(plan, settled)
    return None if "over" in (judged.runs, judged.falls) and plan.said.grade.demanded else settled


def paper_lines(plan: LinePlan) -> list[str]:
    """Return what the form sheet says of the tops, nothing where none are told."""
    settled = told_of(plan)
    return paper_of(plan, settled, judge(plan, settled)) if settled else []


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the grades: none of the tops where the job stops past a limit, or two things clash."""
    settled = settle(plan)
    if isinstance(settled, LineClash):
        short, more, stop = clash_texts(plan, settled)
        return {**page_of("grades", "stop", short, more, "slope"), "stop": stop}
    if not isinstance(settled, LineSettled):
        return _open(plan, settled)
    judged = judge(plan, settled)
    short, more = two_lines(plan, settled, judged)
    wall = is_wall(plan.plan)  # nobody walks on one: its slopes are told, not judged
    over = not wall and "over" in (judged.runs, judged.falls)
    if over and plan.said.grade.demanded:
        made = page_of("grades", "stop", short, more, "slope")
        made["stop"] = f"{over_text(plan, judged)} {say('lined.no_tops')}"
        made["lines"] = list(over_why(settled, judged))
        return made
    near = not wall and (over or "near" in (judged.runs, judged.falls))
    made = page_of("grades", "near" if near else "usual", short, more)
    made["conclusion"] = conclusion(plan, settled)
    made["tables"] = tables(plan, settled)
    made["lines"] = [*lines(plan, settled, judged), *rod_lines(plan, settled.grade)]
    made["cautions"] = [*meets(plan, settled), *([] if wall else [say("grades.local_code")])]
    return made


def _open(plan: LinePlan, wait: Wait) -> LinedPage:
    """Return the page of grades that wait for something."""
    panel = _PANELS.get(wait, "slope")
    if wait == "line":
        return page_of("grades", "open", say("lined.line_first"), plan.asks[0], panel)
    if wait == "wrong":
        return page_of("grades", "stop", say("lined.no_edge"), plan.wrong.wrong if plan.wrong else "", panel)
    if wait == "width":
        key = "_".join(["grades.open_width", *plan.waits])
        return page_of("grades", "open", say(key), say("grades.more_width"), panel)
    if wait == "slope":
        return page_of("grades", "open", say("grades.open"), say("grades.more_slope"), panel)
    if wait == "high":
        return page_of("grades", "open", say("grades.open_high"), say("lined.more_high"), panel)
    more = say("lined.more_low" if wait == "low" else "lined.more_low_hand")
    return page_of("grades", "open", say("grades.open_low"), more, panel)
