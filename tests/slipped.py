"""A crew that sets one step's marks elsewhere, and tells what it then reads there: for tests of what was got."""

from __future__ import annotations

import random
from collections.abc import Mapping
from typing import Any

from bowstring.analysis.taped import taped_in
from bowstring.construction import Move, Step
from bowstring.geometry.plane import Point, distance, left_of, unit_vector
from bowstring.job.job import read_job
from bowstring.layout.layout import Layout, lay_out

METHODS: dict[str, dict[str, Any]] = {
    "halving": {"method": "halving", "levels": 3},
    "halving, a flat arc": {"method": "halving", "levels": 2, "arc": {"chord": 30, "sagitta": 0.6}},
    "centre": {"method": "centre", "centre": "reachable", "spacing": 2},
    "centre, most of a circle": {
        "method": "centre", "centre": "reachable", "spacing": 2, "arc": {"radius": 4, "central_angle": 250},
    },
    "ordinates": {"method": "ordinates", "spacing": 2},
    "ordinates at round distances": {"method": "ordinates"},
    "ordinates after halving": {"method": "ordinates", "spacing": 1, "halve_first": 2},
    "ordinates from a parallel string": {"method": "ordinates", "parallel": 3},
    "ordinates from a string behind": {"method": "ordinates", "parallel": -1, "spacing": 2},
    "ordinates past a half circle": {
        "method": "ordinates", "parallel": 3, "spacing": 2, "arc": {"radius": 4, "central_angle": 250},
    },
    "tangent": {"method": "tangent", "spacing": 2},
    "tangent from A": {"method": "tangent", "tangent_from": "A", "arc": {"radius": 20, "central_angle": 60}},
    "tapes": {"method": "tapes", "spacing": 2},
    "produced": {"method": "produced", "spacing": 2},
    "angles": {"method": "angles", "spacing": 2},
    "coordinates": {"method": "coordinates", "spacing": 2},
}  # fmt: skip
PLAIN = {"unit": "m", "mark": "1 mm", "arc": {"chord": 12, "sagitta": 2}, "drawn_to": "face", "side": "left"}


def job_of(name: str, **more: Any) -> dict[str, Any]:
    return {**PLAIN, **METHODS[name], **more}


def laid_out(job: Mapping[str, Any]) -> Layout:
    return lay_out(read_job(job))


def slipped(layout: Layout, step: Step, rng: random.Random, most: float) -> dict[str, Point]:
    """Where all marks stand after a step whose own marks were set up to ``most`` metres elsewhere: each as its move can
    be wrong in what is taped."""
    at = dict(layout.recipe.at)
    for move in step.moves:
        lines = move.keeps_on(at)
        if lines:  # it stays on its line, its square or its sight: only the length was wrong
            origin, across = lines[0]
            way = Point(across.y, -across.x)
            here = way.dot(at[move.mark].minus(origin))
            on = Point(origin.x, origin.y).plus(way, here)
            at[move.mark] = on.plus(way, rng.uniform(*_within(move, most)))
        else:
            at[move.mark] = at[move.mark].plus(Point(rng.uniform(-most, most), rng.uniform(-most, most)))
    return at


def _within(move: Move, most: float) -> tuple[float, float]:
    """How far along its way a mark may slip: never past what it is taped from, where one reading means two places. A
    middle has no length."""
    low, high = -most, most
    if move.pulls:
        least = 0.4 * move.pulls[0]
        low, high = max(low, -least), min(high, least)
    return low, high


def told(step: Step, mark: str, at: Mapping[str, Point]) -> dict[str, Any]:
    """The row that tells every reading of a step, between its marks where they really stand."""
    pairs = dict.fromkeys((start, end) for start, end in taped_in(step))
    seen: dict[frozenset[str], tuple[str, str]] = {frozenset(pair): pair for pair in pairs}
    rows = [{"from": a, "to": b, "distance": distance(at[a], at[b])} for a, b in seen.values()]
    return {"stake": mark, "measures": rows}


def off_string(at: Mapping[str, Point], start: str, end: str, mark: str) -> tuple[float, float]:
    """How far along a string a mark is, and how far off it to the left."""
    way, there = unit_vector(at[start], at[end]), at[mark].minus(at[start])
    return way.dot(there), left_of(way).dot(there)
