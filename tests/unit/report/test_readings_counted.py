"""Which readings of a check count: those that can be read, whatever else was typed; what is told is told of them."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring import answering
from bowstring.analysis.mistakes import reading_of
from bowstring.demo import DEMO
from bowstring.faces.checks import checks_html
from bowstring.geometry.plane import Point
from bowstring.report.work import Work
from helping import SAID, answer_to

FLAT: dict[str, Any] = {**SAID, "arc": {"chord": "24 ft", "sagitta": "2' 6\""}, "levels": 3, "method": "halving"}
ONE_END: dict[str, Any] = {**{key: value for key, value in FLAT.items() if key != "side"}, "turn": "left",
                           "start": "one-end", "tolerance": "1/4 in"}  # fmt: skip


def job_read(*rows: tuple[str, object], job: Any = DEMO) -> Any:
    return {**job, "read": [{"check": key, "value": value} for key, value in rows]}


def read(*rows: tuple[str, object], job: Any = DEMO) -> dict[str, Any]:
    told: dict[str, Any] = answer_to(job_read(*rows, job=job))["read"]
    return told


@pytest.mark.parametrize("place", [0, 1, 2])
def test_a_text_that_is_no_length_takes_no_verdict_back(place: int) -> None:
    values = ["30 ft", "30 ft"]
    values.insert(place, "5 3")
    part = read(*(("A-Q2", value) for value in values))
    (row,) = part["rows"]
    assert (row["verdict"], part["outs"], part["count"], part["judged"]) == ("out", 1, 1, True)
    assert row["typed"] == values and values[row["counts"]] == "30 ft"
    assert bool(row["wrong"]) is (place == 2)  # the last one is told beside the verdict


def test_one_in_stays_in_beside_what_is_no_length() -> None:
    part = read(("A-Q2", "29' 1-1/2\""), ("A-Q2", "5 3"))
    (row,) = part["rows"]
    assert row["verdict"] == "in" and row["counts"] == 0 and "5 3" in row["wrong"]


def test_the_face_shows_both_the_verdict_and_what_is_wrong_with_the_last_text() -> None:
    html = checks_html(answering(job_read(("A-Q2", "30 ft"), ("A-Q2", "30 ft"), ("A-Q2", "5 3"))))
    (item,) = re.findall(r'<li class="out"[^>]* data-check="A-Q2">.*?</li>', html)
    assert '<span class="wrong">' in item and "5 3" in item
    assert [("aria-invalid" in one) for one in re.findall(r"<input[^>]*>", item)] == [False, False, True]


def test_what_is_told_of_a_check_is_told_of_the_reading_that_counts() -> None:
    slipped, right = "19' 2-3/4\"", "18' 2-3/4\""
    part = read(*(("A-Q2", value) for value in (slipped, slipped, right)), job=FLAT)
    (row,) = part["rows"]
    assert row["verdict"] == "out" and "A to Q2: 1 ft more." in row["text"]
    bare = read(*(("A-Q2", value) for value in ("19", "19", right)), job=FLAT)["rows"][0]
    assert bare["verdict"] == "out" and "19 was read as 19' 0\"" in bare["text"]


@pytest.mark.parametrize("by", [Point(0.0, 0.03), Point(0.02, 0.02)])
def test_an_end_with_a_step_of_its_own_is_set_again_there(by: Point) -> None:
    work, answer = Work(dict(ONE_END)), answer_to(ONE_END)
    at = {**work.layout.marks, "B": work.layout.marks["B"].plus(by)}
    checks = {check.key: check for check in work.layout.checks}
    keys = [row["key"] for row in answer["checks"] if not row["blind"]]
    (one,) = read(*((key, f"{reading_of(checks[key], at):.4f} m") for key in keys), job=ONE_END)["suspects"]
    steps = {step["number"]: step["kind"] for step in answer["steps"]}
    assert (one["kind"], one["mark"], steps[one["step"]]) == ("end", "B", "from_straight")


def test_an_end_that_was_knocked_since_is_named_beside_a_stake() -> None:
    part = read(("A-Q2", "29' 2-1/4\""), ("A-Q2", "29' 2-1/4\""), ("Q1-B", "29' 1-7/16\""))
    assert part["suspects"][0]["mark"] == "Q2"  # the ends were proved
    assert "A" in [one["mark"] for one in part["suspects"]]
