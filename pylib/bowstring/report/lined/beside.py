"""What stands beside the dig of a line, near enough to be in the way of those who dig and form: how far off it is."""

from __future__ import annotations

from typing import NamedTuple

from bowstring.forming.line.clear import clearance
from bowstring.forming.line.outline import dig_of
from bowstring.forming.line.slab import LineSlab
from bowstring.geometry.plane import Point
from bowstring.job.obstacles import Obstacle
from bowstring.report.forming.edge_lines import dug_past
from bowstring.report.forming.ends import formed
from bowstring.report.forming.standing import walked
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

NEAR = 1.0
"""Metres off the dig line: roots reach in, and a machine's bucket swings as far (common practice, no source)."""


class Beside(NamedTuple):
    """How far a thing is from the concrete and from the dig, metres; the nearest place of it."""

    off: float
    dig: float
    place: Point


def beside_told(plan: LinePlan, things: list[Obstacle]) -> list[str]:
    """Return a line for each thing, none of which stands in the dig, that is near it: from which form and how far, and
    how far from the dig line, both down to a mark."""
    slab = plan.slab
    if slab is None:
        return []
    dig = dig_of(slab, dug_past(plan.plan), past_ends=formed(plan.plan))
    found = [(thing, _beside(slab, dig, dug_past(plan.plan), thing)) for thing in things]
    return [_told(plan, slab, thing.name, one) for thing, one in found if one.dig <= NEAR]


def _beside(slab: LineSlab, dig: LineSlab | None, past: float, thing: Obstacle) -> Beside:
    off, place = min(((clearance(slab, place), place) for place in walked(thing.outline)), key=lambda one: one[0])
    gap = max(0.0, off - past) if dig is None else min(clearance(dig, one) for one in walked(thing.outline))
    return Beside(off, gap, place)


def _told(plan: LinePlan, slab: LineSlab, what: str, one: Beside) -> str:
    tape, line = plan.tape, slab.line
    values = {"what": what, "off": tape.show(tape.down(one.off)), "dig": tape.show(tape.down(one.dig))}
    held = [(number, run) for number, run in enumerate(line.runs) if run.holds(run.along(one.place))]
    if not held:
        return say("lined.beside", **values)
    gaps = {number: abs(run.across(one.place)) for number, run in held}
    number, run = min(held, key=lambda two: gaps[two[0]])
    at = plan.along(line.stations[number] + run.along(one.place))
    left = run.across(one.place) > slab.left
    return say("lined.beside_left" if left else "lined.beside_right", **values, at=at)
