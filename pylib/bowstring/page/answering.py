"""The answer to what stands in the page's fields, its link, and the long sheet."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring import Answer, BadJob, answering
from bowstring.page.beside import for_layout
from bowstring.page.fields import field_of, job_of_fields
from bowstring.page.labels import label_of
from bowstring.page.talk import Asked
from bowstring.page.unit import is_unit_open, unit_note
from bowstring.sheet.entries import entry_name
from bowstring.words import say


class LastAnswer:
    """The answer to what stands in the fields, kept until they change: several faces ask for one job."""

    def __init__(self) -> None:
        self._fields: Mapping[str, str] | None = None
        self._answer: Answer | None = None

    def for_fields(self, fields: Mapping[str, str]) -> Answer:
        """Return the answer to what stands in the fields, its parts worked out as they are read; raises ``BadJob``."""
        asked = for_layout(fields)
        if self._answer is None or self._fields != asked:
            self._answer = answering(job_of_fields(asked))
            self._fields = asked
        return self._answer


def shown_sheet(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return the long sheet, every part of it: ``{"fields", "address", "unit_before"}`` gives ``{"sheet": HTML}`` or
    ``{"error"}``. Where nobody has said which unit the numbers are in, that is all it says."""
    from bowstring.page.linking import whole_link
    from bowstring.sheet.html import sheet_html

    try:
        answered = last.for_fields(asked["fields"])
        link, _why_none = whole_link(asked, answered)
    except BadJob as refusal:
        return {"error": say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)}
    if is_unit_open(asked):
        return {"sheet": unit_note(asked["fields"], asked["unit_before"])}
    return {"sheet": sheet_html(answered, link, label_at)}


def shown_link(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return ``{"link", "link_note"}`` for ``{"fields"}``: the part after ``#``; empty for a job that can't be used."""
    from bowstring.page.linking import whole_link

    try:
        link, why_none = whole_link({**asked, "address": ""}, last.for_fields(asked["fields"]))
    except BadJob:
        return {"link": "", "link_note": ""}
    return {"link": link, "link_note": why_none}


def label_at(place: str) -> str:
    """Return a field's label where the form has one: nobody who fills in a form knows a job's keys."""
    return label_of(field_of(place) or "") or entry_name(place)
