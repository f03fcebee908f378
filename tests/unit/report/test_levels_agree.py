"""Elevations, rod readings and heights as printed: of each place they make the height of the instrument."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring.report.forming.heights import grid_of
from bowstring.report.forming.levels import over, reading
from bowstring.units.tape import make_tape
from form_jobs import CROSSED, HUBS
from helping import answer_to
from line_jobs import CREEK

FOOT = 0.3048

METRIC: dict[str, Any] = {
    **CROSSED, "unit": "m", "arc": {"radius": "12.65 m", "chord": "11 m"}, "width": "1.4 m", "tolerance": "6 mm",
    "slab": {"thickness": "100 mm"}, "board": {}, "joints": {"every": "1.5 m"},
    "grade": {"from": 30.892, "to": 30.73, "cross": 1.5, "low": "inside", "instrument": 32.187},
}  # fmt: skip


@pytest.mark.parametrize(
    ("job", "step"),
    [
        (CROSSED, 0.01),
        ({**CROSSED, "unit": "ft", "mark": "0.01 ft"}, 0.01),
        (METRIC, 0.001),
        ({**CROSSED, "grade": {**CROSSED["grade"], "from": "101' 4-1/4\"", "instrument": "105' 7-1/8\""}}, 0.01),
    ],
    ids=["feet and inches", "feet", "meters", "off the hundredth"],
)
def test_a_rod_and_its_elevation_are_the_instruments_height(job: dict[str, Any], step: float) -> None:
    """The rule of a level book: height of instrument less elevation is the rod (any surveying text; from memory)."""
    grades = answer_to(job)["grades"]
    exact = {"m": 1.0}.get(job.get("unit", ""), FOOT)
    height = round(float(grades["read_short"].split(",")[0].removeprefix("HI ")) / step)
    assert len(grades["rows"]) > 15
    first = grades["rows"][0]["outside"]
    datum = round(float(first["elevation"]) / step)
    assert f"{first['elevation']}" in grades["read_short"] and f"{first['elevation']}" in grades["read_from"]
    for row in grades["rows"]:
        for top in (row["outside"], row["inside"]):
            assert round(float(top["elevation"]) / step) + round(float(top["rod"]) / step) == height, row["name"]
            assert abs(float(top["elevation"]) - float(first["elevation"]) - top["level"] / exact) <= step
            if top["feet"] and job is CROSSED:
                assert datum + round(float(top["feet"]) / step) == round(float(top["elevation"]) / step), row["name"]


def test_each_reading_is_within_its_own_rounding() -> None:
    """M of the walk stands at 101.085 ft: 101.09 is printed, and 4.51 of the 4.515 ft that a rod reads there."""
    tape = make_tape("ft-in", None)
    for thousandths in range(101_000, 101_400):
        top = thousandths / 1000 * FOOT
        rod, told = reading(tape, 105.60 * FOOT, top), over(tape, top, 101.35 * FOOT)
        assert abs(rod - (105.60 * FOOT - top)) <= 0.005001 * FOOT
        assert abs(float(told.feet) - (thousandths / 1000 - 101.35)) <= 0.005001
        assert grid_of(tape).round(top) + rod == pytest.approx(105.60 * FOOT, abs=1e-9)
    middle = next(row for row in answer_to(CROSSED)["grades"]["rows"] if row["name"] == "M")["outside"]
    assert (middle["elevation"], middle["rod"], middle["feet"]) == ("101.09", "4.51", "-0.26")


def test_a_line_and_a_wall_agree_too() -> None:
    job = {**CREEK, "grade": {**CREEK["grade"], "from": "100 ft", "instrument": "104 ft"}}
    sheet = answer_to(job)["lined_sheet"]
    assert sheet["read_from"] == "HI 104.00 ft. Datum: left form's top at the start, 100.00 ft."
    for place in sheet["places"]:
        for spot in (place["left"], place["right"]):
            assert round(100 * float(spot["level_shown"])) + round(100 * float(spot["rod_shown"])) == 10400
    wall = answer_to(HUBS)["grades"]
    assert wall["read_from"] == "HI 109.27 ft. Datum: outer form's top at A, 104.50 ft."


def test_without_levels_no_instrument_is_told() -> None:
    grade = {"slope": 2, "high": "A", "low": "inside"}
    grades = answer_to({**CROSSED, "grade": grade})["grades"]
    assert (grades["read_from"], grades["read_short"]) == ("", "")
    alone = answer_to({**CROSSED, "grade": {**grade, "from": "101.35 ft"}})["grades"]
    assert alone["read_from"] == "Datum: outer form's top at A, 101.35 ft."
