"""What the page shows for what stands in its fields: the sheet, the advice, or why there is none."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape

from bowstring import Answer, BadJob, JobForm, answering
from bowstring.demo import DEMO
from bowstring.job.letters import of_place
from bowstring.job.link import write_link
from bowstring.page.fields import (
    MARKS,
    Field,
    all_fields,
    field_of,
    fields_of_job,
    is_other_mark,
    job_of_fields,
    stands_for_itself,
)
from bowstring.page.form import label_of
from bowstring.page.rows import LENGTH_ROWS
from bowstring.page.siteplan import advice_html, site_plan_html
from bowstring.page.talk import Asked, ComputedSheet, ErrorRow, RefusedSheet
from bowstring.page.unit import is_length, shown_field, tape_of, unit_note
from bowstring.report.linked import with_method
from bowstring.sheet.entries import entry_name
from bowstring.sheet.html import part_html, sheet_html
from bowstring.sheet.markup import marked
from bowstring.units.angles import both_angles, read_angle
from bowstring.units.tape import Tape
from bowstring.words import say

EXAMPLE_TEXTS = ("title", "note", "ends-A", "ends-B")
"""Fields whose text nobody types twice: where one still holds the example's, the form was not made one's own."""


class LastAnswer:
    """The answer to what stands in the fields, kept until they change: one keystroke asks several questions."""

    def __init__(self) -> None:
        self._fields: Mapping[str, str] | None = None
        self._answer: Answer | None = None

    def for_fields(self, fields: Mapping[str, str]) -> Answer:
        """Return the answer to what stands in the fields, its parts worked out as they are read; raises ``BadJob``."""
        if self._answer is None or self._fields != fields:
            self._answer = answering(job_of_fields(fields))
            self._fields = dict(fields)
        return self._answer


def shown_sheet(asked: Asked, last: LastAnswer) -> ComputedSheet | RefusedSheet:
    """Return what the page shows for ``{"fields": {id: text}, "unit_before": unit or null, "address": text}``.

    ``{"sign": "computed", "sheet": HTML, "site_plan": HTML, "example": flag, "stop": flag, "link": text,
    "link_note": text, "unit_note": HTML, "echoes": {id: HTML}, "errors": []}`` or ``{"sign": "refused", "site_plan":
    HTML or "", "errors": [{"id", "field", "text", "line"}], "unit_note": HTML, "echoes": {id: HTML}}``. ``site_plan``:
    to draw on, of a refused job only where its obstacles are refused; ``stop``: not to be built from yet;
    ``link_note``: why there is no link; ``unit_note``: what bare numbers mean now that the unit was changed from
    ``unit_before``; ``address``: what the sheet's link begins with;
    ``id`` is a field's id or null, ``field`` its place in the job, ``line`` the text behind its label.

    Raises ``ValueError`` for fields that aren't the form's.
    """
    fields = asked["fields"]
    if not all(isinstance(name, str) and isinstance(text, str) for name, text in fields.items()):
        raise ValueError("fields must be texts by name")
    return _sheet(fields, last, asked.get("unit_before"), str(asked.get("address") or ""))


def shown_advice(asked: Asked, last: LastAnswer) -> dict[str, str]:
    """Return ``{"advice": HTML, "text": HTML}`` for what ``shown_sheet`` takes: the part of the sheet that says which
    way to take, and its sentence beside the site's plan.

    It is what somebody waits for who draws an obstacle, and there long before the drawings of the whole sheet. Empty
    for a job that can't be used.
    """
    try:
        answered = last.for_fields(asked["fields"])
    except BadJob:
        return {"advice": "", "text": ""}
    return {"advice": part_html(answered, "advice"), "text": advice_html(answered)}


def _sheet(
    fields: Mapping[str, str], last: LastAnswer, unit_before: object, address: str
) -> ComputedSheet | RefusedSheet:
    note = unit_note(fields, unit_before) if unit_before in MARKS else ""
    try:
        job = job_of_fields(fields)
        answered = last.for_fields(fields)
        link, why_none = link_of(with_method(job, answered))
    except BadJob as refusal:
        return _refused(fields, refusal, note)
    echoes = {field_of(row["field"], fields): marked(row["text"]) for row in answered["readings"]}
    tape = tape_of(fields)
    for field in all_fields(fields):
        if field.id in echoes and field.kind in LENGTH_ROWS:  # several lengths in one text: how all of them were read
            echoes[field.id] = marked(_echo(field, fields[field.id].strip(), tape))
    echoes.update(_mark_told(fields, tape))
    whole = f"{address}#{link}" if address and link else link
    return {
        "sign": "computed",
        "sheet": _banner(fields) + note + sheet_html(answered, whole, _label),
        "site_plan": site_plan_html(answered),
        "link": link,
        "link_note": why_none,
        "stop": bool(answered["stops"] or note),
        "unit_note": note,
        "example": _typed(fields) == fields_of_job(DEMO),
        "echoes": {name: text for name, text in echoes.items() if name},
        "errors": [],
    }


def _mark_told(fields: Mapping[str, str], tape: Tape) -> dict[str, str]:
    """Return what is said beside a mark that is another unit's."""
    if not is_other_mark(fields):
        return {}
    return {"mark": marked(say("page.mark_other", mark=fields["mark"].strip(), used=tape.show_mark()))}


def link_of(job: JobForm) -> tuple[str, str]:
    """Return a job's link, or an empty one and why there is none: a job may hold more. Raises ``BadJob``."""
    try:
        return write_link(job), ""
    except BadJob as refusal:
        if refusal.field != "link":
            raise
        return "", say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)


def _label(place: str) -> str:
    """Return a field's label where the form has one: nobody who fills in a form knows a job's keys."""
    return label_of(field_of(place) or "") or entry_name(place)


def _typed(fields: Mapping[str, str]) -> dict[str, str]:
    return {name: text.strip() for name, text in fields.items() if text.strip() and not stands_for_itself(name, text)}


def _banner(fields: Mapping[str, str]) -> str:
    """Return what is said above a sheet that is the example's, whole or in part."""
    example, typed = fields_of_job(DEMO), _typed(fields)
    if typed == example:
        return f'<p class="banner example">{escape(say("page.example"))}</p>'
    if not any(name in example and typed.get(name) == example[name] for name in EXAMPLE_TEXTS):
        return ""
    labels = [label_of(name) for name in example if typed.get(name) == example[name] and name != "unit"]
    words = say("page.leftovers", labels=say("page.leftover_joint").join(labels))
    return f'<p class="banner leftover">{escape(words)}</p>'


def _refused(fields: Mapping[str, str], refusal: BadJob, note: str) -> RefusedSheet:
    """Return why there is no sheet: what stopped the job, then every other field that can't be read."""
    errors, tape = [_error(field_of(refusal.field, fields), refusal, fields)], tape_of(fields)
    echoes = _mark_told(fields, tape)
    for field in all_fields(fields):
        text = fields.get(field.id, "").strip()
        if not text:
            continue
        try:
            echo = _echo(field, text, tape)
        except BadJob as other:
            if field.id != errors[0]["id"]:
                errors.append(_error(field.id, other, fields))
            continue
        if echo:
            echoes[field.id] = marked(echo)
    plan = _plan_without(fields, refusal)
    return {"sign": "refused", "site_plan": plan, "errors": errors, "echoes": echoes, "unit_note": note}


def _plan_without(fields: Mapping[str, str], refusal: BadJob) -> str:
    """Return the site's plan without its obstacles where one of those is refused: one that has no outline yet is drawn
    on it. Empty where the arc itself can't be drawn."""
    if not refusal.field.startswith("ground"):
        return ""
    try:
        job = job_of_fields({name: text for name, text in fields.items() if not name.startswith("ground-")})
        return site_plan_html(answering(job))
    except BadJob:
        return ""


def _echo(field: Field, text: str, tape: Tape) -> str:
    """Return how one field is read by itself, empty where it is no number; raises ``BadJob``."""
    if field.kind == "angle":
        return both_angles(read_angle(of_place(text, field.place), field.place).degrees)
    return shown_field(field, text, tape.unit, tape) if is_length(field) else ""


def _error(name: str | None, refusal: BadJob, fields: Mapping[str, str]) -> ErrorRow:
    text = say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)
    label = say("form.section_arc") if refusal.field == "arc" else label_of(name, fields) if name else ""
    line = say("page.error", label=label, text=text) if label else text
    return {"id": name, "field": refusal.field, "text": text, "line": line}
