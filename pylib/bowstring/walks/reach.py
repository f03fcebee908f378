"""What the ground lets through: every pull, sight, string and triangle of a construction against what is in the way.

An obstacle that stops a tape stops feet too; one that stops feet lets a tape or a sight pass over it. Touching an
outline is allowed: a tape may lie along a wall, and a stake may stand against it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from bowstring.arc import Arc
from bowstring.construction import Along, Bisect, CrossTapes, Marks, Move, Recipe, Sight, SquareOff, Step, TurnOff
from bowstring.plane import Point, distance, left_of, unit_vector
from bowstring.walks.squaring import METRIC_BLADE, legs_at_hand

TOUCH = 0.005
"""Metres: less of a tape inside an outline is a touch (common practice, no source)."""

SKIN = TOUCH / 2
"""Metres: what lies no deeper inside an outline than this lies along it. A straight way square through something
thicker than ``TOUCH`` is deeper in its middle, so nothing that counts is lost."""

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
            if walls and isinstance(move, SquareOff) and not move.slide:
                yield from _triangle(recipe.at, walls, number, move)
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
    arc: Arc, limits: Limits, walls: Boxes, number: int, kind: str, start: tuple[str, Point], end: tuple[str, Point]
) -> Iterator[Blocked]:
    (first, a), (second, b) = start, end
    if kind == "pull" and distance(a, b) > limits.tape + SPARE:
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
    left, right, low, high = box
    return not (
        (a.x < left and b.x < left) or (a.x > right and b.x > right)
        or (a.y < low and b.y < low) or (a.y > high and b.y > high)
    )  # fmt: skip


def inside_of(outline: Sequence[Point], a: Point, b: Point) -> float:
    """Return how much of the straight way from ``a`` to ``b`` lies inside an outline, metres.

    The way is cut where it crosses a side; each piece is inside or outside as its middle is. What lies along a side
    is outside.
    """
    way = b.minus(a)
    length = hypot(way.x, way.y)
    if length == 0:
        return 0.0
    # How far each corner is to the left of the way, times its length: all on one side is what most outlines are.
    sides = [way.x * (corner.y - a.y) - way.y * (corner.x - a.x) for corner in outline]
    if min(sides) > 0 or max(sides) < 0:
        return 0.0
    cuts = {0.0, 1.0}
    for number, (corner, side) in enumerate(zip(outline, sides, strict=True)):
        before, last = outline[number - 1], sides[number - 1]
        # A side that lies along the way needs no cut of its own: its neighbours end there.
        if side == last or (side > 0 and last > 0) or (side < 0 and last < 0):
            continue
        part = last / (last - side)
        x, y = before.x + part * (corner.x - before.x), before.y + part * (corner.y - before.y)
        along = (way.x * (x - a.x) + way.y * (y - a.y)) / (length * length)
        if 0 < along < 1:
            cuts.add(along)
    ends = sorted(cuts)
    return length * sum(
        end - start for start, end in pairwise(ends) if within(outline, a.plus(way, (start + end) / 2))
    )


def within(outline: Sequence[Point], point: Point) -> bool:
    """Return whether a point is inside an outline and not on its line, by more than ``SKIN``."""
    return holds(outline, point) and all(
        _nearest(point, one, other) > SKIN for one, other in zip(outline, [*outline[1:], outline[0]], strict=True)
    )


def holds(outline: Sequence[Point], point: Point) -> bool:
    """Return whether a point is inside an outline: a ray from it crosses the sides an odd number of times."""
    inside = False
    for one, other in zip(outline, [*outline[1:], outline[0]], strict=True):
        if (one.y > point.y) != (other.y > point.y):
            x = one.x + (point.y - one.y) / (other.y - one.y) * (other.x - one.x)
            inside ^= point.x < x
    return inside


def fault_of(outline: Sequence[Point]) -> str | None:
    """Return why an outline encloses nothing that can be told: ``thin`` (a tape across it would seem to touch it only)
    or ``crossed`` (two of its sides meet that aren't neighbours); ``None`` where it is sound."""
    sides = list(zip(outline, [*outline[1:], outline[0]], strict=True))
    one, other = max(sides, key=lambda side: distance(*side))
    way = unit_vector(one, other)
    if max(abs(way.cross(corner.minus(one))) for corner in outline) <= TOUCH:
        return "thin"
    for number, side in enumerate(sides):
        for later in range(number + 1, len(sides)):
            if later - number in (1, len(sides) - 1):
                # Neighbours share a corner; they may not lie on each other.
                shared, ends = (side[1], (side[0], sides[later][1])) if later == number + 1 else (
                    side[0], (side[1], sides[later][0]))  # fmt: skip
                a, b = (end.minus(shared) for end in ends)
                if abs(a.cross(b)) <= 1e-12 * hypot(*a) * hypot(*b) and a.dot(b) > 0:
                    return "crossed"
            elif _cross(*side, *sides[later]):
                return "crossed"
    area = abs(sum(one.cross(other) for one, other in sides)) / 2
    # A strip's area over half of what runs round it is its width, nearly.
    return "thin" if area <= TOUCH * sum(distance(*side) for side in sides) / 2 else None


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two straight ways have a place in common."""
    if max(a.x, b.x) < min(c.x, d.x) or max(c.x, d.x) < min(a.x, b.x):
        return False
    if max(a.y, b.y) < min(c.y, d.y) or max(c.y, d.y) < min(a.y, b.y):
        return False
    first, second = b.minus(a), d.minus(c)
    return (
        first.cross(c.minus(a)) * first.cross(d.minus(a)) <= 0
        and second.cross(a.minus(c)) * second.cross(b.minus(c)) <= 0
    )
