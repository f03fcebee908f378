"""The next mid-ordinate worked by hand: decimals enough that what is written gives what comes out."""

from __future__ import annotations

from math import hypot
from typing import NamedTuple

from bowstring.wall.shape import Given

FEWEST, MOST = 3, 8
"""Decimals of a number that somebody works with."""


class HandSum(NamedTuple):
    """The numbers of ``next = h x (h - a) / (2 x s)`` as they are written, and the result of working with those."""

    half: str
    sagitta: str
    long: str
    past: str
    twice: str
    next: str


def hand_sum(given: Given) -> HandSum:
    """Return the sum with as few decimals as do: worked with them it rounds to the exact result's three decimals."""
    exact = given.decimal(next_sagitta(given))
    for places in range(FEWEST, MOST + 1):
        written = _written(given, places)
        worked = float(written.long) * float(written.past) / float(written.twice)
        if float(written.past) > 0 and f"{worked:.3f}" == exact:
            break
    return written


def _written(given: Given, places: int) -> HandSum:
    half, out = given.half, given.sagitta
    long = hypot(half, out)
    past = out * out / (long + half)  # h - a, without the difference
    numbers = [given.decimal(one, places) for one in (half, out, long, past, 2 * out)]
    first, second, third, fourth, fifth = numbers
    return HandSum(first, second, third, fourth, fifth, given.decimal(next_sagitta(given)))


def next_sagitta(given: Given) -> float:
    """Return the next round's mid-ordinate, metres: h s / (2 (h + a)), which is h (h - a) / (2 s)."""
    long = hypot(given.half, given.sagitta)
    return long * given.sagitta / (2 * (long + given.half))
