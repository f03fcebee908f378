"""Along a line of several pieces the form asks by left and right, start and end: outer, inner, A and B are an arc's."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring.page.fields import fields_of_job
from bowstring.page.form import form_html
from bowstring.page.labels import label_of
from bowstring.sheet.entries import entries
from bowstring.sheet.text import sheet_text
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from lined_jobs import FIVE

TOPS: dict[str, Any] = {**FIVE, "grade": {"from": "100.00 ft", "to": "100.60 ft", "low": "right"}}
OF_AN_ARC = re.compile(r"\b(outer|inner|exterior|interior|afuera|adentro)\b|\bA\b(?! )|\bA (to|a|out\w*|fuera) |\bB\b")
UNSEEN = {"edge", "grade-low", "slab-fills", "slab-sides", "slab-both_ends", "slab-back", "slab-end_width",
          "slab-apron-along"}  # fmt: skip
"""Choices with hands of their own along a line, and what no line of several pieces has."""


def shown(language: str) -> dict[str, str]:
    """What each field of the slab and of its slope, and each fold's head, shows along a line, by its id."""
    speak(language)
    try:
        html = form_html(fields_of_job(TOPS))
    finally:
        speak("english")
    found = {}
    for part in re.split(r'(?=<section class="panel")', html):
        if not re.match(r'<section class="panel" id="panel-(slab|slope)"', part):
            continue
        seen = re.sub(r'<span data-pieces="one">.*?</span>(?=<span data-pieces)', "", part)
        seen = re.sub(r'<span data-fills="yes">.*?</span>', "", seen)
        for piece in re.split(r'(?=data-field=")|(?=<details class="fold" id=")', seen):
            name = re.match(r'(?:data-field="|<details class="fold" id=")([^"]*)"', piece)
            if name:
                found[name[1]] = " ".join(unescape(re.sub("<[^>]*>", " ", piece.partition(">")[2])).split())
    return found


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_a_line_is_asked_has_no_hand_of_an_arc(language: str) -> None:
    asked = shown(language)
    assert {"grade-from", "grade-to", "form-tops", "slab-depths", "joints-every"} <= set(asked)
    assert {name: text for name, text in asked.items() if name not in UNSEEN and OF_AN_ARC.search(text)} == {}


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_line_asks_for_the_left_forms_tops_and_lists_them_so(language: str) -> None:
    """The left form meets them: with the right one's given, a walk would stand high by its cross fall."""
    asked, left = shown(language), "IZQUIERDA" if language == "spanish" else "LEFT"
    assert all(left in asked[name] for name in ("grade-from", "grade-to"))
    speak(language)
    try:
        answer = answer_to(TOPS)
        listed = {row[1]: row[0] for row in entries(answer).rows}
        assert left in listed["100.00 ft"] and left in listed["100.60 ft"] and left in sheet_text(answer)
        assert left in label_of("grade-from", fields_of_job(TOPS))
        assert left not in label_of("grade-from", {"grade-from": "1 ft"})
        alone = {**{key: TOPS[key] for key in ("width", "edge", "slab", "drawn_to")}, "side": "left",
                 "arc": {"radius": "42 ft", "chord": "20 ft"}, "edge": "outside", "grade": TOPS["grade"]}  # fmt: skip
        alone["grade"] = {**alone["grade"], "low": "inside"}
        of_arc = {row[1]: row[0] for row in entries(answer_to(alone)).rows}
        assert of_arc["100.00 ft"] == say("entry.grade.from")
    finally:
        speak("english")


def test_a_width_at_b_and_an_aprons_line_are_asked_of_an_arc_alone() -> None:
    """The style hides what is of one piece as soon as another is typed."""
    html = form_html(fields_of_job(TOPS))
    for name in ("slab-end_width", "slab-apron-along"):
        inside = html.partition(f'id="{name}"')[0].rpartition('<div data-pieces="one">')[2]
        assert inside.count("<div") >= inside.count("</div>"), name
    assert html.partition('id="slab-base"')[0].rpartition('data-pieces="one"')[2].count("</div>") >= 1
