"""The rule of thumb, staked out in the model: what it costs, what shows it, and how far it may be trusted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import sqrt

from bowstring.analysis.replay import Misses, misses
from bowstring.construction import Marks, Recipe, Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.pairs import arcs_of
from bowstring.geometry.plane import Point, distance, middle
from bowstring.methods.halving import halve, quarter_sagitta, stakes_of

LEVELS_THAT_TELL = 6
"""The rule's worst stake is within a hair of its final place by then: each further level adds a 64th of the one
before."""

SEMICIRCLE = 0.5
"""Sagitta over chord of a half circle."""


def rule_staked(arc: Arc, levels: int) -> Marks:
    """Return where the marks stand when every sagitta is a quarter of the one before, from the rule's own stakes."""
    recipe = Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0)})
    halve(recipe, arc, levels, sagitta_of_level=lambda level: quarter_sagitta(arc, level))
    return recipe.at


@dataclass(frozen=True)
class Alternate:
    """What the middle ordinate over alternate stakes reads: ``true`` on the arc, and in the rule's layout.

    Metres; ``in_rule`` is the reading that is farthest from ``true``, taken at the stake ``at``.
    """

    true: float
    in_rule: float
    at: str


def rule_misses(arc: Arc, stakes: Sequence[Stake], levels: int) -> tuple[Misses, Mapping[str, Point]]:
    """Return how far the rule's stakes stand off the arc, and where they stand."""
    at = rule_staked(arc, levels)
    return misses(arc, stakes, at), at


def alternate_reading(arc: Arc, stakes: Sequence[Stake], at: Mapping[str, Point]) -> Alternate | None:
    """Return what the middle ordinate over alternate stakes shows of the rule's layout; ``None`` with fewer than 4
    gaps.

    Over stakes with a gap of the central angle's n-th part on each side the true reading is R (1 - cos(I/n)).
    """
    gaps = len(stakes) - 1
    if gaps < 4:
        return None
    true = arc.part(gaps // 2).sagitta
    readings = []
    for before, here, after in zip(stakes, stakes[1:], stakes[2:], strict=False):
        reading = distance(middle(at[before.name], at[after.name]), at[here.name])
        readings.append((abs(reading - true), reading, here.name))
    largest = max(readings)[0]
    _off, reading, name = next(row for row in readings if row[0] >= largest * (1 - 1e-9))
    return Alternate(true, reading, name)


def good_up_to(chord: float, levels: int, tolerance: float) -> float:
    """Return the sagitta/chord up to which the rule keeps every stake within ``tolerance`` metres on this chord.

    At most 0.5, the half circle.
    """
    levels = min(levels, LEVELS_THAT_TELL)
    stakes = stakes_of(levels)

    def excess(ratio: float) -> float:
        arc = arcs_of(("chord", "sagitta"), chord, ratio * chord)[0]
        return abs(rule_misses(arc, stakes, levels)[0].worst) - tolerance

    if levels == 1 or excess(SEMICIRCLE) <= 0:
        return SEMICIRCLE
    # The miss grows with the ratio. Five digits are plenty for advice, and each try stakes the arc out.
    low, high = 0.0, SEMICIRCLE
    for _ in range(18):
        mid = (low + high) / 2
        low, high = (mid, high) if excess(mid) <= 0 else (low, mid)
    return low


def next_sagitta(half_chord: float, sagitta: float) -> tuple[float, float]:
    """Return the half chord's own length and the next sagitta, in metres, with no radius and no angle.

    With a half the chord and s its sagitta: h = sqrt(a^2 + s^2) is the new chord, and the next sagitta is
    h (h - a) / (2 s), true of every arc; h - a is taken as s^2/(h + a). (Identity, from s = R (1 - cos).)

    >>> half_chord, sagitta = next_sagitta(84.0, 33.0)
    >>> round(half_chord, 3), round(sagitta, 3)
    (90.25, 8.546)
    """
    new_chord = sqrt(half_chord * half_chord + sagitta * sagitta)
    return new_chord, new_chord * sagitta / (2 * (new_chord + half_chord))
