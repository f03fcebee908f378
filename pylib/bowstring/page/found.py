"""The panel of the chord found: what A to B really reads, twice, and what is held of the drawing then.

Where no single pull goes from A to B, what proves them is read instead, and the chord follows from it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bowstring import BadJob
from bowstring.faces.got import Choice, Panel, Reading, got_html
from bowstring.page.fields import unit_of
from bowstring.page.shown import answering_here, kept_text, tape_here, unit_here
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.arc import FitPart
from bowstring.report.forms.steps import StepRow
from bowstring.report.got import short
from bowstring.units.lengths import read_length
from bowstring.units.spelled import spelled
from bowstring.words import say

Typed = Mapping[str, str]

_SAME = 1e-9
_FOUND = ("chord-0", "chord-1", "tape", "fall", "hold", "sure")


@dataclass(frozen=True)
class Proved:
    """What is read of the chord: from ``start`` to ``end``; the chord is ``times`` that and ``plus`` metres.

    Attributes:
        first, last: the ends of the chord; shown: what the card asks for.
    """

    start: str
    end: str
    first: str
    last: str
    shown: str
    times: float = 1.0
    plus: float = 0.0

    @property
    def whole(self) -> bool:
        """Whether one pull goes over the chord."""
        return (self.start, self.end) == (self.first, self.last)

    def chord(self, read: float) -> float:
        """Return the chord in metres where this was read."""
        return read * self.times + self.plus


def proved_by(steps: Sequence[StepRow], step: StepRow, sets: Sequence[str]) -> Proved | None:
    """Return what a step reads of the chord between two ends that exist, ``None`` where it reads nothing of it: then it
    sets a mark, and that is set again. ``sets``: the marks of the card that is looked at."""
    taped = [one for one in step["measures"] if "distance" in one]
    if not taped or not any(one["kind"].startswith("have_ends") for one in steps):
        return None
    first, last, read = step["names"].get("start", ""), step["names"].get("end", ""), taped[-1]
    marks = (read["from"], read["to"], first, last, read["shown"])
    if step["kind"].startswith("have_ends"):
        return Proved(*marks)
    if step["kind"] in ("prove_two", "prove_parts"):
        return Proved(*marks, plus=sum(pull["distance"] for pull in taped[:-1]))
    if step["kind"].startswith("prove_beside") and read["from"] in sets:
        # D to DA is a part of D to A, and DA to DB that part of A to B, whatever that is.
        legs, parts = taped[0]["distance"], taped[2]["distance"]
        return Proved(*marks, times=legs / parts)
    return None


def found_panel(answered: Answer, fields: Typed, typed: Typed, proved: Proved) -> dict[str, object]:
    """Return the panel of a step that reads the chord, see ``got.got_panel``."""
    start, end = proved.start, proved.end
    drawn = _drawn(answered, proved, fields)
    first, second = (typed.get(f"f{number}", _read_before(number, proved, fields)) for number in range(2))
    readings = [
        _reading("f0", say("face_got.first", start=start, end=end), drawn, first, fields),
        _reading("f1", say("face_got.second", end=end), drawn, second, fields),
    ]
    forget = {f"found-{name}": "" for name in _FOUND if fields.get(f"found-{name}")}
    panel = Panel(
        say("face_got.head_chord", start=start, end=end), readings, forget=forget, over=say("face_got.over_chord")
    )
    empty = [one.name for one in readings if not one.typed.strip()]
    if any(one.wrong for one in readings) or len(empty) == len(readings):
        return {"html": got_html(panel)}
    if empty:
        told = say("face_got.twice", end=end) if empty == ["f1"] else say("face_got.once", start=start, end=end)
        return {"html": got_html(_with(panel, told=told, want=empty[0]))}
    chords = [_chord(text, proved, fields) for text in (first, second)]
    found = {"found-chord-0": chords[0], "found-chord-1": chords[1], "found-tape": "level", "found-fall": ""}
    return {"html": got_html(_fitted(panel, fields, found, proved))}


def _read_before(number: int, proved: Proved, fields: Typed) -> str:
    """What was read when a chord was found, as text; the chord itself where that is what was read."""
    text = fields.get(f"found-chord-{number}", "")
    if proved.whole or not text.strip():
        return _kept(fields, number)
    try:
        chord = read_length(text, unit_of(fields), "found").metres
    except BadJob:
        return ""
    return _text((chord - proved.plus) / proved.times, fields)


def _chord(text: str, proved: Proved, fields: Typed) -> str:
    """The chord that follows from what was read, as text."""
    if proved.whole:
        return kept_text(text, "", fields)
    return _text(proved.chord(read_length(text, unit_here(fields), "found").metres), fields)


def _text(metres: float, fields: Typed) -> str:
    """A length as a field has it: by the tape's marks, or finer ones, where it stands on one."""
    tape = tape_here(fields)
    shown = tape.show_whole(metres)
    try:
        read = read_length(shown, tape.unit, "found").metres
    except BadJob:
        return f"{metres:.5f} m"
    return shown if abs(read - metres) < _SAME else f"{metres:.5f} m"


def _kept(fields: Typed, number: int) -> str:
    """What was found before: with its unit where the device shows another."""
    text = fields.get(f"found-chord-{number}", "")
    return text if unit_here(fields) == unit_of(fields) else spelled(text, "", unit_of(fields))


def _with(
    panel: Panel, told: str = "", stops: tuple[str, ...] = (), choices: tuple[Choice, ...] = (), want: str = ""
) -> Panel:
    return Panel(
        panel.head, panel.readings, None, "", stops, told, choices, panel.forget, over=panel.over, want=want
    )  # fmt: skip


def _drawn(answered: Answer, proved: Proved, fields: Typed) -> str:
    """What the drawing has for what is read, whatever was found."""
    if answered["fit"] is None:
        return proved.shown
    drawn = answered["fit"]["drawn_shown"]
    if proved.whole:
        return drawn
    tape = tape_here(fields)
    return tape.show((read_length(drawn, tape.unit, "found").metres - proved.plus) / proved.times)


def _reading(name: str, label: str, asked: str, text: str, fields: Typed) -> Reading:
    tape = tape_here(fields)
    if not text.strip():
        return Reading(name, label, asked, text)
    try:
        by = read_length(text, tape.unit, "found").metres - read_length(asked, tape.unit, "found").metres
    except BadJob as refusal:
        return Reading(name, label, asked, text, f"{refusal.wrong} {refusal.remedy}", wrong=True)
    if abs(by) <= _SAME:
        return Reading(name, label, asked, text)
    by_shown = short(tape, abs(by))
    return Reading(name, label, asked, text, say("face_got.more" if by > 0 else "face_got.less", by=by_shown))


def _fitted(panel: Panel, fields: Typed, found: dict[str, str], proved: Proved) -> Panel:
    """What both readings make of the drawn arc: agreed, a slip, or a choice of what is held."""
    plain = {name: text for name, text in fields.items() if not name.startswith("found-")}
    kept = {name: text for name, text in found.items() if text}
    try:
        told = answering_here(plain | kept)
        fit = told["fit"]
    except BadJob as refusal:
        return _with(panel, stops=(f"{refusal.wrong} {refusal.remedy}",))
    assert fit is not None
    if fit["reason"] is None:
        return _with(panel, told=say("face_got.agree"))
    stop = next((way["stop"] for way in told["ways_out"] if way["panel"] == "ends"), "")
    if fit["reason"] == "apart":
        return _with(panel, stops=(stop,))
    if fit["reason"] == "slip":
        sure = found | {"found-sure": "yes", "found-hold": ""}
        return _with(
            panel, stops=(fit["slips"][0] if fit["slips"] else stop,), choices=(Choice(say("face_got.sure"), sure),)
        )
    return _choosing(panel, fit, found, held_first(fields), proved)


def _choosing(panel: Panel, fit: FitPart, found: dict[str, str], first: str, proved: Proved) -> Panel:
    """What can be held, first what the drawing gave."""
    choices = tuple(
        Choice(one["label"], found | {"found-hold": one["hold"]},
               say("face_got.hold_more", sagitta=one["sagitta_shown"], radius=one["radius_shown"]))
        for one in sorted(fit["options"], key=lambda one: one["hold"] != first)
        if one["buildable"]
    )  # fmt: skip
    told = say("face_got.hold" if choices else "face_got.unbuildable")
    if not proved.whole:
        told = f"{say('face_got.makes', start=proved.first, end=proved.last, shown=fit['found_shown'])} {told}"
    return _with(panel, told=told, choices=choices)


_GIVEN = (
    ("radius", ("radius", "diameter", "degree")),
    ("sagitta", ("sagitta",)),
    ("arc_length", ("arc_length",)),
    ("directions", ("central_angle", "tangent_length", "external")),
)
"""What can be held, with the givens that it keeps."""


def held_first(fields: Typed) -> str:
    """Return what is held as the drawing gives it; the radius where it gives none of these."""
    for hold, givens in _GIVEN:
        if any(fields.get(f"arc-{name}", "").strip() for name in givens):
            return hold
    return "radius"
