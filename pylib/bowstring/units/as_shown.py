"""A reading without its unit, typed over a number that is shown in a small one: read the way that number is shown."""

from __future__ import annotations

import re

_WHOLE = re.compile(r"[0-9]+")
_INCHES = re.compile(r"(?:([0-9]+)[ -]+)?([0-9]+/[0-9]+)|([0-9]+)")
_DECIMAL = re.compile(r"[1-9][0-9]*[.,][0-9]")


def as_shown(typed: str, shown: str, unit: str) -> str:
    r"""Return what was typed, with the unit of the number ``shown`` beside it where it has none of its own.

    Only under a foot in feet and inches, and where a job in metres shows millimetres: there a bare number would
    otherwise be feet or metres. A decimal under 1, or with more than one place, is metres still.

    >>> as_shown("2 3/8", '2-7/8"', "ft-in")
    '2-3/8"'
    >>> as_shown("35", "40 mm", "m")
    '35 mm'
    >>> as_shown("0.035", "40 mm", "m")
    '0.035'
    >>> as_shown("35", "1.240 m", "m")
    '35'
    """
    text = typed.strip()
    if unit == "m" and shown.endswith(" mm"):
        return f"{text} mm" if _WHOLE.fullmatch(text) or _DECIMAL.fullmatch(text) else text
    found = _INCHES.fullmatch(text)
    if unit != "ft-in" or not shown.endswith('"') or "'" in shown or not found:
        return text
    whole, fraction, alone = found.groups()
    return f'{alone or (f"{whole}-{fraction}" if whole else fraction)}"'
