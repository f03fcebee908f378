"""A job that the page saves, it opens: the largest that can be used, with every text at its limit."""

from __future__ import annotations

import json
import math
from random import Random
from typing import Any

from bowstring.job.job import LANDMARK_LIMIT, NOTE_LIMIT, TITLE_LIMIT, read_job
from bowstring.job.jobfile import TEXT_LIMIT, job_of_text
from bowstring.job.names import NAME_LIMIT
from bowstring.job.site import MOST_STATIONS
from bowstring.job.terms import MOST_CORNERS, MOST_GOT, MOST_KNOWN, MOST_OBSTACLES
from bowstring.page.calls import handle
from bowstring.page.fields import MOST_FIELDS, fields_of_job, job_of_fields
from bowstring.units.numerals import TEXT_LIMIT as LENGTH_LIMIT

WIDE = "\N{GRINNING FACE}"  # two units in a script's text, four bytes in a file

FRAME = {"unit": "m", "arc": {"radius": "60", "chord": "50"}, "side": "left", "method": "halving"}


def long_text(limit: int, begin: str = "") -> str:
    return begin + WIDE * (limit - len(begin))


def long_length(metres: float) -> str:
    """A length of as many characters as may be typed."""
    text = f"{metres:.15f}"
    return text + "0" * (LENGTH_LIMIT - len(text) - 2) + " m"


def bed(number: int) -> dict[str, Any]:
    """An obstacle of as many corners as there may be, no two beds alike."""
    chance = Random(number)
    turns = sorted(chance.uniform(0, 2 * math.pi) for _ in range(MOST_CORNERS))
    corners = [(9 * number + 3 * math.cos(turn), 3 * math.sin(turn) - 99) for turn in turns]
    outline = [[long_length(x), long_length(y)] for x, y in corners]
    return {"name": long_text(NAME_LIMIT, f"bed {number} "), "stops": "feet", "outline": outline}


def peg(number: int) -> dict[str, Any]:
    name = long_text(NAME_LIMIT, f"peg {number} ")
    return {"name": name, "x": long_length(-number), "y": long_length(-99), "sigma": long_length(0.1)}


def largest() -> dict[str, Any]:
    """A job in which everything is there, and each as long as it may be."""
    got = [{"stake": f"K{row}", "half_chords": [long_length(3), long_length(3)]} for row in range(1, MOST_GOT + 1)]
    return {
        "bowstring": 1,
        "title": long_text(TITLE_LIMIT),
        "note": long_text(NOTE_LIMIT),
        "unit": "m",
        "arc": {"radius": long_length(900), "chord": long_length(700)},
        "ends": {"A": long_text(LANDMARK_LIMIT, "one"), "B": long_text(LANDMARK_LIMIT, "other")},
        "method": "ordinates",
        "stations": [long_length(1 + station) for station in range(MOST_STATIONS)],
        "ground": [bed(number) for number in range(MOST_OBSTACLES)],
        "known": [peg(number) for number in range(MOST_KNOWN)],
        "got": got,
    }


def asked(call: str, **payload: object) -> dict[str, Any]:
    return json.loads(handle(call, json.dumps(payload)))


def test_the_largest_job_goes_into_a_file_and_comes_back() -> None:
    job = largest()
    assert read_job(job)
    saved = asked("job_file", fields=fields_of_job(job))
    assert len(saved["text"].encode("utf-16-le")) // 2 < TEXT_LIMIT / 2, "as long as a script counts it"
    opened = asked("open_file", text=saved["text"])
    assert "error" not in opened, opened.get("error")
    assert job_of_fields(opened["fields"]) == job_of_text(saved["text"]) == job
    assert opened["link"] == "" and 8 <= len(opened["id"]) <= 20


def test_its_fields_are_kept_and_read_back() -> None:
    fields = fields_of_job(largest())
    kept = json.dumps({"fields": fields, "edited": 10**15})
    assert len(kept) < TEXT_LIMIT / 2 and len(fields) <= MOST_FIELDS


def test_the_same_job_opened_twice_has_one_id_and_another_has_another() -> None:
    text = json.dumps({**FRAME, "ground": [bed(number) for number in range(14)]})
    first, again = (asked("open_file", text=text)["id"] for _ in range(2))
    other = asked("open_file", text=text.replace("bed 0 ", "tub 0 "))["id"]
    assert first == again != other
    assert asked("open_file", text=text)["link"] == ""


def test_a_job_too_large_for_a_link_says_to_save_the_file() -> None:
    beds = [bed(number) for number in range(14)]
    large, small = (fields_of_job({**FRAME, "ground": rows}) for rows in (beds, beds[:1]))
    shown = asked("link", fields=large)
    assert shown["link"] == "" and "file" in shown["link_note"]
    assert "example.org" not in asked("sheet", fields=large, address="https://example.org/")["sheet"]
    assert "example.org" not in asked("face", face="paper", fields=large, address="https://example.org/")["html"]
    shown = asked("link", fields=small)
    assert shown["link"] and shown["link_note"] == ""
    assert (
        f"https://example.org/#{shown['link']}" in asked("sheet", fields=small, address="https://example.org/")["sheet"]
    )
