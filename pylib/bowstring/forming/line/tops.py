"""How high the forms stand along a line: its middle climbs evenly, across it falls to one hand or is crowned.

The slope runs along the slab's middle, or along the drawn line where a job says so: what climbs evenly is that.
At every join both edges stand as their piece of it has climbed by then, the fall across taken off; in between
each edge climbs evenly along its own length. Where no kink is, that is the plane sum: what the middle has climbed at a
station, less the fall times the distance from it. At a kink the two edges of a piece are longer and shorter by their
miters, and the corners are as high as the middle's own: no form has a step.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate

from bowstring.forming.grades import crown
from bowstring.forming.line.edges import Edge
from bowstring.forming.line.pieces import Hand
from bowstring.forming.line.slab import LineSlab

HANDS: tuple[Hand, Hand] = ("left", "right")
OFF = 1e-9
"""A share of a piece's edge: so little past its end is a float's dust."""


class NotOnEdge(ValueError):
    """Square off a station near a kink there is no edge of its piece: it was cut back to the miter."""


@dataclass(frozen=True)
class LineGrade:
    """Tops of a slab along a line.

    Attributes:
        slab: between its edges.
        start: the top of the left edge where the line begins, metres.
        running: rise over run along the middle of the slab, positive where the line's end is higher.
        on_line: it runs along the drawn line instead, wherever that lies in the slab.
        cross: rise over run across, positive where the left edge is higher.
        crown: how far the middle stands over both edges' straight line, metres.
    """

    slab: LineSlab
    start: float
    running: float
    cross: float
    crown: float = 0.0
    on_line: bool = False

    @classmethod
    def between(
        cls, slab: LineSlab, start: float, end: float, cross: float, crown: float = 0.0, *, on_line: bool = False
    ) -> LineGrade:
        """Return the grade whose left edge meets two tops, metres, at its ends: the running slope follows."""
        flat = cls(slab, start, 0.0, cross, crown, on_line)
        return cls(slab, start, (end - start) / sum(flat.paces), cross, crown, on_line)

    @cached_property
    def paces(self) -> tuple[float, ...]:
        """Of each piece the length over which it climbs by the running slope, metres: along the slab's middle, or
        along the drawn line."""
        return tuple(piece.length for piece in self.slab.line.pieces) if self.on_line else middle_of(self.slab)

    @cached_property
    def climbed(self) -> tuple[float, ...]:
        """By how much it has climbed at the start, at each join and at the end, metres."""
        return tuple(self.running * length for length in accumulate(self.paces, initial=0.0))

    def edge(self, hand: Hand) -> Edge:
        """Return an edge of the slab."""
        return self.slab.left_edge if hand == "left" else self.slab.right_edge

    def top_at(self, number: int, share: float, hand: Hand) -> float:
        """Return the top of a form at a share of a piece's edge, its miters included, metres; ``number``: from 0."""
        here = self.climbed[number] + self.running * self.paces[number] * share
        return self.start + here - (0.0 if hand == "left" else self.cross * self.slab.width)

    def top(self, station: float, left: float) -> float:
        """Return the top square off a station, ``left`` metres to the left of the slab's middle, below 0 to the right.

        Raises ``ValueError`` off the line or past an edge, and ``NotOnEdge`` where a kink leaves no edge there.
        """
        across = 0.5 - left / self.slab.width
        if not -OFF <= across <= 1 + OFF:
            raise ValueError("no such place across the slab")
        number, along = self.slab.line.place_of(station)
        part = along / self.slab.line.pieces[number].length
        lefts, rights = (self.top_at(number, self.share_of(number, part, hand), hand) for hand in HANDS)
        return lefts + (rights - lefts) * across + crown(1.0, self.crown, across)

    def share_of(self, number: int, part: float, hand: Hand) -> float:
        """Return at which share of a piece's edge the place square off a share ``part`` of the piece itself stands.

        Raises ``NotOnEdge`` where there is none.
        """
        share = self._square(number, hand).share(part)
        if not -OFF <= share <= 1 + OFF:
            raise NotOnEdge
        return min(max(share, 0.0), 1.0)

    def _square(self, number: int, hand: Hand) -> _Square:
        edge, run = self.edge(hand), self.slab.line.runs[number]
        before = 0.0
        for one in edge.runs:
            if one.piece == number and not one.carried:
                before += one.run.along(run.start.aside(edge.left).point)  # below 0 where it was cut back
                break
            before += one.run.length if one.piece == number else 0.0
        return _Square(before, run.length * (1 - run.curvature * edge.left), edge.lengths[number])

    def slope(self, number: int, hand: Hand) -> float:
        """Return the running slope of a piece's edge: its own climb over its own length.

        >>> from bowstring.forming.line.line import Line
        >>> from bowstring.forming.line.pieces import Bend
        >>> walk = LineSlab(Line((Bend.of(62.0, -0.8),)), 0.0, 5.0)
        >>> round(LineGrade(walk, 0.0, 0.02, 0.015).slope(0, "right"), 5)
        0.02088
        """
        return self.running * self.paces[number] / self.edge(hand).lengths[number]

    @property
    def steepest(self) -> tuple[int, Hand]:
        """The piece, from 0, and the hand of the edge that runs the steepest; the first of those that do."""
        return max(self._edges(), key=lambda one: round(abs(self.slope(*one)), 12))

    def most_running(self, limit: float) -> float:
        """Return the most that it may run for every edge to keep a limit."""
        shares = (self.edge(hand).lengths[number] / self.paces[number] for number, hand in self._edges())
        return limit * min(shares)

    def _edges(self) -> list[tuple[int, Hand]]:
        return [(number, hand) for number in range(len(self.paces)) for hand in HANDS]

    @property
    def twisted(self) -> float:
        """The steepest slope from edge to edge, as a size: past the fall across where a kink twists the slab."""
        return max(self._twisted(number) for number in range(len(self.paces)))

    def _twisted(self, number: int) -> float:
        """The same of one piece: it changes evenly, so it is the most where the first of both edges begins or ends."""
        squares = [self._square(number, hand) for hand in HANDS]
        first, last = max(one.part(0.0) for one in squares), min(one.part(1.0) for one in squares)
        falls = [abs(self.cross)]
        for part in (max(first, 0.0), min(last, 1.0)):
            lefts, rights = (
                self.top_at(number, one.share(part), hand) for one, hand in zip(squares, HANDS, strict=True)
            )
            falls.append(abs(lefts - rights) / self.slab.width)
        return max(falls)

    @property
    def across_slope(self) -> float:
        """The steepest slope across, as a size: a crown's at its edges is four times its height over the width."""
        return self.twisted + 4 * self.crown / self.slab.width


@dataclass(frozen=True)
class _Square:
    """Where an edge stands square off its piece, metres.

    ``before``: of the edge before the place square off the piece's start, below 0 where that was cut off; ``whole``:
    between the places square off both ends; ``length``: of the edge.
    """

    before: float
    whole: float
    length: float

    def share(self, part: float) -> float:
        """Return the share of the edge at a share of the piece."""
        return (self.before + part * self.whole) / self.length

    def part(self, share: float) -> float:
        """Return the share of the piece at a share of the edge."""
        return (share * self.length - self.before) / self.whole


def middle_of(slab: LineSlab) -> tuple[float, ...]:
    """Return how long the middle of a slab is along each piece, metres: the mean of both edges, miters included."""
    pairs = zip(slab.left_edge.lengths, slab.right_edge.lengths, strict=True)
    return tuple((left + right) / 2 for left, right in pairs)
