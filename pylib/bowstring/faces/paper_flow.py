"""Titles, tables and sentences of unlike length set on sides of paper: what has no room goes on over the next side.

A table that is narrow stands in several columns beside each other, as in a newspaper.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from html import escape
from typing import TypeAlias

from bowstring.drawings.boxes import stack
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_sizes import PAGE_WIDE, lines, tall, width
from bowstring.report.forms.build_lined import LinedTable
from bowstring.sheet.markup import marked
from bowstring.words.stars import unstarred

ROWS = (25, 22, 19)
"""Heights of a row that the style has for these sides, and the type in each."""
TYPES = {25: 16.0, 22: 14.0, 19: 12.5}

_TITLE, _GAP = 21.0, 7.0
_HEAD_TYPE, _WRAPS = 13.0, 80.0
"""The heads' type; pixels from which on a text that is no length may stand in two lines."""
_CELL, _BETWEEN = 11.0, 14.0
_FEWEST, _SHORT, _MOST_COLUMNS = 4, 8, 3
"""Rows of a column beside another one, at least; of a table beside another one, at most; columns."""
_TOLD, _TOLD_LEADING = 14.0, 17.0


@dataclass(frozen=True)
class Text:
    """A sentence; ``strong``: what a part comes to, or a stop; ``title``: the part's name over it."""

    text: str
    strong: bool = False
    title: bool = False


Block: TypeAlias = "Text | LinedTable"


def sides(blocks: Sequence[Block], row: int, rooms: Sequence[float], other: float) -> list[str]:
    """Return what stands on each side as HTML: the first sides have ``rooms`` for it, pixels, any other one ``other``.

    Each of the first sides is there, empty if need be.
    """
    made: list[list[str]] = [[]]
    left = rooms[0]
    for part in _parts(blocks, row):
        html, high = part.whole()
        while high > left:
            some, rest = part.cut(left)
            if some:
                made[-1].append(some)
            if not some and not made[-1] and len(made) > len(rooms):
                break  # it has a side of its own, and is too long for that: as much as there is
            made.append([])
            left = rooms[len(made) - 1] if len(made) <= len(rooms) else other
            part = rest
            html, high = part.whole()
        made[-1].append(html)
        left -= high
    return ["".join(side) for side in made]


@dataclass(frozen=True)
class _Part:
    """What stays together: sentences, and under them tables beside each other, or one that may be cut; ``row``: how
    high its rows are."""

    texts: tuple[Text, ...]
    tables: tuple[LinedTable, ...]
    row: int

    def whole(self) -> tuple[str, float]:
        """Return all of it with its height."""
        texts = "".join(_text(text) for text in self.texts)
        high = sum(_text_tall(text) for text in self.texts) + _GAP
        made = [_columns_of(table, self.row, len(self.tables) > 1) for table in self.tables]
        if not made:
            return f"<div>{texts}</div>", high
        beside = f'<div class="band">{"".join(html for html, _high in made)}</div>' if len(made) > 1 else made[0][0]
        return f"<div>{texts}{beside}</div>", high + max(tall for _html, tall in made)

    def cut(self, room: float) -> tuple[str, _Part]:
        """Return as much as stands within a height, and the rest; nothing where that is less than a few rows."""
        if len(self.tables) != 1:
            return "", self
        (table,) = self.tables
        for count in range(len(table["rows"]) - 1, _FEWEST - 1, -1):
            html, high = _Part(self.texts, (_rows_of(table, 0, count),), self.row).whole()
            if high <= room:
                return html, _Part((), (_rows_of(table, count, None),), self.row)
        return "", self


def _rows_of(table: LinedTable, first: int, last: int | None) -> LinedTable:
    return {**table, "rows": table["rows"][first:last]}


def _parts(blocks: Sequence[Block], row: int) -> Iterator[_Part]:
    """What stays together; tables that follow each other and have room beside each other stand so."""
    texts: list[Text] = []
    tables: list[LinedTable] = []
    for block in blocks:
        if isinstance(block, Text):
            if tables or (block.title and texts):
                yield _Part(tuple(texts), tuple(tables), row)
                texts, tables = [], []
            texts.append(block)
        elif block["rows"]:
            if tables and not _have_room([*tables, block], row):
                yield _Part(tuple(texts), tuple(tables), row)
                texts, tables = [], []
            tables.append(block)
    if texts or tables:
        yield _Part(tuple(texts), tuple(tables), row)


def _have_room(tables: Sequence[LinedTable], row: int) -> bool:
    """Whether short tables stand beside each other."""
    wide = sum(_wide(table, row) + _BETWEEN for table in tables) - _BETWEEN
    return wide <= PAGE_WIDE and all(len(table["rows"]) <= _SHORT for table in tables)


def _wide(table: LinedTable, row: int) -> float:
    return sum(wide + _CELL for wide in _columns_wide(table, row))


def _columns_wide(table: LinedTable, row: int) -> list[float]:
    """How wide each column is at least: what is long may be broken, but no length."""
    every = [(table["heads"], _HEAD_TYPE), *((one, TYPES[row]) for one in table["rows"])]
    return [max(_least(one[column], size) for one, size in every) for column in range(len(table["heads"]))]


def _least(text: str, size: float) -> float:
    text = unstarred(text)
    longest = max(width(piece, size) for piece in stack(text, "number", 0.0))
    return max(longest, min(width(text, size), _WRAPS))


def _tall(table: LinedTable, row: int, columns: int) -> float:
    """How high the heads and rows of a table stand that has its share of the page."""
    more = max(1.0, PAGE_WIDE / columns / _wide(table, row) if columns > 1 else 1.0)
    wide = [one * more for one in _columns_wide(table, row)]
    heads = max(lines(head, _HEAD_TYPE, room) for head, room in zip(table["heads"], wide, strict=True)) * 15.0 + 6.0
    rows = [row + TYPES[row] * 1.1 * (_lines(one, TYPES[row], wide) - 1) for one in table["rows"]]
    each = -(-len(rows) // columns)
    return heads + max(sum(rows[start : start + each]) for start in range(0, len(rows), each))


def _lines(cells: Sequence[str], size: float, wide: Sequence[float]) -> int:
    """In how many lines a row stands."""
    return max(lines(unstarred(cell), size, room) for cell, room in zip(cells, wide, strict=True))


def _columns_of(table: LinedTable, row: int, beside: bool) -> tuple[str, float]:
    """A table under its title, in as many columns as stand beside each other, with its height; in one where another
    table stands beside it."""
    rows = table["rows"]
    room = int((PAGE_WIDE + _BETWEEN) / (_wide(table, row) + _BETWEEN))
    columns = 1 if beside else max(1, min(room, len(rows) // _FEWEST, _MOST_COLUMNS))
    each = -(-len(rows) // columns)
    title = f"<h3>{marked(unstarred(table['title']))}</h3>" if table["title"] else ""
    tables = "".join(_table(table["heads"], rows[start : start + each]) for start in range(0, len(rows), each))
    html = f'<div>{title}<div class="form-tables of-{columns}">{tables}</div></div>'
    return html, (_TITLE if title else 0.0) + _tall(table, row, columns)


def _table(heads: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    head = "".join(f'<th scope="col">{bold(text)}</th>' if text else "<td></td>" for text in heads)
    body = "".join(
        f'<tr><th scope="row">{bold(first)}</th>{"".join(f"<td>{bold(cell)}</td>" for cell in cells)}</tr>'
        for first, *cells in rows
    )
    return f"<table><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table>"


def _text(text: Text) -> str:
    if text.title:
        return f'<h3 class="part">{escape(unstarred(text.text))}</h3>'
    return f"<p{' class=strong' if text.strong else ''}>{bold(text.text)}</p>"


def _text_tall(text: Text) -> float:
    if text.title:
        return _TITLE + 4.0
    return tall(unstarred(text.text).split("\n"), _TOLD + text.strong, _TOLD_LEADING + text.strong, PAGE_WIDE)
