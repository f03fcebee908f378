"""When the chord found on the ground isn't the chord drawn: a slip of the tape first, then what to hold.

Nothing is re-solved while the difference looks like a slip. Then one thing is held (the radius, the sagitta, the arc
length or the end directions) and the arc is solved again over the chord that is there; what that changes, and the
kink it makes at each end, are told.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import degrees, radians, tan

from bowstring.geometry.arc import Arc
from bowstring.geometry.pairs import NoArc, Pair, arcs_of
from bowstring.units.sizes import FOOT, INCH, TEN_FEET

MOST_KINK = 0.5
"""Degrees: past this (an inch in ten feet) a sighted board shows a corner (common practice, no source)."""

MOST_CHANGE = 0.02
"""Part of the drawn radius or sagitta: past this it is another curve (common practice, no source)."""


@dataclass(frozen=True)
class TapeSlip:
    """What the difference between a found and a drawn length looks like; ``kind`` names its sentence."""

    kind: str
    would_be: float


@dataclass(frozen=True)
class Fit:
    """The arc over the found chord with one thing held.

    Attributes:
        hold: what was held.
        arc: the arc, or ``None`` where none has both.
        kink: degrees by which each end's direction turns from the drawn one (positive: the arc leaves the chord
        steeper).
        kink_in_ten: metres off line after ten feet.
        buildable: whether it is within the limits.
    """

    hold: str
    arc: Arc | None
    kink: float
    kink_in_ten: float
    buildable: bool


def slips(
    drawn: Arc, staked: Arc, found: float, swapped: Sequence[float], near: float, feet: bool
) -> Iterator[TapeSlip]:
    """Yield each slip that would explain the difference between the drawn chord and the one found, in metres.

    With an offset a chord nearer to that of the ``staked`` arc was likely taped between the stakes.
    ``swapped`` are readings that swapped neighbouring digits of the drawn chord would give; ``near`` is how close a
    slip must come to explain it; ``feet``: the tape reads feet. A difference under ``near`` is none.
    """
    difference = found - drawn.chord
    if abs(difference) <= min(near, INCH / 2):
        return
    whole = (("foot", FOOT), ("foot", 2 * FOOT), ("inch", INCH)) if feet else (("metre", 1.0), ("decimetre", 0.1))
    for kind, size in whole:
        if abs(abs(difference) - size) <= min(near, size / 8):
            yield TapeSlip(kind, drawn.chord + (size if difference > 0 else -size))
    if abs(staked.chord - drawn.chord) > near and abs(found - staked.chord) < abs(difference):
        yield TapeSlip("stakes_chord", staked.chord)
    others = [("arc_for_chord", drawn.arc_length)]
    if feet:
        others += [
            ("tenths_as_inches", tenths_as_inches(drawn.chord)),
            ("inches_as_tenths", inches_as_tenths(drawn.chord)),
        ]
    for kind, would_be in (*others, *(("swapped_digits", reading) for reading in swapped)):
        if abs(would_be - drawn.chord) > near and abs(found - would_be) <= min(near, abs(would_be - drawn.chord) / 8):
            yield TapeSlip(kind, would_be)


def tenths_as_inches(length: float) -> float:
    """Return the length that comes out when the decimals of a foot are taken for inches: 40.54 ft as 40 ft 5.4 in.

    >>> round(tenths_as_inches(40.54 * FOOT) / INCH, 6)  # 40 ft 5.4 in
    485.4
    """
    feet = int(length / FOOT)
    return feet * FOOT + (length / FOOT - feet) * 10 * INCH


def inches_as_tenths(length: float) -> float:
    """Return the length that comes out when inches are taken for tenths of a foot: 40 ft 6 in as 40.6 ft."""
    feet = int(length / FOOT)
    return feet * FOOT + (length - feet * FOOT) / INCH / 10 * FOOT


def fit_chord(drawn: Arc, chord: float, hold: str) -> Fit:
    """Return the arc over a found chord in metres with one thing of the drawn arc held (see ``HOLDS``).

    >>> arc = Arc.of_angle(25.0, 0.9)
    >>> round(fit_chord(arc, arc.chord, "radius").arc.half_angle, 6)
    0.9
    """
    pair: Pair
    if hold == "radius":
        pair, values = ("radius", "chord"), (drawn.radius, chord)
    elif hold == "sagitta":
        pair, values = ("chord", "sagitta"), (chord, drawn.sagitta)
    elif hold == "arc_length":
        pair, values = ("chord", "arc_length"), (chord, drawn.arc_length)
    else:
        pair, values = ("chord", "central_angle"), (chord, drawn.central_angle)
    try:
        arcs = arcs_of(pair, *values)
    except NoArc:
        return Fit(hold, None, 0.0, 0.0, False)
    arc = min(arcs, key=lambda one: abs(one.half_angle - drawn.half_angle))
    kink = degrees(arc.half_angle - drawn.half_angle)
    changed = max(abs(arc.radius / drawn.radius - 1), abs(arc.sagitta / drawn.sagitta - 1))
    buildable = abs(kink) <= MOST_KINK and changed <= MOST_CHANGE
    return Fit(hold, arc, kink, TEN_FEET * tan(radians(kink)), buildable)
