"""One line of the numbers face: a question with its answer in words, and how it stands."""

from __future__ import annotations

from typing import TypedDict, final

from bowstring.errors import BadJob
from bowstring.faces.settling import Arcs, Typed
from bowstring.units.lengths import read_length

OPEN, USUAL, SAID, WRONG = "open", "usual", "said", "wrong"


@final
class QuestionLine(TypedDict):
    """One question: its answer in words, ``state`` (``open``, ``usual``, ``said`` or ``wrong``) and, where it is open
    or wrong, what the bar at the thumb asks."""

    text: str
    state: str
    asked: str


def line_of(text: str, state: str) -> QuestionLine:
    """Return a line; the bar asks what is wrong with it, and an open one with its panel's title."""
    return {"text": text, "state": state, "asked": text if state == WRONG else ""}


def capital(text: str) -> str:
    """Return a text with a capital first."""
    return text[:1].upper() + text[1:]


def metres_of(arcs: Arcs, typed: Typed, name: str, *, bare: bool = True, signed: bool = False) -> float | None:
    """Return what is typed in a field for a length, metres; ``None`` where none is, or it can't be read."""
    if name not in typed:
        return None
    try:
        return read_length(typed[name], arcs.tape.unit, name, bare=bare, zero=True, signed=signed).metres
    except BadJob:
        return None


def length_of(arcs: Arcs, typed: Typed, name: str, *, small: bool = False) -> str:
    """Return a length as the tape shows it, empty where none is typed or it can't be read."""
    metres = metres_of(arcs, typed, name, bare=not small)
    if metres is None:
        return ""
    return arcs.shown.show_whole(metres) if small else arcs.shown.show(metres) if metres else ""
