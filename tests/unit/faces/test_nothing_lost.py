"""Nothing that the long sheet tells is lost: each text of an answer, altered, is found on some face.

Every text that a person reads gets a sign of its own, all at once, in a copy of the answer; the sheet and the faces are
made of the copy, and each sign that stands on the sheet has to stand on a face. A part that stands on none yet is named
in ``ELSEWHERE`` with the face that will have it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.faces.checks import checks_html
from bowstring.faces.conclusions import FOLDS
from bowstring.faces.why import fold_html, keys_of, why_html
from bowstring.report.parts import PARTS
from bowstring.sheet.html import sheet_html
from helping import SAID, answer_to

PLAIN: dict[str, Any] = {**SAID, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/4 in"}
MARKS = [{"mark": "A", "x": "100 ft", "y": "50 ft"}, {"mark": "B", "x": "122.8 ft", "y": "80.4 ft"}]
TIES = {"A": [{"to": "oak", "distance": "9 ft"}, {"to": "pump", "distance": "12 ft"}]}
JOBS: dict[str, dict[str, Any]] = {
    "example": {**DEMO, "read": [{"check": "Q1-B", "value": "29' 1-7/8\""}] * 2, "ties": TIES},
    "ordinates": {**PLAIN, "method": "ordinates", "ground": DEMO["ground"][:1], "control": {"marks": MARKS}},
    "offset": {**PLAIN, "offset": "2 ft", "toward": "outside", "driven": "board", "fall": {"along": 3, "across": 1}},
    "found": {**PLAIN, "found": {"chord": ["38' 1\"", "38' 1\""], "tape": "level", "hold": "radius", "sure": True},
              "arc": {**PLAIN["arc"], "radius": "37 ft"}},
}  # fmt: skip


def why_opened(answer: Any) -> str:
    return why_html(answer, FOLDS) + "".join(fold_html(answer, key) for key in keys_of(answer))


FACES: list[Callable[[Any], str]] = [why_opened, checks_html]
"""The faces, each as a function of an answer; others are added here."""

ELSEWHERE = {
    "title": "every face's bar",
    "version": "paper",
    "steps": "stakes",
    "tables": "paper",
    "note": "paper",
    "stops": "no job here is stopped",
    "halving.half_shown": "paper",
    "halving.half_chord_shown": "paper",
    "halving.chord_shown": "stakes",
    "staked_shown.sagitta": "numbers",
    "staked_shown.radius": "numbers",
    "staked_shown.chord": "numbers",
    "offset.shown": "numbers",
}
"""Parts, and texts in them, that stand on a face that isn't in ``FACES``."""

NO_TEXT = {
    "unit", "mark", "side", "driven", "drawn_to", "start", "tolerance", "levels", "method", "method_said",
    "halve_first", "parallel", "arc", "staked", "held", "marks",
}  # fmt: skip
"""Parts that are numbers, flags and keys: what they say to a person is in the other parts' texts."""

READ = re.compile(
    r"(.*_)?(shown|text|told|lines)|how|label|why_not|point|come_back|prove|by|head|by_hand|typed|wrong|slips|overrun"
)
"""Keys whose texts a person reads."""

TEXTS = {"hand", "square", "cautions", "warnings_top", "notes", "tolerance_shown", "arc_shown", "staked_shown", "ends"}
"""Parts that are texts themselves."""


def leaves(value: Any, place: tuple[Any, ...]) -> Iterator[tuple[Any, ...]]:
    """Yield the place of each text in an answer that a person reads."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from leaves(inner, (*place, key))
    elif isinstance(value, list):
        for number, inner in enumerate(value):
            yield from leaves(inner, (*place, number))
    elif isinstance(value, str) and value:
        key = next((one for one in reversed(place) if isinstance(one, str)), "")
        if place[0] in TEXTS or READ.fullmatch(key) or (place[0], key) == ("ties", "to"):
            yield place


def named(place: tuple[Any, ...]) -> str:
    """Return a part and the key in it, as ``ELSEWHERE`` has them."""
    return f"{place[0]}.{place[-1]}"


def signs_in(html: str) -> set[str]:
    return set(re.findall(r"zq\d+z", html))


def altered(answer: dict[str, Any]) -> tuple[dict[str, Any], dict[str, tuple[Any, ...]]]:
    """Return the answer with a sign of its own in each such text, and the places by their signs."""
    signs: dict[str, tuple[Any, ...]] = {}
    for number, place in enumerate(list(leaves(answer, ()))):
        sign = f"zq{number}z"
        signs[sign] = place
        inside: Any = answer
        for step in place[:-1]:
            inside = inside[step]
        inside[place[-1]] = f"{inside[place[-1]]} {sign}"
    return answer, signs


@pytest.mark.parametrize("name", JOBS)
def test_each_altered_text_is_found_on_some_face(name: str) -> None:
    answer, signs = altered(answer_to(JOBS[name]))
    there = signs_in(" ".join(face(answer) for face in FACES))
    before = signs_in(sheet_html(answer))
    lost = {signs[sign] for sign in before - there if not ELSEWHERE.keys() & {signs[sign][0], named(signs[sign])}}
    assert sorted(map(str, lost)) == []
    assert len(before & there) > 100


def test_every_part_is_looked_at() -> None:
    seen: set[str] = set()
    for job in JOBS.values():
        seen |= {place[0] for place in leaves(answer_to(job), ())}
    assert set(PARTS) - seen - ELSEWHERE.keys() == NO_TEXT
    assert {part.partition(".")[0] for part in ELSEWHERE} <= PARTS.keys()


def test_a_text_that_stands_on_no_face_is_seen() -> None:
    answer, signs = altered(answer_to(JOBS["example"]))
    told = checks_html(answer)
    assert any(sign not in told for sign, place in signs.items() if place[0] == "rule")
