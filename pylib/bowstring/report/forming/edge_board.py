"""How thick the boards are that stand between edges and their form stakes."""

from __future__ import annotations

from bowstring.report.forming.formboard import form_of, straight_of
from bowstring.report.forming.plan import Plan
from bowstring.words import say


def board_of(plan: Plan) -> tuple[str, float]:
    """Return the name and thickness, metres, of the board that the job names, or of the usual one."""
    form = form_of(plan)
    return form.name or say("boards.board"), form.thickness


def straight_board_of(plan: Plan) -> tuple[str, float]:
    """Return the same of the board behind the straight edges of a slab that fills its curve."""
    form = straight_of(plan)
    return form.name, form.thickness
