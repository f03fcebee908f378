"""What the page is told for its wall: of a job that may be built from, and of one that mayn't."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.words import say

GOT = {
    "method": "halving",
    "got-0-stake": "M",
    "got-0-measures-0-from": "A",
    "got-0-measures-0-to": "M",
    "got-0-measures-0-distance": "19 ft 8 1/2 in",
    "got-0-measures-1-from": "B",
    "got-0-measures-1-to": "M",
    "got-0-measures-1-distance": "19 ft 8 1/2 in",
}
FIELDS = fields_of_job(DEMO)


def asked(fields: dict[str, str], **question: object) -> dict[str, Any]:
    told: dict[str, Any] = json.loads(handle("wall", json.dumps({"fields": fields, **question})))
    return told


def test_a_figure_comes_with_its_strokes_and_the_words_of_its_script() -> None:
    told = asked(FIELDS, figure=0)
    assert len(told["sheets"]) == 5 and told["slider"] is None
    for sheet in told["sheets"]:
        assert sheet["svg"].count("data-s=") > len(sheet["strokes"]) > 3
        assert "style" not in sheet["svg"]
    assert told["words"]["stroke_of"] == "Stroke {stroke} of {count}"
    assert asked(FIELDS, figure=4)["slider"] == 1


def test_a_stopped_job_and_one_without_an_arc_show_none_of_their_numbers() -> None:
    for fields, key in (
        ({**FIELDS, "tape-length": "10 ft"}, "wall.stopped"),
        ({**FIELDS, **GOT}, "wall.got"),
        ({**FIELDS, "arc-chord": "38 ft 5 m"}, "wall.not_yet"),
        ({}, "wall.not_yet"),
    ):
        (sheet,) = asked(fields, figure=0)["sheets"]
        assert sheet["strokes"][0]["sentence"] == say(key)
        assert "38'" not in sheet["svg"]
        first = asked(fields, figure=1)["sheets"][0]["svg"]
        assert "37.01" in first  # the lessons stand on their own numbers
        assert len(asked(fields, list=1)["figures"]) == 7


def test_a_title_is_text_and_nothing_else() -> None:
    title = '<script>alert("x")</script>&'
    told = asked({**FIELDS, "title": title}, figure=0)
    assert all("<script" not in sheet["svg"] and "&lt;script&gt;" in sheet["svg"] for sheet in told["sheets"])


def test_each_lesson_has_a_handout_and_nothing_else_is_answered() -> None:
    assert [asked(FIELDS, handout=number)["html"].count("<section") for number in range(1, 8)] == [2, 2, 2, 2, 2, 2, 1]
    for wrong in ({"figure": 7}, {"handout": 0}, {}):
        with pytest.raises(ValueError, match=r"no such|nothing was asked"):
            asked(FIELDS, **wrong)


OWN = {"chord": "24", "out": "2"}


def test_the_class_has_its_own_numbers_whatever_the_job_is() -> None:
    for fields in (FIELDS, {**FIELDS, "tape-length": "10 ft"}, {}):
        figure = asked(fields, figure=0, own=OWN)
        assert "24' 0\"" in figure["sheets"][0]["svg"] and say("wall.own_job") in figure["sheets"][0]["svg"]
        assert figure["sheets"][2]["zoom"] and not figure["sheets"][0]["zoom"]
        assert "12 × 12 = 2 × 72" in asked(fields, figure=1, own=OWN)["sheets"][0]["svg"]
        assert "12 × 12 =" in asked(fields, handout=1, own=OWN)["html"]
        told = asked(fields, numbers=1, own=OWN)
        assert (told["chord"], told["out"]) == ("24' 0\"", "2' 0\"") and "error" not in told
        assert answer(job_of_fields(told["fields"]))["arc_shown"]["chord"] == "24' 0\""


def test_what_was_typed_is_of_the_jobs_tape() -> None:
    told = asked({**FIELDS, "unit": "m", "mark": "0.001 m"}, numbers=1, own={"chord": "12", "out": "1.65"})
    assert (told["chord"], told["out"]) == ("12.000 m", "1.650 m")
    assert told["fields"] == {"unit": "m", "mark": "0.001 m", "arc-chord": "12", "arc-sagitta": "1.65",
                              "title": say("wall.own_job")}  # fmt: skip
    left = asked({**FIELDS, "unit": "m", "mark": "1/16 in"}, numbers=1, own={"chord": "12", "out": "1.65"})
    assert left["fields"]["unit"] == "m" and "mark" not in left["fields"]


def test_before_anything_is_typed_the_jobs_numbers_stand_there_or_a_lessons() -> None:
    assert asked(FIELDS, numbers=1)["chord"] == "38' 0\""
    assert asked({}, numbers=1)["out"] == "5' 3\""


@pytest.mark.parametrize(("chord", "out"), [("", "2"), ("24", ""), ("24 x", "2"), ("24", "0"), ("1", "3"), ("-4", "1")])
def test_numbers_that_are_none_are_refused_in_words(chord: str, out: str) -> None:
    told = asked(FIELDS, numbers=1, own={"chord": chord, "out": out})
    assert told["error"].endswith(".") and "fields" not in told and "chord" not in told
