"""A construction: what a crew does, in order, as data.

Each step is made of a few moves (take a mark that exists, bisect, tape along a line, square off a line, cross two
tapes), names the marks that it uses and sets, and lists what is measured. Everything else walks over the steps: the
sheets, the drawings, the replay with rounded numbers, the checks.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field

from bowstring.plane import Point, cross_of_tapes, distance, left_of, middle, unit_vector

Marks = dict[str, Point]
Number = Callable[[float], float]
"""Turns an exact length in metres into the number that the crew works with."""


def exact(length: float) -> float:
    """The number of somebody whose tape has every mark."""
    return length


class TapesDontMeet(ValueError):
    """Two measured lengths that leave a gap; the mark's name is its text."""


@dataclass(frozen=True)
class Take:
    """A mark that is there already (or is set by means that this construction doesn't see)."""

    mark: str
    point: Point

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return self.point


@dataclass(frozen=True)
class Bisect:
    """The middle of a stretched string: found by equal readings from both ends, so no number enters."""

    mark: str
    start: str
    end: str

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        return middle(at[self.start], at[self.end])


@dataclass(frozen=True)
class Along:
    """A length taped from a mark along the line toward another one (negative: away from it, the line produced)."""

    mark: str
    start: str
    toward: str
    length: float

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        length = number(abs(self.length)) * (1 if self.length >= 0 else -1)
        return at[self.start].plus(unit_vector(at[self.start], at[self.toward]), length)


@dataclass(frozen=True)
class SquareOff:
    """A length taped square off a line, from a foot on it; left or right as seen along the line.

    ``held``: the length is what was found on the ground, so no rounding touches it.
    """

    mark: str
    foot: str
    start: str
    end: str
    length: float
    left: bool = True
    held: bool = False

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        length = self.length if self.held else number(self.length)
        out = left_of(unit_vector(at[self.start], at[self.end]))
        return at[self.foot].plus(out, length if self.left else -length)


@dataclass(frozen=True)
class CrossTapes:
    """Where two tapes meet; ``left`` as seen from the first mark toward the second. Lengths found on the ground."""

    mark: str
    first: str
    from_first: float
    second: str
    from_second: float
    left: bool = True

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        point = cross_of_tapes(at[self.first], self.from_first, at[self.second], self.from_second, self.left)
        if point is None:
            raise TapesDontMeet(self.mark)
        return point


Move = Take | Bisect | Along | SquareOff | CrossTapes


@dataclass(frozen=True)
class Measure:
    """A distance that a step has the crew measure, in metres."""

    start: str
    end: str
    length: float


@dataclass(frozen=True)
class Step:
    """One thing to do.

    Attributes:
        kind: names the step's sentence in the catalogue (``step.`` + kind).
        level: 0 while the ends are found, then the halving level.
        moves: how its marks come about, in order.
        measures: what is measured, each the distance of its marks.
        names: the marks that its sentence names, by their part in it: ``stake``, ``start``, ``end``, ``other``.
        sagitta: the sagitta wanted at its stake in metres, negative where the string lies outside the arc; ``None``
            for a step that sets no stake.
    """

    kind: str
    level: int
    moves: tuple[Move, ...]
    measures: tuple[Measure, ...] = ()
    names: Mapping[str, str] = field(default_factory=dict)
    sagitta: float | None = None

    @property
    def stake(self) -> str | None:
        """The stake that this step drives, if it drives one."""
        return self.names.get("stake")

    @property
    def sets(self) -> tuple[str, ...]:
        """The marks that this step sets."""
        return tuple(move.mark for move in self.moves)


@dataclass(frozen=True)
class Stake:
    """A layout point: its name, the level that sets it, and the part of the arc's length from A at which it belongs."""

    name: str
    level: int
    fraction: float


def play(steps: Iterable[Step], number: Number = exact, start: Mapping[str, Point] | None = None) -> Marks:
    """Return where every mark comes to stand when the steps are done with ``number``.

    ``start`` holds marks that stand already; steps of level 0, which find the ends, are always exact: the ends are
    where the construction begins.
    """
    at: Marks = dict(start or {})
    for step in steps:
        for move in step.moves:
            at[move.mark] = move.place(at, number if step.level else exact)
    return at


class Recipe:
    """Writes a construction down while it is carried out exactly: what a method calls, step by step."""

    def __init__(self, marks: Mapping[str, Point] | None = None) -> None:
        self.steps: list[Step] = []
        self.at: Marks = dict(marks or {})

    def do(
        self,
        kind: str,
        level: int,
        moves: Iterable[Move] = (),
        measure: Iterable[tuple[str, str]] = (),
        *,
        sagitta: float | None = None,
        **names: str,
    ) -> None:
        """Carry out one step: place its marks, and take the measures between pairs of marks that now stand."""
        moves = tuple(moves)
        for move in moves:
            self.at[move.mark] = move.place(self.at, exact)
        measures = tuple(Measure(start, end, distance(self.at[start], self.at[end])) for start, end in measure)
        self.steps.append(Step(kind, level, moves, measures, names, sagitta))
