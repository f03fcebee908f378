"""Stations from a starting one, everywhere that a place along the line is told: by sums of lengths from the job."""

from __future__ import annotations

import json
import re
from math import radians
from typing import Any

import pytest

import bowstring
from bowstring.faces.paper import paper_html
from bowstring.faces.stakes import stakes_html
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.short import short_text
from helping import answer_to
from lined_jobs import FIVE, KINKED, METRIC_LINE

START = {**FIVE, "station": "10+00", "method": "halving", "levels": 2}


def in_feet(text: str) -> float:
    whole, _, after = text.partition("+")
    return int(whole) * 100 + float(after)


ENDS = [0.0, 18.0, 18 + 42 * radians(32), 29 + 42 * radians(32), 29 + 42 * radians(32) + 52 * radians(36),
        43 + 42 * radians(32) + 52 * radians(36)]  # fmt: skip
"""Of FIVE, in feet along the line, by hand: L = R times the angle."""


def page(answer: Any, key: str) -> Any:
    return next(one for one in answer["lined"]["pages"] if one["key"] == key)


def test_the_pages_of_the_line_and_its_grades_have_stations() -> None:
    answer = answer_to(START)
    tables = {table["key"]: table["rows"] for one in answer["lined"]["pages"] for table in one["tables"]}
    assert [in_feet(row[1]) - 1000 for row in tables["pieces"]] == pytest.approx(ENDS[1:], abs=0.0051)
    assert [in_feet(row[1]) - 1000 for row in tables["begins"]] == pytest.approx(ENDS[1:], abs=0.0051)
    heights = [row[0] for table in page(answer, "grades")["tables"] for row in table["rows"] if "+" in row[0]]
    assert len(heights) >= 5 and all(re.match(r"\d+\+\d\d\.\d\d", one) for one in heights)
    kinked = answer_to({**KINKED, "station": "2+50"})
    assert "At 3+13.98, piece 3 kinks" in " ".join(page(kinked, "line")["lines"])  # 250 + 20 + 36 x 70 degrees


@pytest.mark.parametrize("at", [2, 4])
def test_every_stake_has_its_station_on_its_card_on_paper_and_in_the_files(at: int) -> None:
    answer = answer_to({**START, "at": at})
    first, last = ENDS[at - 1], ENDS[at]
    count = len(answer["stakes"]) - 1
    for number, row in enumerate(answer["stakes"]):
        expected = 1000 + first + (last - first) * number / count
        assert in_feet(row["station_shown"]) == pytest.approx(expected, abs=0.0051)
    paper = re.sub(r"</?(span|b)\b[^>]*>", "", paper_html(answer, "", ""))
    told = ", ".join(f"{row['name']} {row['station_shown']}" for row in answer["stakes"])
    assert told in paper and f"Stations {answer['stakes'][0]['station_shown']} to" in paper
    for card in answer["cards"]:
        if card["stake"]:
            station = next(row["station_shown"] for row in answer["stakes"] if row["name"] == card["stake"])
            assert f"is at station {station}" in " ".join(card["notes"])
            assert station in stakes_html(answer, card["number"])
    assert all(row["station_shown"] in stakes_csv(answer) for row in answer["stakes"])
    assert answer["stakes"][-1]["station_shown"] in short_text(answer)


def test_stakes_off_the_line_have_the_stations_of_the_line() -> None:
    """A concentric arc is longer or shorter; a station is square off the line's own."""
    on, off = (answer_to({**START, **said}) for said in ({}, {"offset": "3 ft", "toward": "outside"}))
    assert [row["station_shown"] for row in on["stakes"]] == [row["station_shown"] for row in off["stakes"]]
    assert on["stakes"][-1]["along"] != pytest.approx(off["stakes"][-1]["along"])


def test_an_arc_alone_begins_at_its_starting_station() -> None:
    job = {"bowstring": 1, "arc": {"radius": "50 ft", "arc_length": "40 ft"}, "side": "left", "drawn_to": "face",
           "method": "halving", "levels": 1, "station": "3+10.5"}  # fmt: skip
    assert [row["station_shown"] for row in answer_to(job)["stakes"]] == ["3+10.50", "3+30.50", "3+50.50"]


def test_stations_keep_the_jobs_unit_whoever_looks_at_it() -> None:
    shown = bowstring.answering(START, shown="m")  # type: ignore[arg-type]
    assert shown["stakes"][0]["station_shown"] == "10+18.00"
    metric = answer_to({**METRIC_LINE, "station": "0+100"})
    tables = {table["key"]: table["rows"] for table in page(metric, "line")["tables"]}
    assert tables["begins"][0][1] == "0+106.000"  # 6 m of straight first


def test_without_one_lengths_from_the_start_are_told_as_before() -> None:
    answer = answer_to(FIVE)
    assert "station_shown" not in answer["stakes"][0] and answer["lined"]["stations_shown"] == ""
    assert page(answer, "line")["tables"][0]["rows"][0][1] == "18' 0\""


def test_it_goes_through_the_form_and_the_link_and_no_stake_hangs_on_it() -> None:
    fields = fields_of_job(START)  # type: ignore[arg-type]
    assert fields["station"] == "10+00" and job_of_fields(fields)["station"] == "10+00"
    assert bowstring.read_link(bowstring.write_link(START))["station"] == "10+00"  # type: ignore[arg-type]
    told = json.loads(handle("numbers", json.dumps({"fields": fields, "focus": "", "panel": "pieces"})))
    assert "from sta. 10+00" in told["lines"]["pieces"]["text"]
    wrong = json.loads(handle("numbers", json.dumps({"fields": {**fields, "station": "0+100"}, "focus": ""})))
    assert wrong["lines"]["pieces"]["state"] == "wrong"
