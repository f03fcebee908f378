"""Jobs that can't be used: refused with the place, what is wrong and what would do; never a traceback,
never an answer."""

from __future__ import annotations

import re
from typing import Any

import pytest

import bowstring
from bad_job_cases import IMPOSSIBLE, TWO_READINGS
from bad_job_keys import ALL as CASES
from helping import all_hold
from reference import PAIRS

BY_NAME = {name: bad for name, bad, _ in CASES}


def place_fits(field: str, expected: tuple[str, ...]) -> bool:
    return any(field == one or (one.endswith("*") and field.startswith(one[:-1])) for one in expected)


def refused_with_a_remedy(bad: Any, fields: tuple[str, ...]) -> None:
    with pytest.raises(bowstring.BadJob) as caught:
        bowstring.answer(bad)
    error = caught.value
    assert isinstance(error, ValueError)
    assert place_fits(error.field, fields), f"named {error.field!r}, expected one of {fields}"
    for part in (error.field, error.wrong, error.remedy, error.key):
        assert isinstance(part, str) and part.strip()
    line = str(error)
    assert line == f"{error.field}: {error.wrong} {error.remedy}"
    assert line.isprintable() and len(line) < 500, line[:600]
    assert not re.search(r"\{\w*\}", line), "an unfilled template"
    assert "Traceback" not in line and "Error" not in line


def test_refused() -> None:
    all_hold({name: (bad, fields) for name, bad, fields in CASES}, refused_with_a_remedy)


def test_there_are_at_least_200_different_bad_jobs() -> None:
    assert len({name for name, *_ in CASES}) == len(CASES)
    assert len({repr(bad) for name, bad, _ in CASES if not name.startswith("deep-")}) >= 200


def test_every_pair_has_an_impossible_arc() -> None:
    assert {frozenset(given) for given in IMPOSSIBLE.values()} == {frozenset(pair) for pair in PAIRS}


@pytest.mark.parametrize("text", [text for text in TWO_READINGS if text != "40-6-1/2"])
def test_a_length_with_two_readings_offers_both(text: str) -> None:
    with pytest.raises(bowstring.BadJob) as caught:
        bowstring.answer(BY_NAME[f"ambiguous-{text}"])
    said = caught.value.wrong + " " + caught.value.remedy
    assert re.search(r"\d ?(in\b|\"|″)|[½⅜] ?(in\b|\"|″)", said), said
    assert re.search(r"\d ?(ft\b|'|′)|[½⅜] ?(ft\b|'|′)", said), said


@pytest.mark.parametrize(
    ("text", "unit", "apart"),
    [
        ("47 6", "ft-in", "1.2 in"),  # 47'-6" and 47.6 ft = 47'-7.2"
        ("47,6", "ft-in", "1.2 in"),
        ("12 35", "ft", None),  # 12.35 ft only: no feet have 35 inches
        ("12 350", "m", None),  # 12.350 m and 12350 m: nobody takes one for the other
        ("6-1/2", "ft-in", None),
    ],
)
def test_readings_that_look_alike_are_told_to_differ(text: str, unit: str, apart: str | None) -> None:
    with pytest.raises(bowstring.BadJob) as caught:
        bowstring.answer({"unit": unit, "arc": {"chord": text, "central_angle": 60}})
    wrong = caught.value.wrong
    assert (f"What it could mean is {apart} apart." in wrong) if apart else "could mean is" not in wrong


@pytest.mark.parametrize("name", [name for name in BY_NAME if name.startswith("bare-")])
def test_a_bare_mark_or_tolerance_offers_its_readings(name: str) -> None:
    with pytest.raises(bowstring.BadJob) as caught:
        bowstring.answer(BY_NAME[name])
    said = caught.value.wrong + " " + caught.value.remedy
    assert re.search(r"in\b|\"|″", said) and re.search(r"ft\b|'|′|feet|foot", said), said


@pytest.mark.parametrize("name", ["unknown-misspelt", "unknown-in-arc", "unknown-in-ends", "unknown-in-found"])
def test_an_unknown_key_is_refused_by_name(name: str) -> None:
    with pytest.raises(bowstring.BadJob) as caught:
        bowstring.answer(BY_NAME[name])
    unknown = {
        "unknown-misspelt": "tolerence",
        "unknown-in-arc": "diameter",
        "unknown-in-ends": "C",
        "unknown-in-found": "colour",
    }
    assert unknown[name] in str(caught.value)


BAD_LINKS = [
    "",
    "#",
    "x",
    "no link at all",
    "1~!!!!",
    "%%%",
    "https://example.org/",
    "https://example.org/#",
    "A" * 50000,
    "é",
    "\x00",
    "eJw",
    "=",
    "null",
    "{}",
    "🙂",
    "1.AAAA",
]


def refused_as_a_link(text: str) -> None:
    with pytest.raises(bowstring.BadJob) as caught:
        bowstring.answer(bowstring.read_link(text))
    assert str(caught.value).isprintable() and caught.value.field in ("link", "job")


def test_bad_link() -> None:
    all_hold({ascii(text[:30]): (text,) for text in BAD_LINKS}, refused_as_a_link)


@pytest.mark.parametrize("where", range(0, 100, 9))
def test_a_link_with_one_letter_changed_is_never_a_crash(where: int) -> None:
    good = bowstring.write_link({"unit": "m", "title": "shed", "arc": {"chord": 12.5, "sagitta": 1.5}, "levels": 3})
    at = where * (len(good) - 1) // 100
    for letter in "Aa0-_":
        try:
            bowstring.answer(bowstring.read_link(good[:at] + letter + good[at + 1 :]))
        except bowstring.BadJob as error:
            assert str(error).isprintable()


@pytest.mark.parametrize("cut", range(1, 10))
def test_a_link_cut_short_is_refused(cut: int) -> None:
    good = bowstring.write_link({"unit": "m", "title": "shed", "arc": {"chord": 12.5, "sagitta": 1.5}, "levels": 3})
    with pytest.raises(bowstring.BadJob):
        bowstring.answer(bowstring.read_link(good[: len(good) * cut // 10]))
