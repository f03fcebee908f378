"""A slab's thick edge, told: the trench it wants inside the forms, and what there is of it at a building."""

from __future__ import annotations

from typing import NamedTuple

from bowstring.forming.joints import ISOLATION
from bowstring.forming.pad import Pad
from bowstring.forming.rest import of_pad
from bowstring.report.forming.plan import Plan, is_designed
from bowstring.report.forming.pouring import Pouring, conclusion_of, poured_of
from bowstring.report.forming.quantities import fine_tape, thick
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
    return say(f"deep.edge_{'both' if filled.both else 'building' if filled.against else 'back'}")


def _at_building(plan: Plan) -> bool:
    return isinstance(plan.filled, Pad) and plan.filled.against


def edge_note(plan: Plan) -> list[str]:
    """Return what the card of the dig says of it: how wide, and how far it is dug under the tops."""
    edge = thick_edge(plan)
    if edge is None:
        return []
    deep = thick(plan.tape, edge.deep + (plan.said.slab.base or 0.0))
    told = say("forming.note.edges", where=edge_where(plan), wide=thick(plan.tape, edge.wide), deep=deep)
    return [told, say("forming.note.edges_building" if _at_building(plan) else "forming.note.edges_inside")]


def edge_dug(plan: Plan) -> str:
    """Return the same for the form sheet; empty without one."""
    edge, base = thick_edge(plan), plan.said.slab.base
    if edge is None:
        return ""
    told = {"where": edge_where(plan), "wide": thick(plan.tape, edge.wide), "depth": thick(plan.tape, edge.deep)}
    footing = f" {say('deep.edge_footing')}" if _at_building(plan) else ""
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


def strip_told(plan: Plan) -> dict[str, str]:
    """Return the isolation strip at a building in words: how thick, how long, how deep; empty where there is none. It
    is as deep as the concrete is there: a thick edge is deeper than the slab; ``deep`` is empty where nobody says."""
    pad = plan.filled
    if not isinstance(pad, Pad) or not pad.against:
        return {}
    edge, feet = thick_edge(plan), plan.layout.job.tape.feet
    deep = edge.deep if edge else plan.said.slab.thickness
    return {"gap": fine_tape(plan.tape).show(ISOLATION[feet]), "chord": plan.tape.show(pad.arc.chord),
            "deep": thick(plan.tape, deep) if deep else ""}  # fmt: skip


def building_asked(plan: Plan, pouring: Pouring) -> str:
    """Return that a thick edge is figured at the building, too, and what is ordered if there is none; empty where there
    is no such edge."""
    pad, edge = plan.filled, thick_edge(plan)
    if not isinstance(pad, Pad) or not _at_building(plan) or edge is None:
        return ""
    made = poured_of(plan, pad)
    assert isinstance(made, Pad)
    most, rest = of_pad(made, edge.wide, backed=False), of_pad(made, edge.wide)
    spared = (most.area if most else 0.0) - (rest.area if rest else 0.0)
    less = pouring.of_order(pouring.again(more=-spared * (edge.deep - pouring.depth)))
    return say("deep.edge_asked", order=conclusion_of(less)[2])
