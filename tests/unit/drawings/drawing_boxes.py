"""The rule that every drawing is held to: no text on a text, on a stake, or outside the picture."""

from __future__ import annotations

from itertools import combinations

from bowstring.drawings.boxes import Box, text_box
from unit.drawings.drawing_reader import Read

KINDS = ("big", "end", "name", "number", "word")
SMALLEST_HALF = 3.3  # half the side of the smallest stake's square, drawing units


def boxes(read: Read) -> list[tuple[str, Box]]:
    """The boxes of every text, from the written SVG alone."""
    found = []
    for words in read.words():
        kind = next(kind for kind in KINDS if f"bd-{kind}" in words.classes)
        found.append((words.text, text_box(words.text, kind, words.at, words.anchor)))
    return found


def box_of(read: Read, name: str) -> Box:
    """The box of the one name that a drawing writes for a stake or a mark."""
    (words,) = (words for words in read.words() if words.stake == name)
    kind = next(kind for kind in KINDS if f"bd-{kind}" in words.classes)
    return text_box(words.text, kind, words.at, words.anchor)


def assert_clear(read: Read) -> None:
    """No text on a text, none outside the picture, and no stake's square under a text."""
    every = boxes(read)
    for (one, box), (other, second) in combinations(every, 2):
        assert not box.overlaps(second), (one, other)
    left, top, right, bottom = read.box
    for text, box in every:
        assert box.left >= left and box.right <= right and box.top >= top and box.bottom <= bottom, text
    for name, places in read.stakes().items():
        for x, y in places:
            assert left < x < right and top < y < bottom
            square = Box(x - SMALLEST_HALF, y - SMALLEST_HALF, x + SMALLEST_HALF, y + SMALLEST_HALF)
            assert not [text for text, box in every if box.overlaps(square)], name
