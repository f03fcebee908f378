"""Known shifts that a crew can take out: what they would do to the stakes if nobody did.

Each is a length error of every pull, or a string's mark pushed aside, taken through the construction's own derivatives.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import hypot

from bowstring.analysis.error_model import ErrorModel
from bowstring.analysis.spread import Spread
from bowstring.analysis.squaring import Kit
from bowstring.analysis.triangles import squares_of
from bowstring.analysis.wind import string_bow
from bowstring.construction import Recipe, Source, Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, unit_vector
from bowstring.units.sizes import FOOT

POUND = 4.4482216152605
"""Newtons: one pound-force, exactly 0.45359237 kg times 9.80665 m/s²."""

TAPE_WEIGHT = 2.8 * POUND / (100 * FOOT)
"""Newtons a metre of a steel tape of 2.8 lb in 100 ft. Source: US surveying course slides on tape corrections."""

TAPE_PULL = 15 * POUND
"""Newtons: the pull on a tape that hangs free (common practice, no source)."""

UNIT = ErrorModel(read=1.0, scale=1.0, stake=0.0, line=1.0, angle=1.0)
"""A model in which every source that a shift can come in by is there."""


@dataclass(frozen=True)
class Bias:
    """What a known shift does if nobody takes it out.

    Attributes:
        kind: ``slope``, ``sag`` or ``wind``.
        worst: metres across the arc, positive outward, at the stake ``at`` that it moves most.
    """

    kind: str
    worst: float
    at: str


def level_of(along: float, across: float, start: Point, end: Point) -> float:
    """Return how much longer the slope distance between two places is than the level one, metres.

    ``along``, ``across``: the ground's fall in percent along x and y. With the fall z between them over the level
    distance d the slope distance is sqrt(d² + z²).

    >>> level_of(0.0, 75.0, Point(0.0, 0.0), Point(0.0, 4.0))
    1.0
    """
    way = end.minus(start)
    fall = (along * way.x + across * way.y) / 100
    return hypot(way.x, way.y, fall) - hypot(way.x, way.y)


def sag(length: float) -> float:
    """Return how much too long a hanging tape reads over ``length`` metres: w² L³/(24 P²).

    >>> round(sag(30.0) / sag(15.0), 6)
    8.0
    """
    return TAPE_WEIGHT**2 * length**3 / (24 * TAPE_PULL**2)


def biases(arc: Arc, recipe: Recipe, stakes: Sequence[Stake], fall: tuple[float, float]) -> list[Bias]:
    """Return what slope, sag and wind would do, each as if it were let in at every pull or string.

    Slope and sag make every pull's level distance too short by what they add to the tape's; wind pushes the marks on
    a string aside by its bow there (4 t (1 - t) of the bow at the middle), to whichever side it blows.
    """
    spread = Spread(recipe.at, UNIT, {}, squares_of(recipe, Kit()))
    spread.walk(recipe.steps)
    at = recipe.at

    def pulled(source: Source) -> bool:
        # A middle's two pulls are short alike, so no shift is left of them.
        return source.kind == "read" and source.mark == source.end

    def slope(source: Source) -> float:
        return -level_of(*fall, at[source.start], at[source.end]) if pulled(source) else 0.0

    def hanging(source: Source) -> float:
        return -sag(distance(at[source.start], at[source.end])) if pulled(source) else 0.0

    def blown(source: Source) -> float:
        if source.kind != "line":
            return 0.0
        start, end, mark = at[source.start], at[source.end], at[source.mark]
        whole = distance(start, end)
        part = unit_vector(start, end).dot(mark.minus(start)) / whole
        return string_bow(whole) * 4 * part * (1 - part) if 0 < part < 1 else 0.0

    found = [_worst(arc, spread, stakes, "sag", hanging), _worst(arc, spread, stakes, "wind", blown)]
    if any(fall):
        found.insert(0, _worst(arc, spread, stakes, "slope", slope))
    return found


def _worst(arc: Arc, spread: Spread, stakes: Sequence[Stake], kind: str, shift: Callable[[Source], float]) -> Bias:
    by_source = {number: found / source.size for number, source in enumerate(spread.sources)
              if source.size and (found := shift(source))}  # fmt: skip
    worst, at = 0.0, stakes[0].name
    for stake in stakes:
        out = unit_vector(arc.centre, spread.at[stake.name])
        shifts = spread.shifts[stake.name]
        miss = sum(
            (out.x * x + out.y * y) * by_source[source] for source, (x, y) in shifts.items() if source in by_source
        )
        if abs(miss) > abs(worst) * (1 + 1e-9):
            worst, at = miss, stake.name
    return Bias(kind, worst, at)
