"""Which stake is suspect when checks are out, or which slip of the crew, told with the step that sets it right."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

from bowstring.analysis.limits import Judged
from bowstring.analysis.suspects import Slip, Suspect, Taped, hanging_on, suspects
from bowstring.construction import HELPERS
from bowstring.geometry.plane import Point
from bowstring.layout.layout import Layout
from bowstring.report.forms.read import ReadRow, SuspectRow
from bowstring.report.forms.steps import StepRow
from bowstring.report.mistakes import known_slips
from bowstring.words import say

MOST_SHOWN = 3
"""Suspects that are told; with more the readings don't say enough yet."""


def told_suspects(
    layout: Layout, checks: Mapping[str, Judged], rows: Sequence[ReadRow], steps: Sequence[StepRow]
) -> list[SuspectRow]:
    """Return what explains the readings, the likeliest first."""
    taped = [
        # As far out as the printed number says, so that nothing is out here that is in on the sheet.
        Taped(checks[row["check"]].check, checks[row["check"]].check.distance + row["over"], row["limit"])
        for row in rows if row["over"] is not None and row["verdict"] != "differ"
    ]  # fmt: skip
    slips = known_slips(layout)
    burned = sum(mistake.kind == "burned_foot" for mistake, _text in slips)
    guesses = [
        Slip(f"slip {number}", {**layout.marks, **mistake.at}, burned if mistake.kind == "burned_foot" else 1)
        for number, (mistake, _text) in enumerate(slips)
    ]
    found = suspects(taped, layout.recipe, layout.stakes, layout.marks, guesses)
    # Where all stakes were set from the ends, one end too far left is the other too far right: one row tells both.
    ends = [one for one in found if one.mark in ("A", "B") and one.along]
    told = []
    for one in [one for one in found if one not in ends[1:]][:MOST_SHOWN]:
        if one.slip:
            mistake, text = slips[int(one.mark.removeprefix("slip "))]
            told.append(_slip(layout, mistake.kind, mistake.mark, text, steps))
        else:
            told.append(_stake(layout, one, steps))
    return told


def _touching(layout: Layout, marks: Collection[str]) -> list[str]:
    """The keys of the checks that follow any of these marks."""
    return [check.key for check in layout.checks if not check.follows.keys().isdisjoint(marks)]


def _slip(layout: Layout, kind: str, mark: str, text: str, steps: Sequence[StepRow]) -> SuspectRow:
    """A slip of one pull is set right at the step that has it; any other from the first stake on."""
    once = kind == "burned_foot"
    step = _step_of(mark, steps) if once else next((one for one in steps if one["level"]), None)
    return {
        "kind": "slip",
        "mark": ((step["stake"] if step else None) or _plain(mark)) if once else "",
        "step": step["number"] if step else None,
        "far": None,
        "far_shown": None,
        "again": [],
        "checks": _touching(layout, hanging_on(layout.recipe, mark) if once else layout.marks),
        "text": text,
        "prove": "",
    }


def _stake(layout: Layout, one: Suspect, steps: Sequence[StepRow]) -> SuspectRow:
    tape = layout.job.tape
    shown = tape.show(max(tape.round(one.far), tape.mark))
    end = one.mark in ("A", "B")
    step = next((row for row in steps if not row["level"] and "A" in (row["marks"] or ["A"])), None) if end else None
    step = step or _step_of(one.mark, steps)
    names = {stake.name for stake in layout.stakes}
    return {
        "kind": "end" if end else "stake",
        "mark": one.mark,
        "step": step["number"] if step else None,
        "far": one.far,
        "far_shown": shown,
        "checks": _touching(layout, layout.marks if end else {one.mark, *one.along}),
        "again": [mark for mark in dict.fromkeys(one.along) if mark in names],
        "text": say(_key(end, bool(one.along)), stake=one.mark, shown=shown, way=told_way(layout, one.mark, one.shift)),
        "prove": say("read.prove_ends", shown=tape.show(layout.staked.chord)) if end else _prove(one.mark, step),
    }


def told_way(layout: Layout, mark: str, shift: Point) -> str:
    """Return to which side a stake stands off: out of the arc or in, or along it, whichever is more."""
    at, staked = layout.marks[mark], layout.staked
    out = at.minus(Point(staked.chord / 2, staked.sagitta - staked.radius))  # as long as the radius
    away, onward = shift.dot(out), shift.dot(Point(out.y, -out.x))
    if abs(away) >= abs(onward):
        return say("read.way_out" if away > 0 else "read.way_in")
    return say("read.way_along", end="B" if onward > 0 else "A")


def _key(end: bool, along: bool) -> str:
    if not end:
        return "read.stake_off"
    return "read.ends_off" if along else "read.end_off"


def _prove(mark: str, step: StepRow | None) -> str:
    """What the stake's own step read of it: to be taped before anything is pulled."""
    if step is None:
        return ""
    pairs = [
        (one["from"], one["to"], one["shown"])
        for one in (*step["readings"], *(measure for measure in step["measures"] if "distance" in measure))
        if mark in (one["from"], one["to"]) and not {one["from"].split()[0], one["to"].split()[0]} & set(HELPERS)
    ]  # fmt: skip
    if not pairs:
        return ""
    told = [say("read.pair", start=start, end=end, shown=shown) for start, end, shown in dict.fromkeys(pairs)][:2]
    return say("read.prove", pairs=say("read.and").join(told))


def _step_of(mark: str, steps: Sequence[StepRow]) -> StepRow | None:
    return next((step for step in steps if mark in step["marks"] or step["stake"] == _plain(mark)), None)


def _plain(mark: str) -> str:
    first, _space, rest = mark.partition(" ")
    return rest if first in HELPERS else mark
