"""A level's drawing: the strings, stakes and numbers of that level and no other's."""

from __future__ import annotations

import math
from functools import cache
from typing import Any

import pytest

from bowstring.drawings.level import level_svg
from bowstring.drawings.strings import strings_of
from bowstring.drawings.svg import SIZES
from bowstring.words import say
from helping import about
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_cases import FOOT, SHAPES, case, make, own
from unit.drawings.drawing_reader import Read

LEVELS = {name: range(1, int(shape["levels"]) + 1) for name, shape in SHAPES.items()}


def read(answer: dict[str, Any], level: int) -> Read:
    return Read(level_svg(answer, level, id="l"))


@cache
def read_case(name: str, level: int) -> Read:
    return read(case(name), level)


@pytest.mark.parametrize("name", SHAPES)
def test_nothing_overlaps_and_every_stake_so_far_is_named(name: str) -> None:
    answer = case(name)
    for level in LEVELS[name]:
        with about("level", level):
            drawing = read_case(name, level)
            assert_clear(drawing)
            standing = [stake["name"] for stake in answer["stakes"] if stake["level"] <= level]
            named = [words.text for words in drawing.words() if words.stake]
            first = strings_of(answer, level)[0].names
            assert sorted(named) == sorted([*standing, *first])
            assert set(drawing.stakes()) == set(standing)


@pytest.mark.parametrize("name", SHAPES)
def test_the_new_stakes_are_bold_and_the_older_light(name: str) -> None:
    answer = case(name)
    for level in LEVELS[name]:
        with about("level", level):
            drawing = read_case(name, level)
            for stake in answer["stakes"]:
                if stake["level"] <= level:
                    whole = drawing.classes_of_stake(stake["name"])[0]
                    assert ("bd-new" in whole) == (stake["level"] == level)
                    assert ("bd-older" in whole) == (0 < stake["level"] < level)


@pytest.mark.parametrize("name", SHAPES)
def test_each_string_runs_between_older_stakes_and_its_arrow_sets_the_new_one(name: str) -> None:
    answer = case(name)
    for level in LEVELS[name]:
        with about("level", level):
            drawing = read_case(name, level)
            at = {stake: places[0] for stake, places in drawing.stakes().items()}
            strings = drawing.paths("string")[0]
            arrows = drawing.paths("arrow")
            found = strings_of(answer, level)
            assert len(found) == 2 ** (level - 1) and len(strings) == 2 * len(found)
            for index, string in enumerate(found):
                start, new, end = string.names
                assert strings[2 * index] == pytest.approx(at[start], abs=0.01)
                assert strings[2 * index + 1] == pytest.approx(at[end], abs=0.01)
                middle = [(a + b) / 2 for a, b in zip(at[start], at[end], strict=True)]
                assert arrows[index][0] == pytest.approx(middle, abs=0.01)
                tip = max(arrows[index][:2], key=lambda point: math.dist(point, middle))
                assert math.dist(tip, at[new]) < math.dist(middle, at[new])


@pytest.mark.parametrize("name", SHAPES)
def test_numbers_that_are_all_alike_stand_once(name: str) -> None:
    answer = case(name)
    for level in LEVELS[name]:
        with about("level", level):
            row = answer["halving"][level - 1]
            text = read_case(name, level).flowing_text()
            assert text.count(say("draw.chord", shown=row["chord_shown"])) == 1
            texts = [words.text for words in read_case(name, level).words()]
            assert sum(row["sagitta_shown"] in one.split("sagitta ") for one in texts) >= 1
            assert (
                texts.count(say("draw.sagitta")) + texts.count(say("draw.sagitta.shown", shown=row["sagitta_shown"]))
                == 1
            )
            assert say("draw.half_chords", name=row["stakes"][0], shown=row["half_chord_shown"]) in text
            heading = say(
                {1: "draw.level.detail.one", 2: "draw.level.detail.two"}.get(
                    2 ** (level - 1), "draw.level.detail.many"
                ),
                start="A",
                end=strings_of(answer, level)[0].names[2],
                count=2 ** (level - 1),
            )
            assert heading in text


def found_off(stake: str, sagitta: str) -> dict[str, Any]:
    """The answer once a stake was got elsewhere; it stops at that stake's level."""
    return case("ordinary", levels=1 if stake == "M" else 2, got=[{"stake": stake, "sagitta": sagitta}])


def unread(answer: dict[str, Any], stake: str) -> dict[str, Any]:
    """A copy of an answer without the readings at a stake: no real one, they always are there."""
    changed = own(answer)
    for step in changed["steps"]:
        step["readings"] = [one for one in step["readings"] if stake not in (one["from"], one["to"])]
    return changed


def test_numbers_that_differ_are_each_listed() -> None:
    answer = found_off("Q1", "1' 4-1/8\"")
    drawing = read(answer, 2)
    assert_clear(drawing)
    text = drawing.flowing_text()
    row = answer["halving"][1]
    assert say("draw.level.detail.differ") in text
    listed = {name: text[text.index(f"{name}: ") :].split(".")[0] for name in ("Q1", "Q2")}
    assert "mid-ord 1' 4-1/8\"" in listed["Q1"] and row["sagitta_shown"] not in listed["Q1"].split(", ")
    assert f"mid-ord {row['sagitta_shown']}" in listed["Q2"]
    # the half chord of the arc would be wrong at Q1: its step reads the right one
    assert row["half_chord_shown"] not in listed["Q1"] and row["half_chord_shown"] in listed["Q2"]
    (half,) = {reading["shown"] for step in answer["steps"] for reading in step["readings"]
               if {reading["from"], reading["to"]} == {"A", "Q1"}}  # fmt: skip
    assert half != row["half_chord_shown"] and half in listed["Q1"]
    assert "1' 4-1/8\"" in drawing.described()[1]


def test_what_no_step_gives_is_left_out() -> None:
    answer = unread(found_off("Q1", "1' 4-1/8\""), "Q1")
    text = read(answer, 2).flowing_text()
    listed = text[text.index("Q1: ") :].split(".")[0]
    assert "mid-ord 1' 4-1/8\"" in listed and "short chord" not in listed
    assert answer["halving"][1]["half_chord_shown"] not in listed


def test_a_stake_that_moved_keeps_the_row_s_half_chord_off_the_drawing() -> None:
    for answer in (own(found_off("M", "5' 3\"")), unread(found_off("M", "5' 3\""), "M")):
        answer["halving"][0]["half_chord_shown"] = "WRONG NOW"
        drawing = read(answer, 1)
        both = drawing.flowing_text() + drawing.described()[1]
        assert "WRONG NOW" not in both and "5' 3\"" in both


def test_half_chords_that_differ_are_both_written() -> None:
    answer = case("ordinary", levels=1, got=[{"stake": "M", "half_chords": ["19' 8\"", "19' 7\""]}])
    text = read(answer, 1).flowing_text()
    assert "19' 8\"" in text and "19' 7\"" in text


@pytest.mark.parametrize("name", SHAPES)
def test_the_hand_and_the_stretch_are_told(name: str) -> None:
    answer = case(name)
    drawing = read(answer, 1)
    description = drawing.described()[1]
    assert answer["hand"] in description and f"on your {answer['side']}," in description
    flat = answer["staked"]["sagitta"] < answer["staked"]["chord"] / 12
    assert ("so you can see it" in drawing.flowing_text()) == ("so you can see it" in description) == flat
    for places in drawing.stakes().values():  # the whole arc, then the one string
        assert len(places) == 2
    for index in (0, 1):
        new, start = drawing.stakes()["M"][index], drawing.stakes()["A"][index]
        assert new[1] < start[1] and (new[0] < start[0]) == (answer["side"] == "right")


def test_labels_are_large_enough_on_a_wall_and_on_a_phone() -> None:
    """On a wall at least 1/50 of the height; on a phone 360 px wide, with margins, at least 11 px."""
    for name in ("ordinary", "flat", "semicircle", "greater"):
        for level in (1, 2, 3):
            left, top, right, bottom = read(case(name), level).box
            assert min(SIZES.values()) >= (bottom - top) / 50
            assert min(SIZES.values()) * 328 / (right - left) >= 11


def test_a_level_that_is_not_there() -> None:
    for level in (0, 4, -1):
        with pytest.raises(KeyError):
            level_svg(case("ordinary"), level, id="l")


def test_a_level_of_hundreds_of_strings_shows_one_of_them() -> None:
    answer = make(168 * FOOT, 33 * FOOT, 10)
    assert set(read(answer, 10).stakes()) == {"A", "Z1", "L1"}
    assert len(read(answer, 6).stakes()) == 65


def test_a_mark_nowhere_is_refused() -> None:
    answer = own(case("ordinary"))
    next(mark for mark in answer["marks"] if mark["name"] == "mid Q1")["x"] = math.nan
    with pytest.raises(ValueError):
        level_svg(answer, 2, id="l")
