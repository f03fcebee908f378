"""The places along both forms of a line: where they are and how high, against polar sums of the test's own."""

from __future__ import annotations

from math import radians
from typing import Any

import pytest

from bowstring.units.tape import make_tape
from helping import answer_to
from lined_jobs import CREEK, KINKED, ONE_ARC

FOOT = 0.3048
TAPE = make_tape("ft-in", None)
LEFT = (20.0, 28 * radians(70), 27 * radians(40), 8.5)
"""Of the creek walk, feet: its left edge is inside its arc to the left and outside its arc to the right."""
RIGHT = (20.0, 34 * radians(70), 21 * radians(40), 8.5)
LINE = (20.0, 31 * radians(70), 24 * radians(40), 8.5)
COUNTS = (4, 7, 4, 2)


def shown(feet: float) -> str:
    return TAPE.show_running(feet * FOOT)


def places(job: dict[str, Any]) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = answer_to(job)["lined_sheet"]["places"]
    return found


def test_the_creek_walks_joints_and_tops_by_hand() -> None:
    """2% along the middle, 1.5% down to the left over 6 ft: each edge climbs evenly along each piece."""
    made = [place for place in places(CREEK) if place["kind"] == "joint"]
    found, before, left, right = [], 0.0, 0.0, 0.0
    for on, one, other, count in zip(LINE, LEFT, RIGHT, COUNTS, strict=True):
        for part in range(1, count + 1):
            share = part / count
            found.append((left + one * share, right + other * share, 0.02 * (before + on * share)))
        before, left, right = before + on, left + one, right + other
    assert len(made) == len(found) - 1 == 16
    for number, (place, (on_left, on_right, top)) in enumerate(zip(made, found, strict=False), 1):
        assert place["joint"] == number
        assert (place["left"]["along_shown"], place["right"]["along_shown"]) == (shown(on_left), shown(on_right))
        assert float(place["left"]["feet_shown"]) == pytest.approx(top, abs=0.0051)
        assert float(place["right"]["feet_shown"]) == pytest.approx(top + 0.015 * 6, abs=0.0051)


def test_an_arcs_middle_has_a_place_unless_a_joint_stands_on_it() -> None:
    """Seven panels of arc 2 leave its middle free; the second of four joints of arc 3 stands on its own."""
    (middle,) = [place for place in places(CREEK) if place["kind"] == "middle"]
    assert middle["left"]["along_shown"] == shown(20 + 28 * radians(35))
    assert middle["right"]["along_shown"] == shown(20 + 34 * radians(35))


@pytest.mark.parametrize("job", [CREEK, KINKED, ONE_ARC], ids=["creek", "kinked", "one arc"])
def test_places_are_those_of_the_pages(job: dict[str, Any]) -> None:
    answer = answer_to(job)
    tables = {table["key"]: table["rows"] for page in answer["lined"]["pages"] for table in page["tables"]}
    joints = [place for place in places(job) if place["kind"] in ("joint", "end")]
    assert [[one["left"]["along_shown"], one["right"]["along_shown"]] for one in joints] == [
        row[1:3] for row in tables["joints"]
    ]
    ends = [place for place in places(job) if place["begins"] or place["kind"] in ("start", "end")]
    tops = [row[1:] for row in tables["tops"] if "mid-arc" not in row[0]]
    assert [[spot[key] for spot in (one["left"], one["right"]) for key in ("top_shown", "feet_shown")]
            for one in ends] == tops  # fmt: skip
    assert [place["begins"] for place in ends if place["begins"]] == list(range(2, len(job["line"]) + 1))


def test_joints_that_stop_leave_the_joins() -> None:
    told = places({**CREEK, "joints": {"panels": 4}})
    assert [place["kind"] for place in told] == ["start", "join", "middle", "join", "middle", "join", "end"]
    assert all(place["joint"] == 0 for place in told)


def test_tops_that_nobody_said_are_told_nowhere() -> None:
    told = places({key: value for key, value in CREEK.items() if key != "grade"})
    assert told and all(place["left"]["along_shown"] and not place["left"]["top_shown"] for place in told)
