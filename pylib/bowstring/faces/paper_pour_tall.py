"""How high what stands under the tops on the form sheet's back is: the joints' tops, sign-off, order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from typing import Literal

from bowstring.faces.paper_sizes import BOLD, PAGE_WIDE, PLAIN, set_lines, set_tall, width
from bowstring.report.alone import dug_at, has_ground
from bowstring.report.forms.build_grades import LevelTable, TopPart, TopRow
from bowstring.report.forms.build_pour import PourPart
from bowstring.sheet.markup import marked
from bowstring.words import say
from bowstring.words.stars import unstarred

GAP = 7.0
"""Between what stands under each other on a side."""

_JOINT_TYPE, _JOINT_SIDES = 13.0, 7.0
_JOINT_ROW, _JOINT_ROW_LOW = 22.0, 18.0
_MOST_ROWS = 36
"""Rows of joints' height that a side of their own has room for."""

_SIGN_TYPE, _SIGN_LINE, _SIGN_HEADS = 13.0, 13.5, 38.0
_SIGN_ROW, _SIGN_ROW_LOW, _SIGN_ROW_ROOMY = 21.0, 18.0, 32.0
_SIGN_SIDES, _INITIALS, _INITIALS_LOW = 11.5, 64.0, 46.0

_ORDER_WIDE, _ORDER_WIDE_LOW, _ORDER_SIDES, _BESIDE = 264.0, 296.0, 20.0, 12.0
_MOST_WALL, _UNIT_WALL = 27.0, 17.0
_MOST, _MOST_UNIT, _MOST_LINE, _MOST_LINE_WALL = 44.0, 20.0, 24.0, 30.0
_TOLD, _TOLD_LINE, _CALL, _CALL_LINE = 14.0, 16.8, 15.0, 18.0
_HEADS_LINE, _CALL_SIDES = 14.3, 10.0
_CALL_HEADS, _CALL_ROW, _CALL_ROW_LOW, _BLANK, _BLANK_LOW, _FRAME = 20.0, 26.0, 23.0, 30.0, 26.0, 14.0


def in_columns(rows: Sequence[TopRow], name: str, what: Literal["tight", "dig"], *, dense: bool) -> tuple[str, float]:
    """Return what both forms have at each place, a row a place, in as many columns beside each other as have room, and
    how high that stands, its gap included: nothing of no place. ``name`` is the places' head."""
    if not rows:
        return "", 0.0
    cells, heads = _cells(rows, name, what)
    wide = sum(
        max(width(head, _JOINT_TYPE), *(width(row[column], _JOINT_TYPE) for row in cells)) * BOLD + _JOINT_SIDES
        for column, head in enumerate(heads)
    )
    each = -(-len(cells) // max(1, int(PAGE_WIDE / wide)))
    groups = -(-len(cells) // each)
    head = "".join(f'<th scope="col">{escape(name)}</th>' for name in heads)
    body = "".join(f"<tr>{_joint_row(cells[start::each], groups, len(heads))}</tr>" for start in range(each))
    table = f"<thead><tr>{head * groups}</tr></thead><tbody>{body}</tbody>"
    high = (each + 1) * (_JOINT_ROW_LOW if dense else _JOINT_ROW) + 2.0 + GAP
    return f'<table class="joint-tops by-joint of-{len(heads)}">{table}</table>', high


def _cells(rows: Sequence[TopRow], name: str, what: Literal["tight", "dig"]) -> tuple[list[list[str]], list[str]]:
    """Each place's name with what it has, once where both forms have the same all along, and the columns' heads."""
    outer = [_of(row["outside"], what) for row in rows]
    inner = [_of(row["inside"], what) if row["inside"] else "" for row in rows]
    names, forms = [row["name"] for row in rows], ["outer", "inner"]
    cells = [list(row) for row in zip(names, outer, inner, strict=True)]
    if outer == inner or not any(inner):
        cells, forms = [row[:2] for row in cells], ["both" if outer == inner else "outer"]
    heads = [say(f"forms.{form}") for form in forms]
    if what == "dig" and has_ground(rows):
        heads = [say("walled.over_ground", form=form) for form in heads]
    return cells, [name, *heads]


def _of(top: TopPart, what: Literal["tight", "dig"]) -> str:
    return dug_at(top) if what == "dig" else top["tight"]


def levels_table(levels: LevelTable | None, *, dense: bool) -> tuple[str, float]:
    """Return what lies under a wall's top, as a table, and how high that stands, its gap included."""
    if levels is None:
        return "", 0.0
    head = "".join(f'<th scope="col">{escape(text)}</th>' for text in levels["heads"])
    body = "".join(
        f'<tr><th scope="row">{marked(name)}</th>{"".join(f"<td>{marked(text)}</td>" for text in cells)}</tr>'
        for name, *cells in levels["rows"]
    )
    high = (len(levels["rows"]) + 1) * (_JOINT_ROW_LOW if dense else _JOINT_ROW) + 2.0 + GAP
    return f'<table class="joint-tops"><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table>', high


def digs_head(rows: Sequence[TopRow]) -> str:
    """Return what stands over the places whose cut or fill is told: what that is, where their cells don't say it."""
    return say("grades.stake" if has_ground(rows) else "grades.digs")


def dig_sides(rows: Sequence[TopRow]) -> Iterator[tuple[int, str]]:
    """Yield the cut or fill at each place that has no room on the back, a side at a time, each with its rows."""
    left, name = list(rows), digs_head(rows)
    while left:
        count = next(count for count in range(len(left), 0, -1) if _dig_rows(left[:count], name) <= _MOST_ROWS)
        yield _dig_rows(left[:count], name), in_columns(left[:count], name, "dig", dense=False)[0]
        left = left[count:]


def _dig_rows(rows: Sequence[TopRow], name: str) -> int:
    return round(in_columns(rows, name, "dig", dense=False)[1] / _JOINT_ROW)


def _joint_row(cells: Sequence[Sequence[str]], groups: int, columns: int) -> str:
    """One line across the columns; the last of them may be shorter."""
    made = "".join(
        f'<th scope="row">{marked(name)}</th>{"".join(f"<td>{marked(text)}</td>" for text in tops)}'
        for name, *tops in cells
    )
    return made + "<td></td>" * ((groups - len(cells)) * columns)


def sign_tall(rows: Sequence[tuple[str, str]], *, dense: bool, roomy: bool) -> float:
    """Return how high what is signed off stands, its heads included."""
    blank = _INITIALS_LOW if dense else _INITIALS
    beside = (_ORDER_WIDE_LOW if dense else _ORDER_WIDE) + _BESIDE
    room = PAGE_WIDE - beside - 2 * blank - 2 * _SIGN_SIDES
    least = _SIGN_ROW_LOW if dense else _SIGN_ROW_ROOMY if roomy else _SIGN_ROW
    parts = PLAIN, BOLD  # what must be is bold
    whole = [max((width(row[at], _SIGN_TYPE) * part for row in rows), default=0.0) for at, part in enumerate(parts)]
    rooms = [room * one / max(room, sum(whole)) if sum(whole) > room else one for one in whole]
    return _SIGN_HEADS + sum(
        max(least, _SIGN_LINE * max(map(set_lines, row, (_SIGN_TYPE,) * 2, rooms, parts))) for row in rows
    )


def base_line(pour: PourPart | None, signs: list[tuple[str, str]], *, dense: bool) -> str:
    """Return how much base lies under a slab where the order has room for a line of it beside what is signed off."""
    if pour is None or not pour["base_text"]:
        return ""
    more = set_tall(
        [unstarred(pour["base_text"])], _TOLD, _TOLD_LINE, (_ORDER_WIDE_LOW if dense else _ORDER_WIDE) - _ORDER_SIDES
    )
    has_room = order_tall(pour, dense=dense, wall=False) + more <= sign_tall(signs, dense=dense, roomy=False)
    return pour["base_text"] if has_room else ""


def order_tall(pour: PourPart | None, *, dense: bool, wall: bool) -> float:
    """Return how high the order stands with its frame; ``wall``: that of two pours."""
    if pour is None:
        return 0.0
    room = (_ORDER_WIDE_LOW if dense else _ORDER_WIDE) - _ORDER_SIDES
    size, unit, leading = (_MOST_WALL, _UNIT_WALL, _MOST_LINE_WALL) if wall else (_MOST, _MOST_UNIT, _MOST)
    most = set_lines(pour["number"], size, room, BOLD) * leading
    if (width(pour["number"], size) + width(f" {pour['unit']}", unit)) * BOLD > room:
        most += _MOST_LINE * set_lines(pour["unit"], unit, room, BOLD)
    texts = (pour["why"], *pour["deep"]["thin"], pour["deep"]["edge_building"], pour["low_text"], pour["footing_text"])
    told = set_tall((unstarred(text) for text in texts if text), _TOLD, _TOLD_LINE, room)
    call = 0.0
    if pour["reach"]:
        call = _CALL_LINE * set_lines(say("forms.call", where=pour["reach_where"]), _CALL, room, BOLD) + _CALL_HEADS
        heads = sum(width(say(f"forms.{name}"), _SIGN_TYPE) for name in ("truck_out", "plan", "call_short")) * BOLD
        call += _HEADS_LINE * (heads + 3 * _CALL_SIDES > room)
        call += (_CALL_ROW_LOW if dense else _CALL_ROW) * len(pour["reach"])
    return most + told + call + 2 * (_BLANK_LOW if dense else _BLANK) + _FRAME
