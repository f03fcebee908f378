"""The concrete along a line, told: one arc as an arc alone has it, a walk by hand, and where it has reached."""

from __future__ import annotations

from math import ceil, pi, radians
from typing import Any

import numpy as np
import pytest
from shapely.geometry import Polygon

import bowstring
from lined_jobs import CREEK, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK

FOOT, INCH = 0.3048, 0.0254
YARD = 0.9144**3
BULB: dict[str, Any] = {
    **CREEK,
    "line": [{"straight": "30 ft"}, {"arc": {"radius": "40 ft", "central_angle": "90"}, "turn": "right"}],
}
"""A straight of 30 ft, then a quarter of R 40 ft to the right, 6 ft wide: figures of our own."""


def answered(job: dict[str, Any], **other: Any) -> Any:
    return bowstring.answering({**job, **other})  # type: ignore[typeddict-item]


def page(job: dict[str, Any] = CREEK, **other: Any) -> Any:
    return next(one for one in answered(job, **other)["lined"]["pages"] if one["key"] == "pour")


def slab(**said: Any) -> dict[str, Any]:
    return {"slab": {**CREEK["slab"], **said}}


EDGES = {"edge_width": "12 in", "edge_depth": "10 in"}
FOOTING = {"footing_width": "2 ft", "footing_depth": "1 ft"}


@pytest.mark.parametrize("said", [{}, {"waste": 5}, EDGES, {**FOOTING, "base": "4 in"}, {"step": 0.5, "truck": 1.5}])
def test_one_arc_as_a_line_has_the_concrete_of_the_arc_alone(said: dict[str, Any]) -> None:
    both = {"slab": {**WALK["slab"], **said}}
    alone, told, made = answered(WALK, **both)["pour"], page(ONE_ARC, **both), answered(ONE_ARC, **both)["pour"]
    for key in ("area", "volume", "with_waste", "order"):
        assert made[key] == pytest.approx(alone[key], rel=1e-12)
    assert (told["state"], told["conclusion"]) == (alone["state"], alone["text"])
    reach, changes = told["tables"]
    assert [row[:3] for row in reach["rows"]] == [
        [row["out"], "the end" if row["plan_shown"] == "B" else row["plan_shown"], row["call_shown"]]
        for row in alone["reach"]
    ]
    assert [row[3] == f"joint {one['joint']}" for row, one in zip(reach["rows"], alone["reach"], strict=True)] == [
        one["joint"] > 0 for one in alone["reach"]
    ]
    assert [row[1] for row in changes["rows"]] == [row["order_shown"] for row in alone["changes"]]
    lines = " ".join(told["lines"])
    for text in (alone["why"], alone["low_text"], alone["measure"], alone["footing_text"], *alone["notes"]):
        assert text in lines
    # What each panel takes is told otherwise: the least and the most.
    assert [line for line in alone["lines"] if line not in told["lines"]] == [alone["lines"][1]]
    bulkhead = alone["bulkhead"]
    assert f"*joint {bulkhead['joint']}*: " in lines


def test_a_walk_by_hand() -> None:
    """The middle is 83.1289 ft long, 6 ft wide, 4 in deep: 6.1577 cubic yards, 6.7735 with a tenth, 7 to order."""
    yards = (20 + 31 * radians(70) + 24 * radians(40) + 8.5) * 6 / 3 / 27
    made, told = answered(CREEK)["pour"], page()
    assert made["volume"] / YARD == pytest.approx(yards) and round(yards, 4) == 6.1577
    assert made["order"] / YARD == pytest.approx(ceil(yards * 1.1 * 4) / 4) and made["order"] / YARD == pytest.approx(7)
    assert (told["short"], told["more"]) == ("Order 7 yards", "6.16 yd³ in the forms, 10% waste")
    low = yards + 83.1289 * 6 / 24 / 27
    assert told["tables"][1]["rows"][0][1] == "7-3/4" and ceil(low * 1.1 * 4) / 4 == 7.75


def test_where_half_the_truck_has_reached_by_hand() -> None:
    """Half of 30 + 62.832 ft of middle is 46.416 ft: 16.416 ft into the arc, on the left form 43/40 of that."""
    middle = 30 + 40 * pi / 2
    part = middle / 2 - 30
    left = 30 + part * 43 / 40
    rows = page(BULB)["tables"][0]["rows"]
    assert rows[0][2:] == ["47' 8\"", "Arc 2"] and left == pytest.approx(47.647, abs=1e-3)
    assert page(BULB)["tables"][0]["title"] == "When to call the plant: distances on the left form from the start"
    ordered = ceil(middle * 6 / 3 / 27 * 1.1 * 4) / 4
    plan = 30 + (middle * ordered / (middle * 6 / 81) / 2 - 30) * 43 / 40
    assert rows[0][1] == f"{int(plan)}' {int(plan % 1 * 12)}\""
    assert "measure along the left form" in " ".join(page(BULB)["lines"])


def test_thick_edges_are_shapelys() -> None:
    """Of a line whose slab bends both ways: the bands within a foot of either edge, cut out of its outline."""
    turns = [(0.0, 20.0), (31.0, radians(70)), (-24.0, radians(40)), (0.0, 8.5)]
    x, y, heading = 0.0, 0.0, 0.0
    rows = []
    for radius, size in turns:
        if radius:
            headings = heading + np.sign(radius) * np.linspace(0, size, 4000)
            rows.append(np.column_stack([x + radius * (np.sin(headings) - np.sin(heading)),
                                         y - radius * (np.cos(headings) - np.cos(heading)), headings]))  # fmt: skip
        else:
            rows.append(np.array([[x, y, heading], [x + size * np.cos(heading), y + size * np.sin(heading), heading]]))
        x, y, heading = rows[-1][-1]
    line = np.concatenate(rows)

    def aside(left: float) -> Any:
        return np.column_stack([line[:, 0] - left * np.sin(line[:, 2]), line[:, 1] + left * np.cos(line[:, 2])])

    def strip(left: float, right: float) -> float:
        return float(Polygon(np.concatenate([aside(left), aside(right)[::-1]])).area)

    feet = strip(3, -3) * 4 / 12 + (strip(3, 2) + strip(-2, -3)) * 6 / 12
    made = answered(CREEK, **slab(**EDGES))["pour"]
    assert made["volume"] / FOOT**3 == pytest.approx(feet, rel=1e-6)
    assert made["area"] / FOOT**2 == pytest.approx(strip(3, -3), rel=1e-6)
    extra = (strip(3, 2) + strip(-2, -3)) / 2 / 27
    assert any(f"add *{extra:.2f} yd³*" in one for one in page(**slab(**EDGES))["lines"])


def test_a_footing_runs_under_the_middle() -> None:
    """On a line that is the left edge the middle is 3 ft to its right: R 34 and 21 ft."""
    length = 20 + 34 * radians(70) + 21 * radians(40) + 8.5
    told = page(drawn_to="face", edge="left", **slab(**FOOTING))
    assert any(f"takes {length * 2 / 27:.2f} yd³" in line for line in told["lines"])


def test_a_bulkhead_is_ready_at_a_joint_of_both_forms() -> None:
    """5 % more ends before the end when the base is half an inch low: the next joint back is named on both forms."""
    told = page(**slab(waste=0, step=0.05))
    joints = answered(CREEK)["joints"]
    (text,) = (line for line in told["lines"] if "bulkhead" in line)
    made = answered(CREEK, **slab(waste=0, step=0.05))["pour"]
    part = made["order"] / (made["volume"] + made["area"] * INCH / 2)
    # The part of the middle up to a joint is the mean of both forms up to there, as the slab is one width.
    middle = [(left + right) / 2 for left, right in zip(joints["left"], joints["right"], strict=True)]
    number = sum(at <= part * 83.128949 * FOOT for at in middle)
    assert f"*joint {number}*" in text and 'base 1/2" low' in text and "on the right form" in text


def test_a_small_pour_is_told_in_bags() -> None:
    line = [{"straight": "5 ft"}, {"arc": {"radius": "12 ft", "central_angle": "30"}, "turn": "left"}]
    told = page(line=line, width="3 ft")
    assert told["short"].endswith("bags of 80 lb") and len(told["tables"]) == 1
    assert not any("bulkhead" in one or "Pour from the start" in one for one in told["lines"])
    assert any("bags*." in one for one in told["lines"])


def test_a_wider_slab_that_no_edge_allows_is_no_row() -> None:
    assert any("wide" in row[0] for row in page()["tables"][1]["rows"])
    tight = [{"straight": "20 ft"}, {"arc": {"radius": "3 ft 1 in", "central_angle": "60"}, "turn": "left"}]
    assert not any("wide" in row[0] for row in page(line=tight)["tables"][1]["rows"])


def test_metres_and_kinks() -> None:
    told, made = page(METRIC_LINE), answered(METRIC_LINE)["pour"]
    area = (6 + 12 * pi / 3 + 3) * 1.5
    assert made["area"] == pytest.approx(area) and made["volume"] == pytest.approx(area / 10)
    assert told["short"] == "Order 3.75 m³" and round(area / 10 * 1.1, 3) == 3.558
    takes = [line for line in page(KINKED)["lines"] if line.startswith("The panels take")]
    assert len(takes) == 1


def test_what_it_waits_for() -> None:
    said = {key: value for key, value in CREEK.items() if key not in ("width", "edge", "drawn_to", "slab")}
    assert page(said)["short"] == "Needs width and thickness" and answered(said)["pour"] is None
    assert page(CREEK, slab={})["short"] == "Needs the thickness"
