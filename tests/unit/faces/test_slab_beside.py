"""What stands right under typed figures of the slab: both forms' tops, and along which line an apron is taken."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring.faces.numbers import numbers
from bowstring.faces.numbers_later import numbers_later
from bowstring.job.forming import ApronSaid
from bowstring.page.fields import all_fields, fields_of_job
from bowstring.page.form import form_html
from form_jobs import CROSSED
from helping import answer_to
from line_jobs import CREEK


def told(job: dict[str, Any], where: str, **fields: str) -> str:
    made = numbers({**fields_of_job(job), **fields})
    return plain(made["beside"][f"{where}-told"])


def plain(html: str) -> str:
    return unescape(re.sub("<[^>]+>", "", html)).replace("\N{NO-BREAK SPACE}", " ").strip()


def test_both_forms_tops_stand_under_the_typed_ones_as_the_answer_has_them() -> None:
    """By hand: 1.5 % of 4.5 ft is 0.0675 ft; 101.35 and 100.82 less that are 101.2825 and 100.7525."""
    text = told(CROSSED, "tops")
    assert text == "Outer form: A 101.35, B 100.82. Inner form: A 101.28, B 100.75."
    rows = {row["name"]: row for row in answer_to(CROSSED)["grades"]["rows"] if row["kind"] == "stake"}
    for end in "AB":
        for side in ("outside", "inside"):
            assert f"{end} {rows[end][side]['elevation']}" in text
    later = numbers_later(answer_to(CROSSED), fields_of_job(CROSSED))  # type: ignore[arg-type]
    assert plain(later["beside"]["tops-told"]) == text


@pytest.mark.parametrize(
    ("fields", "text"),
    [
        ({"grade-low": "outside"}, "Outer form: A 101.35, B 100.82. Inner form: A 101.42, B 100.89."),
        ({"grade-low": "right"}, "Outer form: A 101.35, B 100.82. Inner form: A 101.28, B 100.75."),
        ({"grade-low": "left"}, "Outer form: A 101.35, B 100.82. Inner form: A 101.42, B 100.89."),
        ({"grade-cross": ""}, "Outer form: A 101.35, B 100.82. Inner form: A 101.28, B 100.75."),
        ({"grade-cross": "0"}, "Outer form: A 101.35, B 100.82. Inner form: A 101.35, B 100.82."),
        ({"grade-to": ""}, "Outer form: A 101.35. Inner form: A 101.28."),
        ({"slab-end_width": "9 ft"}, "Outer form: A 101.35, B 100.82. Inner form: A 101.28, B 100.69."),
        ({"grade-low": ""}, ""),
        ({"width": ""}, ""),
        ({"grade-from": "", "grade-to": ""}, ""),
    ],
)
def test_they_follow_what_is_typed(fields: dict[str, str], text: str) -> None:
    assert told(CROSSED, "tops", **fields) == text


def test_an_apron_asks_along_which_line_and_says_what_is_taken() -> None:
    """By hand: the outer form's radius is 46 ft, the line's 41.5; 12 and 24.5 ft of one are 10.826 and 22.103 of the
    other, and 13.301 and 27.157 the other way round."""
    text = told(CROSSED, "apron")
    assert text.startswith("Along which line? Nobody said: the outer form is taken.")
    assert text.endswith("That is 10' 9-7/8\" to 22' 1-1/4\" along the drawing's line.")
    assert "data-tint" in numbers(fields_of_job(CROSSED))["beside"]["apron-told"]
    along = told(CROSSED, "apron", **{"slab-apron-along": "line"})
    assert along == "Along the drawing's line. That is 13' 3-5/8\" to 27' 1-7/8\" along the outer form."
    outer = told(CROSSED, "apron", **{"slab-apron-along": "outer"})
    assert outer == "Along the outer form. That is 10' 9-7/8\" to 22' 1-1/4\" along the drawing's line."
    assert told(CROSSED, "apron", edge="outside") == ""  # one line, nothing to ask
    assert told({**CREEK, "slab": CROSSED["slab"]}, "apron") == ""
    for given, on_line, said in ((None, False, False), ("outer", False, True), ("line", True, True)):
        apron = {**CROSSED["slab"]["apron"], **({"along": given} if given else {})}
        answer = answer_to({**CROSSED, "slab": {**CROSSED["slab"], "apron": apron}})
        lines = " ".join(answer["pour"]["deep"]["apron"])
        assert ("Given along the outer form" in lines) is not said
        assert ("Given along the drawing's line" in lines) is on_line
    assert ApronSaid(1.0, 2.0, 0.2).on_line is False  # a job's own default stays


def test_the_page_has_both_places_and_both_taps() -> None:
    page = form_html({})
    assert page.count('id="apron-told"') == page.count('id="tops-told"') == 1
    values = re.findall(r'name="slab-apron-along" value="(\w*)"', page)
    assert values == ["line", "outer", ""]
    assert "Outer form&#x27;s top at A" in page and "Outer form&#x27;s top at B" in page
    assert any(field.id == "slab-apron-along" for field in all_fields({}))
