"""A building's face in a drawing, hatched behind it."""

from __future__ import annotations

from bowstring.drawings.svg import Drawing, Point

HATCH = 8.0
"""Drawing units: how deep it is hatched, and about how far apart the strokes are."""


def draw_building(drawing: Drawing, start: Point, end: Point) -> list[Point]:
    """Draw the face from place to place, level on paper, a little past both, and hatched below; return its ends."""
    (left, y), (right, _y) = sorted((start, end))
    face = [(left - HATCH, y), (right + HATCH, y)]
    count = max(2, round((right - left) / HATCH) + 2)
    strokes = [face[0][0] + (face[1][0] - face[0][0]) * step / count for step in range(1, count + 1)]
    drawing.lines([face], "line")
    drawing.lines([[(x, y), (x - HATCH, y + HATCH)] for x in strokes], "line soft")
    return face
