"""An edge at one distance all along a line: parallel to a straight, concentric with an arc, mitered at a kink."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from bowstring.forming.line.line import Line
from bowstring.forming.line.miter import Meeting, NoMiter, meeting, overlap, reach
from bowstring.forming.line.pieces import Hand, hand_of
from bowstring.forming.line.runs import Run

Why = Literal["radius", "room"]
"""Why there is no edge: the arc's inner edge has no radius; or inside of a kink the pieces are too short for it."""


class NoEdge(ValueError):
    """No edge stands at this distance.

    Attributes:
        piece: the number of the piece, from 0; of a kink the piece after it.
        hand: on which hand of the line.
        why: see ``Why``.
    """

    def __init__(self, piece: int, hand: Hand, why: Why) -> None:
        super().__init__(f"no edge on the {hand} of piece {piece}: {why}")
        self.piece = piece
        self.hand = hand
        self.why = why


@dataclass(frozen=True)
class EdgeRun:
    """A part of an edge: where it lies, the number of the line's piece that it follows (from 0), and whether it is what
    was carried straight on past the piece to a miter."""

    run: Run
    piece: int
    carried: bool = False


@dataclass(frozen=True)
class Edge:
    """The edge at one distance from a line.

    Attributes:
        line: the line.
        left: metres to the left of it, below 0 to the right.

    Raises ``NoEdge`` where an arc's edge has no radius, or a kink's edges don't meet.
    """

    line: Line
    left: float

    def __post_init__(self) -> None:
        _ = self.runs

    @cached_property
    def _whole(self) -> tuple[Run, ...]:
        """Each piece's edge from square end to square end."""
        runs = []
        for number, run in enumerate(self.line.runs):
            try:
                runs.append(run.aside(self.left))
            except ValueError:
                raise NoEdge(number, hand_of(self.left), "radius") from None
        return tuple(runs)

    @cached_property
    def _meetings(self) -> tuple[Meeting | None, ...]:
        """Of each join where both edges are cut back until they meet; ``None`` where they aren't."""
        met: list[Meeting | None] = []
        for number, join in enumerate(self.line.joins):
            if join.tangent or join.kink * self.left <= 0:
                met.append(None)
                continue
            try:
                met.append(meeting(self._whole[number], self._whole[number + 1]))
            except NoMiter:
                raise NoEdge(number + 1, hand_of(self.left), "room") from None
        return tuple(met)

    @cached_property
    def runs(self) -> tuple[EdgeRun, ...]:
        """The edge from its start to its end."""
        joins, runs = self.line.joins, []
        for number, whole in enumerate(self._whole):
            start = self._meetings[number - 1] if number else None
            end = self._meetings[number] if number < len(joins) else None
            before, after = start.after if start else 0.0, end.before if end else 0.0
            if before + after >= whole.length:
                raise NoEdge(number, hand_of(self.left), "room")
            if number and (on := self._carried(number - 1)):
                runs.append(EdgeRun(Run(whole.start.on(-on), on), number, True))
            runs.append(EdgeRun(whole.part(before, after) if before or after else whole, number))
            if number < len(joins) and (on := self._carried(number)):
                runs.append(EdgeRun(Run(whole.end, on), number, True))
        return tuple(runs)

    def _carried(self, number: int) -> float:
        """How far the edges at a join are carried straight on to their miter, metres."""
        join = self.line.joins[number]
        return 0.0 if join.tangent or join.kink * self.left >= 0 else reach(self.left, join.kink)

    @property
    def length(self) -> float:
        """Metres along the edge, miters included."""
        return sum(part.run.length for part in self.runs)

    @property
    def lengths(self) -> tuple[float, ...]:
        """Metres along the edge of each piece of the line, with its share of the miters."""
        found = [0.0] * len(self.line.pieces)
        for part in self.runs:
            found[part.piece] += part.run.length
        return tuple(found)

    @property
    def area(self) -> float:
        """The area between the line and the edge, square metres, above 0 for an edge on the left.

        A piece's is its length times d - k d²/2, with d the distance to the left and k the curvature: the rectangle L d
        and the ring's sector I (R² - (R - d)²)/2. A kink adds d² tan(k/2) outside (two right triangles with legs d and
        d tan(k/2)), and takes what both pieces have inside.
        """
        whole = self.left * sum(run.length - run.turn * self.left / 2 for run in self.line.runs)
        return whole + sum(self.at_join(number) for number in range(len(self.line.joins)))

    @cached_property
    def ends(self) -> tuple[tuple[float, float], ...]:
        """Of each piece, how far its edge goes on beyond the piece's square start and its square end, metres: above 0
        carried on to a miter, below 0 cut back to one."""
        joins = range(len(self.line.joins))
        met = [self._meetings[number] for number in joins]
        on = [self._carried(number) for number in joins]
        starts = [0.0, *(-two.after if two else far for two, far in zip(met, on, strict=True))]
        ends = [*(-two.before if two else far for two, far in zip(met, on, strict=True)), 0.0]
        return tuple(zip(starts, ends, strict=True))

    def at_join(self, number: int) -> float:
        """Return what a join adds to the area, with the edge's own sign, square metres."""
        join, met = self.line.joins[number], self._meetings[number]
        if met is None:
            gained = abs(self.left) * self._carried(number)
        else:
            gained = -overlap(join.place.point, self._whole[number], self._whole[number + 1], met)
        return gained if self.left >= 0 else -gained
