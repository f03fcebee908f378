"""What there is on a site: the tape, the room, and what stands in the way of a straight line or of somebody's feet.

An obstacle that stops a tape stops feet too; one that stops feet lets a tape or a sight pass over it. Touching an
outline is allowed: a tape may lie along a wall, and a stake may stand against it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from bowstring.analysis.squaring import Kit
from bowstring.geometry.arc import Arc
from bowstring.geometry.outlines import TOUCH, distance_to_side, inside_of, within
from bowstring.geometry.plane import Point, distance
from bowstring.job.obstacles import Obstacle

SPARE = 1e-6
"""Metres: a pull as long as the tape is no longer than it."""


@dataclass(frozen=True)
class Limits:
    """What there is: the tape's length in metres, the room ``behind`` the chord, ``inside`` and ``outside`` the curve
    (metres, where it is said), the obstacles, and what a crew squares with."""

    tape: float
    room: Mapping[str, float]
    obstacles: Sequence[Obstacle]
    kit: Kit = field(default_factory=Kit)


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
            if _meets(a, b, box) and inside_of(one.outline, a, b) > TOUCH:
                yield one.name

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


def _meets(a: Point, b: Point, box: tuple[float, float, float, float]) -> bool:
    left, right, low, high = box
    return not (
        (a.x < left and b.x < left) or (a.x > right and b.x > right)
        or (a.y < low and b.y < low) or (a.y > high and b.y > high)
    )  # fmt: skip
