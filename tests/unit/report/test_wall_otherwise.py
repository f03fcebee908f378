"""A wall that tapers, and a wall along a line of several pieces: its footing and its dig, and nothing of a slab's."""

from __future__ import annotations

from math import cos, radians, sin
from typing import Any

import pytest
from shapely import LineString

from bowstring.faces.build_lined import page_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.units.sizes import FOOT, INCH
from helping import answer_to
from lined_jobs import CREEK

TAPERED: dict[str, Any] = {
    "arc": {"radius": "18 ft", "central_angle": "60"}, "side": "left", "drawn_to": "face", "levels": 2, "width": "8 in",
    "edge": "outside",
    "slab": {"poured": "wall", "thickness": "3 ft", "end_width": "12 in", "footing_width": "2 ft",
             "footing_depth": "10 in"},
    "grade": {"slope": 0, "cross": 0},
}  # fmt: skip
LINED: dict[str, Any] = {
    **CREEK, "width": "8 in", "edge": "left", "drawn_to": "face",
    "slab": {"poured": "wall", "thickness": "3 ft", "footing_width": "2 ft", "footing_depth": "10 in"},
    "grade": {"slope": 9, "high": "A", "low": "left", "stops": True},
}  # fmt: skip
COUNT = 4000


def lines() -> dict[str, dict[str, Any]]:
    told: Any = answer_to(TAPERED)
    return {row["key"]: row for row in told["edges"]["lines"]}


@pytest.mark.parametrize(
    ("key", "at_a", "at_b", "shown"),
    [
        ("footing_outside", 8, 6, '8" outside to 6" outside'),
        ("dig_outside", 20, 18, "1' 8\" outside to 1' 6\" outside"),
        ("footing_inside", -16, -18, "1' 4\" inside to 1' 6\" inside"),
        ("dig_inside", -28, -30, "2' 4\" inside to 2' 6\" inside"),
    ],
)
def test_the_footing_of_a_wall_that_tapers_keeps_under_its_middle(key: str, at_a: int, at_b: int, shown: str) -> None:
    """By hand: the middle is 4 in inside the outer face at A and 6 in at B, the footing a foot to each side of it, and
    the dig a foot past that. Its length against shapely's, of 4000 points on the radii between."""
    row = lines()[key]
    assert row["off_shown"] == shown and row["radius"] is None
    points = []
    for number in range(COUNT + 1):
        share = number / COUNT
        reach = 18 * FOOT + (at_a + (at_b - at_a) * share) * INCH
        angle = radians(60) * share
        points.append((reach * cos(angle), reach * sin(angle)))
    assert row["arc_length"] == pytest.approx(LineString(points).length, rel=1e-6)
    assert row["chord"] == pytest.approx(LineString([points[0], points[-1]]).length, rel=1e-9)


def test_a_tapered_walls_dig_is_painted_off_its_footing_and_its_boards_are_said_to_be_missing() -> None:
    told: Any = answer_to(TAPERED)
    edges, row = told["edges"], next(one for one in told["build"] if one["key"] == "boards")
    assert any("1' 0\" past each edge of the footing" in text for text in edges["passes"])
    assert not any("form stakes stand" in text for text in [*edges["notes"], *edges["taper"]])
    unlisted = "The footing's boards aren't listed here: figure them from its edges."
    assert unlisted in edges["faces"] and unlisted in edges["faces_sheet"]
    assert row["more"] == "the footing's boards aren't listed"


def pages() -> dict[str, str]:
    told: Any = answer_to(LINED)
    return {page["key"]: page_html(page) for page in told["lined"]["pages"]}


def test_along_a_line_a_walls_dig_is_past_its_footing_and_its_stick_has_no_board() -> None:
    """The footing, 2 ft under 8 in of wall, is 8 in past each face."""
    edges = pages()["edges"]
    assert "past each edge of the footing, and dig" in edges and "Paint the dig line" in edges
    assert "centered under the wall" in edges and "No form stakes" in edges and "two marks" in edges
    assert "board" not in edges and "its stakes" not in edges and "makes the wall thin" in edges


def test_along_a_line_nobody_walks_on_a_wall() -> None:
    """At 9 percent a walk stops: a wall has its tops, and no limit, no water and no saw."""
    made, told = pages(), answer_to(LINED)
    row: Any = next(one for one in told["build"] if one["key"] == "grades")
    assert row["state"] == "usual" and "start to end" in row["text"]
    assert not any(word in made["grades"] for word in ("too steep", "max 5%", "ADA", "Water", "local code"))
    assert not any(word in made["joints"] for word in ("silica", "isolation", "curb"))
    walk: Any = answer_to({**CREEK, "grade": LINED["grade"]})
    assert next(one for one in walk["build"] if one["key"] == "grades")["state"] == "stop"


def test_its_paper_has_nothing_of_a_slabs_and_has_both_orders() -> None:
    html = forms_sides(answer_to(LINED), "May 31")
    assert "Base under top" not in html and "Sawing" not in html and "Have a bulkhead" not in html
    assert "fills a base" not in html and "stick with two marks" in html and "Footing first" in html
    assert "The footing&#x27;s boards aren&#x27;t listed here" in pages()["boards"]
