"""The concrete, told."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_pour import PourPart
from bowstring.words import say


def report_pour(plan: Plan) -> PourPart | None:
    """Return the answer's ``pour``, ``None`` where something has to be said first."""
    return None


def row_of_pour(plan: Plan, part: PourPart | None) -> BuildRow:
    """Return the row of the first screen."""
    return {"key": "pour", "state": "open", "text": say("pour.open"), "more": "", "panel": "slab"}
