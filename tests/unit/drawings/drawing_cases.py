"""Answers of many shapes for the drawings' tests: real jobs, each answered once, part by part as it is read.

What ``case`` and ``make`` return is kept for every test and can't be changed; ``own`` gives a copy that can.
"""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Mapping
from functools import cache
from typing import Any

from bowstring import answering

FOOT, INCH = 0.3048, 0.0254

SHAPES: dict[str, dict[str, Any]] = {
    "ordinary": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 3},
    "one level": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 1},
    "right hand": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 3, "side": "right"},
    "offset": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 2, "offset": 1.5 * INCH, "toward": "centre"},
    "hub": {
        "chord": 38 * FOOT,
        "rise": 5 * FOOT,
        "levels": 3,
        "offset": 4 * FOOT,
        "toward": "outside",
        "side": "right",
    },
    "flat": {"chord": 60 * FOOT, "rise": 6 * INCH, "levels": 4},
    "flat hub": {"chord": 60 * FOOT, "rise": 6 * INCH, "levels": 2, "offset": 3 * FOOT, "toward": "outside"},
    "very flat": {"chord": 100.0, "rise": 0.001, "levels": 1, "unit": "m"},
    "a little flat": {"chord": 60 * FOOT, "rise": 4.9 * FOOT, "levels": 3, "side": "right"},
    "steep": {"chord": 12.0, "rise": 4.1, "levels": 4, "unit": "mm"},
    "semicircle": {"chord": 24 * FOOT, "rise": 12 * FOOT, "levels": 4},
    "greater": {"chord": 20 * FOOT, "rise": 17 * FOOT, "levels": 4, "side": "right"},
    "nine tenths": {"chord": 9.27, "rise": 9.27 / 2 * math.tan(math.radians(81)), "levels": 5, "unit": "m"},
    "nine tenths offset": {
        "chord": 9.27,
        "rise": 9.27 / 2 * math.tan(math.radians(81)),
        "levels": 3,
        "unit": "m",
        "offset": 0.9,
        "toward": "centre",
    },
    "found chord": {
        "chord": 38 * FOOT,
        "rise": 5 * FOOT,
        "levels": 2,
        "found": {"chord": ["38' 2\"", "38' 2\""], "tape": "level", "hold": "radius"},
    },
    "five levels": {"chord": 96 * FOOT, "rise": 19 * FOOT, "levels": 5},
    "six levels": {"chord": 168 * FOOT, "rise": 33 * FOOT, "levels": 6},
}


def job(
    chord: float,
    rise: float,
    levels: int,
    *,
    side: str = "left",
    unit: str = "ft-in",
    offset: float = 0.0,
    toward: str = "centre",
    title: str = "Pond edge, north bed",
    ends: tuple[str, str] = ("nail in the oak root", "corner of the pump house"),
    **more: Any,
) -> dict[str, Any]:
    """Return the job of a drawn arc, metres; ``more`` are other keys of a job."""
    made = {
        "title": title,
        "unit": unit,
        "arc": {"chord": f"{chord:.9f} m", "sagitta": f"{rise:.9f} m"},
        "levels": levels,
        "side": side,
        "drawn_to": "face",
        "ends": dict(zip("AB", ends, strict=True)),
        **more,
    }
    return made | ({"offset": f"{offset:.9f} m", "toward": toward} if offset else {})


def _refuse(self: object, *values: object, **named: object) -> None:
    raise TypeError("this answer is kept for every test: change its own()")


_CHANGES = ("__setitem__", "__delitem__", "__ior__", "__iadd__", "append", "clear", "extend", "insert", "pop",
            "popitem", "remove", "reverse", "setdefault", "sort", "update")  # fmt: skip
_KeptDict = type("_KeptDict", (dict,), dict.fromkeys(_CHANGES, _refuse))
_KeptList = type("_KeptList", (list,), dict.fromkeys(_CHANGES, _refuse))


def _kept(value: Any) -> Any:
    if isinstance(value, Mapping):
        return _KeptDict({key: _kept(one) for key, one in value.items()})
    return _KeptList(_kept(one) for one in value) if isinstance(value, list) else value


class _Parts(dict[str, Any]):
    """The parts of an answer, each made when it is first read."""

    def __init__(self, answer: Any, make: Callable[[Any], Any]) -> None:
        super().__init__()
        self.answer, self.make = answer, make

    def __missing__(self, part: str) -> Any:
        self[part] = self.make(self.answer[part])
        return self[part]


@cache
def _answered(text: str) -> Any:
    return _Parts(answering(json.loads(text)), _kept)


def answered(asked: dict[str, Any]) -> Any:
    """Return the answer to a job, kept for the whole session; what is in its parts can't be changed."""
    return _answered(json.dumps(asked, sort_keys=True))


def make(chord: float, rise: float, levels: int, **more: Any) -> Any:
    """Return the kept answer to ``job``."""
    return answered(job(chord, rise, levels, **more))


def case(name: str, **changes: Any) -> Any:
    """Return the kept answer of a shape from ``SHAPES``, with changes to its job."""
    return make(**{**SHAPES[name], **changes})


def own(answer: Any) -> Any:
    """Return a copy of an answer, for a test that needs one which no job has."""
    return _Parts(answer, lambda part: json.loads(json.dumps(part)))
