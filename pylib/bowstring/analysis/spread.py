"""How far every mark may be off: first-order propagation through a construction, its correlations kept.

How each move takes over what moves the marks that it starts from, and what it adds, is the move's own (``spread``). A
known shift (a slope not taken out, a string blown aside) goes through the same derivatives.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from bowstring.analysis.error_model import ErrorModel
from bowstring.analysis.triangles import Square
from bowstring.construction import Marks, Move, Scatter, Shifts, Source, Step


class Spread(Scatter):
    """What every mark of a construction may be off, source by source."""

    def __init__(
        self, at: Marks, errors: ErrorModel, known: Mapping[str, float], squares: Mapping[str, Square]
    ) -> None:
        """``known``: the standard deviation in x and in y of marks that aren't exact, metres; ``squares``: how each
        offset is squared, by its mark."""
        super().__init__(at, errors, known)
        self.squares = squares

    def walk(self, steps: Iterable[Step]) -> None:
        """Carry the steps after the ends out: every mark that they set gets its shifts."""
        for step in steps:
            if not step.level:
                continue
            for move in step.moves:
                shifts = self.of(move)
                if move.mark in step.driven and self.errors.stake:
                    self.add_in_x_and_y(shifts, Source("stake", self.errors.stake, mark=move.mark))
                self.shifts[move.mark] = shifts

    def of(self, move: Move) -> Shifts:
        """Return what moves the mark of a move."""
        return move.spread(self)

    def turn_of_square(self, mark: str) -> float:
        """Return the deviation in radians of the offset to a mark, squared by the triangle that the sheet has."""
        return self.squares[mark].turn(self.errors.read)
