"""After something was got at a stake the sheet's figures are those of the stakes as they stand."""

from __future__ import annotations

import html
from itertools import pairwise
from math import atan2, hypot

import pytest

from bowstring import BadJob
from helping import about, answer_to

FOOT = 0.3048
PLAIN = {"arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "drawn_to": "face", "side": "left", "levels": 3}
ORDINATES = {key: value for key, value in PLAIN.items() if key != "levels"} | {"method": "ordinates"}
ASIDE = {"got": [{"stake": "M", "half_chords": ["19 ft 9 in", "19 ft 8 in"]}]}


def test_along_is_the_arc_to_where_a_stake_really_stands() -> None:
    told = answer_to({**PLAIN, **ASIDE})
    arc = told["staked"]
    centre = arc["chord"] / 2, arc["sagitta"] - arc["radius"]  # type: ignore[index]
    start = atan2(-centre[1], -centre[0])
    for stake in told["stakes"]:  # type: ignore[union-attr]
        angle = start - atan2(stake["y"] - centre[1], stake["x"] - centre[0])
        assert stake["along"] == pytest.approx(angle * arc["radius"], abs=1e-9)  # type: ignore[index]
    nominal = {stake["name"]: stake["along"] for stake in answer_to(PLAIN)["stakes"]}  # type: ignore[union-attr]
    moved = {stake["name"]: stake["along"] - nominal[stake["name"]] for stake in told["stakes"]}  # type: ignore[union-attr]
    assert moved["M"] > 0.01 * FOOT and moved["Q1"] > 0.01 * FOOT and moved["A"] == moved["B"] == 0


def test_the_gap_told_is_the_widest_that_is_left() -> None:
    told = answer_to({**PLAIN, **ASIDE})
    stakes = told["stakes"]
    widest = max(hypot(a["x"] - b["x"], a["y"] - b["y"]) for a, b in pairwise(stakes))  # type: ignore[arg-type]
    assert told["gap"]["straight"] == pytest.approx(widest, abs=1e-12)  # type: ignore[index]
    assert widest > answer_to(PLAIN)["gap"]["straight"]  # type: ignore[index]
    radius = told["staked"]["radius"]  # type: ignore[index]
    rise = radius - (radius**2 - widest**2 / 4) ** 0.5
    assert told["gap"]["rise"] == pytest.approx(rise, rel=1e-9)  # type: ignore[index]


def test_a_tip_that_slid_aside_is_told_with_its_side_and_amount() -> None:
    """Half chords 237 and 236 in over a string of 456 in: (237² - 236²)/(2 x 456) = 0.519 in toward B."""
    (text,) = [text for text in answer_to({**PLAIN, **ASIDE})["cautions"] if "off its string's midpoint" in text]
    assert "is 1/2 in off" in text and "toward B" in text
    other = {"got": [{"stake": "M", "half_chords": ["19 ft 8 in", "19 ft 9 in"]}]}
    (text,) = [text for text in answer_to({**PLAIN, **other})["cautions"] if "off its string's midpoint" in text]
    assert "toward A" in text


@pytest.mark.parametrize(("longer", "told"), [("19 ft 8-3/4 in", True), ("19 ft 8-5/8 in", False)])
def test_a_tip_that_slid_aside_is_told_from_a_mark_on(longer: str, told: bool) -> None:
    """Beside 236-1/2 in over 456 in: 1/4 in more slides 0.1296 in, over the mark of 1/8 in; 1/8 in more 0.065 in."""
    answer = answer_to({**PLAIN, "got": [{"stake": "M", "half_chords": [longer, "19 ft 8-1/2 in"]}]})
    assert any("off its string's midpoint" in text for text in answer["cautions"]) is told


def test_equal_half_chords_slid_nowhere() -> None:
    even = {"got": [{"stake": "M", "half_chords": ["19 ft 9 in", "19 ft 9 in"]}]}
    assert not [text for text in answer_to({**PLAIN, **even})["cautions"] if "off its string's midpoint" in text]


@pytest.mark.parametrize(
    ("sagitta", "told"),
    [
        ("5 ft 2-3/4 in", "1/4 in inside the arc"),
        ("5 ft 3-1/4 in", "1/4 in outside the arc"),
        ("5 ft 3 in", "exactly on the arc"),
    ],
)
def test_a_miss_is_told_by_its_side_and_never_by_a_sign(sagitta: str, told: str) -> None:
    """M stands over the chord's middle, so it is off the arc by as much as its mid-ordinate is off 5 ft 3 in."""
    answer = answer_to({**PLAIN, "got": [{"stake": "M", "sagitta": sagitta}]})
    (step,) = [step for step in answer["steps"] if step["stake"] == "M"]  # type: ignore[union-attr]
    (caution,) = [text for text in answer["cautions"] if "Stake M" in text]  # type: ignore[union-attr]
    assert told in step["text"] and told in caution


def test_a_stake_s_name_is_read_in_small_letters_too() -> None:
    small = answer_to({**PLAIN, "got": [{"stake": "m", "half_chords": ["19 ft 9 in", "19 ft 8 in"]}]})
    assert small["stakes"] == answer_to({**PLAIN, **ASIDE})["stakes"]


@pytest.mark.parametrize(
    ("row", "field", "words"),
    [
        ({"stake": "M"}, "got[0].sagitta", "Nothing measured is given"),
        ({"stake": "M", "sagitta": "5 ft", "half_chords": ["19 ft", "19 ft"]}, "got[0].sagitta", "not both"),
        ({"stake": "M", "sagitta": "35 ft"}, "got[0].sagitta", "nothing square off"),
    ],
)
def test_what_is_wrong_with_a_row_is_told_at_its_field(row: dict[str, object], field: str, words: str) -> None:
    with pytest.raises(BadJob) as refused:
        answer_to({**PLAIN, "got": [row]})
    assert refused.value.field == field and words in str(refused.value)


def test_the_short_table_has_each_string_s_own_numbers() -> None:
    from bowstring.sheet.blocks import Table
    from bowstring.sheet.outline import outline

    told = answer_to({**PLAIN, **ASIDE})
    (table,) = [
        block
        for section in outline(told)
        if section.key == "short"
        for block in section.blocks
        if isinstance(block, Table)
    ]
    assert ", ".join(row[0] for row in table.rows).split(", ") == ["M", "Q1", "Q2", "R1", "R2", "R3", "R4"]
    steps = {step["measures"][1]["to"]: step for step in told["steps"] if step["half_chord"]}  # type: ignore[union-attr]
    for names, _strings, *numbers in table.rows:
        for name in names.split(", "):
            step = steps[name]
            assert numbers == [step["measures"][0]["shown"], step["taped"], step["half_chord"]]
    assert table.rows[0][3].startswith("is at")


def test_strings_that_read_the_same_after_something_was_got_share_a_row() -> None:
    from bowstring.sheet.blocks import Table
    from bowstring.sheet.outline import outline

    told = answer_to({**PLAIN, "got": [{"stake": "M", "sagitta": "5 ft 3-1/4 in"}]})
    (table,) = [block for section in outline(told) for block in section.blocks[:3] if isinstance(block, Table)][:1]
    assert [row[:2] for row in table.rows] == [
        ["M", "A to B"],
        ["Q1, Q2", "A to M, M to B"],
        ["R1, R4", "A to Q1, Q2 to B"],
        ["R2, R3", "Q1 to M, M to Q2"],
    ]


def test_the_plan_s_sagitta_is_where_the_middle_stake_stands() -> None:
    from bowstring.drawings.plan import plan_svg

    told = answer_to({**PLAIN, "got": [{"stake": "M", "sagitta": "5 ft 3-1/4 in"}]})
    assert "5' 3-1/4\"" in html.unescape(plan_svg(told, id="plan"))


def test_the_line_held_after_a_found_chord_is_called_so() -> None:
    from bowstring.sheet.text import sheet_text

    job = {
        **PLAIN,
        "offset": "1-1/2 in",
        "toward": "outside",
        "driven": "board",
        "found": {"chord": ["38 ft 2 in", "38 ft 2 in"], "tape": "level", "hold": "radius", "sure": True},
    }
    told = answer_to(job)
    assert told["held"] is True and "line held now" in sheet_text(told)
    assert any("worked out again" in note for note in told["notes"])  # type: ignore[union-attr]
    assert answer_to(PLAIN)["held"] is False


# The answer's part: where it stands, whether it may stay, what it looks like, what changes.

FINE = {**PLAIN, "method": "halving", "tolerance": "1/4 in"}


def reading(start: str, end: str, distance: object) -> dict[str, object]:
    return {"from": start, "to": end, "distance": distance}


def got_row(job: dict[str, object], stake: str, *measures: dict[str, object]) -> dict[str, object]:
    told = answer_to({**job, "got": [{"stake": stake, "measures": list(measures)}]})
    (row,) = told["got"]  # type: ignore[misc]
    return row  # type: ignore[no-any-return]


def test_a_stake_is_judged_by_its_place_and_by_its_neighbours() -> None:
    """M stands over the chord's middle: a quarter inch more is a quarter inch off. Its neighbors will stand on the arc,
    so it makes a bump of as much; the fair limit is half the tolerance."""
    row = got_row(FINE, "M", reading("mid M", "M", "5 ft 3-1/4 in"))
    quarter = 0.25 * FOOT / 12
    assert row["across"] == pytest.approx(quarter, abs=1e-9) and row["bump"] == pytest.approx(quarter, abs=1e-9)
    assert (row["within"], row["fair"], row["doubt"], row["slip"]) == (True, False, False, None)
    assert row["move"] == {"text": "Move M inward 1/4 in", "distance": pytest.approx(-quarter, abs=1e-9)}
    inside = got_row(FINE, "M", reading("mid M", "M", "5 ft 2-7/8 in"))
    assert inside["move"]["text"] == "Move M outward 1/8 in" and inside["fair"] is True  # type: ignore[index]
    assert got_row(FINE, "M", reading("mid M", "M", "5 ft 3-3/8 in"))["within"] is False


def test_without_a_tolerance_a_stake_is_held_to_what_is_usual() -> None:
    """A pin is driven with 1/8 in, and a tape read at both ends to 1/8 in with 0.051: 95 of 100 stand within 1.96 times
    the root of the sum of their squares, 0.264 in. Nobody forms to 0.05 m, 1.97 in."""
    for read, within, usual in (
        ("5 ft 3-1/4 in", None, True),
        ("5 ft 3-3/8 in", None, False),
        ("5 ft 4-7/8 in", None, False),
        ("5 ft 5 in", False, False),
        ("5 ft 1-1/8 in", None, False),
        ("5 ft 1 in", False, False),
    ):
        row = got_row(PLAIN, "M", reading("mid M", "M", read))
        with about(read):
            assert (row["within"], row["usual"], row["fair"]) == (within, usual, None)
    assert got_row(FINE, "M", reading("mid M", "M", "5 ft 3-3/8 in"))["usual"] is None
    board = got_row({**PLAIN, "errors": {"stake": "1/4 in"}}, "M", reading("mid M", "M", "5 ft 3-3/8 in"))
    assert board["usual"] is True


def test_without_a_tolerance_too_a_stake_that_is_far_off_is_a_stop() -> None:
    """The offset typed for the distance along: the stake would stand 4 ft inside the arc."""
    got = [{"stake": "K1", "measures": [reading("mid A-B", "foot K1", "5 ft 3-1/4 in")]}]
    told = answer_to({**ORDINATES, "got": got})
    (stop,) = told["stops"]
    assert stop.startswith("Don't build yet: K1 is 4' 3\" inside the arc.") and "Tape it again" in stop
    assert [way["panel"] for way in told["ways_out"]] == ["got"]
    (row,) = told["got"]
    assert row["move"] is None and row["text"].endswith("Tape it again.")


def test_a_stake_that_is_off_by_more_than_usual_is_told_and_is_no_stop() -> None:
    got = [{"stake": "M", "measures": [reading("mid M", "M", "5 ft 3-3/8 in")]}]
    told = answer_to({**PLAIN, "got": got})
    assert not told["stops"]
    assert "Stakes usually stand within 0.26 in of the arc, and M doesn't. Move it back, or ask." in told["cautions"]
    near = answer_to({**PLAIN, "got": [{"stake": "M", "measures": [reading("mid M", "M", "5 ft 3-1/4 in")]}]})
    assert not any("usually stand" in text for text in near["cautions"])


def test_a_mark_that_drives_no_stake_and_is_far_off_its_place_is_a_stop() -> None:
    """Half the string of 38 ft read 17 ft 0 in where 19 ft 0 in are asked."""
    helper = next(step for step in answer_to(ORDINATES)["steps"] if step["kind"] == "string_middle")
    measure = helper["measures"][0]
    mark = helper["marks"][-1]
    for read, stops in (("17 ft", 1), ("18 ft 11-1/2 in", 0)):
        got = [{"stake": mark, "measures": [reading(measure["from"], measure["to"], read)]}]
        told = answer_to({**ORDINATES, "got": got})
        with about(read, told["stops"]):
            assert sum("Tape it again" in text for text in told["stops"]) == stops


def test_two_neighbours_that_stand_out_alike_make_no_bump() -> None:
    """R1 on the arc between A and a Q1 that stands out: over them it is off the fair curve by half of that."""
    rows = [{"stake": stake, "measures": [reading(f"mid {stake}", stake, read)]}
            for stake, read in (("Q1", "1 ft 4-1/4 in"), ("R1", "3-7/8 in"))]  # fmt: skip
    told = answer_to({**FINE, "got": rows})
    first, second = told["got"]  # type: ignore[misc]
    assert abs(second["across"]) < 0.01 * first["across"] + 0.002
    assert second["bump"] == pytest.approx(second["across"] - first["across"] / 2, abs=1e-4)


def test_the_numbers_that_change_are_told_as_they_were_and_are() -> None:
    row = got_row(FINE, "Q1", reading("mid Q1", "Q1", "1 ft 4-1/4 in"))
    plain, told = answer_to(FINE), answer_to(
        {**FINE, "got": [{"stake": "Q1", "measures": [reading("mid Q1", "Q1", "1 ft 4-1/4 in")]}]}
    )  # fmt: skip
    assert [(one["stake"], one["label"]) for one in row["later"]] == [  # type: ignore[union-attr]
        ("R1", "string's midpoint"), ("R1", "square off"), ("R2", "string's midpoint"), ("R2", "square off"),
    ]  # fmt: skip
    for one in row["later"]:  # type: ignore[union-attr]
        for answer, when in ((plain, "was"), (told, "now")):
            shown = {m["shown"] for step in answer["steps"] if step["stake"] == one["stake"] for m in step["measures"]}  # type: ignore[union-attr]
            assert one[when] in shown
    assert row["changes"] == 2 and "R1, R2" in str(row["text"])


def test_where_nothing_hangs_on_a_stake_that_is_said() -> None:
    row = got_row({**PLAIN, "method": "tapes"}, "K2", reading("A", "K2", "10 ft"))
    assert (
        row["later"] == []
        and row["changes"] == 0
        and str(row["text"]).endswith("No other stake's number changes; some checks do.")
    )


def test_checks_that_must_read_something_else_are_told_only_where_they_do() -> None:
    row = got_row({**PLAIN, "method": "tapes"}, "K2", reading("A", "K2", as_asked({**PLAIN, "method": "tapes"}, "K2")))
    assert row["onward"] == "No other number changes."


def as_asked(job: dict[str, object], stake: str) -> str:
    """The first pull to a stake, as exact as it is worked out."""
    step = next(step for step in answer_to(job)["steps"] if step["stake"] == stake)  # type: ignore[union-attr]
    return f"{step['measures'][0]['distance']:.12f} m"


def test_a_helper_that_stands_elsewhere_is_told_by_its_own_place() -> None:
    job = {**PLAIN, "method": "centre", "centre": "reachable"}
    told = answer_to({**job, "got": [{"stake": "c", "measures": [reading("A", "C", "37 ft 1 in")]}]})
    (row,) = told["got"]  # type: ignore[misc]
    assert row["stake"] == "C" and row["at"] is None and row["across"] is None and row["move"] is None
    assert "out of place" in row["text"] and row["changes"] > 2
    assert any("C is 1 in out of place" in text for text in told["cautions"])  # type: ignore[union-attr]
    kinds = {step["kind"] for step in told["steps"] if step["stake"]}  # type: ignore[union-attr]
    assert kinds == {"swing_beside"}
    assert all("hook" not in step["text"] for step in told["steps"] if step["stake"])  # type: ignore[union-attr]


def test_readings_that_disagree_stop_the_sheet() -> None:
    told = answer_to({**FINE, "tolerance": "1-1/2 in", "got": [{"stake": "M", "measures": [
        reading("mid M", "M", "5 ft 3 in"), reading("A", "M", "19 ft 10 in"), reading("M", "B", "19 ft 10 in"),
    ]}]})  # fmt: skip
    (row,) = told["got"]  # type: ignore[misc]
    assert row["doubt"] is True and row["slip"]["kind"] == "apart" and row["apart"] > 0.0035
    assert any("disagree by" in text for text in told["stops"])  # type: ignore[union-attr]


def test_what_wasn_t_read_and_must_read_else_is_told() -> None:
    """Half a circle: an inch more at M makes both short chords longer by 0.7 in, and nobody taped them."""
    job = {**PLAIN, "arc": {"chord": "20 ft", "sagitta": "10 ft"}, "method": "halving"}
    row = got_row(job, "M", reading("mid M", "M", "10 ft 1/2 in"))
    assert len(row["must"]) == 2 and all("must read 14' 2" in text for text in row["must"])  # type: ignore[arg-type, union-attr]


def test_a_slip_out_of_tolerance_stops_and_one_within_doesnt() -> None:
    """An inch more at K2's offset; a chord 38' and a rise of 5' 3" hold no more than 1/4 in."""
    job = {**PLAIN, "method": "ordinates"}
    row = {"got": [{"stake": "K2", "measures": [reading("foot K2", "K2", "4 ft 1-1/8 in")]}]}
    tight = answer_to({**job, **row, "tolerance": "1/4 in"})
    assert any("may be a slip" in text for text in tight["stops"])  # type: ignore[union-attr]
    wide = answer_to({**job, **row, "tolerance": "1-1/2 in", "fair": "1-1/2 in"})
    assert not any("slip" in text for text in wide["stops"])  # type: ignore[union-attr]
    assert any("may be a slip" in text for text in wide["cautions"])  # type: ignore[union-attr]


@pytest.mark.parametrize("method", ["ordinates", "tangent", "produced", "angles", "coordinates", "tapes"])
def test_a_stake_that_stands_is_told_as_such_and_in_every_sheet(method: str) -> None:
    from bowstring.sheet.html import sheet_html
    from bowstring.sheet.text import sheet_text

    job = {**PLAIN, "method": method}
    plain = answer_to(job)
    step = next(step for step in plain["steps"] if step["stake"] == "K2")  # type: ignore[union-attr]
    measures = [
        reading(one["from"], one["to"], f"{one['distance'] + 0.004} m") for one in step["measures"] if "distance" in one
    ]
    told = answer_to({**job, "got": [{"stake": "K2", "measures": measures[-1:]}]})
    (stands,) = [step for step in told["steps"] if step["stake"] == "K2"]  # type: ignore[union-attr]
    assert "K2 is already set" in stands["text"] and "K2 is already set" in " ".join(sheet_text(told).split())
    assert "K2" in sheet_html(told)


def test_a_job_that_names_no_method_keeps_its_own_when_something_was_got() -> None:
    job = {**PLAIN, "tape": {"length": "20 ft"}}
    del job["levels"]
    plain = answer_to(job)
    assert not plain["method_said"]
    stake = next(step for step in plain["steps"] if step["stake"])  # type: ignore[union-attr]
    last = stake["measures"][-1]
    told = answer_to({**job, "got": [{"stake": stake["stake"], "measures": [
        reading(last["from"], last["to"], f"{last['distance'] + 0.002} m"),
    ]}]})  # fmt: skip
    assert (told["method"], told["halve_first"], told["parallel"]) == (
        plain["method"], plain["halve_first"], plain["parallel"],
    )  # fmt: skip
