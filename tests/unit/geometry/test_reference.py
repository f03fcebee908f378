"""The reference itself, held against figures that need no computer: whole-number triangles, exact angles,
slid givens."""

from __future__ import annotations

import pytest
from mpmath import mp, mpf

from reference import FIELDS, PAIRS, arc_of, kappa, solutions, through


def test_there_are_21_pairs() -> None:
    assert len(PAIRS) == 21


@pytest.mark.parametrize(("first", "second"), PAIRS)
def test_a_pair_finds_its_own_arc_again(first: str, second: str) -> None:
    for degrees in ("0.01", "60", "150", "250"):
        known = arc_of(7, degrees)
        if known.figures[first] is None or known.figures[second] is None:
            continue
        found = solutions(first, known.figures[first], second, known.figures[second])
        assert min(abs(one.half / known.half - 1) for one in found) < mpf(10) ** -40


def test_triangle_3_4_5() -> None:
    small, large = solutions("radius", 5, "chord", 6)
    assert mp.almosteq(small.figures["sagitta"], 1, mpf(10) ** -50)
    assert mp.almosteq(large.figures["sagitta"], 9, mpf(10) ** -50)


def test_no_arc_where_the_chord_is_longer_than_the_diameter() -> None:
    assert solutions("radius", 5, "chord", mpf("10.0000001")) == []
    assert len(solutions("radius", 5, "chord", 10)) == 1


def test_kappa_is_what_a_slid_given_shows() -> None:
    known = arc_of(100, 230)
    step = mpf(10) ** -20
    largest = mpf(0)
    for field in ("sagitta", "arc_length"):
        given = {f: known.figures[f] * (1 + step * (f == field)) for f in ("sagitta", "arc_length")}
        near = min(
            solutions("sagitta", given["sagitta"], "arc_length", given["arc_length"]),
            key=lambda one: abs(one.half - known.half),
        )
        largest = max([largest] + [abs(near.figures[f] / known.figures[f] - 1) / step for f in FIELDS[:5]])
    assert mp.almosteq(kappa("sagitta", "arc_length", known), largest, mpf(10) ** -12)


def test_three_points_of_a_semicircle_and_of_three_quarters() -> None:
    assert mp.almosteq(through((0, 0), (1, 1), (2, 0)).figures["central_angle"], 180, mpf(10) ** -50)
    large = through((0, 0), (1, 1 + mp.sqrt(2)), (2, 0))
    assert mp.almosteq(large.figures["central_angle"], 270, mpf(10) ** -50)
    assert mp.almosteq(large.figures["radius"], mp.sqrt(2), mpf(10) ** -50)
