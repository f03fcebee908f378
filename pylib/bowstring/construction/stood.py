"""A mark that stands already, and not quite where its step would have set it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from bowstring.construction.marks import Number
from bowstring.construction.move import Line, Move, SquareOff
from bowstring.construction.scatter import Scatter, Shifts
from bowstring.geometry.plane import Point


@dataclass(frozen=True)
class Stood(Move):
    """A mark where the crew found it, by the readings of the move that was meant to set it.

    No number of a sheet moves it any more: it holds no pull, and its hand is what it is. What it is known by are
    readings all the same, so it is as uncertain as the move was.
    """

    mark: str
    point: Point
    planned: Move

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return self.point

    @property
    def pulls(self) -> tuple[float, ...]:
        return ()

    @property
    def uses(self) -> tuple[str, ...]:
        return ()

    @property
    def lines(self) -> tuple[Line, ...]:
        return self.planned.lines

    @property
    def readings(self) -> int:
        return self.planned.readings

    @property
    def squares(self) -> SquareOff | None:
        return self.planned.squares

    def spread(self, scatter: Scatter) -> Shifts:
        return self.planned.spread(scatter)

    def mirrored(self) -> Stood:
        return self
