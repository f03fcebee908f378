"""Further pages of the paper, for jobs of more stakes than its two sides hold."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from bowstring.faces.paper_back import built_table
from bowstring.faces.paper_sizes import PER_PAGE
from bowstring.faces.paper_table import tables_html
from bowstring.report.forms.answer import Answer
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.sheet.setting import Setting, split
from bowstring.words import say

MOST_PAGES = 8
"""Pages of stakes to set, and as many of what was built: more stakes are for a file of values, not for paper."""


def more_sides(answer: Answer, tables: Sequence[Setting], built: list[list[str]]) -> str:
    """Return the pages that follow: the rest of the stakes, then the rest of what was built."""
    pages: list[str] = []
    rest = list(tables)
    while rest and len(pages) < MOST_PAGES:
        now, rest = split(rest, PER_PAGE)
        pages.append(tables_html(now))
    if rest:
        pages[-1] += _some(answer, sum(len(table.rows) for table in rest))
    for start in range(0, min(len(built), MOST_PAGES * PER_PAGE), PER_PAGE):
        pages.append(built_table(answer, built[start : start + PER_PAGE]))
    return "".join(_side(answer, page, number) for number, page in enumerate(pages, 3))


def _some(answer: Answer, left: int) -> str:
    count = sum(step["stake"] is not None for step in answer["steps"])
    return f'<p class="none">{marked(say("paper.some_rows", shown=count - left, count=count))}</p>'


def _side(answer: Answer, inside: str, number: int) -> str:
    which = escape(say("paper.more", number=number))
    title = marked(brief.title(answer))
    head = f'<div class="head"><h2 class="longest">{title}</h2><p class="which"><b>{which}</b></p></div>'
    return f'<section class="side more row-25 big-17" aria-label="{which}">{head}{inside}</section>'
