"""What paper says of a line: on which hand the concrete is, which edge of it an arc is, where each piece begins."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest
from shapely.geometry import LineString, Point, Polygon

from bowstring.drawings.line_shape import points_of
from bowstring.faces.paper import paper_html
from bowstring.faces.paper_lined import lined_sides
from bowstring.sheet.short import short_text
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from line_jobs import CREEK
from lined_jobs import FIVE, KINKED

HANDS = {"left": "LEFT", "right": "RIGHT"}


def text_of(html: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", re.sub(r"</?(span|b)\b[^>]*>", "", html))).split())


def front_of(job: dict[str, Any]) -> str:
    """The front of the staked arc's own sheet."""
    html = paper_html(answer_to(job), "", "")
    return text_of(next(iter(re.findall(r'<section class="side front.*?</section>', html, re.DOTALL))))


def hand_of_concrete(answer: Any) -> str:
    """On which hand of the staked arc the slab is, by shapely: a point a hand's breadth left of mid-arc, held against
    the slab's outline."""
    shape = answer["lined"]["shape"]
    left, right = (LineString(points_of(shape[hand])) for hand in ("left", "right"))
    slab = LineString([*left.coords, *reversed(right.coords), left.coords[0]])
    run = shape["line"][answer["lined"]["at"] - 1]
    points = points_of([run])
    middle = len(points) // 2
    (x, y), (x2, y2) = points[middle - 1], points[middle + 1]
    size = ((x2 - x) ** 2 + (y2 - y) ** 2) ** 0.5
    at = Point(points[middle][0] - (y2 - y) / size * 0.1, points[middle][1] + (x2 - x) / size * 0.1)
    return "left" if Polygon(slab.coords).contains(at) else "right"


@pytest.mark.parametrize("edge", ["left", "right"])
@pytest.mark.parametrize("at", [2, 4])
def test_an_arcs_own_sheet_says_the_concretes_hand_and_which_edge_the_arc_is(at: int, edge: str) -> None:
    job = {**FIVE, "at": at, "edge": edge}
    answer, told = answer_to(job), front_of(job)
    hand = hand_of_concrete(answer)
    assert f"Walking A to B, the concrete is on your {HANDS[hand]}: this arc is its" in told
    # An arc that turns left has its center on the left: concrete on that hand lies inside of it.
    inside = hand == answer["line"]["pieces"][at - 1]["turn"]
    assert ("OUTSIDE edge." if inside else "INSIDE edge.") in told
    assert ("INSIDE edge." if inside else "OUTSIDE edge.") not in told


def test_stakes_off_the_line_are_not_called_the_concretes_edge() -> None:
    told = front_of({**FIVE, "at": 2, "offset": "2 ft", "toward": "centre"})
    assert "the drawing's arc is its" in told and "this arc is its" not in told


def test_a_centerline_has_concrete_on_both_hands() -> None:
    told = front_of(CREEK)
    assert "the concrete is on BOTH hands, 3' 0\" each: this arc is its middle." in told


@pytest.mark.parametrize("said", [{"edge": "centre", "drawn_to": "face"}, {}])
def test_nothing_is_said_of_a_hand_that_nobody_gave(said: dict[str, Any]) -> None:
    job = {key: value for key, value in FIVE.items() if key not in ("edge",)}
    told = front_of({**job, **said})
    assert ("on your" not in told.partition("Sheets of their own")[0]) and ("BOTH hands" in told) == bool(said)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_terminals_sheet_and_the_form_sheet_say_it_too(language: str) -> None:
    speak(language)
    try:
        answer = answer_to(FIVE)
        form = text_of(lined_sides(answer, ""))
        assert answer["lined"]["concrete"] and answer["lined"]["concrete"].replace("*", "") in form
        short = " ".join(short_text(answer).replace(">", "").split())
        assert answer["lined"]["concrete_at_arc"] in short
    finally:
        speak("english")


@pytest.mark.parametrize("job", [FIVE, CREEK, KINKED])
def test_the_form_sheet_says_where_each_piece_begins(job: dict[str, Any]) -> None:
    """Every row of the page's table, in a table of its own or in the row of the piece that ends there."""
    answer = answer_to(job)
    told = text_of(lined_sides(answer, ""))
    tables = {table["key"]: table for page in answer["lined"]["pages"] for table in page["tables"]}
    for name, at, ahead, off in tables["begins"]["rows"]:
        assert f"{name} {at} {ahead} {off}" in told or f"{ahead} {off}" in told, name
    ends = [row[1] for row in tables["pieces"]["rows"]]
    assert [row[1] for row in tables["begins"]["rows"]] == ends  # a piece begins where the one before ends
    assert "looking along piece 1" in told or "From the start, along piece 1" in told
