"""Both edges of a slab on an arc, against shapely's polygons and a printed example."""

from __future__ import annotations

from math import asin, cos, hypot, pi, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Polygon

from bowstring.forming.slab import Slab, Taper
from bowstring.geometry.arc import Arc

FOOT = 0.3048
PIECES = 1000
angles, inners, widths = st.floats(0.05, 5.5), st.floats(0.3, 80), st.floats(0.2, 8)


def ring(slab: Slab) -> Polygon:
    """The slab as a polygon of many sides."""
    turns = [slab.angle * place / PIECES for place in range(PIECES + 1)]
    outer = [(slab.outer * cos(turn), slab.outer * sin(turn)) for turn in turns]
    inner = [(slab.inner * cos(turn), slab.inner * sin(turn)) for turn in reversed(turns)]
    return Polygon([*outer, *inner])


@given(angles, inners, widths)
def test_the_area_is_shapelys(angle: float, inner: float, width: float) -> None:
    slab = Slab(inner, width, angle)
    # A polygon in an arc of n pieces lacks a part of (angle/n)²/6 of each sector.
    assert slab.area == pytest.approx(ring(slab).area, rel=6e-6)


@given(angles, st.floats(3, 80), st.floats(0.2, 2.9), st.floats(0.2, 2.9))
def test_a_tapers_area_is_shapelys(angle: float, outer: float, first: float, last: float) -> None:
    taper = Taper(outer, first, last, angle)
    shares = [place / PIECES for place in range(PIECES + 1)]
    outside = [(outer * cos(angle * share), outer * sin(angle * share)) for share in shares]
    inside = [taper.inner_point(share) for share in reversed(shares)]
    assert taper.area == pytest.approx(Polygon([*outside, *inside]).area, rel=1e-6)


@given(angles, inners, widths)
def test_a_taper_of_one_width_is_a_slab(angle: float, inner: float, width: float) -> None:
    assert Taper(inner + width, width, width, angle).area == pytest.approx(Slab(inner, width, angle).area, rel=1e-12)


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
