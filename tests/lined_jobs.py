"""Walks of several pieces, figures of our own: by a creek, in metres, with kinks, and the walk of one arc as a line."""

from __future__ import annotations

from typing import Any

from slab_jobs import WALK

CREEK: dict[str, Any] = {
    "bowstring": 1, "title": "Creek walk", "width": "6 ft", "edge": "centre", "drawn_to": "centre",
    "line": [{"straight": "20 ft"}, {"arc": {"radius": "31 ft", "central_angle": "70"}, "turn": "left"},
             {"arc": {"radius": "24 ft", "central_angle": "40"}, "turn": "right"}, {"straight": "8 ft 6 in"}],
    "slab": {"thickness": "4 in"}, "grade": {"slope": 2, "high": "B", "low": "left"},
}  # fmt: skip
KINKED: dict[str, Any] = {
    **CREEK,
    "line": [{"straight": "20 ft"}, {"arc": {"radius": "36 ft", "central_angle": "70"}, "turn": "left"},
             {"straight": "12 ft", "kink": "20 right"},
             {"arc": {"radius": "29 ft", "central_angle": "70"}, "turn": "right", "kink": "8 left"}],
}  # fmt: skip
METRIC_LINE: dict[str, Any] = {
    **CREEK, "unit": "m", "width": 1.5, "slab": {"thickness": "100 mm"},
    "line": [{"straight": 6}, {"arc": {"radius": 12, "central_angle": "60"}, "turn": "right"}, {"straight": 3}],
}  # fmt: skip
ONE_ARC: dict[str, Any] = {
    **{key: value for key, value in WALK.items() if key not in ("arc", "side", "edge", "grade")},
    "line": [{"arc": WALK["arc"], "turn": "right"}], "edge": "left",
    "grade": {"slope": 2, "high": "B", "low": "right"},
}  # fmt: skip
"""The walk of ``slab_jobs``: its curve is on the left of A-B, so its line turns right and its left edge is outside."""
FIVE: dict[str, Any] = {
    "bowstring": 1, "width": "5 ft", "drawn_to": "face", "edge": "left",
    "line": [{"straight": "18 ft"}, {"arc": {"radius": "42 ft", "central_angle": "32"}, "turn": "left"},
             {"straight": "11 ft"}, {"arc": {"radius": "52 ft", "central_angle": "36"}, "turn": "right"},
             {"straight": "14 ft"}],
    "slab": {"thickness": "4 in", "base": "4 in", "apron": {"from": "2 ft", "to": "12 ft", "thickness": "6 in"}},
    "grade": {"slope": 2, "high": "A", "low": "right"},
}  # fmt: skip
"""Two arcs between three straights, drawn to its face, an apron on the first straight."""
