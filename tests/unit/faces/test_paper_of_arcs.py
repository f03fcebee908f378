"""The sheets of several arcs of a line in one hand: each says which arc it is of, its hand, and all that is checked."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring.faces.paper import paper_html
from bowstring.sheet.setting import settings
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from unit.report.test_slope_along import BANK

WALKED: dict[str, Any] = {**BANK, "slab": {"thickness": "4 in", "base": "4 in"}, "tolerance": "1/4 in"}


def sides(job: dict[str, Any]) -> list[str]:
    """The words of each side, without its drawings."""
    html = re.sub(r"<svg.*?</svg>", "", paper_html(answer_to(job), "https://example.org/#x"), flags=re.DOTALL)
    plain = [unescape(re.sub(r"<[^>]+>", " ", one)).replace("\u00a0", " ") for one in html.split("<section")[1:]]
    return [" ".join(one.partition(">")[2].split()) for one in plain]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("at", [2, 4, 5])
def test_title_and_footer_name_the_arc(at: int, language: str) -> None:
    speak(language)
    try:
        front, back, *_forms = sides({**WALKED, "at": at})
        title, arc = say("sheet.untitled_line", count=6), say("lined.arc", number=at).replace("~", "")
        named = say("paper.title_of_arc", title=title, arc=arc)
        assert front.startswith(named) and named in back
        assert say("paper.foot_of_arc", arc=arc, told="").strip() in front.split(title)[-1]
    finally:
        speak("english")


def test_an_arc_alone_has_its_title_as_before() -> None:
    front = sides({"bowstring": 1, "title": "Pond", "arc": {"radius": "30 ft", "chord": "20 ft"}, "side": "left",
                   "drawn_to": "face"})[0]  # fmt: skip
    assert front.startswith("Pond ") and "Arc" not in front


@pytest.mark.parametrize("method", ["halving", "tangent"])
def test_arc_fours_sheet_says_that_it_turns_left(method: str) -> None:
    """Where many stakes leave no room for it beside the hand it stands under the title."""
    front = sides({**WALKED, "at": 4, "start": "one-end", "method": method})[0]
    assert "turns LEFT" in front and "on your RIGHT" in front


def test_tangent_offsets_name_the_hand_off_each_tangent() -> None:
    """By hand: the arc turns left of its straight at A, and from B back toward the PI it lies on the right."""
    for turn, hands in (("left", ("LEFT", "RIGHT")), ("right", ("RIGHT", "LEFT"))):
        line = [dict(piece) for piece in BANK["line"]]
        line[3]["turn"] = turn
        job = {**WALKED, "line": line, "at": 4, "start": "one-end", "method": "tangent", "edge": "left"}
        (how,) = settings(answer_to(job))[0].how  # type: ignore[arg-type]
        assert (
            how
            == f"String S to A (off {hands[0]}) and B to TB (off {hands[1]}), tight. Mark along, facing as you mark."
        )
    told = answer_to({**WALKED, "at": 4, "start": "one-end", "method": "tangent"})
    for step in told["steps"]:
        if step["kind"].startswith("tangent_offset"):
            hand = "left" if "A" in step["names"].values() and "S" in step["names"].values() else "right"
            assert f"to the {hand} (" in step["text"]


def test_a_pin_that_is_set_between_stakes_says_after_which() -> None:
    front = sides({**WALKED, "at": 4, "start": "one-end", "method": "tangent"})[0]
    assert re.search(r" 11 After 10: Pin TB", front)
    assert "After" not in sides({**WALKED, "at": 4, "start": "one-end"})[0].split("drive")[0]


def test_what_proves_s_stands_on_paper() -> None:
    told = answer_to({**WALKED, "at": 5, "start": "one-end"})
    check = told["steps"][0]["measures"][-1]["text"]
    assert f"D to S {check} ." in sides({**WALKED, "at": 5, "start": "one-end"})[0]


def test_every_distance_that_proves_the_line_is_signed_off_where_it_costs_no_side() -> None:
    """The fifth is the only one that catches the last straight's end."""
    rows = answer_to(WALKED)["far_checks"]["rows"]
    whole = " ".join(sides(WALKED))
    assert len(rows) == 5
    for row in rows:
        assert f"{row['from']} to {row['to']} {row['shown']}" in whole
