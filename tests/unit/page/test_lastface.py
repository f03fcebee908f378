"""The last face is built anew of what faces are made of: the script's lists are held against real ones."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html.parser import HTMLParser
from typing import Any

from bowstring.demo import DEMO
from bowstring.methods.catalogue import BY_NAME
from bowstring.page.answering import LastAnswer
from bowstring.page.facing import FACES, shown_face
from bowstring.page.fields import fields_of_job
from builder.website import SCRIPTS
from paper_jobs import JOBS as PAPER_JOBS

# What a drawing has for other programs, or the site's own plan for being drawn on: a face from last time does without.
LEFT_OUT = {"baseprofile", "data-stops", "version"}
SCRIPT = (SCRIPTS / "lastsheet.js").read_text("utf-8")


def listed(name: str) -> set[str]:
    """Return one of the script's lists."""
    found = re.search(rf"const {name} = listed\((.*?)\);", SCRIPT, re.DOTALL)
    assert found
    return set("".join(re.findall(r'"([^"]*)"', found[1])).split(","))


class Made(HTMLParser):
    """Notes every element and attribute of a text, and where a link leads that leaves the page."""

    def __init__(self) -> None:
        super().__init__()
        self.elements: set[str] = set()
        self.attributes: set[str] = set()
        self.away: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.add(tag)
        self.attributes |= {name for name, _ in attrs}
        self.away |= {str(value) for name, value in attrs if name == "href" and not str(value).startswith("#")}


def jobs() -> Iterator[dict[str, object]]:
    """Jobs that have every part of a sheet between them: each method, each unit, what a stop and a correction show."""
    yield dict(DEMO)
    base = {
        "bowstring": 1,
        "unit": "ft-in",
        "arc": {"chord": "40 ft", "sagitta": "5 ft"},
        "side": "left",
        "drawn_to": "face",
        "ends": {"A": "post", "B": "pier"},
        "tolerance": "1/2 in",
    }
    for method in BY_NAME:
        yield {**base, "method": method, "centre": "reachable", "spacing": "6 ft"}
    yield {**base, "unit": "m", "arc": {"chord": "12", "sagitta": "1.5"}, "title": "Walk", "note": "In two days."}
    yield {**base, "ties": {end: [{"to": f"{end}1", "distance": "30 ft"}, {"to": f"{end}2", "distance": "25 ft"}]
                            for end in "AB"}}  # fmt: skip
    yield {**base, "got": [{"stake": "M", "sagitta": "4 ft 11 in"}], "offset": "1 ft", "toward": "centre"}
    yield {**base, "found": {"chord": ["40' 2\"", "40' 2\""], "tape": "level"}, "fall": {"along": 4, "across": 2}}
    outline = [["10 ft", "-3 ft"], ["14 ft", "-3 ft"], ["14 ft", "3 ft"]]
    yield {**base, "ground": [{"name": "shed", "stops": "tape", "outline": outline}]}
    pieces = [{"straight": "9 ft"}, *({"arc": base["arc"], "turn": turn} for turn in ("left", "right"))]
    yield {key: value for key, value in base.items() if key not in ("arc", "side")} | {"line": pieces}
    yield {**base, "arc": {"points": [["0", "0"], ["20 ft", "5 ft"], ["40 ft", "0"]]}}


def faces_of(fields: dict[str, str]) -> Iterator[dict[str, Any]]:
    """Every face of a job as it's kept: each card, with some of them done, and stakes that have moved."""
    last = LastAnswer()

    def face(name: str, **asked: object) -> dict[str, Any]:
        asked = {"fields": fields, "face": name, "card": None, "panel": "", "address": "https://example.org/", **asked}
        return dict(shown_face(asked, last))

    yield from (face(name) for name in FACES)
    for card in range(1, face("stakes")["count"] + 1):
        yield face("stakes", card=card)
    fixed = face("stakes").get("fixed", {})
    begun = {**fields, **fixed, "done": "1 2", "read-0-check": "A-M", "read-0-value": "1 ft", "date": "2027-03-01"}
    yield from (face(name, fields=begun) for name in FACES)
    yield face("stakes", fields={**begun, "arc-chord": "41 ft"})


def real_faces() -> Made:
    made = Made()
    for job in (*jobs(), *PAPER_JOBS.values()):
        for shown in faces_of(fields_of_job(job)):
            if shown["sign"] == "computed":  # no other is kept
                made.feed(shown["html"])
    return made


def test_the_lists_are_those_of_real_faces() -> None:
    made = real_faces()
    # A parser of HTML gives names in small letters, and what a drawing's names are otherwise is the browser's to know.
    elements, attributes = ({name.lower() for name in listed(which)} for which in ("ELEMENTS", "ATTRIBUTES"))
    assert made.elements - elements == set(), "these would be gone from the face that stands there first"
    gone = {name for name in made.attributes if not name.startswith("xmlns")} - attributes
    assert gone == LEFT_OUT
    assert elements - made.elements == set(), "no face has these: what isn't needed isn't let in"
    assert attributes - made.attributes == set()
    assert made.away == set(), "a link leads to a place on the page"
    assert {"svg", "table", "details", "button", "input"} <= made.elements
