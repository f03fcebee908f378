"""A simple curve by what a drawing gives: length and radius, stations, a corner of two lines, or a row of PIs.

R radius, I the angle between the tangents (the central angle), T from the PI to either end, L along the curve, E from
the PI to the curve: T = R tan(I/2), L = R I, E = R (sec(I/2) - 1) (simple curves and curb returns, any route-surveying
text). Lengths are metres, angles radians.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import pi, remainder

from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Hand, Piece, Straight, sign_of
from bowstring.forming.line.runs import Pose, Run, between
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance

PARALLEL = 1e-9
"""Radians: two lines with less between them are parallel, and no curve joins them."""

NOTHING = 1e-9
"""Metres: a straight of less isn't there."""


class NoCurve(ValueError):
    """No piece does what is asked.

    Attributes:
        key: why: ``parallel`` (two lines with no corner), ``short`` (a straight is shorter than the tangent on it),
            ``same`` (two places are one), ``behind`` (a place straight behind), ``past`` (the curve would have to turn
            back), ``apart`` (the figures make no such curve), ``one`` (one arc does it).
    """

    def __init__(self, key: str) -> None:
        super().__init__(key)
        self.key = key


def of_length(length: float, radius: float, hand: Hand) -> Bend:
    """Return the arc of a length and a radius, both metres: I = L/R.

    Raises ``ValueError`` where either isn't above 0, and ``NoCurve`` for a whole turn or more.
    """
    if not (length > 0 and radius > 0):
        raise ValueError("an arc needs a length and a radius")
    if length >= 2 * pi * radius:
        raise NoCurve("past")
    return Bend.of(radius, sign_of(hand) * length / radius)


def of_stations(pc: float, pt: float, radius: float, hand: Hand) -> Bend:
    """Return the arc between two stations (metres along the line, PT past PC) of a radius in metres: L = PT - PC.

    Raises as ``of_length``.
    """
    return of_length(pt - pc, radius, hand)


@dataclass(frozen=True)
class Stations:
    """Where a curve begins and ends, metres along the line."""

    pc: float
    pt: float


def stations_of(pi_station: float, arc: Arc) -> Stations:
    """Return the stations of a curve's ends from that of its PI, metres: PC = PI - T, PT = PC + L.

    Raises ``NoCurve`` from half a turn up, where the tangents meet no more.
    """
    if arc.tangent_length is None:
        raise NoCurve("parallel")
    pc = pi_station - arc.tangent_length
    return Stations(pc, pc + arc.arc_length)


@dataclass(frozen=True)
class Corner:
    """A curve between two lines that meet.

    Attributes:
        pi: where the lines meet; pc, pt: where the curve begins and ends, with the heading there.
        bend: the curve; its arc has T (``tangent_length``), E (``external``), L and the rest.
        before: metres of straight from the first line's point to the PC; after: from the PT to the second line's
            point; below 0 where the point is on the wrong side.
    """

    pi: Point
    pc: Pose
    pt: Pose
    bend: Bend
    before: float
    after: float

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """The straight, the curve and the straight, from the first line's point to the second's.

        Raises ``NoCurve`` where a point is nearer to the PI than the tangent.
        """
        return (*_straight(self.before), self.bend, *_straight(self.after))


def corner_return(first: Pose, second: Pose, radius: float) -> Corner:
    """Return the curve of a radius in metres that leaves one line and comes onto another (a curb return).

    Each line is a point on it and its heading, as somebody walks: along the first toward the corner, then away from it.
    The PI is where they cross: first + t (its direction), t = (way x second)/(first x second).
    Raises ``NoCurve`` where the lines are parallel, and ``ValueError`` where the radius isn't above 0.
    """
    turn = remainder(second.heading - first.heading, 2 * pi)
    if abs(turn) < PARALLEL or pi - abs(turn) < PARALLEL:
        raise NoCurve("parallel")
    bend = Bend.of(radius, turn)
    way = second.point.minus(first.point)
    to_corner = way.cross(second.ahead) / first.ahead.cross(second.ahead)
    corner = first.on(to_corner).point
    tangent = _tangent(bend.arc)
    pc, pt = Pose(corner, first.heading).on(-tangent), Pose(corner, second.heading).on(tangent)
    after = second.point.minus(corner).dot(second.ahead) - tangent
    return Corner(corner, pc, pt, bend, to_corner - tangent, after)


def through_pis(points: Sequence[Point], radii: Sequence[float | None]) -> Line:
    """Return the line along a row of points, with a curve of a radius in metres at each but the first and the last.

    ``radii``: one for each point between; ``None`` leaves a kink there. Raises ``ValueError`` where the rows don't fit,
    and ``NoCurve``: ``same`` where two points are one, ``past`` where the row turns straight back, ``short`` where the
    tangents of two curves are longer than the leg between them.
    """
    if len(points) < 2 or len(radii) != len(points) - 2:
        raise ValueError("a row of PIs has a radius for each point between its ends")
    if any(distance(one, other) < NOTHING for one, other in pairwise(points)):
        raise NoCurve("same")
    legs = [between(one, other) for one, other in pairwise(points)]
    pieces: list[Piece] = []
    kink = used = 0.0
    for number, leg in enumerate(legs):
        bend, turn = _at_pi(legs, number, radii)
        tangent = _tangent(bend.arc) if bend else 0.0
        found: list[Piece] = [*_straight(leg.length - used - tangent)]
        if bend:
            found.append(bend)
        for piece in found:
            pieces.append(piece.kinked(kink))
            kink = 0.0
        kink, used = 0.0 if bend else turn, tangent
    return Line(tuple(pieces), legs[0].start)


def _at_pi(legs: Sequence[Run], number: int, radii: Sequence[float | None]) -> tuple[Bend | None, float]:
    """Return the curve at the end of a leg (``None`` where there is none), and by how much the row turns there."""
    if number == len(legs) - 1:
        return None, 0.0
    turn = remainder(legs[number + 1].start.heading - legs[number].start.heading, 2 * pi)
    if pi - abs(turn) < PARALLEL:
        raise NoCurve("past")
    radius = radii[number]
    if radius is None or abs(turn) < PARALLEL:
        return None, turn
    return Bend.of(radius, turn), turn


def of_pi(before: Point, corner: Point, after: Point, radius: float) -> Line:
    """Return the line from a point by a PI to a point, with a curve of a radius in metres at the PI.

    Raises as ``through_pis``.
    """
    return through_pis((before, corner, after), (radius,))


def _straight(length: float) -> tuple[Straight, ...]:
    """The straight that is left, none where that is nothing; raises ``NoCurve`` where it is less."""
    if length < -NOTHING:
        raise NoCurve("short")
    return (Straight(length),) if length > NOTHING else ()


def _tangent(arc: Arc) -> float:
    """T of an arc that is known to turn less than half a turn."""
    if arc.tangent_length is None:
        raise NoCurve("parallel")
    return arc.tangent_length
