"""The grades along a line, told: one arc as an arc alone has it, a walk by hand, what is asked and what stops."""

from __future__ import annotations

from typing import Any

import pytest

import bowstring
from bowstring.words import say, speak
from lined_jobs import CREEK, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK

ROW, MORE = 34, 40
"""Letters that a row has room for on a narrow phone."""
GRADE: dict[str, Any] = CREEK["grade"]

GRADES: tuple[dict[str, Any], ...] = (
    {},
    {"slope": 4.9},
    {"slope": 8, "limit": 12},
    {"cross": 2},
    {"cross": 3},
    {"low": "inside"},
    {"from": "0 m", "to": "9 m"},
    {"high": "A"},
    {"slope": 0},
)


def page(job: dict[str, Any], without: tuple[str, ...] = (), **grade: Any) -> Any:
    said = {name: value for name, value in {**job["grade"], **grade}.items() if name not in without}
    answer = bowstring.answering({**job, "grade": said})  # type: ignore[typeddict-item]
    assert answer["lined"] is not None
    return next(one for one in answer["lined"]["pages"] if one["key"] == "grades")


def table(told: Any, title: str) -> list[list[str]]:
    return next(one["rows"] for one in told["tables"] if one["title"] == title)


def test_one_arc_as_a_line_has_the_tops_of_the_arc_alone() -> None:
    alone = bowstring.answering(WALK)["grades"]  # type: ignore[arg-type]
    assert alone is not None and "rows" in alone
    rows = [
        [row["name"], row["outside"]["tight"], row["outside"]["feet"], row["inside"]["tight"], row["inside"]["feet"]]
        for row in alone["rows"]
        if row["kind"] == "stake"
    ]
    told = page(ONE_ARC)
    assert table(told, say("lined.at_stakes", piece=say("lined.arc", number=1))) == rows
    along = table(told, say("grades.table"))
    assert [row[1:] for row in along] == [rows[0][1:], rows[4][1:], rows[-1][1:]]
    slopes = {row["line"]: row["shown"] for row in alone["slopes"]}
    assert table(told, say("lined.slopes")) == [["Arc 1", slopes["outside"], slopes["inside"]]]
    assert alone["judged"][1] in told["lines"] and say("lined.no_banking_right") in told["lines"]


def test_the_creek_walk_by_hand() -> None:
    """2 % of 83.1288 ft along the middle is 1.6626 ft, 1' 7-15/16"; 1.5 % of 6 ft is 0.09 ft, 1-1/16" nearly."""
    told = page(CREEK)
    assert (told["state"], told["short"]) == ("usual", "Up 1' 8\" from start to end")
    rows = table(told, say("grades.table"))
    assert [row[2] for row in rows] == ["0.00", "0.40", "0.78", "1.16", "1.33", "1.49", "1.66"]
    assert [row[4] for row in rows] == ["0.09", "0.49", "0.87", "1.25", "1.42", "1.58", "1.75"]
    assert rows[2][0] == "38' 11-1/4\", mid-arc" and rows[3][0] == "57' 10-1/2\""
    assert table(told, say("lined.slopes"))[1:3] == [["Arc 2", "2.21%", "1.82%"], ["Arc 3", "1.78%", "2.29%"]]
    assert told["lines"][0] == "Steepest: Arc 3, right edge, 2.29%, max 5%: *ok*."
    assert say("lined.no_banking_left") in told["lines"] and say("lined.water_left_start") in told["lines"]
    answer = bowstring.answering(CREEK)  # type: ignore[arg-type]
    assert answer["grades"] == {"running": 0.02, "steepest": pytest.approx(0.48 / 21), "limit": 0.05}


@pytest.mark.parametrize(
    ("without", "grade", "text", "more"),
    [
        (("slope",), {}, "grades.open", "grades.more_slope"),
        (("high",), {}, "grades.open_high", "lined.more_high"),
        (("low",), {}, "grades.open_low", "lined.more_low"),
        ((), {"low": "inside"}, "grades.open_low", "lined.more_low_hand"),
        ((), {"low": "outside"}, "grades.open_low", "lined.more_low_hand"),
    ],
)
def test_what_is_asked(without: tuple[str, ...], grade: dict[str, Any], text: str, more: str) -> None:
    told = page(CREEK, without, **grade)
    assert (told["state"], told["short"], told["more"]) == ("open", say(text), say(more))
    assert told["tables"] == [] and told["panel"] == "slope"


def test_a_line_that_is_open_itself_has_no_tops() -> None:
    line = [*CREEK["line"][:3], {"straight": "8 ft", "kink": "2"}]
    told = page({**CREEK, "line": line})
    assert (told["state"], told["panel"]) == ("open", "line") and told["tables"] == []
    assert page({key: value for key, value in CREEK.items() if key != "width"})["panel"] == "slab"


def test_the_limit_that_stops_has_no_tops_and_says_what_holds() -> None:
    told = page(CREEK, slope=4.5, stops=True)
    assert told["state"] == "stop" and told["tables"] == [] and told["panel"] == "slope"
    assert told["stop"].startswith("Arc 3 runs 5.14% on its right edge, max 5%.")
    assert "Hold the middle to 4.37%, or ask." in told["lines"]  # 5 % x 21/24 = 4.375 %
    warned = page(CREEK, slope=4.5)
    assert (warned["state"], warned["short"]) == ("near", "Arc 3 runs 5.14%: too steep") and warned["tables"]
    assert page(CREEK, slope=4.37)["state"] == "near" and "close" in page(CREEK, slope=4.37)["lines"][0]
    assert page(CREEK, slope=4.38)["short"] == "Arc 3 runs 5.01%: too steep"


@pytest.mark.parametrize(
    ("without", "grade", "text"),
    [
        ((), {"from": "100 ft", "to": "104 ft"}, "lined.clash_top_short"),
        (("slope",), {"from": "100 ft", "to": "98 ft"}, "grades.clash_high_short"),
        ((), {"crown": "1 in"}, "grades.clash_crown_short"),
    ],
)
def test_what_does_not_agree_stops(without: tuple[str, ...], grade: dict[str, Any], text: str) -> None:
    told = page(CREEK, without, **grade)
    assert (told["state"], told["short"]) == ("stop", say(text)) and told["stop"] and told["tables"] == []
    steep = page(CREEK, ("slope", "high"), **{"from": "0 ft", "to": "30 ft"})
    assert steep["state"] == "stop" and "36.09%" in steep["short"]  # 30 ft in 83.1288


def test_both_tops_levels_and_rods() -> None:
    told = page(CREEK, ("slope",), **{"from": "100 ft", "to": "101.66 ft", "instrument": "105 ft"})
    levels, rods = (table(told, say(key, unit="ft")) for key in ("grades.elevations", "grades.rods"))
    assert levels[0][1:] == ["100.00", "100.09"] and levels[-1][1:] == ["101.66", "101.75"]
    assert rods[0][1:] == ["5.00", "4.91"] and rods[-1][1:] == ["3.34", "3.25"]
    assert any("The left form meets both tops" in line for line in told["lines"])
    low = page(CREEK, ("slope",), **{"from": "100 ft", "to": "101.66 ft", "instrument": "101 ft"})
    assert table(low, say("grades.rods"))[-1][1:] == ["-", "-"]
    assert any("stands lower than the top" in line for line in low["lines"])


def test_the_ground_of_a_line_is_left_out_and_that_is_said() -> None:
    told = page(CREEK, ground=[{"stake": "A", "edge": "left", "level": "0 ft"}])
    assert say("lined.no_ground") in told["lines"] and say("lined.no_ground") not in page(CREEK)["lines"]


def test_kinks_twist_the_slab_and_a_crown_has_no_low_hand() -> None:
    told = page(KINKED)
    assert say("lined.at_corners") in told["lines"] and any("twists" in line for line in told["lines"])
    assert not any("twists" in line for line in page(CREEK)["lines"])
    crowned = page(CREEK, ("low",), crown="1/4 in")
    assert crowned["lines"][1] == say("grades.crown_ok", slope="1.39%", limit="1:48")  # 4 x 1/4 in over 6 ft
    assert not any(say(f"lined.no_banking_{hand}") in crowned["lines"] for hand in ("left", "right"))
    assert say("lined.water_crown_start") in crowned["lines"]


@pytest.mark.parametrize("language", ["english", "spanish", "british"])
@pytest.mark.parametrize("job", [CREEK, KINKED, METRIC_LINE])
def test_a_row_has_room_in_every_language(job: dict[str, Any], language: str) -> None:
    speak(language)
    try:
        for grade in GRADES:
            told = page(job, **grade)
            assert len(told["short"]) <= ROW and len(told["more"]) <= MORE, (told["short"], told["more"])
    finally:
        speak("english")
