"""The grades told: the walk of the notes, what is asked, what stops, what is over a limit, metric, tapers, crowns."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import bowstring
from bowstring.words import say
from helping import about
from slab_jobs import WALK

FOOT = 0.3048
GRADE: dict[str, Any] = WALK["grade"]


def asked(grade: dict[str, Any], **job: Any) -> bowstring.Answer:
    return bowstring.answering({**WALK, "grade": grade, **job})  # type: ignore[typeddict-item]


def graded(*, without: tuple[str, ...] = (), job: dict[str, Any] | None = None, **grade: Any) -> bowstring.Answer:
    said = {name: value for name, value in {**GRADE, **grade}.items() if name not in without}
    return asked(said, **(job or {}))


def part_of(answer: bowstring.Answer) -> Any:
    assert answer["grades"] is not None
    return answer["grades"]


def row_of(answer: bowstring.Answer) -> Any:
    return next(row for row in answer["build"] if row["key"] == "grades")


def texts(part: Any, edge: str, kind: str = "stake") -> list[str]:
    return [row[edge]["shown"] for row in part["rows"] if row["kind"] == kind]


def test_the_walk_of_the_notes() -> None:
    """Worked by hand from z = g Rc a - x d with R 62 ft, 5 ft wide, 2 % and 1.5 %."""
    part = part_of(graded())
    outside = (
        '0, 1-3/8" high, 2-7/8" high, 4-1/4" high, 5-5/8" high, 7-1/8" high, 8-1/2" high, 9-7/8" high, 11-3/8" high'
    )
    inside = '7/8" low, 1/2" high, 2" high, 3-3/8" high, 4-3/4" high, 6-1/4" high, 7-5/8" high, 9" high, 10-1/2" high'
    assert texts(part, "outside") == outside.split(", ") and texts(part, "inside") == inside.split(", ")
    feet = [[row[edge]["feet"] for row in part["rows"] if row["kind"] == "stake"] for edge in ("outside", "inside")]
    assert feet[0] == ["0.00", "0.12", "0.24", "0.35", "0.47", "0.59", "0.71", "0.83", "0.95"]
    assert feet[1] == ["-0.08", "0.04", "0.16", "0.28", "0.40", "0.52", "0.63", "0.75", "0.87"]
    outside = (
        '1-1/8" high, 2-1/4" high, 3-3/8" high, 4-1/2" high, 5-5/8" high, 6-3/4" high, 8" high, '
        '9-1/8" high, 10-1/4" high'
    )
    inside = (
        '1/4" high, 1-3/8" high, 2-1/2" high, 3-5/8" high, 4-3/4" high, 5-7/8" high, 7" high, 8-1/8" high, 9-3/8" high'
    )
    assert texts(part, "outside", "joint") == outside.split(", ")
    assert texts(part, "inside", "joint") == inside.split(", ")
    assert {row["line"]: row["shown"] for row in part["slopes"]} == {
        "outside": "1.92%", "center": "2%", "inside": "2.09%"
    }  # fmt: skip
    assert (part["drop"], part["most_drop"], part["hold"], part["lowest"]) == ('3/4"', '1"', 0.0478, ["A_in"])
    assert part["conclusion"] == ['B stands 11-3/8" above A.', 'Inner form 7/8" lower.']


def test_the_row_of_the_walk() -> None:
    row = row_of(graded())
    assert (row["state"], row["text"]) == ("usual", 'Up 11-3/8" from A to B')
    assert row["more"] == 'inner edge 7/8" low, runs 2.09%: ok'
    assert row_of(graded(high="A"))["text"] == 'Down 11-3/8" from A to B'
    assert row_of(graded(slope=0))["text"] == "Level from A to B"


def test_which_rounding_governs_is_said() -> None:
    """-0.075 ft is 0.9 in: 7/8 in on the tape and -0.08 on a rod."""
    part = part_of(graded())
    first = part["rows"][0]["inside"]
    assert first["level"] / FOOT == pytest.approx(-0.075) and (first["shown"], first["feet"]) == ('7/8" low', "-0.08")
    assert say("grades.inches_govern") in part["notes"]


@pytest.mark.parametrize(
    ("without", "grade", "text"),
    [
        (("slope",), {}, "Needs the slope"),
        (("high",), {}, "Which end is high?"),
        (("low",), {}, "Which edge is low?"),
        (("low", "high"), {"slope": 0}, "Which edge is low?"),
    ],
)
def test_what_turns_the_slab_is_asked(without: tuple[str, ...], grade: dict[str, Any], text: str) -> None:
    answer = graded(without=without, **grade)
    assert answer["grades"] is None
    assert (row_of(answer)["state"], row_of(answer)["panel"], row_of(answer)["text"]) == ("open", "slope", text)


def test_where_nothing_turns_it_nothing_is_asked() -> None:
    assert graded(without=("high",), slope=0)["grades"] is not None
    assert graded(without=("low",), cross=0)["grades"] is not None
    assert graded(without=("low",), crown="1 in")["grades"] is not None
    assert graded(without=("slope", "high"), to="9 in")["grades"] is not None


def test_the_slab_is_asked_for_after_the_slope() -> None:
    job = {name: value for name, value in WALK.items() if name != "edge"}
    for left_out, text in (
        (("edge",), "Needs the side"),
        (("width",), "Needs the width"),
        (("width", "edge"), "Needs the width and the side"),
    ):
        said = {name: value for name, value in WALK.items() if name not in left_out}
        row = row_of(bowstring.answering({**said, "grade": GRADE}))  # type: ignore[typeddict-item]
        assert (row["text"], row["panel"]) == (text, "slab")
    assert row_of(bowstring.answering({**job, "grade": {}}))["text"] == "Needs the slope"  # type: ignore[typeddict-item]


def test_a_slope_over_the_limit_is_a_warning_with_a_way_out() -> None:
    """4.9 % on R 59 ft 6 in is 4.9 x 59.5/57 = 5.115 % on R 57 ft; 5 x 57/59.5 = 4.789 % holds it, told 4.78."""
    answer = graded(slope=4.9)
    part = part_of(answer)
    assert (row_of(answer)["state"], row_of(answer)["text"]) == ("near", "Inner edge 5.11%: too steep")
    assert part["rows"] and part["stop"] is None
    assert part["ways"][0] == {"text": "Hold 4.78% on the centerline", "fields": {"grade-slope": "4.78"}}
    assert part["ways"][1]["fields"] == {"grade-limit": "8.33"}
    assert row_of(graded(slope=4.78))["state"] == "near" and "5%: *close*" in " ".join(
        part_of(graded(slope=4.78))["judged"]
    )
    assert row_of(graded(slope=4.9, limit=8.33))["state"] == "usual"


def test_a_slope_over_the_limit_stops_only_where_the_job_says_so() -> None:
    answer = graded(slope=4.9, stops=True)
    part = part_of(answer)
    assert (row_of(answer)["state"], row_of(answer)["panel"]) == ("stop", "slope")
    assert part["stop"]["text"] == "The inner edge runs 5.11%. A walk may run 5% at most, 1 in 20."
    assert part["rows"] == [] and part["conclusion"] == [] and answer["stops"] == []
    assert "4.78%" in part["stop"]["why"]
    assert row_of(graded(slope=4.7, stops=True))["state"] != "stop"


def test_near_the_limit() -> None:
    """4.74 x 59.5/57 = 4.948: within the 1/8 in in 10 ft that a form is set to."""
    row = row_of(graded(slope=4.74))
    assert (row["state"], row["text"]) == ("near", "Inner edge 4.95%, max 5%")


def test_a_slope_that_would_round_to_its_limit_is_told_finer() -> None:
    """Center 5 x 57/59.5 = 4.789915966 % is the limit; a hair over it reads 5.00 to two places."""
    row = row_of(graded(slope=4.78994))
    assert row["text"] == "Inner edge 5.00003%: too steep"


def test_the_cross_slope_and_its_limit() -> None:
    """1:48 is 2.0833 %: 2 % is 0.96 in under 4 ft, 2.2 % is 1.056."""
    assert row_of(graded(cross=2))["text"] == "Cross slope 2%, max 1:48"
    over = graded(cross=2.2)
    assert row_of(over)["text"] == "Cross slope 2.2%: too steep"
    assert part_of(over)["ways"] == [{"text": "Hold 1.5% across", "fields": {"grade-cross": "1.5"}}]
    assert part_of(graded(cross=2.2, stops=True))["stop"]["head"] == "Too steep across"
    assert part_of(graded(cross=0))["conclusion"][1] == "Both forms stand level across."
    assert "1.5% across is assumed" in " ".join(part_of(graded())["notes"])
    assert "across is assumed" not in " ".join(part_of(graded(cross=1.5))["notes"])


def test_a_drop_under_the_level_is_never_told_over_its_most() -> None:
    """2.05 % is 0.984 in under 4 ft, 1 in to the mark; of a limit of 2.06 %, 0.989, no more than 7/8 fits."""
    part = part_of(graded(cross=2.05, cross_limit=2.06))
    assert (part["drop"], part["most_drop"]) == ('7/8"', '7/8"')
    part = part_of(graded(cross=2))  # 0.96 in: 1 in to the mark, and that is the limit, so a finer mark is aimed at
    assert (part["drop"], part["most_drop"]) == ('15/16"', '1"')
    assert any('aim *15/16"*' in line and '1" is the limit' in line for line in part["judged"])
    over = part_of(graded(cross=2.1))  # 1.008 in: both would be 1 in to the mark
    assert (over["drop"], over["most_drop"]) == ("1.01 in", "1.00 in")


def test_a_limit_of_nothing_holds_a_level_line() -> None:
    assert part_of(graded(limit=0))["ways"][0]["fields"] == {"grade-slope": "0"}


@pytest.mark.parametrize(
    ("grade", "corners"),
    [
        ({}, ["A_in"]),
        ({"high": "A"}, ["B_in"]),
        ({"low": "outside"}, ["A_out"]),
        ({"high": "A", "low": "outside"}, ["B_out"]),
        ({"slope": 0}, ["A_in", "B_in"]),
        ({"cross": 0}, ["A_out", "A_in"]),
        ({"cross": 0, "high": "A"}, ["B_out", "B_in"]),
        ({"slope": 0, "cross": 0}, ["A_out", "A_in", "B_out", "B_in"]),
    ],
)
def test_the_low_point_is_named(grade: dict[str, Any], corners: list[str]) -> None:
    part = part_of(graded(**grade))
    assert part["lowest"] == corners
    tops = {
        f"{row['name']}_{edge[:2].replace('ou', 'out')}": row[edge]["level"]
        for row in (part["rows"][0], next(row for row in part["rows"] if row["name"] == "B"))
        for edge in ("outside", "inside")
    }
    low = min(tops.values())
    assert sorted(name for name, top in tops.items() if top < low + 1e-9) == sorted(corners)
    assert part["water"]


def test_the_tops_at_both_ends_give_the_slope() -> None:
    part = part_of(graded(without=("slope", "high"), to="9 in"))
    last = next(row for row in part["rows"] if row["name"] == "B")
    assert last["outside"]["shown"] == '9" high' and part["high"] == "B" and part["hold"] is None
    assert part["running"] == pytest.approx(0.75 / (59.5 * 0.7949616), rel=1e-6)
    over = part_of(graded(without=("slope", "high"), to="2 ft 6 in"))
    assert [way["fields"] for way in over["ways"]] == [{"grade-limit": "8.33"}]
    assert say("grades.change_tops") in over["warnings"]


def test_a_slope_and_tops_that_disagree_are_asked() -> None:
    answer = graded(to="9 in")
    part = part_of(answer)
    assert row_of(answer)["state"] == "stop" and row_of(answer)["panel"] == "slope" and part["rows"] == []
    assert '11-3/8"' in part["stop"]["text"] and '9"' in part["stop"]["text"] and '2-3/8"' in part["stop"]["why"]
    for way in part["ways"]:
        after = {**GRADE, "to": "9 in", **{name.removeprefix("grade-"): text for name, text in way["fields"].items()}}
        settled = asked({name: text for name, text in after.items() if text != ""})
        assert part_of(settled)["stop"] is None
    assert part_of(graded(to="11-3/8 in"))["stop"] is None  # within a mark: the tops are met


@pytest.mark.parametrize(
    ("without", "grade", "head"),
    [
        (("slope",), {"high": "A", "to": "9 in"}, "High end and tops disagree"),
        ((), {"crown": "1 in"}, "Crown or cross slope?"),
        (("low",), {"crown": "1 in", "cross": 1}, "Crown or cross slope?"),
        (("slope", "high"), {"to": "100.5 ft"}, "Tops too far apart"),
    ],
)
def test_what_does_not_agree_is_asked(without: tuple[str, ...], grade: dict[str, Any], head: str) -> None:
    answer = graded(without=without, **grade)
    part = part_of(answer)
    assert row_of(answer)["state"] == "stop" and part["stop"]["head"] == head
    assert part["rows"] == [] and all(part["stop"].values()) and row_of(answer)["text"] and row_of(answer)["more"]


def test_a_crown_by_the_quarter_rule() -> None:
    """1-1/4 in in the middle: 3/4 of it, 15/16 in, at the quarter points; 4 x 1.25/60 = 8.33 % at the edges."""
    part = part_of(graded(without=("low",), crown="1-1/4 in"))
    assert [row["shown"] for row in part["across"]] == ["0", '1"', '1-1/4"', '1"', "0"]
    assert [row["height"] / 0.0254 for row in part["across"]] == pytest.approx([0, 0.9375, 1.25, 0.9375, 0])
    assert part["state"] == "near" and "8.33%" in part["short"] and part["lowest"] == ["A_out", "A_in"]
    assert part["ways"][0]["fields"] == {"grade-crown": '1/4"'}
    mended = part_of(graded(without=("low",), crown=part["ways"][0]["fields"]["grade-crown"]))
    assert not any("too steep" in text for text in mended["judged"])
    assert all(row["outside"]["level"] == pytest.approx(row["inside"]["level"]) for row in part["rows"])


def test_elevations_rod_and_ground() -> None:
    ground = [{"stake": "A", "edge": "outside", "level": "99.9 ft"}, {"stake": "M", "edge": "inside", "level": "99 ft"}]
    part = part_of(graded(**{"from": "100 ft"}, instrument="104.5 ft", ground=ground))
    first, middle = part["rows"][0], next(row for row in part["rows"] if row["name"] == "M")
    assert part["has"] == ["feet", "elevation", "rod", "dig"]
    assert (first["outside"]["elevation"], first["inside"]["elevation"]) == ("100.00", "99.93")
    assert (first["outside"]["rod"], first["outside"]["rod_marks"]) == ("4.50", "4' 6\"")
    # 99.9 - (100 - 4/12) = 0.2333 ft = 2.8 in; 99 - (100.398 - 4/12) = -1.0647 ft = 12.78 in
    assert first["outside"]["dig"] == 'cut 2-3/4"' and middle["inside"]["dig"] == "fill 1' 0-3/4\""
    assert first["outside"]["shown"] == "0" and say("grades.no_base") in part["asks"]
    based = part_of(graded(**{"from": "100 ft"}, ground=ground, job={"slab": {"thickness": "4 in", "base": "4 in"}}))
    assert based["rows"][0]["outside"]["dig"] == 'cut 6-3/4"' and say("grades.to_base") in based["base"]


def test_what_is_missing_or_cannot_be_is_said() -> None:
    ground = [{"stake": "X", "edge": "outside", "level": "0 ft"}, {"stake": "A", "edge": "outside", "level": "20 ft"}]
    part = part_of(graded(ground=ground, instrument="6 in", job={"slab": {}}))
    assert part["asks"] == [
        say("grades.needs_thickness"),
        say("grades.no_such_stake", stakes="X"),
        say("grades.ground_far"),
        say("grades.instrument_low", stake="R3"),
    ]
    assert "dig" not in part["has"] and part["base"] == []
    assert next(row for row in part["rows"] if row["name"] == "B")["outside"]["rod"] == ""
    assert say("grades.instrument_far") in part_of(graded(instrument="104 ft"))["asks"]


def test_metric_is_told_in_millimetres() -> None:
    """R 19 m, 1.5 m wide: 2 % of 18.25 x 0.7949616 is 290.2 mm, 1.5 % of 1.5 m 22.5 mm."""
    job = {"unit": "m", "arc": {"radius": "19 m", "central_angle": 45.54795}, "width": "1.5 m",
           "slab": {"thickness": "100 mm"}, "joints": {}}  # fmt: skip
    part = part_of(graded(job=job))
    assert part["has"] == [] and texts(part, "outside")[-1] == "290 mm high" and texts(part, "inside")[0] == "23 mm low"
    assert (part["drop"], part["most_drop"]) == ("18 mm", "25 mm")
    assert "1.2-m level" in " ".join(part["judged"])
    levels = part_of(graded(job=job, **{"from": "100 m"}, instrument="101.4 m"))
    assert levels["rows"][0]["outside"]["elevation"] == "100.000" and levels["rows"][0]["outside"]["rod"] == "1.400"


def test_no_inch_is_shown_with_a_minus() -> None:
    part = part_of(graded(high="A", slope=4))
    shown = [row[edge]["shown"] for row in part["rows"] for edge in ("outside", "inside")]
    assert not any(text.startswith("-") for text in shown) and sum(text.endswith(" low") for text in shown) > 15
    for row in part["rows"]:
        for top in (row["outside"], row["inside"]):
            assert top["low"] == top["shown"].endswith(" low") and (not top["low"] or top["level"] < 0)


def test_a_taper_goes_by_the_width_at_each_place() -> None:
    part = part_of(graded(job={"slab": {"thickness": "4 in", "end_width": "8 ft"}}))
    last = next(row for row in part["rows"] if row["name"] == "B")
    across = last["outside"]["level"] - last["inside"]["level"]
    assert across == pytest.approx(0.015 * 8 * FOOT) and say("grades.by_width") in part["notes"]
    assert part["conclusion"][1] == 'Inner form 7/8" lower at A, 1-1/2" at B.'
    assert part["more"] == "inner edge low, runs 2.09%: ok"  # no one number holds at both ends
    assert row_of(graded(job={"slab": {"end_width": "70 ft"}}))["text"] == "No inner edge to grade"


def by_tops(part: Any, edge: str, first: str, last: str, length: float) -> float:
    tops = {row["name"]: row[edge]["level"] for row in part["rows"]}
    return abs(tops[last] - tops[first]) / length


@settings(max_examples=25, deadline=None)
@given(
    st.floats(10, 200), st.floats(0.2, 2.8), st.floats(2, 9), st.floats(0, 8), st.sampled_from(["A", "B"]),
    st.sampled_from(["outside", "inside", "centre"]),
)  # fmt: skip
def test_the_inner_slope_stated_is_that_of_the_tops_printed(
    radius: float, angle: float, width: float, slope: float, high: str, edge: str
) -> None:
    """To 0.01 %: the climb from A to M of the inner form over its own length of arc."""
    arc = {"radius": f"{radius:.3f} ft", "arc_length": f"{radius * angle:.3f} ft"}
    job = {"arc": arc, "width": f"{width:.2f} ft", "edge": edge}
    answer = graded(job=job, slope=round(slope, 3), high=high)
    part = part_of(answer)
    inner = float(arc["radius"].split()[0]) - float(f"{width:.2f}") * {"outside": 1, "inside": 0, "centre": 0.5}[edge]
    length = inner * FOOT * answer["arc"]["central_angle"] * 3.141592653589793 / 360
    stated = next(row for row in part["slopes"] if row["line"] == "inside")
    printed = float(stated["shown"].removesuffix("%")) / 100
    assert printed == pytest.approx(by_tops(part, "inside", "A", "M", length), abs=0.5001e-4)


def test_every_state_speaks_every_language() -> None:
    from bowstring.words import speak

    for language in ("english", "british", "spanish"):
        speak(language)
        try:
            for grade in (
                {},
                {"slope": 4.9},
                {"slope": 4.9, "stops": True},
                {"to": "9 in"},
                {"crown": "1 in"},
                {"cross": 2},
            ):
                with about(language, grade):
                    answer = graded(**grade)
                    assert row_of(answer)["text"] and part_of(answer)["cautions"]
        finally:
            speak("english")


@pytest.mark.parametrize(("side", "outer"), [("left", "left"), ("right", "right")])
def test_a_hand_names_the_edge_that_who_walks_along_has_there(side: str, outer: str) -> None:
    """The edge on the curve's own hand is its outer one: the same tops, whichever name it is given by."""
    inner = "right" if outer == "left" else "left"
    for named, word in ((outer, "outside"), (inner, "inside")):
        assert part_of(graded(low=named, job={"side": side})) == part_of(graded(low=word, job={"side": side}))
    assert part_of(graded(low=outer, job={"side": side}))["low"] == "outside"


def test_a_hand_says_nothing_of_a_curve_whose_own_hand_is_not_known() -> None:
    without = {key: value for key, value in WALK.items() if key != "side"}
    for low in ("left", "right"):
        answer = bowstring.answering({**without, "grade": {**GRADE, "low": low}})  # type: ignore[typeddict-item]
        assert answer["side"] is None and answer["grades"] is None
        assert row_of(answer)["text"] == say("grades.open_low")
    assert part_of(bowstring.answering({**without, "grade": {**GRADE, "low": "inside"}}))["low"] == "inside"  # type: ignore[typeddict-item]


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_ground_is_measured_at_an_edge_by_its_hand_too(side: str) -> None:
    def digs(outer: str, inner: str) -> Any:
        ground = [{"stake": "A", "edge": outer, "level": "0.2 ft"}, {"stake": "M", "edge": inner, "level": "-0.4 ft"}]
        part = part_of(graded(ground=ground, job={"side": side}))
        return [(row[edge]["dig"]) for row in part["rows"] for edge in ("outside", "inside")]

    named = digs("outside", "inside")
    assert sum(map(bool, named)) == 2
    assert digs(*(("left", "right") if side == "left" else ("right", "left"))) == named


def test_the_ground_by_hand_waits_for_the_hand_of_the_curve() -> None:
    without = {key: value for key, value in WALK.items() if key != "side"}
    ground = [{"stake": "A", "edge": "left", "level": "0.2 ft"}]
    part = part_of(bowstring.answering({**without, "grade": {**GRADE, "ground": ground}}))  # type: ignore[typeddict-item]
    assert say("grades.ground_hand") in part["asks"]
    assert not any(row[edge]["dig"] for row in part["rows"] for edge in ("outside", "inside"))
