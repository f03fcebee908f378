"""Titles, tables and sentences of unlike length set on sides of paper: what has no room goes on over the next side.

A table that is narrow stands in several columns beside each other, as in a newspaper.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from html import escape

from bowstring.faces.build_parts import bold
from bowstring.faces.paper_sizes import PAGE_WIDE, tall, width
from bowstring.report.forms.build_lined import LinedTable
from bowstring.sheet.markup import marked
from bowstring.words.stars import unstarred

ROWS = (25, 22, 19)
"""Heights of a row that the style has for these sides, and the type in each."""
TYPES = {25: 16.0, 22: 14.0, 19: 12.5}

_HEAD, _TITLE, _GAP = 20.0, 21.0, 7.0
_CELL, _BETWEEN = 11.0, 14.0
_FEWEST = 4
"""Rows of a column beside another one, at least."""
_TOLD, _TOLD_LEADING = 14.0, 17.0


@dataclass(frozen=True)
class Text:
    """A sentence; ``strong``: what a part comes to, or a stop; ``title``: the part's name over it."""

    text: str
    strong: bool = False
    title: bool = False


Block = Text | LinedTable


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
    """What stays together: sentences, and the table under them; ``row``: how high its rows are."""

    texts: tuple[Text, ...]
    table: LinedTable | None
    row: int

    def whole(self) -> tuple[str, float]:
        """Return all of it with its height."""
        return self._set(len(self.table["rows"]) if self.table else 0)

    def cut(self, room: float) -> tuple[str, _Part]:
        """Return as much as stands within a height, and the rest; nothing where that is less than a few rows."""
        if self.table is None:
            return "", self
        rows = self.table["rows"]
        fit = next((count for count in range(len(rows) - 1, 0, -1) if self._set(count)[1] <= room), 0)
        if fit < min(_FEWEST, len(rows)):
            return "", self
        rest: LinedTable = {**self.table, "rows": rows[fit:]}
        return self._set(fit)[0], _Part((), rest, self.row)

    def _set(self, count: int) -> tuple[str, float]:
        """Return the sentences and the first rows of the table, with their height."""
        html = "".join(_text(text) for text in self.texts)
        high = sum(_text_tall(text) for text in self.texts) + _GAP
        if self.table is None:
            return f"<div>{html}</div>", high
        rows = self.table["rows"][:count]
        columns = _columns(self.table, self.row, len(rows))
        each = -(-len(rows) // columns)
        title = f"<h3>{marked(unstarred(self.table['title']))}</h3>" if self.table["title"] else ""
        tables = "".join(_table(self.table["heads"], rows[start : start + each])
                         for start in range(0, len(rows), max(each, 1)))  # fmt: skip
        html = f'<div>{html}{title}<div class="form-tables of-{columns}">{tables}</div></div>'
        return html, high + (_TITLE if title else 0.0) + _HEAD + each * self.row


def _parts(blocks: Sequence[Block], row: int) -> Iterator[_Part]:
    texts: list[Text] = []
    for block in blocks:
        if isinstance(block, Text):
            if block.title and texts:
                yield _Part(tuple(texts), None, row)
                texts = []
            texts.append(block)
        elif block["rows"]:
            yield _Part(tuple(texts), block, row)
            texts = []
    if texts:
        yield _Part(tuple(texts), None, row)


def _columns(table: LinedTable, row: int, count: int) -> int:
    """How many times a table's columns stand beside each other."""
    every = [table["heads"], *table["rows"]]
    columns = range(len(table["heads"]))
    wide = sum(max(width(unstarred(one[column]), TYPES[row]) for one in every) + _CELL for column in columns)
    return max(1, min(int((PAGE_WIDE + _BETWEEN) / (wide + _BETWEEN)), count // _FEWEST, 3))


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
