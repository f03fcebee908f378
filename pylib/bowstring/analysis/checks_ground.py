"""Checks against the ground: one that can't be taped is none, and where a stake lost its own another is found."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from bowstring.analysis.checks import SAME_PLACE, Check, Marked
from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.taped import taped_in
from bowstring.construction import Recipe, Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance
from bowstring.methods.halving import middle_name

FAR = 3
"""A stake is held against others up to so many places away on either side, where its usual checks can't be taped."""


def tapeable_checks(
    arc: Arc,
    stakes: Sequence[Stake],
    recipe: Recipe,
    checks: Sequence[Check],
    marks: Mapping[str, Point],
    ground: Obstructions,
) -> tuple[tuple[Check, ...], Mapping[str, Point]]:
    """Return those checks that can be taped on the ground, with others for stakes that lost all of theirs, and every
    mark, those of the checks included.

    ``checks``: none that a step tapes; ``marks``: every mark of the steps and of these checks.
    """
    kept = [check for check in checks if _tapeable(ground, marks, check)]
    if len(kept) == len(checks):
        return tuple(checks), marks
    marked = Marked(arc, stakes, recipe.at)
    lost = {name for check in checks for name in _touched(check)}
    kept = _with_others(marked, stakes, recipe, kept, lost, ground)
    used = {mark for check in kept for mark in (check.start, check.end)} | set(recipe.at)
    places = {**marks, **marked.at}
    return tuple(kept), {name: point for name, point in places.items() if name in used}


def _with_others(
    marked: Marked,
    stakes: Sequence[Stake],
    recipe: Recipe,
    kept: Sequence[Check],
    lost: set[str],
    ground: Obstructions,
) -> list[Check]:
    """The checks that are kept, with another one for each stake of the ``lost`` that none of them looks at."""
    all_kept, seen = list(kept), {name for check in kept for name in _touched(check)}
    read = _read(recipe) | {frozenset((check.start, check.end)) for check in kept}
    for number, stake in enumerate(stakes):
        if not stake.level or stake.name in seen or stake.name not in lost:
            continue
        others = _others(marked, stakes, number, recipe.at.get(middle_name(stake.name)))
        found = next((one for one in others if _new(one, read) and _tapeable(ground, marked.at, one)), None)
        if found:
            all_kept.append(found)
            read.add(frozenset((found.start, found.end)))
            seen.update(_touched(found))
    return all_kept


def _new(check: Check, read: set[frozenset[str]]) -> bool:
    return frozenset((check.start, check.end)) not in read


def _read(recipe: Recipe) -> set[frozenset[str]]:
    """Every pair of marks between which a step reads the tape, equal half chords included."""
    return {frozenset(ends) for step in recipe.steps for ends in taped_in(step)}


def _touched(check: Check) -> list[str]:
    """The stakes that a check looks at: its marks, and those that hold its string."""
    pair = check.start.removeprefix("mid ").split("-") if check.kind == "alternate" else [check.start]
    return [*pair, check.end]


def _others(marked: Marked, stakes: Sequence[Stake], number: int, own: Point | None) -> list[Check]:
    """Other distances that say where a stake is across the arc, those first in which it shows most.

    None from the middle of its ``own`` string, from which its step taped it.
    """
    stake = stakes[number]
    found = []
    for step in range(1, FAR + 1):
        near = [other for other in (number - step, number + step) if 0 <= other < len(stakes)]
        for other in near:
            first, second = sorted((number, other))
            kind = "gap" if step == 1 else "cross"
            found.append(marked.check(kind, stakes[first].name, stakes[second].name, stake.level))
        if len(near) == 2:
            middle = marked.between(stakes[near[0]].name, stakes[near[1]].name)
            if not own or distance(marked.at[middle], own) > SAME_PLACE:
                found.append(marked.check("alternate", middle, stake.name, stake.level))
    return sorted(found, key=lambda check: -round(check.per_tolerance, 9))


def _tapeable(ground: Obstructions, at: Mapping[str, Point], check: Check) -> bool:
    """Whether the tape of a check can be held, and its string stretched and marked."""
    start, end = at[check.start], at[check.end]
    if not ground.tapeable(start, end):
        return False
    if check.kind == "alternate":
        first, second = (at[name] for name in check.start.removeprefix("mid ").split("-"))
        return ground.free(first, second) and ground.reaches(first, start) and ground.reaches(start, second)
    if check.along is not None:
        return ground.free(at["A"], at["B"]) and distance(at["A"], start) <= ground.limits.tape
    return True
