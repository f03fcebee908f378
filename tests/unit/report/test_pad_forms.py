"""The forms of a slab with straight sides: which board stands behind each edge, how far off its stakes are, and how the
boards meet at the corners. Held against sums by hand and shapely."""

from __future__ import annotations

import json
import re
from html import unescape
from math import atan2, cos, sin, tan
from typing import Any

import pytest
from shapely.geometry import Polygon

from bowstring.drawings.pass_section import pass_svg
from bowstring.faces.paper_forms import forms_sides
from helping import SAID, answer_to
from unit.report.test_build_pad import BOTH, FOOT, LOW, PAD, shape

PICKED = {"board": {"level": "selected"}}
FLAT: dict[str, Any] = {**SAID, **PICKED, "arc": {"chord": "14 ft", "sagitta": "3 ft"},
                        "slab": {"thickness": "5 in", "fills": True, "sides": "19 ft"}}  # fmt: skip


def card(told: Any, kind: str) -> Any:
    return next(one for one in told["form_cards"] if one["kind"] == f"form_{kind}")


def test_each_edge_has_its_own_board_and_its_own_gap() -> None:
    """The curve's is the bent 1x6, 3/4 in thick; the sides' and the back's is the 2x6 of the cut list, 1-1/2 in: a
    stake 3/4 in off the side would put it 3/4 in into the pad (sizes: American Softwood Lumber Standard PS 20)."""
    told = answer_to(FLAT)
    edges, boards = told["edges"], told["boards"]
    assert edges is not None and boards is not None
    bought = {row["name"]: row["board"] for row in boards["cut"]}
    assert (bought["Outer edge"], bought["straight: sides, back"]) == ("1x6", "2x6")
    assert (edges["curve_gap"], edges["straight_gap"]) == pytest.approx((0.75 * FOOT / 12, 1.5 * FOOT / 12))
    notes = card(told, "stakes")["notes"]
    assert notes[:2] == ['Curve: 3/4" off the edge, for the 1x6.', 'Straight edges: 1-1/2" off, for the 2x6.']
    lines = {row["key"]: row["note"] for row in edges["lines"]}
    assert lines["outer_form"] == "back of the 1x6"
    assert lines["sides"] == lines["back"] == 'concrete; 2x6 behind it, stakes 1-1/2" off, dug 1\' 0" past'
    told_of = [text for text in (*edges["form"], *edges["sides_how"]) if "goes between" in text]
    assert [('3/4"' in text, '1-1/2"' in text) for text in told_of] == [(True, False), (False, True)]


@pytest.mark.parametrize("job", [PAD, BOTH, LOW, FLAT])
@pytest.mark.parametrize("depth", ["3 in", "5 in", "7 in"])
def test_no_straight_form_stands_into_the_slab(job: dict[str, Any], depth: str) -> None:
    """Between the edge and its stakes there is as much room as the board takes that is bought for it."""
    told = answer_to({**job, "board": {"level": "selected"}, "slab": {**job["slab"], "thickness": depth}})
    edges, boards = told["edges"], told["boards"]
    assert edges is not None and boards is not None
    thick = {row["name"]: row["thickness"] for row in boards["rows"]}
    straight = next(row["board"] for row in boards["cut"] if row["name"].startswith("straight"))
    assert edges["straight_gap"] == thick[straight]
    assert edges["curve_gap"] == thick[boards["edges"][0]["board"]]
    assert all(straight in row["note"] for row in edges["lines"] if row["key"] in ("sides", "back"))


def test_one_board_all_around_is_told_once() -> None:
    notes = card(answer_to({**FLAT, "arc": {"radius": "40 ft", "chord": "14 ft"}, "board": {"kind": "2x6"}}), "stakes")
    assert notes["notes"][0] == 'They stand 1-1/2" off the edge: the 2x6 goes between.'


def test_a_changed_straight_board_is_a_changed_card() -> None:
    """A crew that has set stakes for one board is told when another goes there."""
    first, other = (card(answer_to({**FLAT, "slab": {**FLAT["slab"], "thickness": depth}}), "stakes")
                    for depth in ("5 in", "7 in"))  # fmt: skip
    assert first["mark"] != other["mark"]


@pytest.mark.parametrize(("job", "times"), [(FLAT, 2.0), ({**BOTH, **PICKED}, 1.0)])
def test_a_cut_across_shows_the_straight_form_as_thick_as_it_is(job: dict[str, Any], times: float) -> None:
    """1-1/2 in is twice 3/4 in; where both ends are round, another curve is across."""
    told = answer_to(job)
    drawn = pass_svg(told, card(told, "stakes"), id="x")
    paths = re.findall(r'<path class="bd-stake" d="([^"]+)"', drawn)  # a board, its stake, the other board, its stake
    across = [[float(x) for x in re.findall(r"(-?[\d.]+),", path)] for path in paths]
    outer, inner = (max(box) - min(box) for box in (across[0], across[2]))
    assert inner / outer == pytest.approx(times)


def test_paper_tells_the_straight_forms_board_and_gap() -> None:
    paper = " ".join(unescape(re.sub(r"<[^>]+>", "", forms_sides(answer_to(FLAT), "May 31"))).split())
    assert "straight: sides, back 2x6, 2 of 19' 1-1/2\" and 14' 0\": from 14, 10, 10, 10, 10 ft" in paper
    assert 'Form stakes of the sides and the back stand 1-1/2" off the edge: the 2x6 goes between.' in paper
    assert 'Outer form stakes stand 3/4" outside your stakes: the 1x6 goes between.' in paper


def test_the_curved_board_runs_past_a_corner_no_farther_than_the_dig() -> None:
    """A 14-ft chord with a rise of 3 ft: the half angle is 2 atan(3/7), 46.397 degrees. What runs on leaves the side
    line by its cosine, and the board with the stake behind it, 3/4 and 1-1/2 in, by its sine: (12 - 2.25 x 0.7241) /
    0.6897 is 15.04 in, so 1 ft 3 in. Held against shapely: a foot around the slab takes 15 in of it, and not 16."""
    told = answer_to(FLAT)
    boards = told["boards"]
    assert boards is not None
    past = card(told, "boards")["numbers"][0]["shown"]
    assert past == "1' 3\"" and any(f"Carry the curved board {past} past A and B" in text for text in boards["ends"])
    assert boards["edges"][0]["length"] / FOOT == pytest.approx((116.375 / 12) * 2 * 2 * atan2(3, 7) + 2 * 1.25)
    half, dig = 2 * atan2(3, 7), shape(told).buffer(FOOT, join_style="mitre")
    back, out = (-cos(half), -sin(half)), (-sin(half), cos(half))
    for inches, inside in ((15, True), (16, False)):
        long, deep = inches * FOOT / 12, 2.25 * FOOT / 12
        end = (back[0] * long, back[1] * long)
        strip = Polygon([(0, 0), end, (end[0] + out[0] * deep, end[1] + out[1] * deep), (out[0] * deep, out[1] * deep)])
        assert dig.contains(strip) is inside


def test_the_side_forms_are_beveled_to_that_boards_face() -> None:
    """Off square by the corner at the string, 46.4 degrees; 1-1/2 in of board times its tangent is 1.575 in. The long
    point is the concrete's corner, so the face is the side, 19 ft, and 1-1/2 in past the back's form."""
    told = answer_to(FLAT)
    edges, boards = told["edges"], told["boards"]
    assert edges is not None and boards is not None
    assert 1.5 * tan(2 * atan2(3, 7)) == pytest.approx(1.575, abs=5e-4)
    bevel = ["Carry the curved board 1' 3\" past A and B, straight on: there it stays in the dig.",
             "Butt the side forms to its face: bevel their ends 46° off square, 44° to the face.",
             "Where the saw won't tilt so far, mark 44° to the face and cut along the mark.",
             "The long point is on the concrete, at A and at B; the back is 1-5/8 in shorter."]  # fmt: skip
    assert [text for text in edges["sides_how"] if text in bevel] == bevel
    assert [text for text in boards["ends"] if text in bevel] == bevel
    assert boards["cut"][-1]["needs"] == "2 of 19' 1-1/2\" and 14' 0\""
    assert boards["cut_note"].endswith("Side forms are measured to the long point.")
    note = "Side forms: 46° bevel, 44° to face; long point on concrete, back 1-5/8 in shorter."
    assert note in card(told, "boards")["notes"]


def test_a_bevel_that_any_saw_tilts_to_isnt_marked() -> None:
    """14 ft with a rise of 2 ft: half the angle is 2 atan(2/7), 31.9 degrees."""
    edges = answer_to({**FLAT, "arc": {"chord": "14 ft", "sagitta": "2 ft"}})["edges"]
    assert edges is not None
    told = " ".join(edges["sides_how"])
    assert "bevel their ends 32° off square, 58° to the face." in told and "saw" not in told


@pytest.mark.parametrize(("job", "words"), [
    ({**PAD, **PICKED}, "down the sides. Butt the side forms to its ends."),
    ({**FLAT, "board": {"kind": "1x6", "level": "clear", "overrun": "0"}, "arc": {"chord": "14 ft", "sagitta": "1 ft"}},
     "Carry the curved one 11\" past them, straight on, to fix that."),
    ({**FLAT, "slab": {**FLAT["slab"], "overdig": "3 in"}}, "the dig has no room for it past them."),
])  # fmt: skip
def test_nothing_is_beveled_where_no_board_runs_past_a_corner(job: dict[str, Any], words: str) -> None:
    told = answer_to(job)
    boards = told["boards"]
    assert boards is not None
    assert any(text.endswith(words) for text in boards["ends"])
    assert "bevel" not in json.dumps([told["boards"], told["edges"], told["form_cards"]])


def test_boards_past_two_corners_of_a_short_side_dont_cross() -> None:
    """2-ft sides: both boards come 12 in down, which is 12/0.7241, 16.57 in of each: the dig's 15 in is less. Of 1-ft
    sides they come 6 in down: 8.29 in, so 8."""
    for sides, past in (("2 ft", "1' 3\""), ("1 ft", '8"')):
        told = answer_to({**FLAT, "slab": {**FLAT["slab"], "sides": sides, "both_ends": True}})
        assert card(told, "boards")["numbers"][0]["shown"] == past


def test_a_stake_more_stands_at_each_splice_of_the_side_forms() -> None:
    """19 ft 1-1/2 in is longer than a board of 16 ft: a splice on each side. By hand: 14 on the curve, one past each
    end and one at its splice; 6 and 1 on each side, 5 at the back: 36, and with a tenth 40."""
    boards = answer_to(FLAT)["boards"]
    assert boards is not None
    assert (boards["edges"][0]["gaps"], len(boards["edges"][0]["splices"])) == (13, 1)
    assert (boards["stakes"], boards["with_spare"]) == (14 + 2 + 1 + 2 * (6 + 1) + 5, 40)
    short = answer_to({**FLAT, "slab": {**FLAT["slab"], "sides": "15 ft"}})["boards"]  # 15 ft in 4 gaps, no splice
    assert short is not None
    assert short["stakes"] == 14 + 2 + 1 + 2 * 5 + 5


def test_the_curves_of_both_ends_are_laid_each_by_itself() -> None:
    """They are 15 ft apart: no splice of one is opposite one of the other, and each is the order of the one alone."""
    job = {**PAD, **PICKED, "arc": {"radius": "7 ft", "chord": "14 ft"}, "slab": {**PAD["slab"], "thickness": "5 in"}}
    alone = answer_to(job)["boards"]
    both = answer_to({**job, "slab": {**job["slab"], "both_ends": True}})["boards"]
    assert alone is not None and both is not None
    assert both["gave_way"] == alone["gave_way"] == []
    first, other = both["edges"]
    assert first["boards"] == other["boards"] == alone["edges"][0]["boards"]
    assert first["splices"] == other["splices"]


@pytest.mark.parametrize(("level", "radius", "told"), [
    ("job lumber", "7 ft", False), ("clear", "7 ft", True), ("clear", "6 ft 6 in", False),
    ("job lumber", "10 ft 3 in", False), ("job lumber", "10 ft 4 in", True)])  # fmt: skip
def test_kerfs_are_told_only_where_what_they_leave_bends(level: str, radius: str, told: bool) -> None:
    """1 in deep they leave 1/2 in of a 2x6. By the page's own limits that takes R 10 ft 5 in in job lumber, 250 times
    it, and 6 ft 8 in in clear, 160 times; its middle is 1-1/4 in outside of the edge, so 10 ft 3-3/4 in and 6 ft
    6-3/4 in on the edge (kerfs half to two thirds through: common practice, no source)."""
    job = {**FLAT, "arc": {"radius": radius, "chord": "12 ft"}, "board": {"level": level}}
    boards = answer_to(job)["boards"]
    assert boards is not None
    assert any("kerf the outer board (2x6)" in text for text in boards["otherwise"]) is told


def on_paper(job: dict[str, Any]) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", "", forms_sides(answer_to(job), "May 31"))).split())


@pytest.mark.parametrize(("depth", "banked"), [("5 in", False), ("5.5 in", False), ("6 in", True)])
def test_boards_half_an_inch_low_are_banked_on_their_page_and_on_paper(depth: str, banked: bool) -> None:
    """A 2x6 is 5-1/2 in high (American Softwood Lumber Standard PS 20)."""
    job = {**FLAT, "slab": {**FLAT["slab"], "thickness": depth}}
    boards = answer_to(job)["boards"]
    assert boards is not None
    told = "1x6 is 5-1/2 in high, 1/2 in short of the slab: bank earth against its foot."
    assert (told in boards["stakes_how"]) is (told in on_paper(job)) is banked


def test_where_nothing_bends_paper_tells_what_does_in_a_line() -> None:
    """R 7 ft: 1/2-in plywood takes R 6 ft by the panel makers' table; 84 in over 250 is 0.336, so 5/16-in strips, three
    for 3/4 in; a 1x6 is 84.375/0.75, 112.5 times as thick, which picked strips take."""
    job = {**FLAT, "arc": {"radius": "7 ft", "chord": "14 ft"}, "board": {"level": "job lumber"}}
    boards = answer_to(job)["boards"]
    assert boards is not None and boards["state"] == "stop"
    line = ("What bends instead: picked strips, both ends held; plywood strips 1/2 in thick; "
            "3 layers of strips 5/16 in thick.")  # fmt: skip
    assert boards["remedy"] == line and line in on_paper(job)
    assert "What bends instead" not in on_paper(FLAT)


TIGHT: dict[str, Any] = {**PAD, "arc": {"radius": "7 ft", "chord": "14 ft"},
                         "slab": {"thickness": "5 in", "fills": True, "sides": "19 ft"}}  # fmt: skip
"""A half circle of 7 ft: 112 times 3/4 in is 7 ft, so a 1x6 takes it picked alone; job and clear lumber don't."""


def test_no_stake_is_told_for_a_board_that_doesnt_bend_there() -> None:
    """Nothing on the list takes R 7 ft in job lumber: wherever stakes are told, none are for a 1x6 on the curve."""
    told = answer_to(TIGHT)
    edges, boards = told["edges"], told["boards"]
    assert edges is not None and boards is not None
    assert (boards["state"], edges["curve_gap"], boards["edges"][0]["stakes"]) == ("stop", None, 0)
    assert "outer_form" not in {row["key"] for row in edges["lines"]}
    stakes = card(told, "stakes")
    assert stakes["notes"][:2] == ["Curve: no stakes until Build settles what bends there.",
                                   'Straight edges: 1-1/2" off, for the 2x6.']  # fmt: skip
    assert [one["label"] for one in stakes["numbers"]] == ["between form stakes, straight forms"]
    paper = " ".join(unescape(re.sub(r"<[^>]+>", "", forms_sides(told, "May 31"))).split())
    for text in (json.dumps([edges, boards["stakes_how"], boards["ends"], stakes]), paper):
        assert "1x6" not in text and '3/4\\" ' not in text and "Outer form stakes" not in text
    assert "No stakes on the curve yet: settle what bends there." in paper
    assert "What bends instead: picked strips, both ends held; plywood strips 1/2 in thick" in paper


def test_its_straight_sides_have_their_board_cut_list_and_stakes_all_the_same() -> None:
    """Sides of 19 ft run 1-1/2 in past the back's form and begin 2 ft behind A, where the curve's form ends; on 4 ft
    at most 5 and 4 even spaces: twice 6 stakes, 5 more at the back, one at each side's splice, 19 in all."""
    boards = answer_to(TIGHT)["boards"]
    assert boards is not None
    rows = {row["name"]: (row["board"], row["needs"]) for row in boards["cut"]}
    assert rows == {"straight: sides, back": ("2x6", "2 of 17' 1-1/2\" and 14' 0\""),
                    "splices": ("2x6", "2 of 2' 0\"")}  # fmt: skip
    assert {row["board"] for row in boards["buy"]} == {"2x6"}
    bought = sum(row["length"] * row["count"] for row in boards["buy"]) / FOOT
    assert 2 * (17 + 1.5 / 12) + 14 + 4 <= bought <= 66
    assert boards["stakes"] == 2 * (6 + 1) + 5
    how = boards["stakes_how"]
    assert "Side forms: every 3' 9-5/8\", 5 even spaces on each." in how
    assert boards["cut_note"] == ""


def test_stakes_come_as_soon_as_something_bends() -> None:
    """Picked strips take it: then the curve has its stakes, and the card counts as another."""
    before, after = answer_to(TIGHT), answer_to({**TIGHT, **PICKED})
    boards = after["boards"]
    assert boards is not None and boards["state"] == "near" and boards["edges"][0]["stakes"] > 20
    assert card(after, "stakes")["notes"][0] == 'Curve: 3/4" off the edge, for the 1x6.'
    assert card(before, "stakes")["mark"] != card(after, "stakes")["mark"]


def test_a_board_of_no_known_thickness_gets_no_stakes_either() -> None:
    edges = answer_to({**FLAT, "board": {"kind": "fence rail"}})["edges"]
    assert edges is not None and edges["curve_gap"] is None
    assert not any("fence rail goes between" in text for text in edges["form"])


def test_the_cut_across_shows_no_form_on_a_curve_that_has_none() -> None:
    """The straight edge's board and stake alone; of two round ends neither."""
    for job, boards in ((TIGHT, 1), ({**TIGHT, "slab": {**TIGHT["slab"], "both_ends": True}}, 0)):
        told = answer_to(job)
        paths = re.findall(r'<path class="bd-stake"', pass_svg(told, card(told, "stakes"), id="x"))
        assert len(paths) == 2 * boards


def test_what_runs_past_a_corner_unknown_is_taken_for_a_thick_board() -> None:
    """A 10-ft chord with a rise of 2 ft is R 7 ft 3 in, half angle 2 atan(2/5), 43.6 degrees. As thick as a 2x6 with a
    stake as thick behind it, 3 in: (12 - 3 x 0.6897)/0.7241 is 13.7 in. A 1x6 would have 14."""
    flat = {**FLAT, "board": {}, "arc": {"chord": "10 ft", "sagitta": "2 ft"}}
    half = 2 * atan2(2, 5)
    room = (12 - 3 * sin(half)) / cos(half)
    boards = answer_to(flat)["boards"]
    assert boards is not None and boards["state"] == "stop"
    assert 13.7 < room < 13.8
    assert any("Carry the curved board 1' 1\" past A and B, straight on" in text for text in boards["ends"])
