"""Stations as drawings write them: 10+00 in feet (stations of 100 ft), 0+100 in metres (of a kilometre).

Each is told from the digits after its plus: two in feet, three in metres, as route surveys write them in the US and
elsewhere (common practice).
"""

from __future__ import annotations

import re
from fractions import Fraction
from math import floor

from bowstring.errors import bad
from bowstring.units.numerals import TEXT_LIMIT, plain
from bowstring.units.sizes import FOOT

_STATION = re.compile(r"(?:sta\.?|station)? *([0-9]{1,4}) *\+ *([0-9]+)(\.[0-9]{1,6})?", re.IGNORECASE)
_AFTER = {True: 2, False: 3}
"""Digits after the plus, in feet and in metres."""


def read_station(value: object, field: str, *, feet: bool) -> float:
    """Return how far a station is past 0+00, metres; ``feet``: whether the job is in feet.

    Raises ``BadJob`` for what is no station, and for one that is written as the other unit's are.

    >>> round(read_station("10+12.5", "station", feet=True) / 0.3048, 6), read_station("0+100", "station", feet=False)
    (1012.5, 100.0)
    """
    text = plain(value).strip() if isinstance(value, str) and len(value) <= TEXT_LIMIT else ""
    found = _STATION.fullmatch(text)
    if found is None:
        raise bad(field, "station.form")
    whole, after, rest = found[1], found[2], found[3] or ""
    if len(after) != _AFTER[feet]:
        raise bad(field, "station.feet" if feet else "station.metres", typed=text)
    size = float(Fraction(f"{int(whole) * 10 ** len(after) + int(after)}{rest}"))
    return size * FOOT if feet else size


def show_station(metres: float, *, feet: bool) -> str:
    """Return a station, to a hundredth of a foot or a millimetre.

    >>> show_station(1012.504 * 0.3048, feet=True), show_station(99.9996, feet=False)
    ('10+12.50', '0+100.000')
    """
    places = 2 if feet else 3
    parts = floor((metres / FOOT if feet else metres) * 10**places + 0.5)
    size, rest = divmod(parts, 10**places)
    whole, after = divmod(size, 10 ** _AFTER[feet])
    return f"{whole}+{after:0{_AFTER[feet]}d}.{rest:0{places}d}"
