"""Every picture of the wall, for jobs of every kind: its words are large, inside the frame and clear of one another."""

from __future__ import annotations

from itertools import combinations

import pytest

from bowstring.wall.board import HIGH, LEAST, WIDE, Sheet
from bowstring.wall.figures import job_sheets, sheets_of
from bowstring.wall.shape import Given
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from unit.wall.wall_reader import texts, varied, words_of

EVERY = pytest.mark.parametrize(("name", "given"), list(varied()), ids=[name for name, _given in varied()])
SMALLEST = HIGH / 45
"""What is asked for: a forty-fifth of the screen's height."""


def sheets(given: Given) -> list[tuple[str, Sheet]]:
    return [(f"{figure}, sheet {number}", sheet) for figure in range(7) for number, sheet in
            enumerate(sheets_of(figure, given), 1)]  # fmt: skip


@pytest.mark.parametrize("language", LANGUAGES)
@EVERY
def test_words_are_large_inside_and_clear_of_one_another(name: str, given: Given, language: str) -> None:
    speak(language)
    assert LEAST >= SMALLEST
    for place, sheet in sheets(given):
        words = words_of(sheet)
        assert words, place
        for one in words:
            assert one.size >= LEAST, (place, one)
            assert one.box.left >= 24 and one.box.right <= WIDE - 24, (place, one)
            assert one.box.top >= 16 and one.box.bottom <= HIGH - 9, (place, one)
        for one, other in combinations(words, 2):
            together = one.start <= other.last and other.start <= one.last
            assert not (together and one.box.overlaps(other.box)), (place, one.text, other.text)


@EVERY
def test_each_stroke_brings_something_and_says_something(name: str, given: Given) -> None:
    for place, sheet in sheets(given):
        for number, stroke in enumerate(sheet.strokes, 1):
            assert stroke["sentence"] and stroke["said"], (place, number)
            assert f'data-s="{number}"' in sheet.svg, (place, number)
        said = [stroke["said"] for stroke in sheet.strokes]
        assert len(set(said)) == len(said) or place.startswith("0, sheet 4"), (place, said)


def test_what_is_looked_at_by_nobody_else_is_told_in_words() -> None:
    """A job that is drawn bent otherwise than it is says so; one that is drawn true doesn't."""
    flat, true = Given(120.0, 0.8, next(varied())[1].tape), next(varied())[1]
    told = [text for sheet in job_sheets(flat, "f") for text in texts(sheet)]
    assert "drawn more bent than it is" in told
    assert not [text for sheet in job_sheets(true, "t") for text in texts(sheet) if "than it is" in text]


def test_a_curve_on_the_right_has_a_at_the_right() -> None:
    for mirrored in (False, True):
        given = Given(10.0, 2.0, next(varied())[1].tape, "", mirrored, 2)
        x = {words.text: words.box.left for words in words_of(job_sheets(given, "j")[-1])}
        assert (x["A"] > x["B"]) == mirrored and (x["Q1"] > x["Q2"]) == mirrored


def test_no_figure_but_seven() -> None:
    with pytest.raises(ValueError, match="no such figure"):
        sheets_of(7, None)


def test_without_a_job_the_lessons_stand_on_their_own_numbers() -> None:
    (none,) = sheets_of(0, None, ("This job is stopped.", "Settle it."))
    assert {"This job is stopped.", "Settle it."} <= set(texts(none))
    assert "19 × 19 = 5.25 × 68.76" in texts(sheets_of(1, None)[0])


def test_a_second_round_is_told_only_where_there_is_one() -> None:
    counts = {
        levels: len(job_sheets(Given(3.0, 0.5, next(varied())[1].tape, "", False, levels), "j")) for levels in (1, 2)
    }
    assert counts == {1: 3, 2: 5}
