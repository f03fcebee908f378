"""What a move is, and the one that squares a length off a line.

A move sets one mark from others, and owns every fact of that: where the mark comes to stand, what is held on a tape,
which lines that takes on the ground, how many readings, and what goes wrong by how much. Whoever walks over a
construction asks the move, so that a new one is a class of this kind and nothing else.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import hypot, sqrt

from bowstring.construction.marks import Number
from bowstring.construction.scatter import Scatter, Shifts, Source, mean_of, weighted_sum
from bowstring.geometry.plane import Point, distance, left_of, unit_vector

PULL, STRING, SIGHT = "pull", "string", "sight"
"""Lines on the ground: a tape held, a string stretched, a line of sight."""

GAP, RADIUS = "gap", "radius"
"""What a length held on a tape is: the straight gap from one stake to the next, the radius. Empty: neither."""

Line = tuple[str, str, str]
"""A line on the ground: what it is, and the marks at its ends."""

ON, PAST, OFF, TAPE, MATCH, TURN, STRAIGHT = "on", "past", "off", "tape", "match", "turn", "straight"
"""What else a drawing shows: what is taped along a string, along a line carried on, square off a line, through the air;
two readings that must match; an angle; a straight that is on the ground."""

Drawn = tuple[str, str, str, str]
"""A line of a drawing: what it is, the marks at its ends, and the mark at which an angle is turned, else empty."""


class Move(ABC):
    """How one mark comes about.

    Attributes:
        mark: the mark that it sets.
        holds: what each length held on a tape is (``GAP``, ``RADIUS`` or empty), as far as that is said.
        keeps: the mark at which the first length stays on a hooked tape for all moves that keep it there; it is read
            once. Empty for none.
    """

    mark: str
    holds: tuple[str, ...] = ()
    keeps: str = ""

    @abstractmethod
    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        """Return where the mark comes to stand, each length held on a tape turned by ``number``."""

    @property
    @abstractmethod
    def pulls(self) -> tuple[float, ...]:
        """The lengths in metres that are held on a tape, in the order in which ``place`` asks for them.

        None for a middle (equal readings from both ends find it, so what is wrong with both cancels) and for what was
        found on the ground.
        """

    @property
    @abstractmethod
    def uses(self) -> tuple[str, ...]:
        """The marks that it starts from."""

    @property
    @abstractmethod
    def lines(self) -> tuple[Line, ...]:
        """Its pulls, strings and sights on the ground."""

    @property
    def drawn(self) -> tuple[Drawn, ...]:
        """What a drawing of it shows, in order."""
        return tuple((TAPE if kind == PULL else kind, start, end, "") for kind, start, end in self.lines)

    @property
    @abstractmethod
    def readings(self) -> int:
        """How many readings a crew takes, squaring included, without one that stays on a hooked tape.

        A middle is taped from both ends; an offset is one reading, kept square by the two half chords or by a
        triangle's three sides.
        """

    @abstractmethod
    def spread(self, scatter: Scatter) -> Shifts:
        """Return what moves its mark, and set the mark's ``mean_shift``, from those of the marks that it uses."""

    @abstractmethod
    def mirrored(self) -> Move:
        """Return the move done on the wrong hand: what goes off a line, a tape or a sight goes to its other side."""

    @property
    def on_line(self) -> bool:
        """Whether its mark is one of a line that is there, so that nothing puts it off that line."""
        return False

    def keeps_on(self, at: Mapping[str, Point]) -> list[tuple[Point, Point]]:
        """Return the lines on which it keeps its mark besides what is taped: of each a place, and the way across it."""
        return []

    def as_shown(self, turn: Number) -> Move:
        """Return the move with each angle that is turned in it as it is printed: ``turn`` makes it so, radians."""
        return self

    @property
    def squares(self) -> SquareOff | None:
        """The offset that is squared off a line in it, if any."""
        return None

    def apart(self, at: Mapping[str, Point], lengths: Sequence[float]) -> float:
        """Return by how many metres the tapes miss each other, or their line, when they are held at ``lengths``."""
        return 0.0


@dataclass(frozen=True)
class SquareOff(Move):
    """A length taped square off a line, from a foot on it; left or right as seen along the line.

    ``slide``: kept square by sliding
    the tip until both its distances to the line's ends read the same (the foot is the line's middle); otherwise by a
    triangle at the foot.
    """

    mark: str
    foot: str
    start: str
    end: str
    length: float
    left: bool = True
    slide: bool = False

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        length = number(self.length)
        out = left_of(unit_vector(at[self.start], at[self.end]))
        return at[self.foot].plus(out, length if self.left else -length)

    @property
    def pulls(self) -> tuple[float, ...]:
        return (self.length,)

    @property
    def uses(self) -> tuple[str, ...]:
        return self.foot, self.start, self.end

    @property
    def lines(self) -> tuple[Line, ...]:
        offset = (PULL, self.foot, self.mark)
        return (offset, (PULL, self.start, self.mark), (PULL, self.mark, self.end)) if self.slide else (offset,)

    @property
    def drawn(self) -> tuple[Drawn, ...]:
        own = ((STRING, self.start, self.end, ""), (OFF, self.foot, self.mark, ""))
        return (*own, (MATCH, self.start, self.mark, ""), (MATCH, self.mark, self.end, "")) if self.slide else own

    @property
    def readings(self) -> int:
        return 1 + (2 if self.slide else 3)

    @property
    def squares(self) -> SquareOff:
        return self

    def keeps_on(self, at: Mapping[str, Point]) -> list[tuple[Point, Point]]:
        """Square to its line through the foot; a tip that is slid is kept square by what is taped."""
        return [] if self.slide else [(at[self.foot], unit_vector(at[self.start], at[self.end]))]

    def mirrored(self) -> SquareOff:
        return SquareOff(self.mark, self.foot, self.start, self.end, self.length, not self.left, self.slide)

    def spread(self, scatter: Scatter) -> Shifts:
        return self._slid(scatter) if self.slide else self._squared(scatter)

    def _slid(self, scatter: Scatter) -> Shifts:
        """Halving: the tip is slid until both half chords read the same, so the middle's place along the string is
        not what keeps it square. With a half the string and h a half chord, the tip is aside by h/a of a reading."""
        start, end = scatter.at[self.start], scatter.at[self.end]
        u = unit_vector(start, end)
        n = left_of(u)
        half = distance(start, end) / 2
        length = self.length if self.left else -self.length
        read = scatter.errors.read
        base = {
            source: shift for source, shift in scatter.shifts[self.foot].items()
            if not (scatter.sources[source].kind == "read" and scatter.sources[source].mark == self.foot)
        }  # fmt: skip
        shifts = weighted_sum((1.0, base), (1.0, scatter.turning(self.start, self.end, n, -length / (2 * half), u)))
        self._taped(scatter, shifts, n, length)
        aside = hypot(half, length) / half * read
        scatter.add(shifts, Source("square", aside, self.start, self.end, self.mark), u)
        mean_shift = mean_of(scatter.mean_shift_of(self.start), scatter.mean_shift_of(self.end))
        # Aside on a tape that is hooked at the middle, the tip comes down its circle; where the offset is shorter than
        # the slip it comes down all the way, by about half of that.
        both = aside * aside + read**2
        down = both / (2 * max(abs(length), sqrt(both))) if both else 0.0
        scatter.mean_shift[self.mark] = mean_shift.plus(n, -down if length >= 0 else down)
        return shifts

    def _squared(self, scatter: Scatter) -> Shifts:
        """By the triangle at the foot that the sheet prints."""
        start, end = scatter.at[self.start], scatter.at[self.end]
        u, whole = unit_vector(start, end), distance(start, end)
        n = left_of(u)
        length = self.length if self.left else -self.length
        turning = scatter.turning(self.start, self.end, n, -length / whole, u)
        shifts = weighted_sum((1.0, scatter.shifts[self.foot]), (1.0, turning))
        self._taped(scatter, shifts, n, length)
        turn = scatter.turn_of_square(self.mark)
        way = Point(-u.x * length, -u.y * length)
        scatter.add(shifts, Source("square", turn, self.foot, self.mark, self.mark), way)
        variance = turn * turn + scatter.turn_variance(self.start, self.end, n, whole)
        scatter.mean_shift[self.mark] = scatter.mean_shift_of(self.foot).plus(n, -length * variance / 2)
        return shifts

    def _taped(self, scatter: Scatter, shifts: Shifts, n: Point, length: float) -> None:
        """The offset's own readings and scale; ``length`` is positive along the line's left ``n``."""
        scatter.add_pull(shifts, self.foot, self.mark, n if length >= 0 else Point(-n.x, -n.y))
        scatter.add_scale(shifts, n, length)
