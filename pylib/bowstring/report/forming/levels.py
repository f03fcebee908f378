"""Elevations, rod readings and heights that agree as they are printed, and from which height they are read."""

from __future__ import annotations

from bowstring.job.grade import GradeSaid
from bowstring.report.forming.heights import Height, elevation, grid_of, height
from bowstring.units.tape import Tape
from bowstring.words import say

_SAME = 1e-9
"""Metres: a height no farther from a hundredth of a foot, or a millimetre, stands on it."""


def reading(tape: Tape, instrument: float, top: float) -> float:
    """Return what a rod reads on a top, metres, so that it and the top's elevation, each as it is printed, are the
    instrument's height as that is printed.

    It is within half a hundredth of a foot, or half a millimetre, of the exact reading where the instrument's height
    is said in whole ones; it is said of one that isn't which height is taken.
    """
    grid = grid_of(tape)
    return grid.round(instrument) - grid.round(top)


def over(tape: Tape, top: float, start: float) -> Height:
    """Return how a top is told over the one at the start: where that stands on a hundredth of a foot, or a millimetre,
    so that both are the top's elevation as it is printed; inches always by themselves, from the exact height."""
    grid = grid_of(tape)
    first = grid.round(start)
    paired = grid.round(top) - first if abs(first - start) <= _SAME else top - start
    return height(tape, top - start, paired)


def read_from(tape: Tape, said: GradeSaid, where: str) -> str:
    """Return the height of the instrument, and the top from which all heights are told, short; empty where no level is
    said. ``where`` that top is: ``A``, or ``start`` of a line of several pieces."""
    unit = "ft" if tape.feet else "m"
    told = {"level": f"{elevation(tape, said.start or 0.0)} {unit}"}
    if said.instrument is None:
        return "" if said.start is None else say(f"grades.from_{where}", **told)
    return say(f"grades.hi_{where}", hi=f"{elevation(tape, said.instrument)} {unit}", **told)


def read_short(tape: Tape, said: GradeSaid) -> str:
    """Return the same for the head of the outer form's column, in a few words."""
    if said.instrument is None and said.start is None:
        return ""
    told = {"level": elevation(tape, said.start or 0.0)}
    if said.instrument is None:
        return say("grades.from_short", **told)
    return say("grades.hi_short", hi=elevation(tape, said.instrument), **told)
