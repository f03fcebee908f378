"""Absurd sizes anywhere in a job: refused at the place where they are, in plain words and at once."""

from __future__ import annotations

import json
from collections.abc import Callable
from copy import deepcopy
from time import process_time
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob
from bowstring.job.job import read_job
from bowstring.job.jobfile import TEXT_LIMIT
from bowstring.page.calls import handle
from helping import about

JOB: dict[str, Any] = {
    "bowstring": 1,
    "title": "Walk",
    "note": "Gate stays open",
    "unit": "m",
    "mark": "0.005 m",
    "arc": {"radius": "24 m", "chord": "30 m", "sagitta": "5.265 m"},
    "ends": {"A": "lamp post", "B": "gate pier"},
    "side": "left",
    "tolerance": "5 mm",
    "levels": 3,
    "method": "ordinates",
    "halve_first": 2,
    "ties": {"A": [{"to": "oak", "distance": "4 m"}, {"to": "shed", "distance": "5 m"}]},
    "found": {"chord": ["30 m", "30.01 m"], "tape": "level", "hold": "radius"},
    "got": [{"stake": "M", "sagitta": "5.26 m"}],
    "tape": {"length": "30 m", "class": "II"},
    "hands": 2,
    "ground": [{"name": "oak", "stops": "tape", "outline": [["5 m", "-3 m"], ["6 m", "-3 m"], ["6 m", "-2 m"]]}],
    "room": {"behind": "3 m"},
    "known": [{"name": "Peg 7", "x": "-2 m", "y": "-2 m", "sigma": "2 mm"}],
    "fall": {"along": 2},
    "errors": {"read": "1 mm"},
    "tapes_from": ["A", "Peg 7"],
    "control": {"marks": [{"mark": "A", "n": 0, "e": 0}, {"mark": "B", "n": 0, "e": 30}], "axes": "n-e"},
}


def places(value: Any, place: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    """Every place in a job at which something stands, groups and lists included."""
    inside = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    found = [place] if place else []
    for key, one in inside:
        found += places(one, (*place, key))
    return found


def nested(depth: int) -> Any:
    value: Any = []
    for _ in range(depth):
        value = [value]
    return value


ABSURD: dict[str, Callable[[int], Any]] = {
    "long text": lambda size: "x" * size,
    "long number": lambda size: "1" * size,
    "long fraction": lambda size: "1/" + "3" * size,
    "spaces": lambda size: " " * size + "1 m",
    "feet over and over": lambda size: "1' " * size,
    "commas": lambda size: "1," * size,
    "letters with marks": lambda size: "a" + "\u0301" * size,
    "wide letters": lambda size: "\U0001f600" * size,
    "whole number": lambda size: 10 ** min(size, 3000),
    "many": lambda size: [1] * size,
    "many pairs": lambda size: [["1 m", "2 m"]] * size,
    "many groups": lambda size: [{"name": "oak", "stops": "tape", "outline": []}] * size,
    "many keys": lambda size: {f"k{number}": 1 for number in range(size)},
    "deep": lambda size: nested(min(size, 400)),
}
SIZES = [61, 300, 5_000, 60_000]
LONGEST = 3.0
"""Seconds of the processor: a hundred times what it takes."""


def put(job: Any, place: tuple[str | int, ...], value: Any) -> Any:
    *way, last = place
    inner = job
    for key in way:
        inner = inner[key]
    inner[last] = value
    return job


@given(st.sampled_from(places(JOB)), st.sampled_from(sorted(ABSURD)), st.sampled_from(SIZES))
def test_an_absurd_size_is_refused_at_once(place: tuple[str | int, ...], kind: str, size: int) -> None:
    job = put(deepcopy(JOB), place, ABSURD[kind](size))
    began = process_time()
    refusal = None
    try:
        read_job(job)
    except BadJob as reason:
        refusal = reason
    with about(place, kind, size):
        assert process_time() - began < LONGEST
        if place != ("note",) or size > 280:
            assert refusal is not None
        if refusal is not None:
            assert len(str(refusal)) < 600 and str(refusal).isprintable()


@given(st.sampled_from(places(JOB)), st.sampled_from(sorted(ABSURD)), st.sampled_from(SIZES))
def test_a_file_with_an_absurd_size_is_answered_in_a_sentence(
    place: tuple[str | int, ...], kind: str, size: int
) -> None:
    text = json.dumps(put(deepcopy(JOB), place, ABSURD[kind](size)))
    began = process_time()
    opened = json.loads(handle("open_file", json.dumps({"text": text})))
    with about(place, kind, size):
        assert process_time() - began < LONGEST
        assert "error" in opened or len(text) < TEXT_LIMIT


@given(st.integers(0, 10**6), st.sampled_from(["ground", "known", "got"]), st.sampled_from(sorted(ABSURD)))
def test_a_form_with_absurd_rows_is_answered(row: int, group: str, kind: str) -> None:
    value = str(ABSURD[kind](300))
    names = {"ground": "outline", "known": "x", "got": "sagitta"}
    fields = {"unit": "m", "arc-chord": "30", "arc-sagitta": "5", f"{group}-{row % 1000}-{names[group]}": value}
    began = process_time()
    shown = json.loads(handle("numbers", json.dumps({"fields": fields})))
    stakes = json.loads(handle("face", json.dumps({"fields": fields, "face": "stakes"})))
    with about(row, group, kind):
        assert stakes["sign"] == "refused" and shown["errors"] and shown["state"]["sign"] == "stop"
        assert process_time() - began < 5 * LONGEST


def test_the_job_itself_is_a_good_one() -> None:
    assert read_job(JOB).title == "Walk"
    assert len(places(JOB)) > 60


def test_a_text_longer_than_any_job_is_refused_unread() -> None:
    opened = json.loads(handle("open_file", json.dumps({"text": "[" * (TEXT_LIMIT + 1)})))
    assert str(TEXT_LIMIT) in opened["error"]
