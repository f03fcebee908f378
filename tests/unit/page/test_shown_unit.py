"""A device that shows another unit than the job's: what is typed there is kept with its unit, as the echo says it."""

from __future__ import annotations

import html
import json
import re
from collections.abc import Iterator
from typing import Any

import pytest

from bowstring.page.calls import handle
from bowstring.page.shown import show_in, shown_here
from bowstring.units.lengths import UNITS, read_length
from bowstring.units.spelled import spelled

FEET = {"arc-chord": "38", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face", "tolerance": "1/4 in",
        "levels": "3", "method": "halving"}  # fmt: skip


@pytest.fixture(autouse=True)
def own_unit() -> Iterator[None]:
    yield
    show_in(None)


def ask(call: str, **asked: object) -> Any:
    return json.loads(handle(call, json.dumps(asked)))


def face(name: str, fields: dict[str, str] = FEET, **more: object) -> Any:
    return ask("face", fields=fields, face=name, card=None, panel="", address="", **more)


def text_of(made: str) -> str:
    return " ".join(html.unescape(re.sub(r"<[^>]+>", " ", made)).split())


@pytest.mark.parametrize("name", ["stakes", "checks", "build", "paper", "why"])
def test_every_face_says_once_in_which_unit_it_is_shown(name: str) -> None:
    assert face(name)["shown_in"] == ""
    show_in("mm")
    made = face(name)
    assert made["shown_in"] == "Shown in millimeters. The job is in feet and inches."
    assert not re.search(r"\d' ?\d|\d\"", text_of(made["html"]))
    show_in("ft-in")  # the job's own
    assert face(name)["shown_in"] == ""


def test_a_unit_that_there_isn_t_is_refused() -> None:
    with pytest.raises(ValueError, match="no such unit"):
        show_in("yd")
    assert shown_here() is None


@pytest.mark.parametrize("unit", UNITS)
def test_the_link_and_the_file_of_a_job_are_the_same_on_every_device(unit: str) -> None:
    link, file, dxf = (
        ask("link", fields=FEET),
        ask("job_file", fields=FEET),
        ask("hand_file", fields=FEET, kind="dxf"),
    )
    show_in(unit)
    assert ask("link", fields=FEET) == link and ask("job_file", fields=FEET) == file
    assert ask("hand_file", fields=FEET, kind="dxf") == dxf


def test_a_bare_number_on_the_numbers_is_the_job_s_and_its_echo_says_so() -> None:
    show_in("m")
    made = ask("numbers", fields=FEET)
    chord, radius = made["rows"]["arc-chord"], made["rows"]["arc-radius"]
    assert chord["beside"] == "38.000 ft\n11.582 m"
    assert radius["out"].endswith(" m") and radius["beside"].endswith(" ft")
    assert made["shown_in"] == "Shown in meters. The job is in feet and inches."
    echoes = ask("numbers", fields={**FEET, "spacing": "4"})["echoes"]
    assert text_of(echoes["spacing"]).startswith("4' 0\"") and "; shown as 1.219 m" in text_of(echoes["spacing"])


@pytest.mark.parametrize(
    ("typed", "must", "unit", "kept"),
    [
        ("3.65", "3.660 m", "m", "3.65 m"),
        ("3,65", "3.660 m", "m", "3,65 m"),
        ("35", "40 mm", "m", "35 mm"),
        ("0.035", "40 mm", "m", "0.035 m"),
        ("3650", "3660 mm", "mm", "3650 mm"),
        ("12.5", "12' 6\"", "ft-in", "12.5 ft"),
        ("2 3/8", '2-1/2"', "ft-in", '2-3/8"'),
        ("12.5", "12.50 ft", "ft", "12.5 ft"),
        ("12' 6\"", "3.810 m", "m", "12' 6\""),
        ("3.65 m", "12' 0\"", "ft-in", "3.65 m"),
    ],
)
def test_a_bare_reading_is_kept_with_its_unit(typed: str, must: str, unit: str, kept: str) -> None:
    assert spelled(typed, must, unit) == kept
    everywhere = {read_length(kept, other, "read").metres for other in UNITS}
    assert len(everywhere) == 1


@pytest.mark.parametrize("typed", ["12,5", "3 4", "5/8", "x", "12' 13\"", "1/2/3"])
@pytest.mark.parametrize("unit", UNITS)
def test_what_can_t_be_read_in_the_reader_s_unit_is_no_length_in_any_other(typed: str, unit: str) -> None:
    def lengths(text: str, units: tuple[str, ...]) -> set[float]:
        read = set()
        for one in units:
            try:
                read.add(read_length(text, one, "read", zero=True).metres)
            except ValueError:
                continue
        return read

    own, after = lengths(typed, (unit,)), lengths(spelled(typed, "", unit), UNITS)
    assert after == own


def test_a_reading_typed_in_the_job_s_own_unit_stays_as_it_was_typed() -> None:
    assert ask("spelled", fields=FEET, text=" 12.5 ", must="12' 6\"")["text"] == "12.5"
    show_in("m")
    assert ask("spelled", fields=FEET, text="12.5", must="3.810 m")["text"] == "12.5 m"
    assert ask("spelled", fields={**FEET, "unit": "m"}, text="12.5", must="3.810 m")["text"] == "12.5"


def got(card: int, fields: dict[str, str] = FEET, **typed: str) -> Any:
    return ask("face", fields=fields, face="stakes", card=card, panel="got", got=typed, address="")


def card_of(stake: str) -> int:
    listed = ask("face", fields=FEET, face="stakes", card=None, panel="list", address="")
    return next(number for number in range(1, listed["count"]) if f'data-stake="{stake}"' in card_html(number))


def card_html(number: int) -> str:
    made: str = ask("face", fields=FEET, face="stakes", card=number, panel="", address="")["html"]
    return made


def test_what_was_got_in_metres_is_kept_in_metres_and_stands_there_for_the_other_reader() -> None:
    card = card_of("M")
    show_in("m")
    made = got(card)
    shown = dict(re.findall(r'name="(m\d)" value="([^"]*)"', made["html"]))
    assert shown["m1"] == "1.600 m" and "fill" not in made
    fill = got(card, m1="1.603")["fill"]
    (kept,) = (text for name, text in fill.items() if name.endswith("-distance"))
    assert kept == "1.603 m"
    both = {}
    for unit in (None, "m", "ft"):
        show_in(unit)
        answer = got(card, {**FEET, **fill})
        assert html.escape(kept) in answer["html"]
        both[unit] = answer["fill"]
    assert both[None] == both["m"] == both["ft"]


def test_a_bare_number_got_by_another_reader_stands_there_with_the_job_s_unit() -> None:
    card = card_of("M")
    row = {"got-0-stake": "M", "got-0-measures-0-from": "mid M", "got-0-measures-0-to": "M",
           "got-0-measures-0-distance": "5.26"}  # fmt: skip
    assert 'value="5.26"' in got(card, {**FEET, **row})["html"]
    show_in("m")
    assert 'value="5.26 ft"' in got(card, {**FEET, **row})["html"]


def test_a_chord_found_in_metres_is_kept_in_metres() -> None:
    show_in("m")
    made = got(2, f0="11.59", f1="11.59")["html"]
    fills = [json.loads(html.unescape(text)) for text in re.findall(r'data-fill="([^"]*)"', made)]
    found = [fill for fill in fills if fill.get("found-chord-0")]
    assert found and all((one["found-chord-0"], one["found-chord-1"]) == ("11.59 m", "11.59 m") for one in found)
