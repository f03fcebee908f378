"""What is asked before anything is told of what is poured: so thick, it may be a wall."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forming.quantities import thick
from bowstring.report.forms.build import BuildRow
from bowstring.words import say

KEYS = ("edges", "boards", "joints", "grades", "pour")


def asked_of(plan: Plan) -> str:
    """Return the question."""
    return say("walled.asked", thickness=thick(plan.tape, plan.said.slab.thickness or 0.0))


def rows_asked(plan: Plan) -> list[BuildRow]:
    """Return the answer's ``build``: every part waits for it."""
    rows: list[BuildRow] = [
        {"key": key, "state": "open", "text": say("walled.first"), "more": "", "panel": "slab"} for key in KEYS
    ]
    rows[-1] |= {"text": asked_of(plan), "more": say("walled.asked_more")}
    return rows
