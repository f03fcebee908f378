"""How high what stands around the tables on the form sheet's front is, and how its tables are set into what is left."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from bowstring.faces.paper_form_tables import Column
from bowstring.faces.paper_head import OLD_LINE
from bowstring.faces.paper_sizes import BOLD, PAGE_TALL, PAGE_WIDE, fitting, set_lines, set_tall, width
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import LineRow
from bowstring.sheet import brief
from bowstring.words import say

ROWS = (29, 27, 25, 23, 21, 19, 17)
"""Heights of a row that the style has for this sheet."""
DRAWN = ((False, 150), (True, 110), (True, 90), (True, 70))
"""Whether all around the tables is smaller, and how high the plan then is: the first with which every row has room."""
BESIDE = ((False, 225), (True, 225), (True, 190), (True, 150))
"""The same where the plan stands beside what proves the edges: how wide it is then."""
_TALLER = 1.134
"""How high such a plan is, of its width."""
MANY = 12
"""Rows over which what stands around the tables is smaller."""

GAP = 7.0
_HEAD, _TITLE, _TITLE_LINE, _TITLE_ROOM, _LONG = 65.0, 30.0, 32.4, 578.0, 34
_MEASURES, _MEASURES_LINE, _BETWEEN = 16.0, 19.2, "    "
_FRAME, _HAND, _PLAN_FRAME = 14.0, 56.0, 6.0
_LINES, _LINE_ROW, _LINE_TYPE, _LINE_SIDES, _SIDES, _LEAST_NAME = 20.0, 23.0, 15.0, 3.0, 10.0, 60.0
_BOX_ROOM, _BOX_WIDE = 212.0, 242.0
_HEAD_TYPE, _HEAD_LINE = 13.0, 14.3
_TITLE_OVER, _TITLE_OVER_LINE, _HEADS = 15.0, 18.0, 18.0
_FOOT, _FOOT_LINE, _FOOT_GAP = 21.0, 17.0, 12.0


@dataclass(frozen=True)
class Around:
    """The texts of a front around its tables.

    Attributes:
        title: its head's; slab: where the slab is; lines: the lines along the curve; box: what is cut.
        told: what proves the edges; foot: the last line's two ends; beside: whether the plan stands beside ``told``.
    """

    title: str
    slab: list[str]
    lines: list[LineRow]
    box: list[str]
    told: list[str]
    foot: tuple[str, str]
    beside: bool


@dataclass(frozen=True)
class Fitted:
    """How a front is set: whether all around its tables is smaller, how high its plan and a row are, the tables in
    their columns, what none has room for, and what is left, pixels."""

    dense: bool
    drawn: int
    row: int
    shown: list[list[Column]]
    rest: list[Column]
    left: float


def fitted(
    answer: Answer, arounds: Mapping[bool, Around], columns: list[Column], old: float, *, dense: bool = False
) -> Fitted:
    """Return how a front is set: with nothing smaller than it must be for every row to stand there, every table whole
    before one goes on elsewhere.

    ``arounds``: what stands around the tables, by whether it is smaller; ``dense``: whether it is smaller anyhow.
    ``old``: how high the line stands of what stands by old numbers: it has its room whether it's there or not, so that
    no row has to go to another side for it.
    """
    most = max((len(rows) for _name, _head, rows in columns), default=0)
    heads = max((heads_tall(one, len(columns)) for one in columns), default=0.0)
    rooms: list[tuple[bool, int, float]] = []
    for small, drawn in BESIDE if arounds[False].beside else DRAWN:
        if not small and (dense or most > MANY):
            continue
        beside, plan = (drawn, 0.0) if arounds[small].beside else (0, drawn + _PLAN_FRAME + GAP)
        room = PAGE_TALL - _around(answer, arounds[small], dense=small, beside=beside) - plan
        rooms.append((small, drawn, room))
        row = fitting(ROWS, (room - heads - old) / max(most, 1))
        if most * ROWS[-1] <= room - heads - OLD_LINE:
            left = room - heads - old - row * most
            return Fitted(small, drawn, row, [[one] for one in columns], [], left)
    return _flowing(columns, rooms, heads)


def _flowing(columns: list[Column], rooms: list[tuple[bool, int, float]], heads: float) -> Fitted:
    """How a front is set that has no room for a table whole: what has none under a shorter one, or on another side."""
    found: list[Fitted] = []
    for small, drawn, high in rooms:
        room = high - heads
        for row in ROWS[::-1]:
            shown, rest = flowed(columns, (room - OLD_LINE) / row, heads / row)
            if rest and row != ROWS[-1]:
                break
            last = Fitted(small, drawn, row, shown, rest, 0.0)
        found.append(last)
        if not last.rest:
            return last
    return found[0]


def flowed(columns: list[Column], room: float, heads: float) -> tuple[list[list[Column]], list[Column]]:
    """The tables in their columns, what one has no room for under a shorter one; and what none has room for. ``room``
    and ``heads`` are rows: how many a column has room for, and how many a table's heads take."""
    fit = int(room)
    shown = [[(name, head, rows[:fit])] for name, head, rows in columns]
    left = [room - len(rows[:fit]) for _name, _head, rows in columns]
    rest: list[Column] = []
    for name, head, rows in columns:
        over = rows[fit:]
        place = max(range(len(columns)), key=left.__getitem__)
        here = max(0, int(left[place] - heads)) if over else 0
        if here:
            shown[place].append((name, head, over[:here]))
            left[place] -= heads + len(over[:here])
        if over[here:]:
            rest.append((name, head, over[here:]))
    return shown, rest


def heads_tall(column: Column, columns: int) -> float:
    """Return how high a table's title and heads stand over its rows, of so many columns beside each other."""
    name, heads, _rows = column
    room = (PAGE_WIDE - 14.0 * (columns - 1)) / max(columns, 1)
    wide = sum(width(head, 13.0) * BOLD + 8.0 for head in heads) + 32.0
    return set_lines(name, _TITLE_OVER, room, BOLD) * _TITLE_OVER_LINE + _HEADS + (14.3 if wide > room else 0.0)


def _around(answer: Answer, around: Around, *, dense: bool, beside: int) -> float:
    """How high all stands but the tables, and but a plan that isn't so wide ``beside`` what proves the edges."""
    size, leading, room = (13.0, 15.0, 224.0) if dense else (14.5, 17.4, 270.0)
    slab = set_tall(around.slab, size, leading, room) + _FRAME
    size, leading, room = (14.0, 16.8, 252.0) if dense else (16.0, 19.2, 206.0)
    hand = set_tall([brief.stand(answer)], size, leading, room) + _HAND
    size, leading = (13.0, 14.5) if dense else (14.0, 16.8)
    box = set_tall(around.box, size, leading, _BOX_ROOM, part=BOLD) + _FRAME if around.box else 0.0
    lines = _lines_tall(around.lines, PAGE_WIDE - (_BOX_WIDE if box else 0.0))
    size, leading = (13.0, 15.0) if dense else (14.0, 17.0)
    room = PAGE_WIDE - 24.0 - (beside + _PLAN_FRAME + GAP if beside else 0.0)
    told = sum(set_tall([text], size, leading, room) for text in around.told) + _FRAME
    told = max(told, beside * _TALLER + _PLAN_FRAME) if beside else told
    return _top(answer, around.title) + max(slab, hand) + max(box, lines) + told + _foot(*around.foot) + 5 * GAP


def _lines_tall(rows: list[LineRow], room: float) -> float:
    """How high the table of the lines stands: what their names have room for is what their numbers leave."""
    cells = [[row["radius_shown"], row["chord_shown"], row["sagitta_shown"], row["arc_length_shown"]] for row in rows]
    heads = [say(f"forms.{name}") for name in ("radius", "chord", "mid_ordinate", "arc")]
    words = [max(width(word, _HEAD_TYPE) for word in head.split()) for head in heads]
    wide = [
        max(least, *(width(text, _LINE_TYPE) for text in column)) * BOLD + _SIDES
        for least, column in zip(words, zip(*cells, strict=True), strict=True)
    ]
    left = max(room - sum(wide) - _SIDES, _LEAST_NAME)
    broken = any(set_lines(head, _HEAD_TYPE, one - _SIDES, BOLD) > 1 for head, one in zip(heads, wide, strict=True))
    return (
        _LINES
        + broken * _HEAD_LINE
        + sum(max(_LINE_ROW, set_lines(row["name"], _LINE_TYPE, left, BOLD) * _LINE_TYPE + _LINE_SIDES) for row in rows)
    )


def _top(answer: Answer, title: str) -> float:
    """How high the head stands."""
    over = set_lines(title, _TITLE, _TITLE_ROOM, BOLD) - 1 if len(title) <= _LONG else 0
    measures = set_lines(_BETWEEN.join(brief.measures(answer)), _MEASURES, PAGE_WIDE, BOLD) - 1
    measures += 1 if brief.drawing(answer) else 0
    return _HEAD + over * _TITLE_LINE + measures * _MEASURES_LINE


def _foot(left: str, right: str) -> float:
    room = PAGE_WIDE - width(right, 14.0) * BOLD - _FOOT_GAP
    return _FOOT + (set_lines(left, 14.0, room) - 1) * _FOOT_LINE
