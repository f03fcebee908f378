"""A tape from the middle of a string to the stake over it has to see how far off that stake stands."""

from __future__ import annotations

from math import hypot
from typing import Any

import pytest

from helping import answer_to

ARC = {"radius": "55 ft", "chord": "38 ft"}
JOBS: dict[str, dict[str, Any]] = {
    "ordinates": {"method": "ordinates", "arc": ARC},
    "every two feet": {"method": "ordinates", "arc": ARC, "spacing": "2 ft"},
    "two tapes": {"method": "tapes", "arc": ARC},
    "tangents": {"method": "tangent", "arc": ARC},
    "chords produced": {"method": "produced", "arc": ARC},
    "a bent one": {"method": "ordinates", "arc": {"radius": "12 ft", "chord": "22 ft"}},
}


@pytest.mark.parametrize("name", JOBS)
def test_what_a_stake_is_off_shows_on_the_tape(name: str) -> None:
    job = {"bowstring": 1, "side": "left", "drawn_to": "face", **JOBS[name]}
    answer = answer_to(job)
    at = {mark["name"]: (mark["x"], mark["y"]) for mark in answer["marks"]}
    center = (answer["staked"]["chord"] / 2, answer["staked"]["sagitta"] - answer["staked"]["radius"])
    alternates = [check for check in answer["checks"] if check["kind"] == "alternate"]
    assert alternates, "where stakes stand evenly there are some"
    for check in alternates:
        (x0, y0), (x, y) = at[check["from"]], at[check["to"]]
        away = hypot(x - center[0], y - center[1])
        moved = (x + 0.01 * (x - center[0]) / away, y + 0.01 * (y - center[1]) / away)
        seen = hypot(moved[0] - x0, moved[1] - y0) - hypot(x - x0, y - y0)
        assert abs(seen) > 0.8 * 0.01, check["to"]
