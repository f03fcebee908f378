"""What there is on a site: the tape, the room, and what stands in the way of a straight line or of somebody's feet.

An obstacle that stops a tape stops feet too; one that stops feet lets a tape or a sight pass over it. A string, tape or
sight has to pass ``CLEAR`` of what stops it: a trunk has bark and roots, a wall its footing, and nobody measured
either to a hair. A stake may stand against a wall: that is another test (``standing``).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from bowstring.analysis.squaring import Kit
from bowstring.geometry.arc import Arc
from bowstring.geometry.outlines import TOUCH, brushes, distance_to_side, gap_to, inside_of, within
from bowstring.geometry.plane import Point, distance
from bowstring.job.obstacles import Obstacle
from bowstring.units.sizes import INCH

SPARE = 1e-6
"""Metres: a pull as long as the tape is no longer than it."""

CLEAR = {True: 3 * INCH, False: 0.075}
"""Metres, in feet or not: what a string, tape or sight keeps off an obstacle that stops it (3 in, 75 mm), the width of
a hand without its thumb: common practice, no source."""


@dataclass(frozen=True)
class Limits:
    """What there is: the tape's length in metres, the room ``behind`` the chord, ``inside`` and ``outside`` the curve
    (metres, where it is said), the obstacles, what a crew squares with, and how ``clear`` of an obstacle a string, tape
    or sight has to pass (metres)."""

    tape: float
    room: Mapping[str, float]
    obstacles: Sequence[Obstacle]
    kit: Kit = field(default_factory=Kit)
    clear: float = CLEAR[True]


class Obstructions:
    """The limits of a site, ready to be asked about one line or one place after another."""

    def __init__(self, arc: Arc, limits: Limits) -> None:
        self.arc, self.limits = arc, limits
        self._feet = [(one, one.box()) for one in limits.obstacles]
        self._walls = [(one, box) for one, box in self._feet if one.stops_tape]

    @property
    def any(self) -> bool:
        """Whether anything but the tape's length could be in the way."""
        return bool(self._feet or self.limits.room)

    def stoppers(self, a: Point, b: Point) -> Iterator[str]:
        """Yield the names of what stops a tape on the straight way between two places."""
        for one, box in self._walls:
            if not _meets(a, b, box, self.limits.clear):
                continue
            if inside_of(one.outline, a, b) > TOUCH or brushes(one.outline, a, b, self.limits.clear):
                yield one.name

    def gap(self, name: str, a: Point, b: Point) -> float:
        """Return how near a straight way passes the obstacle of a name, metres; 0 where it goes through."""
        return next(gap_to(one.outline, a, b) for one, _box in self._walls if one.name == name)

    def passed(self, a: Point, b: Point, within: float) -> Iterator[tuple[str, float]]:
        """Yield what stops a tape and is nearer to a straight way than ``within``, with how near, both in metres."""
        for one, box in self._walls:
            if _meets(a, b, box, within):
                near = gap_to(one.outline, a, b)
                if near < within:
                    yield one.name, near

    def standing(self, point: Point) -> Iterator[str]:
        """Yield the names of that in which nobody can stand at a place."""
        for one, box in self._feet:
            if _meets(point, point, box) and within(one.outline, point):
                yield one.name

    def over_room(self, a: Point, b: Point) -> Iterator[tuple[str, float]]:
        """Yield where a straight way goes farther than there is room, and how far it goes, metres."""
        if self.limits.room:
            taken = room_taken(self.arc, a, b)
            yield from ((name, taken[name]) for name, there in self.limits.room.items() if taken[name] > there + SPARE)

    def in_the_way(self, a: Point, b: Point) -> str | None:
        """Return what stops a straight way, empty where that is the room; ``None`` where it is free."""
        stopped = next(self.stoppers(a, b), None)
        if stopped is None and next(self.over_room(a, b), None):
            return ""
        return stopped

    def free(self, a: Point, b: Point) -> bool:
        """Whether a tape can lie, or a string or a sight run, straight from one place to another."""
        return self.in_the_way(a, b) is None

    def stands(self, point: Point) -> bool:
        """Whether somebody can stand at a place."""
        return next(self.standing(point), None) is None

    def reaches(self, a: Point, b: Point) -> bool:
        """Whether the tape is long enough to be held between two places."""
        return distance(a, b) <= self.limits.tape + SPARE

    def tapeable(self, a: Point, b: Point) -> bool:
        """Whether one pull of the tape measures from one place to another."""
        return self.reaches(a, b) and self.free(a, b) and self.stands(a) and self.stands(b)


def room_taken(arc: Arc, a: Point, b: Point) -> dict[str, float]:
    """Return how far a straight line reaches behind the chord, inside the curve and outside it, metres."""
    centre = arc.centre
    far = max(distance(centre, a), distance(centre, b))
    near = distance_to_side(centre, a, b)
    return {
        "behind": max(-min(a.y, b.y), 0.0),
        "inside": max(arc.radius - near, 0.0),
        "outside": max(far - arc.radius, 0.0),
    }


def _meets(a: Point, b: Point, box: tuple[float, float, float, float], around: float = 0.0) -> bool:
    left, right, low, high = box[0] - around, box[1] + around, box[2] - around, box[3] + around
    return not (
        (a.x < left and b.x < left) or (a.x > right and b.x > right)
        or (a.y < low and b.y < low) or (a.y > high and b.y > high)
    )  # fmt: skip
