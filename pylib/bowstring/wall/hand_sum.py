"""Sums worked by hand: decimals enough that what is written gives what comes out."""

from __future__ import annotations

from math import hypot
from typing import NamedTuple

from bowstring.wall.shape import Given, plain

FEWEST, MOST = 3, 8
"""Decimals of a number that somebody works with."""
MOST_OF_BOW = 3


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


class BowSum(NamedTuple):
    """The radius off a bow, as it is written: half the string times itself, over the arrow, and so on."""

    half: str
    out: str
    square: str
    rest: str
    radius: str


def bow_sum(given: Given) -> BowSum:
    """Return the sum with as few decimals, two at least, as do: worked with them its radius rounds to the exact one's
    two decimals, and both products of the crossing lines are equal to one.

    Of a very flat bow three don't do: then two, and the last figures of its radius are not what the sum gives.
    """
    exact = given.decimal(given.arc.radius, 2)
    rest = given.half * given.half / given.sagitta
    flat = [given.decimal(one, 2) for one in (given.half, given.sagitta, rest)]
    found = BowSum(flat[0], flat[1], f"{(given.half / given.size) ** 2:.2f}", flat[2], exact)
    for places in range(2, MOST_OF_BOW + 1):
        half, out = given.decimal(given.half, places), given.decimal(given.sagitta, places)
        if not float(out):
            continue
        square = f"{float(half) ** 2:.{places}f}"
        down = f"{float(square) / float(out):.{places}f}"
        comes_out = f"{(float(down) + float(out)) / 2:.2f}"
        if comes_out == exact and f"{float(square):.1f}" == f"{float(out) * float(down):.1f}":
            found = BowSum(half, out, square, down, exact)
            break
    return BowSum(*map(plain, found))
