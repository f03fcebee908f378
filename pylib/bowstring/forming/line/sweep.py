"""A slab along a line swept from its start to its end: where its front stands when so much of it is filled.

Along a piece the front is square to the line. At a kink it turns about the inner corner, from square to the piece
before it to square to the piece after it, and so is on the miter on its course.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from bowstring.forming.line.edges import Edge
from bowstring.forming.line.pieces import OTHER, Hand
from bowstring.forming.line.runs import between, loop_area
from bowstring.forming.line.sides import Side, area_to, part_of, point_on, sides_of
from bowstring.forming.line.slab import LineSlab

HALVES = 60
"""Bisections: a place to the last bits of a float."""


class Front(NamedTuple):
    """A line across the slab: how far along its left and its right edge it begins and ends, metres."""

    left: float
    right: float


class Turn(NamedTuple):
    """A front that turns about a place on one edge, ``fixed`` metres along it, while its end on the edge of ``hand``
    goes from ``start`` to ``end``, metres along that. ``join``: the number of the kink inside of which it turns,
    ``None`` where it only comes into line for that."""

    hand: Hand
    fixed: float
    start: float
    end: float
    join: int | None = None

    def front(self, along: float) -> Front:
        """Return the front whose end has come to ``along``."""
        return Front(along, self.fixed) if self.hand == "left" else Front(self.fixed, along)


class Stretch(NamedTuple):
    """A part of the sweep: from a share of a piece to a share of one, ``turns`` between where it goes round kinks."""

    first: tuple[int, float]
    last: tuple[int, float]
    turns: tuple[Turn, ...] = ()


@dataclass(frozen=True)
class Sweep:
    """The sweep of a slab. A share of it counts its stretches, each as long as the others: 0 at its start, 1 at its
    end; within a stretch it grows evenly with the area."""

    slab: LineSlab

    @property
    def area(self) -> float:
        """All of the slab, square metres."""
        return self.slab.area

    @cached_property
    def sides(self) -> dict[Hand, tuple[Side, ...]]:
        """Both edges, piece by piece."""
        return {"left": sides_of(self.slab.left_edge), "right": sides_of(self.slab.right_edge)}

    @cached_property
    def square(self) -> tuple[tuple[float, float], ...]:
        """Of each piece the shares from and to which a front can stand square to it; the first is the larger one where
        none can."""
        both = zip(self.sides["left"], self.sides["right"], strict=True)
        return tuple((max(one.square[0], other.square[0]), min(one.square[1], other.square[1])) for one, other in both)

    def across(self, piece: int, share: float) -> Front:
        """Return the front that is square to a piece at a share of it."""
        return Front(self.sides["left"][piece].at(share), self.sides["right"][piece].at(share))

    @cached_property
    def stretches(self) -> tuple[Stretch, ...]:
        """In order."""
        found: list[Stretch] = []
        last: tuple[int, float] | None = None
        for piece, (low, high) in enumerate(self.square):
            if low >= high:
                continue
            if last and not (piece == last[0] + 1 and self.slab.line.joins[last[0]].tangent):
                found.append(Stretch(last, (piece, low), self._turns(last, (piece, low))))
            found.append(Stretch((piece, low), (piece, high)))
            last = piece, high
        return tuple(found)

    def inner(self, join: int) -> Hand:
        """Return the hand that is inside of a kink."""
        return "left" if self.slab.line.joins[join].kink > 0 else "right"

    def on_join(self, join: int) -> Front:
        """Return where both edges of one piece go over into those of the next: on the miter at a kink."""
        return Front(self.sides["left"][join].ends, self.sides["right"][join].ends)

    def _turns(self, first: tuple[int, float], last: tuple[int, float]) -> tuple[Turn, ...]:
        """How a front goes round the kinks between two that are square."""
        at, goal = self.across(*first)._asdict(), self.across(*last)._asdict()
        turns: list[Turn] = []

        def move(hand: Hand, to: float, join: int | None = None) -> None:
            if to > at[hand]:
                turns.append(Turn(hand, at[OTHER[hand]], at[hand], to, join))
                at[hand] = to

        for join in range(first[0], last[0]):
            inner = self.inner(join)
            outer = OTHER[inner]
            move(inner, self.on_join(join)._asdict()[inner])
            move(outer, self.on_join(join + 1)._asdict()[outer] if join + 1 < last[0] else goal[outer], join)
        for hand in self.sides:
            move(hand, goal[hand])
        return tuple(turns)

    def _edge(self, hand: Hand) -> Edge:
        return self.slab.left_edge if hand == "left" else self.slab.right_edge

    def turned(self, turn: Turn, along: float) -> float:
        """Return the area over which a front goes while its moving end comes to ``along``, square metres: between the
        edge and the two straights from the place that it turns about (Green's theorem)."""
        edge = self._edge(turn.hand)
        runs = part_of(edge, turn.start, along)
        if not runs:
            return 0.0
        centre = point_on(self._edge(OTHER[turn.hand]), turn.fixed)
        area = loop_area([between(centre, runs[0].start.point), *runs, between(runs[-1].end.point, centre)])
        return area if turn.hand == "right" else -area

    @cached_property
    def _areas(self) -> tuple[float, ...]:
        """The area up to the start of each stretch, and that of all."""
        slab = self.slab
        return (*self._up_to(slab.left_edge, slab.right_edge), slab.area)

    def _up_to(self, left: Edge, right: Edge) -> list[float]:
        """The area between two edges up to the start of each stretch, square metres."""
        return [area_to(left, *one.first) - area_to(right, *one.first) for one in self.stretches]

    def area_to(self, share: float) -> float:
        """Return the area up to a share of the sweep, square metres."""
        return self._between(self._areas, share)

    def _between(self, measures: tuple[float, ...], share: float) -> float:
        number, part = self._stretch(share)
        return measures[number] + part * (measures[number + 1] - measures[number])

    def _stretch(self, share: float) -> tuple[int, float]:
        """The number of the stretch on which a share is, and how much of that lies before it."""
        count = len(self.stretches)
        number = max(0, min(int(share * count), count - 1))
        return number, share * count - number

    def bands_to(self, wide: float, share: float) -> float:
        """Return the area up to a share of the sweep that lies within ``wide`` metres of an edge, mitered at kinks,
        square metres; all of it where the bands along both edges meet. Exact but where a front turns: there the bands
        are taken to grow with the area."""
        if 2 * wide >= self.slab.width:
            return self.area_to(share)
        if wide not in self._kept:
            self._kept[wide] = self._bands(wide)
        return self._between(self._kept[wide], share)

    @cached_property
    def _kept(self) -> dict[float, tuple[float, ...]]:
        """The bands' areas, by how wide they are: asked again and again while a place is looked for."""
        return {}

    def _bands(self, wide: float) -> tuple[float, ...]:
        slab = self.slab
        left, right = Edge(slab.line, slab.left - wide), Edge(slab.line, wide - slab.right)
        one, other = self._up_to(slab.left_edge, left), self._up_to(right, slab.right_edge)
        whole = slab.left_edge.area - left.area + right.area - slab.right_edge.area
        return (*(a + b for a, b in zip(one, other, strict=True)), whole)

    def front(self, share: float) -> Front:
        """Return where the front stands at a share of the sweep."""
        number, part = self._stretch(share)
        stretch = self.stretches[number]
        if stretch.turns:
            return self._turning(stretch.turns, part * (self._areas[number + 1] - self._areas[number]))
        (piece, low), (_piece, high) = stretch.first, stretch.last
        return self.across(piece, low + (high - low) * part)

    def _turning(self, turns: tuple[Turn, ...], area: float) -> Front:
        """Where a front that goes round kinks has gone over an area."""
        for turn in turns:
            whole = self.turned(turn, turn.end)
            if area < whole:
                low, high = turn.start, turn.end
                for _ in range(HALVES):
                    middle = (low + high) / 2
                    low, high = (middle, high) if self.turned(turn, middle) < area else (low, middle)
                return turn.front((low + high) / 2)
            area -= whole
        return turns[-1].front(turns[-1].end)

    def share_across(self, piece: int, share: float) -> float:
        """Return the share of the sweep at which the front is square to a piece at a share of it.

        Raises ``ValueError`` where it never is.
        """
        low, high = self.square[piece]
        for number, one in enumerate(self.stretches):
            if not one.turns and one.first[0] == piece and low <= share <= high:
                return (number + (share - low) / (high - low)) / len(self.stretches)
        raise ValueError("no front stands square there")

    def share_on_join(self, join: int) -> float:
        """Return the share of the sweep at which the front goes from one piece over into the next."""
        if self.slab.line.joins[join].tangent:
            return self.share_across(join, self.square[join][1])
        wanted = self.on_join(join)._asdict()[OTHER[self.inner(join)]]
        for number, one in enumerate(self.stretches):
            gone = 0.0
            for turn in one.turns:
                if turn.join == join:
                    part = (gone + self.turned(turn, wanted)) / (self._areas[number + 1] - self._areas[number])
                    return (number + min(part, 1.0)) / len(self.stretches)
                gone += self.turned(turn, turn.end)
        raise ValueError("no front turns there")
