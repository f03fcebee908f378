"""The pages of joints and concrete: the conclusion first, one table, the choice of panels, cautions."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring.faces import build_joints, build_pour
from bowstring.words import speak
from helping import answer_to
from slab_jobs import WALK as SLAB_WALK

WALK: dict[str, Any] = {name: said for name, said in SLAB_WALK.items() if name != "grade"} | {"title": "<b>"}


def joints(**said: Any) -> str:
    return build_joints.page_html(answer_to({**WALK, **said}))  # type: ignore[arg-type]


def pour(**said: Any) -> str:
    return build_pour.page_html(answer_to({**WALK, **said}))  # type: ignore[arg-type]


def text(html: str) -> str:
    return " ".join(unescape(re.sub("<[^>]+>", " ", html)).split())


def test_the_joints_page_begins_with_its_conclusion_and_has_every_joint() -> None:
    page = joints()
    assert page.startswith("<h2") and text(page).startswith("10 panels, 4' 11-1/8\" outside, 4' 6-3/8\" inside")
    rows = re.findall(r"<tr.*?</tr>", page)[1:]
    assert len(rows) == 10 and text(rows[4]) == "5 at M 24' 7-3/4\" 22' 7-7/8\"" and 'class="key"' in rows[4]
    assert text(rows[-1]) == "B 49' 3-1/2\" 45' 3-3/4\"" and page.count('class="key"') == 1
    assert page.index("</table>") < page.index("Cut them") < page.index("silica")


def test_each_count_of_panels_is_a_button_that_sets_the_field() -> None:
    buttons = re.findall(r'<button[^>]*data-fill="([^"]*)" aria-pressed="(\w+)"', joints())
    assert [(json.loads(unescape(fill)), pressed) for fill, pressed in buttons] == [
        ({"joints-panels": "10"}, "true"),
        ({"joints-panels": "9"}, "false"),
    ]


def test_a_stop_of_the_joints_shows_no_table_but_what_would_do() -> None:
    page = joints(joints={"panels": 4})
    assert "<table" not in page and 'role="alert"' in page and "24' 7" not in text(page)
    assert "10 panels" in text(page) and "4 panels" in text(page)


def test_one_panel_has_no_table_of_joints() -> None:
    page = joints(joints={"panels": 1}, arc={"radius": "62 ft", "chord": "8 ft"}, width="8 ft")
    assert "<table" not in page and "no joint" in text(page)


def test_the_concretes_page_begins_with_the_order() -> None:
    page = pour()
    assert page.startswith('<h2 class="huge"') and text(page).startswith('3-1/4 yards to order 236.5 ft² at 4" is 2.92')
    call, changes = re.findall(r"<table.*?</table>", page)
    assert "1/2 27' 5\" 24' 8\" joint 5" in text(call) and "3/4 41' 1\" 37' 0\"" in text(call)
    assert 'base 1/2" low all over +0.36 yd³: more than the waste 3-3/4' in text(changes)
    assert "fills a base up to" in page and "142 bags of 80 lb" in text(page)
    assert page.index("burns") > page.index("How it comes")


def test_a_small_pours_page_is_of_bags() -> None:
    page = text(pour(arc={"radius": "6 ft", "chord": "11 ft"}, width="3 ft", joints={}))
    assert page.startswith("19 bags of 80 lb") and "truck out" not in page and "if bags" in page


@pytest.mark.parametrize("language", ["english", "british", "spanish"])
def test_no_star_and_no_key_is_left_on_a_page(language: str) -> None:
    from bowstring import answering

    speak(language)
    for said in ({}, {"slab": {"thickness": "4 in", "end_width": "4 ft", "base": "4 in"}}, {"joints": {"panels": 4}},
                 {"width": "14 ft", "joints": {}}, {"slab": {}}, {"width": "6 in", "joints": {}}):  # fmt: skip
        answer = answering({**WALK, **said})  # type: ignore[typeddict-item]
        page = text(build_joints.page_html(answer) + build_pour.page_html(answer))  # type: ignore[arg-type]
        assert page and not re.search(r"[*{}~]|\b(?:joints|pour)\.[a-z]", page)


def test_nothing_stands_on_a_page_of_what_is_not_said() -> None:
    job = {key: value for key, value in WALK.items() if key != "width"}
    assert build_joints.page_html(answer_to(job)) == build_pour.page_html(answer_to(job)) == ""  # type: ignore[arg-type]
