"""What moves work on: where marks stand, and the numbers that a crew works with."""

from __future__ import annotations

from collections.abc import Callable

from bowstring.geometry.plane import Point

Marks = dict[str, Point]
Number = Callable[[float], float]
"""Turns an exact length in metres into the number that the crew works with."""

HELPERS = ("mid", "foot", "par", "tan", "ahead")
"""What stands before a stake's name in the name of a mark that only the construction has: ``foot M``."""


def exact(length: float) -> float:
    """The number of somebody whose tape has every mark."""
    return length
