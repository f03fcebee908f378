"""How thick the boards are that stand between edges and their form stakes."""

from __future__ import annotations

from bowstring.report.forming.formboard import form_of, straight_of
from bowstring.report.forming.plan import Plan
from bowstring.words import say

IN_THE_WAY = ("pin", "marked")
"""What is driven through the line itself, half of it where the board's face goes. A hub's top is nearly flush, and a
board is sprung to pins of its own."""


def board_of(plan: Plan) -> tuple[str, float]:
    """Return the name and thickness, metres, of the board that the job names, or of the usual one."""
    form = form_of(plan)
    return form.name or say("boards.board"), form.thickness


def straight_board_of(plan: Plan) -> tuple[str, float]:
    """Return the same of the board behind the straight edges of a slab that fills its curve."""
    form = straight_of(plan)
    return form.name, form.thickness


def pull_told(plan: Plan) -> str:
    """Return when what is driven on an edge comes out: before its board, where it stands in the board's own place."""
    driven = plan.layout.job.driven
    return say(f"edges.form_pull_{driven}" if driven in IN_THE_WAY else "edges.form_pull")


def pull_notes(plan: Plan, *, on_edge: bool) -> list[str]:
    """Return the same for the card of the boards; none where the stakes aren't ``on_edge``, or aren't in its way."""
    driven = plan.layout.job.driven
    return [say(f"forming.note.pull_{driven}")] if on_edge and driven in IN_THE_WAY else []
