"""The numbered discs of a step's drawing, and the ticks on what must match: none on another, nor on a stake."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.drawings.boxes import Box
from bowstring.drawings.labels import LEADER
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point

RADIUS = 11.5


def draw_discs(sketch: Sketch, discs: Sequence[tuple[int, Sequence[Point]]]) -> None:
    """Draw each disc at the first of its spots that is free, the last resort being its first; 0 is a tick."""
    for disc, spots in discs:
        free = (spot for spot in spots if not sketch.ground.taken(_box(spot), LEADER + 1))
        x, y = next(free, spots[0])
        sketch.ground.take_box(_box((x, y)))
        sketch.drawing.dot((x, y), RADIUS, "solid" if disc else "stake")
        if disc:
            size = 14.0
            sketch.drawing.text(str(disc), (x, y + 0.36 * size), "number", "middle", "in")
        else:
            sketch.drawing.lines([[(x - 5.5, y), (x - 1.5, y + 4.5), (x + 5.5, y - 5.0)]], "line string")


def _box(at: Point) -> Box:
    return Box(at[0] - RADIUS, at[1] - RADIUS, at[0] + RADIUS, at[1] + RADIUS)
