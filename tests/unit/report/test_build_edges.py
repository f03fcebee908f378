"""Both edges as an answer tells them: a walk worked out by hand, and every number against plain trigonometry."""

from __future__ import annotations

import cmath
from itertools import pairwise
from math import asin, cos, hypot, pi, radians, sin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon

from bowstring import answering
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_edges import EdgesPart, LineRow, SecondEdge

FOOT = 0.3048
WALK: dict[str, Any] = {
    "bowstring": 1,
    "title": "Garden walk",
    "arc": {"radius": "62 ft", "chord": "48 ft"},
    "ends": {"A": "lamp post", "B": "gate pier"},
    "side": "left",
    "drawn_to": "face",
    "levels": 3,
    "method": "halving",
    "width": "5 ft",
    "edge": "outside",
    "slab": {"thickness": "4 in"},
}
PAST_HALF: dict[str, Any] = {**WALK, "arc": {"radius": "10 ft", "central_angle": 250}, "levels": 2, "width": "3 ft"}


def told(job: dict[str, Any]) -> EdgesPart:
    part = answering(job)["edges"]  # type: ignore[arg-type]
    assert part is not None
    return part


def row_of(job: dict[str, Any]) -> BuildRow:
    answer = answering(job)  # type: ignore[arg-type]
    return next(row for row in answer["build"] if row["key"] == "edges")


def line_of(part: EdgesPart, key: str) -> LineRow:
    return next(line for line in part["lines"] if line["key"] == key)


def second_of(part: EdgesPart, edge: str) -> SecondEdge:
    return next(second for second in part["seconds"] if second["edge"] == edge)


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
    assert part["stick"]["slip_text"] == "3 in off square at the tip makes the slab less than 1/8 in narrow."
    assert "reads 7' 8-7/8\"" in " ".join(part["stick"]["how"])  # the tip to either neighbor: a bay's own diagonal
    assert part["area"] / FOOT**2 == pytest.approx(236.501, abs=5e-4)
    row = row_of(WALK)
    assert (row["state"], row["text"], row["more"]) == (
        "usual",
        "Inner R 57' 0\", 5' 0\" off",
        "stick for width; diagonals 7' 8-7/8\"",
    )


def about_center(part_angle: float, radius: float, share: float) -> complex:
    """A mark about the center, the arc's middle straight up, A at the left."""
    return radius * cmath.exp(1j * (pi / 2 + part_angle * (0.5 - share)))


LINES = {"outside": (0.0, -1.0), "inside": (1.0, 0.0), "centre": (0.5, -0.5)}


@given(
    radius=st.floats(4, 60),
    angle=st.floats(10, 300),
    width=st.floats(0.3, 3.5),
    far=st.floats(0.3, 3.5) | st.none(),
    edge=st.sampled_from(sorted(LINES)),
    hubs=st.sampled_from([None, ("outside", 1.2), ("centre", 0.4)]),
    side=st.sampled_from(["left", "right"]),
    levels=st.integers(1, 3),
)
@settings(max_examples=60, deadline=None)
def test_every_number_is_that_of_plain_trigonometry(
    radius: float,
    angle: float,
    width: float,
    far: float | None,
    edge: str,
    hubs: tuple[str, float] | None,
    side: str,
    levels: int,
) -> None:
    job: dict[str, Any] = {
        **WALK, "unit": "m", "side": side, "levels": levels, "edge": edge, "width": f"{width} m",
        "arc": {"radius": f"{radius} m", "central_angle": angle}, "tape": {"length": "900 m"},
    }  # fmt: skip
    if far is not None:
        job["slab"] = {"end_width": f"{far} m"}
    outward = 0.0
    if hubs:
        job |= {"offset": f"{hubs[1]} m", "toward": hubs[0], "driven": "hub"}
        outward = hubs[1] * (1 if hubs[0] == "outside" else -1)
    part = told(job)
    turn, last = radians(angle), width if far is None else far
    widths = {key: (width * lies, last * lies) for key, lies in zip(("outside", "inside"), LINES[edge], strict=True)}

    def mark(key: str, share: float) -> complex:
        near, there = widths[key]
        return about_center(turn, radius + near + (there - near) * share, share)

    stakes = {f"{name}": share for name, share in _shares(levels)}
    places = {name: about_center(turn, radius + outward, share) for name, share in stakes.items()}
    for second in part["seconds"]:
        key = second["edge"]
        start, string = mark(key, 0), mark(key, 1) - mark(key, 0)
        assert second["chord"] == pytest.approx(abs(string), abs=1e-6)
        for row in second["rows"]:
            share = stakes[row["stake"]]
            off = (mark(key, share) - start) * string.conjugate() / abs(string)
            assert (row["along"], row["off"]) == pytest.approx((off.real, off.imag), abs=1e-6)
            assert abs(row["width"]) == pytest.approx(abs(mark(key, share) - places[row["stake"]]), abs=1e-6)
        for end, share in zip(second["ends"], (0.0, 1.0), strict=True):
            assert end["width"] == pytest.approx(abs(mark(key, share) - places[end["near"]]), abs=1e-6)
            assert end["diagonal"] == pytest.approx(abs(mark(key, share) - places[end["far"]]), abs=1e-6)
    for bay in part["bays"]:
        here, there = stakes[bay["first"]], stakes[bay["last"]]
        forth = abs(mark("outside", here) - mark("inside", there))
        back = abs(mark("inside", here) - mark("outside", there))
        assert (bay["forth"], bay["back"]) == pytest.approx((forth, back), abs=1e-6)
    many = [step / 6000 for step in range(6001)]
    outside, inside = ([mark(key, share) for share in many] for key in ("outside", "inside"))
    ring = [(one.real, one.imag) for one in [*outside, *reversed(inside)]]
    assert part["area"] == pytest.approx(Polygon(ring).area, rel=1e-6)
    for key, places_of in (("outside", outside), ("inside", inside)):
        length = LineString([(one.real, one.imag) for one in places_of]).length
        assert line_of(part, key)["arc_length"] == pytest.approx(length, rel=1e-6)
    hands = {"left": part["outside"], "right": part["inside"]}
    assert (part["left"], part["right"]) == (hands[side], hands["right" if side == "left" else "left"])


def _shares(levels: int) -> list[tuple[str, float]]:
    """Names of the stakes of halving from A to B: A, M, B; then Q; then R."""
    names = {0.0: "A", 0.5: "M", 1.0: "B"}
    for level, letter in zip(range(2, levels + 1), "QR", strict=False):
        for place in range(2 ** (level - 1)):
            names[(2 * place + 1) / 2**level] = f"{letter}{place + 1}"
    return [(name, share) for share, name in sorted(names.items())]


@given(st.sampled_from(sorted(LINES)), st.floats(20, 320), st.floats(0.5, 3), st.booleans())
@settings(max_examples=25, deadline=None)
def test_the_hand_turns_no_number(edge: str, angle: float, width: float, tapers: bool) -> None:
    job = {**WALK, "edge": edge, "arc": {"radius": "6 m", "central_angle": angle}, "width": f"{width} m"}
    if tapers:
        job["slab"] = {"end_width": "1 m"}
    left, right = (dict(told({**job, "side": side})) for side in ("left", "right"))
    assert (left.pop("left"), left.pop("right")) == (right.pop("right"), right.pop("left"))
    for second in (*left["seconds"], *right["seconds"]):  # type: ignore[misc]
        second.pop("own")
    assert left == right


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
        ({"offset": "3/4 in", "toward": "outside", "driven": "board"}, "outer_form", ["outside", "inside"]),
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
    assert "Inside, the dig takes in the center: dig all of it." in part["notes"]


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


def test_an_end_is_crossed_from_a_stake_where_the_far_end_lies_in_line() -> None:
    """On a half circle A, A in and B lie on one line: two tapes from A and B would slide along each other."""
    half = told({**WALK, "arc": {"radius": "10 ft", "central_angle": 180}, "levels": 2, "width": "4 ft"})
    ends = second_of(half, "inside")["ends"]
    assert [end["far"] for end in ends] == ["Q1", "Q2"]
    steep = told({**WALK, "arc": {"radius": "10 ft", "central_angle": 165}, "levels": 3, "width": "4 ft"})
    for end in second_of(steep, "inside")["ends"]:
        turn, radius = radians(165), 10 * FOOT
        stakes = dict(_shares(3))
        at = 0.0 if end["near"] == "A" else 1.0
        mark = about_center(turn, 6 * FOOT, at)
        near, far = (about_center(turn, radius, stakes[name]) - mark for name in (end["near"], end["far"]))
        assert abs((near.conjugate() * far).imag) / abs(near) / abs(far) >= 0.4


def test_the_two_tapes_of_an_end_cross_in_its_place() -> None:
    """Solved back from the shown numbers: half a mark of the tape moves it by no more than a mark."""
    part = told(WALK)
    turn = 2 * asin(24 / 62)
    a, b = (about_center(turn, 62.0, share) for share in (0, 1))
    near, far = 5.0, 46 + 3.5 / 12
    base = abs(b - a)
    along = (near**2 - far**2 + base**2) / (2 * base)
    off = -((near**2 - along**2) ** 0.5)  # toward the center
    crossed = a + (b - a) / base * complex(along, off)
    assert abs(crossed - about_center(turn, 57.0, 0)) < 0.04 / 12
    assert second_of(part, "inside")["ends"][0]["diagonal"] / FOOT == pytest.approx(far, abs=1 / 192)


def test_past_a_half_circle_marks_lie_before_and_past_their_string() -> None:
    rows = {row["name"]: row for row in second_of(told(PAST_HALF), "inside")["rows"]}
    turn, inner = radians(250), 7 * FOOT
    out = inner * sin(turn / 2)
    first = inner * cos(pi / 2 - turn / 4)
    assert rows["Q1 in"]["along"] == pytest.approx(out - first) and rows["Q1 in"]["along"] < 0
    assert rows["Q1 in"]["along_shown"].endswith(" before A in") and "-" not in rows["Q1 in"]["along_shown"][:1]
    assert rows["Q2 in"]["along_shown"].endswith(" past B in")
    assert rows["Q1 in"]["along_shown"].split(" before")[0] == rows["Q2 in"]["along_shown"].split(" past")[0]


def test_a_width_that_tapers_is_told_stake_by_stake() -> None:
    part = told({**WALK, "slab": {"end_width": "7 ft"}})
    rows = second_of(part, "inside")["rows"]
    assert [row["width_shown"] for row in rows] == [
        "5' 0\"", "5' 3\"", "5' 6\"", "5' 9\"", "6' 0\"", "6' 3\"", "6' 6\"", "6' 9\"", "7' 0\"",
    ]  # fmt: skip
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


def test_the_numbers_follow_the_chord_that_was_found() -> None:
    found = {**WALK, "found": {"chord": ["48' 2-1/2\"", "48' 2-1/2\""], "tape": "level", "hold": "radius"}}
    answer = answering(found)  # type: ignore[arg-type]
    part = answer["edges"]
    assert part is not None and answer["held"]
    turn = 2 * asin((48 + 2.5 / 12) / 2 / 62)
    assert line_of(part, "inside")["chord"] == pytest.approx(2 * 57 * FOOT * sin(turn / 2))
    assert second_of(part, "inside")["chord_shown"] == "44' 3-7/8\""


def test_a_stake_that_was_got_elsewhere_has_its_partner_square_across() -> None:
    read = [{"from": "A", "to": "M", "distance": "24' 2\""}, {"from": "M", "to": "B", "distance": "24' 9\""}]
    got = {**WALK, "got": [{"stake": "M", "measures": read}]}
    answer = answering(got)  # type: ignore[arg-type]
    part = answer["edges"]
    assert part is not None
    row = next(row for row in second_of(part, "inside")["rows"] if row["stake"] == "M")
    plain = next(row for row in second_of(told(WALK), "inside")["rows"] if row["stake"] == "M")
    stake = next(stake for stake in answer["stakes"] if stake["name"] == "M")
    share = stake["along"] / answer["staked"]["arc_length"]
    turn = 2 * asin(24 / 62)
    mark = about_center(turn, 57 * FOOT, share) - about_center(turn, 57 * FOOT, 0)
    assert row["along"] < plain["along"] - 0.05
    assert (row["along"], row["off"]) == pytest.approx((mark.real, mark.imag), abs=1e-9)
    assert any("stands off the arc" in text for text in part["stick"]["how"])


def test_what_stands_in_the_way_is_told() -> None:
    shed = {"name": "shed", "stops": "tape", "outline": [["20 ft", "-2 ft"], ["28 ft", "-2 ft"],
                                                         ["28 ft", "-6 ft"], ["20 ft", "-6 ft"]]}  # fmt: skip
    inner = second_of(told({**WALK, "ground": [shed]}), "inside")
    assert inner["blocked"] == "shed is in the way of the string A in to B in: use the stick."
    assert inner["text"].endswith(inner["blocked"])
    tree = {"name": "oak", "stops": "feet", "at": ["24 ft", "0 ft"], "diameter": "2 ft"}
    notes = told({**WALK, "ground": [tree], "width": "4' 10\""})["notes"]
    assert notes[0] == "oak stands where M in goes. Ask before you dig."


def test_a_tape_that_is_too_short_for_the_far_end_takes_a_nearer_stake() -> None:
    ends = second_of(told({**WALK, "tape": {"length": "40 ft"}, "method": "tangent"}), "inside")["ends"]
    assert all(end["far"] not in ("A", "B") and end["diagonal"] <= 40 * FOOT for end in ends)


@pytest.mark.parametrize("edge", ["outside", "inside", "centre"])
def test_a_slip_of_the_stick_is_solved_back(edge: str) -> None:
    part = told({**WALK, "edge": edge})
    stick = part["stick"]
    assert stick["slip"] is not None and stick["narrow"] is not None
    length, slip = stick["length"], stick["slip"]
    found = []
    for second in part["seconds"]:
        base = 62 * FOOT
        reach = length if second["edge"] == "outside" else -length
        tip = hypot(base + (1 if reach > 0 else -1) * (length**2 - slip**2) ** 0.5, slip)
        found.append(length - abs(tip - base))
    assert stick["narrow"] == pytest.approx(max(found), abs=1e-9)


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


def test_gaps_that_are_not_alike_have_each_its_diagonals() -> None:
    part = told({**WALK, "method": "ordinates", "levels": 3})
    assert not part["alike"]
    assert len(part["bays"]) == len(second_of(part, "inside")["rows"]) - 1
    for before, after in pairwise(part["bays"]):
        assert before["last"] == after["first"]
    assert "diagonals are below" in " ".join(part["stick"]["how"])
