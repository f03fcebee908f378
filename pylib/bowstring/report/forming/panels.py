"""Into how many panels a slab is jointed: decided once, for its joints and for the tops at them."""

from __future__ import annotations

from bowstring.forming.joints import Panels, offered, panels
from bowstring.forming.slab import Slab
from bowstring.report.forming.plan import Plan

USUAL_MOST = 10 * 0.3048
"""Metres between joints of a 4-in slab, as a ready-mix association has it: thirty times the thickness."""


def chosen_panels(plan: Plan) -> Panels | None:
    """Return the panels that the job says, or else those that are usual: as long as wide, up to the usual most.

    ``None`` where there is no slab yet.
    """
    if plan.slab is None:
        return None
    said = plan.said.joints
    if said.count is not None:
        return panels(plan.slab, said.count)
    return offered(plan.slab, said.every or usual_most(plan.slab))[0]


def usual_most(slab: Slab) -> float:
    """Return the longest panel along the outer edge where none is said, metres."""
    return min(slab.width, USUAL_MOST)
