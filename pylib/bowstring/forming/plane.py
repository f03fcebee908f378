"""The top of a slab that fills its curve: one plane, told along its string and square off it."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan2, degrees, hypot, sqrt

from bowstring.geometry.plane import Point


@dataclass(frozen=True)
class Plane:
    """A plane over the string from A to B.

    Attributes:
        start: the top at A, metres; along: rise over run from A toward B; away: the same square off the string, toward
            the curve.
    """

    start: float
    along: float
    away: float

    def top(self, place: Point) -> float:
        """Return the top at a place, metres: x along the string from A, y off it toward the curve."""
        return self.start + self.along * place.x + self.away * place.y

    @property
    def greatest(self) -> float:
        """The steepest slope of all, as a size: both slopes at a right angle to each other.

        >>> round(Plane(0.0, 0.03, -0.04).greatest, 9)
        0.05
        """
        return hypot(self.along, self.away)

    def downhill(self) -> Point | None:
        """Return the direction in which it falls most, as a unit: x toward B, y toward the curve; ``None`` where it is
        level."""
        size = self.greatest
        return Point(-self.along / size, -self.away / size) if size else None

    def most_along(self, limit: float) -> float | None:
        """Return the most that it may run along the string for its steepest slope to keep a limit; ``None`` where none
        would.

        >>> Plane(0.0, 0.06, 0.03).most_along(0.05)
        0.04
        """
        left = (limit - abs(self.away)) * (limit + abs(self.away))
        return sqrt(left) if left >= 0 else None


def turned_from(string: Point) -> float:
    """Return how far a direction is turned from the string, degrees, 0 along it and 90 square off it.

    >>> round(turned_from(Point(-3.0, 3.0)), 9)
    45.0
    """
    return degrees(atan2(abs(string.y), abs(string.x)))
