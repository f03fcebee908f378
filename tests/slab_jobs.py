"""A walk whose slab is said in a few words, in all of them, not equally deep, and in metres; figures of our own."""

from __future__ import annotations

from typing import Any

WALK: dict[str, Any] = {
    "bowstring": 1, "title": "Garden walk", "arc": {"radius": "62 ft", "chord": "48 ft"},
    "ends": {"A": "lamp post", "B": "gate pier"}, "side": "left", "drawn_to": "face", "levels": 3, "width": "5 ft",
    "edge": "outside", "slab": {"thickness": "4 in", "waste": 8}, "joints": {"every": "5 ft"},
    "grade": {"slope": 2, "high": "B", "low": "inside"},
}  # fmt: skip
ALL: dict[str, Any] = {
    **WALK,
    "edge": "left",
    "slab": {**WALK["slab"], "poured": "slab", "end_width": "4 ft", "base": "0 in", "overdig": "8 in",
             "step": 0.25, "truck": 10},
    "board": {"kind": "1x4", "thickness": "3/4 in", "height": "3-1/2 in", "level": "clear", "overrun": "0",
              "lengths": ["8'", "10'", "12'"], "gap": "3 ft"},
    "joints": {"every": "5 ft", "panels": 9},
    "grade": {"from": "-0.5 ft", "to": "0.4 ft", "slope": 2, "high": "B", "cross": 1.5, "low": "inside",
              "crown": "1 in", "limit": 5, "cross_limit": 2, "stops": True, "instrument": "4 ft 9 in",
              "ground": [{"stake": "A", "edge": "outside", "level": "0.4 ft"},
                         {"stake": "Q1", "edge": "inside", "level": "-1 ft 3 in"}]},
}  # fmt: skip
DEEP: dict[str, Any] = {
    **WALK,
    "slab": {**WALK["slab"], "apron": {"from": 12, "to": "22 ft", "thickness": "6 in"},
             "depths": [{"at": 0, "depth": "4-1/2 in"}, {"at": "17' 6\"", "depth": "6-1/4 in"},
                        {"at": 40.5, "depth": "3-1/2 in"}]},
}  # fmt: skip
METRIC: dict[str, Any] = {
    "unit": "m", "arc": {"radius": 19, "chord": 14.6}, "drawn_to": "centre", "width": 1.5, "edge": "centre",
    "slab": {"thickness": "100 mm", "base": "150 mm"}, "board": {"lengths": [2.4, "3 m"]}, "joints": {"panels": 10},
    "grade": {"from": 412.35, "to": 412.9, "crown": "20 mm", "stops": False},
}  # fmt: skip
