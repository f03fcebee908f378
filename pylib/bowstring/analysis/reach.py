"""What the ground lets through: every pull, sight, string and triangle of a construction against what is in the way."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from bowstring.analysis.obstructions import Limits, Obstructions, room_taken
from bowstring.analysis.triangles import Square, squares_of
from bowstring.construction import PULL, Marks, Recipe, SquareOff, Step
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance
from bowstring.methods.ends import SHOWN_BY

__all__ = ["Blocked", "Limits", "blocks_of", "lines_of", "longest_pull", "measurements_of", "needs_of", "readings_of"]


@dataclass(frozen=True)
class Blocked:
    """One thing that can't be done.

    Attributes:
        kind: ``tape`` (longer than the tape), ``pull``, ``string``, ``sight`` or ``triangle`` (an obstacle stops it),
            ``triangle_room`` (the room does), ``feet`` (nobody can stand at the mark), ``behind``, ``inside`` or
            ``outside`` (beyond the room there).
        step: the step's number, from 1.
        start, end: its marks; the same for a place.
        what: the obstacle's name, empty for the tape and the room.
        size: metres: how long the pull is, how far the place is out.
        gap: metres: how near a pull, string or sight passes what stops it; 0 where it would go through.
    """

    kind: str
    step: int
    start: str
    end: str
    what: str
    size: float
    gap: float = 0.0


def blocks_of(
    arc: Arc, recipe: Recipe, limits: Limits, squares: Mapping[str, Square] | None = None
) -> Iterator[Blocked]:
    """Yield what the ground, the room or the tape doesn't allow, in the order of the steps, the ends' own included.

    ``squares``: how each offset is squared, where that was found already.
    """
    ground = Obstructions(arc, limits)
    squares = squares_of(recipe, limits.kit, ground) if squares is None else squares
    seen: set[tuple[str, str, str]] = set()
    for number, step in enumerate(recipe.steps, 1):
        for kind, start, end, a, b in lines_of(recipe.at, step):
            if (kind, start, end) in seen:
                continue
            seen.add((kind, start, end))
            yield from _line(ground, number, kind, (start, a), (end, b))
        for move in step.moves:
            square = move.squares
            if square and square.mark in squares:
                yield from _triangle(recipe.at, ground, number, square, squares[square.mark])
            if move.mark not in SHOWN_BY or move.uses:
                for name in ground.standing(recipe.at[move.mark]):
                    yield Blocked("feet", number, move.mark, move.mark, name, 0.0)


def needs_of(arc: Arc, recipe: Recipe) -> dict[str, float]:
    """Return the room that a construction takes, metres: ``behind`` the chord, ``inside`` and ``outside`` the curve,
    and the ``tape`` of its longest pull."""
    needs = {"behind": 0.0, "inside": 0.0, "outside": 0.0, "tape": 0.0}
    for step in recipe.steps:
        for kind, _start, _end, a, b in lines_of(recipe.at, step):
            for name, size in room_taken(arc, a, b).items():
                needs[name] = max(needs[name], size)
            if kind == PULL:
                needs["tape"] = max(needs["tape"], distance(a, b))
    return needs


def longest_pull(recipe: Recipe) -> float:
    """Return the longest distance in metres that a step after the ends measures; 0 without one."""
    return max((measure.length for step in recipe.steps if step.level for measure in step.measures), default=0.0)


def measurements_of(steps: Iterable[Step]) -> int:
    """Return how many readings a crew takes; one that stays on a hooked tape for many marks counts once."""
    count, kept = 0, set()
    for step in steps:
        if step.level:
            count += readings_of(step)
            kept |= {move.keeps for move in step.moves if move.keeps}
    return count + len(kept)


def readings_of(step: Step) -> int:
    """Return the readings of a step that is one of many like it: what stays on a hooked tape is there."""
    return sum(move.readings for move in step.moves)


def lines_of(at: Marks, step: Step) -> Iterator[tuple[str, str, str, Point, Point]]:
    """Yield the pulls, strings and sights of a step: kind, its marks, and where they are.

    How far back on a straight its direction is shown is the crew's own choice: a line to there is none of the sheet's,
    but for one that is taped to set it.
    """
    for measure in step.measures:
        yield PULL, measure.start, measure.end, at[measure.start], at[measure.end]
    for move in step.moves:
        for kind, start, end in move.lines:
            if end not in SHOWN_BY or move.mark == end:
                yield kind, start, end, at[start], at[end]


def _line(
    ground: Obstructions, number: int, kind: str, start: tuple[str, Point], end: tuple[str, Point]
) -> Iterator[Blocked]:
    (first, a), (second, b) = start, end
    if kind == PULL and not ground.reaches(a, b):
        yield Blocked("tape", number, first, second, "", distance(a, b))
    for name in ground.stoppers(a, b):
        yield Blocked(kind, number, first, second, name, distance(a, b), ground.gap(name, a, b))
    for name, size in ground.over_room(a, b):
        yield Blocked(name, number, first, second, "", size)


def _triangle(at: Marks, ground: Obstructions, number: int, move: SquareOff, square: Square) -> Iterator[Blocked]:
    """A triangle for which no place was found; where the tape to the stake itself is stopped, that was told."""
    if square.stopped is not None and ground.free(at[move.foot], at[move.mark]):
        kind = "triangle" if square.stopped else "triangle_room"
        yield Blocked(kind, number, move.foot, move.mark, square.stopped, abs(move.length))
