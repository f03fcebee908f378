"""The story stick: every mark at its distance, every label at its mark, at any spacing."""

from __future__ import annotations

import math
import random
from typing import Any

import pytest

from bowstring.drawings.stick import stick_svg
from bowstring.words import say
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_cases import SHAPES, case, own
from unit.drawings.drawing_reader import Read


def with_marks(distances: list[float]) -> dict[str, Any]:
    answer = own(case("ordinary"))
    marks = [{"label": f"mark {i}", "distance": d, "shown": f"{d:.3f} m"} for i, d in enumerate(distances)]
    answer["stick"] = {"length": max(distances), "marks": marks}
    return answer


def mark_heights(read: Read) -> list[float]:
    """Heights of the lines across the strip, in the drawing's order."""
    return [path[0][1] for path in read.paths("arrow")]


@pytest.mark.parametrize("name", SHAPES)
def test_marks_are_to_scale_from_the_zero_end(name: str) -> None:
    answer = case(name)
    read = Read(stick_svg(answer, id="s"))
    assert_clear(read)
    outline = next(path for path in read.paths("arc"))
    top, bottom = min(y for _, y in outline), max(y for _, y in outline)
    distances = sorted(mark["distance"] for mark in answer["stick"]["marks"])
    expected = [top + (bottom - top) * distance / answer["stick"]["length"] for distance in distances]
    assert mark_heights(read) == pytest.approx(expected, abs=0.01)
    description = read.described()[1]
    for mark in answer["stick"]["marks"]:
        assert say("draw.stick.mark", label=mark["label"], shown=mark["shown"]) in description


@pytest.mark.parametrize("seed", range(8))
def test_labels_stay_with_their_marks_at_any_spacing(seed: int) -> None:
    dice = random.Random(seed)
    count = dice.randint(1, 45)
    distances = [dice.choice((0.5, dice.uniform(0, 1) ** 6)) for _ in range(count)]
    answer = with_marks(distances)
    read = Read(stick_svg(answer, id="s"))
    assert_clear(read)
    words = read.words()
    shown = {w.text: w.at[1] for w in words if "bd-word" in w.classes}
    ends = [path[-1] for path in read.paths("soft") if len(path) == 4]
    starts = [path[0] for path in read.paths("soft") if len(path) == 4]
    assert len(ends) == count + 1
    for mark in answer["stick"]["marks"]:
        index = sorted(answer["stick"]["marks"], key=lambda m: m["distance"]).index(mark)
        assert starts[index + 1][1] == pytest.approx(mark_heights(read)[index])
        assert ends[index + 1][1] == pytest.approx(shown[mark["label"]], abs=7)  # the line ends beside its own label
    heights = [shown[m["label"]] for m in sorted(answer["stick"]["marks"], key=lambda m: m["distance"])]
    assert heights == sorted(heights)
    assert len([w for w in words if "bd-number" in w.classes]) == count + 1


@pytest.mark.parametrize("bad", [math.nan, math.inf, -0.1, 1.6])
def test_a_mark_off_the_stick_is_refused(bad: float) -> None:
    answer = own(case("ordinary"))
    answer["stick"]["marks"][0]["distance"] = bad
    with pytest.raises(ValueError):
        stick_svg(answer, id="s")


def test_a_stick_of_the_drawing_s_numbers_says_when_they_no_longer_hold() -> None:
    answer = own(case("ordinary"))
    assert "off the arc" not in Read(stick_svg(answer, id="s")).flowing_text()
    next(stake for stake in answer["stakes"] if stake["name"] == "Q1")["miss"] = 0.02
    read = Read(stick_svg(answer, id="s"))
    assert_clear(read)
    assert say("draw.stick.stale", names="Q1") in read.flowing_text()
    assert say("draw.stick.stale", names="Q1") in read.described()[1]


def test_a_stick_without_marks_is_still_a_stick() -> None:
    answer = own(case("ordinary"))
    answer["stick"] = {"length": 0.0, "marks": []}
    assert say("draw.stick.zero") in Read(stick_svg(answer, id="s")).flowing_text()


def test_hostile_labels_stay_text() -> None:
    answer = with_marks([0.2, 1.0])
    answer["stick"]["marks"][0]["label"] = '<script>&"\x00'
    svg = stick_svg(answer, id="s")
    assert "<script" not in svg and "\x00" not in svg
    assert '<script>&"␀' in Read(svg).all_text()
