"""The lessons on paper: the answers stand on one page and nowhere on the learner's."""

from __future__ import annotations

import re

import pytest

from bowstring.units.sizes import FOOT
from bowstring.wall.chalk import chalk_given
from bowstring.wall.filled import BLANK_END, BLANK_START, lines_of
from bowstring.wall.handouts import CHALK, handout_html
from bowstring.wall.shape import Given

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
    told = TAG.sub("", re.sub(r"<svg.*?</svg>", "", asked, flags=re.S))
    for blank in blanks:
        if len(blank) > 4 and re.search("[0-9]", blank):
            assert blank not in told, blank
    assert "style=" not in asked + answered and "<script" not in asked + answered


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
