"""The whole arc, small in a corner or as a drawing of its own: what stands, what is set now, what comes later."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from bowstring.drawings.boxes import Box
from bowstring.drawings.paper import figures_of, stretch_of
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import SIZES, Point
from bowstring.drawings.turn import turn_of
from bowstring.report.forms.answer import Answer

MOST = 33
"""How many stakes a small arc shows: of more every so many-th."""

SMALL = 5.0
"""Drawing units: half a stake's side in the small one is under this."""

_SAMPLES = 28


@dataclass(frozen=True)
class Overview:
    """A map of the whole arc into a room on paper, the curve over its chord. ``turn``: -1 with A at the right."""

    turn: int
    left: float
    low: float
    scale: float
    stretch: int
    middle: float

    def point(self, x: float, y: float) -> Point:
        """Return a place on paper of one in the frame, metres."""
        u = (x - self.middle) * self.turn
        return self.left + u * self.scale, self.low - y * self.scale * self.stretch


def overview_in(answer: Answer, room: Box) -> Overview:
    """Return the map that puts the whole arc into a room on paper."""
    figures = figures_of(answer)
    chord, rise, radius = figures["chord"], figures["sagitta"], figures["radius"]
    wide = chord if figures["central_angle"] <= 180 else 2 * radius
    stretch = stretch_of(rise, chord)
    scale = min((room.right - room.left) / wide, (room.bottom - room.top) / (rise * stretch))
    return Overview(turn_of(answer["side"]), (room.left + room.right) / 2, room.bottom, scale, stretch, chord / 2)


def arc_points(answer: Answer, first: float = -1.0, last: float = 1.0) -> list[Point]:
    """Return places along the arc in the frame, metres, from one part of half its angle to another; -1 is A."""
    figures = figures_of(answer)
    half, radius = math.radians(figures["central_angle"]) / 2, figures["radius"]
    angles = (half * (first + (last - first) * step / _SAMPLES) for step in range(_SAMPLES + 1))
    return [
        (figures["chord"] / 2 + radius * math.sin(a), figures["sagitta"] - 2 * radius * math.sin(a / 2) ** 2)
        for a in angles
    ]


def draw_overview(
    sketch: Sketch, answer: Answer, view: Overview, stakes: Sequence[str], at: Mapping[str, Point],
    standing: Collection[str], now: Collection[str], half: float,
) -> None:  # fmt: skip
    """Draw the arc with its stakes: in outline, faint what comes later, full what is set now."""
    large = half > SMALL
    sketch.drawing.lines([[view.point(x, y) for x, y in arc_points(answer)]], f"line {'arc' if large else 'string'}")
    step = max(1, math.ceil(len(stakes) / MOST))
    shown = [name for place, name in enumerate(stakes) if place % step == 0 or name in now]
    for name in sorted(("A", "B", *shown), key=lambda one: one in now):
        place = view.point(*at[name])
        size = half if name in standing or name in now else 0.7 * half
        look = "stake new" if name in now else "stake" if name in standing else "stake older"
        sketch.drawing.square(place, size, look)
    for name, way in (("A", -1), ("B", 1)):
        (x, y), out = view.point(*at[name]), way * view.turn
        if large:
            sketch.words(name, (x, y + half + 3.0 + SIZES["end"]), "end")
        else:
            beside = (x + out * (half + 4.0), y + 0.35 * SIZES["word"])
            sketch.words(name, beside, "word", "end" if out < 0 else "start", "quiet")
