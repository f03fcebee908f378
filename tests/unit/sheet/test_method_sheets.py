"""What a sheet, a table and a file of values say of each method: nothing left out, nothing of the other hand."""

from __future__ import annotations

import csv
import io
import math
import xml.etree.ElementTree as ET

import pytest

from bowstring.drawings.method import method_svg
from bowstring.drawings.scatter import scatter_svg
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.html import sheet_html
from bowstring.sheet.text import sheet_text
from helping import SAID, answer_to
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_reader import Read

ROUND_ONCE = ("centre", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
ALL = ("halving", "rule", *ROUND_ONCE)


def told(method: str, **more: object) -> dict[str, object]:
    job = {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/2 in", "drawn_to": "face",
           "side": "left", "method": method, "centre": "reachable", **more}  # fmt: skip
    return answer_to({key: value for key, value in job.items() if value is not None})


@pytest.mark.parametrize("method", ALL)
@pytest.mark.parametrize("side", ["left", "right"])
def test_every_reading_of_every_step_stands_on_both_sheets(method: str, side: str) -> None:
    # Chords produced come to more than three times half an inch here, and then no number stands on a sheet.
    found = told(method, side=side, **({"tolerance": "1-1/2 in"} if method == "produced" else {}))
    text, html = " ".join(sheet_text(found).split()), sheet_html(found)
    for step in found["steps"]:  # type: ignore[attr-defined]
        for measure in step["measures"]:
            assert measure["shown"] in text, (step["kind"], measure)
    for table in found["tables"]:  # type: ignore[attr-defined]
        for row in table["rows"]:
            assert row[0] in text
    for key in ("advice", "accuracy", "checks", "rounding", "stakes"):
        assert f'id="sheet-{key}"' in html
    assert ('id="sheet-rule"' in html) == (method in ("halving", "rule"))


@pytest.mark.parametrize("method", ALL)
def test_a_right_hand_curve_is_never_told_as_a_left_hand_one(method: str) -> None:
    """The sentence that gives a hand gives the other one on the other side, word for word."""
    left, right = told(method, side="left"), told(method, side="right")
    for one, other in zip(left["steps"], right["steps"], strict=True):  # type: ignore[call-overload]
        swapped = one["text"].replace("left", "LEFT").replace("right", "left").replace("LEFT", "right")
        assert other["text"] == swapped


@pytest.mark.parametrize("method", ALL)
def test_the_file_of_values_has_every_stake_and_every_reading(method: str) -> None:
    found = told(method, tolerance=None)  # what is hopeless by half an inch is a stop, and the file says so first
    rows = list(csv.reader(io.StringIO(stakes_csv(found))))
    assert [row[0] for row in rows[1:]] == [stake["name"] for stake in found["stakes"]]  # type: ignore[attr-defined]
    assert {len(row) for row in rows[1:]} <= set(range(6, len(rows[0]) + 1))
    for row, stake in zip(rows[1:], found["stakes"], strict=True):  # type: ignore[call-overload]
        assert math.isclose(float(row[2]) * 0.3048, stake["x"], abs_tol=5e-7)
        assert math.isclose(float(row[3]) * 0.3048, stake["y"], abs_tol=5e-7)
    cells = {row[0]: " ".join(row[6:]) for row in rows[1:]}
    for step in found["steps"]:  # type: ignore[attr-defined]
        if step["stake"] and method != "produced":
            assert all(measure["shown"] in cells[step["stake"]] for measure in step["measures"])


def test_no_cell_is_a_formula() -> None:
    found = told("tapes", known=[{"name": "=1+1", "x": "10 ft", "y": "-8 ft"}], tapes_from=["=1+1", "B"])
    for row in csv.reader(io.StringIO(stakes_csv(found))):
        assert not any(cell.startswith(("=", "+", "@")) for cell in row)


@pytest.mark.parametrize("method", ROUND_ONCE)
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("arc", [("38 ft", "5' 3\""), ("20 ft", "9' 6\""), ("100 ft", "1 ft")])
def test_the_drawing_of_a_method_can_be_read(method: str, side: str, arc: tuple[str, str]) -> None:
    found = told(method, side=side, arc={"chord": arc[0], "sagitta": arc[1]})
    svg = method_svg(found, id="w")
    root = ET.fromstring(svg)
    words = [element.text or "" for element in root.iter() if element.tag.endswith("text")]
    stakes = [stake["name"] for stake in found["stakes"]]  # type: ignore[attr-defined]
    assert set(stakes) <= set(words)
    shown = next(word for word in words if word.startswith("Thick lines")).split("sets ")[1].split(",")[0]
    step = next(step for step in found["steps"] if step["stake"] == shown)  # type: ignore[attr-defined]
    # A deflection stands there as the trade names it, whatever mark is sighted for it.
    turned = f"{step['deflection']} off the tangent" if step["deflection"] else ""
    texts = [turned if "angle" in measure and turned else measure["text"] for measure in step["measures"]]
    assert all(text in " ".join(words) for text in texts)
    assert_clear(Read(svg))


@pytest.mark.parametrize("method", ALL)
def test_the_ellipses_are_where_the_stakes_are_and_as_large_as_told(method: str) -> None:
    """The 95 % ellipse of a stake: its long half axis is 2.4477 deviations of the worst direction."""
    found = told(method)
    svg = scatter_svg(found, id="s")
    for stake in found["stakes"]:  # type: ignore[attr-defined]
        total = math.hypot(stake["sigma_across"], stake["sigma_along"])
        axes = math.hypot(stake["ellipse"]["long"], stake["ellipse"]["short"]) / 2.4477468306808166
        assert math.isclose(total, axes, rel_tol=1e-9, abs_tol=1e-15)
    assert_clear(Read(svg))


def test_slope_distances_stand_beside_the_level_ones() -> None:
    """A 33-ft sagitta on a side slope of 1 in 10 is 2 in short (computed: 33 ft x (root 1.01 - 1) = 1.98 in)."""
    found = told("halving", arc={"chord": "168 ft", "sagitta": "33 ft"}, fall={"across": 10}, mark="1/32 in")
    step = next(step for step in found["steps"] if step["stake"] == "M")  # type: ignore[attr-defined]
    out = step["measures"][1]
    assert math.isclose(out["slope"], 33 * 0.3048 * math.sqrt(1.01), rel_tol=1e-12)
    short = next(bias for bias in found["accuracy"]["biases"] if bias["kind"] == "slope")  # type: ignore[index]
    assert short["at"] == "M" and short["worst_miss"] < 0
    assert math.isclose(-short["worst_miss"] / 0.0254, 396 * (math.sqrt(1.01) - 1), rel_tol=1e-9)
    assert out["slope_shown"] in step["text"] and out["shown"] in step["text"]


def test_a_level_number_stands_alone_where_the_slope_reads_the_same() -> None:
    found = told("ordinates", fall={"across": 10})
    for step in found["steps"]:  # type: ignore[attr-defined]
        if step["kind"] == "ordinate":
            along, out = step["measures"]  # along the chord nothing falls
            assert along["text"] == along["shown"] and out["text"] != out["shown"]


@pytest.mark.parametrize("side", ["left", "right"])
def test_two_tapes_held_beyond_the_curve_cross_on_the_hand_that_is_told(side: str) -> None:
    """Marks outside the curve: both crossings lie on the curve's side of the chord, and only the hand tells which.

    Chord 18 m, sagitta 3.4 m, marks at (0, 6) and (18, 6): the crown at (9, 3.4) is on the right of somebody who
    faces from the first to the second; the other crossing, (9, 8.6), is 5.2 m outside.
    """
    known = [{"name": "post", "x": 0, "y": 6}, {"name": "tree", "x": 18, "y": 6}]
    found = answer_to({"unit": "m", "arc": {"chord": 18, "sagitta": 3.4}, "levels": 1, "method": "tapes", "side": side,
                    "known": known, "tapes_from": ["post", "tree"]})  # fmt: skip
    step = next(step for step in found["steps"] if step["stake"] == "K1")  # type: ignore[attr-defined]
    hand = "right" if side == "left" else "left"
    assert f"on the {hand} (facing tree from post)" in step["text"]


@pytest.mark.parametrize("method", ALL)
def test_a_spacing_wider_than_the_arc_still_sets_a_stake(method: str) -> None:
    found = answer_to(
        {
            **SAID,
            "unit": "m",
            "arc": {"chord": 4, "sagitta": 0.5},
            "spacing": 30,
            "method": method,
            "centre": "reachable",
        }
    )
    assert len(found["stakes"]) == 3 and sheet_html(found) and sheet_text(found)  # type: ignore[arg-type]
