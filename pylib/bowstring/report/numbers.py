"""Small ways to show numbers in sentences that a tape does not need."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.units.angles import show_dms
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape

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
    return f"{100 * part:.2g} %" if part < 1 else f"{100 * part:.0f} %"


def shown_measures(tape: Tape, measures: Mapping[str, float | None]) -> dict[str, str | None]:
    """Return the seven measures of an arc as texts: lengths to the nearest mark, the angle in degrees and minutes."""
    return {
        name: None if value is None else show_dms(value) if name == "central_angle" else tape.show(value)
        for name, value in measures.items()
    }
