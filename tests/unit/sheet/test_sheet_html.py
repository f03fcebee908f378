"""The HTML sheet: it says all that the text sheet says, in order, and nothing that somebody typed becomes markup."""

from __future__ import annotations

import html
import re
from functools import cache
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.drawings.triangle import has_triangle
from bowstring.sheet.blocks import Drawing, Items, Paragraph, Table
from bowstring.sheet.html import sheet_html
from bowstring.sheet.markup import marked
from bowstring.sheet.outline import outline
from helping import SAID, answer_to

EVIL = "<img src=x onerror=alert(1)></script>'\"&"
JOBS: list[dict[str, Any]] = [
    DEMO,
    {**SAID, "unit": "m", "arc": {"radius": "9.5", "chord": "12"}, "offset": "38 mm", "toward": "outside",
     "driven": "board", "method": "halving"},
    {**SAID, "arc": {"chord": "60 ft", "sagitta": "40 ft"}, "levels": 6, "side": "right"},
    {**SAID, "arc": {"chord": "60 ft", "sagitta": "9 ft"}, "got": [{"stake": "M", "sagitta": "9' 1/2\""}]},
    {**SAID, "arc": {"chord": "60 ft", "sagitta": "9 ft", "radius": "60 ft"}, "levels": 1,
     "found": {"chord": ["61 ft", "61 ft"], "tape": "level"},
     "ties": {"A": [{"to": "wall", "distance": "3 ft"}, {"to": "post", "distance": "4 ft"}]}},
]  # fmt: skip


class Sheet(HTMLParser):
    """Reads a sheet: its tags with their attributes, its words outside drawings; fails on tags that aren't closed."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.open: list[str] = []
        self.words = ""
        self.feed(text)
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))
        self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if "svg" not in self.open:
            self.words += data


def texts(answered: dict[str, Any]) -> list[str]:
    """Return every text of an answer's outline but the first column of what was read, in order."""
    found = []
    for section in outline(answered):
        found.append(section.title)
        for block in section.blocks:
            if isinstance(block, Paragraph):
                found += [line for line in block.text.split("\n") if line.strip()]
            elif isinstance(block, Items):
                found += block.texts
            elif isinstance(block, Table):
                rows = [row[section.key == "readings" :] for row in block.rows]
                found += [block.caption, *block.head, *(cell for row in rows for cell in row)]
    return found


@cache
def html_of(number: int) -> str:
    return sheet_html(answer_to(JOBS[number]))


@pytest.mark.parametrize("number", range(len(JOBS)))
def test_all_of_the_outline_stands_there_in_its_order(number: int) -> None:
    answered = answer_to(JOBS[number])
    sheet, place = Sheet(html_of(number)), 0
    for text in texts(answered):
        place = sheet.words.index(text, place) + len(text)


@pytest.mark.parametrize("number", range(len(JOBS)))
def test_the_sheet_is_well_made(number: int) -> None:
    text, answered = html_of(number), answer_to(JOBS[number])
    sheet = Sheet(text)
    ids = [attributes["id"] for _, attributes in sheet.tags if "id" in attributes]
    assert len(ids) == len(set(ids))
    for _, attributes in sheet.tags:
        assert set((attributes.get("aria-labelledby") or "").split()) <= set(ids)
        assert not any(name.startswith("on") or name == "style" for name in attributes)
    heads = [attributes.get("scope") for tag, attributes in sheet.tags if tag == "th"]
    assert heads and set(heads) == {"col", "row"}
    stopped = bool(answered["stops"])
    levels = 0 if stopped else len(answered["halving"])  # type: ignore[arg-type]
    ways = [attributes.get("href") or "" for tag, attributes in sheet.tags if tag == "a"]
    assert {way.removeprefix("#") for way in ways if way.startswith("#sheet-")} <= set(ids)
    parts = [attributes["id"] for tag, attributes in sheet.tags if tag == "section"]
    assert ways[: len(parts)] == [f"#{name}" for name in parts]
    folds = [attributes for tag, attributes in sheet.tags if tag == "details" and "level" in attributes["class"]]
    assert len(folds) == levels and all("open" in fold for fold in folds)
    drawings = [attributes for tag, attributes in sheet.tags if tag == "svg"]
    wanted = [
        block
        for section in outline(answered)
        for block in section.blocks
        if isinstance(block, Drawing)
        and block.kind != "mistake"  # drawn when its fold is opened
        and (block.kind != "triangle" or has_triangle(answered, block.level))
    ]
    mistakes = 0 if stopped else len(answered["mistakes"])  # type: ignore[arg-type]
    assert text.count("data-mistake=") == mistakes
    assert len(drawings) == len(wanted) == text.count("<figure")
    assert stopped or len(drawings) > 2
    ids_of_drawings = [f"draw-{one.kind}-{one.level}" if one.level else f"draw-{one.kind}" for one in wanted]
    assert [drawing["id"] for drawing in drawings] == ids_of_drawings


def test_a_drawing_has_a_room_that_the_style_knows() -> None:
    style = (Path(__file__).resolve().parents[3] / "site" / "sheet.css").read_text("utf-8")
    for number in range(len(JOBS)):
        for room in re.findall(r"\b(room-\d+)\b", html_of(number)):
            width = room.partition("-")[2]
            assert f".{room} svg {{ min-width: {width}px; }}" in style


def test_nothing_that_was_typed_becomes_markup() -> None:
    job = {
        **DEMO,
        "title": EVIL,
        "note": EVIL,
        "ends": {"A": EVIL[:40], "B": f"{EVIL[:39]}B"},  # two that are alike would stop the sheet
        "ties": {end: [{"to": EVIL[:40], "distance": "3 ft"}] * 2 for end in "AB"},
    }
    text = sheet_html(answer_to(job))
    sheet = Sheet(text)
    assert not {"img", "script"} & {tag for tag, _ in sheet.tags}
    assert sheet.words.count(EVIL) >= 2
    assert sheet.words.count(EVIL[:39]) >= 8
    ties = {end: [{"to": "wall", "distance": "3 ft"}] * 2 for end in "AB"}
    clean = sheet_html(answer_to({**DEMO, "ends": {"A": "wall", "B": "bank"}, "ties": ties}))
    # Numbers are marked with a span, and a long landmark takes more lines in a drawing: all else is the same.
    by_length = {"span", "text"}
    tags, clean_tags = ([tag for tag, _ in one.tags if tag not in by_length] for one in (sheet, Sheet(clean)))
    assert tags == clean_tags


@pytest.mark.parametrize(
    ("text", "whole"),
    [
        ("to 5' 3\" there", ["5' 3\""]),
        ("reads 19' 8-1/2\".", ["19' 8-1/2\""]),
        ("a mark of 1/8 in; 0.25 in and 12 mm", ["1/8 in", "0.25 in", "12 mm"]),
        ("3-4-5 triangle", ["3-4-5"]),
        ("61°47'07\" or 3°", ["61°47'07\"", "3°"]),
        ("-0.23 in", ["-0.23 in"]),
        ("turns +0.04°, 0.08 in", ["+0.04°", "0.08 in"]),
        ("about 37' 0-1/8\" = 37.0119 ft", ["37' 0-1/8\"", "37.0119 ft"]),
        ("3 inches in 4 m/s", []),
    ],
)
def test_numbers_stay_on_one_line(text: str, whole: list[str]) -> None:
    shown = marked(text)
    found = [html.unescape(piece) for piece in re.findall(r'<span class="n">(.*?)</span>', shown)]
    assert [piece for piece in found if piece != "4 m"] == whole
    assert html.unescape(re.sub(r"<[^>]*>", "", shown)) == text
