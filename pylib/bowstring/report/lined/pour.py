"""The concrete along a line, told."""

from __future__ import annotations

from bowstring.forming.line.edges import Edge
from bowstring.forming.line.outline import dug_area
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.sweep import Sweep
from bowstring.forming.pour import Order
from bowstring.report.forming.apron import apron_lines, joints_told
from bowstring.report.forming.at_forms import held
from bowstring.report.forming.deepness import refusal_of
from bowstring.report.forming.edge_lines import dug_past, overdig_of
from bowstring.report.forming.ends import formed
from bowstring.report.forming.measured import measured_lines, thin_told
from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.pour import low_told, measure_told, more_of, open_told, why_of
from bowstring.report.forming.pour_changes import changes_of, wider_rows
from bowstring.report.forming.pour_lines import footing_told, lines_of
from bowstring.report.forming.pour_wall import (
    footing_pouring,
    wall_changes,
    wall_lines,
    wall_more,
    wall_order,
    wall_why,
)
from bowstring.report.forming.pouring import WIDER, Pouring, conclusion_of, footing_along, pouring_in
from bowstring.report.forming.quantities import fine_tape
from bowstring.report.forms.build_lined import LinedPage, LinedPour, LinedTable
from bowstring.report.forms.build_pour import ChangeRow
from bowstring.report.lined.apron_ends import ends_along
from bowstring.report.lined.deepness import along_line, deep_along
from bowstring.report.lined.held import held_page
from bowstring.report.lined.jointing import LineJointing, jointing_of
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.report.lined.pour_reach import Course, bulkhead_told, panels_told, reach_table, reach_told
from bowstring.words import say


def pouring_along(plan: LinePlan) -> Pouring | None:
    """Return the concrete of a plan, ``None`` where there is no slab yet, no thickness is said, or it can't be as deep
    as is said."""
    if plan.slab is None or plan.asks:
        return None
    deep = deep_along(plan)
    return None if deep is None else pouring_in(plan.plan, Sweep(plan.slab), deep)


def order_of(plan: LinePlan) -> Order | None:
    """Return what is ordered, ``None`` where there is no slab yet or no thickness is said."""
    pouring = pouring_along(plan)
    return None if pouring is None else pouring.order


def footing_of(plan: LinePlan, pouring: Pouring) -> Order | None:
    """Return the order of the footing under the middle of the slab, ``None`` where there is none."""
    slab = plan.slab
    if slab is None:
        return None
    return footing_along(plan.plan, pouring, Edge(slab.line, (slab.left - slab.right) / 2).length)


def short_of(plan: LinePlan) -> LinedPour | None:
    """Return the answer's ``pour``, ``None`` where something has to be said first."""
    made = order_of(plan)
    if made is None or plan.slab is None:
        return None
    return {
        "area": plan.slab.area,
        "volume": made.needed,
        "with_waste": made.with_waste,
        "order": made.ordered,
    }


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the concrete."""
    if held := held_page(plan, "pour"):
        return held
    pouring, jointing = pouring_along(plan), jointing_of(plan)
    refused = refusal_of(plan.plan, along_line(Sweep(plan.slab))) if plan.slab else None
    if refused:
        return {**page_of("pour", "stop", refused.text, refused.more, "slab"), "stop": refused.more}
    if pouring is None or jointing is None or plan.slab is None:
        return page_of("pour", "open", *open_told(plan.waits, plan.said.slab.thickness), "slab")
    if is_wall(plan.plan):
        return _of_wall(plan, course_of(plan, plan.slab, pouring, jointing))
    sweep = Sweep(plan.slab)
    thin, limit = thin_told(plan.plan, pouring.deep, along_line(sweep))
    near = bool(plan.slab.overlaps or thin) or (pouring.tight and not pouring.small)
    text = conclusion_of(pouring)[2]
    made = page_of("pour", "near" if near else "usual", text, more_of(plan.plan, pouring))
    made["conclusion"] = text
    course = course_of(plan, plan.slab, pouring, jointing)
    reach = reach_table(course)
    made["tables"] = [*([reach] if reach["rows"] else []), _changes(plan, pouring)]
    footing = footing_told(plan.plan, pouring, footing_of(plan, pouring))
    apron = apron_lines(plan.plan, pouring, over_line=True)
    lines = [
        why_of(plan.plan, pouring),
        " ".join([*thin, *apron[:1]]),  # what must be seen on paper, too
        say("lined.counted_twice") if plan.slab.overlaps else "",
        reach_told(course) if reach["rows"] else "",
        bulkhead_told(course),
        f"{_low(plan, pouring)} {measure_told(pouring)}".strip(),
        limit,
        *apron[1:],
        *joints_told(plan.plan, ends_along(plan)),
        *measured_lines(plan.plan, pouring),
        *lines_of(plan.plan, pouring, panels_told(course), footing, _dug(plan, plan.slab)),
        say("pour.mix"),
    ]
    made["lines"] = [line for line in lines if line]
    made["cautions"] = [say("pour.burns")]
    return made


def _dug(plan: LinePlan, slab: LineSlab) -> float | None:
    """The area of the dig, ``None`` where it is no wider than the slab, or no area of its own; and where earth is the
    form, so that no base lies past the slab."""
    past = overdig_of(plan.plan)
    return dug_area(slab, past, past_ends=formed(plan.plan)) if past and not held(plan.plan) else None


def paper_lines(plan: LinePlan) -> list[str]:
    """Return what the form sheet says of the order, nothing where something has to be said first."""
    pouring, jointing = pouring_along(plan), jointing_of(plan)
    if pouring is None or jointing is None or plan.slab is None:
        return []
    if is_wall(plan.plan):
        page_lines = _of_wall(plan, course_of(plan, plan.slab, pouring, jointing))["lines"]
        return page_lines[:2]  # what the footing and the wall take
    thin, _limit = thin_told(plan.plan, pouring.deep, along_line(Sweep(plan.slab)))
    lines = [
        why_of(plan.plan, pouring),
        " ".join(thin),
        say("lined.counted_twice") if plan.slab.overlaps else "",
        _low(plan, pouring),
        footing_told(plan.plan, pouring, footing_of(plan, pouring)),
        bulkhead_told(course_of(plan, plan.slab, pouring, jointing), short=True),
    ]
    return [line for line in lines if line]


def course_of(plan: LinePlan, slab: LineSlab, pouring: Pouring, jointing: LineJointing) -> Course:
    """Return how the concrete of a slab comes along it."""
    return Course(plan, pouring, Sweep(slab), None if jointing.too_many else jointing.chosen)


def _low(plan: LinePlan, pouring: Pouring) -> str:
    """How low the base may be for the order to fill it."""
    fine = fine_tape(plan.tape)
    low = fine.down((pouring.bought - pouring.order.needed) / pouring.area)
    return low_told(pouring, fine.show(low), low)


def _of_wall(plan: LinePlan, course: Course) -> LinedPage:
    """The page of a wall's concrete and its footing's."""
    pouring = course.pouring
    footing = footing_pouring(pouring, footing_of(plan, pouring))
    text = conclusion_of(pouring)[2] if footing is None else wall_order(pouring, footing)[2]
    why = why_of(plan.plan, pouring) if footing is None else wall_why(plan.plan, pouring, footing)
    near = bool(plan.slab and plan.slab.overlaps) or any(
        one.tight and not one.small for one in (footing, pouring) if one
    )
    more = more_of(plan.plan, pouring) if footing is None else wall_more(pouring, footing)
    made = page_of("pour", "near" if near else "usual", text, more)
    made["conclusion"] = text
    made["tables"] = [_table(pouring, wall_changes(plan.plan, pouring, footing))]
    twice = [say("lined.counted_twice")] if plan.slab and plan.slab.overlaps else []
    past, over, ends = dug_past(plan.plan), overdig_of(plan.plan), formed(plan.plan)
    dug = dug_area(plan.slab, past, over, ends) if plan.slab else None
    made["lines"] = [why, *twice, *wall_lines(plan.plan, pouring, footing, panels_told(course), dug), say("pour.mix")]
    made["cautions"] = [say("pour.burns")]
    return made


def _changes(plan: LinePlan, pouring: Pouring) -> LinedTable:
    """What somebody may meet on the job, and what is ordered then."""
    return _table(pouring, changes_of(plan.plan, pouring, wider_rows(plan.plan, pouring, _wider(plan, pouring))))


def _table(pouring: Pouring, rows: list[ChangeRow]) -> LinedTable:
    then = "pour.then_bags" if pouring.small else "pour.then_yards" if pouring.yards else "pour.then_metres"
    told = [[f"{row['what']} ({row['more']})" if row["more"] else row["what"], row["order_shown"]] for row in rows]
    return {"key": "changes", "title": say("pour.changes"), "heads": [say("pour.if"), say(then)], "rows": told}


def _wider(plan: LinePlan, pouring: Pouring) -> Sweep | None:
    """The slab, wider on the hands on which it lies, ``None`` where an edge couldn't follow the line."""
    slab = plan.slab
    if slab is None:
        return None
    times = 1 + WIDER[pouring.yards] / slab.width
    try:
        return Sweep(LineSlab(slab.line, slab.left * times, slab.right * times))
    except ValueError:
        return None
