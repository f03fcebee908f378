"""A wall's form sheet, its front: every line off the stakes, both faces off their own strings, what its forms take."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from html import escape

from bowstring.drawings.slab import slab_svg
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_cuts import cut_rows
from bowstring.faces.paper_form_tables import Column, columns_of, lines_html, table_html
from bowstring.faces.paper_forms_tall import heads_tall
from bowstring.faces.paper_head import duo_html, foot_html, head_html, old_tall
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, fitting, tall
from bowstring.faces.paper_wall_tops import is_level
from bowstring.report.alone import boards_of, edges_of, grades_of, wanted_joints
from bowstring.report.forming.edge_marks import CENTER
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart, LineRow
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say

ROWS = (25, 23, 21, 19, 17, 16)
"""Heights of a row that the style has for this sheet."""

_HEAD, _HANDS, _FOOT, _GAPS = 62.0, 94.0, 24.0, 44.0
_LINE_ROW, _LINE_ROW_LOW, _LINES = 23.0, 19.0, 20.0
_LARGER = 44.0  # what larger type takes in all of it
_UNDER = 8.0  # what stands between tables and what comes under them
_BOX = 152.0  # as wide as a text stands in the third column
_TYPE, _LEADING = 13.0, 15.0


def is_wall(answer: Answer) -> bool:
    """Whether a wall is poured: it has faces, and no base, stakes or saw cuts to sign off."""
    edges = edges_of(answer)
    return edges is not None and bool(edges["faces"])


def wall_front(answer: Answer, edges: EdgesPart, date: str, old: str = "") -> tuple[str, list[Column]]:
    """Return the front, and the tables' rows that it has no room for; ``old``: what it says of stakes that stand by old
    numbers."""
    lines, columns, box = _lines(edges), columns_of(answer, edges, wanted_joints(answer)), _box(edges)
    where, told, joints = where_and_what(answer, edges), _told(answer, edges), _of_joints(answer, columns)
    fitted = _fitted(
        columns,
        joints,
        box,
        lambda low, text: old_tall(old) + _fixed(len(lines), where, [*told, *text], low=low),
    )
    if not fitted.beside and box:
        told, box = [*told, " ".join(box)], []
    shown = [table_html(name, head, rows[:fit]) for (name, head, rows), fit in zip(columns, fitted.fits, strict=True)]
    boxed = f'<div class="boxed">{"".join(f"<p>{bold(text)}</p>" for text in box)}</div>' if box else ""
    if joints < len(shown):
        shown[joints] = f'<div class="stacked">{shown[joints]}{boxed}</div>'
    elif boxed:
        shown.append(f"<div>{boxed}</div>")
    line = "".join(f"<p>{marked(text)}</p>" for text in where)
    title = say("forms.front_title", title=brief.title(answer))
    parts = [
        head_html(answer, say("forms.front"), date, title=title, stakes=not answer["offset"], old=old),
        duo_html(answer, f'<div class="wide">{line}</div>', "form-hand"),
        f'<div class="low slab drawn-{fitted.drawn}">{slab_svg(answer, id="form-plan")}</div>' if fitted.drawn else "",
        lines_html(lines, off=True),
        f'<div class="form-tables of-{len(shown)}">{"".join(shown)}</div>',
        f'<ul class="form-told">{"".join(f"<li>{bold(text)}</li>" for text in told)}</ul>',
        foot_html(say("paper.safe_board") if boards_of(answer) else "", say("forms.turn_over")),
    ]
    kind = f"side forms of-wall {'dense ' if fitted.low else ''}row-{fitted.row}"
    front = f'<section class="{kind}" aria-label="{escape(say("forms.front"))}">{"".join(parts)}</section>'
    rest = [(name, head, rows[fit:]) for (name, head, rows), fit in zip(columns, fitted.fits, strict=True)]
    return front, rest if any(rows for _name, _head, rows in rest) else []


@dataclass(frozen=True)
class _Fitted:
    """How high the drawing and a row are, whether all else is smaller, rows of each column; whether the box stands
    beside them."""

    low: bool
    drawn: int
    row: int
    fits: list[int]
    beside: bool


_TRIED = (
    (False, 150, 25),
    (False, 110, 23),
    (True, 110, 19),
    (True, 90, 17),
    (True, 70, 17),
    (True, 0, 17),
    (True, 0, 16),
)
"""Whether all else is smaller, how high the drawing, and the least row with which that is taken; rather none than one
that nobody can read."""


def _fitted(columns: list[Column], joints: int, box: list[str], fixed: Callable[[bool, list[str]], float]) -> _Fitted:
    """Return with which every row stands on the front, the box beside them or under the tables, whichever leaves the
    larger rows; where neither does, as many rows as there is room for."""
    counts = [len(rows) for _name, _head, rows in columns]
    beside_each = max(len(columns), joints + 1)  # the box may stand in a column of its own
    heads = max((heads_tall(one, beside_each) for one in columns), default=0.0) + _UNDER
    high = tall(box, _TYPE, _LEADING, _BOX, 3.0) + 30.0
    found = []
    for beside in (True, False):
        mores = [high if beside and at == joints else 0.0 for at in range(len(counts))]
        for low, drawn, least in _TRIED:
            room = PAGE_TALL - fixed(low, [] if beside else [" ".join(box)]) - drawn - heads
            each = [(room - more) / max(count, 1) for count, more in zip(counts, mores, strict=True)]
            if min(each, default=room) >= least:
                found.append(_Fitted(low, drawn, fitting(ROWS, min(each, default=room)), counts, beside))
                break
    if found:
        return max(found, key=lambda one: one.row)
    low, drawn, _least = _TRIED[-1]
    room = PAGE_TALL - fixed(low, [" ".join(box)]) - drawn - heads
    return _Fitted(low, drawn, ROWS[-1], [max(1, int(room / ROWS[-1]))] * len(counts), False)


def where_and_what(answer: Answer, edges: EdgesPart) -> list[str]:
    """Return where the stakes stand, what is built there, and its footing."""
    return [stakes_at(answer, edges), *brief.wall(answer)]


def stakes_at(answer: Answer, edges: EdgesPart) -> str:
    """Return on which line the stakes stand, or how far off the drawing's they do."""
    offset, line = answer["offset"], next((one for one in edges["lines"] if one["yours"]), None)
    if offset and line is not None and line["key"] == "stakes":
        return say(f"forms.stakes_off_{offset['toward']}", shown=offset["shown"])
    return say("forms.stakes_on", line=line["name"] if line else "")


def _lines(edges: EdgesPart) -> list[LineRow]:
    """What is dug and set off the stakes, from the outside in, the line that they stand on among it."""
    return [one for one in edges["lines"] if one["key"] != "stakes" and (one["yours"] or one["key"] != CENTER)]


def _fixed(lines: int, where: list[str], told: list[str], *, low: bool) -> float:
    """How high all else stands than the drawing and the tables side by side."""
    boxed = tall(where, 13.0, 15.0, 218.0) if low else tall(where, 14.5, 17.4, 264.0)
    row = _LINE_ROW_LOW if low else _LINE_ROW
    texts = tall(told, _TYPE, _LEADING, PAGE_WIDE - 24.0) + 14.0
    return _HEAD + max(_HANDS, boxed + 16.0) + _LINES + row * lines + texts + _FOOT + _GAPS + (0.0 if low else _LARGER)


def _of_joints(answer: Answer, columns: list[Column]) -> int:
    """Which of the columns has the joints, their number where none has."""
    joints = wanted_joints(answer)
    return len(columns) - 1 if joints and not joints["stop"] and joints["rows"] else len(columns)


def _box(edges: EdgesPart) -> list[str]:
    """What the forms take: plywood, the footing's boards and stakes, what is cut; the lengths stand among the lines."""
    *told, last = edges["faces_sheet"]
    footing = edges["footing"]
    cut = [say("forms.footing_cut", told="; ".join(cut_rows(footing)))] if footing and footing["cut"] else []
    return [*told, *cut, last]


def _told(answer: Answer, edges: EdgesPart) -> list[str]:
    """What proves the faces, and what comes before them: stakes outside the dig, the dig, the line again."""
    joints = wanted_joints(answer)
    check = say("forms.diagonals_wall", shown=edges["diagonal_shown"]) if edges["alike"] else _listed(edges)
    told = [*(text for one in edges["seconds"] for text in (one["text"], one["blocked"]) if text), check]
    first = 0 if edges["dug_out"] else 1  # that hubs stand clear of the dig needs no saying
    last = _PASSES + bool(edges["footing_shown"])
    told.append(" ".join([*edges["passes"][first:last], *_under(answer)]))  # how much is dug stands with the build
    told += [*edges["off_line"], *edges["ends"]["told"]]
    return [*told, *([f"*{joints['stop']}*"] if joints and joints["stop"] else [])]


def _under(answer: Answer) -> list[str]:
    """How deep it is dug under a top that rises: under a level one it stands on the back."""
    grades = grades_of(answer)
    return grades["below"] if grades and not is_level(grades) else []


_PASSES = 3
"""Sentences of the passes on a wall without a footing; how far past its ends it is dug stands on the back."""

_MOST_LISTED = 8
"""Bays whose diagonals have room on the front."""


def _listed(edges: EdgesPart) -> str:
    """What proves faces whose diagonals differ from bay to bay: each, or where they are listed."""
    if len(edges["bays"]) > _MOST_LISTED:
        return f"{edges['check']} {say('edges.check_where')}"
    bays = (f"{bay['first']}-{bay['last']} {bay['forth_shown']} / {bay['back_shown']}" for bay in edges["bays"])
    return say("forms.diagonals_each", told="; ".join(bays))
