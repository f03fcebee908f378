"""One job seen in each unit: nothing of it changes but its texts, and rounding is told of the numbers shown."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

import pytest

from bowstring import BadJob, answering, write_link
from bowstring.analysis.replay import misses, replay
from bowstring.report.work import Work
from bowstring.sheet.short import short_text
from bowstring.sheet.text import sheet_text
from bowstring.units.angles import to_second
from bowstring.units.lengths import UNITS, read_length, said_unit
from bowstring.units.tape import make_tape

SAID = {"side": "left", "drawn_to": "face"}
FEET = {"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "tolerance": "1/4 in", **SAID}
METRES = {"bowstring": 1, "unit": "m", "arc": {"chord": 14, "sagitta": 1.9}, "tolerance": "8 mm", **SAID}
POND = {
    "name": "pond",
    "stops": "feet",
    "outline": [["10 ft", "1 ft"], ["14 ft", "1 ft"], ["14 ft", "4 ft"], ["10 ft", "4 ft"]],
}
GOT = [{"stake": "M", "measures": [{"from": "A", "to": "M", "distance": "19' 9\""}]}]
JOBS: dict[str, dict[str, Any]] = {
    "halving in feet": {**FEET, "method": "halving", "levels": 3},
    "ordinates in feet": {**FEET, "method": "ordinates"},
    "tangents in metres": {**METRES, "method": "tangent"},
    "halving with one got": {**FEET, "method": "halving", "levels": 2, "got": GOT},
    "the advised one, round a pond": {**FEET, "ground": [POND]},
    "in the way in metres": {
        **METRES,
        "ground": [{"name": "tank", "stops": "tape", "at": [7, 1], "diameter": 1}],
        "spacing": 1,
    },
    "stopped for a short tape": {**FEET, "method": "halving", "levels": 2, "tape": {"length": "20 ft"}},
    "in millimetres, finer than feet": {
        **METRES,
        "unit": "mm",
        "mark": "1 mm",
        "arc": {"chord": 14000, "sagitta": 1900},
    },
    "by centre in decimal feet": {**FEET, "unit": "ft", "centre": "reachable", "method": "centre"},
}
MEASURE = ("from", "to", "at", "distance", "angle")
CHECK = ("key", "distance", "expected", "allowed", "blind", "judges", "recommended")
METHOD = ("method", "possible", "stakes", "measurements", "miss_95")
EXACT = ("arc", "staked", "marks", "method", "halve_first", "parallel", "side", "hand", "levels", "tolerance", "held")
CASES = [(name, unit) for name in JOBS for unit in UNITS]


def decided(answer: Mapping[str, Any]) -> dict[str, Any]:
    """All that an answer decides, without a text."""
    return {
        **{part: answer[part] for part in EXACT},
        "stakes": [[one[key] for key in ("name", "x", "y", "along", "level", "miss")] for one in answer["stakes"]],
        "steps": [
            [one["kind"], one["marks"], [[row.get(key) for key in MEASURE] for row in one["measures"]]]
            for one in answer["steps"]
        ],
        "cards": [[one["number"], one["kind"], one["stake"], one["steps"]] for one in answer["cards"]],
        "checks": [[one[key] for key in CHECK] for one in answer["checks"]],
        "site": {key: value for key, value in answer["site"]["tape"].items() if key != "shown"},
        "methods": [[one[key] for key in METHOD] for one in answer["methods"]],
        "changes": [[one["kind"], one["method"]] for one in answer["advice"]["changes"]],
        "ways out": [[one["panel"], one["fields"]] for one in answer["ways_out"]],
        "stops": len(answer["stops"]),
        "got": [[one[key] for key in ("stake", "across", "within", "bump", "fair", "doubt")] for one in answer["got"]],
        "read": [[one[key] for key in ("check", "value", "over", "verdict")] for one in answer["read"]["rows"]],
    }


@pytest.mark.parametrize(("name", "unit"), CASES)
def test_nothing_of_a_job_changes_with_the_unit_it_is_shown_in(name: str, unit: str) -> None:
    own, shown = answering(JOBS[name]), answering(JOBS[name], shown=unit)
    assert decided(shown) == decided(own)
    assert dict(shown).keys() == dict(own).keys()
    assert shown["unit"] == unit
    if unit == own["unit"]:
        assert dict(shown) == dict(own)
    else:
        assert shown["arc_shown"] != own["arc_shown"]


@pytest.mark.parametrize(("name", "unit"), CASES)
def test_every_number_that_is_taped_is_one_of_the_reader_s_own_marks(name: str, unit: str) -> None:
    answer = answering(JOBS[name], shown=unit)
    tape = make_tape(unit, answer["mark"])
    texts = [
        *(
            row["shown"]
            for step in answer["steps"]
            for row in (*step["measures"], *step["readings"])
            if "distance" in row
        ),
        *(text for row in answer["checks"] for text in (row["shown"], row["expected_shown"])),
    ]
    assert texts
    for text in texts:
        read = read_length(text, unit, "shown", zero=True).metres
        assert tape.show(read) == text or tape.show_running(read) == text
        system = "mm" if unit == "m" and text.endswith(" mm") else unit
        assert said_unit(text) == system


@pytest.mark.parametrize(("name", "unit"), CASES)
def test_rounding_is_told_of_the_numbers_that_are_shown(name: str, unit: str) -> None:
    work = Work(JOBS[name], shown=unit)
    layout, answer = work.layout, answering(JOBS[name], shown=unit)
    stood = replay(layout.recipe, make_tape(unit, answer["mark"]).round, to_second)
    assert answer["rounding"]["worst_miss"] == misses(layout.staked, layout.recipe.to_set(layout.stakes), stood).worst


@pytest.mark.parametrize(
    ("own", "mark", "shown", "seen"),
    [
        ("ft-in", "1/8 in", "mm", "1 mm"),
        ("ft-in", "1/8 in", "ft", "0.01 ft"),
        ("ft-in", "1/2 in", "m", "10 mm"),
        ("ft", "0.01 ft", "ft-in", "1/16 in"),
        ("ft", "0.1 ft", "ft-in", "1/2 in"),
        ("m", "5 mm", "ft-in", "1/8 in"),
        ("m", "5 mm", "mm", "5 mm"),
        ("mm", "1 mm", "ft", "0.01 ft"),
        ("ft-in", "1/32 in", "mm", "1 mm"),
    ],
)
def test_the_mark_is_no_coarser_than_the_job_s_where_there_is_such_a_one(
    own: str, mark: str, shown: str, seen: str
) -> None:
    assert make_tape(own, mark).seen_in(shown).show_mark() == seen


INCHES = re.compile(r"\d' ?\d|\d\"|\d (?:in|ft)\b(?! or | \(| \d)")
FINE = {**METRES, "unit": "mm", "mark": "1 mm", "arc": {"chord": 14000, "sagitta": 1900}, "driven": "hub"}


def test_a_coarser_tape_claims_no_more_than_it_can() -> None:
    """Held to 1 mm, read on a tape that has no finer mark than a hundredth of a foot: three times as coarse."""
    own, finer, coarse = (answering(FINE, shown=unit) for unit in ("mm", "ft-in", "ft"))
    assert coarse["accuracy"]["errors"]["read"] == pytest.approx(3.048 * own["accuracy"]["errors"]["read"])
    assert coarse["accuracy"]["miss_95"] > own["accuracy"]["miss_95"] == finer["accuracy"]["miss_95"]
    for row, exact in zip(coarse["stakes"], own["stakes"], strict=True):
        assert row["sigma_across"] >= exact["sigma_across"]
    told = "Rounded to 0.01 ft, coarser than the job's 1 mm: work to it only where that is fine enough."
    assert sum(told in text for text in coarse["cautions"]) == 1
    assert not any("coarser" in text for text in finer["cautions"])


@pytest.mark.parametrize("unit", UNITS)
def test_the_sheets_say_in_which_unit_the_job_is_once_it_is_shown_in_another(unit: str) -> None:
    job = JOBS["halving in feet"]
    names = {"ft-in": "feet and inches", "ft": "decimal feet", "m": "meters", "mm": "millimeters"}
    told = f"Shown in {names[unit]}. The job is in feet and inches."
    long, short = (make(answering(job, shown=unit)) for make in (sheet_text, short_text))
    for text in (long, short):
        assert (told in " ".join(text.split())) is (unit != "ft-in")
    if unit in ("m", "mm"):
        assert not [line for line in short.splitlines() if INCHES.search(line)]
        # What was typed stands there as it was typed, with what it comes to in both systems.
        typed = [line for line in long.splitlines() if INCHES.search(line) and "mm" not in line and "°" not in line]
        assert not typed, typed


def test_no_link_tells_the_unit_in_which_somebody_looks_at_the_job() -> None:
    job = JOBS["ordinates in feet"]
    before = write_link(job)
    dict(answering(job, shown="mm"))
    assert write_link(job) == before


def read(value: object, shown: str | None = None, job: Mapping[str, Any] = JOBS["halving in feet"]) -> Any:
    key = next(row["key"] for row in answering(job)["checks"] if not row["blind"])
    return answering({**job, "read": [{"check": key, "value": value}]}, shown=shown)["read"]["rows"][0]


@pytest.mark.parametrize("job", [JOBS["halving in feet"], FINE, JOBS["in the way in metres"]])
@pytest.mark.parametrize("unit", UNITS)
def test_what_was_read_as_it_must_be_is_in_for_every_reader(unit: str, job: dict[str, Any]) -> None:
    check = next(row for row in answering(job, shown=unit)["checks"] if not row["blind"])
    for other in UNITS:
        row = read(check["shown"], other, job)
        assert row["verdict"] == "in" and row["over"] == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("unit", UNITS)
def test_a_reading_off_by_the_limit_that_is_told_is_in_and_one_mark_more_is_out(unit: str) -> None:
    job = JOBS["halving in feet"]
    answer = answering(job, shown=unit)
    check, tape = next(row for row in answer["checks"] if not row["blind"]), make_tape(unit, answer["mark"])
    must, limit = (read_length(check[key], unit, "x").metres for key in ("shown", "expected_shown"))
    for other in UNITS:
        assert read(tape.show(must + limit), other)["verdict"] == "in"
        assert read(tape.show(must + limit + 2 * tape.mark), other)["verdict"] == "again"


def test_a_bare_reading_stays_in_the_job_s_unit_and_is_shown_with_it() -> None:
    own, seen = read("19.5"), read("19.5", "m")
    assert own["typed"] == ["19.5"] and seen["typed"] == ["19.5 ft"]
    assert own["value"] == seen["value"] == pytest.approx(19.5 * 0.3048)
    assert "19.5 ft was read as 5.9436 m" in seen["text"]


def test_a_tape_too_coarse_to_set_anything_by_is_refused_rather_than_told_of() -> None:
    small = {**FINE, "arc": {"chord": 6, "sagitta": 1.5}, "method": "produced", "levels": 3}
    assert answering(small)["rounding"]["text"]
    with pytest.raises(BadJob) as refused:
        _ = answering(small, shown="ft")["rounding"]
    assert refused.value.key == "method.too_small"
