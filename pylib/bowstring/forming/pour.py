"""How much concrete: volume from areas and depths, what to order, loads, bags, and what a low base costs."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil

CUBIC_YARD = 0.9144**3
"""Cubic metres, exactly."""

NEAR = Fraction(1, 10**9)
"""A volume this near (as a part of a step) to a step is on it: the rest is a float's dust."""


@dataclass(frozen=True)
class Order:
    """What is ordered, cubic metres: ``needed`` on the drawing, ``with_waste``, ``ordered`` in whole steps."""

    needed: float
    with_waste: float
    ordered: float

    @property
    def spare(self) -> float:
        """What is left when the forms are full, cubic metres."""
        return self.ordered - self.needed

    def fills(self, area: float) -> float:
        """Return how much lower than drawn the whole base of an area (square metres) may be, metres."""
        return self.spare / area


def steps_up(volume: float, step: float) -> float:
    """Return a volume rounded up to whole steps, both in one unit; a volume that is on a step but for a float's last
    bits stays there.

    >>> steps_up(3.1533, 0.25), steps_up(3.25, 0.25), steps_up(0.1 + 0.2, 0.3)
    (3.25, 3.25, 0.3)
    """
    count = Fraction(volume) / Fraction(step)
    return ceil(count - NEAR) * step


def order(volume: float, waste: float, step: float) -> Order:
    """Return what to order of a volume in cubic metres, with a share of waste (0.08 is 8 %), in a plant's step.

    Raises ``ValueError`` for a volume or step that isn't above 0 or a waste below 0.
    """
    if not (volume > 0 and step > 0 and waste >= 0):
        raise ValueError("an order needs a volume, a step and no waste below 0")
    with_waste = volume * (1 + waste)
    return Order(volume, with_waste, steps_up(with_waste, step))


def mean_depth(depths: tuple[tuple[float, float], ...]) -> float:
    """Return the mean of depths measured along a slab, metres: pairs of where (metres along it, or the square metres
    up to there, which weighs a slab that tapers as it is; rising) and how deep, by trapezoids.

    Raises ``ValueError`` for fewer than two or for places that don't rise.
    """
    pairs = list(pairwise(depths))
    if not pairs or any(after[0] <= before[0] for before, after in pairs):
        raise ValueError("depths are measured at two places or more, one after the other")
    return filled_to(depths, depths[-1][0]) / (depths[-1][0] - depths[0][0])


def filled_to(depths: tuple[tuple[float, float], ...], where: float) -> float:
    """Return what lies over depths from the first place up to another: cubic metres where places are square metres.

    Between two places the depth changes evenly with what is between them.

    >>> round(filled_to(((0.0, 0.1), (10.0, 0.2)), 5.0), 6)
    0.625
    """
    total = 0.0
    for (start, first), (end, last) in pairwise(depths):
        gone = min(max(where - start, 0.0), end - start)
        total += gone * (first + (last - first) * gone / (end - start) / 2)
    return total


def bags(volume: float, yield_of_one: float) -> int:
    """Return how many bags make a volume, both in cubic metres."""
    return ceil(Fraction(volume) / Fraction(yield_of_one) - NEAR)


def loads(volume: float, truck: float) -> tuple[int, float]:
    """Return how many loads bring a volume, and the size of the last, in cubic metres.

    >>> loads(21.0, 8.0)
    (3, 5.0)
    """
    count = max(1, ceil(Fraction(volume) / Fraction(truck) - NEAR))
    return count, volume - (count - 1) * truck


def reached(share: float, ordered: float, needed: float, length: float) -> tuple[float, float]:
    """Return how far along a form of ``length`` metres the concrete stands when ``share`` of the order is out: where it
    stands if all goes as drawn (never past the end), and the least for the rest to reach the end.

    Short of the second is the time to call for more.
    """
    return min(length, length * share * ordered / needed), length * share
