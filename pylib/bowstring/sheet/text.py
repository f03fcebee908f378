"""The field sheet as plain text, 80 columns wide."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Sequence

from bowstring.report.forms.answer import Answer
from bowstring.sheet.blocks import Block, Heading, Items, Paragraph, Section, Table
from bowstring.sheet.markup import NUMBER
from bowstring.sheet.of_line import title_of
from bowstring.sheet.outline import outline
from bowstring.words import say
from bowstring.words.isolated import closed, isolated

WIDTH = 80
_MARKS_ON = ("Mn", "Me", "Cf")
"""Unicode's categories of signs that take no room of their own."""
HELD = "\N{NO-BREAK SPACE}"
SIGNS = {"caution": "! ", "stop": "!! ", "key": "> ", "worked": "    "}
"""What stands before a text of each kind."""

NOTE = "| "
"""What stands before each line of a note."""

GAP = 2
"""Columns between the columns of a table."""


def sheet_text(answer: Answer) -> str:
    """Return the whole sheet as lines of at most 80 columns of a terminal, ending with a line end.

    >>> from bowstring import answer
    >>> text = sheet_text(answer({"bowstring": 1, "unit": "m", "arc": {"chord": 40, "sagitta": 10}}))
    >>> max(len(line) for line in text.splitlines()) <= 80
    True
    """
    title = title_of(answer)
    version = say("sheet.version", version=answer["version"])
    lines = [*wrap(title, WIDTH), version, "=" * WIDTH]
    for section in outline(answer):
        lines += _section(section)
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _section(section: Section) -> Iterator[str]:
    yield ""
    yield from wrap(capitals(section.title), WIDTH)
    yield "-" * WIDTH
    for block in section.blocks:
        yield from _block(block)


def capitals(title: str) -> str:
    """Return a title in capitals, but for its numbers' units: 900 MM is no way to write millimetres."""
    pieces, place = [], 0
    for found in NUMBER.finditer(title):
        pieces += [title[place : found.start()].upper(), found[0]]
        place = found.end()
    return "".join([*pieces, title[place:].upper()])


def _block(block: Block) -> Iterator[str]:
    if isinstance(block, Paragraph) and block.kind == "note":
        # Somebody's own lines: each is marked, so that none can be taken for a heading or a step of the sheet.
        for line in block.text.split("\n"):
            yield from (NOTE + part for part in wrap(line, WIDTH - len(NOTE)) or [""])
    elif isinstance(block, Paragraph):
        sign = SIGNS.get(block.kind, "")
        for line in block.text.split("\n"):
            yield from wrapped(line, sign)
    elif isinstance(block, Heading):
        yield ""
        yield from wrapped(block.text, "")
    elif isinstance(block, Items):
        for number, text in enumerate(block.texts, block.first or 1):
            sign = f"{number:>3}. " if block.first is not None else SIGNS.get(block.kind, "- ")
            yield from wrapped(text, sign)
    elif isinstance(block, Table):
        yield from table_lines(block)


def wrapped(text: str, sign: str) -> list[str]:
    """Return a text's lines, its sign before the first and as much room before the others."""
    lines = wrap(text, WIDTH - len(sign))
    return [(" " * len(sign) if number else sign) + line for number, line in enumerate(lines)]


def cells_of(text: str) -> int:
    """Return how many columns of a terminal a text takes: two for a wide letter, none for a mark on another.

    By Unicode's East Asian width (UAX 11): W and F are wide, all else narrow, the ambiguous included.
    """
    if text.isascii():
        return len(text)
    return sum(
        0 if unicodedata.category(sign) in _MARKS_ON else 2 if unicodedata.east_asian_width(sign) in "WF" else 1
        for sign in text
    )


def wrap(text: str, width: int) -> list[str]:
    """Return a text as lines of at most ``width`` columns, broken at spaces; a word too long is broken too.

    No length or angle is broken over two lines where it fits on one: 4' here and 8-7/8" there would be read as
    another. Empty for a text without a word; a ``width`` under 2 can't hold a wide letter, which then sticks out.
    """
    held = NUMBER.sub(lambda found: found[0].replace(" ", HELD), isolated(text))
    lines: list[str] = []
    line = ""
    for word in held.split(" "):
        if not word:
            continue
        pieces = [word] if cells_of(word) <= width else word.split(HELD)
        for piece in pieces:
            if line and cells_of(line) + 1 + cells_of(piece) <= width:
                line += " " + piece
                continue
            if line and (cells_of(piece) <= width or cells_of(line) + 1 >= width):
                lines.append(line)
                line = ""
            *full, line = _broken(f"{line} {piece}" if line else piece, width)
            lines += full
    lines += [line] if line else []
    return [line.replace(HELD, " ") for line in closed(lines)]


def _broken(text: str, width: int) -> list[str]:
    """Return a text cut after every ``width`` columns, a mark never cut from its letter."""
    found, room = [""], width
    for sign in text:
        takes = cells_of(sign)
        if takes > room and found[-1]:
            found.append("")
            room = width
        found[-1] += sign
        room -= takes
    return found


def _padded(text: str, width: int) -> str:
    return text + " " * (width - cells_of(text))


def table_lines(table: Table) -> Iterator[str]:
    """Yield the lines of a table: its columns straight, none beyond the sheet's width."""
    if table.caption:
        yield ""
        yield from wrap(table.caption, WIDTH)
    widths = _widths([table.head, *table.rows])
    for number, row in enumerate([table.head, *table.rows]):
        cells = [wrap(cell, width) or [""] for cell, width in zip(row, widths, strict=True)]
        for line in range(max(len(cell) for cell in cells)):
            parts = [cell[line] if line < len(cell) else "" for cell in cells]
            yield "  " + (" " * GAP).join(_padded(part, width) for part, width in zip(parts, widths, strict=True))
        if number == 0:
            yield "  " + (" " * GAP).join("-" * width for width in widths)


def _widths(rows: Sequence[Sequence[str]]) -> list[int]:
    """Return the columns' widths: as wide as needed, the widest ones narrowed until the line fits."""
    widths = [max(cells_of(row[column]) for row in rows) for column in range(len(rows[0]))]
    room = WIDTH - 2 - GAP * (len(widths) - 1)
    words = [max(_longest_word(row[column]) for row in rows) for column in range(len(rows[0]))]
    while sum(widths) > room:
        # A column whose longest word would break is narrowed last.
        spare = [width if width > word else 0 for width, word in zip(widths, words, strict=True)]
        widths[spare.index(max(spare)) if any(spare) else widths.index(max(widths))] -= 1
    return widths


def _longest_word(text: str) -> int:
    held = NUMBER.sub(lambda found: found[0].replace(" ", HELD), text)
    return max(map(cells_of, held.split(" ")))
