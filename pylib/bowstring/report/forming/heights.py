"""How the top of a form is told: on the tape and in hundredths of a foot side by side, or in millimetres."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.units.tape import Tape, make_tape
from bowstring.words import say

FOOT = 0.3048

_FEET = make_tape("ft", "0.01 ft")
_METRES = make_tape("m", "1 mm")
_MILLIMETRES = make_tape("mm", "1 mm")
_HEIGHTS = {"ft": _FEET, "m": _METRES, "mm": _MILLIMETRES}


@dataclass(frozen=True)
class Height:
    """A height over a mark, told.

    ``shown``: says ``high`` or ``low`` but at the mark itself, in inches never with a bare sign: beside a low one a
    bare height is read as low, too; ``tight``: the same for a narrow column, a plus in place of the word; ``low``:
    whether it is below it by what is shown; ``feet``: hundredths of a foot, empty where ``shown`` says all.
    """

    shown: str
    tight: str
    low: bool
    feet: str


def height(tape: Tape, metres: float, paired: float | None = None) -> Height:
    """Return how a height over A's outer top is told: each text from the exact value by itself. ``paired``: the same
    height, metres, as it is told in hundredths of a foot or in millimetres, where it has to agree with a level."""
    paired = metres if paired is None else paired
    marks = tape_of_heights(tape)
    nearest = marks.round(metres if tape.unit == "ft-in" else paired)
    low = nearest < 0
    size = marks.show(abs(nearest)) if nearest else "0"
    shown = say("grades.low_by" if low else "grades.high_by", height=size) if nearest else size
    tight = f"+{size}" if nearest > 0 else shown
    return Height(shown, tight, low, hundredths(paired) if tape.unit == "ft-in" else "")


def size_of(tape: Tape, metres: float) -> str:
    """Return a difference of heights without its sign; less than a mark where it is nearer to none."""
    marks = tape_of_heights(tape)
    return marks.show(abs(metres)) if marks.round(metres) else marks.show_near(metres)


def elevation(tape: Tape, metres: float) -> str:
    """Return a level as a drawing has it: hundredths of a foot, or metres to the millimetre, without the unit."""
    return grid_of(tape).show_running(metres).rpartition(" ")[0]


def grid_of(tape: Tape) -> Tape:
    """Return the marks to which levels are told: hundredths of a foot, or millimetres."""
    return _FEET if tape.feet else _METRES


def hundredths(metres: float) -> str:
    """Return a height in hundredths of a foot, without the unit.

    >>> hundredths(-0.075 * 0.3048), hundredths(0.0)
    ('-0.08', '0.00')
    """
    return _FEET.show(metres).rpartition(" ")[0]


def tape_of_heights(tape: Tape) -> Tape:
    """Return the marks to which heights are told: the tape's own in inches, hundredths of a foot, millimetres."""
    return _HEIGHTS.get(tape.unit, tape)
