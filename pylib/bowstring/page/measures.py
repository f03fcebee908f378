"""The face of the form: the live drawing, the help line, the seven measures, and a line for each other question."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape

from bowstring.page.entries import DECIMAL, Entries, said
from bowstring.words import say

ROWS = ("radius", "chord", "sagitta", "arc_length", "central_angle", "tangent_length", "external")
"""The measures of an arc in the order in which they stand on the face."""

ASKS = ("hand", "line", "ends", "way", "fine", "method", "rest")
"""The other questions, each a line that opens a panel."""


def face_html(entries: Entries, made: Mapping[str, object]) -> str:
    """Return the face; ``made`` is what ``faces.numbers`` says of what stands in the fields."""
    rows = "".join(_row(entries, name) for name in ROWS)
    lines = "".join(_line(key) for key in ASKS)
    return (
        '<div class="numbers-face" id="numbers-face">'
        '<figure id="live-drawing" class="live-drawing"></figure>'
        '<p id="tell" class="tell"></p>'
        f'<div class="measures" role="group" aria-label="{said("numbers.measures")}">{rows}</div>'
        f'<p class="unseen" id="how-empty">{said("numbers.how_empty")}</p>'
        f'<p class="unseen" id="how-read">{said("numbers.how_read")}</p>'
        f'<p class="unseen" id="how-given">{said("numbers.how_given")}</p>'
        f'{_bar()}<section class="asks" id="asks" aria-label="{said("numbers.asks")}">{lines}'
        f'<button type="button" class="ask" id="ask-example" data-do="example"><span>{said("numbers.unsure")}</span>'
        f"<b>{said('numbers.example')}</b></button></section></div>"
    )


def _row(entries: Entries, name: str) -> str:
    field = entries.fields[f"arc-{name}"]
    keys = "" if field.kind == "angle" else " data-keys" + (' inputmode="decimal"' if entries.unit in DECIMAL else "")
    text = escape(entries.typed.get(field.id, ""))
    label = escape(say(f"form.{field.word}"))
    unit = said("form.beside.angle" if field.kind == "angle" else f"form.beside.{entries.unit}")
    mark = "" if field.kind == "angle" else " data-unit"
    return (
        f'<div class="m" data-row="{field.id}" data-field="{field.id}" data-state="empty">'
        f'<label for="{field.id}">{label}</label><div class="box">'
        f'<input type="text" id="{field.id}" name="{field.id}" class="number"{keys} autocomplete="off" '
        f'spellcheck="false" autocapitalize="off" aria-describedby="how-empty {field.id}-beside {field.id}-wrong" value="{text}">'
        f'<small id="{field.id}-beside"{mark}>{unit}</small></div>'
        f'<button type="button" class="letgo" data-let-go="{field.id}" hidden>{said("numbers.let_go")}</button>'
        f'<output class="echo" id="{field.id}-echo" for="{field.id}" hidden></output>'
        f'<p class="wrong" id="{field.id}-wrong"></p></div>'
    )


def _bar() -> str:
    """The one question that is open, or the way to the first step: at the thumb until it is scrolled to."""
    return (
        '<div class="ask-bar" id="ask-bar" hidden>'
        '<button type="button" class="ask open" id="ask-open" data-panel="hand"><b id="ask-open-said"></b>'
        f"<i>{said('numbers.answer')}</i></button>"
        f'<button type="button" class="ask go" id="to-step" data-do="face" data-face="stakes" hidden>'
        f"<b>{said('numbers.go')}</b></button></div>"
    )


def _line(key: str) -> str:
    return (
        f'<button type="button" class="ask" id="ask-{key}" data-panel="{key}" data-state="usual">'
        f'<span>{said(f"numbers.line_{key}")}</span><b id="ask-{key}-said"></b></button>'
    )
