"""Whatever a class types, each picture can be read: over a grid of bends, sizes and units, in the longest words."""

from __future__ import annotations

from itertools import combinations

import pytest

from bowstring.units.tape import make_tape
from bowstring.wall.board import HIGH, WIDE
from bowstring.wall.figures import sheets_of
from bowstring.wall.shape import Given
from bowstring.wall.suits import for_lesson, is_drawn
from bowstring.words import say, speak
from helping import about
from unit.wall.wall_reader import texts, words_of

BENDS = (0.0005, 0.01, 0.04, 0.1, 0.15, 0.2, 0.3, 0.36, 0.5, 0.75, 1.0, 1.2, 1.42, 2.2, 4.5)
"""Mid-ordinate over half the chord: from nearly straight to nearly a whole circle."""
SIZES = ((1.0, "ft-in"), (11.5824, "ft-in"), (90.0, "m"), (240.0, "mm"), (457.2, "ft"))
"""A chord in metres, and the tape that shows it."""


@pytest.mark.parametrize("language", ["english", "spanish"])  # the British words are hardly longer
@pytest.mark.parametrize(("chord", "unit"), SIZES)
def test_every_picture_can_be_read(chord: float, unit: str, language: str) -> None:
    speak(language)
    for bend in BENDS:
        given = Given(chord, chord / 2 * bend, make_tape(unit, None))
        for figure in range(7):
            for sheet in sheets_of(figure, given):
                with about(f"bend {bend}, figure {figure}"):
                    words = words_of(sheet)
                    for one in words:
                        assert one.size >= HIGH / 45, one
                        assert one.box.left >= 24 and one.box.right <= WIDE - 24, one
                        assert one.box.top >= 16 and one.box.bottom <= HIGH - 9, one
                    for one, other in combinations(words, 2):
                        together = one.start <= other.last and other.start <= one.last
                        assert not (together and one.box.overlaps(other.box)), (one.text, other.text)


def test_a_lesson_takes_what_is_given_as_far_as_its_point_can_be_told() -> None:
    own = Given.own()
    # the least and the most bend, and whether it says that its own numbers stand there instead
    taken = {
        1: {0.012: "", 4.5: "", 0.005: "flat"}, 2: {0.012: "", 4.5: ""}, 3: {0.012: "", 4.5: ""},
        4: {0.11: "", 1.42: "", 0.09: "flat", 1.45: "bent"}, 5: {0.012: "", 4.5: ""},
        6: {0.11: "", 1.0: "", 0.09: "flat", 1.01: "bent"},
    }  # fmt: skip
    for lesson, cases in taken.items():
        for bend, why in cases.items():
            given = own.bent(own.half * bend)
            suited = for_lesson(lesson, given)
            assert suited.why == why, (lesson, bend)
            assert suited.given.sagitta == pytest.approx(own.sagitta if why else given.sagitta)
            said = {say(f"lesson.too_{one}") for one in ("flat", "bent")}
            for sheet in sheets_of(lesson, given):
                assert said & set(texts(sheet)) == ({say(f"lesson.too_{why}")} if why else set()), (lesson, bend)


def test_an_arc_that_is_nearly_a_whole_circle_is_not_drawn() -> None:
    own = Given.own()
    assert is_drawn(own.bent(4.5 * own.half)) and not is_drawn(own.bent(4.7 * own.half))


def test_a_lesson_that_is_drawn_bent_otherwise_says_so() -> None:
    own = Given.own()
    flat, steep, true = own.bent(own.half * 0.12), own.bent(own.half * 1.3), own
    for lesson in (1, 4, 5, 6):
        first = texts(sheets_of(lesson, flat)[0])
        assert say("wall.drawn_steeper") in first, lesson
    for lesson in (1, 5):
        assert say("wall.drawn_flatter") in texts(sheets_of(lesson, steep)[0]), lesson
    for lesson in (1, 4, 5, 6):
        assert not [text for text in texts(sheets_of(lesson, true)[0]) if "than it is" in text and "bent" in text]


def test_a_gap_that_is_not_drawn_larger_says_so() -> None:
    own = Given.own()
    for bend, key in ((0.276, "lesson.6.scale_word"), (1.0, "lesson.6.scale_word_true")):
        sheet = sheets_of(6, own.bent(own.half * bend))[0]
        assert say(key, times=10) in texts(sheet), bend
        assert not [text for text in texts(sheet) if " 1 times" in text], bend
