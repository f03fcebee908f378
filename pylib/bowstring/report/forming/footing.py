"""The footing of a wall as a slab of its own: what is told of a slab's boards and its pour holds for it, too."""

from __future__ import annotations

from bowstring.forming.slab import Slab
from bowstring.job.forming import Forming, SlabSaid
from bowstring.job.job import Job
from bowstring.layout.layout import Layout
from bowstring.report.forming.plan import Plan, is_wall


def on_footing(plan: Plan) -> bool:
    """Tell whether a wall stands there, on a footing that is poured before it."""
    return is_wall(plan) and plan.filled is None


def underside(plan: Plan) -> float | None:
    """Return how far the underside of all concrete is under its top, metres: of a wall that of its footing. ``None``
    where nothing says how thick one of them is."""
    said = plan.said.slab
    if not on_footing(plan):
        return said.thickness
    return None if said.thickness is None or said.footing_depth is None else said.thickness + said.footing_depth


def footing_plan(plan: Plan) -> Plan | None:
    """Return the plan of the footing under a wall's middle: a slab half to each side of it, as thick as it is deep.

    ``None`` under a slab, without a footing, where the wall's width tapers (its middle is no arc then) and where the
    footing would reach the center. Only its edges and stakes' shares hold: ask it nothing of where the stakes stand.
    """
    said = plan.said.slab
    wide, deep = said.footing_width, said.footing_depth
    if not is_wall(plan) or plan.slab is None or plan.taper is not None or wide is None or deep is None:
        return None
    outer, inner = plan.edges
    if plan.line.radius + (outer.first + inner.first) / 2 - wide / 2 <= 0:
        return None
    middle = plan.line.concentric((outer.first + inner.first) / 2)
    job = Job(**{**vars(plan.layout.job), "width": wide})
    layout = Layout(**{**vars(plan.layout), "drawn": middle, "job": job})
    of_it = SlabSaid(poured="slab", thickness=deep, overdig=said.overdig, waste=said.waste, step=said.step,
                     truck=said.truck, at_a=said.at_a, at_b=said.at_b)  # fmt: skip
    slab = Slab.along(middle, wide, "both")
    saying = Forming(**{**vars(plan.said), "edge": "centre", "slab": of_it})
    return Plan(layout, saying, plan.tape, "centre", slab, None, False, of_footing=True)
