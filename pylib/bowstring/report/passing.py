"""What a string, tape or sight of a step passes close to: told on its card, so that nobody pulls it around a trunk."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.reach import lines_of
from bowstring.construction import Step
from bowstring.geometry.plane import Point
from bowstring.layout.layout import Layout
from bowstring.layout.limits import limits_of
from bowstring.units.sizes import FOOT
from bowstring.words import say

CLOSE = FOOT
"""Metres: what stands nearer than this to a string is told (common practice, no source)."""


PUT_UP = "string"
"""The step that puts the string from A to B up."""


class Passing:
    """The strings, tapes and sights of a layout beside what stands on its ground."""

    def __init__(self, layout: Layout) -> None:
        self._at, self._tape = layout.recipe.at, layout.job.shown
        self._ground = Obstructions(layout.staked, limits_of(layout.job))

    def notes(self, steps: Sequence[Step]) -> Iterator[str]:
        """Yield a sentence for each obstacle within ``CLOSE`` of what these steps stretch, tape or sight: the nearest
        of them. What a stake stands right against needs none."""
        near: dict[str, float] = {}
        for step in steps:
            for a, b in self._stretched(step):
                for what, gap in self._ground.passed(a, b, CLOSE):
                    near[what] = min(gap, near.get(what, gap))
        for what, gap in near.items():
            if self._tape.round(gap):
                yield say("card.note.close", what=what, gap=self._tape.show(gap))

    def _stretched(self, step: Step) -> Iterator[tuple[Point, Point]]:
        """The lines of a step; the string A to B where it is put up, before any step goes by it."""
        yield from ((a, b) for _kind, _start, _end, a, b in lines_of(self._at, step))
        if step.kind == PUT_UP:
            yield self._at[step.names["start"]], self._at[step.names["end"]]
