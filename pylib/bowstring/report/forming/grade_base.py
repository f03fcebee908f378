"""Where the bed is under the forms, and what is still missing to tell it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bowstring.report.forming.apron import short_told
from bowstring.report.forming.at_forms import edge_told, lowest
from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.formboard import form_of
from bowstring.report.forming.grade_rows import lacks_hand, unknown_stakes
from bowstring.report.forming.heights import tape_of_heights
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forming.thick_edge import edge_bed, trench_cut
from bowstring.report.forms.build_grades import TopPart, TopRow
from bowstring.words import say

FAR = 5 * 0.3048
"""Nobody cuts or fills more under a slab that is formed by hand: the ground is told from another mark."""

LONGEST_ROD = 25 * 0.3048


def base_lines(plan: Plan) -> Iterator[str]:
    """Return where the bed is under the form tops."""
    thickness = plan.said.slab.thickness
    if is_wall(plan):
        if on_footing(plan) and underside(plan) and plan.said.grade.ground and plan.said.slab.base is not None:
            yield say("walled.to_base")
        return
    if thickness is None:
        return
    marks = tape_of_heights(plan.tape)
    yield say("grades.bed", thickness=plan.tape.show_whole(thickness))
    height = form_of(plan).height  # the board of which the boards' own page speaks
    slab = lowest(plan, edge=False)
    gap = marks.round(slab.gap) if slab else 0.0
    if slab:
        yield say(f"grades.bed_{_foot(gap)}", gap=marks.show(abs(gap)), height=marks.show(slab.board.height))
    yield from edge_bed(plan)
    yield from edge_told(plan)
    if plan.said.slab.apron is not None:
        step = marks.round(plan.said.slab.apron.thickness - height)
        yield say(f"deep.bed_{_foot(step)}", apron=short_told(plan), gap=marks.show(abs(step)))
    yield say("grades.screed")
    if gap > 0:
        yield say("grades.bank_earth")
    if plan.said.grade.ground and plan.said.slab.base is not None:
        yield trench_cut(plan) or say("grades.to_base")


def _foot(gap: float) -> str:
    """How the bed lies to the foot of a form that stands so far over it, metres."""
    return "at" if not gap else "under" if gap > 0 else "over"


def asks(plan: Plan, rows: Sequence[TopRow], start: float) -> Iterator[str]:
    """Return what is missing, and what can't be as it is said."""
    said, slab = plan.said, plan.said.slab
    walled = on_footing(plan)
    if slab.thickness is None:
        yield say("walled.needs_height" if walled else "grades.needs_thickness")
    elif said.grade.ground and underside(plan) is None:
        yield say("walled.needs_footing")
    elif said.grade.ground and slab.base is None:
        yield say("walled.no_base" if walled else "grades.no_base")
    unknown = unknown_stakes(plan)
    if unknown:
        yield say("grades.no_such_stake", stakes=", ".join(unknown))
    if lacks_hand(plan):
        yield say("grades.ground_hand")
    high = (underside(plan) or slab.thickness or 0.0) if walled else 0.0  # it rises over the ground, or goes under it
    if any(abs(read.level - start) > FAR + high + _climb(rows) for read in said.grade.ground):
        yield say("grades.ground_far")
    if said.grade.instrument is not None:
        yield from _instrument(said.grade.instrument - start, rows)


def _instrument(above: float, rows: Sequence[TopRow]) -> Iterator[str]:
    hidden = [row["name"] for row in rows if max(top["level"] for top in _tops(row)) > above]
    if hidden:
        yield say("grades.instrument_low", stake=hidden[0])
    if above > LONGEST_ROD + _climb(rows):
        yield say("grades.instrument_far")


def _climb(rows: Sequence[TopRow]) -> float:
    return max((abs(top["level"]) for row in rows for top in _tops(row)), default=0.0)


def _tops(row: TopRow) -> list[TopPart]:
    return [top for top in (row["outside"], row["inside"]) if top]
