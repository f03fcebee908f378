"""How deep a slab is along it: volumes against polygons cut across it by a general-purpose geometry library (shapely),
and by hand."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import cos, sin

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray
from shapely.geometry import Polygon

from bowstring.forming.deep import Apron, Deep, Depths
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Piece, Straight
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.sweep import Sweep
from bowstring.forming.slab import OFF, Lies, Slab, Taper
from bowstring.geometry.arc import Arc
from bowstring.report.forming.deepness import along_arc
from bowstring.report.forming.pouring import ArcBody, Body
from bowstring.report.lined.deepness import along_line

FINE = 3000
"""Points along a cut's edge: straights between them lack a part of 1.2e-7 of the area at most."""

Row = NDArray[np.float64]
Radius = Callable[[Row], Row]
Cut = Callable[[float, float], float]
"""The area of a slab between two shares, square metres, cut out of polygons."""

lies: st.SearchStrategy[Lies] = st.sampled_from(["inside", "outside", "both"])
radii, widths, angles = st.floats(6.0, 60.0), st.floats(0.6, 2.5), st.floats(0.2, 2.5)
shares = st.lists(st.floats(0.02, 0.98), min_size=2, max_size=2, unique=True).map(sorted)
thicknesses = st.floats(0.08, 0.2)


def ring(outer: Radius, inner: Radius, angle: float, first: float, last: float,
         ) -> Polygon:  # fmt: skip
    """What lies between two radii that change with the share of the angle, cut radially at two shares."""
    at = np.linspace(first, last, FINE)
    out, back = (
        np.column_stack([radius(at) * np.sin(angle * at), radius(at) * np.cos(angle * at)]) for radius in (outer, inner)
    )
    return Polygon(np.concatenate([out, back[::-1]]))


def cuts(body: Slab | Taper, wide: float) -> tuple[Cut, Cut]:
    """How to cut a slab on one arc, and the bands of a width along its two edges."""

    def width(at: Row) -> Row:
        return body.width + 0 * at if isinstance(body, Slab) else body.first + (body.last - body.first) * at

    def outer(at: Row) -> Row:
        return body.outer + 0 * at if isinstance(body, Slab) else body.radius + OFF[body.lies][0] * width(at)

    def band(at: Row) -> Row:
        return np.minimum(wide, width(at) / 2)

    def inner(at: Row) -> Row:
        return outer(at) - width(at)

    def whole(first: float, last: float) -> float:
        return float(ring(outer, inner, body.angle, first, last).area)

    def bands(first: float, last: float) -> float:
        outside = ring(outer, lambda at: outer(at) - band(at), body.angle, first, last)
        inside = ring(lambda at: inner(at) + band(at), inner, body.angle, first, last)
        return float(outside.area + inside.area)

    return whole, bands


def slabs_of(radius: float, width: float, far: float, angle: float, where: Lies) -> tuple[Slab | Taper, ...]:
    return Slab(radius, width, angle), Taper(radius, width, far, angle, where)


@settings(max_examples=12, deadline=None)
@given(radii, widths, widths, angles, lies, shares, thicknesses, st.floats(0.02, 0.3), st.floats(0.05, 0.4))
def test_an_apron_adds_its_depth_over_what_is_cut_across(
    radius: float, width: float, far: float, angle: float, where: Lies, ends: list[float], depth: float, more: float,
    edge: float,
) -> None:  # fmt: skip
    """With thick edges between the slab and the apron, deeper than the slab and, or not, than the apron."""
    first, last = ends
    for slab in slabs_of(radius, width, far, angle, where):
        whole, bands = cuts(slab, edge)
        for edge_depth in (depth + more / 2, depth + 2 * more):
            deep = Deep(depth, edge, edge_depth, Apron(first, last, depth + more))
            over = max(0.0, edge_depth - depth - more)
            beside = bands(0.0, first) + bands(last, 1.0)
            wanted = depth * whole(0.0, 1.0) + more * whole(first, last)
            wanted += (edge_depth - depth) * beside + over * bands(first, last)
            assert deep.volume(ArcBody(slab), 1.0) == pytest.approx(wanted, rel=1e-6)
            middle = (first + last) / 2
            upto = depth * whole(0.0, middle) + more * whole(first, middle)
            upto += (edge_depth - depth) * bands(0.0, first) + over * bands(first, middle)
            assert deep.volume(ArcBody(slab), middle) == pytest.approx(upto, rel=1e-6)


@settings(max_examples=12, deadline=None)
@given(radii, widths, widths, angles, lies, st.lists(st.floats(0.02, 0.98), min_size=2, max_size=5, unique=True),
       st.lists(st.floats(0.08, 0.2), min_size=5, max_size=5))  # fmt: skip
def test_measured_depths_are_weighed_by_the_area_between_them(
    radius: float, width: float, far: float, angle: float, where: Lies, at: list[float], depths: list[float]
) -> None:
    """Trapezoids over what is cut out between two places, the nearest depth before the first and after the last."""
    reads: Depths = tuple(zip(sorted(at), depths, strict=False))
    if any(two[0] - one[0] < 1e-3 for one, two in pairwise(reads)):
        return
    for slab in slabs_of(radius, width, far, angle, where):
        whole, _bands = cuts(slab, 0.0)
        ends = [(0.0, reads[0][1]), *reads, (1.0, reads[-1][1])]
        wanted = sum(whole(one[0], two[0]) * (one[1] + two[1]) / 2 for one, two in pairwise(ends))
        deep = Deep(0.1, reads=reads)
        assert deep.volume(ArcBody(slab), 1.0) == pytest.approx(wanted, rel=1e-6)
        assert deep.stretches[0].mean(ArcBody(slab)) * whole(0.0, 1.0) == pytest.approx(wanted, rel=1e-6)


def test_a_slab_that_tapers_is_not_weighed_by_its_length() -> None:
    """By hand, nearly straight: 6 wide at A and 2 at B, so that the first half is 5/8 of the area.
    With 4 deep up to the middle and 6 at B the mean is 4 x 5/8 + 5 x 3/8 = 4.375; by length it would be 4.5."""
    taper = Taper(1e5, 6.0, 2.0, 1e-4)
    three = Deep(4.0, reads=((0.0, 4.0), (0.5, 4.0), (1.0, 6.0)))
    assert three.stretches[0].mean(ArcBody(taper)) == pytest.approx(4.375, rel=1e-4)


@settings(max_examples=20, deadline=None)
@given(radii, widths, widths, angles, shares, st.lists(thicknesses, min_size=4, max_size=4), thicknesses)
def test_what_is_poured_only_grows_and_parts_add_up(
    radius: float, width: float, far: float, angle: float, ends: list[float], depths: list[float], depth: float
) -> None:
    first, last = ends
    if last - first < 0.05:
        return
    inside = (0.7 * first + 0.3 * last, 0.3 * first + 0.7 * last)
    reads = tuple(zip((first / 2, *inside, (1 + last) / 2), depths, strict=True))
    for slab in slabs_of(radius, width, far, angle, "inside"):
        for measured in ((), reads):
            deep = Deep(depth, 0.1, 2 * depth, Apron(first, last, 1.5 * depth), measured)
            upto = [deep.volume(ArcBody(slab), share) for share in np.linspace(0.0, 1.0, 60)]
            assert upto[0] == 0 and all(one < two for one, two in pairwise(upto))


def test_each_stretch_goes_by_its_own_depths() -> None:
    """A yard-wide strip of 10 by 1, straight but for a float's dust: by hand. Before the apron 0.1 was measured all
    along, in it 0.2; after it nothing, so that it is as drawn."""
    strip = Slab(1e6, 1.0, 10 / (1e6 + 0.5))
    deep = Deep(0.12, apron=Apron(0.4, 0.6, 0.18), reads=((0.1, 0.1), (0.3, 0.1), (0.5, 0.2)))
    assert deep.volume(ArcBody(strip), 1.0) == pytest.approx(4 * 0.1 + 2 * 0.2 + 4 * 0.12, rel=1e-6)
    assert [deep.drawn(share) for share in (0.2, 0.4, 0.5, 0.6, 0.8)] == [0.12, 0.18, 0.18, 0.18, 0.12]
    undug = Deep(0.12, apron=Apron(0.4, 0.6, 0.18), reads=((0.2, 0.12), (0.5, 0.12), (0.8, 0.12)))
    assert undug.volume(ArcBody(strip), 1.0) == pytest.approx(1.2, rel=1e-6)  # the apron isn't dug yet


def stations(line: Line, left: float, right: float, first: float, last: float) -> Polygon:
    """What lies between two stations of a line, from ``left`` of it to ``right`` of it, walked in small steps."""
    count = 2000 * round(line.length)  # whole metres are among the places
    step = line.length / count
    x = y = heading = 0.0
    lefts, rights = [], []
    piece, begun = 0, 0.0
    for number in range(count + 1):
        station = number * step
        if first - step / 2 <= station <= last + step / 2:
            lefts.append((x - left * sin(heading), y + left * cos(heading)))
            rights.append((x + right * sin(heading), y - right * cos(heading)))
        while piece < len(line.pieces) - 1 and station - begun >= line.pieces[piece].length - step / 2:
            begun += line.pieces[piece].length
            piece += 1
            heading += line.pieces[piece].kink
        turn = step * line.pieces[piece].curvature
        x, y = x + step * cos(heading + turn / 2), y + step * sin(heading + turn / 2)
        heading += turn
    return Polygon([*lefts, *rights[::-1]])


PIECES: tuple[Piece, ...] = (
    Straight(6.0),
    Bend(Arc.of_angle(10.0, 0.4), "left"),
    Bend(Arc.of_angle(8.0, 0.375), "right"),
    Straight(4.0),
)


@settings(max_examples=10, deadline=None)
@given(st.lists(st.integers(1, 23), min_size=2, max_size=2, unique=True).map(sorted), st.floats(0.02, 0.2),
       st.sampled_from([(0.9, 0.9), (0.0, 1.5), (1.5, 0.0)]))  # fmt: skip
def test_an_apron_along_a_line_goes_by_its_stations(ends: list[int], more: float, sides: tuple[float, float]) -> None:
    """Whole metres along a line of 24: the joins, at 6, 14 and 20, are among them."""
    line = Line(PIECES)
    sweep = Sweep(LineSlab(line, *sides))
    places = along_line(sweep)
    first, last = (places.share(float(at)) for at in ends)
    deep = Deep(0.1, apron=Apron(first, last, 0.1 + more))
    extra = deep.volume(sweep, 1.0) - 0.1 * sweep.area
    assert extra == pytest.approx(more * stations(line, *sides, *map(float, ends)).area, rel=1e-6)


def test_depths_along_a_line_are_weighed_by_area() -> None:
    line = Line(PIECES)
    sweep = Sweep(LineSlab(line, 0.0, 1.5))
    places = along_line(sweep)
    at, depths = (2.0, 9.0, 14.0, 22.0), (0.10, 0.11, 0.13, 0.12)
    deep = Deep(0.1, reads=tuple(zip(map(places.near, at), depths, strict=True)))
    ends = [(0.0, 0.10), *zip(at, depths, strict=True), (24.0, 0.12)]
    wanted = sum(stations(line, 0.0, 1.5, one[0], two[0]).area * (one[1] + two[1]) / 2 for one, two in pairwise(ends))
    assert deep.volume(sweep, 1.0) == pytest.approx(wanted, rel=1e-6)


def test_no_apron_ends_in_the_corner_of_a_kink() -> None:
    """A kink of 0.5 rad cuts the inner edge back by w tan(k/2) = 0.23 m on either side of its join, at 6 m."""
    line = Line((Straight(6.0), Straight(5.0, 0.5)))
    places = along_line(Sweep(LineSlab(line, 0.9, 0.9)))
    for station in (5.78, 6.0, 6.22):
        assert 0 < places.near(station) < 1
    for station in (5.78, 6.22):
        with pytest.raises(ValueError, match="square"):
            places.share(station)
    assert places.share(5.76) < places.share(6.0) < places.share(6.24)
    assert (places.share(0.0), places.share(11.0)) == (0.0, 1.0)


@settings(max_examples=30, deadline=None)
@given(radii, widths, widths, angles, lies, st.floats(0.01, 0.99))
def test_a_place_along_the_outer_form_is_found_again(
    distance: float, width: float, far: float, angle: float, where: Lies, part: float
) -> None:
    for slab in slabs_of(distance, width, far, angle, where):
        places = along_arc(slab)
        share = places.share(part * places.length)
        at = np.linspace(0.0, share, 20_001)
        if isinstance(slab, Taper):
            radius = slab.radius + OFF[slab.lies][0] * (slab.first + (slab.last - slab.first) * at)
        else:
            radius = slab.outer + 0 * at
        steps = np.hypot(np.diff(radius * np.sin(slab.angle * at)), np.diff(radius * np.cos(slab.angle * at)))
        assert steps.sum() == pytest.approx(part * places.length, rel=1e-6)


def test_a_body_is_what_the_depths_ask_for() -> None:
    body: Body = ArcBody(Slab(10.0, 1.5, 0.8))
    assert Deep(0.1).volume(body, 1.0) == pytest.approx(0.1 * body.area)
    assert Deep(0.1, 0.3, 0.05).edges(body, 1.0) == 0  # edges that are no deeper add nothing


def test_an_apron_that_ends_on_a_kink_ends_on_its_miter() -> None:
    """By hand: half the width to each side, what the miter takes on one side of the line it gives on the other, so that
    3 m by 1.8 lie between a station and the kink."""
    sweep = Sweep(LineSlab(Line((Straight(6.0), Straight(5.0, 0.5))), 0.9, 0.9))
    places = along_line(sweep)
    deep = Deep(0.1, apron=Apron(places.share(3.0), places.share(6.0), 0.2))
    assert deep.volume(sweep, 1.0) - 0.1 * sweep.area == pytest.approx(0.1 * 3 * 1.8, rel=1e-9)
