"""A crew that sets every stake by its card's rounded numbers, with the errors of the model, and reads every check."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random

from bowstring.analysis.mistakes import reading_of
from bowstring.analysis.suspects import Suspect, Taped, suspects
from bowstring.construction import Marks
from bowstring.geometry.plane import Point
from bowstring.report.work import Work


@dataclass(frozen=True)
class Planted:
    """A slip: the stake stands off ``by``; ``carried``: what was set from it was set from there."""

    mark: str
    by: Point
    carried: bool


def driven(work: Work, chance: Random, slip: Planted | None = None) -> Marks:
    """Return where all marks stand."""
    assert work.own.accuracy is not None
    errors, tape, at = work.own.accuracy.spread.errors, work.job.tape, dict(work.layout.marks)
    for step in work.layout.recipe.steps:
        for move in step.moves:
            place = move.place(at, lambda length: tape.round(length) + chance.gauss(0, errors.pull))
            if move.mark in step.driven:
                place = Point(place.x + chance.gauss(0, errors.stake), place.y + chance.gauss(0, errors.stake))
            if step.level:
                at[move.mark] = place.plus(slip.by) if slip and slip.carried and move.mark == slip.mark else place
    if slip and not slip.carried:
        at[slip.mark] = at[slip.mark].plus(slip.by)
    return at


def read(work: Work, at: Marks, chance: Random) -> list[Taped]:
    """Return what the crew reads at each check that a sheet has, called out at the nearest mark."""
    assert work.own.accuracy is not None
    errors, tape, taped = work.own.accuracy.spread.errors, work.job.tape, []
    for one in (one for one in work.judged if one.shows):
        reads = tape.round(reading_of(one.check, at) + chance.gauss(0, errors.read))
        over, limit = reads - tape.round(one.check.distance), max(tape.down(one.limit), tape.mark)
        taped.append(Taped(one.check, one.check.distance + over, limit, one.usual, one.expected))
    return taped


def found(work: Work, taped: Sequence[Taped]) -> list[Suspect]:
    """Return what is suspected then."""
    layout = work.layout
    return suspects(taped, layout.recipe, layout.stakes, layout.marks, [], layout.staked.centre)
