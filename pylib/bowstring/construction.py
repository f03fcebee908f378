"""A construction: what a crew does, in order, as data.

Each step is made of a few moves (take a mark that exists, bisect, tape along a line, square off a line, cross two
tapes), names the marks that it uses and sets, and lists what is measured. Everything else walks over the steps: the
sheets, the drawings, the replay with rounded numbers, the checks.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field

from bowstring.geometry.plane import (
    Point,
    angle_between,
    cross_of_tapes,
    distance,
    left_of,
    middle,
    nearest_of_tapes,
    turned,
    unit_vector,
    where_line_leaves,
)

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

    ``held``: the length is what was found on the ground, so no rounding touches it. ``slide``: kept square by sliding
    the tip until both its distances to the line's ends read the same (the foot is the line's middle); otherwise by a
    triangle at the foot.
    """

    mark: str
    foot: str
    start: str
    end: str
    length: float
    left: bool = True
    held: bool = False
    slide: bool = False

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        length = self.length if self.held else number(self.length)
        out = left_of(unit_vector(at[self.start], at[self.end]))
        return at[self.foot].plus(out, length if self.left else -length)


@dataclass(frozen=True)
class CrossTapes:
    """Where two tapes meet; ``left`` as seen from the first mark toward the second.

    ``held``: the lengths are what was found on the ground, so no rounding touches them, and tapes that leave a gap
    were misread (``TapesDontMeet``). Otherwise a crew whose rounded tapes leave a gap takes the place between them.
    """

    mark: str
    first: str
    from_first: float
    second: str
    from_second: float
    left: bool = True
    held: bool = False

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        first, second = at[self.first], at[self.second]
        if self.held:
            point = cross_of_tapes(first, self.from_first, second, self.from_second, self.left)
            if point is None:
                raise TapesDontMeet(self.mark)
            return point
        lengths = number(self.from_first), number(self.from_second)
        point = cross_of_tapes(first, lengths[0], second, lengths[1], self.left)
        return nearest_of_tapes(first, lengths[0], second, lengths[1]) if point is None else point


@dataclass(frozen=True)
class TurnOff:
    """A length taped along a line of sight that was turned off a known direction, at an instrument.

    ``angle``: radians from the sight at ``back`` to the new mark, positive to the left (anticlockwise).
    """

    mark: str
    at: str
    back: str
    angle: float
    length: float

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        sight = turned(unit_vector(at[self.at], at[self.back]), self.angle)
        return at[self.at].plus(sight, number(self.length))


@dataclass(frozen=True)
class Sight:
    """Where a line of sight turned off at an instrument is met by a tape held at another mark, on its far side.

    ``angle`` as in ``TurnOff``; a tape too short to reach the line is held as near to it as it comes.
    """

    mark: str
    at: str
    back: str
    angle: float
    chained: str
    length: float

    def place(self, at: Mapping[str, Point], number: Number) -> Point:
        sight = turned(unit_vector(at[self.at], at[self.back]), self.angle)
        return where_line_leaves(at[self.at], sight, at[self.chained], number(self.length))


Move = Take | Bisect | Along | SquareOff | CrossTapes | TurnOff | Sight


@dataclass(frozen=True)
class Measure:
    """A distance that a step has the crew measure, in metres."""

    start: str
    end: str
    length: float


@dataclass(frozen=True)
class Turned:
    """An angle that a step has the crew turn: at ``vertex``, from the sight at ``start`` to ``end``, in radians.

    Between 0 and pi, without its hand: that is the step's sentence's.
    """

    vertex: str
    start: str
    end: str
    angle: float


@dataclass(frozen=True)
class Step:
    """One thing to do.

    Attributes:
        kind: names the step's sentence in the catalogue (``step.`` + kind).
        level: 0 while the ends are found, then the halving level.
        moves: how its marks come about, in order.
        measures: what is taped, each the distance of its marks.
        names: the marks that its sentence names, by their part in it: ``stake``, ``start``, ``end``, ``other``,
            ``peg`` (a driven mark that is no layout point).
        sagitta: the sagitta wanted at its stake in metres, negative where the string lies outside the arc; ``None``
            for a step that sets no stake by one.
        angles: what is turned at an instrument.
    """

    kind: str
    level: int
    moves: tuple[Move, ...]
    measures: tuple[Measure, ...] = ()
    names: Mapping[str, str] = field(default_factory=dict)
    sagitta: float | None = None
    angles: tuple[Turned, ...] = ()

    @property
    def stake(self) -> str | None:
        """The stake that this step drives, if it drives one."""
        return self.names.get("stake")

    @property
    def sets(self) -> tuple[str, ...]:
        """The marks that this step sets."""
        return tuple(move.mark for move in self.moves)

    @property
    def driven(self) -> tuple[str, ...]:
        """The marks of this step that are driven into the ground: its stake, its peg."""
        return tuple(self.names[part] for part in ("stake", "peg") if part in self.names)


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
        self.truth: Marks = {}
        """Where marks belong, for those of whom that is known: they stand there, free of the arithmetic's dust."""

    def do(
        self,
        kind: str,
        level: int,
        moves: Iterable[Move] = (),
        measure: Iterable[tuple[str, str]] = (),
        *,
        turn: Iterable[tuple[str, str, str]] = (),
        sagitta: float | None = None,
        **names: str,
    ) -> None:
        """Carry out one step: place its marks, take the measures between pairs of marks that now stand, and the
        angles at the first of three."""
        moves = tuple(moves)
        for move in moves:
            placed = move.place(self.at, exact)
            self.at[move.mark] = self.truth.get(move.mark, placed)
        measures = tuple(Measure(start, end, distance(self.at[start], self.at[end])) for start, end in measure)
        angles = tuple(
            Turned(vertex, back, mark, angle_between(self.at[vertex], self.at[back], self.at[mark]))
            for vertex, back, mark in turn
        )
        self.steps.append(Step(kind, level, moves, measures, names, sagitta, angles))
