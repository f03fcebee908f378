"""The face of the numbers for the page: at once what is read and settled, afterwards what the layout has to say."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.errors import BadJob
from bowstring.page.answering import LastAnswer, read_alone, refused
from bowstring.page.fields import MARKS, field_of
from bowstring.page.talk import Asked
from bowstring.page.unit import unit_note


def shown_numbers(asked: Asked) -> Mapping[str, object]:
    """Return what ``faces.numbers.numbers`` does for ``{"fields", "unit_before", "focus": id, "short": flag}``, with
    ``echoes`` ({id: HTML}: how each field is read), ``errors`` (why one can't be) and ``unit_note`` (HTML: what bare
    numbers mean now that the unit was changed)."""
    from bowstring.faces.numbers import numbers

    fields = asked["fields"]
    errors, echoes = read_alone(fields)
    wrong = {str(row["id"]): row["text"] for row in errors if row["id"]}
    note = unit_note(fields, asked["unit_before"]) if asked.get("unit_before") in MARKS else ""
    face = numbers(fields, focus=str(asked.get("focus") or ""), short=bool(asked.get("short")), wrong=wrong)
    return {**face, "errors": errors, "echoes": echoes, "unit_note": note}


def shown_later(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return what ``faces.numbers_later`` says, with ``errors`` where there is no layout, and for a page that shows the
    panel of what is in the way ``site_plan`` (HTML)."""
    from bowstring.faces.numbers_later import numbers_later, refused_later

    fields = asked["fields"]
    try:
        answered = last.for_fields(fields)
    except BadJob as refusal:
        why = refused(fields, refusal, "")
        return {**refused_later(fields, refusal, field_of(refusal.field, fields) or ""), "errors": why["errors"],
                "echoes": why["echoes"], "site_plan": why["site_plan"], "refused": True}  # fmt: skip
    made: dict[str, object] = {**numbers_later(answered, fields), "refused": False, "site_plan": ""}
    if asked.get("panel") == "way":
        from bowstring.page.siteplan import site_plan_html

        made["site_plan"] = site_plan_html(answered)
    return made
