"""All methods side by side, and which one to take, told."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from bowstring.analysis.obstructions import CLEAR
from bowstring.analysis.reach import Blocked
from bowstring.construction import HELPERS
from bowstring.job.services import may_be_service
from bowstring.layout.comparison import Advice, Change
from bowstring.layout.demand import demand_of
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.report.demand import limits_told
from bowstring.report.forms.advice import AdvicePart, BlockRow, ChangeRow, MethodRow
from bowstring.report.places import place_name
from bowstring.units.tape import Tape
from bowstring.units.worst import worst_shown
from bowstring.words import say

TOLD_BLOCKS = 3
"""How many of the things in the way a sentence names."""


def report_methods(layout: Layout, rows: Sequence[Row], whole: bool) -> list[MethodRow]:
    """Return the answer's ``methods``: one row a method; ``all_95``, which no sheet has of them, when ``whole``."""
    return [_row(layout, row, whole) for row in rows]


def _row(layout: Layout, row: Row, whole: bool) -> MethodRow:
    tape, accuracy, there = layout.job.shown, row.accuracy, row.none is None
    longest, behind = (size if there else None for size in (row.longest_pull, row.behind))
    shift, expected = (size if there else None for size in (row.shift, row.expected))
    miss_95 = accuracy.miss_95 if accuracy else None
    fair_95 = accuracy.fair_95 if accuracy else None
    all_95 = accuracy.all_95 if accuracy and whole else None
    miss, fair = (partial(worst_shown, tape, limit=most) for most in (layout.job.tolerance, layout.job.fair))
    return {
        "method": row.method.name,
        "name": name_of(layout, row),
        "parallel": _distance(row),
        "everyday": row.method.everyday,
        "possible": row.possible,
        "why_not": why_not(layout, row),
        "stakes": row.stakes if there else None,
        "measurements": row.measurements if there else None,
        "longest_pull": longest,
        "longest_pull_shown": _shown(longest, tape.show),
        "miss_95": miss_95,
        "miss_95_shown": _shown(miss_95, miss),
        "fair_95": fair_95,
        "fair_95_shown": _shown(fair_95, fair),
        "all_95": all_95,
        "all_95_shown": _shown(all_95, miss),
        "shift": shift,
        "shift_shown": _shown(shift, tape.show_cost),
        "expected": expected,
        "expected_shown": _shown(expected, miss),
        "reliable": accuracy.reliable if accuracy else None,
        "hands": row.method.hands,
        "behind": behind,
        "behind_shown": _shown(behind, tape.show),
        "blocks": [report_block(layout, block) for block in row.blocks],
    }


def _shown(value: float | None, show: Callable[[float], str]) -> str | None:
    return None if value is None else show(value)


def name_of(layout: Layout, one: Row | Change) -> str:
    """Return a method's name in words; a mix of two, and ordinates from a parallel string, told as such."""
    if one.halve_first:
        return say("method.mixed_once" if one.halve_first == 1 else "method.mixed", times=one.halve_first)
    if one.parallel:
        size = layout.job.shown.show(abs(one.parallel.distance))
        return say("method.parallel" if one.parallel.distance > 0 else "method.parallel_behind", size=size)
    return say(f"method.name.{one.method.name}")


def _distance(row: Row | Change | None) -> float | None:
    """Return how far a row's parallel string is from the chord, metres, if it has one."""
    return row.parallel.distance if row and row.parallel else None


def why_not(layout: Layout, row: Row) -> str | None:
    """Return why a method can't be done here, or ``None``."""
    if row.none:
        return say(f"method.{row.none}.wrong")
    if row.blocks:
        # An obstacle is told once, however many lines it stops; so is the tape, and the room on a side.
        first = {block.what or block.kind: block for block in reversed(row.blocks)}
        told = [block for block in row.blocks if first[block.what or block.kind] is block]
        return " ".join(block_text(layout, block) for block in told[:TOLD_BLOCKS])
    if row.few_hands:
        return say("method.few_hands", hands=row.method.hands)
    return None


def block_text(layout: Layout, block: Blocked) -> str:
    """Return what one thing in the way stops."""
    tape, site = layout.job.shown, layout.job.site
    there = {"tape": site.tape_length, **site.room}.get(block.kind, 0.0)
    # From a stake's own mark on a line to the stake itself: where that mark is doesn't matter to what is in the way.
    out = block.kind == "pull" and any(block.start == f"{part} {block.end}" for part in HELPERS)
    near = bool(tape.round(block.gap))
    return say(
        f"block.{block.kind}{'_out' if out else ''}{'_near' if near else ''}",
        start=place_name(block.start),
        end=place_name(block.end),
        what=block.what,
        size=tape.show(block.size),
        there=tape.show(there),
        gap=tape.show(block.gap),
        clear=tape.show(CLEAR[layout.job.tape.feet]),
    )


def report_block(layout: Layout, block: Blocked) -> BlockRow:
    """Return one thing in the way as the answer has it."""
    return {
        "kind": block.kind,
        "step": block.step,
        "from": block.start,
        "to": block.end,
        "what": block.what,
        "text": block_text(layout, block),
    }


def report_advice(layout: Layout, rows: Sequence[Row], advice: Advice) -> AdvicePart:
    """Return the answer's ``advice``: the method to take, and one sentence with its reasons."""
    row = advice.row
    changes: list[ChangeRow] = [
        {"kind": change.kind, "what": change.what, "size": change.size, "method": change.method.name,
         "halve_first": change.halve_first, "parallel": _distance(change), "text": _change(layout, change)}
        for change in advice.changes
    ]  # fmt: skip
    if row is None:
        text = _no_method(layout, rows, advice, changes)
        return {"method": None, "halve_first": 0, "parallel": None, "text": text, "holds": None, "fair": None,
                "decided": None, "changes": changes}  # fmt: skip
    text = say(
        "advice.take",
        method=name_of(layout, row),
        reason=say(f"advice.{_reason(layout, advice)}", count=row.measurements, good=advice.rivals + 1),
        miss=limits_told(layout, rows, row, advice.decided),
        blocked=_blocked(layout, rows, row),
    )
    return {
        "method": row.method.name,
        "halve_first": row.halve_first,
        "parallel": _distance(row),
        "text": text,
        "holds": advice.holds,
        "fair": advice.fair,
        "decided": advice.decided,
        "changes": [],
    }


def _no_method(layout: Layout, rows: Sequence[Row], advice: Advice, changes: Sequence[ChangeRow]) -> str:
    """What to do where nothing works as things are: a string beside what is in the way before any other change."""
    if not changes:
        return _none(layout, rows)
    alone = _alone(layout, rows)
    string, block = string_of(advice), next((block for row in rows for block in row.blocks), None)
    if string is None or block is None:
        told = [change["text"] for change in changes]
        return say("advice.none_but", changes=say("advice.or").join(told), alone=alone)
    others = [change["text"] for change in changes if change["kind"] != "string"]
    more = " " + say("advice.others", changes=say("advice.or").join(others)) if others else ""
    return say("advice.none_string", why=block_text(layout, block), string=string_text(layout, string),
               others=more + alone)  # fmt: skip


def string_of(advice: Advice) -> Change | None:
    """Return the single change that is a string parallel to the chord, the one beyond the curve before the other."""
    return next((change for change in advice.changes if change.kind == "string"), None)


def string_text(layout: Layout, change: Change) -> str:
    """Return where a parallel string is, as short as a button."""
    return say(f"advice.string_{change.what}", size=layout.job.shown.show(change.size))


def _reason(layout: Layout, advice: Advice) -> str:
    """Why the advised method; where both limits count, the most accurate in place alone may be another one."""
    demand = demand_of(layout.job)
    if advice.reason not in ("fewest", "truest") or demand.tolerance is None or demand.fair is None:
        return advice.reason
    return f"{advice.reason}_{'hold' if advice.holds and advice.fair else 'near'}"


def _alone(layout: Layout, rows: Sequence[Row]) -> str:
    """What somebody alone may still do: a swing, where only nobody said that its center can be reached."""
    tape, site = layout.job.shown, layout.job.site
    radius = layout.staked.radius
    for row in rows:
        if row.none == "centre_unreached" and row.method.hands <= site.hands < 2 and radius <= site.tape_length:
            return say("advice.none_alone", size=tape.show(radius))
    return ""


def _none(layout: Layout, rows: Sequence[Row]) -> str:
    """That nothing would do; what may be a service is named, so that nobody moves it."""
    stopping = {block.what for row in rows for block in row.blocks}
    services = [one.name for one in layout.job.site.obstacles if one.name in stopping and may_be_service(one.name)]
    return say("advice.none_service", what=", ".join(services)) if services else say("advice.none")


def _blocked(layout: Layout, rows: Sequence[Row], taken: Row) -> str:
    """Why everyday methods that take fewer readings are not it: the first one that is blocked."""
    for row in rows:
        if row.method.everyday and row.none is None and row.measurements < taken.measurements and not row.possible:
            why = why_not(layout, row) or ""
            named = say("advice.instead", method=name_of(layout, row), why=why[:1].upper() + why[1:])
            return f" {named}"
    return ""


def _enough(tape: Tape, size: float) -> float:
    """Return a size on a mark of the tape that is no less than what is asked for."""
    near = tape.round(size)
    return near if near >= size - tape.mark / 1000 else near + tape.mark


def _change(layout: Layout, change: Change) -> str:
    tape = layout.job.shown
    size = f"{change.size:.0f}" if change.kind == "hands" else tape.show(_enough(tape, change.size))
    kind = f"{change.kind}_{change.what}" if change.kind in ("room", "start") else change.kind
    method = name_of(layout, change)
    return say(f"advice.change_{kind}", size=size, what=change.what, method=method)
