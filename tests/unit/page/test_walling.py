"""What the page is told for its wall: of a job that may be built from, and of one that mayn't."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job
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
