"""The concrete along a line, told."""

from __future__ import annotations

from bowstring.forming.pour import CUBIC_YARD, Order, order
from bowstring.report.forming.pouring import USUAL_STEP, USUAL_WASTE
from bowstring.report.forms.build_lined import LinedPage, LinedPour
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def order_of(plan: LinePlan) -> Order | None:
    """Return what is ordered, ``None`` where there is no slab yet or no thickness is said."""
    said = plan.said.slab
    if plan.slab is None or said.thickness is None:
        return None
    unit = CUBIC_YARD if plan.plan.layout.job.tape.feet else 1.0
    waste = USUAL_WASTE if said.waste is None else said.waste
    return order(plan.slab.volume(said.thickness), waste, (said.step or USUAL_STEP) * unit)


def short_of(plan: LinePlan) -> LinedPour | None:
    """Return the answer's ``pour``, ``None`` where something has to be said first."""
    made = order_of(plan)
    if made is None or plan.slab is None:
        return None
    return {
        "area": plan.slab.area,
        "volume": made.needed,
        "with_waste": made.with_waste,
        "order": made.ordered,
    }


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the concrete."""
    return page_of("pour", "open", say("pour.open"), "", "slab")
