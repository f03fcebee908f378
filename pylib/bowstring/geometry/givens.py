"""How the drawing's givens settle one arc: two of them, or more that don't quite agree.

Which pair of many is taken: the one with which most givens agree; of these the one whose largest difference, in parts
of what it may be, is smallest. Two arcs may fit a pair; further givens choose, otherwise the smaller angle is taken and
the other one is kept beside it, to be named.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from itertools import combinations
from math import inf

from bowstring.errors import BadJob, bad
from bowstring.geometry.arc import MEASURES, Arc
from bowstring.geometry.given import ANGLES, FIELDS, SLACK, Given
from bowstring.geometry.pairs import NoArc, arcs_of
from bowstring.words import say

TIE = 1e-6
"""Two pairs whose worst differences are this near, in parts of what may differ, are tied."""


@dataclass(frozen=True)
class Settled:
    """An arc and how it was settled.

    Attributes:
        arc: the arc taken.
        other: the second arc that the same givens have, or ``None``.
        pair: the two givens that it was computed from (empty for three points or sides).
        odd: of four givens and more the only one that doesn't agree.
    """

    arc: Arc
    other: Arc | None
    pair: tuple[Given, ...]
    odd: Given | None = None


def settle(givens: list[Given], greater: bool, mark: float, show: Callable[[float], str] = str) -> Settled:
    """Return the arc of two or more givens.

    ``greater`` takes the larger angle where nothing else chooses between two arcs; ``mark`` is the tape's, in metres;
    ``show`` writes a length in metres into a refusal.

    Raises ``BadJob`` when the givens can't settle an arc: too few, or no pair of them belongs to any arc.

    >>> givens = [Given("chord", 40.0), Given("sagitta", 10.0)]
    >>> round(settle(givens, None, 0.005).arc.radius, 6)
    25.0
    """
    ordered = sorted(givens, key=lambda given: FIELDS.index(given.field))
    fitting = _fitting(ordered, mark, show)
    most = max(one.agreeing for one in fitting)
    fitting = [one for one in fitting if one.agreeing == most]
    best = min(one.worst for one in fitting)
    pair = next(one.pair for one in fitting if one.worst <= best + TIE)
    arcs = [one.arc for one in fitting if one.pair == pair and one.worst <= best + TIE]
    odd = _odd_one(ordered, [one.arc for one in fitting], mark)
    if len(arcs) == 1:
        return Settled(arcs[0], None, pair, odd)
    smaller, larger = arcs
    return Settled(larger, smaller, pair, odd) if greater else Settled(smaller, larger, pair, odd)


@dataclass(frozen=True)
class _Fit:
    """An arc of one pair: how many givens agree with it, and how far the worst is off in parts of what it may."""

    agreeing: int
    worst: float
    arc: Arc
    pair: tuple[Given, Given]


def _fitting(ordered: list[Given], mark: float, show: Callable[[float], str]) -> list[_Fit]:
    """Return every arc of every pair, in the order of the pairs; raises ``BadJob`` where there is none."""
    pairs = [(a, b) for a, b in combinations(ordered, 2) if a.measure != b.measure]
    if not pairs:
        raise _too_few(ordered)
    refusal: BadJob | None = None
    fitting = []
    for a, b in pairs:
        try:
            arcs = arcs_of((a.measure, b.measure), a.settles, b.settles)
        except NoArc as reason:
            refusal = refusal or bad(f"arc.{b.field}", reason.key, limit=show(reason.limit))
            continue
        for arc in arcs:
            off = [given.off_by(arc, mark) for given in ordered if given is not a and given is not b]
            fitting.append(_Fit(2 + sum(one <= SLACK for one in off), max(off, default=0.0), arc, (a, b)))
    if not fitting:
        assert refusal is not None
        raise refusal
    return fitting


def _odd_one(givens: list[Given], arcs: list[Arc], mark: float) -> Given | None:
    """Return the only given that none of these arcs has, while they have all others; ``None`` under four givens.

    Of three givens any two make an arc, so no single one can be named; nor can it where two arcs name different ones.
    """
    off = {given for arc in arcs for given in givens if not given.agrees(arc, mark)}
    return off.pop() if len(givens) >= 4 and len(off) == 1 else None


def _too_few(givens: list[Given]) -> BadJob:
    """Return the refusal of givens that are all one measure, with the measures that would go with it."""
    there = {given.measure for given in givens}
    fields = ", ".join(say(f"measure.{given.field}") for given in givens) or say("arc.nothing")
    others = ", ".join(say(f"measure.{name}") for name in MEASURES if name not in there)
    return bad("arc", "arc.too_few", fields=fields, others=others)


def nudged(settled: Settled, step: float) -> Iterator[tuple[Given, float]]:
    """Yield each length of the pair with the part by which the radius moves when that length is out by ``step`` metres.

    ``inf`` where a length so far out belongs to no arc at all.
    """
    if len(settled.pair) != 2:
        return
    first, second = settled.pair
    for given, other in ((first, second), (second, first)):
        if given.field not in ANGLES:
            values = {given.measure: given.settles, other.measure: other.settles}
            yield given, radius_change(settled.arc, values, given.measure, step)


def radius_change(arc: Arc, values: Mapping[str, float], measure: str, step: float) -> float:
    """Return the larger part by which the radius changes when one of two measures is ``step`` metres more or less."""
    names = sorted(values, key=MEASURES.index)
    worst = 0.0
    for sign in (1, -1):
        moved = {**values, measure: values[measure] + sign * step}
        if moved[measure] <= 0:
            return inf
        try:
            arcs = arcs_of((names[0], names[1]), moved[names[0]], moved[names[1]])
        except NoArc:
            return inf
        nearest = min(arcs, key=lambda found: abs(found.half_angle - arc.half_angle))
        worst = max(worst, abs(nearest.radius / arc.radius - 1))
    return worst


MEASURABLE = ("sagitta", "chord", "arc_length", "tangent_length", "external")
"""What a crew can put a tape on where the centre can't be reached, handiest first."""

HANDIER = 2
"""A handier measurement is offered unless another one pins the radius this many times better."""


def better_measurement(settled: Settled, weak: Given, step: float) -> tuple[str, float] | None:
    """Return the measure that would pin the radius best in place of ``weak``, and what ``step`` metres in it cost.

    Beside the pair's other given; the cost is a part of the radius. ``None`` when no other measure does better.
    """
    kept = next(given for given in settled.pair if given is not weak)
    measures = settled.arc.measures()
    costs = []
    for name in MEASURABLE:
        value = measures[name]
        if name in (weak.measure, kept.measure) or value is None:
            continue
        values = {kept.measure: kept.settles, name: value}
        costs.append((radius_change(settled.arc, values, name, step), name))
    now = radius_change(settled.arc, {kept.measure: kept.settles, weak.measure: weak.settles}, weak.measure, step)
    if not costs or min(costs)[0] >= now / 2:
        return None
    least = min(costs)[0]
    cost, name = next(row for row in costs if row[0] <= HANDIER * least and row[0] < now / 2)
    return name, cost
