"""Where the stakes may come to stand: each stake's ellipse at 95 %, drawn enlarged on the arc."""

from __future__ import annotations

import math

from bowstring.views.paper import Answer
from bowstring.views.plan import draw_arcs, draw_stakes, name_stakes, paper_of, stakes_on_paper
from bowstring.views.sketch import Sketch
from bowstring.words import say

_HEIGHT = 150.0
_LARGEST = 26.0
"""Drawing units: half the longest ellipse's long axis is drawn no longer than this."""

_CORNERS = 40


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
    longest = max(float(stake["ellipse"]["long"]) for stake in stakes)
    per = _per(longest, len(stakes))
    worst = max(stakes, key=lambda stake: float(stake["sigma_across"]))
    sketch = Sketch(
        id=id,
        title=say("draw.scatter.title"),
        description=say("draw.scatter.desc", at=worst["name"], across=worst["sigma_across_shown"]),
    )
    draw_arcs(sketch, answer, paper, "soft dash")
    draw_stakes(sketch, answer, paper, None)
    length = float(answer["staked"]["arc_length"])
    for stake in stakes:
        ellipse = stake["ellipse"]
        if not ellipse["long"]:
            continue
        x, y = paper.point(float(stake["x"]), float(stake["y"]))
        out, ahead = paper.outward(paper.angle_of(stake, length)), paper.ahead(paper.angle_of(stake, length))
        turned = math.radians(float(ellipse["turned"]))
        points = []
        for corner in range(_CORNERS + 1):
            angle = 2 * math.pi * corner / _CORNERS
            one, two = float(ellipse["long"]) * per * math.cos(angle), float(ellipse["short"]) * per * math.sin(angle)
            across = one * math.cos(turned) - two * math.sin(turned)
            along = one * math.sin(turned) + two * math.cos(turned)
            points.append((x + out[0] * across + ahead[0] * along, y + out[1] * across + ahead[1] * along))
        sketch.lines([points], "arrow")
    name_stakes(sketch, answer, paper)
    edge = sketch.edge
    factor = per / paper.scale
    words = say("draw.scatter.enlarged", factor=f"{factor:,.3g}")
    sketch.paragraph(words, (edge.left, edge.bottom + 8.0), max(edge.right - edge.left, 240.0))
    return sketch.finish(width_mm=width_mm)


def _per(longest: float, count: int) -> float:
    """Drawing units per metre of scatter: the longest ellipse is as large as there is room between the stakes."""
    if not longest:
        return 1.0
    return min(_LARGEST, 8.0 + 120.0 / count) / longest
