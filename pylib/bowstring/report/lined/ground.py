"""What is in the way along a line: of all its arcs at once, whichever of them is staked."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from bowstring.analysis.obstructions import Limits, Obstructions
from bowstring.forming.line.pieces import Bend
from bowstring.geometry.outlines import Circle, gap_to
from bowstring.geometry.plane import Point, distance, left_of
from bowstring.job.line import ArcSaid
from bowstring.job.obstacles import Obstacle
from bowstring.layout.limits import limits_of
from bowstring.report.lined.plan import LinePlan


def things_along(plan: LinePlan) -> list[Obstacle]:
    """Return what is in the way of each arc, its outline in the line's frame, metres.

    What is in the way is said of one arc, in the frame of its stakes: of the one that is staked, and of the others as
    it was said while they were.
    """
    return [*_things(plan)]


def _things(plan: LinePlan) -> Iterator[Obstacle]:
    job, said = plan.plan.layout.job, plan.settled.said
    for number, piece in enumerate(said.pieces):
        if not isinstance(piece, ArcSaid):
            continue
        ground = job.site.obstacles if number == said.at else piece.ground
        frame = _Frame.of(plan, number) if ground else None
        if frame:
            yield from (Obstacle(one.name, one.stops_tape, frame.outline(one.outline)) for one in ground)


class LineGround:
    """The site of a line, asked about places in the line's frame.

    The room that was said beside one arc's chord is no other piece's: it stops nothing here.
    """

    def __init__(self, plan: LinePlan) -> None:
        said, things = limits_of(plan.plan.layout.job), things_along(plan)
        limits = Limits(said.tape, {}, things, said.kit, said.clear)
        self._here, self._things = Obstructions(plan.plan.layout.staked, limits), things

    def tapeable(self, a: Point, b: Point) -> bool:
        """Whether one pull of the tape measures from one place to another."""
        return self._here.tapeable(a, b)

    def stands(self, point: Point) -> bool:
        """Whether nothing stands at a place."""
        return self._here.stands(point)

    def clear(self, places: Sequence[Point]) -> bool:
        """Whether nothing stands at any place from the first to the last, straight from each one to the next."""
        return not any(gap_to(one.outline, a, b) == 0 for a, b in pairwise(places) for one in self._things)


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

    def outline(self, one: Sequence[Point]) -> tuple[Point, ...]:
        """An outline in the line's frame; a circle stays one."""
        if isinstance(one, Circle):
            return Circle.around(self._place(one.centre), one.radius)
        return tuple(map(self._place, one))

    def _place(self, corner: Point) -> Point:
        return self.start.plus(self.toward, corner.x).plus(self.bulge, corner.y)
