"""A wall's level top is one line, its joints are the drawing's; a typed limit is named where it is passed."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring.faces.build import build_html
from bowstring.faces.paper import paper_html
from bowstring.page.slab_panels import LEVEL
from helping import answer_to
from radius_wall import WALL


def grades(job: dict[str, Any]) -> dict[str, Any]:
    part = answer_to(job)["grades"]
    assert part is not None
    return part


def test_a_level_top_is_one_line_and_no_table_of_zeros() -> None:
    told = grades(WALL)
    assert told["conclusion"] == ["Top level all along, and across"] and told["rows"] == []
    answer = answer_to(WALL)
    assert "<table" not in build_html(answer, "grades").partition("concl")[2]  # type: ignore[arg-type]
    assert paper_html(answer).count('<section class="side') <= 4  # type: ignore[arg-type]


def test_one_zero_makes_a_walls_top_level_and_a_slope_asks_no_edge() -> None:
    assert grades({**WALL, "grade": {"slope": 0}})["conclusion"] == grades(WALL)["conclusion"]
    sloped = grades({**WALL, "grade": {"slope": 2, "high": "B"}})
    assert sloped["cross"] == 0 and sloped["rows"]
    walk = {**WALL, "width": "5 ft", "slab": {"thickness": "4 in"}, "grade": {"slope": 0}}
    assert answer_to(walk)["grades"] is None  # a slab's cross slope is 1.5, and its low edge is asked


@pytest.mark.parametrize(("more", "top"), [({"from": "100 ft"}, "100.00"), ({"instrument": "5 ft"}, "5.00 (5' 0\")")])
def test_a_level_or_a_reading_that_holds_all_along_is_told_once(more: dict[str, str], top: str) -> None:
    told = grades({**WALL, "grade": {"slope": 0, "cross": 0, **more}})
    assert told["rows"] == [] and told["levels"]["rows"][0] == ["Top of wall", "0", top]


def test_one_tap_fills_both_slopes() -> None:
    assert LEVEL["grade-slope"] == LEVEL["grade-cross"] == "0"


def test_panels_over_the_limit_that_was_typed_say_so_and_stand_last() -> None:
    """34 ft 0-3/4 in in 3 panels is 11 ft 4-1/4 in, in 4 it is 8 ft 6-1/8 in; at most 10 ft was typed."""
    joints = answer_to(WALL)["joints"]
    assert joints is not None
    assert [(one["count"], one["over"]) for one in joints["offers"]] == [(4, False), (3, True)]
    assert joints["offers"][1]["more"] == "11' 4-1/4\" outside, over your 10' 0\""
    assert build_html(answer_to(WALL), "joints").count("data-over") == 1  # type: ignore[arg-type]
    free = answer_to({**WALL, "joints": {}})["joints"]
    assert not any(one["over"] for one in free["offers"])


def test_nobody_saws_a_wall() -> None:
    page = build_html(answer_to(WALL), "joints")  # type: ignore[arg-type]
    assert "Joints as drawn" in page
    paper = paper_html(answer_to(WALL))  # type: ignore[arg-type]
    assert "Sawing" not in paper and "Base under" not in paper and "as drawn" in paper
    assert "Cut them" not in page and "Sawing" not in page and "silica" not in page
