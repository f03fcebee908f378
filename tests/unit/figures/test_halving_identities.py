"""Halving and quartering: what the rule costs exactly. Computed identities, and figures computed at 50 digits."""

from __future__ import annotations

import itertools
import math

import pytest

from helping import solve

INCH = 0.0254


# Computed identity, at 50 digits: sagitta/chord and how far a quarter of it misses the exact second sagitta, in per
# cent.
SHORT = [
    (20, -0.248),
    (10, -0.971),
    (8, -1.493),
    (6, -2.566),
    (5, -3.576),
    (4, -5.279),
    (3, -8.397),
    (2, -14.645),
]


@pytest.mark.parametrize(("part", "percent"), SHORT)
def test_quartering_is_always_short(part: int, percent: float) -> None:
    rows = solve({"chord": part * 1.0, "sagitta": 1}, levels=2)["halving"]
    assert abs(100 * (rows[1]["rule_sagitta"] / rows[1]["sagitta"] - 1) - percent) <= 0.0005


@pytest.mark.parametrize("degrees", [1, 45, 120, 250, 330])
def test_exact_ratio_of_one_sagitta_to_the_one_before(degrees: float) -> None:
    """Computed identity: 1/(4 cos²(I/8)), I the angle of the larger chord's arc."""
    rows = solve({"radius": 30, "central_angle": degrees}, levels=5)["halving"]
    for k, (one, two) in enumerate(itertools.pairwise(rows)):
        ratio = 1 / (4 * math.cos(math.radians(degrees / 2**k) / 8) ** 2)
        assert two["sagitta"] / one["sagitta"] == pytest.approx(ratio, rel=1e-12)


@pytest.mark.parametrize("degrees", [1, 45, 120, 250, 330])
def test_next_sagitta_without_radius_or_angle(degrees: float) -> None:
    """Computed identity, true of every arc: a half the chord, s its sagitta, h = sqrt(a² + s²): next = h (h
    - a)/(2 s)."""
    rows = solve({"radius": 30, "central_angle": degrees}, levels=5)["halving"]
    for one, two in itertools.pairwise(rows):
        if one["level"] == 1 and degrees > 180:
            continue  # a is the half chord with its sign there: below
        a, s = one["chord"] / 2, one["sagitta"]
        h = math.hypot(a, s)
        assert two["chord"] == pytest.approx(h, rel=1e-12)
        # the same, without the difference
        assert two["sagitta"] == pytest.approx(s * h / (2 * (h + a)), rel=1e-11)


@pytest.mark.parametrize("levels", [5, 6, 7])
def test_worst_stake_is_beside_the_quarter(levels: int) -> None:
    """Computed: staked out to five levels or more the worst stake is not at the quarter but beside it, 3.594 in there
    for a chord of 168 ft and a sagitta of 33."""
    answer = solve({"chord": "168 ft", "sagitta": "33 ft"}, "ft-in", levels=levels)
    names = [stake["name"] for stake in answer["stakes"]]
    quarter = 2**levels // 4
    assert answer["rule"]["at"] != names[quarter]
    assert abs(names.index(answer["rule"]["at"]) - quarter) <= 2 ** (levels - 4)
    if levels == 5:
        assert abs(answer["rule"]["worst_miss"] / INCH + 3.594) <= 0.0005


def test_rule_misses_by_about_m_cubed_over_4_c_squared() -> None:
    """Computed: for flat arcs the quarter rule misses by about M³/(4 C²)."""
    for chord, sagitta in ((100.0, 2.0), (50.0, 2.5)):
        miss = solve({"chord": chord, "sagitta": sagitta}, levels=2)["rule"]["worst_miss"]
        assert miss == pytest.approx(-(sagitta**3) / (4 * chord**2), rel=0.03)
