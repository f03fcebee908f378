"""A line of several pieces on the long sheet: each part's conclusion, its tables, how and why."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_lined import LinedPage
from bowstring.sheet.blocks import Block, Items, Paragraph, Table
from bowstring.words.stars import unstarred

KEYS = ("line", "edges", "boards", "joints", "grades", "pour")


def part_of(key: str) -> Callable[[Answer], Iterator[Block]]:
    """Return what makes a part's section of the sheet; nothing for an arc alone."""

    def made(answer: Answer) -> Iterator[Block]:
        part = answer["lined"]
        for page in part["pages"] if part else ():
            if page["key"] == key:
                yield from _told(page)

    return made


def _told(page: LinedPage) -> Iterator[Block]:
    if page["stop"]:
        yield Items([f"{unstarred(page['short'])}. {unstarred(page['stop'])}"], "stop")
    else:
        yield Paragraph(unstarred(page["conclusion"] or page["short"]), "key")
        if not page["conclusion"] and page["more"]:
            yield Paragraph(unstarred(page["more"]))
    for table in page["tables"]:
        rows = [[unstarred(cell) for cell in row] for row in table["rows"]]
        yield Table([unstarred(head) for head in table["heads"]], rows, unstarred(table["title"]))
    if page["lines"]:
        yield Items([unstarred(line) for line in page["lines"]])
    if page["cautions"]:
        yield Items([unstarred(text) for text in page["cautions"]], "caution")
