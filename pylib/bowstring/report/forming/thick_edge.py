"""A slab's thick edge, told: the trench it wants inside the forms, and what there is of it at a building."""

from __future__ import annotations

from typing import NamedTuple

from bowstring.forming.pad import Pad
from bowstring.forming.rest import within
from bowstring.report.forming.plan import Plan, is_designed
from bowstring.report.forming.pouring import Pouring, conclusion_of, poured_of
from bowstring.report.forming.quantities import thick
from bowstring.words import say


class ThickEdge(NamedTuple):
    """How wide the edge is thicker than the slab beside it, and how thick it is there from its top, metres."""

    wide: float
    deep: float


def thick_edge(plan: Plan) -> ThickEdge | None:
    """Return the thick edge of a plan's slab; ``None`` where none is said, or none that is thicker than the slab."""
    said = plan.said.slab
    if is_designed(plan) or not said.edge_width or not said.edge_depth or said.edge_depth <= (said.thickness or 0.0):
        return None
    return ThickEdge(said.edge_width, said.edge_depth)


def edge_where(plan: Plan) -> str:
    """Return along what it runs, in a few words: of a slab that fills its curve not along two forms."""
    filled = plan.filled
    if filled is None:
        return say("deep.edge_band")
    if not isinstance(filled, Pad):
        return say("deep.edge_string")
    return _along_told(filled, along_of(plan))


def _along_told(pad: Pad, along: str) -> str:
    """Along what an edge of a slab with straight sides runs; of two rounded ends there is none beside the sides."""
    if along == "curve":
        return say("deep.edge_curves" if pad.both else "deep.edge_curve")
    if pad.both:
        return say("deep.edge_both")
    return say("deep.edge_sides" if along == "sides" else "deep.edge_building" if pad.against else "deep.edge_back")


def along_of(plan: Plan) -> str:
    """Return how far round it runs, a word of ``terms.EDGE_ALONG``: all round where nobody says."""
    return plan.said.slab.edge_along or "all"


def at_building(plan: Plan) -> bool:
    """Tell whether it runs along a building."""
    return isinstance(plan.filled, Pad) and plan.filled.against and along_of(plan) == "all"


def edge_at(plan: Plan, *, back: bool) -> float:
    """Return how much thicker the slab is at a form's stake than elsewhere, metres, 0 without a thick edge: at a
    stake of a curve, or (``back``) at a corner behind straight sides."""
    edge, pad = thick_edge(plan), plan.filled
    if edge is None or (back and isinstance(pad, Pad) and not pad.both and plan.said.slab.edge_along == "curve"):
        return 0.0
    return edge.deep - (plan.said.slab.thickness or 0.0)


def trench_cut(plan: Plan) -> str:
    """Return to what the ground is cut or filled where a thick edge stands at the forms; empty without one."""
    edge = thick_edge(plan)
    if edge is None:
        return ""
    told = {"where": edge_where(plan), "deep": thick(plan.tape, edge.deep + (plan.said.slab.base or 0.0))}
    beside = isinstance(plan.filled, Pad) and not edge_at(plan, back=True)
    return say("deep.cut_beside" if beside else "deep.cut", **told)


def edge_note(plan: Plan) -> list[str]:
    """Return what the card of the dig says of it: how wide, and how far it is dug under the tops."""
    edge = thick_edge(plan)
    if edge is None:
        return []
    deep = thick(plan.tape, edge.deep + (plan.said.slab.base or 0.0))
    return [say("forming.note.edges", where=edge_where(plan), wide=thick(plan.tape, edge.wide), deep=deep)]


def edge_dug(plan: Plan) -> str:
    """Return the same for the form sheet; empty without one."""
    edge, base = thick_edge(plan), plan.said.slab.base
    if edge is None:
        return ""
    told = {"where": edge_where(plan), "wide": thick(plan.tape, edge.wide), "depth": thick(plan.tape, edge.deep)}
    footing = f" {say('deep.edge_footing')}" if at_building(plan) else ""
    if base is None:
        return say("deep.edge_no_base", **told) + footing
    return say("deep.edge_dug", **told, deep=thick(plan.tape, edge.deep + base)) + footing


def edge_signed(plan: Plan) -> str:
    """Return what has to be under the tops there, and how wide, as it is signed off; empty without one."""
    edge = thick_edge(plan)
    if edge is None:
        return ""
    return say("deep.edge_signed", depth=thick(plan.tape, edge.deep), wide=thick(plan.tape, edge.wide))


def edge_bed(plan: Plan) -> list[str]:
    """Return where the base lies under it."""
    edge = thick_edge(plan)
    if edge is None:
        return []
    told = {"where": edge_where(plan), "wide": thick(plan.tape, edge.wide), "depth": thick(plan.tape, edge.deep)}
    return [say("deep.edge_bed", **told)]


def along_asked(plan: Plan, pouring: Pouring) -> str:
    """Return along what a thick edge is figured where nobody says, and what is ordered if it runs less far round; empty
    where there is no such edge, and no straight sides that it may leave."""
    pad, edge = plan.filled, thick_edge(plan)
    if not isinstance(pad, Pad) or edge is None or plan.said.slab.edge_along is not None:
        return ""
    made = poured_of(plan, pad)
    told = [say("deep.edge_asked")]
    for along in ("curve",) if pad.both else ("sides", "curve"):
        spared = within(made, edge.wide) - within(made, edge.wide, along)
        less = pouring.of_order(pouring.again(more=-spared * (edge.deep - pouring.depth)))
        told.append(say("deep.edge_or", where=_along_told(pad, along), order=conclusion_of(less)[2]))
    return " ".join(told)
