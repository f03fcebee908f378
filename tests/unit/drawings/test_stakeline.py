"""Which point is on the line, drawn: the line goes through it, and no word lies on another."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.drawings.stakeline import stake_line_svg
from bowstring.job.job import DRIVEN
from helping import answer_to
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_reader import Read

JOB: dict[str, Any] = {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 2}
OFF = {"offset": "1-1/2 in", "toward": "outside"}
SLAB = {"width": "5 ft", "edge": "outside", "board": {"kind": "2x4"}, "side": "left", "drawn_to": "face"}
KINDS: dict[str, dict[str, Any]] = {
    **{driven: {"driven": driven} for driven in DRIVEN},
    "a pin of a known size": {"driven": "pin", "diameter": "5/8 in"},
    "pins on a board's back": {"driven": "pin", "diameter": "3/4 in", **OFF, **SLAB},
    "pins past a board's back": {"driven": "pin", "diameter": "3/4 in", **OFF, "offset": "1-7/8 in", **SLAB},
    "stakes behind a board": {"driven": "board", **OFF},
    "hubs outside": {"driven": "hub", "offset": "4 ft", "toward": "outside"},
}


def drawn(name: str) -> tuple[dict[str, Any], Read]:
    answer = answer_to({**JOB, **KINDS[name]})
    return answer, Read(stake_line_svg(answer, id="p"))  # type: ignore[arg-type]


def boxes(read: Read) -> list[tuple[float, float]]:
    """Left and right of each thing that is drawn as a closed outline, in order."""
    return [(min(x for x, _ in path), max(x for x, _ in path)) for path in read.paths("string")]


def lines(read: Read) -> list[float]:
    """Where the plumb lines stand."""
    tall = [path for path in read.paths("arrow") if len(path) == 2 and abs(path[0][1] - path[1][1]) > 100]
    assert all(one[0] == other[0] for one, other in tall)
    return [path[0][0] for path in tall]


@pytest.mark.parametrize("name", KINDS)
def test_nothing_covers_anything_and_it_is_told_in_words(name: str) -> None:
    answer, read = drawn(name)
    assert_clear(read)
    assert answer["on_line"]["point"] in read.described()[1]


@pytest.mark.parametrize("driven", ["marked", "hub"])
def test_a_mark_and_a_tack_stand_over_the_middle(driven: str) -> None:
    _answer, read = drawn(driven)
    ((left, right),) = boxes(read)
    assert lines(read) == [(left + right) / 2]


def test_a_pin_stands_on_the_line_by_its_centre_or_by_the_edge_that_the_board_touches() -> None:
    answer, read = drawn("a pin of a known size")
    alone, edge, board = boxes(read)
    assert lines(read) == [(alone[0] + alone[1]) / 2, edge[0]] and board[1] == edge[0]
    assert answer["on_line"]["half_shown"] == '5/16"' and '5/16"' in read.flowing_text()


def test_a_board_stands_on_it_by_its_concrete_side_and_stakes_behind_one_by_their_face() -> None:
    _answer, read = drawn("board")
    board, stake = boxes(read)
    assert lines(read) == [board[0]] and board[1] == stake[0]
    _answer, read = drawn("stakes behind a board")
    board, stake = boxes(read)
    assert lines(read) == [stake[0]] and board[1] == stake[0]


@pytest.mark.parametrize(("name", "on"), [("pins on a board's back", 0.0), ("pins past a board's back", 0.5)])
def test_a_pin_that_holds_a_board_is_drawn_once_as_it_stands(name: str, on: float) -> None:
    _answer, read = drawn(name)
    pin, board = boxes(read)
    assert board[1] == pin[0], "the board at its edge"
    assert lines(read) == [pytest.approx(pin[0] + on * (pin[1] - pin[0]))]


@pytest.mark.parametrize("name", KINDS)
def test_it_fits_a_phone(name: str) -> None:
    """360 pixels, 24 of them margins on either side: its words are as large as words have to be there."""
    answer, _read = drawn(name)
    (least,) = re.findall(r'data-least-width="([0-9.]+)"', stake_line_svg(answer, id="p"))  # type: ignore[arg-type]
    assert float(least) <= 312
