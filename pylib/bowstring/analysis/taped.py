"""Which checks are none: distances that a step measures or reads already, told by the places and not by the names."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from math import floor

from bowstring.analysis.checks import SAME_PLACE, Check
from bowstring.construction import PULL, Step
from bowstring.geometry.plane import Point, distance


def independent(checks: Iterable[Check], steps: Iterable[Step], at: Mapping[str, Point]) -> tuple[Check, ...]:
    """Return those checks whose distance no step measures or reads, between whatever marks at the same two places.

    Read are the two half strings on either side of a middle, and the two half chords while a tip is slid.
    """
    places = _Places(at)
    taped = {places.pair(*ends) for step in steps for ends in taped_in(step)}
    return tuple(check for check in checks if places.pair(check.start, check.end) not in taped)


def taped_in(step: Step) -> Iterator[tuple[str, str]]:
    """Yield the marks at the ends of every length that a step measures or reads."""
    for measure in step.measures:
        yield measure.start, measure.end
    for move in step.moves:
        for kind, start, end in move.lines:
            if kind == PULL:
                yield start, end


class _Places:
    """One name for all marks that stand at one place."""

    def __init__(self, at: Mapping[str, Point]) -> None:
        self.at = at
        self.cells: dict[tuple[int, int], list[str]] = {}
        self.names: dict[str, str] = {}

    def pair(self, start: str, end: str) -> frozenset[str]:
        return frozenset((self._name(start), self._name(end)))

    def _name(self, mark: str) -> str:
        if mark not in self.names:
            self.names[mark] = self._first_at(mark)
        return self.names[mark]

    def _first_at(self, mark: str) -> str:
        """The mark met first within ``SAME_PLACE`` of this one, itself where there is none."""
        point = self.at[mark]
        x, y = floor(point.x / SAME_PLACE), floor(point.y / SAME_PLACE)
        for column in (x - 1, x, x + 1):
            for row in (y - 1, y, y + 1):
                for other in self.cells.get((column, row), ()):
                    if distance(self.at[other], point) <= SAME_PLACE:
                        return self.names[other]
        self.cells.setdefault((x, y), []).append(mark)
        return mark
