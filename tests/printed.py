"""Holding a value against a printed figure, and reading the numbers that a whole layout has its crew tape."""

from __future__ import annotations

from typing import Any

from helping import answer_to


def assert_printed(value: float, printed: str) -> None:
    """Hold a value to half a unit of the last printed digit (and a hair for the float itself)."""
    half = 0.5 * 10.0 ** -len(printed.partition(".")[2])
    assert abs(value - float(printed)) <= half * (1 + 1e-9), (value, printed)


def laid(unit: str, arc: dict[str, Any], method: str, **keys: Any) -> Any:
    """Return the answer to a job by this method, its centre within reach."""
    return answer_to({"bowstring": 1, "unit": unit, "arc": arc, "method": method, "centre": "reachable", **keys})


def taped(answer: Any, start: str, end: str) -> float:
    """Return a distance in metres that a step has the crew tape."""
    return next(
        measure["distance"]
        for step in answer["steps"]
        for measure in step["measures"]
        if (measure["from"], measure["to"]) == (start, end)
    )
