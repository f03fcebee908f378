"""How sure it is that all stakes are within a miss at once: against draws of correlated normals for real layouts, and
exactly where the stakes have nothing or everything in common."""

from __future__ import annotations

import json
from functools import cache
from itertools import pairwise
from math import prod, sqrt
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq
from scipy.stats import multivariate_normal, norm

import bowstring
from bowstring.analysis.accuracy import Accuracy
from bowstring.analysis.spread import Spread
from bowstring.analysis.together import Together
from bowstring.job.job import read_job
from bowstring.layout.comparison import spread_of
from bowstring.layout.layout import lay_out
from bowstring.layout.limits import squares_here
from montecarlo import chance_all_within

DRAWS = 40_000
METHODS = ("centre", "halving", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
TYPICAL = {"read": 0.0015, "scale": 2e-4, "stake": 0.003, "line": 0.0015, "angle": 1 / 60}
ARCS: dict[str, dict[str, Any]] = {
    "ordinary": {"chord": 18, "sagitta": 3.4},
    "half circle": {"radius": 6, "central_angle": 180},
    "greater arc": {"chord": 8, "sagitta": 9},
}
ERRORS: dict[str, dict[str, float]] = {
    "typical": TYPICAL,
    "a poor tape": {**TYPICAL, "scale": 1e-3},
    "no driving": {**TYPICAL, "stake": 0.0005, "line": 0.0003},
}
LOOSE = [{"name": "A", "x": 0, "y": 0, "sigma": 0.006}]

NEAR = {3: 0.015, 4: 0.025, 5: 0.035}
"""How near the miss of all is, as a part of it, by levels (7, 15, 31 stakes): measured, the largest are 1.0, 1.7 and
2.4 % over the cases here and some hundred beside. A tree can't hold what two neighbours both have from a third."""


def laid(arc: dict[str, Any], method: str, levels: int, **keys: Any) -> tuple[Accuracy, Any] | None:
    """Return how true a layout is, and the covariance of its stakes' misses across; ``None`` where it doesn't exist."""
    return laid_once(
        json.dumps({"unit": "m", "arc": arc, "levels": levels, "method": method, "centre": "reachable", **keys})
    )


@cache
def laid_once(text: str) -> tuple[Accuracy, Any] | None:
    try:
        job = read_job(json.loads(text))
        layout = lay_out(job)
    except bowstring.BadJob:
        return None
    errors, accuracy = spread_of(job, layout.setting, layout.recipe, layout.stakes)
    spread = Spread(layout.recipe.at, errors, {mark.name: mark.sigma for mark in job.site.known},
                    squares_here(job, layout.setting, layout.recipe))  # fmt: skip
    spread.walk(layout.recipe.steps)
    rows = np.zeros((len(layout.stakes), len(spread.sources)))
    centre = complex(*layout.staked.centre)
    for row, stake in zip(rows, layout.stakes, strict=True):
        out = complex(*layout.recipe.at[stake.name]) - centre
        for source, (x, y) in spread.shifts[stake.name].items():
            row[source] = (out.real * x + out.imag * y) / abs(out)
    return accuracy, rows @ rows.T


# What stakes share hangs on the method and on which error rules: every arc with the usual errors, one with others.
DRAWN = [(arc, errors) for arc in ARCS for errors in ERRORS if errors == "typical" or arc == "ordinary"]


@pytest.mark.parametrize(("arc", "errors"), DRAWN)
@pytest.mark.parametrize("method", METHODS)
def test_the_miss_of_all_against_draws(method: str, arc: str, errors: str) -> None:
    """The draws' share within a little less than the miss of all is under 95 %, within a little more over it; the
    share itself is uncertain by root(0.95 x 0.05/N) = 0.11 %, four times that is allowed.

    Near the miss of all the share grows by 0.23 to 0.55 % for each per cent of it (measured on these cases), so besides
    what NEAR allows another 1.1 to 2.7 % are seen with a probability of 95 %.
    """
    found = 0
    for levels, near in NEAR.items():
        if levels == 4 and errors != "typical":
            continue
        laid_out = laid(ARCS[arc], method, levels, errors=ERRORS[errors])
        if laid_out is None:
            continue
        accuracy, covariance = laid_out
        miss = accuracy.all_95
        less, more = chance_all_within(covariance, [miss * (1 - near), miss * (1 + near)], DRAWS, seed=levels)
        luck = 4 * sqrt(0.95 * 0.05 / DRAWS)
        assert less <= 0.95 + luck and more >= 0.95 - luck, (levels, less, more)
        found += 1
    assert found >= 2 or (arc, method) in {
        (arc, method) for arc in ("greater arc",) for method in ("ordinates", "tangent", "angles")
    } | {("half circle", "angles")}  # fmt: skip


@pytest.mark.parametrize("arc", ARCS)
@pytest.mark.parametrize("method", METHODS)
def test_a_chance_against_draws(method: str, arc: str) -> None:
    """The chance at a miss, against the draws' share: within 0.035 up to fifteen stakes where it is even or better; a
    poor one of 30 % may be told as poor as 24 % (measured: 0.02 and 0.25), never as a good one."""
    for levels in (2, 3, 4):
        laid_out = laid(ARCS[arc], method, levels, errors=TYPICAL)
        if laid_out is None:
            continue
        accuracy, covariance = laid_out
        misses = [accuracy.all_95 * part for part in (0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.2)]
        for miss, drawn in zip(misses, chance_all_within(covariance, misses, DRAWS, seed=levels), strict=True):
            told = accuracy.together.chance(miss)
            luck = 4 * sqrt(max(drawn * (1 - drawn), 1e-4) / DRAWS)
            assert -(0.035 if drawn >= 0.5 else 0.06) - luck <= told - drawn <= 0.02 + luck, (levels, told, drawn)


def independent(sigmas: list[float]) -> Together:
    """Stakes each with one source of its own, each allowed to lean on all before it."""
    rows = [{number + 1: sigma} for number, sigma in enumerate(sigmas)]
    return Together(rows, [list(range(number)) for number in range(len(rows))])


@given(st.lists(st.floats(1e-4, 0.05), min_size=2, max_size=40), st.floats(0.3, 4))
def test_stakes_with_nothing_in_common_are_the_product(sigmas: list[float], times: float) -> None:
    """P = product of (2 Phi(m/sigma) - 1), exactly; and the miss that makes it 95 %, by a root search."""
    together = independent(sigmas)
    miss = times * max(sigmas)

    def chance(of: float) -> float:
        return float(prod(norm.cdf(of / sigma) - norm.cdf(-of / sigma) for sigma in sigmas))

    assert together.chance(miss) == pytest.approx(chance(miss), rel=1e-9, abs=1e-12)
    exact = brentq(lambda of: chance(of) - 0.95, 1e-9, 1)
    assert together.miss_at(0.95) == pytest.approx(exact, rel=1e-3)


@given(st.lists(st.floats(1e-4, 0.05), min_size=1, max_size=40), st.floats(0.6, 0.99))
def test_stakes_that_all_go_by_one_source_are_as_the_worst(sizes: list[float], chance: float) -> None:
    """All go together, so all are within when the worst is: 2 Phi(m/s) - 1."""
    together = Together([{0: size} for size in sizes], [list(range(number)) for number in range(len(sizes))])
    miss = max(sizes) * float(norm.ppf((1 + chance) / 2))
    assert together.chance(miss) == pytest.approx(chance, abs=1e-4)
    assert together.miss_at(chance) == pytest.approx(miss, rel=1e-3)


@given(st.floats(-0.99, 0.99), st.floats(0.2, 3), st.floats(0.3, 3))
def test_two_stakes_with_a_correlation_are_the_rectangle(correlation: float, ratio: float, times: float) -> None:
    """A chain of two is exact: the bivariate normal's chance over a square, by scipy. A third stake that nothing moves
    (and a fourth) keeps what they share from being most stakes' common factor."""
    one, other = {1: 1.0}, {1: ratio * correlation, 2: ratio * sqrt(1 - correlation**2)}
    together = Together([{}, {}, one, other], [[], [], [], [2]])
    covariance = [[1.0, ratio * correlation], [ratio * correlation, ratio * ratio]]
    normal = multivariate_normal([0, 0], covariance)
    corner = [times, times]
    rectangle = float(normal.cdf(corner, lower_limit=[-times, -times]))
    # Under a correlation of 0.2 the two are taken as independent, which moves the chance by less than 0.02.
    allowed = 2e-3 if abs(correlation) > 0.2 else 0.02
    assert together.chance(times) == pytest.approx(rectangle, abs=allowed)


@pytest.mark.parametrize("method", METHODS)
@pytest.mark.parametrize("arc", ARCS)
def test_all_within_is_never_less_than_the_worst_alone_and_grows_with_the_miss(arc: str, method: str) -> None:
    for levels, errors in ((1, "typical"), (2, "a poor tape"), (2, "no driving"), (4, "typical")):
        laid_out = laid(ARCS[arc], method, levels, errors=ERRORS[errors], known=LOOSE)
        if laid_out is None:
            continue
        accuracy, _covariance = laid_out
        assert accuracy.all_95 >= accuracy.miss_95
        chances = [accuracy.together.chance(accuracy.all_95 * number / 6) for number in range(1, 13)]
        assert all(second >= first for first, second in pairwise(chances))
        # At twice that miss the worst stake alone is at 3.92 deviations: 0.99991.
        assert 0 <= chances[0] < 0.5 and 0.9995 < chances[-1] <= 1


def test_many_stakes_that_the_tape_alone_moves() -> None:
    """A thousand stakes with one number in common: all within is the worst within."""
    job = {
        "bowstring": 1, "unit": "m", "arc": {"chord": 60, "sagitta": 12}, "levels": 10, "method": "tapes",
        "errors": {"read": 0, "stake": 0, "line": 0, "angle": 0, "scale": 1e-3},
    }  # fmt: skip
    accuracy: Any = bowstring.answering(job)["accuracy"]
    assert accuracy["all_95"] == pytest.approx(accuracy["miss_95"], rel=1e-3)


def test_nothing_can_go_wrong_without_errors() -> None:
    laid_out = laid(ARCS["ordinary"], "tapes", 3, errors=dict.fromkeys(TYPICAL, 0.0))
    assert laid_out is not None
    accuracy, _covariance = laid_out
    assert accuracy.all_95 == accuracy.miss_95 == 0
    assert accuracy.together.chance(1e-6) == 1
    job = {"bowstring": 1, "unit": "m", "arc": {"chord": 18, "sagitta": 3.4}, "tolerance": "5 mm", "levels": 2}
    answer: Any = bowstring.answering({**job, "errors": dict.fromkeys(TYPICAL, 0)})
    assert answer["accuracy"]["chance"] == 1
