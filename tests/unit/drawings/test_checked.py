"""The drawing of the checks: a name stands free beside its stake, however far the arc turns; crowded ones are fewer."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest

from bowstring.drawings.boxes import Box
from bowstring.drawings.checked import checked_svg
from bowstring.faces.checks import ordered
from helping import SAID, answer_to
from unit.drawings.drawing_boxes import assert_clear, boxes
from unit.drawings.drawing_reader import Read

ANGLES = (20, 90, 170, 200, 220, 260, 300)
LAYOUTS: dict[str, dict[str, Any]] = {
    **{f"{levels} rounds": {"levels": levels, "method": "halving"} for levels in (2, 3, 4)},
    "6 ft apart": {"spacing": "6 ft"},
}
FREE = 3.0
"""Drawing units between two names, so that a wider face than is reckoned with doesn't bring them together."""


def answer_at(angle: int, layout: str) -> Any:
    return answer_to({**SAID, "arc": {"radius": "20 ft", "central_angle": angle}, **LAYOUTS[layout]})


def named(read: Read) -> dict[str, Box]:
    return dict(boxes(read))


@pytest.mark.parametrize("angle", ANGLES)
@pytest.mark.parametrize("layout", LAYOUTS)
def test_names_stand_free_of_each_other(angle: int, layout: str) -> None:
    answer = answer_at(angle, layout)
    read = Read(checked_svg(answer, [], [], [], "", id="checked"))
    assert_clear(read)
    for (one, box), (other, second) in combinations(named(read).items(), 2):
        assert not box.overlaps(second, gap=FREE), (one, other)
    assert {"A", "B"} <= named(read).keys()


def test_where_there_is_room_all_are_named_and_where_there_is_little_every_second() -> None:
    def names(angle: int, layout: str) -> set[str]:
        return set(named(Read(checked_svg(answer_at(angle, layout), [], [], [], "", id="checked"))))

    seven = {"A", "R1", "Q1", "R2", "M", "R3", "Q2", "R4", "B"}
    assert names(220, "3 rounds") == seven
    for layout, most in (("4 rounds", 17), ("6 ft apart", 14)):
        told = answer_at(220, layout)
        (first,) = [row["from"] for row in told["checks"] if row["recommended"] and row["from"].startswith("mid ")][:1]
        ends = set(first.removeprefix("mid ").split("-"))
        assert ends <= names(220, layout)  # its sentence names them
        assert 6 <= len(names(220, layout)) < most


def test_a_stake_of_a_check_that_is_out_is_named_whatever_room_there_is() -> None:
    answer = answer_at(220, "4 rounds")
    row: Any = {**ordered(answer)[0], "from": "X3", "to": "B"}
    assert "X3" in named(Read(checked_svg(answer, [row], [], [], "", id="checked")))
