"""The series for a loose end against the strip itself, and its forces against a beam over many spans."""

from __future__ import annotations

import numpy as np
import pytest

from bowstring.forming.boards import POUND_FORCE, Board
from bowstring.forming.loose_end import LooseEnd
from bowstring.forming.strip import strip

FOOT, INCH = 0.3048, 0.0254
SPANS = 16


@pytest.mark.parametrize("gap", [0.015, 0.05, 0.25, 0.5, 0.85, 1.0])
def test_the_series_are_the_strips(gap: float) -> None:
    end, whole = LooseEnd(1.0, gap), strip(gap)
    assert end.miss == pytest.approx(whole.miss, rel=1e-3)
    assert end.tightest == pytest.approx(whole.tightest, rel=1e-3)
    assert end.pulled(1.0) * gap == pytest.approx(2 * whole.bends[1] - whole.bends[2], rel=1e-3)


def test_the_last_bay_of_three_feet_at_57_feet_is_flat_by_a_tenth_of_an_inch() -> None:
    """0.093 in (worked by hand)."""
    assert LooseEnd(57 * FOOT, 3 * FOOT).miss / INCH == pytest.approx(0.093, abs=0.0005)


def test_what_the_end_stakes_take_is_a_beams_reactions() -> None:
    """Three moments, 16 equal spans, each support set so that the beam lies on an arc; reactions from the moments.
    9 lb for a 1x4 and 69 lb for a 2x4 at an end stake, 3 ft apart, R 57 ft (worked by hand)."""
    rows = 4 * np.eye(SPANS - 1) + np.eye(SPANS - 1, k=1) + np.eye(SPANS - 1, k=-1)
    moments = np.linalg.solve(rows, np.full(SPANS - 1, 6.0))
    end = LooseEnd(57 * FOOT, 3 * FOOT)
    for thickness, told in ((0.75, 9), (1.5, 69)):
        stiffness = Board("", thickness * INCH, 3.5 * INCH).stiffness
        over = stiffness / (end.radius * end.gap)
        assert end.held(stiffness) == pytest.approx(moments[0] * over, rel=1e-3)
        assert end.pulled(stiffness) == pytest.approx((2 * moments[0] - moments[1]) * over, rel=1e-3)
        assert end.held(stiffness) / POUND_FORCE == pytest.approx(told, abs=0.6)


def test_stakes_farther_apart_than_a_radius_are_refused() -> None:
    for gap in (0.0, 1.01):
        with pytest.raises(ValueError, match="closer"):
            LooseEnd(1.0, gap)
