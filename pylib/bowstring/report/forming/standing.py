"""What stands in the concrete or in the dig, of all that a job says is in the way."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import atan2, ceil, cos, sin
from typing import NamedTuple

from bowstring.forming.edge import Edge
from bowstring.forming.outline import ENDS, ends_of_band, outline_of_band, outline_of_fill, stands_in, stands_near
from bowstring.geometry.plane import Point, distance
from bowstring.job.obstacles import Obstacle
from bowstring.report.forming.edge_lines import dug_past
from bowstring.report.forming.edge_marks import INSIDE, OUTSIDE
from bowstring.report.forming.ends import formed
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forms.build_edges import StandingRow
from bowstring.report.stations import station_shown
from bowstring.words import say

CONCRETE, DIG = "concrete", "dig"

STEP = 0.02
"""Metres: so close together a thing's outline is walked to find its deepest place; a side of it bows less than its own
rounding in between."""


class InDig(NamedTuple):
    """Where something stands deepest in the dig: ``outside``, ``inside``, ``left`` or ``right`` of the work, or past
    the end ``A`` or ``B``; how far along the line, and how deep within the dig's edge, metres."""

    where: str
    along: float
    deep: float


def walked(outline: Sequence[Point]) -> Iterator[Point]:
    """Yield places all around an outline, its corners among them."""
    for one, other in pairwise([*outline, outline[0]]):
        count = max(1, min(500, ceil(distance(one, other) / STEP)))
        for number in range(count):
            share = number / count
            yield Point(one.x + (other.x - one.x) * share, one.y + (other.y - one.y) * share)


def in_dig_told(plan: Plan, what: str, found: InDig | None, at: str, *, card: bool = False) -> str:
    """Return what is said of something in the dig; ``at``: how its place along is called, or the end that it is past;
    ``card``: in a card's few words."""
    if found is None:
        return say("forming.dig_thing", what=what) if card else say("edges.dig_thing", what=what)
    told = {"what": what, "deep": plan.tape.show_up(found.deep)}
    where = "end" if found.where in ENDS else found.where
    told["end" if found.where in ENDS else "at"] = at
    return say(f"forming.dig_thing_{where}", **told) if card else say(f"edges.dig_thing_{where}", **told)


def short_told(where: str, what: str, *, wall: bool) -> str:
    """Return the few words of a row for something that stands in the concrete or in the dig."""
    return say(f"edges.in_the_{'wall' if where == CONCRETE and wall else where}", what=what)


def dig_notes(plan: Plan) -> list[str]:
    """Return what the dig lines' card says of each thing that stands in the concrete or in the dig."""
    start = Edge(plan.line, plan.layout.job.outward, plan.layout.job.outward).point(0)
    return [
        short_told(where, one.name, wall=is_wall(plan)) if where == CONCRETE else _dig_told(plan, one, start, card=True)
        for one, where in _standing(plan, start)
    ]


def _dig_told(plan: Plan, one: Obstacle, start: Point, *, card: bool = False) -> str:
    found = None if plan.filled is not None else _deepest(plan, [corner.plus(start) for corner in one.outline])
    if found is None or found.where in ENDS:
        return in_dig_told(plan, one.name, found, found.where if found else "", card=card)
    at = station_shown(plan.layout.job, found.along) or plan.tape.show_running(found.along)
    return in_dig_told(plan, one.name, found, at, card=card)


def _deepest(plan: Plan, outline: Sequence[Point]) -> InDig | None:
    """Where an outline stands deepest in the dig of a band; the same as ``in_dig.deepest_of`` along a line."""
    line, past, (outer, inner) = plan.line, dug_past(plan), plan.edges
    middle = Point(line.chord / 2, line.sagitta - line.radius)
    found: InDig | None = None
    for point in walked(outline):
        way = point.minus(middle)
        turned = max(-line.half_angle, min(line.half_angle, atan2(way.x, way.y)))
        ahead = way.x * cos(turned) - way.y * sin(turned)  # past an end, along its tangent
        off = way.x * sin(turned) + way.y * cos(turned) - line.radius
        share = (turned / line.half_angle + 1) / 2
        inside = {OUTSIDE: outer.offset(share) + past - off, INSIDE: off - inner.offset(share) + past}
        if abs(ahead) > 1e-9:
            end = "A" if ahead < 0 else "B"
            inside[end] = (past if end in formed(plan) else 0.0) - abs(ahead)
        where = min(inside, key=lambda one: inside[one])
        if inside[where] > (found.deep if found else 0.0):
            found = InDig(where, share * line.arc_length, inside[where])
    return found


def report_standing(plan: Plan) -> list[StandingRow]:
    """Return a row for each thing that stands in the concrete or else in the dig, in the job's order."""
    start = Edge(plan.line, plan.layout.job.outward, plan.layout.job.outward).point(0)
    return [_row(plan, one, start, where) for one, where in _standing(plan, start)]


def _standing(plan: Plan, start: Point) -> Iterator[tuple[Obstacle, str]]:
    things = plan.layout.job.site.obstacles
    if not things:
        return
    past, filled = dug_past(plan), plan.filled
    if filled is not None:
        concrete = dig = outline_of_fill(filled)
        ends = []
    else:
        concrete, dig = outline_of_band(*plan.edges), outline_of_band(*plan.edges, past)
        ends = ends_of_band(*plan.edges, past, formed(plan)) if past else []
    for one in things:
        outline = [corner.plus(start) for corner in one.outline]
        if stands_in(outline, concrete):
            yield one, CONCRETE
        elif (
            stands_near(outline, dig, past)
            if filled is not None
            else any(stands_in(outline, part) for part in (dig, *ends))
        ):
            yield one, DIG


def _row(plan: Plan, one: Obstacle, start: Point, where: str) -> StandingRow:
    line = plan.line
    middle = Point(line.chord / 2, line.sagitta - line.radius)
    places = []
    for corner in one.outline:
        there = corner.plus(start)
        angle = atan2(there.x - middle.x, there.y - middle.y)
        places.append([angle / line.half_angle, distance(there, middle) - line.radius])
    what = "wall" if where == CONCRETE and is_wall(plan) else where
    return {
        "name": one.name,
        "where": where,
        "stops": "tape" if one.stops_tape else "feet",
        "text": _dig_told(plan, one, start) if where == DIG else say(f"edges.in_the_{what}", what=one.name),
        "places": places,
    }
