"""Lines of sight turned off at an instrument, and the tapes that meet them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bowstring.construction.marks import Number
from bowstring.construction.move import SIGHT, TAPE, TURN, Drawn, Line, Move
from bowstring.construction.scatter import Scatter, Shifts, Source, projected, weighted_sum
from bowstring.geometry.plane import Point, distance, left_of, turned, unit_vector, where_line_leaves


class AtInstrument(Move):
    """What the moves at an instrument share: a line of sight turned off a known direction, and one length taped."""

    at: str
    back: str
    angle: float
    length: float

    @property
    def pulls(self) -> tuple[float, ...]:
        return (abs(self.length),)

    @property
    def lines(self) -> tuple[Line, ...]:
        return (SIGHT, self.at, self.mark), (SIGHT, self.at, self.back)

    @property
    def drawn(self) -> tuple[Drawn, ...]:
        turned = ((SIGHT, self.at, self.back, ""), (TURN, self.back, self.mark, self.at))
        return (*turned, (TAPE, self.at, self.mark, ""))

    @property
    def readings(self) -> int:
        return 2

    def keeps_on(self, at: Mapping[str, Point]) -> list[tuple[Point, Point]]:
        return [(at[self.at], left_of(self.sight(at)))]

    def sight(self, at: Mapping[str, Point]) -> Point:
        """Return the direction of the line of sight, of length 1."""
        return turned(unit_vector(at[self.at], at[self.back]), self.angle)


@dataclass(frozen=True)
class TurnOff(AtInstrument):
    """A length taped along a line of sight that was turned off a known direction, at an instrument.

    ``angle``: radians from the sight at ``back`` to the new mark, positive to the left (anticlockwise).
    """

    mark: str
    at: str
    back: str
    angle: float
    length: float
    holds: tuple[str, ...] = ()

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return at[self.at].plus(self.sight(at), number(self.length))

    @property
    def uses(self) -> tuple[str, ...]:
        return self.at, self.back

    def as_shown(self, turn: Number) -> TurnOff:
        return TurnOff(self.mark, self.at, self.back, turn(self.angle), self.length, self.holds)

    def mirrored(self) -> TurnOff:
        return TurnOff(self.mark, self.at, self.back, -self.angle, self.length, self.holds)

    def spread(self, scatter: Scatter) -> Shifts:
        here, back, angle = scatter.at[self.at], scatter.at[self.back], scatter.errors.angle
        u, whole = unit_vector(here, back), distance(here, back)
        sight = turned(u, self.angle)
        across = left_of(sight)
        turning = scatter.turning(self.at, self.back, left_of(u), self.length / whole, across)
        shifts = weighted_sum((1.0, scatter.shifts[self.at]), (1.0, turning))
        scatter.add_pull(shifts, self.at, self.mark, sight)
        scatter.add_scale(shifts, sight, self.length)
        way = Point(across.x * self.length, across.y * self.length)
        scatter.add(shifts, Source("angle", angle, self.at, self.mark, self.mark), way)
        variance = scatter.turn_variance(self.at, self.back, left_of(u), whole) + angle**2
        scatter.mean_shift[self.mark] = scatter.mean_shift_of(self.at).plus(sight, -self.length * variance / 2)
        return shifts


@dataclass(frozen=True)
class Sight(AtInstrument):
    """Where a line of sight turned off at an instrument is met by a tape held at another mark, on its far side.

    ``angle`` as in ``TurnOff``; a tape too short to reach the line is held as near to it as it comes.
    """

    mark: str
    at: str
    back: str
    angle: float
    chained: str
    length: float
    holds: tuple[str, ...] = ()

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return where_line_leaves(at[self.at], self.sight(at), at[self.chained], number(self.length))

    @property
    def drawn(self) -> tuple[Drawn, ...]:
        *turned, (_tape, at, mark, _at) = super().drawn
        if self.chained == at:
            return super().drawn
        return (*turned, (SIGHT, at, mark, ""), (TAPE, self.chained, mark, ""))

    @property
    def uses(self) -> tuple[str, ...]:
        return self.at, self.back, self.chained

    def apart(self, at: Mapping[str, Point], lengths: Sequence[float]) -> float:
        return abs(self.sight(at).cross(at[self.chained].minus(at[self.at]))) - lengths[0]

    def as_shown(self, turn: Number) -> Sight:
        return Sight(self.mark, self.at, self.back, turn(self.angle), self.chained, self.length, self.holds)

    def mirrored(self) -> Sight:
        return Sight(self.mark, self.at, self.back, -self.angle, self.chained, self.length, self.holds)

    def spread(self, scatter: Scatter) -> Shifts:
        """A line of sight, and a tape from the stake before it."""
        here, back, mark = scatter.at[self.at], scatter.at[self.back], scatter.at[self.mark]
        sight, reach = unit_vector(here, mark), distance(here, mark)
        across, line = left_of(sight), left_of(unit_vector(here, back))
        rows = (across, unit_vector(scatter.at[self.chained], mark))
        turning = scatter.turning(self.at, self.back, line, reach / distance(here, back), across)
        moved = weighted_sum((1.0, projected(scatter.shifts[self.at], across)), (1.0, turning))
        way = Point(across.x * reach, across.y * reach)
        scatter.add(moved, Source("angle", scatter.errors.angle, self.at, self.mark, self.mark), way)
        return scatter.solved(self.mark, rows, ((None, 0.0), (self.chained, self.length)), ((0, moved),))
