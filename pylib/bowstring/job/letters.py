"""The letters that a drawing puts before a number: R15, BOW 5 1/4, CH 40'. Each quantity has its own."""

from __future__ import annotations

import re

from bowstring.errors import bad
from bowstring.units.echo import quoted
from bowstring.words import say

LETTERS = {
    "radius": ("r", "rad", "radius"),
    "diameter": ("d", "dia", "diam", "diameter", "ø", "⌀"),
    "degree": ("d", "da", "dc", "degree of curve"),
    "chord": ("c", "ch", "lc", "chord", "long chord"),
    "sagitta": ("m", "mo", "bow", "rise", "sag", "sagitta", "mid-ordinate", "mid ordinate", "middle ordinate"),
    "arc_length": ("l", "al", "arc", "arc length", "length of arc"),
    "central_angle": ("δ", "∆", "i", "delta", "angle", "central angle"),
    "tangent_length": ("t", "tan", "tangent", "tangent length"),
    "external": ("e", "ext", "external"),
}
"""What stands before each quantity's number on drawings in the US, in small letters and without points (common
practice, no source)."""

_BEFORE = re.compile(r"\s*([^\W\d_][^\d=:]*?|[⌀∆])\s*[=:]?\s*(?=\.?\d)", re.DOTALL)
"""Letters before a number, with an equals sign or a colon where one stands there."""


def without_letters(value: object, field: str, place: str) -> object:
    """Return a value without the letters of its own quantity; raises ``BadJob`` for those of another one.

    What isn't a text with letters before its number goes back as it is, to be read or refused as a number.

    >>> without_letters("R = 15'", "radius", "arc.radius"), without_letters("15 ft", "radius", "arc.radius")
    ("15'", '15 ft')
    """
    found = _BEFORE.match(value) if isinstance(value, str) else None
    if not isinstance(value, str) or not found:
        return value
    letters = " ".join(found[1].casefold().replace(".", "").split())
    if letters in LETTERS[field]:
        return value[found.end() :]
    others = [name for name, own in LETTERS.items() if letters in own]
    if others:
        raise bad(
            place,
            "arc.letters",
            letters=quoted(found[1].strip()),
            other=say(f"measure.{others[0]}"),
            own=say(f"measure.{field}"),
        )
    return value


def of_place(value: object, place: str) -> object:
    """Return a value without its quantity's letters where its place in a job is that of one of the arc's measures."""
    field = place.removeprefix("arc.")
    return without_letters(value, field, place) if place.startswith("arc.") and field in LETTERS else value
