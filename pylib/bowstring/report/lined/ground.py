"""What is in the way along a line: of all its arcs at once, whichever of them is staked."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from bowstring.analysis.obstructions import Limits, Obstructions
from bowstring.forming.line.pieces import Bend
from bowstring.forming.line.stakes_frame import StakesFrame, off_left
from bowstring.geometry.outlines import gap_to
from bowstring.geometry.plane import Point
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
        frame = _frame(plan, number) if ground else None
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


def _frame(plan: LinePlan, number: int) -> StakesFrame | None:
    """The frame of a piece's stakes, if it is an arc; a row of stakes stands on one hand of the line all along."""
    run, own = plan.line.runs[number], plan.line.runs[plan.settled.said.at]
    if not isinstance(plan.line.pieces[number], Bend):
        return None
    try:
        return StakesFrame.of(run, off_left(plan.plan.layout.job.outward, own.curvature))
    except ValueError:
        return None
