"""What proves a pad's far corners, told beside the stakes' checks: lengths that no step pulls, and what was read."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot

from bowstring.analysis.accuracy import NORMAL_95
from bowstring.analysis.checks import Check
from bowstring.analysis.far_corners import Stands, far_corners
from bowstring.analysis.limits import Judged, expected_about
from bowstring.analysis.squaring import kit_of
from bowstring.analysis.triangles import Square
from bowstring.construction.scatter import Errors
from bowstring.forming.pad import FAR_PAIRS, Pad
from bowstring.geometry.plane import Point, unit_vector
from bowstring.job.job import Job
from bowstring.job.kept import Kept
from bowstring.report.checks import row_of_check
from bowstring.report.forming.pad_edges import square_of
from bowstring.report.forming.plan import Plan
from bowstring.report.forms.read import FarChecks, ReadRow
from bowstring.report.read import OUT, read_row, typed_of
from bowstring.units.tape import Tape
from bowstring.words import say

FAR = "far"


def report_far(plan: Plan, kept: Kept, errors: Errors) -> FarChecks:
    """Return the answer's ``far_checks``, of any other slab than a pad no row; ``errors``: of the layout's tape."""
    pad, job = plan.filled, plan.layout.job
    if not isinstance(pad, Pad):
        return {"rows": [], "read": [], "told": [], "off": False, "sees": []}
    rows, typed = list(_judged(plan, pad, errors)), typed_of(kept)
    read_rows = [read_row(job, one, typed[one.check.key]) for one in rows if one.check.key in typed]
    return {
        "rows": [row_of_check(job, one) for one in rows],
        "read": read_rows,
        "told": list(_told(job, pad, read_rows)),
        "off": bool(job.outward),
        "sees": [],
    }


def _told(job: Job, pad: Pad, read: list[ReadRow]) -> Iterator[str]:
    """What the readings that are out mean: which corner stands where, once all three are read and none of them twice by
    two lengths."""
    if not any(row["verdict"] in OUT for row in read):
        return
    over = {row["check"]: row["over"] for row in read if row["over"] is not None and row["verdict"] != "differ"}
    if len(over) < len(FAR_PAIRS):
        yield say("face_checks.far_all")
        return
    limits = {row["check"]: row["limit"] for row in read}
    found = far_corners(pad.arc.chord, pad.sides, over, limits)
    if found is None:
        return
    yield from (_corner_told(job.shown, one) for one in found.corners)
    if not found.corners:
        yield say("face_checks.far_across" if found.across else "face_checks.far_none")


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
    for start, end in FAR_PAIRS:
        way = unit_vector(at[start], at[end])
        corners = [name for name in (start, end) if name.endswith("-2")]
        # A corner slips along the string as its side turns, and along it as that is pulled; A to B was pulled, too.
        moved = [way.x * aside for _one in corners]
        moved += [way.y * errors.pull for _one in corners] + [way.x * errors.pull]
        stakes = [errors.stake] * (2 + len(corners))
        expected = NORMAL_95 * hypot(errors.pull, *moved, *stakes)
        far = hypot(at[end].x - at[start].x, at[end].y - at[start].y)
        check = Check(FAR, start, end, far, 0.0, None, 0, way, {})
        limit = expected_about(0.0, expected) + plan.layout.job.tape.mark / 2
        yield Judged(check, expected, None, False, 0.0, limit)


def turn_of(plan: Plan, pad: Pad, errors: Errors) -> float:
    """Return the standard deviation, radians, of a side's direction by what it is squared with."""
    made = square_of(plan, pad)
    if made is not None:
        return Square(made.along, made.out, made.long_side, made.whole or "", "B").turn(errors.read)
    blade = kit_of(plan.layout.job.tape).blade
    return Square(blade, blade, blade, "", "B").turn(errors.read)
