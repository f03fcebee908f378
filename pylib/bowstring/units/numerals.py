"""Numbers as people write them: from typed text to exact fractions, before any unit is known.

Nothing here knows a length from an angle. A refusal is a ``Refused`` with the name of its message; the reader
that called turns it into a ``BadJob`` of its own topic.
"""

from __future__ import annotations

import math
import re
import unicodedata
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from bowstring.units.echo import quoted
from bowstring.words import say

TEXT_LIMIT = 60
"""The most characters that a length or an angle may be typed with."""

_WIDEST_INT = 200  # bits; far beyond any size, far below where Python refuses to write an int out


class Refused(Exception):
    """A value that can't be read: the message's name inside its topic, and what the message puts in."""

    def __init__(self, name: str, **values: object) -> None:
        super().__init__(name)
        self.name = name
        self.values = values

    @property
    def readings(self) -> list[str]:
        """What the value could mean, each written so that it means one thing; empty when that isn't known."""
        found = self.values.get("readings")
        return found if isinstance(found, list) else []


@dataclass(frozen=True)
class Quantity:
    """One number: its value, one unit of its last place after the point (0 without one), its text and its shape."""

    value: Fraction
    place: Fraction
    text: str
    shape: str  # "whole", "decimal", "fraction" or "mixed"
    comma: bool = False  # whether its decimal mark was a comma


@dataclass(frozen=True)
class Part:
    """One number of a typed text, the unit word or sign after it (None without one) and what joined it on."""

    quantity: Quantity
    unit: str | None
    joiner: str


# Signs that are typed for the same thing. Fullwidth and foreign digits are left alone, and so refused.
_SAME: dict[int, str] = {}
for _plain, _names in {
    "'": "\u2032\u2018\u2019\u00b4\u02b9",
    '"': "\u2033\u201c\u201d\u02ba",
    "-": "\u2212\u2010\u2011\u2012\u2013",
    "/": "\u2044\u2215",
    "°": "\u00ba\u02da",
    " ": "\t\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000",
}.items():
    _SAME.update(dict.fromkeys(map(ord, _names), _plain))

_NUMBER = r"\.?[0-9](?:[0-9.,]*[0-9])?"
_END = r"(?![0-9/]|[.,][0-9])"
_PART = re.compile(
    rf" *(?P<joiner>[-,:]?) *(?:(?:(?P<whole>{_NUMBER})(?:-| +))?(?P<top>[0-9]+)/(?P<bottom>[0-9]+){_END}"
    rf"|(?P<plain>{_NUMBER}){_END}) *(?P<unit>[a-z]+(?:\.(?![0-9]))?|['\"%°])?"
)
# After a unit a point or comma with a digit right behind it could end the unit or begin the number.
_CLINGING = re.compile(r"[a-z'\"°][.,][0-9]")
_EXPONENT = re.compile(r"[0-9.]e[-+]?[0-9]")
_POINT_GROUPS = re.compile(r"[1-9][0-9]{0,2}(?:\.[0-9]{3})+(?:,[0-9]+)?")
_COMMA_GROUPS = re.compile(r"[1-9][0-9]{0,2}(?:,[0-9]{3})+(?:\.[0-9]+)?")


def scalar(value: object) -> str | int | float:
    """Return ``value`` as a plain ``str``, ``int`` or finite ``float``.

    Raises ``Refused`` for every other kind of thing (``bool`` and None among them), for NaN and the
    infinities, for an int too wide to write out, for an empty text and one over ``TEXT_LIMIT`` characters.
    """
    kind = type(value)
    if kind is bool or not issubclass(kind, str | int | float):
        known = ((type(None), "nothing"), (bool, "truth"), (list, "list"), (dict, "group"))
        name = next((name for other, name in known if kind is other), "thing")
        raise Refused("kind", kind=say(f"length.kind_{name}"))
    if isinstance(value, str):
        text = str.__str__(value)
        if not text.strip():
            raise Refused("empty")
        if len(text) > TEXT_LIMIT:
            raise Refused("long", typed=quoted(text), limit=TEXT_LIMIT)
        return text
    if isinstance(value, int):
        whole = int.__int__(value)
        if whole.bit_length() > _WIDEST_INT:
            raise Refused("giant")
        return whole
    assert isinstance(value, float)
    number = float.__float__(value)
    if not math.isfinite(number):
        raise Refused("not_finite")
    return number


def number_text(number: int | float) -> str:
    """Return a number's shortest decimal writing, without an exponent."""
    return str(number) if isinstance(number, int) else f"{Decimal(repr(number)):f}"


def number_place(number: int | float) -> Fraction:
    """Return one unit of the last place after the point in a number's ``repr``: 40.0 gives 1/10, 40 gives 0."""
    if isinstance(number, int):
        return Fraction(0)
    exponent = Decimal(repr(number)).as_tuple().exponent
    assert isinstance(exponent, int)  # the number is finite
    return Fraction(10) ** exponent if exponent < 0 else Fraction(0)


def plain(text: str) -> str:
    """Return typed text in lower case with one sign for each thing: ``' " - / °``, spaces, and ASCII digits.

    Two feet signs become one inch sign; a vulgar fraction becomes ``1/2``, apart from the digits beside it.
    Raises ``Refused`` when a character is left that no number or unit is written with.
    """
    written: list[str] = []
    for sign in text:
        if "VULGAR FRACTION" in unicodedata.name(sign, ""):
            gap = "" if written and written[-1] == "-" else " "
            sign = f"{gap}{unicodedata.normalize('NFKC', sign)} "
        written.append(sign.translate(_SAME))
    clean = "".join(written).replace("''", '"').strip(" \r\n")
    for sign in clean:
        if not ((sign.isascii() and sign.isprintable()) or sign == "°"):
            raise Refused("character", sign=quoted(sign))
    return re.sub(" +", " ", clean.lower())


def signed_text(text: str) -> tuple[str, str]:
    """Return a leading ``+`` or ``-`` (or nothing) and the rest of a plain text."""
    return (text[0], text[1:].lstrip(" ")) if text[:1] in ("+", "-") else ("", text)


def scan(text: str) -> list[Part]:
    """Cut a plain text without its leading sign into numbers and their units.

    Raises ``Refused`` when something stands in it that is neither, and for a number that is wrongly written.
    """
    if _EXPONENT.search(text):
        raise Refused("exponent")
    if not any(sign in "0123456789" for sign in text):
        raise Refused("no_number")
    if _CLINGING.search(text):
        raise Refused("clinging")
    parts: list[Part] = []
    place = 0
    while place < len(text):
        found = _PART.match(text, place)
        if not found or (not parts and found["joiner"]):
            raise Refused("unreadable")
        unit = found["unit"]
        parts.append(Part(_quantity(found, text), unit.rstrip(".") if unit else None, found["joiner"]))
        place = found.end()
    return parts


def _quantity(found: re.Match[str], text: str) -> Quantity:
    if found["plain"]:
        return read_decimal(found["plain"], text)
    top, bottom, whole = int(found["top"]), int(found["bottom"]), found["whole"]
    if bottom == 0:
        raise Refused("zero_below")
    fraction, exact = Fraction(top, bottom), Fraction(0)
    if whole is None:
        return Quantity(fraction, exact, f"{top}/{bottom}", "fraction")
    if not whole.isdigit():
        raise Refused("mixed_decimal")
    if top >= bottom:
        carried, rest = int(whole) + top // bottom, top % bottom
        proper = f"{carried}-{Fraction(rest, bottom)}" if rest else f"{carried}"
        # The whole text again, and not the number alone: typed by itself that would be another value.
        raise Refused("improper", readings=[text[: found.start("whole")] + proper + text[found.end("bottom") :]])
    return Quantity(int(whole) + fraction, exact, f"{int(whole)}-{top}/{bottom}", "mixed")


def read_decimal(number: str, text: str) -> Quantity:
    """Return the number that digits, points and commas stand for.

    A point is the decimal mark. A comma is one where it can't group thousands; a comma with three digits
    behind it can be either, unless a zero stands before it, and is refused with ``text`` written both ways.
    """
    if number.isdigit():
        return Quantity(Fraction(int(number)), Fraction(0), number, "whole")
    points, commas = number.count("."), number.count(",")
    decimal, comma = "", False
    if commas == 0 and points == 1:
        decimal = number
    elif commas == 1 and points == 0:
        before, after = number.split(",")
        if len(after) == 3 and before != "0":
            if before.startswith("0"):
                raise Refused("grouping")
            both = [text.replace(number, number.replace(",", mark), 1) for mark in (".", "")]
            raise Refused("comma", readings=both)
        decimal, comma = f"{before}.{after}", True
    elif _COMMA_GROUPS.fullmatch(number):
        decimal = number.replace(",", "")
    elif _POINT_GROUPS.fullmatch(number):
        decimal, comma = number.replace(".", "").replace(",", "."), "," in number
    else:
        raise Refused("grouping")
    places = len(decimal.partition(".")[2])
    shape = "decimal" if places else "whole"
    return Quantity(Fraction(decimal), Fraction(1, 10**places) if places else Fraction(0), decimal, shape, comma)


def either(readings: list[str]) -> str:
    """Return readings joined by the catalogue's "or"."""
    joined = readings[0]
    for reading in readings[1:]:
        joined = say("length.or", one=joined, other=reading)
    return joined
