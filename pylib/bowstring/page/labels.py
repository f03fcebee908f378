"""What a field is called, wherever it's told of."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.job.terms import is_lined
from bowstring.page.fields import all_fields
from bowstring.page.rows import ROW_NAMES
from bowstring.words import is_said, say

Typed = Mapping[str, str]


def label_of(field_id: str, typed: Typed | None = None) -> str:
    """Return a field's label by its id, as it stands in lists: with its row where there are several."""
    for field in all_fields(typed or {}):
        if field.id == field_id:
            pieces = field_id.split("-")
            # A choice's label often begins a sentence that its options end: in lists it has a short name.
            word = f"form.{field.word}.short" if is_said(f"form.{field.word}.short") else f"form.{field.word}"
            if typed and is_lined(typed) and is_said(f"{word}.of_line"):
                word = f"{word}.of_line"
            label = say(word, end=pieces[1] if len(pieces) > 1 else "")
            if pieces[0] in ROW_NAMES:
                return f"{say(f'form.row_{pieces[0]}', number=int(pieces[1]) + 1)}: {label}"
            if pieces[0] == "control":
                return f"{say('form.row_control', number=int(pieces[2]) + 1)}: {label}"
            if pieces[0] == "ties":
                return f"{say('form.tie_row', end=pieces[1], number=int(pieces[2]) + 1)}: {label}"
            return label
    return ""
