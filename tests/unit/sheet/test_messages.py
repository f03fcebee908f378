"""The sheet as plain text for messages: short, in the signs that every phone has, each whole by itself."""

from __future__ import annotations

import re
from typing import Any

import pytest

import form_jobs
import paper_jobs
from bowstring import answering
from bowstring.demo import DEMO
from bowstring.sheet.messages import messages
from bowstring.units.plain_signs import BASIC, in_plain_signs
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from lined_jobs import FIVE

# By its codes, 0 to 127, with the escape to the extension at 27 (3GPP TS 23.038, 6.2.1).
TABLE = (
    "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞ\x1bÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
    "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà"
)
SOME = ("a swing", "angles off the chord", "tangents from pegs", "two tapes", "chords produced",
        "angles off the straight", "coordinates", "ordinates from a parallel string", "hubs off one end",
        "on a slope, over the chord found")  # fmt: skip
JOBS: dict[str, Any] = {
    "the example": DEMO,
    **{name: paper_jobs.JOBS[name] for name in ("four rounds", *SOME)},
}
HEAD = re.compile(r"([0-9]+)/([0-9]+) (.{1,10}) ([0-9A-Z]{4})( STOP)?: (.+)", re.DOTALL)


def told(job: dict[str, Any]) -> list[str]:
    return messages(answer_to(job))  # type: ignore[arg-type]


def test_the_basic_table_is_the_standard_s() -> None:
    assert len(TABLE) == 128 and set(TABLE) - {"\x1b"} == BASIC


def test_the_example_fits_in_seven_messages() -> None:
    found = told(DEMO)  # type: ignore[arg-type]
    assert len(found) <= 7 and all(len(one) <= 160 for one in found)  # six, but for the hand said without a doubt
    whole = " ".join(found)
    for number in ("38' 0\"", "19' 0\"", "5' 3\"", "19' 8-9/16\"", "1' 4-1/16\"", "4' 11-13/16\"", "29' 1-7/16\""):
        assert number in whole
    for words in ("lamp post by the kiosk", "gate pier", "curve on your LEFT, turns RIGHT", "FACE", "tack", "811"):
        assert words in whole


@pytest.mark.parametrize("name", JOBS)
def test_each_message_is_short_numbered_and_in_plain_signs(name: str) -> None:
    found = told(JOBS[name])
    heads = [HEAD.fullmatch(one) for one in found]
    for one, head in zip(found, heads, strict=True):
        assert len(one) <= 160 and set(one) <= set(TABLE) - {"\x1b", "\n", "\r"}, one
        assert head, one
    numbers = [(int(head[1]), int(head[2])) for head in heads if head]
    assert numbers == [(number, len(found)) for number in range(1, len(found) + 1)]
    assert len({head[4] for head in heads if head}) == 1


@pytest.mark.parametrize("name", JOBS)
def test_every_number_of_a_stake_stands_with_its_name(name: str) -> None:
    answer, found = answer_to(JOBS[name]), told(JOBS[name])
    stakes = [step for step in answer["steps"] if step["stake"] is not None]
    assert stakes
    for step in stakes:
        measures = [in_plain_signs(measure["shown"]) for measure in step["measures"]]
        named = [one for one in found if re.search(rf"\b{step['stake']}\b(?! to)", HEAD.sub(r"\6", one))]
        # an angle is told by its deflection where the stake is on a line of sight
        numbers = [measures[0]] if step["deflection"] else measures
        assert any(all(number in one for number in numbers) for one in named), (step["stake"], numbers)


@pytest.mark.parametrize("name", JOBS)
def test_no_length_is_cut_in_two(name: str) -> None:
    for one in told(JOBS[name]):
        body = HEAD.sub(r"\6", one)
        assert not re.search(r"[0-9]'?$", body), body
        assert not re.match(r"\.\.\.[0-9]", body), body


def test_the_hand_stands_in_every_message_of_stakes_squared_off() -> None:
    for side in ("left", "right"):
        found = told({**DEMO, "side": side})
        squared = [one for one in found if "square off," in one]
        assert len(squared) == 3
        assert all(f"square off, {side.upper()} " in one for one in squared)


def test_a_hand_that_no_number_tells_stands_with_each_stake() -> None:
    found = told(paper_jobs.JOBS["two tapes"])
    rows = [piece for one in found for piece in re.findall(r"K[0-9]+: from [^.]+\.", one)]
    assert len(rows) == len(answer_to(paper_jobs.JOBS["two tapes"])["stakes"]) - 2
    assert all(row.endswith("; RIGHT.") for row in rows)


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_stake_that_one_message_can_t_hold_is_named_in_each_of_its_messages(side: str) -> None:
    speak("spanish")
    try:
        found = messages(answering({**JOBS["angles off the chord"], "title": "Lodge drive", "side": side}))
    finally:
        speak(LANGUAGES[0])
    bodies = [HEAD.sub(r"\6", one) for one in found]
    assert not any(body.startswith("...") for body in bodies)
    rows = [body for body in bodies if re.match(r"K[0-9]+: ", body)]
    assert rows and all({"left": "IZQUIERDA", "right": "DERECHA"}[side] in body for body in rows)


def test_messages_of_two_jobs_differ_in_their_code() -> None:
    codes = set()
    for sagitta in ("5' 3\"", "5' 3-1/4\""):
        for title in ("Bandstand walk", "Bandstand green"):
            found = told({**DEMO, "title": title, "arc": {"chord": "38 ft", "sagitta": sagitta}})
            code = {HEAD.fullmatch(one)[4] for one in found}  # type: ignore[index]
            assert len(code) == 1
            codes |= code
    assert len(codes) == 4


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", ["the example", "hubs off one end", "angles off the straight"])
def test_in_every_language_they_are_as_short_and_plain(language: str, name: str) -> None:
    numbers = set(re.findall(r"[0-9]+' [0-9]+(?:-[0-9]+/[0-9]+)?\"", " ".join(told(JOBS[name]))))
    assert numbers
    speak(language)
    try:
        found = messages(answering(JOBS[name]))
    finally:
        speak(LANGUAGES[0])
    assert all(len(one) <= 160 and set(one) <= BASIC for one in found)
    assert numbers <= set(re.findall(r"[0-9]+' [0-9]+(?:-[0-9]+/[0-9]+)?\"", " ".join(found)))
    if name == "the example":
        assert len(found) <= {"english": 7, "british": 7, "spanish": 9}[language]


def test_a_stopped_job_tells_no_number_of_a_step_and_says_so_in_each() -> None:
    job = paper_jobs.JOBS["no hand, no line, a wall"]
    found, answer = told(job), answer_to(job)
    assert answer["stops"]
    assert all(" STOP: " in one for one in found)
    whole = " ".join(found)
    shown = {measure["shown"] for step in answer["steps"] for measure in step["measures"]}
    why = " ".join([*answer["stops"], answer["advice"]["text"]])  # has distances of its own, of another method
    shown = {number for number in shown if number not in why}
    assert shown and not any(number in whole for number in shown)
    assert "midpoint 17" not in whole and "square off," not in whole
    assert "Build nothing" in whole and "which side the curve is on" in whole


def test_a_walls_messages_tell_its_sizes_its_radius_and_where_the_stakes_are() -> None:
    told_of = " ".join(HEAD.sub(r"\6", one) for one in told(form_jobs.HUBS))
    for words in (
        "Drawing: R 32' 0\" to the INNER FACE.",
        "Stakes are 3' 0\" OUTSIDE the drawing's line.",
        "Wall 8\" thick, 3' 6\" high, OUTSIDE the drawing's line.",
        "Footing 2' 6\" x 1' 0\".",
        "Utilities located?",
    ):
        assert words in told_of, words
    on_it = " ".join(told(form_jobs.WALLS["stakes on the line"]))
    assert "Drawing: R 32' 0\" to the INNER FACE." in on_it and "Drawn to" not in on_it


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_walls_messages_are_whole_in_every_language(language: str) -> None:
    speak(language)
    try:
        found = messages(answering(form_jobs.HUBS))  # type: ignore[arg-type]
    finally:
        speak(LANGUAGES[0])
    assert all(len(one) <= 160 and set(one) <= BASIC for one in found)
    assert ("Services scanned?" in " ".join(found)) == (language == "british")


def test_signs_that_phones_lack_become_plain() -> None:
    cases = {
        "Jardín público, año 2": "Jardin publico, año 2",
        "Curaçao – “Œuvre”": 'Curacao - "OEuvre"',
        "Straße, Übergang, Ñandú": "Straße, Übergang, Ñandu",
        "27°01′52″ and 3°": "27 deg 01'52\" and 3 deg",
        "5½ in ± ¼ in": "5-1/2 in +- 1/4 in",
        "[a] {b} c|d": "(a) (b) c/d",
        "\u2068גשר\u2069 x": "??? x",
        "20\N{NO-BREAK SPACE}m²": "20 m2",
    }
    for text, plain in cases.items():
        assert in_plain_signs(text) == plain


def test_a_title_of_any_script_and_length_leaves_room_for_the_work() -> None:
    for title in ("גשר", "Ж" * 80, "x" * 80, "[]{}" * 10, ""):
        found = told({**DEMO, "title": title})
        assert len(found) <= 7 and all(len(one) <= 160 and HEAD.fullmatch(one) for one in found), title


def test_the_messages_of_an_arc_of_a_line_say_that_others_have_their_own() -> None:
    found = " ".join(told(FIVE))
    assert "Sheets of their own: Arc 4." in found
    assert "Sheets of their own: Arc 2." in " ".join(told({**FIVE, "at": 4}))
    assert "of their own" not in " ".join(told(DEMO))  # type: ignore[arg-type]


def test_messages_of_a_lines_arc_say_where_it_turns_and_where_the_concrete_is() -> None:
    """A curve on the left of A to B turns right: "curve LEFT" alone was read as a left turn."""
    job = {**FIVE, "at": 4, "edge": "left"}
    whole = " ".join(told(job))
    assert "At A, facing B: curve on your RIGHT, turns LEFT." in whole or "curve on your LEFT, turns RIGHT." in whole
    turn = FIVE["line"][3]["turn"].upper()
    assert f"turns {turn}." in whole
    assert "Walking A to B, the concrete is on your RIGHT" in re.sub(r"[0-9]+/[0-9]+ .{1,10} [0-9A-Z]{4}: ", "", whole)


def test_no_text_is_about_the_greater_arc_but_where_the_job_is_that() -> None:
    """Radius and chord have two arcs: 51 deg and 308. Who gets the stakes alone can't ask the drawing."""
    texts = told(form_jobs.CROSSED)
    assert not any("308 deg" in text or "Two arcs" in text for text in texts)
    assert any("308°" in text for text in answer_to(form_jobs.CROSSED)["cautions"])
    greater = {**paper_jobs.JOBS["halving"], "arc": {"radius": "10 ft", "chord": "16 ft", "greater": True}}
    assert any("Two arcs fit" in text for text in told(greater))
