"""The slab as it is drawn for the build: no text on a text, on the right hand, with the job's numbers, of any shape."""

from __future__ import annotations

import math
import re
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring import answering
from bowstring.drawings.slab import slab_svg
from bowstring.drawings.slab_pages import SHEET
from bowstring.drawings.slab_shape import HALF_WIDE, MIDDLE, shape_of, sheet_room
from slab_jobs import WALK
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_reader import Read

PAGES = ("", "edges", "boards", "joints", "grades", "pour")
METRIC = {"unit": "mm", "width": "1500", "slab": {"thickness": "100 mm"}, "joints": {"every": "1500"}}
SHAPES: dict[str, dict[str, Any]] = {
    "walk": WALK,
    "right": {**WALK, "side": "right", "grade": {"slope": 3.3, "high": "A", "low": "outside"}},
    "flat": {**WALK, "arc": {"chord": "60 ft", "sagitta": "6 in"}, "edge": "inside"},
    "half": {**WALK, "arc": {"chord": "24 ft", "sagitta": "12 ft"}, "levels": 4},
    "more than half": {**WALK, "arc": {"chord": "20 ft", "sagitta": "17 ft"}, "edge": "centre", "levels": 4},
    "nine tenths": {**WALK, **METRIC, "arc": {"chord": "9.27 m", "sagitta": "29 m"}, "unit": "m", "width": "1.5 m",
                    "joints": {}},
    "metric": {**WALK, **METRIC, "arc": {"chord": "12 m", "sagitta": "4.1 m"}, "levels": 4},
    "hubs": {**WALK, "offset": "2 ft", "toward": "outside", "levels": 5},
    "tapers": {**WALK, "slab": {"thickness": "4 in", "end_width": "8 ft"}},
    "curb": {**WALK, "width": "6 in"},
    "pad": {**WALK, "arc": {"radius": "10 ft", "chord": "18 ft"}, "width": "9 ft"},
    "apron": {**WALK, "slab": {"thickness": "4 in", "apron": {"from": "12 ft", "to": "22 ft", "thickness": "6 in"}}},
    "no grades": {key: value for key, value in WALK.items() if key != "grade"},
    "too steep": {**WALK, "grade": {"slope": 5.5, "high": "B", "low": "inside", "stops": True}},
    "nothing said": {key: value for key, value in WALK.items() if key not in ("width", "edge", "slab", "grade")},
    "long names": {**WALK, "ends": {"A": "the nail in the root of the old oak", "B": "the corner of the pump house"}},
}  # fmt: skip


@cache
def told(name: str) -> Any:
    return answering(SHAPES[name])


def drawn(name: str, page: str = "") -> Read:
    return Read(slab_svg(told(name), page, id="slab"))


@pytest.mark.parametrize("name", SHAPES)
@pytest.mark.parametrize("page", PAGES)
def test_every_text_is_clear_and_the_picture_is_as_wide_as_a_phone(name: str, page: str) -> None:
    read = drawn(name, page)
    assert_clear(read)
    left, top, right, bottom = read.box
    assert right - left == pytest.approx(360)
    assert bottom - top <= 300


@settings(deadline=None, max_examples=30)
@given(
    chord=st.floats(2, 60),
    part=st.floats(0.01, 0.95),
    share=st.floats(0.02, 0.95),
    edge=st.sampled_from(["outside", "inside", "centre"]),
    side=st.sampled_from(["left", "right"]),
    page=st.sampled_from(PAGES),
)
def test_any_slab_is_drawn_clear(chord: float, part: float, share: float, edge: str, side: str, page: str) -> None:
    half = part * math.pi
    radius = chord / 2 / math.sin(half)
    width = share * radius if edge == "outside" else 1.9 * share * radius if edge == "centre" else share * radius
    job = {
        **WALK, "unit": "m", "arc": {"chord": f"{chord:.6f} m", "radius": f"{radius:.6f} m"}, "width": f"{width:.6f} m",
        "joints": {}, "edge": edge, "side": side,
    }  # fmt: skip
    if half > math.pi / 2:
        job["arc"] = {"chord": f"{chord:.6f} m", "sagitta": f"{radius * (1 - math.cos(half)):.6f} m"}
    assert_clear(Read(slab_svg(answering(job), page, id="slab")))


@pytest.mark.parametrize("name", [name for name in SHAPES if name != "nothing said"])
@pytest.mark.parametrize("high", [70, 90, 110, 150])
def test_on_a_sheet_it_is_as_wide_as_that_and_every_text_is_clear(name: str, high: int) -> None:
    """688 pixels at 0.8 a unit. An arc that is flat enough to have the width takes more of it than on a phone."""
    read = Read(slab_svg(told(name), SHEET, id="slab", room=sheet_room(688, high)))
    assert_clear(read)
    left, _top, right, _bottom = read.box
    assert right - left == pytest.approx(860)
    stakes = {mark: at for mark, (at, *_) in read.stakes().items()}
    if name == "walk":
        assert "outer edge" not in read.all_text() and abs(stakes["B"][0] - stakes["A"][0]) > (
            450 if high > 90 else 250
        )


def test_a_stands_where_every_other_drawing_has_it_and_the_slab_lies_toward_the_center() -> None:
    for name, turn in (("walk", 1), ("right", -1)):
        places = {mark: at for mark, (at, *_) in drawn(name, "edges").stakes().items()}
        assert (places["B"][0] - places["A"][0]) * turn > 200
        assert places["A in"][1] > places["A"][1] and places["M in"][1] > places["M"][1]
        assert (places["A in"][0] - places["A"][0]) * turn > 0  # square to the curve: toward its center


def test_it_is_to_scale_where_that_can_be_seen_and_says_so_where_it_isnt() -> None:
    shape = shape_of(told("walk"))
    assert shape.true
    assert shape.line == pytest.approx(HALF_WIDE / math.sin(0.7949616 / 2), rel=1e-3)
    assert -shape.inside[0] / shape.line == pytest.approx(5 / 62, rel=0.05)
    for name in ("flat", "curb", "nine tenths"):
        assert not shape_of(told(name)).true
        assert "not to scale" in drawn(name).all_text()
    assert "not to scale" not in drawn("walk").all_text()


@pytest.mark.parametrize("name", SHAPES)
def test_both_edges_of_a_slab_have_one_center_and_the_inner_one_has_a_radius(name: str) -> None:
    shape = shape_of(told(name))
    if not shape.known:
        return
    assert shape.line + min(shape.inside) > 0
    for share in (-1.0, -0.3, 0.6):
        (x, y), (x2, y2) = shape.on("outside", share), shape.on("inside", share)
        out = shape.outward(share)
        length = math.hypot(x - x2, y - y2)
        assert ((x - x2) / length, (y - y2) / length) == pytest.approx(out, abs=1e-6)
    assert max(abs(x - MIDDLE) for side in ("outside", "inside") for x, _y in shape.samples(side)) <= HALF_WIDE + 0.01


def test_each_page_shows_its_own_numbers() -> None:
    answer = told("walk")
    first = drawn("walk").all_text()
    assert "outer edge R 62' 0\"" in first and "inner edge R 57' 0\"" in first and "\n5' 0\"" in first
    assert "lamp post" in first and "gate pier" in first
    assert "2% up to B" in first and "1.5% in" in first
    edges = drawn("walk", "edges").all_text()
    assert "stick 5' 0\"" in edges and "string 44' 1-1/2\"" in edges and "7' 8-7/8\" both" in edges
    joints = drawn("walk", "joints")
    assert [one.text for one in joints.words() if "bd-in" in one.classes] == [str(number) for number in range(1, 10)]
    assert answer["joints"]["inside_shown"] in joints.all_text()
    grades = drawn("walk", "grades").all_text()
    assert '11-3/8"' in grades and '10-1/2"' in grades and "outer 1.92% up to B" in grades
    assert "inner 2.09% up to B" in grades
    pour = drawn("walk", "pour").all_text()
    assert "1/2" in pour and "3/4" in pour
    assert '5-1/8"' in drawn("walk", "boards").all_text()


def test_the_panel_that_is_shown_is_as_long_as_is_told() -> None:
    """With an apron from 12 to 22 ft of 49.2876 the longest are joint 3 to 4 and 4 to 5: 5 ft of outer form."""
    form = 62 * 2 * math.asin(24 / 62)
    svg = slab_svg(told("apron"), "joints", id="slab")
    found = re.search(r'bd-strong" d="M(-?[0-9.]+),', svg)
    assert found is not None
    start = float(found[1])
    shape = shape_of(told("apron"))
    xs = [shape.on("outside", 2 * at / form - 1)[0] for at in (12, 17)]
    assert min(abs(start - x) for x in xs) < 0.1


def test_a_width_that_changes_is_told_at_both_ends_and_nowhere_between() -> None:
    texts = [one.text for one in drawn("tapers").words()]
    assert "5' 0\"" in texts and "8' 0\"" in texts
    assert not [text for text in texts if "R -" in text]
    assert "stick 5' 9\"" in drawn("tapers", "edges").all_text()  # at Q1, a quarter of the way from 5 to 8 feet


def test_grades_that_are_stopped_have_no_height() -> None:
    read = drawn("too steep", "grades")
    assert told("too steep")["grades"]["stop"]
    assert not [one.text for one in read.words() if '"' in one.text]


def test_where_nothing_is_said_the_line_stands_alone_and_asks() -> None:
    answer = told("nothing said")
    both = Read(slab_svg(answer, "", ("outside", "inside"), id="slab")).all_text()
    assert "this side?" in both and "or this?" in both
    one = Read(slab_svg(answer, "", ("inside",), id="slab")).all_text()
    assert "how wide?" in one and "this side?" not in one
