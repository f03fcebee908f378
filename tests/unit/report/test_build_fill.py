"""A slab that fills its curve, from a job to what is told: held against sums by hand and shapely."""

from __future__ import annotations

from math import acos, asin, hypot, pi, sin
from typing import Any

import pytest
from shapely.geometry import Polygon

from bowstring import BadJob, answer
from helping import SAID, answer_to

FOOT, YARD = 0.3048, 0.9144**3
HALF: dict[str, Any] = {**SAID, "arc": {"radius": "10 ft", "chord": "20 ft"},
                        "slab": {"thickness": "4 in", "fills": True},
                        "grade": {"slope": 1, "high": "A", "low": "outside"}}  # fmt: skip
PAD: dict[str, Any] = {**HALF, "unit": "mm", "arc": {"radius": "3 m", "central_angle": "300"},
                       "slab": {"thickness": "100 mm", "fills": True}}  # fmt: skip
BULGE: dict[str, Any] = {**HALF, "arc": {"chord": "24 ft", "sagitta": "5 ft"}, "offset": "2 ft", "toward": "outside"}


def rows(job: dict[str, Any]) -> dict[str, Any]:
    return {row["key"]: row for row in answer_to(job)["build"]}


def test_a_half_round_patio_from_drawing_to_order() -> None:
    """R 10 ft: 157.08 ft² at 4 in is 1.939 yd³; with a tenth 2.133, so 2-1/4."""
    told = answer_to(HALF)
    edges, pour = told["edges"], told["pour"]
    assert edges is not None and pour is not None
    assert edges["area"] / FOOT**2 == pytest.approx(50 * pi)
    assert pour["volume"] / YARD == pytest.approx(50 * pi / 3 / 27)
    assert (pour["number"], pour["loads"]) == ("2-1/4", 1)
    assert (edges["outside"]["length"] / FOOT, edges["inside"]["length"] / FOOT) == pytest.approx((10 * pi, 20))
    assert (edges["seconds"], edges["stick"], edges["bays"]) == ([], None, [])
    assert {row["key"] for row in edges["lines"]} == {
        "dig_outside", "outer_form", "outside", "string", "string_form", "dig_string"}  # fmt: skip
    assert [row["state"] for row in told["build"]] == ["usual", "near", "usual", "usual", "usual"]


@pytest.mark.parametrize("job", [HALF, PAD, BULGE])
def test_area_and_volume_are_shapelys(job: dict[str, Any]) -> None:
    told = answer_to(job)
    edges, pour, arc = told["edges"], told["pour"], told["arc"]
    assert edges is not None and pour is not None
    angle, count = arc["central_angle"] * pi / 180, 20000
    turns = [angle * (place / count - 0.5) for place in range(count + 1)]
    ring = Polygon([(arc["radius"] * sin(turn), arc["radius"] * sin(pi / 2 - turn)) for turn in turns])
    assert edges["area"] == pytest.approx(ring.area, rel=1e-6)
    assert pour["volume"] == pytest.approx(ring.area * pour["depth"], rel=1e-6)


def test_where_the_concrete_has_to_be_is_along_the_string() -> None:
    """Half of what is ordered must fill half of a half circle: the middle of its string."""
    pour = answer_to(HALF)["pour"]
    assert pour is not None
    half, three_quarters = pour["reach"]
    assert half["call"] / FOOT == pytest.approx(10)
    assert half["call_shown"] == "10' 0\""
    aside = three_quarters["call"] / FOOT - 10
    cut = 25 * pi + aside * (100 - aside**2) ** 0.5 / 2 + 50 * asin(aside / 10)
    assert cut == pytest.approx(0.75 * 50 * pi, rel=1e-6)
    assert pour["reach_where"] == "along the string, from A"


def test_one_board_is_bent_and_one_is_straight() -> None:
    boards = answer_to({**HALF, "board": {"level": "clear"}})["boards"]
    assert boards is not None
    (curve,) = boards["edges"]
    thick = 0.75 / 12
    assert curve["length"] / FOOT == pytest.approx(10 * pi + thick / 2 * pi + 4)  # 2 ft past each end
    straight = boards["cut"][-1]
    assert (straight["name"], straight["needs"], straight["boards"]) == ("straight, A to B", "20' 0\"", "10, 10")
    # along 20 ft a 2x4 stands every 4 ft: six stakes beside the curve's, and one at the splice of two 10-ft boards
    assert boards["stakes"] == curve["stakes"] + 6 + 1
    assert boards["cut"][1]["needs"] == f"{len(curve['boards']) - 1 + 1} of 2' 0\""
    assert not any("both edges" in text or "inner" in text for text in [*boards["conclusion"], *boards["ends"]])


def test_the_straight_form_stands_off_by_its_own_board() -> None:
    """The curve's is a 1x4, 3/4 in thick, the string's a 2x4 of 1-1/2 in."""
    edges = answer_to({**HALF, "board": {"level": "clear"}})["edges"]
    assert edges is not None
    lines = {row["key"]: (row["note"], row["off_shown"]) for row in edges["lines"]}
    assert lines["string_form"] == ("back of the 2x4", '1-1/2" behind A to B')
    assert lines["outer_form"] == ("back of the 1x4", '3/4" outside')
    assert 'Its form stakes stand 1-1/2" behind the string: the 2x4 goes between.' in edges["form"]


def test_the_tops_are_one_planes() -> None:
    """Down 1 % from A to B, down 1.5 % off the string: the half round's middle is 10 ft along and 10 ft off."""
    grades = answer_to(HALF)["grades"]
    assert grades is not None
    tops = {row["name"]: row["outside"] for row in grades["rows"]}
    assert all(row["inside"] is None for row in grades["rows"])
    middle = next(row for row in grades["rows"] if row["share"] == pytest.approx(0.5))
    assert middle["outside"]["level"] / FOOT == pytest.approx(-0.01 * 10 - 0.015 * 10)
    assert tops["B"]["level"] / FOOT == pytest.approx(-0.2)
    assert tops["B"]["shown"] == '2-3/8" low'
    assert grades["slopes"][1]["slope"] == pytest.approx(hypot(0.01, 0.015))
    assert grades["water"] == "Water runs to the curve on B's side: 1.8%, at 56° to the string."


def test_tops_at_both_ends_make_the_slope_and_may_clash() -> None:
    both = {"from": "100 ft", "to": "100.3 ft", "low": "inside"}
    grades = answer_to({**HALF, "grade": both})["grades"]
    assert grades is not None
    assert grades["running"] == pytest.approx(0.3 / 20)
    assert (grades["high"], grades["low"]) == ("B", "inside")
    for said, state in (({"slope": 1.5}, "usual"), ({"slope": 3}, "stop"), ({"high": "A"}, "stop")):
        told = answer_to({**HALF, "grade": {**both, **said}})["grades"]
        assert told is not None
        assert told["state"] == state, said


def test_a_crown_is_asked_about() -> None:
    grades = answer_to({**HALF, "grade": {"slope": 0, "crown": "1 in"}})["grades"]
    assert grades is not None and grades["stop"] is not None
    assert grades["stop"]["head"] == "A crown on a filled curve?"
    assert grades["rows"] == []


def test_a_fall_that_is_too_steep_is_told_with_what_holds() -> None:
    """2 % off the string leaves sqrt(5² - 2²) = 4.58 % along it."""
    job = {**HALF, "grade": {"slope": 4.9, "high": "B", "cross": 2, "low": "inside"}}
    grades = answer_to(job)["grades"]
    assert grades is not None
    assert grades["state"] == "near"
    assert grades["hold"] == 0.0458
    assert grades["ways"][0]["fields"] == {"grade-slope": "4.58"}
    stopped = answer_to({**job, "grade": {**job["grade"], "stops": True}})["grades"]
    assert stopped is not None and stopped["stop"] is not None
    assert stopped["rows"] == []


def test_joints_make_squarish_panels() -> None:
    joints = answer_to({**HALF, "joints": {"every": "5 ft"}})["joints"]
    assert joints is not None
    assert joints["conclusion"] == "4 panels along A to B by 2 out from it,\n5' 0\" by 5' 0\""
    assert [(row["number"], row["kind"], row["at_shown"]) for row in joints["grid"]] == [
        (1, "square", "5' 0\""),
        (2, "square", "10' 0\""),
        (3, "square", "15' 0\""),
        (4, "along", "5' 0\""),
    ]
    assert joints["grid"][0]["arc"][0] / FOOT == pytest.approx(10 * pi / 3)
    assert joints["rows"] == []


def test_too_long_panels_stop_the_joints_alone() -> None:
    told = answer_to({**HALF, "joints": {"panels": 1}})
    joints = told["joints"]
    assert joints is not None
    assert (joints["state"], joints["grid"]) == ("stop", [])
    assert told["pour"] is not None


def test_sharp_ends_are_told() -> None:
    """24 ft and 5 ft: half the angle is 2 atan(5/12), 45.2 degrees."""
    edges = answer_to(BULGE)["edges"]
    assert edges is not None
    assert edges["state"] == "near"
    assert any("points of 45°" in note for note in edges["notes"])
    assert any("square across from your stakes A and B" in text for text in edges["form"])


def test_thick_edges_run_along_both_forms() -> None:
    """A foot along the curve and the string of a half round of 10 ft, 6 in deeper: what is left is within 9 ft of the
    center and a foot off the string."""
    slab = {**HALF["slab"], "edge_width": "12 in", "edge_depth": "10 in"}
    pour = answer_to({**HALF, "slab": slab})["pour"]
    assert pour is not None
    left = 81 * acos(1 / 9) - 80**0.5
    assert pour["volume"] / FOOT**3 == pytest.approx(50 * pi / 3 + (50 * pi - left) / 2)


def test_a_width_isnt_used_and_that_is_said() -> None:
    told = answer_to({**HALF, "width": "5 ft", "edge": "inside"})["edges"]
    assert told is not None
    assert told["area"] == answer_to(HALF)["edges"]["area"]
    assert any("aren't used" in note for note in told["notes"])


def test_a_center_line_is_no_edge_to_fill_to() -> None:
    told = answer_to({**HALF, "drawn_to": "centre"})
    assert [told[part] for part in ("edges", "boards", "joints", "grades", "pour")] == [None] * 5
    assert {row["key"]: row["state"] for row in told["build"]} == dict.fromkeys(
        ("edges", "boards", "joints", "grades", "pour"), "open")  # fmt: skip


def test_a_width_that_reaches_the_center_is_told_of_it() -> None:
    stopped = rows({**HALF, "width": "10 ft", "edge": "outside", "slab": {"thickness": "4 in"}})
    assert {stopped[key]["more"] for key in ("boards", "joints", "pour")} == {"or does it fill the curve?"}


def test_fills_is_yes_or_no() -> None:
    with pytest.raises(BadJob, match="fills"):
        answer({**HALF, "slab": {"fills": "all"}})
