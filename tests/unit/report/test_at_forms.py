"""What the concrete is at each form against the board there: told alike on the card, on paper, and on every page."""

from __future__ import annotations

import re
from html import unescape
from math import pi
from typing import Any

import pytest
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

from bowstring import answering
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.forming.pad import Pad
from bowstring.geometry.arc import Arc
from bowstring.report.forms.answer import Answer
from helping import answer_to
from lined_jobs import CREEK
from slab_jobs import WALK

PAD: dict[str, Any] = {
    "arc": {"sagitta": "3 ft", "chord": "16 ft"}, "ends": {"A": "nail 1", "B": "nail 2"}, "side": "left",
    "drawn_to": "face",
    "slab": {"fills": True, "sides": "10 ft", "back": "against", "thickness": "5 in", "base": "6 in",
             "edge_width": "12 in", "edge_depth": "12 in", "edge_along": "sides"},
    "grade": {"from": "100.00 ft", "slope": 0, "cross": 1.5, "low": "outside"},
}  # fmt: skip
"""Boards of 1x6 and 2x6, 5-1/2 in high (American Softwood Lumber Standard PS 20)."""
BELOW = 'Edge 1\' 0": board 5-1/2", 6-1/2" of cut earth below it, or form it full depth.'
PLY: dict[str, Any] = {"kind": "own", "thickness": "3/4 in", "height": "12 in"}


def job(base: dict[str, Any] = PAD, **slab: str) -> dict[str, Any]:
    return {**base, "slab": {**base["slab"], **slab}}


def plain(html: str) -> str:
    return " ".join(unescape(re.sub("<[^>]+>", "", html)).replace("\xa0", " ").split())


def cards(answer: Answer) -> dict[str, str]:
    return {card["kind"]: " ".join(card["notes"]) for card in answer["form_cards"]}


def pages(answer: Answer) -> dict[str, str]:
    boards, grades, pour = answer["boards"], answer["grades"], answer["pour"]
    assert boards is not None and grades is not None and pour is not None
    told = {"boards": boards["stakes_how"], "grades": grades["base"], "pour": pour["lines"]}
    return {key: " ".join(lines).replace("*", "") for key, lines in told.items()}


@pytest.mark.parametrize("thickness", ["5 in", "6 in"])
def test_a_thick_edge_at_every_form_is_told_once_and_no_foot_goes_into_the_base(thickness: str) -> None:
    """12 in less 5-1/2 in are 6-1/2 in, however thick the slab is beside the edge."""
    answer = answer_to(job(thickness=thickness))
    paper = plain(forms_sides(answer, ""))
    for told in (*pages(answer).values(), cards(answer)["form_boards"], paper):
        assert told.count(BELOW) == 1
        assert "into the base" not in told and "short of the slab" not in told and "over the foot" not in told


def test_past_an_edge_that_earth_holds_it_is_dug_to_the_boards_foot_and_no_base_lies_there() -> None:
    """The pad: 16 by 10 ft, and a segment of a chord of 16 ft and 3 ft of rise, R 12 ft 2 in: 2 asin(8/12.1667) is 1.4
    and r²θ/2 - 8 (r - 3) 32.9 ft². 192.9 ft² by 6 in are 3.57 yd³."""
    answer = answer_to(job())
    assert 'Past it dig only 5-1/2" down, no base: that earth is the form.' in cards(answer)["form_base"]
    assert "Past it dig only to the board's foot, no base." in plain(forms_sides(answer, ""))
    assert 'A 6" base under the slab is 3.57 yd³ in place.' in pages(answer)["pour"]
    assert "over the whole dig" not in pages(answer)["pour"]
    round_all = cards(answer_to(job(edge_along="all")))["form_base"]
    assert "Past it only 5-1/2\" down, no base. Don't dig under the building's footing." in round_all
    nothing_past = cards(answer_to(job(overdig="0 in")))["form_base"]
    assert "The trench is inside the forms." in nothing_past and "Past it" not in nothing_past


def test_paper_says_how_much_base_is_wanted_where_the_order_has_room_for_a_line() -> None:
    """192.9 ft² by 6 in; without a thick edge it is dug a foot past the curve and both sides, as the page has it."""
    held = answer_to(job())
    assert held["pour"] is not None and 'Base 6": 3.57 yd³ in place, under the slab.' in plain(forms_sides(held, ""))
    flat = answer_to({**PAD, "slab": {key: one for key, one in PAD["slab"].items() if not key.startswith("edge")}})
    assert "3.57 yd³ in place under the slab, 4.30 yd³ over the whole dig" in pages(flat)["pour"]
    assert 'Base 6": 4.30 yd³ in place, over the dig.' in plain(forms_sides(flat, ""))
    none = {**PAD, "slab": {key: one for key, one in PAD["slab"].items() if key != "base"}}
    assert "in place" not in plain(forms_sides(answer_to(none), ""))


def test_one_space_is_no_even_ones() -> None:
    """Sides of 4 ft: one space."""
    short = pages(answer_to(job(sides="4 ft")))["boards"]
    assert "Side forms: every 4' 0\", 1 space on each." in short and "1 even" not in short


def test_a_thick_edge_along_the_curve_alone_leaves_the_sides_to_the_slab() -> None:
    """6 in of slab are 1/2 in more than the side forms; 3-1/2 in of slab want the boards of 3-1/2 in."""
    answer = answer_to(job(thickness="6 in", edge_along="curve"))
    bank = "1/2 in short of the slab: bank earth against its foot."
    for told in (pages(answer)["boards"], pages(answer)["pour"], plain(forms_sides(answer, ""))):
        assert told.count(BELOW) == 1 and told.count(bank) == 1
    assert "over the whole dig" in pages(answer)["pour"]
    low = pages(answer_to(job(thickness="3-1/2 in")))["grades"]
    assert 'Edge 1\' 0": board 3-1/2", 8-1/2" of cut earth below it' in low


def test_a_board_as_deep_as_the_edge_stands_in_its_trench_which_runs_out_to_the_dig_line() -> None:
    edged = job({**WALK, "slab": {**WALK["slab"], "base": "4 in"}}, edge_width="12 in", edge_depth="12 in")
    low, deep = answer_to(edged), answer_to({**edged, "board": PLY})
    assert 'Edge 1\' 0": board 3-1/2", 8-1/2" of cut earth below it' in cards(low)["form_boards"]
    assert "Edge" not in cards(deep)["form_boards"] and "cut earth" not in " ".join(pages(deep).values())
    assert "Dig it out to the dig line: its boards stand 1' 0\" down." in cards(deep)["form_base"]
    assert "over the whole dig" in pages(deep)["pour"] and "over the whole dig" not in pages(low)["pour"]
    nearly = answer_to({**edged, "board": {**PLY, "height": "11-1/2 in"}})
    assert "1/2 in short of the thick edge: bank earth against its foot." in pages(nearly)["boards"]
    mixed = pages(answer_to({**job(), "board": PLY}))["boards"]  # its sides are of the list
    assert 'Edge 1\' 0": 2x6 5-1/2", 6-1/2" of cut earth below it' in mixed


def test_concrete_presses_on_a_board_as_deep_as_it_reaches() -> None:
    """As its square, where the load is a triangle's: on a board of 12 in the edge presses 9 times as much as 4 in of
    slab, and a bow over the fourth power of its gap is 9 times as large."""
    boards = [answer_to({**job(WALK, **slab), "board": {**PLY, "thickness": "3/8 in"}})["boards"]
              for slab in ({}, {"edge_width": "12 in", "edge_depth": "12 in"})]  # fmt: skip
    assert boards[0] is not None and boards[1] is not None
    edges = boards[0]["edges"][0], boards[1]["edges"][0]
    bows = [edge["bow"] / edge["gap"] ** 4 for edge in edges if edge["bow"] is not None]
    assert bows[1] / bows[0] == pytest.approx(9, rel=1e-9)


def test_an_aprons_edge_is_held_against_the_board_on_an_arc_and_along_a_line() -> None:
    """6 in less 3-1/2 in are 2-1/2 in."""
    apron = {"from": "12 ft", "to": "22 ft", "thickness": "6 in"}
    told = 'Apron 6": board 3-1/2", 2-1/2" below it cut plumb, or form it full depth.'
    arc = answer_to({**WALK, "slab": {**WALK["slab"], "apron": apron}})
    line = answer_to({**CREEK, "slab": {**CREEK["slab"], "apron": apron}})
    assert told in pages(arc)["boards"] and told in plain(forms_sides(arc, ""))
    assert told in cards(arc)["form_boards"] and told in cards(line)["form_boards"]
    assert told in plain(paper_html(line, "", ""))


def test_a_line_says_it_on_its_pages_its_card_and_its_paper() -> None:
    answer = answering({**CREEK, "slab": {**CREEK["slab"], "edge_width": "10 in", "edge_depth": "10 in"}})
    assert answer["lined"] is not None
    told = 'Edge 10": board 3-1/2", 6-1/2" of cut earth below it, or form it full depth.'
    for page in answer["lined"]["pages"]:
        if page["key"] in ("boards", "grades", "pour"):
            assert told in " ".join(page["lines"]).replace("*", ""), page["key"]
        if page["key"] == "edges":
            assert any(line.endswith("Past it dig only to the board's foot, no base.") for line in page["lines"])
    assert told in cards(answer)["form_boards"] and told in plain(forms_sides(answer, ""))


@pytest.mark.parametrize(("but", "both"), [("curve", False), ("sides", False), ("all", False), ("curve", True)])
def test_what_is_dug_past_the_forms_that_no_earth_holds(but: str, both: bool) -> None:
    """Against shapely: the slab with bands beside its sides and behind its back, and squares at its corners."""
    arc, sides, past = Arc.of_angle(3.0, pi / 2), 4.0, 0.3
    area = box(0, -sides, 6, 0).area + pi * 9 / 2 * (2 if both else 1)
    beside = [box(-past, -sides - (0 if both else past), 0, 0), box(6, -sides - (0 if both else past), 6 + past, 0)]
    behind = [] if both else [box(0, -sides - past, 6, -sides)]
    dug: list[Polygon] = {"curve": [*beside, *behind], "sides": behind, "all": []}[but]
    assert Pad(arc, sides, both).dug(past, but) == pytest.approx(area + unary_union(dug).area)
