"""A pad's square end against a building, its far corners' checks, its fall and its form sheet."""

from __future__ import annotations

import cmath
import random
import re
from html import unescape
from math import cos, dist, pi, sin
from typing import Any

import pytest

from bowstring import BadJob, answer, answering, read_link, write_link
from bowstring.drawings.dxf import layout_dxf
from bowstring.faces.checks import checks_html
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.faces.passes import layout_cards
from bowstring.faces.settling import givens_of_fields
from bowstring.faces.slab_lines import slope_line
from bowstring.faces.stakes import stakes_html
from bowstring.faces.unread import card_text
from bowstring.page.answering import LastAnswer
from bowstring.page.entries import Entries
from bowstring.page.facing import read_state
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.measuring import shown_later
from bowstring.page.slab_panels import slope_html
from bowstring.sheet.of_line import title_of
from bowstring.sheet.text import sheet_text
from helping import answer_to
from unit.report.test_build_pad import BOTH, FOOT, PAD, shape

AGAINST: dict[str, Any] = {**PAD, "slab": {**PAD["slab"], "back": "against"}, "board": {"level": "clear"}}


def test_a_square_end_against_a_building_has_no_form_no_stakes_and_a_strip_out_of_its_length() -> None:
    """20 ft of strip, 1/2 in thick: 15 ft to the building leaves 14 ft 11-1/2 in. The side boards end at its face:
    15 ft less the 2 ft of the curve's board, where a back form's own 1-1/2 in would come on. Its 6 stakes are gone,
    and one at its splice."""
    formed, told = answer_to({**PAD, "board": {"level": "clear"}}), answer_to(AGAINST)
    edges, boards, before = told["edges"], told["boards"], formed["boards"]
    assert edges is not None and boards is not None and before is not None
    assert boards["stakes"] == before["stakes"] - 7
    assert (boards["cut"][-1]["name"], boards["cut"][-1]["needs"]) == ("straight: sides", "2 of 13' 0\"")
    how = " ".join(edges["sides_how"])
    assert 'Form stakes of the sides stand 1-1/2" off the edge: the 2x4 goes between.' in how
    assert "no back form, no form stakes and no dig past it" in how and "The back form runs" not in how
    assert '1/2" thick, 20\' 0" long' in how and "15' 0\" to the building leaves 14' 11-1/2\" of concrete" in how
    row = next(row for row in edges["lines"] if row["key"] == "back")
    assert (row["note"], row["set"]) == ("no form, and no dig past it", False)
    cards = {card["kind"]: card["text"] for card in told["form_cards"]}
    assert cards["form_corners"].endswith("Mark A-2 and B-2 on the building.")
    assert cards["form_dig"].endswith("Paint the dig line to the building.")
    notes = [" ".join(one["form_cards"][0]["notes"]) for one in (formed, told)]
    assert ["set again after" in text for text in notes] == [True, False]  # a mark on the building isn't dug out
    marks = [{card["kind"]: card["mark"] for card in one["form_cards"]} for one in (formed, told)]
    assert marks[0]["form_line"] != marks[1]["form_line"]


def test_a_strip_at_a_building_is_no_concrete() -> None:
    """20 ft by 1/2 in by 4 in less: of 152.36 ft³ 0.28. The base stands under it, too, and isn't dug past the building:
    20 by 15 ft with a foot at both sides, the half circle of 11 ft, at 4 in. The call is measured from the building,
    1/2 in farther out than the same part of a slab that begins there."""
    base = {"base": "4 in"}
    formed, told = (answer_to({**job, "slab": {**job["slab"], **base}})["pour"] for job in (PAD, AGAINST))
    assert told is not None and formed is not None
    assert (formed["volume"] - told["volume"]) / FOOT**3 == pytest.approx(20 / 24 / 3)
    assert told["area"] / FOOT**2 == pytest.approx(50 * pi + 20 * (15 - 1 / 24))
    lines = " ".join(told["lines"])
    assert 'The isolation strip at the building, 1/2", is taken out of the concrete.' in lines
    under, dug = (50 * pi + 300) / 81, (22 * 15 + 121 * pi / 2) / 81
    assert f"is {under:.2f} yd³ in place under the slab, {dug:.2f} yd³ over the whole dig" in lines
    assert f"{(22 * 16 + 121 * pi / 2) / 81:.2f} yd³ over the whole dig" in " ".join(formed["lines"])
    assert told["reach_where"] == "from the building, toward the curve"
    half = told["reach"][0]
    left = half["share"] * (50 * pi + 20 * (15 - 1 / 24))
    assert half["call"] / FOOT == pytest.approx(left / 20 + 1 / 24)


def test_a_thick_edge_at_a_building_is_asked_about() -> None:
    slab = {**AGAINST["slab"], "edge_width": "12 in", "edge_depth": "10 in"}
    for job, asked in (({**AGAINST, "slab": slab}, True), (AGAINST, False)):
        pour = answer_to(job)["pour"]
        assert pour is not None
        assert any("Thick edge all round, as figured?*" in text for text in pour["lines"]) is asked


@pytest.mark.parametrize(("low", "warned"), [("inside", True), ("outside", False)])
def test_water_that_runs_to_the_building_is_warned_of(low: str, warned: bool) -> None:
    told = answer_to({**AGAINST, "grade": {"slope": 0, "cross": 1, "low": low}})
    grades = told["grades"]
    assert grades is not None
    assert ("Water runs to the building. Slope it away, or ask the designer." in grades["warnings"]) is warned
    assert (grades["state"], grades["short"] == "Water runs to the building") == ("near" if warned else "usual", warned)
    tops = next(card for card in told["form_cards"] if card["kind"] == "form_tops")
    assert ("Water runs to the building" in tops["notes"]) is warned
    away = answer_to({**PAD, "grade": {"slope": 0, "cross": 1, "low": low}})["grades"]
    assert away is not None and away["state"] == "usual"


def test_a_square_end_comes_through_link_and_form_and_wants_straight_sides() -> None:
    assert read_link(write_link(AGAINST))["slab"]["back"] == "against"  # type: ignore[arg-type]
    typed = fields_of_job(AGAINST)  # type: ignore[arg-type]
    assert job_of_fields(typed)["slab"]["back"] == "against"
    assert "back" not in job_of_fields({**typed, "slab-both_ends": "on"})["slab"]
    assert "back" not in job_of_fields({name: text for name, text in typed.items() if name != "slab-sides"})["slab"]
    for slab in ({**BOTH["slab"], "back": "against"}, {"fills": True, "back": "formed"}):
        with pytest.raises(BadJob, match="square end stands behind straight sides"):
            answer({**PAD, "slab": slab})  # type: ignore[typeddict-item]
    with pytest.raises(BadJob):
        answer({**PAD, "slab": {**PAD["slab"], "back": "open"}})  # type: ignore[typeddict-item]


def test_far_corners_are_checked_by_lengths_that_no_step_pulls_and_readings_are_judged() -> None:
    """20 by 15 ft: both diagonals 25 ft (3-4-5 by 5), A-2 to B-2 20 ft. 1/8 in is in, 2 in is out."""
    read = [{"check": "A-B-2", "value": "25' 1/8\""}, {"check": "A-2-B-2", "value": "20' 2\""}]
    told = answer_to({**PAD, "read": read})
    far = told["far_checks"]
    assert [(row["key"], row["shown"]) for row in far["rows"]] == [
        ("A-B-2", "25' 0\""), ("B-A-2", "25' 0\""), ("A-2-B-2", "20' 0\""), ("A-A-2", "15' 0\""), ("B-B-2", "15' 0\""),
    ]  # fmt: skip
    assert [(row["check"], row["verdict"]) for row in far["read"]] == [("A-B-2", "in"), ("A-2-B-2", "again")]
    assert not told["read"]["lost"] and not told["read"]["rows"]
    html = checks_html(told)
    assert 'data-check="A-2-B-2"' in html and "The far corners" in html
    assert answer_to({**PAD, "offset": "6 in", "toward": "outside", "driven": "hub"})["far_checks"]["off"]
    without = {**PAD, "slab": {"thickness": "4 in", "fills": True}}
    assert not answer_to(without)["far_checks"]["rows"] and "The far corners" not in checks_html(answering(without))


def _diagonals_apart(pick: random.Random, chord: float, sides: float, pull: float, stake: float, turn: float) -> float:
    """By how much two diagonals read apart on one pad staked out: A and B where their stakes stand, each side squared
    off the string between those."""

    def driven(place: complex) -> complex:
        return place + complex(pick.gauss(0, stake), pick.gauss(0, stake))

    a, b = driven(0j), driven(complex(chord + pick.gauss(0, pull), 0.0))
    back = (b - a) / abs(b - a) * -1j
    far = [driven(one + back * cmath.exp(1j * pick.gauss(0, turn)) * (sides + pick.gauss(0, pull))) for one in (a, b)]
    return abs(far[1] - a) - abs(far[0] - b) + pick.gauss(0, pull) - pick.gauss(0, pull)


def test_limits_of_the_far_corners_hold_95_of_100_readings() -> None:
    """Staked out 20 000 times by the job's own errors: each stake in x and y, A to B and both sides pulled, each side
    turned by its triangle of 12, 16 and 20 ft (2 c read/(a b), the law of cosines differentiated), each check read."""
    read, stake = 0.001, 0.004
    far = answer_to({**PAD, "errors": {"read": f"{read} m", "stake": f"{stake} m"}})["far_checks"]
    chord, sides, pull, pick = 20 * FOOT, 15 * FOOT, read * 2**0.5, random.Random(11)
    turn = 2 * read * 20 / (12 * 16) / FOOT
    outs: dict[str, list[float]] = {row["key"]: [] for row in far["rows"]}
    apart: list[float] = []
    for _time in range(20_000):
        at = {"A": (0.0, 0.0), "B": (chord + pick.gauss(0, pull), 0.0)}
        at = {name: (x + pick.gauss(0, stake), y + pick.gauss(0, stake)) for name, (x, y) in at.items()}
        for name in ("A", "B"):
            (x, y), angle, long = at[name], pick.gauss(0, turn), sides + pick.gauss(0, pull)
            at[f"{name}-2"] = x + long * sin(angle) + pick.gauss(0, stake), y - long * cos(angle) + pick.gauss(0, stake)
        for row in far["rows"]:
            outs[row["key"]].append(abs(dist(at[row["from"]], at[row["to"]]) + pick.gauss(0, pull) - row["distance"]))
        apart.append(abs(_diagonals_apart(pick, chord, sides, pull, stake, turn)))
    # Both diagonals held against each other, with the sides squared off the string as A and B really stand.
    assert far["apart"] is not None
    over = sorted(apart)[19_000]
    assert far["apart"]["limit"] <= over * 1.04 and over - far["apart"]["limit"] < FOOT / 12 / 8 + 0.04 * over
    for row in far["rows"]:
        assert row["expected"] == pytest.approx(sorted(outs[row["key"]])[19_000], rel=0.04), row["key"]
        assert row["limit"] == pytest.approx(row["expected"] + FOOT / 12 / 16)


@pytest.mark.parametrize(("both", "slopes"), [(False, (0.0, 1.0417)), (True, (1.0, 1.0417)), (True, (2.0, 0.5))])
def test_the_total_fall_is_that_of_the_whole_pad(both: bool, slopes: tuple[float, float]) -> None:
    """Held against the plane over shapely's outline of the same pad; (a): 22 ft by 1.0417 % is 2.75 in."""
    slab = {**PAD["slab"], **({"both_ends": True} if both else {})}
    grade = {"slope": slopes[0], "high": "A", "cross": slopes[1], "low": "outside"}
    told = answer_to({**PAD, "arc": {"radius": "7 ft", "chord": "14 ft"}, "slab": slab, "grade": grade})
    grades = told["grades"]
    assert grades is not None
    tops = [-(x * slopes[0] + y * slopes[1]) / 100 for x, y in shape(told).exterior.coords]
    fall = (max(tops) - min(tops)) / FOOT * 12
    eighths = round(fall * 8)
    whole, part = divmod(eighths, 8)
    feet, inches = divmod(whole, 12)
    text = (f"{feet}' " if feet else "") + f"{inches}" + (f"-{part}/8" if part else "") + '"'
    text = text.replace("-2/8", "-1/4").replace("-4/8", "-1/2").replace("-6/8", "-3/4")
    assert f"Total fall over the slab: {text}." in grades["conclusion"]


def test_the_form_sheet_of_a_pad_says_so_and_signs_its_far_tops() -> None:
    job = {**PAD, "arc": {"radius": "7 ft", "chord": "14 ft"}, "board": {"level": "clear"},
           "grade": {"slope": 0, "cross": 1.0417, "low": "outside"}}  # fmt: skip
    sides = forms_sides(answering(job), "")
    assert sides.count("<section") == 2
    said = unescape(re.sub("<[^>]+>", "", sides)).replace("\xa0", " ")
    assert "Pad 14' 0\" x 22' 0\", rounded at one end" in said
    assert "Tops at A-2; B-2" in sides and '+1-7/8"; +1-7/8"' in said
    assert 'Total fall over the slab: 2-3/4".' in said
    plan = unescape(sides[sides.index("low slab beside-") :])
    assert "diagonal 20' 6-1/4" in plan and ">A-2<" in plan and "1.04%" in plan


def test_a_pad_without_a_title_is_called_one_wherever_a_title_stands() -> None:
    """On the paper's sides, in the text, in the drawing file; what fills a curve without sides is still its arc."""
    told = answer_to(AGAINST)
    heads = re.findall(r"<h2[^>]*>(.*?)</h2>", paper_html(told, "", date="May 31"))
    assert heads and all("A pad" in head for head in heads)
    assert sheet_text(told).startswith("A pad") and "A pad" in layout_dxf(told)
    assert title_of(answer_to({**PAD, "slab": {"thickness": "4 in", "fills": True}})) == "An arc"
    assert title_of(answer_to({**AGAINST, "title": "Patio"})) == "Patio"


def test_the_panel_of_the_slope_asks_in_the_pads_own_words() -> None:
    """Each of the three is there, and the page's style shows one of them; the line under the panel says it alike."""
    panel = slope_html(Entries({}, {}))
    low = panel[panel.index('id="grade-low"') :]
    assert '<span data-fills="no">the outside</span>' in low and '<span data-ends="one">the curve</span>' in low
    one = '<span data-back="formed">across from the curve</span><span data-back="against">the building side</span>'
    assert f'<span data-ends="one">{one}</span><span data-ends="both">the other curve</span>' in low
    assert '<span data-fills="yes">Slope, square to A to B</span>' in panel
    typed = fields_of_job({**PAD, "grade": {"slope": 1, "high": "A", "cross": 2, "low": "inside"}})  # type: ignore[arg-type]
    for taken, words in (({}, "2% down from the curve"), ({"slab-fills": ""}, "2% down to the inside")):
        said = {name: text for name, text in {**typed, **taken}.items() if text}
        assert words in slope_line(givens_of_fields(said), said)["text"]


@pytest.mark.parametrize(("grade", "told"), [
    ({"from": "100.00 ft"}, "Top at A 100.00 ft"), ({"to": "99.5 ft"}, "Top at B 99.50 ft"),
    ({"from": "100.00 ft", "to": "99.5 ft"}, "Tops at A and B 100.00 and 99.50 ft"),
])  # fmt: skip
def test_the_line_of_the_slope_names_no_outer_form_where_there_is_one_alone(grade: dict[str, str], told: str) -> None:
    typed = {name: text for name, text in fields_of_job({**PAD, "grade": grade}).items() if text}  # type: ignore[arg-type]
    assert slope_line(givens_of_fields(typed), typed)["text"].startswith(told)
    band = {**typed, "width": "4 ft", "edge": "outside"}
    del band["slab-fills"]
    assert slope_line(givens_of_fields(band), band)["text"].startswith("OUTER top")


@pytest.mark.parametrize(("reads", "told"), [
    # A-2 moved 2 in toward B-2 along the back: B to A-2 is the root of (240 - 2)² and 180², 298.40 in
    (("25'", "24' 10-3/8\"", "19' 10\""), ["A-2 stands about 2\" toward B-2: set it again."]),
    # B-2 2 in too far back: A to B-2 is the root of 240² and 182², 301.20 in
    (("25' 1-1/4\"", "25'", "20'"), ["B-2 stands about 2\" too far back: set it again."]),
    (("25'", "25'", "20' 2\""), ["Both diagonals are in: tape A-2 to B-2 again, then pull both sides again."]),
    (("25' 3\"", "25' 3\"", "20'"), ["No one corner explains these: square and pull both sides again."]),
    (("25'", "25' 3\"", ""), ["Tape both diagonals and the back: then they tell which corner is off."]),
    (("25'", "25'", "20'"), []),
])  # fmt: skip
def test_what_was_read_at_the_far_corners_is_told_by_the_corner(reads: tuple[str, ...], told: list[str]) -> None:
    """20 by 15 ft: sums by hand beside each."""
    read = [{"check": key, "value": value} for key, value in zip(("A-B-2", "B-A-2", "A-2-B-2"), reads, strict=True)]
    answered = answer_to({**PAD, "read": read})
    about = [re.sub(r"about (1' )?[\d/-]+\"", 'about 2"', text) for text in answered["far_checks"]["told"]]
    assert about == told
    for text in answered["far_checks"]["told"]:
        if "about" in text:
            assert re.search(r"about (1-(3/4|7/8)|2(-1/8|-1/4)?)\"", text), text
    html = checks_html(answered)
    assert ("Set the far corners again: Forms 1 of" in html) is bool(told)
    if told:
        step = int(re.findall(r'data-step="(\d+)"', html)[-1])
        assert 'data-kind="form_corners"' in stakes_html(answered, step)


def test_the_far_corners_card_leads_to_where_something_else_is_typed() -> None:
    told = answer_to(PAD)
    step = len(layout_cards(told)) + 1
    card = stakes_html(told, step)
    assert 'data-kind="form_corners"' in card
    assert re.search(r'data-do="face" data-face="checks">I got something else<', card)
    assert "I got something else" not in stakes_html(told, step + 1)


OFFSET: dict[str, Any] = {**AGAINST, "offset": "2 ft", "toward": "outside", "driven": "hub"}


def read_of(*rows: tuple[str, str]) -> list[dict[str, str]]:
    return [{"check": check, "value": value} for check, value in rows]


def front_of(job: dict[str, Any]) -> str:
    """All sides of the paper of a job whose stakes all stand, the tags taken out."""
    return " ".join(unescape(re.sub("<[^>]+>", " ", paper_html(answer_to(job), "", all_stand=True))).split())


@pytest.mark.parametrize("rows", [(("B-A-2", "24' 11\""),), (("A-A-2", "15' 1\""),)])
def test_a_far_reading_that_is_out_stands_on_paper_and_stops_the_order(rows: tuple[tuple[str, str], ...]) -> None:
    """On the front and in the heads of both form sides; the card of the pour asks for no order."""
    out, fine = ({**AGAINST, "read": read} for read in (read_of(*rows), read_of(("B-A-2", "25'"))))
    said = front_of(out)
    assert len(re.findall(r"must be (25|15)' 0\" ?\. Settle it before anybody builds", said)) == 3
    assert "No check of the stakes read." in said and "No check read." not in said
    assert "Settle it" not in front_of(fine)
    pours = [next(card for card in answer_to(job)["form_cards"] if card["kind"] == "form_pour") for job in (out, fine)]
    assert card_text(answer_to(out), pours[0]).startswith("A check is out.")
    assert card_text(answer_to(fine), pours[1]) == pours[1]["text"]


def test_two_diagonals_that_are_in_and_yet_apart_are_out_of_square() -> None:
    """20 by 15 ft: a far end that leans by x makes the diagonals 2 x 20/25 differ: 3/4 in apart is 0.47 in."""
    job = {**AGAINST, "read": read_of(("A-B-2", "25' 3/8\""), ("B-A-2", "24' 11-5/8\""))}
    far = answer_to(job)["far_checks"]
    assert {row["verdict"] for row in far["read"]} == {"in"} and far["apart"] is not None
    assert far["apart"]["out"] and far["outs"] == 1 and far["apart"]["over_shown"] == '3/4"'
    assert far["told"][1] == "A-2 and B-2 stand about 1/2\" toward B's side: square both sides again."
    assert front_of(job).count('The diagonals differ by 3/4"') == 3
    more = read_of(("A-B-2", "25' 3/4\""), ("B-A-2", "24' 11-1/2\""), ("A-2-B-2", "20'"))  # the one is out by itself
    for back in (more, more[:2]):
        answered = answer_to({**job, "read": back})
        leans = answered["far_checks"]
        assert leans["outs"] == 1 and leans["told"] == [
            'The diagonals differ by 1-1/4", 1/2" allowed: the pad is out of square.',
            "A-2 and B-2 stand about 3/4\" toward B's side: square both sides again.",
        ]
        card = stakes_html(answered, len(layout_cards(answered)) + 1)
        assert "square both sides again" in card and "No check read yet" not in card
    near = answer_to({**job, "read": read_of(("A-B-2", "25' 3/8\""), ("B-A-2", "25' 1/8\""))})["far_checks"]
    assert near["apart"] is not None and not near["apart"]["out"] and near["outs"] == 0


def test_with_stakes_off_the_line_the_corners_are_called_as_on_the_front() -> None:
    """A and B are the hubs there: a length from them wouldn't prove a corner. What is kept goes by the same key."""
    told = answer_to({**OFFSET, "read": read_of(("A-A-2", "15' 1\""))})
    far = told["far_checks"]
    assert [row["from"] for row in far["rows"]] == ["A0", "B0", "A-2", "A0", "B0"]
    assert far["read"][0]["check"] == "A-A-2" and "A0 to A-2" in far["read"][0]["text"]
    assert far["told"] == ['A-2 stands about 1" too far back: set it again.']
    assert 'Diagonals; apart at most 25\' 0" ; 3/8"' in front_of(OFFSET)
    assert [row["from"] for row in answer_to(AGAINST)["far_checks"]["rows"]] == ["A", "B", "A-2", "A", "B"]


def test_the_numbers_say_that_a_check_is_out() -> None:
    fields = fields_of_job({**AGAINST, "read": read_of(("B-A-2", "24' 11\""))})  # type: ignore[arg-type]
    answered = answer_to({**AGAINST, "read": read_of(("B-A-2", "24' 11\""))})
    assert read_state(answered, fields) == {"sign": "stop", "text": "1 check out", "panel": "checks"}  # type: ignore[arg-type]
    assert read_state(answer_to(AGAINST), fields) is None  # type: ignore[arg-type]
    asked: Any = {"fields": fields}
    assert shown_later(asked, LastAnswer())["state"] == {"sign": "stop", "text": "1 check out", "panel": "checks"}


def test_a_pads_ground_has_one_height_for_a_place_and_no_inside_edge() -> None:
    """Of two heights the last one had won without a word."""
    job = {**AGAINST, "grade": {**AGAINST.get("grade", {}), "from": "20 ft"}}
    for rows, field in (
        (
            [{"stake": "A", "level": "19.5 ft"}, {"stake": "A", "edge": "outside", "level": "19.7 ft"}],
            "grade.ground[1]",
        ),
        ([{"stake": "A", "edge": "inside", "level": "19.7 ft"}], "grade.ground[0]"),
    ):
        with pytest.raises(BadJob) as refused:
            answer_to({**job, "grade": {**job["grade"], "ground": rows}})
        assert refused.value.field.startswith(field)


def test_the_card_of_the_tops_reads_the_rod_where_it_begins() -> None:
    """From the building: 104.50 less each top's elevation."""
    grade = {"slope": 1, "high": "A", "cross": 1, "low": "outside", "from": "100 ft", "instrument": "104.50 ft"}
    card = next(one for one in answer_to({**AGAINST, "grade": grade})["form_cards"] if one["kind"] == "form_tops")
    told = next(note for note in card["notes"] if "rod reads" in note)
    levels = re.findall(r"\d+\.\d+", next(note for note in card["notes"] if note.startswith("At the building")))
    assert re.findall(r"\d+\.\d+", told) == [f"{104.5 - float(level):.2f}" for level in levels] and len(levels) == 3
