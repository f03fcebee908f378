"""A wall is told what is of a wall: no water, no walk's slopes, no low base, no wider slab."""

from __future__ import annotations

from typing import Any

from bowstring.faces.build import PAGES, build_html
from helping import SAID, answer_to

WALL: dict[str, Any] = {
    **SAID,
    "arc": {"radius": "40 ft", "chord": "30 ft"},
    "width": "8 in",
    "edge": "outside",
    "slab": {"thickness": "4 ft", "footing_width": "24 in", "footing_depth": "12 in"},
    "grade": {"slope": 0, "cross": 0},
}
WALK = {**WALL, "width": "5 ft", "slab": {"thickness": "4 in"}}


def test_a_wall_has_no_water_and_no_walks_limits() -> None:
    wall, walk = answer_to(WALL)["grades"], answer_to(WALK)["grades"]
    assert wall is not None and walk is not None
    assert (wall["water"], wall["judged"], wall["warnings"], wall["cautions"]) == ("", [], [], [])
    assert walk["water"] and walk["cautions"]
    assert not any("ADA" in note for note in wall["notes"])
    assert any("ADA" in note for note in walk["notes"])
    steep = answer_to({**WALL, "grade": {"slope": 9, "high": "B", "cross": 0, "stops": True}})["grades"]
    assert steep is not None
    assert (steep["state"], steep["stop"], steep["ways"]) == ("usual", None, [])
    assert steep["more"] == "level across"
    assert [row["name"] for row in steep["rows"]][-1] != ""


def test_a_walls_pour_has_no_low_base_and_no_wider_rows() -> None:
    wall, walk = answer_to(WALL)["pour"], answer_to(WALK)["pour"]
    assert wall is not None and walk is not None
    told = [row["what"] for row in wall["changes"]]
    assert not any("low" in what or "wide" in what for what in told)
    assert (wall["low_text"], wall["measure"]) == ("", "")
    assert any("low" in row["what"] for row in walk["changes"]) and walk["measure"]


def test_a_walls_joints_are_the_drawings() -> None:
    joints = answer_to(WALL)["joints"]
    assert joints is not None
    assert joints["lines"][-1] == "This deep it's a wall: the drawing says how its joints are made."
    assert not any("isolation" in line or "1.5" in line for line in joints["lines"])


def test_every_page_of_a_wall_is_made() -> None:
    told = answer_to(WALL)
    assert all(build_html(told, page) for page in PAGES)


def test_joints_that_stop_are_named_nowhere_in_the_pour() -> None:
    stopped, good = ({**WALK, "joints": {"panels": count}} for count in (1, 8))
    pour = answer_to(stopped)["pour"]
    joints = answer_to(stopped)["joints"]
    assert pour is not None and joints is not None
    assert joints["state"] == "stop"
    assert pour["bulkhead"] is None and {row["joint"] for row in pour["reach"]} == {0}
    assert pour["per_panel"] is None and not any("panel" in line for line in pour["lines"])
    assert pour["order"] > 0
    other = answer_to(good)["pour"]
    assert other is not None and other["bulkhead"] is not None


def test_what_the_loose_end_adds_is_told_as_not_in_the_limits() -> None:
    boards = answer_to(WALK)["boards"]
    assert boards is not None
    assert "The limits here are for the curve: they leave that out." in " ".join(boards["fails"])
