"""A wall's forms are two faces, its footing's are boards on stakes; its dig is told in plan and by the depth."""

from __future__ import annotations

from math import asin, ceil

import pytest

from bowstring.faces.build import build_html
from bowstring.faces.paper import paper_html
from helping import answer_to
from radius_wall import WALL
from slab_jobs import WALK

ANGLE = 2 * asin(16 / 28)


def test_both_faces_are_told_with_their_areas_by_hand() -> None:
    """Length times height: R 28 ft and R 27 ft 4 in over the same angle, 3 ft 6 in high."""
    told = " ".join(answer_to(WALL)["edges"]["faces"])
    for radius in (28, 28 - 8 / 12):
        assert f"3' 6\" high, {ANGLE * radius * 3.5:.1f} ft²" in told
    row = answer_to(WALL)["build"][1]
    assert row["text"] == f"Faces {ANGLE * 28 * 3.5:.1f} ft² and {ANGLE * (28 - 8 / 12) * 3.5:.1f} ft²"
    assert "1x12" in row["more"]


@pytest.mark.parametrize(("radius", "thickness"), [("28 ft", "3/4 in"), ("17.5 ft", "5/8"), ("13 ft", "1/2 in"),
                         ("9 ft", "3/8 in")])  # fmt: skip
def test_plywood_by_the_panel_makers_table(radius: str, thickness: str) -> None:
    """APA, concrete-form panels, bent dry along the grain: 3/8 in to 8 ft, 1/2 in to 12 ft, 3/4 in to 20 ft. The list
    has no 5/8 in: between 16 and 20 ft it is 1/2 in."""
    told = " ".join(answer_to({**WALL, "arc": {"radius": radius, "chord": "12 ft"}})["edges"]["faces"])
    assert f"Plywood up to {thickness.replace('5/8', '1/2 in')} bends dry" in told


def test_sheets_stand_end_to_end_along_each_face() -> None:
    told = " ".join(answer_to(WALL)["edges"]["faces"])
    outer, inner = (ceil(ANGLE * radius / 8) for radius in (28, 28 - 8 / 12))
    assert f"{outer} outside, {inner} inside" in told
    high = " ".join(answer_to({**WALL, "slab": {**WALL["slab"], "thickness": "5 ft"}})["edges"]["faces"])
    assert f"{2 * outer} outside, {2 * inner} inside" in high


def test_the_footing_is_formed_as_a_slab_of_its_depth() -> None:
    """Beside a slab of the footing's own measures: the same board, and within a stake as many."""
    told = " ".join(answer_to(WALL)["edges"]["faces"])
    assert "34' 10-1/2\" outside on R 28' 8\", 32' 5-1/4\" inside on R 26' 8\"" in told
    slab = {**WALL, "arc": {"radius": "28 ft 8 in", "central_angle": "69.69961"}, "width": "2 ft",
            "slab": {"thickness": "10 in"}}  # fmt: skip
    boards = answer_to(slab)["boards"]
    assert boards is not None and " ".join(boards["conclusion"]) in told
    stakes = int(told.split(" form stakes")[0].rsplit(" ", 1)[1])
    assert abs(stakes - boards["with_spare"]) <= 2


def test_no_form_stake_of_a_wall_stands_anywhere() -> None:
    answer = answer_to(WALL)
    edges = answer["edges"]
    assert not any("form" in line["key"] for line in edges["lines"])
    assert edges["stick"]["marks"] == []
    paper = paper_html(answer)  # type: ignore[arg-type]
    assert "Outer form stakes" not in paper and "Inner form stakes" not in paper
    assert "Slab INSIDE" not in paper and "Wall INSIDE" in paper
    page = build_html(answer, "boards")  # type: ignore[arg-type]
    assert "Plywood up to" in page and "licensed" in page
    walk = answer_to(WALK)["edges"]
    assert walk["faces"] == [] and any(line["key"] == "outer_form" for line in walk["lines"])


def test_the_dig_in_plan_is_the_footing_and_what_is_dug_past_it() -> None:
    """R 29 ft 8 in to R 25 ft 8 in over the angle, and 1 ft past each end, 4 ft wide."""
    area = ANGLE * (29 + 8 / 12 + 25 + 8 / 12) / 2 * 4 + 2 * 4
    told = " ".join(answer_to(WALL)["edges"]["passes"])
    assert f"{area:.1f} ft² in plan, {area / 27:.1f} yd³" in told
    assert "After the footing's pour" in told and "base" not in told
