"""How true each stake will be: what a construction's spread means for the arc."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, partial
from math import atan2, degrees, sqrt

from bowstring.analysis.error_model import ErrorModel
from bowstring.analysis.fairness import fair_deviations
from bowstring.analysis.spread import Spread
from bowstring.analysis.together import Across, Together
from bowstring.analysis.triangles import Square
from bowstring.construction import Recipe, Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, unit_vector

NORMAL_95 = 1.96
"""Standard deviations on each side that hold 95 of 100 (normal distribution; 1.95996 rounded as everybody does)."""

ELLIPSE_95 = 2.4477468306808166
"""Standard deviations of an ellipse that holds 95 of 100: root of -2 ln 0.05 (chi squared, two degrees of freedom)."""

MOST_TIED = 256
"""Stakes beyond so many are taken as independent of each other, which makes the miss of all a little too large."""

RELIABLE = 0.05
"""The second-order part of a miss, as a part of its deviation, up to which the first order is relied on."""


@dataclass(frozen=True)
class StakeSpread:
    """One stake's scatter: standard deviations in metres across the arc (radially) and along it.

    ``turned``: degrees from the across direction to the ellipse's long axis, toward B; ``long``, ``short``: its
    standard deviations; ``bent``, ``bent_along``: the second-order shifts across and along, metres; ``fair``: of its
    mid-ordinate over its two neighbours, ``None`` at the ends.
    """

    name: str
    across: float
    along: float
    long: float
    short: float
    turned: float
    bent: float
    bent_along: float
    fair: float | None = None


@dataclass(frozen=True)
class Accuracy:
    """How true all stakes of a construction will be; ``spread``: what moves each mark, with the errors assumed;
    ``tie``: makes of it how sure all stakes are at once, which few questions need."""

    stakes: tuple[StakeSpread, ...]
    tie: Callable[[], Together]
    spread: Spread

    @cached_property
    def together(self) -> Together:
        """How sure it is that all stakes are within a miss at once."""
        return self.tie()

    @property
    def worst(self) -> StakeSpread:
        """The stake with the largest deviation across."""
        return max(self.stakes, key=lambda stake: stake.across)

    @property
    def miss_95(self) -> float:
        """Metres across within which the worst stake stands at 95 %."""
        return NORMAL_95 * self.worst.across

    @property
    def least_fair(self) -> StakeSpread:
        """The stake that may be farthest from the fair curve through its neighbours."""
        return max(self.stakes, key=lambda stake: stake.fair or 0.0)

    @property
    def fair_95(self) -> float:
        """Metres off the mid-ordinate over its two neighbours within which the least fair stake stands at 95 %."""
        return NORMAL_95 * (self.least_fair.fair or 0.0)

    @cached_property
    def all_95(self) -> float:
        """Metres across within which all stakes stand at once at 95 %."""
        return max(self.together.miss_at(0.95), self.miss_95)

    @property
    def reliable(self) -> bool:
        """Whether the first order says it all: every second-order shift is small beside its stake's scatter, or smaller
        than half a reading error (a sagitta of a few marks, slid to and fro), which nobody sees."""
        read = self.spread.errors.read
        return all(abs(stake.bent) <= max(RELIABLE * stake.across, read / 2) for stake in self.stakes)


def accuracy_of(
    arc: Arc,
    recipe: Recipe,
    stakes: Sequence[Stake],
    errors: ErrorModel,
    *,
    known: Mapping[str, float] | None = None,
    squares: Mapping[str, Square],
) -> Accuracy:
    """Return how true the stakes of a recipe will be.

    ``known``: the standard deviation in x and y of marks that stand already, metres; the ends are exact without one.
    ``squares``: how each offset is squared, by its mark.
    """
    spread = Spread(recipe.at, errors, known or {}, squares)
    spread.walk(recipe.steps)
    spreads, across_of = [], {}
    fair = fair_deviations(recipe.at, spread.shifts, [stake.name for stake in stakes])
    for stake, off_fair in zip(stakes, fair, strict=True):
        row, across = _stake(arc, recipe, spread, stake.name, off_fair)
        spreads.append(row)
        across_of[stake.name] = across
    return Accuracy(tuple(spreads), partial(_together, recipe, stakes, across_of), spread)


def _stake(arc: Arc, recipe: Recipe, spread: Spread, name: str, fair: float | None) -> tuple[StakeSpread, Across]:
    out = unit_vector(arc.centre, recipe.at[name])
    on_x, on_y = out.y, -out.x  # along the arc, from A toward B
    across: Across = {}
    aa = bb = ab = 0.0
    for source, (x, y) in spread.shifts[name].items():
        a, b = out.x * x + out.y * y, on_x * x + on_y * y
        across[source] = a
        aa, bb, ab = aa + a * a, bb + b * b, ab + a * b
    mean, half = (aa + bb) / 2, sqrt(((aa - bb) / 2) ** 2 + ab * ab)
    turn = degrees(atan2(2 * ab, aa - bb)) / 2
    mean_shift = spread.mean_shift.get(name, Point(0.0, 0.0))
    # A stake that slips along its tangent by t leaves the arc by t²/2R, outward.
    bent = mean_shift.dot(out) + bb / (2 * arc.radius)
    bent_along = mean_shift.x * on_x + mean_shift.y * on_y
    return (
        StakeSpread(
            name, sqrt(aa), sqrt(bb), sqrt(mean + half), sqrt(max(mean - half, 0.0)), turn, bent, bent_along, fair
        ),
        across,
    )


def _together(recipe: Recipe, stakes: Sequence[Stake], across: Mapping[str, Across]) -> Together:
    """The stakes in the order in which they are set, each leaning on marks of its own step and on its neighbour."""
    names = {stake.name for stake in stakes}
    order = [stake.name for stake in stakes if stake.level == 0]
    leans: list[list[int]] = [[] for _ in order]
    place = {name: number for number, name in enumerate(order)}
    last = None
    for step in recipe.steps:
        if step.stake not in names or step.stake in place:
            continue
        near = {name for name in step.names.values() if name in place}
        near |= {last} if last else set()
        leans.append([place[name] for name in sorted(near)] if len(order) <= MOST_TIED else [])
        place[step.stake] = len(order)
        order.append(step.stake)
        last = step.stake
    return Together([across[name] for name in order], leans)
