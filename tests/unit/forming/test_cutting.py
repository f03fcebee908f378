"""The order of boards, against every order there is."""

from __future__ import annotations

from itertools import product
from time import perf_counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring.forming.cutting import (
    OPPOSITE,
    QUARTER,
    QUARTERS,
    RULES,
    SHORT,
    STAKE,
    Order,
    Rules,
    Run,
    best_order,
    packed,
)

STOCK = (8.0, 10.0, 12.0, 14.0, 16.0)
KERF = 1 / 96
FEET = 0.3048
WALK = (Run(53.3125 * FEET, 2 * FEET), Run(49.2917 * FEET, 2 * FEET))
"""Both boards of a 5-ft walk inside R 62 ft over a 48-ft chord, 2 ft past each end."""


def in_feet(runs: tuple[Run, ...]) -> tuple[Run, ...]:
    return tuple(Run(run.length * FEET, run.past * FEET) for run in runs)


def rules(stakes: int, **other: float) -> Rules:
    told = {"least": 6.0, "kerf": KERF, "clear": 1.0, "apart": 2.0, **other}
    return Rules(
        **{key: value * FEET for key, value in told.items()}, stakes=tuple(n / stakes for n in range(stakes + 1))
    )


STOCK_M = tuple(board * FEET for board in STOCK)


def every_order(length: float, kerf: float) -> list[tuple[tuple[float, ...], tuple[float, ...]]]:
    """Every order of the stock for a length, with its pieces: the last is the shortest board that does."""
    found = []
    for count in range(1, 6):
        for whole in product(STOCK_M, repeat=count - 1):
            left = length - sum(whole)
            last = next((one for one in STOCK_M if one >= left + kerf or abs(one - left) < 1e-6), None)
            if left > 1e-6 and last is not None:
                found.append(((*whole, last), (*whole, left)))
    return found


def broken(run: Run, pieces: tuple[float, ...], by: Rules) -> tuple[int, int, int]:
    """Count by themselves: short pieces, splices at a quarter point, splices at another stake."""
    short = sum(piece < by.least for piece in pieces) if len(pieces) > 1 else 0
    quarter = stake = 0
    for share in shares(run, pieces):
        off = min(abs(share - one) for one in QUARTERS) * run.edge
        aside = min(abs(share - one) for one in by.stakes) * run.edge
        quarter += off < by.clear - 1e-6
        stake += off >= by.clear - 1e-6 and aside < by.clear - 1e-6
    return short, quarter, stake


def shares(run: Run, pieces: tuple[float, ...]) -> list[float]:
    return [(sum(pieces[:place]) - run.past) / run.edge for place in range(1, len(pieces))]


def opposite(runs: tuple[Run, ...], pieces: tuple[tuple[float, ...], ...], by: Rules) -> int:
    between = sum(run.edge for run in runs) / 2
    one, other = (shares(run, of) for run, of in zip(runs, pieces, strict=True))
    return sum(abs(a - b) * between < by.apart - 1e-6 for a in one for b in other)


def score_of(runs: tuple[Run, ...], order: Order, by: Rules) -> tuple[int, int, int, int, float, int]:
    told = [broken(run, pieces, by) for run, pieces in zip(runs, order.pieces, strict=True)]
    short, quarter, stake = (sum(one) for one in zip(*told, strict=True))
    faced = opposite(runs, order.pieces, by) if len(runs) == 2 else 0
    return short, quarter, faced, stake, round(order.waste, 6), sum(map(len, order.boards))


@pytest.mark.parametrize("stakes", [4, 8, 16, 32])
def test_no_order_of_one_edge_is_better(stakes: int) -> None:
    by = rules(stakes)
    for length in (9.0, 15.99, 17.3, 21.5, 30.0, 37.9, 44.4, 49.2917):
        (run,) = in_feet((Run(length, 2.0),))
        found = best_order((run,), STOCK_M, by)
        assert found is not None
        every = [Order((boards,), (pieces,), {}) for boards, pieces in every_order(run.length, by.kerf)]
        assert score_of((run,), found, by) == min(score_of((run,), one, by) for one in every)


@settings(max_examples=15, deadline=None)
@given(st.floats(20, 32), st.floats(0.85, 0.99), st.sampled_from([4, 8, 16]))
def test_no_orders_of_both_edges_are_better(length: float, narrower: float, stakes: int) -> None:
    by = rules(stakes)
    runs = in_feet((Run(length, 2.0), Run(length * narrower, 2.0)))
    found = best_order(runs, STOCK_M, by)
    assert found is not None
    pairs = product(*(every_order(run.length, by.kerf) for run in runs))
    scores = (
        score_of(runs, Order((one[0], other[0]), (one[1], other[1]), {}), by)
        for one, other in pairs
        if len(one[0]) + len(other[0]) <= 8
    )
    mine = score_of(runs, found, by)
    assert mine == min(scores)
    assert tuple(found.broken[rule] for rule in (SHORT, QUARTER, OPPOSITE, STAKE)) == mine[:4]


def test_a_walks_boards_are_as_many_feet_as_without_an_order() -> None:
    """53' 3-3/4" takes 54 ft, 49' 3-1/2" takes 50 ft, in four boards each (worked by hand); now in an order that keeps
    every splice a foot off the nine stakes and 2 ft off those across."""
    found = best_order(WALK, STOCK_M, rules(8))
    assert found is not None
    assert [round(sum(run) / FEET) for run in found.boards] == [54, 50]
    assert [len(run) for run in found.boards] == [4, 4]
    assert set(found.broken.values()) == {0} and set(found.broken) == set(RULES)
    for run, pieces in zip(WALK, found.pieces, strict=True):
        assert sum(pieces) == pytest.approx(run.length)
        assert broken(run, pieces, rules(8)) == (0, 0, 0)
    assert opposite(WALK, found.pieces, rules(8)) == 0


def test_the_rule_that_gives_way_is_told_and_the_worse_ones_stand() -> None:
    """Stakes every foot and a half leave no room: splices stand at stakes, never at a quarter point."""
    found = best_order(WALK, STOCK_M, rules(32))
    assert found is not None and found.broken == {SHORT: 0, QUARTER: 0, OPPOSITE: 0, STAKE: 6}


def test_a_cut_takes_its_kerf() -> None:
    by = rules(4)
    for short, boards in ((0.0, 12.0), (KERF / 2, 14.0), (KERF, 12.0)):
        (run,) = in_feet((Run(12.0 - short, 2.0),))
        found = best_order((run,), (12 * FEET, 14 * FEET), by)
        assert found is not None and found.boards == ((boards * FEET,),)


@pytest.mark.parametrize("stock", [STOCK, (6.5, 7.3, 8.0, 9.1, 10.0, 11.7, 12.0, 13.3, 14.0, 15.1, 16.0, 17.7)])
@pytest.mark.parametrize("length", [304.0, 3000.0])
def test_long_edges_are_laid_too(length: float, stock: tuple[float, ...]) -> None:
    """Each as well as it goes, the second against the first: no short piece, none at a quarter point or opposite."""
    by, runs = rules(16), in_feet((Run(length, 2.0), Run(length - 24, 2.0)))
    begun = perf_counter()
    found = best_order(runs, tuple(board * FEET for board in stock), by)
    took = perf_counter() - begun
    assert found is not None
    for run, pieces in zip(runs, found.pieces, strict=True):
        assert sum(pieces) == pytest.approx(run.length)
    assert found.broken[OPPOSITE] == opposite(runs, found.pieces, by)
    if length == 304:
        assert (found.broken[SHORT], found.broken[QUARTER], found.broken[OPPOSITE]) == (0, 0, 0)
    assert took < 5  # bounded, on however busy a machine


def test_boards_too_short_to_tell_places_apart() -> None:
    assert best_order((Run(1000.0, 0.0),), (2.0,), rules(4)) is None


def test_a_board_longer_by_less_than_a_kerf_is_trimmed() -> None:
    """15' 11-15/16" of 8-ft boards alone: there is no shorter one to end with."""
    order = best_order((Run(16 - 1 / 192, 0.0),), (8.0,), Rules(6.0, KERF, 1.0, 2.0))
    assert order is not None and order.boards == ((8.0, 8.0),) and order.pieces[0][1] == pytest.approx(8 - 1 / 192)


def test_short_pieces_are_packed_with_their_kerfs() -> None:
    """Six of 2 ft need 12' 0-5/8" with five cuts: no 12-ft board holds them."""
    assert packed([2.0] * 6, STOCK, KERF, []) == [14.0]
    assert packed([2.0] * 6, STOCK, 0.0, []) == [12.0]
    assert packed([5.0, 5.0], STOCK, KERF, []) == [12.0]
    assert packed([2.0, 2.0], STOCK, KERF, [2.5, 2.0]) == []
    assert packed([2.0, 2.0, 2.0], STOCK, KERF, [4.1]) == [8.0]
    assert packed([17.0], STOCK, KERF, []) is None


@given(st.lists(st.floats(0.5, 16), min_size=1, max_size=12))
def test_what_is_packed_is_bought(pieces: list[float]) -> None:
    bought = packed(pieces, STOCK, KERF, [])
    assert bought is not None and set(bought) <= set(STOCK)
    assert sum(bought) >= sum(pieces) - 1e-6
    assert len(bought) <= len(pieces)


def test_a_form_that_is_all_overrun_is_refused() -> None:
    with pytest.raises(ValueError, match="part"):
        Run(4.0, 2.0)
