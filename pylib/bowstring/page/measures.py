"""The face of the form: the live drawing, the help line, the seven measures, and a line for each other question."""

from __future__ import annotations

from html import escape

from bowstring.faces.measure_rows import MeasureRow, is_stopped
from bowstring.faces.numbers import NumbersFace
from bowstring.faces.one_line import USUAL, QuestionLine
from bowstring.faces.questions import ASKS, LATE, ROWS
from bowstring.page.entries import DECIMAL, Entries, said
from bowstring.words import say

LET_GO_FROM = 3
"""So many given, and each can be let go with a button of its own."""


def face_html(entries: Entries, made: NumbersFace) -> str:
    """Return the face; ``made`` is what is said of what stands in the fields."""
    given = sum(bool(entries.typed.get(name)) for name in made["rows"])
    rows = "".join(_row(entries, name, made["rows"][f"arc-{name}"], given >= LET_GO_FROM) for name in ROWS)
    lines = "".join(_line(key, made["lines"][key], made["sign"]) for key in ASKS)
    hows = "".join(f'<p class="unseen" id="how-{how}">{said(f"numbers.how_{how}")}</p>' for how in _HOWS)
    return (
        f'<div class="scroll" id="numbers-face" data-sign="{made["sign"]}" data-ask="{made["ask"]}">'
        f'<div class="over"><figure id="live-drawing">{made["drawing"]}</figure>'
        f'<div class="tells"><p id="tell" class="tell">{made["tell"][""]}</p>{_unit(entries)}</div>'
        '<p id="follows" class="tell" hidden></p><p id="of-example" class="tell" hidden></p></div>'
        f'<div class="measures" role="group" aria-label="{said("numbers.measures")}">{rows}</div>{hows}'
        f'{_bar(made)}<section class="asks" id="asks" aria-label="{said("numbers.asks")}">{lines}'
        f'<button type="button" class="ask" id="ask-example" data-do="example"><span>{said("numbers.unsure")}</span>'
        f"<b>{said('numbers.example')}</b></button></section></div>"
    )


_HOWS = ("empty", "read", "given")
"""What a row is told as to somebody who can't see it."""


def how_of(state: str) -> str:
    """Return the id of the text that says what a row of a state is."""
    return f"how-{state if state in _HOWS else 'given'}"


def _row(entries: Entries, name: str, row: MeasureRow, lets_go: bool) -> str:
    field = entries.fields[f"arc-{name}"]
    keys = ' data-keys="angle"'
    if field.kind != "angle":
        keys = ' data-keys="length"' + (' inputmode="decimal"' if entries.unit in DECIMAL else "")
    text = escape(entries.typed.get(field.id, ""))
    described = f"{how_of(row['state'])} {field.id}-beside {field.id}-wrong"
    let_go = "" if text and lets_go else " hidden"
    return (
        f'<div class="m" data-row="{field.id}" data-field="{field.id}" data-state="{row["state"]}">'
        f'<label for="{field.id}">{escape(say(f"form.{field.word}"))}</label><div class="box">'
        f'<input type="text" id="{field.id}" name="{field.id}" class="number"{keys} autocomplete="off" '
        f'spellcheck="false" autocapitalize="off" placeholder="{escape(row["out"])}" '
        f'aria-describedby="{described}" value="{text}">'
        f'<small id="{field.id}-beside">{escape(row["beside"])}</small></div>'
        f'<button type="button" class="letgo" data-let-go="{field.id}"{let_go}>{said("numbers.let_go")}</button>'
        f'<p class="wrong unseen" id="{field.id}-wrong">{escape(row["told"])}</p></div>'
    )


def _unit(entries: Entries) -> str:
    """The unit, and in one tap the way to another."""
    unit = f"<span data-unit>{said(f'form.beside.{entries.unit}')}</span>"
    return (
        '<button type="button" id="unit-button" data-do="panel" data-panel="fine">'
        f'<span class="unseen">{said("form.unit")} </span>{unit}</button>'
    )


def _bar(made: NumbersFace) -> str:
    """The one question that is asked, or the way to the first step: at the thumb until it is scrolled to."""
    ask, shown = made["ask"], made["sign"] == "computed" and not is_stopped(made["rows"])
    hidden, open_hidden, go_hidden = ("" if there else " hidden" for there in (shown, ask, not ask))
    asked = made["lines"][ask]["asked"] if ask else ""
    return (
        f'<div class="ask-bar" id="ask-bar"{hidden}>'
        f'<button type="button" class="ask open" id="ask-open" data-do="answer" data-panel="{ask or "hand"}"'
        f"{open_hidden}>"
        f'<span class="sign stop" aria-hidden="true">!</span><b id="ask-open-said">{escape(asked)}</b>'
        f"<i>{said('numbers.answer')}</i></button>"
        f'<button type="button" class="ask go" id="to-step" data-do="face" data-face="stakes"{go_hidden}>'
        f'<b id="to-step-said">{said("numbers.go")}</b></button></div>'
    )


def _line(key: str, line: QuestionLine, sign: str) -> str:
    late = key in LATE
    hidden = " hidden" if late and sign != "computed" and line["state"] == USUAL else ""
    return (
        f'<button type="button" class="ask" id="ask-{key}" data-do="panel" data-panel="{key}" '
        f'data-state="{line["state"]}"{" data-late" if late else ""}{hidden}><span>{said(f"numbers.line_{key}")}</span>'
        f'<b id="ask-{key}-said">{escape(line["text"])}</b></button>'
    )
