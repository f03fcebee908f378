"""Cautions: each is raised by the job that needs it, with the number that matters, and not by one that doesn't."""

import pytest

from bowstring.job.job import DRIVEN
from helping import answer_to

PLAIN = {"arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "drawn_to": "face", "tolerance": "1/4 in", "side": "left"}


def cautions(**more):
    return answer_to({**PLAIN, **more})["cautions"]


def told(part, **more):
    return [text for text in cautions(**more) if part in text]


def test_an_ordinary_job_has_none():
    assert cautions(levels=3) == []


def test_two_arcs_name_both_and_greater_takes_the_other():
    arc = {"radius": "20 ft", "chord": "24 ft"}
    (text,) = told("Two arcs", arc=arc)
    assert "4' 0\"" in text and "36' 0\"" in text
    assert answer_to({**PLAIN, "arc": arc})["arc"]["sagitta"] == pytest.approx(4 * 0.3048, rel=1e-12)
    assert answer_to({**PLAIN, "arc": {**arc, "greater": True}})["arc"]["sagitta"] == pytest.approx(
        36 * 0.3048, rel=1e-12
    )


def test_a_further_given_chooses_and_then_nothing_is_said():
    assert not told("Two arcs", arc={"radius": "20 ft", "chord": "24 ft", "sagitta": "36 ft"})


def test_givens_with_all_of_a_floats_digits_still_leave_two_arcs_to_be_named():
    """A degree of curve and its radius choose nothing: out of another program the dust must not choose either."""
    arc = {"radius": "37.30000000000001 m", "chord": "52.75016587651643 m", "degree": 46.819}
    exact = answer_to({**PLAIN, "arc": {"radius": "37.30000000000001 m", "chord": "52.75016587651643 m"}})
    assert any("Two arcs" in text for text in exact["cautions"])
    assert told("Two arcs", arc=arc)


def test_givens_that_disagree_are_named_with_their_numbers():
    arc = {"radius": "20 ft 0 in", "chord": "24 ft 0 in", "sagitta": "4 ft 0 in", "arc_length": "26 ft 6 in"}
    (first,) = answer_to({**PLAIN, "arc": arc})["stops"]
    assert "not with the arc length" in first and "26' 6\"" in first and "25' 8-7/8\"" in first


def test_with_three_givens_no_single_one_is_accused():
    arc = {"radius": "20 ft 0 in", "chord": "24 ft 0 in", "arc_length": "26 ft 6 in"}
    assert told("don't agree", arc=arc)
    assert not told("All the other givens", arc=arc)


def test_a_mark_that_moves_the_radius_is_told_with_a_better_measurement():
    (text, *_more) = told("One tape mark", arc={"chord": "38 ft", "arc_length": "38 ft 2 in"})
    assert "Better: get the mid-ordinate" in text


def test_a_flat_arc_without_a_better_measurement_says_so():
    (text,) = told("One tape mark", arc={"chord": "38 ft", "sagitta": "6 in"})
    assert "radius or the central angle from the drawing" in text


def test_three_near_points_are_told_too():
    assert told("One tape mark", arc={"points": [["0 ft", "0 ft"], ["3 ft", "1 in"], ["6 ft", "0 ft"]]})


def test_points_settle_the_hand_and_a_contrary_word_is_told():
    right = {"points": [["0 ft", "0 ft"], ["10 ft", "-3 ft"], ["20 ft", "0 ft"]]}
    unsaid = {key: value for key, value in PLAIN.items() if key != "side"}
    told_by_points = answer_to({**unsaid, "arc": right})
    assert told_by_points["side"] == "right"
    assert any("By the three points" in text for text in told_by_points["cautions"])
    assert answer_to(unsaid)["side"] is None
    assert cautions(arc=right, side="left")[0].startswith("The three points put")
    assert not told("The three points put", arc=right, side="right")


@pytest.mark.parametrize("drawn_to", [None, "unsure"])
def test_the_line_is_asked_for(drawn_to):
    job = {key: value for key, value in PLAIN.items() if key != "drawn_to"}
    if drawn_to:
        job["drawn_to"] = drawn_to
    assert any("flow line or lip" in text for text in answer_to(job)["cautions"])


def test_small_sagittae_are_told_when_levels_are_asked_for():
    assert told("mostly rounding", levels=6)
    assert not told("mostly rounding", levels=2)


def test_a_tolerance_finer_than_the_mark_is_told():
    assert told("finer than the tape's mark", tolerance="1/16 in")


def test_a_degree_of_curve_is_read_back_as_a_radius():
    (text,) = told("Degree of curve", arc={"degree": 40, "chord": "38 ft"})
    assert "143" in text


def test_past_a_half_circle_is_told():
    assert told("past a half circle", arc={"radius": "20 ft", "central_angle": 200})


def test_a_string_in_the_wind_is_told_at_its_own_step():
    long = answer_to({**PLAIN, "arc": {"chord": "120 ft", "sagitta": "12 ft"}})
    (step,) = [step for step in long["steps"] if step["kind"] == "string"]
    assert any("crosswind" in text for text in step["cautions"])
    short = answer_to(PLAIN)
    assert not any("crosswind" in text for step in short["steps"] for text in step["cautions"])


@pytest.mark.parametrize("method", ["halving", "ordinates", "tapes", "tangent", "angles"])
def test_services_are_named_where_the_first_stake_goes_in(method):
    answer = answer_to({**PLAIN, "method": method})
    stakes = {stake["name"] for stake in answer["stakes"]} - {"A", "B"}
    first = next(step for step in answer["steps"] if step["level"] and stakes & set(step["marks"]))
    assert any("utilities" in text for text in first["cautions"])


def test_a_sagitta_got_far_off_looks_like_a_slip():
    assert told("looks like a slip", got=[{"stake": "M", "sagitta": "4 ft 3 in"}])
    assert not told("looks like a slip", got=[{"stake": "M", "sagitta": "5 ft 3-1/4 in"}])


@pytest.mark.parametrize("driven", DRIVEN)
def test_whatever_is_driven_stands_on_the_line_or_off_it(driven: str) -> None:
    on = answer_to({**PLAIN, "driven": driven})
    off = answer_to({**PLAIN, "driven": driven, "offset": "4 ft", "toward": "outside"})
    assert on["driven"] == off["driven"] == driven
    assert on["staked"] == on["arc"] and off["staked"]["radius"] > off["arc"]["radius"]
    assert answer_to(PLAIN)["driven"] == "pin"


def test_rounding_that_eats_half_the_tolerance_offers_a_finer_mark():
    coarse = answer_to({**PLAIN, "mark": "1/4 in", "tolerance": "1/16 in", "levels": 3})
    assert abs(coarse["rounding"]["worst_miss"]) > 0.0254 / 32
    assert coarse["rounding"]["eats_half"]
    assert "Read the tape to 1/8 in." in coarse["rounding"]["text"]
    fine = answer_to({**PLAIN, "mark": "1/32 in", "levels": 3})
    assert not fine["rounding"]["eats_half"]


def test_a_string_outside_the_arc_is_squared_off_the_other_way():
    """Too far out at Q1 on a flat arc puts the next string outside it: the text must turn with the marks."""
    job = {"arc": {"chord": "60 ft", "sagitta": "6 in"}, "mark": "1/2 in", "side": "left", "levels": 3,
           "got": [{"stake": "Q1", "sagitta": "3-1/2 in"}]}  # fmt: skip
    told_job = answer_to(job)
    marks = {mark["name"]: mark for mark in told_job["marks"]}
    turned = 0
    for step in told_job["steps"]:
        if step["level"] != 3:
            continue
        start, end = marks[step["measures"][0]["from"]], marks[step["to"]]
        middle, stake = (marks[step["measures"][1][key]] for key in ("from", "to"))
        across = (end["x"] - start["x"]) * (stake["y"] - middle["y"]) - (end["y"] - start["y"]) * (
            stake["x"] - middle["x"]
        )
        hand = "left" if across > 0 else "right"
        assert f"to the {hand} " in step["text"], step
        turned += hand == "right"
    assert turned == 2
    assert told_job["halving"][2]["how"] is None


BOARD = {"driven": "board", "offset": "1-1/2 in", "toward": "outside"}


def test_a_board_on_the_back_is_taken_to_form_the_back():
    told_job = answer_to({**PLAIN, **BOARD, "drawn_to": "back"})
    assert any("taken to form the back" in text for text in told_job["cautions"])
    assert not told_job["stops"], "a back is formed by a board too"


def test_a_board_on_a_centre_line_stops_until_the_way_to_the_face_is_in_the_offset():
    stopped = answer_to({**PLAIN, **BOARD, "drawn_to": "centre"})
    assert any("no board stands on that" in text for text in stopped["stops"])
    wide = answer_to({**PLAIN, **BOARD, "drawn_to": "centre", "offset": "2 ft 7-1/2 in"})
    assert not wide["stops"] and any("2' 7-1/2\"" in text for text in wide["cautions"])


def test_a_board_on_a_line_that_was_not_said_stops():
    unsaid = {key: value for key, value in PLAIN.items() if key != "drawn_to"}
    assert any("isn't given" in text for text in answer_to({**unsaid, **BOARD})["stops"])
    assert any("isn't given" in text for text in answer_to(unsaid)["stops"]), "nor does a pin know"


def test_a_hand_that_was_not_said_stops():
    unsaid = {key: value for key, value in PLAIN.items() if key != "side"}
    (text,) = answer_to(unsaid)["stops"]
    assert "facing B" in text and "left" not in text and "right" not in text


def test_a_chord_that_is_surely_so_is_no_slip():
    found = {"chord": ["39 ft", "39 ft"], "tape": "level", "hold": "radius"}
    assert told("looks like this", found=found)
    assert not told("looks like this", found={**found, "sure": True})


def test_an_offset_string_is_taped():
    steps = answer_to({**PLAIN, "offset": "1-1/2 in", "toward": "outside"})["steps"]
    (string,) = [step for step in steps if step["kind"] == "string"]
    assert string["measures"][0]["shown"] in string["text"]


@pytest.mark.parametrize(
    "more",
    [
        {"driven": "board", "offset": "1.5", "toward": "outside"},
        {"driven": "hub", "offset": "1.2 mm", "toward": "outside"},
        {"tolerance": "10 ft"},
    ],
)
def test_sizes_that_nothing_has_are_asked_about(more):
    assert told("before building", **more)


def test_a_stake_got_out_of_tolerance_is_to_be_moved():
    assert told("Move it, or ask", got=[{"stake": "M", "sagitta": "5 ft 3-1/2 in"}])
    assert not told("Move it, or ask", got=[{"stake": "M", "sagitta": "5 ft 3-1/8 in"}])


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_corner_must_lie_on_the_curves_hand(side):
    steps = answer_to({**PLAIN, "start": "corner", "side": side})["steps"]
    (step,) = [step for step in steps if step["kind"] == "from_corner"]
    assert f"P must be on your {side}" in step["text"]


def test_ends_and_ties_that_can_be_mixed_up_are_told():
    post = {"to": "the post", "distance": "9 ft"}
    assert told("same landmark", ends={"A": "lamp post", "B": "Lamp post"})
    assert not told("same landmark", ends={"A": "lamp post", "B": "gate pier"})
    assert told("same object", ties={"A": [post, post]})
    assert not told("same object", ties={"A": [post, {"to": "the wall", "distance": "9 ft"}]})


def test_a_mark_that_hardly_moves_a_half_circles_radius_is_told_in_figures_a_crew_reads() -> None:
    """Of a half circle the mid-ordinate is the radius and where the arc ends hardly counts: 2.8e-05 percent and 0."""
    answer = answer_to(
        {"bowstring": 1, "arc": {"radius": "7 ft", "chord": "14 ft"}, "side": "left", "drawn_to": "face"}
    )
    told = [text for text in answer["cautions"] if "one mark changes the radius by" in text]
    assert len(told) == 2 and all("by 0.01%." in text and "e-" not in text for text in told)
