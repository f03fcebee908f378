"""Keeping a sagitta square: the right picture for each way, with that level's numbers."""

from __future__ import annotations

import math
from typing import Any

import pytest

from bowstring.drawings.svg import SIZES
from bowstring.drawings.triangle import has_triangle, triangle_svg
from bowstring.words import say
from helping import about
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_cases import FOOT, SHAPES, case, own
from unit.drawings.drawing_reader import Read

WAYS = ("slide", "triangle", "square")


def rows_with(answer: dict[str, Any], way: str) -> list[dict[str, Any]]:
    """The levels that can be kept square in a way: a triangle isn't always at hand."""
    rows = [row for row in answer["halving"] if way != "triangle" or has_triangle(answer, row["level"])]
    assert len(rows) >= len(answer["halving"]) - 1
    return rows


def read(answer: dict[str, Any], level: int, way: str | None = None) -> Read:
    return Read(triangle_svg(answer, level, id="t", way=way))


@pytest.mark.parametrize("name", SHAPES)
@pytest.mark.parametrize("side", ["left", "right"])
def test_each_way_can_be_read_and_says_that_it_is_not_to_scale(name: str, side: str) -> None:
    """Nothing overlaps. Words: 58 mm is the print style's width for it; a phone of 360 pixels leaves 330. A point is
    1/72 inch."""
    answer = case(name, side=side)
    for way in WAYS:
        for row in rows_with(answer, way):
            with about(way, "level", row["level"]):
                readable(answer, row, way, side)


def readable(answer: dict[str, Any], row: dict[str, Any], way: str, side: str) -> None:
    """Assert that a drawing of one way is clear, on the right hand, and large enough on paper and on a phone."""
    drawing = read(answer, row["level"], way)
    assert_clear(drawing)
    assert say("draw.not_to_scale") in drawing.flowing_text()
    assert say("draw.not_to_scale") in drawing.described()[1]
    string = drawing.stakes()
    new, start = string[row["stakes"][0]][0], string["A"][0]
    assert new[1] < start[1] and (new[0] < start[0]) == (side == "right")
    left, _, right, _ = drawing.box
    smallest = min(SIZES.values()) / (right - left)
    assert smallest * 58 / 25.4 * 72 >= 8
    assert smallest * 330 >= 14


def test_long_numbers_stay_whole_and_inside() -> None:
    answer = own(case("ordinary"))
    length = "131' 11-15/16\""
    for row in answer["halving"]:
        row.update(half_shown=length, sagitta_shown=length, chord_shown=length, half_chord_shown=length)
        row["squaring"].update(along_shown=length, out_shown=length, long_side_shown=length)
    for measure in [*answer["checks"], *(measure for step in answer["steps"] for measure in step["measures"])]:
        measure["shown"] = length
    for level, way in ((level, way) for level in (1, 2, 3) for way in WAYS):
        drawing = read(answer, level, way)
        assert_clear(drawing)
        for text in drawing.all_text().split("\n"):
            assert ("131'" in text) == ("11-15/16" in text), text


def test_the_row_s_own_way_is_drawn() -> None:
    answer = case("ordinary")
    assert [row["squaring"]["way"] for row in answer["halving"]] == ["slide", "slide", "square"]
    answer = own(answer)
    answer["halving"][0]["squaring"]["way"] = "triangle"
    for level, way in enumerate(("triangle", "slide", "square"), 1):
        assert triangle_svg(answer, level, id="t") == triangle_svg(answer, level, id="t", way=way)


def test_sliding_shows_both_half_chords_and_the_sagitta() -> None:
    answer = case("ordinary")
    row = answer["halving"][1]
    texts = [words.text for words in read(answer, 2, "slide").words()]
    assert texts.count(row["half_chord_shown"]) == 2
    assert texts.count(row["half_shown"]) == 2
    assert texts.count(row["sagitta_shown"]) == 1
    assert say("draw.triangle.slide", half_chord=row["half_chord_shown"]) in " ".join(texts)
    assert {"A", "Q1", "M"} <= set(texts)


@pytest.mark.parametrize("name", ["ordinary", "greater", "flat", "right hand"])
def test_the_triangle_has_its_right_angle_at_the_middle(name: str) -> None:
    answer = own(case(name))
    row = answer["halving"][0]
    if name == "greater":  # a leg that doesn't reach the stake, as no real one does
        sides = {"along": 8 * FOOT, "out": 6 * FOOT, "long_side": 10 * FOOT}
        texts = {"along_shown": "8' 0\"", "out_shown": "6' 0\"", "long_side_shown": "10' 0\""}
        row["squaring"] |= {**sides, **texts, "whole": "3-4-5"}
    drawing = read(answer, 1, "triangle")
    text = drawing.flowing_text()
    squaring = row["squaring"]
    for key in ("along", "out", "long_side"):
        assert say(f"draw.triangle.{key}", shown=squaring[f"{key}_shown"]) in text
        assert squaring[f"{key}_shown"] in drawing.described()[1]
    assert say("draw.triangle.whole", whole="3-4-5") in text
    (x_a, y_a), (x_b, _) = drawing.stakes()["A"][0], drawing.stakes()["B"][0]
    long_side, legs = drawing.paths("arc")
    middle = legs[1]
    assert middle == pytest.approx(((x_a + x_b) / 2, y_a))
    assert legs[0] == long_side[0] and legs[3] == long_side[1]
    assert min(x_a, middle[0]) < legs[0][0] < max(x_a, middle[0]) and legs[0][1] == y_a
    assert legs[3][0] == middle[0]
    across = drawing.stakes()["M"][0]
    assert across[0] == middle[0]
    beyond = abs(across[1] - y_a) > abs(legs[3][1] - y_a)
    assert beyond == (row["sagitta"] > squaring["out"])


def test_a_leg_that_ends_at_the_stake_says_so() -> None:
    answer = own(case("ordinary"))
    row = answer["halving"][0]
    row["squaring"].update(out=row["sagitta"], out_shown=row["sagitta_shown"], whole=None)
    drawing = read(answer, 1, "triangle")
    assert_clear(drawing)
    assert say("draw.triangle.out.stake", name="M", shown=row["sagitta_shown"]) in drawing.flowing_text()
    assert "None" not in drawing.flowing_text() and "3-4-5" not in drawing.flowing_text()
    assert drawing.paths("arc")[0][1] == pytest.approx(drawing.stakes()["M"][0])


def test_a_square_s_corner_is_at_the_middle() -> None:
    drawing = read(case("ordinary"), 3, "square")
    (x_a, y_a), (x_b, _) = drawing.stakes()["A"][0], drawing.stakes()["Q1"][0]
    outline = next(path for path in drawing.paths("line") if len(path) == 7)
    assert outline[0] == pytest.approx(((x_a + x_b) / 2, y_a))
    assert case("ordinary")["halving"][2]["sagitta_shown"] in drawing.flowing_text()


def test_a_level_without_a_triangle() -> None:
    answer = case("semicircle")
    assert answer["halving"][3]["squaring"]["along"] is None
    assert not has_triangle(answer, 4) and has_triangle(answer, 3)
    with pytest.raises(KeyError):
        triangle_svg(answer, 4, id="t", way="triangle")
    for level, way in ((9, None), (1, "eye")):
        with pytest.raises(KeyError):
            triangle_svg(answer, level, id="t", way=way)


def test_after_something_else_was_found_the_step_s_numbers_stand() -> None:
    answer = case("ordinary", levels=2, got=[{"stake": "Q1", "sagitta": "1' 4-1/8\""}])
    row = answer["halving"][1]
    (half,) = {reading["shown"] for step in answer["steps"] for reading in step["readings"]
               if {reading["from"], reading["to"]} == {"A", "Q1"}}  # fmt: skip
    text = read(answer, 2, "slide").flowing_text()
    assert "1' 4-1/8\"" in text and row["half_chord_shown"] not in text
    assert say("draw.triangle.slide", half_chord=half) in text and say("draw.triangle.alone", name="Q1") in text
    answer = own(answer)
    for step in answer["steps"]:
        step["readings"] = []  # nothing says what the half chords read
    text = read(answer, 2, "slide").flowing_text()
    assert say("draw.triangle.slide.alike") in text and row["half_chord_shown"] not in text
    assert has_triangle(answer, 2)
    answer["halving"][1]["squaring"].update(out=row["sagitta"])  # a triangle made for the old sagitta
    assert not has_triangle(answer, 2)


def test_half_chords_that_differ_are_said_to_be_found() -> None:
    answer = case("ordinary", levels=2, got=[{"stake": "Q1", "half_chords": ["9' 10\"", "9' 11\""]}])
    text = read(answer, 2, "slide").flowing_text()
    assert say("draw.triangle.found", first="9' 10\"", second="9' 11\"") in text


def test_what_is_not_finite_is_refused() -> None:
    answer = own(case("ordinary"))
    answer["halving"][0]["squaring"]["along"] = math.nan
    with pytest.raises(ValueError):
        triangle_svg(answer, 1, id="t", way="triangle")
    answer["halving"][1]["sagitta"] = math.nan
    with pytest.raises(ValueError):
        triangle_svg(answer, 2, id="t", way="slide")
