"""All drawings of a job are the same way round: A and B at the same ends, and the curve up, on its true hand.

What is tapped on the site's plan is held against the plan itself: drawn anew, it stands where the finger was.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from itertools import combinations, pairwise
from typing import Any

import pytest

from bowstring import answer
from bowstring.drawings.checked import checked_svg
from bowstring.drawings.lowplan import NARROW, low_plan_svg
from bowstring.drawings.mistakes import mistakes_svg
from bowstring.drawings.siteplan import site_plan_svg
from bowstring.drawings.step import step_svg
from bowstring.drawings.turn import ends_of, turn_of
from bowstring.faces.live_drawing import live_drawing
from bowstring.faces.settling import arcs_of_fields
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.sheet.blocks import Drawing
from bowstring.sheet.drawn import drawn
from bowstring.sheet.outline import outline
from bowstring.wall.shape import Given
from helping import about, answer_to
from unit.drawings.drawing_reader import SVG, Point, Read

SIDES = ("left", "right", None)
LAYOUTS: dict[str, dict[str, Any]] = {
    "halving": {"method": "halving", "levels": 2},
    "a hub": {"method": "halving", "levels": 2, "offset": "3 ft", "toward": "outside", "driven": "hub"},
    "a corner": {"method": "halving", "levels": 2, "start": "corner"},
    "ordinates": {"method": "ordinates", "parallel": "-3 ft"},
    "angles": {"method": "angles"},
    "over half": {"method": "halving", "levels": 2, "arc": {"radius": "20 ft", "central_angle": 220}},
}


def job_of(layout: str, side: str | None) -> dict[str, Any]:
    job = {"arc": {"chord": "40 ft", "sagitta": "8 ft"}, "drawn_to": "face", "driven": "pin", **LAYOUTS[layout]}
    return job | ({"side": side} if side else {})


def drawings(told: Any, job: dict[str, Any]) -> Iterator[tuple[str, str]]:
    """Yield every drawing of a job that has its arc in it, with a name."""
    for section in outline(told):
        for block in section.blocks:
            if isinstance(block, Drawing) and block.kind not in ("mistake", "stick", "lath", "stake_line"):
                yield f"{section.title} {block}", drawn(block, told, "d")
    for wide in (670.0, NARROW):
        yield f"paper, {wide:g}", low_plan_svg(told, id="p", height=190.0, wide=wide)
    yield "the site", site_plan_svg(told, id="s")
    yield "the checks", checked_svg(told, told["checks"][:2], [], [], "", id="c")
    for row in told["mistakes"]:
        if row["kind"] != "wrong_hand":
            yield row["kind"], mistakes_svg(told, row["kind"], id="m")
    for card in told["cards"]:
        yield f"card {card['number']}", step_svg(told, card, id="t")
    typed = fields_of_job(job)
    yield "the numbers", live_drawing(arcs_of_fields(typed), typed, side=told["side"], focus="", short=False)


def named(read: Read, name: str) -> list[Point]:
    return [words.at for words in read.words() if words.text == name]


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize("layout", LAYOUTS)
def test_every_drawing_of_a_job_is_the_same_way_round(layout: str, side: str | None) -> None:
    job = job_of(layout, side)
    told = answer_to(job, whole=True)
    order = {stake["name"]: place for place, stake in enumerate(told["stakes"])}
    turn = -1 if side == "right" else 1
    seen = 0
    for name, svg in drawings(told, job):
        with about(name):
            read = Read(svg)
            a, b = named(read, "A"), named(read, "B")
            if len(a) == len(b):
                seen += len(a)
                for (x, _), (x2, _) in zip(a, b, strict=True):
                    assert turn * (x2 - x) > 0, "A is at the other end"
            stakes = sorted((order[one], at) for one, at in places_of(read) if one in order)
            along = [at for _, at in stakes]
            for one, middle, other in combinations(along, 3):
                cross = (middle[0] - one[0]) * (other[1] - one[1]) - (middle[1] - one[1]) * (other[0] - one[0])
                assert turn * cross > -1.0, "a mirror of the ground"
            if {"A", "B"} <= set(dict(places_of(read))):
                at = dict(places_of(read))
                assert turn * (at["B"][0] - at["A"][0]) > 0
    assert seen > 10


def places_of(read: Read) -> list[tuple[str, Point]]:
    """The stakes of a drawing that shows each once."""
    return [(name, places[0]) for name, places in read.stakes().items() if len(places) == 1]


def test_the_wall_and_the_one_rule_agree() -> None:
    for side in SIDES:
        given = Given.of_answer(answer_to(job_of("halving", side)))
        assert given.ends == ends_of(side) == (("A", "B") if turn_of(side) > 0 else ("B", "A"))


def outline_on(svg: str, stops: str) -> list[Point]:
    """The corners of the first obstacle of a kind on a plan, in the drawing's units."""
    paths = (one for one in Read(svg).root.iter(f"{SVG}path") if one.get("data-stops") == stops)
    found = re.findall(r"(-?[\d.]+),(-?[\d.]+)", str(next(paths).get("d")))
    return [(float(x), float(y)) for x, y in found]


def beside(read: Read, at: Point) -> Point:
    """A place of the paper by the drawn stakes alone: toward B, and toward M from the middle of A-B."""
    a, b, m = (read.stakes()[name][0] for name in "ABM")
    chord = b[0] - a[0]
    return (at[0] - a[0]) / chord, (at[1] - a[1]) / (m[1] - a[1])


@pytest.mark.parametrize("side", SIDES)
def test_what_is_tapped_stands_under_the_finger_when_it_is_drawn(side: str | None) -> None:
    """A wall near A between string and curve, and a pond behind the string near B: as tapped, as told, and as drawn."""
    job = {"unit": "m", **job_of("halving", side), "arc": {"chord": "12 m", "sagitta": "2 m"}}
    for stops, near, inside in (("tape", 0.25, 0.3), ("feet", 0.8, -0.6)):
        svg = site_plan_svg(answer(job, whole=False), id="s")
        read = Read(svg)
        frame = next(one for one in read.root.iter() if one.get("data-scale"))
        a, b, m = (read.stakes()[name][0] for name in "ABM")
        middle = (a[0] + near * (b[0] - a[0]), a[1] + inside * (m[1] - a[1]))
        taps = [(middle[0] + x, middle[1] + y) for x, y in ((-9.0, -5.0), (9.0, -4.0), (7.0, 6.0), (-6.0, 5.0))]
        asked = {"fields": fields_of_job(job), "points": taps, "stops": stops,
                 "scale": frame.get("data-scale"), "turn": frame.get("data-turn")}  # fmt: skip
        fields = json.loads(handle("outline", json.dumps(asked)))["fields"]
        job = job_of_fields({**fields_of_job(job), **fields})
        told = answer(job, whole=False)
        drawn_anew = site_plan_svg(told, id="s")
        again = Read(drawn_anew)
        for tapped, shown in zip(taps, outline_on(drawn_anew, stops), strict=True):
            assert beside(again, shown) == pytest.approx(beside(read, tapped), abs=0.01)
        corners = told["site"]["obstacles"][-1]["outline"]  # type: ignore[index]
        xs, ys = [x for x, _ in corners], [y for _, y in corners]
        assert sum(xs) / 4 == pytest.approx(12 * near, abs=0.15)
        assert sum(ys) / 4 == pytest.approx(2 * inside, abs=0.15)
        assert (on_the_left(told, corners) == on_the_left(told, [[6, 2]])) is (inside > 0)


def on_the_left(told: Any, places: list[list[float]]) -> bool:
    """Whether places of the frame, whose y is positive on the curve's hand, are on the left of A toward B."""
    hands = {(y > 0) == (told["side"] != "right") for _, y in places}
    assert len(hands) == 1
    return hands.pop()


def test_the_order_of_the_stakes_is_that_on_paper() -> None:
    told = answer_to(job_of("halving", "right"), whole=True)
    at = dict(places_of(Read(low_plan_svg(told, id="p", height=190.0))))
    assert all(at[one][0] > at[other][0] for one, other in pairwise(stake["name"] for stake in told["stakes"]))
