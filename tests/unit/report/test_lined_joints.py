"""The joints along a line, told: one arc as an arc alone has it, a walk and a kink by hand, and limits."""

from __future__ import annotations

from itertools import pairwise
from math import ceil, radians
from typing import Any

import pytest

import bowstring
from lined_jobs import CREEK, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK

FOOT = 0.3048


def answered(job: dict[str, Any], **other: Any) -> Any:
    return bowstring.answering({**job, **other})  # type: ignore[typeddict-item]


def page(job: dict[str, Any] = CREEK, **other: Any) -> Any:
    return next(one for one in answered(job, **other)["lined"]["pages"] if one["key"] == "joints")


def straight(length: str, **other: Any) -> dict[str, Any]:
    return {"straight": length, **other}


@pytest.mark.parametrize("joints", [{}, {"every": "5 ft"}, {"panels": 9}, {"every": "3 ft"}, {"panels": 1}])
def test_one_arc_as_a_line_has_the_joints_of_the_arc_alone(joints: dict[str, Any]) -> None:
    alone, told = answered(WALK, joints=joints)["joints"], page(ONE_ARC, joints=joints)
    made = answered(ONE_ARC, joints=joints)["joints"]
    assert told["state"] == alone["state"] and made["count"] == alone["count"]
    assert made["left"] == pytest.approx([row["outside"] for row in alone["rows"][:-1]])
    assert made["right"] == pytest.approx([row["inside"] for row in alone["rows"][:-1]])
    if told["state"] == "stop":
        assert told["tables"] == [] and alone["outside_shown"] in told["stop"] and alone["most_shown"]
        return
    (table,) = told["tables"]
    assert [row[1:3] for row in table["rows"]] == [[row["outside_shown"], row["inside_shown"]] for row in alone["rows"]]
    assert alone["outside_shown"] in told["conclusion"] and alone["inside_shown"] in told["conclusion"]
    other = [line for line in alone["lines"][1:] if line not in told["lines"]]
    assert all(line == alone["why_most"] or "over 1.5" in line for line in other)
    assert any("over 1.5" in line for line in alone["lines"]) == any("over 1.5" in line for line in told["lines"])


def test_a_walk_by_hand() -> None:
    """No panel over 6 ft, the width: 20 ft make 4, R 34 ft by 70 degrees 7, R 27 ft by 40 degrees 4, 8.5 ft 2."""
    outer = [20, 34 * radians(70), 27 * radians(40), 8.5]
    counts = [ceil(length / 6) for length in outer]
    assert counts == [4, 7, 4, 2]
    made = answered(CREEK)["joints"]
    assert made["count"] == sum(counts) == 17
    left, right = ([0, *(at / FOOT for at in made[hand])] for hand in ("left", "right"))
    assert [after - before for before, after in pairwise(left)][:4] == pytest.approx([5] * 4)
    assert [after - before for before, after in pairwise(left)][4:11] == pytest.approx([28 * radians(10)] * 7)
    assert [after - before for before, after in pairwise(right)][4:11] == pytest.approx([34 * radians(10)] * 7)
    assert [after - before for before, after in pairwise(right)][11:15] == pytest.approx([21 * radians(10)] * 4)
    told = page()
    rows = told["tables"][0]["rows"]
    assert [row[3] for row in rows if row[3]] == ["Arc 2 begins", "Arc 3 begins", "Straight 4 begins", "the end"]
    assert (rows[3][0], rows[10][0], rows[14][0], rows[-1][0]) == ("4", "11", "15", "")
    # 21 ft through 10 degrees is 3.665 ft long, 6 ft wide: 1.637 to 1.
    assert (told["state"], told["more"]) == ("near", "panel 12: 1.64 to 1, over 1.5")
    assert "Panel 12 is 1.64 to 1, over 1.5: too short for its width" in " ".join(told["lines"])
    assert told["conclusion"] == "*17 panels*, none longer than 5' 11-1/4\". The shortest side is 3' 8\"."


def test_longer_panels_cure_it() -> None:
    """The worst is then of the last straight: 6 ft wide, 4.25 ft long."""
    told = page(joints={"every": "6 ft 6 in"})
    assert (told["state"], told["more"]) == ("near", "panel 15: 1.41 to 1, limit 1.5") and "keep under 1.5" in " ".join(
        told["lines"]
    )
    assert "Panels are at most 6' 6\" along either form, as you said." in told["lines"]


def test_a_count_is_spread_over_the_pieces() -> None:
    """The longest is as short as it can be: no other spreading of twelve panels over the four pieces has a shorter."""
    outer = [20, 34 * radians(70), 27 * radians(40), 8.5]
    best = min(
        max(length / count for length, count in zip(outer, (a, b, c, 12 - a - b - c), strict=True))
        for a in range(1, 10)
        for b in range(1, 11 - a)
        for c in range(1, 12 - a - b)
    )
    told, made = page(joints={"panels": 12}), answered(CREEK, joints={"panels": 12})["joints"]
    assert made["count"] == 12
    right = [0, *(at / FOOT for at in made["right"]), 20 + 34 * radians(70) + 21 * radians(40) + 8.5]
    left = [0, *(at / FOOT for at in made["left"]), 20 + 28 * radians(70) + 27 * radians(40) + 8.5]
    longest = max(after - before for marks in (left, right) for before, after in pairwise(marks))
    assert longest == pytest.approx(best)
    assert "12 panels, as you said. The usual limit is 10' 0\" long." in told["lines"]


def test_fewer_panels_than_pieces_are_told() -> None:
    short = [straight("5 ft"), {"arc": {"radius": "20 ft", "central_angle": "20"}, "turn": "left"}, straight("6 ft")]
    told = page(line=short, joints={"panels": 2})
    assert answered(CREEK, line=short, joints={"panels": 2})["joints"]["count"] == 3
    assert "You said 2 panels. With a joint wherever two pieces meet, it's 3." in told["lines"]


def test_a_panel_over_the_usual_limit_is_a_stop_without_a_table() -> None:
    told, made = page(joints={"panels": 5}), answered(CREEK, joints={"panels": 5})["joints"]
    assert (told["state"], told["panel"], told["tables"], told["conclusion"]) == ("stop", "slab", [], "")
    assert (told["short"], told["more"]) == ('Panels over 10\' 0" at 4"', "the longest is 20' 9-1/4\": add a joint")
    assert (made["left"], made["right"]) == ([], [])
    many = page(joints={"every": "2 in"})
    assert many["state"] == "stop" and many["tables"] == [] and "500" in many["short"]


def test_a_kinks_joint_is_its_miter() -> None:
    """12 and 12 ft with a kink of 30 degrees left, 6 ft wide: the forms' corners are 12 -+ 0.8038 ft from the start."""
    line = [straight("12 ft"), straight("12 ft", kink="30 left"),
            {"arc": {"radius": "60 ft", "central_angle": "20"}, "turn": "left"}]  # fmt: skip
    told, made = page(line=line), answered(CREEK, line=line)["joints"]
    at = next(number for number, row in enumerate(told["tables"][0]["rows"]) if row[3] == "Straight 2 begins")
    assert made["left"][at] / FOOT == pytest.approx(12 - 0.803848, abs=1e-5)
    assert made["right"][at] / FOOT == pytest.approx(12 + 0.803848, abs=1e-5)
    assert any("on the miter" in line for line in told["lines"])
    # No panel is over 6 ft: 12.8038 ft of right form makes three of 4.268 ft.
    assert made["right"][0] / FOOT == pytest.approx(12.803848 / 3, abs=1e-5) and at == 2
    sharp = [line[0], straight("12 ft", kink="70 left"), line[2]]
    told = page(line=sharp)
    assert told["state"] == "near" and told["more"] == "a corner of 55° at a kink: ask"
    assert any("corner of only 55°" in line for line in told["lines"])
    assert not any("corner of only" in line for line in page(KINKED)["lines"])


def test_depth_and_limits_in_metres() -> None:
    told = page(METRIC_LINE)
    lines = " ".join(told["lines"])
    assert "25 mm deep" in lines and "Panels are no longer than the slab is wide: 1.500 m" in lines
    assert told["tables"][0]["rows"][3][1:] == ["6.000 m", "6.000 m", "Arc 2 begins"]


def test_a_band_is_not_judged_by_its_shape() -> None:
    told = page(width="1 ft 6 in")
    assert told["state"] == "usual" and any("curb or a band" in line for line in told["lines"])
    assert not any("to 1" in line for line in told["lines"])


def test_what_it_waits_for() -> None:
    said = {key: value for key, value in CREEK.items() if key not in ("width", "edge", "drawn_to")}
    assert page(said)["short"] == "Needs the width" and answered(said)["joints"] is None
    told = page(said, width="5 ft")
    assert (told["short"], told["more"]) == ("Needs the side the slab is on", 'usual: at most 10\' 0" apart at 4"')


def test_six_over_four_is_no_panel_too_short() -> None:
    """Panels of 4 ft on a straight 6 ft wide are 1.5 to 1, the most: a float's last digit calls none too short."""
    walk = dict(CREEK, edge="left", drawn_to="face", joints={"every": "6 ft"})
    bends = [{"radius": "30 ft", "arc_length": "22 ft"}, {"radius": "45 ft", "central_angle": "35"}]
    first, last = ({"arc": arc, "turn": turn} for arc, turn in zip(bends, ("right", "left"), strict=True))
    walk["line"] = [straight("14 ft"), first, straight("8 ft"), last]
    told = page(walk)
    assert "1.50 to 1" in told["more"] and "over" not in told["more"]
    assert any("1.50 to 1" in line for line in told["lines"])
    assert not any("over 1.5" in line for line in told["lines"])
    walk["line"][2] = straight("7 ft 11 in")  # an inch less, and they are too short
    assert any("1.52 to 1, over 1.5" in line for line in page(walk)["lines"])


def test_a_line_with_stations_has_them_at_its_joints() -> None:
    """20 ft in 4, R 31 ft by 70 degrees in 7, R 24 ft by 40 degrees in 4, 8.5 ft in 2, all from 10+00."""
    (made,) = page({**CREEK, "station": "10+00"})["tables"]
    lengths = [5.0] * 4 + [31 * radians(10)] * 7 + [24 * radians(10)] * 4 + [4.25] * 2
    assert made["heads"][1] == "station"
    for number, row in enumerate(made["rows"], 1):
        whole, _, after = row[1].partition("+")
        assert int(whole) * 100 + float(after) == pytest.approx(1000 + sum(lengths[:number]), abs=0.0051)
    (bare,) = page(CREEK)["tables"]
    assert [row[:1] + row[2:] for row in made["rows"]] == bare["rows"]
