"""Lines of several pieces: a walk along a creek and others of many shapes; figures of our own."""

from __future__ import annotations

from typing import Any


def straight(length: str, **more: Any) -> dict[str, Any]:
    return {"straight": length, **more}


def arc(radius: str, angle: str, turn: str, **more: Any) -> dict[str, Any]:
    return {"arc": {"radius": radius, "central_angle": angle}, "turn": turn, **more}


CREEK: dict[str, Any] = {
    "bowstring": 1, "title": "Creek walk", "width": "6 ft", "edge": "centre", "drawn_to": "centre",
    "line": [straight("20 ft"), arc("31 ft", "70", "left"), arc("24 ft", "40", "right"), straight("8 ft 6 in")],
    "slab": {"thickness": "4 in"}, "grade": {"slope": 2, "high": "B", "low": "left"},
}  # fmt: skip
METRIC: dict[str, Any] = {
    **CREEK, "unit": "m", "width": "2 m", "slab": {"thickness": "100 mm"},
    "line": [arc("9 m", "80", "left"), straight("4 m"), arc("6 m", "100", "right"), straight("3 m"),
             arc("8 m", "90", "left"), straight("5 m"), arc("12 m", "60", "right"), straight("2.5 m"),
             arc("7 m", "70", "left")],
}  # fmt: skip
SHAPES: dict[str, dict[str, Any]] = {
    "creek": CREEK,
    "creek, apron": {**CREEK, "slab": {**CREEK["slab"], "apron": {"from": "40 ft", "to": "56 ft",
                                                                  "thickness": "6 in"}}},
    "second arc": {**CREEK, "at": 3},
    "kink": {**CREEK, "line": [*CREEK["line"][:3], straight("8 ft 6 in", kink="2 right")]},
    "kinks": {**CREEK, "line": [straight("20 ft"), arc("31 ft", "70", "left", kink="15 left"),
                                arc("24 ft", "40", "right", kink="30 right"), straight("8 ft")]},
    "left edge": {**CREEK, "drawn_to": "face", "edge": "left"},
    "nothing said": {key: value for key, value in CREEK.items() if key not in ("width", "edge", "slab", "grade")},
    "tall": {**CREEK, "line": [straight("10 ft"), arc("20 ft", "90", "right"), straight("60 ft"),
                               arc("30 ft", "20", "left")]},
    "serpentine": METRIC,
    "bulb": {**CREEK, "line": [straight("30 ft"), arc("20 ft", "50", "right"), arc("25 ft", "280", "left"),
                               arc("20 ft", "50", "right"), straight("30 ft")]},
    "one arc": {**CREEK, "line": [arc("31 ft", "70", "left")]},
    "long": {**CREEK, "width": "4 ft", "line": [straight("300 ft"), arc("100 ft", "40", "right"), straight("200 ft")]},
    "many": {**CREEK, "width": "4 ft", "line": [piece for number in range(12) for piece in
             (arc("12 ft", "60", "left" if number % 2 else "right"), straight("5 ft"))]},
}  # fmt: skip
KINK_OPEN: dict[str, Any] = {**CREEK, "line": [*CREEK["line"][:3], straight("8 ft 6 in", kink="2")]}
"""A kink whose hand nobody says."""
OVER_ITSELF: dict[str, Any] = {
    **CREEK, "width": "20 ft",
    "line": [straight("30 ft"), arc("20 ft", "80", "right"), arc("25 ft", "330", "left"), straight("30 ft")],
}  # fmt: skip
