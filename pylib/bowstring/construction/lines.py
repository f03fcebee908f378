"""Marks on a line: one that is there, the middle of a string, a length along it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from bowstring.construction.marks import Number
from bowstring.construction.move import ON, PAST, PULL, STRING, Drawn, Line, Move
from bowstring.construction.scatter import Scatter, Shifts, Source, mean_of, weighted_sum
from bowstring.geometry.plane import Point, distance, left_of, middle, unit_vector


@dataclass(frozen=True)
class Take(Move):
    """A mark that is there already (or is set by means that this construction doesn't see)."""

    mark: str
    point: Point

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
        return ()

    @property
    def readings(self) -> int:
        return 0

    def mirrored(self) -> Take:
        return self

    def spread(self, scatter: Scatter) -> Shifts:
        return dict(scatter.shifts.get(self.mark, {}))


@dataclass(frozen=True)
class Bisect(Move):
    """The middle of a stretched string: found by equal readings from both ends, so no number enters."""

    mark: str
    start: str
    end: str

    @property
    def on_line(self) -> bool:
        return True

    def keeps_on(self, at: Mapping[str, Point]) -> list[tuple[Point, Point]]:
        return [(at[self.start], left_of(unit_vector(at[self.start], at[self.end])))]

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return middle(at[self.start], at[self.end])

    @property
    def pulls(self) -> tuple[float, ...]:
        return ()

    @property
    def uses(self) -> tuple[str, ...]:
        return self.start, self.end

    @property
    def lines(self) -> tuple[Line, ...]:
        return (STRING, self.start, self.end), (PULL, self.start, self.mark), (PULL, self.mark, self.end)

    @property
    def drawn(self) -> tuple[Drawn, ...]:
        halves = ((ON, self.start, self.mark, ""), (ON, self.mark, self.end, ""))
        return ((STRING, self.start, self.end, ""), *halves)

    @property
    def readings(self) -> int:
        return 2

    def mirrored(self) -> Bisect:
        return self

    def spread(self, scatter: Scatter) -> Shifts:
        """Both ends tape toward the middle: the scale cancels, and of two pulls' errors half the difference is left."""
        u = unit_vector(scatter.at[self.start], scatter.at[self.end])
        shifts = weighted_sum((0.5, scatter.shifts[self.start]), (0.5, scatter.shifts[self.end]))
        scatter.add(shifts, Source("read", scatter.errors.read, self.start, self.end, self.mark), u)
        scatter.add(shifts, Source("line", scatter.errors.line, self.start, self.end, self.mark), left_of(u))
        scatter.mean_shift[self.mark] = mean_of(scatter.mean_shift_of(self.start), scatter.mean_shift_of(self.end))
        return shifts


@dataclass(frozen=True)
class Along(Move):
    """A length taped from a mark along the line toward another one (negative: away from it, the line produced)."""

    mark: str
    start: str
    toward: str
    length: float
    holds: tuple[str, ...] = ()

    @property
    def on_line(self) -> bool:
        return True

    def keeps_on(self, at: Mapping[str, Point]) -> list[tuple[Point, Point]]:
        return [(at[self.start], left_of(unit_vector(at[self.start], at[self.toward])))]

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        length = number(abs(self.length)) * (1 if self.length >= 0 else -1)
        return at[self.start].plus(unit_vector(at[self.start], at[self.toward]), length)

    @property
    def pulls(self) -> tuple[float, ...]:
        return (abs(self.length),)

    @property
    def uses(self) -> tuple[str, ...]:
        return self.start, self.toward

    @property
    def lines(self) -> tuple[Line, ...]:
        return (STRING, self.start, self.toward), (STRING, self.start, self.mark)

    @property
    def drawn(self) -> tuple[Drawn, ...]:
        kind = ON if self.length >= 0 else PAST
        return (STRING, self.toward, self.start, ""), (kind, self.start, self.mark, "")

    @property
    def readings(self) -> int:
        return 1

    def mirrored(self) -> Along:
        return self

    def spread(self, scatter: Scatter) -> Shifts:
        """The line turns as its two marks stand off it; the mark goes round by its length."""
        start, toward = scatter.at[self.start], scatter.at[self.toward]
        u, whole = unit_vector(start, toward), distance(start, toward)
        n = left_of(u)
        turning = scatter.turning(self.start, self.toward, n, self.length / whole, n)
        shifts = weighted_sum((1.0, scatter.shifts[self.start]), (1.0, turning))
        scatter.add_pull(shifts, self.start, self.mark, u)
        scatter.add_scale(shifts, u, self.length)
        scatter.add(shifts, Source("line", scatter.errors.line, self.start, self.toward, self.mark), n)
        turn = scatter.turn_variance(self.start, self.toward, n, whole)
        scatter.mean_shift[self.mark] = scatter.mean_shift_of(self.start).plus(u, -self.length * turn / 2)
        return shifts
