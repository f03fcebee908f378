"""Jobs with a slab, for the paper and the build: the project's own walk, and shapes that strain a sheet."""

from __future__ import annotations

from typing import Any

from slab_jobs import DEEP
from slab_jobs import WALK as SLAB_WALK

WALK: dict[str, Any] = {**SLAB_WALK, "tolerance": "1/4 in"}
METRIC: dict[str, object] = {
    "bowstring": 1,
    "title": "Path",
    "unit": "m",
    "arc": {"radius": "12 m", "chord": "14 m"},
    "ends": {"A": "lamp", "B": "gate"},
    "side": "right",
    "drawn_to": "centre",
    "offset": "0",
    "tolerance": "5 mm",
    "width": "1.5 m",
    "edge": "centre",
    "slab": {"thickness": "100 mm"},
    "grade": {"slope": 2, "high": "A", "low": "outside"},
}
APRON: dict[str, object] = {
    "bowstring": 1,
    "title": "Apron return",
    "arc": {"radius": "15 ft", "central_angle": "85"},
    "side": "right",
    "drawn_to": "back",
    "method": "tapes",
    "width": "6 ft",
    "edge": "inside",
    "slab": {"thickness": "6 in"},
    "grade": {"from": "100.00 ft", "to": "99.70 ft", "low": "outside"},
}
WALL: dict[str, object] = {
    "bowstring": 1,
    "title": "Radius wall",
    "arc": {"radius": "18 ft", "central_angle": "60"},
    "side": "left",
    "drawn_to": "face",
    "levels": 3,
    "width": "8 in",
    "edge": "outside",
    "slab": {"poured": "wall", "thickness": "3 ft", "footing_width": "2 ft", "footing_depth": "10 in"},
    "grade": {"slope": 0, "low": "inside"},
}
BARE: dict[str, object] = {key: value for key, value in WALK.items() if key not in ("slab", "joints", "grade")}

JOBS: dict[str, dict[str, object]] = {
    "a walk": WALK,
    "fifteen stakes": {**WALK, "levels": 4},
    "a walk in meters, its radius to the center line": METRIC,
    "an apron outside its line": APRON,
    "a wall on a footing": WALL,
    "a width alone": BARE,
    "an apron, and measured depths": DEEP,
}
