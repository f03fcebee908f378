"""Railway curves against a printed table, feet and degrees throughout.

Printed in "Curve Tables", the end pages of a surveyor's field book, New York, early 20th century. Edition and year
aren't known, so the source is not named fully: every figure was recomputed at 50 digits.

Chord definition: a curve of degree D is the arc that a 100-ft chord cuts at D. Arc definition: 100 ft of arc.
The tolerance is always half a unit of the last printed digit.
"""

from __future__ import annotations

import pytest

from helping import feet
from printed import assert_printed

# Table II "Radii, Ordinates and Deflections, chord = 100 ft", source not named fully: degree, radius, middle ordinate,
# tangent offset, deflection distance.
TABLE_II = [
    ("0° 10'", "34377", ".036", ".145", ".291"),
    ("0° 30'", "11459", ".109", ".436", ".873"),
    ("0° 40'", "8594.4", ".145", ".582", "1.164"),
    ("1° 10'", "4911.2", ".255", "1.018", "2.036"),
    ("1° 30'", "3819.8", ".327", "1.309", "2.618"),
    ("1° 50'", "3125.4", ".400", "1.600", "3.200"),
    ("7° 00'", "819.0", "1.528", "6.105", "12.21"),
    ("7° 20'", "781.8", "1.600", "6.395", "12.79"),
    ("7° 30'", "764.5", "1.637", "6.540", "13.08"),
    ("8° 00'", "716.8", "1.746", "6.976", "13.95"),
]


@pytest.mark.parametrize(
    ("degree", "radius", "ordinate", "offset", "deflection"), TABLE_II, ids=[row[0] for row in TABLE_II]
)
def test_table_ii(degree: str, radius: str, ordinate: str, offset: str, deflection: str) -> None:
    one = feet({"chord": 100, "central_angle": degree})
    assert_printed(one["radius"], radius)
    assert_printed(one["sagitta"], ordinate)
    # The far end of the chord stands off the tangent by the sagitta of twice the arc; the chord produced, by
    # twice that.
    twice = feet({"radius": one["radius"], "central_angle": 2 * one["central_angle"]})
    assert_printed(twice["sagitta"], offset)
    assert_printed(2 * twice["sagitta"], deflection)


@pytest.mark.parametrize(("degree", "printed"), [("0° 50'", 6875.5), ("1°", 5729.6)])
def test_table_ii_rows_that_are_cut_off_instead_of_rounded(degree: str, printed: float) -> None:
    radius = feet({"chord": 100, "central_angle": degree})["radius"]
    assert printed <= radius < printed + 0.1


# The same end pages, Table I "Tangents and externals to a 1° curve", source not named fully (chord definition,
# R 5729.65067).
TABLE_I = [
    ("1° 00'", "50.00", None),
    ("2° 00'", "100.01", ".87"),
    ("3° 00'", "150.04", "1.96"),
    ("3° 30'", "175.06", "2.67"),
    ("8° 00'", "400.66", "13.99"),
    ("8° 30'", "425.79", None),
    ("9° 00'", "450.93", "17.72"),
    ("10° 00'", "501.28", "21.89"),
    ("10° 20'", "518.08", None),
    ("15° 00'", "754.32", "49.44"),
    ("16° 00'", "805.25", "56.31"),
    ("17° 00'", "856.30", "63.63"),
]


@pytest.mark.parametrize(("angle", "tangent", "external"), TABLE_I, ids=[row[0] for row in TABLE_I])
def test_table_i(angle: str, tangent: str, external: str | None) -> None:
    radius = feet({"chord": 100, "central_angle": 1})["radius"]
    assert_printed(radius, "5729.65067")
    one = feet({"radius": radius, "central_angle": angle})
    assert_printed(one["tangent_length"], tangent)
    if external is not None:
        assert_printed(one["external"], external)


def test_the_entry_of_table_i_that_is_not_the_rounded_exact_value() -> None:
    """The print gives E 23.38 for 10° 20'; the exact value is 23.3748 (recomputed), so the print is half a
    unit out."""
    radius = feet({"chord": 100, "central_angle": 1})["radius"]
    assert_printed(feet({"radius": radius, "central_angle": "10° 20'"})["external"], "23.3748")


def test_table_i_tells_the_chord_definition_from_the_arc_definition() -> None:
    """With `degree` (arc definition) some entries of the table miss: the two are not mixed up."""
    misses = 0
    for angle, tangent, external in TABLE_I:
        one = feet({"degree": 1, "central_angle": angle})
        for value, printed in ((one["tangent_length"], tangent), (one["external"], external)):
            if printed is not None:
                misses += abs(value - float(printed)) > 0.005
    assert misses >= 3


def test_a_whole_curve() -> None:
    """The same end pages, "How to use curve tables": I 23°20', D 10° (chord definition), PI at 542+72,
    first sub-chord 46.47."""
    radius = feet({"chord": 100, "central_angle": 10})["radius"]
    assert_printed(radius, "573.6857")  # exact, recomputed at 50 digits
    whole = feet({"radius": radius, "central_angle": "23° 20'"})
    # exact, recomputed; the print (118.47) rounds its correction
    assert_printed(whole["tangent_length"], "118.457")
    assert_printed(whole["external"], "12.1020")  # exact, recomputed
    assert abs(whole["central_angle"] / 2 - (11 + 40 / 60)) < 1e-12  # 11°40' = I/2
    # its deflection, printed 2°19½'
    sub_chord = feet({"radius": radius, "chord": 46.47})["central_angle"] / 2
    assert abs(sub_chord * 60 - 139.5) <= 0.25
