"""Printed figures that are wrong."""

from __future__ import annotations

import math

from helping import feet, metres


def test_wrong_prints_are_not_reproduced() -> None:
    """Printed somewhere, sources not named fully: recomputed at 50 digits. A 19th-century table prints 822.0 for 6½°
    (right: 881.9, chord definition); a widely copied solution prints L 630.266 for R 420, I 71°39' (right: 525.222)."""
    assert abs(feet({"chord": 100, "central_angle": "6° 30'"})["radius"] - 881.9) <= 0.05
    assert abs(metres({"radius": 420, "central_angle": "71° 39'"})["arc_length"] - 525.222) <= 0.0005
    assert abs(math.radians(71.65) * 420 - 525.222) <= 0.0005
