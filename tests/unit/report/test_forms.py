"""The answer's form is the answer's: each part's type, key by key, and every value of real answers."""

from __future__ import annotations

import types
from functools import cache
from typing import Any, Literal, NotRequired, TypedDict, Union, get_args, get_origin, get_type_hints, is_typeddict

import pytest

from bowstring import Answer, answer, answering
from bowstring.demo import DEMO
from bowstring.report.parts import PARTS
from halving_jobs import JOBS
from helping import SAID

POND = {"name": "pond", "stops": "feet", "outline": [["5 ft", "-2 ft"], ["30 ft", "-2 ft"], ["20 ft", "-9 ft"]]}
MARKS = [{"mark": "A", "x": "100 ft", "y": "50 ft"}, {"mark": "B", "x": "122.8 ft", "y": "80.4 ft"}]
PLAIN: dict[str, Any] = {**SAID, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/4 in"}
METHODS = ("rule", "centre", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
EVERY: dict[str, dict[str, Any]] = {
    "example": dict(DEMO),
    **JOBS,
    **{method: {**PLAIN, "method": method, "centre": "reachable"} for method in METHODS},
    "found": {**PLAIN, "found": {"chord": ["38' 1\"", "38' 1\""], "tape": "level", "hold": "radius"}},
    "given": {**PLAIN, "arc": {"chord": "38 ft", "sagitta": "5' 3\"", "radius": "37 ft"}},
    "got": {**PLAIN, "got": [{"stake": "M", "sagitta": "5' 4\""}]},
    "site": {**PLAIN, "ground": [POND], "fall": {"along": 3, "across": 1}, "control": {"marks": MARKS}, "hands": 1},
    "nothing possible": {**PLAIN, "tape": {"length": "3 ft"}, "hands": 1},
    "nothing said": {"arc": PLAIN["arc"], "levels": 2, "control": {"marks": MARKS}},
    "ties": {**PLAIN, "ties": {"A": [{"to": "oak", "distance": "9 ft"}, {"to": "pump", "distance": "12 ft"}]}},
    "offset": {**PLAIN, "offset": "4 ft", "toward": "outside", "driven": "hub", "start": "corner", "side": "right"},
}


@cache
def told(name: str) -> Answer:
    """The answer to one of the jobs, asked once; nobody changes it."""
    return answer(EVERY[name], whole=name == "example")


def misfits(value: object, form: Any, place: str = "answer") -> list[str]:
    """Return a line for each place where a value isn't of a form."""
    if get_origin(form) is NotRequired:
        form = get_args(form)[0]
    if get_origin(form) in (Union, types.UnionType):
        tried = [misfits(value, one, place) for one in get_args(form)]
        return [] if [] in tried else min(tried, key=len)
    if is_typeddict(form):
        if not isinstance(value, dict):
            return [f"{place}: {value!r}"]
        hints = get_type_hints(form, include_extras=True)
        lines = [f"{place}: no {key}" for key, one in hints.items()
                 if key not in value and get_origin(one) is not NotRequired]  # fmt: skip
        lines += [f"{place}: {key} is new" for key in value.keys() - hints.keys()]
        return lines + [line for key, one in value.items() if key in hints
                        for line in misfits(one, hints[key], f"{place}.{key}")]  # fmt: skip
    if get_origin(form) is list:
        rows = value if isinstance(value, list) else [value]
        wrong = [] if isinstance(value, list) else [f"{place}: no list"]
        return wrong + [line for row in rows for line in misfits(row, get_args(form)[0], f"{place}[]")]
    if get_origin(form) is dict:
        rows = list(value.values()) if isinstance(value, dict) else [value]
        return [line for row in rows for line in misfits(row, get_args(form)[1], f"{place}.*")]
    if get_origin(form) is Literal:
        return [] if value in get_args(form) else [f"{place}: {value!r}"]
    return [] if type(value) is form else [f"{place}: {value!r}"]


def test_each_part_is_made_of_the_type_that_the_answer_has_for_it() -> None:
    hints = get_type_hints(Answer)
    assert list(PARTS) == list(hints)
    assert {part: get_type_hints(make)["return"] for part, make in PARTS.items()} == hints


@pytest.mark.parametrize("name", EVERY)
def test_a_real_answer_is_of_the_form_to_the_last_value(name: str) -> None:
    assert misfits(told(name), Answer) == []
    assert list(told(name)) == list(get_type_hints(Answer))


def test_what_is_answered_part_by_part_reads_as_the_whole() -> None:
    lazily = answering(DEMO, whole=True)
    assert {**lazily} == told("example") and list(lazily) == list(PARTS)


def test_what_may_be_left_out_or_null_is_seen_both_ways() -> None:
    """Else a form could call a key optional that never is."""
    every = [told(name) for name in EVERY]
    for key in ("offset", "fit", "tolerance", "drawn_to", "side"):
        assert {one[key] is None for one in every} == {True, False}, key
    assert {"drawing" in one["stakes"][0] for one in every} == {True, False}
    slopes = {"slope" in measure for one in every for step in one["steps"] for measure in step["measures"]}
    assert slopes == {True, False}
    assert {one["advice"]["method"] is None for one in every} == {True, False}


class Small(TypedDict):
    length: float
    rows: list[int | None]
    more: NotRequired[str]


@pytest.mark.parametrize(
    "bad",
    [
        None,
        {},
        {"length": 1.0},
        {"length": 1, "rows": []},
        {"length": True, "rows": []},
        {"length": 1.0, "rows": None},
        {"length": 1.0, "rows": [1, "2"]},
        {"length": 1.0, "rows": [], "more": None},
        {"length": 1.0, "rows": [], "other": ""},
    ],
)
def test_the_check_sees_what_is_not_of_a_form(bad: object) -> None:
    assert misfits(bad, Small)
    assert not misfits({"length": 1.0, "rows": [None, 2], "more": ""}, Small)
    assert not misfits({"length": 1.0, "rows": []}, Small)
