"""The circular arc: what it is, whatever settled it.

Half the central angle is carried three times over, as an angle and as its sine and cosine, each with full relative
precision. So nothing is lost where a tangent runs away (near 180 degrees) or where the arc is nearly straight, and
no formula here subtracts two nearly equal numbers.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import asin, atan2, cos, degrees, hypot, pi, radians, sin, sqrt
from typing import Literal

from bowstring.geometry.plane import Point

HALF_TURN_COSINE = 1e-15
"""A cosine of the half angle below this is a rounding of 0: the arc is a half circle and its tangents never meet."""

Measured = Literal["radius", "chord", "sagitta", "arc_length", "central_angle", "tangent_length", "external"]
MEASURES: tuple[Measured, ...] = (
    "radius",
    "chord",
    "sagitta",
    "arc_length",
    "central_angle",
    "tangent_length",
    "external",
)
"""The measures of an arc, in the order that decides ties."""


@dataclass(frozen=True)
class Arc:
    """A circular arc of less than a full turn.

    Attributes:
        radius: metres.
        half_angle: half the central angle in radians, above 0 and below pi.
        sine, cosine: of ``half_angle``, each precise in its own last digits.
    """

    radius: float
    half_angle: float
    sine: float
    cosine: float

    @classmethod
    def of_angle(cls, radius: float, half_angle: float) -> Arc:
        """Return the arc of a radius in metres and half a central angle in radians.

        >>> from math import asin
        >>> arc = Arc.of_angle(25.0, asin(0.8))
        >>> round(arc.chord, 6), round(arc.sagitta, 6)
        (40.0, 10.0)
        """
        return cls(radius, half_angle, sin(half_angle), cos(half_angle))

    @cached_property
    def chord(self) -> float:
        """Metres: 2 R sin(I/2)."""
        return 2 * self.radius * self.sine

    @cached_property
    def sagitta(self) -> float:
        """Metres, from the middle of the chord to the arc: R (1 - cos(I/2)), written without the difference."""
        if self.cosine > 0:
            return self.radius * self.sine * self.sine / (1 + self.cosine)
        return self.radius * (1 - self.cosine)

    @cached_property
    def arc_length(self) -> float:
        """Metres: R I."""
        return 2 * self.radius * self.half_angle

    @cached_property
    def central_angle(self) -> float:
        """Degrees."""
        return degrees(2 * self.half_angle)

    @property
    def has_corner(self) -> bool:
        """Whether the tangents at the ends meet on the arc's own side: below 180 degrees."""
        return self.cosine > HALF_TURN_COSINE

    @cached_property
    def tangent_length(self) -> float | None:
        """Metres from an end to the corner where the tangents meet: R tan(I/2); ``None`` from 180 degrees up."""
        return self.radius * self.sine / self.cosine if self.has_corner else None

    @cached_property
    def external(self) -> float | None:
        """Metres from the corner to the arc: R (1/cos(I/2) - 1) = sagitta / cos(I/2); ``None`` from 180 degrees up."""
        return self.sagitta / self.cosine if self.has_corner else None

    def measures(self) -> dict[str, float | None]:
        """Return the seven measures by name: metres, and degrees for the central angle."""
        return {name: getattr(self, name) for name in MEASURES}

    def part(self, gaps: int) -> Arc:
        """Return one of ``gaps`` equal parts of this arc.

        >>> round(Arc.of_angle(10.0, 1.0).part(4).arc_length, 6)
        5.0
        """
        return self if gaps == 1 else Arc.of_angle(self.radius, self.half_angle / gaps)

    def concentric(self, outward: float) -> Arc:
        """Return the arc of the same centre and angle, ``outward`` metres farther out (negative: nearer the centre).

        >>> Arc.of_angle(10.0, 1.0).concentric(-1.5).radius
        8.5
        """
        return Arc(self.radius + outward, self.half_angle, self.sine, self.cosine)

    def point_at(self, fraction: float) -> Point:
        """Return the point at a fraction of the arc's length, in the frame of its chord.

        The frame: end A at the origin, x toward end B, y toward the arc's middle. Written with half-angle products
        (the chord from A to the point, turned by the angle between chord and chord), so that a flat arc keeps its
        digits.
        """
        from_start = self.half_angle * fraction
        reach = 2 * self.radius * sin(from_start)
        turned = self.half_angle - from_start
        return Point(reach * cos(turned), reach * sin(turned))

    @property
    def centre(self) -> Point:
        """The centre in the frame of the chord (see ``point_at``)."""
        return Point(self.chord / 2, -self.radius * self.cosine)

    def miss(self, point: Point) -> float:
        """Return how far a point stands off the whole circle, in metres, positive outward, in the frame of the chord.

        The power of the point over (its distance from the centre + R): for a point near a flat arc the plain
        difference of two huge numbers would lose every digit.

        >>> round(Arc.of_angle(10.0, 1.0).miss(Point(0.0, 0.0)), 9)  # its end A
        0.0
        """
        power = point.x * (point.x - self.chord) + point.y * (point.y + 2 * self.radius * self.cosine)
        centre = self.centre
        from_centre = hypot(point.x - centre.x, point.y - centre.y)
        return power / (from_centre + self.radius)

    def along(self, point: Point) -> float:
        """Return the arc length in metres from end A to where the radius through ``point`` meets the circle.

        From 0 to a whole turn, in the frame of the chord; for a point that stands off the arc, whatever put it there.
        """
        start, there = self.centre, point.minus(self.centre)
        to_start = Point(-start.x, -start.y)
        return self.radius * (atan2(-to_start.cross(there), to_start.dot(there)) % (2 * pi))

    def rise_over(self, chord: float) -> float:
        """Return the arc's rise in metres over a chord of its circle: h²/(R + sqrt(R² - h²)) with half the chord h."""
        half = chord / 2
        return half * half / (self.radius + sqrt(max((self.radius - half) * (self.radius + half), 0.0)))

    @property
    def degree_of_curve(self) -> float:
        """Degrees of central angle for 100 ft of arc (the arc definition, roads)."""
        return degrees(HUNDRED_FEET / self.radius)


HUNDRED_FEET = 30.48
"""Metres: 100 international feet of 0.3048 m."""


def radius_of_degree(degree: float) -> float:
    """Return the radius in metres of a degree of curve by the arc definition: 18000 / (pi D) feet.

    >>> round(radius_of_degree(1.0) / 0.3048, 3)
    5729.578
    """
    return HUNDRED_FEET * 180 / (pi * degree)


def radius_by_chord(degree: float) -> float:
    """Return the radius in metres of a degree of curve by the chord definition: 50 / sin(D/2) feet (railroads, US).

    >>> round(radius_by_chord(10.0) / 0.3048, 3)
    573.686
    """
    return HUNDRED_FEET / 2 / sin(radians(degree / 2))


def degree_by_chord(radius: float) -> float | None:
    """Return the degrees of central angle over a chord of 100 ft; ``None`` where the circle has none so long."""
    ratio = HUNDRED_FEET / 2 / radius
    return 2 * degrees(asin(ratio)) if ratio <= 1 else None
