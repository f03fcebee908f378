"""In a job in metres every length under one is told in millimetres, but for columns of places along a line."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

import pytest

from bowstring.sheet.text import sheet_text
from helping import answer_to

UNDER_A_METRE = re.compile(r"(?<![\d.=] )(?<![\d.])-?0\.\d+ m\b")
JOB: dict[str, Any] = {"unit": "m", "arc": {"chord": 3.2, "sagitta": 0.3}, "side": "left", "drawn_to": "face",
                       "tolerance": "5 mm", "centre": "reachable"}  # fmt: skip
RUNNING = {"x_shown", "along_shown", "drawing_shown"}
METHODS = ("centre", "halving", "rule", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")


def texts(value: Any, key: str = "") -> list[tuple[str, str]]:
    """Every text of an answer with the key that it stands under."""
    if isinstance(value, Mapping):
        return [pair for name, one in value.items() for pair in texts(one, name)]
    if isinstance(value, list):
        return [pair for one in value for pair in texts(one, key)]
    return [(key, value)] if isinstance(value, str) else []


@pytest.mark.parametrize("method", METHODS)
@pytest.mark.parametrize("start", ["ends", "one-end", "corner"])
def test_no_length_under_a_metre_is_told_in_metres(method: str, start: str) -> None:
    answer = answer_to({**JOB, "method": method, "levels": 3, "start": start})
    shown = [(key, text) for key, text in texts({**answer, "tables": [], "readings": []}) if key not in RUNNING]
    # A check of an ordinate and a blunder that one sees say where along A-B, as the table of stakes does.
    told = [re.sub(r"(at -?\d+\.\d+ m from A)", "", text, flags=re.IGNORECASE) for _key, text in shown]
    # And a step has a place along its string as the column of such places has it.
    columns = {
        found for table in answer["tables"] for row in table["rows"] for found in UNDER_A_METRE.findall(" ".join(row))
    }
    assert columns or method not in ("ordinates", "tangent")
    told = [re.sub("|".join(map(re.escape, columns)) or "(?!)", "", text) for text in told]
    assert [text for text in told if UNDER_A_METRE.search(text)] == []
    assert sum(" mm" in text for text in told) > 10


def test_columns_of_places_keep_one_unit() -> None:
    answer = answer_to({**JOB, "method": "ordinates", "levels": 3})
    for name in ("x_shown", "along_shown"):
        assert all(re.fullmatch(r"-?\d+\.\d{3} m", stake[name]) for stake in answer["stakes"])
    (table,) = answer["tables"]
    assert all(
        re.fullmatch(r"\d+\.\d{3} m from [AB]", row[2]) and re.fullmatch(r"\d+ mm", row[3]) for row in table["rows"]
    )
    assert all(stake["y_shown"].endswith(" mm") for stake in answer["stakes"])


@pytest.mark.parametrize("method", ["ordinates", "tangent"])
def test_a_step_and_its_row_say_one_number_alike(method: str) -> None:
    answer = answer_to({**JOB, "method": method, "levels": 3})
    rows = {row[0]: row[2] for table in answer["tables"] for row in table["rows"]}
    for step in answer["steps"]:
        if step["stake"]:
            number = " ".join(rows[step["stake"]].split()[:2])
            assert re.fullmatch(r"0\.\d{3} m|1\.\d{3} m", number) and number in step["text"]
            assert number == step["measures"][0]["shown"] == step["measures"][0]["text"]


def test_what_was_typed_is_read_back_in_millimetres_first() -> None:
    answer = answer_to({**JOB, "arc": {"chord": 3.2, "sagitta": "0.029 m"}, "levels": 1})
    read = {row["field"]: row["text"] for row in answer["readings"]}
    assert read["arc.sagitta"].startswith("29 mm = 0.029 m") and read["arc.chord"].startswith("3.200 m = 3200 mm")
    assert "5 mm" in sheet_text(answer) and answer["mark"] == "5 mm"
