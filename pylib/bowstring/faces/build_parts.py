"""What the pages of the build are set from: conclusions, tables, notes and choices, every text in them escaped.

In each text what stands between stars is bold, and no number breaks across lines.
"""

from __future__ import annotations

import json
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from html import escape

from bowstring.drawings.boxes import advance, stack
from bowstring.sheet.markup import marked

_BOLD = re.compile(r"\*([^*]+)\*")
_STOP_SIGN = '<span class="sign stop" aria-hidden="true">!</span>'
_PHONE, _BETWEEN, _SIGN, _QUIET = 346.0, 7.0, 30.0, 16.0
"""Pixels: what a table has on a phone, the air of a column, a sign's width, the quiet type's size."""

_SIGNS = {True: "✓", False: "!"}


@dataclass(frozen=True)
class Cell:
    """A cell of a table: its text, a quiet word after it, or all of it quiet.

    ``fits``: whether what stands there holds, told by a sign before it; ``None`` where nothing is judged. The text (or
    ``small``) says it too: a sign alone isn't read out.
    """

    text: str
    small: str = ""
    quiet: bool = False
    fits: bool | None = None


@dataclass(frozen=True)
class Row:
    """A row of a table: its name, a quiet word after it, its cells. ``key``: the row that is looked at, highlighted.

    ``over``: the name has a line of its own over the cells, which then begin in the first column.
    """

    name: str
    cells: Sequence[str | Cell]
    small: str = ""
    key: bool = False
    over: bool = False


@dataclass(frozen=True)
class Choice:
    """A button of a few: what it says, the fields that it sets, more of it, and whether it is the one that holds.

    ``over``: it's past a limit that somebody gave, and no equal of the others.
    """

    text: str
    fields: Mapping[str, str] = field(default_factory=dict)
    more: str = ""
    pressed: bool = False
    over: bool = False


def bold(text: str) -> str:
    """Return a text as HTML, what stands between stars bold."""
    return _BOLD.sub(r"<b>\1</b>", marked(text))


def conclusion(text: str, more: str = "") -> str:
    """Return the page's own sentence; a line break in it stays one."""
    under = f'<p class="under">{bold(more)}</p>' if more else ""
    return f'<h2 class="concl" tabindex="-1">{"<br>".join(bold(line) for line in text.split(chr(10)))}</h2>{under}'


def huge(number: str, unit: str, more: str = "") -> str:
    """Return a conclusion that is one number, or two, as large as it can be, with its unit; no number breaks."""
    under = f'<p class="under">{bold(more)}</p>' if more else ""
    size, words = "huge two" if " " in number else "huge", escape(number).split()
    told = " ".join(f'<span class="n">{word}</span>' for word in words)
    return f'<h2 class="{size}" tabindex="-1"><span>{told}</span> <small>{escape(unit)}</small></h2>{under}'


def heading(text: str, small: str = "") -> str:
    """Return the heading of what comes next on a page, with a line over it."""
    return f'<h3 class="sec">{bold(text)}{_small(small)}</h3>'


def folded(title: str, told: str, inside: str) -> str:
    """Return what few need now, folded behind its conclusion ``told``; ``inside`` is HTML: nothing to fold without."""
    if not inside:
        return heading(title) + paragraph(told, quiet=True)
    head = f"<span>{bold(title)}{_small(told)}</span>"
    return f'<details class="fold"><summary>{head}</summary>{inside}</details>'


def paragraph(text: str, quiet: bool = False) -> str:
    """Return a paragraph."""
    return f'<p class="txt{" quiet" if quiet else ""}">{bold(text)}</p>'


def note(text: str) -> str:
    """Return a caution with its sign, to stand where the hand is."""
    return f'<p class="care">{_STOP_SIGN}<span>{bold(text)}</span></p>'


def stop(head: str, text: str, why: str = "") -> str:
    """Return what stands in the place of a table whose numbers nobody may use."""
    more = f'<p class="why">{bold(why)}</p>' if why else ""
    return (
        f'<section class="stopbox" role="alert"><h2 tabindex="-1">{_STOP_SIGN}{escape(head)}</h2>'
        f"<p>{bold(text)}</p>{more}</section>"
    )


def card(title: str, inside: str) -> str:
    """Return a framed card; ``inside`` is HTML."""
    return f'<section class="card2"><h3>{bold(title)}</h3>{inside}</section>'


def table(heads: Sequence[str], rows: Sequence[Row], label: str, split: int | None = None) -> str:
    """Return a table.

    ``heads``: what stands over each column, that of the names included; ``label``: what the table is, read out and not
    shown; ``split``: the column that has a line before it, where another edge's numbers begin.
    Of one table either all rows have their names over them or none.
    """
    head = "".join(_head(text, number, split) for number, text in enumerate(heads))
    body = "".join(_row(row, len(heads), split) for row in rows)
    if not any(row.over for row in rows):
        body = f"<tbody>{body}</tbody>"
    kind, caption = f"t{_size_of(heads, rows)}", f'<caption class="unseen">{escape(label)}</caption>'
    return f'<table class="{kind}">{caption}<thead><tr>{head}</tr></thead>{body}</table>'


def is_tight(heads: Sequence[str], rows: Sequence[Row]) -> bool:
    """Return whether a table has no room on a phone but in the smallest type."""
    return _size_of(heads, rows) == " tighter"


def choices(label: str, buttons: Sequence[Choice]) -> str:
    """Return two or three buttons, one of which holds; ``label``: what is chosen, read out and not shown."""
    made = "".join(
        f'<button type="button" data-do="fill" data-fill="{escape(json.dumps(dict(one.fields)))}" '
        f'aria-pressed="{str(one.pressed).lower()}"{" data-over" if one.over else ""}>'
        f"{bold(one.text)}{_small(one.more)}</button>"
        for one in buttons
    )
    return f'<div class="pick" role="group" aria-label="{escape(label)}">{made}</div>'


def panel_button(text: str, panel: str, first: bool = False) -> str:
    """Return a button that leads to the panel of the numbers where something is answered or changed."""
    return (
        f'<button type="button" class="btn{" first" if first else ""}" data-do="face" data-face="numbers" '
        f'data-open="{escape(panel)}">{escape(text)}</button>'
    )


def _size_of(heads: Sequence[str], rows: Sequence[Row]) -> str:
    """The class of a table whose numbers are too long for the usual size on a phone: no length is broken."""
    columns = [[Cell(head, quiet=True)] for head in heads]
    for row in rows:
        cells = [_as_cell(cell) for cell in row.cells]
        for column, cell in zip(columns, cells if row.over else [Cell(row.name), *cells], strict=False):
            column.append(cell)
    for size, kind in ((20.0, ""), (17.0, " tight")):
        wide = sum(max(_width(cell, size) for cell in column) + _BETWEEN for column in columns)
        if wide <= _PHONE:
            return kind
    return " tighter"


def _width(cell: Cell, size: float) -> float:
    """How wide the longest word or length of a cell is, pixels."""
    longest = max(advance(piece) for piece in stack(cell.text.replace("*", ""), "number", 0.0))
    return longest * (_QUIET if cell.quiet else size) + (_SIGN if cell.fits is not None else 0.0)


def _as_cell(cell: str | Cell) -> Cell:
    return Cell(cell) if isinstance(cell, str) else cell


def _head(text: str, number: int, split: int | None) -> str:
    """What stands over a column; one whose cells need no name has an empty cell, which is no head."""
    two = _two(number, split)
    return f'<th scope="col"{two}>{bold(text)}</th>' if text else f"<td{two}></td>"


def _row(row: Row, columns: int, split: int | None) -> str:
    kind = ' class="key"' if row.key else ""
    name = f"{bold(row.name)}{_small(row.small)}"
    if not row.over:
        cells = "".join(_cell(cell, number, split) for number, cell in enumerate(row.cells, 1))
        return f'<tr{kind}><th scope="row">{name}</th>{cells}</tr>'
    cells = "".join(_cell(cell, number, split) for number, cell in enumerate(row.cells))
    over = f'class="nm{" key" if row.key else ""}"'
    named = f'<tr {over}><th scope="rowgroup" colspan="{columns}">{name}</th></tr>'
    return f"<tbody>{named}<tr{kind}>{cells}</tr></tbody>"


def _cell(cell: str | Cell, number: int, split: int | None) -> str:
    cell = _as_cell(cell)
    kinds = [*(["q"] if cell.quiet else []), *(["two"] if number == split else [])]
    of = f' class="{" ".join(kinds)}"' if kinds else ""
    text = f"{bold(cell.text)}{_small(cell.small)}"
    if cell.fits is None:
        return f"<td{of}>{text}</td>"
    sign = f'<span class="sign{"" if cell.fits else " stop"}" aria-hidden="true">{_SIGNS[cell.fits]}</span>'
    return f'<td{of}><span class="verd{"" if cell.fits else " bad"}">{sign}<span>{text}</span></span></td>'


def _two(number: int, split: int | None) -> str:
    return ' class="two"' if number == split else ""


def _small(text: str) -> str:
    return f" <small>{bold(text)}</small>" if text else ""
