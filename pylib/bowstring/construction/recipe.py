"""A recipe: a construction written down while it is carried out exactly."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from bowstring.construction.marks import Marks, exact
from bowstring.construction.move import Move
from bowstring.construction.standing import BadReading, Standing, Told, stand
from bowstring.construction.steps import Measure, Stake, Step, Turned
from bowstring.geometry.plane import Point, angle_between, distance

NEAR = 1e-6
"""Metres: a later mark that comes to stand so near to where it belongs is there."""


class NoWayBack(ValueError):
    """A mark that its step can't bring to where it belongs from where others really stand; its name is its text."""


class Recipe:
    """Writes a construction down while it is carried out exactly: what a method calls, step by step."""

    def __init__(self, marks: Mapping[str, Point] | None = None) -> None:
        self.steps: list[Step] = []
        self.at: Marks = dict(marks or {})
        self.truth: Marks = {}
        """Where marks belong, for those of whom that is known: they stand there, free of the arithmetic's dust."""
        self.got: Mapping[str, Told] = {}
        """What was read at marks that stand already, by the name of any mark of their step."""
        self.standing: dict[str, Standing] = {}
        """What was made of it, by the same names."""
        self.moved: set[str] = set()
        """Marks that stand elsewhere than the drawing would have them: those, and what was set from them unseen."""

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
        angles at the first of three. Marks at which something was read stand where that says.

        Raises ``NoWayBack``, and ``BadReading`` with its row.
        """
        moves, pairs = tuple(moves), tuple(measure)
        told = self.told_of(move.mark for move in moves)
        if told is not None:
            moves = self._stood(told, moves, pairs, names)
        for move in moves:
            placed = move.place(self.at, exact)
            true = None if told is not None else self.truth.get(move.mark)
            if true is None and not self.moved.isdisjoint(move.uses):
                self.moved.add(move.mark)
            elif true is not None and self.moved and distance(placed, true) > NEAR:
                raise NoWayBack(move.mark)
            self.at[move.mark] = placed if true is None else true
        measures = tuple(Measure(start, end, distance(self.at[start], self.at[end])) for start, end in pairs)
        angles = tuple(
            Turned(vertex, back, mark, angle_between(self.at[vertex], self.at[back], self.at[mark]))
            for vertex, back, mark in turn
        )
        stands = told is not None
        self.steps.append(Step(kind, level, moves, measures, names, sagitta, angles, deflection, stands))

    def told_of(self, marks: Iterable[str]) -> str | None:
        """Return the name under which something was read at any of these marks."""
        return next((mark for mark in marks if mark in self.got), None)

    def _stood(
        self, told: str, moves: tuple[Move, ...], pairs: tuple[tuple[str, str], ...], names: Mapping[str, str]
    ) -> tuple[Move, ...]:
        row = self.got[told]
        try:
            found = stand(moves, pairs, row.readings(names), self.at, self.truth, as_before=row.as_before)
        except BadReading as reason:
            reason.row = told
            raise
        self.standing[told] = found
        self.moved.update(move.mark for move in moves)
        return found.moves

    def to_set(self, stakes: Iterable[Stake]) -> list[Stake]:
        """Return those stakes that are still set: one that was got stands where it was found."""
        stood = {mark for step in self.steps if step.stands for mark in step.sets}
        return [stake for stake in stakes if stake.name not in stood]

    def leaning_on(self, step: Step) -> bool:
        """Tell whether a later step starts from a mark that this one sets."""
        marks = set(step.sets)
        later = self.steps[self.steps.index(step) + 1 :]
        return any(not marks.isdisjoint(move.uses) for one in later for move in one.moves)
