"""Lengths: every way a crew writes them, and every way that could be read twice."""

from __future__ import annotations

import math
from decimal import Decimal
from enum import IntEnum
from fractions import Fraction

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bowstring.errors import BadJob
from bowstring.units.lengths import FOOT, INCH, UNITS, Length, read_length
from bowstring.words import say
from helping import all_hold

IN, FT = Fraction(254, 10000), Fraction(3048, 10000)


def refusal(value: object, unit: str = "ft-in", **options: bool) -> BadJob:
    with pytest.raises(BadJob) as caught:
        read_length(value, unit, "arc.chord", **options)
    return caught.value


def test_the_foot_is_the_international_foot() -> None:
    # NIST/NOAA, 84 FR 55562 (2019) and 85 FR 62698 (2020): 0.3048 m exactly; the US survey foot, 1200/3937 m
    # = 0.304800609601 m, is 2.0000040 parts per million longer and retired from 1 January 2023.
    assert Fraction("0.3048") == FOOT
    assert Fraction("0.0254") == INCH
    survey = Fraction(1200, 3937)
    assert float(survey) == pytest.approx(0.304800609601, abs=5e-13)
    assert float(survey / FOOT - 1) == pytest.approx(2.0000040e-6, rel=1e-9)
    assert read_length("1 ft", "m", "x").metres == 0.3048


EXACT = Fraction(0)
# Text, metres and one unit of the last place after the point, exactly. The forms are common practice, no source.
FORMS: list[tuple[str, Fraction, Fraction]] = [
    ("40' 6-1/2\"", 486 * IN + IN / 2, EXACT),
    ("40'-6 1/2\"", 486 * IN + IN / 2, EXACT),
    ("40' - 6 1/2\"", 486 * IN + IN / 2, EXACT),
    ("40'6\"", 486 * IN, EXACT),
    ("40'", 40 * FT, EXACT),
    ("40 ft 6 1/2 in", 486 * IN + IN / 2, EXACT),
    ("40ft6in", 486 * IN, EXACT),
    ("40 ft. 6 in.", 486 * IN, EXACT),
    ("40 Feet, 6 INCHES", 486 * IN, EXACT),
    ("1 foot 1 inch", 13 * IN, EXACT),
    ("6-1/2 in", IN * 13 / 2, EXACT),
    ('6 1/2"', IN * 13 / 2, EXACT),
    ('6\N{VULGAR FRACTION ONE HALF}"', IN * 13 / 2, EXACT),
    ("6-\N{VULGAR FRACTION THREE EIGHTHS} in", IN * 51 / 8, EXACT),
    ("6 \N{VULGAR FRACTION SEVEN EIGHTHS}\N{DOUBLE PRIME}", IN * 55 / 8, EXACT),
    ("\N{VULGAR FRACTION ONE THIRD} ft", FT / 3, EXACT),
    ("40\N{PRIME} 6\N{DOUBLE PRIME}", 486 * IN, EXACT),
    ("40\N{RIGHT SINGLE QUOTATION MARK} 6\N{RIGHT DOUBLE QUOTATION MARK}", 486 * IN, EXACT),
    ("40\N{LEFT SINGLE QUOTATION MARK} 6\N{LEFT DOUBLE QUOTATION MARK}", 486 * IN, EXACT),
    ("40' 6''", 486 * IN, EXACT),
    ("40\N{PRIME}6\N{PRIME}\N{PRIME}", 486 * IN, EXACT),
    ("6 1\N{FRACTION SLASH}2 in", IN * 13 / 2, EXACT),
    ("40'\N{MINUS SIGN}6\"", 486 * IN, EXACT),
    ("40\N{NO-BREAK SPACE}ft\N{THIN SPACE}6\N{NARROW NO-BREAK SPACE}in", 486 * IN, EXACT),
    ("  40 ft\n", 40 * FT, EXACT),
    ("40' 6", 486 * IN, EXACT),
    ("40'6-1/2", 486 * IN + IN / 2, EXACT),
    ("40' 6.5\"", 486 * IN + IN / 2, IN / 10),
    ("0' 11-31/32\"", IN * 383 / 32, EXACT),
    ("40.54'", FT * 4054 / 100, FT / 100),
    ("40.50 ft", FT * 405 / 10, FT / 100),
    ("40-1/2 ft", FT * 81 / 2, EXACT),
    ("486.5 in", IN * 4865 / 10, IN / 10),
    ("1/2 in", IN / 2, EXACT),
    (".5 in", IN / 2, IN / 10),
    ("9/8 in", IN * 9 / 8, EXACT),
    ("12.35 m", Fraction("12.35"), Fraction("0.01")),
    ("40 FT", 40 * FT, EXACT),
    ("12 IN", 12 * IN, EXACT),
    ("1.2 M", Fraction("1.2"), Fraction("0.1")),
    ("5 MM", Fraction("0.005"), EXACT),
    ("5 Mm", Fraction("0.005"), EXACT),
    ("12.35M", Fraction("12.35"), Fraction("0.01")),
    ("1 metre", Fraction(1), EXACT),
    ("2 meters", Fraction(2), EXACT),
    ("1235 cm", Fraction("12.35"), EXACT),
    ("3 centimetres", Fraction("0.03"), EXACT),
    ("12350 mm", Fraction("12.35"), EXACT),
    ("7 millimeters", Fraction("0.007"), EXACT),
    ("12,35 m", Fraction("12.35"), Fraction("0.01")),
    ("0,350 m", Fraction("0.35"), Fraction("0.001")),
    ("1,2345 m", Fraction("1.2345"), Fraction("0.0001")),
    ("1.235 m", Fraction("1.235"), Fraction("0.001")),
    ("1.234,5 m", Fraction("1234.5"), Fraction("0.1")),
    ("1.234,567 m", Fraction("1234.567"), Fraction("0.001")),
    ("1,234.5 ft", FT * 12345 / 10, FT / 10),
    ("1,234,567 mm", Fraction("1234.567"), EXACT),
    ("1.234.567 mm", Fraction("1234.567"), EXACT),
    ("40,5'", FT * 405 / 10, FT / 10),
]


def means(text: str, metres: Fraction, place: Fraction, unit: str) -> None:
    assert read_length(text, unit, "x", bare=False) == Length(float(metres), float(place), text.strip())


def test_text_with_a_unit_means_one_thing_in_every_job() -> None:
    all_hold({f"{form[0]} in {unit}": (*form, unit) for form in FORMS for unit in UNITS}, means)


@pytest.mark.parametrize(("unit", "size"), [("ft-in", FT), ("ft", FT), ("m", 1), ("mm", Fraction(1, 1000))])
def test_a_bare_number_is_in_the_jobs_unit(unit: str, size: Fraction) -> None:
    assert read_length("40.54", unit, "x") == Length(
        float(Fraction("40.54") * size), float(Fraction(1, 100) * size), "40.54"
    )
    assert read_length(40, unit, "x") == Length(float(40 * size), 0.0, "40")
    assert read_length(40.0, unit, "x") == Length(float(40 * size), float(size / 10), "40.0")
    assert read_length(0.1, unit, "x").metres == float(Fraction(0.1) * size)  # the float's own value
    assert read_length("1,234.5", unit, "x").metres == float(Fraction("1234.5") * size)


def test_the_last_place_of_a_float_with_an_exponent() -> None:
    assert read_length(1e-05, "m", "x").place == 1e-05
    assert read_length(2.5e-05, "m", "x").place == 1e-06


def test_json_and_decimal_comma_in_metric_jobs() -> None:
    assert read_length("12,35", "m", "x").metres == 12.35
    assert read_length("12350", "mm", "x").metres == 12.35


def test_signs_and_zero_where_they_are_allowed() -> None:
    assert read_length("-3' 6\"", "ft-in", "x", signed=True).metres == -float(42 * IN)
    assert read_length("\N{MINUS SIGN}12,5 m", "m", "x", signed=True).metres == -12.5
    assert read_length("+ 2 m", "m", "x", signed=True).metres == 2
    assert read_length(-2.5, "m", "x", signed=True).metres == -2.5
    assert read_length("0", "ft-in", "x", zero=True).metres == 0
    assert read_length('0"', "ft-in", "x", zero=True, bare=False).metres == 0
    assert read_length(-0.0, "m", "x", zero=True).metres == 0
    for value in ("-3 ft", "+3 ft", "-3", -3, -3.5, "-0"):
        assert refusal(value, zero=True).key == "length.sign"
    for value in (0, 0.0, -0.0, "0", "0 ft", "0' 0\"", "0/2 in"):
        assert refusal(value, signed=True).key == "length.zero"


# Text, unit, key and the readings that the remedy must offer.
TWO_WAYS: list[tuple[str, str, str, list[str]]] = [
    ("1/2", "ft-in", "bare_fraction", ["1/2 in", "1/2 ft"]),
    ("6-1/2", "ft-in", "bare_fraction", ["6-1/2 in", "6-1/2 ft"]),
    ("6 1/2", "ft", "bare_fraction", ["6-1/2 in", "6-1/2 ft"]),
    ("6\N{VULGAR FRACTION ONE HALF}", "m", "bare_fraction", ["6-1/2 in", "6-1/2 m"]),
    ("1/2", "mm", "bare_fraction", ["1/2 in", "1/2 mm"]),
    ("40-6", "ft-in", "apart", ["40' 6\"", "40.6 ft"]),
    ("40 6", "ft", "apart", ["40' 6\"", "40.6 ft"]),
    ("40, 6", "ft-in", "apart", ["40' 6\"", "40.6 ft"]),
    ("40-6", "m", "apart", ["40' 6\"", "40.6 m"]),
    ("40 6 mm", "mm", "apart", ["40.6 mm"]),
    ('40-6"', "ft-in", "apart", ["40' 6\""]),
    ("40-6-1/2", "ft-in", "apart", ["40' 6-1/2\""]),
    ('40 6 1/2"', "ft-in", "apart", ["40' 6-1/2\""]),
    ("40-13", "ft-in", "apart", ["40.13 ft"]),
    ("6 - 1/2 in", "ft-in", "apart", ["6-1/2 in"]),
    ("12 350 mm", "m", "apart", ["12.350 mm", "12350 mm"]),
    ("1,235 m", "m", "comma", ["1.235 m", "1235 m"]),
    ("1,235", "m", "comma", ["1.235 m", "1235 m"]),
    ("1,235", "ft-in", "comma", ["1.235 ft", "1235 ft"]),
    ("1234,567 m", "m", "comma", ["1234.567 m", "1234567 m"]),
    ("1,234' 6\"", "ft-in", "comma", ["1234' 6\""]),
    ("40,5", "ft-in", "bare_comma", ["40.5 ft", "40' 5\""]),
    ("40,54", "ft-in", "bare_comma", ["40.54 ft"]),
    ("40' 1/2", "ft-in", "feet_fraction", ["40' 1/2\"", "40-1/2 ft"]),
    ("40' .5", "ft-in", "feet_fraction", ["40' 0.5\"", "40.5 ft"]),
    ("40' 6\" 3/8", "ft-in", "apart", ["40' 6-3/8\""]),
    ("6 in 3/8", "ft-in", "apart", ["6-3/8 in"]),
]


def refused_with_its_readings(text: str, unit: str, name: str, readings: list[str]) -> None:
    no = refusal(text, unit)
    assert no.key == f"length.{name}"
    assert no.remedy == "Write " + " or ".join(readings) + "."
    values = {read_length(reading, unit, "x", bare=False).metres for reading in readings}
    assert len(values) == len(readings)


def test_what_could_be_read_two_ways_is_refused_with_its_readings() -> None:
    all_hold({f"{case[0]} in {case[1]}": case for case in TWO_WAYS}, refused_with_its_readings)


def test_a_bare_tolerance_or_mark_in_feet_and_inches_is_refused_with_both_readings() -> None:
    for value, text in ((0.25, "0.25"), ("0.25", "0.25"), (".25", ".25"), (5e-05, "0.00005"), (1, "1")):
        no = refusal(value, bare=False)
        assert (no.key, no.remedy) == ("length.bare", f"Write {text} in or {text} ft.")
    assert read_length(0.25, "ft", "x", bare=False).metres == float(FT / 4)


def test_an_improper_fraction_is_carried_inside_the_text_and_reduced() -> None:
    """Never a part of the length alone: 7-1/4 typed by itself would be another one."""
    right = "Correct the fraction, or if you mean that, write "
    assert refusal("40' 6-10/8\"").remedy == f"{right}40' 7-1/4\"."
    assert refusal("6 8/8 in").remedy == f"{right}7 in."
    assert refusal("40' 6-10/8").remedy == f"{right}40' 7-1/4\"."
    assert refusal("6-9/8").remedy == f"{right}7-1/8 in or 7-1/8 ft."
    assert refusal("-6-9/8 in", signed=True).remedy == f"{right}-7-1/8 in."
    assert refusal("40' 11-9/8\"").remedy == f"{right}{say('length.example')}."


def test_too_many_inches_are_carried_for_the_reader() -> None:
    for text, reading in (("40' 14\"", "41' 2\""), ("40' 12\"", "41' 0\""), ("40' 18-1/2\"", "41' 6-1/2\"")):
        no = refusal(text)
        assert no.remedy == f"Correct the inches, or if you mean that, write {reading}."
        inches = 40 * 12 + Fraction(text[4:-1].replace("-1/2", ".5"))
        assert read_length(reading, "m", "x").metres == float(inches * IN)
    assert refusal("40' 12.75\"").remedy == "Correct the inches, or if you mean that, write 41' 0.75\"."


def test_readings_of_a_signed_value_keep_the_sign() -> None:
    assert refusal("-1,235 m", "m", signed=True).remedy == "Write -1.235 m or -1235 m."
    assert refusal("-6-1/2", signed=True).remedy == "Write -6-1/2 in or -6-1/2 ft."


REFUSED: list[tuple[object, str]] = [
    (None, "kind"), (True, "kind"), (False, "kind"), ([], "kind"), ([40], "kind"), ({}, "kind"),
    ({"ft": 40}, "kind"), (b"40 ft", "kind"), (4 + 0j, "kind"), (Fraction(1, 2), "kind"), (object(), "kind"),
    ("", "empty"), ("  \N{NO-BREAK SPACE} ", "empty"), ("4" * 61, "long"), (" " * 60 + "4 ft", "long"),
    (10**5000, "giant"), (-(10**70), "giant"),
    (math.nan, "not_finite"), (math.inf, "not_finite"), (-math.inf, "not_finite"),
    ("nan", "no_number"), ("inf", "no_number"), ("-", "no_number"), ("ft", "no_number"), ("'", "no_number"),
    ("1e3", "exponent"), ("1e3 m", "exponent"), ("1.5E-3 m", "exponent"),
    ("40 ft\n6 in", "character"), ("4\u0660 ft", "character"), ("\uff14\uff10 ft", "character"),
    ("40\u202e ft", "character"), ("\ud800", "character"), ("40\x00 ft", "character"),
    ("4\u00b2 m", "character"),
    ("40'.5", "clinging"), ("40',5", "clinging"), ("40 ft.6 in", "clinging"),
    ("40.", "unreadable"), ("40,", "unreadable"), (",5 m", "unreadable"), ("--4 ft", "unreadable"),
    ("ft 40", "unreadable"), ("40 ft ft", "unreadable"), ("40 + 6", "unreadable"), ("1/2/3 in", "unreadable"),
    ("1.5/2 in", "unreadable"), ("1/2.5 in", "unreadable"), ("1 / 2 in", "unreadable"),
    ("(40 ft)", "unreadable"),
    ("40 ft =", "unreadable"), ("40'''", "unreadable"), ("1_000 mm", "unreadable"), ("/2 in", "unreadable"),
    ("1/\N{VULGAR FRACTION ONE HALF} in", "unreadable"), ("0x10 m", "unit"),
    ("12,34,567 mm", "grouping"), ("1,2345,678 mm", "grouping"), ("1.2.3 m", "grouping"),
    ("1,234.5,6 m", "grouping"), ("1.234,5.6 m", "grouping"), ("1,23.5 m", "grouping"),
    ("00,350 m", "grouping"),
    ("0,123,456 mm", "grouping"), ("1,,2 m", "grouping"), ("1..2 m", "grouping"), ("1,234,56 m", "grouping"),
    ("1/0 in", "zero_below"), ('6-1/0"', "zero_below"), ("6.5 1/2 in", "mixed_decimal"),
    ('6-9/8"', "improper"), ('6-8/8"', "improper"), ("40' 6-9/8\"", "improper"),
    ("0", "zero"), (0, "zero"), ("1e", "unit"), ("5 yd", "unit"), ("5 km", "unit"), ("40 ft 6 lines", "unit"),
    ("40\N{DEGREE SIGN}", "unit"), ("40%", "unit"), ("40.5' 6\"", "broken_feet"),
    ("40.0' 6\"", "broken_feet"),
    ("40-1/2' 6\"", "broken_feet"), ("40' 12\"", "twelve"), ("0' 14\"", "twelve"), ("40' 12", "twelve"),
    ("40' 11.99\" 1/2", "apart"), ("40 ft 6 in 2", "apart"), ("1 2 3 4", "apart"), ("40' 6 2\"", "apart"),
    ("12 m 35 cm", "mixed_units"), ("40 ft 2 m", "mixed_units"), ("40' 6'", "repeated"),
    ('6" 6"', "repeated"),
    ("40' 6\" 3\"", "repeated"), ("6 in 40 ft", "order"),
    ("0.0000009 m", "size"), (9e-7, "size"), ("100000001 m", "size"), (1e300, "size"), (5e-324, "size"),
    (10**12, "size"), ("9" * 60, "size"), ("1/" + "9" * 57, "bare_fraction"),
    ("1/" + "9" * 50 + " in", "size"),
]  # fmt: skip


def refused_as(value: object, name: str) -> None:
    no = refusal(value, "m")
    assert (no.key, no.field) == (f"length.{name}", "arc.chord")
    assert "{" not in str(no)
    assert_a_clean_message(no)


def test_what_is_no_length_is_refused_with_why_and_what_would_do() -> None:
    all_hold({f"{number}, {name}": (value, name) for number, (value, name) in enumerate(REFUSED)}, refused_as)


def assert_a_clean_message(no: BadJob) -> None:
    assert str(no) == f"{no.field}: {no.wrong} {no.remedy}"
    assert str(no).isprintable() and len(str(no)) < 400
    for sentence in (no.wrong, no.remedy):
        assert sentence.endswith(".")
    assert no.wrong and no.remedy and "Write ." not in no.remedy


def test_the_ends_of_the_range_are_in_it() -> None:
    for text in ("0.000001 m", "100000000 m", "0.001 mm"):
        assert read_length(text, "m", "x").metres in (1e-6, 1e8)
    assert read_length(1e-6, "m", "x").metres == 1e-6


def test_readings_that_could_not_be_read_in_their_turn_are_not_offered() -> None:
    assert refusal("40 11 1/0 3").key == "length.zero_below"
    assert refusal("1,234' 1,234\"").remedy == f"Write {say('length.example')}."


def test_a_wrong_unit_of_the_job_is_the_callers_mistake() -> None:
    with pytest.raises(ValueError, match="no such unit"):
        read_length("40 ft", "furlong", "x")


def test_a_type_that_cannot_even_be_hashed_is_refused() -> None:
    class Unhashable(type):
        __hash__ = None  # type: ignore[assignment]

    assert refusal(Unhashable("Thing", (), {})()).key == "length.kind"


def test_subclasses_of_plain_values_are_read_as_the_plain_value() -> None:
    class Odd(str):
        __slots__ = ()

        def __str__(self) -> str:
            raise RuntimeError("never asked")

        strip = translate = lower = __str__  # type: ignore[assignment]

    class Size(IntEnum):
        TWO = 2

    assert read_length(Odd("40 ft"), "m", "x") == read_length("40 ft", "m", "x")
    assert read_length(Size.TWO, "m", "x") == Length(2.0, 0.0, "2")


anything = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text() | st.binary() | st.complex_numbers(),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=3), inner, max_size=3),
    max_leaves=4,
)
rough = st.text(
    st.characters(codec=None, categories=None)
    | st.sampled_from(
        "0123456789'\"-/.,+ ftinmc\u00bd\u215c\u2032\u2033\u2019\u201d\u2212\u2044\u00a0\u202e\u0664\ud800\x00\n"
    ),
    max_size=70,
)
closer = st.lists(
    st.sampled_from(
        ["40", "6", "0", "1/2", "3/0", "9/8", ".", ",", "-", " ", "'", '"', "ft", "in", "mm", "1,235", "e5"]
    ),
    max_size=7,
).map("".join)


@settings(max_examples=600, deadline=None)
@given(
    value=anything | rough | closer,
    unit=st.sampled_from(UNITS),
    signed=st.booleans(),
    zero=st.booleans(),
    bare=st.booleans(),
)
@example(value="9" * 5000, unit="m", signed=False, zero=False, bare=True)
@example(value=-(10**5000), unit="ft-in", signed=False, zero=False, bare=False)
@example(value="\udfff" * 60, unit="m", signed=True, zero=True, bare=True)
def test_nothing_but_a_length_or_a_bad_job_ever_comes_out(
    value: object, unit: str, signed: bool, zero: bool, bare: bool
) -> None:
    try:
        length = read_length(value, unit, "offset", signed=signed, zero=zero, bare=bare)
    except BadJob as no:
        assert_a_clean_message(no)
        return
    size = abs(length.metres)
    assert (zero and size == 0) or 1e-6 <= size <= 1e8
    assert length.metres >= 0 or signed
    assert 0 <= length.place < math.inf
    assert isinstance(value, str | int | float) and not isinstance(value, bool)


@settings(max_examples=200)
@given(
    feet=st.integers(0, 30000),
    inches=st.integers(0, 11),
    top=st.integers(0, 63),
    style=st.sampled_from(["{f}' {i}-{t}/64\"", "{f} ft {i} {t}/64 in", "{f}'-{i} {t}/64\"", "{f}'{i}-{t}/64"]),
)
def test_feet_and_inches_are_read_to_the_correctly_rounded_float(feet: int, inches: int, top: int, style: str) -> None:
    length = read_length(style.format(f=feet, i=inches, t=top), "m", "x", zero=True)
    # An independent sum, in Python's decimal arithmetic: every 1/64 in is a finite decimal of a metre.
    total = (Decimal(feet * 12 + inches) + Decimal(top) / 64) * Decimal("0.0254")
    assert length.metres == float(total)


@given(st.decimals("0.001", "99999", places=3))
def test_decimal_texts_are_read_to_the_correctly_rounded_float(number: Decimal) -> None:
    for name, size in {"m": "1", "cm": "0.01", "mm": "0.001", "ft": "0.3048", "in": "0.0254"}.items():
        if number * Decimal(size) >= Decimal("0.000001"):
            assert read_length(f"{number} {name}", "ft-in", "x").metres == float(number * Decimal(size))


def test_braces_in_typed_text_stay_as_they_are() -> None:
    assert "{typed} {0} 4" in refusal("{typed} {0} 4").wrong
