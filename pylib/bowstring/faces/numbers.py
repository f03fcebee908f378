"""The numbers face: what stands in the fields read, the arc settled, each question's answer in words, and the drawing.

Nothing is laid out here: it answers before the next key. What the layout has to say of a line comes after it, see
``numbers_later``.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NotRequired, TypedDict, final

from bowstring.faces.help_line import help_lines
from bowstring.faces.measure_rows import MeasureRow, is_stopped, measure_rows
from bowstring.faces.one_line import OPEN, WRONG, QuestionLine
from bowstring.faces.question_lines import question_lines, side_of
from bowstring.faces.questions import ASKS
from bowstring.faces.settling import Arcs, Typed, arcs_of_fields
from bowstring.faces.slab_beside import slab_beside
from bowstring.faces.slab_lines import is_side_open, is_wall, side_asked
from bowstring.faces.slab_told import slab_told
from bowstring.faces.typed_dig import clear_of_dig
from bowstring.words import say

SETS_CLEAR = "slab"
"""The panel with the buttons that set the stakes clear of the dig."""


@final
class StateOfJob(TypedDict):
    """What the bar says; ``sign``: ``waiting`` for numbers, ``refused``, ``ask``, ``stop`` or ``computed``; ``panel``:
    the one that answers it, where that isn't the one of the question that is asked."""

    text: str
    sign: str
    panel: NotRequired[str]


@final
class NumbersFace(TypedDict):
    """The face: ``sign`` is ``open`` while there is no arc, ``refused`` or ``computed``; ``tell`` the help line as HTML
    by the field in focus (empty: none); ``slab`` what follows for the slab, as HTML, and ``beside`` what stands under
    its figures, by where; ``ask`` the question of the bar at the thumb, empty for the way to step 1; while given
    numbers differ there is no bar."""

    sign: str
    rows: dict[str, MeasureRow]
    tell: dict[str, str]
    drawing: str
    slab: str
    beside: dict[str, str]
    lines: dict[str, QuestionLine]
    ask: str
    state: StateOfJob


def numbers(
    fields: Mapping[str, str],
    *,
    focus: str = "",
    short: bool = False,
    wrong: Mapping[str, str] | None = None,
    drawn: bool = False,
    shown: str | None = None,
) -> NumbersFace:
    """Return the face for what stands in the form's fields.

    Args:
        fields: texts by field id.
        focus: the id of the field in focus: its measure stands strong in the drawing.
        short: a low drawing, for a screen whose lower half is keys.
        wrong: what is wrong with a field of a panel, by its id.
        drawn: the drawing of an empty form stands there already: none is made of one.
        shown: the unit in which read-outs are shown, where that isn't the job's. What is typed is in the job's.

    >>> face = numbers({"arc-chord": "38'", "arc-sagitta": "5' 3"})
    >>> face["sign"], face["rows"]["arc-radius"]["out"], face["state"]["text"]
    ('computed', '37\\' 0-1/8"', '2 to answer')
    """
    typed = {name: text.strip() for name, text in fields.items() if text.strip()}
    arcs = arcs_of_fields(typed, shown)
    rows = measure_rows(arcs, typed)
    elsewhere = {name: why.wrong for name, why in arcs.refusals.items() if name not in rows}
    lines = question_lines(arcs, typed, {**elsewhere, **(wrong or {})})
    sign = "refused" if arcs.refusals else "computed" if arcs.settled else "open"
    return {
        "sign": sign,
        "rows": rows,
        "tell": help_lines(arcs, rows),
        "drawing": "" if drawn and sign == "open" and not arcs.measures else _drawing(arcs, typed, focus, short=short),
        "beside": slab_beside(arcs, typed, side_of(arcs, typed)),
        "slab": "" if is_stopped(rows) else slab_told(arcs, typed, side_of(arcs, typed)),
        "lines": lines,
        "ask": asked(lines) if sign == "computed" and not is_stopped(rows) else "",
        "state": state_of(arcs, typed, rows, lines),
    }


def _drawing(arcs: Arcs, typed: Mapping[str, str], focus: str, *, short: bool) -> str:
    from bowstring.faces.live_drawing import live_drawing  # what draws isn't needed for an empty form

    return live_drawing(arcs, typed, side=side_of(arcs, typed), focus=focus, short=short)


def asked(lines: Mapping[str, QuestionLine]) -> str:
    """Return the question that is asked now: the first open one, else the first that is wrong."""
    for state in (OPEN, WRONG):
        for key in ASKS:
            if lines[key]["state"] == state:
                return key
    return ""


def state_of(arcs: Arcs, typed: Typed, rows: Mapping[str, MeasureRow], lines: Mapping[str, QuestionLine]) -> StateOfJob:
    """Return what the bar says of the job."""
    if arcs.refusals:
        return _state("refused", say("numbers.state_refused"))
    if arcs.settled is None:
        return _state("waiting", say(f"numbers.state_missing_{2 - min(arcs.measures, 1)}"))
    if is_stopped(rows) or any(line["state"] == WRONG for line in lines.values()):
        return _state("stop", say("numbers.state_stopped"))
    count = sum(line["state"] == OPEN for line in lines.values())
    if count:
        return _state("ask", say("numbers.state_open", count=count))
    if is_wall(typed) and clear_of_dig(arcs, typed, side_of(arcs, typed)):  # a slab's hubs have a card of their own
        return _state("ask", say("numbers.state_in_dig"), SETS_CLEAR)
    if is_side_open(typed):
        return _state("ask", side_asked(typed), "slab")
    return _state("computed", say("numbers.state_done"))


def gives_way(state: StateOfJob) -> bool:
    """Tell whether a stop and what a check or the ground says come before what the bar says: all is answered, or but
    for stakes in the dig, which are moved after that."""
    return state["sign"] == "computed" or state["text"] == say("numbers.state_in_dig")


def _state(sign: str, text: str, panel: str = "") -> StateOfJob:
    return {"text": text, "sign": sign, "panel": panel} if panel else {"text": text, "sign": sign}
