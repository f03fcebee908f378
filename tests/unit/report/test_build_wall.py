"""A wall is told what is of a wall: no water, no walk's slopes, no low base, no wider slab."""

from __future__ import annotations

from math import asin, cos, sin
from typing import Any

import pytest

from bowstring.faces.build import PAGES, build_html
from helping import SAID, answer_to

FOOT = 0.3048
WALL: dict[str, Any] = {
    **SAID,
    "arc": {"radius": "40 ft", "chord": "30 ft"},
    "width": "8 in",
    "edge": "outside",
    "slab": {"poured": "wall", "thickness": "4 ft", "footing_width": "24 in", "footing_depth": "12 in"},
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
    assert joints["lines"][-1] == "The drawing says how its joints are made."
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
    assert "The limits here are for the curve: they don't allow for that." in " ".join(boards["fails"])


def lines(job: dict[str, Any]) -> dict[str, Any]:
    edges = answer_to(job)["edges"]
    assert edges is not None
    return {line["key"]: line for line in edges["lines"]}


def test_a_footing_has_edges_of_its_own_and_the_dig_is_past_those() -> None:
    """An 8-in wall inside R 40 on 24 in of footing: 8 in past each face, and a foot more is dug."""
    told = lines(WALL)
    outside, inside = 40 + 8 / 12, 40 - 8 / 12 - 8 / 12
    half = asin(15 / 40)
    for key, radius in (("footing_outside", outside), ("footing_inside", inside), ("dig_outside", outside + 1),
                        ("dig_inside", inside - 1)):  # fmt: skip
        assert told[key]["radius"] / FOOT == pytest.approx(radius), key
        assert told[key]["chord"] / FOOT == pytest.approx(2 * radius * sin(half)), key
        assert told[key]["sagitta"] / FOOT == pytest.approx(radius * (1 - cos(half))), key
        assert told[key]["arc_length"] / FOOT == pytest.approx(2 * radius * half), key
    assert told["footing_outside"]["off_shown"] == '8" outside'
    assert told["footing_inside"]["off_shown"] == "1' 4\" inside"
    edges = answer_to(WALL)["edges"]
    assert edges is not None
    assert any("past each edge of the footing" in text for text in edges["passes"])
    assert any("toe" in note for note in edges["notes"])


def test_no_footing_is_told_under_a_walk_or_without_one() -> None:
    walk = {**WALK, "slab": {**WALK["slab"], "footing_width": "24 in", "footing_depth": "12 in"}}
    for job in (walk, {**WALL, "slab": {"poured": "wall", "thickness": "4 ft"}}):
        told = lines(job)
        assert "footing_outside" not in told
        assert told["dig_outside"]["radius"] / FOOT == pytest.approx(41)


def test_a_footing_narrower_than_its_wall_is_dug_past_the_wall() -> None:
    told = lines({**WALL, "slab": {**WALL["slab"], "footing_width": "6 in"}})
    assert told["footing_outside"]["radius"] / FOOT == pytest.approx(40 - 1 / 12)
    assert told["dig_outside"]["radius"] / FOOT == pytest.approx(41)


def test_stakes_over_a_wide_footing_are_dug_out() -> None:
    job = {**WALL, "offset": "18 in", "toward": "outside"}
    told = answer_to(job)["edges"]
    assert told is not None and told["dug_out"]
    bare = answer_to({**job, "slab": {"poured": "wall", "thickness": "4 ft"}})["edges"]
    assert bare is not None and not bare["dug_out"]


@pytest.mark.parametrize(("line", "note"), [("back", "back of curb"), ("flow line", "flow line"), ("lip", "lip")])
def test_a_curbs_drawn_line_is_named_and_its_others_arent_assumed(line: str, note: str) -> None:
    job = {**WALK, "width": "18 in", "drawn_to": line}
    assert note in lines(job)["outside"]["note"]
    edges = answer_to(job)["edges"]
    assert edges is not None
    assert any("none is assumed here" in one for one in edges["notes"])
