"""An edge piece by piece: how far along it the place stands that is square across from a place on the line."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.line.edges import Edge
from bowstring.forming.line.runs import Run
from bowstring.geometry.plane import Point


@dataclass(frozen=True)
class Side:
    """An edge along one piece of the line; metres.

    Attributes:
        begins: how far along the whole edge it begins.
        whole: from the piece's square start to its square end.
        before, after: how far it goes on beyond them: above 0 carried on to a miter, below 0 cut back to one.
    """

    begins: float
    whole: float
    before: float
    after: float

    @property
    def length(self) -> float:
        """With its share of the miters."""
        return self.before + self.whole + self.after

    @property
    def ends(self) -> float:
        """How far along the whole edge it ends."""
        return self.begins + self.length

    @property
    def square(self) -> tuple[float, float]:
        """The shares of the piece from and to which a line square to it meets this edge."""
        return max(0.0, -self.before / self.whole), 1 - max(0.0, -self.after / self.whole)

    def at(self, share: float) -> float:
        """Return how far along the whole edge it is to the place square across from a share of the piece."""
        return self.begins + self.before + self.whole * share

    def share(self, along: float) -> float:
        """Return the share of the piece from which a place so far along the whole edge is square across."""
        return (along - self.begins - self.before) / self.whole


def sides_of(edge: Edge) -> tuple[Side, ...]:
    """Return an edge piece by piece."""
    sides, begins = [], 0.0
    for run, (before, after) in zip(edge.line.runs, edge.ends, strict=True):
        side = Side(begins, run.length * (1 - run.curvature * edge.left), before, after)
        sides.append(side)
        begins = side.ends
    return tuple(sides)


def part_of(edge: Edge, start: float, end: float) -> list[Run]:
    """Return what lies of an edge between two places along it, metres."""
    found, begins = [], 0.0
    for part in edge.runs:
        run = part.run
        low, high = max(start - begins, 0.0), min(end - begins, run.length)
        if low < high:
            found.append(run.part(low, run.length - high))
        begins += run.length
    return found


def point_on(edge: Edge, along: float) -> Point:
    """Return the place so many metres along an edge."""
    begins = 0.0
    for part in edge.runs:
        if along <= begins + part.run.length:
            return part.run.at(along - begins).point
        begins += part.run.length
    return edge.runs[-1].run.end.point


def area_to(edge: Edge, piece: int, share: float) -> float:
    """Return the area between the line and its edge up to a share of a piece, square metres, with the edge's own sign:
    exact wherever a line square to the piece there meets the edge (``Side.square``)."""
    left, runs = edge.left, edge.line.runs
    whole = sum(run.length - run.turn * left / 2 for run in runs[:piece])
    own = share * (runs[piece].length - runs[piece].turn * left / 2)
    return left * (whole + own) + sum(edge.at_join(number) for number in range(piece))
