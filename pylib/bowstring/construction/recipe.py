"""A recipe: a construction written down while it is carried out exactly."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from bowstring.construction.marks import Marks, exact
from bowstring.construction.move import Move
from bowstring.construction.steps import Measure, Step, Turned
from bowstring.geometry.plane import Point, angle_between, distance


class Recipe:
    """Writes a construction down while it is carried out exactly: what a method calls, step by step."""

    def __init__(self, marks: Mapping[str, Point] | None = None) -> None:
        self.steps: list[Step] = []
        self.at: Marks = dict(marks or {})
        self.truth: Marks = {}
        """Where marks belong, for those of whom that is known: they stand there, free of the arithmetic's dust."""

    def do(
        self,
        kind: str,
        level: int,
        moves: Iterable[Move] = (),
        measure: Iterable[tuple[str, str]] = (),
        *,
        turn: Iterable[tuple[str, str, str]] = (),
        sagitta: float | None = None,
        deflection: float | None = None,
        **names: str,
    ) -> None:
        """Carry out one step: place its marks, take the measures between pairs of marks that now stand, and the
        angles at the first of three."""
        moves = tuple(moves)
        for move in moves:
            placed = move.place(self.at, exact)
            self.at[move.mark] = self.truth.get(move.mark, placed)
        measures = tuple(Measure(start, end, distance(self.at[start], self.at[end])) for start, end in measure)
        angles = tuple(
            Turned(vertex, back, mark, angle_between(self.at[vertex], self.at[back], self.at[mark]))
            for vertex, back, mark in turn
        )
        self.steps.append(Step(kind, level, moves, measures, names, sagitta, angles, deflection))
