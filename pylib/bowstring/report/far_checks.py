"""What proves a pad's far corners, told beside the stakes' checks: lengths that no step pulls, the sides once more,
both diagonals held against each other, and what was read."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from math import hypot, sqrt

from bowstring.analysis.accuracy import NORMAL_95
from bowstring.analysis.checks import Check
from bowstring.analysis.far_corners import Stands, far_corners
from bowstring.analysis.limits import Judged, expected_about
from bowstring.analysis.squaring import kit_of
from bowstring.analysis.triangles import Square
from bowstring.construction.scatter import Errors
from bowstring.forming.pad import FAR_PAIRS, SIDE_PAIRS, Pad
from bowstring.geometry.plane import Point, unit_vector
from bowstring.job.kept import Kept
from bowstring.report.checks import limit_shown, row_of_check
from bowstring.report.forming.pad_edges import square_of
from bowstring.report.forming.plan import Plan, line_ends
from bowstring.report.forms.checks import CheckRow
from bowstring.report.forms.read import FarApart, FarChecks, ReadRow
from bowstring.report.read import NO_VERDICT, OUT, read_row, typed_of
from bowstring.report.waiting import Waits
from bowstring.units.tape import Tape
from bowstring.words import say

FAR = "far"

_OF_B, _OF_A = (f"{start}-{end}" for start, end in FAR_PAIRS[:2])
"""The diagonals, by the far corner that each is on."""

_BACK = "-".join(FAR_PAIRS[2])

_SIDES = tuple(f"{start}-{end}" for start, end in SIDE_PAIRS)

_NO_READING = ("differ", *NO_VERDICT)
"""Verdicts by which no one length was read."""


def report_far(plan: Plan, kept: Kept, errors: Errors, waits: Waits) -> FarChecks:
    """Return the answer's ``far_checks``, of any other slab than a pad no row; ``errors``: of the layout's tape."""
    pad, job = plan.filled, plan.layout.job
    if not isinstance(pad, Pad):
        return {"rows": [], "read": [], "told": [], "off": False, "sees": [], "apart": None, "outs": 0,
                "waits": ""}  # fmt: skip
    rows, typed = list(_judged(plan, pad, errors)), typed_of(kept)
    met = [(one, waits.at((one.check.start, one.check.end))) for one in rows if one.check.key in typed]
    read_rows = [_read(plan, one, typed[one.check.key], at) for one, at in met]
    apart = _apart(plan, pad, errors, read_rows)
    return {
        "rows": [_row(plan, one) for one in rows],
        "read": read_rows,
        "told": list(_told(plan, pad, read_rows, apart)),
        "off": bool(job.outward),
        "sees": [_sees(plan, pad, one) for one in rows],
        "apart": apart,
        "outs": outs_of(read_rows) + apart["out"],
        "waits": waits.at({mark for one, _at in met for mark in (one.check.start, one.check.end)}).line,
    }


def outs_of(read: Sequence[ReadRow]) -> int:
    """Return how many readings are out."""
    return sum(row["verdict"] in OUT for row in read)


def _row(plan: Plan, one: Judged) -> CheckRow:
    """A check by the names of the corners: with stakes off the line A and B are those, and the corners A0 and B0."""
    row, ends = row_of_check(plan.layout.job, one), line_ends(plan)
    start, end = ends.get(one.check.start.lower(), one.check.start), one.check.end
    return {**row, "from": start, "to": end, "text": say("check.far", start=start, end=end, shown=row["shown"])}


def _read(plan: Plan, one: Judged, values: list[object], waits: Waits) -> ReadRow:
    """What was read of a check, kept by its key, and told by the names of the corners."""
    check = one.check
    start = line_ends(plan).get(check.start.lower(), check.start)
    called = Check(FAR, start, check.end, check.distance, 0.0, None, 0, check.way, {})
    named = Judged(called, one.expected, None, False, 0.0, one.limit)
    row = read_row(plan.layout.job, named, values, waits=waits.told)
    return {**row, "check": check.key, "marks": [check.start, check.end]}


def _told(plan: Plan, pad: Pad, read: list[ReadRow], apart: FarApart) -> Iterator[str]:
    """What the readings that are out mean: a side's own says it of its corner; that both far corners lean, where only
    the diagonals differ; otherwise which corner stands where, once both diagonals and the back are read and none of
    them twice by two lengths."""
    tape, verdicts = plan.layout.job.shown, {row["check"]: row["verdict"] for row in read}
    over = {row["check"]: row["over"] for row in read if row["over"] is not None and row["verdict"] not in _NO_READING}
    if _leans(over, apart) and not any(verdicts.get(key) in OUT for key in (_BACK, *_SIDES)):
        yield say("face_checks.far_apart", size=apart["over_shown"], limit=apart["limit_shown"])
        yield _leaning(plan, pad, apart)
        return
    if not outs_of(read):
        return
    out = {row["check"] for row in read if row["verdict"] in OUT}
    sides = [(key, pair[1]) for key, pair in zip(_SIDES, SIDE_PAIRS, strict=True) if key in out and key in over]
    yield from (_corner_told(tape, Stands(end, "", 0.0, over[key])) for key, end in sides)
    if not sides and not out <= set(_SIDES):
        yield from _corners(tape, pad, over, {row["check"]: row["limit"] for row in read})


def _corners(tape: Tape, pad: Pad, over: Mapping[str, float], limits: Mapping[str, float]) -> Iterator[str]:
    """Which corner stands where by the diagonals and the back, once all of them are read."""
    far = [f"{start}-{end}" for start, end in FAR_PAIRS]
    if not all(key in over for key in far):
        yield say("face_checks.far_all")
        return
    found = far_corners(pad.arc.chord, pad.sides, {key: over[key] for key in far}, limits)
    if found is None:
        return
    yield from (_corner_told(tape, one) for one in found.corners)
    if not found.corners:
        yield say("face_checks.far_across" if found.across else "face_checks.far_none")


def _leans(over: Mapping[str, float], apart: FarApart) -> bool:
    """Whether the diagonals differ by more than they may, the one about as much too long as the other is too short."""
    differ = apart["over"] or 0.0
    if abs(differ) <= apart["limit"] * (1 + 1e-9):
        return False
    return apart["out"] or abs(over[_OF_B] + over[_OF_A]) <= abs(differ) / 2


def _leaning(plan: Plan, pad: Pad, apart: FarApart) -> str:
    """How far the far end of a pad that is out of square leans to which side.

    Both far corners so far to one side make one diagonal longer and the other one shorter by that times the chord over
    the diagonal.
    """
    over = apart["over"] or 0.0
    tape = plan.layout.job.shown
    lean = tape.show(tape.round(abs(over) * pad.diagonal / (2 * pad.arc.chord)))
    return say("face_checks.far_lean", size=lean, end=line_ends(plan)["b" if over > 0 else "a"])


def _corner_told(tape: Tape, one: Stands) -> str:
    """Where a corner stands instead, as far as the readings tell."""
    parts = []
    if one.toward:
        key = "toward" if one.toward > 0 else "away"
        parts.append(say(f"face_checks.far_{key}", size=tape.show(abs(one.toward)), other=one.other))
    if one.back:
        key = "long" if one.back > 0 else "short"
        parts.append(say(f"face_checks.far_{key}", size=tape.show(abs(one.back))))
    if not parts:
        return say("face_checks.far_is_off", corner=one.corner)
    return say("face_checks.far_stands", corner=one.corner, where=say("face_checks.far_and").join(parts))


def _judged(plan: Plan, pad: Pad, errors: Errors) -> Iterator[Judged]:
    """Each length with its limit: what 95 of 100 readings stay within by the stakes' error model, and half a mark."""
    at = {"A": Point(0.0, 0.0), "B": Point(pad.arc.chord, 0.0), "A-2": Point(0.0, -pad.sides),
          "B-2": Point(pad.arc.chord, -pad.sides)}  # fmt: skip
    aside = pad.sides * turn_of(plan, pad, errors)
    for start, end in FAR_PAIRS + SIDE_PAIRS:
        way = unit_vector(at[start], at[end])
        corners = [name for name in (start, end) if name.endswith("-2")]
        # A corner slips along the string as its side turns, and along it as that is pulled; A to B was pulled, too.
        moved = [way.x * aside for _one in corners]
        moved += [way.y * errors.pull for _one in corners] + [way.x * errors.pull]
        # A side is pulled from its own near corner, as that stands: only its far one's stake is off by then.
        stakes = [errors.stake] * (1 if (start, end) in SIDE_PAIRS else 2 + len(corners))
        expected = NORMAL_95 * hypot(errors.pull, *moved, *stakes)
        far = hypot(at[end].x - at[start].x, at[end].y - at[start].y)
        check = Check(FAR, start, end, far, 0.0, None, 0, way, {})
        limit = expected_about(0.0, expected) + plan.layout.job.tape.mark / 2
        yield Judged(check, expected, None, False, 0.0, limit)


def apart_of(plan: Plan, pad: Pad, errors: Errors) -> float:
    """Return by how much the two diagonals differ at most in 95 of 100 layouts, metres, their readings included.

    Either far corner slips as its side turns off the string and as that is pulled, and with its own stake; both
    readings count. Where A and B stand turns the pad as a whole, or stretches both diagonals alike.
    """
    across, back = pad.arc.chord / pad.diagonal, pad.sides / pad.diagonal
    aside = pad.sides * turn_of(plan, pad, errors)
    return NORMAL_95 * sqrt(2) * hypot(across * aside, back * errors.pull, errors.stake, errors.pull)


def _apart(plan: Plan, pad: Pad, errors: Errors, read: Sequence[ReadRow]) -> FarApart:
    """Both diagonals held against each other: the print that each is read against is the same, and cancels."""
    job = plan.layout.job
    most = apart_of(plan, pad, errors)
    over = {row["check"]: row["over"] for row in read if row["verdict"] not in _NO_READING}
    first, other = over.get(_OF_B), over.get(_OF_A)
    limit = max(job.tape.down(most), job.tape.mark)
    apart = None if first is None or other is None else first - other
    verdicts: Mapping[str, str] = {row["check"]: row["verdict"] for row in read}
    both_in = all(verdicts.get(key) == "in" for key in (_OF_B, _OF_A))
    return {
        "limit": limit,
        "limit_shown": limit_shown(job, most),
        "over": apart,
        "over_shown": "" if apart is None else job.shown.show(abs(apart)),
        "out": both_in and apart is not None and abs(apart) > limit * (1 + 1e-9),
    }


def _sees(plan: Plan, pad: Pad, one: Judged) -> str:
    """Which miss a check sees: of a diagonal how far its far corner is off sideways, of the back either one."""
    tape, (start, end) = plan.layout.job.shown, (one.check.start, one.check.end)
    if (start, end) in SIDE_PAIRS:
        return say("face_checks.far_sees_back", corner=end, miss=tape.show_up(one.limit))
    if (start, end) in FAR_PAIRS[:2]:
        return say("face_checks.far_sees_side", corner=end, miss=tape.show_up(one.limit * pad.diagonal / pad.arc.chord))
    return say("face_checks.far_sees_across", miss=tape.show_up(one.limit))


def turn_of(plan: Plan, pad: Pad, errors: Errors) -> float:
    """Return the standard deviation, radians, of a side's direction by what it is squared with."""
    made = square_of(plan, pad)
    if made is not None:
        return Square(made.along, made.out, made.long_side, made.whole or "", "B").turn(errors.read)
    blade = kit_of(plan.layout.job.tape).blade
    return Square(blade, blade, blade, "", "B").turn(errors.read)
