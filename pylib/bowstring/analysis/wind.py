"""How far a crosswind bows a string."""

from __future__ import annotations

AIR = 1.225
"""Kilograms per cubic metre at sea level, 15 degrees Celsius (ISO 2533, from memory)."""

DRAG = 1.17
"""Drag coefficient of a thin round line across the wind (from memory)."""

STRING_WIDTH = 0.0013
"""Metres: a mason's line."""

WIND_SPEED, WIND_SPEED_SHOWN = 4.4704, "10 mph (16 km/h)"
STRING_PULL, STRING_PULL_SHOWN = 66.7, "15 lb (67 N)"
"""Metres per second; newtons."""


def string_bow(length: float) -> float:
    """Return the bow in metres at the middle of a string ``length`` metres long in a light crosswind.

    w L^2 / (8 P) with w = Cd rho v^2 d / 2 the drag per length and P the pull: the parabola of an evenly loaded string.

    >>> round(string_bow(60.0) / string_bow(30.0), 6)
    4.0
    """
    drag = DRAG * AIR * WIND_SPEED**2 * STRING_WIDTH / 2
    return drag * length * length / (8 * STRING_PULL)
