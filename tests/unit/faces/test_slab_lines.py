"""The slab on the numbers face: its two lines, what follows from it as it is typed, and that it stops no stake."""

from __future__ import annotations

import json
import re
from html import unescape

import pytest

from bowstring import answering
from bowstring.faces.numbers import numbers
from bowstring.faces.numbers_later import numbers_later
from bowstring.faces.slab_pictures import PICTURED, slab_picture
from bowstring.page.fields import job_of_fields
from bowstring.page.form import form_html
from bowstring.page.measuring import shown_numbers
from bowstring.units.tape import make_tape
from bowstring.words import say

ARC = {"arc-radius": "62'", "arc-chord": "48'", "side": "left", "drawn_to": "face"}
SLAB = {**ARC, "width": "5'", "edge": "outside", "slab-thickness": "4 in",
        "offset": "9'", "toward": "outside"}  # fmt: skip
"""Its stakes stand clear of the dig."""
SLOPE = {"grade-slope": "2", "grade-high": "B", "grade-low": "inside"}
AHEAD = {"before-0-straight": "12'"}
METRIC = {"unit": "m", "arc-radius": "19", "arc-chord": "14.6", "side": "left", "drawn_to": "face"}

LINES = [
    (ARC, {}, "slab", "usual", "Not given"),
    (SLAB, {}, "slab", "said", "5' 0\" wide, inside, 4\" thick"),
    (SLAB, {"edge": "inside"}, "slab", "said", "5' 0\" wide, outside, 4\" thick"),
    (SLAB, {"edge": "centre"}, "slab", "said", "5' 0\" wide, half to each side, 4\" thick"),
    (SLAB, {"edge": "right"}, "slab", "said", "5' 0\" wide, your line is its right edge, 4\" thick"),
    (SLAB, {"edge": ""}, "slab", "said", "5' 0\" wide, side not given, 4\" thick"),
    (SLAB, {"width": ""}, "slab", "said", "Width not given, inside, 4\" thick"),
    (SLAB, {"slab-end_width": "4'"}, "slab", "said", "5' 0\" to 4' 0\" wide, inside, 4\" thick"),
    (SLAB, {"width": "62'"}, "slab", "said", "62' 0\" wide: no inner edge"),
    (SLAB, {"slab-end_width": "63'"}, "slab", "said", "5' 0\" wide: no inner edge"),
    (SLAB, {"drawn_to": "centre", "edge": ""}, "slab", "said", "5' 0\" wide, half to each side, 4\" thick"),
    (SLAB, {"drawn_to": "centre"}, "slab", "said", "Centerline drawn: which side?"),
    (ARC, {"joints-panels": "9"}, "slab", "said", "Width not given"),
    (METRIC, {"width": "1.5", "slab-thickness": "90 mm"}, "slab", "said", "1.500 m wide, side not given, 90 mm thick"),
    # Of a line of several pieces inside and outside say nothing, whenever they were said.
    (SLAB, {**AHEAD, "edge": "inside"}, "slab", "said", "5' 0\" wide, side not given, 4\" thick"),
    (SLAB, {**AHEAD, "edge": "outside"}, "slab", "said", "5' 0\" wide, side not given, 4\" thick"),
    (SLAB, {**AHEAD, "edge": "left"}, "slab", "said", "5' 0\" wide, your line is its left edge, 4\" thick"),
    (SLAB, {**AHEAD, "edge": "centre"}, "slab", "said", "5' 0\" wide, half to each side, 4\" thick"),
    (ARC, {**SLOPE, **AHEAD}, "slope", "said", "2% climb along its middle, start to end, low edge not given"),
    (ARC, {**SLOPE, **AHEAD, "grade-high": "A", "grade-low": "left"}, "slope", "said",
     "2% fall along its middle, start to end, down 1.5% to the left"),
    (ARC, {**AHEAD, "grade-slope": "0", "grade-cross": "0"}, "slope", "said", "Level from start to end, flat across"),
    (ARC, {**AHEAD, "grade-high": "A"}, "slope", "said", "High at the start, slope not given"),
    (ARC, {**AHEAD, "grade-from": "10'", "grade-to": "11'", "grade-cross": "0"}, "slope", "said",
     "LEFT tops 10.00 to 11.00 ft, flat across"),
    (ARC, {**AHEAD, "grade-to": "1'", "grade-cross": "0"}, "slope", "said", "LEFT top 1.00 ft at the end, flat across"),
    (ARC, {**AHEAD, "grade-from": "98.20", "grade-cross": "0"}, "slope", "said",
     "LEFT top 98.20 ft at the start, flat across"),
    (ARC, {**AHEAD, "grade-slope": "1.2", "grade-high": "A", "grade-along": "line", "grade-cross": "0"}, "slope",
     "said", "1.2% fall along the drawing's line, start to end, flat across"),
    (ARC, {}, "slope", "usual", "Not given"),
    (ARC, SLOPE, "slope", "said", "2% down, B to A, 1.5% down to the inside"),
    (ARC, {**SLOPE, "grade-cross": "1"}, "slope", "said", "2% down, B to A, 1% down to the inside"),
    (ARC, {**SLOPE, "grade-cross": "0"}, "slope", "said", "2% down, B to A, flat across"),
    (ARC, {**SLOPE, "grade-high": ""}, "slope", "said", "2%, high end not given, 1.5% down to the inside"),
    (ARC, {**SLOPE, "grade-low": ""}, "slope", "said", "2% down, B to A, low edge not given"),
    (ARC, {**SLOPE, "grade-crown": "1 in"}, "slope", "said", "2% down, B to A, crown 1\""),
    (ARC, {"grade-slope": "0"}, "slope", "said", "Level from A to B, low edge not given"),
    (ARC, {"grade-high": "A"}, "slope", "said", "High end A, slope not given"),
    (ARC, {"grade-from": "10'", "grade-to": "11'"}, "slope", "said",
     "OUTER tops 10.00 to 11.00 ft, low edge not given"),
    (ARC, {"grade-from": "-1'"}, "slope", "said", "OUTER top -1.00 ft at A"),
    (ARC, {"grade-from": "101.35 ft", "grade-to": "100.82 ft", "grade-cross": "0"}, "slope", "said",
     "OUTER tops 101.35 to 100.82 ft, flat across"),
    (METRIC, {"grade-from": "30.892", "grade-to": "30.73", "grade-cross": "0"}, "slope", "said",
     "OUTER tops 30.892 to 30.730 m, flat across"),
    (ARC, {"grade-limit": "5"}, "slope", "said", "Limits"),
]  # fmt: skip


def plain(html: str) -> str:
    return unescape(re.sub("<[^>]*>", "", html))


@pytest.mark.parametrize(("fields", "more", "key", "state", "text"), LINES)
def test_each_of_the_two_lines_says_its_answer_and_asks_for_nothing(
    fields: dict[str, str], more: dict[str, str], key: str, state: str, text: str
) -> None:
    face = numbers({**fields, **more})
    line = face["lines"][key]
    assert (line["state"], line["text"], line["asked"]) == (state, text, "")
    if more.get("drawn_to") != "centre":  # a width about a centerline asks which edge is staked, as it always has
        waits = key == "slab" and say("numbers.slab_no_side") in text  # the bar alone asks: no stake hangs on it
        assert face["ask"] == "" and face["state"]["sign"] == ("ask" if waits else "computed")


# The example of the walk: R 62 ft, 48-ft chord, 5 ft wide; both edges by R and by 2 R sin(th/2), R (1 - cos(th/2)).
FOLLOWS = [
    ({}, "Inner edge R 57' 0\" chord 44' 1-1/2\", mid-ordinate 4' 5-3/8\""),
    ({"edge": "left"}, "Inner edge R 57' 0\" chord 44' 1-1/2\", mid-ordinate 4' 5-3/8\""),
    ({"edge": "inside"}, "Outer edge R 67' 0\" chord 51' 10-1/2\", mid-ordinate 5' 2-5/8\""),
    ({"edge": "right"}, "Outer edge R 67' 0\" chord 51' 10-1/2\", mid-ordinate 5' 2-5/8\""),
    ({"edge": "centre"}, "Edges R 64' 6\" and R 59' 6\" 2' 6\" to each side of your line"),
    ({"side": "", "edge": "left"}, ""),
    ({"edge": ""}, ""),
    ({"width": ""}, ""),
    ({"arc-chord": ""}, ""),
    ({"arc-sagitta": "9'"}, ""),  # it differs: no number of the slab before that is settled
    ({"slab-end_width": "4'"}, "5' 0\" at A, 4' 0\" at B The tapered edge isn't a true arc."),
]


@pytest.mark.parametrize(("more", "text"), FOLLOWS)
def test_what_follows_for_the_slab_stands_there_as_it_is_typed(more: dict[str, str], text: str) -> None:
    assert plain(numbers({**SLAB, **more})["slab"]) == text


def test_a_drawing_to_the_centerline_has_the_slab_on_both_sides_and_says_so() -> None:
    said = {**SLAB, "drawn_to": "centre", "edge": "", "offset": "0"}
    assert "Half to each side" in plain(numbers(said)["slab"]) and "R 64' 6\"" in plain(numbers(said)["slab"])
    assert "Half to each side" in plain(numbers({**said, "width": ""})["slab"])
    assert answering(job_of_fields(said))["edges"] is not None


def test_an_edge_said_otherwise_than_the_centerline_is_asked_and_not_taken() -> None:
    said = {**SLAB, "drawn_to": "centre", "offset": "0"}
    html = numbers(said)["slab"]
    assert say("numbers.slab_which").partition("|")[0] in plain(html) and "57'" not in plain(html)
    (fill,) = (json.loads(unescape(text)) for text in re.findall('data-fill="([^"]+)"', html))
    assert 'data-do="panel" data-panel="line"' in html
    assert answering(job_of_fields(said))["edges"] is None
    settled = {**said, **fill}
    assert "R 59' 6\"" in plain(numbers(settled)["slab"]) and answering(job_of_fields(settled))["edges"] is not None


def test_over_a_chord_that_was_found_the_layout_says_the_other_edge() -> None:
    found = {**SLAB, "found-chord-0": "48' 2\"", "found-chord-1": "48' 2\"", "found-tape": "level",
             "found-hold": "sagitta", "found-sure": "yes"}  # fmt: skip
    assert numbers(found)["slab"] == ""
    told = answering(job_of_fields(found))
    arc = told["arc"]
    slab = plain(numbers_later(told, found)["slab"])
    inner = make_tape("ft-in", None).show(arc["radius"] - 5 * 0.3048)
    assert f"Inner edge R {inner} " in slab and arc["radius"] / 0.3048 > 62.3
    assert plain(numbers_later(answering(job_of_fields(SLAB)), SLAB)["slab"]) == plain(numbers(SLAB)["slab"])


def test_what_is_wrong_with_a_slab_stands_on_its_line() -> None:
    face = shown_numbers({"fields": {**SLAB, "slab-thickness": "4"}})
    assert face["lines"]["slab"]["state"] == "wrong"  # type: ignore[index]
    assert [error["id"] for error in face["errors"]] == ["slab-thickness"]  # type: ignore[attr-defined]


def test_the_two_lines_wait_for_an_arc_unless_something_is_said() -> None:
    hidden = re.compile('id="ask-(slab|slope)"[^>]* hidden>')
    assert hidden.findall(form_html()) == ["slab", "slope"]
    assert hidden.findall(form_html({"slab-waste": "8"})) == ["slope"]
    assert hidden.findall(form_html(ARC)) == []


def test_the_pictures_show_the_slab_on_its_side_of_the_line() -> None:
    def heights(edge: str) -> tuple[float, float, float]:
        """The topmost of the slab, of the line, and the lowest of the slab in its middle; the center is below."""
        slab, line = (
            [tuple(map(float, pair.split(","))) for pair in re.findall(r"[\d.]+,[\d.]+", path)]
            for path in re.findall(r' d="([^"]+)"', slab_picture(edge))[:2]
        )
        across = min(abs(x - 54) for x, _ in slab)
        middle = [y for x, y in slab if abs(abs(x - 54) - across) < 1e-6]
        return min(middle), min(y for _, y in line), max(middle)

    assert set(PICTURED) == {"outside", "centre", "inside"}
    top, line, low = heights("outside")
    assert top == pytest.approx(line) and low > line + 20
    top, line, low = heights("centre")
    assert line - top == pytest.approx(low - line, abs=0.01) and low > line
    top, line, low = heights("inside")
    assert low == pytest.approx(line) and top < line - 20
