"""A line of several pieces on its faces: which arc is staked, what stops it, its build and its form sheet."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring import answering
from bowstring.faces.build import build_html
from bowstring.faces.checks import checks_html
from bowstring.faces.paper import paper_html
from bowstring.faces.stakes import stakes_html, steps_list_html
from bowstring.report.lined.pages import page_of
from bowstring.sheet.messages import messages
from bowstring.sheet.of_line import of_line
from bowstring.sheet.short import short_text
from bowstring.sheet.text import sheet_text
from helping import answer_to
from line_jobs import CREEK, KINK_OPEN, METRIC, OVER_ITSELF, SHAPES
from slab_jobs import WALK

ARC = "Piece 2 of 4, an arc: A is where piece 1 ends."


def text_of(html: str) -> str:
    inline = re.sub(r"</?(span|b)\b[^>]*>", "", html.replace("</span><", " </span><"))
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", inline)).split())


def sides(job: dict[str, Any]) -> list[str]:
    html = paper_html(answering(job))  # type: ignore[arg-type]
    return [text_of(side) for side in re.findall(r"<section.*?</section>", html, re.DOTALL)]


def test_wherever_an_arc_is_staked_it_says_which() -> None:
    answer = answer_to(CREEK)
    told = [text_of(stakes_html(answer, 1)), text_of(stakes_html(answer, 5)), text_of(checks_html(answer)),
            *sides(CREEK)[:2], " ".join(short_text(answer).split()), " ".join(sheet_text(answer).split()),
            " ".join(messages(answer))]  # fmt: skip
    assert [ARC in one for one in told] == [True] * len(told)
    assert of_line(answer_to(SHAPES["serpentine"])) == "Piece 1 of 9, an arc: A is where the line starts."
    assert of_line(answer_to(SHAPES["one arc"])) == of_line(answer_to(WALK)) == ""


def test_the_other_arcs_have_a_button_where_one_begins_and_in_the_list() -> None:
    answer = answer_to(METRIC)
    for html in (stakes_html(answer, 1), steps_list_html(answer, 1)):
        assert re.findall(r'data-do="line-at" data-at="(\d+)"', html) == ["3", "5", "7", "9"]
    assert "line-at" not in stakes_html(answer, 4)
    assert "Sheets of their own: Arc 3, Arc 5, Arc 7, Arc 9." in sides(METRIC)[0]


def test_a_kink_whose_hand_nobody_says_stops_every_sheet() -> None:
    answer = answer_to(KINK_OPEN)
    (way,) = answer["ways_out"]
    assert way["panel"] == "pieces" and answer["stops"] == answer["lined"]["asks"] == [way["stop"]]
    assert "piece 4" in way["stop"]
    assert 'data-open="pieces"' in stakes_html(answer, 1)
    assert "FORMS" not in " ".join(sides(KINK_OPEN)) and "STOP" in sides(KINK_OPEN)[0]
    assert "stopbox" in build_html(answer)


def test_a_slab_that_lies_over_itself_is_a_caution_that_a_width_takes_away() -> None:
    answer = answering(OVER_ITSELF)  # type: ignore[arg-type]
    over = [text for text in answer["cautions"] if "lies over itself" in text]
    assert over and over == answer["lined"]["cautions"] and not answer["stops"]
    narrow = answer.formed({**OVER_ITSELF, "width": "2 ft"})  # type: ignore[arg-type]
    assert [text for text in narrow["cautions"] if text in over] == narrow["lined"]["cautions"]


@pytest.mark.parametrize("name", SHAPES)
def test_each_row_leads_to_its_page(name: str) -> None:
    answer = answer_to(SHAPES[name])
    keys = [row["key"] for row in answer["build"]]
    assert keys == ["line", "edges", "boards", "joints", "grades", "pour"]
    for key in keys:
        html = build_html(answer, key)
        assert f'data-card="{key}"' in html and re.search(r'<h2 [^>]*tabindex="-1">', html), key


def test_the_form_sheet_has_the_line_on_its_front_and_signs_off_on_its_back() -> None:
    front, back = [side for side in sides(CREEK) if "FORMS, front" in side or "FORMS, back" in side]
    assert front.startswith("Creek walk: the line") or "Creek walk: the line" in front
    for told in ("83' 1-1/2\"", "57' 10-1/2\"", "31' 0\" left", "24' 0\" right"):
        assert told in front, told
    assert "Before the truck: sign off" in back and "Order 7 yards" in back


def test_every_joint_and_top_stands_on_some_side_of_a_long_line() -> None:
    answer, told = answer_to(METRIC), " ".join(sides(METRIC))
    pages = {page["key"]: page for page in answer["lined"]["pages"]}
    for row in pages["joints"]["tables"][0]["rows"][:-1]:
        place = next(one for one in answer["lined_sheet"]["places"] if f"{one['joint']}" == row[0])
        cells = [(spot["along_shown"], spot["top_shown"]) for spot in (place["left"], place["right"])]
        assert [along for along, _top in cells] == row[1:3]
        assert " ".join([row[0], *cells[0], *cells[1]]) in told, row
    for row in pages["grades"]["tables"][1]["rows"]:
        assert " ".join(row) in told, row
    for name, ends, radius, chord in pages["line"]["tables"][0]["rows"]:
        assert " ".join([name, radius, chord.replace("straight", "-"), ends]) in told, name


def test_texts_of_a_page_are_escaped() -> None:
    bad = "<b>&\"'"
    answer = dict(answer_to(CREEK))
    page = page_of("line", "usual", bad, bad)
    page["conclusion"], page["lines"], page["cautions"] = bad, [bad] * 8, [bad]
    page["tables"] = [{"key": "pieces", "title": bad, "heads": [bad] * 4, "rows": [[bad] * 4]}] * 2
    answer["lined"] = {**answer["lined"], "pages": [page, *answer["lined"]["pages"][1:]]}
    for html, most in ((build_html(answer, "line"), 10), (paper_html(answer), 5)):  # type: ignore[arg-type]
        assert "<b>&" not in html and html.count("&lt;b&gt;&amp;") >= most
