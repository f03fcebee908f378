"""The job's form has the keys that are read, and those alone."""

from __future__ import annotations

from typing import Any, get_args, get_origin, get_type_hints, is_typeddict

import pytest

from bowstring import BadJob, JobForm
from bowstring.demo import DEMO
from bowstring.job.job import KEYS, read_job


def groups(form: Any, place: str = "") -> dict[str, Any]:
    """Return each form within a form by its place; ``[]`` stands for the rows of a list."""
    found = {place: form} if is_typeddict(form) else {}
    for key, hint in (get_type_hints(form) if is_typeddict(form) else {}).items():
        found |= groups(hint, f"{place}.{key}" if place else key)
    if get_args(form) and get_origin(form) is not None:
        for inner in get_args(form):
            found |= groups(inner, f"{place}[]")
    return found


FORMS = groups(JobForm)
ROWS = {"ties.A": 2, "ties.B": 2, "control.marks": 2}
"""Lists that are read only with so many rows."""
NEEDED = {"got": {"stake": "M"}}
"""What a row needs besides, to be read that far."""


def known_at(place: str) -> set[str]:
    """Return the keys that a refusal names where a stranger stands among them."""
    *outer, last = place.split(".") if place else [""]
    here: Any = {"stranger": 1}
    if last.endswith("[]"):
        last = last.removesuffix("[]")
        here = [here] * ROWS.get(".".join([*outer, last]), 1)
    job: Any = here if not last else {last: here}
    for group in reversed(outer):
        list_of = group.removesuffix("[]")
        job = {list_of: [{**NEEDED.get(list_of, {}), **job}]} if list_of != group else {group: job}
    arc = {} if "line" in job else {"arc": {"chord": "38 ft", "sagitta": "5 ft"}}
    with pytest.raises(BadJob) as refusal:
        read_job({**arc, **job})
    assert refusal.value.key == "job.unknown_key", str(refusal.value)
    return set(refusal.value.remedy.removeprefix("Known here: ").removesuffix(".").split(", "))


def test_the_form_has_the_keys_that_are_read() -> None:
    assert list(JobForm.__annotations__) == list(KEYS)


@pytest.mark.parametrize("place", FORMS)
def test_each_group_has_the_keys_that_are_read_there(place: str) -> None:
    assert set(FORMS[place].__annotations__) == known_at(place)


def test_every_group_was_found() -> None:
    assert {"", "arc", "ends", "ties", "ties.A[]", "found", "got[]", "got[].measures[]",
            "tape", "ground[]", "room", "known[]", "fall",
            "errors", "control", "control.marks[]"} <= FORMS.keys()  # fmt: skip


def test_the_example_is_of_the_form() -> None:
    assert DEMO.keys() <= JobForm.__annotations__.keys()
