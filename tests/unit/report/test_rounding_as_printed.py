"""What rounding costs is the cost of every number as it is printed: angles to the second, and what sets the ends."""

from __future__ import annotations

import re
from math import cos, hypot, radians, sin
from typing import Any

import pytest

from helping import answer_to

MARK = 0.005


def to_mark(length: float) -> float:
    return round(length / MARK) * MARK


def off_arc(told: dict[str, Any], x: float, y: float) -> float:
    """How far a place is off the staked circle, outward; its centre lies under the chord's middle."""
    arc = told["staked"]
    return hypot(x - arc["chord"] / 2, y - (arc["sagitta"] - arc["radius"])) - arc["radius"]


def miss_of(told: dict[str, Any], name: str) -> float:
    return next(row["miss"] for row in told["rounding"]["stakes"] if row["name"] == name)


def seconds_of(text: str) -> int:
    whole, minutes, seconds = map(int, re.fullmatch(r"(\d+)°(\d+)'(\d+)\"", text).groups())  # type: ignore[union-attr]
    return whole * 3600 + minutes * 60 + seconds


def test_angles_are_turned_to_the_second_that_is_printed() -> None:
    """Coordinates from A, set on B, on a curve of 3 km: half a second is 3.6 mm at 1.5 km."""
    arc = {"radius": 3000.0, "central_angle": 37.7}
    told = answer_to({"unit": "m", "arc": arc, "method": "coordinates", "levels": 4, "tape": {"length": 3000}})
    turned = 0.0
    for step in told["steps"]:
        if step["stake"] is None:
            continue
        (angle,) = (row for row in step["measures"] if "angle" in row)
        (taped,) = (row for row in step["measures"] if "distance" in row)
        printed = seconds_of(angle["shown"]) / 3600
        assert abs(printed - angle["angle"]) <= 0.5001 / 3600
        length = to_mark(taped["distance"])
        place = length * cos(radians(printed)), length * sin(radians(printed))
        exact = off_arc(told, length * cos(radians(angle["angle"])), length * sin(radians(angle["angle"])))
        miss = off_arc(told, *place)
        assert miss_of(told, step["stake"]) == pytest.approx(miss, abs=1e-7)
        turned = max(turned, abs(miss - exact))
    assert turned > 0.002  # what nobody was told before


def test_ends_from_a_corner_stand_where_the_printed_tangent_puts_them() -> None:
    """Both ends along their straights by the same printed length: each off by its rest, along the tangent; halving then
    sets M from their string."""
    told = answer_to({"unit": "m", "arc": {"radius": 12.0, "central_angle": 57.3}, "levels": 1, "start": "corner"})
    half = radians(57.3) / 2
    tangent, chord = told["arc"]["tangent_length"], told["arc"]["chord"]
    out = to_mark(tangent) - tangent  # farther from the corner
    a = (-out * cos(half), -out * sin(half))
    assert miss_of(told, "A") == pytest.approx(off_arc(told, *a), abs=1e-9)
    sagitta = to_mark(told["halving"][0]["sagitta"])
    assert miss_of(told, "M") == pytest.approx(off_arc(told, chord / 2, a[1] + sagitta), abs=1e-9)
    assert abs(out) > 1e-4


def test_an_end_from_a_straight_stands_where_its_two_printed_legs_put_it() -> None:
    told = answer_to({"unit": "m", "arc": {"radius": 12.0, "central_angle": 57.3}, "levels": 1, "start": "one-end"})
    half, chord = radians(57.3) / 2, told["arc"]["chord"]
    on, out = to_mark(chord * cos(half)), to_mark(chord * sin(half))
    # On along the tangent (cos, sin), then square off it toward B: (sin, -cos).
    b = (on * cos(half) + out * sin(half), on * sin(half) - out * cos(half))
    assert miss_of(told, "B") == pytest.approx(off_arc(told, *b), abs=1e-9)
    assert miss_of(told, "A") == 0 and hypot(b[0] - chord, b[1]) > 1e-4


@pytest.mark.parametrize("toward", ["centre", "outside"])
def test_ends_off_the_drawn_line_stand_where_the_printed_steps_put_them(toward: str) -> None:
    told = answer_to({"unit": "m", "arc": {"radius": 12.0, "central_angle": 57.3}, "levels": 1, "start": "ends",
                      "offset": "38 mm", "toward": toward})  # fmt: skip
    half, off = radians(57.3) / 2, 0.038 if toward == "outside" else -0.038
    along, up = to_mark(abs(off * sin(half))) * (1 if off > 0 else -1), to_mark(abs(off * cos(half)))
    x = off * sin(half) - along
    y = -off * cos(half) + (up if off > 0 else -up)
    assert miss_of(told, "A") == pytest.approx(off_arc(told, x, y), abs=1e-9)
    assert miss_of(told, "B") == pytest.approx(miss_of(told, "A"), abs=1e-9)
    assert abs(miss_of(told, "A")) > 1e-4


def test_ends_that_are_there_stay() -> None:
    told = answer_to({"unit": "m", "arc": {"radius": 12.0, "central_angle": 57.3}, "levels": 2})
    assert miss_of(told, "A") == miss_of(told, "B") == 0


@pytest.mark.parametrize(("typed", "shown"), [
    ("12' 3-1/8\"", "12' 3-1/8\""), ("12' 3-1/16\"", "12' 3-1/16\""), ("12' 3-5/32\"", "12' 3-5/32\""),
    ("12.34 ft", "about 12' 4-3/32\" = 12.3400 ft"), ("3.5 m", "about 11' 5-25/32\" = 11.4829 ft"),
])  # fmt: skip
def test_a_tie_is_printed_as_it_was_given(typed: str, shown: str) -> None:
    tie = [{"to": "wall", "distance": typed}, {"to": "hydrant", "distance": "9 ft"}]
    told = answer_to({"arc": {"radius": "20 ft", "chord": "24 ft"}, "levels": 1, "mark": "1/4 in", "ties": {"A": tie}})
    assert [row["shown"] for row in told["ties"]["A"]] == [shown, "9' 0\""]


def test_the_answers_shift_of_each_method_has_the_ends_in_it() -> None:
    """The table of methods adds the known shift: of the ends too."""
    job = {"unit": "m", "arc": {"radius": 12.0, "central_angle": 57.3}, "levels": 2, "method": "ordinates"}
    there, corner = (answer_to({**job, "start": start}) for start in ("ends", "corner"))
    shifts = [next(row["shift"] for row in told["methods"] if row["method"] == "ordinates") for told in (there, corner)]
    assert shifts[1] != shifts[0] and shifts[1] == pytest.approx(abs(corner["rounding"]["worst_miss"]), rel=1e-12)
