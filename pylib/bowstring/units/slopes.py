"""Slopes as drawings give them: in percent, as a rise per foot or metre, and as one in so many."""

from __future__ import annotations

import re
from fractions import Fraction
from math import floor

from bowstring.errors import bad
from bowstring.units.numerals import TEXT_LIMIT, plain

STEEPEST = 25.0
"""Percent: nobody forms a slab by hand that is steeper."""

_NUMBER = r"(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)"
_PERCENT = re.compile(rf"({_NUMBER}) *%?")
_ONE_IN = re.compile(rf"1 *(?::|in) *({_NUMBER})")
_PER_FOOT = re.compile(
    rf"(?:(?:(?P<whole>[0-9]+)(?:-| +))?(?P<top>[0-9]+)/(?P<bottom>[0-9]+)|(?P<plain>{_NUMBER}))"
    r" *(?:\"|in\.?|inch|inches)? *(?:per|/) *(?:1 *)?(?:ft\.?|foot|')"
)
_PER_METRE = re.compile(rf"({_NUMBER}) *(mm|cm) *(?:per|/) *(?:1 *)?(?:m|metre|meter)")
_FRACTION = re.compile(r"(?:[0-9]+(?:-| +))?[0-9]+/[0-9]+")
_ASKED_APART = {"slope": "end", "cross": "edge"}
"""What is asked beside each slope: which end is the high one, which edge the low one."""
_IN_A_METRE = {"mm": 1000, "cm": 100}


def read_slope(value: object, field: str, most: float) -> Fraction:
    """Return the percent of a slope from 0 to ``most``: ``2``, ``2%``, ``1:48``, ``1 in 48``, ``1/4 in per ft``,
    ``1/4"/ft``, ``20 mm/m``; a plain number is percent.

    Raises ``BadJob`` for anything else, and for a fraction alone, which may be inches a foot or a percent.

    >>> read_slope("1/4 in per ft", "grade.slope", 25) == Fraction(25, 12), read_slope("1:50", "grade.slope", 25)
    (True, Fraction(2, 1))
    """
    percent = None
    _no_minus(value, field)
    if isinstance(value, str):
        text = plain(value).strip() if len(value) <= TEXT_LIMIT else ""
        if _FRACTION.fullmatch(text):
            raise bad(field, "job.slope_fraction", typed=text)
        percent = _from_text(text)
    elif not isinstance(value, bool) and isinstance(value, int | float) and 0 <= value <= most:
        percent = Fraction(value)
    if percent is None or not 0 <= percent <= most:
        raise bad(field, "job.slope", most=f"{most:g}")
    return percent


def _no_minus(value: object, field: str) -> None:
    """Raise ``BadJob`` for a slope with a minus: which end or edge is the high one is a question of its own."""
    asked = _ASKED_APART.get(field.rpartition(".")[2])
    below = isinstance(value, int | float) and not isinstance(value, bool) and value < 0
    if isinstance(value, str) and len(value) <= TEXT_LIMIT:
        text = plain(value).strip()
        below = text.startswith("-") and _from_text(text[1:].strip()) is not None
    if asked and below:
        raise bad(field, f"job.slope_minus_{asked}")


def is_plain(value: object) -> bool:
    """Tell whether a slope is given in percent."""
    return not isinstance(value, str) or _PERCENT.fullmatch(plain(value).strip()) is not None


def _from_text(text: str) -> Fraction | None:
    """The percent of a text, ``None`` where it isn't a slope."""
    if found := _PERCENT.fullmatch(text):
        return Fraction(found[1])
    if (found := _ONE_IN.fullmatch(text)) and Fraction(found[1]):
        return 100 / Fraction(found[1])
    if found := _PER_METRE.fullmatch(text):
        return 100 * Fraction(found[1]) / _IN_A_METRE[found[2]]
    found = _PER_FOOT.fullmatch(text)
    if found is None or (found["bottom"] and not int(found["bottom"])):
        return None
    inches = Fraction(found["plain"]) if found["plain"] else Fraction(int(found["top"]), int(found["bottom"]))
    return 100 * (int(found["whole"] or 0) + inches) / 12


def show_slope(percent: Fraction) -> str:
    """Return a slope's percent to three places, halves up, without zeros at the end.

    >>> show_slope(Fraction(25, 24))
    '1.042%'
    """
    thousandths = floor(percent * 1000 + Fraction(1, 2))
    text = f"{thousandths // 1000}.{thousandths % 1000:03d}".rstrip("0").rstrip(".")
    return f"{text}%"
