"""The straights that a crew finds the ends from, as the plan draws them: the corner, or one end's own."""

from __future__ import annotations

import math
from itertools import pairwise

from bowstring.drawings.labels import Label
from bowstring.drawings.paper import Leg
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point
from bowstring.words import say


def draw_straights(sketch: Sketch, legs: list[Leg]) -> None:
    """Draw the straights that the ends are found from, and the marks on them."""
    sketch.lines([[leg.start, leg.end] for leg in legs], "soft dash")
    for leg in legs:
        if leg.cut:
            sketch.cut(leg.end, leg.ahead)
    for at, _ in _marks_on(legs).values():
        sketch.mark(at)
    for toward, square in pairwise(legs):
        if toward.name == "F" and math.dist(square.start, square.end) > 20:
            back = (-toward.ahead[0], -toward.ahead[1])
            sketch.corner(toward.end, back, square.ahead)


def _marks_on(legs: list[Leg]) -> dict[str, tuple[Point, Point]]:
    """Each mark's place and the direction in which its name stands."""
    toward = {leg.name: (0.0, math.copysign(1.0, leg.ahead[1])) for leg in legs}
    for back, on, square in zip(legs, legs[1:], legs[2:], strict=False):
        if on.name == "F":  # what lies on the straight is named on its free side
            toward["F"] = (-square.ahead[0], -square.ahead[1])
            if math.dist(back.end, on.end) < math.dist(back.end, on.start):
                toward["S"] = toward["F"]
    whole = (leg for leg in legs if not leg.cut and leg.name in ("P", "S", "T", "F"))
    return {leg.name: (leg.end, toward[leg.name]) for leg in whole}


def name_straights(sketch: Sketch, legs: list[Leg]) -> None:
    """Name the marks on the straights, and where a straight that is cut off goes on to."""
    for name, (at, toward) in _marks_on(legs).items():
        sketch.label(Label(name, "name", [at], toward, 7.0), "", name)
    for leg in legs:
        if leg.cut:
            sketch.label(Label(say("draw.to", name=leg.name), "word", [leg.end], leg.ahead, 7.0))
