"""A strip on stakes with loose ends, against scipy's solution of the whole strip at once."""

from __future__ import annotations

from functools import cache
from math import asin, cos, sin

import numpy as np
import pytest
from scipy.integrate import solve_bvp

from bowstring.forming.strip import GAPS, strip

POINTS = 41


@cache
def independent(gap: float, gaps: int = 6) -> tuple[float, list[float]]:
    """Solve every gap of the strip as one boundary value problem over 0 to 1: in each the curvature, its change, the
    heading, x, y, and its length as a parameter. Return the largest distance from the arc in the first gap, and the
    curvatures at the stakes, for a radius of 1."""
    turn = 2 * asin(gap / 2)
    stakes = [(sin(turn * place), 1 - cos(turn * place)) for place in range(gaps + 1)]

    def slopes(_t: np.ndarray, y: np.ndarray, lengths: np.ndarray) -> np.ndarray:
        rows = []
        for place, length in enumerate(lengths):
            bend, change, heading = y[5 * place : 5 * place + 3]
            rows += [change, -(bend**3) / 2, bend, np.cos(heading), np.sin(heading)]
            rows[-5:] = [length * row for row in rows[-5:]]
        return np.vstack(rows)

    def held(a: np.ndarray, b: np.ndarray, _lengths: np.ndarray) -> np.ndarray:
        off = [a[0]]  # no moment at the loose end
        for place in range(gaps):
            at = 5 * place
            off += [a[at + 3] - stakes[place][0], a[at + 4] - stakes[place][1]]
            off += [b[at + 3] - stakes[place + 1][0], b[at + 4] - stakes[place + 1][1]]
            if place + 1 < gaps:
                off += [b[at] - a[at + 5], b[at + 2] - a[at + 7]]
        off.append(b[5 * gaps - 3] - turn * gaps)  # far in, the heading at a stake is the arc's
        return np.array(off)

    t = np.linspace(0, 1, POINTS)
    guess = []
    for place in range(gaps):
        along = turn * (place + t)
        guess += [np.ones_like(t), np.zeros_like(t), along, np.sin(along), 1 - np.cos(along)]
    solved = solve_bvp(slopes, held, t, np.vstack(guess), p=np.full(gaps, turn), tol=1e-9, max_nodes=20000)
    assert solved.success, solved.message
    fine = solved.sol(np.linspace(0, 1, 2001))
    off = 1 - np.hypot(fine[3], fine[4] - 1)
    bends = [float(solved.y[5 * place, 0]) for place in range(gaps)]
    return float(off[np.argmax(np.abs(off))]), bends


@pytest.mark.parametrize("gap", [0.05, 0.2, 0.5])
def test_the_largest_miss_and_the_bends_are_scipys(gap: float) -> None:
    miss, bends = independent(gap)
    mine = strip(gap)
    assert mine.miss == pytest.approx(miss, rel=1e-2)
    for one, other in zip(mine.bends[:4], bends[:4], strict=True):
        assert one == pytest.approx(other, abs=2e-3)


def test_closely_set_it_misses_by_a_twentieth_of_the_square() -> None:
    assert strip(0.02).miss / 0.02**2 == pytest.approx(0.0491, abs=5e-5)


def test_a_loose_strip_is_tightest_at_its_second_stake() -> None:
    """As a beam over many equal spans is: three moments at each stake, 4 M2 + M3 = 6, M1 + 4 M2 + M3 = 6, ..."""
    rows = 4 * np.eye(GAPS) + np.eye(GAPS, k=1) + np.eye(GAPS, k=-1)
    rows[-1, -2:] = (2, 4)  # by symmetry
    moments = np.linalg.solve(rows, np.full(GAPS, 6.0))
    found = strip(0.01)
    assert list(found.bends[1:]) == pytest.approx(list(moments), abs=1e-3)
    assert found.tightest == found.bends[1] == pytest.approx(1.268, abs=1e-3)


def test_gaps_of_more_than_a_radius_are_refused() -> None:
    for gap in (0.0, -0.1, 1.01):
        with pytest.raises(ValueError, match="closer"):
            strip(gap)
