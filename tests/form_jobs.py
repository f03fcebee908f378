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
HUBS: dict[str, Any] = {
    "bowstring": 1,
    "title": "Terrace wall",
    "arc": {"radius": "32 ft", "arc_length": "34 ft"},
    "ends": {"A": "nail in curb", "B": "corner pipe"},
    "side": "left",
    "drawn_to": "face",
    "driven": "hub",
    "offset": "3 ft",
    "toward": "outside",
    "method": "halving",
    "levels": 4,
    "width": "8 in",
    "edge": "inside",
    "tolerance": "1/4 in",
    "slab": {"poured": "wall", "thickness": "3 ft 6 in", "footing_width": "2 ft 6 in", "footing_depth": "12 in"},
    "joints": {"every": "10 ft"},
    "grade": {"from": "104.50 ft", "slope": 0, "cross": 0, "instrument": "109.27 ft"},
}
"""A wall from hubs 3 ft outside its inner face, its top at a level: 17 stakes, both ends among them."""

SLOPING: dict[str, object] = {"from": "104.50 ft", "to": "105.10 ft", "cross": 0, "instrument": "109.27 ft"}

WALLS: dict[str, dict[str, object]] = {
    "hubs and levels": HUBS,
    "hubs and no height": {**HUBS, "grade": {"slope": 0, "cross": 0}},
    "nine stakes": {**HUBS, "levels": 3},
    "between old walls": {**HUBS, "slab": {**HUBS["slab"], "at_A": "against", "at_B": "against"}},
    "a top that rises": {**HUBS, "grade": SLOPING},
    "stakes on the line": {key: one for key, one in HUBS.items() if key not in ("offset", "toward")},
    "meters": {
        **HUBS, "unit": "m", "arc": {"radius": "9.75 m", "arc_length": "10.4 m"}, "offset": "0.9 m", "width": "0.2 m",
        "tolerance": "6 mm", "joints": {"every": "3 m"},
        "slab": {"poured": "wall", "thickness": "1.1 m", "footing_width": "0.75 m", "footing_depth": "0.3 m"},
        "grade": {"from": 104.5, "slope": 0, "cross": 0, "instrument": 106},
    },
}  # fmt: skip
BARE: dict[str, object] = {key: value for key, value in WALK.items() if key not in ("slab", "joints", "grade")}

JOBS: dict[str, dict[str, object]] = {
    "a walk": WALK,
    "fifteen stakes": {**WALK, "levels": 4},
    "a walk in meters, its radius to the center line": METRIC,
    "an apron outside its line": APRON,
    "a wall on a footing": WALL,
    "a width alone": BARE,
    "an apron, and measured depths": DEEP,
    "between old walks": {**DEEP, "slab": {**DEEP["slab"], "at_A": "against", "at_B": "against"}},
    "on from an old walk": {**WALK, "levels": 4, "slab": {**WALK["slab"], "at_A": "against"}},
}

CROSSED: dict[str, Any] = {
    "bowstring": 1,
    "title": "Drive walk",
    "arc": {"radius": "41 ft 6 in", "chord": "36 ft"},
    "side": "left",
    "drawn_to": "face",
    "ends": {"A": "post", "B": "pier"},
    "tolerance": "1/4 in",
    "width": "4 ft 6 in",
    "edge": "inside",
    "slab": {
        "thickness": "4 in",
        "base": "4 in",
        "apron": {"from": "12 ft", "to": "24 ft 6 in", "thickness": "6 in"},
    },
    "board": {"kind": "2x4"},
    "grade": {"from": "101.35 ft", "to": "100.82 ft", "cross": 1.5, "low": "inside", "instrument": "105.60 ft"},
    "joints": {"every": "5 ft"},
}
"""A walk outside its line with an apron, its tops by a level."""
