"""The three pictures that ask where the slab is: from the drawing's line toward the center, about it, or beyond."""

from __future__ import annotations

from math import cos, sin

from bowstring.drawings.svg import Command, Drawing, Point
from bowstring.words import say

PICTURED = ("outside", "centre", "inside")
"""Where the line runs in the slab, a picture each: its outside edge, its middle, its inside edge."""

_WIDTH, _HEIGHT = 108.0, 96.0
_RADIUS, _HALF, _THICK = 150.0, 0.29, 34.0
_LINE = 50.0
"""How far down the line's middle stands."""


def slab_picture(edge: str) -> str:
    """Return the picture of an edge of ``PICTURED`` as SVG; the center is below."""
    title = say(f"numbers.picture_slab.{edge}")
    drawing = Drawing(id=f"slab-{edge}", title=title, description=title)
    inward = {"outside": _THICK, "centre": _THICK / 2, "inside": 0.0}[edge]
    outer, inner = _bow(_RADIUS + _THICK - inward), _bow(_RADIUS - inward)
    ring: list[Command] = [("M", outer[0]), *(("L", point) for point in outer[1:]), *(("L", p) for p in inner[::-1])]
    drawing.path([*ring, ("Z",)], "slab")
    line = _bow(_RADIUS)
    drawing.lines([line], "line arrow strong")
    for point in (line[0], line[len(line) // 2], line[-1]):
        drawing.square(point, 4.5, "stake")
    drawing.text(say("numbers.picture_center"), (_WIDTH / 2 - 8.0, _HEIGHT - 3.0), "word")
    tip = (_WIDTH - 18.0, _HEIGHT - 2.0)
    drawing.path(
        [("M", tip), ("L", (tip[0] - 6.0, tip[1] - 10.0)), ("L", (tip[0] + 6.0, tip[1] - 10.0)), ("Z",)], "solid"
    )
    return drawing.finish((0.0, 0.0, _WIDTH, _HEIGHT))


def _bow(radius: float) -> list[Point]:
    middle = _LINE + _RADIUS
    turns = [_HALF * (step / 8 - 1) for step in range(17)]
    return [(_WIDTH / 2 + radius * sin(turn), middle - radius * cos(turn)) for turn in turns]
