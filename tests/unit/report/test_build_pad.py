"""A slab with one rounded end or two, from a job to what is told: held against sums by hand and shapely."""

from __future__ import annotations

import json
import re
from collections import Counter
from math import atan2, cos, degrees, dist, hypot, pi, sin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

from bowstring import BadJob, answer, answering, read_link, write_link
from bowstring.job.jobfile import job_of_text
from bowstring.page.fields import fields_of_job, job_of_fields
from helping import SAID, answer_to

FOOT, YARD = 0.3048, 0.9144**3
PAD: dict[str, Any] = {**SAID, "arc": {"radius": "10 ft", "chord": "20 ft"},
                       "slab": {"thickness": "4 in", "fills": True, "sides": "15 ft"},
                       "grade": {"slope": 1, "high": "A", "low": "outside"}}  # fmt: skip
BOTH: dict[str, Any] = {**PAD, "slab": {**PAD["slab"], "both_ends": True}}
LOW: dict[str, Any] = {**PAD, "unit": "mm", "arc": {"chord": "6 m", "sagitta": "1 m"},
                       "slab": {"thickness": "100 mm", "fills": True, "sides": "2.4 m"}}  # fmt: skip
ROUND: dict[str, Any] = {**PAD, "arc": {"radius": "10 ft", "central_angle": "200"}}


def shape(told: Any) -> Polygon:
    """The slab of an answer, drawn from its arc's radius and angle and its sides alone."""
    arc, edges = told["arc"], told["edges"]
    half, radius, count = arc["central_angle"] * pi / 360, arc["radius"], 4000
    turns = [half * (2 * place / count - 1) for place in range(count + 1)]
    curve = [(radius * (sin(half) + sin(turn)), radius * (cos(turn) - cos(half))) for turn in turns]
    chord, sides = 2 * radius * sin(half), edges["sides"]
    pieces = [Polygon(curve), box(0, -sides, chord, 0)]
    if edges["both_ends"]:
        pieces.append(Polygon([(x, -sides - y) for x, y in curve]))
    return unary_union(pieces)


def test_a_round_ended_pad_from_drawing_to_order() -> None:
    """R 10 ft and 15 ft of sides: 157.08 and 300 ft² at 4 in are 5.643 yd³; with a tenth 6.207, so 6-1/4."""
    told = answer_to(PAD)
    edges, pour = told["edges"], told["pour"]
    assert edges is not None and pour is not None
    assert edges["area"] / FOOT**2 == pytest.approx(50 * pi + 300)
    assert pour["volume"] / YARD == pytest.approx((50 * pi + 300) / 3 / 27)
    assert pour["number"] == "6-1/4"
    assert (edges["outside"]["length"] / FOOT, edges["inside"]["length"] / FOOT) == pytest.approx((10 * pi, 20))
    lines = {row["key"]: row for row in edges["lines"]}
    assert {"sides", "back"} <= {*lines} and not {"string", "dig_string"} & {*lines}
    assert (lines["sides"]["arc_length"] / FOOT, lines["back"]["arc_length"] / FOOT) == pytest.approx((15, 20))


@pytest.mark.parametrize("job", [PAD, BOTH, LOW])
def test_area_and_volume_are_shapelys(job: dict[str, Any]) -> None:
    told = answer_to(job)
    pour = told["pour"]
    assert pour is not None
    assert pour["area"] == pytest.approx(shape(told).area, rel=1e-6)
    assert pour["volume"] == pytest.approx(pour["area"] * pour["depth"], rel=1e-9)


@settings(max_examples=25)
@given(st.floats(2.0, 12.0), st.floats(10.0, 180.0), st.floats(0.5, 12.0), st.booleans())
def test_area_and_diagonal_of_any_pad(chord: float, angle: float, sides: float, both: bool) -> None:
    slab = {"thickness": "100 mm", "fills": True, "sides": f"{sides:.3f} m", **({"both_ends": True} if both else {})}
    job = {**LOW, "arc": {"chord": f"{chord:.3f} m", "central_angle": f"{angle:.3f}"}, "slab": slab}
    told = answering(job)
    edges = told["edges"]
    assert edges is not None and edges["diagonal"] is not None
    assert edges["area"] == pytest.approx(shape(told).area, rel=1e-6)
    corners = shape(told).bounds
    assert edges["diagonal"] == pytest.approx(dist((corners[0], 0), (corners[2], -round(sides, 3))), rel=1e-9)


def test_no_step_pulls_the_diagonal_that_proves_the_sides() -> None:
    """20 by 15 is a 3-4-5 itself: squared with 20, 15 and 25 ft, the check of 25 ft would see nothing."""
    edges = answer_to(PAD)["edges"]
    assert edges is not None
    assert edges["diagonal_shown"] == "25' 0\""
    assert "Both diagonals, A to B-2 and B to A-2, must read 25' 0\"." in edges["check"]
    assert not any("25' 0\"" in text for text in edges["sides_how"])
    assert any("3-4-5: 12' 0\" on the string, 16' 0\" back, 20' 0\" across" in text for text in edges["sides_how"])
    assert any(text.endswith("The leg back runs past the corner.") for text in edges["sides_how"])  # 16 ft of 15


def test_the_corner_where_the_curve_meets_the_sides_is_told() -> None:
    """Tangent for a half circle; for 6 m and a rise of 1 m half the angle is 2 atan(1/3), 36.87 degrees."""
    half, low = answer_to(PAD)["edges"], answer_to(LOW)["edges"]
    assert half is not None and low is not None
    assert any("tangent, no corner" in text for text in half["sides_how"])
    assert degrees(2 * atan2(1, 3)) == pytest.approx(36.87, abs=0.01)
    assert any("at 127°" in text for text in low["sides_how"])
    assert answer_to(LOW)["build"][0]["state"] == "usual"


def test_forms_are_bent_on_the_curve_and_straight_on_the_sides_and_the_back() -> None:
    """The side forms begin where the curve's board ends, 2 ft down the sides, and run on past the back's by their own
    1-1/2 in: 15 ft less 2 ft, and 1-1/2 in."""
    boards = answer_to({**PAD, "board": {"level": "clear"}})["boards"]
    assert boards is not None
    (curve,) = boards["edges"]
    straight = boards["cut"][-1]
    assert (straight["name"], straight["needs"]) == ("straight: sides, back", "2 of 13' 1-1/2\" and 20' 0\"")
    # every 4 ft at most: 15 ft in 4 gaps, twice, and 20 ft in 5, of two boards with a splice
    assert boards["stakes"] == curve["stakes"] + 2 * 5 + 6 + 1
    low = answer_to({**LOW, "board": {"level": "clear"}})["boards"]
    assert low is not None
    # a corner: the side form is as long as its side, and 45 mm more
    assert low["cut"][-1]["needs"] == "2 of 2445 mm and 6000 mm"


def test_both_ends_have_a_bent_form_each() -> None:
    boards = answer_to({**BOTH, "board": {"level": "clear"}})["boards"]
    assert boards is not None
    first, other = boards["edges"]
    assert (first["edge"], other["edge"]) == ("outside", "other_curve")
    assert first["length"] == other["length"]
    assert Counter(first["boards"]).total() > 0
    assert boards["cut"][-1]["needs"] == "2 of 11' 0\""  # 15 ft, less 2 ft of either curve's board
    assert boards["stakes"] == first["stakes"] + other["stakes"] + 2 * 5


@pytest.mark.parametrize(("side", "word"), [("left", "RIGHT"), ("right", "LEFT")])
def test_the_other_curve_is_on_the_other_hand(side: str, word: str) -> None:
    """Who stands at A and faces B has the curve on his left; at A-2 he looks the same way, and its twin bulges away."""
    told = answer_to({**BOTH, "side": side})["edges"]
    assert told is not None
    assert any(text.endswith(f"on your {word}.") for text in told["sides_how"])
    bare = answer_to({key: value for key, value in BOTH.items() if key != "side"})["edges"]
    assert bare is not None and not any("on your" in text for text in bare["sides_how"])


def test_boards_of_two_half_circles_meet_in_the_middle_of_a_short_side() -> None:
    boards = answer_to({**BOTH, "slab": {**BOTH["slab"], "sides": "3 ft"}, "board": {"level": "clear"}})["boards"]
    assert boards is not None
    assert not any(row["name"].startswith("straight") for row in boards["cut"])
    thick = 0.75 / 12
    assert boards["edges"][0]["length"] / FOOT == pytest.approx(10 * pi + thick / 2 * pi + 3)


@pytest.mark.parametrize(("job", "names"), [(PAD, 2), (BOTH, 9)])
def test_tops_of_the_other_end_are_the_planes(job: dict[str, Any], names: int) -> None:
    """Down 1 % from A to B and 1.5 % off the string: 15 ft back is 2.7 in higher, by hand from the coordinates."""
    grades = answer_to(job)["grades"]
    assert grades is not None
    back = {row["name"]: row["outside"] for row in grades["rows"] if row["kind"] == "back"}
    assert len(back) == names
    assert back["A-2"]["level"] / FOOT == pytest.approx(0.015 * 15)
    assert back["B-2"]["level"] / FOOT == pytest.approx(0.015 * 15 - 0.01 * 20)
    if names > 2:
        middle = next(row for row in grades["rows"] if row["kind"] == "back" and row["share"] == pytest.approx(0.5))
        assert middle["outside"]["level"] / FOOT == pytest.approx(0.015 * 25 - 0.01 * 10)
    assert "straight forms' tops" in " ".join(grades["notes"])


def test_water_runs_off_the_back() -> None:
    grades = answer_to({**PAD, "grade": {"slope": 0, "low": "inside"}})["grades"]
    assert grades is not None
    assert grades["water"] == "Water runs off the back edge, square to it."
    grades = answer_to({**BOTH, "grade": {"slope": 1, "high": "A", "low": "inside"}})["grades"]
    assert grades is not None
    assert grades["water"] == "Water runs to the other curve on B's side: 1.8%, at 56° to the string."


def test_a_deep_pad_is_poured_from_its_back() -> None:
    """25 ft deep and 20 wide: half of what is in the forms lies behind 228.54 / 20 = 11.43 ft."""
    pour = answer_to({**PAD, "slab": {**PAD["slab"], "waste": 0}})["pour"]
    assert pour is not None
    half = pour["reach"][0]
    assert half["call"] / FOOT == pytest.approx((25 * pi + 150) / 20, abs=1e-6)
    assert pour["reach_where"] == "from the back edge, toward the curve"
    wide = answer_to({**LOW, "slab": {**LOW["slab"], "waste": 0}})["pour"]
    assert wide is not None
    assert wide["reach"][0]["call"] == pytest.approx(3.0, abs=1e-6)
    assert wide["reach_where"] == "along the string, from A"


def test_joints_run_over_the_whole_depth() -> None:
    """20 by 25 ft in 10 ft at most: two by three. Even, a joint would lie 1 ft 8 in past A to B, less than a quarter of
    8 ft 4 in: it is on A to B instead, with one more in the middle of the sides."""
    joints = answer_to(PAD)["joints"]
    assert joints is not None
    rows = joints["grid"]
    assert [(row["kind"], row["at"] / FOOT) for row in rows] == [
        ("square", pytest.approx(10)), ("along", pytest.approx(-7.5)), ("along", 0.0)]  # fmt: skip
    assert [row["at_shown"] for row in rows[1:]] == ["7' 6\" back", "A to B"]
    assert rows[1]["arc_shown"] == "sides" and not any(row["sharp"] for row in rows)
    assert joints["depth"] is not None


def test_a_narrow_pads_panels_stand_one_behind_the_other() -> None:
    """8 ft wide and 44 ft long, in 10 ft at most: five of 8 ft 9.6 in."""
    job = {**PAD, "arc": {"radius": "4 ft", "chord": "8 ft"}, "slab": {**PAD["slab"], "sides": "40 ft"}}
    joints = answer_to(job)["joints"]
    assert joints is not None
    assert joints["conclusion"] == "5 panels, one behind the other,\n8' 0\" by 8' 9-5/8\""
    assert [row["kind"] for row in joints["grid"]] == ["along"] * 4


def test_thick_edges_run_along_all_forms() -> None:
    """A foot along the curve, both sides and the back, 6 in deeper: left are a half disc of 9 ft and 18 by 14."""
    slab = {**PAD["slab"], "edge_width": "12 in", "edge_depth": "10 in"}
    pour = answer_to({**PAD, "slab": slab})["pour"]
    assert pour is not None
    whole, left = 50 * pi + 300, 81 * pi / 2 + 18 * 14
    assert pour["volume"] / FOOT**3 == pytest.approx(whole / 3 + (whole - left) / 2)


def test_more_than_a_half_circle_takes_no_sides() -> None:
    told = answer_to(ROUND)
    assert {row["state"] for row in told["build"]} == {"stop"}
    assert {row["text"] for row in told["build"]} == {"No straight sides here"}
    assert told["edges"] is None and told["pour"] is None
    assert told["steps"] and not told["stops"]  # the arc itself is set out as ever


@pytest.mark.parametrize(("slab", "field"), [
    ({"sides": "5 ft"}, "slab.sides"),
    ({"both_ends": True}, "slab.both_ends"),
    ({"fills": True, "both_ends": True}, "slab.sides"),
    ({"fills": True, "sides": "0"}, "slab.sides"),
    ({"fills": True, "sides": "-5 ft"}, "slab.sides"),
    ({"fills": True, "sides": "5 ft", "both_ends": "yes"}, "slab.both_ends"),
])  # fmt: skip
def test_sides_are_refused_where_they_say_nothing(slab: dict[str, Any], field: str) -> None:
    with pytest.raises(BadJob) as refused:
        answer({**PAD, "slab": {"thickness": "4 in", **slab}})
    assert refused.value.field == field


def test_where_the_stakes_stand_off_a_and_b_are_said_to_be_the_corners() -> None:
    off = answer_to({**PAD, "offset": "3 ft", "toward": "outside", "driven": "hub"})["edges"]
    on = answer_to(PAD)["edges"]
    assert off is not None and on is not None
    told = "The concrete's corners, A0 and B0, are on that edge, square across from your stakes A and B."
    assert told in off["form"] and not any("A0" in text for text in [*on["form"], *on["sides_how"]])
    # Nothing that is taped from a corner is told from a stake: every A and B is the corner's.
    others = [*off["sides_how"], off["check"]]
    assert not any(re.search(r"\b[AB]\b(?!-2)", text) for text in others)
    assert any("A0 to B-2 and B0 to A-2" in text for text in others)
    cards = {card["kind"]: card for card in answer_to({**PAD, "offset": "3 ft", "toward": "outside"})["form_cards"]}
    assert cards["form_corners"]["text"].startswith("Square the sides back off A0 and B0.")
    assert cards["form_corners"]["numbers"][0]["label"] == "A0 to A-2, B0 to B-2, square back"
    assert off["diagonal"] == on["diagonal"]


def test_a_bare_number_is_in_the_jobs_unit() -> None:
    edges = answer_to({**LOW, "unit": "m", "slab": {**LOW["slab"], "sides": 2.4}})["edges"]
    assert edges is not None and edges["sides"] == pytest.approx(2.4)


@pytest.mark.parametrize("job", [PAD, BOTH, LOW])
def test_links_files_and_fields_keep_it(job: dict[str, Any]) -> None:
    for kept in (read_link(write_link(job)), job_of_text(json.dumps(job)), job_of_fields(fields_of_job(job))):
        assert dict(kept)["slab"] == job["slab"]


def test_sides_left_in_their_field_say_nothing_of_a_band() -> None:
    fields = {**fields_of_job(BOTH), "width": "5 ft"}
    del fields["slab-fills"]
    assert job_of_fields(fields)["slab"] == {"thickness": "4 in"}


def test_hypotenuse_of_both_legs() -> None:
    low = answer_to(LOW)["edges"]
    assert low is not None and low["diagonal"] == pytest.approx(hypot(6.0, 2.4))


def test_every_top_of_a_pad_says_on_which_side_of_a_s_it_is() -> None:
    """R 7 ft, 1.0417 % away from the back: the curve's middle is 84 in x 0.010417 = 0.875 in low, the corners 15 ft
    back 180 in x 0.010417 = 1.875 in high. Read as low, too, one end would be 3-3/4 in wrong."""
    job = {**PAD, "arc": {"radius": "7 ft", "chord": "14 ft"}, "board": {"level": "clear"},
           "grade": {"slope": 0, "cross": 1.0417, "low": "outside"}}  # fmt: skip
    told = answer_to(job)
    grades = told["grades"]
    assert grades is not None
    tops = {row["name"]: row["outside"] for row in grades["rows"]}
    assert [tops[name]["shown"] for name in ("A", "A-2", "B-2")] == ["0", '1-7/8" high', '1-7/8" high']
    assert [tops[name]["tight"] for name in ("A", "A-2", "B-2")] == ["0", '+1-7/8"', '+1-7/8"']
    middle = next(row["outside"] for row in grades["rows"] if row["share"] == 0.5)
    assert (middle["shown"], middle["tight"]) == ('7/8" low', '7/8" low')
    card = next(card for card in told["form_cards"] if card["kind"] == "form_tops")
    assert [(one["label"], one["shown"]) for one in card["numbers"]] == [("curve's middle, below the string", '7/8"')]
    assert 'A-2: 1-7/8" high. B-2: 1-7/8" high. Other tops, joints: paper.' in card["notes"]


def half_round(radius: str, sides: str, *, both: bool = False) -> Any:
    slab = {"thickness": "5 in", "fills": True, "sides": sides, **({"both_ends": True} if both else {})}
    told = answer_to({**SAID, "arc": {"radius": radius, "central_angle": "180"}, "slab": slab})["joints"]
    assert told is not None
    return told


def test_a_joint_beside_where_the_curve_begins_is_put_there() -> None:
    """R 7 ft and 15 ft: 22 ft in three even rows of 7 ft 4 in would have one 4 in behind A to B. On it, the sides' 15
    ft are two rows of 7 ft 6 in, and the curve's row is its 7 ft."""
    told = half_round("7 ft", "15 ft")
    assert [row["at"] / FOOT for row in told["grid"] if row["kind"] == "along"] == pytest.approx([-7.5, 0])
    assert "A joint runs where the curve begins: panels are 7' 6\" behind it, 7' 0\" beyond." in told["lines"]
    assert told["ratio"] == pytest.approx(7.5 / 7)


@pytest.mark.parametrize(("sides", "on"), [("15 ft", True), ("17 ft", True), ("23 ft", False), ("11 ft", False)])
def test_a_joint_a_quarter_panel_off_stays(sides: str, on: bool) -> None:
    """R 7 ft, 7-ft panels along A to B. 17 ft: 24 ft in three rows of 8 ft, a joint 1 ft behind. 23 ft: three of 10
    ft, a joint 3 ft behind, more than 2 ft 6 in. 11 ft: two of 9 ft, a joint 2 ft behind; but on A to B the sides' row
    would be 11 ft by 7, 1.57 to 1 and over 1.5."""
    told = half_round("7 ft", sides)
    assert (0.0 in [row["at"] for row in told["grid"]]) is on


def test_both_ends_of_a_slab_have_it_alike() -> None:
    """R 10 ft and 15 ft, both round: 35 ft in rows of at most 12 ft. By hand, 1-1/4 ft past A to B in even rows of
    8 ft 9 in; on it, two rows of 7 ft 6 in between and the curves' own 10 ft."""
    told = half_round("10 ft", "15 ft", both=True)
    rows = [row for row in told["grid"] if row["kind"] == "along"]
    assert [row["at"] / FOOT for row in rows] == pytest.approx([-15, -7.5, 0])
    assert [row["at_shown"] for row in rows] == ["A-2 to B-2", "7' 6\" back", "A to B"]


def test_no_joint_is_put_into_a_sharp_corner() -> None:
    """A 14-ft chord with a rise of 3 ft makes 46 degrees with its string: a joint there ends in two such points."""
    for sides in ("11 ft", "12 ft", "19 ft", "21 ft"):
        slab = {"thickness": "5 in", "fills": True, "sides": sides}
        told = answer_to({**SAID, "arc": {"chord": "14 ft", "sagitta": "3 ft"}, "slab": slab})["joints"]
        assert told is not None and 0.0 not in [row["at"] for row in told["grid"]]


@pytest.mark.parametrize("job", [PAD, LOW, BOTH, {**PAD, "arc": {"radius": "20 ft", "chord": "36 ft"},
                                                 "slab": {**PAD["slab"], "sides": "5 ft"}}])  # fmt: skip
def test_where_the_concrete_has_to_be_goes_by_volume_with_its_thick_edges(job: dict[str, Any]) -> None:
    """An integral of the true section over shapely's polygons: thin slices behind the front, each as deep as it is, the
    thick edge what lies within a foot of the outline. A mark is never short of where the concrete must be, and past
    it by a form's step at most."""
    metric = job.get("unit") == "mm"
    slab = {**job["slab"], "edge_width": "300 mm" if metric else "12 in", "edge_depth": "300 mm" if metric else "14 in"}
    told = answer_to({**job, "slab": slab})
    pour, edges = told["pour"], told["edges"]
    assert pour is not None and edges is not None and len(pour["reach"]) > 1
    wide, deeper = (0.3, 0.3) if metric else (FOOT, 14 * FOOT / 12)
    whole = shape(told)
    inside = whole.buffer(-wide, join_style="mitre", mitre_limit=99, quad_segs=256)
    left, low, right, high = whole.bounds
    back = high - low > right - left
    count, length, taken = 800, high - low if back else right - left, [0.0]
    for place in range(count):
        at, to = (length * one / count for one in (place, place + 1))
        slice_of = (
            box(left - 1, low + at, right + 1, low + to) if back else box(left + at, low - 1, left + to, high + 1)
        )
        thin = inside.intersection(slice_of).area
        taken.append(taken[-1] + pour["depth"] * thin + deeper * (whole.intersection(slice_of).area - thin))
    assert pour["volume"] == pytest.approx(taken[-1], rel=2e-3)
    for row in pour["reach"]:
        place = next(number for number, volume in enumerate(taken) if volume >= row["share"] * taken[-1])
        must = length * place / count
        assert row["call"] == pytest.approx(must, abs=0.02)  # two slices, and what shapely's corners leave
