"""Small ways to show numbers in sentences that a tape does not need."""

from __future__ import annotations

from bowstring.geometry.arc import Arc
from bowstring.report.forms.arc import ArcMeasures, ArcTexts
from bowstring.units.angles import show_dms
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape
from bowstring.words import say

_DECIMALS = {"ft-in": (FOOT, "ft", 4), "ft": (FOOT, "ft", 4), "m": (1.0, "m", 4), "mm": (0.001, "mm", 1)}


def decimal(tape: Tape, metres: float) -> str:
    """Return a length for working with by hand: feet or metres to four decimals, millimetres to one, without its
    unit."""
    size, _unit, places = _DECIMALS[tape.unit]
    return f"{metres / size:.{places}f}"


def decimal_unit(tape: Tape) -> str:
    """Return the unit of ``decimal``: ft, m or mm."""
    return _DECIMALS[tape.unit][1]


def percent(part: float) -> str:
    """Return a part of one as a percentage with two digits that mean something."""
    return f"{100 * part:.2g}%" if part < 1 else f"{100 * part:.0f}%"


def off_the_arc(tape: Tape, miss: float, shown: str | None = None) -> str:
    """Return a miss in words: how far, and on which side of the arc. Outward is positive; ``shown``: its size's text.

    >>> from bowstring.units.tape import make_tape
    >>> off_the_arc(make_tape("mm", None), -0.0052)
    '5 mm inside the arc'
    """
    key = "miss.none" if miss == 0 else "miss.inside" if miss < 0 else "miss.outside"
    return say(key, miss=tape.show_near(miss) if shown is None else shown)


def report_measures(arc: Arc) -> ArcMeasures:
    """Return the seven measures of an arc, metres and degrees."""
    return {
        "radius": arc.radius,
        "chord": arc.chord,
        "sagitta": arc.sagitta,
        "arc_length": arc.arc_length,
        "central_angle": arc.central_angle,
        "tangent_length": arc.tangent_length,
        "external": arc.external,
    }


def shown_measures(tape: Tape, arc: Arc) -> ArcTexts:
    """Return the seven measures of an arc as texts: lengths to the nearest mark, the angle in degrees and minutes."""
    return {
        "radius": tape.show(arc.radius),
        "chord": tape.show(arc.chord),
        "sagitta": tape.show(arc.sagitta),
        "arc_length": tape.show(arc.arc_length),
        "central_angle": show_dms(arc.central_angle),
        "tangent_length": None if arc.tangent_length is None else tape.show(arc.tangent_length),
        "external": None if arc.external is None else tape.show(arc.external),
    }
