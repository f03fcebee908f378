"""The form sheet: what stands on its two sides, and when there is none."""

from __future__ import annotations

import re
from html import unescape

import pytest

from bowstring import answering
from bowstring.faces.paper_forms import forms_sides
from form_jobs import BARE, JOBS, WALK, WALL


def text_of(html: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).split())


def sides(job: dict[str, object]) -> list[str]:
    html = forms_sides(answering(job), "May 31")  # type: ignore[arg-type]
    return [text_of(side) for side in re.findall(r"<section.*?</section>", html, re.DOTALL)]


def test_a_job_without_a_slab_has_no_form_sheet() -> None:
    assert sides({key: value for key, value in WALK.items() if key not in ("width", "edge")}) == []


@pytest.mark.parametrize("unsaid", ["side", "drawn_to"])
def test_a_stopped_job_has_none(unsaid: str) -> None:
    assert sides({key: value for key, value in WALK.items() if key != unsaid}) == []


def test_the_walks_front_has_its_edges_boards_and_joints() -> None:
    front, back = sides(WALK)
    # Worked by hand from R 62 ft, chord 48 ft, width 5 ft: theta = 2 asin(24/62) = 0.7949616, chord = 2 R sin(theta/2).
    for told in (
        "57' 0\"",
        "44' 1-1/2\"",
        "4' 5-3/8\"",
        "45' 3-3/4\"",
        "4' 11-1/8\"",
        "4' 6-3/8\"",
        "LEFT",
        "7' 8-7/8\"",
    ):
        assert told in front, told
    assert "M in 22' 0-3/4\" 4' 5-3/8\"" in front  # half the inner chord, the inner mid-ordinate
    for told in ('11-3/8"', '10-1/2"', "0.95", '7/8" low', "3-1/4", "24' 8\"", "37' 0\"", "2.09%"):
        assert told in back, told


def test_each_side_says_which_it_is() -> None:
    front, back = sides(WALK)
    assert "FORMS, front" in front and "FORMS, back" in back
    assert front.startswith("Garden walk: forms") and back.startswith("Garden walk: grade and pour")


def test_a_width_alone_has_edges_and_says_what_the_back_waits_for() -> None:
    front, back = sides(BARE)
    assert "57' 0\"" in front
    waits = [row["text"] for row in answering(BARE)["build"] if row["key"] in ("grades", "pour")]  # type: ignore[arg-type]
    assert all(text in back for text in waits) and "yards" not in back


@pytest.mark.parametrize("name", JOBS)
def test_it_is_two_sides_up_to_sixteen_stakes(name: str) -> None:
    assert len(sides(JOBS[name])) == 2


def test_more_stakes_go_on_over_the_page_and_none_is_lost() -> None:
    job = {**WALK, "levels": 5}
    told = " ".join(sides(job))
    answer = answering(job)  # type: ignore[arg-type]
    assert len(sides(job)) > 2
    rows = answer["edges"]["seconds"][0]["rows"] if answer["edges"] else []
    assert len(rows) == 33
    close = told.replace(" ", "")  # "W9 in" is held together from the 9 on, as a length is
    assert all(f"{row['name']}{row['along_shown']}{row['off_shown']}".replace(" ", "") in close for row in rows)


def test_what_is_typed_stays_a_text() -> None:
    html = forms_sides(answering({**WALK, "title": "<b>walk</b>"}), "<i>")  # type: ignore[arg-type]
    assert "<b>walk" not in html and "<i>" not in html


def test_a_wall_has_no_boards_on_its_sheet_and_its_footing_is_ordered_by_itself() -> None:
    front, back = sides(WALL)
    assert "Faces " in front and "Screw every stake" not in front
    # By hand: the footing lies from 18 ft 8 in to 16 ft 8 in: 60° x (R² - r²)/2 x 10 in.
    assert "1.14 yd³" in back and "1-1/2, then" in back


def test_joints_that_stop_stand_nowhere_on_the_sheet_and_it_says_why() -> None:
    job = {**WALK, "joints": {"panels": 3}}
    joints = answering(job)["joints"]  # type: ignore[arg-type]
    front, back = sides(job)
    assert joints is not None and joints["stop"] and " ".join(joints["stop"].split()) in front
    assert "outer form" not in front and "joint 1" not in back and "Joints marked" not in back
