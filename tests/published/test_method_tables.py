"""The methods' own numbers, as a crew tapes and turns them, against printed tables and worked problems.

Here the figures come out of the steps of whole layouts; that the arcs themselves agree stands in the other files. The
tolerance is half a unit of the last printed digit.
"""

from __future__ import annotations

from math import asin, degrees, radians, sin
from typing import Any

import pytest

import bowstring

FOOT = 0.3048


def laid(unit: str, arc: dict[str, Any], method: str, **keys: Any) -> Any:
    return bowstring.answer({"bowstring": 1, "unit": unit, "arc": arc, "method": method, "centre": "reachable", **keys})


def taped(answer: Any, start: str, end: str) -> float:
    """Return a distance in metres that a step has the crew tape."""
    return next(
        measure["distance"]
        for step in answer["steps"]
        for measure in step["measures"]
        if (measure["from"], measure["to"]) == (start, end)
    )


def assert_printed(value: float, printed: str) -> None:
    """Hold a value to half a unit of the last printed digit (and a hair for the float itself)."""
    half = 0.5 * 10.0 ** -len(printed.partition(".")[2])
    assert abs(value - float(printed)) <= half * (1 + 1e-9), (value, printed)


# "Curve Tables", Table II "Radii, Ordinates and Deflections, chord = 100 ft", printed end pages of a surveyor's
# field book, New York, early 20th century: degree (degrees, minutes), tangent offset, deflection distance.
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


@pytest.mark.parametrize(
    ("radius", "angle", "printed"),
    [
        # J. C. Trautwine, The Field Practice of Laying Out Circular Curves for Railroads, 1851: chord 100 ft,
        # radius 10 000 ft: 1 ft.
        (10_000.0, None, "1"),
        # W. F. Shunk, A Practical Treatise on Railway Curves and Location: a 5-degree curve, chord 100 ft: 8.72 ft.
        (50 / sin(radians(2.5)), 5.0, "8.72"),
    ],
    ids=["Trautwine", "Shunk"],
)
def test_deflection_distances(radius: float, angle: float | None, printed: str) -> None:
    turned = angle or degrees(2 * asin(50 / radius))
    produced = laid("ft", {"radius": radius, "central_angle": 8 * turned}, "produced", levels=3)
    for number in range(2, 8):
        deflection = taped(produced, f"ahead K{number}", f"K{number}") / FOOT
        assert_printed(deflection, printed)
        # By the similar triangles of both books: chord squared over radius.
        assert deflection == pytest.approx(100**2 / radius, rel=1e-9)


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


def test_offset_from_the_tangent() -> None:
    """R 198.17 m, arc 36.58 m from the tangent point: angle 10.58 deg, offset 3.37 m. A civil-engineering licence
    board's simple-curve problem 01 (the short rule s²/2R gives 3.38)."""
    angle = 36.58 / 198.17
    assert_printed(degrees(angle), "10.58")
    over = degrees(asin(2 * sin(angle)))
    answer = laid("m", {"radius": 198.17, "central_angle": over}, "tangent", tangent_from="A", levels=1)
    assert answer["stakes"][1]["along"] == pytest.approx(36.58, rel=1e-9)
    offset = taped(answer, "tan K1", "K1")
    assert_printed(offset, "3.37")
    assert_printed(36.58**2 / (2 * 198.17), "3.38")
    assert offset < 3.375


# Ordinates from the long chord, recomputed at 50 digits; the textbook answers behind them are (memory), not published.
ORDINATES = {
    "C 80, M 4": ({"chord": 80, "sagitta": 4}, 10, ["4.0000", "3.7523", "3.0075", "1.7599"]),
    "C 80, M 5": ({"chord": 80, "sagitta": 5}, 10, ["5.0000", "4.6920", "3.7645", "2.2068"]),
    "C 72, R 120": ({"chord": 72, "radius": 120}, 6, ["5.5273", "5.3772", "4.9258", "4.1696", "3.1028", "1.7168"]),
}


@pytest.mark.parametrize(("given", "step", "printed"), ORDINATES.values(), ids=ORDINATES.keys())
def test_ordinates_as_they_are_taped(given: dict[str, float], step: int, printed: list[str]) -> None:
    """Every so far along the string, from its nearer end, and the same from both."""
    chord, count = given["chord"], len(printed)
    stations = [step * number for number in range(1, 2 * count)]
    answer = laid("m", given, "ordinates", stations=stations)
    for number, station in enumerate(stations, 1):
        near = "A" if station <= chord / 2 else "B"
        assert taped(answer, near, f"foot K{number}") == pytest.approx(min(station, chord - station), abs=1e-9)
        assert_printed(taped(answer, f"foot K{number}", f"K{number}"), printed[abs(number - count)])
