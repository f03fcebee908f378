"""Lengths as a crew writes them, read into metres.

The foot is the international foot, 0.3048 m exactly (source: NIST and NOAA notices 84 FR 55562 (2019) and
85 FR 62698 (2020), which retire the US survey foot of 1200/3937 m from 1 January 2023). Everything is exact
in fractions until one last rounding to a float.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise

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

FOOT = Fraction(3048, 10000)
"""The international foot in metres."""
INCH = FOOT / 12
"""The inch in metres (0.0254)."""
UNITS = ("ft-in", "ft", "m", "mm")
"""The units that a job can be in."""
SMALLEST = Fraction(1, 10**6)
LARGEST = Fraction(10**8)
"""The sizes, in metres, between which a length must be."""

ALIKE = 10
"""Readings nearer than one part in this many could be taken for one another."""

_SIZE = {"ft": FOOT, "in": INCH, "m": Fraction(1), "cm": Fraction(1, 100), "mm": Fraction(1, 1000)}
_WORDS = {
    "ft": ("'", "ft", "foot", "feet"),
    "in": ('"', "in", "inch", "inches"),
    "m": ("m", "metre", "metres", "meter", "meters"),
    "cm": ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    "mm": ("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
}
_UNIT_OF = {word: unit for unit, words in _WORDS.items() for word in words}


@dataclass(frozen=True)
class Length:
    """A length as it was read.

    Attributes:
        metres: the correctly rounded value in metres.
        place: one unit of the last place typed after the point, in metres ("12.35 m" gives 0.01); 0 for a whole
            number, a fraction and whole inches, which are exact on a drawing.
        typed: what stood in the job, as text.
    """

    metres: float
    place: float
    typed: str


def read_length(
    value: object, unit: str, field: str, *, signed: bool = False, zero: bool = False, bare: bool = True
) -> Length:
    r"""Return the length that ``value`` stands for.

    Args:
        value: text with its own unit, or a number or decimal text in the job's unit.
        unit: the job's unit, one of ``UNITS``; a bare number in "ft-in" is feet.
        field: where the value stands, for the message.
        signed: whether it is a coordinate, which may have a sign and be as small as it likes.
        zero: whether 0 is allowed.
        bare: False refuses a number without a unit in "ft-in", where it could be feet or inches.

    Raises:
        BadJob: for anything that isn't a length, or could be read two ways; the remedy names the readings.
        ValueError: when ``unit`` isn't one of ``UNITS`` (the caller's mistake, not the job's).

    >>> read_length("6 ft 6-1/2 in", "ft-in", "arc.chord")
    Length(metres=1.9939, place=0.0, typed='6 ft 6-1/2 in')
    >>> read_length("12,5", "m", "arc.chord").metres
    12.5
    """
    if unit not in UNITS:
        raise ValueError(f"no such unit: {unit!r}")
    typed = ""
    try:
        plain_value = scalar(value)
        if isinstance(plain_value, str):
            typed = plain_value.strip()
            metres, last = _read(typed, unit, bare, signed, zero)
        else:
            typed = number_text(plain_value)
            exact, place, sign = _from_number(plain_value, typed, unit, bare)
            _check(exact, sign, signed, zero)
            metres, last = float(exact), float(place)
    except Refused as why:
        values = {"typed": quoted(typed), **why.values}
        good: dict[str, Fraction] = {}
        if "readings" in values:
            minus = "-" if signed and plain(typed).startswith("-") else ""
            good = _good_readings([minus + reading for reading in why.readings], unit, zero)
            values["readings"] = either(list(good)) if good else say("length.example")
            values["apart"] = _apart(list(good.values()), unit)
        refusal = bad(field, f"length.{why.name}", **values)
        refusal.readings = tuple(good)
        raise refusal from None
    return Length(metres, last, typed)


@lru_cache(512)  # a page reads every field again at each key, and one of them has changed
def _read(typed: str, unit: str, bare: bool, signed: bool, zero: bool) -> tuple[float, float]:
    """Return a text's length and the last place that was typed, metres."""
    exact, place, sign = _from_text(typed, unit, bare)
    _check(exact, sign, signed, zero)
    return float(exact), float(place)


def job_unit(unit: str) -> str:
    """Return the unit that a bare number is in: feet in "ft-in"."""
    return "ft" if unit == "ft-in" else unit


def said_unit(typed: str) -> str | None:
    """Return the unit that a text says itself, one of ``UNITS``; ``None`` where it says none, or is no length.

    >>> said_unit("12 ft 6 in"), said_unit("3.65 m"), said_unit("3.65")
    ('ft-in', 'm', None)
    """
    try:
        parts = scan(signed_text(plain(typed))[1])
        units = {_unit(part) for part in parts} - {None}
    except Refused:
        return None
    if "in" in units or (units == {"ft"} and parts[0].quantity.shape != "decimal"):
        return "ft-in"
    return next(("mm" if unit == "cm" else unit for unit in units), None)


def unit_size(unit: str) -> Fraction:
    """Return how many metres a bare number's one is, exactly: 0.3048 in "ft-in" and "ft", 1/1000 in "mm".

    >>> unit_size("ft-in")
    Fraction(381, 1250)
    """
    return _SIZE[job_unit(unit)]


def _from_number(number: int | float, text: str, unit: str, bare: bool) -> tuple[Fraction, Fraction, str]:
    if unit == "ft-in" and not bare:
        raise Refused("bare", readings=_with_units(text.lstrip("-"), unit))
    size = _SIZE[job_unit(unit)]
    return Fraction(number) * size, number_place(number) * size, "-" if number < 0 else ""


def _from_text(typed: str, unit: str, bare: bool) -> tuple[Fraction, Fraction, str]:
    sign, text = signed_text(plain(typed))
    parts = scan(text)
    units = [_unit(part) for part in parts]
    if units == [None]:
        exact, place = _bare(parts[0].quantity, unit, bare)
    elif len(parts) == 1:
        quantity, size = parts[0].quantity, _SIZE[units[0] or ""]
        exact, place = quantity.value * size, quantity.place * size
    elif len(parts) == 2 and units[0] == "ft" and units[1] in ("in", None):
        exact, place = _feet_and_inches(parts)
    else:
        raise _not_one_length(parts, units, unit)
    return (-exact if sign == "-" else exact), place, sign


def _good_readings(readings: list[str], unit: str, zero: bool) -> dict[str, Fraction]:
    """Return those readings that can be read in their turn, each with its metres."""
    good: dict[str, Fraction] = {}
    for reading in readings:
        for told in _with_its_unit(reading, unit):
            try:
                exact, _place, sign = _from_text(told, unit, bare=False)
                _check(exact, sign, signed=True, zero=zero)
            except Refused:
                continue
            if len(told) <= ECHO_LIMIT:
                good[told] = exact
    return good


def _apart(metres: list[Fraction], unit: str) -> str:
    """Return how far apart two readings are that look alike: one of them would put the stakes elsewhere."""
    ordered = sorted(metres)
    least = min((after - before for before, after in pairwise(ordered)), default=Fraction(0))
    if not 0 < ALIKE * least < ordered[-1]:
        return ""
    small = {"ft-in": "in", "ft": "ft"}.get(unit, "mm")
    return say("length.differ", apart=f"{float(least / _SIZE[small]):.3g}", unit=small)


def _with_its_unit(reading: str, unit: str) -> list[str]:
    """Return a reading with the unit that it may still miss at its end: both where it can be in either."""
    if reading[-1] in "'\"" or reading[-1].isalpha():
        return [reading]
    if any(sign == "'" or sign.isalpha() for sign in reading):
        return [f'{reading}"']
    return _with_units(reading, unit) if "/" in reading else [f"{reading} {job_unit(unit)}"]


def _check(exact: Fraction, sign: str, signed: bool, zero: bool) -> None:
    if sign and not signed:
        raise Refused("sign")
    if exact == 0:
        if not zero:
            raise Refused("zero")
    elif abs(exact) > LARGEST or (not signed and float(abs(exact)) < float(SMALLEST)):
        raise Refused("size", smallest=f"{float(SMALLEST):.6f}", largest=f"{int(LARGEST)}")


def _unit(part: Part) -> str | None:
    if part.unit is None:
        return None
    if part.unit not in _UNIT_OF:
        raise Refused("unit", unit=quoted(part.unit))
    return _UNIT_OF[part.unit]


def _bare(quantity: Quantity, unit: str, bare: bool) -> tuple[Fraction, Fraction]:
    """Return the value and last place after the point, in metres, of a number without a unit."""
    if quantity.shape in ("fraction", "mixed"):
        raise Refused("bare_fraction", readings=_with_units(quantity.text, unit))
    if unit == "ft-in":
        if not bare:
            raise Refused("bare", readings=_with_units(quantity.text, unit))
        if quantity.comma:
            feet, _, inches = quantity.text.partition(".")
            either_way = [f"{quantity.text} ft"]
            if int(inches) < 12:
                either_way.append(f"{feet}' {int(inches)}\"")
            raise Refused("bare_comma", readings=either_way)
    size = _SIZE[job_unit(unit)]
    return quantity.value * size, quantity.place * size


def _with_units(text: str, unit: str) -> list[str]:
    """Return the readings of a number without a unit: inches, and what the job's unit makes of it."""
    return [f"{text} in", f"{text} {job_unit(unit)}"]


def _feet_and_inches(parts: list[Part]) -> tuple[Fraction, Fraction]:
    feet, inches = parts[0].quantity, parts[1].quantity
    if feet.shape != "whole":
        raise Refused("broken_feet")
    if parts[1].unit is None:
        if inches.shape == "fraction":
            raise Refused("feet_fraction", readings=[f"{feet.text}' {inches.text}\"", f"{feet.text}-{inches.text} ft"])
        if inches.text.startswith("."):
            raise Refused("feet_fraction", readings=[f"{feet.text}' 0{inches.text}\"", f"{feet.text}{inches.text} ft"])
    if inches.value >= 12:
        raise Refused("twelve", readings=[f"{int(feet.value + inches.value // 12)}' {_below_a_foot(inches)}\""])
    return feet.value * FOOT + inches.value * INCH, inches.place * INCH


def _below_a_foot(inches: Quantity) -> str:
    """Return what is left of inches when whole feet are taken out, written as they were."""
    whole, part = int(inches.value % 12), inches.value % 1
    if inches.shape == "decimal":
        return f"{whole}.{inches.text.partition('.')[2]}"
    return f"{whole}-{part}" if part else f"{whole}"


def _not_one_length(parts: list[Part], units: list[str | None], unit: str) -> Refused:
    """Return why several numbers together are no length, with what they could mean when a unit is missing."""
    if None in units:
        return Refused("apart", readings=_readings(parts, units, unit))
    if not {"ft", "in"}.issuperset(units):
        return Refused("mixed_units")
    return Refused("repeated") if len(set(units)) < len(units) else Refused("order")


def _readings(parts: list[Part], units: list[str | None], unit: str) -> list[str]:
    """Return what two or three numbers that miss a unit could mean, each written as a length."""
    if sign_first := _inch_sign_before_fraction(parts, units):
        return [sign_first]
    if parts[0].quantity.shape != "whole" or any(known is not None for known in units[:-1]):
        return []
    if len(parts) == 2:
        return _readings_of_two(parts[0].quantity, parts[1], units[1], unit)
    return _readings_of_three([part.quantity for part in parts], units[2]) if len(parts) == 3 else []


def _inch_sign_before_fraction(parts: list[Part], units: list[str | None]) -> str:
    """Return the length of 6" 3/8, where the inch sign stands before its fraction, or nothing."""
    *feet, whole, fraction = (part.quantity for part in parts)
    if units[-2:] != ["in", None] or not _inches_with_fraction(whole, fraction):
        return ""
    if not feet:
        return f"{whole.text}-{fraction.text} in"
    if len(feet) == 1 and units[0] == "ft" and feet[0].shape == "whole":
        return f"{feet[0].text}' {whole.text}-{fraction.text}\""
    return ""


def _inches_with_fraction(whole: Quantity, fraction: Quantity) -> bool:
    return (whole.shape, fraction.shape) == ("whole", "fraction") and fraction.value < 1


def _readings_of_two(first: Quantity, part: Part, known: str | None, unit: str) -> list[str]:
    """Return the readings of a whole number and another: feet and inches, with a fraction, a decimal, thousands."""
    second, last = part.quantity, known or job_unit(unit)
    if second.shape == "fraction":
        return [f"{first.text}-{second.text} {last}"] if second.value < 1 else []
    found: list[str] = []
    if second.value < 12 and known in (None, "in"):
        found.append(f"{first.text}' {second.text}\"")
    if second.shape == "whole" and known != "in":
        found.append(f"{first.text}.{second.text} {last}")
        if len(second.text) == 3 and part.joiner == "":
            found.append(f"{first.text}{second.text} {last}")
    return found


def _readings_of_three(numbers: list[Quantity], known: str | None) -> list[str]:
    """Return the one reading of three numbers: feet, inches and a fraction of an inch."""
    feet, inches, fraction = numbers
    fits = known in (None, "in") and inches.value < 12 and _inches_with_fraction(inches, fraction)
    return [f"{feet.text}' {inches.text}-{fraction.text}\""] if fits else []
