"""How a name looks to somebody who reads it on a sheet: blank, or like another name.

The table is a short one of the Unicode Consortium's confusables data (Unicode Technical Standard 39, Unicode Security
Mechanisms): the letters of Greek and Cyrillic that look like a Latin one, and the signs that look like a digit, a dash
or a quote. Wide, mathematical and other compatibility forms go by Unicode's own normalization.
"""

from __future__ import annotations

import unicodedata
from itertools import zip_longest

_LIKE = {
    # Greek capitals, then small letters
    **dict(zip("ΑΒΕΖΗΙΚΜΝΟΡΤΥΧϹͿ", "ABEZHIKMNOPTYXCJ", strict=True)),
    **dict(zip("αγικνορσυϲϳχη", "ayikvopoucjxn", strict=True)),
    # Cyrillic capitals, then small letters
    **dict(zip("АВЕЅІЈКМНОРСТУҮХԚԜѴЗЧ", "ABESIJKMHOPCTYYXQWV34", strict=True)),
    **dict(zip("асԁеһіјкорԛѕѵԝхуүгпб", "acdehijkopqsvwxyyrn6", strict=True)),
    # Latin letters of other alphabets, and signs
    **dict(zip("ɑɡıȷſĸӀӏǀ∣¦", "agijfkIl|||", strict=True)),
    **dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u2043\u02d7", "-"),
    **dict.fromkeys("\u2018\u2019\u201b\u2032\u02b9\u02bc\u00b4\u0060", "'"),
    **dict.fromkeys("\u201c\u201d\u2033\u02ba", '"'),
}
_TABLE = str.maketrans(_LIKE)

_ONE_LOOK = tuple(map(frozenset, ("Il1|", "Oo0")))
"""Signs of which each may be taken for the others; a capital I may, a small i may not."""

_TWO_FOR_ONE = (("rn", "m"), ("vv", "w"))
"""Two letters that close together look like one."""

_NOTHING = frozenset("\u034f\u115f\u1160\u17b4\u17b5\u2800\u3164\uffa0")
"""Fillers and blanks that Unicode counts among letters, marks and symbols; see its Default_Ignorable_Code_Point."""

_SELECTORS = frozenset(map(chr, (*range(0xFE00, 0xFE10), *range(0x180B, 0x1810), *range(0xE0100, 0xE01F0))))
"""Variation selectors: they choose how the sign before them is drawn."""


def skeleton(name: str) -> str:
    """Return a name as it looks: without spaces and unseen signs, each letter as the Latin one that it looks like.

    >>> skeleton("Р\u043est\u3164 No\u00a01") == skeleton("Post No 1")
    True
    """
    plain = unicodedata.normalize("NFKC", name.translate(_TABLE)).translate(_TABLE)
    return "".join(sign for sign in plain if not _unseen(sign))


def _unseen(sign: str) -> bool:
    return sign.isspace() or sign in _NOTHING or sign in _SELECTORS or unicodedata.category(sign) == "Cf"


def blank(name: str) -> bool:
    """Whether a name shows nothing: no sign in it that stands for itself."""
    return all(unicodedata.category(sign).startswith("M") for sign in skeleton(name))


def alike(one: str, other: str) -> bool:
    """Whether somebody could take two names for one another, capitals or not.

    >>> alike("Pole 1", "pole l"), alike("Iron pin", "iron pin"), alike("Hall", "Hail")
    (True, True, False)
    """
    first, second = skeleton(one), skeleton(other)
    return first.casefold() == second.casefold() or _close(first, second) or _close(_apart(first), _apart(second))


def _close(one: str, other: str) -> bool:
    return all(
        first.casefold() == second.casefold() or any({first, second} <= look for look in _ONE_LOOK)
        for first, second in zip_longest(one, other, fillvalue="")
    )


def _apart(text: str) -> str:
    for two, single in _TWO_FOR_ONE:
        text = text.replace(single, two)
    return text
