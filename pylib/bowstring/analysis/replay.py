"""A construction staked out again with other numbers than the exact ones, and how far its stakes then miss the arc."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import hypot

from bowstring.construction import Marks, Number, Recipe, Stake, exact, play
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point

SAME = 1e-9
"""Two misses are one when they differ by less than this part of the larger: left and right halves are mirror images."""

DUST = 1e-12
"""A miss below this part of the radius is the arithmetic's, not the stake's."""


@dataclass(frozen=True)
class Misses:
    """How far each stake stands off the arc.

    Attributes:
        by_stake: metres from the true arc, positive outward, in order from A to B.
        worst: the one that is largest without its sign.
        at: the first such stake along the arc.
    """

    by_stake: Mapping[str, float]
    worst: float
    at: str


def misses(arc: Arc, stakes: Sequence[Stake], at: Mapping[str, Point]) -> Misses:
    """Return how far the stakes stand off the circle of ``arc``, in metres, positive outward.

    >>> arc = Arc.of_angle(10.0, 1.0)
    >>> misses(arc, [Stake("A", 0, 0.0)], {"A": Point(0.0, 0.0)}).worst
    0.0
    """
    dust = DUST * arc.radius
    by_stake = {}
    for stake in stakes:
        miss = arc.miss(at[stake.name])
        by_stake[stake.name] = miss if abs(miss) > dust else 0.0
    largest = max(abs(miss) for miss in by_stake.values())
    first = next(name for name, miss in by_stake.items() if abs(miss) >= largest * (1 - SAME))
    return Misses(by_stake, by_stake[first], first)


def far_off(arc: Arc, stakes: Sequence[Stake], at: Mapping[str, Point]) -> Misses:
    """Return how far the stakes stand off the arc itself, in metres: beyond its ends, from the nearer one."""
    by_stake = {stake.name: _off_arc(arc, at[stake.name]) for stake in stakes}
    largest = max(by_stake.values())
    first = next(name for name, off in by_stake.items() if off >= largest * (1 - SAME))
    return Misses(by_stake, by_stake[first], first)


def _off_arc(arc: Arc, point: Point) -> float:
    if arc.along(point) <= arc.arc_length:
        return abs(arc.miss(point))
    return min(hypot(point.x, point.y), hypot(point.x - arc.chord, point.y))


def replay(recipe: Recipe, number: Number, turn: Number = exact) -> Marks:
    """Return where the marks come to stand when the steps are done with ``number`` in place of each exact length, and
    ``turn`` in place of each exact angle, radians.

    Marks that were there or found before stay where they are: they are where it begins. Ends that the steps set from
    them come to stand where the shown numbers put them.

    Raises ``TooSmall`` where two marks that give a direction come to stand at one place.
    """
    made = {mark for step in recipe.steps for mark in step.sets}
    try:
        return play(recipe.steps, number, {name: at for name, at in recipe.at.items() if name not in made}, turn)
    except ZeroDivisionError:
        raise TooSmall from None


class TooSmall(ValueError):
    """A construction that is smaller than the marks of the tape."""
