"""The tables of the paper face: the stakes in the order of setting, the checks, what was built."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from bowstring.sheet.brief import Check
from bowstring.sheet.markup import marked
from bowstring.sheet.setting import Row, Setting
from bowstring.words import say

BOX = '<i class="tick"></i>'
TICKED = '<i class="tick in">✓</i>'
MANY = 5
"""Rows from which a table takes what room the type leaves: fewer would stand too far apart."""


def tables_html(tables: Sequence[Setting]) -> str:
    """Return the tables that stakes are set by, each row with its step's number and a box to tick."""
    return "".join(_table(table) for table in tables)


def _table(table: Setting) -> str:
    how = f'<p class="how">{marked(" ".join(table.how))}</p>'
    head = "".join(
        f'<th scope="col"{_kind(number, table)}>{marked(text)}</th>' for number, text in enumerate(table.head)
    )
    done = escape(say("paper.done"))
    rows = "".join(_row(row, table) for row in table.rows)
    many = " many" if len(table.rows) >= MANY else ""
    return (
        f'{how}<table class="setting{many}"><thead><tr><td></td>{head}'
        f'<th scope="col" class="bx">{done}</th></tr></thead><tbody>{rows}</tbody></table>'
    )


def _row(row: Row, table: Setting) -> str:
    stake, *cells = row.cells
    begins = ' class="begins"' if row.begins else ""
    body = "".join(f"<td{_kind(number, table)}>{_cell(text)}</td>" for number, text in enumerate(cells, 1))
    return (
        f'<tr{begins}><td class="no">{row.number}</td><th scope="row">{marked(stake)}</th>{body}'
        f'<td class="bx">{BOX}</td></tr>'
    )


def _kind(number: int, table: Setting) -> str:
    """The class of a column: marks, or a number; what is squared off is shaded, since it moves a stake."""
    if number in table.words:
        return ' class="marks"'
    square = say("table.square_off")
    return ' class="off"' if table.head[number].startswith(square) else ""


def _cell(text: str) -> str:
    """A cell; what stands in parentheses is smaller and under it."""
    main, _, small = text.partition(" (")
    return marked(main) + (f"<small>{marked('(' + small)}</small>" if small else "")


def checks_html(found: Sequence[Check], none: str) -> str:
    """Return the checks to make, each with a place for what was read; ``none``: what stands where there are none."""
    if not found:
        return f'<p class="none">{marked(none)}</p>'
    heads = (
        ("paper.checks", "what"),
        ("paper.must_read", ""),
        ("paper.may_be_out", ""),
        ("paper.you_read", "write"),
        ("paper.in", "bx"),
    )
    head = "".join(f'<th scope="col" class="{kind}">{escape(say(key))}</th>' for key, kind in heads)
    rows = "".join(
        f'<tr><th scope="row">{marked(one.what)}</th><td class="reads">{marked(one.reads)}</td>'
        f'<td>{marked(one.limit)}</td><td class="write">{marked(one.was)}</td>'
        f'<td class="bx">{TICKED if one.is_in else BOX}</td></tr>'
        for one in found
    )
    return f'<table class="checks"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>'


def built_html(
    head: Sequence[tuple[str, int]], columns: Sequence[str], rows: Sequence[Sequence[str]], must: int
) -> str:
    """Return the table of what was built: groups of columns with how many they span, the columns, and the rows, each
    with an empty cell in every column that it doesn't reach; past the first ``must`` cells stands what was got."""
    groups = "".join(f'<th scope="colgroup" colspan="{span}">{escape(text)}</th>' for text, span in head)
    names = "".join(f'<th scope="col">{escape(text)}</th>' for text in columns)
    stood = '"stood"'
    blank = '<td class="write"></td>'
    body = "".join(
        f'<tr><th scope="row">{marked(first)}</th>{"".join(f"<td>{marked(cell)}</td>" for cell in cells[: must - 1])}'
        f"{''.join(f'<td class={stood}>{marked(cell)}</td>' for cell in cells[must - 1 :])}"
        f"{blank * (len(columns) - 1 - len(cells))}</tr>"
        for first, *cells in rows
    )
    return f'<table class="built"><thead><tr>{groups}</tr><tr>{names}</tr></thead><tbody>{body}</tbody></table>'
