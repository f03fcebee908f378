"""The example shows what it says: halving is the advised method for reasons that its own ground gives."""

from __future__ import annotations

from bowstring.demo import DEMO
from helping import answer_to


def rows() -> dict[str, dict[str, object]]:
    return {row["method"]: row for row in answer_to(DEMO)["methods"]}


def test_nothing_in_it_contradicts() -> None:
    told = answer_to(DEMO)
    assert told["stops"] == [] and told["method"] == told["advice"]["method"] == "halving"
    assert "centre" not in DEMO and rows()["centre"]["possible"] is False
    assert told["advice"]["holds"] is True


def test_its_ground_is_why() -> None:
    barred = {name: str(row["why_not"]) for name, row in rows().items() if not row["possible"]}
    assert "bed" in barred["ordinates"] and "hedge" in barred["tangent"]
    free = {row["method"]: row for row in answer_to({**DEMO, "ground": []})["methods"]}
    assert free["ordinates"]["possible"] and free["tangent"]["possible"]
    assert answer_to({**DEMO, "ground": []})["advice"]["method"] != "halving"


def test_the_pond_is_where_the_centre_is() -> None:
    told = answer_to(DEMO)
    foot, arc = 0.3048, told["arc"]
    x, y = arc["chord"] / 2 / foot, (arc["sagitta"] - arc["radius"]) / foot
    (pond,) = [one for one in DEMO["ground"] if one["name"] == "pond"]
    corners = [[float(str(part).removesuffix(" ft")) for part in corner] for corner in pond["outline"]]
    inside = False
    for (x1, y1), (x2, y2) in zip(corners, corners[1:] + corners[:1], strict=True):
        if (y1 > y) != (y2 > y) and x < (x2 - x1) * (y - y1) / (y2 - y1) + x1:
            inside = not inside
    assert inside


def test_most_layouts_hold_its_tolerance() -> None:
    told = answer_to(DEMO, whole=True)
    worst = next(row for row in told["methods"] if row["method"] == "halving")
    assert worst["all_95"] <= told["tolerance"]
