"""Where the water goes: the lowest corner of a slab, by name."""

from __future__ import annotations

from math import hypot

from bowstring.forming.band import INNER, OUTER
from bowstring.forming.grades import Grade
from bowstring.report.forming.plan import Plan
from bowstring.words import say

SLOWEST = 1 / 96
"""1/8 in per foot, the least at which water is said to run off a broom finish (common practice, no source)."""

_CORNERS = (("A_out", 0.0, OUTER), ("A_in", 0.0, INNER), ("B_out", 1.0, OUTER), ("B_in", 1.0, INNER))
_SAME = 1e-7  # metres: a tenth of what no level shows


def lowest(plan: Plan, grade: Grade) -> list[str]:
    """Return the names of the lowest corners; none where a taper has its low point between the ends."""
    tops = {name: grade.top(share, across) for name, share, across in _CORNERS}
    low = min(tops.values())
    if any(_between(plan, grade, low)):
        return []
    return [name for name, top in tops.items() if top <= low + _SAME]


def _between(plan: Plan, grade: Grade, low: float) -> list[str]:
    """Return the stakes at which an edge stands lower than any corner, the lowest last."""
    tops = sorted(((grade.top(share, across), name) for name, share in plan.shares() for across in (OUTER, INNER)))
    return [name for top, name in reversed(tops) if top < low - _SAME]


def water(plan: Plan, grade: Grade) -> str:
    """Return where the water goes, in a sentence."""
    corners = lowest(plan, grade)
    if not corners:
        low = min(grade.top(share, across) for _, share, across in _CORNERS)
        return say("grades.water_between", stake=_between(plan, grade, low)[-1])
    key = {
        ("A_out", "A_in", "B_out", "B_in"): "edges" if grade.crown else "none",
        ("A_out", "B_out"): "outside",
        ("A_in", "B_in"): "inside",
        ("A_out", "A_in"): "A_crown" if grade.crown else "A",
        ("B_out", "B_in"): "B_crown" if grade.crown else "B",
    }.get(tuple(corners), corners[0])
    return say(f"grades.water_{key}")


def is_slow(grade: Grade) -> bool:
    """Tell whether the slab falls too little anywhere to shed its water, though it isn't level both ways."""
    width = max(grade.band.width(0.0), grade.band.width(1.0))
    across = max(abs(grade.cross), 2 * grade.crown / width)  # a crown's mean, from its middle to an edge
    fall = hypot(across, grade.running)
    return 0 < fall < SLOWEST
