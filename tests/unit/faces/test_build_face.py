"""The build's face: rows, pages, the one question, and no number where nobody may build."""

from __future__ import annotations

import json
import re
from typing import Any

import pytest

from bowstring.faces.build import PAGES, build_html, state_of
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job
from bowstring.words import say
from helping import answer_to
from unit.drawings.test_slab_drawing import WALK

OPEN: dict[str, Any] = {key: value for key, value in WALK.items() if key not in ("width", "edge", "slab", "grade")}


def face(job: dict[str, Any], panel: str = "") -> dict[str, Any]:
    fields = {"unit": "ft-in", **fields_of_job(job)}  # type: ignore[arg-type]
    told: dict[str, Any] = json.loads(handle("face", json.dumps({"fields": fields, "face": "build", "panel": panel})))
    return told


def rows(html: str) -> list[str]:
    return re.findall(r'<button type="button" class="(?:open|usual|near|stop)".*?</button>', html)


def question(html: str) -> str:
    found = re.search(r'class="ask open" .*?data-open="(\w+)".*?<b>(.*?)</b>', html)
    return f"{found[1]}: {found[2]}" if found else ""


def test_each_part_has_a_row_with_its_conclusion_that_leads_to_its_page() -> None:
    made = rows(build_html(answer_to(WALK)))
    assert len(made) == len(PAGES)
    for row, key in zip(made, PAGES, strict=True):
        assert f'data-do="face" data-face="build" data-open="{key}"' in row
        assert say(f"build.{key}") in row and "<b>" in row
    assert question(build_html(answer_to(WALK))) == ""
    assert state_of(answer_to(WALK)) is None


@pytest.mark.parametrize("page", PAGES)
def test_a_page_has_its_way_back_its_conclusion_and_beside_it_the_rows(page: str) -> None:
    html = build_html(answer_to(WALK), page)
    assert html.startswith(f'<section class="face-build paged" data-card="{page}"')
    assert html.count('data-do="panel-close"') == 1
    assert re.search(r'<h2 class="(concl|huge)" tabindex="-1">', html)
    (here,) = [row for row in rows(html) if 'aria-current="true"' in row]
    assert f'id="build-{page}"' in here


def test_a_place_that_is_no_page_shows_the_rows() -> None:
    assert build_html(answer_to(WALK), "elsewhere") == build_html(answer_to(WALK))


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ({}, "slab: How wide is it?"),
        ({"width": "5 ft"}, "slab: Which side of the line?"),
        ({"width": "5 ft", "drawn_to": "centre"}, "slab: How thick is it?"),
        ({"edge": "inside"}, "slab: How wide is it?"),
        ({"width": "5 ft", "edge": "right"}, "slab: How thick is it?"),
        ({"width": "5 ft", "edge": "outside", "slab": {"thickness": "4 in"}}, "slope: How steep is it?"),
        ({"width": "5 ft", "edge": "outside", "slab": {"thickness": "4 in"}, "grade": {"slope": 2}},
         "slope: Which end is high?"),
        ({"width": "5 ft", "edge": "outside", "slab": {"thickness": "4 in"}, "grade": {"slope": 2, "high": "B"}},
         "slope: Which edge is low?"),
        ({key: WALK[key] for key in ("width", "edge", "slab", "grade")}, ""),
    ],
)  # fmt: skip
def test_the_one_question_is_the_first_that_has_no_answer(said: dict[str, Any], asked: str) -> None:
    made = face({**OPEN, **said})
    if '<h2 id="card-head"' not in made["html"]:
        assert question(made["html"]) == asked


def test_a_row_that_is_open_leads_to_its_question() -> None:
    html = build_html(answer_to(OPEN))
    edges = rows(html)[0]
    assert 'class="open"' in edges and 'data-face="numbers" data-open="slab"' in edges
    state = state_of(answer_to(OPEN))
    assert state and state["sign"] == "ask"


def test_a_stopped_job_shows_the_stop_and_no_number_of_the_build() -> None:
    html = face({**WALK, "drawn_to": "unsure"})["html"]
    assert "stopbox" in html and not rows(html) and "<svg" not in html and "57'" not in html


def test_a_stop_of_the_build_is_told_in_the_bar() -> None:
    steep = {**WALK, "grade": {"slope": 5.5, "high": "B", "low": "inside", "stops": True}}
    made = face(steep)
    assert made["state"] == {"sign": "stop", "text": "Grades: stopped"}
    (row,) = [row for row in rows(made["html"]) if 'class="stop"' in row]
    assert 'data-open="grades"' in row and 'class="sign stop"' in row


def test_the_bar_tells_the_builds_own_state() -> None:
    """The job is all answered, and other faces say so: here it is the build's parts that aren't."""
    assert state_of(answer_to(OPEN)) == {"sign": "ask", "text": "Build: 2 to answer"}
    reaches = {**WALK, "width": "70 ft"}
    assert state_of(answer_to(reaches)) == {"sign": "stop", "text": "Build: 4 stopped"}


def test_what_is_typed_stays_text() -> None:
    evil = '<img src=x onerror="a()">'
    job = {**WALK, "title": evil, "ends": {"A": evil, "B": f"{evil}B"}}
    for page in ("", *PAGES):
        assert "<img" not in build_html(answer_to(job), page)
