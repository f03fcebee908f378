"""What a stake is called along a line of several pieces: each of its arcs has an A, an M and a B of its own."""

from __future__ import annotations

from bowstring.report.forms.answer import Answer


def named_through(answer: Answer, name: str) -> str:
    """Return a stake's name as a file has it that may be read beside another arc's: the piece's number before it, where
    the line has several."""
    part = answer["lined"]
    return f"{part['at']}-{name}" if part is not None and len(part["pieces"]) > 1 else name
