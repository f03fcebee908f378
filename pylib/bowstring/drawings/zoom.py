"""A map that zooms to a few marks: all of them apart, each on its true hand, whatever their distances are.

The line that is worked from lies level, and what is on somebody's left is on the left: for a curve on the right the
frame is its mirror image. Across and along are stretched each by itself, so that a short offset and a near mark can be
seen; nothing changes its side.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bowstring.drawings.boxes import Box
from bowstring.drawings.svg import Point
from bowstring.drawings.turn import turn_of

ALIKE = 0.04
"""Part of a range: marks this near in one direction, and apart in the other, are drawn at one place in it."""

DUST = 1e-6
"""Part of the whole: what is nearer is one place."""

LEAST = 34.0
"""Least distance of two places across, drawing units."""

TRUE = 1.06
"""Scales this near to each other are one."""


@dataclass(frozen=True)
class Axis:
    """Where places in one direction, metres, lie on paper: straight between two of them, on past the ends."""

    places: Sequence[float]
    paper: Sequence[float]

    def of(self, place: float) -> float:
        """Return where a place lies."""
        places, paper = self.places, self.paper
        if len(places) == 1:
            return paper[0]
        for end in (0, -1):  # past the ends by the scale of the whole
            past = place - places[end]
            if past <= 0 if end == 0 else past >= 0:
                return paper[end] + past * (paper[-1] - paper[0]) / (places[-1] - places[0])
        piece = bisect_right(places, place) - 1
        part = (place - places[piece]) / (places[piece + 1] - places[piece])
        return paper[piece] + part * (paper[piece + 1] - paper[piece])

    @property
    def scales(self) -> list[float]:
        """Units per metre, piece by piece."""
        return [abs(self.paper[i + 1] - self.paper[i]) / (self.places[i + 1] - self.places[i])
                for i in range(len(self.places) - 1)]  # fmt: skip


@dataclass(frozen=True)
class Zoom:
    """A map of the frame (metres, y toward the curve) onto paper (y down).

    ``mirror``: the job's ``turn``, 1 or -1; ``ahead``: the level line's direction in the mirrored frame.
    """

    mirror: int
    ahead: Point
    along: Axis
    across: Axis

    def turned(self, x: float, y: float) -> Point:
        """Return how far along and across a place lies, metres."""
        return _turned((x * self.mirror, y), self.ahead)

    def point(self, x: float, y: float) -> Point:
        """Return a place on paper."""
        u, v = self.turned(x, y)
        return self.along.of(u), self.across.of(v)

    @property
    def true(self) -> bool:
        """Whether it is to scale."""
        scales = [*self.along.scales, *self.across.scales]
        return not scales or max(scales) <= TRUE * min(scales)


def _turned(place: Point, ahead: Point) -> Point:
    (x, y), (c, s) = place, ahead
    return x * c + y * s, y * c - x * s


def zoom_on(
    places: Mapping[str, Point], base: tuple[str, str], side: str | None, onward: bool, room: Box, least: float
) -> Zoom:
    """Return the map that puts some marks into a room on paper, the line between two of them level.

    ``onward``: the line runs from left to right for a curve on the left, from right to left for one on the right;
    otherwise it is turned as little as will do. ``least``: that of two places along, drawing units.
    """
    mirror = turn_of(side)
    at = {name: (x * mirror, y) for name, (x, y) in places.items()}
    (x, y), (x2, y2) = at[base[0]], at[base[1]]
    size = math.hypot(x2 - x, y2 - y)
    ahead = ((x2 - x) / size, (y2 - y) / size) if size else (1.0, 0.0)
    if ahead[0] < 0 if not onward else mirror < 0:
        ahead = (-ahead[0], -ahead[1])
    turned = {name: _turned(place, ahead) for name, place in at.items()}
    us, vs = ([place[axis] for place in turned.values()] for axis in (0, 1))
    whole = max(max(us) - min(us), max(vs) - min(vs)) or 1.0
    for part in (ALIKE, DUST):
        along = _clusters(us, max(part * (max(us) - min(us)), DUST * whole))
        across = _clusters(vs, max(part * (max(vs) - min(vs)), DUST * whole))
        if _apart(list(turned.values()), along, across, DUST * whole):
            break
    wide, high = room.right - room.left, room.bottom - room.top
    scale = wide / (along[-1][0] - along[0][0]) if len(along) > 1 else math.inf
    tall = min(max(scale * (across[-1][0] - across[0][0]), 44.0, LEAST * (len(across) - 1)), high)
    middle = (room.left + room.right) / 2
    xs = [middle] if len(along) == 1 else _spaced(along, room.left, wide, least)
    low = room.bottom - (high - tall) / 2
    ys = [low] if len(across) == 1 else [low - up for up in _spaced(across, 0.0, tall, LEAST)]
    return Zoom(mirror, ahead, _axis(along, xs, DUST * whole), _axis(across, ys, DUST * whole))


Cluster = tuple[float, float]
"""The first and the last of values that are drawn at one place."""


def _clusters(values: Sequence[float], near: float) -> list[Cluster]:
    """The places at which values stand, in order: those nearer than ``near`` to the first of them are one."""
    found: list[Cluster] = []
    for value in sorted(values):
        if not found or value - found[-1][0] > near:
            found.append((value, value))
        else:
            found[-1] = (found[-1][0], value)
    return found


def _axis(clusters: Sequence[Cluster], paper: Sequence[float], dust: float) -> Axis:
    places: list[float] = []
    on_paper: list[float] = []
    for (first, last), at in zip(clusters, paper, strict=True):
        places += [first] if last - first <= dust else [first, last]
        on_paper += [at] * (1 if last - first <= dust else 2)
    return Axis(places, on_paper)


def _apart(places: Sequence[Point], along: Sequence[Cluster], across: Sequence[Cluster], dust: float) -> bool:
    """Whether no two marks at different places come to one."""
    firsts = [[first for first, _last in clusters] for clusters in (along, across)]
    seen: dict[tuple[int, ...], Point] = {}
    for place in places:
        cell = tuple(bisect_right(first, value) for first, value in zip(firsts, place, strict=True))
        if math.dist(seen.setdefault(cell, place), place) > 2 * dust:
            return False
    return True


def _spaced(clusters: Sequence[Cluster], start: float, total: float, least: float) -> list[float]:
    """Return places for values in order over ``total``, in proportion but ``least`` apart where there is room."""
    gaps = [other[0] - one[0] for one, other in pairwise(clusters)]
    least = min(least, total / len(gaps))
    short: set[int] = set()
    while len(short) < len(gaps):
        left = sum(gap for place, gap in enumerate(gaps) if place not in short)
        room = total - least * len(short)
        more = {
            place for place, gap in enumerate(gaps) if place not in short and gap / left * room < least * (1 - 1e-9)
        }
        if not more:
            break
        short |= more
    places = [start]
    for place, gap in enumerate(gaps):
        places.append(places[-1] + (least if place in short else gap / left * room))
    return places
