"""A card of the second pass, from the hubs to the pour, and the mark by which it is done."""

from __future__ import annotations

import json
import zlib
from collections.abc import Sequence

from bowstring.report.forms.cards import CardRight, CardRow
from bowstring.units.tape import Tape
from bowstring.words import say

Value = float | str | None
"""What a card's numbers are, whatever they are shown in: lengths in metres, names of what was chosen."""

CORNERS = "corners"
"""What the card of a pad's far corners is of."""

FINE = 1e-4
"""Metres: what differs by less is the same number."""


def pass_card(
    what: str,
    text: str,
    values: Sequence[Value],
    numbers: Sequence[tuple[str, str]] = (),
    right: CardRight | None = None,
    notes: Sequence[str] = (),
    drawn: Sequence[tuple[str, str, int]] = (),
) -> CardRow:
    """Return a card without its running number.

    ``values``: all that it hangs on; ``numbers``: what each is, and the number as it is shown; ``drawn``: from where to
    where each is drawn in the cut across the slab, by the disc of its number.
    """
    return {
        "number": 0,
        "kind": f"form_{what}",
        "mark": mark_of(what, values),
        "steps": [],
        "stake": None,
        "sets": [],
        "title": say(f"forming.title.{what}"),
        "main": numbers[0][1] if numbers else "",
        "where": say(f"forming.where.{what}"),
        "text": text,
        "numbers": [
            {"disc": disc, "label": label, "shown": shown, "slope": None}
            for disc, (label, shown) in enumerate(numbers, 1)
        ],
        "right": right,
        "notes": [note for note in notes if note],
        "lines": [{"kind": "off", "from": start, "to": end, "disc": disc, "at": None} for start, end, disc in drawn],
    }


def mark_of(what: str, values: Sequence[Value]) -> str:
    """Return what stands among what is done for a card with these numbers: others, another mark.

    >>> mark_of("dig", [0.3048, "inside"]) == mark_of("dig", [0.304801, "inside"])
    True
    >>> mark_of("dig", [0.3048, "inside"]) == mark_of("dig", [0.2, "inside"])
    False
    """
    exact = [round(value / FINE) if isinstance(value, float) else value for value in values]
    return f"form_{what}-{zlib.crc32(json.dumps(exact).encode()):08x}"


def right_of(key: str, shown: str = "") -> CardRight:
    """Return how a card's work is known to be right, with what must be read."""
    return {"text": say(f"forming.right.{key}"), "shown": shown or None, "more": ""}


def from_to(tape: Tape, first: float, last: float) -> str:
    """Return a length at A and at B, one where both are shown alike."""
    texts = tape.show(first), tape.show(last)
    return texts[0] if texts[0] == texts[1] else say("forming.from_to", first=texts[0], last=texts[1])
