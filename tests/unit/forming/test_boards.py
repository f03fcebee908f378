"""Boards on an edge, against the trade's figures and beam theory."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.boards import (
    FRESH_CONCRETE,
    LEVELS,
    POUND_FORCE,
    Board,
    bend_radius,
    bends,
    bow,
    bow_spacing,
    flat_spacing,
    kerfs,
    layers,
    least_edge,
    push,
    spaced,
    sprung,
)

FOOT, INCH = 0.3048, 0.0254
ONE_BY_FOUR = Board("1x4", 0.75 * INCH, 3.5 * INCH)
TWO_BY_FOUR = Board("2x4", 1.5 * INCH, 3.5 * INCH)


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
    outside = bend_radius(62 * FOOT, ONE_BY_FOUR, False) / FOOT * angle + 2 * 2
    inside = bend_radius(57 * FOOT, ONE_BY_FOUR, True) / FOOT * angle + 2 * 2
    assert outside == pytest.approx(53 + 3.75 / 12, abs=1 / 96)
    assert inside == pytest.approx(49 + 3.5 / 12, abs=1 / 96)


def test_bends_of_a_walk_inside_62_feet() -> None:
    """R over t of a 5-ft walk inside R 62 ft, worked by hand: 992 and 912 for a 1x4, 497 and 456 for a 2x4."""
    for board, edge, inner, told in (
        (ONE_BY_FOUR, 62, False, 992),
        (ONE_BY_FOUR, 57, True, 912),
        (TWO_BY_FOUR, 62, False, 497),
        (TWO_BY_FOUR, 57, True, 456),
    ):
        assert bend_radius(edge * FOOT, board, inner) / board.thickness == pytest.approx(told, abs=0.5 + 1e-9)


def test_the_least_edge_is_the_least_radius_at_mid_thickness_with_half_a_board() -> None:
    """A 2x4 in job lumber takes an inner edge from 31.25 ft and 3/4 in on, not from 31.25 ft."""
    least = least_edge(TWO_BY_FOUR, 250, inner=True)
    assert least / INCH == pytest.approx(375.75)
    assert bends(least + 1e-9, TWO_BY_FOUR, inner=True) == "job lumber"
    assert bends(375 * INCH, TWO_BY_FOUR, inner=True) == "clear"
    assert bends(least_edge(TWO_BY_FOUR, 250, inner=False) + 1e-9, TWO_BY_FOUR, inner=False) == "job lumber"


def test_a_14_ft_board_is_sprung_five_inches_with_nine_pounds() -> None:
    """5-1/8 in inside and 4-3/4 in outside, 8.7 lb a 1x4 and 70 lb a 2x4 (worked by hand, E from memory)."""
    length, inside, outside = 14 * FOOT, 57 * FOOT, 62 * FOOT
    assert sprung(inside, length) / INCH == pytest.approx(5.125, abs=1 / 16)
    assert sprung(outside, length) / INCH == pytest.approx(4.75, abs=1 / 16)
    assert push(ONE_BY_FOUR, inside, length) / POUND_FORCE == pytest.approx(8.7, abs=0.05)
    assert push(TWO_BY_FOUR, inside, length) / POUND_FORCE == pytest.approx(70, abs=0.5)
    with pytest.raises(ValueError, match="small"):
        push(ONE_BY_FOUR, 4.0, 4.1)
    with pytest.raises(ValueError, match="round"):
        sprung(0.5, 3.2)


@given(st.floats(0.05, 0.5), st.floats(1e-3, 1e-2))
def test_the_spacing_for_a_bow_is_where_it_bows_so_far(depth: float, most: float) -> None:
    assert bow(ONE_BY_FOUR, depth, bow_spacing(ONE_BY_FOUR, depth, most)) == pytest.approx(most)


def test_bows_of_wet_concrete() -> None:
    """0.08 in for a 1x4 and 0.01 in for a 2x4 at 2.9 ft under 4 in (worked by hand)."""
    assert bow(ONE_BY_FOUR, 4 * INCH, 2.9 * FOOT) / INCH == pytest.approx(0.08, abs=0.005)
    assert bow(TWO_BY_FOUR, 4 * INCH, 2.9 * FOOT) / INCH == pytest.approx(0.01, abs=0.005)


@given(st.floats(2, 30), st.floats(0.1, 3), st.floats(0.01, 0.06))
def test_kerfs_are_enough_and_close_enough(radius: float, angle: float, thickness: float) -> None:
    """The safe classic count, angle x thickness/saw, and no piece between two kerfs off the curve by more than told."""
    count, apart = kerfs(radius * angle, angle, radius, thickness, 0.003, 0.0015)
    assert count >= angle * thickness / 0.003 - 1e-6
    assert apart**2 / (8 * radius) <= 0.0015 * (1 + 1e-6)
    assert count * apart == pytest.approx(radius * angle)


def test_layers() -> None:
    assert layers(10 * FOOT, 250, 0.75 * INCH, INCH / 16) == (2, pytest.approx(7 / 16 * INCH))
    assert layers(5 * FOOT, 250, 0.75 * INCH, INCH / 16) == (4, pytest.approx(3 / 16 * INCH))
    assert layers(2 * FOOT, 250, 0.75 * INCH, INCH / 16) is None
