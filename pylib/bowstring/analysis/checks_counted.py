"""Checks of stakes that were set in one round: distances that no step measured, whatever the method."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from bowstring.analysis.checks import Check, Marked
from bowstring.construction import Marks, Recipe, Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import middle, unit_vector

QUARTERS = (0.25, 0.5, 0.75)
MOST_ASLANT = 0.5
"""How far along its string a stake may stand from the middle, of how far it stands off: at a half a tape from there
still sees nine tenths of what the stake is off."""


def find_counted_checks(
    arc: Arc, stakes: Sequence[Stake], recipe: Recipe, equal_gaps: bool = False
) -> tuple[tuple[Check, ...], Marks]:
    """Return the checks of stakes counted along an arc and every mark, those of the checks included.

    In order: middle ordinates over alternate stakes; ordinates from the long chord; gaps between neighbours; the long
    way to the middle and to the quarters from both ends; the corner's external. What a step measured is taken out after
    (``analysis/taped``). ``equal_gaps``: the last gap is told as the one that closes.
    """
    marks = Marked(arc, stakes, recipe.at)
    found = [
        *_alternates(marks, stakes),
        *_ordinates(marks, stakes, arc.chord),
        *_gaps(marks, stakes, equal_gaps),
        *_long_ways(marks, stakes),
    ]
    halfway = next((stake.name for stake in stakes if stake.fraction == 0.5), None)
    if "P" in recipe.at and halfway:
        found.append(marks.check("external", "P", halfway, 1))
    return tuple(found), marks.at


def _alternates(marks: Marked, stakes: Sequence[Stake]) -> Iterator[Check]:
    """Over stakes that stand evenly enough: from far beside the middle a tape to the stake lies along the string, and
    sees nothing of how far off it stands."""
    for before, here, after in zip(stakes, stakes[1:], stakes[2:], strict=False):
        ends = marks.at[before.name], marks.at[after.name]
        string, away = unit_vector(*ends), marks.at[here.name].minus(middle(*ends))
        if abs(away.dot(string)) > MOST_ASLANT * abs(string.cross(away)):
            continue
        yield marks.check("alternate", marks.between(before.name, after.name), here.name, here.level)


def _gaps(marks: Marked, stakes: Sequence[Stake], equal: bool) -> Iterator[Check]:
    """Of equal gaps the last one closes: where each was taped from the stake before, all that went wrong is in it."""
    for one, other in pairwise(stakes):
        closes = equal and other is stakes[-1]
        yield marks.check("closing" if closes else "gap", one.name, other.name, 1)


def _near(stakes: Sequence[Stake], fraction: float) -> Stake:
    return min(stakes[1:-1], key=lambda stake: abs(stake.fraction - fraction))


def _telling(stakes: Sequence[Stake]) -> list[Stake]:
    """The stakes nearest to the quarters, none twice."""
    if len(stakes) < 3:
        return []
    return list({stake.name: stake for stake in (_near(stakes, part) for part in QUARTERS)}.values())


def _ordinates(marks: Marked, stakes: Sequence[Stake], chord: float) -> Iterator[Check]:
    for stake in _telling(stakes):
        x = marks.at[stake.name].x
        if 0 < x < chord:
            yield marks.check("ordinate", marks.foot(stake.name), stake.name, 1, along=x)


def _long_ways(marks: Marked, stakes: Sequence[Stake]) -> Iterator[Check]:
    neighbours = {frozenset((one.name, other.name)) for one, other in pairwise(stakes)}
    for stake in _telling(stakes):
        for start, end in (("A", stake.name), (stake.name, "B")):
            if frozenset((start, end)) not in neighbours:
                yield marks.check("half" if stake.fraction == 0.5 else "cross", start, end, 1)
