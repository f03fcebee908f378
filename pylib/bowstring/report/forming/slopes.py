"""Slopes in percent."""

from __future__ import annotations

from math import floor

USUAL_LIMIT = 0.05
"""1:20, as the 2010 ADA Standards have it for the running slope of a walking surface, 403.3 (from memory)."""

USUAL_CROSS_LIMIT = 1 / 48
"""1:48, the same for the cross slope (quoted): exactly 1/4 in per foot."""

RAMP = 0.0833
"""1:12 of a ramp, 405.2 (quoted), rounded down to 0.01 %."""

_SAME = 1e-9
_FINEST = 6


def percent(slope: float, places: int = 2) -> str:
    """Return a slope's size in percent, halves up, without zeros at the end.

    >>> percent(0.02088), percent(0.05), percent(-0.015), percent(1 / 48)
    ('2.09%', '5%', '1.5%', '2.08%')
    """
    text = f"{floor(abs(slope) * 100 * 10**places + 0.5 + _SAME) / 10**places:.{places}f}"
    return f"{text.rstrip('0').rstrip('.')}%"


def beside(slope: float, limit: float) -> str:
    """Return a slope in percent, with as many digits more as it takes to tell it from its limit.

    >>> beside(0.050004, 0.05), beside(0.0511, 0.05)
    ('5.0004%', '5.11%')
    """
    places = 2
    while is_over(slope, limit) and percent(slope, places) == percent(limit, places) and places < _FINEST:
        places += 1
    return percent(slope, places)


def is_over(slope: float, limit: float) -> bool:
    """Tell whether a slope is over a limit, by more than a float's last bits."""
    return abs(slope) > limit * (1 + _SAME) + 1e-12


def down(slope: float) -> float:
    """Return a slope rounded down to 0.01 %.

    >>> down(0.0478991), down(0.05)
    (0.0478, 0.05)
    """
    return floor(slope * 1e4 + _SAME) / 1e4


def typed(slope: float) -> str:
    """Return a slope as it is typed in percent, to 0.01.

    >>> typed(0.0478)
    '4.78'
    """
    return percent(slope).removesuffix("%")
