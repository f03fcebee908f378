"""What stands in the concrete or in the dig, of all that a job says is in the way."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2

from bowstring.forming.edge import Edge
from bowstring.forming.outline import ends_of_band, outline_of_band, outline_of_fill, stands_in, stands_near
from bowstring.geometry.plane import Point, distance
from bowstring.job.obstacles import Obstacle
from bowstring.report.forming.edge_lines import dug_past
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forms.build_edges import StandingRow
from bowstring.words import say

CONCRETE, DIG = "concrete", "dig"


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
        ends = ends_of_band(*plan.edges, past) if past else []
    for one in things:
        outline = [corner.plus(start) for corner in one.outline]
        if stands_in(outline, concrete):
            yield one, CONCRETE
        elif (
            stands_near(outline, dig, past)
            if filled is not None
            else any(stands_in(outline, one) for one in (dig, *ends))
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
        "text": say(f"edges.in_the_{what}", what=one.name),
        "places": places,
    }
