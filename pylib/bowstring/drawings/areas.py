"""What is in the way, drawn: hatched in a full line where nothing passes, dotted in a dotted one where a tape does."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

from bowstring.drawings.boxes import Box
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Command, Point

_HATCH, _DOTS = 7.0, 6.5


def draw_area(sketch: Sketch, outline: Sequence[Point], stops: str) -> None:
    """Draw an obstacle by its outline on paper; ``stops``: ``tape`` or ``feet``."""
    commands: list[Command] = [("L" if number else "M", corner) for number, corner in enumerate(outline)]
    wall = stops == "tape"
    sketch.drawing.path([*commands, ("Z",)], "line" if wall else "line dash", {"stops": stops})
    if wall:
        sketch.drawing.lines(list(_hatching(outline)), "line soft")
    else:
        sketch.drawing.lines([[(x, y), (x + 0.01, y)] for x, y in _dots(outline)], "line arc")
    sketch.ground.take_lines([*outline, outline[0]])
    sketch.see(*outline)


def spans(outline: Sequence[Point], level: float) -> list[tuple[float, float]]:
    """Return where a level line (y) runs inside an outline, as pairs of x from left to right."""
    crossings = []
    for (x, y), (x2, y2) in pairwise([*outline, outline[0]]):
        if (y <= level) != (y2 <= level):
            crossings.append(x + (level - y) / (y2 - y) * (x2 - x))
    crossings.sort()
    return list(zip(crossings[::2], crossings[1::2], strict=True))


def _levels(outline: Sequence[Point], step: float) -> Iterator[float]:
    """Yield evenly spaced levels through an outline, a few even through a small one."""
    low, high = min(y for _, y in outline), max(y for _, y in outline)
    step = min(step, (high - low) / 3)
    if step > 0:
        yield from (low + step * (number + 0.5) for number in range(math.ceil((high - low) / step)))


def _hatching(outline: Sequence[Point]) -> Iterator[list[Point]]:
    s = math.sqrt(0.5)
    turned = [(s * (x + y), s * (y - x)) for x, y in outline]
    for level in _levels(turned, _HATCH):
        for start, end in spans(turned, level):
            yield [(s * (x - level), s * (x + level)) for x in (start, end)]


def _dots(outline: Sequence[Point]) -> Iterator[Point]:
    for level in _levels(outline, _DOTS):
        for start, end in spans(outline, level):
            count = max(1, math.floor((end - start) / _DOTS))
            yield from ((start + (end - start) * (number + 0.5) / count, level) for number in range(count))


def cut_to(outline: Sequence[Point], box: Box) -> list[Point]:
    """Return the part of an outline that is in a box, empty where none is (Sutherland and Hodgman's clipping).

    >>> cut_to([(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)], Box(2.0, -1.0, 9.0, 9.0))
    [(2.0, 0.0), (4.0, 0.0), (4.0, 4.0), (2.0, 4.0)]
    """
    kept = list(outline)
    for axis, limit, sign in ((0, box.left, 1.0), (0, box.right, -1.0), (1, box.top, 1.0), (1, box.bottom, -1.0)):
        kept = _half(kept, axis, limit, sign)
    return kept if len(kept) > 2 else []


def _half(outline: Sequence[Point], axis: int, limit: float, sign: float) -> list[Point]:
    """The part of an outline on one side of a level or upright line."""
    kept: list[Point] = []
    for number, corner in enumerate(outline):
        before = outline[number - 1]
        here, there = (sign * (point[axis] - limit) for point in (corner, before))
        if (here < 0) != (there < 0):
            part = there / (there - here)
            kept.append((before[0] + (corner[0] - before[0]) * part, before[1] + (corner[1] - before[1]) * part))
        if here >= 0:
            kept.append(corner)
    return kept
