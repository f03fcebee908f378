"""What is in the way, and a parallel string, on the plan and on the method's drawing: in its place, named, clear."""

from __future__ import annotations

import re
from typing import Any

import pytest
from shapely import Polygon, box

from bowstring.drawings.areas import cut_to
from bowstring.drawings.boxes import Box
from bowstring.drawings.method import method_svg
from bowstring.drawings.plan import plan_svg
from unit.drawings.drawing_boxes import assert_clear, box_of
from unit.drawings.drawing_cases import SHAPES, answered, case, job
from unit.drawings.drawing_reader import Read

FOOT = 0.3048

OAK = {"name": "oak", "stops": "tape", "at": ["19 ft", "2 ft"], "diameter": "3 ft"}
POND = {"name": "pond", "stops": "feet", "outline": [["24 ft", "-6 ft"], ["34 ft", "-6 ft"], ["30 ft", "-2 ft"]]}
MANHOLE = {"name": "manhole by the gate", "stops": "feet", "at": ["10 ft", "3 ft"], "diameter": "2 ft"}
SHED = {"name": "far shed", "stops": "tape", "outline": [["90 ft", "0"], ["99 ft", "0"], ["99 ft", "9 ft"]]}
EVERY = [OAK, POND, MANHOLE, SHED]


def areas(read: Read) -> list[tuple[str, list[tuple[float, float]]]]:
    found = []
    for element in read.root.iter("{http://www.w3.org/2000/svg}path"):
        if "data-stops" in element.attrib:
            pairs = re.findall(r"(-?[\d.]+),(-?[\d.]+)", element.attrib["d"])
            found.append((element.attrib["data-stops"], [(float(x), float(y)) for x, y in pairs]))
    return found


@pytest.mark.parametrize("side", ["left", "right"])
def test_obstacles_stand_where_they_are_true_to_scale(side: str) -> None:
    read = Read(plan_svg(case("ordinary", ground=EVERY, side=side), id="p"))
    at = {name: places[0] for name, places in read.stakes().items()}
    scale, turn = abs(at["B"][0] - at["A"][0]) / (38 * FOOT), -1 if side == "right" else 1
    (one, oak), (other, pond), (third, hole) = areas(read)
    assert (one, other, third) == ("tape", "feet", "feet"), "the shed is nowhere near"
    for outline, middle, wide in ((oak, (19, 2), 3), (hole, (10, 3), 2)):
        xs, ys = [x for x, _y in outline], [y for _x, y in outline]
        assert (min(xs) + max(xs)) / 2 - at["A"][0] == pytest.approx(middle[0] * FOOT * scale * turn, abs=0.05)
        assert (min(ys) + max(ys)) / 2 - at["A"][1] == pytest.approx(-middle[1] * FOOT * scale, abs=0.05)
        assert max(xs) - min(xs) == pytest.approx(wide * FOOT * scale, rel=0.01)
        assert max(ys) - min(ys) == pytest.approx(wide * FOOT * scale, rel=0.01)
    corners = [(24, -6), (34, -6), (30, -2)]
    want = [(at["A"][0] + x * FOOT * scale * turn, at["A"][1] - y * FOOT * scale) for x, y in corners]
    assert pond == [pytest.approx(corner, abs=0.05) for corner in want]


@pytest.mark.parametrize("name", SHAPES)
@pytest.mark.parametrize("side", ["left", "right"])
def test_every_obstacle_is_named_or_told_and_nothing_overlaps(name: str, side: str) -> None:
    """Names that are drawn, or whose number is, or that are told as off the plan: each exactly once."""
    chord, rise = SHAPES[name]["chord"], SHAPES[name]["rise"]
    every = [
        {"name": "elm", "stops": "tape", "at": [f"{chord / 2} m", f"{rise / 2} m"], "diameter": f"{chord / 15} m"},
        {"name": "bed by the wall", "stops": "feet", "outline": [
            [f"{x * chord} m", f"{y * chord} m"] for x, y in ((0.2, -0.05), (0.4, -0.05), (0.3, -0.2))]},
        {"name": "box", "stops": "tape", "at": ["0 m", f"{rise / 3} m"], "diameter": f"{chord / 30} m"},
        {"name": "shed", "stops": "tape", "outline": [
            [f"{x * chord} m", f"{y * chord} m"] for x, y in ((4, 3), (5, 3), (5, 4))]},
    ]  # fmt: skip
    read = Read(plan_svg(case(name, ground=every, side=side), id="p"))
    assert_clear(read)
    text = read.flowing_text()
    for one in every:
        assert text.count(str(one["name"])) == 1, one["name"]
    assert re.search(r"off this plan: [a-z, ]*shed\.", text)
    numbers = [number for number in (f"({row})" for row in range(1, 4)) if number in text]
    assert all(text.count(number) == 2 for number in numbers), "at its place, and in the legend"


def test_a_plan_without_obstacles_says_nothing_of_any() -> None:
    read = Read(plan_svg(case("ordinary"), id="p"))
    assert not areas(read) and "off this plan" not in read.flowing_text()


@pytest.mark.parametrize("off", ["-8 ft", "3 ft", "9 ft", "30 ft"])
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("drawing", [plan_svg, method_svg])
def test_the_parallel_string_is_drawn_where_it_is(off: str, side: str, drawing: Any) -> None:
    asked = job(38 * FOOT, 5 * FOOT, 3, side=side, method="ordinates", parallel=off, ground=[OAK, POND])
    read = Read(drawing(answered(asked), id="p"))
    assert_clear(read)
    at = {name: places[0] for name, places in read.stakes().items()}
    scale, turn = abs(at["B"][0] - at["A"][0]) / (38 * FOOT), -1 if side == "right" else 1
    y = at["A"][1] - float(off.removesuffix(" ft")) * FOOT * scale
    for end in "AB":
        assert any(cross == pytest.approx((at[end][0], y), abs=0.05) for cross in read.crosses()), end
        assert [words.text for words in read.words() if words.text == f"P{end}"] == [f"P{end}"]
    if drawing is plan_svg:
        name = box_of(read, "PA")
        assert abs(name.bottom - y) < 60 and turn * name.left < turn * at["B"][0]
        assert "parallel to A-B" in read.flowing_text()


def test_a_flat_arc_s_parallel_string_is_stretched_no_farther_than_paper() -> None:
    asked = job(60 * FOOT, 0.5 * FOOT, 3, method="ordinates", parallel="-6 ft")
    read = Read(plan_svg(answered(asked), id="p"))
    assert_clear(read)
    left, top, right, bottom = read.box
    assert bottom - top < 1.6 * (right - left)


@pytest.mark.parametrize("seed", range(8))
def test_an_outline_is_cut_as_shapely_cuts_it(seed: int) -> None:
    turn = seed * 0.7
    corners = [(4 * seed % 5 - 2 + 3 * (number % 2), 1.7 * number - seed % 3 + turn) for number in range(3)]
    corners += [(corners[0][0] - 2.0, corners[2][1] + 1.0)]
    if not Polygon(corners).is_valid:
        corners = corners[:3]
    view = Box(-1.0, 0.0, 2.5, 3.0)
    cut = cut_to(corners, view)
    true = Polygon(corners).intersection(box(view.left, view.top, view.right, view.bottom))
    assert (Polygon(cut).area if cut else 0.0) == pytest.approx(true.area, abs=1e-9)
