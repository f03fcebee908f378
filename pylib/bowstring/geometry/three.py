"""The arc of three points, or of the three taped distances between them."""

from __future__ import annotations

from math import atan2, inf, sqrt

from bowstring.errors import BadJob, bad
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, left_of, unit_vector

STRAIGHT = 1e-9
"""The sine of the half angle under which three points are called straight: 0.25 mm of rise over a 1000 km chord."""


def through_points(first: Point, second: Point, third: Point) -> tuple[Arc, bool]:
    """Return the arc from the first point through the second to the third, and whether it bulges to the left.

    Left as seen from the first toward the third, with y to the left of x. The angle at the second point is
    180 degrees less half the central angle (Euclid, Elements III.20 and III.22).

    Raises ``BadJob`` when two of them are one point or the three stand in a straight line.

    >>> arc, bulges_left = through_points(Point(0.0, 0.0), Point(1.0, 1.0), Point(2.0, 0.0))
    >>> round(arc.central_angle, 6), bulges_left
    (180.0, True)
    """
    to_first, to_third = first.minus(second), third.minus(second)
    sides = distance(first, second) * distance(second, third)
    chord = distance(first, third)
    if not sides or not chord:
        raise bad("arc.points", "arc.points_same")
    sine = to_first.cross(to_third) / sides
    if abs(sine) < STRAIGHT:
        raise bad("arc.points", "arc.points_straight")
    arc_sine, arc_cosine = abs(sine), -to_first.dot(to_third) / sides
    arc = Arc(chord / (2 * arc_sine), atan2(arc_sine, arc_cosine), arc_sine, arc_cosine)
    return arc, sine > 0


def points_change(points: tuple[Point, Point, Point], step: float) -> float:
    """Return the larger part by which the radius changes when the middle point is ``step`` metres off, square to
    the chord.

    ``inf`` where the points then stand in a straight line or on the other hand.
    """
    first, second, third = points
    arc, left = through_points(*points)
    out = left_of(unit_vector(first, third))
    worst = 0.0
    for sign in (1, -1):
        try:
            moved, moved_left = through_points(first, second.plus(out, sign * step), third)
        except BadJob:
            return inf
        if moved_left != left:
            return inf
        worst = max(worst, abs(moved.radius / arc.radius - 1))
    return worst


def through_sides(first: float, second: float, chord: float) -> Arc:
    """Return the arc from A through C to B of the distances A-C, C-B and A-B in metres.

    Four times the triangle's area is sqrt((a + b + c)(a + b - c)(c + a - b)(c - a + b)), each factor a difference of
    the givens themselves (Heron); twice the product of A-C and C-B, times the sine at C, is that too.

    Raises ``BadJob`` when they make no triangle.

    >>> round(through_sides(2**0.5, 2**0.5, 2.0).central_angle, 6)
    180.0
    """
    around, over = first + second + chord, first + second - chord
    other, another = chord + (first - second), chord - (first - second)
    if min(over, other, another) < 0:
        raise bad("arc.three_sides", "arc.sides_open")
    product = 2 * first * second
    sine = sqrt(around * over * other * another) / product
    if sine < STRAIGHT:
        raise bad("arc.three_sides", "arc.sides_straight")
    cosine = other * another / product - 1  # the cosine rule at C, whose angle is 180 degrees less half the central one
    return Arc(chord / (2 * sine), atan2(sine, cosine), sine, cosine)


def sides_change(sides: tuple[float, float, float], step: float) -> float:
    """Return the largest part by which the radius changes when a side is ``step`` metres off; ``inf`` where none is."""
    radius = through_sides(*sides).radius
    worst = 0.0
    for place in range(3):
        for sign in (1, -1):
            a, b, c = (side + (sign * step if number == place else 0.0) for number, side in enumerate(sides))
            if min(a, b, c) <= 0:
                return inf
            try:
                worst = max(worst, abs(through_sides(a, b, c).radius / radius - 1))
            except BadJob:
                return inf
    return worst
