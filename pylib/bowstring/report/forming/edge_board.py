"""The board that stands between an edge and its form stakes."""

from __future__ import annotations

from bowstring.report.forming.boards_bending import name_of
from bowstring.report.forming.boards_list import choose, edges_of
from bowstring.report.forming.plan import Plan


def board_of(plan: Plan) -> tuple[str, float]:
    """Return the name and thickness, metres, of the board that the job names, or of the one of which the boards' own
    part speaks."""
    board = choose(plan, edges_of(plan)).told.board
    return name_of(board), board.thickness
