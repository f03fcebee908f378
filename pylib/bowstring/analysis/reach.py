"""What the ground lets through: every pull, sight, string and triangle of a construction against what is in the way.

An obstacle that stops a tape stops feet too; one that stops feet lets a tape or a sight pass over it. Touching an
outline is allowed: a tape may lie along a wall, and a stake may stand against it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from bowstring.analysis.squaring import METRIC_BLADE, legs_at_hand
from bowstring.construction import PULL, Marks, Recipe, SquareOff, Step
from bowstring.geometry.arc import Arc
from bowstring.geometry.outlines import TOUCH, distance_to_side, inside_of, within
from bowstring.geometry.plane import Point, distance, left_of, unit_vector
from bowstring.job.obstacles import Obstacle

SPARE = 1e-6
"""Metres: a pull as long as the tape is no longer than it."""


@dataclass(frozen=True)
class Limits:
    """What there is: the tape's length in metres, the room ``behind`` the chord, ``inside`` and ``outside`` the curve
    (metres, where it is said), and the obstacles."""

    tape: float
    room: Mapping[str, float]
    obstacles: Sequence[Obstacle]


@dataclass(frozen=True)
class Blocked:
    """One thing that can't be done.

    Attributes:
        kind: ``tape`` (longer than the tape), ``pull``, ``string``, ``sight`` or ``triangle`` (an obstacle stops it),
            ``feet`` (nobody can stand at the mark), ``behind``, ``inside`` or ``outside`` (beyond the room there).
        step: the step's number, from 1.
        start, end: its marks; the same for a place.
        what: the obstacle's name, empty for the tape and the room.
        size: metres: how long the pull is, how far the place is out.
    """

    kind: str
    step: int
    start: str
    end: str
    what: str
    size: float


def blocks_of(arc: Arc, recipe: Recipe, limits: Limits) -> Iterator[Blocked]:
    """Yield what the ground, the room or the tape doesn't allow, in the order of the steps; the ends are there."""
    boxes = [(one, one.box()) for one in limits.obstacles]
    walls = [(one, box) for one, box in boxes if one.stops_tape]
    seen: set[tuple[str, str, str]] = set()
    for number, step in enumerate(recipe.steps, 1):
        if not step.level:
            continue
        for kind, start, end, a, b in _lines(recipe.at, step):
            if (kind, start, end) in seen:
                continue
            seen.add((kind, start, end))
            yield from _line(arc, limits, walls, number, kind, (start, a), (end, b))
        for move in step.moves:
            if walls and move.squares and not move.squares.slide:
                yield from _triangle(recipe.at, walls, number, move.squares)
            yield from _place(boxes, number, move.mark, recipe.at[move.mark])


def needs_of(arc: Arc, recipe: Recipe) -> dict[str, float]:
    """Return the room that a construction takes, metres: ``behind`` the chord, ``inside`` and ``outside`` the curve,
    and the ``tape`` of its longest pull."""
    needs = {"behind": 0.0, "inside": 0.0, "outside": 0.0, "tape": 0.0}
    for step in recipe.steps:
        if not step.level:
            continue
        for kind, _start, _end, a, b in _lines(recipe.at, step):
            for name, size in _room_taken(arc, a, b).items():
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


def _lines(at: Marks, step: Step) -> Iterator[tuple[str, str, str, Point, Point]]:
    """Yield the pulls, strings and sights of a step: kind, its marks, and where they are."""
    for measure in step.measures:
        yield PULL, measure.start, measure.end, at[measure.start], at[measure.end]
    for move in step.moves:
        for kind, start, end in move.lines:
            yield kind, start, end, at[start], at[end]


Boxes = Sequence[tuple[Obstacle, tuple[float, float, float, float]]]


def _line(
    arc: Arc, limits: Limits, walls: Boxes, number: int, kind: str, start: tuple[str, Point], end: tuple[str, Point]
) -> Iterator[Blocked]:
    (first, a), (second, b) = start, end
    if kind == PULL and distance(a, b) > limits.tape + SPARE:
        yield Blocked("tape", number, first, second, "", distance(a, b))
    for name in _stoppers(walls, a, b):
        yield Blocked(kind, number, first, second, name, distance(a, b))
    if limits.room:
        taken = _room_taken(arc, a, b)
        for name, there in limits.room.items():
            if taken[name] > there + SPARE:
                yield Blocked(name, number, first, second, "", taken[name])


def _stoppers(walls: Boxes, a: Point, b: Point) -> Iterator[str]:
    """Yield the names of what stops a tape on the straight way between two places."""
    for one, box in walls:
        if _meets(a, b, box) and inside_of(one.outline, a, b) > TOUCH:
            yield one.name


def _place(boxes: Boxes, number: int, mark: str, point: Point) -> Iterator[Blocked]:
    for one, box in boxes:
        if _meets(point, point, box) and within(one.outline, point):
            yield Blocked("feet", number, mark, mark, one.name, 0.0)


def _triangle(at: Marks, walls: Boxes, number: int, move: SquareOff) -> Iterator[Blocked]:
    """A squaring triangle finds room on one side of its foot or on the other.

    The largest one at hand is tried first. Where that meets something, its leg out may end at the stake and its leg
    along the string be as short as that: with legs no shorter than the offset the stake comes to stand at most
    2 root 2 readings aside, along the string (``squaring.turn_of_square``: offset times 2 read root(1/a² + 1/b²)).
    Where the tape to the stake itself is stopped, that was told.
    """
    foot, start, end = at[move.foot], at[move.start], at[move.end]
    if next(_stoppers(walls, foot, at[move.mark]), None):
        return
    u = unit_vector(start, end)
    out = left_of(u) if move.left else Point(u.y, -u.x)
    blocked = ""
    # The string runs on at least to its ends; the longer way from the foot is tried first.
    ways = sorted(((distance(foot, mark), mark) for mark in (start, end)), reverse=True)
    for room, mark in ways:
        if room <= TOUCH:
            continue
        way = unit_vector(foot, mark)
        for along, leg in _triangles(room, move.length):
            tip, corner = foot.plus(out, leg), foot.plus(way, along)
            stopped = next((name for a in (foot, corner) for name in _stoppers(walls, a, tip)), None)
            if stopped is None:
                return
            blocked = blocked or stopped
    if blocked:
        yield Blocked("triangle", number, move.foot, move.mark, blocked, move.length)


def _triangles(room: float, offset: float) -> list[tuple[float, float]]:
    """The legs along and out of the triangles that are tried, metres, the largest first."""
    along, leg = legs_at_hand(room, offset)
    short = min(offset, leg)
    least = min(along, max(short, METRIC_BLADE))
    return list(dict.fromkeys(((along, leg), (along, short), (least, leg), (least, short))))


def _room_taken(arc: Arc, a: Point, b: Point) -> dict[str, float]:
    """How far a straight line reaches behind the chord, inside the curve and outside it, metres."""
    centre = arc.centre
    far = max(distance(centre, a), distance(centre, b))
    near = distance_to_side(centre, a, b)
    return {
        "behind": max(-min(a.y, b.y), 0.0),
        "inside": max(arc.radius - near, 0.0),
        "outside": max(far - arc.radius, 0.0),
    }


def _meets(a: Point, b: Point, box: tuple[float, float, float, float]) -> bool:
    left, right, low, high = box
    return not (
        (a.x < left and b.x < left) or (a.x > right and b.x > right)
        or (a.y < low and b.y < low) or (a.y > high and b.y > high)
    )  # fmt: skip
