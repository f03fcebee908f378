"""What stands where a slab ends, in a drawing: a building's or old concrete's face, hatched behind it."""

from __future__ import annotations

from math import dist

from bowstring.drawings.svg import Drawing, Point

HATCH = 8.0
"""Drawing units: how deep it is hatched, and about how far apart the strokes are."""


def draw_building(drawing: Drawing, start: Point, end: Point) -> list[Point]:
    """Draw the face from place to place, level on paper, a little past both, and hatched below; return its ends."""
    first, last = sorted((start, end))
    return draw_face(drawing, first, last, (0.0, 1.0))


def draw_face(drawing: Drawing, start: Point, end: Point, behind: Point) -> list[Point]:
    """Draw a face from place to place, a little past both, and hatched to the side ``behind`` it, a unit direction
    square to it; return its ends."""
    (x, y), (x2, y2) = start, end
    long = dist(start, end)
    along = ((x2 - x) / long, (y2 - y) / long)
    face = [(x - along[0] * HATCH, y - along[1] * HATCH), (x2 + along[0] * HATCH, y2 + along[1] * HATCH)]
    (x, y), (x2, y2) = face
    count = max(2, round(long / HATCH) + 2)
    strokes = [(x + (x2 - x) * step / count, y + (y2 - y) * step / count) for step in range(1, count + 1)]
    slant = ((behind[0] - along[0]) * HATCH, (behind[1] - along[1]) * HATCH)
    drawing.lines([face], "line")
    drawing.lines([[(x, y), (x + slant[0], y + slant[1])] for x, y in strokes], "line soft")
    return face
