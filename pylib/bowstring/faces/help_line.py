"""The one help line of the numbers face: what the field in focus is, or what is told of it."""

from __future__ import annotations

import json
from collections.abc import Mapping
from html import escape

from bowstring.faces.judging import name_of
from bowstring.faces.measure_rows import MeasureRow, is_stopped
from bowstring.faces.settling import Arcs
from bowstring.geometry.arc import Arc
from bowstring.sheet.markup import marked
from bowstring.units.angles import show_dms
from bowstring.words import say


def help_lines(arcs: Arcs, rows: Mapping[str, MeasureRow]) -> dict[str, str]:
    """Return the line as HTML by the id of the field in focus; under the empty id what stands there without one."""
    lines = {"": _general(arcs, rows)}
    for name, row in rows.items():
        measure = name.removeprefix("arc-")
        told = row["told"] or say(f"numbers.tell.{measure}")
        label = say("numbers.tell_label", label=say(f"form.{measure}"))
        lines[name] = f"<b>{escape(label)}</b> {marked(told)}{_readings(name, row)}"
    return lines


def _readings(name: str, row: MeasureRow) -> str:
    """Return a button for each thing that an unclear text could mean."""
    return "".join(fill_button({name: reading}, reading) for reading in row["readings"])


def fill_button(fields: Mapping[str, str], text: str, *, taken: bool | None = None) -> str:
    """Return a button that puts texts into fields; ``taken``: one of several answers, and whether it holds now."""
    values = escape(json.dumps(fields))
    pressed = "" if taken is None else f' aria-pressed="{"true" if taken else "false"}"'
    return f'<button type="button" class="small" data-do="fill" data-fill="{values}"{pressed}>{marked(text)}</button>'


def _general(arcs: Arcs, rows: Mapping[str, MeasureRow]) -> str:
    wrong = next((row["told"] for row in rows.values() if row["state"] == "wrong"), "")
    if wrong or arcs.refusals:
        return marked(wrong or next(iter(arcs.refusals.values())).wrong)
    if arcs.settled is None:
        key = "numbers.tell_two" if not arcs.measures else "numbers.tell_one"
        return _strong(key)
    if is_stopped(rows):
        return _strong("numbers.tell_apart")
    if arcs.settled.other:
        return _two_arcs(arcs, arcs.settled.arc, arcs.settled.other)
    if arcs.whole:
        return _strong(f"numbers.tell_{arcs.whole}")
    if len(arcs.givens) > 2:
        return _strong("numbers.tell_agree")
    first, second = (name_of(given) for given in arcs.givens.values())
    return _strong("numbers.tell_given", given=say("and", first=first, second=second))


def _two_arcs(arcs: Arcs, taken: Arc, other: Arc) -> str:
    """Return the question which of two arcs is drawn, with both, the shorter first and the one that is taken marked.

    Two that are as long are told by how far they turn. The job takes the larger angle by ``greater``.
    """
    both = sorted((taken, other), key=lambda arc: (arc.arc_length, arc.central_angle))
    lengths = [arcs.shown.show(arc.arc_length) for arc in both]
    if lengths[0] == lengths[1]:
        both.sort(key=lambda arc: arc.central_angle)
        question = "numbers.tell_two_alike"
        texts = [say("numbers.take_turning", size=show_dms(arc.central_angle)) for arc in both]
    else:
        question = "numbers.tell_two_arcs"
        texts = [say(f"numbers.take_{what}", size=size) for what, size in zip(("short", "long"), lengths, strict=True)]
    most = max(arc.central_angle for arc in both)
    return _strong(question) + "".join(
        fill_button({"greater": "yes" if arc.central_angle == most else ""}, text, taken=arc is taken)
        for arc, text in zip(both, texts, strict=True)
    )


def _strong(key: str, **values: str) -> str:
    """Return a message as HTML, its first part strong: what stands before the bar."""
    strong, _, rest = say(key, **values).partition("|")
    return f"<b>{marked(strong)}</b> {marked(rest)}".strip()
