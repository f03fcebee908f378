"""Every number of both edges against plain trigonometry and shapely."""

from __future__ import annotations

from itertools import pairwise
from math import asin, cos, hypot, pi, radians, sin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon

from bowstring import answering
from edge_jobs import FOOT, LINES, WALK, about_center, line_of, second_of, shares, told

PAST_HALF: dict[str, Any] = {**WALK, "arc": {"radius": "10 ft", "central_angle": 250}, "levels": 2, "width": "3 ft"}


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

    stakes = {f"{name}": share for name, share in shares(levels)}
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


def test_an_end_is_crossed_from_a_stake_where_the_far_end_lies_in_line() -> None:
    """On a half circle A, A in and B lie on one line: two tapes from A and B would slide along each other."""
    half = told({**WALK, "arc": {"radius": "10 ft", "central_angle": 180}, "levels": 2, "width": "4 ft"})
    ends = second_of(half, "inside")["ends"]
    assert [end["far"] for end in ends] == ["Q1", "Q2"]
    steep = told({**WALK, "arc": {"radius": "10 ft", "central_angle": 165}, "levels": 3, "width": "4 ft"})
    for end in second_of(steep, "inside")["ends"]:
        turn, radius = radians(165), 10 * FOOT
        stakes = dict(shares(3))
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
    assert part["off_line"] and all(text.startswith("M stands") for text in part["off_line"])


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


def test_gaps_that_are_not_alike_have_each_its_diagonals() -> None:
    part = told({**WALK, "method": "ordinates", "levels": 3})
    assert not part["alike"]
    assert len(part["bays"]) == len(second_of(part, "inside")["rows"]) - 1
    for before, after in pairwise(part["bays"]):
        assert before["last"] == after["first"]
    assert "diagonals are below" in " ".join(part["stick"]["how"])
