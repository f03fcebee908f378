"""What stands in the concrete or in the dig, held against shapely, a general-purpose geometry library."""

from __future__ import annotations

import json
import math
import random
import re
from html import unescape
from typing import Any

import pytest
from shapely.geometry import Point, Polygon

from bowstring.drawings.slab import slab_svg
from bowstring.faces.build import build_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.forming.edge import Edge
from bowstring.forming.outline import area_between, dug_between, ends_of_band, outline_of_band, stands_in
from bowstring.geometry.arc import Arc
from bowstring.geometry.outlines import Circle
from bowstring.geometry.plane import Point as Place
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job
from bowstring.sheet.text import sheet_text
from bowstring.units.lengths import read_length
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to

FOOT = 0.3048
R, CHORD = 72.5 * FOOT, 44.75 * FOOT
WALK: dict[str, Any] = {
    "bowstring": 1, "side": "left", "drawn_to": "face", "arc": {"radius": "72' 6\"", "chord": "44' 9\""},
    "width": "5 ft", "edge": "inside", "slab": {"thickness": "4 in", "overdig": "6 in"}, "method": "ordinates",
    "parallel": "9 ft",
}  # fmt: skip
OAK = {"name": "oak", "stops": "tape", "diameter": "18 in"}


def told(job: dict[str, Any]) -> list[tuple[str, str]]:
    return [(one["name"], one["where"]) for one in answer_to(job)["edges"]["standing"]]


def band(width_a: float, width_b: float, past: float, lies: str) -> Polygon:
    """The slab between its edges in the frame of the string, its ends square to the arc: R (1 - cos) by hand."""
    half = math.asin(CHORD / 2 / R)
    shares = [number / 600 for number in range(601)]
    edges = []
    for far in (False, True):
        places = []
        for share in shares:
            width = width_a + (width_b - width_a) * share
            off = {"outside": (-past, width + past), "inside": (-width - past, past)}[lies][far]
            angle = half * (2 * share - 1)
            places.append((CHORD / 2 + (R + off) * math.sin(angle), (R + off) * math.cos(angle) - R * math.cos(half)))
        edges.append(places)
    return Polygon([*edges[0], *reversed(edges[1])])


CASES = {"outside": (5.0, 5.0), "inside": (5.0, 5.0), "outside, tapering": (5.0, 3.0), "inside, tapering": (4.0, 6.5)}


def case(name: str) -> tuple[str, float, float, Edge, Edge]:
    """On which side of the arc a band lies, how wide it is at both ends, metres, and its outer edge and inner one."""
    lies, (first, last) = name.partition(",")[0], (width * FOOT for width in CASES[name])
    sign, line = 1 if lies == "outside" else -1, Arc.of_angle(R, math.asin(CHORD / 2 / R))
    edges = Edge(line, sign * first, sign * last), Edge(line, 0.0, 0.0)
    outer, inner = edges if sign > 0 else reversed(edges)
    return lies, first, last, outer, inner


@pytest.mark.parametrize("name", CASES)
def test_what_stands_in_the_concrete_and_in_the_dig_agrees_with_shapely(name: str) -> None:
    lies, first, last, outer, inner = case(name)
    chance, seen = random.Random(72), {True: 0, False: 0}
    for past in (0.0, 0.5 * FOOT):
        zone, outline = band(first, last, past, lies), outline_of_band(outer, inner, past)
        for number in range(200):
            x, y, size = (FOOT * chance.uniform(*ends) for ends in ((-6, 51), (-8, 13), (0.2, 4)))
            if number % 2:
                thing: Any = Circle.around(Place(x, y), size / 2)
                shape = Point(x, y).buffer(size / 2, 64)
            else:
                turn = chance.uniform(0, 2 * math.pi)
                thing = [Place(x + size * math.cos(turn + 2 * k), y + size * math.sin(turn + 2 * k)) for k in range(3)]
                shape = Polygon(thing)
            deep = zone.intersection(shape).area
            if 0 < deep < 2e-3 or (not deep and zone.distance(shape) < 4e-3):
                continue  # what only touches, by less than a finger, may be told either way
            assert stands_in(thing, outline) == (deep > 0), (x, y, size)
            seen[deep > 0] += 1
    assert min(seen.values()) > 75


def test_an_oak_in_the_walk_is_a_caution_beside_it_is_none() -> None:
    for y, where in (("0.5 ft", None), ("2.2 ft", "dig"), ("6 ft", "concrete"), ("8.9 ft", "dig"), ("9.7 ft", None)):
        answer = answer_to({**WALK, "ground": [{**OAK, "at": ["14 ft", y]}]})
        row = answer["build"][0]
        assert (row["state"] == "near") == bool(where)
        assert (row["more"] == f"The oak stands in the {where}.") == bool(where)
        notes = next(one for one in answer["form_cards"] if one["kind"] == "form_dig")["notes"]
        assert any("oak" in note for note in notes) == bool(where)
        svg = slab_svg(answer, id="x")
        assert ("data-stops" in svg) == (">oak<" in svg) == bool(where)


def test_what_is_all_around_the_walk_stands_in_it() -> None:
    field = [["-20 ft", "-20 ft"], ["70 ft", "-20 ft"], ["70 ft", "30 ft"], ["-20 ft", "30 ft"]]
    assert told({**WALK, "method": "angles", "ground": [{"name": "lot", "stops": "feet", "outline": field}]}) == [
        ("lot", "concrete")
    ]


def test_a_slab_that_fills_its_curve_has_its_own_outline() -> None:
    job = {**WALK, "slab": {"thickness": "4 in", "fills": True, "sides": "8 ft", "overdig": "6 in"}}
    del job["width"], job["edge"]
    wheres = {"-4 ft": "concrete", "-8.9 ft": "dig", "-9.5 ft": None, "2 ft": "concrete", "5.5 ft": None}
    for y, where in wheres.items():
        assert told({**job, "ground": [{**OAK, "at": ["22 ft", y]}]}) == ([("oak", where)] if where else [])


@pytest.mark.parametrize("language", LANGUAGES)
def test_it_is_told_on_build_s_page_and_on_the_long_sheet(language: str) -> None:
    speak(language)
    try:
        answer = answer_to({**WALK, "parallel": "3 ft", "ground": [{**OAK, "at": ["14 ft", "6 ft"]}]})
        (row,) = answer["edges"]["standing"]
        assert "oak" in row["text"]
        assert row["text"] in build_html(answer) and row["text"] in build_html(answer, "edges")
        assert row["text"] in sheet_text(answer)
    finally:
        speak("english")


@pytest.mark.parametrize("name", CASES)
def test_the_area_of_the_dig_agrees_with_shapely(name: str) -> None:
    lies, first, last, outer, inner = case(name)
    for past in (0.0, 0.5 * FOOT):
        assert area_between(outer, inner, past) == pytest.approx(band(first, last, past, lies).area, rel=1e-6)


def run_on(zone: Polygon, past: float) -> Polygon:
    """What is dug straight on past both ends of a band, by shapely: each end's side, swept along its own tangent."""
    out, into = len(zone.exterior.coords) // 2 - 1, len(zone.exterior.coords) // 2
    spots = [*zone.exterior.coords]
    ends = []
    for one, other in ((spots[0], spots[-2]), (spots[out], spots[into])):
        along = one[0] - other[0], one[1] - other[1]
        size = math.hypot(*along)
        for on in (
            (-along[1] * past / size, along[0] * past / size),
            (along[1] * past / size, -along[0] * past / size),
        ):
            far = [(spot[0] + on[0], spot[1] + on[1]) for spot in (one, other)]
            end = Polygon([one, other, far[1], far[0]])
            if end.intersection(zone).area < 1e-3 * end.area:  # not back over the band
                ends.append(end)
    assert len(ends) == 2
    return zone.union(ends[0]).union(ends[1])


@pytest.mark.parametrize("name", CASES)
def test_the_dig_runs_on_past_both_ends(name: str) -> None:
    lies, first, last, outer, inner = case(name)
    past = 0.5 * FOOT
    whole = run_on(band(first, last, past, lies), past)
    assert dug_between(outer, inner, past) == pytest.approx(whole.area, rel=1e-6)
    ends = [Polygon([tuple(corner) for corner in end]) for end in ends_of_band(outer, inner, past)]
    assert Polygon(outline_of_band(outer, inner, past)).union(ends[0]).union(ends[1]).symmetric_difference(
        whole
    ).area < 1e-3 * whole.area  # fmt: skip


@pytest.mark.parametrize("name", CASES)
@pytest.mark.parametrize(("end", "other"), [("A", "B"), ("B", "A")])
def test_the_dig_runs_on_past_one_end_alone(name: str, end: str, other: str) -> None:
    """By shapely: what both ends' dig has, less the piece at the other end."""
    lies, first, last, outer, inner = case(name)
    past = 0.5 * FOOT
    zone = band(first, last, past, lies)
    piece, gone = (Polygon([tuple(corner) for one in ends_of_band(outer, inner, past, at) for corner in one])
                   for at in (end, other))  # fmt: skip
    whole = run_on(zone, past)
    assert dug_between(outer, inner, past, end) == pytest.approx(whole.area - gone.area, rel=1e-6)
    assert piece.area + gone.area == pytest.approx(whole.area - zone.area, rel=1e-4)
    assert dug_between(outer, inner, past, ()) == pytest.approx(zone.area, rel=1e-6)


def test_a_tree_past_an_end_that_meets_old_concrete_stands_in_no_dig() -> None:
    """The tree below, just past A: nothing is dug there."""
    half = math.asin(CHORD / 2 / R)
    at = [-1.005 * math.cos(half) - 2.5 * math.sin(half), -1.005 * math.sin(half) + 2.5 * math.cos(half)]
    job = {**WALK, "method": "coordinates", "ground": [{**OAK, "at": [f"{at[0]:.4f} ft", f"{at[1]:.4f} ft"]}]}
    ends: tuple[tuple[dict[str, str], bool], ...] = (
        ({}, True),
        ({"at_A": "against"}, False),
        ({"at_B": "against"}, True),
    )
    for said, dug in ends:
        assert told({**job, "slab": {**job["slab"], **said}}) == ([("oak", "dig")] if dug else [])


def test_a_dig_whose_ends_meet_has_no_area_of_its_own() -> None:
    for degrees, known in ((170, True), (250, True), (340, True), (359, False), (357, False)):
        line = Arc.of_angle(6.0, math.radians(degrees / 2))
        area = dug_between(Edge(line, 0.75, 0.75), Edge(line, -0.75, -0.75), 0.15)
        assert (area is not None) == known, degrees
        if area is not None:
            assert area == pytest.approx(math.radians(degrees) * 6 * 1.8 + 2 * 1.8 * 0.15)


def test_a_tree_just_past_an_end_stands_in_the_dig() -> None:
    """Past A along its tangent, by its own diameter: 18 in, its near side just over 3 in off; the dig goes 6 in on."""
    half = math.asin(CHORD / 2 / R)
    for off, where in ((1.005, "dig"), (1.3, None)):
        at = [-off * math.cos(half) - 2.5 * math.sin(half), -off * math.sin(half) + 2.5 * math.cos(half)]
        oak = {**OAK, "at": [f"{at[0]:.4f} ft", f"{at[1]:.4f} ft"]}
        job = {**WALK, "method": "coordinates", "ground": [oak]}
        assert told(job) == ([("oak", where)] if where else [])
        if where:
            text = answer_to(job)["edges"]["standing"][0]["text"]
            assert text.startswith("The oak stands in the dig past A, 3 in inside the dig line.")
            notes = next(one for one in answer_to(job)["form_cards"] if one["kind"] == "form_dig")["notes"]
            assert "oak past A: 3 in inside the dig. Hold back; ask first." in notes


@pytest.mark.parametrize(("y", "line"), [(2.2, "inner"), (8.9, "outer")])
def test_how_deep_a_tree_stands_in_the_dig_is_what_shapely_has(y: float, line: str) -> None:
    job = {**WALK, "ground": [{**OAK, "at": ["14 ft", f"{y} ft"]}]}
    text = answer_to(job)["edges"]["standing"][0]["text"]
    zone, tree = band(5 * FOOT, 5 * FOOT, 0.5 * FOOT, "outside"), Point(14 * FOOT, y * FOOT).buffer(0.75 * FOOT, 64)
    deep = max(Point(spot).distance(zone.exterior) * zone.contains(Point(spot)) for spot in tree.exterior.coords)
    shown = re.search(rf": (.+?) inside the {line} dig line", text)
    assert shown and read_length(shown[1], "ft-in", "deep").metres == pytest.approx(deep, abs=0.004)


def test_the_dig_lines_card_says_the_ends_and_the_page_too() -> None:
    answer = answer_to(WALK)
    card = next(one for one in answer["form_cards"] if one["kind"] == "form_dig")
    assert say("forming.note.dig_ends", size='6"', ends="A and B") in card["notes"]
    assert say("edges.paint_ends", size='6"', ends="A and B") in answer["edges"]["passes"]


def test_the_base_is_told_under_the_slab_and_over_the_whole_dig() -> None:
    """By shapely: 5 ft and 6 ft wide strips, 4 in deep, in cubic yards."""
    lines = answer_to({**WALK, "slab": {"thickness": "4 in", "base": "4 in", "overdig": "6 in"}})["pour"]["lines"]
    under, dug = (band(5 * FOOT, 5 * FOOT, past, "outside").area * FOOT / 3 / (3 * FOOT) ** 3 for past in (0, FOOT / 2))
    dug += 2 * 6 * 0.5 / 3 / 27  # past A and past B: 6 ft wide, 6 in on
    assert f"{under:.2f}" == "2.91" and f"{dug:.2f}" == "3.56"
    assert sum("2.91 yd³" in line and "3.56 yd³ over the whole dig" in line for line in lines) == 1
    none = answer_to({**WALK, "slab": {"thickness": "4 in", "base": "4 in", "overdig": "0"}})["pour"]["lines"]
    assert not any("whole dig" in line for line in none) and any("2.91 yd³" in line for line in none)


def test_a_third_decimal_is_told_where_two_would_give_another_order() -> None:
    """3.2513 yd³ goes up to 3-1/2; told as 3.25 it would read as a mistake."""
    job = {**WALK, "slab": {"thickness": "4 in", "waste": 0}}
    needed = answer_to(job)["pour"]["volume_yards"]
    for told, shown, order in ((3.2513, "makes 3.251 yd³", "3-1/2"), (3.2413, "makes 3.24 yd³", "3-1/4")):
        pour = answer_to({**job, "slab": {**job["slab"], "waste": (told / needed - 1) * 100}})["pour"]
        assert shown in pour["why"] and pour["number"] == order


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_stands_in_the_dig_is_on_the_forms_front_in_the_sign_off_and_in_the_bar(language: str) -> None:
    """A trunk of 18 in 9 ft off the string's middle: the outer edge is there at 3.54 + 5 ft, the dig 6 in past it."""
    speak(language)
    job = {name: value for name, value in WALK.items() if name not in ("method", "parallel")}
    trunk = {**OAK, "at": [f"{CHORD / 2 / FOOT} ft", "9 ft"]}
    job |= {"ends": {"A": "post", "B": "pier"}, "method": "halving", "levels": 3, "ground": [trunk]}
    answer = answer_to(job)
    (row,) = answer["edges"]["standing"]
    front, back = (
        text_of(side) for side in re.findall(r"<section.*?</section>", forms_sides(answer, ""), re.DOTALL)[:2]
    )
    assert text_of(row["text"]).replace("*", "") in front
    assert say("forms.sign_standing") in back and back.split(say("forms.sign_standing"))[1].split()[0] == "oak"
    fields = fields_of_job(job)
    for face in ("build", "stakes", "checks"):
        asked = {"fields": fields, "face": face, "card": None, "panel": "", "address": ""}
        state = json.loads(Calls().handle("face", json.dumps(asked)))["state"]
        assert state["sign"] == "ask"
        later = json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields})))["state"]
        assert later["text"] == say("build.state_standing", count=1)
        assert state["text"] in (say("build.state_standing", count=1), say("build.state_open", count=1))
    none = answer_to({name: value for name, value in job.items() if name != "ground"})
    assert say("forms.sign_standing") not in text_of(forms_sides(none, ""))


def text_of(html: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).split())
