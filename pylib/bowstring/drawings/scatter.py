"""Where the stakes may come to stand: each stake's ellipse at 95 %, drawn enlarged on the arc."""

from __future__ import annotations

import math

from bowstring.drawings.plan import draw_arcs, draw_stakes, name_stakes, paper_of, stakes_on_paper
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Command, Point
from bowstring.report.forms.answer import Answer
from bowstring.words import say

_HEIGHT = 150.0
_LARGEST = 26.0
"""Drawing units: half the longest ellipse's long axis is drawn no longer than this."""

_CORNERS = 12

PULL = 4 / 3 * (math.sqrt(2) - 1)
"""How far a curve's handles reach for a quarter of a circle of radius 1."""


def scatter_svg(answer: Answer, *, id: str, width_mm: float | None = None) -> str:
    """Return the drawing of the stakes' 95 % ellipses as SVG, enlarged by a round factor that it tells.

    Args:
        answer: ``bowstring.answer``'s dict.
        id: prefix of the ids inside, unique on the page.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Raises ``ValueError`` when a figure is not finite.
    """
    paper = paper_of(answer, _HEIGHT)
    stakes = stakes_on_paper(answer)
    longest = max(stake["ellipse"]["long"] for stake in stakes)
    per = _per(longest, len(stakes))
    worst = max(stakes, key=lambda stake: stake["sigma_across"])
    sketch = Sketch(
        id=id,
        stopped=bool(answer["stops"]),
        title=say("draw.scatter.title"),
        description=say("draw.scatter.desc", at=worst["name"], across=worst["sigma_across_shown"]),
    )
    draw_arcs(sketch, answer, paper, "soft dash")
    draw_stakes(sketch, answer, paper, None)
    length = answer["staked"]["arc_length"]
    for stake in stakes:
        ellipse = stake["ellipse"]
        if not ellipse["long"]:
            continue
        x, y = paper.point(stake["x"], stake["y"])
        out, ahead = paper.outward(paper.angle_of(stake, length)), paper.ahead(paper.angle_of(stake, length))
        turned = math.radians(ellipse["turned"])
        axes = []
        for half_axis, turn in ((ellipse["long"], turned), (ellipse["short"], turned + math.pi / 2)):
            size = half_axis * per
            across, along = size * math.cos(turn), size * math.sin(turn)
            axes.append((out[0] * across + ahead[0] * along, out[1] * across + ahead[1] * along))
        _ellipse(sketch, (x, y), axes[0], axes[1])
    name_stakes(sketch, answer, paper)
    edge = sketch.edge
    factor = per / paper.scale
    words = say("draw.scatter.enlarged", factor=f"{factor:,.3g}")
    sketch.paragraph(words, (edge.left, edge.bottom + 8.0), max(edge.right - edge.left, 240.0))
    return sketch.finish(width_mm=width_mm)


def _ellipse(sketch: Sketch, at: Point, one: Point, two: Point) -> None:
    """Draw an ellipse by its half axes: four curves, true to a thousandth; labels keep clear of its outline."""

    def place(first: float, second: float) -> Point:
        return (at[0] + first * one[0] + second * two[0], at[1] + first * one[1] + second * two[1])

    commands: list[Command] = [("M", place(1.0, 0.0))]
    for quarter in range(4):
        c, s = (1, 0, -1, 0)[quarter], (0, 1, 0, -1)[quarter]
        commands.append(("C", place(c - PULL * s, s + PULL * c), place(-s + PULL * c, c + PULL * s), place(-s, c)))
    sketch.drawing.path(commands, "line arrow")
    outline = [place(math.cos(math.tau * part / _CORNERS), math.sin(math.tau * part / _CORNERS))
               for part in range(_CORNERS + 1)]  # fmt: skip
    sketch.ground.take_lines(outline)
    sketch.see(*outline)


def _per(longest: float, count: int) -> float:
    """Drawing units per metre of scatter: the longest ellipse is as large as there is room between the stakes."""
    if not longest:
        return 1.0
    return min(_LARGEST, 8.0 + 120.0 / count) / longest
