"""What the layout has to say on the numbers face: the method with its reason, and what stops the work."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from math import radians
from typing import TypedDict, final

from bowstring import Answer
from bowstring.errors import BadJob
from bowstring.faces.measure_rows import is_stopped, measure_rows
from bowstring.faces.numbers import StateOfJob, asked, gives_way, state_of
from bowstring.faces.one_line import SAID, USUAL, WRONG, QuestionLine, capital, line_of
from bowstring.faces.question_lines import is_asked, question_lines, side_of
from bowstring.faces.questions import panel_of
from bowstring.faces.settling import arcs_of_fields
from bowstring.faces.slab_beside import slab_beside
from bowstring.faces.slab_told import slab_told
from bowstring.faces.taking import take_html
from bowstring.geometry.arc import Arc
from bowstring.layout.demand import LIKELY_TOLERANCE
from bowstring.report.forms.in_dig import InDigPart
from bowstring.report.own import is_advised, own_row
from bowstring.sheet.markup import marked
from bowstring.words import say


@final
class NumbersLater(TypedDict):
    """The lines that the layout changes, the question that is asked now, what the bar says, the way to the step that
    is next, and as HTML the advice, what the stakes follow where that isn't what was drawn (empty: they do), and what
    follows for the slab, under its figures too."""

    lines: dict[str, QuestionLine]
    ask: str
    state: StateOfJob
    go: str
    advice: str
    follows: str
    slab: str
    beside: dict[str, str]


def numbers_later(
    answer: Answer,
    fields: Mapping[str, str],
    done: Collection[int] = (),
    shown: str | None = None,
    *,
    building: bool = False,
    wrong: Mapping[str, QuestionLine] | None = None,
) -> NumbersLater:
    """Return what an answer adds to the numbers face of its fields; ``done``: the cards that are;
    ``building``: some of the forms' are; ``shown`` as for ``numbers``; ``wrong``: lines of what can't be read, which
    the answer is without."""
    changed = {"method": _method(answer, fields), **(wrong or {})}
    fit, tolerance = answer["fit"], answer["tolerance"]
    if fit and fit["reason"]:
        text = say("numbers.ends_found", found=fit["found_shown"], drawn=fit["drawn_shown"])
        changed["ends"] = line_of(text, WRONG)
    if tolerance is not None and tolerance > LIKELY_TOLERANCE:
        changed["fine"] = line_of(say("numbers.fine_unlikely", tolerance=answer["tolerance_shown"]), WRONG)
    arc = Arc.of_angle(answer["arc"]["radius"], radians(answer["arc"]["central_angle"]) / 2)
    in_dig = answer["in_dig"] if fields.get("slab-poured") == "wall" and fields.get("grade-ground") else None
    made = _with(fields, changed, answer["stops"], shown, _advice(answer), _follows(answer), arc, in_dig)
    return {**made, "go": _go(answer, done, building)} if done and not answer["stops"] else made


def _advice(answer: Answer) -> str:
    return " ".join(text for text in (marked(answer["advice"]["text"]), take_html(answer).strip()) if text)


def _go(answer: Answer, done: Collection[int], building: bool) -> str:
    from bowstring.faces.passes import first_open, layout_cards

    step = first_open(answer, done, building=building)
    return say("forming.go_on") if step > len(layout_cards(answer)) else say("numbers.go_on", step=step)


def refused_later(
    fields: Mapping[str, str], refusal: BadJob, name: str, shown: str | None = None, label: str = ""
) -> NumbersLater:
    """Return the same for a job that has no layout; ``name`` is the id of the field that it is refused for, ``label``
    what it is called."""
    typed = {name: text.strip() for name, text in fields.items() if text.strip()}
    panel = panel_of(name) if name else "method"
    arcs = arcs_of_fields(typed)
    told = panel and arcs.settled is not None and not is_asked(name, arcs, typed)
    wrong = say("page.error", label=label, text=refusal.wrong) if label else refusal.wrong
    changed = {panel: line_of(wrong, WRONG)} if told else {}
    return _with(fields, changed, [], shown)


def _follows(answer: Answer) -> str:
    """What the stakes follow where the chord found has been taken: the rows still have the drawing's measures."""
    fit = answer["fit"]
    if fit is None or not answer["held"]:
        return ""
    shown = answer["arc_shown"]
    values = {"found": fit["found_shown"], "sagitta": shown["sagitta"], "radius": shown["radius"]}
    strong, _, rest = say("numbers.follows", **values).partition("|")
    return f"<b>{marked(strong)}</b> {marked(rest)}"


def _with(
    fields: Mapping[str, str], changed: dict[str, QuestionLine], stops: list[str], shown: str | None,
    advice: str = "", follows: str = "", arc: Arc | None = None, in_dig: InDigPart | None = None,
) -> NumbersLater:  # fmt: skip
    typed = {name: text.strip() for name, text in fields.items() if text.strip()}
    arcs = arcs_of_fields(typed, shown)
    rows = measure_rows(arcs, typed)
    lines = {**question_lines(arcs, typed, {}), **changed}
    state = state_of(arcs, typed, rows, lines)
    if stops and gives_way(state):  # whatever else stops it is told where it is settled
        state = {"text": say("numbers.state_stopped"), "sign": "stop"}
    ask = asked(lines) if arcs.settled and not arcs.refusals and not is_stopped(rows) else ""
    go = say("numbers.go")
    slab = "" if is_stopped(rows) else slab_told(arcs, typed, side_of(arcs, typed), arc, in_dig)
    beside = slab_beside(arcs, typed, side_of(arcs, typed), arc)
    return {"lines": changed, "ask": ask, "state": state, "go": go, "advice": advice, "follows": follows,
            "slab": slab, "beside": beside}  # fmt: skip


def _method(answer: Answer, fields: Mapping[str, str]) -> QuestionLine:
    """Return the line of the method: the advised one with whether it holds what is asked, or the one chosen."""
    own, advice = own_row(answer), answer["advice"]
    method = capital(own["name"])
    if advice["method"] is None:
        return line_of(say("numbers.method_none"), WRONG)
    if not own["possible"]:
        return line_of(say("numbers.method_blocked", method=method), WRONG)
    if fields.get("method") and not is_advised(answer, own):
        return line_of(say("numbers.method_said", method=method), SAID)
    if advice["holds"] is None:
        return line_of(say("numbers.method_taken", method=method), USUAL)
    key = "numbers.method_holds" if advice["holds"] else "numbers.method_nearest"
    return line_of(say(key, method=method, tolerance=answer["tolerance_shown"] or ""), USUAL)
