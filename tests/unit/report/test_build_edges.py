"""Both edges as an answer tells them: a walk worked out by hand, where stakes may stand, what the row says."""

from __future__ import annotations

from math import asin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring import answering
from edge_jobs import FOOT, LINES, WALK, about_center, line_of, row_of, second_of, told


@pytest.mark.parametrize(
    ("key", "shown"),
    [
        ("outer_form", ("62' 0-3/4\"", "48' 0-5/8\"", "4' 10\"", "49' 4\"")),
        ("outside", ("62' 0\"", "48' 0\"", "4' 10\"", "49' 3-1/2\"")),
        ("centre", ("59' 6\"", "46' 0-3/4\"", "4' 7-5/8\"", "47' 3-5/8\"")),
        ("inside", ("57' 0\"", "44' 1-1/2\"", "4' 5-3/8\"", "45' 3-3/4\"")),
        ("inner_form", ("56' 11-1/4\"", "44' 1\"", "4' 5-1/4\"", "45' 3-1/8\"")),
    ],
)
def test_the_lines_of_a_walk(key: str, shown: tuple[str, ...]) -> None:
    """R, 2 R sin(th/2), R (1 - cos(th/2)) and R th for th = 2 asin(24/62), by hand; the board is 3/4 in."""
    line = line_of(told(WALK), key)
    assert (line["radius_shown"], line["chord_shown"], line["sagitta_shown"], line["arc_length_shown"]) == shown


def test_the_inner_stakes_of_a_walk_off_their_own_string() -> None:
    rows = {row["name"]: (row["along_shown"], row["off_shown"]) for row in second_of(told(WALK), "inside")["rows"]}
    assert rows == {
        "A in": ('0"', '0"'),
        "R1 in": ("5' 3-7/8\"", "1' 11-1/8\""),
        "Q1 in": ("10' 9-3/4\"", "3' 3-7/8\""),
        "R2 in": ("16' 4-7/8\"", "4' 2\""),
        "M in": ("22' 0-3/4\"", "4' 5-3/8\""),
        "R3 in": ("27' 8-5/8\"", "4' 2\""),
        "Q2 in": ("33' 3-7/8\"", "3' 3-7/8\""),
        "R4 in": ("38' 9-5/8\"", "1' 11-1/8\""),
        "B in": ("44' 1-1/2\"", '0"'),
    }


def test_the_ends_the_diagonals_and_the_stick_of_a_walk() -> None:
    part = told(WALK)
    inner = second_of(part, "inside")
    assert [(end["width_shown"], end["far"], end["diagonal_shown"]) for end in inner["ends"]] == [
        ("5' 0\"", "B", "46' 3-1/2\""),
        ("5' 0\"", "A", "46' 3-1/2\""),
    ]
    assert inner["text"] == (
        "A in: 5' 0\" from A, toward the center, and 46' 3-1/2\" from B. B in: the same from B and A. "
        "Then A in to B in must read 44' 1-1/2\"."
    )
    assert part["alike"] and part["diagonal_shown"] == "7' 8-7/8\"" and len(part["bays"]) == 8
    assert part["stick"]["narrow"] == pytest.approx(0.08 / 12 * FOOT, abs=0.005 / 12 * FOOT)
    assert part["stick"]["slip_text"] == "A tip 3 in out of square makes the concrete narrow by less than 1/8 in."
    assert "reads 7' 8-7/8\"" in " ".join(part["stick"]["how"])  # the tip to either neighbor: a bay's own diagonal
    assert part["area"] / FOOT**2 == pytest.approx(236.501, abs=5e-4)
    row = row_of(WALK)
    assert (row["state"], row["text"], row["more"]) == (
        "usual",
        "Inner R 57' 0\", 5' 0\" off",
        "stick for width; diagonals 7' 8-7/8\"",
    )


def test_a_hand_says_which_edge_the_line_is() -> None:
    """Where the curve is on the left of who walks from A to B, his left edge is the outer one."""
    for side in ("left", "right"):
        other = "right" if side == "left" else "left"
        assert told({**WALK, "side": side, "edge": side})["edge"] == "outside"
        assert told({**WALK, "side": side, "edge": other})["edge"] == "inside"


def test_without_a_hand_no_edge_is_left_or_right() -> None:
    job = {key: value for key, value in WALK.items() if key != "side"}
    part = told(job)
    assert part["left"] is part["right"] is None
    assert part["inside"]["length_shown"] == "45' 3-3/4\""
    assert row_of({**job, "edge": "left"})["state"] == "open"


@pytest.mark.parametrize(
    ("change", "yours", "seconds"),
    [
        ({}, "outside", ["inside"]),
        ({"edge": "inside"}, "inside", ["outside"]),
        ({"edge": "centre"}, "centre", ["outside", "inside"]),
        ({"offset": "3/4 in", "toward": "outside", "driven": "board"}, "outer_form", ["inside"]),
        ({"offset": "4 ft", "toward": "outside", "driven": "hub"}, "stakes", ["outside", "inside"]),
        ({"offset": "5 ft", "toward": "centre"}, "inside", ["outside"]),
        ({"offset": "2' 6\"", "toward": "centre"}, "centre", ["outside", "inside"]),
        ({"edge": "centre", "slab": {"end_width": "7 ft"}}, "centre", ["outside", "inside"]),
        ({"slab": {"end_width": "7 ft"}, "offset": "5 ft", "toward": "centre"}, "stakes", ["outside", "inside"]),
    ],
)
def test_on_which_line_the_stakes_stand(change: dict[str, Any], yours: str, seconds: list[str]) -> None:
    part = told({**WALK, **change})
    assert part["yours"] == yours
    assert [line["key"] for line in part["lines"] if line["yours"]] == [yours]
    assert [second["edge"] for second in part["seconds"]] == seconds
    assert [line["key"] for line in part["lines"] if line["set"]] == seconds
    radii = [line["radius"] for line in part["lines"] if line["radius"]]
    assert radii == sorted(radii, reverse=True)


def test_hubs_are_measured_from_as_they_stand() -> None:
    """Offset stakes have ends of their own: A is a hub there, not the end of the drawn line."""
    part = told({**WALK, "offset": "4 ft", "toward": "outside", "driven": "hub"})
    outer, inner = part["seconds"]
    assert [end["width_shown"] for end in (*outer["ends"], *inner["ends"])] == ["4' 0\""] * 2 + ["9' 0\""] * 2
    turn = 2 * asin(24 / 62)
    far = abs(about_center(turn, 57 * FOOT, 0) - about_center(turn, 66 * FOOT, 1))
    assert inner["ends"][0]["diagonal"] == pytest.approx(far, abs=1e-9)
    assert "toward the center" in outer["text"]
    assert {(row["width_shown"], row["slab_shown"]) for row in inner["rows"]} == {("9' 0\"", "5' 0\"")}
    assert line_of(part, "inside")["off_shown"] == "9' 0\" inside"
    assert part["passes"][0] == "Your stakes stand clear of the dig."


@pytest.mark.parametrize(("offset", "dug"), [("11 in", True), ("13 in", False)])
def test_stakes_within_the_dig_are_set_again_from_hubs(offset: str, dug: bool) -> None:
    part = told({**WALK, "offset": offset, "toward": "outside", "driven": "hub"})
    assert ("get dug out" in part["passes"][0]) is dug


@pytest.mark.parametrize(
    ("change", "radius"),
    [
        ({}, 63 * FOOT),
        ({"slab": {"overdig": "6 in"}}, 62.5 * FOOT),
        ({"slab": {"overdig": 0}}, 62 * FOOT),
        ({"unit": "m", "slab": {}}, 62 * FOOT + 0.3),
    ],
)
def test_the_dig_goes_past_the_edges(change: dict[str, Any], radius: float) -> None:
    """1 ft, or 300 mm where the tape reads metres: common practice, no source."""
    part = told({**WALK, **change})
    assert line_of(part, "dig_outside")["radius"] == pytest.approx(radius)
    past = radius - 62 * FOOT
    assert line_of(part, "dig_inside")["radius"] == pytest.approx(57 * FOOT - past)
    taken = any("unless you say otherwise" in note for note in part["notes"])
    assert taken is ("overdig" not in change.get("slab", {}))


def test_a_dig_that_takes_in_the_center_has_no_inner_line() -> None:
    part = told({**WALK, "arc": {"radius": "8 ft", "chord": "9 ft"}, "width": "7' 6\""})
    keys = [line["key"] for line in part["lines"]]
    assert "dig_inside" not in keys and "inner_form" in keys
    assert "Inside, the dig reaches the center: dig it all." in part["notes"]


@pytest.mark.parametrize(
    ("change", "state", "text"),
    [
        ({"width": None, "edge": None}, "open", "Needs the width and the side"),
        ({"width": None}, "open", "Needs the width"),
        ({"edge": None}, "open", "Needs the side"),
        ({"width": "62 ft"}, "stop", "No inner edge: too wide for R"),
        ({"width": "5 ft", "slab": {"end_width": "63 ft"}}, "stop", "No inner edge: too wide for R"),
        ({"edge": "centre", "width": "124 ft"}, "stop", "No inner edge: too wide for R"),
        ({"edge": "centre", "width": "60 ft"}, "near", "Inner R 32' 0\": tight"),
        ({"edge": "inside", "width": "70 ft"}, "near", "Inner R 62' 0\": tight"),
        ({"width": "59' 6\""}, "near", "Inner R 2' 6\": tight"),
    ],
)
def test_what_the_row_says(change: dict[str, Any], state: str, text: str) -> None:
    row = row_of({key: value for key, value in {**WALK, **change}.items() if value is not None})
    assert (row["state"], row["text"]) == (state, text)
    assert row["panel"] == ("slab" if state in ("open", "stop") else "")


@given(
    st.floats(3, 300), st.floats(0.2, 6), st.sampled_from(sorted(LINES)), st.sampled_from(["ft-in", "ft", "m", "mm"])
)
@settings(max_examples=40, deadline=None)
def test_the_row_stands_on_a_phone(radius: float, width: float, edge: str, unit: str) -> None:
    arc = {"radius": f"{radius} m", "central_angle": 40}
    row = row_of({**WALK, "arc": arc, "unit": unit, "width": f"{width} m", "edge": edge, "levels": 1})
    assert len(row["text"]) <= 36 and len(row["more"]) <= 40


def test_stakes_behind_the_board_have_its_edge_already() -> None:
    part = told({**WALK, "offset": "3/4 in", "toward": "outside", "driven": "board"})
    (inner,) = part["seconds"]
    assert [end["width_shown"] for end in inner["ends"]] == ["5' 0-3/4\""] * 2 and inner["chord_shown"] == "44' 1-1/2\""
    assert part["stick"]["length_shown"] == "5' 0\"" and part["diagonal_shown"] == "7' 8-7/8\""
    inside = told({**WALK, "edge": "inside", "offset": "3/4 in", "toward": "centre", "driven": "board"})
    assert [second["edge"] for second in inside["seconds"]] == ["outside"]
    assert inside["stick"]["how"][0] == "Set the inner board first."


def test_a_long_stick_is_a_tape_and_a_slope_is_taped_level() -> None:
    assert any("a tape does it" in text for text in told({**WALK, "width": "10' 1\""})["stick"]["how"])
    assert not any("a tape does it" in text for text in told({**WALK, "width": "10 ft"})["stick"]["how"])
    assert any("level lengths" in note for note in told({**WALK, "fall": {"along": 4}})["notes"])
    assert not any("level lengths" in note for note in told(WALK)["notes"])


def test_a_width_that_tapers_is_told_stake_by_stake() -> None:
    part = told({**WALK, "slab": {"end_width": "7 ft"}})
    rows = second_of(part, "inside")["rows"]
    assert [row["width_shown"] for row in rows] == [
        "5' 0\"", "5' 3\"", "5' 6\"", "5' 9\"", "6' 0\"", "6' 3\"", "6' 6\"", "6' 9\"", "7' 0\"",
    ]  # fmt: skip
    assert [row["slab"] for row in rows] == pytest.approx([row["width"] for row in rows])
    line = line_of(part, "inside")
    assert line["radius"] is line["sagitta"] is line["off"] is None
    assert line["off_shown"] == "5' 0\" inside to 7' 0\" inside"
    assert not {"inner_form", "dig_inside", "centre"} & {line["key"] for line in part["lines"]}
    assert not part["alike"] and "edges" not in part["diagonal_shown"]
    assert part["stick"]["marks"] == [] and part["taper"]
    assert row_of({**WALK, "slab": {"end_width": "7 ft"}})["text"] == "5' 0\" at A, 7' 0\" at B"


def test_an_end_width_that_is_the_width_is_no_taper() -> None:
    plain, same = told(WALK), told({**WALK, "slab": {"thickness": "4 in", "end_width": "60 in"}})
    assert plain == same


def test_what_stands_in_the_way_is_told() -> None:
    shed = {"name": "shed", "stops": "tape", "outline": [["20 ft", "-2 ft"], ["28 ft", "-2 ft"],
                                                         ["28 ft", "-6 ft"], ["20 ft", "-6 ft"]]}  # fmt: skip
    inner = second_of(told({**WALK, "ground": [shed]}), "inside")
    assert inner["blocked"] == "The string A in to B in is blocked by shed: use the stick."
    assert inner["text"].endswith(inner["blocked"])
    tree = {"name": "oak", "stops": "feet", "at": ["24 ft", "0 ft"], "diameter": "2 ft"}
    notes = told({**WALK, "ground": [tree], "width": "4' 10\""})["notes"]
    assert notes[0] == "M in lands on oak. Ask before you dig."


def test_a_tape_that_is_too_short_for_the_far_end_takes_a_nearer_stake() -> None:
    ends = second_of(told({**WALK, "tape": {"length": "40 ft"}, "method": "tangent"}), "inside")["ends"]
    assert all(end["far"] not in ("A", "B") and end["diagonal"] <= 40 * FOOT for end in ends)


def test_a_narrow_band_has_a_smaller_slip_or_none() -> None:
    slips = [told({**WALK, "width": width})["stick"]["slip"] for width in ("12 in", "6 in", "2 in", "1 in")]
    assert slips == pytest.approx([0.0762, 0.0254, 0.0127, None]) if None not in slips else slips[-1] is None
    assert told({**WALK, "width": "1 in"})["stick"]["slip_text"] == ""


def test_what_is_shown_in_another_unit_changes_no_number() -> None:
    own, seen = told(WALK), answering(WALK, shown="m")["edges"]  # type: ignore[arg-type]
    assert seen is not None
    assert [line["radius"] for line in own["lines"]] == [line["radius"] for line in seen["lines"]]
    assert own["stick"]["slip"] == seen["stick"]["slip"]
    assert (
        line_of(seen, "inside")["chord_shown"] == "13.451 m" and line_of(seen, "outside")["radius_shown"] == "18.898 m"
    )
