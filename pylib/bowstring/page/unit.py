"""What becomes of bare numbers when the unit is changed under them: nothing is converted, so it is said."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from bowstring.errors import BadJob, bad
from bowstring.job.form import JobForm
from bowstring.job.letters import of_place
from bowstring.page.fields import Field, all_fields, job_of_fields, unit_of
from bowstring.page.labels import label_of
from bowstring.page.pieces import kept_in
from bowstring.page.rows import LENGTH_ROWS, lengths_in, shown_in
from bowstring.sheet.markup import marked
from bowstring.units.lengths import UNITS, read_length
from bowstring.units.tape import Tape, make_tape
from bowstring.words import say

READ_AS: dict[str, dict[str, bool]] = {
    "length": {},
    "fine": {"bare": False},
    "zero": {"zero": True},
    "bed": {"bare": False, "zero": True},
    "signed": {"signed": True, "zero": True},
}
"""How a field of each kind of length is read."""


def read_field(field: Field, text: str, unit: str) -> float:
    """Return what was typed in a field for a length, in metres, bare numbers in ``unit``; raises ``BadJob``."""
    return read_length(of_place(text, field.place), unit, field.place, **READ_AS[field.kind]).metres


def tape_of(fields: Mapping[str, str]) -> Tape:
    """Return the tape that is chosen, or the unit's usual one where its mark can't be used."""
    try:
        return make_tape(unit_of(fields), fields.get("mark", "").strip() or None)
    except BadJob:
        return make_tape(unit_of(fields), None)


def is_length(field: Field) -> bool:
    """Tell whether lengths are typed in a field."""
    return field.kind in READ_AS or field.kind in LENGTH_ROWS


def shown_field(field: Field, text: str, unit: str, tape: Tape) -> str:
    """Return what was typed for lengths as ``tape`` shows it, bare numbers in ``unit``; raises ``BadJob``."""
    if field.kind in LENGTH_ROWS:
        return shown_in(tape, lengths_in(field.kind, text, unit, field.place))
    return tape.both(read_field(field, text, unit))


def is_unit_open(fields: Mapping[str, str]) -> bool:
    """Tell whether bare numbers stand under another unit than they were typed in, and nobody has said which holds."""
    return bool(unit_note(fields))


def settled_job(fields: Mapping[str, str]) -> JobForm:
    """Return the job of what stands in the page's fields, as ``job_of_fields`` does: whatever the page makes of its job
    comes by here. Raises ``BadJob`` where nobody has said which unit bare numbers are in, too."""
    if is_unit_open(fields):
        raise bad("unit", "page.unit_open")
    return job_of_fields(fields)


def unit_note(fields: Mapping[str, str]) -> str:
    """Return as HTML which numbers mean something else than they did in the unit ``unit_before`` of the fields; empty
    when none does."""
    unit, old = unit_of(fields), fields.get("unit_before", "")
    if old not in UNITS:
        return ""
    rows = [row for typed in (fields, *kept_in(fields)) for row in _changed(typed, unit, old)]
    if not rows:
        return ""
    head = marked(say("page.unit_changed", unit=say(f"form.unit.{unit}"), before=say(f"form.unit.{old}")))
    return f'<div class="banner stop"><p>{head}</p><ul>{"".join(rows)}</ul></div>'


def _changed(fields: Mapping[str, str], unit: str, old: str) -> Iterator[str]:
    """Yield a row for each number that means something else in one unit than in the other."""
    for field in all_fields(fields):
        text = fields.get(field.id, "").strip()
        if not text or not is_length(field):
            continue
        if _read(field, text, unit) == _read(field, text, old):
            continue
        shown, was = (_shown(field, text, one) for one in (unit, old))
        words = say("page.unit_row", label=label_of(field.id, fields), typed=text, now=shown, then=was)
        yield f"<li>{marked(words)}</li>"


def _read(field: Field, text: str, unit: str) -> object:
    try:
        if field.kind in LENGTH_ROWS:
            return lengths_in(field.kind, text, unit, field.place)
        return read_field(field, text, unit)
    except BadJob:
        return None


def _shown(field: Field, text: str, unit: str) -> str:
    tape = make_tape(unit, None)
    try:
        if field.kind == "length":
            return tape.show(read_field(field, text, unit))  # the other unit's size stands beside it
        return shown_field(field, text, unit, tape)
    except BadJob:
        return say("page.unit_unread")
