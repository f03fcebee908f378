"""Blunders staked out again in the complex plane with the numbers of the job alone, for the tests of the package's own.

Nothing here uses the package's moves: a stake is a complex number, A at 0, B at the chord, the curve on +i. The arc's
own figures are worked out from the job's by textbook formulas.
"""

from __future__ import annotations

import cmath
import json
import math
from functools import cache
from itertools import pairwise
from typing import Any

import bowstring
from bowstring.job.job import read_job
from bowstring.layout.layout import lay_out
from bowstring.report.mistakes import report_mistakes
from helping import SAID

FOOT, INCH = 0.3048, 0.0254
Places = dict[str, complex]

METHODS = ("halving", "ordinates", "tapes", "centre")
FEET: dict[str, Any] = {**SAID, "arc": {"chord": "38'", "sagitta": "5'"}, "levels": 3, "tolerance": "1/4 in"}
METRES: dict[str, Any] = {**SAID, "unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 3}
TENTHS: dict[str, Any] = {
    **SAID,
    "unit": "ft",
    "arc": {"chord": 52.3, "sagitta": 9.7},
    "levels": 3,
    "tolerance": "0.02 ft",
}
JOBS: dict[str, dict[str, Any]] = {
    f"{system} {method} {side}": {**job, "method": method, "centre": "reachable", "side": side}
    for system, job in (("feet", FEET), ("metres", METRES), ("tenths", TENTHS))
    for method in METHODS
    for side in ("left", "right")
}


class Curve:
    """The job's arc by textbook formulas: R = (h² + s²)/2s, half angle 2 atan(s/h)."""

    def __init__(self, job: dict[str, Any]) -> None:
        if "unit" in job:
            size = FOOT if job["unit"] == "ft" else 1.0
            self.chord, self.rise = job["arc"]["chord"] * size, job["arc"]["sagitta"] * size
        else:
            self.chord, self.rise = (float(job["arc"][key].rstrip("'")) * FOOT for key in ("chord", "sagitta"))
        half = self.chord / 2
        self.radius = (half**2 + self.rise**2) / (2 * self.rise)
        self.half_angle = 2 * math.atan2(self.rise, half)
        self.centre = complex(half, self.rise - self.radius)

    def at(self, fraction: float) -> complex:
        return self.centre + 1j * self.radius * cmath.exp(1j * self.half_angle * (1 - 2 * fraction))

    def miss(self, place: complex) -> float:
        return abs(place - self.centre) - self.radius


@cache
def kept(name: str) -> str:
    return json.dumps([report_mistakes(lay_out(read_job(JOBS[name]))), bowstring.answer(JOBS[name], whole=False)])


def told(name: str) -> tuple[dict[str, Any], dict[str, Any]]:
    """The blunders by kind, and the job's answer."""
    rows, answer = json.loads(kept(name))
    return {row["kind"]: row for row in rows}, answer


def names_of(job: dict[str, Any]) -> list[str]:
    if job["method"] == "halving":
        return ["A", "R1", "Q1", "R2", "M", "R3", "Q2", "R4", "B"]
    return ["A", *(f"K{number}" for number in range(1, 8)), "B"]


def crossing(one: complex, first: float, other: complex, second: float, left: bool) -> complex:
    """Where two tapes meet, by the cosine rule."""
    base = abs(other - one)
    angle = math.acos((first**2 + base**2 - second**2) / (2 * first * base))
    return one + (other - one) / base * first * cmath.exp(1j * angle * (1 if left else -1))


def from_a(job: dict[str, Any]) -> set[str]:
    """The stakes whose ordinates the sheet's steps tape from A; the middle one may go either way."""
    name = next(name for name, one in JOBS.items() if one is job)
    return {step["stake"] for step in told(name)[1]["steps"] if step["stake"] and step["names"]["start"] == "A"}


def staked(
    job: dict[str, Any], held: Any, end: complex | None = None, lean: tuple[float, float] | None = None
) -> Places:
    """Stake a job out with ``held(stake, pull, length)`` in place of each length, from B at ``end``.

    Halving: the one pull is the sagitta. Ordinates: 0 along, 1 out. Tapes: 0 from A, 1 from B. Centre: C's pulls, then
    0 the radius, 1 the gap. ``lean``: the offset's direction, along the string's roomier side and out.
    """
    curve = Curve(job)
    b = complex(curve.chord) if end is None else end
    at: Places = {"A": 0j, "B": b}
    names = names_of(job)
    if job["method"] == "halving":
        chain, half = [0, 8], curve.half_angle
        while len(chain) < 9:
            sagitta = curve.radius * (1 - math.cos(half))
            for low, high in pairwise(list(chain)):
                one, other, stake = at[names[low]], at[names[high]], names[(low + high) // 2]
                way = (other - one) / abs(other - one)
                out = 1j * way
                if lean and stake == "M":
                    out = lean[0] * way + lean[1] * out  # both sides are alike long: toward B
                at[stake] = (one + other) / 2 + out * held(stake, 0, sagitta)
            chain = sorted({*chain, *((low + high) // 2 for low, high in pairwise(chain))})
            half /= 2
        return {name: at[name] for name in names}
    if job["method"] == "centre":
        radii = [held("C", pull, curve.radius) for pull in (0, 1)]
        c = crossing(0j, radii[0], b, radii[1], left=False)
        gap = 2 * curve.radius * math.sin(curve.half_angle / 8)
    first = from_a(job) if job["method"] == "ordinates" else set()
    for number, (before, stake) in enumerate(pairwise(names[:-1]), 1):
        x = curve.chord * number / 8
        y = math.sqrt(curve.radius**2 - (x - curve.chord / 2) ** 2) + curve.centre.imag
        if job["method"] == "ordinates":
            near = stake in first
            assert near if number < 4 else number == 4 or not near, "from the nearer end"
            one, other = (0j, b) if near else (b, 0j)
            way = (other - one) / abs(other - one)
            foot = one + way * held(stake, 0, x if near else curve.chord - x)
            out = 1j * way if near else -1j * way
            if lean:
                # The roomier side: the farther end of the string; at its middle the one ahead.
                far = one if abs(foot - one) > abs(foot - other) * (1 + 1e-12) else other
                out = lean[0] * (far - foot) / abs(far - foot) + lean[1] * out
            at[stake] = foot + out * held(stake, 1, y)
        elif job["method"] == "tapes":
            true = curve.at(number / 8)
            at[stake] = crossing(0j, held(stake, 0, abs(true)), b, held(stake, 1, abs(true - curve.chord)), left=True)
        else:
            at[stake] = crossing(c, held(stake, 0, curve.radius), at[before], held(stake, 1, gap), left=False)
    return {name: at[name] for name in names}


def lengths(job: dict[str, Any]) -> list[float]:
    found: list[float] = []

    def held(_stake: str, _pull: int, length: float) -> float:
        found.append(length)
        return length

    staked(job, held)
    return found


def burn_of(job: dict[str, Any]) -> float:
    return 0.1 if job.get("unit") == "m" else FOOT


def burned(length: float, burn: float) -> float:
    return length - burn if length >= 2 * burn else length
