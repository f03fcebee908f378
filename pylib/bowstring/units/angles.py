"""Angles in degrees, or degrees, minutes and seconds: read exactly, and shown both ways.

45.40 degrees is not 45°40': whatever is read is echoed in both forms.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from bowstring.errors import bad
from bowstring.units.echo import ECHO_LIMIT, quoted
from bowstring.units.numerals import (
    Part,
    Quantity,
    Refused,
    either,
    number_place,
    number_text,
    plain,
    scalar,
    scan,
    signed_text,
)
from bowstring.words import say

LARGEST_DEGREES = 10**6
"""No angle beyond this is read at all; a closer limit is the caller's."""
SMALLEST_DEGREES = Fraction(1, 10**9)

_WORDS = {
    "deg": ("°", "d", "deg", "degs", "degree", "degrees"),
    "min": ("'", "m", "min", "mins", "minute", "minutes"),
    "sec": ('"', "s", "sec", "secs", "second", "seconds"),
}
_UNIT_OF = {word: unit for unit, words in _WORDS.items() for word in words}
_SIZE = {"deg": Fraction(1), "min": Fraction(1, 60), "sec": Fraction(1, 3600)}
_ORDER = ("deg", "min", "sec")
_OTHER = {
    "rad",
    "rads",
    "radian",
    "radians",
    "gon",
    "gons",
    "grad",
    "grads",
    "gradian",
    "gradians",
    "%",
    "percent",
}
_NUDGE = Fraction(1, 10**8)
"""Seconds; so that an angle on the half second is rounded alike however it was computed."""


@dataclass(frozen=True)
class Angle:
    """An angle as it was read.

    Attributes:
        degrees: the correctly rounded value in degrees.
        place: one unit of the last second, minute or decimal typed, in degrees (45°40' gives 1/60); 0 for whole
            degrees.
        typed: what stood in the job, as text.
    """

    degrees: float
    place: float
    typed: str


def read_angle(value: object, field: str) -> Angle:
    r"""Return the angle that ``value`` stands for: degrees, or degrees, minutes and seconds with signs.

    Args:
        value: a number, a decimal text with or without a degree sign, or text like ``45° 40' 12"``.
        field: where the value stands, for the message.

    Raises:
        BadJob: for anything that isn't an angle above zero, or could be read two ways.

    >>> read_angle("45° 40' 12\"", "arc.central_angle").degrees
    45.67
    """
    typed = ""
    try:
        plain_value = scalar(value)
        if isinstance(plain_value, str):
            typed = plain_value.strip()
            exact, place, sign = _from_text(typed)
        else:
            typed = number_text(plain_value)
            exact, place, sign = (
                Fraction(plain_value),
                number_place(plain_value),
                "-" if plain_value < 0 else "",
            )
        _check(exact, sign)
    except Refused as why:
        values = {"typed": quoted(typed), **why.values}
        if "readings" in values:
            values["readings"] = _good_readings(why.readings)
        raise bad(field, f"angle.{why.name}", **values) from None
    return Angle(float(exact), float(place), typed)


def _check(exact: Fraction, sign: str) -> None:
    if sign:
        raise Refused("sign")
    if exact == 0:
        raise Refused("zero")
    if not SMALLEST_DEGREES <= exact <= LARGEST_DEGREES:
        raise Refused("size", largest=f"{LARGEST_DEGREES}", smallest=f"{float(SMALLEST_DEGREES):.9f}")


def _from_text(typed: str) -> tuple[Fraction, Fraction, str]:
    sign, text = signed_text(plain(typed))
    parts = scan(text)
    units = [_unit(part) for part in parts]
    numbers = [part.quantity for part in parts]
    if len(parts) == 1:
        if units[0] is None and numbers[0].shape in ("fraction", "mixed"):
            raise Refused("bare_fraction", readings=[f"{numbers[0].text}°"])
        if units[0] in ("min", "sec"):
            raise Refused("no_degrees")
        return numbers[0].value, numbers[0].place, sign
    if None in units:
        raise Refused("apart", readings=_readings(parts, units))
    order = [_ORDER.index(unit) for unit in units if unit]
    if order != list(range(len(parts))):
        raise Refused("order")
    if any(number.shape != "whole" for number in numbers[:-1]):
        raise Refused("broken_part")
    if any(number.value >= 60 for number in numbers[1:]):
        raise Refused("sixty")
    return *_together(numbers, [_SIZE[unit] for unit in units if unit]), sign


def _together(numbers: list[Quantity], sizes: list[Fraction]) -> tuple[Fraction, Fraction]:
    """Return the degrees of several parts, and one unit of the last one's last place, which a whole minute has too."""
    exact = sum((number.value * size for number, size in zip(numbers, sizes, strict=True)), Fraction(0))
    last = numbers[-1]
    return exact, (Fraction(1) if last.shape == "whole" else last.place) * sizes[-1]


def _unit(part: Part) -> str | None:
    if part.unit is None:
        return None
    if part.unit in _OTHER:
        raise Refused("other_unit", unit=quoted(part.unit))
    if part.unit not in _UNIT_OF:
        raise Refused("unit", unit=quoted(part.unit))
    return _UNIT_OF[part.unit]


def _readings(parts: list[Part], units: list[str | None]) -> list[str]:
    """Return what two or three numbers that miss a sign could mean."""
    if len(parts) > 3 or any(unit not in (None, _ORDER[place]) for place, unit in enumerate(units)):
        return []
    texts = [part.quantity.text for part in parts]
    found = ["".join(text + mark for text, mark in zip(texts, ("°", "'", '"'), strict=False))]
    # A degree sign or a colon has ended the degrees: 88°30 is no slip for 88.30.
    ended = units[0] is not None or parts[1].joiner == ":"
    if len(parts) == 2 and not ended and units[1] is None and all(part.quantity.shape == "whole" for part in parts):
        found.append(f"{texts[0]}.{texts[1]}°")
    return found


def _good_readings(readings: list[str]) -> str:
    """Return those readings that can be read in their turn, each with its other form behind it, joined.

    An example when there are none.
    """
    good: list[str] = []
    for reading in readings:
        told = reading if any(sign in "°'\"" or sign.isalpha() for sign in reading) else f"{reading}°"
        try:
            exact, _place, sign = _from_text(told)
            _check(exact, sign)
        except Refused:
            continue
        if len(told) <= ECHO_LIMIT:
            good.append(_with_other_form(told, exact))
    return either(good) if good else say("angle.example")


def _with_other_form(reading: str, exact: Fraction) -> str:
    """Return ``88°30' (= 88.5°)`` or ``88.30° (= 88°18'00")``, so that neither is taken for the other."""
    degrees = float(exact)
    other = show_decimal_degrees(degrees) if "'" in reading or '"' in reading else show_dms(degrees)
    same = float(_from_text(other)[0]) == degrees
    return say("angle.reading" if same else "angle.reading_about", reading=reading, other=other)


def show_dms(degrees: float, seconds: bool = True) -> str:
    r"""Return degrees as ``45°40'12"``, to the nearest second, or as ``45°40'`` to the nearest minute.

    Halves go away from zero; 60 of anything is carried. ``degrees`` must be finite.

    >>> show_dms(45.67), show_dms(45.67, seconds=False)
    ('45°40\'12"', "45°40'")
    """
    unit = 3600 if seconds else 60
    count = math.floor(abs(Fraction(degrees)) * unit + Fraction(1, 2) + _NUDGE)
    sign = "-" if degrees < 0 and count else ""
    whole, rest = divmod(count, unit)
    if not seconds:
        return f"{sign}{whole}°{rest:02d}'"
    minutes, left = divmod(rest, 60)
    return f"{sign}{whole}°{minutes:02d}'{left:02d}\""


def to_second(radians: float) -> float:
    r"""Return an angle as ``show_dms`` shows it, to the nearest second; both in radians.

    >>> show_dms(math.degrees(to_second(math.radians(12.34567)))), show_dms(12.34567)
    ('12°20\'44"', '12°20\'44"')
    """
    degrees = math.degrees(radians)
    count = math.floor(abs(Fraction(degrees)) * 3600 + Fraction(1, 2) + _NUDGE)
    return math.copysign(math.radians(count / 3600), radians)


def show_decimal_degrees(degrees: float) -> str:
    """Return degrees as ``45.4°``: four decimals at most, no trailing zeros. ``degrees`` must be finite."""
    count = math.floor(abs(Fraction(degrees)) * 10**4 + Fraction(1, 2) + _NUDGE)
    sign = "-" if degrees < 0 and count else ""
    whole, rest = divmod(count, 10**4)
    return f"{sign}{whole}.{rest:04d}".rstrip("0").rstrip(".") + "°"


def both_angles(degrees: float) -> str:
    """Return degrees both ways, ``45.4° = 45°24'00"``, so that neither is taken for the other."""
    return say("angle.both", decimal=show_decimal_degrees(degrees), dms=show_dms(degrees))
