"""Rows of arcs that drawings name: a reverse curve, a three-centered curve, a bulb. Metres and radians.

Each formula is derived beside it from the centers of the arcs; all are elementary geometry.
"""

from __future__ import annotations

from math import acos, atan, atan2, cos, pi, sin, sqrt, tan

from bowstring.forming.line.pieces import OTHER, Bend, Hand, sign_of
from bowstring.forming.line.simple import NOTHING, NoCurve

Three = tuple[Bend, Bend, Bend]
HALF_TURN = pi


def reverse_of_radii(offset: float, first: float, second: float, hand: Hand) -> tuple[Bend, Bend]:
    """Return a reverse curve between two parallel lines ``offset`` metres apart, of two radii in metres, ``hand`` the
    first arc's.

    Each arc goes R (1 - cos I) aside: (R1 + R2)(1 - cos I) = p, so sin²(I/2) = p/(2 (R1 + R2)).
    Raises ``ValueError`` for figures that aren't above 0, and ``NoCurve`` (``apart``) where p is 2 (R1 + R2) or more.
    """
    _above_nothing(offset, first, second)
    square = offset / (2 * (first + second))
    if square >= 1:
        raise NoCurve("apart")
    angle = 2 * atan2(sqrt(square), sqrt(1 - square))
    return _reverse(first, second, angle, hand)


def reverse_of_advance(offset: float, advance: float, hand: Hand, first: float | None = None) -> tuple[Bend, Bend]:
    """Return a reverse curve between two parallel lines ``offset`` metres apart, ``advance`` metres along them.

    With p the offset and a the advance, a = (R1 + R2) sin I and p = (R1 + R2)(1 - cos I): tan(I/2) = p/a and
    R1 + R2 = (a² + p²)/(2 p). ``first``: the first radius; both are equal where it isn't said.
    Raises ``ValueError`` for figures that aren't above 0, and ``NoCurve`` (``apart``) where nothing is left for R2.
    """
    _above_nothing(offset, advance, advance if first is None else first)
    both = (advance * advance + offset * offset) / (2 * offset)
    one = both / 2 if first is None else first
    if both - one < NOTHING:
        raise NoCurve("apart")
    return _reverse(one, both - one, 2 * atan2(offset, advance), hand)


def _reverse(first: float, second: float, angle: float, hand: Hand) -> tuple[Bend, Bend]:
    return Bend.of(first, sign_of(hand) * angle), Bend.of(second, -sign_of(hand) * angle)


def three_centred(span: float, rise: float, outer: float, hand: Hand, turn: float = HALF_TURN) -> Three:
    """Return a three-centered curve over a span and a rise in metres: two equal outer radii, one inner, symmetric.

    ``outer``: the outer radius, metres; ``turn``: by how much the whole turns, radians, half a turn for an arch.
    With f half the turn, b half the inner angle and q = R - r, half the span is r sin f + q sin b, and the rise is
    r (1 - cos f) + q (1 - cos b). So tan(b/2) = (rise - r (1 - cos f))/(span/2 - r sin f), and
    q = (span/2 - r sin f)/sin b.
    Raises ``ValueError`` for figures that aren't above 0, ``NoCurve``: ``one`` where one arc does it, ``apart`` where
    no such curve exists.
    """
    _above_nothing(span, rise, outer, turn)
    aside, up = span / 2 - outer * sin(turn / 2), rise - outer * (1 - cos(turn / 2))
    if abs(aside) < NOTHING and abs(up) < NOTHING:
        raise NoCurve("one")
    if aside * up <= 0:
        raise NoCurve("apart")
    half = 2 * atan(up / aside)
    inner = outer + aside / sin(half)
    return _three(outer, inner, turn / 2 - half, half, hand)


def three_centred_by_angle(span: float, rise: float, outer_angle: float, hand: Hand, turn: float = HALF_TURN) -> Three:
    """Return the three-centered curve whose outer arcs turn by ``outer_angle`` radians each; see ``three_centred``.

    With t = tan(b/2), b = f - outer_angle, the same two equations give r = (rise - t span/2)/(1 - cos f - t sin f).
    Raises as ``three_centred``.
    """
    _above_nothing(span, rise, outer_angle, turn)
    half = turn / 2 - outer_angle
    if half <= 0:
        raise NoCurve("apart")
    share = tan(half / 2)
    outer = (rise - share * span / 2) / (1 - cos(turn / 2) - share * sin(turn / 2))
    if outer < NOTHING:
        raise NoCurve("apart")
    inner = outer + (span / 2 - outer * sin(turn / 2)) / sin(half)
    return _three(outer, inner, outer_angle, half, hand)


def _three(outer: float, inner: float, outer_angle: float, half: float, hand: Hand) -> Three:
    if outer_angle <= 0 or half <= 0 or inner < NOTHING:
        raise NoCurve("apart")
    side = Bend.of(outer, sign_of(hand) * outer_angle)
    return side, Bend.of(inner, sign_of(hand) * 2 * half), side


def bulb(width: float, radius: float, return_radius: float, hand: Hand) -> Three:
    """Return the edge round a cul-de-sac: a return, the bulb and a return; ``hand``: to which the bulb turns.

    ``width``: between the two edges of the approach, metres; the bulb's center is on the approach's center line. The
    centers of a return and of the bulb are R + r apart, and w/2 + r square to the center line: a return turns by
    A with cos A = (w/2 + r)/(R + r), the bulb by half a turn and 2 A.
    Raises ``ValueError`` for figures that aren't above 0, ``NoCurve`` (``apart``) where the approach is as wide as the
    bulb.
    """
    _above_nothing(width, radius, return_radius)
    if width / 2 >= radius:
        raise NoCurve("apart")
    angle = acos((width / 2 + return_radius) / (radius + return_radius))
    side = Bend.of(return_radius, sign_of(OTHER[hand]) * angle)
    return side, Bend.of(radius, sign_of(hand) * (pi + 2 * angle)), side


def bulb_centre(width: float, radius: float, return_radius: float) -> float:
    """Return how far past the returns' start the bulb's center stands, metres along the center line.

    sqrt((R + r)² - (w/2 + r)²), by the triangle of the two centers, as a product of sum and difference.
    Raises as ``bulb``.
    """
    _above_nothing(width, radius, return_radius)
    if width / 2 >= radius:
        raise NoCurve("apart")
    return sqrt((radius - width / 2) * (radius + 2 * return_radius + width / 2))


def _above_nothing(*figures: float) -> None:
    if not all(figure > 0 for figure in figures):
        raise ValueError("each figure has to be above 0")
