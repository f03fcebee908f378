"""The field sheet as HTML: the outline that the text sheet shows too, with its drawings."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from html import escape

from bowstring.report.forms.answer import Answer
from bowstring.sheet.blocks import Block, Drawing, Heading, Items, Paragraph, Section, Table
from bowstring.sheet.drawn import drawn
from bowstring.sheet.entries import entries
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import title_of
from bowstring.sheet.outline import outline
from bowstring.words import say
from bowstring.words.isolated import isolated

Label = Callable[[str], str]

WIDE = 4
"""Columns from which a table is a block for each row on a narrow screen: a verdict off screen isn't read."""

_WIDTHS = (*range(300, 481, 20), 520, 560, 640, 720, 800, 960, 1120, 1280, 1600, 2000, 2600, 3400)
"""Pixels: the steps in which the style gives a drawing the room that its words need."""


def sheet_html(answer: Answer, link: str = "", label: Label | None = None) -> str:
    """Return the sheet of an answer as the inside of an element; every text in it is escaped.

    ``link`` is the job's own, whole or its text; on paper it stands at the sheet's end with a bar of known length.
    ``label`` turns an entry's place in the job into what it is called where it is filled in; without one it has its
    plain name.

    Raises ``ValueError`` when a figure can't be drawn.
    """
    title = escape(isolated(title_of(answer)))
    version = escape(say("sheet.version", version=answer["version"]))
    head = f'<header class="sheet-head"><h2>{title}</h2><p class="made">{version}</p></header>'
    sections = outline(answer)
    parts = "".join(_section(section, answer, label) for section in sections)
    return head + _contents(sections) + parts + _foot(answer, link)


def inside_html(section: Section, answer: Answer, label: Label | None = None) -> str:
    """Return what stands in a part of a sheet, without its title; ``label`` is ``sheet_html``'s."""
    return "".join(_block(block, section, answer, label) for block in section.blocks)


def _contents(sections: Sequence[Section]) -> str:
    """Return the way to each part, folded away: a sheet is many phone screens long."""
    links = "".join(f'<li><a href="#sheet-{section.key}">{marked(section.title)}</a></li>' for section in sections)
    title = escape(say("sheet.contents"))
    return f'<details class="contents fold" id="sheet-contents"><summary>{title}</summary><ul>{links}</ul></details>'


def _foot(answer: Answer, link: str) -> str:
    """Return what only paper needs: the job's link, and a bar that shows whether the printer kept the size."""
    metric = answer["unit"] in ("m", "mm")
    words = escape(say("sheet.bar_metric" if metric else "sheet.bar_inches"))
    bar = f'<p class="bar-known {"metric" if metric else "inches"}" aria-hidden="true"></p><p>{words}</p>'
    told = f'<p class="link">{escape(say("sheet.link"))} <span>{escape(link)}</span></p>' if link else ""
    return f'<footer class="sheet-foot">{bar}{told}</footer>'


def _section(section: Section, answer: Answer, label: Label | None) -> str:
    name = f"sheet-{section.key}"
    inside = inside_html(section, answer, label)
    if section.key.startswith("level-"):
        # Folded on screen only: on paper a level that isn't there would be a stake that isn't set.
        title = f'<summary><h3 id="{name}-title">{marked(section.title)}</h3></summary>'
        inside = f'<div class="inside">{inside}{_ways(answer)}</div>'
        inside = f'<details class="level" id="{name}-fold" open>{title}{inside}</details>'
    else:
        inside = f'<h3 id="{name}-title">{marked(section.title)}</h3>{inside}'
    kind = "level" if section.key.startswith("level-") else section.key
    return f'<section class="part part-{kind}" id="{name}" aria-labelledby="{name}-title">{inside}</section>'


def _ways(answer: Answer) -> str:
    """Return where a level's reader goes on: to the ways of squaring, and to where what was really got is told."""
    links = [("#form-got", say("sheet.to_got"))]
    if any(row["how"] for row in answer["halving"]):  # where every string is its own, so is its squaring
        links.insert(0, ("#sheet-square", say("sheet.to_square")))
    return '<p class="ways">' + "".join(f'<a href="{place}">{escape(text)}</a>' for place, text in links) + "</p>"


def _block(block: Block, section: Section, answer: Answer, label: Label | None) -> str:
    if isinstance(block, Heading):
        return f"<h4>{marked(block.text)}</h4>"
    if isinstance(block, Paragraph):
        return "".join(f'<p class="{block.kind}">{marked(line)}</p>' for line in block.text.split("\n") if line.strip())
    if isinstance(block, Items):
        return _items(block)
    if isinstance(block, Table):
        return _table(entries(answer, label) if section.key == "readings" else block, section.title)
    return _figure(block, answer)


def _items(items: Items) -> str:
    rows = "".join(f"<li>{marked(text)}</li>" for text in items.texts)
    if not rows:
        return ""
    if items.first is not None:
        return f'<ol class="{items.kind}" start="{int(items.first)}">{rows}</ol>'
    return f'<ul class="{items.kind}">{rows}</ul>'


def _table(table: Table, title: str) -> str:
    head = "".join(f'<th scope="col">{marked(cell)}</th>' for cell in table.head)
    rows = "".join(f"<tr>{_row(row, table.head)}</tr>" for row in table.rows)
    kind = ' class="wide"' if len(table.head) >= WIDE else ""
    caption = f"<caption>{marked(table.caption)}</caption>" if table.caption else ""
    name = escape(table.caption or title)
    return (
        f'<div class="scroll" role="group" tabindex="0" aria-label="{name}"><table{kind}>{caption}'
        f"<thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></div>"
    )


def _row(row: Sequence[str], head: Sequence[str]) -> str:
    """Return a row; each cell carries its column's name, which a phone shows in place of the head."""
    first, *rest = row
    cells = [f'<td data-head="{escape(name)}">{marked(cell)}</td>' for name, cell in zip(head[1:], rest, strict=True)]
    return f'<th scope="row">{marked(first)}</th>{"".join(cells)}'


def _figure(drawing: Drawing, answer: Answer) -> str:
    if drawing.kind == "mistake":
        # Drawn when somebody asks for it: six more drawings would keep everybody waiting at each keystroke.
        words, kind = escape(say("sheet.mistake_show")), escape(answer["mistakes"][drawing.level]["kind"])
        return (
            f'<details class="mistake" id="mistake-{drawing.level}" data-mistake="{kind}">'
            f"<summary>{words}</summary></details>"
        )
    svg = drawn(drawing, answer, f"draw-{drawing.kind}-{drawing.level}" if drawing.level else f"draw-{drawing.kind}")
    return svg and f'<figure class="drawing drawing-{drawing.kind} {_room(svg)}" tabindex="0">{svg}</figure>'


def _room(svg: str) -> str:
    """Return the class that keeps a drawing wide enough for its words to be read."""
    found = re.search(r'data-least-width="(\d+)"', svg)
    least = int(found[1]) if found else 0
    return f"room-{next((width for width in _WIDTHS if width >= least), _WIDTHS[-1])}"
