"""One offset from the tangent. Printed as a civil-engineering licence board's simple-curve problem 01, source not named
fully: recomputed at 50 digits."""

from __future__ import annotations

from math import asin, degrees, sin

import pytest

from helping import metres
from printed import assert_printed, laid, taped


def test_offset_from_the_tangent() -> None:
    """R 198.17 m, arc 36.58 m: angle 10.58°, offset 3.37 m."""
    one = metres({"radius": "198.17 m", "arc_length": "36.58 m"})
    assert abs(one["central_angle"] - 10.58) <= 0.005
    offset = metres({"radius": "198.17 m", "arc_length": "73.16 m"})["sagitta"]  # of twice the arc
    assert abs(offset - 3.37) <= 0.005
    assert abs(offset - 3.3666) <= 0.00005  # exact, recomputed; the short rule s²/2R gives 3.38
    assert abs(36.58**2 / (2 * 198.17) - offset) > 0.005


def test_offset_from_the_tangent_as_it_is_taped() -> None:
    """R 198.17 m, arc 36.58 m from the tangent point: angle 10.58°, offset 3.37 m (the short rule s²/2R gives 3.38)."""
    angle = 36.58 / 198.17
    assert_printed(degrees(angle), "10.58")
    over = degrees(asin(2 * sin(angle)))
    answer = laid("m", {"radius": 198.17, "central_angle": over}, "tangent", tangent_from="A", levels=1)
    assert answer["stakes"][1]["along"] == pytest.approx(36.58, rel=1e-9)
    offset = taped(answer, "tan K1", "K1")
    assert_printed(offset, "3.37")
    assert_printed(36.58**2 / (2 * 198.17), "3.38")
    assert offset < 3.375
