"""Panels between joints square to the curve."""

from __future__ import annotations

from itertools import product
from math import pi

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bowstring.forming.joints import offered, panels, spread
from bowstring.forming.slab import Slab

slabs = st.builds(Slab, st.floats(1, 80), st.floats(0.5, 5), st.floats(0.1, 5.5))


def test_panels_of_a_walk() -> None:
    """5-ft walk, R 20 ft at the center line, 90°, 5 ft at most: 8 panels of 4.42 and 3.44 ft, or 7 (by hand)."""
    walk = Slab(17.5, 5, pi / 2)
    eight, seven = offered(walk, 5)
    assert (eight.count, seven.count) == (8, 7)
    assert eight.outside == pytest.approx(4.42, abs=5e-3) and eight.inside == pytest.approx(3.44, abs=5e-3)
    assert seven.outside == pytest.approx(5.05, abs=5e-3)
    assert eight.outside_marks()[-1] + eight.outside == pytest.approx(walk.outer * walk.angle)
    assert len(eight.inner) == 8


@given(slabs, st.floats(0.5, 6))
def test_the_fewest_panels_that_are_short_enough(slab: Slab, most: float) -> None:
    first, *rest = offered(slab, most)
    assert first.outside <= most * (1 + 1e-8)
    assert first.count * first.outside == pytest.approx(slab.outer * slab.angle)
    if rest:
        assert rest[0].count == first.count - 1 and rest[0].outside > most * (1 - 1e-8)
    else:
        assert first.count == 1
    assert first.ratio >= 1


@given(st.integers(1, 40), st.floats(0.5, 6))
def test_a_length_of_whole_panels_takes_no_panel_more(count: int, most: float) -> None:
    slab = Slab(10.0, 1.0, count * most / 11.0)
    assume(slab.angle < 6)
    assert offered(slab, most)[0].count == count


@given(slabs, st.floats(0.5, 6), st.floats(0.05, 0.45), st.floats(0.55, 0.95), st.integers(1, 60))
def test_joints_that_have_to_stand_do_and_the_rest_is_even(
    slab: Slab, most: float, first: float, last: float, count: int
) -> None:
    made, *rest = offered(slab, most, (first, last))
    for one in (made, *rest, panels(slab, count, (first, last))):
        assert {first, last, 1.0} <= set(one.shares) and list(one.shares) == sorted(one.shares)
        assert list(one.outer) == pytest.approx([share * slab.outer * slab.angle for share in one.shares])
    assert made.outside <= most * (1 + 1e-8)
    if rest:
        assert rest[0].count == made.count - 1 and rest[0].outside > most * (1 - 1e-8)


@given(st.lists(st.floats(0.1, 9), min_size=1, max_size=4), st.integers(1, 9))
def test_no_other_spread_has_a_shorter_longest(lengths: list[float], count: int) -> None:
    made = spread(lengths, count)
    assert sum(made) == max(count, len(lengths)) and min(made) >= 1
    longest = max(length / parts for length, parts in zip(lengths, made, strict=True))
    others = (one for one in product(range(1, count + 1), repeat=len(lengths)) if sum(one) == count)
    for other in others:
        assert longest <= max(length / parts for length, parts in zip(lengths, other, strict=True)) * (1 + 1e-12)


def test_no_panel_is_refused() -> None:
    with pytest.raises(ValueError, match="one after another"):
        panels(Slab(10, 1, 1), 3, (0.5, 0.4))
    with pytest.raises(ValueError, match="at least one"):
        panels(Slab(10, 1, 1), 0)
    with pytest.raises(ValueError, match="length"):
        offered(Slab(10, 1, 1), 0)
