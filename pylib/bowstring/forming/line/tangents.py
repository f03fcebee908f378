"""The next piece of a line by where it goes: through a point, onto a heading, onto a line, back to the start.

Each begins where the line ends, tangent to it. Lengths are metres, angles radians.
"""

from __future__ import annotations

from math import atan2, hypot, pi, remainder, sin

from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Hand, Piece, Straight, hand_of, sign_of
from bowstring.forming.line.runs import Pose
from bowstring.forming.line.simple import NOTHING, PARALLEL, NoCurve
from bowstring.geometry.plane import Point


def through(place: Pose, point: Point) -> Piece:
    """Return the arc from a place, tangent there, to a point; a straight where the point is straight ahead.

    The angle between a tangent and a chord is half the central angle (Euclid, Elements III.32): with c the distance and
    a the angle from the heading to the point, I = 2a and R = c/(2 sin a).
    Raises ``NoCurve``: ``same`` where the point is the place, ``behind`` where it is straight behind.
    """
    way = point.minus(place.point)
    far = hypot(*way)
    if far < NOTHING:
        raise NoCurve("same")
    half = atan2(place.ahead.cross(way), place.ahead.dot(way))
    if abs(half) < PARALLEL:
        return Straight(far)
    if pi - abs(half) < PARALLEL:
        raise NoCurve("behind")
    return Bend.of(far / (2 * sin(abs(half))), 2 * half)


def onto_heading(place: Pose, heading: float, radius: float, hand: Hand | None = None) -> Bend:
    """Return the arc of a radius in metres that turns the line to a heading, on the hand where that is nearer, or on
    the one that is said.

    Raises ``NoCurve``: ``one`` where the line goes that way already, ``past`` where it would turn straight back and no
    hand is said; ``ValueError`` for a radius that isn't above 0.
    """
    turn = remainder(heading - place.heading, 2 * pi)
    if abs(turn) < PARALLEL:
        raise NoCurve("one")
    if hand is None:
        if pi - abs(turn) < PARALLEL:
            raise NoCurve("past")
        hand = hand_of(turn)
    return Bend.of(radius, sign_of(hand) * ((sign_of(hand) * turn) % (2 * pi)))


def onto_line(place: Pose, target: Pose) -> Bend:
    """Return the arc that leaves a place tangent and comes tangent onto a line, in the line's own heading.

    Its center stands R to one hand of the place and R to the same hand of the line. With d how far the place is to the
    left of the line and I the angle from heading to heading, d + R cos I = R for an arc to the left and the same with
    both signs turned for one to the right: R = |d|/(1 - cos I), to the left where d is above 0. Where the lines cross
    behind the place the arc turns by more than half a turn.
    Raises ``NoCurve``: ``parallel`` where the two have one heading, ``same`` where the place is on the line already.
    """
    turn = remainder(target.heading - place.heading, 2 * pi)
    if abs(turn) < PARALLEL:
        raise NoCurve("parallel")
    off = target.left.dot(place.point.minus(target.point))
    if abs(off) < NOTHING:
        raise NoCurve("same")
    hand = hand_of(off)
    # 1 - cos I as 2 sin²(I/2), which keeps its digits for a small turn.
    return Bend.of(abs(off) / (2 * sin(turn / 2) ** 2), sign_of(hand) * ((sign_of(hand) * turn) % (2 * pi)))


def compound_onto(place: Pose, target: Pose, first: float, second: float, hand: Hand) -> tuple[Bend, Bend]:
    """Return two arcs to one hand, of a first and a second radius in metres, from a place onto a line, tangent all
    along: a compound curve.

    The second center lies from the first by (R2 - R1) along the normal at the common point, so its distance from the
    line is D + (R2 - R1) cos I2 = R2, with D the first center's distance and I2 the second angle; I1 = I - I2.
    Raises ``NoCurve``: ``one`` for equal radii, ``apart`` where no such curve exists.
    """
    if not (first > 0 and second > 0):
        raise ValueError("an arc needs a radius")
    if abs(first - second) < NOTHING:
        raise NoCurve("one")
    sign = sign_of(hand)
    centre = place.aside(sign * first).point
    off = sign * target.left.dot(centre.minus(target.point))
    cosine = (second - off) / (second - first)
    if not -1 < cosine < 1:
        raise NoCurve("apart")
    last = _arc_cosine(cosine)
    turn = (sign * (target.heading - place.heading)) % (2 * pi)
    if turn - last <= PARALLEL:
        raise NoCurve("apart")
    return Bend.of(first, sign * (turn - last)), Bend.of(second, sign * last)


def _arc_cosine(cosine: float) -> float:
    """The angle of a cosine, 0 to pi, with its digits kept near both ends."""
    return 2 * atan2(((1 - cosine) / 2) ** 0.5, ((1 + cosine) / 2) ** 0.5)


def closed(line: Line) -> Line:
    """Return a line with one more piece, tangent at its end, that comes back to its start.

    What turn is left there is the new line's ``closing.turn``. Raises as ``through``.
    """
    return Line((*line.pieces, through(line.end, line.start.point)), line.start)


def corner_of(place: Pose, bend: Bend) -> Point:
    """Return an arc's PI from where it begins: T = R tan(I/2) ahead.

    Raises ``NoCurve`` from half a turn up.
    """
    tangent = bend.arc.tangent_length
    if tangent is None:
        raise NoCurve("parallel")
    return place.on(tangent).point


def compound_tangents(first: Bend, second: Bend) -> tuple[float, float]:
    """Return the distances in metres from the PI of a whole compound curve to its start and to its end.

    With t1 = R1 tan(I1/2), t2 = R2 tan(I2/2) and the triangle of the PI and both PIs: T1 = t1 + (t1 + t2) sin I2/sin I,
    T2 = t2 + (t1 + t2) sin I1/sin I (law of sines; compound curves, any route-surveying text).
    Raises ``NoCurve`` where the whole turns half a turn or more, or not to one hand.
    """
    whole = first.turn + second.turn
    one, other = first.arc.tangent_length, second.arc.tangent_length
    if first.hand != second.hand or abs(whole) >= pi - PARALLEL or one is None or other is None:
        raise NoCurve("parallel")
    share = (one + other) / sin(whole)
    return one + share * sin(second.turn), other + share * sin(first.turn)
