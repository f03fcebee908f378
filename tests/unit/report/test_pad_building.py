"""A pad whose square end is against a building: what is squared, dug, stripped and ordered there."""

from __future__ import annotations

import re
from fractions import Fraction
from html import unescape
from math import asin, ceil, cos, hypot, sin, sqrt
from typing import Any

import pytest
from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.ops import split

from bowstring import BadJob, answering, read_link, write_link
from bowstring.drawings.pass_section import pass_svg
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.measuring import read_back
from bowstring.report.forms.cards import CardRow
from helping import answer_to
from slab_jobs import WALK

FOOT = 0.3048

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

BOTH: dict[str, Any] = {
    **PAD, "slab": {**{key: value for key, value in PAD["slab"].items() if key != "back"}, "both_ends": True}
}  # fmt: skip
STRING: dict[str, Any] = {**HALF, "slab": {"fills": True, "thickness": "5 in", "base": "4 in"}}


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


def plain(html: str) -> str:
    return unescape(re.sub("<[^>]+>", "", html)).replace("\xa0", " ")


def of_kind(job: dict[str, Any], kind: str) -> CardRow:
    return next(card for card in answer_to(job)["form_cards"] if card["kind"] == kind)


@pytest.mark.parametrize(("job", "where"), [
    (PAD, "along the curve, sides and building"), (open_back(PAD), "along the curve, sides and back"),
    (BOTH, "along both curves and the sides"), (STRING, "along the curve and the string"), (WALK, "along both forms"),
])  # fmt: skip
def test_the_trench_of_a_thick_edge_is_told_on_the_card_the_paper_and_the_sign_off(
    job: dict[str, Any], where: str
) -> None:
    """12 in of concrete and 4 in of base are 16 in under the tops; 12 in wide."""
    slab = {**job["slab"], "thickness": "5 in", "base": "4 in", "edge_width": "12 in", "edge_depth": "12 in"}
    job = {**job, "slab": slab, "board": {"level": "clear"}, "grade": {"slope": 1, "high": "A", "low": "outside"}}
    notes = of_kind(job, "form_base")["notes"]
    assert f"Trench {where}: 1' 0\" wide, 1' 4\" down." in notes
    assert any(note.startswith("Past it") and '5-1/2" down, no base' in note for note in notes)
    assert any("building's footing" in note for note in notes) == ("building" in where)
    sides = forms_sides(answering(job), "")
    said = plain(sides)
    assert f"Thick edge: trench {where}, inside the forms, 1' 0\" wide, 1' 4\" under the tops." in said
    assert "Thick edge: base under top; width1' 0\"; 1' 0\"" in said and sides.count("<section") == 2
    grades = answer_to(job)["grades"]
    assert grades is not None
    assert f"Thick edge, {where}: 1' 0\" wide, there the base is *1' 0\" under the form tops*." in grades["base"]


def test_an_edge_as_thick_as_the_slab_has_no_trench() -> None:
    told = {**PAD, "slab": {**PAD["slab"], "edge_depth": "5 in"}}
    assert "rench" not in plain(forms_sides(answering(told), "")) + " ".join(of_kind(told, "form_base")["notes"])
    no_base = {**PAD, "slab": {name: value for name, value in PAD["slab"].items() if name != "base"}}
    assert "1' 0\" wide; 1' 0\" of concrete under the tops." in plain(forms_sides(answering(no_base), ""))


def test_the_isolation_strip_is_bought_set_and_signed_off_as_deep_as_the_concrete_is_there() -> None:
    """12 in at a thick edge, where a plain slab has its 5 in."""
    for job, deep in ((PAD, "1' 0\""), ({**PAD, "slab": {**PAD["slab"], "edge_depth": "5 in"}}, '5"')):
        told = answer_to(job)
        boards, joints = told["boards"], told["joints"]
        assert boards is not None and joints is not None
        assert f'1/2" thick, 24\' 0" long, {deep} deep' in sides_told(job)
        assert f'Buy isolation strip, too: 24\' 0" of 1/2", {deep} deep.' in boards["cut_note"]
        assert any("at the building, A-2 to B-2, the concrete's full depth" in line for line in joints["lines"])
        assert f'Isolation strip at the building: 1/2", {deep} deep.' in of_kind(job, "form_pour")["notes"]
        assert f'Isolation strip, A-2 to B-21/2"; {deep}' in plain(forms_sides(answering(job), ""))
    for other in (open_back(PAD), STRING):
        assert "Isolation strip, A-2" not in plain(forms_sides(answering(other), ""))
        assert not any("solation strip" in note for note in of_kind(other, "form_pour")["notes"])


def test_the_order_without_a_thick_edge_at_the_building_stands_where_the_order_does() -> None:
    """Between the sides' own bands 22 ft are left of it: 22 by 1 ft, 7 in deeper, is 0.475 yd³. Of 9.20 yd³ that leaves
    8.72, with 10 % 9.59: 9-3/4 in quarters."""
    pour, slab = answer_to(PAD)["pour"], Polygon(pad_outline(15.0, 24.0, 16 - 1 / 24))
    assert pour is not None
    inner = slab.buffer(-1.0)
    whole = slab.area * 5 / 12 + (slab.area - inner.area) * 7 / 12
    assert pour["volume"] / FOOT**3 == pytest.approx(whole, rel=1e-4)
    open_end = Polygon(pad_outline(15.0, 24.0, 16 - 1 / 24, past=50.0)).buffer(-1.0).intersection(slab)
    spared = (open_end.area - inner.area) * 7 / 12
    assert spared / 27 == pytest.approx(0.475, abs=0.001)
    order = ceil((whole - spared) * 1.1 / 27 * 4) / 4
    assert order == 9.75
    said = plain(forms_sides(answering(PAD), ""))
    assert "Thick edge all round, as figured? Only along the curve and both sides: Order 9-3/4 yards." in said
    assert said.index("10-1/4 yards to order") < said.index("Thick edge all round, as figured?")
    asked = {**PAD["slab"], "edge_along": "sides"}
    for slab in (asked, {**PAD["slab"], "edge_depth": "5 in"}):
        assert "Thick edge all round, as figured?" not in plain(forms_sides(answering({**PAD, "slab": slab}), ""))
    told = answer_to({**PAD, "slab": asked})["pour"]
    assert told is not None and told["order_shown"] == "9-3/4"
    assert (pour["volume"] - told["volume"]) / FOOT**3 == pytest.approx(22 * 7 / 12)


PATIO: dict[str, Any] = {
    "arc": {"chord": "18 ft", "sagitta": "5 ft 3 in"}, "side": "left", "drawn_to": "face",
    "board": {"level": "selected"},
    "slab": {"thickness": "5 in", "base": "4 in", "fills": True, "sides": "15 ft", "back": "against", "waste": 7,
             "edge_width": "10 in", "edge_depth": "10 in"},
    "grade": {"from": "99.06 ft", "to": "99.06 ft", "slope": 0, "cross": "1/4 in per ft", "low": "outside",
              "ground": [{"stake": "A", "level": "98.60 ft"}, {"stake": "A-2", "level": "99 ft"}]},
}  # fmt: skip


def patio(**slab: str) -> dict[str, Any]:
    return {**PATIO, "slab": {**PATIO["slab"], **slab}}


def test_a_thick_edge_along_the_curve_alone_has_its_own_volume_trench_strip_and_card() -> None:
    """R 10 ft 4-1/8 in over an angle of 2 asin(9/R): between R and 10 in less are 17.48 ft², 5 in deeper 0.270 yd³; the
    slab itself is 336.35 ft² by 5 in, 5.19 yd³. With 7 % waste 5.84."""
    radius = (9**2 + 5.25**2) / (2 * 5.25)
    band = asin(9 / radius) * (radius**2 - (radius - 10 / 12) ** 2)
    slab = radius**2 * asin(9 / radius) - 9 * (radius - 5.25) + 18 * (15 - 1 / 24)
    job = patio(edge_along="curve")
    pour = answer_to(job)["pour"]
    assert pour is not None
    assert pour["volume"] / FOOT**3 == pytest.approx((slab + band) * 5 / 12)
    assert (round(pour["volume_yards"], 2), round(pour["with_waste"] / FOOT**3 / 27, 2)) == (5.46, 5.84)
    assert 'Trench along the curve: 10" wide, 1\' 2" down.' in of_kind(job, "form_base")["notes"]
    assert not any("footing" in note for note in of_kind(job, "form_base")["notes"])
    said = plain(forms_sides(answering(job), ""))
    assert "Thick edge: trench along the curve, inside the forms" in said and "building's footing" not in said
    assert 'Isolation strip, A-2 to B-21/2"; 5"' in said  # the slab's own depth: the edge isn't thick there
    marks = {
        of_kind(patio(**slab), "form_base")["mark"] for slab in ({}, {"edge_along": "curve"}, {"edge_along": "all"})
    }
    assert len(marks) == 3
    assert (
        answer_to(patio(edge_along="all"))["pour"]["volume"] == answer_to(PATIO)["pour"]["volume"]
    )  # as it was unsaid


def test_ground_is_cut_to_the_bottom_that_is_dug_at_each_place() -> None:
    """The trench is 10 and 4 in under the tops. A: 98.60 ft over 99.06 ft less 14 in is 0.7067 ft, 8-1/2 in. A-2 is
    15 ft up a slope of 1 in 48, 3-3/4 in higher: 99 ft over 99.3725 ft less 14 in is 0.7942 ft, 9-1/2 in; less
    9 in it is 4-1/2."""
    for along, back in (("curve", 'cut 4-1/2"'), ("sides", 'cut 9-1/2"'), ("all", 'cut 9-1/2"')):
        grades = answer_to(patio(edge_along=along))["grades"]
        assert grades is not None and not grades["asks"]
        assert [(row["name"], row["outside"]["dig"]) for row in grades["digs"]] == [("A", 'cut 8-1/2"'), ("A-2", back)]
        under = {row["name"]: row["base"] for row in grades["rows"]}
        assert under["K4"] == '10"' and under["A-2"] == ('5"' if along == "curve" else '10"')
        assert ("At A-2 and B-2 they are to the underside of the base." in grades["base"][-1]) is (along == "curve")
        assert "bottom of the trench, *1' 2\"* under the tops" in grades["base"][-1]
        assert "to the bottom of the trench" in plain(forms_sides(answering(patio(edge_along=along)), ""))
    nowhere = {**PATIO, "grade": {**PATIO["grade"], "ground": [{"stake": "C-2", "level": "99 ft"}]}}
    grades = answer_to(nowhere)["grades"]
    assert grades is not None and any("C-2, and no stake" in text for text in grades["asks"])


def test_the_slabs_base_is_told_against_the_forms_foot_where_no_thick_edge_is() -> None:
    """A 2x6 is 5-1/2 in high: 5 in is 1/2 in over its foot, 10 in 4-1/2 in under it."""
    for along, beside in (("all", False), ("curve", True)):
        grades = answer_to(patio(edge_along=along))["grades"]
        assert grades is not None
        base = " ".join(grades["base"])
        assert 'The base is *5" under the form tops*.' in base and ('1/2" over the foot of a form' in base) is beside
        assert '*Edge 10": board 5-1/2"*, 4-1/2" of cut earth below it, or form it full depth.' in grades["base"]


def test_how_far_round_a_thick_edge_runs_comes_through_link_and_form_and_wants_straight_sides() -> None:
    job: Any = patio(edge_along="sides")
    assert read_link(write_link(job))["slab"]["edge_along"] == "sides"
    typed = fields_of_job(job)
    assert job_of_fields(typed)["slab"]["edge_along"] == "sides"
    for gone in ("slab-sides", "slab-edge_width", "slab-fills"):
        left = job_of_fields({name: text for name, text in typed.items() if name not in (gone, "slab-back")})
        assert "edge_along" not in left["slab"]
    with pytest.raises(BadJob, match="behind straight sides"):
        answering({**PATIO, "slab": {"thickness": "5 in", "fills": True, "edge_along": "curve"}})


def pad_outline(radius: float, chord: float, sides: float, past: float = 0.0) -> list[tuple[float, float]]:
    """The pad's corners and 4000 points of its arc, feet; ``past``: how far on its square end is moved back."""
    half, center = asin(chord / 2 / radius), -sqrt(radius**2 - (chord / 2) ** 2)
    angles = [half - 2 * half * place / 4000 for place in range(4001)]
    arc = [(chord / 2 + radius * sin(angle), center + radius * cos(angle)) for angle in angles]
    return [*arc, (0.0, -sides - past), (chord, -sides - past)]


def test_beside_the_curves_board_a_tangent_sides_stakes_stand_off_by_its_thickness() -> None:
    """A 1x6, 3/4 in, runs on 2 ft down each side; a 2x6, 1-1/2 in, from there. At a corner it leaves the side."""
    carry = "Carry the curved board 2' 0\" past A and B, down the sides. Butt the side forms to its ends."
    beside = 'Straight edges: 1-1/2" off, for the 2x6; 3/4" the first 2\' 0".'
    for job in (HALF, open_back(HALF)):
        said, notes = plain(forms_sides(answering(job), "")), of_kind(job, "form_stakes")["notes"]
        assert carry in sides_told(job) and carry in said and beside in notes
        assert 'The first 2\' 0" of a side next to the curve, they stand 3/4" off: the curved 1x6 is there.' in said
    assert "next to the curve" not in sides_told(PAD) and beside not in of_kind(PAD, "form_stakes")["notes"]
    stopped = {**HALF, "board": {"overrun": "0"}}
    assert carry not in sides_told(stopped) and "next to the curve" not in sides_told(stopped)


@pytest.mark.parametrize("every", ["8 ft", "9 ft", "10 ft", "12 ft", ""])
@pytest.mark.parametrize("name", ["PAD", "HALF", "TIGHT", "BOTH", "STRING"])
def test_no_panel_is_said_to_be_shorter_than_its_curved_side(name: str, every: str) -> None:
    """Each joint is laid through the outline and cut off along it: what of the curve lies between two cuts."""
    job = {"PAD": PAD, "HALF": HALF, "TIGHT": TIGHT, "BOTH": BOTH, "STRING": STRING}[name]
    told = answer_to({**job, **({"joints": {"every": every}} if every else {})})
    joints, edges = told["joints"], told["edges"]
    assert joints is not None and edges is not None
    line = next(line for line in edges["lines"] if line["key"] == "outside")
    radius, chord, rise = (line[key] / FOOT for key in ("radius", "chord", "sagitta"))
    curve = LineString(pad_outline(radius, chord, 0.0)[:-2])
    squares, across = (
        [row["at"] / FOOT for row in joints["grid"] if row["kind"] == kind] for kind in ("square", "along")
    )
    cuts = MultiLineString(
        [*(((at, -99), (at, 99)) for at in squares), *(((-99, at), (99, at)) for at in across if at)]
    )
    longest = max(piece.length for piece in split(curve, cuts).geoms) if joints["grid"] else curve.length
    said, most = " ".join(joints["lines"]), joints["most"] / FOOT
    assert curve.bounds[3] == pytest.approx(rise, abs=1e-5)
    shown = re.search(r"The longest curved side is (?:(\d+)' )?([\d/-]+)\"", said)
    assert (shown is not None) is (longest > most + 1e-3)
    assert ("No side of a panel is over" in said) is bool(every and not shown)
    if shown:
        whole, _, part = shown[2].partition("-")
        inches = 12 * int(shown[1] or 0) + float(sum(map(Fraction, (whole, *([part] if part else [])))))
        assert inches / 12 == pytest.approx(longest, abs=1 / 12 / 4)
    assert ("Panels that the curve cuts aren't counted" in said) is bool(joints["grid"])


def test_a_corner_is_rounded_and_one_under_the_limit_stays_under() -> None:
    """No more than half a degree from the angle itself."""
    for job in (PAD, HALF, BOTH, {**HALF, "joints": {"every": "7 ft"}}):
        joints = answer_to(job)["joints"]
        assert joints is not None
        for row in joints["grid"]:
            shown = int(row["corner_shown"][:-1])
            assert abs(shown - row["corner"]) <= 0.5 or (row["sharp"] and shown < 60)


@pytest.mark.parametrize(
    ("thickness", "bends"), [("1/4 in", True), ("3/8 in", True), ("1/2 in", False), ("1 in", False)]
)
def test_a_board_that_is_called_plywood_is_judged_as_the_page_recommends_it(thickness: str, bends: bool) -> None:
    """The panel makers' table for concrete forms, face grain upright: 2 ft for 1/4 in, 3 ft for 3/8 in, 6 ft for
    1/2 in; here 4 ft 3 in."""
    lumber = answer_to(TIGHT)["boards"]
    assert lumber is not None and any("Plywood strips 3/8 in thick take it" in text for text in lumber["otherwise"])
    for name in (f"{thickness} plywood", "triplay"):
        boards = answer_to({**TIGHT, "board": {"kind": name, "thickness": thickness}})["boards"]
        assert boards is not None
        assert (boards["state"] == "usual", boards["edges"][0]["board"] == name) == (bends, bends)
    other = answer_to({**TIGHT, "board": {"kind": "pine", "thickness": "3/8 in"}})["boards"]
    assert other is not None and other["state"] == "stop"  # 51 in / 3/8 in is 136: lumber stops at 160


def test_stakes_off_by_one_layer_say_so_and_by_how_much_for_all() -> None:
    """3/16 in, and four of it 3/4 in."""
    job = {**TIGHT, "board": {"kind": "strips", "thickness": "3/16 in"}}
    told = "That is for one layer, 3/16 in; for 4 layers: 3/4 in."
    assert told in plain(forms_sides(answering(job), "")) and told in of_kind(job, "form_stakes")["notes"]
    assert "for one layer" not in plain(forms_sides(answering(HALF), ""))


def test_each_other_board_says_how_far_off_its_stakes_stand() -> None:
    """Two layers of 9/16 in are 1-1/8 in; a 2x6 is 1-1/2 in."""
    boards = answer_to(HALF)["boards"]
    assert boards is not None
    offs = [re.search(r"Stakes then stand ([\d/-]+) in off\.", text) for text in boards["otherwise"]]
    assert [found[1] for found in offs if found] == ["1/2", "1-1/8", "1-1/2"]


def test_one_board_is_called_one() -> None:
    job = {**TIGHT, "board": {"kind": "3/8 plywood", "thickness": "3/8 in", "overrun": "0", "lengths": ["16 ft"]}}
    assert next(row for row in answer_to(job)["build"] if row["key"] == "boards")["more"].startswith("1 board to bend")


def test_the_forms_cards_draw_the_building_and_nothing_of_a_form_past_its_face() -> None:
    """Across from the curve a wall stands at the inner edge, 244 of 360 across; a form there has its stake and its dig
    past it, as far as 282."""
    for job, built in ((PAD, True), (open_back(PAD), False)):
        told = answering({**job, "board": {"level": "clear"}})
        for card in told["form_cards"][1:]:
            svg = pass_svg(told, card, id="cut")
            words = re.findall(r"<text[^>]*>(?:<tspan[^>]*>)?([^<]+)", svg)
            assert ("building" in words, "across from it" in words) == (built, not built)
            drawn = re.findall(r"[ML ,](\d+(?:\.\d+)?)[ ,]\d", " ".join(re.findall(r' (?:d|points)="([^"]+)"', svg)))
            past = [float(x) for x in drawn if 253 < float(x) < 360]
            assert bool(past) is not built, (card["kind"], past)


def test_the_last_card_has_the_first_call_that_still_helps() -> None:
    """Of 12-1/2 yards the first truck brings 10: the call before the second is half out."""
    pour, card = answer_to(HALF)["pour"], of_kind(HALF, "form_pour")
    assert pour is not None and pour["reach"][0]["out"] == "all of truck 1"
    assert card["numbers"][1]["label"].startswith("all of truck 1 out, from the square end")
    assert card["numbers"][1]["shown"] == pour["reach"][0]["call_shown"]


def test_hubs_come_first_only_where_the_stakes_get_dug_out() -> None:
    clear = {**PATIO, "offset": "2 ft", "toward": "outside", "driven": "hub"}
    for job, told in ((PATIO, True), (clear, False)):
        front = plain(forms_sides(answering(job), ""))
        assert ("Hubs first: " in front or "Set hubs outside the dig first." in front) is told


def test_paper_asks_for_no_string_only_until_the_forms_square_off_it() -> None:
    """Two tapes need no string between their ends; a pad's sides are squared off one."""
    bare = {key: value for key, value in HALF.items() if key != "slab"}
    for job, told in ((HALF, "No string A to B yet: the forms square off it."), (bare, "No string A to B is needed.")):
        assert told in plain(paper_html(answering({**job, "method": "tapes"})))


def test_what_is_signed_off_names_stakes_that_stand() -> None:
    """Of ten even gaps the quarters are between stakes: the nearest is named, and no stake is called M."""
    job = {**PATIO, "method": "tapes", "spacing": "2.5 ft"}
    names = [row["name"] for row in answer_to(job)["stakes"]]
    assert "M" not in names
    said = plain(forms_sides(answering(job), ""))
    told = re.search("Arc at (.*?)(?:Chord|1/)", said)
    assert told is not None
    quarters = told[1].split(", ")
    assert len(quarters) == 5 and set(quarters) <= set(names) and (quarters[0], quarters[-1]) == ("A", "B")
    assert f"Tops at A, {quarters[2]}, B, every joint" in said


def test_the_top_at_the_building_is_told_beside_the_one_at_a_and_its_card_begins_there() -> None:
    """15 ft at 1/4 in a foot is 3-3/4 in, 0.3125 ft: 99.06 ft at A is 99.37 ft at the building."""
    fields = fields_of_job(PATIO)  # type: ignore[arg-type]
    echoes, errors = read_back(tuple(fields.items()))
    assert not errors and 'at the building, is at <span class="n">99.37 ft</span>.' in echoes["grade-from"]
    assert "B-2" in echoes["grade-to"]
    up = read_back(tuple({**fields, "grade-low": "inside"}.items()))[0]["grade-from"]
    assert ">98.75 ft</span>." in up
    formed = {name: text for name, text in fields.items() if name != "slab-back"}
    assert "So A-2, at the back, is at" in read_back(tuple(formed.items()))[0]["grade-from"]
    for gone in ("grade-low", "slab-sides"):  # then nobody knows it
        left = {name: text for name, text in formed.items() if name not in (gone, "slab-edge_width", "slab-edge_depth")}
        assert "A-2" not in read_back(tuple(left.items()))[0].get("grade-from", "")
    tops = of_kind(PATIO, "form_tops")
    assert tops["text"].startswith("Start with the tops at the building.")
    assert "At the building: A-2 99.37 ft, B-2 99.37 ft. At A: 99.06 ft." in tops["notes"]
    assert of_kind({**PATIO, "slab": {**PATIO["slab"], "back": "formed"}}, "form_tops")["text"].startswith(
        "Start with the outer form's top at A."
    )
