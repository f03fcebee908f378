"""How deep a thing stands in the dig of a line, and where, so that the dig can be held back there."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.forming.line.slab import LineSlab
from bowstring.forming.outline import ENDS
from bowstring.geometry.plane import Point
from bowstring.report.forming.standing import InDig, walked


def deepest_of(slab: LineSlab, past: float, outline: Sequence[Point], past_ends: Sequence[str] = ENDS) -> InDig | None:
    """Return where an outline, metres in the line's frame, stands deepest within a dig so far past a slab's edges and
    ends: on which hand or past which end, how far along the slab's own line, and how deep, metres; ``past_ends``: past
    which of them, ``A`` its start and ``B`` its end.

    ``None`` where no place of it stands square off the line within the dig.
    """
    line = slab.line.run_on(*(past if end in past_ends else 0.0 for end in ENDS))
    before = past if "A" in past_ends and line is not slab.line else 0.0
    found: InDig | None = None
    for point in walked(outline):
        for number, run in enumerate(line.runs):
            on = run.along(point)
            if not run.holds(on):
                continue
            station, off = line.stations[number] + on - before, run.across(point)
            inside = {"left": slab.left + past - off, "right": slab.right + past + off}
            ends = {"A": station + past, "B": slab.line.length + past - station} if line is not slab.line else {}
            inside |= {end: deep for end, deep in ends.items() if deep < past and end in past_ends}
            where = min(inside, key=lambda one: inside[one])
            if inside[where] > 0 and inside[where] > (found.deep if found else 0.0):
                found = InDig(where, min(max(station, 0.0), slab.line.length), inside[where])
    return found
