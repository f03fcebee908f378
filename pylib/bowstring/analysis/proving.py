"""Which way two ends can be proved on a site: the first that the tape, the room and the obstacles allow."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product
from math import floor

from bowstring.analysis.obstructions import Obstructions
from bowstring.geometry.plane import Point, cross_of_tapes, distance, unit_vector
from bowstring.methods.proofs import Proof, Proving, parts_of
from bowstring.units.sizes import FOOT

MOST_PARTS = 40
"""Nobody tapes a chord in more pulls than that."""

PARTS = (1 / 2, 1 / 3, 1 / 4)
"""The parts of the ways to both ends at which a line parallel to theirs is taped: the longer, the surer."""

OUT = (0.3, 0.2, 0.45, 0.12, 0.6, 0.06, 0.8)
"""How far beside the ends' line the point is looked for, as parts of it."""

ALONG = (0.5, 0.35, 0.65, 0.2, 0.8, 0.0, 1.0, -0.3, 1.3)
"""And where along it."""


def proving_on(ground: Obstructions, feet: bool) -> Proving:
    """Return the proofs that a site allows; lengths that are free to choose are round ones in ``feet`` or metres."""
    unit = FOOT if feet else 0.5

    def ends(a: Point, b: Point) -> Proof:
        return next(_proofs(ground, a, b, unit), Proof("none"))

    def corner(p: Point, a: Point, b: Point) -> float | None:
        return next(_across(ground, p, a, b, unit), None)

    return Proving(ends, corner, ground.free)


def _proofs(ground: Obstructions, a: Point, b: Point, unit: float) -> Iterator[Proof]:
    if ground.free(a, b):
        if ground.reaches(a, b):
            yield Proof("taped")
            return
        yield from _in_parts(ground, a, b, unit)
    yield from _beside(ground, a, b, unit)


def _in_parts(ground: Obstructions, a: Point, b: Point, unit: float) -> Iterator[Proof]:
    """The longest round pulls whose nails find ground to stand on; whole tens of the unit first."""
    whole, way = distance(a, b), unit_vector(a, b)
    longest = floor(ground.limits.tape / unit + 1e-6)
    tens = [count for count in range(longest, 0, -1) if count % 10 == 0]
    for count in [*tens, *(one for one in range(longest, 0, -1) if one % 10)]:
        pull = count * unit
        parts = parts_of(whole, pull)
        if not 0 < parts <= MOST_PARTS:
            continue
        if all(ground.stands(a.plus(way, number * pull)) for number in range(1, parts + 1)):
            yield Proof("parts", pull=pull)


def _beside(ground: Obstructions, a: Point, b: Point, unit: float) -> Iterator[Proof]:
    """A point from which both ends can be taped, and a line parallel to theirs."""
    whole = distance(a, b)
    for part, out, along, inside in product(PARTS, OUT, ALONG, (False, True)):
        spot = Point(a.x + along * whole, a.y + (out if inside else -out) * whole)
        legs = (_round(distance(a, spot), unit), _round(distance(b, spot), unit))
        beside = cross_of_tapes(a, legs[0], b, legs[1], inside)
        if beside is None or min(legs) < 4 * unit or not _tapeable(ground, (beside, a), (beside, b)):
            continue
        one, other = (beside.plus(unit_vector(beside, end), leg * part) for end, leg in zip((a, b), legs, strict=True))
        if _tapeable(ground, (one, other)):
            yield Proof("beside", legs=legs, inside=inside, part=part)


def _across(ground: Obstructions, p: Point, a: Point, b: Point, unit: float) -> Iterator[float]:
    """The longest round way along both straights from their corner at which the line across can be taped."""
    tangent = distance(p, a)
    for tenth in (9, 8, 7, 6, 5, 4, 3, 2, 1):
        along = floor(tangent * tenth / 10 / unit) * unit
        if along > 0:
            one, other = p.plus(unit_vector(p, a), along), p.plus(unit_vector(p, b), along)
            if _tapeable(ground, (one, other)):
                yield along


def _tapeable(ground: Obstructions, *pairs: tuple[Point, Point]) -> bool:
    return all(ground.tapeable(one, other) for one, other in pairs)


def _round(length: float, unit: float) -> float:
    return round(length / unit) * unit
