"""The joints along a line, told."""

from __future__ import annotations

from bowstring.report.forms.build_lined import LinedJoints, LinedPage
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def short_of(plan: LinePlan) -> LinedJoints | None:
    """Return the answer's ``joints``, ``None`` where something has to be said first."""
    return None


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the joints."""
    return page_of("joints", "open", say("joints.open"), "", "slab")
