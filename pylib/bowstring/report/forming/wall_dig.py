"""How large a wall's dig is in plan, its ends' included."""

from __future__ import annotations

from bowstring.report.forming.edge_lines import dug_past, overdig_of
from bowstring.report.forming.ends import formed
from bowstring.report.forming.plan import Plan, is_wall


def wall_dug(plan: Plan) -> float | None:
    """Return the area of a wall's dig, square metres; ``None`` of a slab, before its width, of a wall that tapers, and
    where the dig reaches its center."""
    if not is_wall(plan) or plan.slab is None or plan.taper:
        return None
    past, over = dug_past(plan), overdig_of(plan)
    out, within = (edge.line.radius + edge.first for edge in plan.edges)
    if within <= past:
        return None
    outer, inner = out + past, within - past
    return 2 * plan.line.half_angle * (outer + inner) / 2 * (outer - inner) + len(formed(plan)) * over * (outer - inner)
