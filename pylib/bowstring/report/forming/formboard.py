"""Which board the forms are, as far as joints and concrete ask: how thick and how high."""

from __future__ import annotations

from bowstring.forming.boards import Board
from bowstring.report.forming.plan import Plan

INCH = 0.0254


def form_of(plan: Plan) -> Board:
    """Return the board of the forms: the job's own, else a 1x4 as it is sold."""
    said = plan.said.board
    thick = 1.5 * INCH if said.kind.startswith("2x") else 0.75 * INCH
    return Board(said.kind or "1x4", said.thickness or thick, said.height or 3.5 * INCH)
