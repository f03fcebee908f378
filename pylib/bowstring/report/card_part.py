"""One card of a kind of step: which of the step's numbers stand on it, and how it is known to be right."""

from __future__ import annotations

from dataclasses import dataclass

ANGLE, DEFLECTION = "angle", "deflection"
"""Numbers that are no measured length: what is turned, and the angle off the tangent."""

SHORT_CHORDS, WHOLE, SQUARE = "short_chords", "whole", "square"
"""What the last line shows: both short chords, all pulls together, the sides of the squaring triangle."""


@dataclass(frozen=True)
class Part:
    """One card of a step.

    Attributes:
        numbers: the label (``card.label.`` + it) and which of the step's measures, counted from 0, or one of the above.
        right: names the last line (``card.right.`` + it); shows: what stands beside it.
        text: names the sentence (``card.`` + it), the step's kind where it is empty.
        moves: which of the step's moves it is, from one up to another; all where there is nothing.
    """

    numbers: tuple[tuple[str, int | str], ...] = ()
    right: str = ""
    shows: int | str | None = None
    text: str = ""
    moves: tuple[int, int] | None = None
