"""Tapes: the nearest mark, carries that reach the foot, and text that reads back as the very mark."""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bowstring.errors import BadJob
from bowstring.units.lengths import UNITS, read_length
from bowstring.units.tape import Tape, make_tape

# The foot is 0.3048 m exactly, so the inch 0.0254: NIST/NOAA, 84 FR 55562 (2019) and 85 FR 62698 (2020).
IN, FT = Fraction(254, 10000), Fraction(3048, 10000)

# Each unit's marks from coarse to fine as they may be typed, with their metres: the job's own list.
MARKS: dict[str, list[tuple[str, Fraction]]] = {
    "ft-in": [(f"1/{below} in", IN / below) for below in (2, 4, 8, 16, 32)],
    "ft": [("0.1 ft", FT / 10), ("0.01 ft", FT / 100)],
    "m": [("0.01 m", Fraction(1, 100)), ("0.005 m", Fraction(1, 200)), ("0.001 m", Fraction(1, 1000))],
    "mm": [("10 mm", Fraction(1, 100)), ("5 mm", Fraction(1, 200)), ("1 mm", Fraction(1, 1000))],
}
TAPES = [make_tape(unit, text) for unit, marks in MARKS.items() for text, _ in marks]
EIGHTHS, SIXTEENTHS = make_tape("ft-in", None), make_tape("ft-in", "1/16 in")
FEET, METRES, MILLIMETRES = make_tape("ft", None), make_tape("m", None), make_tape("mm", None)


# Feet without a leading zero, inches from 0 to 11, a fraction under one; never 12 inches.
FEET_INCHES = re.compile(r"-?(?:[1-9][0-9]*' )?(?:(?:[0-9]|1[01])(?:-[0-9]+/[0-9]+)?|[0-9]+/[0-9]+)\"")


def inches(text: str) -> float:
    return float(Fraction(text) * IN)


@pytest.mark.parametrize("unit", UNITS)
def test_marks_are_accepted_by_value_and_shown_as_typed(unit: str) -> None:
    for text, metres in MARKS[unit]:
        tape = make_tape(unit, text)
        assert (tape.unit, tape.mark, tape.listed_mark()) == (unit, float(metres), text)
        assert Tape(unit, float(metres)) == tape


def test_the_default_marks() -> None:
    marks = [tape.listed_mark() for tape in (EIGHTHS, FEET, METRES, MILLIMETRES)]
    assert marks == ["1/8 in", "0.01 ft", "0.005 m", "5 mm"]


@pytest.mark.parametrize(
    ("unit", "value", "mark"),
    [
        ("ft-in", "0.125 in", "1/8 in"), ("ft-in", "4/32\"", "1/8 in"), ("ft-in", "12.7 mm", "1/2 in"),
        ("ft", 0.1, "0.1 ft"), ("ft", "0.01", "0.01 ft"), ("ft", "1.2 in", "0.1 ft"), ("ft", 0.01, "0.01 ft"),
        ("m", "5 mm", "0.005 m"), ("m", 0.005, "0.005 m"), ("m", "1 cm", "0.01 m"), ("m", 0.001, "0.001 m"),
        ("mm", 5, "5 mm"), ("mm", 1.0, "1 mm"), ("mm", "1 cm", "10 mm"), ("mm", "0.005 m", "5 mm"),
    ],
)  # fmt: skip
def test_a_mark_is_taken_by_its_value(unit: str, value: object, mark: str) -> None:
    assert make_tape(unit, value).listed_mark() == mark


@pytest.mark.parametrize(
    ("unit", "value", "key", "remedy"),
    [
        ("ft-in", 0.125, "length.bare", "Write 0.125 in or 0.125 ft."),
        ("ft-in", "1/8", "length.bare_fraction", "Write 1/8 in or 1/8 ft."),
        ("ft-in", "1/64 in", "tape.no_mark", "Write 1/2 in or 1/4 in or 1/8 in or 1/16 in or 1/32 in."),
        ("ft", "1/8 in", "tape.no_mark", "Write 0.1 ft or 0.01 ft."),
        ("m", 5, "tape.no_mark", "Write 0.01 m or 0.005 m or 0.001 m."),
        ("mm", 2, "tape.no_mark", "Write 10 mm or 5 mm or 1 mm."),
        ("ft", True, "length.kind", "Write 0.1 ft or 0.01 ft."),
        ("mm", "", "length.empty", "Write 10 mm or 5 mm or 1 mm."),
        ("m", 0, "length.zero", "Write 0.01 m or 0.005 m or 0.001 m."),
        ("m", "-5 mm", "length.sign", "Write 0.01 m or 0.005 m or 0.001 m."),
        ("m", "0,0051 m", "tape.no_mark", "Write 0.01 m or 0.005 m or 0.001 m."),
    ],
)
def test_any_other_mark_is_refused_with_the_list(unit: str, value: object, key: str, remedy: str) -> None:
    with pytest.raises(BadJob) as caught:
        make_tape(unit, value)
    assert (caught.value.field, caught.value.key, caught.value.remedy) == ("mark", key, remedy)


def test_a_tape_outside_the_list_cannot_be_made() -> None:
    for unit, mark in (("ft-in", 0.005), ("m", 0.003175), ("m", math.nan), ("furlong", 0.005)):
        with pytest.raises(ValueError, match="no mark"):
            Tape(unit, mark)
    with pytest.raises(ValueError, match="no such unit"):
        make_tape("furlong", None)


@pytest.mark.parametrize(
    ("tape", "metres", "text"),
    [
        (EIGHTHS, inches("1000") / 8, "10' 5\""),
        (EIGHTHS, inches("999/8"), "10' 4-7/8\""),
        (EIGHTHS, inches("39/8"), '4-7/8"'),
        (EIGHTHS, inches("1/2"), '1/2"'),
        (EIGHTHS, inches("120"), "10' 0\""),
        (EIGHTHS, inches("241/2"), "10' 0-1/2\""),
        (EIGHTHS, 0.0, '0"'),
        (EIGHTHS, -1e-9, '0"'),
        (EIGHTHS, inches("-999/8"), "-10' 4-7/8\""),
        (SIXTEENTHS, inches("383/32"), "1' 0\""),
        (SIXTEENTHS, inches("-383/32"), "-1' 0\""),
        (SIXTEENTHS, inches("24") - inches("1/32"), "2' 0\""),
        (EIGHTHS, inches("11"), '11"'),
        (FEET, 10.408 * 0.3048, "10.41 ft"),
        (FEET, 9.996 * 0.3048, "10.00 ft"),
        (make_tape("ft", 0.1), 10.408 * 0.3048, "10.4 ft"),
        (METRES, 3.17, "3.170 m"),
        (METRES, 3.1725, "3.175 m"),
        (METRES, -0.0026, "-5 mm"),
        (METRES, 0.0, "0 mm"),
        (METRES, -1e-9, "0 mm"),
        (METRES, 0.0291, "30 mm"),
        (make_tape("m", "1 mm"), 0.0291, "29 mm"),
        (make_tape("m", "1 cm"), 0.9949, "990 mm"),
        (METRES, 0.9974, "995 mm"),
        (METRES, 0.9976, "1.000 m"),
        (METRES, -0.9974, "-995 mm"),
        (METRES, -0.9976, "-1.000 m"),
        (make_tape("m", "1 cm"), 3.174, "3.17 m"),
        (make_tape("m", "1 mm"), 0.9996, "1.000 m"),
        (MILLIMETRES, 3.1724, "3170 mm"),
        (MILLIMETRES, 0.0, "0 mm"),
        (make_tape("mm", 10), -3.176, "-3180 mm"),
    ],
)
def test_the_nearest_mark_is_shown_with_carries(tape: Tape, metres: float, text: str) -> None:
    assert tape.show(metres) == text


def test_places_along_a_line_keep_metres() -> None:
    """A column of readings from one end has one unit, whatever they are."""
    running = [METRES.show_running(metres) for metres in (-0.0026, 0.0, 0.565, 1.13, 19.135)]
    assert running == ["-0.005 m", "0.000 m", "0.565 m", "1.130 m", "19.135 m"]
    assert EIGHTHS.show_running(inches("39/8")) == '4-7/8"' and MILLIMETRES.show_running(0.565) == "565 mm"


def test_the_mark_is_shown_like_any_length_and_kept_as_the_list_has_it() -> None:
    tapes = [make_tape("m", mark) for mark in (0.01, 0.005, 0.001)]
    assert [(tape.show_mark(), tape.listed_mark()) for tape in tapes] == [
        ("10 mm", "0.01 m"), ("5 mm", "0.005 m"), ("1 mm", "0.001 m"),
    ]  # fmt: skip
    assert [tape.show_mark() for tape in (EIGHTHS, FEET, MILLIMETRES)] == ["1/8 in", "0.01 ft", "5 mm"]


def test_halves_go_away_from_zero_even_when_the_last_bits_are_short() -> None:
    for sign in (1, -1):
        for metres in (inches("1/16"), math.nextafter(inches("1/16"), 0), math.nextafter(inches("1/16"), 1)):
            assert EIGHTHS.round(sign * metres) == sign * inches("1/8")
    assert METRES.show(0.1 + 0.2 + 0.0025) == METRES.show(0.3025) == "305 mm"
    assert EIGHTHS.round(inches("1/16") * (1 - 1e-6)) == 0  # a nudge, not a bias


def test_small_texts() -> None:
    cases = (("0.26", "0.26 in"), ("-0.255", "-0.26 in"), ("-0.004", "0.00 in"), ("11.99", "11.99 in"))
    for text, shown in cases:
        assert EIGHTHS.show_small(inches(text)) == shown
    assert EIGHTHS.show_small(inches("50.91")) == "4' 2-7/8\"" and EIGHTHS.show_small(inches("-12")) == "-1' 0\""
    assert METRES.show_small(0.9999) == "999.9 mm" and METRES.show_small(-1.5) == "-1.500 m"
    assert FEET.show_small(0.0066) == "0.022 ft" and FEET.show_small(-0.0066) == "-0.022 ft"
    assert METRES.show_small(0.0066) == "6.6 mm" and MILLIMETRES.show_small(-0.00005) == "-0.1 mm"


def test_differences_are_read_off_the_tape() -> None:
    near = {"0": "0 in", "0.06": "less than 1/8 in", "0.07": "1/8 in", "-0.34": "3/8 in", "11.9": "11-7/8 in",
            "11.99": "1' 0\""}  # fmt: skip
    for text, shown in near.items():
        assert EIGHTHS.show_near(inches(text)) == shown
    assert SIXTEENTHS.show_near(inches("0.34")) == "5/16 in" and FEET.show_near(0.0091) == "0.03 ft"
    assert METRES.show_near(-0.0066) == MILLIMETRES.show_near(0.0066) == "5 mm" and METRES.show_near(1.5) == "1.500 m"
    up = {"0": "0 in", "0.01": "1/8 in", "0.125": "1/8 in", "0.126": "1/4 in", "11.9": "1' 0\""}
    assert {text: EIGHTHS.show_up(inches(text)) for text in up} == up
    limits = {"0.25": "1/4 in", "0.1875": "3/16 in", "0.2": "0.20 in", "12": "1' 0\""}
    assert {text: EIGHTHS.show_limit(inches(text)) for text in limits} == limits


@given(st.sampled_from(TAPES), st.floats(1e-4, 2.0), st.floats(1e-6, 0.5))
@example(EIGHTHS, 0.00635, 1e-6)
@example(make_tape("mm", "10 mm"), 0.99999, 0.00390625)
@settings(deadline=None)
def test_what_is_over_a_limit_never_reads_as_within_it(tape: Tape, limit: float, more: float) -> None:
    texts = tape.show_past(-(limit + more), limit)
    over, under = (read_length(text.replace("less than ", ""), tape.unit, "x", zero=True).metres for text in texts)
    assert over > under


def test_both_systems_are_echoed() -> None:
    exact, tenths = read_length("40' 6-1/2\"", "ft-in", "x").metres, read_length("40.54 ft", "ft", "x").metres
    for tape in (EIGHTHS, FEET):
        assert tape.both(exact) == "40' 6-1/2\" = 40.5417 ft"
        assert tape.both(tenths) == "about 40' 6-15/32\" = 40.5400 ft"
    assert METRES.both(12.35) == "12.350 m = 12350 mm (about 40' 6-7/32\")"
    assert METRES.both(0.3048) == "304.8 mm = 0.3048 m (1' 0\")"
    assert METRES.both(12.34567) == "about 12.3457 m = 12345.7 mm (about 40' 6-1/16\")"
    assert EIGHTHS.both(0.0) == '0" = 0.0000 ft'
    assert METRES.both(-1.0) == "-1.000 m = -1000 mm (about -3' 3-3/8\")"


def test_an_echo_leads_with_the_jobs_own_unit() -> None:
    assert METRES.both(12.35).startswith("12.350 m = ") and EIGHTHS.both(12.35).startswith("about 40' 6-7/32\" = ")
    assert MILLIMETRES.both(12.35) == "12350 mm = 12.350 m (about 40' 6-7/32\")"
    assert MILLIMETRES.both(0.3048) == "304.8 mm = 0.3048 m (1' 0\")"
    assert MILLIMETRES.both(12.34567) == "about 12345.7 mm = 12.3457 m (about 40' 6-1/16\")"


def test_finer_marks_run_to_the_end_of_the_list() -> None:
    for unit, marks in MARKS.items():
        tape: Tape | None = make_tape(unit, marks[0][0])
        for text, _ in marks:
            assert tape is not None and tape.listed_mark() == text
            tape = tape.finer()
        assert tape is None


lengths = st.floats(0, 10_000) | st.integers(0, 10_000_000).map(lambda count: count / 1000)


@settings(max_examples=150, deadline=None)
@given(metres=lengths, sign=st.sampled_from((1, -1)))
@example(metres=0.0, sign=-1)
@example(metres=inches("383/32"), sign=1)
@example(metres=10_000.0, sign=1)
def test_what_is_shown_reads_back_as_the_mark_for_every_unit_and_mark(metres: float, sign: int) -> None:
    for tape in TAPES:
        rounded, shown = tape.round(sign * metres), tape.show(sign * metres)
        for unit in UNITS:
            assert read_length(shown, unit, "x", signed=True, zero=True, bare=False).metres == rounded
        assert tape.show(rounded) == shown and tape.round(rounded) == rounded
        assert abs(rounded - sign * metres) <= tape.mark / 2 * (1 + 1e-8) + math.ulp(metres)
        assert tape.unit != "ft-in" or FEET_INCHES.fullmatch(shown)
        assert tape.round(-sign * metres) == -rounded


@settings(max_examples=150)
@given(count=st.integers(0, 12_000_000), tape=st.sampled_from(TAPES))
def test_a_rounded_length_is_the_correctly_rounded_multiple_of_the_mark(count: int, tape: Tape) -> None:
    exact = {text: metres for marks in MARKS.values() for text, metres in marks}[tape.listed_mark()]
    assert tape.round(float(count * exact)) == float(count * exact)
