"""A length typed by somebody whose tape isn't in the job's unit: kept with its unit, so that all read it alike."""

from __future__ import annotations

from math import isclose

from bowstring.errors import BadJob
from bowstring.units.as_shown import as_shown
from bowstring.units.lengths import job_unit, read_length, said_unit
from bowstring.units.tape import Tape


def spelled(typed: str, shown: str, unit: str) -> str:
    r"""Return what was typed over the number ``shown``, by somebody who reads ``unit``, with its unit.

    What can't be read in that unit is left as it is, and can't be read in another one either.

    >>> spelled("3.65", "3.660 m", "m"), spelled("35", "40 mm", "m"), spelled("12' 6", "12' 6\"", "ft-in")
    ('3.65 m', '35 mm', "12' 6")
    """
    text = as_shown(typed, shown, unit)
    if not text or said_unit(text):
        return text
    try:
        read_length(text, unit, "read", zero=True)
    except BadJob as why:
        # Feet and inches or a decimal: a unit that has no inches would take it for the one without asking.
        return text.replace(",", " ") if why.key == "length.bare_comma" else text
    return f"{text} {job_unit(unit)}"


def typed_length(metres: float, tape: Tape) -> str:
    r"""Return a length for a field in a tape's unit: as the tape shows it where that is all of it, otherwise in metres
    to a float's last place.

    >>> from bowstring.units.tape import make_tape
    >>> typed_length(0.9144, make_tape("ft-in", None)), typed_length(1 / 3, make_tape("ft-in", None))
    ('3\' 0"', '0.3333333 m')
    """
    shown = tape.show(metres)
    same = isclose(read_length(shown, tape.unit, "offset").metres, metres, abs_tol=1e-9)
    return shown if same else f"{metres:.7f} m"
