"""Stakes that were got off the arc and stay there: what is set from one of them reads something else than elsewhere."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.layout.layout import Layout
from bowstring.report.forming.edge_lines import off_shown
from bowstring.report.forming.edge_marks import CENTER, INSIDE, OUTSIDE, STAKES, Marks
from bowstring.report.forming.edge_stick import dug_out
from bowstring.report.forming.hubs import Hubs, hubs_of
from bowstring.report.forming.plan import Plan
from bowstring.report.numbers import off_the_arc
from bowstring.words import say

FEW = 2
"""A card has room for so many stakes that stand off the arc."""


def off_line(layout: Layout) -> list[tuple[str, float]]:
    """Return the stakes at which something else was got, each with how far off the arc it stands, metres, positive
    away from the center; those that a tape can't tell from the arc aren't among them."""
    tape = layout.job.tape
    misses = ((name, miss) for name, miss in layout.misses.by_stake.items() if name in layout.job.got)
    return [(name, miss) for name, miss in misses if tape.round(abs(miss))]


def hub_off(hubs: Hubs, miss: float) -> float:
    """Return how far off such a stake its hub stands, metres, so that it is on the line of all hubs."""
    return hubs.off - miss if hubs.side == OUTSIDE else hubs.off + miss


def hub_notes(plan: Plan, hubs: Hubs) -> list[str]:
    """Return the hubs that stand otherwise off their stakes than all others, as notes of the hubs' card."""
    strays = off_line(plan.layout)
    shown = {"usual": plan.tape.show(hubs.off)}
    told = [
        say("forming.note.hub_stray", stake=name, off=_off_told(plan, hubs, miss), **shown) for name, miss in strays
    ]
    return _few(told)


def told_of_hubs(plan: Plan, hubs: Hubs) -> Iterator[str]:
    """Yield the same as sentences of their own, with where each stake stands."""
    for name, miss in off_line(plan.layout):
        shown = {"miss": off_the_arc(plan.tape, miss), "off": _off_told(plan, hubs, miss)}
        yield say("edges.off_hub", stake=name, usual=plan.tape.show(hubs.off), **shown)


def told_of_edges(plan: Plan, marks: Marks, key: str = "edges.off_gauge") -> Iterator[str]:
    """Yield how far both edges are from such a stake, where stakes stand on neither and hold no board."""
    shares = dict(marks.shares)
    for name, miss in off_line(plan.layout):
        outer, inner = (off_shown(plan, marks.reach(edge, shares[name]) - miss) for edge in (OUTSIDE, INSIDE))
        yield say(key, stake=name, miss=off_the_arc(plan.tape, miss), outer=outer, inner=inner)


def edge_notes(plan: Plan, marks: Marks) -> list[str]:
    """Return the same as notes of the card that sets both edges from the stakes."""
    if off_line(plan.layout) and _boards_follow(marks):
        return [say("forming.note.got")]
    return _few([*told_of_edges(plan, marks, "forming.note.off_gauge")])


def told_of_curve(plan: Plan, key: str = "edges.off_curve") -> list[str]:
    """Return how far the edge of a slab that fills its curve is from such a stake, where stakes stand off it."""
    told, outward = [], plan.layout.job.outward
    for name, miss in off_line(plan.layout) if outward else ():
        shown = off_shown(plan, -outward - miss)
        told.append(say(key, stake=name, miss=off_the_arc(plan.tape, miss), edge=shown))
    return told


def curve_notes(plan: Plan) -> list[str]:
    """Return the same as notes of the card that sets the curve from the stakes."""
    return _few(told_of_curve(plan, "forming.note.off_curve"))


def told_off_line(plan: Plan, marks: Marks) -> list[str]:
    """Return what is set otherwise from stakes off the arc: their hubs where the dig takes them, else both edges."""
    if not off_line(plan.layout):
        return []
    if dug_out(plan, marks):
        return [*told_of_hubs(plan, hubs_of(plan, marks))]
    return [say("edges.got")] if _boards_follow(marks) else [*told_of_edges(plan, marks)]


def _boards_follow(marks: Marks) -> bool:
    """Whether a board goes along the stakes: the other edge is gauged from that board then."""
    return marks.yours not in (STAKES, CENTER) or marks.boarded is not None


def _few(told: list[str]) -> list[str]:
    """The notes of a card, one for all where it has no room for so many."""
    return told if len(told) <= FEW else [say("forming.note.off_many")]


def stray_values(layout: Layout) -> list[str | float]:
    """Return where such stakes stand, as values on which a card hangs."""
    return [value for stray in off_line(layout) for value in stray]


def _off_told(plan: Plan, hubs: Hubs, miss: float) -> str:
    return say("edges.off_out" if hubs.side == OUTSIDE else "edges.off_in", size=plan.tape.show(hub_off(hubs, miss)))
