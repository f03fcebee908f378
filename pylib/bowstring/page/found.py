"""The panel of the chord found: what A to B really reads, twice, and what is held of the drawing then."""

from __future__ import annotations

from collections.abc import Mapping

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


def found_panel(answered: Answer, fields: Typed, typed: Typed, step: StepRow) -> dict[str, object]:
    """Return the panel of a step that finds the ends, see ``got.got_panel``: nothing but the chord can be entered."""
    pair = next((one for one in step["measures"] if "distance" in one), None)
    if pair is None or not step["kind"].startswith("have_ends"):
        head = say("face_got.head", stake=step["names"].get("end") or "A")
        return {"html": got_html(Panel(head, [], told=say("face_got.set_again")))}
    start, end = pair["from"], pair["to"]
    drawn = _drawn(answered, pair["shown"])
    first, second = (typed.get(f"f{number}", _kept(fields, number)) for number in range(2))
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
    kept = [kept_text(text, "", fields) for text in (first, second)]
    found = {"found-chord-0": kept[0], "found-chord-1": kept[1], "found-tape": "level", "found-fall": ""}
    return {"html": got_html(_fitted(panel, fields, found))}


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


def _drawn(answered: Answer, shown: str) -> str:
    """What the drawing has for the chord, whatever was found."""
    return answered["fit"]["drawn_shown"] if answered["fit"] else shown


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


def _fitted(panel: Panel, fields: Typed, found: dict[str, str]) -> Panel:
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
    return _choosing(panel, fit, found)


def _choosing(panel: Panel, fit: FitPart, found: dict[str, str]) -> Panel:
    choices = tuple(
        Choice(one["label"], found | {"found-hold": one["hold"]},
               say("face_got.hold_more", sagitta=one["sagitta_shown"], radius=one["radius_shown"]))
        for one in fit["options"]
        if one["buildable"]
    )  # fmt: skip
    return _with(panel, told=say("face_got.hold" if choices else "face_got.unbuildable"), choices=choices)
