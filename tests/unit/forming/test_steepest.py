"""The most of what changes along a line, bounded."""

from __future__ import annotations

from math import cos, sin

from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.steepest import NEAR, least, most


@given(st.floats(-2, 2), st.floats(-2, 2), st.floats(0.1, 4))
def test_the_bound_is_near_the_most_and_never_under_it(first: float, second: float, turns: float) -> None:
    """A sum of a sine that grows and a cosine that falls, over a quarter turn: each part bounded at its ends."""

    def value(share: float) -> float:
        return abs(first) * sin(1.5 * share) + abs(second) * cos(1.5 * share) * turns

    def above(start: float, end: float) -> float:
        return abs(first) * sin(1.5 * end) + abs(second) * cos(1.5 * start) * turns

    def below(start: float, end: float) -> float:
        return abs(first) * sin(1.5 * start) + abs(second) * cos(1.5 * end) * turns

    values = [value(number / 3000) for number in range(3001)]
    assert max(values) - 1e-12 <= most(above) <= max(values) + NEAR + 1e-5
    assert min(values) + 1e-12 >= least(below) >= min(values) - NEAR - 1e-5
