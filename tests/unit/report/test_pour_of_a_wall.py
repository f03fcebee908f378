"""A wall's concrete is told in the order of the pour: its footing first, each with its own order."""

from __future__ import annotations

import re
from math import asin, ceil, cos, sin
from typing import Any

import pytest
from shapely import Polygon

from bowstring.faces.build import build_html
from bowstring.faces.paper import paper_html
from bowstring.sheet.text import sheet_text
from helping import answer_to
from radius_wall import WALL

FOOT, YARD = 0.3048, 0.9144**3
ANGLE = 2 * asin(16 / 28)
"""Of the arc, radians: a chord of 32 ft on R 28 ft."""
NET_WALL = ANGLE * (28**2 - (28 - 8 / 12) ** 2) / 2 * 3.5 / 27
NET_FOOTING = ANGLE * (28 - 4 / 12) * 2 * 10 / 12 / 27
"""Cubic yards by hand: sector areas times the height; the middle's length times width and depth (Pappus)."""


def told(**slab: Any) -> dict[str, Any]:
    part = answer_to({**WALL, "slab": {**WALL["slab"], **slab}})["pour"]
    assert part is not None
    return part


def quarters(yards: float) -> float:
    return ceil(yards * 4 - 1e-9) / 4


def test_footing_then_wall_each_net_with_waste_and_ordered() -> None:
    part = told()
    assert part["volume"] / YARD == pytest.approx(NET_WALL) and part["footing"] / YARD == pytest.approx(NET_FOOTING)
    assert part["order"] / YARD == pytest.approx(quarters(NET_WALL * 1.1)) == 3.25
    assert part["footing_order"] / YARD == pytest.approx(quarters(NET_FOOTING * 1.1)) == 2.5
    assert part["text"] == "Footing 2-1/2, then wall 3-1/4 yards" and part["number"] == "2-1/2, then 3-1/4"
    for net in (NET_FOOTING, NET_WALL):
        assert f"*{net:.2f} yd³* net, {net * 1.1:.2f} yd³ with 10% waste" in part["why"]
    row = answer_to(WALL)["build"][-1]
    assert (row["text"], row["more"]) == (part["text"], "5-3/4 yards in two pours")


def test_a_wall_rises_and_is_called_by_its_height_not_by_a_form() -> None:
    part = told()
    assert f"*{NET_WALL / 3.5:.2f} yd³*" in " ".join(part["lines"])  # a foot of height
    assert f"*{NET_WALL / 4:.2f} yd³*" in " ".join(part["lines"])  # of four panels
    assert part["bulkhead"] is None and not any(row["joint"] for row in part["reach"])
    assert "base" not in " ".join([*part["lines"], part["why"], part["reach_note"], part["low_text"]])


def test_the_plant_is_called_for_the_footing_along_its_own_outer_form() -> None:
    """Half of 2-1/2 yards fills that part of what the footing takes; its outer edge has R 28 ft 8 in."""
    half = told()["reach"][0]
    outer = ANGLE * (28 + 8 / 12)
    assert half["plan"] / FOOT == pytest.approx(1.25 / NET_FOOTING * outer)
    assert half["call"] / FOOT == pytest.approx((NET_FOOTING - 1.25) / NET_FOOTING * outer, abs=outer)
    bare = answer_to({**WALL, "slab": {"poured": "wall", "thickness": "3 ft 6 in"}})["pour"]
    assert bare["reach"] == [] and bare["text"] == "Order 3-1/4 yards"


def test_the_plant_is_called_by_the_height_of_the_wall() -> None:
    """Half of 3-1/4 yards fills 1.625 of the wall's net, over 42 in: 1 ft 11-3/8 in, down; half of 42 in is the least
    for the other half to reach the top. In two loads half of the second is three quarters of all."""
    height = 1.625 / NET_WALL * 42
    assert 23.375 <= height < 23.5
    lines = told()["lines"]
    assert "Half the truck out: *1' 11-3/8\"* up, all along. Call the plant if it is under *1' 9\"*." in lines
    two = " ".join(told(truck=1.625)["lines"])
    assert "Half of truck 2 out: *2' 11-1/8\"* up, all along. Call the plant if it is under *2' 7-1/2\"*." in two
    assert 35.125 <= 0.75 * 3.25 / NET_WALL * 42 < 35.25
    assert "Half" not in " ".join(told(thickness="1 ft")["lines"])  # it comes in bags


def test_what_changes_is_told_of_both() -> None:
    rows = {row["what"]: row for row in told()["changes"]}
    higher = quarters(NET_WALL * 1.1 * 43 / 42)
    assert rows["wall 3' 7\" high"]["order"] / YARD == pytest.approx(higher + 2.5)
    deeper = quarters(NET_FOOTING * 1.1 * 11 / 10)
    assert rows['footing 11" thick']["order"] / YARD == pytest.approx(3.25 + deeper)
    assert rows["5% waste"]["order"] / YARD == pytest.approx(quarters(NET_WALL * 1.05) + quarters(NET_FOOTING * 1.05))


def test_a_base_lies_under_the_footing() -> None:
    lines = " ".join(told(base="4 in")["lines"])
    assert f"{NET_FOOTING * 4 / 10:.2f} yd³" in lines and "under the footing" in lines


def test_gravel_over_the_whole_dig_is_told_too_by_hand() -> None:
    """Shapely's area of the dig's outline, 1 ft past a 2-ft footing on R 27 ft 8 in and past both ends: 4 in of it."""
    middle = 28 - 4 / 12
    outer, inner = middle + 2, middle - 2
    steps = [ANGLE * (at / 4000 - 0.5) for at in range(4001)]
    ring = Polygon(
        [(outer * sin(a), outer * cos(a)) for a in steps] + [(inner * sin(a), inner * cos(a)) for a in reversed(steps)]
    )
    area = ring.area + 2 * 1 * (outer - inner)
    assert f"under the footing, {area / 3 / 27:.2f} yd³ over the whole dig" in " ".join(told(base="4 in")["lines"])
    straight = {**WALL, "line": [{"straight": "30 ft"}, {"arc": WALL["arc"], "turn": "right"}], "edge": "left"}
    straight = {key: value for key, value in straight.items() if key not in ("arc", "side")}
    pages = answer_to({**straight, "slab": {**WALL["slab"], "base": "4 in"}})["lined"]["pages"]
    lines = " ".join(next(one for one in pages if one["key"] == "pour")["lines"])
    assert f"{(area + 30 * 4) / 3 / 27:.2f} yd³ over the whole dig" in lines
    assert "whole dig" not in " ".join(told(base="4 in", overdig="0")["lines"])  # no more than the footing


def test_a_small_footing_comes_in_bags_by_itself() -> None:
    small = told(footing_width="10 in", footing_depth="6 in")
    assert small["footing"] / YARD < 1 / 1.1
    assert " bags, then wall 3-1/4 yards" in small["text"]


def test_every_face_says_the_order_in_that_order() -> None:
    answer = answer_to(WALL)
    for text in (build_html(answer, "pour"), paper_html(answer), sheet_text(answer)):  # type: ignore[arg-type]
        words = re.sub(r"<[^>]+>", "", text)
        assert "2-1/2, then" in words
        assert "if the base stays" not in text and "bulkhead" not in text.lower()


def test_a_wall_along_a_line_of_several_pieces_has_both_orders() -> None:
    line = [{"straight": "10 ft"}, {"arc": WALL["arc"], "turn": "right"}]
    job = {key: value for key, value in WALL.items() if key not in ("arc", "side")} | {"line": line, "edge": "left"}
    page = next(page for page in answer_to(job)["lined"]["pages"] if page["key"] == "pour")
    longer = NET_WALL + 10 * 8 / 12 * 3.5 / 27
    footing = NET_FOOTING + 10 * 2 * 10 / 12 / 27
    assert f"*{longer:.2f} yd³*" in page["lines"][0] and f"*{footing:.2f} yd³*" in page["lines"][0]
    assert page["short"].startswith("Footing ") and "bulkhead" not in " ".join(page["lines"])
