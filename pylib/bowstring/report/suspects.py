"""Which stake is suspect when checks are out, or which slip of the crew, told with the step that sets it right."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from bowstring.analysis.limits import Judged, expected_between
from bowstring.analysis.spread import Spread
from bowstring.analysis.suspects import Slip, Suspect, Taped, hanging_on, suspects
from bowstring.construction import HELPERS
from bowstring.geometry.plane import Point, distance, unit_vector
from bowstring.layout.layout import Layout
from bowstring.report.forms.read import ReadRow, SuspectRow
from bowstring.report.forms.steps import StepRow
from bowstring.report.mistakes import known_slips
from bowstring.report.suspect_slip import Told, told_of
from bowstring.words import say

MOST_SHOWN = 3
"""Suspects that are told; with more the readings don't say enough yet."""


def told_suspects(
    layout: Layout, checks: Mapping[str, Judged], rows: Sequence[ReadRow], steps: Sequence[StepRow], spread: Spread
) -> tuple[list[SuspectRow], bool, int]:
    """Return what explains the readings, the likeliest first, whether it explains every one, and how much more fits
    as well; ``spread``: how the layout's marks scatter."""
    taped = [_taped(checks[row["check"]], row["over"], row["limit"]) for row in rows if row["over"] is not None]
    slips = known_slips(layout)
    burned = sum(mistake.kind == "burned_foot" for mistake, _text in slips)
    guesses = [
        Slip(f"slip {number}", {**layout.marks, **mistake.at}, burned if mistake.kind == "burned_foot" else 1)
        for number, (mistake, _text) in enumerate(slips)
    ]
    guessed = suspects(taped, layout.recipe, layout.stakes, layout.marks, guesses, layout.staked.centre)
    # Readings scatter: where nothing explains each of them, what explains them but for a hair is what is told.
    found = [one for one in guessed if one.explains] or guessed
    # Where all stakes were set from the ends, one end too far left is the other too far right: one row tells both.
    ends = [one for one in found if one.mark in ("A", "B") and one.along]
    told = []
    fits = [one for one in found if one not in ends[1:]]
    for one in fits[:MOST_SHOWN]:
        if one.slip:
            mistake, text = slips[int(one.mark.removeprefix("slip "))]
            told.append(_slip(layout, mistake.kind, mistake.mark, text, steps))
        else:
            told.append(_stake(layout, one, steps, _Read(taped, spread)))
    return told, all(one.explains for one in found), len(fits) - len(told)


def _taped(one: Judged, over: float, limit: float) -> Taped:
    """As far out as the printed number says, so that nothing is out here that is in on the sheet."""
    return Taped(one.check, one.check.distance + over, limit, one.usual, one.expected)


def _touching(layout: Layout, marks: Collection[str]) -> list[str]:
    """The keys of the checks that follow any of these marks."""
    return [check.key for check in layout.checks if not check.follows.keys().isdisjoint(marks)]


def _stakes_of(layout: Layout, marks: Collection[str]) -> list[str]:
    """The stakes among some marks that steps set, in the order in which they are set."""
    names = {stake.name for stake in layout.stakes if stake.level}
    return [mark for step in layout.recipe.steps for mark in step.sets if mark in names and mark in marks]


def _slip(layout: Layout, kind: str, mark: str, text: str, steps: Sequence[StepRow]) -> SuspectRow:
    """A slip of one pull is set right at the step that has it; any other from the first stake on."""
    once = kind == "burned_foot"
    step = _step_of(mark, steps) if once else next((one for one in steps if one["level"]), None)
    moved = hanging_on(layout.recipe, mark) if once else set(layout.marks)
    return {
        "kind": "slip",
        "mark": ((step["stake"] if step else None) or _plain(mark)) if once else "",
        "step": step["number"] if step else None,
        "far": None,
        "far_shown": None,
        "again": [stake for stake in _stakes_of(layout, moved) if not step or stake != step["stake"]],
        "checks": _touching(layout, moved),
        "text": text,
        "prove": "",
    }


@dataclass(frozen=True)
class _Read:
    """The readings, and how the layout's marks scatter."""

    taped: Sequence[Taped]
    spread: Spread


def _stake(layout: Layout, one: Suspect, steps: Sequence[StepRow], read: _Read) -> SuspectRow:
    tape = layout.job.shown
    end = one.mark in ("A", "B")
    step = _step_of_end(one.mark, steps) if end else None
    step = step or _step_of(one.mark, steps)
    told = Told() if end else told_of(layout, one, read.taped, read.spread)
    one = Suspect(**{**vars(one), "shift": told.shift or one.shift})
    shown = tape.show(max(tape.round(one.far), tape.mark))
    return {
        "kind": "end" if end else "stake",
        "mark": one.mark,
        "step": step["number"] if step else None,
        "far": one.far,
        "far_shown": shown,
        "checks": _touching(layout, layout.marks if end else {one.mark, *one.along}),
        "again": _stakes_of(layout, one.along),
        "text": (
            say("read.ends_off" if one.along else "read.end_off", stake=one.mark, shown=shown)
            if end
            else told.side or _stands_off(layout, one, shown)
        ),
        "prove": _prove_ends(layout, one, read.spread) if end else told.prove,
    }


def told_way(layout: Layout, mark: str, shift: Point) -> str:
    """Return to which side a stake stands off: out of the arc or in, or along it, whichever is more."""
    return max(_ways(layout, mark, shift))[1]


def _ways(layout: Layout, mark: str, shift: Point) -> list[tuple[float, str]]:
    """How far a stake stands off across the arc and along it, metres, each with its words."""
    out = unit_vector(layout.staked.centre, layout.marks[mark])
    away, onward = shift.dot(out), shift.dot(Point(out.y, -out.x))
    across = say("read.way_out" if away > 0 else "read.way_in")
    return [(abs(away), across), (abs(onward), say("read.way_along", end="B" if onward > 0 else "A"))]


def _stands_off(layout: Layout, one: Suspect, shown: str) -> str:
    """Where a stake stands, both ways where neither alone explains what was read."""
    tape = layout.job.shown
    less, more = sorted(_ways(layout, one.mark, one.shift))
    if not tape.round(less[0]):
        return say("read.stake_off", stake=one.mark, shown=shown, way=more[1])
    both = {"shown": tape.show(max(tape.round(more[0]), tape.mark)), "way": more[1], "less": tape.show(less[0])}
    return say("read.stake_off_both", stake=one.mark, other=less[1], **both)


def _prove_ends(layout: Layout, one: Suspect, spread: Spread) -> str:
    """A to B, where that would read otherwise."""
    own, at = layout.job.tape, layout.marks
    there = {**at, one.mark: at[one.mark].plus(one.shift)}
    changes = abs(distance(there["A"], there["B"]) - layout.staked.chord)
    if changes <= max(own.down(expected_between("A", "B", at, spread)), own.mark):
        return ""
    return say("read.prove_ends", shown=layout.job.shown.show(layout.staked.chord))


def _step_of_end(mark: str, steps: Sequence[StepRow]) -> StepRow | None:
    """The step that finds an end: its own where it has one, otherwise the one that finds both."""
    finding = [row for row in steps if not row["level"]]
    own = (row for row in finding if mark in row["marks"])
    return next(own, None) or next((row for row in finding if "A" in (row["marks"] or ["A"])), None)


def _step_of(mark: str, steps: Sequence[StepRow]) -> StepRow | None:
    return next((step for step in steps if mark in step["marks"] or step["stake"] == _plain(mark)), None)


def _plain(mark: str) -> str:
    first, _space, rest = mark.partition(" ")
    return rest if first in HELPERS else mark
