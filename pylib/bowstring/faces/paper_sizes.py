"""How large a side's rows and numbers can be: the largest type with which all of it stands on one page.

Pixels, 96 to the inch; a page is what both Letter and A4 have room for within their margins. Texts are measured as wide
as the widest face sets them, so that no face makes a side longer than its page.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from bowstring.drawings.boxes import text_width
from bowstring.drawings.svg import SIZES
from bowstring.sheet.setting import Row, Setting

PAGE_WIDE, PAGE_TALL = 688.0, 950.0
ROWS = (46, 40, 37, 34, 31, 29, 27, 25, 23, 21, 19, 17)
"""Heights of a row that the style has."""
BIG = (37, 34, 31, 29, 27, 25, 23, 21, 19, 18, 17, 16, 15, 14, 13)
"""Sizes of a row's numbers that the style has."""
PLANS = (190, 170, 150, 130, 110, 90, 70, 54)
"""Heights of the plan that the style has."""
MOST_ROWS = 22
"""Stakes that stand on the front where they have room; more of them go on over further pages."""
PER_PAGE = 30
_LEAST_PLAN = 110
"""Height of the plan where stakes go on over further pages anyhow: rather a row less than an arc too small to see."""
_MANY = 18
"""Rows over which the lowest plan shows nothing of the work."""

_PLAIN = 0.9  # a plain face beside a bold one
_CELL = 8.0
_SIDES = 62.0  # the columns of the step's number and of the box to tick
_AROUND = 4.0  # over and under a row's type, with its line
WORDS, _SMALL = 0.8, 0.62
"""Of a number's size: the type of a column that only names marks, and that of what stands in parentheses."""


def width(text: str, size: float) -> float:
    """Return how wide a line of text is in a type of a size."""
    return text_width(text, "word") * size / SIZES["word"]


def lines(text: str, size: float, room: float) -> int:
    """Return in how many lines a text stands."""
    return lines_of(width(text, size), room)


def lines_of(wide: float, room: float) -> int:
    """Return the same of a text that is so wide on one line."""
    return max(1, math.ceil(wide * _PLAIN / room))


def fitting(classes: Sequence[int], room: float) -> int:
    """Return the largest of some sizes that is within ``room``, the smallest at least."""
    return next((one for one in classes if one <= room), classes[-1])


@dataclass(frozen=True)
class Sizes:
    """The classes of a side: the height of a row, the size of its numbers, the plan's height, rows that it holds."""

    row: int
    big: int
    plan: int
    rows: int


def sizes(tables: Sequence[Setting], others: int, fixed: float) -> Sizes:
    """Return the sizes of a front: its tables, how many ``others`` are rows of the same height, all else ``fixed``."""
    every = [row for table in tables for row in table.rows]
    found = _sized(tables, every, others, fixed, _LEAST_PLAN if len(every) > MOST_ROWS else 0)
    if found.plan == PLANS[-1] and len(every) > _MANY:
        return _sized(tables, every, others, fixed, _LEAST_PLAN)
    return found


def _sized(tables: Sequence[Setting], every: Sequence[Row], others: int, fixed: float, least: int) -> Sizes:
    """Return the same with a plan no lower than ``least``: rows that then have no room go on over further pages."""
    shown = every[:MOST_ROWS]
    widest = min([BIG[0], *(_widest(table) for table in tables)])
    for plan in PLANS:
        room = PAGE_TALL - fixed - plan
        big = next((size for size in BIG if size <= widest and _tall(shown, others, size, 0) <= room), BIG[-1])
        fits = _tall(shown, others, big, ROWS[-1]) <= room
        if plan == least or (fits and big >= min(widest, _WANTED.get(plan, 0))):
            break
    row = next((row for row in ROWS if _tall(shown, others, big, row) <= room), ROWS[-1])
    while shown and _tall(shown, others, big, row) > room:
        shown = shown[:-1]
    return Sizes(row, big, plan, len(shown))


_WANTED = {190: 26, 170: 23, 150: 21, 130: 19, 110: 15, 90: 14}
"""The type that a plan has to leave room for: rather a lower plan than small numbers."""


def _tall(rows: Sequence[Row], others: int, big: int, row: int) -> float:
    """How high rows stand in a type of a size, none lower than ``row``; what is in parentheses has its own line."""
    each = (big * (1.0 + _SMALL * any("(" in cell for cell in one.cells)) + _AROUND for one in rows)
    return sum(max(row, tall) for tall in each) + others * max(row, min(big, 25) + _AROUND)


def _widest(table: Setting) -> int:
    """The largest type in which a table's columns stand beside each other."""
    room = PAGE_WIDE - _SIDES - _CELL * len(table.head)
    for size in BIG:
        if sum(_column(table, number, size) for number in range(len(table.head))) <= room:
            return size
    return BIG[-1]


def _column(table: Setting, number: int, size: float) -> float:
    head = max(width(word, 13.0) for word in table.head[number].split(" "))
    part = WORDS if number in table.words else 1.0
    return max([head, *(_cell(row.cells[number], size * part) for row in table.rows)])


def _cell(text: str, size: float) -> float:
    main, _, small = text.partition(" (")
    return max(width(main, size), width(small, size * _SMALL))


def tall(texts: Iterable[str], size: float, leading: float, room: float, gap: float = 0.0) -> float:
    """Return how high texts stand under each other."""
    return sum(lines(text, size, room) * leading + gap for text in texts)


BOLD, PLAIN = 0.905, 0.825
"""Of a text's ``width``, a bold one in the widest face of all: what the widest of those makes it that come before that
one in the style, bold and plain. Of the forms' sides every machine has one of those."""


def set_lines(text: str, size: float, room: float, part: float = PLAIN) -> int:
    """Return in how many lines a text stands on the forms' sides; ``part``: ``BOLD`` or ``PLAIN``."""
    return max(1, math.ceil(width(text, size) * part / max(room, 1.0) - 1e-6))


def set_tall(
    texts: Iterable[str], size: float, leading: float, room: float, *, gap: float = 0.0, part: float = PLAIN
) -> float:
    """Return how high texts stand under each other on the forms' sides."""
    return sum(set_lines(text, size, room, part) * leading + gap for text in texts)
