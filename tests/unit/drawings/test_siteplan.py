"""The plan of the site is true to scale on the real hand, and what is tapped on it comes back as corners on the ground.

The geometry is held against shapely, a general-purpose library.
"""

from __future__ import annotations

import json
import math
import re
from functools import cache
from itertools import pairwise
from typing import Any
from xml.etree import ElementTree

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString, Polygon, box

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.drawings.areas import spans
from bowstring.drawings.boxes import Box
from bowstring.drawings.siteplan import HEIGHT, WIDTH, clipped, site_plan_svg
from bowstring.job.terms import MOST_CORNERS
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.siteplan import site_plan_html
from bowstring.units.lengths import read_length
from bowstring.units.tape import make_tape
from bowstring.words import say

POND = {"name": "pond", "stops": "feet", "outline": [["14 ft", "-27 ft"], ["24 ft", "-27 ft"], ["19 ft", "-37 ft"]]}
SHED = {
    "name": "shed",
    "stops": "tape",
    "outline": [["10 ft", "-2 ft"], ["20 ft", "-2 ft"], ["20 ft", "4 ft"], ["15 ft", "1 ft"], ["10 ft", "4 ft"]],
}
SITE: dict[str, Any] = {**DEMO, "ground": [POND, SHED], "known": [{"name": "hydrant", "x": "4 ft", "y": "12 ft"}]}
FOOT = 0.3048
ROUNDING = 0.0005
"""Drawing units: coordinates are written with three decimals."""


def drawn(job: dict[str, Any]) -> ElementTree.Element:
    return ElementTree.fromstring(site_plan_svg(answer(job, whole=False), id="plan"))


def with_data(svg: ElementTree.Element, name: str, value: str | None = None) -> list[ElementTree.Element]:
    found = [one for one in svg.iter() if one.get(f"data-{name}") is not None]
    return [one for one in found if value in (None, one.get(f"data-{name}"))]


def points_of(path: ElementTree.Element) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+),(-?[\d.]+)", str(path.get("d")))]


def map_of(svg: ElementTree.Element) -> dict[str, str]:
    (frame,) = with_data(svg, "scale")
    return {"scale": str(frame.get("data-scale")), "turn": str(frame.get("data-turn"))}


@pytest.mark.parametrize("side", ["left", "right"])
def test_outlines_and_stakes_stand_where_they_are_on_the_ground(side: str) -> None:
    job = {**SITE, "side": side}
    told, svg = answer(job), drawn(job)
    scale, turn = float(map_of(svg)["scale"]), int(map_of(svg)["turn"])
    for obstacle in told["site"]["obstacles"]:  # type: ignore[index]
        path = with_data(svg, "stops", obstacle["stops"])[0]
        for (x, y), (true_x, true_y) in zip(points_of(path), obstacle["outline"], strict=True):
            assert abs(x / (scale * turn) - true_x) <= 2 * ROUNDING / scale
            assert abs(-y / scale - true_y) <= 2 * ROUNDING / scale
    squares = {str(one.get("data-stake")): one for one in with_data(svg, "stake")}
    for stake in told["stakes"]:  # type: ignore[attr-defined]
        square = squares[stake["name"]]
        x, y = (float(str(square.get(axis))) + float(str(square.get("width"))) / 2 for axis in "xy")
        assert abs(x / (scale * turn) - stake["x"]) <= 2 * ROUNDING / scale
        assert abs(-y / scale - stake["y"]) <= 2 * ROUNDING / scale


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_curve_is_on_the_hand_of_somebody_who_walks_from_a_to_b(side: str) -> None:
    svg = drawn({**SITE, "side": side})
    at = {str(one.get("data-stake")): float(str(one.get("y"))) for one in with_data(svg, "stake")}
    across = {str(one.get("data-stake")): float(str(one.get("x"))) for one in with_data(svg, "stake")}
    # Up on paper is on the left hand of somebody who walks to the right, and on the right hand going back.
    assert at["M"] < at["A"] and (across["A"] < across["B"]) is (side == "left")
    words = "".join(str(one.text) for one in svg.iter() if one.tag.endswith("text"))
    assert side in words


def test_walls_are_hatched_and_ponds_dotted_inside_their_outlines() -> None:
    svg = drawn(SITE)
    paths = list(svg.iter("{http://www.w3.org/2000/svg}path"))
    for stops, least in (("tape", 5.0), ("feet", 0.0)):
        outline = with_data(svg, "stops", stops)[0]
        filling = paths[paths.index(outline) + 1]
        area = Polygon(points_of(outline)).buffer(0.05)
        pieces = re.findall(r"M[^M]+", str(filling.get("d")))
        assert len(pieces) > 3
        lengths = []
        for piece in pieces:
            (x, y), (x2, y2) = ((float(a), float(b)) for a, b in re.findall(r"(-?[\d.]+),(-?[\d.]+)", piece))
            assert area.contains(LineString([(x, y), (x2, y2)]))
            lengths.append(LineString([(x, y), (x2, y2)]).length)
        assert max(lengths) > least if least else max(lengths) < 0.1


coordinates = st.floats(-50, 50).map(lambda value: round(value, 2))
places = st.tuples(coordinates, coordinates)


@given(st.lists(places, min_size=3, max_size=7, unique=True), coordinates)
def test_a_level_line_is_cut_as_shapely_cuts_it(outline: list[tuple[float, float]], level: float) -> None:
    polygon = Polygon(outline)
    assume(polygon.is_valid and all(y != level for _, y in outline))
    found = sum(end - start for start, end in spans(outline, level))
    assert found == pytest.approx(polygon.intersection(LineString([(-99, level), (99, level)])).length, abs=1e-6)


@given(places, places)
def test_a_line_is_clipped_as_shapely_clips_it(start: tuple[float, float], end: tuple[float, float]) -> None:
    assume(start != end)
    inside = box(-20, -10, 20, 10).intersection(LineString([start, end]))
    found = clipped(start, end, Box(-20, -10, 20, 10))
    assert (LineString(found).length if found else 0.0) == pytest.approx(inside.length, abs=1e-6)


def test_what_is_stopped_is_drawn_from_mark_to_mark() -> None:
    job = {**SITE, "method": "halving"}
    told, svg = answer(job), drawn(job)
    marks = {mark["name"]: (mark["x"], mark["y"]) for mark in told["marks"]}  # type: ignore[attr-defined]
    (own,) = [row for row in told["methods"] if row["method"] == "halving"]  # type: ignore[attr-defined]
    ways = {(block["from"], block["to"]) for block in own["blocks"] if block["from"] != block["to"]}
    assert ways
    scale, turn = float(map_of(svg)["scale"]), int(map_of(svg)["turn"])
    lines = [points_of(one) for one in svg.iter() if "bd-arrow bd-dash" in str(one.get("class"))]
    assert len(lines) == len(ways)
    for way in ways:
        ends = [(x * scale * turn, -y * scale) for x, y in (marks[name] for name in way)]
        assert any(line == [pytest.approx(end, abs=2 * ROUNDING) for end in ends] for line in lines), way
    html = site_plan_html(told)
    assert "shed" in html and "<li>" in html


@pytest.mark.parametrize(
    "job",
    [
        {"arc": {"chord": "38 ft", "radius": "19000 ft"}},
        {"arc": {"radius": "20 ft", "central_angle": "300"}, "side": "right"},
        {"unit": "m", "arc": {"chord": "0.5", "sagitta": "0.1"}},
        {"arc": {"chord": "38 ft", "sagitta": "5 ft"}, "levels": 9},
        {**SITE, "side": "right", "offset": "6 in", "toward": "outside", "driven": "hub"},
        {**DEMO, "ground": [{**SHED, "outline": [["90000 m", "1 ft"], ["90001 m", "1 ft"], ["90001 m", "2 ft"]]}]},
        {**DEMO, "ground": [{**SHED, "outline": [["1 ft", "1 ft"], ["2 ft", "1 ft"], ["2 ft", "14 in"]]}]},
    ],
)
def test_every_site_has_a_plan_that_fits_a_phone(job: dict[str, Any]) -> None:
    svg = drawn(job)
    left, top, width, height = map(float, str(svg.get("viewBox")).split())
    assert width <= 1.13 * WIDTH and height <= HEIGHT + 160
    (frame,) = with_data(svg, "scale")
    xs, ys = zip(*points_of(frame), strict=True)
    assert left < min(xs) and max(xs) < left + width and top < min(ys) and max(ys) < top + height


# --- what is tapped


@cache
def _map_of_plan(job: str) -> dict[str, str]:
    """Where the plan of a job puts things, drawn once however often it is tapped."""
    return map_of(drawn(json.loads(job)))


def tap(corners: list[tuple[float, float]], job: dict[str, Any], stops: str = "feet", **more: str) -> dict[str, Any]:
    """Tap corners (metres in the chord's frame) on the plan of a job; return what Python says."""
    plan = _map_of_plan(json.dumps(job))
    points = [[x * float(plan["scale"]) * int(plan["turn"]), -y * float(plan["scale"])] for x, y in corners]
    fields = {**fields_of_job(job), **more}
    asked = {"fields": fields, "points": points, "stops": stops, **plan}
    found: dict[str, Any] = json.loads(handle("outline", json.dumps(asked)))
    return found


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("unit", ["ft-in", "ft", "m", "mm"])
def test_tapped_corners_come_back_to_the_tapes_mark(unit: str, side: str) -> None:
    job = {"unit": unit, "arc": {"chord": "11.58 m", "sagitta": "1.6 m"}, "side": side}
    corners = [(3.217, -7.113), (7.9, -8.001), (6.4, -11.23), (0.0, -10.9)]
    fields = tap(corners, job)["fields"]
    text = fields["ground-0-outline"]
    read = [[read_length(one, unit, "x", signed=True, zero=True).metres for one in pair.split(",")]
            for pair in text.split(";")]  # fmt: skip
    half = make_tape(unit, None).mark / 2 + 1e-9
    for pair, true in zip(read, corners, strict=True):
        assert pair == [pytest.approx(true[0], abs=half), pytest.approx(true[1], abs=half)]
    again = answer(job_of_fields({**fields_of_job(job), **fields}))
    (obstacle,) = again["site"]["obstacles"]  # type: ignore[index]
    assert obstacle["stops"] == "feet" and obstacle["name"] == say("siteplan.name.feet")
    assert obstacle["outline"] == [pytest.approx(pair) for pair in read]


BARE: dict[str, Any] = {key: value for key, value in DEMO.items() if key != "ground"}


def test_an_obstacle_goes_into_the_next_free_row() -> None:
    corners = [(3.0, -7.0), (7.0, -8.0), (6.0, -11.0)]
    taken = tap(corners, SITE)["fields"]
    assert set(taken) == {"ground-2-name", "ground-2-stops", "ground-2-outline"}
    assert taken["ground-2-name"] == f"{say('siteplan.name.feet')} 2"  # pond is the name of the first one
    named = {"ground-0-name": "duck pond"}
    assert tap(corners, BARE, **named)["fields"]["ground-0-name"] == "duck pond"
    half = {**named, "ground-0-stops": "feet"}
    assert tap(corners, BARE, "feet", **half)["fields"]["ground-0-stops"] == "feet"
    assert "ground-1-outline" in tap(corners, BARE, "tape", **half)["fields"]
    full = {f"ground-{row}-outline": "1 ft, 2 ft" for row in range(40)}
    assert "40" in tap(corners, BARE, **full)["error"]


@pytest.mark.parametrize(
    ("corners", "key"),
    [
        ([], "few"),
        ([(1.0, 1.0)], "few"),
        ([(1.0, 1.0), (2.0, 1.0), (2.0, 1.0), (1.0, 1.0)], "few"),
        ([(1.0, 1.0), (2.0, 1.0), (3.0, 1.0)], "thin"),
        ([(0.0, 0.0), (2.0, 2.0), (2.0, 0.0), (0.0, 1.0)], "crossed"),
    ],
)
def test_an_outline_that_is_none_is_refused_with_what_would_do(corners: list[tuple[float, float]], key: str) -> None:
    assert tap(corners, dict(DEMO)) == {"error": say(f"siteplan.{key}")}
    many = [(number / 10, (number % 2) / 10) for number in range(MOST_CORNERS + 1)]
    assert tap(many, dict(DEMO)) == {"error": say("siteplan.many", most=MOST_CORNERS)}


@given(st.lists(st.tuples(st.integers(0, 30), st.integers(-30, 0)), min_size=3, max_size=6, unique=True))
def test_an_outline_whose_sides_dont_meet_is_taken_and_one_that_crosses_isnt(corners: list[tuple[int, int]]) -> None:
    found = tap([(x * FOOT, y * FOOT) for x, y in corners], dict(DEMO))
    polygon = Polygon(corners)
    ring = [*corners, corners[0]]
    crossing = any(
        LineString(one).crosses(LineString(other)) and not {*one} & {*other}
        for number, one in enumerate(pairwise(ring))
        for other in list(pairwise(ring))[number + 1 :]
    )
    if polygon.is_valid and polygon.area > 0.05 * polygon.length:
        assert "fields" in found
    if crossing:
        assert "error" in found


@pytest.mark.parametrize("unit", ["ft-in", "m"])
def test_a_tree_is_tapped_at_its_center_and_on_its_edge(unit: str) -> None:
    """1.5 m from center to edge (0.9, 1.2): 3 m wide, and no narrower than that."""
    job = {"unit": unit, "arc": {"chord": "11.58 m", "sagitta": "1.6 m"}, "side": "left"}
    fields = tap([(3.0, -4.0), (3.9, -2.8)], job, "round")["fields"]
    assert set(fields) == {f"ground-0-{name}" for name in ("name", "stops", "at", "diameter")}
    (tree,) = answer(job_of_fields({**fields_of_job(job), **fields}))["site"]["obstacles"]  # type: ignore[index]
    mark = make_tape(unit, None).mark
    assert (tree["name"], tree["stops"]) == (say("siteplan.name.round"), "tape")
    assert tree["at"] == [pytest.approx(3.0, abs=mark / 2 + 1e-9), pytest.approx(-4.0, abs=mark / 2 + 1e-9)]
    assert 3.0 - 2 * mark <= tree["diameter"] <= 3.0 + 3 * mark
    for taps in ([], [(3.0, -4.0)], [(3.0, -4.0), (4.0, -4.0), (5.0, -4.0)]):
        assert tap(taps, job, "round") == {"error": say("siteplan.round_taps")}
    assert tap([(3.0, -4.0), (3.005, -4.0)], job, "round") == {"error": say("siteplan.round_small")}


def test_what_the_page_never_sends_is_refused() -> None:
    good = {"fields": {}, "points": [[0, 0]], "stops": "feet", "scale": "20", "turn": "1"}
    for wrong in (
        {"stops": "all"},
        {"scale": "0"},
        {"scale": "nan"},
        {"turn": "2"},
        {"turn": "0"},
        {"points": [[1e999, 0]]},
    ):
        with pytest.raises(ValueError, match=r"plan|finite"):
            handle("outline", json.dumps({**good, **wrong}))


def test_an_obstacle_without_its_outline_yet_still_has_a_plan_to_be_drawn_on() -> None:
    fields = {**fields_of_job(BARE), "ground-0-name": "shed", "ground-0-stops": "tape"}
    shown = json.loads(handle("numbers_later", json.dumps({"fields": fields, "panel": "way"})))
    assert shown["errors"][0]["id"] == "ground-0-outline" and shown["state"]["sign"] == "stop"
    assert 'data-scale="' in shown["site_plan"]
    worse = json.loads(handle("numbers_later", json.dumps({"fields": {**fields, "arc-chord": "no"}, "panel": "way"})))
    assert worse["state"]["sign"] == "refused" and worse["site_plan"] == ""


@pytest.mark.parametrize(("arc", "shown"), [
    ({"radius": "15 ft", "central_angle": "86.5"}, True), ({"chord": "36 ft", "sagitta": "4' 6\""}, False),
])  # fmt: skip
def test_the_centre_is_shown_where_the_plan_has_room_for_it(arc: dict[str, str], shown: bool) -> None:
    """A curb return's lies half a chord behind; that of a flat arc isn't worth the room."""
    texts = " ".join("".join(one.itertext()) for one in drawn({**DEMO, "arc": arc, "levels": 2, "ground": []}).iter())
    assert (say("siteplan.no_centre") not in texts) is shown


WALKED: dict[str, Any] = {
    "arc": {"radius": "41' 6\"", "chord": "36 ft"}, "side": "left", "drawn_to": "face", "levels": 2, "width": "4' 6\"",
    "edge": "inside",
}  # fmt: skip


@pytest.mark.parametrize("changes", [
    {}, {"side": "right"}, {"edge": "outside"}, {"edge": "centre"}, {"offset": "3 ft", "toward": "outside"},
    {"slab": {"end_width": "9 ft"}}, {"arc": {"radius": "14 ft", "central_angle": 200}},
])  # fmt: skip
def test_the_work_and_three_feet_past_its_outer_edge_are_on_the_ground_that_is_tapped(changes: dict[str, Any]) -> None:
    """By shapely: the slab's own outline, from both its edges' arcs, and three feet around its outer edge."""
    told = answer({**WALKED, **changes}, whole=False)
    svg = ElementTree.fromstring(site_plan_svg(told, id="plan"))
    scale, turn = (float(map_of(svg)[name]) for name in ("scale", "turn"))
    (frame,) = with_data(svg, "scale")
    ground = Polygon([(x * turn / scale, -y / scale) for x, y in points_of(frame)])
    edges: Any = told["edges"]
    row = next(line for line in edges["lines"] if line["key"] == "inside")
    reach = row["off"] if row["off"] is not None else -edges["width"]
    staked = told["staked"]
    centre = staked["chord"] / 2, staked["sagitta"] - staked["radius"]
    outer = staked["radius"] + reach + max(edges["width"], edges["far_width"] or 0.0)
    half = math.radians(staked["central_angle"]) / 2
    turns = [half * (part / 50 - 1) for part in range(101)]
    line = LineString([(centre[0] + outer * math.sin(one), centre[1] + outer * math.cos(one)) for one in turns])
    seen = line.buffer(3 * FOOT).intersection(box(-1e3, line.bounds[1], 1e3, 1e3))
    assert ground.buffer(0.01).contains(seen)
    paths = [points_of(path) for path in svg.iter() if "soft" in str(path.get("class"))]
    drawn_at = [abs(math.hypot(x * turn / scale - centre[0], -y / scale - centre[1]) - outer) * scale
                for path in paths for x, y in path]  # fmt: skip
    if row["off"] is not None and abs(outer - staked["radius"]) > 1e-6:
        assert sum(one < 0.01 for one in drawn_at) > 50


def test_along_a_line_of_pieces_the_ground_is_drawn_as_well() -> None:
    line = [{"straight": "20 ft"}, {"arc": {"radius": "31 ft", "central_angle": "70"}, "turn": "left"}]
    job = {"line": line, "at": 2, "width": "6 ft", "edge": "left", "drawn_to": "face", "slab": {"thickness": "4 in"}}
    assert map_of(ElementTree.fromstring(site_plan_svg(answer(job, whole=False), id="plan")))["turn"] in ("1", "-1")  # type: ignore[arg-type]
