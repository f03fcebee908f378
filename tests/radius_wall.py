"""A wall of our own: 8 in thick and 3 ft 6 in high on a footing, its outer face on R 28 ft, its top level."""

from __future__ import annotations

from typing import Any

from helping import SAID

WALL: dict[str, Any] = {
    **SAID,
    "bowstring": 1,
    "arc": {"radius": "28 ft", "chord": "32 ft"},
    "width": "8 in",
    "edge": "outside",
    "slab": {"poured": "wall", "thickness": "3 ft 6 in", "footing_width": "24 in", "footing_depth": "10 in"},
    "joints": {"every": "10 ft"},
    "grade": {"slope": 0, "cross": 0},
    "tolerance": "1/4 in",
}
