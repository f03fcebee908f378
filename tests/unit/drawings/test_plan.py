"""The plan: true to the answer, turned for the hand, honest about its scale, nothing overlapping."""

from __future__ import annotations

import math
import random
from typing import Any

import pytest

from bowstring.drawings import plan as plan_module
from bowstring.drawings.paper import LEAST_GAP, fit, round_length, stretch_of
from bowstring.drawings.plan import plan_svg
from bowstring.drawings.sketch import Sketch
from bowstring.words import say
from unit.drawings.drawing_boxes import assert_clear, box_of, boxes
from unit.drawings.drawing_cases import SHAPES, case, make, own
from unit.drawings.drawing_reader import Read

FOOT = 0.3048


def similar(answer: dict[str, Any], read: Read, stretch: int) -> float:
    """Check that drawn stakes are the answer's, one scale along, one across; return units per metre."""
    drawn = {name: places[0] for name, places in read.stakes().items()}
    assert list(drawn) == [stake["name"] for stake in answer["stakes"]]
    ends = {stake["name"]: stake for stake in answer["stakes"]}
    turn = -1 if answer["side"] == "right" else 1  # A at the right, and the curve up on either hand
    scale = turn * (drawn["B"][0] - drawn["A"][0]) / (ends["B"]["x"] - ends["A"]["x"])
    assert scale > 0
    for name, (x, y) in drawn.items():
        assert x - drawn["A"][0] == pytest.approx(turn * ends[name]["x"] * scale, abs=0.01)
        assert y - drawn["A"][1] == pytest.approx(-ends[name]["y"] * scale * stretch, abs=0.01)
    return scale


@pytest.mark.parametrize("name", SHAPES)
def test_stakes_stand_where_the_answer_says(name: str) -> None:
    answer = case(name)
    flat = answer["staked"]["sagitta"] < answer["staked"]["chord"] / 12
    stretch = fit(answer, 300, 290).stretch
    assert (stretch > 1) == flat
    similar(answer, Read(plan_svg(answer, id="p")), stretch)


@pytest.mark.parametrize("name", SHAPES)
@pytest.mark.parametrize("side", ["left", "right"])
def test_nothing_overlaps_and_every_name_stands(name: str, side: str) -> None:
    answer = case(name, side=side)
    read = Read(plan_svg(answer, id="p"))
    assert_clear(read)
    named = [words.text for words in read.words() if words.stake]
    expected = [stake["name"] for stake in answer["stakes"]] + (["A0", "B0"] if answer["offset"] else [])
    assert sorted(named) == sorted(expected)


@pytest.mark.parametrize("seed", range(12))
def test_random_arcs_are_drawn_clear_and_true(seed: int) -> None:
    dice = random.Random(seed)
    half = math.radians(dice.uniform(1, 162))
    chord = 10 ** dice.uniform(-0.5, 2.3)
    offset = dice.choice([0.0, chord * dice.uniform(0.001, 0.08)])
    rise = chord / 2 * math.tan(half / 2)
    side, toward = dice.choice(["left", "right"]), dice.choice(["centre", "outside"])
    answer = make(
        chord,
        rise,
        dice.randint(1, 5),
        side=side,
        offset=offset,
        toward=toward,
        unit=dice.choice(["ft-in", "m"]),
    )
    read = Read(plan_svg(answer, id="p"))
    assert_clear(read)
    similar(answer, read, fit(answer, 300, 290).stretch)


def test_the_hand_turns_the_drawing_and_not_the_words() -> None:
    for name in ("ordinary", "offset", "greater", "flat"):
        left, right = (Read(plan_svg(case(name, side=side), id="p")) for side in ("left", "right"))
        for read, hand in ((left, "left"), (right, "right")):
            at = {name: read.stakes()[name][0] for name in ("A", "M", "B")}
            assert at["M"][1] < at["A"][1] == at["B"][1]
            assert (at["A"][0] < at["B"][0]) is (hand == "left")
            told = say("hand.standing", hand=hand, turn={"left": "right", "right": "left"}[hand])
            assert told in read.flowing_text()
            description = read.described()[1]
            assert told in description and f"at the {hand}, with the curve above the string" in description
        assert not [element for element in right.root.iter() if "transform" in element.attrib]


@pytest.mark.parametrize("name", SHAPES)
def test_the_arc_that_is_drawn_runs_through_the_stakes(name: str) -> None:
    """Unstretched, the curve's own points (every third is on the arc) lie on the stakes' circle."""
    answer = case(name)
    paper = fit(answer, 300, 290)
    read = Read(plan_svg(answer, id="p"))
    scale = similar(answer, read, paper.stretch)
    arc = max(read.paths("arc"), key=len)
    ax, ay = read.stakes()["A"][0]
    staked, turn = answer["staked"], -1 if answer["side"] == "right" else 1
    for x, y in arc[::3]:
        across = turn * (x - ax) / scale - staked["chord"] / 2
        up = (y - ay) / scale / -paper.stretch
        # distance below the arc's top t = s - y and c^2: a circle is across^2 + t^2 = 2 R t
        below = staked["sagitta"] - up
        assert across**2 + below**2 == pytest.approx(
            2 * staked["radius"] * below, rel=2e-3, abs=2e-3 * staked["chord"] ** 2
        )
    assert arc[0] == pytest.approx(read.stakes()["A"][0], abs=0.01)
    assert arc[-1] == pytest.approx(read.stakes()["B"][0], abs=0.01)


@pytest.mark.parametrize(
    ("rise", "chord", "factor"),
    [
        (1.0, 12.0, 1),
        (0.999, 12.0, 2),
        (0.5, 60.0, 20),
        (0.001, 100.0, 20000),
        (5.0, 38.0, 1),
        (1.0, 24.0, 5),
    ],
)
def test_only_a_flat_rise_is_stretched_by_a_round_factor(rise: float, chord: float, factor: int) -> None:
    assert stretch_of(rise, chord) == factor


@pytest.mark.parametrize("name", SHAPES)
def test_a_stretched_rise_is_said_and_an_unstretched_one_is_not(name: str) -> None:
    answer = case(name)
    factor = fit(answer, 300, 290).stretch
    read = Read(plan_svg(answer, id="p"))
    for text in (read.flowing_text(), read.described()[1]):
        assert ("so you can see it" in text) == (factor > 1)
        assert (f"drawn {factor:,}x" in text) == (factor > 1)
        assert (say("draw.scale") in text) == (factor == 1)


def test_both_arcs_are_drawn_apart_and_named() -> None:
    for name in ("offset", "hub", "flat hub", "nine tenths offset"):
        answer = case(name)
        stretch = fit(answer, 300, 290).stretch
        read = Read(plan_svg(answer, id="p"))
        dashed = read.paths("drawn")
        assert len(dashed) == 2  # the line and its sample in the key
        for key, arc in (("draw.arc.staked", "staked_shown"), ("draw.arc.drawn", "arc_shown")):
            assert say(key, radius=answer[arc]["radius"]) in read.flowing_text()
        line = max(dashed, key=len)
        x, y = read.stakes()["M"][0]
        gap = min(math.dist((x, y), point) for point in line)
        assert gap > LEAST_GAP - 0.5
        forced = "not drawn to scale" in read.flowing_text()
        true = abs(answer["offset"]["distance"]) * similar(answer, read, stretch) * stretch
        assert forced == (true < LEAST_GAP)
        assert answer["offset"]["shown"] in read.flowing_text()


def test_the_drawn_arc_is_on_its_own_side() -> None:
    for toward, outside in (("centre", True), ("outside", False)):
        read = Read(plan_svg(case("ordinary", offset=0.04, toward=toward), id="p"))
        line = max(read.paths("drawn"), key=len)
        top = min(y for _, y in line)
        assert (top < read.stakes()["M"][0][1]) == outside


def test_landmarks_belong_to_the_drawn_arc_s_ends() -> None:
    plain, offset = (Read(plan_svg(case(name), id="p")).flowing_text() for name in ("ordinary", "offset"))
    assert "A: nail in the oak root" in plain and "B: corner of the pump house" in plain
    assert "A0: nail in the oak root" in offset and "B0: corner of the pump house" in offset
    assert "A: nail" not in offset


def test_numbers_on_the_plan_are_the_answer_s_texts() -> None:
    answer = case("ordinary")
    text = Read(plan_svg(answer, id="p")).flowing_text()
    assert say("draw.chord", shown=answer["staked_shown"]["chord"]) in text
    assert answer["staked_shown"]["sagitta"] in text
    assert text.count(answer["halving"][0]["half_shown"]) == 2


@pytest.mark.parametrize("name", SHAPES)
def test_the_scale_bar_is_as_long_as_it_says(name: str) -> None:
    answer = case(name)
    read = Read(plan_svg(answer, id="p"))
    scale = similar(answer, read, fit(answer, 300, 290).stretch)
    label = next(
        w
        for w in read.words()
        if w.anchor == "start" and w.text.split(" ")[-1] in ("ft", "in", "m", "mm") and "bd-number" in w.classes
    )
    number, unit = label.text.split(" ")
    metres = float(number) * {"ft": FOOT, "in": FOOT / 12, "m": 1.0, "mm": 0.001}[unit]
    bars = [path for path in read.paths("line") if len(path) == 6 and abs(path[0][1] - (label.at[1] - 5)) < 0.01]
    assert len(bars) == 1
    assert bars[0][1][0] - bars[0][0][0] == pytest.approx(metres * scale, abs=0.01)


@pytest.mark.parametrize(
    ("target", "unit", "expected"),
    [
        (4.0, "ft-in", (10, "ft")),
        (0.35, "ft", (1, "ft")),
        (0.2, "ft-in", (6, "in")),
        (4.0, "m", (2, "m")),
        (0.3, "m", (0.2, "m")),
        (4.0, "mm", (2000, "mm")),
    ],
)
def test_a_round_length(target: float, unit: str, expected: tuple[float, str]) -> None:
    number, found, metres = round_length(target, unit)
    assert (number, found) == (pytest.approx(expected[0]), expected[1])
    assert metres <= target * (1 + 1e-9)


@pytest.mark.parametrize("bad", [math.nan, math.inf, -1.0, 0.0])
@pytest.mark.parametrize("key", ["radius", "chord", "sagitta", "arc_length", "central_angle"])
def test_an_arc_that_is_none_is_refused(key: str, bad: float) -> None:
    answer = own(case("ordinary"))
    answer["staked"][key] = bad
    with pytest.raises(ValueError):
        plan_svg(answer, id="p")


def test_a_stake_nowhere_is_refused() -> None:
    for key in ("x", "y", "along"):
        answer = own(case("ordinary"))
        answer["stakes"][3][key] = math.nan
        with pytest.raises(ValueError):
            plan_svg(answer, id="p")


def test_hostile_landmarks_and_titles_stay_text() -> None:
    title, landmark = "<script>alert('x')</script>", 'A&B "x" <img onerror=1>\x07\u202e12'
    answer = own(case("ordinary"))
    answer["title"], answer["ends"] = title, {"A": landmark, "B": "W" * 40}
    svg = plan_svg(answer, id="p")
    assert "<script" not in svg and "<img" not in svg and "\x07" not in svg and "\u202e" not in svg
    read = Read(svg)
    assert title in read.described()[0]
    assert 'A&B "x" <img onerror=1>␇\ufffd12' in read.flowing_text()
    assert "W" * 40 in read.flowing_text().replace(" ", "")
    assert_clear(read)


def test_missing_landmarks_and_title_leave_no_gap() -> None:
    answer = case("ordinary", title="", ends=("", ""))
    read = Read(plan_svg(answer, id="p"))
    assert read.described()[0] == say("draw.plan.title")
    assert "A:" not in read.flowing_text() and "None" not in read.flowing_text()


def test_of_ten_levels_the_first_six_are_drawn_and_the_rest_is_said() -> None:
    answer = make(168 * FOOT, 33 * FOOT, 10)
    read = Read(plan_svg(answer, id="p"))
    assert len([words for words in read.words() if words.stake]) == 65
    assert say("draw.some_levels", level=6) in read.flowing_text()
    assert say("draw.some_levels", level=6) not in Read(plan_svg(case("six levels"), id="p")).flowing_text()


def test_drawings_repeat_to_the_letter_and_stay_small() -> None:
    for name in ("ordinary", "nine tenths", "flat hub"):
        assert plan_svg(case(name), id="p") == plan_svg(case(name), id="p")
    assert Read(plan_svg(case("ordinary"), id="p")).elements < 100
    assert Read(plan_svg(case("six levels"), id="p")).elements < 300


FEW = [name for name, shape in SHAPES.items() if shape["levels"] < 5]
WITHOUT_CORNER = ("greater", "nine tenths", "nine tenths offset", "semicircle", "found chord")  # its ends stand already
LESSER = [name for name in FEW if name not in WITHOUT_CORNER]


def arc_of(degrees: float, levels: int = 3, **changes: Any) -> dict[str, Any]:
    """An arc of a radius of 12 m."""
    half = math.radians(degrees) / 2
    return make(24 * math.sin(half), 12 * (1 - math.cos(half)), levels, **changes)


@pytest.mark.parametrize("name", FEW)
@pytest.mark.parametrize("side", ["left", "right"])
def test_three_hundred_pixels_are_room_enough_for_few_stakes(name: str, side: str) -> None:
    """On a phone of 360 pixels a wider drawing runs off the screen's edge."""
    assert float(Read(plan_svg(case(name, side=side), id="p")).root.attrib["data-least-width"]) <= 300


@pytest.mark.parametrize("name", ["offset", "hub", "flat hub", "nine tenths offset"])
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("toward", ["centre", "outside"])
@pytest.mark.parametrize("offset", [None, 0.0381])
def test_each_end_is_named_nearest_to_its_own_mark(name: str, side: str, toward: str, offset: float | None) -> None:
    answer = case(name, side=side, toward=toward, offset=offset or SHAPES[name]["offset"])
    read = Read(plan_svg(answer, id="p"))
    crosses = read.crosses()
    assert len(crosses) == 2
    for end, cross in zip("BA" if side == "right" else "AB", sorted(crosses), strict=True):
        own, drawn, stake = box_of(read, end), box_of(read, f"{end}0"), read.stakes()[end][0]
        assert math.dist(own.nearest(stake), stake) < math.dist(own.nearest(cross), cross)
        assert math.dist(drawn.nearest(cross), cross) < math.dist(drawn.nearest(stake), stake)
        assert math.dist(stake, cross) > 9  # a square of 10 and a cross of 8, seen apart
        assert not [text for text, box in boxes(read) if math.dist(box.nearest(cross), cross) < 4], "under a text"


@pytest.mark.parametrize("name", LESSER)
@pytest.mark.parametrize("side", ["left", "right"])
def test_the_corner_is_drawn_where_the_straights_meet(name: str, side: str) -> None:
    answer = case(name, side=side, start="corner")
    read = Read(plan_svg(answer, id="p"))
    assert_clear(read)
    assert {"P", "S", "T"} <= {words.stake for words in read.words()}
    assert float(read.root.attrib["data-least-width"]) <= 300
    (straights,) = (path for path in read.paths("dash") if len(path) == 8)
    (at_a, s), (at_b, t), (from_a, corner), (from_b, also) = zip(straights[::2], straights[1::2], strict=True)
    assert (from_a, from_b) == (at_a, at_b) and corner == pytest.approx(also, abs=0.01)
    for there in (corner, s, t):
        assert min(math.dist(there, cross) for cross in read.crosses()) < 0.01
    (ax, ay), (bx, _) = read.stakes()["A"][0], read.stakes()["B"][0]
    assert corner[0] == pytest.approx((ax + bx) / 2, abs=0.01)
    (mark,) = (mark for mark in answer["marks"] if mark["name"] == "P")
    over = mark["y"] > 0  # so far out that the staked string lies beyond the corner, it is under it
    assert over == (name != "flat hub")
    assert (corner[1] < ay) == over
    turn = -1 if side == "right" else 1
    assert turn * (s[0] - at_a[0]) < 0 < turn * (t[0] - at_b[0]) and s[1] > at_a[1]
    for start, end in ((s, at_a), (t, at_b)):  # one line from S over A to P
        one, two = (end[0] - start[0], end[1] - start[1]), (corner[0] - end[0], corner[1] - end[1])
        assert abs(one[0] * two[1] - one[1] * two[0]) < 2e-3 * math.hypot(*one) * math.hypot(*two)
    if not answer["offset"]:
        scale = turn * (bx - ax) / answer["staked"]["chord"]
        turned = mark["y"] * scale * (corner[1] - ay) / abs(corner[1] - ay)
        stretched = say("draw.scale") not in read.flowing_text()
        assert stretched or corner[1] - ay == pytest.approx(turned, abs=0.05)
    assert say("draw.straights.corner") in read.flowing_text()
    assert "off the drawing" not in read.described()[1] and "corner P" in read.described()[1]


@pytest.mark.parametrize("degrees", [12, 40, 75, 100, 120, 140, 150, 165, 179])
@pytest.mark.parametrize("changes", [{}, {"offset": 0.04, "side": "right"}, {"offset": 1.0, "toward": "outside"}])
def test_a_far_corner_is_cut_off_and_said_so(degrees: float, changes: dict[str, Any]) -> None:
    answer = arc_of(degrees, start="corner", **changes)
    read = Read(plan_svg(answer, id="p"))
    assert_clear(read)
    (ax, _), (bx, _) = read.stakes()["A"][0], read.stakes()["B"][0]
    assert abs(bx - ax) > 0.47 * (read.box[2] - read.box[0])
    named = {words.stake for words in read.words()}
    off = say("draw.straights.off") in read.flowing_text()
    assert off == ("P" not in named) == ("off the drawing" in read.described()[1])
    assert [words.text for words in read.words()].count(say("draw.to", name="P")) == (2 if off else 0)
    if degrees >= 165 or degrees <= 100:
        assert off == (degrees >= 165)


@pytest.mark.parametrize("degrees", [12, 75, 120, 165, 200, 250])
@pytest.mark.parametrize("changes", [{}, {"offset": 0.04, "side": "right"}, {"offset": 1.0, "toward": "outside"}])
def test_one_end_shows_its_straight_and_the_foot(degrees: float, changes: dict[str, Any]) -> None:
    answer = arc_of(degrees, start="one-end", **changes)
    read = Read(plan_svg(answer, id="p"))
    assert_clear(read)
    assert {"F", "S"} <= {words.stake for words in read.words()}
    (legs,) = (path for path in read.paths("dash") if len(path) == 6)
    at_a, _, also_a, foot, again, at_b = legs
    assert at_a == also_a and foot == again
    one, two = (at_a[0] - foot[0], at_a[1] - foot[1]), (at_b[0] - foot[0], at_b[1] - foot[1])
    if not answer["offset"] and degrees > 90:  # neither stretched nor moved out on paper: a right angle
        assert abs(one[0] * two[0] + one[1] * two[1]) < 2e-3 * math.hypot(*one) * math.hypot(*two)
    names = ("A0", "B0") if answer["offset"] else ("A", "B")
    assert say("draw.straights.one_end", start=names[0], end=names[1]) in read.flowing_text()
    assert say("draw.plan.desc.one_end", start=names[0], end=names[1]) in read.described()[1]


def test_ends_on_the_ground_have_no_straights() -> None:
    for start in ("ends", "neither"):
        read = Read(plan_svg(case("ordinary", start=start), id="p"))
        assert say("draw.tangents") in read.flowing_text() and not read.crosses()


def test_print_size_and_least_width() -> None:
    root = Read(plan_svg(case("ordinary"), id="p", width_mm=170)).root
    assert root.attrib["width"] == "170mm"
    assert 200 < float(root.attrib["data-least-width"]) < 360  # an ordinary plan is readable on a phone


def test_the_overlap_check_can_fail(monkeypatch: pytest.MonkeyPatch) -> None:
    def careless(sketch: Sketch, answer: Any, paper: Any, newest: int | None = None) -> None:
        for stake in answer["stakes"]:
            sketch.words(stake["name"], paper.point(stake["x"], stake["y"]), "name")

    monkeypatch.setattr(plan_module, "name_stakes", careless)
    with pytest.raises(AssertionError):
        assert_clear(Read(plan_svg(case("ordinary"), id="p")))
