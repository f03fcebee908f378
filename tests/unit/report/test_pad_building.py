"""A pad whose square end is against a building: what is squared, dug, stripped and ordered there."""

from __future__ import annotations

import re
from math import hypot, sqrt
from typing import Any

import pytest

from helping import answer_to

PAD: dict[str, Any] = {
    "bowstring": 1, "arc": {"radius": "15 ft", "chord": "24 ft"}, "ends": {"A": "hydrant", "B": "light pole"},
    "side": "left", "drawn_to": "face",
    "slab": {"fills": True, "sides": "16 ft", "back": "against", "thickness": "5 in", "base": "4 in",
             "edge_width": "12 in", "edge_depth": "12 in"},
}  # fmt: skip
"""24 ft by 16 ft and a rise of 15 - √(15² - 12²), 6 ft."""
HALF: dict[str, Any] = {**PAD, "arc": {"radius": "12 ft", "chord": "24 ft"}}
TIGHT: dict[str, Any] = {**PAD, "arc": {"radius": "4 ft 3 in", "chord": "8 ft"},
                         "slab": {**PAD["slab"], "sides": "6 ft"}}  # fmt: skip


def open_back(job: dict[str, Any]) -> dict[str, Any]:
    """The same job with a form at its square end."""
    return {**job, "slab": {**job["slab"], "back": "formed"}}


def sides_told(job: dict[str, Any]) -> str:
    edges = answer_to(job)["edges"]
    assert edges is not None
    return " ".join(edges["sides_how"])


def legs(text: str) -> tuple[float, float, float]:
    """The triangle's whole feet that a sentence names: on the string, back, across."""
    found = re.search(r"(\d+)' 0\" on the string, (\d+)' 0\" back, (\d+)' 0\" across", text)
    assert found is not None, text
    along, out, across = map(float, found.groups())
    return along, out, across


@pytest.mark.parametrize("sides", range(3, 31))
def test_no_leg_of_the_squaring_triangle_ends_in_the_building(sides: int) -> None:
    """Pythagoras by hand."""
    along, out, across = legs(sides_told({**PAD, "slab": {**PAD["slab"], "sides": f"{sides} ft"}}))
    assert hypot(along, out) == across and out <= sides and along <= 24
    assert abs(across - sqrt(24**2 + sides**2)) > 0.05 * sqrt(24**2 + sides**2)  # the diagonal proves the sides


def test_a_leg_may_run_past_a_form_but_not_into_a_wall() -> None:
    assert legs(sides_told(open_back(PAD)))[1] > 16 >= legs(sides_told(PAD))[1]
    assert "16' 0\" back" in answer_to(PAD)["form_cards"][0]["notes"][0]
