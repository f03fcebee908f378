"""How deep a wall's dig is cut beside its stakes, as far as the ground or the dig's depth is known."""

from __future__ import annotations

from bowstring.forming.band import INNER, OUTER
from bowstring.forming.grades import Grade, cut_or_fill
from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.grade_said import Settled, settle
from bowstring.report.forming.ground_far import far_reads
from bowstring.report.forming.plan import Plan, of_curve

_ACROSS = {"outside": OUTER, "inside": INNER}


def measured_cut(plan: Plan, grade: Grade, side: str) -> float | None:
    """Return the deepest cut where the ground was measured, metres, 0 where all is filled: along one edge, ``outside``
    or ``inside``, or along the other where none was along that. ``None`` where nothing tells it."""
    deep = underside(plan)
    if deep is None or not on_footing(plan) or far_reads(plan, grade.start, 0.0):
        return None
    shares, base = dict(plan.shares()), plan.said.slab.base or 0.0
    cuts: dict[str, list[float]] = {key: [] for key in _ACROSS}
    for read in plan.said.grade.ground:
        edge = of_curve(read.edge, plan.layout.side)
        if edge in cuts and read.stake in shares:
            top = grade.top(shares[read.stake], _ACROSS[edge])
            cuts[edge].append(cut_or_fill(top, deep, base, read.level))
    found = cuts[side] or [cut for edge in cuts.values() for cut in edge]
    return max(0.0, *found) if found else None


def cut_beside(plan: Plan, side: str) -> float:
    """Return how deep the dig is cut along an edge, metres: where the ground was measured, else as deep as it goes
    below the top, which the ground behind a wall reaches. 0 of a slab, and where nothing tells it."""
    deep = underside(plan)
    if deep is None or not on_footing(plan):
        return 0.0
    settled = settle(plan)
    found = measured_cut(plan, settled.grade, side) if isinstance(settled, Settled) else None
    return deep + (plan.said.slab.base or 0.0) if found is None else found
