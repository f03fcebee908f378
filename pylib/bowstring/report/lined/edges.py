"""Both edges along a line, told."""

from __future__ import annotations

from bowstring.forming.line.edges import Edge
from bowstring.report.forming.plan import EDGE, WIDTH
from bowstring.report.forms.build_edges import EdgeLength
from bowstring.report.forms.build_lined import LinedEdges, LinedPage
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

_OPEN = {(WIDTH, EDGE): "edges.open", (WIDTH,): "edges.open_width", (EDGE,): "edges.open_side"}


def short_of(plan: LinePlan) -> LinedEdges | None:
    """Return the answer's ``edges``, ``None`` where there is no slab."""
    if plan.slab is None:
        return None
    return {
        "left": _length(plan, plan.slab.left_edge),
        "right": _length(plan, plan.slab.right_edge),
        "area": plan.slab.area,
    }


def _length(plan: LinePlan, edge: Edge) -> EdgeLength:
    return {"length": edge.length, "length_shown": plan.tape.show_running(edge.length)}


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the edges."""
    if plan.wrong is not None:
        return page_of("edges", "stop", say("lined.no_edge"), plan.wrong.wrong, "slab")
    if plan.slab is None:
        return page_of("edges", "open", say(_OPEN[plan.waits]), "", "slab")
    left, right = (plan.tape.show_running(edge.length) for edge in (plan.slab.left_edge, plan.slab.right_edge))
    return page_of("edges", "usual", say("lined.edges_row", left=left, right=right))
