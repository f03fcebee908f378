"""A line of several pieces as it is drawn: to scale, never mirrored, no text on a text, its staked arc told apart."""

from __future__ import annotations

import math
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring import answering
from bowstring.drawings.line_shape import on_run, shape_of
from bowstring.drawings.lined import HIGH, WIDE, lined_svg
from line_jobs import CREEK, SHAPES, arc, straight
from slab_jobs import WALK
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_reader import Read

PAGES = ("", "line", "edges", "boards", "joints", "grades", "pour")


@cache
def told(name: str) -> Any:
    return answering(SHAPES[name])


def drawn(name: str, page: str = "") -> Read:
    return Read(lined_svg(told(name), page, id="line"))


@pytest.mark.parametrize("name", SHAPES)
@pytest.mark.parametrize("page", PAGES)
def test_every_text_is_clear_and_the_picture_is_as_wide_as_a_phone(name: str, page: str) -> None:
    read = drawn(name, page)
    assert_clear(read)
    left, top, right, bottom = read.box
    assert right - left == pytest.approx(WIDE)
    assert bottom - top <= HIGH + 90


@pytest.mark.parametrize("name", SHAPES)
def test_on_paper_it_is_clear_too(name: str) -> None:
    assert_clear(Read(lined_svg(told(name), id="line", wide=680.0, high=118.0)))


PIECE = st.one_of(
    st.builds(lambda length: straight(f"{length:.3f} m"), st.floats(0.5, 60)),
    st.builds(
        lambda radius, angle, turn: arc(f"{radius:.3f} m", f"{angle:.3f}", turn),
        st.floats(3, 60), st.floats(2, 170), st.sampled_from(["left", "right"]),
    ),
)  # fmt: skip


@settings(deadline=None, max_examples=30)
@given(before=st.lists(PIECE, max_size=4), after=st.lists(PIECE, max_size=4), page=st.sampled_from(PAGES))
def test_any_line_is_drawn_clear(before: list[dict[str, Any]], after: list[dict[str, Any]], page: str) -> None:
    job = {**CREEK, "unit": "m", "width": "1.5 m", "slab": {"thickness": "100 mm"}}
    line = [*before, arc("9 m", "50", "left"), *after]
    assert_clear(Read(lined_svg(answering({**job, "line": line}), page, id="line")))  # type: ignore[typeddict-unknown-key]


@pytest.mark.parametrize("name", SHAPES)
def test_the_start_stands_left_of_the_end_and_a_turn_to_the_left_goes_up_as_somebody_walks(name: str) -> None:
    shape = told(name)["lined"]["shape"]
    paper, runs = shape_of(shape, WIDE - 68, HIGH), shape["line"]
    first, last = paper.place(runs[0], 0.0), paper.place(runs[-1], runs[-1]["length"])
    assert last[0] >= first[0] - 1e-6
    for run in runs:
        (ax, ay), (bx, by) = paper.ahead(run, 0.0), paper.ahead(run, run["length"] / 100)
        turned = ax * by - ay * bx  # y runs down on paper: above 0 is a turn to the right
        assert turned * run["curvature"] <= 0 and (turned != 0) == (run["curvature"] != 0)


@pytest.mark.parametrize("name", SHAPES)
def test_it_is_to_scale_in_every_direction_and_the_runs_end_where_they_end(name: str) -> None:
    shape = told(name)["lined"]["shape"]
    paper = shape_of(shape, WIDE - 68, HIGH)
    for run in [*shape["line"], *shape["left"], *shape["right"]]:
        start, end = run["start"], run["end"]
        assert on_run(run, run["length"]) == pytest.approx((end["x"], end["y"]), abs=1e-9)
        apart = math.dist(paper.place(run, 0.0), paper.place(run, run["length"]))
        assert apart == pytest.approx(paper.scale * math.hypot(end["x"] - start["x"], end["y"] - start["y"]), abs=1e-9)
    xs, ys = zip(*paper.samples(shape["line"]), strict=True)
    assert max(xs) - min(xs) <= WIDE - 68 + 1e-6 and max(ys) - min(ys) <= HIGH + 1e-6


def test_a_and_b_are_the_staked_arcs_ends_and_the_lines_own_are_named_in_words() -> None:
    for name, at in (("creek", 2), ("second arc", 3)):
        answer = told(name)
        paper, runs = shape_of(answer["lined"]["shape"], WIDE - 68, HIGH), answer["lined"]["shape"]["line"]
        stakes = drawn(name).stakes()
        assert stakes["A"][0] == pytest.approx(paper.place(runs[at - 1], 0.0), abs=0.01)
        assert stakes["B"][0] == pytest.approx(paper.place(runs[at], 0.0), abs=0.01)
        assert {"A", "B", "start", "end"} <= {words.text for words in drawn(name).words()}
    assert not {"start", "end"} & {words.text for words in drawn("one arc").words()}


def test_each_piece_has_its_number_and_only_the_staked_arc_is_the_strong_line() -> None:
    svg = lined_svg(told("creek"), id="line")
    assert {"1", "2", "3", "4"} <= {words.text for words in Read(svg).words()}
    assert svg.count("bd-line bd-arrow bd-strong") == 1
    assert svg.count("bd-line bd-arrow") == 4


def test_a_kink_has_a_filled_square_and_a_tangent_join_none() -> None:
    assert lined_svg(told("creek"), id="line").count("bd-stake bd-new") == 0
    assert lined_svg(told("kink"), id="line").count("bd-stake bd-new") == 1
    assert lined_svg(told("kinks"), id="line").count("bd-stake bd-new") == 2


def test_a_slab_is_tinted_where_there_is_one_that_can_be_seen() -> None:
    for name in ("creek", "serpentine", "left edge"):
        assert 'class="bd-slab"' in lined_svg(told(name), id="line"), name
    for name in ("nothing said", "long"):
        assert 'class="bd-slab"' not in lined_svg(told(name), id="line"), name


def test_the_page_of_the_edges_says_which_is_which() -> None:
    assert {"left edge", "right edge"} <= {words.text for words in drawn("creek", "edges").words()}
    assert "left edge" not in drawn("creek").all_text()


def test_the_bar_is_a_round_length_in_the_jobs_own_unit() -> None:
    assert "10 ft" in drawn("creek").all_text()
    assert "10 m" in drawn("serpentine").all_text() or "5 m" in drawn("serpentine").all_text()


def test_an_arc_alone_has_no_such_drawing() -> None:
    with pytest.raises(ValueError, match="several pieces"):
        lined_svg(answering(WALK), id="line")  # type: ignore[arg-type]
