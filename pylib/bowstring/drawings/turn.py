"""Which way round a job is drawn: one answer for every drawing of it, so that none is another one upside down.

A-B lies level and the curve rises. A stands at the left where the curve is on the left of somebody at A who faces B,
and at the right where it is on the right: what that person sees on paper, never a mirror of it. Where nobody has said
which hand it is, A stands at the left.
"""

from __future__ import annotations


def turn_of(side: str | None) -> int:
    """Return which way B lies from A on paper, for the answer's ``side``: 1 to the right, -1 to the left."""
    return -1 if side == "right" else 1


def ends_of(side: str | None) -> tuple[str, str]:
    """Return the end that is drawn at the left and the one at the right."""
    return ("B", "A") if turn_of(side) < 0 else ("A", "B")
