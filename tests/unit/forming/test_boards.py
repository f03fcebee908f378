"""Boards on an edge, against the trade's figures and beam theory."""

from __future__ import annotations

from itertools import combinations_with_replacement

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.boards import (
    FRESH_CONCRETE,
    LEVELS,
    Board,
    bend_radius,
    bends,
    bow,
    cut_list,
    flat_spacing,
    form_length,
    kerf_turn,
    spaced,
)

FOOT, INCH = 0.3048, 0.0254
ONE_BY_FOUR = Board("1x4", 0.75 * INCH, 3.5 * INCH)
TWO_BY_FOUR = Board("2x4", 1.5 * INCH, 3.5 * INCH)
STOCK = (8.0, 10.0, 12.0, 14.0, 16.0)


def test_least_radii() -> None:
    """15.6, 10 and 7 ft for 3/4 in, 31, 20 and 14 ft for 1-1/2 in: common practice, no source."""
    for board, told in ((ONE_BY_FOUR, (15.6, 10, 7)), (TWO_BY_FOUR, (31.25, 20, 14))):
        assert [board.least_radius(ratio) / FOOT for ratio in LEVELS.values()] == pytest.approx(told, abs=0.03)


def test_an_inner_edge_is_the_tighter_bend() -> None:
    edge = 15.63 * FOOT
    assert bends(edge, ONE_BY_FOUR, inner=False) == "job lumber"
    assert bends(edge, ONE_BY_FOUR, inner=True) == "clear"
    assert bends(5 * FOOT, TWO_BY_FOUR, inner=True) is None
    assert bend_radius(10.0, TWO_BY_FOUR, True) < 10.0 < bend_radius(10.0, TWO_BY_FOUR, False)


def test_a_1x4_under_four_inches_of_concrete_bows_an_eighth_at_39_inches() -> None:
    """Worked out from a fresh concrete of 150 lb/ft³ (US Navy training manual) and 1.36 million psi (from memory)."""
    assert bow(ONE_BY_FOUR, 4 * INCH, 39 * INCH) / INCH == pytest.approx(0.125, abs=0.01)
    assert pytest.approx(23563, rel=1e-4) == FRESH_CONCRETE  # newtons a cubic metre


def test_flat_pieces() -> None:
    """Straight pieces miss an arc by s²/(8R)."""
    assert flat_spacing(20 * FOOT, INCH / 8) ** 2 / (8 * 20 * FOOT) == pytest.approx(INCH / 8)


def test_gaps_are_equal_and_no_longer_than_told() -> None:
    assert spaced(49.2876, 3) == 17 and spaced(45.3128, 3) == 16 and spaced(9.0, 3.0) == 3


def test_how_long_the_forms_are() -> None:
    """2 ft past each end: 53' 3-3/4" outside, 49' 3-1/2" inside of a 5-ft walk inside R 62 ft (worked by hand)."""
    angle = 0.7949616
    outside = form_length(62 * FOOT, angle, ONE_BY_FOUR, False, 2 * FOOT) / FOOT
    inside = form_length(57 * FOOT, angle, ONE_BY_FOUR, True, 2 * FOOT) / FOOT
    assert outside == pytest.approx(53 + 3.75 / 12, abs=1 / 96)
    assert inside == pytest.approx(49 + 3.5 / 12, abs=1 / 96)


@given(st.floats(6, 70))
def test_no_other_boards_waste_less(length: float) -> None:
    kerf, least = 0.0104, 6.0
    found = cut_list(length, STOCK, least, kerf)
    every = [
        boards
        for count in range(1, 8)
        for boards in combinations_with_replacement(sorted(STOCK, reverse=True), count)
        if (sum(boards) - length >= kerf or sum(boards) == length) and boards[-1] - (sum(boards) - length) >= least
    ]
    assert bool(found) == bool(every)
    if found:
        assert found in every
        assert sum(found) == min(map(sum, every))
        assert len(found) == min(len(boards) for boards in every if sum(boards) == sum(found))


def test_a_kerf_that_closes() -> None:
    assert kerf_turn(0.125, 1.0, 1.5) == pytest.approx(0.1)
    with pytest.raises(ValueError, match="shallower"):
        kerf_turn(0.125, 1.5, 1.5)
