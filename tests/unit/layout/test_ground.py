"""The sheet of one job held against its ground: the ends, halving past something, the checks and the triangles.

The arc is that of test_advice.py: chord 40 ft, mid-ordinate 10 ft, radius 25 ft. Lengths in the comments are feet.
"""

from __future__ import annotations

from math import hypot
from typing import Any

import pytest
from shapely import LineString, Polygon

from helping import answer_to
from unit.layout.test_advice import ARC, FOOT, POST, ask, box, changes, possible, row

OAK = box("the oak", 18, -3, 22, 7)
"""Across the chord and under M (20, 10)."""
SHED = box("the shed", 18, 3, 22, 7)
"""On the mid-ordinate of M alone."""
PLAIN: dict[str, Any] = {"side": "left", "drawn_to": "face"}


def told(*ground: dict[str, Any], **keys: Any) -> dict[str, Any]:
    return answer_to({"arc": ARC, "levels": 2, "tolerance": "1 in", "ground": list(ground), **PLAIN, **keys})


def ends_of(sheet: dict[str, Any]) -> list[dict[str, Any]]:
    return [step for step in sheet["steps"] if step["level"] == 0]


def kinds(sheet: dict[str, Any]) -> list[str]:
    return [step["kind"] for step in sheet["steps"]]


def read(sheet: dict[str, Any], start: str, end: str) -> float:
    """What a step tapes between two marks, feet."""
    (found,) = {one["distance"] for step in sheet["steps"] for one in step["measures"]
                if {one["from"], one["to"]} == {start, end}}  # fmt: skip
    return found / FOOT


# The ends.


def test_a_chord_in_the_open_is_taped() -> None:
    assert kinds(told())[:2] == ["have_ends", "string"]
    assert read(told(), "A", "B") == pytest.approx(40)


@pytest.mark.parametrize("start", ["ends", "neither"])
def test_a_blocked_chord_is_proved_from_a_point_beside(start: str) -> None:
    """Half the way from D to both ends: the line across is half of A-B, whatever the triangle."""
    sheet = told(OAK, start=start)
    assert kinds(sheet)[1] == "prove_beside" and kinds(sheet)[2] == "string_none"
    first, second = read(sheet, "A", "D"), read(sheet, "B", "D")
    assert first == round(first) and second == round(second)
    assert read(sheet, "D", "DA") == pytest.approx(first / 2) and read(sheet, "D", "DB") == pytest.approx(second / 2)
    assert read(sheet, "DA", "DB") == pytest.approx(20)
    assert not any({one["from"], one["to"]} == {"A", "B"} for step in sheet["steps"] for one in step["measures"])
    assert "Tape from A to B" not in " ".join(step["text"] for step in sheet["steps"])
    assert not sheet["stops"]


def test_a_long_chord_is_taped_in_parts() -> None:
    """186 on a 100-ft tape: 100, and 86 are left; on one of 30, six times 30 and 6."""
    arc = {"chord": "186 ft", "sagitta": "20 ft"}
    sheet = told(arc=arc, method="ordinates")
    assert kinds(sheet)[1] == "prove_two" and read(sheet, "D1", "B") == pytest.approx(86)
    assert "A to B is 186' 0\"" in " ".join(sheet["cautions"])
    short = told(arc=arc, method="angles", levels=4, tape={"length": "30 ft"})
    assert kinds(short)[1] == "prove_parts"
    assert [read(short, "A" if n == 1 else f"D{n - 1}", f"D{n}") for n in range(1, 7)] == pytest.approx([30] * 6)
    assert read(short, "D6", "B") == pytest.approx(6)


def test_no_nail_stands_in_a_pond() -> None:
    """With the first nail at 100 in a pond it is put at 90 instead."""
    arc = {"chord": "186 ft", "sagitta": "20 ft"}
    sheet = told(box("the pond", 98, -2, 102, 2, "feet"), arc=arc, method="ordinates")
    assert read(sheet, "A", "D1") == pytest.approx(90) and read(sheet, "D2", "B") == pytest.approx(6)


def test_a_straight_whose_end_cant_be_taped_back_to_a() -> None:
    """F is 40 x 0.6 = 24 past A, B 32 off it. The third side A-B is blocked: the triangle at F is told in full."""
    sheet = told(OAK, start="one-end")
    (step,) = [step for step in sheet["steps"] if step["kind"] == "from_straight_untaped"]
    assert "3-4-5 triangle" in step["text"] and "reads 40" not in step["text"]
    assert kinds(sheet)[2] == "prove_beside"


def test_a_corner_is_proved_across_its_straights() -> None:
    """T = 33 1/3: DA and DB some way down both straights, and A-B's 40 in proportion."""
    sheet = told(OAK, start="corner")
    down = read(sheet, "P", "DA")
    assert read(sheet, "DA", "DB") == pytest.approx(40 * down / (100 / 3))
    assert "prove_corner" in kinds(sheet) and not sheet["stops"]


@pytest.mark.parametrize("start", ["ends", "corner"])
@pytest.mark.parametrize("toward", ["centre", "outside"])
def test_ends_off_the_drawn_line_past_a_blocked_chord(start: str, toward: str) -> None:
    """A is 2 ft from A0 along the radius, without the line A0-B0."""
    sheet = told(OAK, start=start, offset="2 ft", toward=toward)
    at = {mark["name"]: (mark["x"] / FOOT, mark["y"] / FOOT) for mark in sheet["marks"]}
    radius = 23 if toward == "centre" else 27
    centre = at["A0"][0] + 20, at["A0"][1] - 15
    for end in ("A", "B"):
        assert hypot(at[end][0] - centre[0], at[end][1] - centre[1]) == pytest.approx(radius)
        assert read(sheet, end, f"{end}0") == pytest.approx(2)
    assert not sheet["stops"]


def test_an_end_in_a_pond_stops_every_method() -> None:
    told_ = ask(box("the pond", -1, -1, 1, 1, "feet"))
    assert possible(told_) == set()
    assert "At A nobody can stand: the pond." in row(told_, "tapes")["why_not"]


def test_a_tie_is_held_against_tape_and_ground() -> None:
    """The pump at (0, -30): its tie is 30, past a shed at y -12 to -8. Another is longer than the tape."""
    pump = {"name": "pump", "x": "0 ft", "y": "-30 ft"}
    ties = {"A": [{"to": "Pump", "distance": "30 ft"}, {"to": "oak", "distance": "61 ft"}]}
    job = {"known": [pump], "ties": ties, "tape": {"length": "60 ft"}}
    plain, blocked = told(**job), told(box("the shed", -2, -12, 2, -8), **job)
    assert any("tie from A to oak is 61' 0\"" in text for text in plain["cautions"])
    assert not any("tie from A to Pump" in text for text in plain["cautions"])
    assert "the shed is in the way of the tie from A to Pump. Tie A to something else." in blocked["cautions"]
    longer = told(**{**job, "tape": {"length": "61 ft"}})
    assert not any("Tie A" in text for text in longer["cautions"])


def test_the_board_runs_on_only_where_there_is_room() -> None:
    """2 ft past A on the tangent, 1.2 along the string and 1.6 off it, (-1.2, -1.6): a shed stands there. B is free."""
    shed = box("the shed", -2, -3, -0.5, -0.5)
    open_ground, blocked = (sheet["on_line"]["overrun"] for sheet in (told(), told(shed)))
    assert [stake["name"] for stake in open_ground["stakes"]] == ["A", "B"]
    assert "Past" not in open_ground["text"].partition("string")[0]
    assert "Past A the shed is in the way: run nothing on there." in blocked["text"]
    assert "Past B" not in blocked["text"] and [stake["name"] for stake in blocked["stakes"]] == ["B"]
    assert told(shed, box("the bin", 40.5, -3, 42, -0.5))["on_line"]["overrun"] is None


# Halving past something.


def test_only_the_stake_whose_middle_is_blocked_is_crossed() -> None:
    sheet = told(SHED)
    assert kinds(sheet) == ["have_ends", "string", "stake_crossed", "stake", "stake"]
    assert read(sheet, "A", "M") == pytest.approx(hypot(20, 10))
    assert "Cross 22' 4-3/8\" from A with 22' 4-3/8\" from B, on the left" in sheet["steps"][2]["text"]
    assert sheet["tables"][0]["kind"] == "crossed" and sheet["tables"][0]["rows"][0][0] == "M"
    assert not sheet["stops"]
    right = told(SHED, side="right")
    assert "on the right" in right["steps"][2]["text"]


def test_a_crossed_stake_is_reckoned_with_as_such() -> None:
    """M: two readings on either tape, the tape's scale and driving; its sigma without scale and driving is a reading
    times half chord over mid-ordinate, root 500 / 10."""
    sheet = told(SHED, errors={"read": "1/16 in", "stake": "0 in", "scale": 0, "line": "0 in"})
    m = next(stake for stake in sheet["stakes"] if stake["name"] == "M")
    assert m["sigma_across"] == pytest.approx(FOOT / 192 * hypot(20, 10) / 10, rel=1e-6)
    shown = round(hypot(20, 10) * 96) / 96
    miss = next(stake for stake in sheet["rounding"]["stakes"] if stake["name"] == "M")["miss"]
    assert miss / FOOT == pytest.approx((shown**2 - 400) ** 0.5 - 10, abs=1e-9)


@pytest.mark.parametrize(("tolerance", "works"), [("1 in", True), ("1/2 in", False), (None, True)])
def test_a_crossing_stays_within_a_third_of_the_tolerance(tolerance: str | None, works: bool) -> None:
    """0.0361 in a reading, 0.047 in off the mark, times 2.236: 0.185 in, against 0.333, 0.167 and two marks, 0.25."""
    sheet = ask(SHED, **({"tolerance": tolerance} if tolerance else {}))
    assert row(sheet, "halving")["possible"] is works
    if not works:
        assert "The tape out to M is blocked by the shed." in row(sheet, "halving")["why_not"]


def test_equal_half_chords_prove_no_mid_ordinate() -> None:
    """1 in wrong in the mid-ordinate s moves the half chord h by s/h of it: 10/22.36 at M. The step asks for a second
    reading of the one and says what the others say."""
    text = told()["steps"][2]["text"]
    assert "a second time" in text and "That only squares it" in text
    assert "twice" in told()["halving"][1]["how"]


# The checks.


def lines_of(sheet: dict[str, Any]) -> dict[str, LineString]:
    """Every line that a check of a sheet tapes or stretches, by its marks."""
    at = {mark["name"]: (mark["x"], mark["y"]) for mark in sheet["marks"]}
    found = {}
    for check in sheet["checks"]:
        pairs = [(check["from"], check["to"])]
        if check["kind"] == "alternate":
            pairs.append(tuple(check["from"].removeprefix("mid ").split("-")))
        if check["kind"] == "ordinate":
            pairs.append(("A", "B"))
        found |= {f"{one} {other}": LineString([at[one], at[other]]) for one, other in pairs}
    return found


def test_no_check_runs_through_an_obstacle_and_each_stake_keeps_one() -> None:
    """The oak stops the string A-B and both long crossings; a post stops the string Q1-Q2 (y = 7.36)."""
    ground = [OAK, box("the post", 15, 7, 15.5, 7.6)]
    sheet = told(*ground, levels=3)
    shapes = [Polygon([[float(part.split()[0]) * FOOT for part in corner] for corner in one["outline"]])
              for one in ground]  # fmt: skip
    for name, line in lines_of(sheet).items():
        assert all(line.intersection(shape).length < 0.005 for shape in shapes), name
    touched = {mark for check in sheet["checks"] for mark in (check["from"], check["to"])}
    assert touched >= {"Q1", "M", "Q2"}


def test_no_check_is_longer_than_the_tape() -> None:
    """A to Q2 is 2 R sin(3h/4) = 32.04: on a 30-ft tape that is no check, nor is the ordinate 31 ft from A."""
    long = told(levels=3)
    short = told(levels=3, tape={"length": "30 ft"})
    assert max(check["distance"] for check in long["checks"]) > 32 * FOOT
    assert max(check["distance"] for check in short["checks"]) <= 30 * FOOT
    assert max(check["along"] or 0 for check in short["checks"]) <= 30 * FOOT


# The triangles.


def test_the_triangle_that_is_printed_is_the_one_that_is_reckoned_with() -> None:
    """Longest offset 10 on a string of 20 to either side: of the whole-number triangles that reach the stake and no
    farther than 12.5 out, 16-12-20 turns least. A reading r turns it by 2 x 20 r/(16 x 12)."""
    errors = {"read": "1/16 in", "stake": "0 in", "scale": 0, "line": "0 in"}
    sheet = told(method="ordinates", errors=errors)
    assert "16' 0\" along" in sheet["square"][0] and "12' 0\" out" in sheet["square"][0]
    middle = next(stake for stake in sheet["stakes"] if stake["name"] == "K2")
    turn = 2 * 20 / (16 * 12) / FOOT * (FOOT / 192)
    foot = FOOT / 192 * 2**0.5
    assert middle["sigma_along"] == pytest.approx(hypot(turn * 10 * FOOT, foot), rel=1e-6)


def test_where_it_has_no_room_another_is_printed_and_reckoned_with() -> None:
    """A post at (28, 6) is on the long side of K2's triangle toward B, (36, 0) to (20, 12): it lies toward A instead.
    With another at (12, 6) both are stopped, and a smaller one is taken."""
    east, west = box("the east post", 27.8, 5.8, 28.2, 6.2), box("the west post", 11.8, 5.8, 12.2, 6.2)
    one = told(east, method="ordinates")
    assert any(line.startswith("For K2 instead") and "toward A" in line for line in one["square"])
    both = told(east, west, method="ordinates")
    (line,) = [line for line in both["square"] if "K2" in line and "instead" in line]
    assert "16' 0\" along" not in line
    sigma = {name: next(stake["sigma_along"] for stake in sheet["stakes"] if stake["name"] == "K2")
             for name, sheet in (("open", told(method="ordinates")), ("one", one), ("both", both))}  # fmt: skip
    assert sigma["one"] == pytest.approx(sigma["open"]) and sigma["both"] > sigma["open"] * 1.0001
    assert row(both, "ordinates")["possible"]


def test_no_triangle_is_longer_than_the_tape() -> None:
    sheet = told(arc={"chord": "186 ft", "sagitta": "20 ft"}, method="ordinates", tape={"length": "95 ft"})
    assert "long side" in sheet["square"][0]
    short = told(method="tangent", tape={"length": "22 ft"})
    assert "27' 0\"" not in short["square"][0]


def test_halvings_own_triangle_finds_room_at_every_string_of_its_level() -> None:
    """In the open the first level's is 16-12-20; two posts on its long sides leave a smaller one."""
    open_ground = told()["halving"][0]["squaring"]
    assert open_ground["along"] == pytest.approx(16 * FOOT) and open_ground["out"] == pytest.approx(12 * FOOT)
    east, west = box("the east post", 27.8, 5.8, 28.2, 6.2), box("the west post", 11.8, 5.8, 12.2, 6.2)
    assert told(east)["halving"][0]["squaring"]["along"] == pytest.approx(16 * FOOT)
    squaring = told(east, west)["halving"][0]["squaring"]
    assert (squaring["along"], squaring["out"]) != (open_ground["along"], open_ground["out"])


# Services.


@pytest.mark.parametrize("name", ["Gas meter", "water main", "the WATERMAIN", "manhole 3", "power pole", "utility box"])
def test_nobody_is_told_to_move_what_may_be_a_service(name: str) -> None:
    """The same post by another name: no change is offered, and the name is told."""
    told = ask({**POST, "name": name})
    assert possible(told) == set() and changes(told) == {}
    assert name in told["advice"]["text"] and "Don't move it" in told["advice"]["text"]
