"""What the ground lets through: every pull, sight, string and triangle of a construction against what is in the way.

An obstacle that stops a tape stops feet too; one that stops feet lets a tape or a sight pass over it. Touching an
outline is allowed: a tape may lie along a wall.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from bowstring.arc import Arc
from bowstring.construction import Along, Bisect, CrossTapes, Marks, Move, Recipe, Sight, SquareOff, Step, TurnOff
from bowstring.plane import Point, distance, left_of, unit_vector
from bowstring.walks.squaring import legs_at_hand

TOUCH = 0.005
"""Metres: less of a tape inside an outline is a touch (common practice, no source)."""

SPARE = 1e-6
"""Metres: a pull as long as the tape is no longer than it."""


@dataclass(frozen=True)
class Obstacle:
    """Something in the way: its outline in metres in the frame of the chord, and whether it stops a tape too."""

    name: str
    stops_tape: bool
    outline: tuple[Point, ...]

    def box(self) -> tuple[float, float, float, float]:
        """Return its least and greatest x, then y."""
        xs, ys = [p.x for p in self.outline], [p.y for p in self.outline]
        return min(xs), max(xs), min(ys), max(ys)


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
    seen: set[tuple[str, str, str]] = set()
    for number, step in enumerate(recipe.steps, 1):
        if not step.level:
            continue
        for kind, start, end, a, b in _lines(recipe.at, step):
            if (kind, start, end) in seen:
                continue
            seen.add((kind, start, end))
            yield from _line(arc, limits, boxes, number, kind, (start, a), (end, b))
        for move in step.moves:
            if isinstance(move, SquareOff) and not move.slide:
                yield from _triangle(recipe.at, boxes, number, move)
            yield from _place(arc, limits, boxes, number, move.mark, recipe.at[move.mark])


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
            if kind == "pull":
                needs["tape"] = max(needs["tape"], distance(a, b))
    return needs


def longest_pull(recipe: Recipe) -> float:
    """Return the longest distance in metres that a step after the ends measures; 0 without one."""
    return max((measure.length for step in recipe.steps if step.level for measure in step.measures), default=0.0)


def measurements_of(steps: Iterable[Step]) -> int:
    """Return how many readings a crew takes, squaring included.

    A middle is taped from both ends; an offset is one reading, kept square by the two half chords or by a triangle's
    three sides; a reading that stays on the tape for many stakes (a swing's radius) counts once.
    """
    count, kept = 0, set()
    for step in steps:
        if not step.level:
            continue
        for move in step.moves:
            if isinstance(move, CrossTapes) and step.kind == "swing":
                kept.add(move.first)
                count += 1
            else:
                count += _READINGS.get(type(move).__name__, 0)
                count += (2 if move.slide else 3) if isinstance(move, SquareOff) else 0
    return count + len(kept)


_READINGS = {"Bisect": 2, "Along": 1, "SquareOff": 1, "CrossTapes": 2, "TurnOff": 2, "Sight": 2}


def _lines(at: Marks, step: Step) -> Iterator[tuple[str, str, str, Point, Point]]:
    """Yield the pulls, strings and sights of a step: kind, its marks, and where they are."""
    for measure in step.measures:
        yield "pull", measure.start, measure.end, at[measure.start], at[measure.end]
    for move in step.moves:
        for kind, start, end in _ends_of(move):
            yield kind, start, end, at[start], at[end]


def _ends_of(move: Move) -> Iterator[tuple[str, str, str]]:
    if isinstance(move, Bisect):
        yield "string", move.start, move.end
        yield "pull", move.start, move.mark
        yield "pull", move.mark, move.end
    elif isinstance(move, Along):
        yield "string", move.start, move.toward
        yield "string", move.start, move.mark
    elif isinstance(move, SquareOff):
        yield "pull", move.foot, move.mark
        if move.slide:
            yield "pull", move.start, move.mark
            yield "pull", move.mark, move.end
    elif isinstance(move, CrossTapes):
        yield "pull", move.first, move.mark
        yield "pull", move.second, move.mark
    elif isinstance(move, TurnOff | Sight):
        yield "sight", move.at, move.mark
        yield "sight", move.at, move.back


Boxes = Sequence[tuple[Obstacle, tuple[float, float, float, float]]]


def _line(
    arc: Arc, limits: Limits, boxes: Boxes, number: int, kind: str, start: tuple[str, Point], end: tuple[str, Point]
) -> Iterator[Blocked]:
    (first, a), (second, b) = start, end
    if kind == "pull" and distance(a, b) > limits.tape + SPARE:
        yield Blocked("tape", number, first, second, "", distance(a, b))
    for one, box in boxes:
        if one.stops_tape and _meets(a, b, box) and inside_of(one.outline, a, b) > TOUCH:
            yield Blocked(kind, number, first, second, one.name, distance(a, b))
    if limits.room:
        taken = _room_taken(arc, a, b)
        for name, there in limits.room.items():
            if taken[name] > there + SPARE:
                yield Blocked(name, number, first, second, "", taken[name])


def _place(
    arc: Arc, limits: Limits, boxes: Boxes, number: int, mark: str, point: Point
) -> Iterator[Blocked]:
    for one, box in boxes:
        if _meets(point, point, box) and holds(one.outline, point):
            yield Blocked("feet", number, mark, mark, one.name, 0.0)


def _triangle(at: Marks, boxes: Boxes, number: int, move: SquareOff) -> Iterator[Blocked]:
    """A squaring triangle finds room on one side of its foot or on the other; its leg out reaches to the stake at
    least."""
    if not any(one.stops_tape for one, _box in boxes):
        return
    foot, start, end = at[move.foot], at[move.start], at[move.end]
    u = unit_vector(start, end)
    out = left_of(u) if move.left else Point(u.y, -u.x)
    blocked = ""
    # The string runs on at least to its ends; the longer way from the foot is tried first.
    ways = sorted(((distance(foot, mark), mark) for mark in (start, end)), reverse=True)
    for room, mark in ways:
        along, leg = legs_at_hand(room, move.length)
        if room <= TOUCH:
            continue
        tip, corner = foot.plus(out, leg), foot.plus(unit_vector(foot, mark), along)
        stopped = next(
            (one.name for one, box in boxes if one.stops_tape and any(
                _meets(a, b, box) and inside_of(one.outline, a, b) > TOUCH for a, b in ((foot, tip), (corner, tip))
            )),
            None,
        )  # fmt: skip
        if stopped is None:
            return
        blocked = blocked or stopped
    if blocked:
        yield Blocked("triangle", number, move.foot, move.mark, blocked, move.length)


def _room_taken(arc: Arc, a: Point, b: Point) -> dict[str, float]:
    """How far a straight line reaches behind the chord, inside the curve and outside it, metres."""
    centre = arc.centre
    far = max(distance(centre, a), distance(centre, b))
    near = _nearest(centre, a, b)
    return {
        "behind": max(-min(a.y, b.y), 0.0),
        "inside": max(arc.radius - near, 0.0),
        "outside": max(far - arc.radius, 0.0),
    }


def _nearest(point: Point, a: Point, b: Point) -> float:
    way = b.minus(a)
    square = way.dot(way)
    part = min(max(point.minus(a).dot(way) / square, 0.0), 1.0) if square else 0.0
    return distance(point, a.plus(way, part))


def _meets(a: Point, b: Point, box: tuple[float, float, float, float]) -> bool:
    return not (
        max(a.x, b.x) < box[0] or min(a.x, b.x) > box[1] or max(a.y, b.y) < box[2] or min(a.y, b.y) > box[3]
    )


def inside_of(outline: Sequence[Point], a: Point, b: Point) -> float:
    """Return how much of the straight way from ``a`` to ``b`` lies inside an outline, metres.

    The way is cut where it crosses a side; each piece is inside or outside as its middle is.
    """
    way = b.minus(a)
    length = hypot(way.x, way.y)
    if length == 0:
        return 0.0
    cuts = {0.0, 1.0}
    for one, other in zip(outline, [*outline[1:], outline[0]], strict=True):
        side = other.minus(one)
        det = way.cross(side)
        if det:
            part, on_side = one.minus(a).cross(side) / det, one.minus(a).cross(way) / det
            if 0 < part < 1 and -1e-9 <= on_side <= 1 + 1e-9:
                cuts.add(part)
    ends = sorted(cuts)
    return length * sum(
        end - start for start, end in pairwise(ends) if holds(outline, a.plus(way, (start + end) / 2))
    )


def holds(outline: Sequence[Point], point: Point) -> bool:
    """Return whether a point is inside an outline: a ray from it crosses the sides an odd number of times."""
    inside = False
    for one, other in zip(outline, [*outline[1:], outline[0]], strict=True):
        if (one.y > point.y) != (other.y > point.y):
            x = one.x + (point.y - one.y) / (other.y - one.y) * (other.x - one.x)
            inside ^= point.x < x
    return inside
