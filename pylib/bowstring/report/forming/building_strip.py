"""The isolation strip between a pad and the building it ends at: as deep as the concrete is, all along it."""

from __future__ import annotations

from math import cos
from typing import NamedTuple

from bowstring.forming.pad import Pad
from bowstring.forming.rest import of_pad
from bowstring.report.forming.panels import isolation_shown
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.pouring import poured_of
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.thick_edge import ThickEdge, along_of, at_building, thick_edge
from bowstring.words import say


class Strip(NamedTuple):
    """A strip, metres: how long, how deep, ``None`` where nobody says; ``ends``: how long at each of its
    ends it is ``edge`` deep, where a thick edge runs down the sides to the building, 0 where it is equally deep."""

    chord: float
    deep: float | None
    ends: float = 0.0
    edge: float = 0.0


def strip_at(plan: Plan) -> Strip | None:
    """Return the strip of a plan; ``None`` without a building."""
    pad, edge, slab = plan.filled, thick_edge(plan), plan.said.slab.thickness
    if not isinstance(pad, Pad) or not pad.against:
        return None
    strip = Strip(pad.arc.chord, slab)
    if edge is None:
        return strip
    ends = pad.arc.chord / 2 if at_building(plan) else _ends(plan, pad, edge)
    if 2 * ends >= pad.arc.chord * (1 - 1e-9):
        return strip._replace(deep=edge.deep)
    return strip._replace(ends=ends, edge=edge.deep) if ends and slab else strip


def _ends(plan: Plan, pad: Pad, edge: ThickEdge) -> float:
    """How long at each end the edge stands at the building that runs round without it. Where the curve's reaches it,
    over sides shorter than that is wide, it is taken to do so all along."""
    made = poured_of(plan, pad)
    assert isinstance(made, Pad)
    if along_of(plan) == "curve":
        return pad.arc.chord / 2 if made.sides < edge.wide * cos(pad.corner) else 0.0
    rest = of_pad(made, edge.wide, backed=False)
    return (pad.arc.chord - (rest.curve.arc.chord if rest else 0.0)) / 2


def strip_told(plan: Plan) -> dict[str, str]:
    """Return it in words: how thick, how long, how deep; empty where there is none."""
    strip = strip_at(plan)
    if strip is None:
        return {}
    told = {"gap": isolation_shown(plan), "chord": plan.tape.show(strip.chord)}
    if strip.deep is None:
        return {**told, "deep": say("pad.strip_full")}
    sizes = {"deep": thick(plan.tape, strip.deep), "edge": thick(plan.tape, strip.edge)}
    if not strip.ends:
        return {**told, "deep": say("pad.strip_deep", **sizes)}
    return {**told, "deep": say("pad.strip_ends", ends=plan.tape.show(strip.ends), **sizes)}


def strip_signed(plan: Plan) -> str:
    """Return it as it is signed off: how thick, and how deep where that is known; empty where there is none."""
    strip = strip_at(plan)
    if strip is None:
        return ""
    gap = isolation_shown(plan)
    if strip.deep is None:
        return gap
    sizes = {"gap": gap, "deep": thick(plan.tape, strip.deep), "edge": thick(plan.tape, strip.edge)}
    return say("pad.strip_signed_ends" if strip.ends else "pad.strip_signed", **sizes)


def strip_sizes(plan: Plan) -> list[float | str]:
    """Return what a card hangs on that tells it. Its first three as they were told before it could be two depths: what
    was done then stays done."""
    strip = strip_at(plan)
    if strip is None:
        return []
    told, deep = strip_told(plan), strip.deep
    old = [told["gap"], told["chord"], thick(plan.tape, deep) if deep else ""]
    return [*old, *((strip.ends, strip.edge) if strip.ends else ())]
