"""After something was got at a stake the sheet's figures are those of the stakes as they stand."""

from __future__ import annotations

import html
from itertools import pairwise
from math import atan2, hypot

import pytest

from bowstring import BadJob
from helping import answer_to

FOOT = 0.3048
PLAIN = {"arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "drawn_to": "face", "side": "left", "levels": 3}
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
    assert "0.52 in" in text and "toward B" in text
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
        ("5 ft 2-3/4 in", "0.25 in inside the arc"),
        ("5 ft 3-1/4 in", "0.25 in outside the arc"),
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
