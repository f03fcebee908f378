"""Deflection distances of chords produced, as two books print them. Chord 100 ft in both.

- J. C. Trautwine, The Field Practice of Laying Out Circular Curves for Railroads, 1851, the footnote to the rule "To
  find the Tangential Distance corresponding to any given radius, and to equal chords of any given length", which
  follows Article XVI: radius 10 000 ft, deflection distance 1 ft.
- W. F. Shunk, A Practical Treatise on Railway Curves and Location, for Young Engineers, H. C. Baird & Company, 1890,
  page 53, "To find the deflexion distance with chord of 100 feet and any radius", the example: 5° curve, 8.72 ft.

The tolerance is half a unit of the last printed digit.
"""

from __future__ import annotations

from math import asin, degrees, radians, sin

import pytest

from helping import feet
from printed import assert_printed, laid, taped

FOOT = 0.3048


def test_deflection_distances() -> None:
    """Trautwine, 1851, the footnote after Article XVI: 1 ft. Shunk, 1890, page 53, the example: 8.72 ft."""
    angle = feet({"radius": 10000, "chord": 100})["central_angle"]
    assert abs(2 * feet({"radius": 10000, "central_angle": 2 * angle})["sagitta"] - 1) < 1e-9
    five = feet({"chord": 100, "central_angle": 5})
    assert_printed(2 * feet({"radius": five["radius"], "central_angle": 10})["sagitta"], "8.72")


@pytest.mark.parametrize(
    ("radius", "angle", "printed"),
    [
        (10_000.0, None, "1"),  # Trautwine, 1851, the footnote after Article XVI
        (50 / sin(radians(2.5)), 5.0, "8.72"),  # Shunk, 1890, page 53, the example
    ],
    ids=["Trautwine", "Shunk"],
)
def test_deflection_distances_as_they_are_taped(radius: float, angle: float | None, printed: str) -> None:
    turned = angle or degrees(2 * asin(50 / radius))
    produced = laid("ft", {"radius": radius, "central_angle": 8 * turned}, "produced", levels=3)
    for number in range(2, 8):
        deflection = taped(produced, f"ahead K{number}", f"K{number}") / FOOT
        assert_printed(deflection, printed)
        # By the similar triangles of both books: chord squared over radius.
        assert deflection == pytest.approx(100**2 / radius, rel=1e-9)
