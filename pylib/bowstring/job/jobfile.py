"""A job out of a text of JSON, read strictly: what could be read two ways is refused."""

from __future__ import annotations

import json
import re
from typing import cast

from bowstring.errors import bad
from bowstring.job.form import JobForm
from bowstring.units.echo import quoted

TEXT_LIMIT = 2_000_000
"""Most characters of a job's text, in a file and as the page keeps it: over twice the largest job that can be used."""

DEEPEST = 20
"""Brackets within brackets; a job has five. What reads JSON can run out of stack before it gives up by itself."""

_STRING = re.compile(r'"(?:[^"\\]|\\.)*"?', re.DOTALL)


def job_of_text(text: str) -> JobForm:
    """Return the object that a JSON text holds; what stands in it is checked where a job is read.

    Raises ``BadJob`` when it is too long, not JSON, no object, holds NaN or an infinity, or names a value twice.

    >>> job_of_text('{"bowstring": 1, "arc": {"radius": 12, "chord": 9}}')["arc"]
    {'radius': 12, 'chord': 9}
    """
    if len(text) > TEXT_LIMIT:
        raise bad("job", "job.too_large", limit=TEXT_LIMIT)
    if _depth(text) > DEEPEST:
        raise bad("job", "job.not_plain")
    try:
        job = json.loads(text, object_pairs_hook=_once, parse_constant=_no_constant)
    except json.JSONDecodeError as reason:
        raise bad("job", "job.not_json", reason=f"{reason.msg}, line {reason.lineno}") from None
    except (RecursionError, ValueError) as reason:
        if isinstance(reason, RecursionError) or type(reason) is ValueError:
            raise bad("job", "job.not_plain") from None
        raise
    if not isinstance(job, dict):
        raise bad("job", "job.not_an_object")
    return cast("JobForm", job)


def _depth(text: str) -> int:
    """Return how deep brackets stand within brackets, those in strings left out."""
    deepest = depth = 0
    for sign in re.findall(r"[\[\]{}]", _STRING.sub("", text)):
        depth += 1 if sign in "[{" else -1
        deepest = max(deepest, depth)
    return deepest


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found = dict(pairs)
    if len(found) != len(pairs):
        names = [name for name, _value in pairs]
        raise bad("job", "job.key_twice", name=quoted(next(name for name in names if names.count(name) > 1)))
    return found


def _no_constant(_name: str) -> object:
    raise bad("job", "job.not_plain")
