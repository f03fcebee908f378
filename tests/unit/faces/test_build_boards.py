"""The boards' page and their section of the long sheet: the same numbers, a table at a time, all of it escaped."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring import Answer, answering
from bowstring.faces.build_boards import page_html
from bowstring.sheet import outline
from bowstring.sheet.text import sheet_text
from helping import SAID

WALK: dict[str, Any] = {
    **SAID,
    "arc": {"radius": "62 ft", "chord": "48 ft"},
    "levels": 3,
    "side": "left",
    "width": "5 ft",
    "edge": "outside",
    "slab": {"thickness": "4 in"},
}
TIGHT: dict[str, Any] = {"arc": {"radius": "14 ft", "chord": "12 ft"}}


def told(**other: Any) -> Answer:
    return answering({**WALK, **other})


def text_of(html: str) -> str:
    whole = re.sub(r"</?(?:span|b)\b[^>]*>", "", html)  # these part no words
    return " ".join(unescape(re.sub(r"<[^>]*>", " ", whole)).replace("\N{NO-BREAK SPACE}", " ").split())


def test_the_page_begins_with_its_conclusion_and_has_every_number_of_the_part() -> None:
    answer = told()
    html, part = page_html(answer), answer["boards"]
    assert part is not None
    assert html.startswith('<h2 class="concl"')
    text = text_of(html)
    assert text.startswith("1x4 bends to both edges. So does 2x4.")
    for row in part["rows"]:
        assert f"R {row['least_shown']}" in text and row["push_shown"] in text
    for cut in part["cut"]:
        assert cut["needs"] in text and cut["boards"] in text
    for edge in part["edges"]:
        assert edge["gap_shown"] in text
        assert all(splice["along_shown"] in text for splice in edge["splices"])
    for sentence in (*part["ends"], *part["bending"], *part["stakes_how"], *part["cautions"], *part["notes"]):
        assert sentence in text


def test_the_caution_stands_before_the_hand_bends() -> None:
    text = text_of(page_html(told()))
    assert text.index("is a spring") < text.index("Clamp one end")


def test_how_good_the_lumber_is_is_chosen_by_a_tap() -> None:
    html = page_html(told())
    fills = [json.loads(unescape(one)) for one in re.findall(r'data-do="fill" data-fill="([^"]*)"', html)]
    assert fills == [{"board-level": level} for level in ("job lumber", "clear", "selected")]
    assert re.findall(r'aria-pressed="(\w+)"', html) == ["true", "false", "false"]
    pressed = re.findall(r'aria-pressed="(\w+)"', page_html(told(board={"level": "clear"})))
    assert pressed == ["false", "true", "false"]


def test_where_nothing_bends_there_is_no_cut_list_but_what_to_do() -> None:
    answer = told(**TIGHT)
    text, part = text_of(page_html(answer)), answer["boards"]
    assert part is not None
    assert "Cut list" not in text and "To buy" not in text
    assert all(line in text for line in part["otherwise"])
    assert "Plywood strips" in text and "kerf" in text


def test_a_name_that_somebody_typed_is_escaped() -> None:
    html = page_html(told(board={"kind": "<b>oak</b>", "thickness": "1/2 in"}))
    assert "<b>oak" not in html and "&lt;b&gt;oak" in html


@pytest.mark.parametrize("other", [{}, TIGHT, {"levels": 5}])
def test_the_long_sheet_says_what_the_page_says(other: dict[str, Any]) -> None:
    answer = told(**other)
    section, part = outline.part(answer, "boards"), answer["boards"]
    assert section is not None and part is not None
    text = " ".join(sheet_text(answer).split())
    for line in (*part["conclusion"], *part["otherwise"], *part["ends"], *part["bending"], *part["gave_way"]):
        assert " ".join(line.split()) in text
    assert ("Cut list" in text) == bool(part["cut"])


def test_before_the_slab_is_said_there_is_no_page_and_no_section() -> None:
    answer = answering({key: value for key, value in WALK.items() if key != "width"})
    assert page_html(answer) == ""
    assert outline.part(answer, "boards") is None
