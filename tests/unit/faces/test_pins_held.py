"""Pins that hold a board are on its back by their edges: each face says so, and none says their centers."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

from bowstring.faces.build import build_html
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.faces.stakes import stakes_html
from helping import answer_to

WALK: dict[str, Any] = {
    "arc": {"radius": "41' 6\"", "chord": "36 ft"}, "side": "left", "levels": 2, "drawn_to": "face", "edge": "inside",
    "width": "4' 6\"", "board": {"kind": "2x4"}, "driven": "pin", "diameter": "3/4 in", "offset": "1-1/2 in",
    "toward": "centre", "ends": {"A": "oak", "B": "post"},
}  # fmt: skip
SAID = "edge toward the board"


def text_of(html: str) -> str:
    return " ".join(unescape(re.sub("<[^>]*>", "", html)).split())


def test_each_card_that_drives_a_pin_tells_its_edge() -> None:
    answer = answer_to(WALK)
    driven = 0
    for number in range(1, len(answer["cards"]) + 1):
        card = answer["cards"][number - 1]
        sets = bool(card["stake"]) or not {one["name"] for one in answer["stakes"]}.isdisjoint(card["sets"])
        told = text_of(stakes_html(answer, number))
        assert (SAID in told) is sets and "*" not in told
        driven += sets
    assert driven >= len(answer["stakes"]) - 2
    centers = answer_to({**WALK, "offset": "1-7/8 in"})
    assert not any(SAID in stakes_html(centers, number) for number in range(1, len(centers["cards"]) + 1))


def test_the_sheet_the_forms_and_the_edges_say_the_same() -> None:
    answer = answer_to(WALK)
    for html in (paper_html(answer), forms_sides(answer, "2026-05-04"), build_html(answer, "edges")):
        told = text_of(html)
        assert "center of each pin" not in told
    assert "each pin's edge toward the board, not its center" in text_of(paper_html(answer))
    for html in (forms_sides(answer, "2026-05-04"), build_html(answer, "edges")):
        assert "set each pin's edge on the line, not its center" in text_of(html)


def test_along_a_line_of_pieces_it_is_told_as_well() -> None:
    job = {
        "line": [{"straight": "20 ft"}, {"arc": {"radius": "41' 6\"", "arc_length": "30 ft"}, "turn": "left"}],
        "at": 2, "drawn_to": "face", "edge": "left", "width": "4' 6\"", "board": {"kind": "2x4"}, "driven": "pin",
        "diameter": "3/4 in", "offset": "1-1/2 in", "toward": "centre", "levels": 2,
    }  # fmt: skip
    answer = answer_to(job)
    assert answer["on_line"]["pins"] == "back"
    for html in (build_html(answer, "edges"), forms_sides(answer, "2026-05-04")):
        assert "set each pin's edge on the line, not its center" in text_of(html)
