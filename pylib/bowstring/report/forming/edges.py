"""Both edges, told."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.words import say


def report_edges(plan: Plan) -> EdgesPart | None:
    """Return the answer's ``edges``, ``None`` where something has to be said first."""
    return None


def row_of_edges(plan: Plan, part: EdgesPart | None) -> BuildRow:
    """Return the row of the first screen."""
    return {"key": "edges", "state": "open", "text": say("edges.open"), "more": "", "panel": "slab"}
