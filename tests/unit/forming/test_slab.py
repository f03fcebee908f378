"""Both edges of a slab on an arc, against shapely's polygons and a printed example."""

from __future__ import annotations

from math import asin, cos, hypot, pi, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy import column_stack, linspace
from numpy import cos as cosines
from numpy import sin as sines
from scipy.integrate import quad
from shapely.geometry import Polygon

from bowstring.forming.edge import Edge
from bowstring.forming.slab import Lies, Slab, Taper, narrowed
from bowstring.geometry.arc import Arc

FOOT = 0.3048
PIECES = 8000
"""Sides of a polygon in an arc of an angle: it lacks a part of (angle/n)²/6 of each sector, at most 8e-8 here."""
angles, inners, widths = st.floats(0.05, 5.5), st.floats(0.3, 80), st.floats(0.2, 8)
tapered = st.floats(0.2, 2.9)
lying = st.sampled_from(["inside", "outside", "both"])


def between(angle: float, outer: tuple[float, float], inner: tuple[float, float]) -> Polygon:
    """A polygon of many sides between two edges about the origin, each with its radius at both ends."""
    turns = linspace(0, angle, PIECES + 1)
    edges = [linspace(*radii, PIECES + 1) for radii in (outer, inner)]
    out, back = (column_stack((radius * cosines(turns), radius * sines(turns))) for radius in edges)
    return Polygon([*out, *back[::-1]])


@given(angles, inners, widths)
def test_the_area_is_shapelys(angle: float, inner: float, width: float) -> None:
    slab = Slab(inner, width, angle)
    ring = between(angle, (slab.outer, slab.outer), (inner, inner))
    assert slab.area == pytest.approx(ring.area, rel=1e-6)


@given(angles, st.floats(3, 80), tapered, tapered, lying)
def test_a_tapers_area_is_shapelys(angle: float, radius: float, first: float, last: float, lies: Lies) -> None:
    taper = Taper(radius, first, last, angle, lies)
    out, back = {"inside": (0, -1), "outside": (1, 0), "both": (0.5, -0.5)}[lies]
    outer, inner = ((radius + part * first, radius + part * last) for part in (out, back))
    assert taper.area == pytest.approx(between(angle, outer, inner).area, rel=1e-6)


@given(angles, inners, widths, lying)
def test_a_taper_of_one_width_is_a_slab(angle: float, inner: float, width: float, lies: Lies) -> None:
    slab = Slab(inner, width, angle)
    radius = {"inside": slab.outer, "outside": slab.inner, "both": slab.middle}[lies]
    taper = Taper(radius, width, width, angle, lies)
    assert taper.area == pytest.approx(slab.area, rel=1e-12)
    assert taper.outside.length == pytest.approx(slab.outer * angle, rel=1e-12)
    assert taper.inside.length == pytest.approx(slab.inner * angle, rel=1e-9)


@given(angles, st.floats(3, 80), tapered, tapered, lying)
def test_a_tapers_edges_are_as_long_as_scipy_finds_them(
    angle: float, radius: float, first: float, last: float, lies: Lies
) -> None:
    """The length of r(t), r even in t, is the integral of sqrt(r² + r'²)."""
    taper = Taper(radius, first, last, angle, lies)
    for edge in (taper.outside, taper.inside):
        start, end = edge.radius(0), edge.radius(1)
        change = (end - start) / angle
        found, error = quad(lambda turn, s=start, c=change: hypot(s + c * turn, c), 0, angle, epsabs=0, epsrel=1e-11)
        assert edge.length == pytest.approx(found, rel=1e-9) and error < 1e-6 * found


@given(angles, st.floats(3, 80), st.floats(-2.9, 8), st.floats(-2.9, 8), st.floats(0, 1))
def test_an_edges_place_off_its_own_string(angle: float, radius: float, first: float, last: float, at: float) -> None:
    """About the center by sines and cosines, then along and square off the straight line of its ends."""
    edge = Edge(Arc.of_angle(radius, angle / 2), first, last)

    def about(share: float) -> complex:
        turn = angle * (0.5 - share)
        return (radius + first + (last - first) * share) * complex(sin(turn), -cos(turn)) * -1

    start, end = about(0), about(1)
    there = (about(at) - start) * (end - start).conjugate() / abs(end - start)
    assert edge.chord == pytest.approx(abs(end - start), abs=1e-9)
    assert (edge.own(at).x, edge.own(at).y) == pytest.approx((there.real, there.imag), abs=1e-7 / abs(end - start))


def test_an_edge_that_meets_the_center_is_none() -> None:
    with pytest.raises(ValueError, match="center"):
        Edge(Arc.of_angle(5.0, 0.4), -1.0, -5.0)
    for lies, widths_of in (("inside", (1.0, 5.0)), ("both", (10.0, 1.0)), ("outside", (0.0, 1.0))):
        with pytest.raises(ValueError, match="taper"):
            Taper(5.0, *widths_of, 0.4, lies)  # type: ignore[arg-type]


@given(st.floats(0.05, 3), inners, widths, st.floats(0, 1))
def test_a_diagonal_is_the_distance_of_its_two_marks(angle: float, inner: float, width: float, share: float) -> None:
    slab = Slab(inner, width, angle)
    turn = angle * share
    away = hypot(slab.outer * cos(turn) - inner, slab.outer * sin(turn))
    assert slab.diagonal(share) == pytest.approx(away, rel=1e-9)


def test_a_stick_off_square_narrows_the_slab() -> None:
    """By the law of cosines: the stick's end stands at sqrt(Ro² + w² - 2 Ro w cos p)."""
    slab = Slab(57 * FOOT, 5 * FOOT, 0.8)
    for inches in (3, 4, 6):
        slip = inches / 12 * FOOT
        turn = asin(slip / slab.width)
        away = (slab.outer**2 + slab.width**2 - 2 * slab.outer * slab.width * cos(turn)) ** 0.5
        assert slab.narrowed(slip) == pytest.approx(away - slab.inner, abs=1e-9)
    assert slab.narrowed(0) == pytest.approx(0, abs=1e-12)


def test_a_stick_from_the_inner_edge_narrows_it_too() -> None:
    slip, width, inner = 0.08, 1.5, 9.0
    turn = asin(slip / width)
    away = (inner**2 + width**2 + 2 * inner * width * cos(turn)) ** 0.5
    assert narrowed(inner, width, slip) == pytest.approx(inner + width - away, abs=1e-12)
    assert narrowed(inner, width, 0.0) == 0
    with pytest.raises(ValueError, match="slip"):
        narrowed(inner, width, 1.6)


def test_a_walk_inside_a_radius() -> None:
    """A 5-ft walk inside R 62 ft on a chord of 48 ft: figures worked out by hand beside the trade's rounding."""
    line = Arc.of_angle(62 * FOOT, asin(24 / 62))
    slab = Slab.along(line, 5 * FOOT, "inside")
    inner = slab.line(slab.inner)
    assert slab.inner / FOOT == pytest.approx(57)
    assert inner.chord / FOOT == pytest.approx(44 + 1.5 / 12, abs=1 / 192)  # 44' 1-1/2"
    assert inner.sagitta / FOOT == pytest.approx(4 + 5.375 / 12, abs=1 / 192)  # 4' 5-3/8"
    assert inner.arc_length / FOOT == pytest.approx(45 + 3.75 / 12, abs=1 / 192)  # 45' 3-3/4"
    assert slab.area / FOOT**2 == pytest.approx(236.5, abs=0.05)


def test_a_ring_printed_in_a_schoolbook() -> None:
    """A ring of outer diameter 30 and inner 18: 452.3904 in an 18th-century mensuration article, by .7854 for pi/4."""
    ring_of = Slab(9, 6, 2 * pi)
    assert ring_of.area * 0.7854 / (pi / 4) == pytest.approx(452.3904, abs=5e-5)


@pytest.mark.parametrize("lies", ["inside", "outside", "both"])
def test_the_line_stands_where_it_is_said_to(lies: str) -> None:
    line = Arc.of_angle(20.0, radians(40))
    slab = Slab.along(line, 1.5, lies)  # type: ignore[arg-type]
    edges = {"inside": slab.outer, "outside": slab.inner, "both": slab.middle}
    assert edges[lies] == pytest.approx(20.0)
    assert slab.width == 1.5 and slab.angle == pytest.approx(radians(80))


def test_a_width_of_the_radius_leaves_no_inner_edge() -> None:
    for width in (20.0, 21.0):
        with pytest.raises(ValueError, match="inner edge"):
            Slab.along(Arc.of_angle(20.0, 0.5), width, "inside")
