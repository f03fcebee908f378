"""Ground heights that no tops of a job can stand over: rod readings typed as heights, or another benchmark's."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.job.grade import GroundRead
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.plan import Plan, of_curve
from bowstring.report.forms.build_grades import GradeStop, TopRow
from bowstring.units.sizes import FOOT
from bowstring.words import say

MOST = 30 * FOOT
"""Metres, 30 ft: farther from the tops no ground is that a slab or a wall of this height is formed on (common
practice, no source)."""

LONGEST_ROD = 25 * FOOT


def far_reads(plan: Plan, start: float, climb: float) -> list[GroundRead]:
    """Return the heights of the ground farther than ``MOST`` from the tops: ``start``, the one at A, metres, and the
    most that another stands over or under it."""
    return [read for read in plan.said.grade.ground if abs(read.level - start) > MOST + climb]


def far_stop(plan: Plan, rows: Sequence[TopRow], start: float) -> tuple[GradeStop, str] | None:
    """Return the stop of ground heights so far off, and what to do about it; ``None`` where there are none."""
    tops = [top["level"] for row in rows for top in (row["outside"], row["inside"]) if top]
    far = far_reads(plan, start, max(map(abs, tops), default=0.0))
    if not far:
        return None
    tape, said, one = plan.tape, plan.said.grade, far[0]
    shown = {"where": _where(plan, one), "level": elevation(tape, one.level), "most": tape.show_whole(MOST)}
    if said.start is None:
        do = say("grades.far_no_top")
    elif all(0.0 <= read.level <= LONGEST_ROD for read in far):
        hi = said.instrument
        do = say("grades.far_rods") if hi is None else say("grades.far_rods_hi", hi=elevation(tape, hi))
    else:
        do = say("grades.far_levels", top=elevation(tape, start))
    return {"head": say("grades.far_head"), "text": f"{say('grades.far_text', **shown)} {do}", "why": ""}, do


def _where(plan: Plan, read: GroundRead) -> str:
    """The stake, and which form where that is known."""
    edge = of_curve(read.edge, plan.layout.side)
    return say(f"grades.far_{edge}", stake=read.stake) if edge in ("outside", "inside") else read.stake
