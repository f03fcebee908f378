"""Two tapes that cross."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bowstring.construction.marks import Number
from bowstring.construction.move import PULL, Line, Move
from bowstring.construction.scatter import Scatter, Shifts
from bowstring.geometry.plane import Point, cross_of_tapes, distance, nearest_of_tapes, unit_vector


@dataclass(frozen=True)
class CrossTapes(Move):
    """Where two tapes meet; ``left`` as seen from the first mark toward the second.

    A crew whose rounded tapes leave a gap takes the place between them.
    ``keeps``: the first mark, where its length stays on a hooked tape.
    """

    mark: str
    first: str
    from_first: float
    second: str
    from_second: float
    left: bool = True
    holds: tuple[str, ...] = ()
    keeps: str = ""

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        first, second = at[self.first], at[self.second]
        lengths = number(self.from_first), number(self.from_second)
        point = cross_of_tapes(first, lengths[0], second, lengths[1], self.left)
        return nearest_of_tapes(first, lengths[0], second, lengths[1]) if point is None else point

    @property
    def pulls(self) -> tuple[float, ...]:
        return self.from_first, self.from_second

    @property
    def uses(self) -> tuple[str, ...]:
        return self.first, self.second

    @property
    def lines(self) -> tuple[Line, ...]:
        return (PULL, self.first, self.mark), (PULL, self.second, self.mark)

    @property
    def readings(self) -> int:
        return 1 if self.keeps else 2

    def apart(self, at: Mapping[str, Point], lengths: Sequence[float]) -> float:
        base, (one, other) = distance(at[self.first], at[self.second]), lengths
        return max(base - one - other, abs(one - other) - base)

    def mirrored(self) -> CrossTapes:
        return CrossTapes(
            self.mark, self.first, self.from_first, self.second, self.from_second, not self.left,
            self.holds, self.keeps,
        )  # fmt: skip

    def spread(self, scatter: Scatter) -> Shifts:
        """Each tape says how far the mark is from its own end, and the two together where it is."""
        first, second, mark = scatter.at[self.first], scatter.at[self.second], scatter.at[self.mark]
        rows = (unit_vector(first, mark), unit_vector(second, mark))
        return scatter.solved(self.mark, rows, ((self.first, self.from_first), (self.second, self.from_second)))
