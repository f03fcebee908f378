"""A slab that fills its curve, drawn on every page, in every shape."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.drawings.slab import slab_svg
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
