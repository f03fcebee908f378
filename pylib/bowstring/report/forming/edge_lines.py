"""Every line that is set along the curve, in one table, told."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bowstring.forming.edge import Edge
from bowstring.report.forming.edge_board import board_of
from bowstring.report.forming.edge_marks import CENTER, INSIDE, OUTSIDE, SAME, STAKES, Marks
from bowstring.report.forming.plan import Plan, is_designed, is_wall
from bowstring.report.forms.build_edges import LineRow
from bowstring.units.sizes import FOOT
from bowstring.words import say

OVERDIG = {True: FOOT, False: 0.3}
"""Metres past each edge, where the tape reads feet and where it doesn't (common practice, no source)."""

FORM = {OUTSIDE: "outer_form", INSIDE: "inner_form"}
DIG = {OUTSIDE: "dig_outside", INSIDE: "dig_inside"}
FOOTING = {OUTSIDE: "footing_outside", INSIDE: "footing_inside"}
"""A footing's own edges. Which of them is the toe hangs on the side that the earth is on, and nobody says that."""


def line_name(plan: Plan, key: str) -> str:
    """Return what a line is called: a slab has edges, a wall has faces."""
    return say(f"walled.line_{key}") if key in (OUTSIDE, INSIDE) and is_wall(plan) else say(f"edges.line_{key}")


def overdig_of(plan: Plan) -> float:
    """Return how far past each edge it is dug, metres."""
    said = plan.said.slab.overdig
    return OVERDIG[plan.layout.job.tape.feet] if said is None else said


def footing_past(plan: Plan) -> float | None:
    """Return how far a wall's footing reaches past each of its faces, metres, below 0 where it is narrower: the
    farthest, where the wall tapers. ``None`` without a footing, and under a slab."""
    wide = plan.said.slab.footing_width
    if wide is None or plan.width is None or not is_wall(plan):
        return None
    return (wide - min(plan.width, plan.taper.last if plan.taper else plan.width)) / 2


def _under_middle(plan: Plan, marks: Marks, away: float) -> Edge:
    """Return the line so many metres outward of a wall's middle, which its footing is centered under: no arc where the
    wall tapers."""
    middles = (marks.outer.first + marks.inner.first) / 2, (marks.outer.last + marks.inner.last) / 2
    return Edge(plan.line, middles[0] + away, middles[1] + away)


def dug_past(plan: Plan) -> float:
    """Return how far past each edge of the slab it is dug, metres: past its footing's, where that reaches farther."""
    return overdig_of(plan) + max(0.0, footing_past(plan) or 0.0)


@dataclass(frozen=True)
class _Line:
    """A line by its key: ``off`` is how far off the drawing's own line it runs, metres outward."""

    key: str
    edge: Edge
    off: float | None


def report_lines(plan: Plan, marks: Marks) -> list[LineRow]:
    """Return the lines from the outermost to the innermost; those that tapers spoil, or that would stand at the center,
    aren't there."""
    lines = list(_lines(plan, marks))
    outward = marks.stakes.first
    near = SAME * max(1.0, plan.line.radius)
    yours = next((line.key for line in lines if line.off is not None and abs(line.off - outward) <= near), None)
    if yours is None:
        lines.append(_Line(STAKES, marks.stakes, outward))
        yours = STAKES
    lines.sort(key=lambda line: -line.edge.offset(0.5))
    return [_row(plan, marks, line, yours) for line in lines]


def _lines(plan: Plan, marks: Marks) -> Iterator[_Line]:
    _name, thickness = board_of(plan)
    footing = footing_past(plan)
    for key, away in ((OUTSIDE, 1), (INSIDE, -1)):
        edge = marks.edge(key)
        yield _Line(key, edge, edge.first if edge.is_arc else None)
        kinds = [(DIG, dug_past(plan))]
        kinds += [] if is_designed(plan) else [(FORM, thickness)]
        kinds += [(FOOTING, footing)] if footing is not None else []
        if footing is not None and plan.taper is not None:
            half = (plan.said.slab.footing_width or 0.0) / 2
            yield _Line(FOOTING[key], _under_middle(plan, marks, away * half), None)
            yield _Line(DIG[key], _under_middle(plan, marks, away * (half + overdig_of(plan))), None)
            continue
        for kind, more in kinds:
            off = edge.first + away * (more + (marks.past if kind is FORM and key == marks.boarded else 0.0))
            if edge.is_arc and plan.line.radius + off > 0:
                yield _Line(kind[key], Edge(plan.line, off, off), off)
    if plan.taper is None or plan.edge == CENTER:
        off = (marks.outer.first + marks.inner.first) / 2
        yield _Line(CENTER, Edge(plan.line, off, off), off)


def off_shown(plan: Plan, off: float) -> str:
    """Return how far off the stakes a line runs, and to which side."""
    size = plan.tape.show(abs(off))
    if not plan.tape.round(abs(off)):
        return say("edges.off_none") if abs(off) < SAME else plan.tape.show_near(off)
    return say("edges.off_out" if off > 0 else "edges.off_in", size=size)


def _row(plan: Plan, marks: Marks, line: _Line, yours: str) -> LineRow:
    tape, edge, outward = plan.tape, line.edge, marks.stakes.first
    none = say("edges.none")
    radius, sagitta = (edge.arc.radius, edge.arc.sagitta) if edge.is_arc else (None, None)
    if line.off is None:
        off, shown = None, _tapering(plan, marks, edge)
    else:
        off = 0.0 if line.key == yours else line.off - outward
        shown = off_shown(plan, off)
    return {
        "key": line.key,
        "name": line_name(plan, line.key),
        "note": _note(plan, marks, line.key, yours),
        "yours": line.key == yours,
        "set": line.key in marks.seconds,
        "radius": radius,
        "chord": edge.chord,
        "sagitta": sagitta,
        "arc_length": edge.length,
        "off": off,
        "radius_shown": none if radius is None else tape.show(radius),
        "chord_shown": tape.show(edge.chord),
        "sagitta_shown": none if sagitta is None else tape.show(sagitta),
        "arc_length_shown": tape.show(edge.length),
        "off_shown": shown,
    }


CURB = ("back", "flow line", "lip")
"""Lines of a curb to which a drawing may be; how far they are from each other is its detail's."""


def drawn_note(plan: Plan) -> str:
    """Return what the drawing's own line is."""
    drawn_to = plan.layout.job.drawn_to
    return say(f"edges.note_drawn.{drawn_to}") if drawn_to in CURB else say("edges.note_drawn")


def _tapering(plan: Plan, marks: Marks, edge: Edge) -> str:
    first, last = (off_shown(plan, edge.offset(share) - marks.stakes.first) for share in (0, 1))
    return say("edges.off_tapers", first=first, last=last)


def _note(plan: Plan, marks: Marks, key: str, yours: str) -> str:
    """What stands on a line, in a word or two."""
    driven = say(f"edges.yours_{plan.layout.job.driven}")
    if key == STAKES:
        return driven
    if key in DIG.values():
        past = plan.tape.show_whole(overdig_of(plan))
        return say("edges.note_dig_footing" if (footing_past(plan) or 0.0) > 0 else "edges.note_dig", size=past)
    if key in FOOTING.values():
        return say("edges.note_footing", width=plan.tape.show(plan.said.slab.footing_width or 0.0))
    if key in FORM.values():
        back = say("edges.note_back", board=board_of(plan)[0])
        return say("edges.note_both", first=back, other=held_told(plan, marks.past)) if key == yours else back
    if key == CENTER:
        return driven if key == yours else drawn_note(plan) if plan.edge == CENTER else ""
    return _of_edge(plan, key, driven if key == yours else "")


def held_told(plan: Plan, past: float) -> str:
    """Return which point of what is driven stands at the back of a board, where the stakes hold it; ``past``: how far
    behind it they are set, metres."""
    driven = plan.layout.job.driven
    return say(f"edges.held_{driven}_past" if past else f"edges.held_{driven}")


def _of_edge(plan: Plan, key: str, driven: str) -> str:
    """What stands on an edge; ``driven``: what the stakes are, where they stand on it."""
    if driven:
        drawn = drawn_note(plan) if key == plan.edge and plan.layout.job.drawn_to in CURB else ""
        return say("edges.note_edge", what=say("edges.note_both", first=drawn, other=driven) if drawn else driven)
    if key == plan.edge:
        return say("edges.note_edge", what=drawn_note(plan))
    mark = say(f"edges.mark_{key}", stake="A"), say(f"edges.mark_{key}", stake="B")
    return say("edges.note_edge", what=say("edges.note_marks", first=mark[0], last=mark[1]))
