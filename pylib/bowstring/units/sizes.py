"""Sizes in metres that more than one layer needs, as floats; ``lengths`` reads with its own exact fractions."""

from __future__ import annotations

FOOT = 0.3048
"""The international foot, exactly (NIST and NOAA notices, 84 FR 55562 and 85 FR 62698)."""

INCH = 0.0254
"""A twelfth of it."""

TEN_FEET = 10 * FOOT
FOUR_FEET = 4 * FOOT
TWO_FEET = 2 * FOOT
