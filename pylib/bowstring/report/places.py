"""Marks as a sentence names them."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from math import ceil

from bowstring.construction import HELPERS
from bowstring.geometry.plane import Point, distance
from bowstring.units.sizes import FOOT
from bowstring.words import say

SHORT = 1e-6
"""Of a foot or a metre: what is a whole one but for that is one."""


def place_name(mark: str) -> str:
    """Return a mark's name in a sentence: those that only the construction has are told by their stake."""
    for part in HELPERS:
        if mark.startswith(part + " "):
            return say(f"place.{part}", stake=mark.removeprefix(part + " "))
    return mark


def far_back(at: Mapping[str, Point], sets: Collection[str], feet: bool) -> str:
    """Return how far back on a straight the mark S stands, in whole feet or metres, from what the step of it finds
    first; empty for a step that sets no such mark."""
    if "S" not in sets:
        return ""
    first = next(iter(sets))
    whole = ceil(distance(at["S"], at[first]) / (FOOT if feet else 1.0) - SHORT)
    return f"{whole} ft" if feet else f"{whole} m"
