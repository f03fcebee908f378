"""Rail curves by a short string: figures whose source can't be named in full."""

from __future__ import annotations

from helping import feet, solve
from printed import assert_printed


def test_string_lining_ordinates() -> None:
    """Computed: the middle ordinate of a 62-ft chord in inches on curves of 1°, 5°, 10°, chord definition, at 50
    digits. The string is that of US Army TM 5-628; the one-inch-a-degree rule itself is from memory."""
    for degree, printed in ((1, "1.0064"), (5, "5.0311"), (10, "10.0581")):
        radius = feet({"chord": 100, "central_angle": degree})["radius"]
        assert_printed(12 * feet({"radius": radius, "chord": 62})["sagitta"], printed)


def test_rail_curve_card() -> None:
    """Printed on a museum's card for measuring a rail curve's radius, source not named fully: recomputed at 50 digits.
    20-ft string, offset 2 1/8 in: radius 4.28 chains of 66 ft."""
    radius = solve({"chord": "20'", "sagitta": "2 1/8 in"}, "ft-in")["arc"]["radius"]
    assert_printed(radius / 0.3048 / 66, "4.28")
