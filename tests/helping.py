"""Small helpers that several tests share: jobs, comparisons, and numbers read out of sentences."""

from __future__ import annotations

import re
from typing import Any

from mpmath import mpf

import bowstring
from reference import FIELDS, FOOT, Reference

FEET_PER_METRE = 1 / 0.3048
SOLVE_ONLY: dict[str, Any] = {"levels": 1}  # one level: the arc is what is asked


def solve(given: dict[str, Any], unit: str = "m", **keys: Any) -> dict[str, Any]:
    """Return the answer to a job with this `arc`, one level of halving unless `keys` say otherwise."""
    return bowstring.answer({"bowstring": 1, "unit": unit, "arc": given, **SOLVE_ONLY, **keys})


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
