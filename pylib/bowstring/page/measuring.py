"""What the page's script asks at a keystroke on the numbers face, and what it asks after that."""

from __future__ import annotations

import re
from collections.abc import Mapping
from math import isclose
from typing import TYPE_CHECKING

from bowstring.errors import BadJob
from bowstring.faces.help_line import fill_button
from bowstring.faces.numbers import numbers
from bowstring.faces.question_lines import is_edge_open, turn_of
from bowstring.faces.questions import panel_of
from bowstring.job.letters import of_place
from bowstring.job.terms import OTHER, PIECES, is_lined
from bowstring.page.beside import done_of, marks_of
from bowstring.page.called import called
from bowstring.page.fields import Field, all_fields, field_of, is_other_mark, job_of_fields
from bowstring.page.labels import label_of
from bowstring.page.of_example import of_example_html
from bowstring.page.rows import LENGTH_ROWS
from bowstring.page.shown import answering_here, note_of, shown_here
from bowstring.page.slab_fields import is_of_slab_alone, without_slab
from bowstring.page.talk import Asked, ErrorRow
from bowstring.page.unit import is_length, is_unit_open, read_field, shown_field, tape_of, unit_note
from bowstring.sheet.markup import marked
from bowstring.units.angles import both_angles, read_angle
from bowstring.units.lengths import read_length
from bowstring.units.slopes import STEEPEST, is_plain, read_slope, show_slope
from bowstring.units.spelled import typed_length
from bowstring.units.tape import Tape
from bowstring.words import remembered, say

if TYPE_CHECKING:  # an answer is needed only by what is asked later
    from bowstring.faces.numbers import StateOfJob
    from bowstring.job.form import JobForm
    from bowstring.job.job import Job
    from bowstring.page.answering import LastAnswer
    from bowstring.report.forms.answer import Answer

_SOUND = {"chord": "2 m", "sagitta": "0.5 m"}
"""An arc that stands in while the other fields are read: those of the arc are read one by one."""


_CHORD = re.compile("chord|cuerda", re.IGNORECASE)

ALWAYS = ("unit", "start")
"""Fields that hold something in an empty form too, and can't be wrong by themselves."""


def shown_numbers(asked: Asked) -> dict[str, object]:
    """Return the numbers face for ``{"fields": {id: text}, "focus": id or "", "short": flag, "drawn": flag}``.

    ``faces.numbers.NumbersFace`` and beside it ``echoes``, how each field of a panel is read, ``errors``, what is wrong
    with them, ``unit_note``, see ``unit.unit_note``, ``called``, the job's name where it has no title, and
    ``of_example``, what of the example still stands, as HTML.
    """
    fields = {name: text.strip() for name, text in asked["fields"].items() if text.strip()}
    echoes, errors = read_back(tuple((name, text) for name, text in fields.items() if panel_of(name)), shown_here())
    face = numbers(
        fields,
        focus=str(asked.get("focus") or ""),
        short=bool(asked.get("short")),
        drawn=bool(asked.get("drawn")),
        wrong={error["id"]: error["text"] for error in errors if error["id"]},
        shown=shown_here(),
    )
    if any(name.startswith("got-") for name in fields):
        from bowstring.page.forgetting import held_by_rows

        echoes = echoes | held_by_rows(fields)
    lined = is_lined(fields)
    if lined and asked.get("panel") == "pieces" and not is_unit_open(fields):
        from bowstring.page.pieces_told import told_of_pieces  # what lays a line and draws it

        tape = tape_of(fields)
        echoes = echoes | told_of_pieces(fields, tape, tape.seen_in(shown_here()))
    note = unit_note(fields)
    if note:
        face["state"] = {"text": say("numbers.state_stopped"), "sign": "stop"}
    left = of_example_html(fields)
    return {
        **face,
        "echoes": echoes,
        "errors": errors,
        "unit_note": note,
        "of_example": left,
        "shown_in": note_of(fields),
        "called": called(fields, shown_here()),
        "lined": lined,
    }


def shown_later(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return what the layout has to say on the numbers face, for what ``shown_numbers`` takes and ``panel``, the panel
    that is open: see ``faces.numbers_later``. With the panel of what is in the way ``site_plan`` beside it, as HTML.

    ``in_pieces``: only ``{"more": True}`` while there is more to do than a key should wait for; then it's asked again.
    """
    from bowstring.faces.numbers_later import numbers_later, refused_later

    fields = {name: text.strip() for name, text in asked["fields"].items() if text.strip()}
    try:
        if asked.get("in_pieces") and last.goes_on(asked["fields"]):
            return {"more": True}
        answered = last.for_fields(asked["fields"])
    except BadJob as refusal:
        if is_unit_open(fields):
            stopped = {"text": say("numbers.state_stopped"), "sign": "stop"}
            return {**refused_later(fields, refusal, "", shown_here()), "errors": [], "site_plan": "", "state": stopped}
        name = field_of(refusal.field, fields) or ""
        errors = [_error(name, refusal, fields)] if panel_of(name) else []
        if is_of_slab_alone(refusal):
            return _without_slab(asked, last, fields, refusal, errors)
        plan = _plan_without(fields, refusal) if asked.get("panel") == "way" else ""
        return {
            **refused_later(fields, refusal, name, shown_here(), label_of(name, fields)),
            "errors": errors,
            "site_plan": plan,
        }
    done, building = _done(answered, asked, last), bool(marks_of(asked["fields"]))
    made = numbers_later(answered, fields, done, shown_here(), building=building)
    later: dict[str, object] = {**made, "state": _bar(made["state"], answered, fields)}
    if not answered["stops"]:
        later |= _old_numbers(answered, asked, last)
    if asked.get("panel") == "way":
        from bowstring.page.siteplan import site_plan_html

        later["site_plan"] = site_plan_html(answered)
    return later


def _bar(state: StateOfJob, answered: Answer, fields: dict[str, str]) -> Mapping[str, object]:
    """What the bar says where nothing is asked any more: of the checks, the ground, and forms' cards."""
    from bowstring.faces.numbers import gives_way
    from bowstring.page.facing import forms_of, read_state, standing_of

    if not gives_way(state):
        return state
    told = read_state(answered, fields) or standing_of(answered, fields)
    return told or (forms_of(answered, fields) if state["sign"] == "computed" else None) or state


def _done(answered: Answer, asked: Asked, last: LastAnswer) -> tuple[int, ...]:
    """The cards that are done; where none is, nothing is imported for it."""
    if not done_of(asked["fields"]):
        return ()
    from bowstring.page.ticks import ticked

    return ticked(answered, asked["fields"], lambda: last.link(asked["fields"])[0])


def _old_numbers(answered: Answer, asked: Asked, last: LastAnswer) -> dict[str, object]:
    """What the bar says instead where stakes stand by other numbers than those in the fields."""
    from bowstring.page.facing import old_of

    old = old_of(answered, asked["fields"], last)
    if not old:
        return {}
    from bowstring.page.old_numbers import bar_text

    return {"go": say("numbers.go_old"), "state": {"sign": "stop", "text": bar_text(old)}}


def _without_slab(
    asked: Asked, last: LastAnswer, fields: Mapping[str, str], refusal: BadJob, errors: list[ErrorRow]
) -> dict[str, object]:
    """Return the same where something of the slab can't be read: its own line and field say so, and what the layout has
    to say stays, since no stake hangs on it."""
    from bowstring.faces.numbers_later import numbers_later, refused_later

    name = field_of(refusal.field, fields) or ""
    wrong = refused_later(fields, refusal, name, shown_here(), label_of(name, fields))["lines"]
    try:
        answered = last.for_fields(without_slab(asked["fields"]))
    except BadJob as other:
        name = field_of(other.field, fields) or ""
        return {
            **refused_later(fields, other, name, shown_here(), label_of(name, fields)),
            "errors": errors,
            "site_plan": "",
        }
    later = numbers_later(answered, fields, done_of(asked["fields"]), shown_here(), wrong=wrong)
    return {**later, "errors": errors, "site_plan": ""}


def _plan_without(fields: Mapping[str, str], refusal: BadJob) -> str:
    """Return the site's plan without its obstacles where one of those is refused: one that has no outline yet is drawn
    on it. Empty where the arc itself can't be drawn."""
    if not refusal.field.startswith("ground"):
        return ""
    from bowstring.page.siteplan import site_plan_html

    try:
        without = {name: text for name, text in fields.items() if not name.startswith("ground-")}
        return site_plan_html(answering_here(without))
    except BadJob:
        return ""


@remembered(4)  # a number typed in a row changes none of them
def read_back(typed: tuple[tuple[str, str], ...], shown: str | None = None) -> tuple[dict[str, str], list[ErrorRow]]:
    """Return how each field of a panel is read, as HTML by its id, and what is wrong with any of them.

    ``typed``: the fields of the panels alone, each with its text; ``shown``: the unit in which the device shows
    lengths, where that's another.
    """
    if all(name in ALWAYS for name, _text in typed):
        return {}, []
    from bowstring.job.job import read_job  # with all that a job may ask for

    fields = dict(typed)
    echoes: dict[str, str] = {}
    errors: dict[str, ErrorRow] = {}
    backs: dict[str, str] = {}
    try:
        backs = _backs(read_job(_sound(job_of_fields(fields))), fields, shown)
    except BadJob as refusal:
        name = field_of(refusal.field, fields)
        if name and panel_of(name):
            errors[name] = _error(name, refusal, fields)
    tape = tape_of(fields)
    seen = tape.seen_in(shown)
    for field in all_fields(fields) if fields else ():
        text = fields.get(field.id, "")
        if not text or field.id in errors:
            continue
        try:
            echo = _echo(field, text, tape, seen)
        except BadJob as refusal:
            errors[field.id] = _error(field.id, refusal, fields)
            continue
        if echo:
            echoes[field.id] = marked(echo)
    echoes |= {name: f"{echoes.get(name, '')} {marked(told)}".strip() for name, told in backs.items()}
    asked = _asked_of_offset(fields, echoes, tape, seen)
    if asked:
        echoes["offset"] = echoes.get("offset", "") + asked
    if is_other_mark(fields):
        echoes["mark"] = marked(say("page.mark_other", mark=fields["mark"], used=tape.show_mark()))
    return echoes, list(errors.values())


def _backs(job: Job, fields: Mapping[str, str], shown: str | None) -> dict[str, str]:
    """Where the tops that are typed bring those straight back of them, see ``back_top``."""
    if not {"grade-from", "grade-to"} & fields.keys() or "slab-sides" not in fields:
        return {}
    from bowstring.page.back_top import backs_told

    return backs_told(job, tape_of(fields).seen_in(shown))


def _sound(job: JobForm) -> dict[str, object]:
    """A job whose arc is sound: the fields of its measures are read one by one."""
    if "line" not in job:
        return {**job, "arc": _SOUND}
    pieces: list[dict[str, object]] = [dict(piece) for piece in job["line"]]
    pieces[job["at"] - 1] = {"turn": "left", **pieces[job["at"] - 1], "arc": _SOUND}
    return {**job, "line": pieces}


def _asked_of_offset(fields: Mapping[str, str], echoes: Mapping[str, str], tape: Tape, seen: Tape) -> str:
    """Return what is asked beside the offset, with its answers: which edge is staked, or to which side an offset is."""
    if is_edge_open(fields) and "width" in echoes:
        return _edges(fields, read_length(fields["width"], tape.unit, "width").metres / 2, tape, seen)
    if "offset" not in echoes:
        return ""
    if fields.get("toward"):
        return _pins(fields, tape, seen)
    return _sides(read_length(fields["offset"], tape.unit, "offset", zero=True).metres, seen)


def _edges(fields: Mapping[str, str], half: float, tape: Tape, seen: Tape) -> str:
    """Return the question which edge is staked where the drawing has the centerline, with a button for each answer.

    The half is written so that nothing of it is rounded. On a line the edges are told by hand: the center of the arc
    that is staked is on the hand to which it turns.
    """
    shown, exact, turn = seen.show_whole(half), typed_length(half, tape), turn_of(fields) if is_lined(fields) else None
    inner, outer = (f"numbers.edge_{name}" for name in ((turn, OTHER[turn]) if turn else ("centre", "outside")))
    answers = [
        ({"offset": exact, "toward": "centre"}, say(inner, half=shown)),
        ({"offset": exact, "toward": "outside"}, say(outer, half=shown)),
        ({"offset": "0", "toward": ""}, say("numbers.edge_none")),
    ]
    return f"<b>{marked(say('numbers.edge_asked'))}</b> " + "".join(fill_button(*answer) for answer in answers)


def _sides(offset: float, seen: Tape) -> str:
    """Return the question to which side an offset is, with a button for each answer; none of 0."""
    if not offset:
        return ""
    shown = seen.show_whole(offset)
    answers = [({"toward": side}, say(f"numbers.side_{side}", offset=shown)) for side in ("centre", "outside")]
    return f" <b>{marked(say('numbers.side_asked'))}</b> " + "".join(fill_button(*answer) for answer in answers)


def _pins(fields: Mapping[str, str], tape: Tape, seen: Tape) -> str:
    """Return which point of pins is on the line that are set off as far as a board is thick, with a button that sets
    their centers half a pin farther off, where their diameter is known; empty otherwise."""
    if fields.get("driven", "pin") != "pin":
        return ""
    from bowstring.forming.stock import FEET, METRES  # once somebody has an offset

    offset = read_length(fields["offset"], tape.unit, "offset", zero=True).metres
    thick = (FEET if tape.feet else METRES).thicknesses
    if not any(isclose(offset, one, abs_tol=1e-9) for one in thick):
        return ""
    told = f" <b>{marked(say('numbers.pins_edge'))}</b> "
    try:
        half = read_length(fields.get("diameter", ""), tape.unit, "diameter", bare=False).metres / 2
    except BadJob:
        return told
    exact = typed_length(offset + half, tape)
    return told + fill_button({"offset": exact}, say("numbers.pins_centers", size=seen.show_whole(offset + half)))


@remembered(256)
def _echo(field: Field, text: str, tape: Tape, seen: Tape) -> str:
    """Return how one field is read by itself, empty where it is no number; raises ``BadJob``. By ``seen`` it is shown
    elsewhere: the reading in the job's unit stands first, since a bare number is one of those."""
    if field.kind == "angle":
        return both_angles(read_angle(of_place(text, field.place), field.place).degrees)
    if field.kind == "slope" and not is_plain(text):
        return show_slope(read_slope(text, field.place, STEEPEST))
    if not is_length(field):
        return ""
    own = shown_field(field, text, tape.unit, tape)
    if tape.unit == seen.unit:
        return own
    rows = field.kind in LENGTH_ROWS
    shown = shown_field(field, text, tape.unit, seen) if rows else seen.show(read_field(field, text, tape.unit))
    return say("shown.echo", own=own, shown=shown)


def _is_chord(name: str, fields: Mapping[str, str]) -> bool:
    """Tell whether a chord stands in the box of another piece's angle: it has a place of its own in that row."""
    return name.partition("-")[0] in PIECES and name.endswith("-central_angle") and bool(_CHORD.search(fields[name]))


def _error(name: str, refusal: BadJob, fields: Mapping[str, str]) -> ErrorRow:
    text = say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)
    if _is_chord(name, fields):
        text = say("pieces.chord_here", place=say("form.piece_chord"))
    line = say("page.error", label=label_of(name, fields), text=text)
    return {"id": name, "field": refusal.field, "text": text, "line": line}
