"""The recipes that start from a tangent or go on from the stake before.

Offsets from the tangent; chords produced (deflection distances); deflection angles.

Sources: for a chord c of a circle of radius R the tangent offset is c²/2R and the deflection distance c²/R
(J. C. Trautwine, The Field Practice of Laying Out Circular Curves for Railroads, 1851); here the exact ones,
2 c sin(d/2) with d the angle between the line produced and the chord.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import cos, pi, sin

from bowstring.construction import GAP, Along, CrossTapes, Move, NoWayBack, Recipe, Sight, SquareOff, Stake, TurnOff
from bowstring.geometry.arc import HALF_TURN_COSINE, Arc
from bowstring.geometry.plane import Point, distance, unit_vector
from bowstring.methods.pegs import tangent_line
from bowstring.methods.setting import FITS, Setting

TURNING = 0.05
"""Radians: nearer to square to the line of sight a gap's chord doesn't tell which side of its foot the stake is."""


def tangent_offsets(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Offsets from the tangent: along it from its end, then square off it to the arc: R - sqrt(R² - x²)."""
    arc = setting.arc
    inner = stakes[1:-1]
    if setting.tangent_from == "both":
        groups = [("A", [s for s in inner if s.fraction <= 0.5]), ("B", [s for s in inner[::-1] if s.fraction > 0.5])]
        reach = arc.chord / 2
    else:
        groups = [(setting.tangent_from, list(inner if setting.tangent_from == "A" else inner[::-1]))]
        reach = 2 * arc.radius * arc.sine * abs(arc.cosine)
    for end, group in groups:
        if not group:
            continue
        toward, sign = tangent_line(recipe, setting, end, reach)
        for stake in group:
            along, off = _off_tangent(arc, stake, end)
            if toward in recipe.moved:
                along, off = _off_line(recipe, arc, stake, end, toward)
                if along < 0:
                    raise NoWayBack(stake.name)
            foot = f"tan {stake.name}"
            # The arc lies on the right of somebody who looks from A along the tangent, on the left of one at B.
            left = ((end == "B") == (sign > 0)) == (off >= 0)
            moves: list[Move] = [
                Along(foot, end, toward, sign * along),
                SquareOff(stake.name, foot, end, toward, abs(off), left=left),
            ]
            kind = "tangent_offset" if sign > 0 else "tangent_offset_past"
            recipe.do(kind if off >= 0 else "tangent_offset_out", 1, moves,
                      [(end, foot), (foot, stake.name)],
                      stake=stake.name, start=end, other=toward, foot=foot,
                      first=end if sign > 0 else toward, last=toward if sign > 0 else end)  # fmt: skip


def _off_tangent(arc: Arc, stake: Stake, end: str) -> tuple[float, float]:
    """How far along the tangent at an end a stake belongs, and how far off it toward the chord, metres."""
    turned = 2 * arc.half_angle * (stake.fraction if end == "A" else 1 - stake.fraction)
    return arc.radius * sin(turned), arc.radius * sin(turned) ** 2 / (1 + cos(turned))


def _off_line(recipe: Recipe, arc: Arc, stake: Stake, end: str, peg: str) -> tuple[float, float]:
    """The same off the line to a peg that stands beside the tangent."""
    way = unit_vector(recipe.at[end], recipe.at[peg])
    point = arc.point_at(stake.fraction).minus(recipe.at[end])
    off = way.cross(point)
    return way.dot(point), -off if end == "A" else off


def tangents_end(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """Up to a half circle both halves lie over their tangents; the whole arc over one of them up to a quarter turn."""
    arc = setting.arc
    if arc.cosine < -HALF_TURN_COSINE:
        return "tangent_overhang"
    if setting.tangent_from == "both":
        return None
    return "tangent_overhang_one" if 2 * arc.half_angle > pi / 2 * FITS else None


def chords_produced(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Chords produced: carry each chord on by the next one's length, then swing its tip in by the deflection."""
    arc = setting.arc
    line, sign = tangent_line(recipe, setting, "A", arc.chord / 2)
    start = "A"
    for before, stake in pairwise(stakes[:-1]):
        truth = arc.point_at(stake.fraction)
        gap = distance(recipe.at[before.name], truth)
        ahead = f"ahead {stake.name}"
        first = before.name == "A"
        # The first chord starts along the tangent; each later one along the chord before, carried on.
        onward = (
            Along(ahead, "A", line, sign * gap, (GAP,)) if first else Along(ahead, before.name, start, -gap, (GAP,))
        )
        carried = _carried_on(recipe, onward)
        deflection = distance(carried, truth)
        left = False  # the curve turns to the right, unless a stake stands far outside it
        if recipe.moved:
            here = recipe.at[before.name]
            left = carried.minus(here).cross(truth.minus(here)) > 0
        swing = CrossTapes(stake.name, before.name, gap, ahead, deflection, left, holds=(GAP,))
        recipe.do(
            ("produce_first" if sign > 0 else "produce_straight") if first else "produce",
            1,
            [onward, swing],
            [(before.name, ahead), (before.name, stake.name), (ahead, stake.name)],
            stake=stake.name,
            start=before.name,
            other=line if first else start,
            ahead=ahead,
        )
        start = before.name


def _carried_on(recipe: Recipe, onward: Along) -> Point:
    """Where a line carried on ends, before the step that does it."""
    way = unit_vector(recipe.at[onward.start], recipe.at[onward.toward])
    return recipe.at[onward.start].plus(way, onward.length)


def deflection_angles(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Deflection angles: at A turn each stake's angle; tape its gap from the stake before onto that line.

    The deflection, the angle between the tangent and the chord to a stake, is half the arc's angle to it. It is turned
    from the straight where one is on the ground, onto the corner ahead or back along it; otherwise from B, where it is
    half of the arc's angle that is left.
    """
    arc = setting.arc
    sighted, ahead = setting.straights.get("A", ("B", None))
    kind = {None: "sight", True: "sight_ahead", False: "sight_back"}[ahead]
    for before, stake in pairwise(stakes[:-1]):
        off = arc.half_angle * stake.fraction
        angle = arc.half_angle - off if ahead is None else -off if ahead else pi - off
        gap = distance(recipe.at[before.name], arc.point_at(stake.fraction))
        move: Move
        if before.name == "A":
            move = TurnOff(stake.name, "A", sighted, angle, gap, (GAP,))
        else:
            move = Sight(stake.name, "A", sighted, angle, before.name, gap, (GAP,))
        recipe.do(kind, 1, [move], [(before.name, stake.name)], turn=[("A", sighted, stake.name)], deflection=off,
                  stake=stake.name, start="A", end=sighted, other=before.name)  # fmt: skip


def angles_turn_back(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """The last gap that is chained has to lead on along its line of sight."""
    if len(stakes) > 2 and setting.arc.half_angle * stakes[-3].fraction > pi / 2 - TURNING:
        return "angles_turn_back"
    return None
