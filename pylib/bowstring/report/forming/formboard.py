"""Which board the forms are, as far as joints and concrete ask: how thick and how high."""

from __future__ import annotations

from bowstring.forming.boards import Board
from bowstring.report.forming.boards_list import choose, edges_of
from bowstring.report.forming.plan import Plan


def form_of(plan: Plan) -> Board:
    """Return the board of the forms: the one that is cut, or where none bends the one that is told."""
    choice = choose(plan, edges_of(plan))
    return (choice.used or choice.told).board
