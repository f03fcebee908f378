"""A slab that fills its curve, drawn on every page, in every shape."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.drawings.slab import slab_svg
from bowstring.drawings.slab_shape import shape_of
from helping import SAID, answer_to

SHAPES: dict[str, dict[str, Any]] = {
    "half round": {"radius": "10 ft", "chord": "20 ft"},
    "bulge": {"chord": "24 ft", "sagitta": "5 ft"},
    "flat": {"chord": "60 ft", "sagitta": "1 ft"},
    "most of a circle": {"radius": "10 ft", "central_angle": "300"},
}
PAGES = ("", "edges", "boards", "joints", "grades", "pour")


def job(shape: str, side: str) -> dict[str, Any]:
    return {**SAID, "arc": SHAPES[shape], "side": side, "slab": {"thickness": "4 in", "fills": True},
            "grade": {"slope": 1, "high": "A", "low": "inside"}, "joints": {"every": "5 ft"}}  # fmt: skip


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("shape", SHAPES)
def test_every_page_is_drawn(shape: str, side: str) -> None:
    told = answer_to(job(shape, side))
    drawn = {page: slab_svg(told, page, id="slab") for page in PAGES}
    assert all(svg.startswith("<svg") and "nan" not in svg for svg in drawn.values())
    edges, grades = told["edges"], told["grades"]
    assert edges is not None and grades is not None
    plain = {page: re.sub("<[^>]*>", " ", svg) for page, svg in drawn.items()}
    assert edges["width_shown"].replace('"', "&quot;") in plain[""].replace('"', "&quot;")
    assert edges["inside"]["length_shown"] in plain["edges"].replace("&quot;", '"')
    assert grades["slopes"][1]["shown"] in plain["grades"]


def test_its_body_is_closed_by_its_string() -> None:
    """The slab's own path ends in a straight line from B to A, at the height of both."""
    svg = slab_svg(answer_to(job("half round", "left")), "", id="slab")
    body = next(text for text in re.findall(r"<path[^>]*>", svg) if 'class="bd-slab"' in text)
    numbers = [tuple(map(float, pair)) for pair in re.findall(r"(-?[\d.]+)[ ,](-?[\d.]+)", body)]
    assert numbers[0][1] == pytest.approx(numbers[-1][1], abs=0.1)
    assert numbers[0] == pytest.approx(numbers[-1], abs=0.1)


PADS: dict[str, tuple[dict[str, Any], dict[str, Any]]] = {
    "rounded end": (SHAPES["half round"], {"sides": "15 ft"}),
    "both ends": (SHAPES["half round"], {"sides": "12 ft", "both_ends": True}),
    "low end": (SHAPES["bulge"], {"sides": "14 ft"}),
    "flat end": (SHAPES["flat"], {"sides": "2 ft", "both_ends": True}),
    "long": (SHAPES["half round"], {"sides": "400 ft"}),
}


def pad(name: str, side: str) -> dict[str, Any]:
    arc, sides = PADS[name]
    return {**job("half round", side), "arc": arc, "slab": {"thickness": "4 in", "fills": True, **sides}}


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("name", PADS)
def test_every_page_of_a_pad_is_drawn(name: str, side: str) -> None:
    told = answer_to(pad(name, side))
    drawn = {page: slab_svg(told, page, id="slab") for page in PAGES}
    assert all(svg.startswith("<svg") and "nan" not in svg for svg in drawn.values())
    edges, grades = told["edges"], told["grades"]
    assert edges is not None and grades is not None
    plain = {page: re.sub("<[^>]*>", " ", svg).replace("&quot;", '"') for page, svg in drawn.items()}
    assert edges["sides_shown"] in plain[""] and edges["diagonal_shown"] in plain["edges"]
    assert "A-2" in plain["edges"] and "B-2" in plain["edges"]
    back = {row["name"]: row["outside"]["shown"] for row in grades["rows"] if row["kind"] == "back"}
    tops = {row["name"]: row["outside"]["shown"] for row in grades["rows"] if row["kind"] == "stake"}
    words = " ".join(plain["grades"].split())
    for shown in (*(text for end in ("A-2", "B-2") for text in back[end].split()), *tops["B"].split()):
        assert shown in words


@pytest.mark.parametrize("name", ["rounded end", "both ends", "low end"])
def test_a_pads_sides_are_to_scale(name: str) -> None:
    made = shape_of(answer_to(pad(name, "left")))
    (x, y), (x2, _y2) = made.string(-1.0), made.string(1.0)
    _x3, y3 = made.string(-1.0, made.sides)
    edges = answer_to(pad(name, "left"))["edges"]
    assert edges is not None and edges["sides"] is not None and made.true
    chord = next(row["chord"] for row in edges["lines"] if row["key"] == "outside")
    assert (y3 - y) / abs(x2 - x) == pytest.approx(edges["sides"] / chord)


def test_sides_that_are_too_long_to_draw_say_that_they_arent_to_scale() -> None:
    assert not shape_of(answer_to(pad("long", "left"))).true


def test_a_curve_that_takes_no_sides_is_drawn_without_a_question() -> None:
    told = answer_to({**job("most of a circle", "left"), "slab": {"thickness": "4 in", "fills": True, "sides": "9 ft"}})
    svg = slab_svg(told, "", id="slab")
    assert "this side" not in svg and "or this" not in svg


@pytest.mark.parametrize("page", [*PAGES, "corners", "paper"])
def test_a_building_stands_at_the_back_of_a_pad_that_ends_at_one(page: str) -> None:
    """Named once, under the back, on every page but the boards' and that of a card which says so; the words under it
    don't lie on its name."""
    drawn = {}
    for back in ("formed", "against"):
        job = pad("rounded end", "left")
        drawn[back] = slab_svg(answer_to({**job, "slab": {**job["slab"], "back": back}}), page, id="slab")
    count = 0 if page in ("boards", "corners") else 1
    assert (drawn["formed"] == drawn["against"]) is (page == "boards")
    assert (drawn["formed"].count(">building<"), drawn["against"].count(">building<")) == (0, count)
    if count:
        svg = drawn["against"]
        words = [(float(y), text) for y, text in re.findall(r'<text[^>]* y="(-?[\d.]+)"[^>]*>([^<]*)<', svg)]
        at = next(y for y, text in words if text == "building")
        under = [y for y, text in words if text.startswith(("sides ", "diagonal "))]
        assert bool(under) is (page in ("", "edges", "paper"))
        assert all(y - at >= 15.0 for y in under)
