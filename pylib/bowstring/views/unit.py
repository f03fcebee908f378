"""What becomes of bare numbers when the unit is changed under them: nothing is converted, so it is said."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.errors import BadJob
from bowstring.lengths import read_length
from bowstring.tape import make_tape
from bowstring.views.fields import Field, all_fields, unit_of
from bowstring.views.form import label_of
from bowstring.views.markup import marked
from bowstring.words import say

READ_AS: dict[str, dict[str, bool]] = {
    "length": {},
    "fine": {"bare": False},
    "zero": {"zero": True},
    "signed": {"signed": True, "zero": True},
}
"""How a field of each kind of length is read."""


def read_field(field: Field, text: str, unit: str) -> float:
    """Return what was typed in a field for a length, in metres, bare numbers in ``unit``; raises ``BadJob``."""
    return read_length(text, unit, field.place, **READ_AS[field.kind]).metres


def unit_note(fields: Mapping[str, str], before: object) -> str:
    """Return as HTML which numbers mean something else than they did in the unit ``before``; empty when none does."""
    unit, old = unit_of(fields), str(before)
    rows = []
    for field in all_fields(fields):
        text = fields.get(field.id, "").strip()
        if not text or field.kind not in READ_AS:
            continue
        now, then = _read(field, text, unit), _read(field, text, old)
        if now == then:
            continue
        shown = make_tape(unit, None).both(now) if now is not None else say("page.unit_unread")
        was = make_tape(old, None).both(then) if then is not None else say("page.unit_unread")
        words = say("page.unit_row", label=label_of(field.id, fields), typed=text, now=shown, then=was)
        rows.append(f"<li>{marked(words)}</li>")
    if not rows:
        return ""
    head = marked(say("page.unit_changed", unit=say(f"form.unit.{unit}"), before=say(f"form.unit.{old}")))
    return f'<div class="banner stop"><p>{head}</p><ul>{"".join(rows)}</ul></div>'


def _read(field: Field, text: str, unit: str) -> float | None:
    try:
        return read_field(field, text, unit)
    except BadJob:
        return None
