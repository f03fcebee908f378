"""The dig along a line: how far past the edges, and how deep under the form tops."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from bowstring.forming.line.pieces import Bend
from bowstring.forming.line.slab import LineSlab
from bowstring.report.forming.apron import dig_told
from bowstring.report.forming.at_forms import past_edge
from bowstring.report.forming.edge_lines import dug_past, footing_past, overdig_of
from bowstring.report.forming.ends import past_ends
from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.quantities import thick
from bowstring.report.lined.deepness import deep_along
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


class Inner(NamedTuple):
    """The inner edge of an arc: the piece's number from 1, and its radius in metres."""

    piece: int
    radius: float


def inners(slab: LineSlab) -> list[Inner]:
    """Return the inner edge of every arc of a slab's line, in its order."""
    return [
        Inner(number, piece.radius - (slab.left if piece.hand == "left" else slab.right))
        for number, piece in enumerate(slab.line.pieces, 1)
        if isinstance(piece, Bend)
    ]


def dug(plan: LinePlan, slab: LineSlab) -> Iterator[str]:
    """Yield how far the dig goes past the edges of a plan's slab, and how deep."""
    past = overdig_of(plan.plan)
    key = "edges.paint_footing" if (footing_past(plan.plan) or 0.0) > 0 else "edges.paint"
    yield say(key, size=plan.tape.show_whole(past)) if past else say(f"{key}_at")
    yield from [] if plan.line.is_closed else past_ends(plan.plan, past, "edges.paint_ends")
    yield from _deep(plan)
    for inner in inners(slab):
        if inner.radius <= dug_past(plan.plan):
            yield say("lined.dig_all", piece=name_of(plan, inner.piece))


def _deep(plan: LinePlan) -> Iterator[str]:
    """How deep it is dug below the form tops: the concrete and the base under it, where they are said; of a wall, whose
    footing decides, nothing."""
    said, tape = plan.said.slab, plan.tape
    if said.thickness is None or is_wall(plan.plan):
        return
    base = said.base or 0.0
    thickness, deep = thick(tape, said.thickness), thick(tape, said.thickness + base)
    if said.base is None:
        yield say("lined.dig_no_base", thickness=thickness)
    elif not base:
        yield say("lined.dig_bare", deep=deep)
    else:
        yield say("lined.dig_deep", deep=deep, thickness=thickness, base=thick(tape, base))
    if said.edge_width and said.edge_depth and said.edge_depth > said.thickness:
        edges = say("lined.dig_edges", wide=thick(tape, said.edge_width), deep=thick(tape, said.edge_depth + base))
        yield f"{edges} {past_edge(plan.plan)}".strip()
    if said.apron is not None and deep_along(plan) is not None:
        yield f"{dig_told(plan.plan, over_line=True)} {_at_apron(plan, said.apron.thickness, said.base)}"


def _at_apron(plan: LinePlan, thickness: float, base: float | None) -> str:
    """How deep it is at the apron, of a thickness in metres."""
    if base is None:
        return say("lined.dig_apron_no_base", deep=thick(plan.tape, thickness))
    return say("lined.dig_apron", deep=thick(plan.tape, thickness + base))
