"""The drawings of the sheet of paper: the plan in a low box, the lath lying down, the two small signs."""

from __future__ import annotations

import math
import re
from typing import Any

import pytest

from bowstring.drawings.lath import lath_svg
from bowstring.drawings.lowplan import NARROW, WIDE, low_plan_svg
from bowstring.drawings.signs import hand_sign, line_sign
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_sizes import PLANS
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import all_hold, answer_to
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_cases import SHAPES, case, own
from unit.drawings.drawing_reader import Read

LOW, HIGH = 110.0, 190.0
ROOMY = 1.35  # times its box a drawing of a whole circle's labels may be high: it is shrunk into it


def plan(name: str, height: float) -> Read:
    return Read(low_plan_svg(case(name), id="low", height=height))


def is_clear(name: str, height: float) -> None:
    drawn = plan(name, height)
    assert_clear(drawn)
    left, top, right, bottom = drawn.box
    assert right - left >= WIDE - 1 and bottom - top <= ROOMY * height
    stakes = case(name)["stakes"]
    assert {"A", "B"} <= {words.stake for words in drawn.words()}
    assert len(drawn.stakes()) == len(stakes)


def test_no_label_of_a_low_plan_covers_another_and_it_keeps_to_its_box() -> None:
    cases = {f"{name} {height:g}": (name, height) for name in SHAPES for height in (LOW, HIGH)}
    all_hold(cases, is_clear)


def test_a_low_plan_has_the_chord_and_the_mid_ordinate_where_there_is_room() -> None:
    shown = case("ordinary")["staked_shown"]
    tall = {words.text for words in plan("ordinary", HIGH).words()}
    assert {f"chord {shown['chord']}", shown["sagitta"], "M", "R4"} <= tall
    assert not any("chord" in words.text for words in plan("ordinary", LOW).words())


def test_in_a_narrow_arc_the_mid_ordinate_stands_under_the_chord_with_no_line_to_it() -> None:
    job = {"bowstring": 1, "side": "left", "drawn_to": "face", "method": "halving", "levels": 3}
    answer = answer_to({**job, "arc": {"radius": "18 ft", "central_angle": 220}})
    drawn = Read(low_plan_svg(answer, id="low", height=130.0))
    assert_clear(drawn)
    texts = [words.text.replace("\u00a0", " ") for words in drawn.words()]
    shown = answer["staked_shown"]
    at = texts.index(f"chord {shown['chord']}")
    assert texts[at + 1] == f"mid-ord {shown['sagitta']}"


def test_a_word_over_what_is_in_the_way_has_the_ground_cleared_under_it() -> None:
    outline = [["14 ft", "-3 ft"], ["24 ft", "-3 ft"], ["24 ft", "-6 in"], ["14 ft", "-6 in"]]
    job = {"bowstring": 1, "side": "left", "drawn_to": "face", "method": "halving", "levels": 3}
    job |= {"arc": {"chord": "38 ft", "sagitta": "6 ft"}}
    bed = {"ground": [{"name": "bed", "stops": "tape", "outline": outline}]}
    with_bed, without = (low_plan_svg(answer_to({**job, **more}), id="low", height=HIGH) for more in (bed, {}))
    assert without.count('class="bd-in"') == 0
    assert with_bed.rindex('data-stops="tape"') < with_bed.index('class="bd-in"') < with_bed.index(">chord 38")


def test_a_plan_for_a_phone_keeps_to_its_width_and_its_words_apart() -> None:
    for name in ("ordinary", "flat"):
        drawn = Read(low_plan_svg(case(name), id="low", height=HIGH, wide=NARROW))
        assert_clear(drawn)
        left, _top, right, _bottom = drawn.box
        assert NARROW - 1 <= right - left <= NARROW + 1


METHODS = ("centre", "halving", "rule", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
STRINGS = ("2 ft", "5 ft", "6 ft", "8 ft", "-2 ft", "-6 ft")
SIDEWALK: dict[str, Any] = {
    "bowstring": 1, "drawn_to": "face", "side": "left", "arc": {"radius": "72' 6\"", "chord": "44' 9\""},
    "centre": "reachable", "width": "5 ft", "edge": "inside", "slab": {"thickness": "4 in"}, "joints": {},
}  # fmt: skip
WORKS = {method: {"method": method} for method in METHODS}
WORKS |= {f"string {off}": {"method": "ordinates", "parallel": off} for off in STRINGS}


def shows_the_work(answer: Any, svg: str, height: float) -> float:
    """Return how much of the paper's width the arc takes, the scale's bar held against the chord on the way."""
    drawn = Read(svg)
    left, top, right, bottom = drawn.box
    stakes = drawn.stakes()
    wide = abs(stakes["B"][0][0] - stakes["A"][0][0])
    feet = [int(words.text.partition(" ft")[0]) for words in drawn.words() if re.match(r"\d+ ft\b", words.text)]
    assert len(feet) == 1 and feet[0] * 0.3048 < answer["staked"]["chord"] / 2, feet
    return wide * min(WIDE / (right - left), height / (bottom - top)) / WIDE


@pytest.mark.parametrize("name", WORKS)
def test_the_arc_takes_half_of_the_drawing_by_every_method(name: str) -> None:
    answer = answer_to({**SIDEWALK, **WORKS[name]})
    for height in PLANS:
        share = shows_the_work(answer, low_plan_svg(answer, id="low", height=float(height)), float(height))
        # nearly 10 ft of depth in a box of 70 px, names around it, leave an arc of 45 ft no more than this
        least = 0.5 if height >= 130 else 0.45 if height >= 110 else 0.15 if height >= 70 else 0.09
        assert share >= least, (height, share)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", WORKS)
def test_the_printed_front_of_many_stakes_shows_the_work(name: str, language: str) -> None:
    speak(language)
    try:
        answer = answer_to({**SIDEWALK, **WORKS[name], "spacing": "2 ft"})
        front = paper_html(answer, "", "").partition('<div class="low">')
        high = float(re.findall(r"plan-(\d+)", front[0])[-1])
        assert shows_the_work(answer, front[2].partition("</div>")[0], high) >= 0.45
    finally:
        speak("english")


FINEST = 0.7
"""Of its usual height: the smallest type of the names."""


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(("name", "more"), [
    ("a porch", {"arc": {"chord": "52 ft", "sagitta": "6 ft 4 in"}}),
    ("three sides", {"arc": {"three_sides": ["21 ft", "22 ft", "40 ft"]}}),
    ("hubs", {"arc": {"radius": "25 ft", "central_angle": 90}, "driven": "hub", "offset": "3 ft", "toward": "outside",
              "start": "one-end"}),
])  # fmt: skip
def test_the_fourth_round_s_stakes_are_named_too(name: str, more: dict[str, Any], side: str) -> None:
    """All seventeen, beside their squares and apart, in as large a type as has room."""
    job = {"drawn_to": "face", "side": side, "method": "halving", "levels": 4, **more}
    answer = answer_to(job)
    stakes = [stake["name"] for stake in answer["stakes"]]
    assert "X8" in stakes
    sizes = []
    for height in (LOW, 150.0, HIGH):
        drawn = Read(low_plan_svg(answer, id="low", height=height))
        assert_clear(drawn)
        assert set(stakes) <= {words.stake for words in drawn.words()}
        left, top, right, bottom = drawn.box
        sizes.append(min(WIDE / (right - left), height / (bottom - top)))
        assert sizes[-1] >= FINEST
        for words in drawn.words():
            if words.stake in stakes:
                at = drawn.stakes()[words.stake][0]
                assert math.dist(words.at, at) == min(
                    math.dist(words.at, other[0]) for other in drawn.stakes().values()
                )
    assert sizes == sorted(sizes), "a higher box has larger type"


def test_a_stopped_plan_has_no_number_of_a_step() -> None:
    answer = own(case("ordinary"))
    answer["stops"] = ["Ask first."]
    svg = low_plan_svg(answer, id="low", height=HIGH)
    assert answer["staked_shown"]["chord"].replace('"', "&quot;") not in svg.replace('"', "&quot;")
    assert ">M<" in svg


def test_a_flat_arc_says_how_much_too_high_it_is_drawn() -> None:
    assert any("so you can see it" in words.text for words in plan("flat", HIGH).words())


def test_the_lath_has_each_mark_once_from_its_zero_end() -> None:
    answer = case("ordinary")
    drawn = Read(lath_svg(answer, id="lath") or "")
    assert_clear(drawn)
    texts = [words.text for words in drawn.words()]
    marks = answer["stick"]["marks"]
    assert texts[0] == "0" and all(texts.count(mark["shown"]) == 1 for mark in marks)


def test_there_is_no_lath_where_its_words_have_no_room_or_nothing_is_squared_off() -> None:
    crowded, none = own(case("ordinary")), own(case("ordinary"))
    mark = crowded["stick"]["marks"][0]
    crowded["stick"]["marks"] = [{**mark, "shown": "4' 11-11/16\""} for _ in range(9)]
    none["stick"]["marks"] = []
    assert lath_svg(crowded, id="lath") is None and lath_svg(none, id="lath") is None


def test_the_curve_of_the_sign_is_on_its_hand() -> None:
    left, right = (hand_sign(case(name), id="hand") for name in ("ordinary", "right hand"))
    assert "M-36,76" in left and "M36,76" in right
    unknown = own(case("ordinary"))
    unknown["side"] = None
    assert "M-36,76" not in (asked := hand_sign(unknown, id="hand")) and "M36,76" not in asked


def test_a_pin_that_holds_a_board_touches_its_line_from_behind() -> None:
    """No cross over its middle: who sets centers by the picture has the board half a pin too near."""
    held = own(case("hub"))
    held["driven"] = "pin"
    centered = line_sign(held, id="line")
    held["on_line"] = {**held["on_line"], "pins": "back"}
    edge = line_sign(held, id="line")
    assert "M39,2" in centered and "M39,2" not in edge  # the cross, 16 over the dashed line at 18
    assert "M47,10" in edge and "M50,18" in centered  # the circles: 8 behind the line, and 11 around it


def test_the_stake_of_the_sign_stands_off_the_line_where_the_stakes_do() -> None:
    assert (
        line_sign(case("ordinary"), id="line").count("bd-dash")
        == line_sign(case("hub"), id="line").count("bd-dash") - 1
    )
