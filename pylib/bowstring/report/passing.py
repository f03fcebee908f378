"""What a string, tape or sight of a step passes close to: told on its card, so that nobody pulls it around a trunk."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.reach import lines_of
from bowstring.construction import Step
from bowstring.geometry.plane import Point
from bowstring.layout.layout import Layout
from bowstring.layout.limits import limits_of
from bowstring.report.got import label_of
from bowstring.units.sizes import FOOT
from bowstring.words import say

CLOSE = FOOT
"""Metres: what stands nearer than this to a string is told (common practice, no source)."""


PUT_UP = "string"
"""The step that puts the string from A to B up."""


def _called(start: str, end: str) -> str:
    """A pull by its stakes, in short; one to a helper without a pin by what it is."""
    return label_of(start, end) if " " in start + end else f"{start}-{end}"


class Passing:
    """The strings, tapes and sights of a layout beside what stands on its ground."""

    def __init__(self, layout: Layout) -> None:
        self._at, self._tape = layout.recipe.at, layout.job.shown
        self._ground = Obstructions(layout.staked, limits_of(layout.job))

    def notes(self, steps: Sequence[Step]) -> Iterator[str]:
        """Yield a sentence for each obstacle within ``CLOSE`` of what these steps stretch, tape or sight: the nearest
        of them. What a stake stands right against needs none."""
        near: dict[str, tuple[float, str]] = {}
        pulls = {(start, end) for step in steps for start, end, _a, _b in self._stretched(step)}
        for step in steps:
            for start, end, a, b in self._stretched(step):
                pull = _called(start, end) if len(pulls) > 1 else ""  # of one alone there is nothing to tell apart
                for what, gap in self._ground.passed(a, b, CLOSE):
                    near[what] = min((gap, pull), near.get(what, (gap, pull)))
        for what, (gap, pull) in near.items():
            if self._tape.round(gap):
                told = {"what": what, "gap": self._tape.show(gap)}
                yield say("card.note.close_pull", pull=pull, **told) if pull else say("card.note.close", **told)

    def _stretched(self, step: Step) -> Iterator[tuple[str, str, Point, Point]]:
        """The lines of a step, their marks first; the string A to B where it is put up, before any step goes by it."""
        yield from ((start, end, a, b) for _kind, start, end, a, b in lines_of(self._at, step))
        if step.kind == PUT_UP:
            start, end = step.names["start"], step.names["end"]
            yield start, end, self._at[start], self._at[end]
