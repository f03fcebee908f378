"""Where what changes along a tapered slab may turn."""

from __future__ import annotations

from itertools import pairwise
from math import sqrt

from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.steepest import turning

radii = st.floats(0.2, 40)
Ends = tuple[float, float]


@given(st.floats(-0.2, 0.2), st.floats(-0.3, 0.3), st.tuples(radii, radii), st.tuples(radii, radii), st.floats(0.1, 5))
def test_between_two_turns_it_only_grows_or_only_shrinks(
    rate: float, added: float, over: Ends, under: Ends, angle: float
) -> None:
    """At fifty places between each two: none is over or under the values at both."""

    def squared(ends: Ends) -> tuple[float, float, float]:
        more = ends[1] - ends[0]
        return (angle * ends[0]) ** 2 + more**2, 2 * angle**2 * ends[0] * more, (angle * more) ** 2

    def value(share: float) -> float:
        paces = (sum(part * share**power for power, part in enumerate(squared(ends))) for ends in (over, under))
        top, foot = paces
        return (rate * sqrt(top) + added) / sqrt(foot)

    shares = turning(rate, added, squared(over), squared(under))
    assert shares[0] == 0.0 and shares[-1] == 1.0 and list(shares) == sorted(shares)
    for start, end in pairwise(shares):
        inside = [value(start + (end - start) * number / 50) for number in range(51)]
        low, high = sorted((inside[0], inside[-1]))
        dust = 1e-9 * max(map(abs, inside))
        assert low - dust <= min(inside) and max(inside) <= high + dust
