"""The methods, everyday ones first. A new one is a recipe, its row here, and its sentences."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from bowstring.methods import tables
from bowstring.methods.halving import halving, quartering
from bowstring.methods.method import Method
from bowstring.methods.onward import angles_turn_back, chords_produced, deflection_angles, tangent_offsets, tangents_end
from bowstring.methods.plain import (
    control_fails,
    coordinates,
    ordinates,
    ordinates_overhang,
    swing,
    swing_fails,
    tapes,
    tapes_fail,
)
from bowstring.methods.stands import CHORD, EQUAL, HALVES, TANGENT

METHODS = (
    Method("centre", EQUAL, 1, swing, tables.OF_SWINGS, swing_fails, chained=True),
    Method("halving", HALVES, 2, halving, tables.OF_HALVING),
    Method("rule", HALVES, 2, quartering, tables.OF_HALVING, exact=False),
    Method("ordinates", CHORD, 2, ordinates, tables.OF_ORDINATES, ordinates_overhang, stick=True),
    Method("tangent", TANGENT, 2, tangent_offsets, tables.OF_TANGENTS, tangents_end, stick=True),
    Method("tapes", EQUAL, 2, tapes, {"cross": tables.CROSSINGS}, tapes_fail),
    Method("produced", EQUAL, 2, chords_produced, tables.OF_PRODUCING, everyday=False, chained=True, stick=True),
    Method("angles", EQUAL, 2, deflection_angles, tables.OF_SIGHTS, angles_turn_back, everyday=False, chained=True),
    Method("coordinates", EQUAL, 2, coordinates, {"polar": tables.POLARS}, control_fails, everyday=False),
)
USUAL = "halving"
"""What a job with rounds of halving means where it names no method, and what stands where none can be done."""


class _ByName(Mapping[str, Method]):
    """The methods by their names, in order."""

    def __getitem__(self, name: str) -> Method:
        for method in METHODS:
            if method.name == name:
                return method
        raise KeyError(name)

    def __iter__(self) -> Iterator[str]:
        return (method.name for method in METHODS)

    def __len__(self) -> int:
        return len(METHODS)


BY_NAME = _ByName()
