"""Nothing that the long sheet tells is lost: each text of an answer, altered, is found on some face.

Every text that a person reads gets a sign of its own, all at once, in a copy of the answer; the sheet and the faces are
made of the copy, and each sign that stands on the sheet has to stand on a face. What a face says anew, in other words
or from other texts, is named in ``ANEW`` with where.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.faces.build import PAGES, build_html
from bowstring.faces.checks import checks_html
from bowstring.faces.conclusions import FOLDS
from bowstring.faces.got import Panel, got_html
from bowstring.faces.paper import paper_html
from bowstring.faces.stakes import count, stakes_html, steps_list_html
from bowstring.faces.why import fold_html, keys_of, why_html
from bowstring.report.parts import PARTS
from bowstring.sheet.html import sheet_html
from helping import SAID, answer_to
from line_jobs import SHAPES as LINES
from radius_wall import WALL as RADIUS_WALL

PLAIN: dict[str, Any] = {**SAID, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/4 in"}
MARKS = [{"mark": "A", "x": "100 ft", "y": "50 ft"}, {"mark": "B", "x": "122.8 ft", "y": "80.4 ft"}]
TIES = {"A": [{"to": "oak", "distance": "9 ft"}, {"to": "pump", "distance": "12 ft"}]}
JOBS: dict[str, dict[str, Any]] = {
    "example": {**DEMO, "note": "Ask Rosa about the gate.", "read": [{"check": "Q1-B", "value": "29' 1-7/8\""}] * 2,
                "ties": TIES, "ticket": "B-4417"},
    "ordinates": {**PLAIN, "method": "ordinates", "ground": DEMO["ground"][:1], "control": {"marks": MARKS}},
    "offset": {**PLAIN, "offset": "2 ft", "toward": "outside", "driven": "board", "fall": {"along": 3, "across": 1}},
    "found": {**PLAIN, "found": {"chord": ["38' 1\"", "38' 1\""], "tape": "level", "hold": "radius", "sure": True},
              "arc": {**PLAIN["arc"], "radius": "37 ft"}},
    "got": {**PLAIN, "tolerance": "1/2 in",
            "got": [{"stake": "Q1", "measures": [{"from": "mid Q1", "to": "Q1", "distance": "1' 4-1/4\""}]}]},
    "stopped": {**PLAIN, "drawn_to": "unsure"},
    "slab": {**PLAIN, "width": "5 ft", "edge": "outside", "slab": {"thickness": "4 in"},
             "grade": {"slope": 2, "high": "B", "low": "inside"}},
    "line": LINES["kinks"],
    "wall": RADIUS_WALL,
    "filled": {**PLAIN, "slab": {"thickness": "4 in", "fills": True}, "joints": {"every": "5 ft"},
               "grade": {"slope": 2, "high": "B", "low": "inside"}},
    "rounded end": {**PLAIN, "slab": {"thickness": "4 in", "fills": True, "sides": "12 ft"},
                    "joints": {"every": "5 ft"}, "grade": {"slope": 2, "high": "B", "low": "inside"}},
    "square end": {**PLAIN, "slab": {"thickness": "4 in", "fills": True, "sides": "12 ft", "back": "against"},
                   "grade": {"slope": 2, "high": "B", "low": "inside"}},
    "both ends": {**PLAIN, "slab": {"thickness": "4 in", "fills": True, "sides": "12 ft", "both_ends": True},
                  "grade": {"slope": 2, "high": "B", "low": "inside"}},
}  # fmt: skip


def why_opened(answer: Any) -> str:
    return why_html(answer, FOLDS) + "".join(fold_html(answer, key) for key in keys_of(answer))


def all_cards(answer: Any) -> str:
    cards = "".join(stakes_html(answer, number) for number in range(1, count(answer) + 1))
    return cards + steps_list_html(answer, 1) + steps_list_html(answer, count(answer))


def what_was_got(answer: Any) -> str:
    return "".join(got_html(Panel("", [], row, answer["tolerance_shown"] or "")) for row in answer["got"])


def all_of_the_build(answer: Any) -> str:
    return "".join(build_html(answer, page) for page in ("", "line", *PAGES))


FACES: list[Callable[[Any], str]] = [why_opened, checks_html, all_cards, what_was_got, all_of_the_build, paper_html]
"""The faces, each as a function of an answer."""

ANEW = {
    "version.version": "the page's own last line",
    "steps.text": "each step's card has a sentence of its own",
    "halving.half_shown": "a measure of the steps of that round",
    "halving.half_chord_shown": "a reading of the steps of that round",
    "edges.width_shown": "the width stick's own length, each stake's own where it isn't one",
    "edges.slab_shown": "the slab's own width, where that is the same at every stake",
    "pour.text": "the same as one large number with its unit",
    "stake_got.readings": "what its card says it was got by: nobody sets that stake any more",
}
"""Texts that stand on no face as they are, and what a face has in their place."""

NO_TEXT = {
    "unit", "mark", "side", "driven", "drawn_to", "start", "tolerance", "levels", "method", "method_said",
    "halve_first", "parallel", "arc", "staked", "held", "marks", "line",
    "second_pass",
}  # fmt: skip
"""Parts that are numbers, flags and keys: what they say to a person is in the other parts' texts."""

READ = re.compile(
    r"(.*_)?(shown|text|told|lines)|how|label|why_not|point|come_back|prove|by|head|by_hand|typed|wrong|slips|overrun"
    r"|onward|was|now|reason|button"
)
"""Keys whose texts a person reads."""

TEXTS = {
    "hand", "square", "cautions", "warnings_top", "notes", "tolerance_shown", "arc_shown", "staked_shown", "ends",
    "title", "note", "version", "stops", "located",
}  # fmt: skip
"""Parts that are texts themselves."""


def leaves(value: Any, place: tuple[Any, ...]) -> Iterator[tuple[Any, ...]]:
    """Yield the place of each text in an answer that a person reads."""
    if isinstance(value, Mapping):
        for key, inner in value.items():
            yield from leaves(inner, (*place, key))
    elif isinstance(value, list):
        for number, inner in enumerate(value):
            yield from leaves(inner, (*place, number))
    elif isinstance(value, str) and value:
        key = next((one for one in reversed(place) if isinstance(one, str)), "")
        if place[0] in TEXTS or READ.fullmatch(key) or (place[0], key) == ("ties", "to"):
            yield place


def is_said_anew(answer: Any, place: tuple[Any, ...]) -> bool:
    """Whether a text is one of ``ANEW``, by its part and its key, or by its step's kind and the part of that."""
    names = {f"{place[0]}.{place[-1]}"}
    if place[0] == "steps":
        names.add(f"{answer['steps'][place[1]]['kind']}.{place[2]}")
    return bool(ANEW.keys() & names)


def signs_in(html: str) -> set[str]:
    return set(re.findall(r"zq\d+z", html))


def altered(told: Mapping[str, Any]) -> tuple[dict[str, Any], dict[str, tuple[Any, ...]]]:
    """Return the answer with a sign of its own in each such text, and the places by their signs."""
    answer, signs = dict(told), dict[str, tuple[Any, ...]]()
    for number, place in enumerate(list(leaves(answer, ()))):
        sign = f"zq{number}z"
        signs[sign] = place
        inside: Any = answer
        for step in place[:-1]:
            inside = inside[step]
        inside[place[-1]] = f"{inside[place[-1]]} {sign}"
    copied_to_cards(answer)
    return answer, signs


def copied_to_cards(answer: dict[str, Any]) -> None:
    """Add the signs of a step's texts to the same texts on its cards: those are the step's own."""
    for card in answer["cards"]:
        steps = [answer["steps"][number - 1] for number in card["steps"]]
        told = [text for step in steps for _place, text in texts_of(step)]
        for one in [*card["numbers"], *([card["right"]] if card["right"] else [])]:
            same = [text for text in told if one["shown"] and plain(text) == plain(one["shown"])]
            one["shown"] = " ".join([one["shown"] or "", *(sign for text in same for sign in sorted(signs_in(text)))])


def texts_of(step: dict[str, Any]) -> Iterator[tuple[tuple[Any, ...], str]]:
    for place in leaves(step, ("steps",)):
        inside: Any = step
        for key in place[1:]:
            inside = inside[key]
        yield place, inside


def plain(text: str) -> str:
    return re.sub(r"\s*zq\d+z", "", text)


@pytest.mark.parametrize("name", JOBS)
def test_each_altered_text_is_found_on_some_face(name: str) -> None:
    answer, signs = altered(answer_to(JOBS[name]))
    there = signs_in(" ".join(face(answer) for face in FACES))
    before = signs_in(sheet_html(answer))
    lost = {signs[sign] for sign in before - there if not is_said_anew(answer, signs[sign])}
    assert sorted(map(str, lost)) == []
    assert len(before & there) > (40 if name == "stopped" else 200)


def test_every_part_is_looked_at() -> None:
    seen: set[str] = set()
    for job in JOBS.values():
        seen |= {place[0] for place in leaves(answer_to(job), ())}
    assert set(PARTS) - seen == NO_TEXT


def test_what_was_got_and_what_settles_a_stop_stand_on_their_faces() -> None:
    """Neither is on the long sheet."""
    answer, signs = altered(answer_to(JOBS["got"]))
    told = {place[2:] for sign, place in signs.items() if place[0] == "got" and sign in what_was_got(answer)}
    assert {("shown",), ("onward",), ("later", 0, "label"), ("later", 0, "was"), ("later", 0, "now")} <= told
    answer, signs = altered(answer_to(JOBS["stopped"]))
    told = {place[2:] for sign, place in signs.items() if place[0] == "ways_out" and sign in all_cards(answer)}
    assert told == {("text",), ("reason",), ("button",)}


def test_a_text_that_stands_on_no_face_is_seen() -> None:
    answer, signs = altered(answer_to(JOBS["example"]))
    told = checks_html(answer)
    assert any(sign not in told for sign, place in signs.items() if place[0] == "rule")


def texts_in(value: Any, place: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """Yield the place of each text in a part, those that no key tells of too: titles, heads and cells of tables."""
    inside = value.items() if isinstance(value, Mapping) else enumerate(value) if isinstance(value, list) else ()
    for key, inner in inside:
        yield from texts_in(inner, (*place, key))
    if isinstance(value, str) and value and not {"key", "state", "panel", "kind", "turn"} & set(place[-1:]):
        yield place


@pytest.mark.parametrize("name", ["creek", "kinks", "serpentine", "nothing said"])
def test_each_text_of_a_line_stands_on_its_build_and_on_the_long_sheet(name: str) -> None:
    answer = dict(answer_to(LINES[name]))
    signs = {}
    for number, place in enumerate(list(texts_in(answer["lined"]))):
        inside: Any = answer["lined"]
        for step in place[:-1]:
            inside = inside[step]
        signs[f"zq{number}z"] = place
        inside[place[-1]] = f"{inside[place[-1]]} zq{number}z"
    pages = {page["key"]: page for page in answer["lined"]["pages"]}
    for row in answer["build"]:
        row["text"], row["more"] = pages[row["key"]]["short"], pages[row["key"]]["more"]
    there = signs_in(all_of_the_build(answer))
    # Where the line ends, its length and the concrete's hand are in the sentences of its page; where B is from A is the
    # first step's; which edge the arc is stands on its paper (test_paper_line_told).
    elsewhere = {("ends",), ("length_shown",), ("b_from_a",), ("concrete",), ("concrete_at_arc",)}
    lost = {place for sign, place in signs.items() if sign not in there} - elsewhere
    assert lost == set()
    sheet = signs_in(sheet_html(answer))
    rest = {place for sign, place in signs.items() if sign not in sheet and place[0] == "pages"}
    assert {place[2] for place in rest} <= {"short", "more"}
