"""Joints of a slab that fills its curve: straight, square to its string and along it, in panels near to square."""

from __future__ import annotations

from dataclasses import dataclass
from math import acos, asin, ceil, pi

from bowstring.forming.joints import NARROW, RATIO
from bowstring.forming.segment import Segment

DUST = 1e-9


@dataclass(frozen=True)
class GridJoint:
    """A straight joint.

    Attributes:
        at: along the string from where the slab begins, of one that is square to it; off the string, of one along it.
        arc: where it meets the curve, metres along the curve from A: one place where it comes from the string, else
            two, the nearer first.
        corner: the angle at which it meets the curve, radians, at most a right one.
    """

    at: float
    arc: tuple[float, ...]
    corner: float


@dataclass(frozen=True)
class Grid:
    """Panels in rows: ``columns`` along the string, ``rows`` away from it.

    Attributes:
        wide, deep: of a whole panel, metres; square: the joints square to the string; along: those along it.
    """

    columns: int
    rows: int
    wide: float
    deep: float
    square: tuple[GridJoint, ...]
    along: tuple[GridJoint, ...]

    @property
    def ratio(self) -> float:
        """The longer side of a whole panel over the shorter one."""
        return max(self.wide, self.deep) / min(self.wide, self.deep)

    @property
    def longest(self) -> float:
        """The longer side, metres."""
        return max(self.wide, self.deep)

    @property
    def corner(self) -> float:
        """The least angle between a joint and the curve, radians: square where there is no joint."""
        return min((joint.corner for joint in (*self.square, *self.along)), default=pi / 2)


def grid(filled: Segment, columns: int, rows: int) -> Grid:
    """Return the joints of so many panels along the string, and so many off it; raises ``ValueError`` for none."""
    if columns < 1 or rows < 1:
        raise ValueError("a slab is at least one panel")
    wide, deep = filled.wide / columns, filled.deep / rows
    square = tuple(_square(filled, wide * place) for place in range(1, columns))
    along = tuple(_along(filled, deep * place) for place in range(1, rows))
    return Grid(columns, rows, wide, deep, square, along)


def squarish(filled: Segment, most: float) -> tuple[int, int]:
    """Return into how many panels along the string, and off it, the slab goes: none longer than ``most`` metres, and
    no side more than half longer than the other, where the slab isn't too shallow for that.

    Raises ``ValueError`` where ``most`` isn't above 0.

    >>> from bowstring.geometry.arc import Arc
    >>> squarish(Segment(Arc.of_angle(10.0, 1.5707963)), 3.0)
    (7, 4)
    """
    if most <= 0:
        raise ValueError("panels need a length")
    columns, rows = _count(filled.wide, most), _count(filled.deep, most)
    if filled.deep >= NARROW:
        columns = max(columns, _count(filled.wide, RATIO * filled.deep / rows))
        rows = max(rows, _count(filled.deep, RATIO * filled.wide / columns))
    return columns, rows


def _count(length: float, most: float) -> int:
    return max(1, ceil(length / most - DUST))


def _square(filled: Segment, at: float) -> GridJoint:
    """A joint square to the string: from the string to the curve, or past the string's ends from curve to curve."""
    radius, half = filled.arc.radius, filled.arc.half_angle
    aside = at - filled.wide / 2
    turned = asin(max(-1.0, min(1.0, aside / radius)))  # from the curve's middle, below 0 toward A
    top = radius * (half + turned)
    low, _high = filled.height(at)
    if low <= 0:
        return GridJoint(at, (top,), pi / 2 - abs(turned))
    foot = radius * (half + (pi if turned > 0 else -pi) - turned)
    return GridJoint(at, (min(top, foot), max(top, foot)), pi / 2 - abs(turned))


def _along(filled: Segment, off: float) -> GridJoint:
    """A joint along the string: it meets the curve as far from A as from B."""
    radius, half = filled.arc.radius, filled.arc.half_angle
    turned = acos(max(-1.0, min(1.0, (off - filled.center) / radius)))
    return GridJoint(off, (radius * (half - turned), radius * (half + turned)), min(turned, pi - turned))
