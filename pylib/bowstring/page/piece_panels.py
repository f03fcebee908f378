"""The panel of a line's other pieces: a short row for each, what few need of it folded."""

from __future__ import annotations

from html import escape

from bowstring.page.entries import Entries, said
from bowstring.page.fields import Field
from bowstring.page.pieces import AFTER, BEFORE, KINK, MORE, STRAIGHT, TURN
from bowstring.page.rows import LEAST, MOST
from bowstring.words import say

_FIRST = (STRAIGHT, "radius", "central_angle", "arc_length", TURN)
_FOLDED = ("chord", "sagitta", KINK)


def pieces_html(page: Entries) -> str:
    """Return what stands in the panel: what comes before the arc, its own kink, and what comes after."""
    return (
        f'<p class="help">{said("form.pieces_help")}</p>'
        f'<h3 class="sub">{said("form.section_before")}</h3>{_rows(page, BEFORE)}'
        f'<h3 class="sub">{said("form.section_after")}</h3>{_rows(page, AFTER)}'
        f"{page.fold('kink', page.plain([KINK]))}"
    )


def _rows(page: Entries, group: str) -> str:
    rows: dict[str, dict[str, Field]] = {}
    for field in page.fields.values():
        if field.place.startswith(f"{group}["):
            _group, row, name = field.id.split("-")
            rows.setdefault(row, {})[name] = field
    inside = "".join(_row(page, group, int(row), fields) for row, fields in rows.items())
    return f'<div data-rows="{group}" data-least="{LEAST[group]}" data-most="{MOST[group]}">{inside}</div>'


def _row(page: Entries, group: str, row: int, entries: dict[str, Field]) -> str:
    first, folded = ("".join(page.field(entries[name]) for name in names) for names in (_FIRST, _FOLDED))
    used = any(page.typed.get(entries[name].id, "").strip() for name in _FOLDED)
    return (
        f'<fieldset class="row piece"><legend>{escape(say(f"form.row_{group}", number=row + 1))}</legend>'
        f'<div class="fields">{first}</div><details class="fold"{" open" if used else ""}>'
        f'<summary>{said("form.section_piece")}</summary><div class="fields">{folded}</div></details>'
        f"{page.field(entries[MORE])}</fieldset>"
    )
