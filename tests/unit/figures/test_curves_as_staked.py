"""The methods' own numbers, as a crew tapes and turns them, against a printed curve table.

Here the figures come out of the steps of whole layouts; that the arcs themselves agree stands in test_curve_tables.py.
The same end pages of a surveyor's field book, edition and year not known, so source not named fully: recomputed at 50
digits. The tolerance is half a unit of the last printed digit.
"""

from __future__ import annotations

from math import asin, degrees, radians, sin

import pytest

from printed import assert_printed, laid, taped

FOOT = 0.3048


# "Curve Tables", Table II "Radii, Ordinates and Deflections, chord = 100 ft", source not named fully: degree (degrees,
# minutes), tangent offset, deflection distance.
TABLE_II = [
    (0, 10, ".145", ".291"),
    (0, 30, ".436", ".873"),
    (0, 40, ".582", "1.164"),
    (1, 10, "1.018", "2.036"),
    (1, 30, "1.309", "2.618"),
    (1, 50, "1.600", "3.200"),
    (7, 0, "6.105", "12.21"),
    (7, 20, "6.395", "12.79"),
    (7, 30, "6.540", "13.08"),
    (8, 0, "6.976", "13.95"),
]


@pytest.mark.parametrize(("whole", "minutes", "offset", "deflection"), TABLE_II)
def test_chords_produced_and_tangent_offsets_of_table_ii(
    whole: int, minutes: int, offset: str, deflection: str
) -> None:
    """A curve of degree D by the chord definition (100 ft of chord turn D), four chords long."""
    degree = whole + minutes / 60
    radius = 50 / sin(radians(degree / 2))
    produced = laid("ft", {"radius": radius, "central_angle": 4 * degree}, "produced", levels=2)
    for before, stake in (("K1", "K2"), ("K2", "K3")):
        assert taped(produced, before, f"ahead {stake}") / FOOT == pytest.approx(100, rel=1e-12)
        assert taped(produced, before, stake) / FOOT == pytest.approx(100, rel=1e-12)
        assert_printed(taped(produced, f"ahead {stake}", stake) / FOOT, deflection)
    # One chord's end stands over R sin D of the tangent: the middle of an arc whose own end stands over twice that.
    over = degrees(asin(2 * sin(radians(degree))))
    tangent = laid("ft", {"radius": radius, "central_angle": over}, "tangent", tangent_from="A", levels=1)
    stake = tangent["stakes"][1]
    assert (stake["x"] ** 2 + stake["y"] ** 2) ** 0.5 / FOOT == pytest.approx(100, rel=1e-9)
    assert_printed(taped(tangent, "tan K1", "K1") / FOOT, offset)


def test_a_whole_curve_by_deflection_angles() -> None:
    """I 23 deg 20', D 10 deg by the chord definition: L 233.33, a sub-chord of 46.47 ft to the first whole station,
    then half stations. The same end pages, "How to use curve tables", which count L and sub-chords by angle (100 ft for
    each D): a nominal s ft turns s/100 D, and its true chord is 2 R sin of half of that. Deflections from the tangent,
    printed to half a minute; an angle here is turned from the chord A-B, which lies I/2 off the tangent."""
    intersection, degree = 23 + 20 / 60, 10.0
    radius = 50 / sin(radians(degree / 2))
    assert_printed(100 * intersection / degree, "233.33")

    def chord(nominal: float) -> float:
        return 2 * radius * sin(radians(nominal / 100 * degree) / 2)

    answer = laid(
        "ft",
        {"radius": radius, "central_angle": intersection},
        "angles",
        first_gap=chord(46.47),
        spacing=chord(50),
    )
    turned = [measure["angle"] for step in answer["steps"] for measure in step["measures"] if "angle" in measure]
    printed = [2 + 19.5 / 60, 4 + 49.5 / 60, 7 + 19.5 / 60, 9 + 49.5 / 60]
    assert len(turned) == len(printed)
    for angle, figure in zip(turned, printed, strict=True):
        assert abs(intersection / 2 - angle - figure) <= 0.25 / 60
    assert_printed(intersection / 2, "11.67")  # 11 deg 40' at the end: what is left from B's own direction is nothing
    # The chords that go with them, in order: the sub-chord, half stations, and what is left to the end.
    gaps = [taped(answer, one, other) / FOOT for one, other in (("A", "K1"), ("K1", "K2"), ("K2", "K3"), ("K3", "K4"))]
    assert gaps == pytest.approx([chord(46.47), *[chord(50)] * 3], rel=1e-9)
    assert gaps[0] == pytest.approx(46.47, abs=0.05) and gaps[1] == pytest.approx(50, abs=0.05)


def test_the_same_curve_from_its_corner_by_tangent_offsets() -> None:
    """The same end pages: T 118.47 by a rounded correction, exactly 118.457; the ends are taped from the corner."""
    arc = {"radius": 50 / sin(radians(5)), "central_angle": "23° 20'"}
    answer = laid("ft", arc, "tangent", start="corner", levels=3)
    for end in ("A", "B"):
        assert_printed(taped(answer, "P", end) / FOOT, "118.457")
    feet = {foot: taped(answer, end, foot) / FOOT for end, foot in (("A", "tan K2"), ("A", "tan K4"), ("B", "tan K6"))}
    # To the middle of the arc the tangent is followed for half the chord, and half of that for the stakes between.
    half_chord = 50 / sin(radians(5)) * sin(radians(11 + 40 / 60))
    assert feet["tan K4"] == pytest.approx(half_chord, rel=1e-9)
    assert feet["tan K2"] == pytest.approx(half_chord / 2, rel=1e-9)
    assert feet["tan K6"] == pytest.approx(half_chord / 2, rel=1e-9)
