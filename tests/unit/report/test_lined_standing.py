"""What stands in the concrete or in the dig along a line of pieces, held against shapely."""

from __future__ import annotations

import random
import re
from math import atan2, cos, pi, sin
from typing import Any

import pytest
from shapely.geometry import LineString, Point, Polygon

from bowstring.drawings.line_shape import on_run
from bowstring.drawings.lined import lined_svg
from bowstring.faces.paper_lined import lined_sides
from bowstring.units.lengths import read_length
from bowstring.words import say
from helping import answer_to
from lined_jobs import FIVE, KINKED

FOOT = 0.3048


def tree(x: float, y: float, name: str = "oak", wide: float = 2.0) -> dict[str, Any]:
    return {"name": name, "stops": "feet", "at": [f"{x} ft", f"{y} ft"], "diameter": f"{wide} ft"}


def slab_of(answer: Any, past: float = 0.0) -> Polygon:
    """The slab between its edges; ``past``: widened by shapely to both hands, its ends flat, metres."""
    shape = answer["lined"]["shape"]
    left, right = ([on_run(run, run["length"] * step / 300) for run in shape[hand] for step in range(301)]
                   for hand in ("left", "right"))  # fmt: skip
    whole = Polygon([*left, *reversed(right)])
    if not past:
        return whole
    sides = [LineString(line).buffer(off, cap_style="flat", join_style="mitre", mitre_limit=20, single_sided=True)
             for line, off in ((left, past), (right, -past))]  # fmt: skip
    return whole.union(sides[0]).union(sides[1])


def placed(answer: Any, at: int, corners: list[tuple[float, float]], off: float = 0.0) -> Polygon:
    """Corners in the frame of an arc's stakes (feet), laid into the line's frame by complex numbers: A is 0, B along
    the real axis, the curve above it. ``off``: how far the stakes stand off the arc, feet, away from its center."""
    run = answer["lined"]["shape"]["line"][at - 1]
    a, b = (complex(run[end]["x"], run[end]["y"]) for end in ("start", "end"))
    left = run["curvature"] > 0
    radius, chord = 1 / abs(run["curvature"]), abs(b - a)
    toward = (b - a) / chord
    apothem = (radius**2 - (chord / 2) ** 2) ** 0.5  # under half a circle
    center = a + toward * complex(chord / 2, apothem if left else -apothem)
    start = center + (a - center) * (radius + off * FOOT) / radius
    spots = [start + toward * complex(x, -y if left else y) * FOOT for x, y in corners]
    return Polygon([(spot.real, spot.imag) for spot in spots])


def circle(x: float, y: float, wide: float) -> list[tuple[float, float]]:
    return [(x + wide / 2 * cos(pi * part / 60), y + wide / 2 * sin(pi * part / 60)) for part in range(120)]


def where(answer: Any) -> dict[str, str]:
    return {row["name"]: row["where"] for row in answer["lined"]["standing"]}


@pytest.mark.parametrize("job", [FIVE, KINKED])
@pytest.mark.parametrize(("at", "off"), [(2, 0.0), (4, 0.0), (2, 3.0)])
def test_trees_all_around_stand_where_shapely_has_them(job: dict[str, Any], at: int, off: float) -> None:
    dice = random.Random(f"{job['line']}{at}{off}")
    trees = [(dice.uniform(-10, 50), dice.uniform(-16, 14), dice.uniform(0.2, 1.0)) for _ in range(40)]
    said = {"offset": f"{off} ft", "toward": "outside"} if off else {}
    ground = [
        tree(round(x, 2), round(y, 2), f"pine {number} of many", round(wide, 2))
        for number, (x, y, wide) in enumerate(trees)
    ]
    answer = answer_to({**job, **said, "at": at, "ground": ground, "method": "coordinates"})
    found, concrete, dig = where(answer), slab_of(answer), slab_of(answer, FOOT)
    seen = {"concrete": 0, "dig": 0, "": 0}
    for number, (x, y, wide) in enumerate(trees):
        one = placed(answer, at, circle(round(x, 2), round(y, 2), round(wide, 2)), off)
        if any(one.buffer(0.01).intersects(area) != one.buffer(-0.01).intersects(area) for area in (concrete, dig)):
            continue  # it touches by less than a finger: outlines are chords
        inside = "concrete" if one.intersects(concrete) else "dig" if one.intersects(dig) else ""
        assert found.get(f"pine {number} of many", "") == inside, (number, x, y)
        seen[inside] += 1
        if inside == "dig":
            deep = max(Point(spot).distance(dig.exterior) * dig.contains(Point(spot)) for spot in one.exterior.coords)
            told = next(row["text"] for row in answer["lined"]["standing"] if row["name"] == f"pine {number} of many")
            shown = re.search(r": (.+?) inside the (left|right) dig line", told) or re.search(r", (.+?) inside", told)
            assert shown and told.endswith("Ask before you cut roots or move it.")
            assert read_length(shown[1], "ft-in", "deep").metres == pytest.approx(deep, abs=0.004)  # 1/8 in, up
            assert told.replace("The ", "")[:4] == "pine"
    assert all(seen.values()), seen


def test_a_tree_in_the_way_of_another_arc_is_found_too() -> None:
    """It was said of arc 4 while that was staked; now arc 2 is."""
    pieces = [dict(piece) for piece in FIVE["line"]]
    alone = answer_to({**FIVE, "at": 4, "ground": [tree(12, 3)], "method": "coordinates"})
    pieces[3]["work"] = {"ground": [tree(12, 3)]}
    other = answer_to({**FIVE, "at": 2, "line": pieces})
    assert where(alone) == where(other) == {"oak": "concrete"} or where(alone) == where(other) == {"oak": "dig"}
    (one,), (two,) = alone["lined"]["standing"], other["lined"]["standing"]
    assert [corner["x"] for corner in one["outline"]] == pytest.approx([corner["x"] for corner in two["outline"]])
    assert [corner["y"] for corner in one["outline"]] == pytest.approx([corner["y"] for corner in two["outline"]])
    half = [*pieces[:3], {**pieces[3], "work": {"ground": [{"name": "oak", "at": ["12 ft", "3 ft"]}]}}, pieces[4]]
    assert where(answer_to({**FIVE, "at": 2, "line": half})) == {}  # half typed: it is nowhere yet


def test_a_tree_in_the_dig_is_told_with_its_place_its_depth_and_what_to_do() -> None:
    """By hand: R 25 to the right 60 degrees, 5 ft to the right, dug a foot more: the dig's edge is R 19. A tree 18 in
    thick, its middle 18.3194 ft from the center and 2.5 ft before the arc's middle, reaches 19.0694: 0.83 in inside."""
    line = [{"straight": "12 ft"}, {"arc": {"radius": "25 ft", "central_angle": "60"}, "turn": "right"}]
    job = {**FIVE, "line": line, "at": 2, "slab": {"thickness": "4 in"}, "station": "2+50", "method": "coordinates",
           "grade": {"slope": 2, "high": "B", "low": "right"}, "ground": [tree(10, -3.5, wide=1.5)]}  # fmt: skip
    low = 25 * cos(pi / 6)  # the center, under the string
    from_center, turned = ((2.5**2 + (low - 3.5) ** 2) ** 0.5, pi / 6 - atan2(2.5, low - 3.5))
    assert 0.75 < (from_center + 0.75 - 19) * 12 < 0.875  # told as 7/8 in
    answer, station = answer_to(job), 250 + 12 + 25 * turned
    (row,) = answer["lined"]["standing"]
    told = re.fullmatch(r"The oak stands in the dig at 2\+([\d.]+): 7/8 in inside the right dig line\. .*", row["text"])
    assert told and float(told[1]) == pytest.approx(station - 200, abs=0.15)  # its deepest place, not its middle
    card = next(one for one in answer["form_cards"] if one["kind"] == "form_dig")
    assert f"oak at 2+{told[1]}: 7/8 in inside right dig line. Hold back; ask first." in card["notes"]
    assert next(one for one in answer["build"] if one["key"] == "edges")["more"] == say("edges.in_the_dig", what="oak")


def test_it_is_told_on_the_row_the_pages_the_cautions_and_paper_and_drawn() -> None:
    answer = answer_to({**FIVE, "at": 2, "ground": [tree(12, 5)]})
    text = say("edges.in_the_concrete", what="oak")
    assert where(answer) == {"oak": "concrete"}
    assert text in answer["cautions"] and text in answer["lined"]["cautions"]
    row = next(row for row in answer["build"] if row["key"] == "edges")
    assert row["state"] == "near" and row["more"] == text
    for key in ("line", "edges"):
        assert text in next(page for page in answer["lined"]["pages"] if page["key"] == key)["lines"]
    assert text in re.sub("<[^>]*>", "", lined_sides(answer, ""))
    assert 'data-stops="feet"' in lined_svg(answer, id="x") and ">oak<" in lined_svg(answer, id="x")
    free = answer_to({**FIVE, "at": 2, "ground": [tree(12, -20)]})
    assert where(free) == {} and ">oak<" not in lined_svg(free, id="x")


def test_the_base_is_told_over_the_whole_dig() -> None:
    answer = answer_to(FIVE)
    base = read_length("4 in", "ft-in", "base").metres
    ends = 2 * (5 + 2) * 1 * FOOT**2  # past the start and past the end: 7 ft wide, 1 ft on
    area = (slab_of(answer, FOOT).area + ends) * base / 0.764554857984
    lines = " ".join(next(page for page in answer["lined"]["pages"] if page["key"] == "pour")["lines"])
    told = re.search(r"base is ([\d.]+) yd³ in place under the slab, ([\d.]+) yd³ over the whole dig", lines)
    assert told and float(told[2]) == pytest.approx(area, abs=0.006)
    assert float(told[1]) == pytest.approx(answer["pour"]["area"] * base / 0.764554857984, abs=0.006)
    exact = answer_to({**FIVE, "slab": {**FIVE["slab"], "overdig": "0 in"}})
    assert "over the whole dig" not in str(exact["lined"]["pages"])


def test_a_tree_beside_the_dig_is_told_with_its_distance_from_form_and_dig_line() -> None:
    """Held against shapely: the slab between its edges, and the same widened by what is dug past them."""
    said = 0
    for y in (7.0, 9.0, 10.5, 12.0):
        job = {**FIVE, "station": "10+00", "edge": "left", "slab": {"thickness": "4 in", "overdig": "1 ft"}, "at": 2,
               "ground": [tree(11, y)]}  # fmt: skip
        answer = answer_to(job)
        thing = placed(answer, 2, circle(11, y, 2.0))
        off, dig = (slab_of(answer, past).distance(thing) / FOOT for past in (0.0, FOOT))
        page = next(one for one in answer["lined"]["pages"] if one["key"] == "edges")
        told = [line for line in page["lines"] if line.startswith("oak at 10")]
        notes = [note for card in answer["form_cards"] if card["kind"] == "form_dig" for note in card["notes"]]
        assert [line for line in notes if line.startswith("oak at 10")] == told
        assert bool(told) == (0 < dig <= 1 / FOOT)
        if not told:
            continue
        said += 1
        found = re.fullmatch(r"oak at (10\+[0-9.]+): (.+) off the right form, (.+) off the dig line\.", told[0])
        assert found, told
        for text, feet in zip(found.groups()[1:], (off, dig), strict=True):
            shown = read_length(text, "ft-in", "x").metres / FOOT
            assert feet - 1 / 96 - 2e-3 <= shown <= feet + 2e-3  # down to an eighth of an inch, never past it
    assert said >= 2
