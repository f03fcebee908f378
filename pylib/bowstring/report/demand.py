"""How near the advised method's stakes come to their places and to the fair curve, and which of the two decided."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.layout.demand import FAIR, any_in_place, demand_of
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.units.worst import worst_shown
from bowstring.words import say

HOPELESS = 3.0
"""So many tolerances off, no care makes up for it (common practice, no source)."""


def limits_told(layout: Layout, rows: Sequence[Row], row: Row, decided: str | None) -> str:
    """Return the sentences of a method's worst stake, of its least fair one, and of what the choice hung on."""
    tape, demand = layout.job.shown, demand_of(layout.job)
    tolerance, fair = demand.tolerance, demand.fair
    if tolerance is None:
        key = "advice.miss"
    elif row.expected <= tolerance:
        key = "advice.miss_holds"
    else:
        far = "advice.miss_far" if row.expected > HOPELESS * tolerance else "advice.miss_over"
        key = "advice.miss_misses" if any_in_place(demand, rows) else far
    told = say(
        key,
        miss=worst_shown(tape, row.expected, tolerance),
        tolerance="" if tolerance is None else tape.show_limit(tolerance),
    )
    if fair is None:
        return told
    values = {"fair": worst_shown(tape, row.fair_95, fair), "limit": tape.show_limit(fair)}
    held = row.fair_95 <= fair
    lines = [told, say("advice.fair_holds" if held else "advice.fair_over", **values)]
    if tolerance is not None:
        lines.append(say("advice.decided_fair" if decided == FAIR else "advice.decided_place"))
    return " ".join(lines)
