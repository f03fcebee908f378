"""Simple outlines and places, made up for tests against shapely."""

from __future__ import annotations

from itertools import accumulate
from math import cos, pi, sin

from hypothesis import strategies as st

from bowstring.geometry.plane import Point


@st.composite
def stars(draw: st.DrawFn) -> list[Point]:
    """A simple outline, convex or not: corners around a middle, each at a distance of its own."""
    count = draw(st.integers(3, 12))
    # Parts of a whole turn, none of half a turn or more: 1.8 of 3.8 with three corners, 3 of 6 less with four.
    parts = draw(
        st.lists(st.floats(1 if count == 3 else 1.2, 1.8 if count == 3 else 3), min_size=count, max_size=count)
    )
    first = draw(st.floats(0, 2 * pi))
    turns = [first + 2 * pi * part / sum(parts) for part in accumulate(parts)]
    reaches = draw(st.lists(st.floats(0.5, 20), min_size=count, max_size=count))
    x, y = draw(st.floats(-30, 30)), draw(st.floats(-30, 30))
    return [Point(x + r * cos(turn), y + r * sin(turn)) for r, turn in zip(reaches, turns, strict=True)]


spots = st.builds(Point, st.floats(-40, 40), st.floats(-40, 40))
