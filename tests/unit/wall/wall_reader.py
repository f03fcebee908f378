"""What a sheet of the wall shows at a stroke, read from its written SVG alone."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple
from xml.etree import ElementTree

from bowstring.drawings.boxes import Box
from bowstring.units.tape import make_tape
from bowstring.wall.board import Sheet, width_of
from bowstring.wall.shape import Given

SVG = "{http://www.w3.org/2000/svg}"
ASCENT, DESCENT = 0.74, 0.21  # of the text's size, in the wall's fonts


class Words(NamedTuple):
    """A line of text: what it says, its size, its box, and from which stroke to which it stands there."""

    text: str
    size: float
    box: Box
    start: int
    last: int
    classes: str


def words_of(sheet: Sheet) -> list[Words]:
    """Return every line of text on a sheet."""
    found = []
    for group in ElementTree.fromstring(sheet.svg).iter(f"{SVG}g"):
        start, last = int(group.get("data-s", "")), int(group.get("data-to", "999"))
        for text in group.iter(f"{SVG}text"):
            size, words = float(text.get("font-size", "")), text.text or ""
            x, y, wide = float(text.get("x", "")), float(text.get("y", "")), width_of(words, size)
            left = x - {"start": 0.0, "middle": wide / 2, "end": wide}[text.get("text-anchor", "")]
            box = Box(left, y - ASCENT * size, left + wide, y + DESCENT * size)
            found.append(Words(words, size, box, start, last, text.get("class", "")))
    return found


def texts(sheet: Sheet) -> list[str]:
    """Return what all lines say."""
    return [words.text for words in words_of(sheet)]


def varied() -> Iterator[tuple[str, Given]]:
    """Yield jobs that a wall shows: flat, past a half circle, in each unit, on either hand, one round and many."""
    feet, metres, tenths = make_tape("ft-in", "1/16 in"), make_tape("m", None), make_tape("ft", None)
    yield "the study's", Given(38 * 0.3048, 5.25 * 0.3048, feet, "Bandstand walk", False, 3)
    yield "flat", Given(120.0, 0.8, tenths, "A rather long title of somebody's job, with a comma", True, 2)
    yield "very flat", Given(90.0, 0.06, feet, "", False, 4)
    yield "half circle", Given(12.192, 6.096, feet, "Half circle", True, 3)
    yield "past it", Given(10.0, 7.0, metres, "Steep", False, 5)
    yield "far past it", Given(4.0, 9.0, make_tape("mm", None), "Nearly round", True, 6)
    yield "one round", Given(3.0, 0.5, make_tape("mm", None), "Small", False, 1)
    yield "large", Given(300.0, 41.7, feet, "W" * 60, False, 12)
    yield "metric", Given(12.0, 1.65, metres, "Metric", True, 3)
