"""The grades along a line, told."""

from __future__ import annotations

from bowstring.report.forms.build_lined import LinedGrades, LinedPage
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def short_of(plan: LinePlan) -> LinedGrades | None:
    """Return the answer's ``grades``, ``None`` where something has to be said first."""
    return None


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the grades."""
    return page_of("grades", "open", say("grades.open"), "", "slab")
