"""The text sheet: 80 columns, everything said, read as somebody tired would."""

from functools import cache
from unicodedata import combining, east_asian_width

import pytest

from bowstring.demo import DEMO
from bowstring.sheet.blocks import Drawing, Table
from bowstring.sheet.outline import outline
from bowstring.sheet.text import sheet_text, table_lines
from bowstring.words import say
from helping import SAID, answer_to

_JOBS = {
    "demo": DEMO,
    "metric hubs": {
        "unit": "m",
        "arc": {"radius": "30 m", "central_angle": "200°"},
        "offset": "1.2 m",
        "toward": "outside",
        "driven": "hub",
        "start": "one-end",
        "tape": {"length": "60 m"},
        "tolerance": "10 mm",
    },
    "corner": {"arc": {"tangent_length": "22 ft", "external": "6 ft"}, "start": "corner", "side": "right"},
    "many givens": {
        "arc": {"radius": "37 ft", "chord": "38 ft", "sagitta": "5 ft 9 in", "arc_length": "39 ft 10-7/8 in"}
    },
    "found and got": {
        "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"},
        "found": {"chord": ["38 ft 0-1/4 in", "38 ft 0-1/4 in"], "tape": "level", "hold": "radius"},
        "got": [
            {"stake": "M", "sagitta": "5 ft 3-1/2 in"},
            {"stake": "Q1", "half_chords": ["9' 11-3/8\"", "9' 11-5/8\""]},
        ],
        "ties": {"A": [{"to": "the hydrant", "distance": "12 ft"}, {"to": "a kerb joint", "distance": "9 ft"}]},
    },
    "ten levels": {
        "arc": {"chord": "380 ft", "sagitta": "5 ft 3 in"},
        "levels": 10,
        "tolerance": "1/4 in",
        "tape": {"length": "300 ft"},
    },
    "long words": {
        "title": "x" * 80,
        "note": "y" * 280,
        "arc": {"chord": "38 ft", "radius": "40 ft"},
        "ends": {"A": "z" * 40},
    },
    "wide letters": {
        "title": "\u5f27" * 80,
        "note": "\uff37\u5f27 " * 60 + "\uac00" * 100,
        "unit": "m",
        "arc": {"chord": "12 m", "sagitta": "1.5 m"},
        "ends": {"A": "\u95e8" * 40, "B": "caf" + "e\u0301" * 18},
        "ties": {"A": [{"to": "\u5899" * 40, "distance": "4 m"}, {"to": "o\u0308" * 20, "distance": "3 m"}]},
    },
}
JOBS = {name: {**SAID, **job} for name, job in _JOBS.items()}


@cache
def sheet_of(name):
    return sheet_text(answer_to(JOBS[name]))


def columns(text):
    """The cells of a terminal that a text takes: two for a wide letter, none for a mark on the one before."""
    return sum(0 if combining(sign) else 1 + (east_asian_width(sign) in ("W", "F")) for sign in text)


@pytest.mark.parametrize("name", JOBS)
def test_no_line_is_wider_than_80_columns_or_ends_in_a_space(name):
    for line in sheet_of(name).splitlines():
        assert columns(line) <= 80
        assert line == line.rstrip()


def test_wide_letters_and_marks_on_letters_are_all_there_and_fill_their_lines():
    job = JOBS["wide letters"]
    lines = sheet_text(answer_to(job)).splitlines()
    text = "".join(lines)
    assert text.count("\u5f27") >= 80 + 60 and "e\u0301" * 18 in text
    assert lines[0] == "\u5f27" * 40 and lines[1] == "\u5f27" * 40
    assert not [line for line in lines if line.lstrip()[:1] in ("\u0301", "\u0308")], "a mark stays on its letter"


def test_a_table_with_wide_letters_stands_in_straight_columns():
    rows = (("\u5f27\u5f27", "1"), ("e\u0301e\u0301", "2"), ("abcd", "3"), ("\u5f27" * 60, "4"), ("x" * 100, "5"))
    lines = [line for line in table_lines(Table(("a", "b"), rows)) if line.strip()]
    assert all(columns(line.rstrip()) <= 80 for line in lines)
    starts = {columns(line[: len(line.rstrip()) - 1]) for line in lines if line.rstrip()[-1:] in tuple("12345b")}
    assert len(starts) == 1, starts
    assert "".join(lines).count("\u5f27") == 62 and "".join(lines).count("x") == 100


def test_no_length_in_a_narrow_column_is_broken():
    rows = [["word " * 30, "10' 4-7/8\" or 12' 0-1/2\" " * 6, "more " * 30]]
    text = "\n".join(table_lines(Table(("a", "b", "c"), rows)))
    assert text.count("10' 4-7/8\"") == text.count("12' 0-1/2\"") == 6


@pytest.mark.parametrize("name", JOBS)
def test_the_sheet_holds_every_caution_note_and_title(name):
    told = answer_to(JOBS[name])
    words = " ".join(sheet_of(name).replace("!", " ").split())
    for text in [*told["warnings_top"], *told["cautions"], *told["notes"]]:
        assert " ".join(text.replace("!", " ").split()) in words


def test_every_stake_of_an_ordinary_job_is_on_the_sheet_with_its_string():
    told = answer_to(DEMO)
    text = sheet_text(told)
    for step in told["steps"]:
        if step["level"]:
            middle = step["measures"][1]
            assert middle["shown"] in text
            assert f"{step['measures'][0]['from']} to {step['to']}" in text


def test_a_blind_check_is_not_printed():
    told = answer_to({**DEMO, "tolerance": "0.07 in"})
    blind = {check["kind"] for check in told["checks"] if check["blind"]}
    seen = {check["kind"] for check in told["checks"] if not check["blind"]}
    assert "cross" in blind - seen and "alternate" in seen
    assert say("sheet.check_cross") not in sheet_text(told).split("CHECKS")[1].split("THE QUARTER RULE")[0]


def test_where_something_was_got_each_stake_has_its_own_numbers():
    told = answer_to(JOBS["found and got"])
    text = sheet_text(told)
    for step in told["steps"]:
        if step["level"] > 1:
            assert f"{step['number']:>3}. " in text


def test_each_level_has_its_drawings():
    sections = outline(answer_to(DEMO))
    drawings = [
        (block.kind, block.level) for section in sections for block in section.blocks if isinstance(block, Drawing)
    ]
    for level in range(1, DEMO["levels"] + 1):
        assert ("level", level) in drawings
        assert ("triangle", level) in drawings


def test_the_hand_is_said_the_same_everywhere():
    for side, other in (("left", "right"), ("right", "left")):
        text = sheet_text(answer_to({**DEMO, "side": side}))
        assert f"on your {side}" in text and f"on your {other}" not in text
        assert f"to the {side}" in text
        assert f"to the {other}" not in text.replace("to the right reading", "")


@pytest.mark.parametrize("name", JOBS)
def test_no_length_is_broken_over_two_lines(name):
    lines = sheet_of(name).splitlines()
    prose = [line for line in lines if line.startswith(("- ", "! ", "> ", "  ")) and not line.startswith("  " * 20)]
    for line in prose:
        assert not line.endswith("'") or line.endswith("s'"), line


def test_a_heading_in_capitals_keeps_its_units():
    text = sheet_text(answer_to({**SAID, "unit": "mm", "arc": {"chord": 12000, "sagitta": 900}, "levels": 2}))
    headings = [line for line in text.splitlines() if line.startswith("ROUND 1")]
    assert headings and "900 mm" in headings[0] and "MID-ORDINATE" in headings[0]
