"""Reverse curves, three-centered curves and bulbs: where they end, against a search for the root, and by hand."""

from __future__ import annotations

from math import cos, degrees, pi, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import brentq

from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Hand, sign_of
from bowstring.forming.line.runs import ORIGIN
from bowstring.forming.line.shapes import (
    bulb,
    bulb_centre,
    reverse_of_advance,
    reverse_of_radii,
    three_centred,
    three_centred_by_angle,
)
from bowstring.forming.line.simple import NoCurve
from bowstring.geometry.plane import Point, distance

hands: st.SearchStrategy[Hand] = st.sampled_from(["left", "right"])
sizes = st.floats(0.5, 40)


@given(sizes, sizes, st.floats(0.01, 1.99), hands)
def test_a_reverse_curve_of_two_radii(first: float, second: float, share: float, hand: Hand) -> None:
    offset = share * (first + second)
    pieces = reverse_of_radii(offset, first, second, hand)
    end = Line(pieces).end
    assert end.heading == pytest.approx(0, abs=1e-9)
    assert end.point.y == pytest.approx(sign_of(hand) * offset)
    assert [piece.radius for piece in pieces] == [first, second]
    angle = brentq(lambda turn: (first + second) * (1 - cos(turn)) - offset, 0, pi, xtol=1e-13)
    assert abs(pieces[0].turn) == pytest.approx(angle, abs=1e-6)


@given(sizes, sizes, hands)
def test_a_reverse_curve_of_an_advance(offset: float, advance: float, hand: Hand) -> None:
    equal = reverse_of_advance(offset, advance, hand)
    assert equal[0].radius == pytest.approx(equal[1].radius)
    own = reverse_of_advance(offset, advance, hand, 0.3 * equal[0].radius)
    assert own[0].radius == pytest.approx(0.3 * equal[0].radius)
    for pieces in (equal, own):
        end = Line(pieces).end
        assert end.point == pytest.approx((advance, sign_of(hand) * offset), rel=1e-9, abs=1e-9)
        assert end.heading == pytest.approx(0, abs=1e-9)


def test_a_reverse_curve_by_hand() -> None:
    """10 m apart over 30 m: R = (30² + 10²)/(4 x 10) = 25, tan(I/2) = 1/3."""
    one, other = reverse_of_advance(10.0, 30.0, "right")
    assert one.radius == other.radius == pytest.approx(25)
    assert (one.hand, other.hand) == ("right", "left") and degrees(one.turn) == pytest.approx(-36.8699, abs=5e-5)


def test_reverse_curves_that_do_not_exist() -> None:
    for offset in (20.0, 21.0):
        with pytest.raises(NoCurve, match="apart"):
            reverse_of_radii(offset, 4.0, 6.0, "left")
    with pytest.raises(NoCurve, match="apart"):
        reverse_of_advance(10.0, 30.0, "left", 50.0)
    for figures in ((0.0, 1.0, 1.0), (1.0, -1.0, 1.0)):
        with pytest.raises(ValueError, match="above 0"):
            reverse_of_radii(*figures, "left")


@given(st.floats(1, 20), st.floats(1, 20), st.floats(0.2, 3.0), st.floats(0.1, 0.9), hands)
def test_a_three_centered_curve_is_found_again(
    outer: float, inner: float, turn: float, share: float, hand: Hand
) -> None:
    """Made of radii and angles first: span and rise by the sines and cosines of its arcs, then back."""
    assume(abs(outer - inner) > 0.1)
    outer_angle = share * turn / 2
    half = turn / 2 - outer_angle
    span = 2 * (outer * sin(turn / 2) + (inner - outer) * sin(half))
    rise = inner - (inner - outer) * cos(half) - outer * cos(turn / 2)
    for pieces in (
        three_centred(span, rise, outer, hand, turn),
        three_centred_by_angle(span, rise, outer_angle, hand, turn),
    ):
        assert pieces[1].radius == pytest.approx(inner, rel=1e-5)
        assert [piece.radius for piece in pieces[::2]] == pytest.approx([outer, outer], rel=1e-5)
        assert abs(pieces[0].turn) == pytest.approx(outer_angle, abs=1e-5)
        line = Line(pieces)
        assert distance(line.end.point, Point(0.0, 0.0)) == pytest.approx(span)
        assert line.end.heading == pytest.approx(sign_of(hand) * turn)


@given(st.floats(4, 40), st.floats(0.1, 0.95), st.floats(0.1, 0.9))
def test_an_arch_reaches_its_rise(span: float, flat: float, share: float) -> None:
    """Half a turn; the outer radius under the rise. The inner one once more by a search: its circle touches the outer
    one (centers R - r apart) and the top."""
    rise = flat * span / 2
    outer = share * rise
    pieces = three_centred(span, rise, outer, "left")
    line = Line(pieces)
    top = line.at(line.length / 2)
    assert line.end.point == pytest.approx((0, span), abs=1e-7) and top.point.x == pytest.approx(rise)
    assert top.point.y == pytest.approx(span / 2)

    def too_wide(inner: float) -> float:
        return (span / 2 - outer) ** 2 + (inner - rise) ** 2 - (inner - outer) ** 2

    found = brentq(too_wide, outer, 1e6, xtol=1e-10, rtol=1e-14)
    assert pieces[1].radius == pytest.approx(found, rel=1e-6)


def test_an_arch_by_hand() -> None:
    """Span 10, rise 4, outer 3: a = 2, b = 1, R = 3 + (4 + 1)/2 = 5.5; half the inner angle 2 atan(1/2)."""
    side, crown, _other = three_centred(10.0, 4.0, 3.0, "left")
    assert crown.radius == pytest.approx(5.5) and crown.turn == pytest.approx(4 * 0.4636476, abs=1e-6)
    assert side.turn * 2 + crown.turn == pytest.approx(pi)


def test_three_centered_curves_that_do_not_exist() -> None:
    with pytest.raises(NoCurve, match="one"):
        three_centred(10.0, 5.0, 5.0, "left")
    for rise, outer in ((4.0, 4.5), (4.0, 6.0), (4.0, 5.0)):
        with pytest.raises(NoCurve, match="apart"):
            three_centred(10.0, rise, outer, "left")
    with pytest.raises(NoCurve, match="apart"):
        three_centred_by_angle(10.0, 4.0, pi / 2, "left")
    with pytest.raises(NoCurve, match="apart"):
        three_centred_by_angle(10.0, 0.1, radians(60), "left")
    with pytest.raises(ValueError, match="above 0"):
        three_centred(10.0, 0.0, 3.0, "left")


@given(st.floats(3, 12), st.floats(7, 20), st.floats(1, 15), hands)
def test_a_bulb_comes_back_on_the_other_edge(width: float, radius: float, small: float, hand: Hand) -> None:
    pieces = bulb(width, radius, small, hand)
    line = Line(pieces)
    side = sign_of(hand)
    assert line.end.point == pytest.approx((0, side * width), abs=1e-8)
    assert abs(line.end.heading) == pytest.approx(pi)
    assert [piece.hand for piece in pieces] == [line.pieces[0].hand, hand, line.pieces[0].hand]
    assert pieces[0].hand != hand
    centre = Point(bulb_centre(width, radius, small), side * width / 2)
    for share in (0.0, 0.4, 1.0):
        run = line.runs[1]
        assert distance(run.at(run.length * share).point, centre) == pytest.approx(radius)

    def too_far(angle: float) -> float:
        """How far the return's end is outside of the bulb's edge, the center square to the line by the angle."""
        return (radius + small) * cos(angle) - (width / 2 + small)

    assert abs(pieces[0].turn) == pytest.approx(brentq(too_far, 0, pi / 2, xtol=1e-13), abs=1e-6)


def test_a_bulb_by_hand() -> None:
    """A road 24 wide, bulb 38, returns 26: cos A = 38/64, A 53.576 degrees, the bulb 287.153."""
    side, whole, _other = bulb(24.0, 38.0, 26.0, "left")
    assert degrees(side.turn) == pytest.approx(-53.576, abs=5e-4)
    assert degrees(whole.turn) == pytest.approx(287.153, abs=1.5e-3)
    assert bulb_centre(24.0, 38.0, 26.0) == pytest.approx((64**2 - 38**2) ** 0.5)
    assert Line((side, whole, side)).start == ORIGIN


def test_bulbs_that_do_not_exist() -> None:
    for call in (bulb_centre, lambda *figures: bulb(*figures, "left")):
        with pytest.raises(NoCurve, match="apart"):
            call(24.0, 12.0, 5.0)
        with pytest.raises(ValueError, match="above 0"):
            call(24.0, 0.0, 5.0)
