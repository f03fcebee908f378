"""The tops of the forms, told."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_grades import GradesPart
from bowstring.words import say


def report_grades(plan: Plan) -> GradesPart | None:
    """Return the answer's ``grades``, ``None`` where something has to be said first."""
    return None


def row_of_grades(plan: Plan, part: GradesPart | None) -> BuildRow:
    """Return the row of the first screen."""
    return {"key": "grades", "state": "open", "text": say("grades.open"), "more": "", "panel": "slab"}
