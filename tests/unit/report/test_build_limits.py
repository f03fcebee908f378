"""What no board, no stake and no tape does: the build's own limits, and how they are told."""

from __future__ import annotations

from math import sqrt
from typing import Any

import pytest

from bowstring import BadJob, answer, answering
from bowstring.page.slab_asked import open_question
from form_jobs import WALK, WALL

PAD: dict[str, Any] = {
    **WALK, "arc": {"radius": "6 ft", "central_angle": "180"}, "width": "4 ft", "levels": 3, "joints": {},
    "grade": {"slope": 1, "high": "B", "low": "inside"},
}  # fmt: skip


def test_stakes_stand_no_closer_than_they_go_and_then_nothing_is_claimed_of_the_face() -> None:
    boards = answering(PAD)["boards"]  # type: ignore[arg-type]
    assert boards is not None
    for edge in boards["edges"]:
        straight = edge["gap"] ** 2 / (8 * edge["radius"])  # what straight pieces would miss
        if straight > 0.00635:
            assert "1/4 in" not in edge["reason"], edge
    inner = next(edge for edge in boards["edges"] if edge["edge"] == "inside")
    assert sqrt(8 * inner["radius"] * 0.00635) < inner["gap"] <= 0.3048  # 12 in: Beall, Masonry and Concrete, p. 56
    assert "common practice" in inner["reason"]


def test_a_wall_is_not_formed_with_boards_on_stakes() -> None:
    told = answer(WALL)  # type: ignore[arg-type]
    row = next(row for row in told["build"] if row["key"] == "boards")
    assert told["boards"] is None
    assert row["state"] == "near" and row["text"].startswith("Faces ")
    assert told["grades"] is not None and told["grades"]["base"] == []


def test_a_bare_hundred_on_a_tape_in_meters_is_no_thickness() -> None:
    job = {**WALK, "unit": "m", "slab": {"thickness": "100"}}
    with pytest.raises(BadJob, match="thick") as refused:
        answer(job)  # type: ignore[arg-type]
    assert refused.value.field == "slab.thickness"


def test_of_a_level_slab_no_end_is_asked_for() -> None:
    job = {**WALK, "grade": {"slope": 0}}
    fields = {"width": "5 ft", "edge": "outside", "slab-thickness": "4 in", "grade-slope": "0"}
    asked = [open_question(answering(job), {**fields, "grade-slope": text}) for text in ("0", "0.0 %", "2")]  # type: ignore[arg-type]
    assert asked == ["low", "low", "high"]
