"""The pages of the build of a line of several pieces: all are made alike, from the answer's ``lined.pages``."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.faces.build_parts import Row, conclusion, folded, heading, is_tight, note, paragraph, stop, table
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_lined import LinedPage, LinedTable
from bowstring.words import say

_OPEN = 6
"""Sentences that stand open: what a crew does comes first, how and why it is so after that."""

_SHORT = 4
"""Letters of a name that never stands over its numbers: a joint's, a stake's."""


def page_of(answer: Answer, key: str) -> LinedPage | None:
    """Return what is told of a part of a line's build, ``None`` for an arc alone."""
    part = answer["lined"]
    return next((page for page in part["pages"] if page["key"] == key), None) if part else None


def page_html(page: LinedPage) -> str:
    """Return the inside of a page, under its drawing."""
    return "".join(_page(page))


def _page(page: LinedPage) -> Iterator[str]:
    if page["stop"]:  # what its numbers are is nobody's to build by
        yield stop(page["short"], page["stop"])
    else:
        yield conclusion(page["conclusion"] or page["short"], "" if page["conclusion"] else page["more"])
    for one in page["tables"][:1]:
        yield heading(one["title"], _names_head(one)) + table_html(one)
    yield "".join(paragraph(line) for line in page["lines"][:_OPEN])
    yield "".join(note(text) for text in page["cautions"])
    yield "".join(folded(one["title"], _names_head(one), table_html(one)) for one in page["tables"][1:])
    if page["lines"][_OPEN:]:
        yield folded(say("lined.how"), "", "".join(paragraph(line) for line in page["lines"][_OPEN:]))


def _names_head(told: LinedTable) -> str:
    """What the names are, where they stand over their numbers and so have no column."""
    return told["heads"][0] if _stand_over(told) else ""


def _stand_over(told: LinedTable) -> bool:
    """Whether the names would leave the numbers no room on a phone beside them."""
    long = any(len(row[0]) > _SHORT for row in told["rows"])
    return long and is_tight(told["heads"], [Row(row[0], row[1:]) for row in told["rows"]])


def table_html(told: LinedTable) -> str:
    """Return a table."""
    over = _stand_over(told)
    rows = [Row(row[0], row[1:], over=over) for row in told["rows"]]
    return table(told["heads"][1:] if over else told["heads"], rows, told["title"])
