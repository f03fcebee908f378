"""Further pages of the paper, for jobs of more stakes than its two sides hold."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from bowstring.faces.paper_back import built_table
from bowstring.faces.paper_head import of_line_html, old_html, old_tall
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, PER_PAGE, tall
from bowstring.faces.paper_table import tables_html
from bowstring.report.forms.answer import Answer
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import arc_title
from bowstring.sheet.setting import Setting, split
from bowstring.words import say

MOST_PAGES = 8
"""Pages of stakes to set, and as many of what was built: more stakes are for a file of values, not for paper."""

_ROW, _TWO_LINES = 25.0, 32.0  # heights of a row, of one with something in parentheses
_HEADS, _HEAD = 66.0, 44.0  # a table's heads and the gap over it, the page's head


def more_sides(
    answer: Answer, tables: Sequence[Setting], built: list[list[str]], *, even: bool = False, old: str = ""
) -> str:
    """Return the pages that follow: the rest of the stakes, then the rest of what was built. ``even``: as many as whole
    sheets have, so that what comes after them starts on a sheet of its own; ``old``: see ``old_html``."""
    pages: list[str] = []
    rest = list(tables)
    while rest and len(pages) < MOST_PAGES:
        now, rest = split(rest, PER_PAGE)
        pages.append(tables_html(now))
    if rest:
        pages[-1] += _some(answer, sum(len(table.rows) for table in rest))
    for start in range(0, min(len(built), MOST_PAGES * PER_PAGE), PER_PAGE):
        pages.append(built_table(answer, built[start : start + PER_PAGE]))
    if len(pages) == 2 and not even and tables and _tall(tables, built) + old_tall(old) <= PAGE_TALL:
        pages = ["".join(pages)]  # both tables' rests stand on one page
    if even and len(pages) % 2:
        pages.append(f'<div class="notes">{escape(say("paper.notes"))}</div>')
    return "".join(_side(answer, page, number, old) for number, page in enumerate(pages, 3))


def _tall(tables: Sequence[Setting], built: Sequence[Sequence[str]]) -> float:
    """How high the rest of the stakes and the rest of what was built stand under each other."""
    rows = [row for table in tables for row in table.rows]
    small = sum(any("(" in cell for cell in row.cells) for row in rows)
    hows = tall((" ".join(table.how) for table in tables), 14.0, 18.0, PAGE_WIDE)
    heads = _HEADS * (len(tables) + 1)
    return _HEAD + hows + heads + _ROW * (len(rows) - small + len(built)) + _TWO_LINES * small


def _some(answer: Answer, left: int) -> str:
    count = sum(step["stake"] is not None for step in answer["steps"])
    return f'<p class="none">{marked(say("paper.some_rows", shown=count - left, count=count))}</p>'


def _side(answer: Answer, inside: str, number: int, old: str) -> str:
    which = escape(say("paper.more", number=number))
    title = marked(arc_title(answer))
    head = f'<div class="head"><h2 class="longest">{title}</h2><p class="which"><b>{which}</b></p>'
    head += f"{of_line_html(answer)}{old_html(old)}</div>"
    return f'<section class="side more row-25 big-17" aria-label="{which}">{head}{inside}</section>'
