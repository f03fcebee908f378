"""Stakes of a wall that stand nearer to its cut than that is deep, told."""

from __future__ import annotations

from bowstring.forming.grades import Grade
from bowstring.report.forming.cut_deep import measured_cut
from bowstring.report.forming.heights import size_of
from bowstring.report.forming.in_dig import DUST, clear_of
from bowstring.report.forming.plan import Plan
from bowstring.words import say


def near_cut(plan: Plan, grade: Grade) -> tuple[str, str] | None:
    """Return that the job's stakes, clear of a wall's dig, stand nearer to its cut than that is deep where the ground
    was measured, in a few words and as a sentence. As far back as it is deep is common practice, no source; nothing of
    how a bank stands."""
    clear, outward = clear_of(plan), plan.layout.job.outward
    if clear is None or clear.takes(outward):
        return None
    gap = outward - clear.outside if outward > 0 else -outward - clear.inside
    deep = measured_cut(plan, grade, "outside" if outward > 0 else "inside")
    if deep is None or deep <= gap + DUST:
        return None
    shown = {"gap": plan.tape.show(gap), "deep": size_of(plan.tape, deep)}
    return say("walled.near_cut_row", **shown), say("walled.near_cut", **shown)
