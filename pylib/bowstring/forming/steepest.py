"""Where what changes along a tapered slab may be largest or least: exactly, so that nothing between is missed."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

Polynomial = Sequence[float]
"""Its coefficients, the constant first."""

HALVINGS = 40


def turning(rate: float, added: float, over: Polynomial, under: Polynomial) -> tuple[float, ...]:
    """Return the shares of a line, both ends among them, between which (rate √over + added)/√under only grows or only
    shrinks; ``over`` and ``under`` above 0 all along it.

    Where it turns, its derivative's parts are equal: rate (over' under - over under') = added under' √over. Squared,
    that is a polynomial whose roots are all found.
    """
    size = max(abs(rate), abs(added)) or 1.0  # the turns are the same, and no square is lost below what a float holds
    rate, added = rate / size, added / size
    parts = _minus(_times(_slope(over), under), _times(over, _slope(under)))
    left = _times([rate * rate], _times(parts, parts))
    right = _times([added * added], _times(_times(_slope(under), _slope(under)), over))
    return (0.0, *_roots(_minus(left, right)), 1.0)


def _roots(polynomial: Polynomial) -> list[float]:
    """Return the roots of a polynomial between 0 and 1, in order, and the places where it turns: a root that it only
    touches is one of those."""
    if len(polynomial) < 2:
        return []
    turns = _roots(_slope(polynomial))
    found = [
        _between(polynomial, start, end)
        for start, end in pairwise([0.0, *turns, 1.0])
        if (_at(polynomial, start) < 0) != (_at(polynomial, end) < 0)
    ]
    return sorted([*turns, *found])


def _between(polynomial: Polynomial, start: float, end: float) -> float:
    below = _at(polynomial, start) < 0
    for _ in range(HALVINGS):
        middle = (start + end) / 2
        if (_at(polynomial, middle) < 0) == below:
            start = middle
        else:
            end = middle
    return (start + end) / 2


def _at(polynomial: Polynomial, place: float) -> float:
    value = 0.0
    for part in reversed(polynomial):
        value = value * place + part
    return value


def _slope(polynomial: Polynomial) -> list[float]:
    return [power * part for power, part in enumerate(polynomial)][1:]


def _times(one: Polynomial, other: Polynomial) -> list[float]:
    product = [0.0] * (len(one) + len(other) - 1)
    for power, part in enumerate(one):
        for more, factor in enumerate(other):
            product[power + more] += part * factor
    return product


def _minus(one: Polynomial, other: Polynomial) -> list[float]:
    length = max(len(one), len(other))
    return [
        (one[power] if power < len(one) else 0.0) - (other[power] if power < len(other) else 0.0)
        for power in range(length)
    ]
