"""A guarded root search, and the small-angle functions that keep it sharp on flat arcs."""

from __future__ import annotations

from collections.abc import Callable
from math import cos, sin

MOST_HALVINGS = 400
"""Enough to come from any bracket of ordinary size down to two neighbouring floats."""


def root_between(function: Callable[[float], float], low: float, high: float, *, rising: bool = True) -> float:
    """Return where a continuous function crosses zero between two arguments.

    Plain bisection down to neighbouring floats: about seventy evaluations, no start value, no derivative, and it
    can't leave its bracket. ``function`` is not evaluated at the ends, so it may be undefined there. ``rising``:
    whether it goes from negative to positive; it is said and not sensed, since a root may lie against an end.

    Raises ``ArithmeticError`` if the bracket doesn't close.

    >>> root_between(lambda x: x * x - 2, 1.0, 2.0)
    1.414213562373095
    """
    for _ in range(MOST_HALVINGS):
        mid = (low + high) / 2
        if mid in (low, high):
            return mid
        if (function(mid) > 0) == rising:
            high = mid
        else:
            low = mid
    raise ArithmeticError("the bracket does not close")


def sine_shortfall(x: float) -> float:
    """Return 1 - sin(x)/x for 0 < x < pi, with full relative precision for small x.

    Its series below 1: x^2/3! - x^4/5! + ...
    """
    if x >= 1:
        return (x - sin(x)) / x
    term = x * x / 6
    total = term
    k = 3
    while abs(term) > total * 1e-18:
        term *= -x * x / ((k + 1) * (k + 2))
        total += term
        k += 2
    return total


def cotangent_shortfall(x: float) -> float:
    """Return 1 - x/tan(x) for 0 < x < pi/2, with full relative precision for small x.

    (sin x - x cos x)/sin x; the upper part's series below 1 is the sum of (-1)^(k+1) 2k x^(2k+1)/(2k+1)!.
    """
    if x >= 1:
        return (sin(x) - x * cos(x)) / sin(x)
    power = x * x * x / 6
    total = 2 * power
    term = total
    k = 1
    while abs(term) > total * 1e-18:
        power *= -x * x / ((2 * k + 2) * (2 * k + 3))
        k += 1
        term = 2 * k * power
        total += term
    return total / sin(x)
