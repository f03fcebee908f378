"""The ground that was measured along a wall, and stakes that stand nearer to its cut than that is deep, told."""

from __future__ import annotations

from bowstring.forming.band import INNER, OUTER
from bowstring.forming.grades import Grade, cut_or_fill
from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.heights import elevation, size_of
from bowstring.report.forming.in_dig import DUST, clear_of
from bowstring.report.forming.plan import Plan, of_curve
from bowstring.words import say

_ACROSS = {"outside": OUTER, "inside": INNER}


def ground_told(plan: Plan) -> list[str]:
    """Return the heights of the ground that its cut and fill come from, in the levels of the job; none of a slab."""
    names = {name for name, _share in plan.shares()}
    reads = [read for read in plan.said.grade.ground if read.stake in names]
    if not reads or not on_footing(plan) or underside(plan) is None:
        return []
    told = []
    for read in reads:
        edge = of_curve(read.edge, plan.layout.side)
        if edge in _ACROSS:
            told.append(say(f"walled.ground_{edge}", stake=read.stake, level=elevation(plan.tape, read.level)))
    return [say("walled.ground", unit="ft" if plan.tape.feet else "m", told=", ".join(told))] if told else []


def near_cut(plan: Plan, grade: Grade) -> list[str]:
    """Return that the job's stakes, clear of a wall's dig, stand nearer to its cut than that is deep where the ground
    was measured. As far back as it is deep is common practice, no source; nothing of how a bank stands."""
    clear, outward, deep = clear_of(plan), plan.layout.job.outward, underside(plan)
    if clear is None or deep is None or not on_footing(plan) or clear.takes(outward):
        return []
    gap = outward - clear.outside if outward > 0 else -outward - clear.inside
    shares, base = dict(plan.shares()), plan.said.slab.base or 0.0
    cuts = [0.0]
    for read in plan.said.grade.ground:
        edge = of_curve(read.edge, plan.layout.side)
        if edge in _ACROSS and read.stake in shares:
            top = grade.top(shares[read.stake], _ACROSS[edge])
            cuts.append(cut_or_fill(top, deep, base, read.level))
    if max(cuts) <= gap + DUST:
        return []
    return [say("walled.near_cut", gap=plan.tape.show(gap), deep=size_of(plan.tape, max(cuts)))]
