"""Boxes of text: how wide a line is, how a text is broken into lines, and what a rectangle covers.

The width of a text is estimated from the advance widths of DejaVu Sans Bold (read from the font's own table),
the widest face that the drawings' list of fonts can fall to: on every other one the text is narrower than its
box.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from bowstring.drawings.svg import SIZES, Point, visible
from bowstring.words.isolated import FSI, PDI, closed

Segment = tuple[Point, Point]

# thousandths of the text's size
# fmt: off
_ADVANCES = {
    264: "′", 306: "'", 343: "ijl", 348: " ", 365: "/\\|", 372: "IJ", 380: ",.·", 400: ":;", 415: "-",
    435: "f", 447: "″", 456: "!", 457: "()[]", 478: "t", 493: "r", 500: "_`°–", 521: '"', 523: "*", 580: "?",
    582: "z", 593: "c", 595: "s", 637: "L", 645: "x", 652: "vy", 665: "k", 675: "a", 678: "e", 682: "T",
    683: "EF", 687: "o", 696: "$0123456789", 712: "hnu{}", 716: "bdgpq", 720: "S", 724: "Y", 725: "Z",
    733: "P", 734: "C", 762: "B", 770: "R", 771: "X", 774: "AV", 775: "K", 812: "U", 821: "G", 830: "D",
    837: "HN", 838: "#+<=>^~×", 850: "OQ", 872: "&", 924: "w", 995: "M",
}
# fmt: on
_ADVANCE = {character: width / 1000 for width, characters in _ADVANCES.items() for character in characters}
_ADVANCE.update({FSI: 0.0, PDI: 0.0})
_UNKNOWN = 1.11  # W, m, fractions, and what the table lacks
ASCENT, DESCENT = 0.93, 0.24  # of the text's size, DejaVu Sans
LEADING = 1.25  # from one line of a text to the next, of its size
_INSIDE_LENGTH = re.compile(r"(?<=[0-9'′½¼¾⅛⅜⅝⅞]) (?=[0-9½¼¾⅛⅜⅝⅞]|(?:ft|in|m|cm|mm)(?![a-z]))|(?<=[0-9] ft) (?=[0-9])")


@lru_cache(4096)
def text_width(text: str, kind: str) -> float:
    """Return the width of a line of text in drawing units, rather too wide than too narrow."""
    return SIZES[kind] * advance(text)


def advance(text: str) -> float:
    """Return the width of a line of text in sizes of its font, rather too wide than too narrow."""
    return sum(_ADVANCE.get(character, _UNKNOWN) for character in visible(text))


def wrap(text: str, kind: str, width: float) -> list[str]:
    """Return the text in lines no wider than ``width``; a word that is too long alone is broken.

    A length is one word: ``9' 10-7/8"`` cut after its feet would be read as another length.
    """
    lines = [""]
    for word in (glued.replace("\n", " ") for glued in _glue(visible(text)).split(" ")):
        if not word:
            continue
        if lines[-1] and text_width(f"{lines[-1]} {word}", kind) <= width:
            lines[-1] += f" {word}"
            continue
        if lines[-1]:
            lines.append("")
        for character in word:
            if lines[-1] and text_width(lines[-1] + character, kind) > width:
                lines.append("")
            lines[-1] += character
    return list(closed(lines))


def stack(text: str, kind: str, width: float) -> list[str]:
    """Return a label's lines, as ``wrap`` does, but with no word or length broken: they may be wider."""
    words = (word.replace("\n", " ") for word in _glue(visible(text)).split(" "))
    return wrap(text, kind, max(width, *(text_width(word, kind) for word in words), 0.0))


def _glue(text: str) -> str:
    """Put a line feed for each blank inside a length: before its inches, its fraction or its unit."""
    return _INSIDE_LENGTH.sub("\n", text)


@dataclass(frozen=True)
class Box:
    """An upright rectangle, y down."""

    left: float
    top: float
    right: float
    bottom: float

    def overlaps(self, other: Box, gap: float = 0.0) -> bool:
        """Say whether two boxes share area, or come nearer than ``gap``."""
        return (
            self.left < other.right + gap
            and other.left < self.right + gap
            and self.top < other.bottom + gap
            and other.top < self.bottom + gap
        )

    def crosses(self, segment: Segment) -> bool:
        """Say whether a segment runs through the box (Liang and Barsky's clipping)."""
        (x, y), (x2, y2) = segment
        enter, leave = 0.0, 1.0
        across, down = (x, x2 - x, self.left, self.right), (y, y2 - y, self.top, self.bottom)
        for start, change, low, high in (across, down):
            if change == 0.0:
                if not low < start < high:
                    return False
                continue
            near, far = sorted(((low - start) / change, (high - start) / change))
            enter, leave = max(enter, near), min(leave, far)
        return enter < leave

    def nearest(self, point: Point) -> Point:
        """Return the point of the box that is nearest to a point."""
        return (min(max(point[0], self.left), self.right), min(max(point[1], self.top), self.bottom))

    def join(self, other: Box) -> Box:
        """Return the smallest box around both."""
        return Box(
            min(self.left, other.left),
            min(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
        )


def text_box(text: str, kind: str, at: Point, anchor: str = "middle") -> Box:
    """Return the box of a line of text whose baseline starts, is centred or ends at ``at``."""
    width, size = text_width(text, kind), SIZES[kind]
    left = at[0] - {"start": 0.0, "middle": width / 2, "end": width}[anchor]
    return Box(left, at[1] - ASCENT * size, left + width, at[1] + DESCENT * size)
