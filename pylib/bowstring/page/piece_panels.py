"""The panel of a line's pieces: the drawing, a short row for each in the order of walking, what few need folded."""

from __future__ import annotations

from html import escape

from bowstring.page.entries import Entries, said
from bowstring.page.fields import Field
from bowstring.page.pieces import AFTER, BEFORE, KINK, MORE, STRAIGHT, TURN
from bowstring.page.rows import LEAST, MOST
from bowstring.words import say

_FOLDED = ("arc_length", "chord", "sagitta")


def pieces_html(page: Entries) -> str:
    """Return what stands in the panel: what is told of the line, its rows, what adds one at either end."""
    return (
        f'{_told("line-drawn")}<p class="ends">{_told("line-long")}</p>'
        f'<div class="pieces">{_start(page)}{_rows(page, BEFORE)}{_own(page)}{_rows(page, AFTER)}</div>'
        f'<div class="pick">{_put("straight", "add_straight")}{_put("arc", "add_arc")}</div><p>{_told("line-ends")}</p>'
    )


def _start(page: Entries) -> str:
    """What is said of the line's start: it stands open until a piece comes before the staked arc."""
    return (
        f'<details id="line-start" open><summary>{said("pieces.start")}</summary><div class="pick" data-at="start">'
        f"{_put('straight', 'first_straight')}{_put('arc', 'first_arc')}</div>"
        f"{page.field(page.fields['station'])}</details>"
    )


def _told(name: str) -> str:
    """The place of what is told as it is typed: shown with what is read of the fields."""
    return f'<span class="echo" id="{name}-echo"></span>'


def _put(what: str, word: str, kind: str = "") -> str:
    return f'<button type="button" class="small{kind}" data-put="{what}">{said(f"pieces.{word}")}</button>'


def _rows(page: Entries, group: str) -> str:
    rows: dict[str, dict[str, Field]] = {}
    for field in page.fields.values():
        if field.place.startswith(f"{group}["):
            _group, row, name = field.id.split("-")
            rows.setdefault(row, {})[name] = field
    inside = "".join(_row(page, group, int(row), fields) for row, fields in rows.items())
    return f'<div data-rows="{group}" data-least="{LEAST[group]}" data-most="{MOST[group]}">{inside}</div>'


def _row(page: Entries, group: str, row: int, entries: dict[str, Field]) -> str:
    name, kept = f"{group}-{row}", page.field(entries[MORE])
    names = f'<span class="st">{said("pieces.straight")}</span><span class="ar">{said("pieces.arc")}</span>'
    folded = "".join(page.field(entries[one]) for one in _FOLDED)
    return (
        f'<fieldset class="pc"><legend class="unseen">{escape(say("form.piece_row", number=row + 1))}</legend>'
        f'{_join(page, name, entries[KINK])}<b class="no" aria-hidden="true"></b>'
        f'<details class="more"><summary>{names} {_told(f"{name}-long")}</summary>'
        f'<div class="fields ar">{folded}</div>{_put("out", "out")}</details>'
        f'<button type="button" class="small take ar" data-do="line-at">{said("pieces.stake")}</button>'
        f'<div class="st">{page.short(entries[STRAIGHT])}</div><div class="ar">{page.short(entries["radius"], "R")}'
        f"{page.short(entries['central_angle'])}{page.field(entries[TURN])}</div>{kept}</fieldset>"
    )


def _own(page: Entries) -> str:
    """The row of the arc that is staked: its numbers stand in the rows of the face."""
    return (
        f'<div class="pc own" data-kind="arc" data-first>{_join(page, "own", page.fields[KINK])}<b class="no">1</b>'
        f"<p>{said('pieces.staked')} {_told('own-long')}<br>{_told('own-said')}</p>"
        f'<button type="button" class="small take" data-do="panel-close">{said("pieces.change")}</button></div>'
    )


def _join(page: Entries, name: str, kink: Field) -> str:
    """How a piece meets the one before it; a tap opens its kink, and puts a piece in before it."""
    return (
        f'<div class="jn"><details><summary><span class="unseen">{said("form.piece_kink")}</span> '
        f"{_told(f'{name}-join')}</summary>{page.field(kink)}"
        f'<div class="pick">{_put("straight", "put_straight")}{_put("arc", "put_arc")}</div></details>'
        f"{_put('tangent', 'make_tangent')}</div>"
    )
