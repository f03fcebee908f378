"""The joints as they are told: running places, what decided the panels' length, and what is wrong with them."""

from __future__ import annotations

from math import asin, floor
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring.sheet.outline import part
from helping import about, answer_to
from slab_jobs import WALK as SLAB_WALK

FOOT, INCH = 0.3048, 0.0254
WALK: dict[str, Any] = {name: said for name, said in SLAB_WALK.items() if name != "grade"}


def told(**said: Any) -> Any:
    return answer_to({**WALK, **said})["joints"]


def row(**said: Any) -> Any:
    return next(one for one in answer_to({**WALK, **said})["build"] if one["key"] == "joints")


def eighths(feet: float) -> str:
    """A length to 1/8 in as a crew calls it out, worked out here."""
    count = floor(feet * 96 + 0.5)
    whole, rest = divmod(count, 96)
    inches, part = divmod(rest, 8)
    fraction = {0: "", 1: "1/8", 2: "1/4", 3: "3/8", 4: "1/2", 5: "5/8", 6: "3/4", 7: "7/8"}[part]
    tail = f"{inches}-{fraction}" if fraction else f"{inches}"
    return f"{whole}' {tail}\""


def test_the_walks_joints_are_running_distances_from_a() -> None:
    angle = 2 * asin(24 / 62)
    rows = told()["rows"]
    assert [one["name"] for one in rows] == [*"123456789", "B"]
    for place, one in enumerate(rows, 1):
        with about("joint", place):
            assert one["outside"] / FOOT == pytest.approx(62 * angle * place / 10)
            assert one["inside"] / FOOT == pytest.approx(57 * angle * place / 10)
            assert one["outside_shown"] == eighths(62 * angle * place / 10)
            assert one["inside_shown"] == eighths(57 * angle * place / 10)
    assert (rows[0]["outside_shown"], rows[0]["inside_shown"]) == ("4' 11-1/8\"", "4' 6-3/8\"")
    assert (rows[6]["outside_shown"], rows[-1]["outside_shown"], rows[-1]["inside_shown"]) == (
        "34' 6\"", "49' 3-1/2\"", "45' 3-3/4\"")  # fmt: skip


def test_the_joint_at_a_stake_is_named_and_no_other() -> None:
    assert {one["name"]: one["stake"] for one in told()["rows"] if one["stake"]} == {"5": "M"}
    assert [one["stake"] for one in told(joints={"panels": 8})["rows"]] == ["R1", "Q1", "R2", "M", "R3", "Q2", "R4", ""]
    assert not any(one["stake"] for one in told(joints={"panels": 9})["rows"])


def test_ten_panels_are_offered_and_nine() -> None:
    ten, nine = told()["offers"]
    assert (ten["count"], ten["chosen"], ten["more"]) == (10, True, "4' 11-1/8\" outside")
    assert (nine["count"], nine["chosen"], nine["more"]) == (9, False, "5' 5-3/4\" outside, over your 5' 0\"")
    assert nine["inside_shown"] == "5' 0-3/8\""
    chosen = told(joints={"every": "5 ft", "panels": 9})
    assert chosen["count"] == 9 and [one["chosen"] for one in chosen["offers"]] == [False, True]
    assert (
        row()["text"] == "10 panels, 4' 11-1/8\" outside" and row()["more"] == '4\' 6-3/8" inside; cut 1" deep or more'
    )


def test_what_decides_how_long_a_panel_is_is_said() -> None:
    for said, most, words in (
        ({"joints": {"every": "6 ft"}}, 6.0, "as you said"),
        ({"joints": {}}, 5.0, "wide: 5' 0\""),
        ({"joints": {}, "width": "14 ft"}, 10.0, 'usual limit for 4"'),
        ({"joints": {}, "width": "14 ft", "slab": {"thickness": "5 in"}}, 12.0, 'usual limit for 5"'),
        ({"joints": {}, "width": "14 ft", "slab": {}}, 10.0, "no thickness is given"),
        ({"joints": {}, "width": "6 in"}, 10.0, "curb"),
    ):
        with about(said):
            part = told(**said)
            assert part["most"] / FOOT == pytest.approx(most) and words in part["why_most"]
            assert part["outside"] <= part["most"] and part["why_most"] in part["lines"]


def test_a_joint_is_cut_a_quarter_deep_rounded_up() -> None:
    assert told()["depth"] == pytest.approx(INCH) and told()["depth_shown"] == '1"'
    assert told(slab={"thickness": "4-1/4 in"})["depth_shown"] == '1-1/8"'
    assert told(slab={})["depth"] is None and "needs the thickness" in row(slab={})["more"]
    metric = told(
        unit="mm", arc={"radius": 6000, "chord": 5000}, width="900 mm", slab={"thickness": "75 mm"}, joints={}
    )
    assert metric["depth_shown"] == "20 mm"  # 18.75 up to the tape's 5


def test_the_back_of_the_board_is_longer() -> None:
    """By theta t: 0.795 x 3/4 in is 0.60 in, 5/8 to the mark; a 2x4's back twice that."""
    assert told()["longer"] / INCH == pytest.approx(2 * asin(24 / 62) * 0.75) and told()["longer_shown"] == '5/8"'
    assert told(board={"kind": "2x4"})["longer"] == pytest.approx(2 * told()["longer"])
    assert "never mark to mark" in told()["taped"] and "concrete face" in told()["taped"]


def test_panels_over_the_usual_most_are_a_stop_without_a_table() -> None:
    said = {"joints": {"panels": 4}}
    part = told(**said)
    assert part["state"] == row(**said)["state"] == "stop" and part["rows"] == []
    assert row(**said)["text"] == 'Outside over 10\' 0" at 4"' and row(**said)["panel"] == "slab"
    assert "Use more panels" in part["stop"]
    assert [one["count"] for one in part["offers"]] == [4, 10]
    long = told(joints={"every": "20 ft"})  # beside what was asked for stands what would do
    assert long["state"] == "stop" and long["offers"][1]["outside"] <= 10 * FOOT
    assert told(joints={"panels": 5})["state"] != "stop"  # 9' 10-1/4"
    assert told(joints={"panels": 4}, slab={"thickness": "6 in"})["state"] != "stop"  # 12' 3-7/8" of 15


def test_a_panel_that_is_long_for_its_width_is_near_the_limit() -> None:
    """5 ft wide and inside R 15 ft: 5 outside, 3.3 inside, 1.5 to 1."""
    tight = {"arc": {"radius": "15 ft", "central_angle": 57.3}, "joints": {"panels": 3}}
    part = told(**tight)
    assert part["ratio"] == pytest.approx(1.5, abs=2e-3) and part["state"] == row(**tight)["state"] == "near"
    assert "to 1" in row(**tight)["more"]
    curb = told(width="6 in", joints={})
    assert curb["ratio"] > 10 and curb["state"] == "usual"  # a curb's joints aren't judged by their shape


def test_what_mends_a_shape_is_said() -> None:
    wide = told(width="14 ft", joints={})
    assert any("along the middle" in line for line in wide["lines"])
    tight = told(arc={"radius": "6 ft", "chord": "11 ft"}, width="3 ft", joints={})
    assert any("too tight" in line for line in tight["lines"])
    long = told(joints={"panels": 6}, width="4 ft")
    assert any("Use more panels" in line for line in long["lines"])


def test_a_changing_width_tells_its_corners() -> None:
    part = told(slab={"thickness": "4 in", "end_width": "4 ft"})
    assert 60 < part["corner"] < 90 and any(f"{floor(part['corner'])}°" in line for line in part["lines"])
    assert "up to" in part["conclusion"]
    assert part["rows"][0]["inside"] != pytest.approx(part["rows"][-1]["inside"] / 10, rel=1e-3)
    assert told()["corner"] == 90.0
    sharp = told(arc={"radius": "62 ft", "chord": "6 ft"}, slab={"thickness": "4 in", "end_width": "12 ft"}, joints={})
    assert (
        sharp["corner"] < 60 and sharp["state"] == "near" and any("ask the designer" in one for one in sharp["lines"])
    )


def test_what_is_open_is_asked() -> None:
    job = {key: value for key, value in WALK.items() if key != "width"}
    answer = answer_to(job)
    assert answer["joints"] is None
    one = next(one for one in answer["build"] if one["key"] == "joints")
    assert (one["state"], one["text"], one["panel"]) == ("open", "Needs the width", "slab")
    assert one["more"] == 'usual: at most 10\' 0" apart at 4"'
    job = {key: value for key, value in WALK.items() if key != "edge"}
    assert "side" in next(one for one in answer_to(job)["build"] if one["key"] == "joints")["text"]
    assert row(width="63 ft")["state"] == "stop" and told(width="63 ft") is None


def test_the_long_sheet_has_every_joint() -> None:
    section = part(answer_to(WALK), "joints")  # type: ignore[arg-type]
    assert section is not None
    text = repr(section).replace("\\", "")
    assert "4' 11-1/8" in text and "5 at M" in text and "silica" in text and "*" not in text
    stopped = part(answer_to({**WALK, "joints": {"panels": 4}}), "joints")  # type: ignore[arg-type]
    assert stopped is not None and "12' 3-7/8" in repr(stopped).replace("\\", "") and "24' 7" not in repr(stopped)


@settings(max_examples=25)
@given(st.floats(15, 200), st.floats(10, 28), st.floats(3, 12), st.sampled_from(["outside", "inside", "centre"]))
def test_joints_are_equal_and_end_at_b(radius: float, chord: float, width: float, edge: str) -> None:
    part = told(arc={"radius": f"{radius:.3f} ft", "chord": f"{chord:.3f} ft"}, width=f"{width:.3f} ft", edge=edge,
                joints={})  # fmt: skip
    radius, chord, width = round(radius, 3), round(chord, 3), round(width, 3)
    outer = radius + {"outside": 0, "inside": width, "centre": width / 2}[edge]
    angle = 2 * asin(chord / 2 / radius)
    assert part["rows"][-1]["outside"] / FOOT == pytest.approx(outer * angle, rel=1e-6)
    assert part["rows"][-1]["inside"] / FOOT == pytest.approx((outer - width) * angle, rel=1e-6)
    assert part["outside"] <= min(width, 10) * FOOT * (1 + 1e-6)
    assert part["outside"] * part["count"] == pytest.approx(part["rows"][-1]["outside"], rel=1e-6)


def test_a_size_that_stands_on_no_mark_is_called_out_short() -> None:
    """100 mm on a tape in feet is 3-15/16 in, and 4 in on one in metres 102 mm; a limit is rounded down."""
    feet = told(slab={"thickness": "100 mm"}, joints={}, width="14 ft")
    assert any('a quarter of 3-15/16"' in line for line in feet["lines"]) and feet["depth_shown"] == '1"'
    metric = {"unit": "m", "arc": {"radius": 19, "chord": 15}, "width": "5 m", "joints": {}}
    assert "usual limit for 102 mm" in told(**metric)["why_most"] and told(**metric)["most_shown"] == "3.000 m"
    assert all(len(row(**said)["more"]) <= 44 for said in (metric, {"slab": {"thickness": "100 mm"}}))
