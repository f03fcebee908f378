"""The recipes that set every stake from marks that stand already: none leans on the stake before it, but for the swing.

Swing from the centre, ordinates from the long chord, two tapes, coordinates.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bowstring.construction import (
    GAP,
    RADIUS,
    Along,
    Bisect,
    CrossTapes,
    Move,
    NoWayBack,
    Recipe,
    SquareOff,
    Stake,
    TurnOff,
)
from bowstring.geometry.arc import HALF_TURN_COSINE
from bowstring.geometry.plane import distance, signed_angle, unit_vector
from bowstring.methods.halving import halve
from bowstring.methods.parallel import off_string, overhangs
from bowstring.methods.setting import FITS, Setting

CENTRE = "C"

SHALLOW = 0.5
"""A cosine of half the central angle below which two tapes to the centre cross too flat."""

SLIM = 1e-6
"""Metres: a mark nearer than this to where a stake belongs, or to another mark, is the same place."""


def swing(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Swing from the centre: two tapes of the radius find it, then each stake is a radius from it and a gap onward."""
    arc = setting.arc
    recipe.truth[CENTRE] = arc.centre
    if abs(arc.cosine) <= HALF_TURN_COSINE:
        recipe.do("centre_half", 1, [Bisect(CENTRE, "A", "B")], [("A", CENTRE)], start="A", end="B", peg=CENTRE)
    elif abs(arc.cosine) < SHALLOW:
        # Two tapes would lie nearly in line: from the chord's middle instead, and both tapes alike keep it square.
        mid, off = f"mid {CENTRE}", abs(arc.radius * arc.cosine)
        moves: list[Move] = [
            Bisect(mid, "A", "B"),
            SquareOff(CENTRE, mid, "A", "B", off, left=arc.cosine < 0, slide=True),
        ]
        kind = "centre_near" if arc.cosine > 0 else "centre_near_inside"
        recipe.do(kind, 1, moves, [("A", mid), (mid, CENTRE), ("A", CENTRE)], start="A", end="B", peg=CENTRE)
    else:
        # Below a half circle the centre lies behind the chord: on the right of somebody who walks from A to B.
        move = CrossTapes(CENTRE, "A", arc.radius, "B", arc.radius, left=arc.cosine < 0, holds=(RADIUS, RADIUS))
        kind = "centre_behind" if arc.cosine > 0 else "centre_inside"
        recipe.do(kind, 1, [move], [("A", CENTRE), ("B", CENTRE)], start="A", end="B", peg=CENTRE)
    for before, stake in pairwise(stakes[:-1]):
        here, true = recipe.at[before.name], arc.point_at(stake.fraction)
        gap, centre = distance(here, true), recipe.at[CENTRE]
        # Walking round from A to B the centre is on the right hand, so from it the next stake is on the right too.
        left = before.name in recipe.moved and here.minus(centre).cross(true.minus(centre)) > 0
        move = CrossTapes(stake.name, CENTRE, arc.radius, before.name, gap, left, holds=(RADIUS, GAP), keeps=CENTRE)
        if CENTRE in recipe.moved:  # a pin beside the center: every stake has a length of its own
            move = CrossTapes(stake.name, CENTRE, distance(centre, true), before.name, gap, left, holds=("", GAP))
        kind = "swing_beside" if CENTRE in recipe.moved else "swing"
        recipe.do(kind, 1, [move], [(CENTRE, stake.name), (before.name, stake.name)],
                  stake=stake.name, start=CENTRE, other=before.name)  # fmt: skip


def swing_fails(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """Nobody swings from a centre that nobody said can be reached: on most jobs it lies on someone else's ground."""
    return None if setting.centre_reachable else "centre_unreached"


def ordinates(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Ordinates: along the long chord from its nearer end, then square off it to the arc.

    With ``halve_first`` from each of the smaller chords that so many levels of halving leave. From a parallel string,
    and at round distances, from its middle.
    """
    arc = setting.arc
    if not setting.halve_first and (setting.parallel or setting.rounds):
        off_string(recipe, setting, stakes)
        return
    if setting.halve_first:
        halve(recipe, arc, setting.halve_first, crossed=setting.crossed)
    ends = [stake for stake in stakes if stake.name in recipe.at]
    for first, last in pairwise(ends):
        start, end = recipe.at[first.name], recipe.at[last.name]
        way, chord = unit_vector(start, end), distance(start, end)
        for stake in stakes:
            if not first.fraction < stake.fraction < last.fraction:
                continue
            point = arc.point_at(stake.fraction).minus(start)
            along, out = way.dot(point), way.cross(point)
            if recipe.moved and not 0 <= along <= chord:
                raise NoWayBack(stake.name)
            near = along <= chord / 2 * FITS  # the middle's last digit says nothing
            one, other = (first.name, last.name) if near else (last.name, first.name)
            foot = f"foot {stake.name}"
            moves: list[Move] = [
                Along(foot, one, other, along if near else chord - along),
                SquareOff(stake.name, foot, one, other, abs(out), left=near == (out >= 0)),
            ]
            recipe.do("ordinate", 1, moves, [(one, foot), (foot, stake.name)],
                      stake=stake.name, start=one, end=other, foot=foot, first=first.name, last=last.name)  # fmt: skip


def ordinates_overhang(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """Past a half circle the arc overhangs its chord; its halves needn't, and from a parallel the string runs on."""
    plain = not setting.halve_first and not setting.parallel
    return "ordinates_overhang" if plain and overhangs(setting) else None


def tapes(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Two tapes: each stake where a tape from one mark crosses a tape from the other."""
    first, second = setting.tapes_from
    a, b = setting.place(first), setting.place(second)
    for stake in stakes[1:-1]:
        point = setting.arc.point_at(stake.fraction)
        left = b.minus(a).cross(point.minus(a)) > 0
        move = CrossTapes(stake.name, first, distance(a, point), second, distance(b, point), left=left)
        recipe.do("cross", 1, [move], [(first, stake.name), (second, stake.name)],
                  stake=stake.name, start=first, end=second)  # fmt: skip


def coordinates(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Coordinates: at one control mark, set on the other, turn each stake's angle and tape its distance."""
    at, back = setting.control
    here, there = setting.place(at), setting.place(back)
    for stake in stakes[1:-1]:
        point = setting.arc.point_at(stake.fraction)
        move = TurnOff(stake.name, at, back, signed_angle(here, there, point), distance(here, point))
        recipe.do("polar", 1, [move], [(at, stake.name)], turn=[(at, back, stake.name)],
                  stake=stake.name, start=at, end=back)  # fmt: skip


def tapes_fail(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """Two tapes need two marks that aren't in line with all stakes."""
    return _between(setting, setting.tapes_from)


def control_fails(setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """An instrument needs a place where no stake belongs, and another mark to be set on."""
    at = setting.place(setting.control[0])
    if any(distance(at, setting.arc.point_at(stake.fraction)) <= SLIM for stake in stakes[1:-1]):
        return "control_on_stake"
    return _between(setting, setting.control, line=False)


def _between(setting: Setting, pair: tuple[str, str], line: bool = True) -> str | None:
    """Why two marks can't serve: they are one place, or (for two tapes) on one line with all stakes."""
    first, second = (setting.place(mark) for mark in pair)
    if distance(first, second) <= SLIM:
        return "marks_are_one"
    if line and pair != ("A", "B"):
        middle = setting.arc.point_at(0.5)
        if abs(second.minus(first).cross(middle.minus(first))) <= SLIM * distance(first, second):
            return "marks_in_line"
    return None
