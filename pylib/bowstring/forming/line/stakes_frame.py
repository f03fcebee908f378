"""The frame in which an arc's stakes are set, as it lies in that of its line: the frame of the staked chord."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from bowstring.forming.line.runs import Run
from bowstring.geometry.outlines import Circle
from bowstring.geometry.plane import Point, distance, left_of


class StakesFrame(NamedTuple):
    """A, the vector of length 1 toward B, and the one square to it toward the arc's middle, in the line's frame."""

    start: Point
    toward: Point
    bulge: Point

    @classmethod
    def of(cls, run: Run, left: float) -> StakesFrame:
        """Return that of an arc of a line whose stakes stand ``left`` metres to the left of it, negative to the right.

        Raises ``ValueError`` where the arc has no radius left.
        """
        staked = run.aside(left)
        start, end = staked.start.point, staked.end.point
        far = distance(start, end)
        toward = Point((end.x - start.x) / far, (end.y - start.y) / far) if far else staked.start.ahead
        side = left_of(toward)
        return cls(start, toward, side if run.curvature < 0 else Point(-side.x, -side.y))

    def place(self, point: Point) -> Point:
        """Return where a place of the stakes' frame is in the line's, metres."""
        return self.start.plus(self.toward, point.x).plus(self.bulge, point.y)

    def back(self, point: Point) -> Point:
        """Return where a place of the line's frame is in the stakes', metres."""
        way = point.minus(self.start)
        return Point(way.dot(self.toward), way.dot(self.bulge))

    def outline(self, one: Sequence[Point]) -> tuple[Point, ...]:
        """Return an outline in the line's frame; a circle stays one."""
        if isinstance(one, Circle):
            return Circle.around(self.place(one.centre), one.radius)
        return tuple(map(self.place, one))


def off_left(outward: float, curvature: float) -> float:
    """Return how far to the left of the line stakes stand that are ``outward`` metres off an arc, away from its center:
    off a left turn that is to the right."""
    return -outward if curvature > 0 else outward
