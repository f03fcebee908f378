"""Circular arcs at 50 digits, worked out again without the package: what the tests hold the package against.

Nothing here uses the package's formulas. An arc of radius 1 and half angle h has, by the definitions alone,

    chord 2 sin h, sagitta 1 - cos h, arc length 2 h, tangent length tan h, external 1/cos h - 1,

and all lengths grow with the radius. Two lengths fix the ratio of two of these, so every half angle with
that ratio is found by walking a grid of half angles, looking for changes of sign, and closing in between
two of them. Lengths are in whatever unit the caller uses; angles are degrees. Radii of arcs under 360
degrees only."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from itertools import combinations
from typing import Any

from mpmath import mp, mpf

mp.dps = 60  # ten digits beyond the fifty that are promised

FIELDS = ("radius", "chord", "sagitta", "arc_length", "central_angle", "tangent_length", "external")
PAIRS = tuple(combinations(FIELDS, 2))
NEED_UNDER_180 = frozenset({"tangent_length", "external"})
DOUBLE_ROUNDING = mpf(2) ** -53
RIGHT = mp.pi / 2 * (1 - mpf(10) ** -50)  # a right angle, less what sixty digits can't hold
FOOT = mpf("0.3048")  # the international foot, exactly (NIST/NOAA, 84 FR 55562)


@dataclass(frozen=True)
class Reference:
    """One arc: its seven figures (None where an arc of 180 degrees or more has none) and its half angle in
    radians."""

    half: Any
    figures: dict[str, Any]


def shape(field: str, half: Any) -> Any:
    """Return one figure of the arc of radius 1 and this half angle (radians); the central angle in
    degrees."""
    if field == "radius":
        return mpf(1)
    if field == "chord":
        return 2 * mp.sin(half)
    if field == "sagitta":
        return 1 - mp.cos(half)
    if field == "arc_length":
        return 2 * half
    if field == "central_angle":
        return 2 * half * 180 / mp.pi
    if field == "tangent_length":
        return mp.tan(half)
    if field == "external":
        return 1 / mp.cos(half) - 1
    raise KeyError(field)


def arc(radius: Any, half: Any) -> Reference:
    """Return the arc of this radius and half angle (radians, below pi)."""
    figures: dict[str, Any] = {}
    for field in FIELDS:
        if field in NEED_UNDER_180 and half >= RIGHT:
            figures[field] = None
        else:
            figures[field] = shape(field, half) * (1 if field == "central_angle" else radius)
    return Reference(half, figures)


def arc_of(radius: Any, degrees: Any) -> Reference:
    """Return the arc of this radius and central angle (degrees)."""
    return arc(mpf(radius), mpf(degrees) * mp.pi / 360)


@cache
def _grid(first: str, second: str) -> tuple[tuple[Any, Any], ...]:
    """Half angles from end to end with the logarithm of the pair's ratio at each, turning points included."""
    top = mp.pi / 2 if {first, second} & NEED_UNDER_180 else mp.pi
    fractions = [mpf(10) ** -k for k in range(9, 1, -1)]
    fractions += [mpf(k) / 40 for k in range(1, 40)]
    fractions += [1 - mpf(10) ** -k for k in range(2, 22)]
    places = [fraction * top for fraction in fractions]

    def level(half: Any) -> Any:
        return mp.log(shape(first, half)) - mp.log(shape(second, half))

    row = [(half, level(half)) for half in places]
    full = list(row)
    for before, here, after in zip(row, row[1:], row[2:], strict=False):
        if (here[1] - before[1]) * (after[1] - here[1]) < 0:
            turn = mp.findroot(
                lambda h: mp.diff(level, h), (before[0], after[0]), solver="anderson", tol=mpf(10) ** -60
            )
            full.append((turn, level(turn)))
    return tuple(sorted(full))


def solutions(first: str, first_value: Any, second: str, second_value: Any) -> list[Reference]:
    """Return every arc under 360 degrees with these two figures, smallest angle first (empty: there is
    none)."""
    values = {first: mpf(first_value), second: mpf(second_value)}
    if min(values.values()) <= 0:
        return []
    if "central_angle" in values:
        half = values.pop("central_angle") * mp.pi / 360
        ((other, value),) = values.items()
        if half >= mp.pi or (other in NEED_UNDER_180 and half >= RIGHT):
            return []
        return [arc(value / shape(other, half), half)]
    target = mp.log(values[first]) - mp.log(values[second])
    grid = _grid(first, second)

    def gap(half: Any) -> Any:
        return mp.log(shape(first, half)) - mp.log(shape(second, half)) - target

    halves: list[Any] = []
    for index, (half, level) in enumerate(grid):
        if abs(level - target) < mpf(10) ** -45:  # on a grid place, or touching at a turning point
            if not halves or half - halves[-1] > mpf(10) ** -20:
                halves.append(half)
            continue
        if index and (grid[index - 1][1] - target) * (level - target) < 0 and abs(grid[index - 1][1] - target) > 1e-45:
            bracket = (grid[index - 1][0], half)
            halves.append(mp.findroot(gap, bracket, solver="anderson", tol=mpf(10) ** -57, maxsteps=200, verify=False))
    return [arc(values[second] / shape(second, half), half) for half in halves]


def kappa(first: str, second: str, found: Reference) -> Any:
    """Return the pair's condition number at this arc: the largest relative change of any figure per
    relative change of a given.

    In the unknowns (log radius, half angle) each figure moves by (1 or 0 for the angle, d log shape / d
    half)."""
    half = found.half

    def row(field: str) -> tuple[Any, Any]:
        grows = mpf(0) if field == "central_angle" else mpf(1)
        if field == "radius":
            return grows, mpf(0)
        step = half * mpf(10) ** -18
        return grows, mp.diff(lambda h: mp.log(shape(field, h)), half, h=step)

    (a, b), (c, d) = row(first), row(second)
    determinant = a * d - b * c
    if abs(determinant) < mpf(10) ** -30:
        return mp.inf
    largest = mpf(0)
    for field in FIELDS:
        if found.figures[field] is None:
            continue
        p, q = row(field)
        per_first = (p * d - q * c) / determinant
        per_second = (q * a - p * b) / determinant
        largest = max(largest, abs(per_first), abs(per_second))
    return largest


def allowed(first: str, second: str, found: Reference) -> Any:
    """Return the relative error that an answer from this pair may have: max(1e-12, 8 kappa 2^-53)."""
    return max(mpf("1e-12"), 8 * kappa(first, second, found) * DOUBLE_ROUNDING)


def through(first: Any, middle: Any, last: Any) -> Reference:
    """Return the arc from the first point to the last that passes through the middle one (pairs of numbers).

    The circle's centre solves two linear equations; the angle at the centre is walked from the first point
    to the last in the sense that meets the middle point on the way."""
    ax, ay = (mpf(v) for v in first)
    mx, my = (mpf(v) for v in middle)
    bx, by = (mpf(v) for v in last)
    matrix = mp.matrix([[2 * (mx - ax), 2 * (my - ay)], [2 * (bx - ax), 2 * (by - ay)]])
    right = mp.matrix([mx**2 - ax**2 + my**2 - ay**2, bx**2 - ax**2 + by**2 - ay**2])
    centre = mp.lu_solve(matrix, right)
    angles = [mp.atan2(y - centre[1], x - centre[0]) for x, y in ((ax, ay), (mx, my), (bx, by))]
    full = 2 * mp.pi
    to_middle, to_last = ((angles[i] - angles[0]) % full for i in (1, 2))
    turn = to_last if to_middle < to_last else full - to_last
    return arc(mp.hypot(ax - centre[0], ay - centre[1]), turn / 2)


def through_kappa(points: Any, fields: tuple[str, ...] = FIELDS) -> Any:
    """Return the condition number of `through`: the largest relative change of a figure per relative change
    of a coordinate."""
    base = through(*points)
    step = mpf(10) ** -25
    largest = mpf(0)
    for i in range(3):
        for j in range(2):
            if points[i][j] == 0:
                continue
            moved = [[mpf(v) for v in point] for point in points]
            moved[i][j] *= 1 + step
            other = through(*moved)
            for field in fields:
                if base.figures[field] is not None and other.figures[field] is not None:
                    largest = max(largest, abs(other.figures[field] / base.figures[field] - 1) / step)
    return largest
