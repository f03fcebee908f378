"""What stands in the concrete or in the dig along a line, of all that is in the way of any of its arcs."""

from __future__ import annotations

from bowstring.forming.line.outline import dig_of, outlines_of
from bowstring.forming.outline import ENDS, stands_in, stands_near
from bowstring.job.obstacles import Obstacle
from bowstring.report.forming.edge_lines import dug_past
from bowstring.report.forming.ends import formed
from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.standing import CONCRETE, DIG, in_dig_told, short_told
from bowstring.report.forms.build_lined import LinedStanding
from bowstring.report.lined.beside import beside_told
from bowstring.report.lined.ground import things_along
from bowstring.report.lined.in_dig import deepest_of
from bowstring.report.lined.line import cautions_of_line
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def standing_along(plan: LinePlan) -> list[LinedStanding]:
    """Return a row for each thing that stands in the concrete or else in the dig; none before there is a slab."""
    return [_row(plan, thing, where) for thing, where in _standing(plan)]


def near_dig(plan: LinePlan) -> list[str]:
    """Return a line for each thing that stands beside the dig, and not in it."""
    inside = [thing for thing, _where in _standing(plan)]
    return beside_told(plan, [thing for thing in things_along(plan) if thing not in inside])


def dig_notes(plan: LinePlan) -> list[str]:
    """Return what the dig lines' card says of each of them, and of what stands beside the dig."""
    return [*_in_dig_notes(plan), *near_dig(plan)]


def _in_dig_notes(plan: LinePlan) -> list[str]:
    return [
        short_told(where, thing.name, wall=is_wall(plan.plan))
        if where == CONCRETE
        else _dig_told(plan, thing, card=True)
        for thing, where in _standing(plan)
    ]


def _dig_told(plan: LinePlan, thing: Obstacle, *, card: bool = False) -> str:
    slab = plan.slab
    found = None if slab is None else deepest_of(slab, dug_past(plan.plan), thing.outline, formed(plan.plan))
    at = plan.along(found.along) if found else ""
    if found and found.where in ENDS:
        at = say("lined.hub_start" if found.where == "A" else "lined.the_end")
    return in_dig_told(plan.plan, thing.name, found, at, card=card)


def _standing(plan: LinePlan) -> list[tuple[Obstacle, str]]:
    slab = plan.slab
    things = [] if slab is None else things_along(plan)
    if slab is None or not things:
        return []
    past, concrete = dug_past(plan.plan), outlines_of(slab)
    dig = dig_of(slab, past, past_ends=formed(plan.plan))
    dug = outlines_of(dig) if dig else None
    rows: dict[tuple[str, str], tuple[Obstacle, str]] = {}
    for thing in things:
        if any(stands_in(thing.outline, outline) for outline in concrete):
            where = CONCRETE
        elif dug is not None and any(stands_in(thing.outline, outline) for outline in dug):
            where = DIG
        else:
            near = dug is None and any(stands_near(thing.outline, outline, past) for outline in concrete)
            where = DIG if near else ""
        if where:
            rows.setdefault((thing.name, where), (thing, where))
    return [*rows.values()]


def cautions_along(plan: LinePlan) -> list[str]:
    """Return what is doubtful of a line: where its slab lies over itself, and what stands in it or in its dig."""
    return [*cautions_of_line(plan), *(row["text"] for row in standing_along(plan))]


def _row(plan: LinePlan, thing: Obstacle, where: str) -> LinedStanding:
    what = "wall" if where == CONCRETE and is_wall(plan.plan) else where
    return {
        "name": thing.name,
        "where": where,
        "stops": "tape" if thing.stops_tape else "feet",
        "text": _dig_told(plan, thing) if where == DIG else say(f"edges.in_the_{what}", what=thing.name),
        "outline": [{"x": corner.x, "y": corner.y} for corner in thing.outline],
    }
