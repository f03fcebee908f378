"""The form sheet of a line on paper: one sheet for the creek walk, and what of a longer one stands on two sides."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from html import unescape
from typing import Any

import pytest

from bowstring.faces.paper_flow import ROWS, Grid, sides
from bowstring.faces.paper_forms import forms_sides
from bowstring.faces.paper_sizes import PAGE_WIDE
from bowstring.words import speak, spoken
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from line_jobs import CREEK, METRIC, SHAPES
from lined_jobs import FIVE, KINKED, METRIC_LINE

JOBS = {"creek": CREEK, "three pieces": METRIC_LINE, "kinked": KINKED, "serpentine": METRIC, "many": SHAPES["many"],
        "nothing said": SHAPES["nothing said"]}  # fmt: skip


@pytest.fixture(params=LANGUAGES)
def language(request: pytest.FixtureRequest) -> Iterator[str]:
    speak(request.param)
    yield request.param
    speak("english")


def text_of(html: str) -> str:
    inline = re.sub(r"</?(span|b)\b[^>]*>", "", html.replace("</span><", " </span><"))
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", inline)).split())


@cache
def told_of(name: str, _language: str) -> Any:
    """The answer to a job in a language, asked once; nobody changes it."""
    return answer_to(JOBS[name])


def printed(job: dict[str, Any]) -> list[str]:
    name = next((one for one, known in JOBS.items() if known is job), "")
    html = forms_sides(told_of(name, spoken()) if name else answer_to(job), "May 31")
    return [text_of(side) for side in re.findall(r"<section.*?</section>", html, re.DOTALL)]


def tables(answer: Any) -> dict[str, Any]:
    pages = answer["lined"]["pages"]
    return {table["key"]: table for page in pages for table in page["tables"]}


def plain(text: str) -> str:
    return " ".join(text.replace("*", "").split())


def test_the_creek_walk_is_one_sheet_and_its_front_says_so(language: str) -> None:
    front, back, *_more = printed(CREEK)
    said = {
        "english": "front: 2 sides in all",
        "british": "front: 2 sides in all",
        "spanish": "frente: 3 caras en total",  # its sentences are longer,
    }
    assert said[language] in front and back


def test_an_apron_is_signed_off_beside_the_base() -> None:
    back = printed(FIVE)[1]
    assert re.search(r'Base under top: avg\., least 4" .*?Base under top, apron 6"', back)
    assert "apron" not in printed(CREEK)[1]


@pytest.mark.parametrize("name", JOBS)
def test_the_front_says_how_many_sides_there_are(name: str) -> None:
    made = printed(JOBS[name])
    assert f"FORMS, front: {len(made)} sides in all" in made[0]
    for number, side in enumerate(made[2:], 3):
        assert f"FORMS, more: side {number} of {len(made)}" in side


@pytest.mark.parametrize("name", ["creek", "serpentine", "kinked"])
def test_conclusions_splices_slopes_what_to_buy_and_the_order_are_on_the_sheet(name: str, language: str) -> None:
    """Each with the answer's own numbers, on the two sides of one sheet whatever else is on further ones."""
    answer, made = told_of(name, spoken()), printed(JOBS[name])
    front, back = made[:2]
    told = {table["key"]: table["rows"] for page in answer["lined"]["pages"] for table in page["tables"]}
    pages = {page["key"]: page for page in answer["lined"]["pages"]}
    for form in dict.fromkeys(row[0] for row in told["splices"]):
        assert ", ".join(at for edge, at, _piece in told["splices"] if edge == form) in front, form
    assert plain(pages["boards"]["conclusion"]) in front and plain(pages["line"]["short"]) in front
    for key in ("grades", "joints", "pour"):
        assert plain(pages[key]["conclusion"]) in back, key
    for column in (1, 2):
        assert " ".join(row[column] for row in told["slopes"]) in back
    for _board, length, count in told["buy"]:
        assert re.search(rf"\b{count} (of|de) {re.escape(length)}\b", back), (length, count)
    assert f" {answer['lined_sheet']['stakes']} " in back
    for row in told["reach"]:
        assert " ".join(row) in back
    for hand in ("left", "right"):
        assert answer["edges"][hand]["length_shown"] in front


def test_a_place_stands_once_with_both_forms() -> None:
    """No table of tops repeats the joins, and every mark has its top beside it."""
    told, places = " ".join(printed(CREEK)), answer_to(CREEK)["lined_sheet"]["places"]
    for place in places:
        spots = [cell for one in (place["left"], place["right"]) for cell in (one["along_shown"], one["top_shown"])]
        assert told.count(" ".join([place["label"], *spots])) == 1, place
    assert "mid-arc" not in told.replace("piece ends, mid-arc", "")


@pytest.mark.parametrize("name", JOBS)
def test_no_row_of_a_table_is_lost(name: str) -> None:
    job = JOBS[name]
    answer, told = told_of(name, "english"), " ".join(printed(job))
    for key in ("cut", "stakes"):
        for row in tables(answer).get(key, {"rows": []})["rows"]:
            assert " ".join(plain(cell) for cell in row if cell) in told, row
    for row in tables(answer).get("at_stakes", {"rows": []})["rows"]:
        assert " ".join(row) in told or " ".join([row[0], row[1], row[3]]) in told, row
    for place in answer["lined_sheet"]["places"]:
        for spot in (place["left"], place["right"]):
            assert spot is None or f"{spot['along_shown']} {spot['top_shown']}".strip() in told


@pytest.mark.parametrize("name", ["creek", "many"])
def test_what_is_signed_off_says_what_it_must_be(name: str) -> None:
    answer, made = told_of(name, "english"), printed(JOBS[name])
    assert f"Width at piece ends {answer['lined_sheet']['width_shown']}" in made[1]
    assert f"Base under top: avg., least {answer['lined_sheet']['depth_shown']}" in made[1]
    assert f"marked; depth; when {answer['joints']['count'] - 1}" in made[1]


def test_tops_by_a_level_stand_beside_the_marks() -> None:
    job = {**CREEK, "grade": {**CREEK["grade"], "from": "100 ft", "instrument": "104 ft"}}
    answer, told = answer_to(job), " ".join(printed(job))
    for place in answer["lined_sheet"]["places"]:
        spot = place["left"]
        assert spot["level_shown"] and spot["rod_shown"]
        assert f"{spot['level_shown']} {spot['rod_shown']}" in told
        # By hand: the instrument's height less the elevation is what the rod reads, to the last digit shown.
        assert float(spot["level_shown"]) + float(spot["rod_shown"]) == pytest.approx(104.0, abs=0.011)


def test_a_slab_that_nobody_said_waits_on_paper_too() -> None:
    front, back = printed(SHAPES["nothing said"])
    waits = [row["text"] for row in answer_to(SHAPES["nothing said"])["build"] if row["state"] == "open"]
    assert waits and all(plain(text) in front + back for text in waits)
    assert "To buy" not in back and "splices" not in front


def grid(count: int, wide: int = 1) -> Grid:
    return Grid("T", ("a", "b"), tuple((f"row{number}", "8 ft " * wide) for number in range(count)))


@pytest.mark.parametrize("row", ROWS)
def test_a_table_stands_whole_on_the_first_side_with_room_or_goes_on_over_more(row: int) -> None:
    made = sides([(grid(3),), (grid(400),), (grid(3),)], row, (150.0, 150.0), 400.0)
    assert all(name in made[0] for name in ("row0", "row1", "row2")) and len(made) > 3
    rows = [name for side in made for name in re.findall(r"row\d+", side)]
    assert sorted(rows) == sorted([*[f"row{n}" for n in range(3)] * 2, *[f"row{n}" for n in range(400)]])


def test_tables_stand_beside_each_other_where_they_have_room() -> None:
    (narrow,) = sides([(grid(3), grid(3))], ROWS[0], (500.0,), 500.0)
    assert 'class="band"' in narrow
    wide = Grid("T", tuple("abcdefgh"), (("8' 11-7/8\"",) * 8,))
    (apart,) = sides([(wide, wide)], ROWS[0], (900.0,), 900.0)
    assert 'class="band"' not in apart and PAGE_WIDE < 2 * 8 * 60
