"""Marks as a sentence names them."""

from __future__ import annotations

from bowstring.construction import HELPERS
from bowstring.words import say


def place_name(mark: str) -> str:
    """Return a mark's name in a sentence: those that only the construction has are told by their stake."""
    for part in HELPERS:
        if mark.startswith(part + " "):
            return say(f"place.{part}", stake=mark.removeprefix(part + " "))
    return mark
