"""The form boards of a slab along a line: where they run through, how long they are, what no splice may be near."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate, pairwise

from bowstring.forming.cutting import Run
from bowstring.forming.line.edges import Edge, NoEdge
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Hand
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.tops import HANDS, middle_of


def stretches(line: Line) -> tuple[range, ...]:
    """Return the pieces along which a board runs through, numbers from 0: it ends at every kink.

    >>> from bowstring.forming.line.pieces import Straight
    >>> stretches(Line((Straight(1.0), Straight(2.0, 0.5), Bend.of(3.0, 1.0))))
    (range(0, 1), range(1, 3))
    """
    cuts = [number for number, join in enumerate(line.joins, 1) if not join.tangent]
    return tuple(range(first, last) for first, last in pairwise([0, *cuts, len(line.pieces)]))


@dataclass(frozen=True)
class Form:
    """The form of one edge along pieces that a board runs through.

    Attributes:
        hand: which edge; pieces: of the line, from 0.
        boards: metres of board along each, at mid-thickness; edges: of the slab's edge; middles: of the slab's middle.
        before: metres of board past the beginning; after: past the end.
        begins: metres along the slab's edge from the line's start.
    """

    hand: Hand
    pieces: range
    boards: tuple[float, ...]
    edges: tuple[float, ...]
    middles: tuple[float, ...]
    before: float
    after: float
    begins: float

    @cached_property
    def run(self) -> Run:
        """The same for the search: shares are those of the slab's middle, so that what is opposite has one share."""
        places = accumulate(self.boards, initial=self.before)
        whole = sum(self.middles)
        shares = (middle / whole for middle in accumulate(self.middles, initial=0.0))
        length = self.before + sum(self.boards) + self.after
        return Run(length, self.before, self.after, tuple(zip(places, shares, strict=True)))

    def on_edge(self, along: float) -> tuple[int, float]:
        """Return at which piece a place of the board is, and how far along the slab's edge from the line's start."""
        places = [*accumulate(self.boards, initial=self.before)]
        row = min(max(bisect_right(places, along) - 1, 0), len(self.boards) - 1)
        part = (along - places[row]) / self.boards[row]
        return self.pieces[row], self.begins + sum(self.edges[:row]) + part * self.edges[row]


def forms_of(slab: LineSlab, thickness: float, overrun: float) -> tuple[tuple[Form, Form], ...]:
    """Return the left and the right form of each stretch; ``overrun``: of the boards past both ends of the line."""
    parts = stretches(slab.line)
    middles = middle_of(slab)
    made = []
    for place, part in enumerate(parts):
        before, after = 0.0 if place else overrun, overrun if place + 1 == len(parts) else 0.0
        pair = []
        for hand in HANDS:
            edges = (slab.left_edge if hand == "left" else slab.right_edge).lengths
            boards = _boards(slab, hand, thickness)
            pair.append(
                Form(
                    hand=hand,
                    pieces=part,
                    boards=boards[part.start : part.stop],
                    edges=edges[part.start : part.stop],
                    middles=middles[part.start : part.stop],
                    before=before,
                    after=after,
                    begins=sum(edges[: part.start]),
                )
            )
        made.append((pair[0], pair[1]))
    return tuple(made)


def _boards(slab: LineSlab, hand: Hand, thickness: float) -> tuple[float, ...]:
    """How long the boards of an edge are along each piece, in the middle of their thickness, away from the slab."""
    edge = slab.left_edge if hand == "left" else slab.right_edge
    aside = thickness / 2 if hand == "left" else -thickness / 2
    try:
        return Edge(slab.line, edge.left + aside).lengths
    except NoEdge:  # so tight inside of a kink that the board is cut to fit there
        return edge.lengths


def shares_of_arcs(line: Line, form: Form, parts: int) -> tuple[float, ...]:
    """Return where arcs of a stretch are parted into so many equal parts, their ends and the stretch's own too, as
    shares of the slab's middle, in order.

    >>> from bowstring.forming.line.pieces import Straight
    >>> line = Line((Straight(2.0), Bend.of(2.0, 1.0)))
    >>> form = Form("left", range(2), (2.0, 2.0), (2.0, 2.0), (2.0, 2.0), 0.0, 0.0, 0.0)
    >>> shares_of_arcs(line, form, 2)
    (0.0, 0.5, 0.75, 1.0)
    """
    found, whole, done = {0.0, 1.0}, sum(form.middles), 0.0
    for number, middle in zip(form.pieces, form.middles, strict=True):
        if isinstance(line.pieces[number], Bend):
            found |= {min((done + middle * part / parts) / whole, 1.0) for part in range(parts + 1)}
        done += middle
    return tuple(sorted(found))
