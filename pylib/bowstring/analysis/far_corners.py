"""Where a pad's far corners stand by the lengths that prove them: three readings, and which corner explains them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import hypot, sqrt

from bowstring.forming.pad import FAR_PAIRS

_OF_B, _OF_A, _ACROSS = (f"{start}-{end}" for start, end in FAR_PAIRS)
"""The diagonal that B-2 is on, the one that A-2 is on, and the length between both."""


@dataclass(frozen=True)
class Stands:
    """A far corner that isn't where it belongs.

    Attributes:
        corner: its name; other: the other far corner's.
        toward: how far toward the other one it stands, metres; back: how far too far back. 0 where that is less than
            readings within their limits may make it.
    """

    corner: str
    other: str
    toward: float
    back: float


@dataclass(frozen=True)
class Found:
    """What the three readings say: ``corners`` that stand elsewhere; none where no such place explains them, and then
    ``across``: the length between the corners alone is out."""

    corners: tuple[Stands, ...]
    across: bool = False


def far_corners(chord: float, sides: float, over: Mapping[str, float], limits: Mapping[str, float]) -> Found | None:
    """Return what readings of all three lengths say, ``None`` where all of them are in.

    ``chord``, ``sides``: metres; ``over``, ``limits``: of each length by its key, how far over it was read, and how far
    that may be. One diagonal out is its own far corner's doing: that one stands where the circles about the near corner
    across and about the other far corner cross. Both out, each corner stands on its own side's circle; then what was
    read between them has to be what that makes.

    >>> keys = ("A-B-2", "B-A-2", "A-2-B-2")
    >>> wide = hypot(6.0, 8.0 + 0.1) - 10.0  # A-2 stands 0.1 m away from B-2
    >>> far_corners(8.0, 6.0, dict(zip(keys, (0.0, wide, 0.1))), dict.fromkeys(keys, 0.004)).corners[0].toward
    -0.1
    """
    out = {key for key in over if abs(over[key]) > limits[key] * (1 + 1e-9)}
    if not out:
        return None
    diagonal = hypot(chord, sides)
    ways = {"A-2": (_OF_A, "B-2"), "B-2": (_OF_B, "A-2")}
    if len(out & {_OF_A, _OF_B}) == 1:
        corner = next(name for name, (key, _other) in ways.items() if key in out)
        key, other = ways[corner]
        place = _crossed(chord, sides, diagonal + over[key], chord + over[_ACROSS])
        if place is None:
            return Found(())
        # By the circles' own slopes: what the two limits make of its place.
        least = (limits[_ACROSS], (diagonal * limits[key] + chord * limits[_ACROSS]) / sides)
        return Found((_stands(corner, other, place, least),))
    if not out & {_OF_A, _OF_B}:
        return Found((), across=True)
    found = []
    for corner, (key, other) in ways.items():
        place = _leaning(chord, sides, diagonal + over[key])
        if place is None:
            return Found(())
        found.append(_stands(corner, other, place, (diagonal * limits[key] / chord, sides)))
    apart = chord - sum(one.toward for one in found)
    if abs(chord + over[_ACROSS] - apart) > sum(limits.values()):
        return Found(())
    return Found(tuple(found))


def _stands(corner: str, other: str, place: tuple[float, float], least: tuple[float, float]) -> Stands:
    """``place``: toward the other one, and back; what is less than ``least`` is nothing."""
    toward, back = (round(size, 6) if abs(size) > most else 0.0 for size, most in zip(place, least, strict=True))
    return Stands(corner, other, toward, back)


def _crossed(chord: float, sides: float, diagonal: float, across: float) -> tuple[float, float] | None:
    """Where the circles about the near corner across and about the other far corner cross: toward that, and back."""
    up = (diagonal**2 - across**2 - sides**2) / (2 * sides)
    square = across**2 - up**2
    return None if square < 0 else (chord - sqrt(square), up)


def _leaning(chord: float, sides: float, diagonal: float) -> tuple[float, float] | None:
    """Where the circles about a far corner's own near one, as long as its side, and about the one across cross."""
    toward = (sides**2 + chord**2 - diagonal**2) / (2 * chord)
    return None if abs(toward) >= sides else (toward, sqrt((sides - toward) * (sides + toward)) - sides)
