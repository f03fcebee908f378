"""Halving: the sagitta from the middle of a chord sets a stake and makes two shorter chords, and so on.

Source: halving and quartering, W. Schofield and M. Breach, Engineering Surveying; here with every level's own exact
sagitta R (1 - cos) instead of a quarter of the one before.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from functools import partial
from itertools import pairwise
from math import sqrt

from bowstring.construction import Bisect, CrossTapes, Recipe, SquareOff, Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, left_of, middle, unit_vector
from bowstring.methods.setting import Setting

LEVEL_LETTERS = "MQRXWYHJLZGV"
"""One letter a level: none sounds like the ends A and B, like a digit, or is a small letter of another.

M is the middle and Q a quarter; a later level never renames a stake.
"""

MOST_LEVELS = len(LEVEL_LETTERS)


def stake_name(level: int, number: int) -> str:
    """Return the name of the ``number``-th stake from A (counted from 1) that a level sets."""
    return LEVEL_LETTERS[0] if level == 1 else f"{LEVEL_LETTERS[level - 1]}{number}"


def middle_name(stake: str) -> str:
    """Return the name of the mark in the middle of the chord from which a stake is set."""
    return f"mid {stake}"


def stakes_of(levels: int) -> tuple[Stake, ...]:
    """Return the stakes from A to B, both included, that ``levels`` of halving drive.

    >>> [stake.name for stake in stakes_of(2)]
    ['A', 'Q1', 'M', 'Q2', 'B']
    """
    gaps = 2**levels
    names = [Stake("A", 0, 0.0)]
    for i in range(1, gaps):
        twos = (i & -i).bit_length() - 1
        level = levels - twos
        names.append(Stake(stake_name(level, (i >> twos) // 2 + 1), level, i / gaps))
    return (*names, Stake("B", 0, 1.0))


class OffTheArc(ValueError):
    """A chord that was moved so far that nothing square off its middle reaches the arc; the stake's name is its
    text."""


def halve(
    recipe: Recipe,
    arc: Arc,
    levels: int,
    *,
    sagitta_of_level: Callable[[int], float] | None = None,
    crossed: Collection[str] = (),
) -> None:
    """Write down the steps of halving an arc whose ends A and B are marked already.

    Without ``sagitta_of_level`` every sagitta is the one that brings the stake onto the arc: exact, and, from a chord
    whose end was found elsewhere, from where that end really stands. With it (the rule of thumb) the level's sagitta is
    taken whatever comes. The stakes named in ``crossed`` are set by their two half chords alone.

    Raises ``OffTheArc``.
    """
    moved = recipe.moved
    chain = ["A", "B"]
    for level in range(1, levels + 1):
        of_level = sagitta_of_level(level) if sagitta_of_level else arc.part(2 ** (level - 1)).sagitta
        longer = ["A"]
        for number, (start, end) in enumerate(pairwise(chain), 1):
            stake = stake_name(level, number)
            sagitta = of_level
            if not sagitta_of_level and (start in moved or end in moved):
                recipe.truth.pop(stake, None)  # on the arc, square off this very string, and not where it was planned
                try:
                    sagitta = sagitta_to_arc(arc, recipe.at[start], recipe.at[end])
                except OffTheArc:
                    raise OffTheArc(stake) from None
                if sagitta < 0 and recipe.told_of((stake, middle_name(stake))):
                    raise OffTheArc(stake)  # the string lies outside the arc: what was got can't say on which side
            if stake in crossed:
                _cross_stake(recipe, level, (stake, start, end), sagitta)
            else:
                _set_stake(recipe, level, (stake, start, end), sagitta)
            longer += [stake, end]
        chain = longer


def halving(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Halving with every level's own exact sagitta."""
    halve(recipe, setting.arc, levels_of(stakes), crossed=setting.crossed)


def quartering(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """The rule of thumb: a quarter of the sagitta before, whatever comes."""
    arc = setting.arc
    rule = partial(quarter_sagitta, arc)
    halve(recipe, arc, levels_of(stakes), sagitta_of_level=rule, crossed=setting.crossed)


def levels_of(stakes: Sequence[Stake]) -> int:
    """Return how many levels of halving drive these stakes."""
    return max(stake.level for stake in stakes)


def quarter_sagitta(arc: Arc, level: int) -> float:
    """Return the rule of thumb's sagitta of a level in metres: the first one, quartered once a level."""
    return float(arc.sagitta / 4 ** (level - 1))


def _set_stake(recipe: Recipe, level: int, marks: tuple[str, str, str], sagitta: float) -> None:
    """The step of one stake: the chord's middle, then the sagitta, or what was got in its place."""
    stake, start, end = marks
    mid = middle_name(stake)
    got = recipe.told_of((mid, stake))
    recipe.do(
        "stake_got" if got else "stake" if sagitta >= 0 else "stake_back",
        level,
        (
            Bisect(mid, start, end),
            SquareOff(stake, mid, start, end, abs(sagitta), left=sagitta >= 0, slide=True),
        ),
        ((start, mid), (mid, stake)),
        stake=stake,
        start=start,
        end=end,
        sagitta=sagitta,
    )


def _cross_stake(recipe: Recipe, level: int, marks: tuple[str, str, str], sagitta: float) -> None:
    """The step of a stake whose middle or mid-ordinate is out of reach: two tapes, one from each end of its chord."""
    stake, start, end = marks
    one, other = recipe.at[start], recipe.at[end]
    tip = middle(one, other).plus(left_of(unit_vector(one, other)), sagitta)
    move = CrossTapes(stake, start, distance(one, tip), end, distance(other, tip), left=sagitta >= 0)
    recipe.do("stake_crossed", level, [move], [(start, stake), (end, stake)], stake=stake, start=start, end=end)


def sagitta_to_arc(arc: Arc, start: Point, end: Point) -> float:
    """Return the distance from the middle of a chord, square off it to the left, to the arc, in metres.

    Start and end need not stand on the arc: this is what brings the next stake back onto it. With p the power of the
    middle over the circle and d its distance from the centre along the normal, the positive root of
    s^2 + 2 d s + p = 0, in the form that doesn't cancel. Raises ``OffTheArc`` when no square off this chord reaches it.
    """
    mid = middle(start, end)
    normal = left_of(unit_vector(start, end))
    power = mid.x * (mid.x - arc.chord) + mid.y * (mid.y + 2 * arc.radius * arc.cosine)
    from_centre = normal.dot(mid.minus(arc.centre))
    square = from_centre * from_centre - power
    if square < 0:
        raise OffTheArc
    root = sqrt(square)
    return -power / (from_centre + root) if from_centre >= 0 else root - from_centre
