"""Steps: what a crew does, in order, each made of a few moves."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from bowstring.construction.marks import Marks, Number, exact
from bowstring.construction.move import Move
from bowstring.geometry.plane import Point


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
        deflection: radians from the tangent to the line of sight to its stake, ``None`` where nobody asks for it.
        stands: its marks were set already and measured: its measures are what they read.
    """

    kind: str
    level: int
    moves: tuple[Move, ...]
    measures: tuple[Measure, ...] = ()
    names: Mapping[str, str] = field(default_factory=dict)
    sagitta: float | None = None
    angles: tuple[Turned, ...] = ()
    deflection: float | None = None
    stands: bool = False

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


def play(
    steps: Iterable[Step], number: Number = exact, start: Mapping[str, Point] | None = None, turn: Number = exact
) -> Marks:
    """Return where every mark comes to stand when the steps are done with ``number`` in place of each exact length in
    metres, and ``turn`` in place of each exact angle in radians. ``start`` holds marks that stand already.

    >>> from bowstring.construction import Along, Take
    >>> steps = [Step("ends", 0, (Take("A", Point(0.0, 0.0)), Take("B", Point(10.0, 0.0)))),
    ...          Step("along", 1, (Along("K", "A", "B", 3.337),))]
    >>> play(steps, lambda length: round(length, 2))["K"]
    Point(x=3.34, y=0.0)
    """
    at: Marks = dict(start or {})
    for step in steps:
        for move in step.moves:
            at[move.mark] = move.as_shown(turn).place(at, number)
    return at
