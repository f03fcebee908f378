"""Panels of a slab, its width changing or not, and parts of its area, against polygons and numerical derivatives."""

from __future__ import annotations

from itertools import pairwise
from math import acos, ceil, degrees, hypot, pi

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy import column_stack, linspace, minimum
from numpy import cos as cosines
from numpy import sin as sines
from shapely.geometry import LineString, Polygon

from bowstring.forming.joints import NARROW, USUAL_MOST, offered, panels, usual_most
from bowstring.forming.partly import along, area_to, bands_to, corner, share_of, turned, width_at
from bowstring.forming.slab import Slab, Taper

FOOT, INCH = 0.3048, 0.0254
SIDES = 3000
FEW = settings(max_examples=40)
"""Polygons of thousands of sides take their time."""
lying = st.sampled_from(["inside", "outside", "both"])
slabs = st.builds(Slab, st.floats(1, 80), st.floats(0.5, 5), st.floats(0.1, 5.5))
tapers = st.builds(Taper, st.floats(4, 80), st.floats(0.5, 3), st.floats(0.5, 3), st.floats(0.1, 5.5), lying)
either = st.one_of(slabs, tapers)
WALK = Slab(57 * FOOT, 5 * FOOT, 0.7949616)


def radii(slab: Slab | Taper) -> tuple[tuple[float, float], tuple[float, float]]:
    """The outer and the inner edge's distance from the center, at both ends: worked out without the package's edges."""
    if isinstance(slab, Slab):
        return (slab.outer, slab.outer), (slab.inner, slab.inner)
    out, back = {"inside": (0.0, -1.0), "outside": (1.0, 0.0), "both": (0.5, -0.5)}[slab.lies]
    ends = slab.first, slab.last
    outer, inner = ([slab.radius + part * width for width in ends] for part in (out, back))
    return (outer[0], outer[1]), (inner[0], inner[1])


def curve(ends: tuple[float, float], angle: float, first: float, last: float, sides: int = SIDES) -> LineString:
    """A piece of an edge as so many sides."""
    shares = linspace(first, last, sides + 1)
    radius = ends[0] + (ends[1] - ends[0]) * shares
    return LineString(column_stack((radius * cosines(angle * shares), radius * sines(angle * shares))))


@FEW
@given(either, st.integers(1, 12))
def test_every_panels_sides_are_a_polygons(slab: Slab | Taper, count: int) -> None:
    made = panels(slab, count)
    outer, inner = radii(slab)
    for edge, marks, longest in ((outer, made.outer, made.outside), (inner, made.inner, made.inside)):
        sides = [curve(edge, slab.angle, at / count, (at + 1) / count).length for at in range(count)]
        assert [after - before for before, after in pairwise((0.0, *marks))] == pytest.approx(sides, rel=1e-6)
        assert longest == pytest.approx(max(sides), rel=1e-6)
    assert len(made.outside_marks()) == len(made.inner) - 1 == count - 1
    assert made.widths == pytest.approx([outer[0] - inner[0] + (outer[1] - outer[0] - inner[1] + inner[0]) * at / count
                                         for at in range(count + 1)])  # fmt: skip
    assert made.even == (outer[0] == outer[1] and inner[0] == inner[1])


@given(either, st.floats(0.5, 6))
def test_the_fewest_panels_none_of_which_is_too_long(slab: Slab | Taper, most: float) -> None:
    first, *fewer = offered(slab, most)
    assert first.outside <= most * (1 + 1e-7)
    assert not fewer or (fewer[0].count == first.count - 1 and fewer[0].outside > most * (1 - 1e-7))


@FEW
@given(either, st.floats(0.01, 1))
def test_a_part_of_the_area_is_shapelys(slab: Slab | Taper, share: float) -> None:
    outer, inner = radii(slab)
    out, back = (curve(edge, slab.angle, 0, share).coords for edge in (outer, inner))
    assert area_to(slab, share) == pytest.approx(Polygon([*out, *list(back)[::-1]]).area, rel=1e-6)
    assert share_of(area_to(slab, share) / slab.area, lambda at: area_to(slab, at)) == pytest.approx(share, abs=1e-9)
    assert along(slab, "outside", share) == pytest.approx(curve(outer, slab.angle, 0, share).length, rel=1e-6)


@FEW
@given(either, st.floats(0.05, 3), st.floats(0.05, 1))
def test_bands_along_both_edges_are_shapelys(slab: Slab | Taper, wide: float, share: float) -> None:
    """What is left between two curves that are so far in from both edges, along the radius, taken off the whole."""
    ends = radii(slab)
    turns = linspace(0, share, SIDES + 1)
    outer, inner = (first + (last - first) * turns for first, last in ends)
    reach = minimum(wide, (outer - inner) / 2)
    rings = []
    for far, near in ((outer, inner), (outer - reach, inner + reach)):
        out, back = (column_stack((radius * cosines(slab.angle * turns), radius * sines(slab.angle * turns)))
                     for radius in (far, near))  # fmt: skip
        rings.append(Polygon([*out, *back[::-1]]))
    bands = rings[0].area - rings[1].area
    assert bands_to(slab, wide, share) == pytest.approx(bands, rel=2e-6, abs=1e-6)
    assert bands_to(slab, 99.0, share) == pytest.approx(area_to(slab, share), rel=1e-9)


@FEW
@given(tapers)
def test_a_tapers_corners_are_those_between_a_radius_and_its_edges(taper: Taper) -> None:
    """Against the direction from one place of the edge to the next."""
    step, least = 1e-5, 90.0
    for ends in radii(taper):
        for share in (0.0, 1.0 - step):
            (x, y), (x2, y2) = curve(ends, taper.angle, share, share + step, 1).coords
            length, radius = hypot(x2 - x, y2 - y), hypot(x, y)
            between = degrees(acos(((x2 - x) * x + (y2 - y) * y) / (length * radius)))
            least = min(least, between, 180 - between)
    assert degrees(corner(taper)) == pytest.approx(least, abs=0.01)
    assert corner(WALK) == pi / 2


@FEW
@given(tapers)
def test_an_edge_turns_by_what_its_headings_say(taper: Taper) -> None:
    """The sum of the small turns from side to side of a polygon; a board's back is longer by so much a metre thick."""
    outer, _inner = radii(taper)
    places = list(curve(outer, taper.angle, 0, 1).coords)
    steps = [(x2 - x, y2 - y) for (x, y), (x2, y2) in pairwise(places)]
    total = sum((a[0] * b[1] - a[1] * b[0]) / (hypot(*a) * hypot(*b)) for a, b in pairwise(steps))
    assert turned(taper) == pytest.approx(total, rel=1e-3)
    assert turned(WALK) == WALK.angle


def test_the_walks_panels() -> None:
    """5-ft walk inside R 62 ft, 48-ft chord: recomputed by hand, ten panels and nine."""
    ten, nine = offered(WALK, 5 * FOOT)
    assert (ten.count, nine.count) == (10, 9) and ten.even
    assert [ten.outside / FOOT, ten.inside / FOOT] == pytest.approx([4 + 11.145 / 12, 4 + 6.375 / 12], abs=1e-3)
    assert [nine.outside / FOOT, nine.inside / FOOT] == pytest.approx([5 + 5.717 / 12, 5 + 0.417 / 12], abs=1e-3)
    assert ten.ratio == pytest.approx(1.10, abs=5e-3)


def test_the_longest_panel_by_its_thickness() -> None:
    """10, 12 and 15 ft for 4, 5 and 6 in (a ready-mix association); 24 to 36 times that (ACI 302.1R, quoted)."""
    for inches, feet in ((4, 10), (5, 12), (6, 15), (8, 15)):
        assert usual_most(inches * INCH) / FOOT == pytest.approx(feet)
    for thickness in (0.05, 0.08, 0.1, 0.11, 0.125, 0.14, 0.15):
        assert 24 <= usual_most(thickness) / thickness <= 36
    sizes = [usual_most(mm / 1000) for mm in range(50, 300)]
    assert sizes == sorted(sizes) and sizes[-1] == pytest.approx(15 * FOOT)
    assert USUAL_MOST[0][0] == pytest.approx(4 * INCH)
    assert round(NARROW / FOOT, 9) == 2


def test_a_slab_of_one_panel_has_no_joint() -> None:
    pad = Slab(1.0, 2.0, 0.3)
    (one,) = offered(pad, 5.0)
    assert one.count == 1 and one.outside_marks() == () and one.ratio == pytest.approx(2.0 / 0.3)
    assert ceil(along(pad, "outside", 1.0) / 5.0) == 1 and width_at(pad, 0.5) == 2.0
