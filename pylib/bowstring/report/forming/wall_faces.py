"""A wall's two faces and its footing, as their forms are made: lengths, areas, plywood; and its dig."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.plywood import sheets_of
from bowstring.forming.stock import Practice
from bowstring.report.forming.boards import report_boards
from bowstring.report.forming.boards_bending import name_of
from bowstring.report.forming.boards_how import too_low
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.edge_marks import INSIDE, OUTSIDE, Marks
from bowstring.report.forming.ends import against, formed, named, past_ends, widths
from bowstring.report.forming.footing import footing_plan
from bowstring.report.forming.formboard import MOST_BANKED, depth_of, form_of, practice_of
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forming.quantities import FOOT, area_text, thick, volume_text
from bowstring.report.forming.wall_dig import wall_dug
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.words import say

DEEP = {True: FOOT, False: 0.1}
"""Metres of depth by which a dig is figured, where the tape reads feet and where it doesn't."""


def faces_told(plan: Plan, marks: Marks) -> list[str]:
    """Return a wall's faces, the plywood that bends to them, and its footing's forms, as sentences; none of a slab."""
    return list(_told(plan, marks)) if is_wall(plan) else []


def faces_sheet(plan: Plan, marks: Marks) -> list[str]:
    """Return of those what a crew buys and sets: its lengths stand among the lines; none of a slab."""
    return list(_on_sheet(plan, marks)) if is_wall(plan) else []


def footing_boards(plan: Plan) -> BoardsPart | None:
    """Return the boards of a wall's footing, told as those of a slab are; ``None`` without any."""
    footing = footing_plan(plan)
    return report_boards(footing) if footing else None


def faces_row(plan: Plan, marks: Marks) -> tuple[str, str]:
    """Return both faces' lengths and what the footing's forms are of, as the two lines of a row."""
    return say("walled.faces", **_lengths(plan, marks)), _row_more(plan)


def _row_more(plan: Plan) -> str:
    """What the footing's forms are of; a board that is too low for it before whether it bends."""
    footing = footing_plan(plan)
    boards = report_boards(footing) if footing else None
    if plan.taper and plan.said.slab.footing_width:
        return say("walled.faces_unlisted")
    if footing is None or boards is None:
        return say("walled.faces_designed")
    board = form_of(footing)
    if (depth_of(footing) or 0.0) > board.height + MOST_BANKED:
        return say("walled.faces_low", board=name_of(board), height=plan.tape.show_limit(board.height))
    return say("walled.faces_footing", board=boards["short"])


def _lengths(plan: Plan, marks: Marks) -> dict[str, str]:
    return {key: plan.tape.show(marks.edge(key).length) for key in (OUTSIDE, INSIDE)}


def _area(plan: Plan, marks: Marks, key: str) -> str:
    height = plan.said.slab.thickness
    return area_text(marks.edge(key).length * height, plan.tape.feet) if height else say("walled.blank")


def _told(plan: Plan, marks: Marks) -> Iterator[str]:
    height = thick(plan.tape, plan.said.slab.thickness) if plan.said.slab.thickness else say("walled.blank")
    yield say("walled.forms", **_lengths(plan, marks), height=height)
    if plan.said.slab.thickness:
        yield say("walled.areas", outside=_area(plan, marks, OUTSIDE), inside=_area(plan, marks, INSIDE))
    yield _end_forms(plan)
    if plan.said.slab.footing_width:
        yield say("walled.ends_flush")
    yield from _unlisted(plan)
    if marks.inner.is_arc and marks.outer.is_arc:
        yield from _plywood(plan, marks, practice_of(plan))
    yield from _footing(plan)
    yield say("walled.designed")


def _on_sheet(plan: Plan, marks: Marks) -> Iterator[str]:
    if marks.inner.is_arc and marks.outer.is_arc:
        yield from list(_plywood(plan, marks, practice_of(plan)))[-1:]  # how many sheets, or that none bends
    yield _end_forms(plan)
    yield from list(_footing(plan, short=True))[1:]  # the first tells the lengths of its edges
    yield from _unlisted(plan)
    yield say("walled.designed")


def _unlisted(plan: Plan) -> Iterator[str]:
    """That no boards are listed for a footing whose edges are no arcs: under a wall that tapers."""
    if plan.taper and plan.said.slab.footing_width:
        yield say("walled.unlisted")


def _end_forms(plan: Plan) -> str:
    """Return how many end forms there are, how wide and how high: they stand between both faces, square to the line."""
    tape, high, ends = plan.tape, plan.said.slab.thickness, formed(plan)
    height = thick(tape, high) if high else say("walled.blank")
    shown = {end: tape.show(widths(plan)[end]) for end in ends}
    if not ends:
        return say("ends.wall_none")
    if against(plan):
        return say("ends.wall_form", ends=named(plan, ends), width=shown[ends[0]], height=height)
    if plan.taper:
        near, far = shown.values()
        return say("walled.end_forms_tapered", near=near, far=far, height=height)
    return say("walled.end_forms", width=shown["A"], height=height)


def _plywood(plan: Plan, marks: Marks, practice: Practice) -> Iterator[str]:
    """The thickest sheets that bend dry to the tighter face, grain along it, and how many both faces take."""
    tape, height, radius = plan.tape, plan.said.slab.thickness, marks.inner.arc.radius
    takes = [sheet for sheet in practice.sheets if sheet.along <= radius]
    if not takes:
        yield say("walled.no_plywood", radius=tape.show(radius), least=tape.show(practice.sheets[0].along))
        return
    most = takes[-1]
    yield say("walled.plywood", thickness=tape.show_limit(most.thickness), radius=tape.show(radius),
              least=tape.show(most.along))  # fmt: skip
    if height:
        yield _sheets(plan, marks, practice, height)


def _sheets(plan: Plan, marks: Marks, practice: Practice, height: float) -> str:
    """How many sheets both faces take, and what is ripped out of some for an upper row that is low."""
    tape, (across, along) = plan.tape, practice.strip_lengths
    lengths = marks.edge(OUTSIDE).length, marks.edge(INSIDE).length
    made = sheets_of(lengths, height, practice.strip_lengths, practice.saw)
    outer, inner = made.each
    key = (
        "walled.sheets_ripped"
        if made.strip and made.rows
        else "walled.sheets_strips"
        if made.strip
        else "walled.sheets"
    )
    shown = {"across": tape.show_whole(across), "along": tape.show_whole(along), "strip": thick(tape, made.strip)}
    return say(key, outer=outer, inner=inner, ripped=made.ripped, **shown)


def _footing(plan: Plan, *, short: bool = False) -> Iterator[str]:
    """Yield the footing's edges, which boards bend to them, and of one that is too low that; ``short``: of the boards
    the one that does."""
    footing = footing_plan(plan)
    if footing is None:
        return
    tape = plan.tape
    outer, inner = footing.edges
    yield say("walled.footing_edges", outer=tape.show(outer.length), inner=tape.show(inner.length),
              out_radius=tape.show(outer.arc.radius), in_radius=tape.show(inner.arc.radius))  # fmt: skip
    boards = report_boards(footing)
    if boards:
        yield say(
            "walled.footing_boards",
            told=" ".join(boards["conclusion"][: 1 if short else None]),
            stakes=boards["with_spare"],
        )
        yield from filter(None, [too_low(footing, form_of(footing), tape)])


def ends_dug(plan: Plan) -> list[str]:
    """Return that a wall's dig goes on past its ends, or stops there; nothing of a slab, and of one that is dug no
    farther."""
    return past_ends(plan, overdig_of(plan), "walled.dig_ends") if is_wall(plan) else []


def dig_told(plan: Plan) -> list[str]:
    """Return how large a wall's dig is in plan, its ends' included, and what a foot of depth comes to."""
    area, tape = wall_dug(plan), plan.tape
    if area is None:
        return []
    deep = DEEP[tape.feet]
    volume = volume_text(area * deep, tape.feet, 1)
    shown = {"area": area_text(area, tape.feet), "deep": tape.show(deep), "volume": volume}
    return [say("walled.dig", **shown)]
