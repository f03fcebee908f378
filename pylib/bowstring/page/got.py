"""The panel of what was got at a card: what was typed there as a row of the job, held beside the job without it."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bowstring import BadJob
from bowstring.analysis.slips import Slip, slips_of
from bowstring.faces.got import STOP, Panel, Reading, got_html
from bowstring.job.terms import MOST_MEASURES
from bowstring.page.fields import YES, unit_of
from bowstring.page.found import found_panel, proved_by
from bowstring.page.hanging import hanging
from bowstring.page.rows import blanks_of, filled_rows, measures_in
from bowstring.page.set_again import end_panel, string_panel
from bowstring.page.shown import answering_here, kept_text, tape_here, unit_here
from bowstring.page.talk import Asked
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow
from bowstring.report.got import label_of, short, told_slip
from bowstring.report.places import place_name
from bowstring.units.as_shown import as_shown
from bowstring.units.lengths import read_length
from bowstring.units.spelled import spelled
from bowstring.words import say

SAME = 1e-9
"""Metres: two lengths are the same."""

Typed = Mapping[str, str]


@dataclass(frozen=True)
class Pair:
    """A length that the step tapes or reads: metres, and as the card shows it."""

    start: str
    end: str
    shown: str


@dataclass(frozen=True)
class Now:
    """The job as it is answered, the same without what was got at the card's step, and the card's number."""

    answered: Answer
    base: Answer
    card: int


def got_panel(answered: Answer, asked: Asked, card: int) -> dict[str, object]:
    """Return ``html``, and the fields (``fill``) that hold what was typed, where that can be used.

    ``asked``: ``fields`` and, by the names of the panel's own fields, what was ``got``.
    """
    stands = {name: text for name, text in asked["fields"].items() if text.strip()}  # an empty row is a free one
    fields: Typed = {**stands, **_by(answered)}
    typed: Typed = asked.get("got") or {}
    step = _step_of(answered, card)
    if step["level"] == 0:
        sets = answered["cards"][card - 1]["sets"]
        proved = proved_by(answered["steps"], step, sets)
        return found_panel(answered, fields, typed, proved) if proved else {"html": got_html(end_panel(step, sets))}
    if not step["marks"]:
        return {"html": got_html(string_panel(answered, step))}
    row = _row_of(fields, step)
    base = answered if row is None else answering_here(_without(fields, row))
    step = next(one for one in base["steps"] if one["marks"] == step["marks"])
    return _panel(Now(answered, base, card), fields, typed, step, row)


def _panel(now: Now, fields: Typed, typed: Typed, step: StepRow, row: int | None) -> dict[str, object]:
    """The panel of a step as it is without what was got there; ``row``: where that stands."""
    stake, pairs = step["stake"] or step["marks"][-1], pairs_of(step)
    kept = _kept(fields, row, pairs)
    texts = [typed.get(f"m{number}", kept.get(number, pair.shown)) for number, pair in enumerate(pairs)]
    readings = [
        _reading(number, pair, text, fields) for number, (pair, text) in enumerate(zip(pairs, texts, strict=True))
    ]  # fmt: skip
    forget, level = blanks_of(fields, row), any("slope" in one for one in step["measures"])
    undone = hanging(now.answered, now.base, now.card) if forget else None
    panel = Panel(say("face_got.head", stake=place_name(stake)), readings, forget=forget, level=level, undone=undone)
    differs = [number for number, one in enumerate(readings) if one.note]
    if not differs or any(one.wrong for one in readings):
        return {"html": got_html(panel)}
    return _typed_over(now, fields, typed, panel, stake, row, [(one, pairs[one], texts[one]) for one in differs])


def _typed_over(
    now: Now, fields: Typed, typed: Typed, panel: Panel, stake: str, row: int | None,
    differs: Sequence[tuple[int, Pair, str]],
) -> dict[str, object]:  # fmt: skip
    """The panel where something was typed over: ``differs``, each with its number, its pair and its text."""
    number = row if row is not None else max(filled_rows(fields, "got"), default=-1) + 1
    read = [(pair, kept_text(text, pair.shown, fields)) for _number, pair, text in differs]
    fill = dict(panel.forget) | _fields(number, stake, read)
    taped = " ".join(f"m{one}={text.strip()}" for one, _pair, text in differs)
    # What was taped twice is that very text: another one is asked for anew.
    sure = typed.get("sure") == taped or (f"got-{number}-sure" in fields and _same_row(fields, fill, number))
    panel = Panel(**{**vars(panel), "taped": taped, "sure": sure})
    if sure:
        fill[f"got-{number}-sure"] = YES
    told = _without(fields, row) | {name: text for name, text in fill.items() if text}
    panel, answer = _judged(now.base, told, panel, stake, "" if sure else _slip_in(read, fields))
    made: dict[str, object] = {"html": got_html(panel)}
    if panel.verdict != STOP and answer is not None:
        later = [card for card in hanging(now.answered, answer, now.card) if card != now.card]
        made |= {"fill": fill, "undone": later}
    return made


def _by(answered: Answer) -> dict[str, str]:
    """The fields that name the method that was taken: none is compared with others here."""
    return {
        "method": answered["method"],
        **({"halve_first": str(answered["halve_first"])} if answered["halve_first"] else {}),
    }


def _slip_in(read: Sequence[tuple[Pair, str]], fields: Typed) -> str:
    """What the readings look like each by itself, the likeliest, whether or not they can stand together."""
    tape = tape_here(fields)
    for pair, text in read:
        asked, length = (read_length(one, tape.unit, "got").metres for one in (pair.shown, text))
        for kind in slips_of(asked, length, tape):
            return told_slip(tape, Slip(kind, pair.start, pair.end, asked, length))
    return ""


def _judged(base: Answer, fields: Typed, plain: Panel, stake: str, slip: str) -> tuple[Panel, Answer | None]:
    """The panel with what the job makes of the readings, and the answer to it, if there is one; ``slip``: what one of
    them looks like by itself."""
    row, stops, apart = None, [], ""
    told: Answer | None = None
    try:
        told = answering_here(fields)
        (row,) = (one for one in told["got"] if one["stake"] == stake)
        # What stops the job anew is the reading's doing, unless the headline says it already.
        old = {way["stop"] for way in base["ways_out"]}
        new = [way["stop"] for way in told["ways_out"] if way["panel"] == "got" and way["stop"] not in old]
        stops = [] if row["doubt"] or row["within"] is False else new
    except BadJob as refusal:
        stops, apart = [f"{refusal.wrong} {refusal.remedy}"], slip
    made = {"row": row, "tolerance": base["tolerance_shown"] or "", "stops": stops, "slip": apart}
    return Panel(**{**vars(plain), **made}), told


def _step_of(answered: Answer, card: int) -> StepRow:
    """The step of a card: of several the one that sets something."""
    numbers = answered["cards"][card - 1]["steps"]
    steps = [answered["steps"][number - 1] for number in numbers] or [answered["steps"][0]]
    return next((step for step in reversed(steps) if step["marks"]), steps[-1])


def pairs_of(step: StepRow) -> list[Pair]:
    """Return what the step tapes and reads, once each; the second half of a string says no more than its first."""
    taped = [Pair(one["from"], one["to"], one["shown"]) for one in step["measures"] if "distance" in one]
    read = [Pair(one["from"], one["to"], one["shown"]) for one in step["readings"]]
    halves = {one.end for one in taped if one.end.startswith("mid ")}
    return [*taped, *(one for one in read if not {one.start, one.end} & halves)][:MOST_MEASURES]


def _row_of(fields: Typed, step: StepRow) -> int | None:
    """The row of the job that tells of this step already."""
    marks = {mark.casefold() for mark in step["marks"]}
    rows = (row for row in filled_rows(fields, "got") if fields.get(f"got-{row}-stake", "").strip().casefold() in marks)
    return next(rows, None)


def _without(fields: Typed, row: int | None) -> dict[str, str]:
    return {name: text for name, text in fields.items() if row is None or not name.startswith(f"got-{row}-")}


def _same_row(fields: Typed, fill: Typed, row: int) -> bool:
    """Whether a row is filled with what stands in it already."""
    return all(fields.get(name, "").strip() == text for name, text in fill.items() if name != f"got-{row}-sure")


def taken_back(answered: Answer, fields: Typed, card: int) -> dict[str, str]:
    """Return the fields that take back what was got at a card, none where nothing was."""
    steps = [step for step in answered["steps"] if step["number"] in answered["cards"][card - 1]["steps"]]
    rows = [row for step in steps if (row := _row_of(fields, step)) is not None]
    return blanks_of(fields, rows[0] if rows else None)


def _kept(fields: Typed, row: int | None, pairs: Sequence[Pair]) -> dict[int, str]:
    """What was typed before, by the number of its pair; the older form of a row where it stands so."""
    if row is None:
        return {}
    told = {
        frozenset(fields.get(f"got-{row}-measures-{one}-{end}", "").casefold() for end in ("from", "to")):
        fields[f"got-{row}-measures-{one}-distance"]
        for one in measures_in(fields, row)
    }  # fmt: skip
    stake = fields.get(f"got-{row}-stake", "").strip().casefold()
    kept = {}
    halves = iter(range(2))
    for number, pair in enumerate(pairs):
        key = frozenset((pair.start.casefold(), pair.end.casefold()))
        old = ""
        if key == {f"mid {stake}", stake}:
            old = fields.get(f"got-{row}-sagitta", "")
        elif stake in key and not any(re.match("mid ", one) for one in key):
            old = fields.get(f"got-{row}-half_chords-{next(halves, 0)}", "")
        text = told.get(key, old).strip()
        if text:
            kept[number] = text if unit_here(fields) == unit_of(fields) else spelled(text, "", unit_of(fields))
    return kept


def _reading(number: int, pair: Pair, text: str, fields: Typed) -> Reading:
    tape = tape_here(fields)
    label, name = label_of(pair.start, pair.end), f"m{number}"
    if not text.strip():
        return Reading(name, label, pair.shown, text)
    try:
        read = read_length(as_shown(text, pair.shown, tape.unit), tape.unit, "got").metres
        by = read - read_length(pair.shown, tape.unit, "got").metres
    except BadJob as refusal:
        return Reading(name, label, pair.shown, text, f"{refusal.wrong} {refusal.remedy}", wrong=True)
    if abs(by) <= SAME:
        return Reading(name, label, pair.shown, text)
    told = say("face_got.more" if by > 0 else "face_got.less", by=short(tape, abs(by)))
    return Reading(name, label, pair.shown, text, told)


def _fields(row: int, stake: str, read: Sequence[tuple[Pair, str]]) -> dict[str, str]:
    """The fields that hold what was read at a stake."""
    fields = {f"got-{row}-stake": stake}
    for number, (pair, text) in enumerate(read):
        values = {"from": pair.start, "to": pair.end, "distance": text.strip()}
        fields |= {f"got-{row}-measures-{number}-{name}": value for name, value in values.items()}
    return fields
