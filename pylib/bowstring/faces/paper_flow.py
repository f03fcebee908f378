"""Tables of unlike length set on sides of paper: each on the first side that has room for all of it, one that no side
has room for goes on over further sides.

A table that is narrow stands in several columns beside each other, as in a newspaper.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from bowstring.drawings.boxes import stack
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_sizes import PAGE_WIDE, lines, lines_of, width
from bowstring.sheet.markup import marked
from bowstring.words.stars import unstarred

ROWS = (25, 22, 20, 18)
"""Heights of a row that the style has for these sides, and the type in each."""
TYPES = {25: 16.0, 22: 14.0, 20: 13.0, 18: 12.0}

_TITLE, _GAP = 20.0, 7.0
_HEAD_TYPE, _HEAD_LINE, _WRAPS = 12.5, 14.0, 120.0
"""The heads' type and its leading; pixels from which on a text that is no length may stand in two lines."""
_CELL, _BETWEEN = 4.0, 6.0
_REMEMBERED = 8192
"""Texts whose widths are remembered: each is asked for with every size of the rows and every height of the drawing."""
_FEWEST, _MOST_COLUMNS = 4, 3
"""Rows of a column beside another one, at least; columns."""


@dataclass(frozen=True)
class Grid:
    """A table on paper.

    Attributes:
        title: over it, empty for none; heads: over each column, the names' too; rows: each with its name first.
        groups: over the heads, each over so many columns, none where they need no more names.
        begins: the rows, from 0, with which something new begins: a strong line is over them.
    """

    title: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    groups: tuple[tuple[str, int], ...] = ()
    begins: tuple[int, ...] = ()

    def part(self, first: int, last: int | None) -> Grid:
        """Return some of its rows."""
        begins = tuple(row - first for row in self.begins if row >= first)
        return Grid(self.title, self.heads, self.rows[first:last], self.groups, begins)


Band = tuple[Grid, ...]
"""Tables that stand beside each other where they have room."""


def sides(bands: Sequence[Band], row: int, rooms: Sequence[float], other: float) -> list[str]:
    """Return what stands on each side as HTML: the first sides have ``rooms`` for it, pixels, any other one ``other``.

    Each of the first sides is there, empty if need be. ``row``: one of ``ROWS``.
    """
    return ["".join(html_of(band, row) for band in side) for side in placed(bands, row, rooms, other)]


def placed(bands: Sequence[Band], row: int, rooms: Sequence[float], other: float) -> list[list[Band]]:
    """Return which tables stand on each of these sides: how large they are is tried many times, and written once."""
    left = list(rooms)
    made: list[list[Band]] = [[] for _room in rooms]

    def take(band: Band) -> bool:
        high = _high(band, row)
        place = next((number for number, room in enumerate(left) if high <= room), None)
        if place is None and high <= other:
            left.append(other)
            made.append([])
            place = len(left) - 1
        if place is None:
            return False
        made[place].append(band)
        left[place] -= high
        return True

    for band in bands:
        for one in _beside(band, row):
            if not take(one):
                for part in _parts(one[0], row, other):
                    take((part,))
    return made


def has_room(bands: Sequence[Band], row: int) -> bool:
    """Return whether each table by itself is as narrow as a page in the type of these rows."""
    return all(_wide(grid, row) <= PAGE_WIDE for band in bands for grid in band)


def _beside(band: Band, row: int) -> list[Band]:
    """Tables beside each other where they have room so, else each by itself."""
    wide = sum(_wide(grid, row) + _BETWEEN for grid in band) - _BETWEEN
    return [band] if wide <= PAGE_WIDE else [(grid,) for grid in band]


def _parts(grid: Grid, row: int, room: float) -> list[Grid]:
    """A table cut into as few parts as have room on a side each."""
    found, start = [], 0
    while start < len(grid.rows):
        count = len(grid.rows) - start
        while count > 1 and _high((grid.part(start, start + count),), row) > room:
            count -= 1
        found.append(grid.part(start, start + count))
        start += count
    return found


def _high(band: Band, row: int) -> float:
    """How high tables beside each other stand."""
    beside = len(band) > 1
    tall = (_tall(grid, row, _columns(grid, row, beside), beside) + (_TITLE if grid.title else 0.0) for grid in band)
    return max(tall) + _GAP


def html_of(band: Band, row: int) -> str:
    """Return tables beside each other as HTML."""
    made = [_columns_of(grid, row, len(band) > 1) for grid in band]
    return f'<div class="band">{"".join(made)}</div>' if len(made) > 1 else made[0]


def _wide(grid: Grid, row: int) -> float:
    return sum(wide + _CELL for wide in _columns_wide(grid, row))


@lru_cache(512)
def _columns_wide(grid: Grid, row: int) -> tuple[float, ...]:
    """How wide each column is at least: what is long may be broken, but no length."""
    return tuple(
        max(_longest(head, _HEAD_TYPE), *(_least(one[column], TYPES[row]) for one in grid.rows))
        for column, head in enumerate(grid.heads)
    )


@lru_cache(_REMEMBERED)
def _longest(text: str, size: float) -> float:
    """How wide the longest word of a text is, a length being one."""
    return max(width(piece, size) for piece in stack(unstarred(text), "number", 0.0))


@lru_cache(_REMEMBERED)
def _least(text: str, size: float) -> float:
    return max(_longest(text, size), min(_whole(text, size), _WRAPS))


@lru_cache(_REMEMBERED)
def _whole(text: str, size: float) -> float:
    """How wide a text is on one line."""
    return width(unstarred(text), size)


def _tall(grid: Grid, row: int, columns: int, beside: bool) -> float:
    """How high the heads and rows of a table stand that has its share of the page, ``beside`` another as much as it
    needs."""
    share = _wide(grid, row) if beside else (PAGE_WIDE - _BETWEEN * (columns - 1)) / columns
    wide = _set_wide(grid, row, share)
    heads = max(lines(head, _HEAD_TYPE, room) for head, room in zip(grid.heads, wide, strict=True)) * _HEAD_LINE + 6.0
    heads += _groups_tall(grid, wide)
    rows = [row + TYPES[row] * 1.1 * (_lines(one, TYPES[row], wide) - 1) for one in grid.rows]
    each = -(-len(rows) // columns)
    return heads + max(sum(rows[start : start + each]) for start in range(0, len(rows), each))


def _groups_tall(grid: Grid, wide: Sequence[float]) -> float:
    """How high the heads over the heads stand, each over columns that are set so ``wide``."""
    most, first = 0, 0
    for text, count in grid.groups:
        most = max(most, lines(text, _HEAD_TYPE, sum(wide[first : first + count])) if text else 0)
        first += count
    return most * _HEAD_LINE + 3.0 if most else 0.0


def _set_wide(grid: Grid, row: int, share: float) -> list[float]:
    """How wide each column is set: nothing is broken where all of it has room, else each has its part of what is
    left."""
    whole = [
        max(_whole(head, _HEAD_TYPE), *(_whole(one[column], TYPES[row]) for one in grid.rows))
        for column, head in enumerate(grid.heads)
    ]
    if sum(whole) + _CELL * len(whole) <= share:
        return whole
    more = max(1.0, share / _wide(grid, row))
    return [one * more for one in _columns_wide(grid, row)]


def _lines(cells: Sequence[str], size: float, wide: Sequence[float]) -> int:
    """In how many lines a row stands."""
    return max(lines_of(_whole(cell, size), room) for cell, room in zip(cells, wide, strict=True))


def _columns(grid: Grid, row: int, beside: bool) -> int:
    """In how many columns beside each other a table stands; in one where another table stands beside it."""
    if beside:
        return 1
    room = int((PAGE_WIDE + _BETWEEN) / (_wide(grid, row) + _BETWEEN))
    return max(1, min(room, len(grid.rows) // _FEWEST, _MOST_COLUMNS))


def _columns_of(grid: Grid, row: int, beside: bool) -> str:
    """A table under its title, in its columns."""
    columns = _columns(grid, row, beside)
    each = -(-len(grid.rows) // columns)
    title = f"<h3>{marked(unstarred(grid.title))}</h3>" if grid.title else ""
    tables = "".join(_table(grid.part(start, start + each), row) for start in range(0, len(grid.rows), each))
    return f'<div>{title}<div class="form-tables of-{columns}">{tables}</div></div>'


def _table(grid: Grid, row: int) -> str:
    groups = "".join(
        f'<th scope="colgroup" colspan="{count}">{bold(text)}</th>' if text else f'<td colspan="{count}"></td>'
        for text, count in grid.groups
    )
    over = f'<tr class="groups">{groups}</tr>' if groups else ""
    head = "".join(f'<th scope="col">{bold(text)}</th>' if text else "<td></td>" for text in grid.heads)
    body = "".join(_row(cells, row, number in grid.begins and number > 0) for number, cells in enumerate(grid.rows))
    return f"<table><thead>{over}<tr>{head}</tr></thead><tbody>{body}</tbody></table>"


def _row(cells: Sequence[str], row: int, begins: bool) -> str:
    """A row; what is short enough to stand in one line does."""
    first, *rest = (
        (bold(cell), " class=whole" if width(unstarred(cell), TYPES[row]) <= _WRAPS else "") for cell in cells
    )
    new = ' class="begins"' if begins else ""
    body = "".join(f"<td{kind}>{cell}</td>" for cell, kind in rest)
    return f'<tr{new}><th scope="row"{first[1]}>{first[0]}</th>{body}</tr>'
