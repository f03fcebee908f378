"""The most or the least of what changes along a line, never on the wrong side of the truth."""

from __future__ import annotations

from collections.abc import Callable
from heapq import heapify, heappush, heapreplace

NEAR = 1e-6
"""How near the bound comes: a hundredth of the 0.01 % that is told."""

MOST_PARTS = 20_000


def most(bound: Callable[[float, float], float]) -> float:
    """Return an upper bound of what changes along a line, within ``NEAR`` of its most.

    ``bound(first, last)`` is no less than any value between two shares of the line, and is the value itself where both
    are one. The part with the largest bound is halved until its own middle has that value, too.
    """
    parts = [(-bound(0.0, 1.0), 0.0, 1.0)]
    heapify(parts)
    reached = max(bound(0.0, 0.0), bound(1.0, 1.0))
    while -parts[0][0] > reached + NEAR and len(parts) < MOST_PARTS:
        _, first, last = parts[0]
        middle = (first + last) / 2
        reached = max(reached, bound(middle, middle))
        heapreplace(parts, (-bound(first, middle), first, middle))
        heappush(parts, (-bound(middle, last), middle, last))
    return -parts[0][0]


def least(bound: Callable[[float, float], float]) -> float:
    """Return a lower bound of what changes along a line, within ``NEAR`` of its least: ``bound`` is no more than any
    value between two shares."""
    return -most(lambda first, last: -bound(first, last))
