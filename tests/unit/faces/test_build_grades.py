"""The page of the grades, and their section of the long sheet."""

from __future__ import annotations

import html
import json
import re
from typing import Any

import bowstring
from bowstring.faces.build_grades import page_html
from bowstring.sheet.outline import part as section
from bowstring.sheet.text import sheet_text
from slab_jobs import WALK

GRADE: dict[str, Any] = WALK["grade"]


def answered(**grade: Any) -> bowstring.Answer:
    return bowstring.answering({**WALK, "grade": {**GRADE, **grade}})  # type: ignore[typeddict-item]


def plain(page: str) -> str:
    return " ".join(html.unescape(re.sub(r"<[^>]+>", " ", page)).split())


def fills(page: str) -> list[dict[str, str]]:
    return [json.loads(html.unescape(found)) for found in re.findall(r'data-fill="([^"]*)"', page)]


def test_the_page_has_every_top_once() -> None:
    answer = answered()
    page = page_html(answer)
    assert answer["grades"] is not None and page.count("<table") == 2
    rows = re.findall(r'<tr><th scope="row">(.*?)</tr>', page)
    assert [plain(row).split()[0] for row in rows] == [row["name"] for row in answer["grades"]["rows"]]
    assert plain(rows[0]) == 'A 0 0.00 7/8" low -0.08' and plain(rows[8]) == 'B 11-3/8" high 0.95 10-1/2" high 0.87'
    assert plain(page).startswith('B stands 11-3/8" above A. Inner form 7/8" lower.')
    assert "local code and the licensed professional decide" in plain(page)
    assert fills(page) == []


def test_a_warning_stands_over_the_tops_with_what_settles_it() -> None:
    page = page_html(answered(slope=4.9))
    assert "The inner edge runs 5.11% ." in plain(page) and "<table" in page
    assert fills(page) == [{"grade-slope": "4.78"}, {"grade-limit": "8.33"}]
    assert page.index("grade-slope") < page.index("<table")


def test_a_stop_has_no_top() -> None:
    for grade in ({"slope": 4.9, "stops": True}, {"to": "9 in"}):
        answer = answered(**grade)
        page = page_html(answer)
        assert "<table" not in page and 'role="alert"' in page and len(fills(page)) == 2
        assert "No grades until this is settled." in plain(page) and 'data-open="slope"' in page
        made = section(answer, "grades")
        assert made is not None and [type(block).__name__ for block in made.blocks] == ["Items", "Paragraph"]


def test_what_is_open_has_no_page_and_no_section() -> None:
    answer = bowstring.answering({**WALK, "grade": {}})  # type: ignore[typeddict-item]
    assert page_html(answer) == "" and section(answer, "grades") is None


def test_further_tables_stand_where_there_is_something_in_them() -> None:
    ground = [{"stake": "A", "edge": "outside", "level": "99.9 ft"}]
    page = page_html(answered(**{"from": "100 ft"}, instrument="104.5 ft", ground=ground))
    assert page.count("<table") == 5 and "R1 100.12 100.04" in plain(page)
    assert "R1 4.38 4' 4-5/8\" 4.46 4' 5-1/2\"" in plain(page)
    assert 'A cut 2-3/4"' in plain(page)
    crowned = {**WALK, "grade": {"slope": 0, "crown": "1/4 in"}}
    assert "Across the crown" in plain(page_html(bowstring.answering(crowned)))  # type: ignore[arg-type]


def test_no_number_of_the_text_sheet_breaks() -> None:
    ground = [{"stake": "A", "edge": "outside", "level": "99.9 ft"}]
    text = sheet_text(answered(**{"from": "100 ft"}, instrument="104.5 ft", ground=ground))
    assert "*" not in text[text.index("GRADES") : text.index("HOW YOUR")]
    lines = [" ".join(line.split()) for line in text.splitlines()]
    assert 'R1 1-3/8" high 0.12 1/2" high 0.04' in lines
    assert "R1 100.12 4.38 4' 4-5/8\" 100.04 4.46 4' 5-1/2\"" in lines
    assert 'A cut 2-3/4" none' in lines
