"""Areas, volumes and lengths of a pour as they are called out: in the crew's units, rounded to the safe side."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor, isclose

from bowstring.forming.pour import CUBIC_YARD
from bowstring.units.tape import Tape, make_tape
from bowstring.words import say

FOOT, INCH = 0.3048, 0.0254
DUST = 1e-9
"""As a part of a step: what is as near to one stands on it."""

QUARTERS = 0.25
"""A yard is called out in quarters; a plant that sells other steps has them in decimals."""

_FINE = {True: make_tape("ft-in", "1/16 in"), False: make_tape("mm", "1 mm")}
_INCHES = make_tape("ft-in", None)


def down_to(value: float, step: float) -> float:
    """Return a value rounded down to whole steps."""
    return floor(value / step + DUST) * step


def up_to(value: float, step: float) -> float:
    """Return a value rounded up to whole steps.

    >>> round(up_to(1.01, 0.25), 9), up_to(1.0, 0.25)
    (1.25, 1.0)
    """
    return ceil(value / step - DUST) * step


def mark_up(tape: Tape, length: float) -> str:
    """Return the first mark that is no less than a length."""
    return tape.show(up_to(length, tape.mark))


def thick(tape: Tape, size: float) -> str:
    """Return a thickness as it is called out: in inches though places are in decimals of a foot; to 1/16 in or 1 mm
    where it stands on no mark.

    >>> thick(make_tape("mm", None), 0.1016), thick(make_tape("ft", None), 0.1016)
    ('102 mm', '4"')
    """
    by = inch_tape(tape)
    return by.show(size) if isclose(by.round(size), size, rel_tol=1e-9) else fine_tape(tape).show(size)


def most_of(tape: Tape, limit: float) -> str:
    r"""Return a limit that somebody keeps: down to a mark.

    >>> most_of(make_tape("ft-in", None), 3.0)
    '9\' 10"'
    """
    return tape.show_running(down_to(limit, tape.mark))


def form_step(tape: Tape) -> float:
    """Return how finely a place on a form is called out while concrete comes: an inch, a tenth of a foot, 5 cm."""
    return {"ft-in": INCH, "ft": FOOT / 10}.get(tape.unit, 0.05)


def fine_tape(tape: Tape) -> Tape:
    """Return the tape by which the base is measured: to 1/16 in or 1 mm."""
    return _FINE[tape.feet]


def inch_tape(tape: Tape) -> Tape:
    """Return the tape by which depths are called out: in inches, though places are in decimals of a foot."""
    return _INCHES if tape.unit == "ft" else tape


def area_text(area: float, feet: bool) -> str:
    """Return an area, square metres, like ``236.5 ft²`` or ``21.97 m²``."""
    return say("pour.feet2", area=f"{area / FOOT**2:,.1f}") if feet else say("pour.metres2", area=f"{area:,.2f}")


def volume_text(volume: float, yards: bool, places: int = 2) -> str:
    """Return a volume, cubic metres, like ``2.92 yd³`` or ``2.23 m³``."""
    number = f"{volume / CUBIC_YARD if yards else volume:,.{places}f}"
    return say("pour.yards3" if yards else "pour.metres3", volume=number)


def ordered_number(volume: float, step: float, yards: bool) -> str:
    """Return an order, cubic metres, as a number of what the plant sells; ``step`` in that, too.

    >>> ordered_number(3.25 * CUBIC_YARD, 0.25, True), ordered_number(2.5, 0.25, False)
    ('3-1/4', '2.50')
    """
    number = volume / CUBIC_YARD if yards else volume
    if not yards or not _whole(step / QUARTERS):
        places = max(2 if not yards else 0, next(size for size in range(5) if size == 4 or _whole(step * 10**size)))
        return f"{number:.{places}f}"
    whole, part = divmod(round(number * 4), 4)
    fraction = str(Fraction(part, 4)) if part else ""
    return "-".join(text for text in (str(whole) if whole or not part else "", fraction) if text)


def percent(share: float) -> str:
    """Return a share as percent, without a zero that says nothing."""
    return f"{share * 100:.4g}%"


def _whole(number: float) -> bool:
    return abs(number - round(number)) < DUST and number > DUST
