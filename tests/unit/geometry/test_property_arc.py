"""Any arc, any pair of its figures: the package gives it back within the pair's condition number."""

from __future__ import annotations

import math

from hypothesis import assume, given
from hypothesis import strategies as st
from mpmath import mpf

from helping import misses, solve
from reference import DOUBLE_ROUNDING, NEED_UNDER_180, PAIRS, allowed, arc, kappa, solutions

TWO_ARCS = {("radius", "chord"), ("sagitta", "arc_length"), ("sagitta", "tangent_length")}
ANGLES = st.one_of(st.floats(0.005, 324), st.floats(-2.3, 2.5).map(lambda power: 10.0**power))
LEAST, MOST = 1e-5, 1e7  # metres: what somebody may lay out, and a good deal on either side


def lengths_of(givens: dict[str, float]) -> list[float]:
    return [value for field, value in givens.items() if field != "central_angle"]


RADII = st.floats(-1, 4).map(lambda power: 10.0**power)


@given(pair=st.sampled_from(PAIRS), degrees=ANGLES, radius=RADII)
def test_any_arc_comes_back_from_any_pair(pair: tuple[str, str], degrees: float, radius: float) -> None:
    if NEED_UNDER_180 & set(pair):
        degrees = degrees if degrees < 179.9 else degrees / 2
    assume(abs(degrees - 180) > 1e-6)  # the last bit of a given decides there between none and very long
    known = arc(mpf(radius), mpf(math.radians(degrees / 2)))
    givens = {field: float(known.figures[field]) for field in pair}
    assume(all(LEAST <= value <= MOST for value in lengths_of(givens)))
    found = solutions(pair[0], mpf(givens[pair[0]]), pair[1], mpf(givens[pair[1]]))
    assume(found)  # rounded givens may miss a touching pair by a hair
    if pair in TWO_ARCS:  # beside the turning point the bound of first order says nothing
        assume(all(kappa(*pair, one) ** 2 * DOUBLE_ROUNDING < 0.001 for one in found))
    for greater, want in ((False, found[0]), (True, found[-1])):
        got = solve(dict(givens), greater=greater)["arc"]
        assert not misses(got, want, allowed(*pair, want))
        for field in pair:
            assert abs(got[field] / givens[field] - 1) <= 1e-12


@given(pair=st.sampled_from(PAIRS), degrees=st.floats(1, 170), radius=RADII, factor=st.floats(0.01, 100))
def test_a_larger_drawing_is_the_same_arc_enlarged(
    pair: tuple[str, str], degrees: float, radius: float, factor: float
) -> None:
    known = arc(mpf(radius), mpf(math.radians(degrees / 2)))
    bound = 4 * float(allowed(*pair, known))
    assume(not (pair in TWO_ARCS and kappa(*pair, known) > 1e3))
    givens = {field: float(known.figures[field]) for field in pair}
    sizes = [v * f for v in lengths_of(givens) for f in (1, factor)]
    assume(all(LEAST <= size <= MOST for size in sizes))
    larger = {f: v if f == "central_angle" else v * factor for f, v in givens.items()}
    one, two = solve(givens)["arc"], solve(larger)["arc"]
    for field in one:
        scale = 1.0 if field == "central_angle" else factor
        assert abs(two[field] / (one[field] * scale) - 1) <= bound, field
