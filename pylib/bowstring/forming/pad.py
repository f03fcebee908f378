"""A slab with a rounded end, or two: what lies between an arc and its string, and a rectangle behind that string."""

from __future__ import annotations

from dataclasses import dataclass
from math import acos, hypot, pi, tan

from bowstring.forming.segment import Segment
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point

ROUND = 1e-6
"""Radians: by no more may half an angle pass a right one, or fall short of it, and still be a half circle's."""

FAR_PAIRS = (("A", "B-2"), ("B", "A-2"), ("A-2", "B-2"))
"""Between which corners a length proves the sides: no step pulls it."""

SIDE_PAIRS = (("A", "A-2"), ("B", "B-2"))
"""The sides themselves: a step pulls them, and they are taped once more."""


def takes_sides(arc: Arc) -> bool:
    """Tell whether straight sides can run back from an arc's ends: it is no more than a half circle.

    >>> takes_sides(Arc.of_angle(3.0, pi / 2)), takes_sides(Arc.of_angle(3.0, 1.6))
    (True, False)
    """
    return arc.half_angle <= pi / 2 + ROUND


@dataclass(frozen=True)
class Pad:
    """A segment with straight sides, square to its string and back from A and B, closed by a straight back.

    Attributes:
        arc: from A to B; sides: how long each side is, metres.
        both: the same arc stands at the other end, too, in place of the back.
        against: the back is what stands there already, a building's face or a slab, and no form of its own.

    Raises ``ValueError`` for an arc of more than a half circle, and for sides of no length.
    """

    arc: Arc
    sides: float
    both: bool = False
    against: bool = False

    def __post_init__(self) -> None:
        """Refuse what no side runs back from."""
        if not (takes_sides(self.arc) and self.sides > 0):
            raise ValueError("no straight sides run back from that")

    @property
    def curve(self) -> Segment:
        """What lies between the arc and its string."""
        return Segment(self.arc)

    @property
    def angle(self) -> float:
        """The central angle of the arc, radians."""
        return self.curve.angle

    @property
    def wide(self) -> float:
        """How wide it is along the string, metres."""
        return self.arc.chord

    @property
    def before(self) -> float:
        """How far before A it begins: it doesn't."""
        return 0.0

    @property
    def corner(self) -> float:
        """The angle between the string and the curve at A and B, radians."""
        return self.arc.half_angle

    @property
    def center(self) -> float:
        """How far the arc's center is off the string, metres."""
        return self.curve.center

    @property
    def bulges(self) -> bool:
        """Never: it is as wide as its string."""
        return False

    @property
    def tangent(self) -> bool:
        """Whether the sides run on straight from the curve: it is a half circle."""
        return self.arc.half_angle >= pi / 2 - ROUND

    @property
    def foot(self) -> float:
        """Where it ends behind the string, in its middle, metres off the string and below 0."""
        return -self.sides - (self.arc.sagitta if self.both else 0.0)

    @property
    def deep(self) -> float:
        """How deep it is in its middle, square to the string, metres."""
        return self.arc.sagitta - self.foot

    @property
    def area(self) -> float:
        """The area, square metres: the segment, or two of it, and the rectangle."""
        return self.ends * self.curve.area + self.arc.chord * self.sides

    def dug(self, past: float, but: str = "") -> float:
        """Return the area that is dug so far past every edge, metres, square metres: none past what stands at its back,
        nor past edges that earth holds, ``but`` a word of ``terms.EDGE_ALONG``, empty for none of them.

        A band along all that is dug past; a curve's is longer outside by its angle times half of the band, and at a
        corner that turns by an angle the two bands meet in the square of the band times the tangent of half of it.

        >>> made = Pad(Arc.of_angle(3.0, pi / 2), 4.0, against=True)
        >>> round(made.dug(1.0) / (pi * 4 * 4 / 2 + 8 * 4), 9)
        1.0
        """
        arc, square = self.arc, past * past
        if but:
            back = past * arc.chord if self.backed and but != "all" else 0.0
            sides = 2 * past * self.sides + (2 * square if self.backed else 0.0) if but == "curve" else 0.0
            return self.area + back + sides
        along = self.ends * arc.arc_length + 2 * self.sides + (arc.chord if self.backed else 0.0)
        curves, corners = self.ends * arc.half_angle, 2 * self.ends * tan((pi / 2 - arc.half_angle) / 2)
        return self.area + past * along + square * (curves + corners + (2.0 if self.backed else 0.0))

    @property
    def ends(self) -> int:
        """How many ends are rounded."""
        return 2 if self.both else 1

    @property
    def backed(self) -> bool:
        """Whether a straight form closes it at the back."""
        return not (self.both or self.against)

    @property
    def joined(self) -> float:
        """The angle inside the slab between the curve and a side, radians: straight for a half circle."""
        return self.arc.half_angle + pi / 2

    @property
    def diagonal(self) -> float:
        """From A to the far end of B's side, metres: both sides are square where it is the same the other way."""
        return hypot(self.arc.chord, self.sides)

    def back_of(self, place: Point) -> Point:
        """Return the place of the other end that is straight back of one at this end, both off the string from A.

        Where the back is straight that is a place on it.
        """
        return Point(place.x, -self.sides - (place.y if self.both else 0.0))

    def height(self, across: float) -> tuple[float, float]:
        """Return from where to where the slab reaches square off the string at a place along it, metres."""
        top = self.curve.height(min(max(across, 0.0), self.arc.chord))[1]
        return -self.sides - (top if self.both else 0.0), top

    def area_to(self, share: float) -> float:
        """Return the area from A's side to a share of its width along the string, square metres."""
        return self.ends * self.curve.area_to(share) + self.arc.chord * share * self.sides

    def area_from_back(self, share: float) -> float:
        """Return the area from its foot to a share of its depth, square metres.

        >>> made = Pad(Arc.of_angle(1.0, pi / 2), 3.0)
        >>> round(made.area_from_back(0.5), 9), round(made.area_from_back(1.0) - made.area, 9)
        (4.0, 0.0)
        """
        off = self.foot + share * self.deep
        behind, curve = -self.sides - off, self.curve.area
        if behind > 0:
            return self._past(behind)
        beside = min(self.sides, off + self.sides) * self.arc.chord
        return (curve if self.both else 0.0) + beside + (curve - self._past(off) if off > 0 else 0.0)

    def _past(self, off: float) -> float:
        """The area of one curve past a line that far off its string."""
        left = self.arc.sagitta - off
        if left <= 0:
            return 0.0
        return Segment(Arc.of_angle(self.arc.radius, acos(max(-1.0, 1 - left / self.arc.radius)))).area


Filled = Segment | Pad
"""A slab that fills its curve."""
