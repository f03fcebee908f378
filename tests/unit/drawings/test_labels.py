"""Label places: nothing on top of anything, at any crowding, and nothing dropped."""

from __future__ import annotations

import math
import random
from itertools import combinations, pairwise

import pytest

from bowstring.drawings.boxes import Box, stack, text_box, text_width, wrap
from bowstring.drawings.labels import FAINT, LINE, Ground, Label, spread


def test_boxes_that_touch_do_not_overlap() -> None:
    one = Box(0, 0, 10, 10)
    assert not one.overlaps(Box(10, 0, 20, 10))
    assert one.overlaps(Box(9.9, 9.9, 20, 20))
    assert one.overlaps(Box(12, 0, 20, 10), gap=3)
    assert one.overlaps(Box(2, 2, 3, 3)) and Box(2, 2, 3, 3).overlaps(one)


@pytest.mark.parametrize(
    ("segment", "crosses"),
    [
        (((-5, 5), (15, 5)), True),
        (((-5, -5), (15, 15)), True),
        (((2, 2), (3, 3)), True),
        (((-5, 0), (15, 0)), False),  # along an edge
        (((-5, 11), (15, 11)), False),
        (((-1, 5), (-0.5, 5)), False),
        (((-4, 3), (5, -5)), False),  # past a corner
        (((5, 5), (5, 20)), True),
    ],
)
def test_a_segment_crosses_a_box(segment: tuple[tuple[float, float], tuple[float, float]], crosses: bool) -> None:
    assert Box(0, 0, 10, 10).crosses(segment) is crosses
    assert Box(0, 0, 10, 10).crosses((segment[1], segment[0])) is crosses


def test_crossing_agrees_with_many_points_on_the_segment() -> None:
    """The clipping against plain sampling; cuts shorter than the sampling step are left out."""
    dice = random.Random(4)
    box, hits = Box(-3.0, -2.0, 5.0, 4.0), 0
    for _ in range(400):
        (x, y), (x2, y2) = ((dice.uniform(-10, 10), dice.uniform(-10, 10)) for _ in range(2))
        inside = any(
            box.left < x + (x2 - x) * t / 500 < box.right and box.top < y + (y2 - y) * t / 500 < box.bottom
            for t in range(501)
        )
        hits += inside
        if inside:
            assert box.crosses(((x, y), (x2, y2)))
        else:
            shrunk = Box(box.left + 0.1, box.top + 0.1, box.right - 0.1, box.bottom - 0.1)
            assert not shrunk.crosses(((x, y), (x2, y2)))
    assert 50 < hits < 350


def test_widths_add_up_and_unknown_signs_are_taken_wide() -> None:
    assert text_width("WQ17", "name") == pytest.approx(15 * (1.103 + 0.850 + 2 * 0.696), abs=0.2)
    assert text_width("東", "name") >= 15
    box = text_box("M", "name", (10.0, 20.0), "end")
    assert box.right == 10.0 and box.top < 20.0 < box.bottom


def crowd(count: int, seed: int) -> list[Label]:
    dice = random.Random(seed)
    labels = []
    for index in range(count):
        turn = dice.uniform(0, 2 * math.pi)
        spot = (dice.uniform(0, 120), dice.uniform(0, 60))
        labels.append(Label(f"W{index}", "name", [spot], (math.cos(turn), math.sin(turn))))
    return labels


@pytest.mark.parametrize("seed", range(6))
def test_no_label_covers_another_however_crowded(seed: int) -> None:
    ground = Ground()
    wall = Box(20, 20, 60, 30)
    ground.take_box(wall)
    ground.take_lines([(0.0, 60.0), (120.0, 0.0)])
    labels = crowd(60, seed)
    placed = [ground.place(label) for label in labels]
    assert [one.label for one in placed] == labels
    for one, other in combinations([wall, *(one.box for one in placed)], 2):
        assert not one.overlaps(other)
    for one in placed:
        again = text_box(one.label.text, one.label.kind, one.at)
        assert max(abs(a - b) for a, b in zip(vars(again).values(), vars(one.box).values(), strict=True)) < 0.02


def test_a_hundred_labels_on_one_point_all_find_a_place() -> None:
    ground = Ground()
    placed = [ground.place(Label(f"Y{index}", "name", [(0.0, 0.0)], (0.0, -1.0))) for index in range(100)]
    assert not any(one.box.overlaps(other.box) for one, other in combinations(placed, 2))


def test_a_label_far_from_its_point_has_a_line_to_it() -> None:
    ground = Ground()
    near = ground.place(Label("M", "name", [(0.0, 0.0)], (0.0, -1.0)))
    assert near.leader is None
    far = ground.place(Label("Q1", "name", [(0.0, 0.0)], (0.0, -1.0)))
    gap = math.dist(far.box.nearest((0.0, 0.0)), (0.0, 0.0))
    assert (far.leader is not None) == (gap > 9 + 7 / 2)
    ground.take_box(Box(-80, -80, 80, 80))
    forced = ground.place(Label("Q2", "name", [(0.0, 0.0)], (0.0, -1.0)))
    assert forced.leader is not None
    assert math.dist(forced.leader[0], (0.0, 0.0)) < 10
    assert forced.box.nearest(forced.leader[1]) == pytest.approx(forced.leader[1])


def test_labels_keep_off_lines_while_there_is_room() -> None:
    ground = Ground()
    line = ((-50.0, -12.0), (50.0, -12.0))
    ground.take_lines(line)
    placed = ground.place(Label("R1", "name", [(0.0, 0.0)], (0.0, -1.0)))
    assert not placed.box.crosses(line)


def test_words_that_belong_together_share_a_spot_or_none() -> None:
    spots = [(0.0, 0.0), (0.0, 40.0)]
    pair = [Label("sagitta", "number", spots, (-1.0, 0.0)), Label("5' 0\"", "number", spots, (1.0, 0.0))]
    ground = Ground()
    ground.take_box(Box(4, -5, 30, 5))
    both = ground.beside(pair)
    assert both is not None
    assert both[0].at[1] == both[1].at[1] > 30
    ground.take_lines([(20.0, -100.0), (20.0, 100.0)])
    assert ground.beside(pair) is None


def test_a_faint_line_may_run_behind_words_that_have_no_other_place() -> None:
    pair = [Label("sagitta", "number", [(0.0, 0.0)], (-1.0, 0.0)), Label("5'", "number", [(0.0, 0.0)], (1.0, 0.0))]
    ground = Ground()
    ground.take_lines([(-100.0, 0.0), (100.0, 0.0)], FAINT)
    assert ground.beside(pair) is None and ground.beside(pair, LINE) is not None
    ground = Ground()
    ground.take_lines([(-100.0, 0.0), (100.0, 0.0)])
    assert ground.beside(pair, LINE) is None


def test_a_label_in_lines_stands_in_its_box_with_no_length_broken() -> None:
    text = "long side 39' 10-7/8\""
    assert stack(text, "number", 1e9) == [text]
    assert stack(text, "number", 100.0) == ["long side", "39' 10-7/8\""]
    assert stack(text, "number", 1.0) == ["long side", "39' 10-7/8\""]
    placed = Ground().place(Label(text, "number", [(0.0, 0.0)], (1.0, 0.0), 5.0, 100.0))
    x, y = placed.at
    lines = [text_box(line, "number", (x, y + 1.25 * 14 * index)) for index, line in enumerate(placed.label.lines)]
    assert not lines[0].overlaps(lines[1])
    both = lines[0].join(lines[1])
    assert max(abs(a - b) for a, b in zip(vars(both).values(), vars(placed.box).values(), strict=True)) < 0.02


def test_the_same_labels_always_get_the_same_places() -> None:
    runs = []
    for _ in range(2):
        ground = Ground()
        runs.append([ground.place(label).at for label in crowd(40, 1)])
    assert runs[0] == runs[1]


def test_spread_keeps_order_and_distance_and_moves_no_more_than_needed() -> None:
    assert spread([0.0, 50.0, 100.0], 20.0) == [0.0, 50.0, 100.0]
    assert spread([10.0, 10.0], 20.0) == [0.0, 20.0]
    assert spread([], 20.0) == []
    dice = random.Random(9)
    for _ in range(50):
        places = sorted(dice.choice((0.0, dice.uniform(0, 100))) for _ in range(dice.randint(1, 25)))
        found = spread(places, 7.0)
        assert all(after - before >= 7.0 - 1e-9 for before, after in pairwise(found))
        assert sum(found) == pytest.approx(sum(places), abs=1e-6)  # least squares: no drift up or down


def test_lines_are_broken_within_the_width_and_nothing_is_lost() -> None:
    text = "the north-east corner of the pump house, where the fence begins"
    lines = wrap(text, "word", 150.0)
    assert len(lines) > 2 and " ".join(lines) == text
    assert all(text_width(line, "word") <= 150.0 for line in lines)
    long = wrap("x" * 90, "word", 100.0)
    assert "".join(long) == "x" * 90 and all(text_width(line, "word") <= 100.0 for line in long)
    assert wrap("", "word", 50.0) == [""]


@pytest.mark.parametrize(
    "length", ["9' 10-7/8\"", "40 ft 6 1/2 in", "12.350 m", "12350 mm", '6 ½"', "40' 6 1/2\"", "0.54 ft"]
)
def test_a_length_is_never_cut_in_two(length: str) -> None:
    for width in range(130, 400, 7):
        assert any(
            length in line
            for line in wrap(f"Slide the tip until both half chords read {length} then stop", "word", width)
        )
