"""A slab along a line as outlines of many corners, a piece each, and the dig around it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import acos, ceil

from bowstring.forming.line.edges import Edge, NoEdge
from bowstring.forming.line.runs import Run
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.outline import ENDS
from bowstring.geometry.plane import Point

_BOW = 1e-4
"""Metres: a side of the outline leaves its arc by less, a small part of what counts as a touch."""


def outlines_of(slab: LineSlab) -> list[list[Point]]:
    """Return the outline of each piece of a slab, metres in the line's frame: to the miter where a kink is.

    A piece each, so that a line that comes round across itself has no outline that crosses itself.
    """
    sides = [_by_piece(slab.left_edge), _by_piece(slab.right_edge)]
    return [[*left, *reversed(right)] for left, right in zip(*sides, strict=True)]


def _by_piece(edge: Edge) -> list[list[Point]]:
    found: list[list[Point]] = [[] for _piece in edge.line.pieces]
    for part in edge.runs:
        found[part.piece].extend(_points(part.run))
    return found


def _points(run: Run) -> Iterator[Point]:
    """Places along a run so close that the sides between them stay on its arc."""
    step = 2 * acos(max(-1.0, 1 - _BOW * abs(run.curvature)))
    count = max(1, ceil(abs(run.turn) / step)) if run.curvature else 1
    return (run.at(run.length * number / count).point for number in range(count + 1))


def dig_of(slab: LineSlab, past: float, ends: float | None = None, past_ends: Sequence[str] = ENDS) -> LineSlab | None:
    """Return what is dug, so far past both edges of a slab and straight on past both its ends, metres; ``ends``: past
    those, where it is another length; ``past_ends``: past which of them, ``A`` its start and ``B`` its end.

    ``None`` where an edge can't follow the line so far out: inside of an arc the dig reaches the center, or inside of a
    kink the pieces are too short for it.
    """
    try:
        on = past if ends is None else ends
        line = slab.line.run_on(*(on if end in past_ends else 0.0 for end in ENDS))
        return LineSlab(line, slab.left + past, slab.right + past)
    except NoEdge:
        return None


def dug_area(slab: LineSlab, past: float, ends: float | None = None, past_ends: Sequence[str] = ENDS) -> float | None:
    """Return the area of what is dug, square metres, exactly (``LineSlab.area``); as ``dig_of``.

    ``None`` where ``dig_of`` has none, and where the dig lies over itself: its sum would count that place twice.
    """
    dig = dig_of(slab, past, ends, past_ends)
    return None if dig is None or dig.overlaps else dig.area
