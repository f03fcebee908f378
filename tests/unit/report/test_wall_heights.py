"""A wall's footing and its dig, from its top down; cut and fill go to the underside of the footing, not of the wall."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence
from html import unescape
from typing import Any

import pytest

from bowstring import BadJob, answer, read_link, write_link
from bowstring.faces.build import build_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.sheet.text import sheet_text
from bowstring.words import say, speak
from helping import answer_to
from radius_wall import WALL

FOOTED = {"poured": "wall", "thickness": "3 ft 6 in", "footing_width": "24 in", "footing_depth": "12 in"}
AT_A = {"stake": "A", "edge": "outside", "level": "102 ft"}
LEVELS = {"from": "104.50 ft", "instrument": "109 ft", "ground": [AT_A]}


@pytest.fixture(autouse=True)
def _english() -> Iterator[None]:
    yield
    speak("english")


def answered(slab: dict[str, Any] | None = None, without: Sequence[str] = (), **grade: Any) -> Any:
    lies = {key: value for key, value in {**FOOTED, **(slab or {})}.items() if key not in without}
    tops = {key: value for key, value in {**WALL["grade"], **grade}.items() if key not in without}
    return answer_to({**WALL, "slab": lies, "grade": tops})


def seen(html: str) -> str:
    """A page's text."""
    return unescape(re.sub(r"<[^>]+>", "", html)).replace("\N{NO-BREAK SPACE}", " ")


def dug(answer: Any) -> list[tuple[str, str, str]]:
    return [(row["name"], row["outside"]["dig"], row["inside"]["dig"]) for row in answer["grades"]["digs"]]


def test_the_cut_goes_to_the_underside_of_the_footing() -> None:
    """By hand: 104.50 less 3.50 of wall and 1.00 of footing is 100.00; the ground at 102.00 is cut 2.00."""
    answer = answered(**LEVELS)
    assert dug(answer) == [("A", "cut 2' 0\"", "")]
    assert say("walled.no_base") in answer["grades"]["asks"] and "slab" not in " ".join(answer["grades"]["asks"])
    for text in (seen(build_html(answer, "grades")), sheet_text(answer)):
        assert "cut 2' 0\"" in text and "cut 1' 0" not in text


def test_a_base_is_dug_too() -> None:
    """4 in of base under it: to 99.667, cut 2 ft 4 in; the ground at 99.00 is filled 8 in."""
    low = {"stake": "M", "edge": "inside", "level": "99 ft"}
    answer = answered({"base": "4 in"}, **{**LEVELS, "ground": [AT_A, low]})
    assert dug(answer) == [("A", "cut 2' 4\"", ""), ("M", "", 'fill 8"')]
    assert answer["grades"]["base"] == [say("walled.to_base")]
    assert (
        "3' 6\"* below top of wall, its underside 4' 6\". Bottom of dig *4' 10\"* below" in answer["grades"]["below"][0]
    )
    grounds = [top["ground"] for row in answer["grades"]["digs"] for top in (row["outside"], row["inside"])]
    assert grounds == ["102.00", "", "", "99.00"]
    for text in (seen(build_html(answer, "grades")), sheet_text(answer)):
        assert "102.00" in text and "99.00" in text


def test_no_cut_is_told_before_the_footing_is() -> None:
    answer = answered(without=("footing_width", "footing_depth"), **LEVELS)
    assert dug(answer) == [] and say("walled.needs_footing") in answer["grades"]["asks"]
    assert answer["grades"]["below"][0] == "Bottom of the wall *3' 6\"* below the top."
    assert not re.search(r"(cut|fill) \d", seen(build_html(answer, "grades"))) and "bottom of dig" not in " ".join(
        answer["grades"]["below"]
    )
    assert answered(without=("thickness",), **LEVELS)["grades"]["asks"][0] == say("walled.needs_height")


def test_a_wall_that_widens_and_one_that_climbs_are_cut_so_too() -> None:
    """The top at B, 1 ft higher, is cut a foot less there: 105.50 - 4.50 = 101.00 under ground at 102.00."""
    at_b = {**AT_A, "stake": "B"}
    wide = answered({"end_width": "12 in"}, **{**LEVELS, "ground": [AT_A, at_b]})
    assert dug(wide) == [("A", "cut 2' 0\"", ""), ("B", "cut 2' 0\"", "")]
    up = answered(without=("slope",), **{**LEVELS, "to": "105.50 ft", "ground": [AT_A, at_b]})
    assert dug(up) == [("A", "cut 2' 0\"", ""), ("B", "cut 1' 0\"", "")]
    assert up["grades"]["rows"] and say("walled.runs_with_top") in up["grades"]["below"]
    assert up["grades"]["levels"]["heads"][0] == say("walled.at_A")


def test_a_level_wall_says_its_heights_once() -> None:
    """By hand: 104.50 - 3.50 = 101.00, less 1.00 is 100.00; the rod from 109.00 reads 4.50, 8.00 and 9.00."""
    part = answered(**LEVELS)["grades"]
    assert part["rows"] == [] and part["conclusion"] == [say("walled.level_top")]
    assert part["below"] == [
        "Top of footing *3' 6\"* below top of wall, bottom of dig *4' 6\"* below top of wall.",
    ]
    assert part["levels"] == {
        "heads": ["All along", "below top of wall", "elevation, ft", "rod; HI 109.00"],
        "rows": [["Top of wall", "0", "104.50", "4.50 (4' 6\")"],
                 ["Top of footing", "3' 6\"", "101.00", "8.00 (8' 0\")"],
                 ["Bottom of dig", "4' 6\"", "100.00", "9.00 (9' 0\")"]],
    }  # fmt: skip
    assert answered()["grades"]["below"] == part["below"] and answered()["grades"]["levels"] is None
    page = build_html(answered(**LEVELS), "grades")
    assert page.count("104.50") == 1 and "101.00" in page
    assert "101.00" in sheet_text(answered(**LEVELS))


def test_the_ground_may_lie_as_far_under_a_high_wall_as_it_is_high() -> None:
    """A wall of 5 ft 6 in with the ground a foot over its footing's underside is no slip of levels."""
    high = {"thickness": "5 ft 6 in"}
    near = answered(high, **{"from": "104.50 ft"}, ground=[{**AT_A, "level": "99 ft"}])["grades"]
    assert say("grades.ground_far") not in near["asks"]
    far = answered(high, **{"from": "104.50 ft"}, ground=[{**AT_A, "level": "90 ft"}])["grades"]
    assert say("grades.ground_far") in far["asks"]


def test_a_slab_is_cut_to_its_own_underside_still() -> None:
    walk = answer_to({**WALL, "width": "5 ft", "slab": {"thickness": "4 in", "footing_width": "1 ft",
                      "footing_depth": "1 ft"}, "grade": {"slope": 0, "cross": 0, **LEVELS}})  # fmt: skip
    assert walk["grades"]["below"] == [] and say("grades.no_base") in walk["grades"]["asks"]
    # 104.50 - 4/12 = 104.1667, over 102.00 by 2 ft 2 in
    assert dug(walk) == [("A", "fill 2' 2\"", "")]


@pytest.mark.parametrize("language", ["spanish", "british"])
def test_every_line_is_said_in_each_language(language: str) -> None:
    speak(language)
    part = answered({"base": "4 in"}, **LEVELS)["grades"]
    told = " ".join(
        [*part["below"], *part["levels"]["heads"], *(text for row in part["levels"]["rows"] for text in row)]
    )
    assert "101.00" in told and "109.00" in told and "walled." not in told


def test_a_wall_along_a_line_says_its_heights_and_no_cut() -> None:
    """By hand as above; a line's ground isn't told yet, so nothing says to what it is cut."""
    line = [{"straight": "10 ft"}, {"arc": WALL["arc"], "turn": "right"}]
    job = {key: value for key, value in WALL.items() if key not in ("arc", "side")} | {"line": line, "edge": "left"}
    slab = {**FOOTED, "base": "4 in"}
    level = answer_to({**job, "slab": slab, "grade": {**WALL["grade"], **LEVELS}})
    page = next(page for page in level["lined"]["pages"] if page["key"] == "grades")
    told = " ".join(page["lines"])
    assert (
        "Bottom of dig *4' 10\"* below top of wall" in told
        and "bottom of dig 99.67" in told
        and say("walled.to_base") not in told
    )
    up = answer_to({**job, "slab": slab, "grade": {"slope": 2, "high": "B", "cross": 0, "from": "104.50 ft"}})
    told = " ".join(next(page for page in up["lined"]["pages"] if page["key"] == "grades")["lines"])
    assert "bottom of dig" not in told and say("walled.runs_with_top") in told


@pytest.mark.parametrize(("off", "near"), [("4 ft", "2' 4\""), ("5 ft", ""), ("3 ft", "1' 4\"")])
def test_stakes_nearer_to_the_cut_than_it_is_deep_are_told(off: str, near: str) -> None:
    """By hand: a 24-in footing under the middle of 8 in reaches 8 in past the outer face, dug 12 in more: 20 in off the
    line. Hubs 48, 60 and 36 in off it stand 28, 40 and 16 in from a cut of 102 - (104.5 - 3.5 - 1) = 2 ft; 28 in is
    clear of 24, not of the 3 ft that 103.00 makes. Common practice, no source: as far back as it is deep."""
    high = {"stake": "A", "edge": "outside", "level": "103 ft"}
    job = {**WALL, "offset": off, "toward": "outside", "driven": "hub", "slab": FOOTED}
    answer = answer_to({**job, "grade": {**WALL["grade"], **LEVELS, "ground": [high]}})
    made, row = answer["grades"], next(row for row in answer["build"] if row["key"] == "grades")
    told = f"Your stakes stand {near} from a cut 3' 0\" deep. Usual is as far back as it is deep."
    assert made["warnings"] == ([told] if near else []) and made["state"] == row["state"] == (
        "near" if near else "usual"
    )
    assert (row["more"] == f"stakes {near} from a cut 3' 0\" deep") is bool(near)
    page, paper = seen(build_html(answer, "grades")), seen(forms_sides(answer, "May 31"))
    for text, after in ((page, "Top of footing"), (paper, "Dig 1' 0\" past A and B")):
        assert (told in text) is bool(near) and (not near or text.index(told) < text.index(after))
    low = answer_to({**job, "grade": {**WALL["grade"], **LEVELS}})["grades"]["warnings"]
    assert any("from a cut 2' 0\"" in text for text in low) == (off == "3 ft")
    assert answered(**LEVELS)["grades"]["warnings"] == []  # they stand in the dig


@pytest.mark.parametrize(("ground", "off"), [
    ([], 7.0),  # as deep as it is dug below the top: 20 in and 4 ft 6 in are 6 ft 2 in
    ([{**AT_A, "level": "103 ft"}], 5.0),  # 20 in and 3 ft
    ([{**AT_A, "level": "100.5 ft"}], 3.0),  # a foot clear is more than 6 in
    ([{**AT_A, "edge": "inside", "level": "102.5 ft"}], 5.0),  # only the other side is known: 2 ft 6 in there
])  # fmt: skip
def test_the_distance_that_is_offered_keeps_that_caution_quiet(ground: list[dict[str, str]], off: float) -> None:
    """By hand as above, in whole feet."""
    job = {**WALL, "slab": FOOTED, "grade": {**WALL["grade"], **LEVELS, "ground": ground}}
    way = answer_to(job)["in_dig"]["ways"][0]["fields"]
    assert way == {"offset": f"{off:.0f}' 0\"", "toward": "outside"}
    settled = answer_to({**job, **way, "driven": "hub"})
    assert settled["in_dig"] is None and settled["grades"]["warnings"] == []
    fields = fields_of_job(job)  # type: ignore[arg-type]
    later = json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields})))
    assert f"Set them {off:.0f}' 0\" outside" in seen(later["slab"])


RODS = [{"stake": name, "edge": "outside", "level": level} for name, level in (("A", "4.2 ft"), ("M", "5.1 ft"))]


@pytest.mark.parametrize(("grade", "told"), [
    ({"ground": RODS}, "A outer is 4.20: over 30' 0\" from the tops. These look like rod readings: mark them so, "
                       "with the HI."),
    ({"ground": RODS, "ground_by": "rod", "instrument": "9.20 ft"},
     "The HI is 9.20, the top at A 104.50. Measure both from one benchmark."),
    ({"ground": [AT_A, RODS[1]]}, "M outer is 5.10: over 30' 0\" from the tops."),  # one of them is enough
    ({"ground": [{**AT_A, "level": "702 ft"}]}, "The top at A is 104.50. Measure both from one benchmark."),
    ({"ground": [AT_A], "from": None, "instrument": None}, "The top at A has no elevation: type it first."),
])  # fmt: skip
def test_heights_that_no_ground_has_stop_the_tops(grade: dict[str, Any], told: str) -> None:
    """Rod readings typed as heights made a fill of a hundred feet. 30 ft: common practice, no source."""
    grade = {key: value for key, value in {**WALL["grade"], **LEVELS, **grade}.items() if value is not None}
    answer = answer_to({**WALL, "slab": FOOTED, "grade": grade})
    part, row = answer["grades"], next(row for row in answer["build"] if row["key"] == "grades")
    assert part["state"] == row["state"] == "stop" and row["panel"] == "slope" and told in part["stop"]["text"]
    assert part["digs"] == [] and part["rows"] == [] and row["text"] == say("grades.far_head")
    for text in (seen(build_html(answer, "grades")), seen(forms_sides(answer, "May 31")), sheet_text(answer)):
        assert told in " ".join(text.split()) and not re.search(r"(fill|cut) \d", text)
    fields = fields_of_job({**WALL, "slab": FOOTED, "grade": grade, "offset": "9 ft", "toward": "outside"})  # type: ignore[arg-type]
    for bar in (
        json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields})))["state"],
        json.loads(Calls().handle("face", json.dumps({"fields": fields, "face": "paper", "panel": ""})))["state"],
    ):
        assert (bar["sign"], bar["text"], bar["panel"]) == ("ask", say("grades.far_head"), "slope")


def test_a_slabs_heights_are_held_to_it_too_and_honest_ground_isnt() -> None:
    walk = {**WALL, "width": "5 ft", "slab": {"thickness": "4 in"}}
    grade = {"slope": 0, "cross": 0, **LEVELS}
    assert answer_to({**walk, "grade": {**grade, "ground": RODS}})["grades"]["stop"]["head"] == say("grades.far_head")
    pad = {**walk, "slab": {"thickness": "4 in", "fills": True}}
    pad = {key: value for key, value in pad.items() if key not in ("width", "edge")}
    filled = answer_to({**pad, "grade": {**grade, "ground": RODS}})["grades"]
    assert filled["stop"]["head"] == say("grades.far_head") and filled["ways"] == [] and filled["digs"] == []
    steep = [{**AT_A, "level": "133 ft"}, {**AT_A, "stake": "M", "level": "75.5 ft"}]
    assert answered(**{**LEVELS, "ground": steep})["grades"]["stop"] is None


def test_ground_by_the_rod_is_the_ground_by_its_heights() -> None:
    """The instrument's height less each reading, subtracted here by hand; nothing else of the answer differs."""
    hi, levels = 109.0, [float(read["level"].split()[0]) for read in RODS]
    grade = {**WALL["grade"], **LEVELS, "instrument": f"{hi} ft"}
    rods = {**WALL, "slab": FOOTED, "grade": {**grade, "ground": RODS, "ground_by": "rod"}}
    heights = [{**read, "level": f"{hi - level:.2f} ft"} for read, level in zip(RODS, levels, strict=True)]
    by_rod = answer_to(rods)["grades"]
    by_height = answer_to({**rods, "grade": {**grade, "ground": heights}})["grades"]
    assert by_rod["stop"] is None and by_rod["rows"] == by_height["rows"] and by_rod["digs"] == by_height["digs"] != []
    fields = fields_of_job(rods)  # type: ignore[arg-type]
    assert fields["grade-ground_by"] == "rod" and job_of_fields(fields)["grade"]["ground_by"] == "rod"
    assert read_link(write_link(rods))["grade"] == rods["grade"]
    no_ground = {name: text for name, text in fields.items() if name != "grade-ground"}
    assert "ground_by" not in job_of_fields(no_ground)["grade"], "left there, it says nothing of no reading"


@pytest.mark.parametrize(("grade", "field"), [
    ({"instrument": None}, "grade.instrument"),
    ({"ground": [{**AT_A, "level": "-4.20 ft"}]}, "grade.ground[0].level"),
    ({"ground_by": "staff"}, "grade.ground_by"),
])  # fmt: skip
def test_rod_readings_need_the_instrument_and_have_no_minus(grade: dict[str, Any], field: str) -> None:
    all_of_it = {**WALL["grade"], **LEVELS, "ground": RODS, "ground_by": "rod", **grade}
    kept = {key: value for key, value in all_of_it.items() if value is not None}
    with pytest.raises(BadJob) as refused:
        answer({**WALL, "slab": FOOTED, "grade": kept})
    assert refused.value.field == field
