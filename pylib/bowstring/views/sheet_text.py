"""The field sheet as plain text, 80 columns wide."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from bowstring.views.markup import NUMBER
from bowstring.views.outline import Block, Items, Paragraph, Section, Table, outline
from bowstring.words import say

WIDTH = 80
HELD = "\N{NO-BREAK SPACE}"
GAP = 2
"""Columns between the columns of a table."""


def sheet_text(answer: Mapping[str, Any]) -> str:
    """Return the whole sheet as lines of at most 80 characters, ending with a line end."""
    title = answer["title"] or say("sheet.untitled")
    version = say("sheet.version", version=answer["version"])
    lines = [*textwrap.wrap(title, WIDTH), version, "=" * WIDTH]
    for section in outline(answer):
        lines += _section(section)
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _section(section: Section) -> Iterator[str]:
    yield ""
    yield from textwrap.wrap(section.title.upper(), WIDTH)
    yield "-" * WIDTH
    for block in section.blocks:
        yield from _block(block)


def _block(block: Block) -> Iterator[str]:
    if isinstance(block, Paragraph):
        sign = {"caution": "! ", "key": "> ", "worked": "    "}.get(block.kind, "")
        for line in block.text.split("\n"):
            yield from _wrapped(line, sign)
    elif isinstance(block, Items):
        for number, text in enumerate(block.texts, block.first or 1):
            sign = f"{number:>3}. " if block.first is not None else "! " if block.kind == "caution" else "- "
            yield from _wrapped(text, sign)
    elif isinstance(block, Table):
        yield from _table(block)


def _wrapped(text: str, sign: str) -> list[str]:
    """Wrap a text, no length or angle broken over two lines: 4' here and 8-7/8" there would be read as another."""
    held = NUMBER.sub(lambda found: found[0].replace(" ", HELD), text)
    lines = textwrap.wrap(held, WIDTH, initial_indent=sign, subsequent_indent=" " * len(sign), break_on_hyphens=False)
    return [line.replace(HELD, " ") for line in lines]


def _table(table: Table) -> Iterator[str]:
    if table.caption:
        yield ""
        yield from textwrap.wrap(table.caption, WIDTH)
    widths = _widths([table.head, *table.rows])
    for number, row in enumerate([table.head, *table.rows]):
        cells = [textwrap.wrap(cell, width) or [""] for cell, width in zip(row, widths, strict=True)]
        for line in range(max(len(cell) for cell in cells)):
            parts = [cell[line] if line < len(cell) else "" for cell in cells]
            yield "  " + (" " * GAP).join(part.ljust(width) for part, width in zip(parts, widths, strict=True))
        if number == 0:
            yield "  " + (" " * GAP).join("-" * width for width in widths)


def _widths(rows: Sequence[Sequence[str]]) -> list[int]:
    """Return the columns' widths: as wide as needed, the widest ones narrowed until the line fits."""
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    room = WIDTH - 2 - GAP * (len(widths) - 1)
    while sum(widths) > room:
        widths[widths.index(max(widths))] -= 1
    return widths
