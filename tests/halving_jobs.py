"""Whole layouts that several tests look at: the job, its answer (asked once), and the exact arc worked out
apart from it."""

from __future__ import annotations

import json
from functools import cache
from typing import Any

from mpmath import mpf

import bowstring
from helping import SAID
from reference import arc_of, solutions

_JOBS: dict[str, dict[str, Any]] = {
    "flat": {"unit": "m", "mark": "0.001 m", "arc": {"chord": 100, "sagitta": 0.4}, "levels": 4},
    "broad": {
        "unit": "ft-in",
        "arc": {"chord": "168'", "sagitta": "33'"},
        "levels": 5,
        "tolerance": "1/4 in",
    },
    "semicircle": {"unit": "ft", "arc": {"radius": 20, "chord": 40}, "levels": 4, "tolerance": 0.02},
    "beyond": {"unit": "m", "arc": {"radius": 8, "central_angle": 250}, "levels": 5, "tolerance": "10 mm"},
    "nine-tenths": {
        "unit": "mm",
        "mark": 1,
        "arc": {"radius": 6000, "central_angle": 324},
        "levels": 6,
        "tolerance": 5,
    },
    "to-centre": {
        "unit": "ft-in",
        "arc": {"chord": "40'", "sagitta": "6' 3\""},
        "levels": 3,
        "offset": "1-1/2 in",
        "toward": "centre",
        "tolerance": "1/8 in",
    },
    "outside": {
        "unit": "m",
        "arc": {"radius": 12, "central_angle": 200},
        "levels": 4,
        "offset": "1.2 m",
        "toward": "outside",
        "tolerance": "0.02 m",
    },
    "right-hand": {
        "unit": "m",
        "side": "right",
        "arc": {"chord": 18, "sagitta": 2.5},
        "levels": 3,
        "tolerance": "0.01 m",
    },
    "one-level": {"unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 1, "tolerance": "0.01 m"},
}
JOBS = {name: {**SAID, **job} for name, job in _JOBS.items()}


@cache
def answered(name: str) -> str:
    return json.dumps(bowstring.answer({"bowstring": 1, **JOBS[name]}), allow_nan=False)


def answer(name: str) -> dict[str, Any]:
    loaded: dict[str, Any] = json.loads(answered(name))
    return loaded


def staked_arc(name: str) -> tuple[Any, Any]:
    """The exact radius (m) and half angle (rad) of the arc that the stakes stand on, from the job's own
    figures."""
    shapes = {
        "flat": (solutions("chord", 100, "sagitta", mpf("0.4"))[0], 1, 0),
        "broad": (solutions("chord", 168, "sagitta", 33)[0], "0.3048", 0),
        "semicircle": (arc_of(20, 180), "0.3048", 0),
        "beyond": (arc_of(8, 250), 1, 0),
        "nine-tenths": (arc_of(6, 324), 1, 0),
        "to-centre": (solutions("chord", 40, "sagitta", mpf("6.25"))[0], "0.3048", "-0.0381"),
        "outside": (arc_of(12, 200), 1, "1.2"),
    }
    small = solutions("chord", 18, "sagitta", mpf("2.5"))[0], 1, 0
    found, scale, offset = shapes.get(name, small)
    return found.figures["radius"] * mpf(scale) + mpf(offset), found.half
