"""Stations read and written: two digits after the plus in feet, three in metres (common practice in route surveys)."""

from __future__ import annotations

import pytest

from bowstring.errors import BadJob
from bowstring.units.stationing import read_station, show_station

FOOT = 0.3048


@pytest.mark.parametrize(
    ("text", "feet"),
    [("10+00", 1000.0), ("0+00", 0.0), ("Sta. 12+34.56", 1234.56), ("0+05.5", 5.5), (" 103 + 99 ", 10399.0)],
)
def test_a_station_in_feet_counts_hundreds(text: str, feet: float) -> None:
    assert read_station(text, "station", feet=True) == pytest.approx(feet * FOOT, abs=1e-9)


@pytest.mark.parametrize(("text", "metres"), [("0+100", 100.0), ("1+002.345", 1002.345), ("sta 0+000", 0.0)])
def test_a_station_in_metres_counts_thousands(text: str, metres: float) -> None:
    assert read_station(text, "station", feet=False) == pytest.approx(metres, abs=1e-9)


@pytest.mark.parametrize("value", ["1000", 1000, "10+", "+00", "10-00", "10+00 ft", "", None, True, "1+00+00", "-1+00"])
@pytest.mark.parametrize("feet", [True, False])
def test_what_is_no_station_is_refused(value: object, feet: bool) -> None:
    with pytest.raises(BadJob) as refused:
        read_station(value, "station", feet=feet)
    assert refused.value.field == "station" and refused.value.key == "station.form"


@pytest.mark.parametrize(("text", "feet"), [("0+100", True), ("10+0", True), ("10+00", False), ("1+0000", False)])
def test_a_station_of_the_other_unit_is_asked_and_never_taken(text: str, feet: bool) -> None:
    """10+00 in a job in metres may be 1000 ft or a kilometre's tenth: nobody guesses."""
    with pytest.raises(BadJob) as refused:
        read_station(text, "station", feet=feet)
    assert refused.value.key == ("station.feet" if feet else "station.metres")


@pytest.mark.parametrize("hundredths", [0, 1, 9999, 10000, 100050, 123456, 999999])
def test_what_is_written_is_read_back_the_same(hundredths: int) -> None:
    feet = hundredths / 100
    told = show_station(feet * FOOT, feet=True)
    assert read_station(told, "station", feet=True) == pytest.approx(feet * FOOT, abs=1e-9)
    metres = hundredths / 1000
    assert read_station(show_station(metres, feet=False), "station", feet=False) == pytest.approx(metres, abs=1e-9)


def test_rounding_carries_over_the_plus() -> None:
    assert show_station(999.996 * FOOT, feet=True) == "10+00.00"
    assert show_station(999.9996, feet=False) == "1+000.000"
