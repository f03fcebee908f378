"""Entries are compared with the drawing under plain names; a job's keys are nobody's on a site."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.sheet.blocks import Table
from bowstring.sheet.entries import entry_name
from bowstring.sheet.html import sheet_html
from bowstring.sheet.outline import part
from bowstring.sheet.text import sheet_text
from helping import SAID, answer_to

ARC = {"chord": "38 ft", "sagitta": "5 ft 3 in"}
TIES = [{"to": "wall", "distance": "9 ft"}, {"to": "post", "distance": "12 ft"}]
JOBS: dict[str, dict[str, Any]] = {
    "the example": DEMO,
    "a crew's own figures": {
        "arc": ARC, "spacing": "4 ft", "offset": "2 ft", "toward": "outside", "width": "5 ft", "diameter": "5/8 in",
        "ties": {"A": TIES, "B": TIES}, "tape": {"length": "90 ft"}, "parallel": "8 ft", "tolerance": "1/2 in",
        "room": {"behind": "9 ft", "inside": "9 ft", "outside": "9 ft"},
        "known": [{"name": "peg", "x": "-3 ft", "y": "-3 ft", "sigma": "1/16 in"}],
        "errors": {"read": "1/16 in", "stake": "1/16 in", "line": "1/16 in", "angle": "0.01"},
        "ground": [{"name": "oak", "stops": "tape", "at": ["60 ft", "60 ft"], "diameter": "2 ft"}],
    },
    "control": {"arc": ARC, "control": {"axes": "n-e", "marks": [{"mark": "A", "n": "0", "e": "0"},
                                                                 {"mark": "B", "n": "0", "e": "38 ft"}]}},
    "control by x": {"arc": ARC, "control": {"marks": [{"mark": "A", "x": "0", "y": "0"},
                                                       {"mark": "B", "x": "38 ft", "y": "0"}]}},
    "found and got": {"arc": ARC, "found": {"chord": ["38 ft", "38 ft"], "tape": "ground", "fall": "6 in"},
                      "got": [{"stake": "M", "sagitta": "5 ft 3 in"},
                              {"stake": "Q1", "half_chords": ["10 ft", "10 ft"]}]},
    "points": {"arc": {"points": [["0", "0"], ["19 ft", "5 ft"], ["38 ft", "0"]]}},
    "sides": {"arc": {"three_sides": ["21 ft", "22 ft", "40 ft"]}},
    "degree and diameter": {"arc": {"degree": "20", "diameter": "573 ft", "delta": "10"}},
    "other names": {"arc": {"rise": "5 ft 3 in", "chord": "38 ft"}},
    "stations": {"arc": ARC, "stations": ["10 ft", "20 ft"]},
    "a first gap": {"arc": ARC, "method": "angles", "spacing": "6 ft", "first_gap": "3 ft"},
}  # fmt: skip


def names(job: dict[str, Any]) -> list[str]:
    section = part(answer_to({**SAID, **job}), "readings")  # type: ignore[arg-type]
    assert section is not None
    (table,) = section.blocks
    assert isinstance(table, Table)
    return [row[0] for row in table.rows]


@pytest.mark.parametrize("job", JOBS.values(), ids=JOBS)
def test_every_entry_has_a_plain_name_of_its_own(job: dict[str, Any]) -> None:
    found = names(job)
    assert found and len(found) == len(set(found))
    assert not [name for name in found if set("[]._") & set(name)]
    assert not {"fair", "got", "ground", "known", "errors", "sagitta"} & set(found)


def test_the_example_s_entries_read_as_a_drawing_does() -> None:
    assert names(DEMO) == [  # type: ignore[arg-type]
        "chord", "mid-ordinate", "tolerance across the arc", "tolerance on the fair curve",
        "obstacle 1: corners", "obstacle 2: corners", "obstacle 3: corners", "obstacle 4: corners",
    ]  # fmt: skip
    told = answer_to(DEMO)  # type: ignore[arg-type]
    for sheet in (sheet_text(told), sheet_html(told)):  # type: ignore[arg-type]
        assert "obstacle 4: corners" in sheet and "ground[" not in sheet


def test_the_page_may_call_them_as_its_form_does() -> None:
    told = answer_to(DEMO)  # type: ignore[arg-type]
    page = sheet_html(told, label=lambda place: f"<{place}>")  # type: ignore[arg-type]
    assert "&lt;ground[3].outline&gt;" in page and "obstacle 4: corners" not in page
    assert entry_name("nothing.known[3]") == "nothing.known[3]"
