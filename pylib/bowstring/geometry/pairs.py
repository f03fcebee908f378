"""An arc from two of its measures: all 21 pairs.

With R the radius and h half the central angle: chord C = 2 R sin h, sagitta M = R (1 - cos h), arc length L = 2 R h,
tangent length T = R tan h, external E = R (1/cos h - 1). Every closed form below is written so that no two nearly
equal numbers are subtracted, save where the givens themselves are nearly equal: then the difference of the givens is
taken first, which floats do exactly. Where no closed form exists, or one would lose digits, a guarded root search
runs over h, or over its complement g = pi/2 - h when h is above 45 degrees, so that near 180 degrees the cosine keeps
its digits too. (Elementary geometry; any surveying text's simple-curve formulas.)
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from itertools import combinations
from math import atan2, cos, hypot, pi, radians, sin, sqrt, tan

from bowstring.geometry.arc import MEASURES, Arc
from bowstring.geometry.roots import cotangent_shortfall, root_between, sine_shortfall

Pair = tuple[str, str]


NEARLY_ROUND = 3 * pi / 4
"""Radians: from this half angle up, arc length and chord are solved from the whole circle's side."""


class NoArc(ArithmeticError):
    """No arc has these two measures; ``key`` names the reason in the catalogue, ``limit`` the bound that was passed."""

    def __init__(self, key: str, limit: float = 0.0) -> None:
        super().__init__(key)
        self.key = key
        self.limit = limit


def arcs_of(pair: Pair, first: float, second: float) -> list[Arc]:
    """Return every arc under 360 degrees that has the two measures, smallest angle first.

    ``pair`` names them in the order of ``MEASURES``; lengths in metres, the central angle in degrees; all above 0.
    Raises ``NoArc`` when there is none.

    >>> [round(arc.radius, 6) for arc in arcs_of(("chord", "sagitta"), 40.0, 10.0)]
    [25.0]
    >>> [round(arc.sagitta, 6) for arc in arcs_of(("radius", "chord"), 25.0, 40.0)]
    [10.0, 40.0]
    """
    return sorted(SOLVERS[pair](first, second), key=lambda arc: arc.half_angle)


def _of_sides(radius: float, sine: float, cosine: float) -> Arc:
    return Arc(radius, atan2(sine, cosine), sine, cosine)


def _half_angle_arc(central_angle: float, radius_of: Callable[[float, float, float], float]) -> list[Arc]:
    """Return the arc of an angle in degrees; ``radius_of`` takes (half angle, sine, cosine)."""
    half = radians(central_angle / 2)
    # The complement is taken in degrees, where it is exact, so that the cosine is right near 180 degrees.
    cosine = sin(radians((180 - central_angle) / 2))
    sine = sin(half) if central_angle <= 180 else sin(radians((360 - central_angle) / 2))
    return [Arc(radius_of(half, sine, cosine), half, sine, cosine)]


def _lower(half: float, radius_of: Callable[[float, float, float], float]) -> Arc:
    sine, cosine = sin(half), cos(half)
    return Arc(radius_of(half, sine, cosine), half, sine, cosine)


def _upper(complement: float, radius_of: Callable[[float, float, float], float]) -> Arc:
    half, sine, cosine = pi / 2 - complement, cos(complement), sin(complement)
    return Arc(radius_of(half, sine, cosine), half, sine, cosine)


def radius_chord(radius: float, chord: float) -> list[Arc]:
    """sin h = C/(2R): two arcs, one on each side of the centre; one where the chord is the diameter."""
    if chord > 2 * radius:
        raise NoArc("pair.chord_over_diameter", 2 * radius)
    sine = chord / (2 * radius)
    cosine = sqrt((2 * radius - chord) * (2 * radius + chord)) / (2 * radius)
    arcs = [_of_sides(radius, sine, cosine)]
    if cosine > 0:
        arcs.append(_of_sides(radius, sine, -cosine))
    return arcs


def radius_sagitta(radius: float, sagitta: float) -> list[Arc]:
    """sin h = sqrt(M (2R - M))/R, cos h = (R - M)/R."""
    if sagitta >= 2 * radius:
        raise NoArc("pair.sagitta_over_diameter", 2 * radius)
    sine = sqrt(sagitta * (2 * radius - sagitta)) / radius
    return [_of_sides(radius, sine, (radius - sagitta) / radius)]


def radius_arc_length(radius: float, arc_length: float) -> list[Arc]:
    """h = L/(2R)."""
    half = arc_length / (2 * radius)
    if half >= pi:
        raise NoArc("pair.arc_over_circle", 2 * pi * radius)
    return [Arc.of_angle(radius, half)]


def radius_angle(radius: float, angle: float) -> list[Arc]:
    """h = I/2."""
    return _half_angle_arc(angle, lambda _half, _sine, _cosine: radius)


def radius_tangent(radius: float, tangent: float) -> list[Arc]:
    """tan h = T/R."""
    to_corner = hypot(radius, tangent)
    return [_of_sides(radius, tangent / to_corner, radius / to_corner)]


def radius_external(radius: float, external: float) -> list[Arc]:
    """cos h = R/(R + E)."""
    to_corner = radius + external
    return [_of_sides(radius, sqrt(external * (2 * radius + external)) / to_corner, radius / to_corner)]


def chord_sagitta(chord: float, sagitta: float) -> list[Arc]:
    """R = ((C/2)² + M²)/(2M), sin h = C M/((C/2)² + M²): intersecting chords (Euclid, Elements III.35)."""
    half = chord / 2
    square = half * half + sagitta * sagitta
    cosine = (half - sagitta) * (half + sagitta) / square
    return [_of_sides(square / (2 * sagitta), 2 * half * sagitta / square, cosine)]


def chord_arc_length(chord: float, arc_length: float) -> list[Arc]:
    """C/L = sin h/h, which falls from 1 to 0: a root is looked for."""
    if arc_length <= chord:
        raise NoArc("pair.arc_under_chord", chord)

    def radius_of(half: float, _sine: float, _cosine: float) -> float:
        return arc_length / (2 * half)

    shortfall = (arc_length - chord) / arc_length
    if shortfall < sine_shortfall(NEARLY_ROUND):
        return [_lower(root_between(lambda h: sine_shortfall(h) - shortfall, 0.0, NEARLY_ROUND), radius_of)]
    # Toward the whole circle the chord fades away: what is left to the half turn keeps its digits, half a turn doesn't.
    ratio = chord / arc_length
    left = root_between(lambda g: sin(g) / (pi - g) - ratio, 0.0, pi - NEARLY_ROUND + 1e-9)
    return [Arc(radius_of(pi - left, 0.0, 0.0), pi - left, sin(left), -cos(left))]


def chord_angle(chord: float, angle: float) -> list[Arc]:
    """R = C/(2 sin h)."""
    return _half_angle_arc(angle, lambda _half, sine, _cosine: chord / (2 * sine))


def chord_tangent(chord: float, tangent: float) -> list[Arc]:
    """cos h = C/(2T)."""
    if chord >= 2 * tangent:
        raise NoArc("pair.chord_over_tangents", 2 * tangent)
    cosine = chord / (2 * tangent)
    sine = sqrt((2 * tangent - chord) * (2 * tangent + chord)) / (2 * tangent)
    return [_of_sides(tangent * cosine / sine, sine, cosine)]


def chord_external(chord: float, external: float) -> list[Arc]:
    """C/(2E) = cos h / tan(h/2), which falls from endless to 0."""
    ratio = chord / (2 * external)

    def radius_of(_half: float, sine: float, _cosine: float) -> float:
        return chord / (2 * sine)

    if ratio > cos(pi / 4) / tan(pi / 8):
        return [_lower(root_between(lambda h: cos(h) / tan(h / 2) - ratio, 0.0, pi / 4, rising=False), radius_of)]
    return [_upper(root_between(lambda g: sin(g) / tan(pi / 4 - g / 2) - ratio, 0.0, pi / 4), radius_of)]


@cache
def widest_sagitta_to_arc() -> float:
    """Return the half angle at which sagitta/arc length is greatest: sin^2(h/2)/h, where h = tan(h/2)."""
    return root_between(lambda h: tan(h / 2) - h, 2.0, 3.0)


def _sagitta_to_arc(half: float) -> float:
    return sin(half / 2) ** 2 / half


def sagitta_arc_length(sagitta: float, arc_length: float) -> list[Arc]:
    """M/L = sin²(h/2)/h: up to a greatest value and down again, so two arcs may have it."""
    ratio = sagitta / arc_length
    top = widest_sagitta_to_arc()
    if ratio > _sagitta_to_arc(top):
        raise NoArc("pair.sagitta_over_arc", _sagitta_to_arc(top) * arc_length)

    def found(low: float, high: float, rising: bool) -> Arc:
        half = root_between(lambda h: _sagitta_to_arc(h) - ratio, low, high, rising=rising)
        return _lower(half, lambda h, _sine, _cosine: arc_length / (2 * h))

    if ratio <= _sagitta_to_arc(pi):
        return [found(0.0, pi / 2 + 1e-9, True)]
    return [found(pi / 2, top, True), found(top, pi, False)]


def sagitta_angle(sagitta: float, angle: float) -> list[Arc]:
    """R = M/(2 sin²(h/2))."""
    return _half_angle_arc(angle, lambda half, _sine, _cosine: sagitta / (2 * sin(half / 2) ** 2))


@cache
def widest_sagitta_to_tangent() -> float:
    """Return the half angle at which sagitta/tangent is greatest: t (1 - t^2)/(1 + t^2), t = tan(h/2), at t^2 =
    sqrt 5 - 2."""
    t = sqrt(sqrt(5) - 2)
    return 2 * atan2(t, 1.0)


def sagitta_tangent(sagitta: float, tangent: float) -> list[Arc]:
    """M/T = cos h tan(h/2): up to a greatest value and down again, so two arcs have it."""
    ratio = sagitta / tangent
    top = widest_sagitta_to_tangent()
    if ratio > cos(top) * tan(top / 2):
        raise NoArc("pair.sagitta_over_tangent", cos(top) * tan(top / 2) * tangent)

    def radius_of(_half: float, sine: float, cosine: float) -> float:
        return tangent * cosine / sine

    flat = root_between(lambda h: cos(h) * tan(h / 2) - ratio, 0.0, top)
    round_ = root_between(lambda g: sin(g) * tan(pi / 4 - g / 2) - ratio, 0.0, pi / 2 - top)
    return [_lower(flat, radius_of), _upper(round_, radius_of)]


def sagitta_external(sagitta: float, external: float) -> list[Arc]:
    """cos h = M/E, R = M E/(E - M)."""
    if sagitta >= external:
        raise NoArc("pair.sagitta_over_external", external)
    gap = external - sagitta
    return [_of_sides(sagitta * external / gap, sqrt(gap * (external + sagitta)) / external, sagitta / external)]


def arc_length_angle(arc_length: float, angle: float) -> list[Arc]:
    """R = L/(2h)."""
    return _half_angle_arc(angle, lambda half, _sine, _cosine: arc_length / (2 * half))


def arc_length_tangent(arc_length: float, tangent: float) -> list[Arc]:
    """L/(2T) = h/tan h, which falls from 1 to 0."""
    if arc_length >= 2 * tangent:
        raise NoArc("pair.arc_over_tangents", 2 * tangent)
    shortfall = (2 * tangent - arc_length) / (2 * tangent)

    def radius_of(half: float, _sine: float, _cosine: float) -> float:
        return arc_length / (2 * half)

    if shortfall < cotangent_shortfall(pi / 4):
        return [_lower(root_between(lambda h: cotangent_shortfall(h) - shortfall, 0.0, pi / 4), radius_of)]
    ratio = arc_length / (2 * tangent)
    return [_upper(root_between(lambda g: (pi / 2 - g) * tan(g) - ratio, 0.0, pi / 4 + 1e-9), radius_of)]


def arc_length_external(arc_length: float, external: float) -> list[Arc]:
    """2E/L = (1/cos h - 1)/h, which climbs from 0 without end."""
    ratio = 2 * external / arc_length

    def radius_of(half: float, _sine: float, _cosine: float) -> float:
        return arc_length / (2 * half)

    def lower(half: float) -> float:
        return 2 * sin(half / 2) ** 2 / (half * cos(half))

    def upper(complement: float) -> float:
        return (1 - sin(complement)) / (sin(complement) * (pi / 2 - complement))

    if ratio < lower(pi / 4):
        return [_lower(root_between(lambda h: lower(h) - ratio, 0.0, pi / 4), radius_of)]
    complement = root_between(lambda g: upper(g) - ratio, 0.0, pi / 4 + 1e-9, rising=False)
    return [_upper(complement, radius_of)]


def angle_tangent(angle: float, tangent: float) -> list[Arc]:
    """R = T/tan h."""
    if angle >= 180:
        raise NoArc("pair.no_corner", 180.0)
    return _half_angle_arc(angle, lambda _half, sine, cosine: tangent * cosine / sine)


def angle_external(angle: float, external: float) -> list[Arc]:
    """R = E cos h/(2 sin²(h/2))."""
    if angle >= 180:
        raise NoArc("pair.no_corner", 180.0)
    return _half_angle_arc(angle, lambda half, _sine, cosine: external * cosine / (2 * sin(half / 2) ** 2))


def tangent_external(tangent: float, external: float) -> list[Arc]:
    """E/T = tan(h/2)."""
    if external >= tangent:
        raise NoArc("pair.external_over_tangent", tangent)
    square = tangent * tangent + external * external
    across = (tangent - external) * (tangent + external)
    return [_of_sides(across / (2 * external), 2 * tangent * external / square, across / square)]


SOLVERS: dict[Pair, Callable[[float, float], list[Arc]]] = dict(
    zip(
        combinations(MEASURES, 2),
        (
            radius_chord,
            radius_sagitta,
            radius_arc_length,
            radius_angle,
            radius_tangent,
            radius_external,
            chord_sagitta,
            chord_arc_length,
            chord_angle,
            chord_tangent,
            chord_external,
            sagitta_arc_length,
            sagitta_angle,
            sagitta_tangent,
            sagitta_external,
            arc_length_angle,
            arc_length_tangent,
            arc_length_external,
            angle_tangent,
            angle_external,
            tangent_external,
        ),
        strict=True,
    )
)
