"""How much of a thick edge lies behind a pour's front: against shapely's polygons, clipped by it, and sums by hand."""

from __future__ import annotations

from math import asin, cos, pi, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.affinity import affine_transform
from shapely.geometry import Polygon, box

from bowstring.forming.pad import Filled, Pad
from bowstring.forming.rest import within, within_to
from bowstring.forming.segment import Segment
from bowstring.geometry.arc import Arc
from unit.forming import test_pad, test_segment

FOOT = 0.3048
bands = st.floats(0.01, 0.8)


def left_of(made: Filled, wide: float) -> Polygon:
    """What lies farther than a band from every form, as shapely draws a polygon in: the corners of what is left stay
    sharp."""
    whole = test_pad.polygon(made) if isinstance(made, Pad) else test_segment.polygon(made.arc)
    return whole.buffer(-wide, join_style="mitre", mitre_limit=99)


def front(made: Filled, share: float, *, back: bool) -> Polygon:
    """All that lies behind a front."""
    if back:
        assert isinstance(made, Pad)
        return box(-1e4, made.foot - 1, 1e4, made.foot + share * made.deep)
    before = made.before
    return box(-before - 1, -1e4, -before + share * made.wide, 1e4)


@given(test_pad.pads, bands, test_pad.shares, st.booleans())
def test_the_band_of_a_pad_behind_a_front_is_shapelys(made: Pad, part: float, share: float, back: bool) -> None:
    """Shapely's lines are simplified by a hundredth of the band; past a corner with the curve the package's arc goes on
    round, and its line straight: next to nothing of any slab."""
    wide = part * made.arc.chord / 2
    whole, behind = test_pad.polygon(made), front(made, share, back=back)
    drawn = whole.intersection(behind).area - left_of(made, wide).intersection(behind).area
    assert within_to(made, wide, share, back=back) == pytest.approx(drawn, abs=5e-3 * made.area)
    assert within_to(made, wide, 1.0, back=back) == pytest.approx(within(made, wide), abs=1e-9 * made.area)


@given(test_pad.pads, bands, test_pad.shares)
def test_from_the_back_it_is_that_of_the_smaller_shape_to_the_last_bit(made: Pad, part: float, share: float) -> None:
    """The same, with what is left put together as a polygon of that very shape: a closer bound."""
    wide, arc = part * made.arc.chord / 2, made.arc
    inner = arc.radius - wide
    circle = Arc.of_angle(inner, asin((arc.chord / 2 - wide) / inner))
    count, up = test_pad.PIECES, arc.sagitta - wide - circle.sagitta
    top = [(one.x + wide, one.y + up) for one in (circle.point_at(place / count) for place in range(count + 1))]
    left = Polygon([(wide, -9e3), *top, (arc.chord - wide, -9e3)])
    if made.both:
        turned = Polygon([(wide, 9e3), *((x, -made.sides - y) for x, y in top), (arc.chord - wide, 9e3)])
        left = left.intersection(turned)
    else:
        left = left.intersection(box(-9e3, wide - made.sides, 9e3, 9e3))
    for back in (True, False):
        behind = front(made, share, back=back)
        drawn = test_pad.polygon(made).intersection(behind).area - left.intersection(behind).area
        assert within_to(made, wide, share, back=back) == pytest.approx(drawn, abs=8e-6 * made.area)


@given(test_segment.halves, test_segment.radii, bands, test_segment.shares)
def test_the_band_of_a_segment_behind_a_front_is_shapelys(
    half: float, radius: float, part: float, share: float
) -> None:
    made = Segment(Arc.of_angle(radius, half))
    wide, behind = part * made.deep / 2, front(made, share, back=False)
    drawn = test_segment.polygon(made.arc).intersection(behind).area - left_of(made, wide).intersection(behind).area
    assert within_to(made, wide, share, back=False) == pytest.approx(drawn, abs=5e-3 * made.area)


def test_sums_by_hand() -> None:
    """R 10 ft with 15 ft of sides and a foot of band: from the back the first foot is all band, the next 14 have 2 of
    their 20 ft, and of the half circle's 50 pi are left 81 pi/2."""
    made = Pad(Arc.of_angle(10 * FOOT, pi / 2), 15 * FOOT)
    for feet, band in ((1, 20), (8, 20 + 7 * 2), (15, 20 + 14 * 2), (25, 20 + 14 * 2 + 50 * pi - 81 * pi / 2)):
        assert within_to(made, FOOT, feet / 25, back=True) / FOOT**2 == pytest.approx(band)
    assert within_to(made, FOOT, 0.5, back=False) == pytest.approx(within(made, FOOT) / 2)  # by symmetry


def test_a_band_as_wide_as_half_the_slab_is_all_of_it() -> None:
    made = Pad(Arc.of_angle(10 * FOOT, pi / 2), 15 * FOOT)
    for share in (0.2, 0.7, 1.0):
        assert within_to(made, 10 * FOOT, share, back=True) == pytest.approx(made.area_from_back(share))


def ring(arc: Arc, wide: float) -> Polygon:
    """What lies between an arc and the one of its center so far inside, square to both at the ends."""
    count, center = test_pad.PIECES, arc.sagitta - arc.radius
    turns = [arc.half_angle * (2 * place / count - 1) for place in range(count + 1)]
    rims = [
        [(arc.chord / 2 + radius * sin(turn), center + radius * cos(turn)) for turn in turns]
        for radius in (arc.radius, max(arc.radius - wide, 0.0))
    ]
    return Polygon([*rims[0], *rims[1][::-1]])


@given(test_pad.pads, st.floats(0.01, 0.4), test_pad.shares, st.booleans())
def test_the_band_along_the_curve_alone_is_shapelys(made: Pad, part: float, share: float, back: bool) -> None:
    """Between two circles of one center and square to the curve at its ends, up to the front."""
    wide, arc = part * made.arc.chord / 2, made.arc
    assume(wide * cos(arc.half_angle) < made.sides / made.ends)
    band = ring(arc, wide)
    band = band.union(affine_transform(band, [1, 0, 0, -1, 0, -made.sides])) if made.both else band
    drawn = band.intersection(front(made, share, back=back)).area
    assert within_to(made, wide, share, back=back, along="curve") == pytest.approx(drawn, abs=2e-5 * made.area)
    assert within(made, wide, "curve") == pytest.approx(band.area, abs=2e-5 * made.area)
    assert within(made, wide, "curve") <= within(made, wide, "sides") + 1e-9 <= within(made, wide) + 2e-9


def test_bands_less_far_round_by_hand() -> None:
    """R 10 ft with 15 ft of sides and a foot of band: along the curve alone (100 - 81) pi/2; the sides add 2 x 15, and
    the back the 18 ft between them."""
    made = Pad(Arc.of_angle(10 * FOOT, pi / 2), 15 * FOOT)
    curve = 19 * pi / 2
    for along, area in (("curve", curve), ("sides", curve + 30), ("all", curve + 48)):
        assert within(made, FOOT, along) / FOOT**2 == pytest.approx(area)
        assert within_to(made, FOOT, 1.0, back=True, along=along) / FOOT**2 == pytest.approx(area)
    assert within_to(made, FOOT, 15 / 25, back=True, along="curve") == pytest.approx(0, abs=1e-9)
    assert within_to(made, FOOT, 14 / 25, back=True, along="sides") / FOOT**2 == pytest.approx(28)
