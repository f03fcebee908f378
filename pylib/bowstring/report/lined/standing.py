"""What stands in the concrete or in the dig along a line, of all that is in the way of any of its arcs."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from bowstring.forming.line.outline import dig_of, outlines_of
from bowstring.forming.line.pieces import Bend
from bowstring.forming.outline import stands_in, stands_near
from bowstring.geometry.plane import Point, distance, left_of
from bowstring.job.line import ArcSaid
from bowstring.job.obstacles import Obstacle
from bowstring.report.forming.edge_lines import dug_past
from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.standing import CONCRETE, DIG, ENDS, in_dig_told, short_told
from bowstring.report.forms.build_lined import LinedStanding
from bowstring.report.lined.in_dig import deepest_of
from bowstring.report.lined.line import cautions_of_line
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


class _Thing(NamedTuple):
    """Something in the way, its corners in the line's frame."""

    what: Obstacle
    outline: list[Point]


def standing_along(plan: LinePlan) -> list[LinedStanding]:
    """Return a row for each thing that stands in the concrete or else in the dig; none before there is a slab.

    What is in the way is said of one arc, in the frame of its stakes: of the one that is staked, and of the others as
    it was said while they were.
    """
    return [_row(plan, thing, where) for thing, where in _standing(plan)]


def dig_notes(plan: LinePlan) -> list[str]:
    """Return what the dig lines' card says of each of them."""
    return [
        short_told(where, thing.what.name, wall=is_wall(plan.plan))
        if where == CONCRETE
        else _dig_told(plan, thing, card=True)
        for thing, where in _standing(plan)
    ]


def _dig_told(plan: LinePlan, thing: _Thing, *, card: bool = False) -> str:
    slab = plan.slab
    found = None if slab is None else deepest_of(slab, dug_past(plan.plan), thing.outline)
    at = plan.along(found.along) if found else ""
    if found and found.where in ENDS:
        at = say("lined.hub_start" if found.where == "A" else "lined.the_end")
    return in_dig_told(plan.plan, thing.what.name, found, at, card=card)


def _standing(plan: LinePlan) -> list[tuple[_Thing, str]]:
    slab = plan.slab
    things = [] if slab is None else [*_things(plan)]
    if slab is None or not things:
        return []
    past, concrete = dug_past(plan.plan), outlines_of(slab)
    dig = dig_of(slab, past)
    dug = outlines_of(dig) if dig else None
    rows: dict[tuple[str, str], tuple[_Thing, str]] = {}
    for thing in things:
        if any(stands_in(thing.outline, outline) for outline in concrete):
            where = CONCRETE
        elif dug is not None and any(stands_in(thing.outline, outline) for outline in dug):
            where = DIG
        else:
            near = dug is None and any(stands_near(thing.outline, outline, past) for outline in concrete)
            where = DIG if near else ""
        if where:
            rows.setdefault((thing.what.name, where), (thing, where))
    return [*rows.values()]


def cautions_along(plan: LinePlan) -> list[str]:
    """Return what is doubtful of a line: where its slab lies over itself, and what stands in it or in its dig."""
    return [*cautions_of_line(plan), *(row["text"] for row in standing_along(plan))]


def _row(plan: LinePlan, thing: _Thing, where: str) -> LinedStanding:
    what = "wall" if where == CONCRETE and is_wall(plan.plan) else where
    return {
        "name": thing.what.name,
        "where": where,
        "stops": "tape" if thing.what.stops_tape else "feet",
        "text": _dig_told(plan, thing) if where == DIG else say(f"edges.in_the_{what}", what=thing.what.name),
        "outline": [{"x": corner.x, "y": corner.y} for corner in thing.outline],
    }


def _things(plan: LinePlan) -> Iterator[_Thing]:
    """What is in the way of each arc, in the line's frame."""
    job, said = plan.plan.layout.job, plan.settled.said
    for number, piece in enumerate(said.pieces):
        if not isinstance(piece, ArcSaid):
            continue
        ground = job.site.obstacles if number == said.at else piece.ground
        frame = _Frame.of(plan, number) if ground else None
        if frame:
            yield from (_Thing(one, [frame.place(corner) for corner in one.outline]) for one in ground)


class _Frame(NamedTuple):
    """The frame of an arc's stakes in that of the line: A, toward B, and toward the side of the arc's middle."""

    start: Point
    toward: Point
    bulge: Point

    @classmethod
    def of(cls, plan: LinePlan, number: int) -> _Frame | None:
        """That of a piece's arc; a row of stakes stands on one hand of the line all along."""
        run, own = plan.line.runs[number], plan.line.runs[plan.settled.said.at]
        piece, job = plan.line.pieces[number], plan.plan.layout.job
        if not isinstance(piece, Bend):
            return None
        left = -job.outward if own.curvature > 0 else job.outward  # away from the center of a left turn is to the right
        try:
            staked = run.aside(left)
        except ValueError:
            return None
        start, end = staked.start.point, staked.end.point
        far = distance(start, end)
        toward = Point((end.x - start.x) / far, (end.y - start.y) / far) if far else staked.start.ahead
        side = left_of(toward)
        return cls(start, toward, side if run.curvature < 0 else Point(-side.x, -side.y))

    def place(self, corner: Point) -> Point:
        """Where a corner lies in the line's frame."""
        return self.start.plus(self.toward, corner.x).plus(self.bulge, corner.y)
