"""The lessons on paper: the answers stand on one page and nowhere on the learner's."""

from __future__ import annotations

import re
from html import unescape

import pytest

from bowstring.units.sizes import FOOT
from bowstring.wall.board import Sheet
from bowstring.wall.chalk import chalk_given
from bowstring.wall.figures import sheets_of
from bowstring.wall.filled import BLANK_END, BLANK_START, lines_of
from bowstring.wall.handouts import CHALK, handout_html
from bowstring.wall.learner import for_learner
from bowstring.wall.shape import Given
from unit.wall.wall_reader import texts, words_of

TAG = re.compile(r"<[^>]*>")


def pages(number: int, given: Given | None) -> list[str]:
    return re.findall(r"<section.*?</section>", handout_html(number, given), re.S)


@pytest.mark.parametrize("unit", ["ft-in", "m"])
@pytest.mark.parametrize("lesson", range(1, 7))
def test_a_lesson_has_a_page_with_blanks_and_one_with_answers(lesson: int, unit: str) -> None:
    given = Given.own(unit)
    asked, answered = pages(lesson, given)
    blanks = [piece for line in lines_of(lesson, given) for piece in re.findall(f"{BLANK_START}(.*?){BLANK_END}", line)]
    assert blanks and BLANK_START not in asked + answered
    assert asked.count('class="blank"') == len(blanks) and 'class="blank"' not in answered
    assert answered.count('class="given"') == len(blanks) + 1  # and the exercise's
    told = unescape(TAG.sub(" ", asked))
    for blank in blanks:
        if len(blank) > 2 and re.search("[0-9]", blank):
            assert not re.search(rf"(?<![0-9.-]){re.escape(blank)}(?![0-9.-])", told), blank
    assert "style=" not in asked + answered and "<script" not in asked + answered


@pytest.mark.parametrize("unit", ["ft-in", "m"])
@pytest.mark.parametrize("lesson", range(1, 7))
def test_the_learners_picture_tells_no_answer_and_has_blanks_in_its_place(lesson: int, unit: str) -> None:
    sheet = sheets_of(lesson, Given.own(unit))[0]
    asked = for_learner(sheet.svg, "What is it?")
    words = [one for one in words_of(sheet) if {"w-num", "w-tell"} & set(one.classes.split())]
    kept = [one for one in words_of(sheet) if one not in words and one.box.bottom > 130]
    left = texts(Sheet(asked, sheet.strokes))
    assert words and not {one.text for one in words} & set(left) - {one.text for one in kept}
    assert {one.text for one in kept} <= set(left)
    blanks = [one for one in words if "w-num" in one.classes.split() and one.size >= 34]
    assert blanks and asked.count('class="w-thin"') == sheet.svg.count('class="w-thin"') + len(blanks)
    assert sheet.strokes[-1]["sentence"] not in unescape(asked)


def test_ids_differ_from_page_to_page() -> None:
    ids = re.findall(r'\bid="([^"]+)"', handout_html(4, Given.own()))
    assert ids and len(ids) == len(set(ids))


def test_the_page_with_string_and_chalk_fits_its_floor() -> None:
    given = chalk_given(True)
    assert given.chord <= 9.5 * FOOT and given.arc.radius - given.sagitta < 10 * FOOT
    (page,) = pages(CHALK, None)
    told = TAG.sub(" ", page).replace("&#x27;", "'").replace("&quot;", '"')
    # 9 ft and 1 1/2 ft: half chord √(4.5² + 1.5²) = 4.743 ft; radius (4.5² + 1.5²) / 3 = 7.5 ft
    assert "4' 8-15/16\"" in told and "7' 6\"" in told and "6' 0\"" in told


def test_no_handout_but_seven() -> None:
    for number in (0, 8):
        with pytest.raises(ValueError, match="no such handout"):
            handout_html(number, None)
