"""Both edges, told."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.edge import Edge
from bowstring.report.forming.edge_lines import CURB, OVERDIG, dug_past, footing_past, overdig_of, report_lines
from bowstring.report.forming.edge_marks import CENTER, INSIDE, OUTSIDE, Marks, marks_of
from bowstring.report.forming.edge_set import Ground, in_the_way, report_second
from bowstring.report.forming.edge_stick import alike_of, dug_out, form_told, passes_told, report_bays, report_stick
from bowstring.report.forming.end_joints import strip_shown
from bowstring.report.forming.ends import against
from bowstring.report.forming.ends import told as ends_told
from bowstring.report.forming.off_line import told_off_line
from bowstring.report.forming.plan import EDGE, WIDTH, Plan, is_wall
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.standing import report_standing, short_told
from bowstring.report.forming.wall_faces import dig_told, ends_dug, faces_sheet, faces_told, footing_boards
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_edges import EdgeLength, EdgesPart
from bowstring.units.sizes import FOOT
from bowstring.words import say

TIGHT = {True: 3 * FOOT, False: 0.9}
"""Metres: an inner edge of a smaller radius, or of one under the width, is swung from the center (common practice, no
source)."""


def report_edges(plan: Plan) -> EdgesPart | None:
    """Return the answer's ``edges``, ``None`` where something has to be said first or where there is no inner edge."""
    if plan.slab is None or plan.width is None or plan.edge is None:
        return None
    marks, tape, standing = marks_of(plan), plan.tape, report_standing(plan)
    bays, tight, lengths = report_bays(plan, marks), _is_tight(plan, marks), _lengths(plan, marks)
    lines, ground, diagonal = report_lines(plan, marks), Ground(plan, marks), alike_of(bays)
    return {
        "state": "near" if tight or standing else "usual",
        "short": _short(plan, marks, tight),
        "more": _more(plan, marks, diagonal, tight),
        "conclusion": _conclusion(plan, marks),
        "edge": plan.edge,
        "yours": next(line["key"] for line in lines if line["yours"]),
        "width": plan.width,
        "width_shown": tape.show(plan.width),
        "far_width": plan.taper.last if plan.taper else None,
        "far_width_shown": tape.show(plan.taper.last) if plan.taper else "",
        "left": _by_hand(plan, lengths).get("left"),
        "right": _by_hand(plan, lengths).get("right"),
        "outside": lengths[OUTSIDE],
        "inside": lengths[INSIDE],
        "area": (plan.taper or plan.slab).area,
        "overdig": overdig_of(plan),
        "overdig_shown": tape.show_whole(overdig_of(plan)),
        "lines": lines,
        "seconds": [report_second(plan, marks, key, ground) for key in marks.seconds],
        "stick": report_stick(plan, marks),
        "alike": bool(diagonal),
        "diagonal_shown": diagonal,
        "diagonal": None, "sides": None, "sides_shown": "", "sides_how": [], "both_ends": False,
        "curve_gap": None, "straight_gap": None,
        "bays": bays,
        "check": _check(diagonal, len(bays), tapers=plan.taper is not None),
        "form": form_told(plan, marks),
        "faces": faces_told(plan, marks),
        "footing": footing_boards(plan),
        "faces_sheet": faces_sheet(plan, marks),
        "strip_shown": strip_shown(plan, marks.outer.length),
        "ends": {"against": list(against(plan)), "told": ends_told(plan), "dug": " ".join(ends_dug(plan))},
        "footing_shown": _footing_shown(plan),
        "passes": [*passes_told(plan, marks), *ends_dug(plan), *dig_told(plan)],
        "dug_out": dug_out(plan, marks),
        "off_line": told_off_line(plan, marks),
        "taper": list(_taper(plan)),
        "standing": standing,
        "notes": [*in_the_way(plan, marks, ground), *_notes(plan, marks, tight)],
    }  # fmt: skip


def row_of_edges(plan: Plan, part: EdgesPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is not None:
        return {"key": "edges", "state": part["state"], "text": part["short"], "more": more_of(part), "panel": ""}
    if plan.no_inner:
        text, more, state = say("edges.no_inner"), _too_wide(plan), "stop"
    else:
        text, more, state = say(_OPEN[plan.waits]), "", "open"
    return {"key": "edges", "state": state, "text": text, "more": more, "panel": "slab"}


def more_of(part: EdgesPart) -> str:
    """Return the row's second line: what stands in the concrete or the dig, where something does."""
    wall = bool(part["faces"])
    return " ".join(short_told(one["where"], one["name"], wall=wall) for one in part["standing"]) or part["more"]


_OPEN = {(WIDTH, EDGE): "edges.open", (WIDTH,): "edges.open_width", (EDGE,): "edges.open_side"}


def _too_wide(plan: Plan) -> str:
    """What the width is held against: the line's radius, or all of it where the slab lies to both sides."""
    said = [width for width in (plan.width, plan.said.slab.far_width) if width is not None]
    shown = {"radius": plan.tape.show(plan.line.radius), "width": plan.tape.show(max(said))}
    return say("edges.no_inner_half" if plan.edge == CENTER else "edges.no_inner_more", **shown)


def _lengths(plan: Plan, marks: Marks) -> dict[str, EdgeLength]:
    return {key: _length(plan, marks.edge(key)) for key in (OUTSIDE, INSIDE)}


def _length(plan: Plan, edge: Edge) -> EdgeLength:
    return {"length": edge.length, "length_shown": plan.tape.show(edge.length)}


def _by_hand(plan: Plan, lengths: dict[str, EdgeLength]) -> dict[str, EdgeLength]:
    """The edges for somebody who walks from A to B: the outer one is on the hand on which the curve is."""
    side = plan.layout.side
    if side is None:
        return {}
    outer, inner = lengths[OUTSIDE], lengths[INSIDE]
    return {"left": outer, "right": inner} if side == "left" else {"left": inner, "right": outer}


def _least(marks: Marks) -> float:
    return min(marks.inner.radius(0), marks.inner.radius(1))


def _is_tight(plan: Plan, marks: Marks) -> bool:
    width = max(one for one in (plan.width, plan.taper and plan.taper.last) if one)
    return _least(marks) < max(TIGHT[plan.layout.job.tape.feet], width) * (1 - 1e-9)


def _short(plan: Plan, marks: Marks, tight: bool) -> str:
    """The row's text: about 34 letters."""
    tape = plan.tape
    if tight:
        return say("edges.row_tight", radius=tape.show(_least(marks)))
    if plan.taper:
        return say("edges.row_tapers", first=tape.show(plan.taper.first), last=tape.show(plan.taper.last))
    if len(marks.seconds) == 2:
        return say("edges.row_both", outer=tape.show(marks.outer.arc.radius), inner=tape.show(marks.inner.arc.radius))
    (key,) = marks.seconds
    shown = {"radius": tape.show(marks.edge(key).arc.radius), "width": tape.show(plan.width or 0)}
    return say(f"edges.row_{key}", **shown)


def _more(plan: Plan, marks: Marks, diagonal: str, tight: bool) -> str:
    """The row's second fact: about 40 letters."""
    if tight and marks.inner.is_arc:
        return say("edges.more_tight")
    if plan.taper:
        return say("edges.more_tapers")
    if not diagonal:
        return say("edges.more_bays")
    if len(marks.seconds) == 2:
        return say("edges.more_both", width=plan.tape.show(plan.width or 0), diagonal=diagonal)
    return say("edges.more", diagonal=diagonal)


def _conclusion(plan: Plan, marks: Marks) -> str:
    tape = plan.tape
    if plan.taper:
        return say("edges.tapers", first=tape.show(plan.taper.first), last=tape.show(plan.taper.last))
    radii = {"outer": tape.show(marks.outer.arc.radius), "inner": tape.show(marks.inner.arc.radius)}
    width = tape.show(plan.width or 0)
    if len(marks.seconds) == 2:
        return say("walled.both" if is_wall(plan) else "edges.both", width=width, **radii)
    (key,) = marks.seconds
    other = radii["inner" if key == INSIDE else "outer"]
    return say(f"walled.other_{key}" if is_wall(plan) else f"edges.other_{key}", radius=other, width=width)


def _check(diagonal: str, count: int, *, tapers: bool) -> str:
    if tapers:  # its two diagonals differ by themselves: no stake has slid
        return f"{say('edges.check_each')} {say('edges.check_taper')}"
    alike = say("edges.check_alike", count=count, diagonal=diagonal)
    told = alike if diagonal else say("edges.check_each")
    return f"{told} {say('edges.check_slid')}"


def _taper(plan: Plan) -> Iterator[str]:
    """What a width that changes means, and what was taken for it."""
    if plan.taper is None:
        return
    tape = plan.tape
    yield say("edges.taper_even", first=tape.show(plan.taper.first), last=tape.show(plan.taper.last))
    which = "taper_both" if plan.edge == CENTER else "taper_one"
    if is_wall(plan):
        yield say(f"walled.{which}")
        return
    yield say(f"edges.{which}")
    yield say("edges.taper_dig", size=tape.show_whole(overdig_of(plan)))


def _notes(plan: Plan, marks: Marks, tight: bool) -> Iterator[str]:
    if any(plan.layout.slope):
        yield say("edges.level")
    if tight and marks.inner.is_arc:
        yield say("edges.swing", radius=plan.tape.show(_least(marks)))
    if marks.inner.is_arc and marks.inner.arc.radius <= dug_past(plan):
        yield say("edges.dig_all")
    yield from _footing(plan)
    if plan.layout.job.drawn_to in CURB:
        yield say("edges.curb_lines")
    if plan.said.slab.overdig is None:
        yield say("edges.overdig_taken", size=plan.tape.show_whole(OVERDIG[plan.layout.job.tape.feet]))


def _footing_shown(plan: Plan) -> list[str]:
    """How wide and how thick a wall's footing is, nothing without one."""
    wide, deep = plan.said.slab.footing_width, plan.said.slab.footing_depth
    if not is_wall(plan) or wide is None or deep is None:
        return []
    return [plan.tape.show(wide), thick(plan.tape, deep)]


def _footing(plan: Plan) -> Iterator[str]:
    """What was taken for a wall's footing, and what can't be told of it."""
    past = footing_past(plan)
    if past is not None and plan.taper:
        yield say("edges.footing_tapers")
    elif past is not None:
        key = "edges.footing_middle" if past > 0 else "edges.footing_narrow"
        yield say(key, past=plan.tape.show(abs(past)))
        yield say("edges.footing_toe")
