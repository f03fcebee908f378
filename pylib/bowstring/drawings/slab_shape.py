"""The slab between its two edges on paper, bent so that a phone shows it.

To scale wherever that can be seen. A slab so flat, so round, so narrow or so wide that it couldn't be is drawn bent or
wide otherwise; the numbers stay the job's.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from bowstring.drawings.sketch import MARGIN
from bowstring.drawings.svg import Command, Point
from bowstring.drawings.turn import turn_of
from bowstring.report.alone import edges_of
from bowstring.report.forming.fill_edges import FILLS
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart

MIDDLE, HALF_WIDE, HIGH = 180.0, 146.0, 168.0
"""Drawing units: the middle of a phone's width, and how far to each side and how high the slab may reach."""

_ASIDE = 26.0
"""Drawing units beside the slab in which names may stand."""

NAMES = 112.0
"""Drawing units that the name of what stands at an end has on a sheet of paper before it is broken."""

SCALE, _WORDS = 0.8, 20.0
"""Pixels of a drawing unit on a sheet of paper, and units over and under a slab there that its words take."""


@dataclass(frozen=True)
class Room:
    """Where a slab is drawn, drawing units: its middle, how far to each side and how high it may reach, and how wide
    names may stand beside it."""

    middle: float
    half_wide: float
    high: float
    aside: float = _ASIDE

    @property
    def left(self) -> float:
        """Where words may begin."""
        return self.middle - self.half_wide - self.aside

    @property
    def right(self) -> float:
        """Where words must end."""
        return self.middle + self.half_wide + self.aside


PHONE = Room(MIDDLE, HALF_WIDE, HIGH)


def sheet_room(wide: float, high: float) -> Room:
    """Return the room of a drawing that is so wide and so high on a sheet of paper, pixels."""
    half, aside = wide / SCALE / 2, _ASIDE + NAMES
    return Room(half, half - aside - MARGIN, high / SCALE - _WORDS, aside)


_FLATTEST, _ROUNDEST = 0.26, 0.84 * math.pi
"""Half the angle that is drawn at least, and at most: of what is rounder A and B would stand on each other."""

_NARROWEST, _WIDEST = 24.0, 62.0
_LEAST_OFF, _MOST_OFF = 12.0, 24.0
_LEAST_INNER = 6.0
_TRUE = 1.05
_LONGEST_SIDES, _LEAST_LINE = 90.0, 40.0
_LONGEST_PIECE = math.pi / 7

DOTTED = 30.0
"""Drawing units from a line whose slab isn't known yet to where its sides might be."""


@dataclass(frozen=True)
class SlabShape:
    """A slab on paper. Places are told by a share, -1 at A and 1 at B, and by a side.

    Attributes:
        half: half the angle that is drawn, radians; line: the line's radius on paper, its middle at height 0.
        outside, inside: how far from the line, outward, each edge is drawn at A and at B.
        stakes: how far from the line, outward, the stakes stand.
        turn: which way B lies from A; true: whether it is to scale; known: whether there is a slab.
        filled: whether it is all that lies between the line and its string, which is its inside then.
        sides: how long the straight sides are that run back from such a line: its inside is that far behind the string;
            both: it is the same curve turned over.
        across: drawing units of a metre across the line; middle: where the slab's middle lies.
    """

    half: float
    line: float
    outside: tuple[float, float]
    inside: tuple[float, float]
    stakes: float
    turn: int
    true: bool
    known: bool
    filled: bool = False
    sides: float = 0.0
    both: bool = False
    across: float = 0.0
    middle: float = MIDDLE

    def off(self, side: str, share: float) -> float:
        """Return how far from the line, outward, an edge lies at a share."""
        if side == "stakes":
            return self.stakes
        first, last = self.outside if side == "outside" else self.inside
        return first + (last - first) * (share + 1) / 2

    def at(self, share: float, off: float) -> Point:
        """Return the place at a share and so many units outward from the line."""
        angle, radius = share * self.half, self.line + off
        # The line's middle lies at height 0, so that no place is the difference of two large numbers.
        down = 2 * radius * math.sin(angle / 2) ** 2 - off
        return (self.middle + self.turn * radius * math.sin(angle), down)

    def on(self, side: str, share: float) -> Point:
        """Return the place on an edge, or on the line of the stakes, at a share; on a string by even parts of it."""
        if self.filled and side == "inside":
            return self._turned(self.at(share, 0.0)) if self.both else self.string(share, self.sides)
        return self.at(share, self.off(side, share))

    def string(self, share: float, behind: float = 0.0) -> Point:
        """Return the place on the string by even parts of it, or so many units behind that."""
        (x, y), (x2, y2) = self.at(-1.0, 0.0), self.at(1.0, 0.0)
        part = (share + 1) / 2
        return (x + (x2 - x) * part, y + (y2 - y) * part + behind)

    def _turned(self, place: Point) -> Point:
        """The place of the other curve that is straight behind one of this curve."""
        return (place[0], 2 * self.at(1.0, 0.0)[1] + self.sides - place[1])

    def between(self, share: float, part: float) -> Point:
        """Return the place at a part of the width, 0 at the outer edge and 1 at the inner one."""
        if self.filled:
            (x, y), (x2, y2) = self.on("outside", share), self.on("inside", share)
            return (x + (x2 - x) * part, y + (y2 - y) * part)
        outer, inner = self.off("outside", share), self.off("inside", share)
        return self.at(share, outer + (inner - outer) * part)

    def outward(self, share: float) -> Point:
        """Return the unit direction away from the center."""
        angle = share * self.half
        return (self.turn * math.sin(angle), -math.cos(angle))

    def ahead(self, share: float) -> Point:
        """Return the unit direction from A toward B."""
        angle = share * self.half
        return (self.turn * math.cos(angle), math.sin(angle))

    def samples(self, side: str, first: float = -1.0, last: float = 1.0, more: float = 0.0) -> list[Point]:
        """Return points along an edge; ``more``: so many units outward from it."""
        count = max(4, math.ceil(abs(last - first) * self.half * 14))
        shares = [first + (last - first) * step / count for step in range(count + 1)]
        if self.sides and side == "inside":
            return [self.on(side, share) for share in shares]
        return [self.at(share, self.off(side, share) + more) for share in shares]

    def curve(self, side: str, first: float = -1.0, last: float = 1.0) -> list[Command]:
        """Return an edge as cubic curves, from one share to another; a string as one line."""
        if self.filled and side == "inside":
            if self.both:
                return [(name, *map(self._turned, places)) for name, *places in self.curve("outside", first, last)]
            return [("M", self.on(side, first)), ("L", self.on(side, last))]
        count = max(1, math.ceil(abs(last - first) * self.half / _LONGEST_PIECE))
        shares = [first + (last - first) * step / count for step in range(count + 1)]
        made: list[Command] = [("M", self.on(side, first))]
        for one, other in pairwise(shares):
            (x, y), (x2, y2) = self.on(side, one), self.on(side, other)
            (dx, dy), (dx2, dy2) = self._pull(side, one, other - one), self._pull(side, other, other - one)
            made.append(("C", (x + dx, y + dy), (x2 - dx2, y2 - dy2), (x2, y2)))
        return made

    def _pull(self, side: str, share: float, step: float) -> Point:
        """How far a curve's handle stands off its end: true for a circle, and for an edge that tapers."""
        radius, angle = self.line + self.off(side, share), self.half * step
        along = radius * 4 / 3 * math.tan(angle / 4)
        out = (self.off(side, share + step) - self.off(side, share)) / 3
        (ax, ay), (ox, oy) = self.ahead(share), self.outward(share)
        return (ax * along + ox * out, ay * along + oy * out)


def shape_of(answer: Answer, room: Room = PHONE) -> SlabShape:
    """Return the slab of an answer in a room, or its line alone. Raises ``ValueError`` for an arc without a length."""
    arc, edges = answer["arc"], edges_of(answer)
    true_half, radius = math.radians(arc["central_angle"]) / 2, arc["radius"]
    if not (math.isfinite(radius) and radius > 0 and 0 < true_half < math.pi):
        raise ValueError(f"an arc that can't be drawn: {arc}")
    half = min(max(true_half, _FLATTEST), _ROUNDEST)
    away = answer["staked"]["radius"] - radius
    widths = _widths(edges)
    lies = {"outside": (0.0, -1.0), "inside": (1.0, 0.0)}.get(edges["edge"] if edges else "", (0.5, -0.5))
    line = room.half_wide / (1.0 if half > math.pi / 2 else math.sin(half))
    while True:
        scale = line / radius
        across = _across(max(widths) * scale, line, max(widths))
        out, into = ((lie * widths[0] * across, lie * widths[1] * across) for lie in lies)
        stakes = math.copysign(min(max(abs(away) * scale, _LEAST_OFF), _MOST_OFF), away) if away else 0.0
        true = half == true_half and (not any(widths) or (across <= scale * _TRUE and scale <= across * _TRUE))
        sides, whole = _sides(edges, scale, line)
        made = SlabShape(
            half, line, out, into, stakes, turn_of(answer["side"]), true and whole, edges is not None,
            _is_filled(edges), sides, _is_both(edges), scale if _is_filled(edges) else across, room.middle,
        )  # fmt: skip
        if line < _LEAST_LINE or _fits(made, room):
            return made
        line *= 0.97


def _sides(edges: EdgesPart | None, scale: float, line: float) -> tuple[float, bool]:
    """Return how long straight sides are drawn, and whether that is by the scale: the longest aren't."""
    long = ((edges["sides"] if edges else None) or 0.0) * scale
    drawn = min(long, _LONGEST_SIDES) if line < _LEAST_LINE else long
    return drawn, drawn == long


def _is_both(edges: EdgesPart | None) -> bool:
    return edges is not None and edges["both_ends"]


def _is_filled(edges: EdgesPart | None) -> bool:
    return edges is not None and edges["edge"] == FILLS


def _widths(edges: EdgesPart | None) -> tuple[float, float]:
    """How wide a slab is at A and at B, metres; nothing where none is known, and of one that fills its curve."""
    if edges is None or _is_filled(edges):
        return (0.0, 0.0)
    return (edges["width"], edges["width"] if edges["far_width"] is None else edges["far_width"])


def _across(true: float, line: float, width: float) -> float:
    """Return the units of a metre of width: true where that can be seen, and leaves an inner edge."""
    if not width:
        return line
    shown = min(max(true, _NARROWEST), _WIDEST if true <= _WIDEST else max(_WIDEST, min(true, line / 2)))
    return min(shown, line - _LEAST_INNER) / width


def _fits(shape: SlabShape, room: Room) -> bool:
    """Whether a slab stays within its room."""
    sides = [shape.samples(side) for side in ("outside", "inside", "stakes")]
    points = [point for side in sides for point in side]
    ys = [y for _x, y in points]
    return max(abs(x - room.middle) for x, _y in points) <= room.half_wide and max(ys) - min(ys) <= room.high
