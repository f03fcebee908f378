"""The numbers face: a third number is held and checked, each question says its answer, nothing is laid out."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from collections.abc import Mapping
from html import unescape
from math import cos, degrees, radians
from typing import Any

import pytest

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.faces.numbers import NumbersFace, numbers
from bowstring.faces.numbers_later import numbers_later, refused_later
from bowstring.faces.questions import ASKS, ROWS
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.units.angles import show_dms
from bowstring.words import say

TWO = {"arc-chord": "38'", "arc-sagitta": "5' 3\""}
SAID = {**TWO, "side": "left", "drawn_to": "face"}
MOST_ELEMENTS = 40
HOT = 'class="bd-big bd-hot"'


def states(face: NumbersFace) -> dict[str, str]:
    return {name.removeprefix("arc-"): row["state"] for name, row in face["rows"].items()}


def given(face: NumbersFace, state: str) -> set[str]:
    return {name for name, one in states(face).items() if one == state}


def test_an_empty_form_asks_for_two_numbers_and_for_nothing_else() -> None:
    face = numbers({"unit": "ft-in"})
    assert face["sign"] == "open" and face["ask"] == ""
    assert set(states(face).values()) == {"empty"} and len(face["rows"]) == len(ROWS)
    assert face["state"] == {"text": say("numbers.state_missing_2"), "sign": "waiting"}
    assert not any(line["state"] == "wrong" for line in face["lines"].values())
    assert numbers({"arc-chord": "38'"})["state"]["text"] == say("numbers.state_missing_1")


def test_nothing_is_wrong_before_a_second_number_but_what_cannot_be_read() -> None:
    assert given(numbers({"arc-chord": "38'"}), "given") == {"chord"}
    unread = numbers({"arc-chord": "6 3/8"})
    assert given(unread, "wrong") == {"chord"} and unread["sign"] == "refused"
    assert unread["rows"]["arc-chord"]["readings"] == ["6-3/8 in", "6-3/8 ft"]
    assert unread["tell"]["arc-chord"].count('data-do="fill"') == 2


def test_two_numbers_and_the_five_others_follow() -> None:
    face = numbers(TWO)
    assert face["sign"] == "computed" and given(face, "given") == {"chord", "sagitta"}
    shown = {name: row["out"] for name, row in face["rows"].items() if row["state"] == "read"}
    assert shown == {
        "arc-radius": "37' 0-1/8\"",
        "arc-arc_length": "39' 10-7/8\"",
        "arc-central_angle": "61°47'07\"",
        "arc-tangent_length": "22' 1-3/4\"",
        "arc-external": "6' 1-3/8\"",
    }
    assert face["rows"]["arc-radius"]["beside"] == "37.006 ft"
    assert face["rows"]["arc-chord"]["beside"] == "38' 0\"\n38.000 ft" and face["rows"]["arc-chord"]["out"] == ""


@pytest.mark.parametrize(
    ("unit", "chord", "out", "beside"),
    [
        ("ft", "38", "19.00 ft", "19.0000 ft"),
        ("m", "11.5", "5.750 m", "5.7500 m"),
        ("mm", "11500", "5750 mm", "5.7500 m"),
    ],
)
def test_each_unit_reads_and_shows_in_its_own_way(unit: str, chord: str, out: str, beside: str) -> None:
    row = numbers({"unit": unit, "arc-chord": chord, "arc-central_angle": "180"})["rows"]["arc-sagitta"]
    assert (row["out"], row["beside"]) == (out, beside)


def test_a_third_number_that_agrees_is_held_and_replaces_nothing() -> None:
    face = numbers({**TWO, "arc-radius": "37' 0-1/8\""})
    assert given(face, "given") | given(face, "held") == {"radius", "chord", "sagitta"}
    assert len(given(face, "held")) == 1
    assert face["state"]["sign"] == "ask"
    assert say("numbers.tell_agree").rstrip("|") in face["tell"][""]


def test_a_third_number_that_differs_says_by_how_much_at_each_of_the_three() -> None:
    face = numbers({**SAID, "arc-radius": "36'"})
    assert given(face, "differs") == {"radius", "chord", "sagitta"}
    assert face["rows"]["arc-radius"]["told"] == "Chord and mid-ordinate make it 37' 0-1/8\", 1' 0-1/8\" more."
    assert face["state"] == {"text": say("numbers.state_stopped"), "sign": "stop"} and face["ask"] == ""
    back = numbers({**SAID, "arc-radius": ""})
    assert given(back, "differs") == set() and back["state"]["sign"] == "computed"


def test_of_four_numbers_the_odd_one_alone_differs() -> None:
    face = numbers({**TWO, "arc-arc_length": "39' 10-7/8\"", "arc-external": "6'"})
    assert given(face, "differs") == {"external"}
    assert "1-3/8 in more" in face["rows"]["arc-external"]["told"]


def test_numbers_that_make_no_arc_are_refused_at_one_of_them() -> None:
    face = numbers({"arc-radius": "10'", "arc-chord": "30'"})
    assert face["sign"] == "refused" and given(face, "wrong") == {"chord"} and face["ask"] == ""
    assert not any(row["out"] for row in face["rows"].values())


def test_a_measure_that_an_arc_has_not_says_so() -> None:
    row = numbers({"arc-radius": "20'", "arc-central_angle": "250"})["rows"]["arc-external"]
    assert row["out"] == say("numbers.none") and row["told"] == say("numbers.no_corner")


def arcs_offered(fields: dict[str, str]) -> list[tuple[str, str, bool]]:
    """Each arc that the help line offers: its words, what its button puts into ``greater``, whether it is marked."""
    found = re.findall('data-fill="([^"]*)" aria-pressed="([a-z]+)">(.*?)</button>', numbers(fields)["tell"][""])
    return [
        (unescape(re.sub("<[^>]+>", "", text)), json.loads(unescape(fill))["greater"], pressed == "true")
        for fill, pressed, text in found
    ]


def test_of_two_arcs_that_fit_both_are_offered_with_their_lengths_and_the_one_taken_is_marked() -> None:
    """A chord of 9 ft on a radius of 12 ft: 24 asin(9/24) = 9.22552 ft along the short arc, which is 9' 2.71", and
    24 pi less that, 66.17270 ft or 66' 2.07", along the long one."""
    fields = {"arc-radius": "12'", "arc-chord": "9'", "mark": "1/8 in"}
    offered = [("Short: 9' 2-3/4\"", "", True), ("Long: 66' 2-1/8\"", "yes", False)]
    assert arcs_offered(fields) == offered
    assert arcs_offered({**fields, "greater": "yes"}) == [(text, fill, not taken) for text, fill, taken in offered]
    small, large = numbers(fields), numbers({**fields, "greater": "yes"})
    assert small["rows"]["arc-arc_length"]["out"] in offered[0][0]
    assert large["rows"]["arc-arc_length"]["out"] in offered[1][0]


def test_two_arcs_as_long_are_told_by_how_far_they_turn() -> None:
    """20 ft along an arc of 7 ft mid-ordinate: R (1 - cos h) = 7 with 2 R h = 20 has two roots under a full turn, by
    bisection here."""

    def over(h: float) -> float:
        return 10 / h * (1 - cos(h)) - 7

    turns = []
    for low, high in ((radians(90), radians(133)), (radians(133), radians(179))):
        for _ in range(60):
            middle = (low + high) / 2
            low, high = (middle, high) if over(low) * over(middle) > 0 else (low, middle)
        turns.append(2 * degrees(low))
    fields = {"arc-arc_length": "20'", "arc-sagitta": "7'"}
    texts = arcs_offered(fields)
    assert [fill for _text, fill, _taken in texts] == ["", "yes"]
    for (text, _fill, _taken), turn in zip(texts, turns, strict=True):
        assert text == f"Turns {show_dms(turn)}"


def test_a_radius_may_come_from_the_other_panel() -> None:
    face = numbers({"arc-diameter": "74'", "arc-chord": "38'"})
    assert face["rows"]["arc-radius"] == {**face["rows"]["arc-radius"], "state": "read", "out": "37' 0\""}
    assert face["lines"]["rest"]["text"] == "Diameter"
    twice = numbers({"arc-diameter": "74'", "arc-radius": "37'"})
    assert twice["sign"] == "refused" and twice["lines"]["rest"]["state"] == "wrong"


POINTS = {f"arc-points-{row}-{axis}": text for row, pair in enumerate((("0", "0"), ("19'", "5'"), ("38'", "0")))
          for axis, text in enumerate(pair)}  # fmt: skip


def test_three_points_settle_the_arc_and_its_hand() -> None:
    face = numbers(POINTS)
    assert face["sign"] == "computed" and face["rows"]["arc-sagitta"]["out"] == "5' 0\""
    assert face["lines"]["hand"] == {"text": "LEFT, turns RIGHT, by the three points", "state": "said", "asked": ""}
    other = numbers({**POINTS, "side": "right"})
    assert other["lines"]["hand"]["text"] == "Points say LEFT, you said RIGHT"
    assert other["lines"]["hand"]["state"] == "wrong"
    beside = numbers({**POINTS, "arc-radius": "40'"})
    assert beside["rows"]["arc-radius"]["state"] == "wrong"
    part = numbers({name: POINTS[name] for name in list(POINTS)[:3]})
    assert part["sign"] == "open" and part["ask"] == ""


LINES = [
    ({}, "hand", "open", "Not answered"),
    ({"side": "left"}, "hand", "said", "LEFT from A facing B, turns RIGHT"),
    ({"start": "one-end", "side": "left"}, "hand", "open", "Not answered"),
    ({"start": "one-end", "turn": "left"}, "hand", "said", "Turns LEFT; the arc is RIGHT of A-B"),
    ({}, "line", "open", "Not answered"),
    ({"drawn_to": "unsure"}, "line", "wrong", "Not sure: ask before staking"),
    ({"drawn_to": "face"}, "line", "said", "Face or edge, pins (taken) on it"),
    ({"drawn_to": "lip", "driven": "hub", "offset": "2'", "toward": "outside"}, "line", "said",
     "Lip of a gutter, hubs 2' 0\" outside it"),
    ({}, "ends", "usual", "A and B, both set"),
    ({"ends-A": "lamp post", "ends-B": "gate pier"}, "ends", "said", "Lamp post, gate pier: both set"),
    ({"start": "corner"}, "ends", "said", "The straights' corner is there"),
    ({"ends-A": "post", "ends-B": "Post"}, "ends", "wrong", "Both landmarks are the same"),
    ({"ends-A": "B", "ends-B": "pier"}, "ends", "wrong", "Landmark A names the other end"),
    ({"found-chord-0": "38' 1-1/4\"", "found-chord-1": "38' 1-1/4\""}, "ends", "said",
     "Reads 38' 1-1/4\", drawing 38' 0\""),
    ({}, "way", "usual", "Nothing entered"),
    ({"centre": "reachable", "ground-0-name": "pond"}, "way", "said", "Center in reach, pond"),
    ({f"ground-{row}-name": name for row, name in enumerate("wxyz")}, "way", "said", "W, x, 2 more"),
    ({}, "fine", "usual", "1/8 in marks, gaps 4' 0\""),
    ({"tolerance": "1/4 in", "spacing": "5'"}, "fine", "said", "1/8 in marks, within 1/4\", gaps 5' 0\""),
    ({"mark": "1/16 in", "levels": "3"}, "fine", "said", "1/16 in marks, rounds: 3"),
    ({}, "method", "usual", "The advised one"),
    ({"method": "ordinates"}, "method", "said", "Ordinates from the long chord (your choice)"),
    ({}, "rest", "usual", "Name, ties, slope, three points"),
    ({"title": "Walk", "fall-along": "2"}, "rest", "said", "Name, slope"),
]  # fmt: skip


@pytest.mark.parametrize(("fields", "key", "state", "text"), LINES)
def test_each_question_says_its_answer(fields: dict[str, str], key: str, state: str, text: str) -> None:
    line = numbers({**TWO, **fields})["lines"][key]
    assert (line["state"], line["text"]) == (state, text)
    assert bool(line["asked"]) == (state in ("open", "wrong"))


def test_one_question_is_asked_at_a_time_the_open_ones_first() -> None:
    assert numbers(TWO)["ask"] == "hand" and numbers(TWO)["state"]["text"] == "2 to answer"
    assert numbers({**TWO, "side": "left"})["ask"] == "line"
    assert numbers({**TWO, "drawn_to": "unsure"})["ask"] == "hand"
    assert numbers({**TWO, "side": "left", "drawn_to": "unsure"})["ask"] == "line"
    assert numbers(SAID)["ask"] == "" and numbers(SAID)["state"]["text"] == say("numbers.state_done")


def test_what_is_wrong_in_a_panel_stands_on_its_line() -> None:
    face = numbers(SAID, wrong={"found-chord-1": "Measure it twice."})
    assert face["lines"]["ends"] == {"text": "Measure it twice.", "state": "wrong", "asked": "Measure it twice."}
    assert face["state"]["sign"] == "stop" and face["ask"] == "ends"


def drawn(fields: Mapping[str, str], focus: str = "", short: bool = False) -> str:
    return numbers(fields, focus=focus, short=short)["drawing"]


@pytest.mark.parametrize("angle", ["2", "61", "120", "179", "181", "250", "340"])
@pytest.mark.parametrize("side", ["", "left", "right"])
@pytest.mark.parametrize("short", [False, True])
def test_every_arc_is_drawn_within_its_frame(angle: str, side: str, short: bool) -> None:
    fields = {"arc-radius": "37'", "arc-central_angle": angle, "side": side}
    for focus in ("", *(f"arc-{name}" for name in ROWS)):
        svg = drawn(fields, focus, short)
        width, height = map(float, re.findall(r'viewBox="0 0 (\d+) (\d+)"', svg)[0])
        for line in re.findall(r' d="([^"]+)"', svg):
            for x, y in re.findall(r"(-?[\d.]+),(-?[\d.]+)", line):
                assert -1 <= float(x) <= width + 1 and -1 <= float(y) <= height + 1, (focus, line)
        for x, y in re.findall(r'x="(-?[\d.]+)" y="(-?[\d.]+)">', svg):
            assert 0 <= float(x) <= width and 10 <= float(y) <= height, focus
        assert len(re.findall("<(?:path|rect|text)", svg)) < MOST_ELEMENTS


def test_the_drawing_says_what_it_shows() -> None:
    assert say("numbers.other_side") in drawn(TWO)
    assert say("numbers.other_side") not in drawn(SAID)
    assert "lamp post" in drawn({**SAID, "ends-A": "lamp post"})
    assert HOT in drawn(SAID, "arc-sagitta") and HOT not in drawn(SAID)
    evil = drawn({**SAID, "ends-B": "<script>x</script>"})
    assert "<script" not in evil
    assert say("numbers.takes_shape") in drawn({}) and HOT not in drawn({}, "arc-chord")


@pytest.mark.parametrize(("side", "ends"), [("left", "AB"), ("right", "BA")])
def test_the_curve_is_up_and_a_stands_as_on_the_cards(side: str, ends: str) -> None:
    svg = drawn({**TWO, "side": side})
    arc = re.findall(r'class="bd-line bd-arc" d="([^"]+)"', svg)[0]
    heights = [float(y) for y in re.findall(r",([\d.]+)", arc)]
    assert min(heights) < heights[0]
    left, right = (float(re.findall(rf'x="([\d.]+)"[^>]*>{end}<', svg)[0]) for end in ends)
    assert left < right


def test_no_layout_is_loaded_for_it() -> None:
    """What the face answers with is there before anything else is imported."""
    program = (
        "import sys; from bowstring.faces.numbers import numbers; numbers({'arc-chord': '9', 'arc-external': '2'})\n"
        "print([name for name in sys.modules if name.startswith(('bowstring.layout', 'bowstring.analysis'))])"
    )
    place = {"PYTHONPATH": os.pathsep.join(sys.path)}
    said = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True, env=place)
    assert said.stdout.strip() == "[]"


def later(fields: dict[str, str]) -> dict[str, tuple[str, str]]:
    told = numbers_later(answering(job_of_fields(fields)), fields)
    return {key: (line["state"], line["text"]) for key, line in told["lines"].items()}


def test_the_layout_names_the_method_that_is_advised_and_whether_it_holds() -> None:
    fields = fields_of_job(DEMO)
    told = numbers_later(answering(DEMO), fields)
    assert told["lines"]["method"]["state"] in ("usual", "said")
    assert told["state"]["sign"] == "computed" and told["ask"] == ""
    state, text = later(SAID)["method"]
    assert state == "usual" and text.endswith("(advised)")
    assert later({**SAID, "method": "tangent"})["method"] == ("said", "Offsets from the tangents (your choice)")


def test_what_the_layout_stops_stands_on_its_line() -> None:
    wall = {"ground-0-name": "wall", "ground-0-stops": "tape"}
    wall["ground-0-outline"] = "18.5 ft, 2 ft; 19.5 ft, 2 ft; 19.5 ft, 3 ft; 18.5 ft, 3 ft"
    blocked = {**SAID, **wall, "method": "halving"}
    state, text = later(blocked)["method"]
    assert state == "wrong" and text == "Halving: can't be done here"
    assert numbers_later(answering(job_of_fields(blocked)), blocked)["ask"] == "method"
    across = {**wall, "ground-0-outline": "18 ft, -1 ft; 20 ft, -1 ft; 20 ft, 1 ft; 18 ft, 1 ft"}
    assert later({**SAID, **across})["method"] == ("wrong", "No method works here")
    found = {"found-chord-0": "38' 2\"", "found-chord-1": "38' 2\"", "found-tape": "level"}
    assert later({**SAID, **found})["ends"][0] == "wrong"
    assert later({**SAID, "tolerance": "3 ft"})["fine"][0] == "wrong"


def test_a_job_without_a_layout_says_why_where_it_is_settled() -> None:
    from bowstring import BadJob

    fields = {**SAID, "offset": "40'", "toward": "centre"}
    with pytest.raises(BadJob) as refusal:
        answering(job_of_fields(fields))
    told = refused_later(fields, refusal.value, "offset")
    assert told["lines"]["line"]["state"] == "wrong" and told["ask"] == "line"
    assert refused_later({}, refusal.value, "arc-chord")["lines"] == {}


def test_every_line_is_there_whatever_is_typed() -> None:
    for fields in ({}, TWO, SAID, POINTS, fields_of_job(DEMO)):
        assert tuple(numbers(fields)["lines"]) == ASKS


def test_where_no_method_works_the_method_s_panel_has_the_button_that_takes_the_way_out() -> None:
    wall = [
        ["46' 1-7/8\"", '6-1/2"'],
        ["48' 1-1/2\"", '6-1/2"'],
        ["48' 1-1/2\"", "-11' 0-7/8\""],
        ["46' 1-7/8\"", "-11' 0-7/8\""],
    ]
    job: Any = {
        "unit": "ft-in",
        "side": "left",
        "drawn_to": "face",
        "arc": {"radius": "62' 6\"", "chord": "52 ft"},
        "driven": "board",
        "ground": [{"name": "wall", "stops": "tape", "outline": wall}],
    }
    told = answering(job)
    (way,) = [way for way in told["ways_out"] if "parallel" in way["fields"]]
    advice = numbers_later(told, {})["advice"]
    assert told["advice"]["method"] is None
    assert "<button" in advice and way["button"] in unescape(advice) and 'data-do="fill"' in advice
    assert "<button" not in numbers_later(answering(DEMO), {})["advice"]
