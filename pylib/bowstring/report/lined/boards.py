"""The boards along a line, told."""

from __future__ import annotations

from bowstring.report.forms.build_lined import LinedBoards, LinedPage
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def short_of(plan: LinePlan) -> LinedBoards | None:
    """Return the answer's ``boards``, ``None`` where something has to be said first."""
    return None


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the boards."""
    return page_of("boards", "open", say("joints.open"), "", "slab")
