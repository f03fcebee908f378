"""A slab that fills a curve: everything between an arc and the string from its one end to the other."""

from __future__ import annotations

from dataclasses import dataclass
from math import asin, pi, sin, sqrt

from bowstring.geometry.arc import Arc

FLAT = 0.5
"""Radians: below it the angle less its sine is written as a series, or most of its digits would cancel."""


def less_sine(angle: float) -> float:
    """Return an angle less its sine, radians, with all its digits.

    >>> round(less_sine(0.7949616), 7), round(less_sine(0.001) * 6e9, 9)
    (0.0811249, 0.99999995)
    """
    if angle > FLAT:
        return angle - sin(angle)
    square, term, total = angle * angle, angle**3 / 6, 0.0
    for place in range(2, 12):
        total += term
        term *= -square / (2 * place * (2 * place + 1))
    return total


@dataclass(frozen=True)
class Segment:
    """What lies between an arc and its chord; it may be more than a half circle.

    Places are told along the string (``across``), from where the slab begins on A's side: that is A itself, but for
    more than a half circle, which bulges out past both ends of its string.
    """

    arc: Arc

    @property
    def angle(self) -> float:
        """The central angle, radians."""
        return 2 * self.arc.half_angle

    @property
    def bulges(self) -> bool:
        """Whether it is more than a half circle, and so wider than its string."""
        return self.arc.half_angle > pi / 2

    @property
    def wide(self) -> float:
        """How wide it is along the string, metres."""
        return 2 * self.arc.radius if self.bulges else self.arc.chord

    @property
    def deep(self) -> float:
        """How deep it is square to the string, metres."""
        return self.arc.sagitta

    @property
    def before(self) -> float:
        """How far before A it begins, metres along the string: 0 but for more than a half circle."""
        return (self.wide - self.arc.chord) / 2

    @property
    def area(self) -> float:
        """The area, square metres: R² (θ - sin θ)/2."""
        return self.arc.radius**2 * less_sine(self.angle) / 2

    @property
    def corner(self) -> float:
        """The angle between the string and the curve at A and B, inside the slab, radians."""
        return self.arc.half_angle

    @property
    def center(self) -> float:
        """How far the arc's center is off the string, metres: above 0 where it is on the side of the curve."""
        return -self.arc.radius * self.arc.cosine

    def height(self, across: float) -> tuple[float, float]:
        """Return from where to where the slab reaches square off the string at a place along it, metres.

        Raises ``ValueError`` outside of the slab.
        """
        aside = across - self.wide / 2
        radius = self.arc.radius
        if abs(aside) > self.wide / 2 * (1 + 1e-12):
            raise ValueError("there is no slab")
        up = sqrt(max(0.0, (radius - aside) * (radius + aside)))
        past = abs(aside) > self.arc.chord / 2
        return (max(0.0, self.center - up) if past else 0.0, max(0.0, self.center + up))

    def area_to(self, share: float) -> float:
        """Return the area from where the slab begins to a share of its width along the string, square metres.

        Under the top half of the circle lies a (sqrt(R² - a²) + c) wide part of it, with c the center's height; past
        the string's ends, where it bulges, twice the first of these.
        """
        return self._half(self.wide * (share - 0.5)) - self._half(-self.wide / 2)

    def _half(self, aside: float) -> float:
        """The signed area from the middle to a place aside of it."""
        half = self.arc.chord / 2
        if not self.bulges or abs(aside) <= half:
            return self._cap(aside) + self.center * aside
        end = half if aside > 0 else -half
        return self._half(end) + 2 * (self._cap(aside) - self._cap(end))

    def _cap(self, aside: float) -> float:
        radius = self.arc.radius
        up = sqrt(max(0.0, (radius - aside) * (radius + aside)))
        return (aside * up + radius**2 * asin(max(-1.0, min(1.0, aside / radius)))) / 2
