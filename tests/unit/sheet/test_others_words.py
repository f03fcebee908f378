"""What somebody else wrote, and what mustn't be built, in every output: marked, isolated, told."""

from __future__ import annotations

import csv
import io
import json
import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from html import unescape
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job
from bowstring.report.forms.answer import Answer
from bowstring.sheet.blocks import Drawing
from bowstring.sheet.csv import HAZARDS, stakes_csv
from bowstring.sheet.drawn import drawn
from bowstring.sheet.html import sheet_html
from bowstring.sheet.text import NOTE, sheet_text, wrap
from bowstring.words import say
from bowstring.words.isolated import FSI, PDI, closed, isolated
from helping import about, answer_to

RIGHT_TO_LEFT = re.compile("[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]")
GATE, SHED, OAK, PEG = (
    "\u05e9\u05e2\u05e8 12",
    "\u0645\u062e\u0632\u0646 7",
    "\u05d0\u05dc\u05d5\u05df",
    "\u0648\u062a\u062f",
)
SOUND = {
    "bowstring": 1,
    "unit": "m",
    "arc": {"chord": "12 m", "sagitta": "1.5 m"},
    "side": "left",
    "drawn_to": "face",
    "driven": "pin",
    "tolerance": "10 mm",
    "levels": 2,
}
NAMED = {
    **SOUND,
    "title": f"{GATE} 4.20 m",
    "note": f"{SHED}: 3 m\nb {OAK} 2",
    "ends": {"A": GATE, "B": f"{SHED} 3 m"},
    "ties": {"A": [{"to": OAK, "distance": "4 m"}, {"to": f"b {PEG}", "distance": "5 m"}]},
    "ground": [{"name": OAK, "stops": "tape", "outline": [["5 m", "-3 m"], ["6 m", "-3 m"], ["6 m", "-2 m"]]}],
    "known": [{"name": PEG, "x": "-2 m", "y": "-2 m"}],
}
WAYS = {
    "halving": {},
    "ordinates": {"method": "ordinates"},
    "tapes": {"method": "tapes", "tapes_from": ["A", PEG]},
    "stopped": {"drawn_to": "unsure"},
}
POSING = (
    "SET THE STAKES\n--------------\n  1. Drive M 3 m left of the string\n\n! Call nobody\n!! Build\n" + "word " * 30
)


def answer_of(job: dict[str, Any]) -> Answer:
    return answer_to(job)  # type: ignore[return-value]


def drawings(html: str) -> list[ET.Element]:
    return [ET.fromstring(svg) for svg in re.findall(r"<svg.*?</svg>", html, re.DOTALL)]


def words_of(svg: ET.Element) -> Iterator[str]:
    for element in svg.iter():
        if element.tag.rpartition("}")[2] in ("text", "title", "desc"):
            yield element.text or ""


def outputs(job: dict[str, Any]) -> Iterator[tuple[str, list[str]]]:
    """Every output with what it shows, line by line or text by text."""
    answered = answer_of(job)
    html = sheet_html(answered)
    yield "text", sheet_text(answered).splitlines()
    yield "CSV", [cell for row in csv.reader(io.StringIO(stakes_csv(answered))) for cell in row]
    plain = re.sub(r"<svg.*?</svg>|</?span[^>]*>", "", html)
    yield "HTML", [unescape(text) for text in re.findall(r">([^<]+)<", plain)]
    yield "SVG", [words for svg in drawings(html) for words in words_of(svg)]


def is_isolated(line: str) -> bool:
    depth = 0
    for sign in line:
        depth += (sign == FSI) - (sign == PDI)
        if depth < 0 or (RIGHT_TO_LEFT.match(sign) and depth == 0):
            return False
    return depth == 0


@pytest.mark.parametrize("way", WAYS)
def test_names_from_right_to_left_are_isolated_everywhere(way: str) -> None:
    shown = 0
    for output, lines in outputs({**NAMED, **WAYS[way]}):
        for line in lines:
            with about(output, ascii(line)):
                assert is_isolated(line)
        named = sum(bool(RIGHT_TO_LEFT.search(line)) for line in lines)
        shown += named
        assert named or output == "CSV", output
    assert shown > 10


def test_a_table_of_values_isolates_its_readings() -> None:
    table = stakes_csv(answer_of({**NAMED, **WAYS["tapes"]}))
    assert f"{FSI}{PEG}{PDI}" in table
    assert all(is_isolated(cell) for row in csv.reader(io.StringIO(table)) for cell in row)


def test_a_refusal_has_nothing_hidden_in_it_and_the_page_isolates_what_it_shows() -> None:
    job = {**SOUND, "unit": "ft-in", "tolerance": "1/4 in", "arc": {"chord": GATE, "sagitta": "1 ft"}}
    with pytest.raises(BadJob) as refusal:
        answer_of(job)
    assert str(refusal.value).isprintable() and GATE in str(refusal.value)
    opened = json.loads(handle("open_file", json.dumps({"text": json.dumps(job)})))
    assert is_isolated(opened["error"]) and GATE in opened["error"]


@given(st.text(st.sampled_from(["a", " ", "\u05d0", "4", "\u0628", "."]), max_size=200), st.integers(4, 40))
def test_every_line_of_a_broken_text_is_isolated_by_itself(text: str, width: int) -> None:
    lines = wrap(f"at {isolated(text)} stands 4.20 m", width)
    assert all(is_isolated(line) for line in lines)
    assert "".join(lines).replace(FSI, "").replace(PDI, "").replace(" ", "") == f"at{text}stands4.20m".replace(" ", "")


def test_what_is_isolated_within_a_line_stays_so() -> None:
    assert list(closed(["a", f"b {FSI}c", f"d{PDI} e", f"{FSI}f{PDI}"])) == [
        *("a", f"b {FSI}c{PDI}", f"{FSI}d{PDI} e", f"{FSI}f{PDI}"),
    ]
    assert isolated("gate") == "gate" and isolated(isolated(GATE)) == isolated(GATE) == FSI + GATE + PDI


def test_a_note_cannot_pose_as_anything_else_in_text() -> None:
    plain, noted = (sheet_text(answer_of({**SOUND, **more})).splitlines() for more in ({}, {"note": POSING}))
    added = [line for line in noted if line.startswith(NOTE.rstrip())]
    assert [line for line in noted if line not in added] == plain
    assert len(added) >= POSING.count("\n") + 1 and all(len(line) <= 80 for line in added)
    assert not any(line.startswith(NOTE.rstrip()) for line in plain)


def test_a_note_cannot_pose_as_anything_else_in_html() -> None:
    plain, noted = (sheet_html(answer_of({**SOUND, **more})) for more in ({}, {"note": POSING}))
    lines = re.findall(r'<p class="note">.*?</p>', noted, re.DOTALL)
    assert len(lines) == sum(bool(line.strip()) for line in POSING.split("\n"))
    for line in lines:
        noted = noted.replace(line, "", 1)
    assert noted == plain


def test_a_note_is_in_no_table_of_values_and_no_drawing() -> None:
    plain, noted = (answer_of({**SOUND, **more}) for more in ({}, {"note": POSING}))
    assert stakes_csv(plain) == stakes_csv(noted)
    assert drawings(sheet_html(plain))[0].tag and [list(words_of(svg)) for svg in drawings(sheet_html(plain))] == [
        list(words_of(svg)) for svg in drawings(sheet_html(noted))
    ]


@pytest.mark.parametrize("sign", ["\n", "\r", "\r\n", "\x0b", "\x0c", "\x85", "\u2028", "\u2029", "\t"], ids=ascii)
@pytest.mark.parametrize("place", ["title", "ends", "ties", "ground", "known"])
def test_nothing_but_a_note_has_lines(place: str, sign: str) -> None:
    text = f"gate{sign}SET THE STAKES"
    job = json.loads(json.dumps(NAMED))
    if place == "title":
        job["title"] = text
    elif place == "ties":
        job["ties"]["A"][0]["to"] = text
    else:
        row = job[place] if place == "ends" else job[place][0]
        row["A" if place == "ends" else "name"] = text
    with pytest.raises(BadJob) as refusal:
        answer_of(job)
    assert refusal.value.key == "job.not_printable" and refusal.value.field.startswith(place)


def test_a_job_that_must_not_be_built_says_so_in_its_table_and_its_drawings() -> None:
    for more, stopped in (({}, False), (WAYS["stopped"], True)):
        answered = answer_of({**SOUND, **more})
        assert bool(answered["stops"]) is stopped
        rows = list(csv.reader(io.StringIO(stakes_csv(answered))))
        if stopped:
            assert rows.pop(0) == [say("csv.stopped", why=" ".join(answered["stops"]))]
        status = rows[0].index(say("csv.status"))
        wanted = say("csv.status_stop") if stopped else say("csv.status_ready")
        assert [row[status] for row in rows[1:]] == [wanted] * len(answered["stakes"])
        # A stopped sheet leaves most of them out; somebody may still draw one by itself.
        pictures = [drawn(Drawing(kind), answered, kind) for kind in ("plan", "site", "stick", "on-line", "scatter")]
        for svg in [*drawings(sheet_html(answered)), *map(ET.fromstring, pictures)]:
            shown = " ".join(words_of(svg))
            assert (" ".join(say("draw.stopped").split()) in shown) is stopped
            texts = [element.text for element in svg.iter() if element.tag.endswith("}text")]
            assert ("Don't build" in " ".join(texts)) is stopped, "to be seen, not only read out"


def test_the_drawing_of_a_blunder_says_it_too() -> None:
    job = {**SOUND, **WAYS["stopped"]}
    kind = answer_of(job)["mistakes"][0]["kind"]
    svg = json.loads(handle("mistake", json.dumps({"fields": fields_of_job(job), "kind": kind})))["svg"]  # type: ignore[arg-type]
    assert "Don&apos;t build" in svg or "Don't build" in svg


@pytest.mark.parametrize("hazard", [*HAZARDS, "-", "=1+1|", "@SUM(", "+1"], ids=ascii)
def test_no_cell_is_a_formula(hazard: str) -> None:
    from bowstring.sheet.csv import _harmless

    for text in (hazard + "cmd", " " + hazard + "cmd", FSI + hazard + "cmd" + PDI):
        assert _harmless(text).lstrip(f" {FSI}").startswith("'")


@pytest.mark.parametrize("name", ["=HYPERLINK(1)", "+1", "-1+2", "@x"])
def test_a_mark_s_name_is_no_formula(name: str) -> None:
    job = {**SOUND, "method": "tapes", "known": [{"name": name, "x": "-2 m", "y": "-2 m"}], "tapes_from": [name, "B"]}
    table = stakes_csv(answer_of(job))
    assert name in table
    for row in csv.reader(io.StringIO(table)):
        for cell in row:
            assert not cell.startswith(HAZARDS) or re.fullmatch(r"-[0-9.]+", cell), cell
