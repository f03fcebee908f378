"""Angles: degrees, minutes and seconds read exactly, shown both ways, and never one for the other."""

from __future__ import annotations

import math
from datetime import timedelta
from fractions import Fraction

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from bowstring.errors import BadJob
from bowstring.units.angles import Angle, both_angles, read_angle, show_decimal_degrees, show_dms
from bowstring.words import say
from helping import all_hold

# The SI Brochure's table of non-SI units in use with the SI (from memory).
MINUTE, SECOND = Fraction(1, 60), Fraction(1, 3600)


def refusal(value: object) -> BadJob:
    with pytest.raises(BadJob) as caught:
        read_angle(value, "arc.central_angle")
    return caught.value


# Text, degrees and one unit of the last second, minute or decimal, exactly. The forms are common practice, no source.
FORMS: list[tuple[str, Fraction, Fraction]] = [
    ("45", Fraction(45), Fraction(0)),
    ("45.40", Fraction("45.4"), Fraction("0.01")),
    ("45,5", Fraction("45.5"), Fraction("0.1")),
    ("45.5°", Fraction("45.5"), Fraction("0.1")),
    ("45.5 deg", Fraction("45.5"), Fraction("0.1")),
    ("45.5 Degrees", Fraction("45.5"), Fraction("0.1")),
    ("1 degree", Fraction(1), Fraction(0)),
    ("45\N{MASCULINE ORDINAL INDICATOR}", Fraction(45), Fraction(0)),
    ("45° 40' 12\"", 45 + 40 * MINUTE + 12 * SECOND, SECOND),
    ("45°40'12.5\"", 45 + 40 * MINUTE + SECOND * 25 / 2, SECOND / 10),
    ("45°40'", 45 + 40 * MINUTE, MINUTE),
    ("45° 40.2'", 45 + MINUTE * 402 / 10, MINUTE / 10),
    ("45° 40,2'", 45 + MINUTE * 402 / 10, MINUTE / 10),
    ("45°40\N{PRIME}12\N{DOUBLE PRIME}", 45 + 40 * MINUTE + 12 * SECOND, SECOND),
    ("45° 40\N{RIGHT SINGLE QUOTATION MARK} 12''", 45 + 40 * MINUTE + 12 * SECOND, SECOND),
    ("88 DEG 30 MIN", Fraction(177, 2), MINUTE),
    ("88 degs 30 mins 0 secs", Fraction(177, 2), SECOND),
    ("88d30m", Fraction(177, 2), MINUTE),
    ("88d 30m", Fraction(177, 2), MINUTE),
    ("88D 30M 15S", 88 + 30 * MINUTE + 15 * SECOND, SECOND),
    ("88°30m15s", 88 + 30 * MINUTE + 15 * SECOND, SECOND),
    ("88.5d", Fraction("88.5"), Fraction("0.1")),
    ("88.30", Fraction("88.3"), Fraction("0.01")),
    ("45 deg 40 min 12 sec", 45 + 40 * MINUTE + 12 * SECOND, SECOND),
    ("45 degrees 40 minutes 12 seconds", 45 + 40 * MINUTE + 12 * SECOND, SECOND),
    ("45°-40'-12\"", 45 + 40 * MINUTE + 12 * SECOND, SECOND),
    ("0°00'01\"", SECOND, SECOND),
    ("7\N{VULGAR FRACTION ONE HALF}°", Fraction(15, 2), Fraction(0)),
    ("6-1/4 deg", Fraction(25, 4), Fraction(0)),
    ("6° 30-1/2'", 6 + MINUTE * 61 / 2, Fraction(0)),
]


def read_exactly(text: str, degrees: Fraction, place: Fraction) -> None:
    assert read_angle(text, "x") == Angle(float(degrees), float(place), text)


def test_text_is_read_exactly() -> None:
    all_hold({form[0]: form for form in FORMS}, read_exactly)


def test_json_numbers_are_degrees() -> None:
    assert read_angle(45, "x") == Angle(45.0, 0.0, "45")
    assert read_angle(45.4, "x") == Angle(45.4, 0.1, "45.4")
    assert read_angle(1e-05, "x").place == 1e-05


def test_forty_five_forty_is_not_forty_five_point_four() -> None:
    assert both_angles(read_angle("45.40", "x").degrees) == "45.4° = 45°24'00\""
    assert both_angles(read_angle("45°40'", "x").degrees) == "45.6667° = 45°40'00\""


TWO_WAYS: list[tuple[str, str, list[str]]] = [
    ("45-40-12", "apart", ["45°40'12\" (= 45.67°)"]),
    ("45 40 12", "apart", ["45°40'12\" (= 45.67°)"]),
    ("45:40:12", "apart", ["45°40'12\" (= 45.67°)"]),
    ("45°40'12", "apart", ["45°40'12\" (= 45.67°)"]),
    ("45 40", "apart", ["45°40' (about 45.6667°)", "45.40° (= 45°24'00\")"]),
    ("45-40", "apart", ["45°40' (about 45.6667°)", "45.40° (= 45°24'00\")"]),
    ("88-30", "apart", ["88°30' (= 88.5°)", "88.30° (= 88°18'00\")"]),
    ("88 30", "apart", ["88°30' (= 88.5°)", "88.30° (= 88°18'00\")"]),
    ("88-5", "apart", ["88°5' (about 88.0833°)", "88.5° (= 88°30'00\")"]),
    # Who has written the degree sign, or a colon, has ended the degrees.
    ("88°30", "apart", ["88°30' (= 88.5°)"]),
    ("88 deg 30", "apart", ["88°30' (= 88.5°)"]),
    ("88d30", "apart", ["88°30' (= 88.5°)"]),
    ("88:30", "apart", ["88°30' (= 88.5°)"]),
    ("88-30'", "apart", ["88°30' (= 88.5°)"]),
    ("88-30.5", "apart", ["88°30.5' (about 88.5083°)"]),
    ("45 70", "apart", ["45.70° (= 45°42'00\")"]),
    ("1,234°", "comma", ["1.234° (about 1°14'02\")", "1234° (= 1234°00'00\")"]),
    ("7 1/2", "bare_fraction", ["7-1/2° (= 7°30'00\")"]),
    ("1/2", "bare_fraction", ["1/2° (= 0°30'00\")"]),
]


def refused_with_its_readings(text: str, name: str, readings: list[str]) -> None:
    no = refusal(text)
    assert (no.key, no.remedy) == (f"angle.{name}", "Write " + " or ".join(readings) + ".")
    found = [read_angle(reading.partition(" (")[0], "x").degrees for reading in readings]
    assert len(set(found)) == len(readings)
    for degrees, reading in zip(found, readings, strict=True):
        # The other form, in brackets, is the same angle to its last digit.
        other = reading.partition("= ")[2] or reading.partition("about ")[2]
        assert read_angle(other.rstrip(")"), "x").degrees == pytest.approx(degrees, abs=0.5 / 3600)


def test_what_could_be_read_two_ways_is_refused_with_its_readings() -> None:
    all_hold({case[0]: case for case in TWO_WAYS}, refused_with_its_readings)


REFUSED: list[tuple[object, str]] = [
    (None, "kind"), (True, "kind"), ([45], "kind"), ({}, "kind"), ("", "empty"), ("4" * 61, "long"),
    (10**5000, "giant"), (math.nan, "not_finite"), (math.inf, "not_finite"), ("nan", "no_number"),
    ("1e1", "exponent"), ("\u0664\u0665", "character"), ("45\u2070", "character"), ("45\n40", "character"),
    ("45°.5", "clinging"), ("pi/4", "unreadable"), ("45°°", "unreadable"), ("45..", "unreadable"),
    ("1.2.3", "grouping"), ("1/0°", "zero_below"), ("6-9/8°", "improper"), ("6.5 1/2°", "mixed_decimal"),
    ("-45", "sign"), (-45, "sign"), ("+45", "sign"), ("\N{MINUS SIGN}45°", "sign"),
    (0, "zero"), (0.0, "zero"), (-0.0, "zero"), ("0°", "zero"), ("0°00'00\"", "zero"),
    (1e7, "size"), (5e-324, "size"), ("9" * 60, "size"),
    ("0.8 rad", "other_unit"), ("0.8 radians", "other_unit"), ("50 gon", "other_unit"),
    ("50 grad", "other_unit"),
    ("50%", "other_unit"), ("50 percent", "other_unit"), ("45 ft", "unit"), ("45 h", "unit"),
    ("45°70", "apart"),
    ("40'", "no_degrees"), ("12\"", "no_degrees"), ("40 min", "no_degrees"), ("45 m", "no_degrees"),
    ("5s", "no_degrees"), ("40' 12\"", "order"),
    ("45°12\"", "order"), ("40' 45°", "order"), ("45° 40°", "order"), ("45° 40' 12' ", "order"),
    ("45.5° 30'", "broken_part"), ("45° 40.5' 12\"", "broken_part"), ("7\u00bd° 12'", "broken_part"),
    ("45°60'", "sixty"), ("45°40'60\"", "sixty"), ("45° 60.0'", "sixty"), ("1 2 3 4", "apart"),
    ("45 40' 12\"", "apart"),
]  # fmt: skip


def refused_as(value: object, name: str) -> None:
    no = refusal(value)
    assert (no.key, no.field) == (f"angle.{name}", "arc.central_angle")
    assert "{" not in str(no)
    assert_a_clean_message(no)


def test_what_is_no_angle_is_refused_with_why_and_what_would_do() -> None:
    all_hold({f"{number}, {name}": (value, name) for number, (value, name) in enumerate(REFUSED)}, refused_as)


def assert_a_clean_message(no: BadJob) -> None:
    assert str(no) == f"{no.field}: {no.wrong} {no.remedy}"
    assert str(no).isprintable() and len(str(no)) < 400
    assert no.wrong.endswith(".") and no.remedy.endswith(".") and "Write ." not in no.remedy


def test_numbers_in_no_order_get_an_example_for_a_remedy() -> None:
    assert refusal("1 2 3 4").remedy == f"Write {say('angle.example')}."


anything = st.none() | st.booleans() | st.integers() | st.floats() | st.binary() | st.lists(st.text())
rough = st.text(
    st.characters(codec=None, categories=None) | st.sampled_from("0123456789°'\"-/., degminsc%\u2032"),
    max_size=65,
)
closer = st.lists(st.sampled_from(["45", "0", "60", ".", ",", "°", "'", '"', " ", "-", "sec"]), max_size=7)


@settings(max_examples=500, deadline=None)
@given(anything | rough | closer.map("".join))
@example("\ud800")
def test_nothing_but_an_angle_or_a_bad_job_ever_comes_out(value: object) -> None:
    try:
        angle = read_angle(value, "x")
    except BadJob as no:
        assert_a_clean_message(no)
        return
    assert 0 < angle.degrees <= 1e6 and 0 <= angle.place < math.inf


@given(st.integers(1, 360 * 3600))
def test_whole_seconds_go_to_text_and_back(count: int) -> None:
    degrees = float(count * SECOND)
    assert read_angle(show_dms(degrees), "x").degrees == degrees


@given(st.floats(0, 720))
@example(59.99999999)
@example(45 + 59.9999 / 3600)
def test_minutes_and_seconds_are_those_of_the_standard_librarys_clock(degrees: float) -> None:
    # Python's datetime divides an hour as a degree is divided: an independent sexagesimal.
    seconds = round(Fraction(degrees) * 3600)
    assume(abs(abs(Fraction(degrees) * 3600 - seconds) - Fraction(1, 2)) > Fraction(1, 10**6))
    clock = timedelta(seconds=seconds)
    whole, rest = divmod(clock, timedelta(hours=1))
    minutes, left = divmod(rest, timedelta(minutes=1))
    assert show_dms(degrees) == f"{whole}°{minutes:02d}'{left.seconds:02d}\""


def test_carries_reach_the_degree() -> None:
    assert show_dms(45 + 59 / 60 + 59.9999 / 3600) == "46°00'00\""
    assert show_dms(45 + 39 / 60 + 59.9999 / 3600) == "45°40'00\""
    assert show_dms(45.9917, seconds=False) == "46°00'"
    assert show_dms(45.4, seconds=False) == "45°24'"
    assert show_dms(359.9999999) == "360°00'00\""


def test_halves_go_up_and_zero_has_no_sign() -> None:
    assert show_dms(float(45 + 12 * SECOND + SECOND / 2)) == "45°00'13\""
    assert show_dms(-float(45 + SECOND / 2)) == "-45°00'01\""
    assert show_dms(-1e-9) == "0°00'00\"" and show_dms(-1e-9, seconds=False) == "0°00'"
    assert show_decimal_degrees(-1e-9) == "0°"


def test_decimal_degrees_have_four_decimals_at_most() -> None:
    for degrees, text in ((45.4, "45.4°"), (45.0, "45°"), (0.00005, "0.0001°"), (1 / 3, "0.3333°")):
        assert show_decimal_degrees(degrees) == text
    assert show_decimal_degrees(100) == "100°"
    assert show_decimal_degrees(-45.99996) == "-46°"


@given(st.floats(0.001, 360))
def test_decimal_degrees_read_back_within_half_a_digit(degrees: float) -> None:
    assert abs(read_angle(show_decimal_degrees(degrees), "x").degrees - degrees) <= 0.00005 * (1 + 1e-6)
