"""Small helpers that several tests share: jobs, comparisons, and numbers read out of sentences."""

from __future__ import annotations

import json
import pickle
import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from functools import cache, lru_cache
from typing import Any

import pytest
from mpmath import mpf

import bowstring
from bowstring.words import spoken
from reference import FIELDS, FOOT, Reference

FEET_PER_METRE = 1 / 0.3048
SAID = {"side": "left", "drawn_to": "face"}
"""What a job has to say of the hand and of the line, so that nothing stops its sheet."""

SOLVE_ONLY: dict[str, Any] = {"levels": 1}  # one level: the arc is what is asked


class Copied(Mapping[str, Any]):
    """A copy of an answer for one test: each part is worked out when the first test of the run reads it."""

    def __init__(self, job: str, whole: bool) -> None:
        self._asked, self._read = (job, whole), dict[tuple[str, str], Any]()
        self._parts = _answering(job, whole, spoken())  # a job that can't be used is refused here

    def __getitem__(self, part: str) -> Any:
        read = spoken(), part
        if read not in self._read:
            self._read[read] = pickle.loads(_pickled(*self._asked, *read))
        return self._read[read]

    def __iter__(self) -> Iterator[str]:
        return iter(self._parts)

    def __len__(self) -> int:
        return len(self._parts)

    def __contains__(self, part: object) -> bool:
        return part in self._parts


@lru_cache(maxsize=200)  # each holds its whole layout; those asked for lately are those asked for again
def _answering(job: str, whole: bool, language: str) -> Mapping[str, Any]:
    """The answer whose parts are read while that language is spoken: none is told in another one."""
    return bowstring.answering(json.loads(job), whole=whole)


@cache
def _pickled(job: str, whole: bool, language: str, part: str) -> bytes:
    return pickle.dumps(_answering(job, whole, language)[part])


def answer_to(job: Mapping[str, Any], *, whole: bool = False) -> Copied:
    """Return the answer to a job, asked once in a run whoever looks at it; each gets a copy of its own.

    What nobody reads isn't worked out: ``dict()`` of it works out all. Without the one dear figure that no sheet shows
    (``all_95`` of the methods) unless it's wanted ``whole``. For tests of what stands in an answer; one about
    asking itself (twice, changed, refused) asks ``bowstring``.
    """
    return Copied(json.dumps(job), whole)


def all_hold(cases: Mapping[str, tuple[Any, ...]], check: Callable[..., object]) -> None:
    """Run a check that asserts on each of many small cases; fail with the name and the reason of each that failed."""
    assert cases
    faults = []
    for name, values in cases.items():
        try:
            check(*values)
        except (Exception, pytest.fail.Exception) as reason:
            faults.append(f"{name}: {type(reason).__name__}: {reason}")
    assert not faults, "\n".join(faults)


def solve(given: dict[str, Any], unit: str = "m", **keys: Any) -> dict[str, Any]:
    """Return the answer to a job with this `arc`, one level of halving unless `keys` say otherwise."""
    return answer_to({"bowstring": 1, "unit": unit, "arc": given, **SOLVE_ONLY, **keys})


def feet(given: dict[str, Any], **keys: Any) -> dict[str, Any]:
    """Return the seven figures of the drawn arc in feet and degrees, from givens in feet."""
    figures = solve(given, unit="ft", **keys)["arc"]
    return {f: v if f == "central_angle" or v is None else v * FEET_PER_METRE for f, v in figures.items()}


def metres(given: dict[str, Any], **keys: Any) -> dict[str, Any]:
    """Return the seven figures of the drawn arc in metres and degrees, from givens in metres."""
    figures: dict[str, Any] = solve(given, unit="m", **keys)["arc"]
    return figures


def misses(got: dict[str, Any], want: Reference, allowed: Any) -> list[str]:
    """Return a line for each figure (metres, degrees) that is further from the reference than allowed,
    relatively."""
    lines = []
    for field in FIELDS:
        exact, value = want.figures[field], got[field]
        if exact is None or value is None:
            if exact is not None or value is not None:
                lines.append(f"{field}: got {value}, want {exact and float(exact)}")
        elif abs(value / exact - 1) > allowed:
            lines.append(
                f"{field}: got {value!r}, want {float(exact)!r}, out {float(value / exact - 1):.3g}, "
                f"allowed {float(allowed):.3g}"
            )
    return lines


def in_metres(field: str, value: float, unit: str) -> Any:
    """Return exactly what a bare number in a job of this unit means, in metres (degrees for the central
    angle)."""
    if field == "central_angle":
        return mpf(value)
    return mpf(value) * {"m": mpf(1), "ft": FOOT, "ft-in": FOOT, "mm": mpf("0.001")}[unit]


def numbers_in(text: str) -> list[float]:
    """Return every decimal number that stands in a sentence."""
    return [float(n) for n in re.findall(r"\d+(?:\.\d+)?", text)]


def names_number(text: str, value: float, mark: float) -> bool:
    """Tell whether a sentence holds this number to within one mark."""
    return any(abs(n - value) <= mark for n in numbers_in(text))


@contextmanager
def about(*what: object) -> Iterator[None]:
    """Add to whatever fails inside which case of a loop it was."""
    try:
        yield
    except BaseException as fault:
        fault.add_note(f"in the case: {' '.join(map(str, what))}")
        raise
