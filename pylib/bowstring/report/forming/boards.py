"""The boards, told."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.words import say


def report_boards(plan: Plan) -> BoardsPart | None:
    """Return the answer's ``boards``, ``None`` where something has to be said first."""
    return None


def row_of_boards(plan: Plan, part: BoardsPart | None) -> BuildRow:
    """Return the row of the first screen."""
    return {"key": "boards", "state": "open", "text": say("boards.open"), "more": "", "panel": "slab"}
