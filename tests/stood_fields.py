"""Stakes that stand, card by card, with what the page keeps of them: for tests of numbers that change afterwards."""

from __future__ import annotations

import json
from typing import Any

from bowstring.job.form import JobForm
from bowstring.page.calls import Calls

FIELDS = {"unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face",
          "levels": "2", "start": "ends"}  # fmt: skip
FOUND = {"found-chord-0": "38' 0-3/4\"", "found-chord-1": "38' 0-3/4\"", "found-tape": "level", "found-hold": "radius"}
M = 4
"""The card of the first stake: the ticket, the chord and the string stand before it."""


def card(fields: dict[str, str], number: int | None = None, calls: Calls | None = None) -> dict[str, Any]:
    asked = {"fields": fields, "face": "stakes", "card": number}
    told: dict[str, Any] = json.loads((calls or Calls()).handle("face", json.dumps(asked)))
    return told


def worked(fields: dict[str, str], last: int = M, first: int = 1) -> dict[str, str]:
    """The fields after each card up to one was done, in order, with what was settled on the way."""
    for number in range(first, last + 1):
        told = card(fields, number)
        assert told["card"] == number
        fields = {**fields, **told.get("fixed", {}), "done": f"{fields.get('done', '')} {number}"}
    return fields


def is_stop(fields: dict[str, str]) -> bool:
    return 'data-do="restart"' in card(fields)["html"]


STRING = {**FIELDS, "method": "ordinates", "parallel": "8 ft"}
PB = 4
"""The card of the string's second pin: the ticket, the chord and the first pin stand before it."""

WALK: JobForm = {
    "bowstring": 1,
    "title": "Dock walk",
    "line": [
        {"straight": "20 ft"},
        {"arc": {"radius": "31 ft", "central_angle": "70"}, "turn": "left"},
        {"arc": {"radius": "24 ft", "central_angle": "40"}, "turn": "right", "kink": "2 left"},
        {"straight": "8 ft 6 in"},
    ],
    "width": "6 ft",
    "edge": "centre",
    "drawn_to": "centre",
    "slab": {"thickness": "4 in"},
}
"""A line of two arcs."""
