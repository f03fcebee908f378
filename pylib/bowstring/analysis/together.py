"""How sure it is that all stakes are within a miss at once, when they have errors in common.

Each stake's miss across the arc is a sum of sources. What most of them share (the tape's scale, the pin in the centre,
the first stake of a chain) is put together into one factor, the direction among those sources along which the stakes
go most, and taken in turn at the nodes of a quadrature. Given it, each stake is tied to the one before it that it has
most in common with, and the chance that all are within is the product of the chances of each given that one: exact
for stakes that are independent, and for a chain or a tree of them (Chow and Liu, Approximating discrete probability
distributions with dependence trees, IEEE Transactions on Information Theory, 1968). Held against Monte Carlo in the
tests.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import erf, exp, hypot, log, pi, sqrt

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

TURNS = 5
"""Turns of the power iteration that finds the factor: one of two directions that are nearly as long serves as well."""

HALVINGS = 16
"""Of the miss: to a fifteen-thousandth of a standard deviation."""

ALIKE = 1 - 1e-9
DUST = 1e-13
CLOSE = 1e-10
"""How near the wanted chance is near enough, on that scale: so near that two machines come to the same miss."""

FIRST_STEP = 0.6
"""A change of the miss, as a part of it, for one on that scale: a first guess."""

MOST_TRIES = 20

LITTLE = 0.04
"""A correlation whose square is below this moves the chance by less than the rule's own error."""


@dataclass(frozen=True)
class _Tied:
    """A stake as it is taken: its deviation given the factor, the factor's part, and the stake that it leans on."""

    sigma: float
    common: float
    parent: int | None
    correlation: float


class Together:
    """The chance that every stake is within a miss, and the miss within which all are at a chance."""

    def __init__(self, across: Sequence[Across], leans: Sequence[Sequence[int]]) -> None:
        """``across``: one for each stake, in an order in which whoever a stake leans on comes before it; ``leans``:
        for each the places of those that it may lean on."""
        factor = _main_factor(across)
        along = [_product(one, factor) for one in across]
        squares = [_rest(_product(one, one), part * part) for one, part in zip(across, along, strict=True)]
        self.tied: list[_Tied] = []
        for number, one in enumerate(across):
            parent, best, correlation = None, LITTLE, 0.0
            for other in leans[number]:
                product = squares[number] * squares[other]
                if product <= 0:
                    continue
                shared = _product(one, across[other]) - along[number] * along[other]
                if shared * shared / product > best:
                    parent, best, correlation = other, shared * shared / product, shared / sqrt(product)
            self.tied.append(_Tied(sqrt(squares[number]), along[number], parent, correlation))
        common = max((tied.common**2 for tied in self.tied), default=0.0)
        rest = max(squares, default=0.0)
        self.fixed = ((0.0, 1.0),) if common <= 1e-3 * rest else NODES if common < 0.4 * rest else None

    def chance(self, miss: float) -> float:
        """Return the chance that every stake is within ``miss`` metres of the arc."""
        nodes = self.fixed or self._nodes(miss)
        return min(sum(weight * self._given(node, miss) for node, weight in nodes), 1.0)

    def _nodes(self, miss: float) -> list[tuple[float, float]]:
        """Where the factor is much of a miss, the chance breaks off at some size of it: panels before and across that.

        Both signs in one; beyond the break there is no chance left.
        """
        breaks = [(miss / abs(tied.common), tied.sigma / abs(tied.common)) for tied in self.tied if tied.common]
        edge = min(breaks)[0]
        # Stakes whose breaks differ by dust only break together, over the widest of them.
        width = max(width for other, width in breaks if other <= edge * (1 + 1e-6))
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
        sigmas = [sigma for tied in self.tied if (sigma := hypot(tied.sigma, tied.common)) > 0]
        if not sigmas:
            return 0.0
        low, high = _if_independent([max(sigmas)], chance), _if_independent(sigmas, chance)
        # No less than the worst stake alone wants, no more than all of them apart; between those by secants, on a scale
        # on which the chance is nearly straight, and by halving where one leads out of what is left.
        miss, step = high, (0.0, 0.0)
        for number in range(MOST_TRIES):
            found = _straight(self.chance(miss)) - _straight(chance)
            if abs(found) < CLOSE or high - low < CLOSE * low:
                break
            before, step = step, (miss, found)
            low, high = (miss, high) if found < 0 else (low, miss)
            slope = (found - before[1]) / (miss - before[0]) if number else 1 / (miss * FIRST_STEP)
            guess = miss - found / slope if slope > 0 else low
            miss = guess if low < guess < high else (low + high) / 2
        return miss


def _if_independent(sigmas: Sequence[float], chance: float) -> float:
    """The miss within which all would be, had they nothing in common: no less than with it (Sidak's inequality)."""
    low, high = 0.0, FAR * max(sigmas)
    for _ in range(HALVINGS):
        middle, product = (low + high) / 2, 1.0
        for sigma in sigmas:
            product *= erf(middle / (sigma * ROOT_2))
            if product < chance:
                break
        low, high = (middle, high) if product < chance else (low, middle)
    return high


def _main_factor(rows: Sequence[Across]) -> Across:
    """The direction, of length 1, along which the stakes go most among the sources that move more than half of them:
    their first principal component. Stakes without such a source have no factor, so independent ones stay so."""
    counts: dict[int, int] = {}
    for row in rows:
        for source in row:
            counts[source] = counts.get(source, 0) + 1
    shared = {source for source, count in counts.items() if 2 * count > len(rows)}
    kept = [{source: shift for source, shift in row.items() if source in shared} for row in rows]
    weights = [1.0] * len(rows)
    factor: Across = {}
    for _ in range(TURNS):
        factor = {}
        for weight, row in zip(weights, kept, strict=True):
            for source, shift in row.items():
                factor[source] = factor.get(source, 0.0) + weight * shift
        length = sqrt(sum(part * part for part in factor.values()))
        if length == 0:
            return {}
        factor = {source: part / length for source, part in factor.items()}
        weights = [_product(row, factor) for row in kept]
    return factor


def _product(one: Across, other: Across) -> float:
    small, large = (one, other) if len(one) < len(other) else (other, one)
    return sum(shift * large[source] for source, shift in small.items() if source in large)


def _rest(whole: float, part: float) -> float:
    """What is left of a variance, with the dust of the difference taken for nothing."""
    return whole - part if whole - part > DUST * whole else 0.0


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
