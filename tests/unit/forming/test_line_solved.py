"""A line's pieces by what a drawing gives: against printed examples, a search for the root, and the places reached."""

from __future__ import annotations

from math import cos, degrees, hypot, pi, radians, sin, tan

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Hand, Straight, sign_of
from bowstring.forming.line.runs import ORIGIN, Pose
from bowstring.forming.line.simple import (
    NoCurve,
    corner_return,
    of_length,
    of_pi,
    of_stations,
    stations_of,
    through_pis,
)
from bowstring.forming.line.tangents import (
    compound_onto,
    compound_tangents,
    corner_of,
    onto_heading,
    onto_line,
    through,
)
from bowstring.geometry.arc import Arc, radius_of_degree
from bowstring.geometry.plane import Point, distance

FOOT = 0.3048
hands: st.SearchStrategy[Hand] = st.sampled_from(["left", "right"])
places = st.builds(Pose, st.builds(Point, st.floats(-50, 50), st.floats(-50, 50)), st.floats(-3, 3))


@pytest.mark.parametrize(
    ("degree", "angle", "corner", "radius", "tangent", "pc", "pt"),
    [
        # A worked solution to a university highway text's problem.
        (8.0, 25.5, 1250.0, 716.20, 162.06, 1087.94, 1406.69),
        # A US surveying license review problem.
        (2.0, 75.0, 3840.23, 2864.79, 2198.23, 1642.00, 5392.00),
    ],
)
def test_printed_stations(
    degree: float, angle: float, corner: float, radius: float, tangent: float, pc: float, pt: float
) -> None:
    arc = Arc.of_angle(radius_of_degree(degree), radians(angle) / 2)
    found = stations_of(corner * FOOT, arc)
    assert arc.radius / FOOT == pytest.approx(radius, abs=5e-3)
    assert arc.tangent_length and arc.tangent_length / FOOT == pytest.approx(tangent, abs=5e-3)
    assert (found.pc / FOOT, found.pt / FOOT) == pytest.approx((pc, pt), abs=5e-3)
    again = of_stations(found.pc, found.pt, arc.radius, "left")
    assert degrees(again.turn) == pytest.approx(angle)


def test_a_curb_return_by_hand() -> None:
    """R 25 ft at a corner of 60 degrees: T 14.434, E 3.868, L 26.180 (T = R tan(I/2), E = R (sec(I/2) - 1))."""
    turn = radians(-60)
    second = Pose(Point(40.0, 0.0), turn).on(30.0)
    corner = corner_return(ORIGIN, second, 25.0)
    assert corner.bend.hand == "right" and corner.pi == pytest.approx((40, 0))
    arc = corner.bend.arc
    assert arc.tangent_length == pytest.approx(14.434, abs=5e-4)
    assert arc.external == pytest.approx(3.868, abs=5e-4)
    assert arc.arc_length == pytest.approx(26.180, abs=5e-4)
    assert (corner.before, corner.after) == pytest.approx((40 - 14.434, 30 - 14.434), abs=5e-4)
    line = Line(corner.pieces)
    assert line.end.point == pytest.approx(second.point) and line.end.heading == pytest.approx(turn)
    assert line.runs[1].start.point == pytest.approx(corner.pc.point)
    assert line.runs[1].end.point == pytest.approx(corner.pt.point)


@given(places, places, st.floats(0.5, 40))
def test_a_return_is_tangent_to_both_lines(first: Pose, second: Pose, radius: float) -> None:
    assume(0.05 < abs((second.heading - first.heading + pi) % (2 * pi) - pi) < 3.0)
    corner = corner_return(first, second, radius)
    line = Line((corner.bend,), corner.pc)
    assert distance(line.end.point, corner.pt.point) < 1e-6
    centre = corner.pc.aside(sign_of(corner.bend.hand) * radius).point
    for one in (first, second):
        assert abs(one.ahead.cross(centre.minus(one.point))) == pytest.approx(radius, abs=1e-6)
    assert distance(corner.pi, centre) - radius == pytest.approx(corner.bend.arc.external, abs=1e-6)


def test_lines_without_a_corner_and_short_ones_are_refused() -> None:
    for heading in (0.0, pi):
        with pytest.raises(NoCurve, match="parallel"):
            corner_return(ORIGIN, Pose(Point(3.0, 4.0), heading), 2.0)
    short = corner_return(ORIGIN, Pose(Point(3.0, 4.0), pi / 2), 3.5)
    assert (short.before, short.after) == pytest.approx((-0.5, 0.5))
    with pytest.raises(NoCurve, match="short"):
        _ = short.pieces
    exact = corner_return(ORIGIN, Pose(Point(3.0, 3.0), pi / 2), 3.0)
    assert exact.pieces == (exact.bend,)


@given(st.lists(st.tuples(st.floats(20, 60), st.floats(-1.5, 1.5), st.floats(0.5, 8)), min_size=1, max_size=5))
def test_a_row_of_pis_is_followed(rows: list[tuple[float, float, float]]) -> None:
    """Legs of 20 m and more, so that no tangent (at most 8 tan 0.75) is too long for one."""
    points, heading = [Point(0.0, 0.0), Point(25.0, 0.0)], 0.0
    for leg, turn, _radius in rows:
        heading += turn
        points.append(Point(points[-1].x + leg * cos(heading), points[-1].y + leg * sin(heading)))
    for kinked in (False, True):
        radii = [None if kinked else radius for _leg, _turn, radius in rows]
        line = through_pis(points, radii)
        assert distance(line.end.point, points[-1]) < 1e-8
        assert all(join.tangent for join in line.joins) or kinked
    tangents = sum(2 * radius * tan(abs(turn) / 2) - radius * abs(turn) for _leg, turn, radius in rows)
    whole = 25 + sum(leg for leg, _turn, _radius in rows)
    assert through_pis(points, [radius for *_, radius in rows]).length == pytest.approx(whole - tangents)
    assert line.length == pytest.approx(whole)


def test_a_row_of_pis_that_cannot_be_followed() -> None:
    start, corner, end = Point(0.0, 0.0), Point(10.0, 0.0), Point(10.0, 10.0)
    assert [piece.length for piece in of_pi(start, corner, end, 4.0).pieces] == pytest.approx([6, 2 * pi, 6])
    with pytest.raises(NoCurve, match="short"):
        of_pi(start, corner, end, 11.0)
    with pytest.raises(NoCurve, match="past"):
        of_pi(start, corner, Point(5.0, 0.0), 1.0)
    with pytest.raises(NoCurve, match="same"):
        of_pi(start, start, end, 1.0)
    with pytest.raises(ValueError, match="radius for each"):
        through_pis((start, corner, end), ())
    mixed = through_pis((start, corner, end, Point(0.0, 10.0)), (None, 10.0))
    assert [type(piece) for piece in mixed.pieces] == [Straight, Bend] and mixed.joins[0].kink == pytest.approx(pi / 2)


def test_a_length_and_a_radius() -> None:
    assert of_length(5.0, 10.0, "right").turn == pytest.approx(-0.5)
    with pytest.raises(NoCurve, match="past"):
        of_length(63.0, 10.0, "left")
    for length, radius in ((0.0, 1.0), (1.0, 0.0), (-1.0, 1.0)):
        with pytest.raises(ValueError, match="length and a radius"):
            of_length(length, radius, "left")
    with pytest.raises(ValueError, match="length"):
        of_stations(20.0, 10.0, 5.0, "left")
    with pytest.raises(NoCurve, match="parallel"):
        stations_of(10.0, Arc.of_angle(3.0, pi / 2))


@given(places, st.floats(-3.1, 3.1), st.floats(0.5, 50))
def test_an_arc_through_a_point_ends_there(place: Pose, aside: float, far: float) -> None:
    assume(abs(aside) > 0.01)
    point = place.turned(aside).on(far).point
    piece = through(place, point)
    assert isinstance(piece, Bend)
    assert distance(Line((piece,), place).end.point, point) < 1e-6
    # The radius once more, by a search: the center is as far from the point as from the place.
    side = sign_of(piece.hand)

    def too_near(radius: float) -> float:
        return distance(place.aside(side * radius).point, point) - radius

    assert brentq(too_near, 1e-6, 1e5, xtol=1e-12, rtol=1e-14) == pytest.approx(piece.radius, rel=1e-6)


def test_a_point_ahead_behind_and_here() -> None:
    assert through(ORIGIN, Point(4.0, 0.0)) == Straight(4.0)
    for point, key in ((Point(-4.0, 0.0), "behind"), (Point(0.0, 0.0), "same")):
        with pytest.raises(NoCurve, match=key):
            through(ORIGIN, point)


@given(places, places)
def test_an_arc_onto_a_line_is_tangent_to_it(place: Pose, target: Pose) -> None:
    off = target.left.dot(place.point.minus(target.point))
    assume(abs(off) > 0.01 and abs((target.heading - place.heading + pi) % (2 * pi) - pi) > 0.05)
    bend = onto_line(place, target)
    end = Line((bend,), place).end
    scale = bend.radius + 100
    assert abs(target.left.dot(end.point.minus(target.point))) < 1e-9 * scale
    assert abs(end.ahead.cross(target.ahead)) < 1e-9 and end.ahead.dot(target.ahead) > 0
    side = sign_of(bend.hand)

    def too_far(radius: float) -> float:
        return side * target.left.dot(place.aside(side * radius).point.minus(target.point)) - radius

    assert brentq(too_far, 1e-6, 1e6, xtol=1e-10, rtol=1e-13) == pytest.approx(bend.radius, rel=1e-6)


def test_an_arc_onto_a_heading() -> None:
    assert onto_heading(ORIGIN, radians(-50), 4.0).turn == pytest.approx(radians(-50))
    assert onto_heading(ORIGIN, radians(-50), 4.0, "left").turn == pytest.approx(radians(310))
    assert onto_heading(ORIGIN, pi, 4.0, "right").turn == pytest.approx(-pi)
    for heading, key in ((0.0, "one"), (2 * pi, "one"), (pi, "past")):
        with pytest.raises(NoCurve, match=key):
            onto_heading(ORIGIN, heading, 4.0)
    with pytest.raises(NoCurve, match="parallel"):
        onto_line(ORIGIN, Pose(Point(0.0, 3.0), 0.0))
    with pytest.raises(NoCurve, match="same"):
        onto_line(ORIGIN, Pose(Point(0.0, 0.0), 1.0))


@given(places, st.floats(1, 30), st.floats(1, 30), st.floats(0.1, 1.4), st.floats(0.1, 1.4), hands)
def test_a_compound_curve_is_found_again(
    place: Pose, first: float, second: float, one: float, other: float, hand: Hand
) -> None:
    assume(abs(first - second) > 0.05)
    made = (Bend.of(first, sign_of(hand) * one), Bend.of(second, sign_of(hand) * other))
    end = Line(made, place).end
    found = compound_onto(place, end.on(17.0), first, second, hand)
    assert [bend.turn for bend in found] == pytest.approx([bend.turn for bend in made], abs=1e-5)
    before, after = compound_tangents(*made)
    corner = place.on(before).point
    assert distance(end.on(-after).point, corner) < 1e-6


def test_compound_curves_that_do_not_exist() -> None:
    target = Pose(Point(10.0, 0.0), pi / 2)
    with pytest.raises(NoCurve, match="one"):
        compound_onto(ORIGIN, target, 5.0, 5.0, "left")
    for first, second in ((5.0, 8.0), (20.0, 15.0)):
        with pytest.raises(NoCurve, match="apart"):
            compound_onto(ORIGIN, target, first, second, "left")
    with pytest.raises(ValueError, match="radius"):
        compound_onto(ORIGIN, target, 0.0, 8.0, "left")
    with pytest.raises(NoCurve, match="parallel"):
        compound_tangents(Bend.of(5.0, 1.0), Bend.of(5.0, -1.0))


def test_an_arcs_corner() -> None:
    assert corner_of(ORIGIN, Bend.of(5.0, pi / 2)) == pytest.approx((5, 0))
    assert hypot(*corner_of(ORIGIN, Bend.of(5.0, 1.0))) == pytest.approx(5 * tan(0.5))
    with pytest.raises(NoCurve, match="parallel"):
        corner_of(ORIGIN, Bend.of(5.0, 3.2))
