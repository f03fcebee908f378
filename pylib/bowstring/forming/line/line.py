"""A line of straights and arcs: where each piece lies, its stations, its joins, where it ends and whether it closes."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate
from math import pi, remainder, sin

from bowstring.forming.line.pieces import Piece, Straight
from bowstring.forming.line.runs import ORIGIN, Pose, Run
from bowstring.geometry.plane import distance

NO_KINK = 1e-7
"""Radians (a fiftieth of a second): a turn at a join that is less is a float's dust, and the pieces are tangent."""

CLOSED = 1e-3
"""Metres, and radians: a line that comes back so near to its start has no ends; a drawing's rounding leaves as much."""

TEN_FEET, THREE_METRES = 3.048, 3.0
"""Metres: over which a kink is told."""


@dataclass(frozen=True)
class Join:
    """Where one piece meets the next.

    Attributes:
        station: metres along the line from its start.
        place: where it is, with the heading of the piece before it.
        kink: by how much the next piece turns off, radians, above 0 to the left; 0 where they are tangent.
    """

    station: float
    place: Pose
    kink: float

    @property
    def tangent(self) -> bool:
        """Whether the line goes through without a kink."""
        return abs(self.kink) < NO_KINK

    def looks(self, length: float = TEN_FEET) -> float:
        """Return how far off a straightedge along the piece before the line stands ``length`` metres past the join.

        2 L sin(k/2): the chord between the ends of two legs of ``length`` at the angle k (elementary geometry).

        >>> from math import radians
        >>> from bowstring.forming.line.runs import ORIGIN
        >>> round(Join(0.0, ORIGIN, radians(2)).looks() / 0.3048 * 12, 2)  # inches in 10 ft
        4.19
        """
        return 2 * length * abs(sin(self.kink / 2))


@dataclass(frozen=True)
class Closing:
    """How a line comes back to its start: ``gap`` metres left between, ``turn`` radians to the start's own heading,
    above 0 to the left."""

    gap: float
    turn: float


@dataclass(frozen=True)
class Line:
    """Straights and arcs, each tangent to the one before unless it has a kink.

    Attributes:
        pieces: in order.
        start: where the line begins and which way it goes.

    Raises ``ValueError`` for no piece, for a kink before the first one, and for a kink of half a turn or more.
    """

    pieces: tuple[Piece, ...]
    start: Pose = ORIGIN

    def __post_init__(self) -> None:
        if not self.pieces:
            raise ValueError("a line needs a piece")
        if self.pieces[0].kink:
            raise ValueError("nothing stands before the first piece")
        if any(abs(piece.kink) >= pi for piece in self.pieces):
            raise ValueError("no line turns straight back")

    @cached_property
    def runs(self) -> tuple[Run, ...]:
        """Each piece where it lies."""
        runs = []
        place = self.start
        for piece in self.pieces:
            run = Run(place.turned(piece.kink), piece.length, piece.curvature)
            runs.append(run)
            place = run.end
        return tuple(runs)

    @cached_property
    def stations(self) -> tuple[float, ...]:
        """Metres along the line: of its start, of each join, of its end; one more than pieces."""
        return tuple(accumulate((piece.length for piece in self.pieces), initial=0.0))

    @property
    def length(self) -> float:
        """Metres along the line: the sum of its pieces."""
        return self.stations[-1]

    @property
    def end(self) -> Pose:
        """Where the line ends, and its heading there."""
        return self.runs[-1].end

    @cached_property
    def joins(self) -> tuple[Join, ...]:
        """Where pieces meet, in order; one less than pieces."""
        rows = zip(self.stations[1:-1], self.runs[:-1], self.pieces[1:], strict=True)
        return tuple(Join(station, run.end, piece.kink) for station, run, piece in rows)

    def run_on(self, past: float, after: float | None = None) -> Line:
        """Return the line run straight on past both its ends, so far, metres (``after``: past its end, where that is
        another length); as it is for 0, and where it comes back to its start: there it has no ends."""
        last = past if after is None else after
        if not (past or last) or self.is_closed:
            return self
        first, then = ((Straight(one),) if one else () for one in (past, last))
        return Line((*first, *self.pieces, *then), self.start.on(-past))

    @property
    def is_closed(self) -> bool:
        """Whether its end is its start, with the same heading."""
        closing = self.closing
        return closing.gap < CLOSED and abs(closing.turn) < CLOSED

    @property
    def closing(self) -> Closing:
        """How the end comes back to the start: a closed line has no gap and no turn, but for rounding."""
        turn = remainder(self.start.heading - self.end.heading, 2 * pi)
        return Closing(distance(self.end.point, self.start.point), turn)

    def place_of(self, station: float) -> tuple[int, float]:
        """Return the piece on which a station stands (the later one at a join), and how far along that piece, metres.

        Raises ``ValueError`` off the line.
        """
        if not 0 <= station <= self.length:
            raise ValueError("no such station on the line")
        piece = max(number for number in range(len(self.pieces)) if self.stations[number] <= station)
        return piece, station - self.stations[piece]

    def at(self, station: float) -> Pose:
        """Return the place at a station in metres, with the heading there (past the kink at a join).

        Raises ``ValueError`` off the line.
        """
        piece, along = self.place_of(station)
        return self.runs[piece].at(along)

    def reversed(self) -> Line:
        """Return the same line walked from its end to its start."""
        kinks = [0.0, *(-piece.kink for piece in reversed(self.pieces[1:]))]
        back = [piece.mirrored().kinked(kink) for piece, kink in zip(reversed(self.pieces), kinks, strict=True)]
        return Line(tuple(back), self.end.turned(pi))

    def mirrored(self) -> Line:
        """Return the line as a mirror along its first heading shows it: every left a right."""
        return Line(tuple(piece.mirrored() for piece in self.pieces), self.start)
