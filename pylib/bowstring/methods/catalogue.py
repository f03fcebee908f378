"""The methods, everyday ones first: who writes each one's steps, which stakes it drives, and where it doesn't exist."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import asin, ceil, pi

from bowstring.construction import Recipe, Stake
from bowstring.geometry.arc import HALF_TURN_COSINE, Arc
from bowstring.geometry.plane import Point, distance
from bowstring.methods.halving import halve, quarter_sagitta, stakes_of
from bowstring.methods.onward import chords_produced, deflection_angles, tangent_offsets
from bowstring.methods.plain import coordinates, ordinates, swing, tapes
from bowstring.methods.setting import (
    FITS,
    MOST_STAKES,
    STAKE_LETTER,
    NoSuchStakes,
    Setting,
    along_chord,
    chord_fractions,
    counted,
    equal_gaps,
    fewest_equal,
    tangent_fractions,
    widest_gap,
)

Write = Callable[[Recipe, Setting, Sequence[Stake]], None]

TURNING = 0.05
"""Radians: nearer to square to the line of sight a gap's chord doesn't tell which side of its foot the stake is."""

CHAINED = ("centre", "produced", "angles")
MOST_CHAINED = 513
"""Where each stake is set from the one before it, it takes over what all before were off; past so many nobody would."""

SLIM = 1e-6
"""Metres: a mark nearer than this to where a stake belongs, or to another mark, is the same place."""


@dataclass(frozen=True)
class Method:
    """One way to set an arc out.

    Attributes:
        name: as a job says it.
        stand: where its stakes stand: at ``halves`` of the arc, at ``equal`` parts of it, or at equal steps along the
            ``chord`` or the ``tangent``.
        hands: how many people it takes, where a nail can hold a tape's end (common practice, no source).
        write: writes its steps down; ``None`` for those that halve.
        everyday: needs no instrument and no reckoning on the ground.
    """

    name: str
    stand: str
    hands: int
    write: Write | None
    everyday: bool = True


METHODS = (
    Method("centre", "equal", 1, swing),
    Method("halving", "halves", 2, None),
    Method("rule", "halves", 2, None),
    Method("ordinates", "chord", 2, ordinates),
    Method("tangent", "tangent", 2, tangent_offsets),
    Method("tapes", "equal", 2, tapes),
    Method("produced", "equal", 2, chords_produced, everyday=False),
    Method("angles", "equal", 2, deflection_angles, everyday=False),
    Method("coordinates", "equal", 2, coordinates, everyday=False),
)
BY_NAME = {method.name: method for method in METHODS}
USUAL = "halving"


def why_none(method: Method, setting: Setting, stakes: Sequence[Stake]) -> str | None:
    """Return the key of the sentence that says why this arc can't be set out this way at all, or ``None``."""
    arc = setting.arc
    if method.name == "ordinates" and not setting.halve_first and arc.cosine < -HALF_TURN_COSINE:
        return "ordinates_overhang"
    if method.name == "tangent":
        if setting.tangent_from == "both":
            return "tangent_overhang" if arc.cosine < -HALF_TURN_COSINE else None
        # From one end the whole arc has to lie over its tangent: up to a quarter of a turn.
        return "tangent_overhang_one" if 2 * arc.half_angle > pi / 2 * FITS else None
    if method.name == "angles" and len(stakes) > 2 and arc.half_angle * stakes[-3].fraction > pi / 2 - TURNING:
        return "angles_turn_back"
    if method.name in CHAINED and len(stakes) > MOST_CHAINED:
        return "chain_long"
    if method.name == "tapes":
        return _between(setting, setting.tapes_from)
    if method.name == "coordinates":
        at = setting.place(setting.control[0])
        if any(distance(at, arc.point_at(stake.fraction)) <= SLIM for stake in stakes[1:-1]):
            return "control_on_stake"
        return _between(setting, setting.control, line=False)
    return None


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


def stakes_for(
    method: Method,
    setting: Setting,
    *,
    levels: int,
    spacing: float | None,
    stations: Sequence[float] = (),
    first_gap: float | None = None,
) -> tuple[Stake, ...]:
    """Return the stakes from A to B, both included, that a method drives.

    ``levels``: 2^levels gaps, where no ``spacing`` (metres) is asked for; with one the fewest gaps that keep every
    straight gap within it. ``stations`` (metres along the chord from A) stand in for both with ordinates; with
    ``first_gap`` (metres) the first gap is that long, the others ``spacing``, and the last whatever is left.

    Raises ``NoSuchStakes`` where that takes more stakes than anybody drives.
    """
    arc = setting.arc
    if method.stand == "halves":
        return stakes_of(levels)
    if method.stand == "equal":
        if first_gap is not None and spacing is not None:
            return counted(_stepped(arc, first_gap, spacing))
        return counted(equal_gaps(2**levels if spacing is None else fewest_equal(arc, spacing)))
    if method.stand == "chord":
        if stations:
            return counted([along_chord(arc, x) for x in sorted(set(stations))])
        if setting.halve_first:
            return _halved_first(arc, setting.halve_first, levels, spacing)
        return counted(chord_fractions(arc, _fewest(arc, levels, spacing, chord_fractions)))

    def at(arc: Arc, gaps: int) -> list[float]:
        return tangent_fractions(arc, gaps, setting.tangent_from)

    return counted(at(arc, _fewest(arc, levels, spacing, at, even=setting.tangent_from == "both")))


def _halved_first(arc: Arc, times: int, levels: int, spacing: float | None) -> tuple[Stake, ...]:
    """The stakes of ``times`` levels of halving, with those at equal steps along each smaller chord between them."""
    halved, pieces = stakes_of(times), 2**times
    smaller = arc.part(pieces)
    steps = chord_fractions(smaller, _fewest(smaller, max(levels - times, 0), spacing, chord_fractions, least=1))
    stakes, number = [halved[0]], 0
    for piece, last in enumerate(halved[1:]):
        for part in steps:
            number += 1
            stakes.append(Stake(f"{STAKE_LETTER}{number}", 1, (piece + part) / pieces))
        stakes.append(last)
    return tuple(stakes)


def _stepped(arc: Arc, first: float, spacing: float) -> list[float]:
    """Fractions whose straight gaps are ``first``, then ``spacing``, from A as far as they go."""
    total = 2 * arc.half_angle
    at, step = _angle_over(arc, first) / total, _angle_over(arc, spacing) / total
    count = max(ceil((1 - at) / step - 1e-9), 0)
    if count > MOST_STAKES:
        raise NoSuchStakes(arc.part(MOST_STAKES).chord)
    return [part for number in range(count) if (part := at + number * step) < 1 - 1e-9]


def _angle_over(arc: Arc, chord: float) -> float:
    return 2 * asin(min(chord / (2 * arc.radius), 1.0))


def _fewest(
    arc: Arc,
    levels: int,
    spacing: float | None,
    at: Callable[[Arc, int], list[float]],
    even: bool = False,
    least: int = 2,
) -> int:
    """Return how many steps along a line keep every straight gap within ``spacing``, or as many as ``levels`` make.

    ``least``: two where one would set no stake.
    """
    step = 2 if even else 1
    if spacing is None:
        return int(2**levels)
    low, high = least - step, least  # low: too few
    while widest_gap(arc, at(arc, high)) > spacing * FITS:
        low, high = high, high * 2
        if high > MOST_STAKES:
            raise NoSuchStakes(widest_gap(arc, at(arc, MOST_STAKES)))
    while high - low > step:
        between = (low + high) // 2 // step * step
        if between == low:
            between += step
        if widest_gap(arc, at(arc, between)) > spacing * FITS:
            low = between
        else:
            high = between
    return high


def recipe_of(
    method: Method, setting: Setting, stakes: Sequence[Stake], levels: int, recipe: Recipe | None = None
) -> Recipe:
    """Return the recipe of a method on an arc whose ends stand (or go on with ``recipe``, which found them)."""
    arc = setting.arc
    recipe = recipe or Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0), **setting.known})
    if method.write is not None:
        recipe.truth.update({stake.name: arc.point_at(stake.fraction) for stake in stakes[1:-1]})
        method.write(recipe, setting, stakes)
    elif method.name == "rule":
        halve(recipe, arc, levels, sagitta_of_level=lambda level: quarter_sagitta(arc, level))
    else:
        halve(recipe, arc, levels)
    return recipe
