"""How sure it is that all stakes are within a miss at once, when they have errors in common.

Each stake's miss across the arc is a sum of sources. What all share, the tape's scale, is taken in turn at the nodes of
a Gauss-Hermite rule; given it, each stake is tied to the one before it that it has most in common with, and the chance
that all are within is the product of the chances of each given that one: exact for stakes that are independent, and for
a chain or a tree of them (Chow and Liu, Approximating discrete probability distributions with dependence trees, IEEE
Transactions on Information Theory, 1968). Held against Monte Carlo in the tests.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import erf, exp, log, pi, sqrt

Across = dict[int, float]
"""How each source moves a stake across the arc at one standard deviation, metres."""

NODES = ((0.0, 0.5333333333333333), (1.355626179974266, 0.4441518440112252), (2.8569700138728056, 0.02251482265544138))
"""Nodes and weights of the Gauss-Hermite rule of five points for a standard normal, each sign's weight in one: turning
all misses over changes no chance. (Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.10: nodes times
root 2, weights over root pi.)"""

PANELS = ((0.9324695142031521, 0.1713244923791704), (0.6612093864662645, 0.3607615730481386),
          (0.2386191860831969, 0.4679139345726910))  # fmt: skip
"""The Gauss-Legendre rule of six points (Abramowitz and Stegun, table 25.4)."""

ROOT_2 = sqrt(2)
FAR = 4.5
"""Standard deviations beyond which nothing is left that would count."""

STEEP = 2.5
"""Standard deviations of what is left to a stake on each side of an edge, within which its chance changes."""

WIDEST = 3.0
"""Standard deviations: the widest panel."""

ALIKE = 1 - 1e-9
CLOSE = 5e-4
"""How near the wanted chance is near enough, on that scale: a thousandth of the miss."""

FIRST_STEP = 0.6
"""A change of the miss, as a part of it, for one on that scale: a first guess."""

MOST_TRIES = 12

LITTLE = 0.04
"""A correlation whose square is below this moves the chance by less than the rule's own error."""


@dataclass(frozen=True)
class _Tied:
    """A stake as it is taken: its deviation given the scale, the scale's part, and the stake that it leans on."""

    sigma: float
    common: float
    parent: int | None
    correlation: float


class Together:
    """The chance that every stake is within a miss, and the miss within which all are at a chance."""

    def __init__(self, across: Sequence[Across], leans: Sequence[Sequence[int]], shared: int) -> None:
        """``across``: one for each stake, in an order in which whoever a stake leans on comes before it; ``leans``:
        for each the places of those that it may lean on; ``shared``: the source that is taken in turn."""
        self.tied: list[_Tied] = []
        own = [{source: shift for source, shift in one.items() if source != shared} for one in across]
        squares = [sum(shift * shift for shift in one.values()) for one in own]
        for number, one in enumerate(own):
            parent, best = None, LITTLE
            correlation = 0.0
            for other in leans[number]:
                product = squares[number] * squares[other]
                if product <= 0:
                    continue
                small, large = (one, own[other]) if len(one) < len(own[other]) else (own[other], one)
                common = sum(shift * large[source] for source, shift in small.items() if source in large)
                if common * common / product > best:
                    parent, best, correlation = other, common * common / product, common / sqrt(product)
            self.tied.append(_Tied(sqrt(squares[number]), across[number].get(shared, 0.0), parent, correlation))
        scale = max((tied.common**2 for tied in self.tied), default=0.0)
        rest = max(squares, default=0.0)
        self.fixed = ((0.0, 1.0),) if scale < 1e-3 * rest else NODES if scale < 0.4 * rest else None

    def chance(self, miss: float) -> float:
        """Return the chance that every stake is within ``miss`` metres of the arc."""
        nodes = self.fixed or self._nodes(miss)
        return min(sum(weight * self._given(node, miss) for node, weight in nodes), 1.0)

    def _nodes(self, miss: float) -> list[tuple[float, float]]:
        """Where the scale is much of a miss, the chance breaks off at some scale: panels before and across the break.

        Both signs in one; beyond the break there is no chance left.
        """
        breaks = ((miss / abs(tied.common), tied.sigma / abs(tied.common)) for tied in self.tied if tied.common)
        edge, width = min(breaks)
        low = min(max(edge - FAR / 1.5 * width, 0.0), FAR)
        high = min(edge + FAR / 1.5 * width, FAR)
        nodes = []
        for start, end in _narrow([0.0, low, high]):
            half, middle = (end - start) / 2, (end + start) / 2
            for node, weight in PANELS:
                for z in (middle - half * node, middle + half * node):
                    nodes.append((z, half * weight * 2 * exp(-z * z / 2) / sqrt(2 * pi)))
        return nodes

    def _given(self, node: float, miss: float) -> float:
        chance = 1.0
        for tied in self.tied:
            mean = tied.common * node
            alone = _within(miss, mean, tied.sigma)
            if tied.parent is not None:
                other = self.tied[tied.parent]
                base = _within(miss, other.common * node, other.sigma)
                if base > 0:
                    alone = min(_both(miss, mean, tied, other.common * node, other.sigma) / base, 1.0)
            chance *= alone
            if chance < 1e-12:
                return 0.0
        return chance

    def miss_at(self, chance: float) -> float:
        """Return the miss in metres within which all stakes are at ``chance``; 0 where nothing can go wrong."""
        alone = self._if_independent(chance)
        if alone == 0:
            return 0.0
        # What they have in common only helps, so the miss is somewhat less; from there by secants, on a scale on which
        # the chance is nearly straight.
        miss, before = alone, (0.0, 0.0)
        for number in range(MOST_TRIES):
            found = _straight(self.chance(miss)) - _straight(chance)
            if abs(found) < CLOSE:
                break
            step = miss * found * FIRST_STEP if number == 0 else found * (miss - before[0]) / (found - before[1])
            before = (miss, found)
            miss = min(max(miss - step, alone / 2), 2 * alone)
        return miss

    def _if_independent(self, chance: float) -> float:
        """The miss within which all would be, had they nothing in common: no less than with it (Sidak's inequality)."""
        sigmas = [sigma for tied in self.tied if (sigma := sqrt(tied.sigma**2 + tied.common**2)) > 0]
        low, high = 0.0, FAR * max(sigmas, default=0.0)
        for _ in range(16 if sigmas else 0):
            middle, product = (low + high) / 2, 1.0
            for sigma in sigmas:
                product *= erf(middle / (sigma * ROOT_2))
                if product < chance:
                    break
            low, high = (middle, high) if product < chance else (low, middle)
        return high


def _straight(chance: float) -> float:
    """A chance on a scale on which it goes nearly straight with the miss: the square root of -log of what is left."""
    return sqrt(-log(max(1 - chance, 1e-12)))


def _within(miss: float, mean: float, sigma: float) -> float:
    if sigma <= 0:
        return 1.0 if abs(mean) <= miss else 0.0
    root = sigma * ROOT_2
    return (erf((miss - mean) / root) + erf((miss + mean) / root)) / 2


def _both(miss: float, mean: float, tied: _Tied, other_mean: float, other_sigma: float) -> float:
    """The chance that a stake and the one it leans on are both within: over the other's place, the rest of this one."""
    rest = tied.sigma * sqrt(max(1 - tied.correlation**2, 0.0))
    slope, root = tied.correlation * tied.sigma, rest * ROOT_2
    low = max((-miss - other_mean) / other_sigma, -FAR)
    high = min((miss - other_mean) / other_sigma, FAR)
    if abs(tied.correlation) >= ALIKE or rest == 0:
        low, high = max(low, (-miss - mean) / abs(slope)), min(high, (miss - mean) / abs(slope))
        return (erf(high / ROOT_2) - erf(low / ROOT_2)) / 2 if high > low else 0.0
    if high <= low:
        return 0.0
    # This one's chance is near 1 or 0 but for where its own place crosses an edge: panels end there.
    edges, width = sorted(((-miss - mean) / slope, (miss - mean) / slope)), STEEP * rest / abs(slope)
    ends = [low, *sorted(end for edge in edges for end in (edge - width, edge + width) if low < end < high), high]
    if width > (high - low) / 2:
        ends = [low, high]
    total = 0.0
    for start, end in _narrow(ends):
        half, middle = (end - start) / 2, (end + start) / 2
        for node, weight in PANELS:
            for z in (middle - half * node, middle + half * node):
                shift = mean + slope * z
                inside = erf((miss - shift) / root) + erf((miss + shift) / root)
                total += half * weight * exp(-z * z / 2) * inside
    return total / (2 * sqrt(2 * pi))


def _narrow(ends: Sequence[float]) -> Iterator[tuple[float, float]]:
    """Yield the panels between these ends, none wider than the rule can follow the normal curve."""
    for start, end in pairwise(ends):
        pieces = int((end - start) / WIDEST) + 1
        for piece in range(pieces):
            yield start + (end - start) * piece / pieces, start + (end - start) * (piece + 1) / pieces
