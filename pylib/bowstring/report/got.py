"""What was got at stakes, told: where they stand, whether they may stay, and which numbers change after them."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from bowstring.analysis.slips import Slip, find_slips
from bowstring.construction import HELPERS, Step
from bowstring.errors import BadJob
from bowstring.job.got import Got
from bowstring.job.job import Job
from bowstring.layout.judging import FAR_OFF, Judged, judge
from bowstring.layout.layout import Layout, lay_out
from bowstring.report.forms.got import GotMove, GotRow, GotSlip, LaterNumber
from bowstring.report.numbers import off_the_arc
from bowstring.report.places import place_name
from bowstring.units.tape import Tape
from bowstring.words import say

MOST_LATER = 6
"""Numbers that are told of those that change: as many as fit beside the question."""

MOST_MUST = 2


def report_got(layout: Layout) -> list[GotRow]:
    """Return the answer's ``got``: a row for each of the job's."""
    return [_row(layout, judge(layout, name)) for name in layout.job.got]


def slip_of(layout: Layout, judged: Judged) -> Slip | None:
    """Return what the readings at a mark look like, the likeliest, if anything; nothing where it was taped twice."""
    if layout.job.got[judged.name].sure:
        return None
    standing = judged.standing
    found = find_slips(
        standing.told, standing.asked, standing.meant, standing.planned, judged.step.names, layout.job.tape
    )
    return next(found, None)


def told_slip(tape: Tape, slip: Slip) -> str:
    """Return the sentence that names a slip."""
    way = "more" if slip.more else "less"
    whole = slip.kind in ("foot", "inch", "metre", "decimetre")
    return say(
        f"got.slip.{slip.kind}_{way}" if whole else f"got.slip.{slip.kind}",
        what=first_capital(label_of(slip.start, slip.end)), asked=tape.show(slip.asked), read=tape.show(slip.read),
    )  # fmt: skip


def first_capital(text: str) -> str:
    """Return a text that begins a sentence; a mark's name has its own letters."""
    return text[:1].upper() + text[1:]


def _row(layout: Layout, judged: Judged) -> GotRow:
    tape = layout.job.shown
    slip = slip_of(layout, judged)
    before = _without(layout.job, judged.name)
    changed = list(_changed(layout, judged, before)) if before else []
    later: list[LaterNumber] = [row for rows in changed for row in rows][:MOST_LATER]
    onward = _onward(layout, later, len(changed), checks_change=before is not None and _checks_change(layout, before))
    return {
        "stake": judged.name,
        "at": judged.stake,
        "across": judged.across,
        "shown": _stands(tape, judged),
        "within": judged.within,
        "usual": judged.usual,
        "bump": judged.bump,
        "bump_shown": "" if judged.bump is None else tape.show_near(judged.bump),
        "fair": judged.fair,
        "apart": judged.standing.apart,
        "doubt": judged.doubt,
        "must": list(_must(tape, judged)),
        "move": _move(tape, judged),
        "slip": _slip(tape, judged, slip),
        "later": later,
        "changes": len(changed),
        "text": _text(layout, judged, onward),
        "onward": onward,
    }


def _stands(tape: Tape, judged: Judged) -> str:
    if judged.across is not None:
        return off_the_arc(tape, judged.across)
    return say("got.off_place", off=tape.show_near(judged.off))


def _move(tape: Tape, judged: Judged) -> GotMove | None:
    """Back onto the arc, by the nearest mark; ``None`` for what no tape can tell from it, and for what is no stake's
    place but a misread tape."""
    if judged.across is None or not tape.round(abs(judged.across)) or abs(judged.across) > FAR_OFF:
        return None
    key = "got.move_in" if judged.across > 0 else "got.move_out"
    by = short(tape, abs(judged.across))
    return {"text": say(key, stake=judged.stake, by=by), "distance": -judged.across}


def short(tape: Tape, length: float) -> str:
    """Return a short length as somebody calls it: 1/4 in."""
    return tape.show_near(length)


def _slip(tape: Tape, judged: Judged, slip: Slip | None) -> GotSlip | None:
    if slip is not None:
        return {"kind": slip.kind, "text": told_slip(tape, slip)}
    if judged.doubt:
        apart = tape.show_near(judged.standing.apart)
        return {"kind": "apart", "text": say("got.slip.apart", mark=place_name(judged.name), apart=apart)}
    return None


def _must(tape: Tape, judged: Judged) -> Iterator[str]:
    """What wasn't read, and reads something else now than the sheet asked: the farthest off first."""
    rows = sorted(judged.standing.other, key=lambda row: -abs(row[0].length - row[1]))
    for now, asked in rows[:MOST_MUST]:
        if abs(now.length - asked) > tape.mark:
            yield say("got.must", start=now.start, end=now.end, now=tape.show(now.length))


def _text(layout: Layout, judged: Judged, onward: str) -> str:
    tape, job = layout.job.shown, layout.job
    values: dict[str, object] = {
        "stake": judged.stake or first_capital(place_name(judged.name)),
        "off": _stands(tape, judged),
        "tolerance": "" if job.tolerance is None else tape.show_limit(job.tolerance),
        "bump": "" if judged.bump is None else tape.show_near(judged.bump),
    }
    if judged.within is False and judged.across is not None and job.tolerance is not None:
        shown, values["tolerance"] = tape.show_past(judged.across, job.tolerance)
        values["off"] = off_the_arc(tape, judged.across, shown)
    lines = [say("got.stands", **values)]
    if abs(judged.along) > tape.mark:
        toward = "B" if judged.along > 0 else "A"
        lines.append(say("got.along", along=tape.show_near(judged.along), end=toward))
    if judged.within is False:
        asked = judged.stake is not None and job.tolerance is not None
        astray = "got.astray_sure" if job.got[judged.name].sure else "got.astray"
        return " ".join([*lines, say("got.over" if asked else astray, **values)])
    if judged.fair is False:
        lines.append(say("got.bump", **values))
    return " ".join([*lines, onward])


def _onward(layout: Layout, later: list[LaterNumber], changes: int, *, checks_change: bool) -> str:
    """What becomes of the numbers after it."""
    if not changes:
        return say("got.checks_change" if checks_change else "got.nothing_changes")
    if not layout.method.exact:
        return say("got.by_rule")
    names = {stake.name for stake in layout.stakes}
    stakes = [one for one in dict.fromkeys(row["stake"] for row in later) if one in names]
    if not stakes:
        return say("got.allow")
    named = say("got.and", first=stakes[0], second=stakes[1]) if len(stakes) > 1 else stakes[0]
    return say("got.back_more" if changes > len(stakes[:2]) else "got.back", stakes=named)


def _checks_change(layout: Layout, before: Layout) -> bool:
    """Whether any check must read something else than it would had the mark been set as told."""
    show = layout.job.shown.show
    was = {check.key: show(check.distance) for check in before.checks}
    return any(show(check.distance) != was.get(check.key) for check in layout.checks)


def _changed(layout: Layout, judged: Judged, before: Layout) -> Iterator[list[LaterNumber]]:
    """Yield for each later stake that gets other numbers than ``before`` the numbers that change."""
    old = {step.sets[-1]: step for step in before.recipe.steps if step.sets}
    steps = layout.recipe.steps
    show = layout.job.shown.show
    for step in steps[steps.index(judged.step) + 1 :]:
        if not step.sets or step.stands:
            continue
        same = old.get(step.sets[-1])
        was, now, kind = (_numbers(same, show) if same else {}), _numbers(step, show), same.kind if same else ""
        rows: list[LaterNumber] = [
            {"stake": step.stake or step.sets[-1], "label": label, "was": was.get(label, ""), "now": now.get(label, "")}
            for label in dict.fromkeys([*now, *was])
            if was.get(label) != now.get(label) or step.kind != kind
        ]
        if rows:
            yield rows


def _numbers(step: Step, show: Callable[[float], str]) -> dict[str, str]:
    return {label_of(one.start, one.end): show(one.length) for one in step.measures}


def label_of(start: str, end: str) -> str:
    """Return what a measure is called beside its number: by its marks, or by what it is where a helper has no pin."""
    helper, of = _helper(start), _helper(end)
    if of == "mid":
        return say("got.label.middle")
    if of in ("foot", "par", "tan"):
        return say("got.label.along", start=start if not helper else say("got.label.midpoint"))
    if helper in ("foot", "mid", "par", "tan"):
        return say("got.label.square_off")
    if of == "ahead":
        return say("got.label.carry_on")
    if helper == "ahead":
        return say("got.label.swing_in")
    return say("got.label.between", start=start, end=end)


def _helper(mark: str) -> str:
    """What a mark that only the construction has is; empty for one that is driven."""
    first, _space, rest = mark.partition(" ")
    return first if rest and first in HELPERS else ""


def _without(job: Job, name: str) -> Layout | None:
    """The layout as it would be had this mark been set as told; without those after it where they hang on it."""
    others = {row: got for row, got in job.got.items() if row != name}
    for kept in (others, _before(job, name)):
        try:
            return lay_out(Job(**{**vars(job), "got": kept}))
        except BadJob:
            continue
    return None


def _before(job: Job, name: str) -> dict[str, Got]:
    names = list(job.got)
    return {row: job.got[row] for row in names[: names.index(name)]}
