"""The seven rows of the numbers face: what stands in each, or follows, and what is told of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypedDict, final

from bowstring.errors import BadJob
from bowstring.faces.judging import DIFFERS, Judged, judged, shown
from bowstring.faces.questions import ROWS
from bowstring.faces.settling import Arcs, Typed
from bowstring.geometry.given import ANGLES
from bowstring.units.angles import show_decimal_degrees
from bowstring.units.sizes import FOOT
from bowstring.words import say

EMPTY, READ, WRONG = "empty", "read", "wrong"

_DECIMALS = {"ft-in": (FOOT, "ft", 3), "ft": (FOOT, "ft", 4), "m": (1.0, "m", 4), "mm": (1.0, "m", 4)}


@final
class MeasureRow(TypedDict):
    """One measure: ``out`` is what follows from the givens, ``beside`` the same or the given with decimals; ``state``
    is ``empty``, ``given``, ``held``, ``differs``, ``wrong`` or ``read``; ``told`` what is to be said of it;
    ``readings`` what an unclear text could mean."""

    out: str
    beside: str
    state: str
    told: str
    readings: list[str]


def measure_rows(arcs: Arcs, typed: Typed) -> dict[str, MeasureRow]:
    """Return the rows by their fields' ids."""
    judgments = judged(arcs)
    return {f"arc-{name}": _row(arcs, name, typed.get(f"arc-{name}", ""), judgments) for name in ROWS}


def _row(arcs: Arcs, name: str, text: str, judgments: dict[str, Judged]) -> MeasureRow:
    refusal = arcs.refusals.get(f"arc-{name}")
    if refusal:
        return _made(state=WRONG, told=_told(refusal), readings=list(refusal.readings), beside=_unit(arcs, name))
    if text:
        given, judgment = arcs.givens[name], judgments[name]
        return _made(state=judgment.state, told=judgment.told, beside=_as_read(arcs, name, given.value, text))
    if arcs.settled is None:
        return _made(state=EMPTY, beside=_unit(arcs, name))
    value: float | None = getattr(arcs.settled.arc, name)
    if value is None:
        return _made(state=READ, out=say("numbers.none"), told=say("numbers.no_corner"))
    return _made(state=READ, out=shown(name, value, arcs.shown), beside=decimal(arcs, name, value))


def _made(
    *, state: str, out: str = "", beside: str = "", told: str = "", readings: list[str] | None = None
) -> MeasureRow:
    return {"out": out, "beside": beside, "state": state, "told": told, "readings": readings or []}


def _told(refusal: BadJob) -> str:
    """What is wrong, and what to write."""
    return say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)


def _unit(arcs: Arcs, name: str) -> str:
    return say("form.beside.angle" if name in ANGLES else f"form.beside.{arcs.tape.unit}")


def decimal(arcs: Arcs, name: str, value: float) -> str:
    """Return a measure with decimals: what a calculator or a drawing in decimals has."""
    if name in ANGLES:
        return show_decimal_degrees(value)
    size, unit, places = _DECIMALS[arcs.tape.unit]
    return f"{value / size:.{places}f} {unit}"


def _as_read(arcs: Arcs, name: str, value: float, text: str) -> str:
    """Return how a given was read: as the tape shows it unless it was typed so, and with decimals."""
    form, both = shown(name, value, arcs.tape), arcs.tape.unit == "ft-in" or name in ANGLES
    numbers = decimal(arcs, name, value)
    if (
        arcs.shown != arcs.tape and name not in ANGLES
    ):  # first in the unit that a bare number is in, then as it is shown
        return f"{numbers}\n{shown(name, value, arcs.shown)}"
    return f"{form}\n{numbers}" if both and form != text and numbers != text else numbers


def is_stopped(rows: Mapping[str, MeasureRow]) -> bool:
    """Tell whether a given differs from what the others make."""
    return any(row["state"] == DIFFERS for row in rows.values())
