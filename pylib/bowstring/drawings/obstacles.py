"""What is in the way of a job, on the plan of its arc: as much of it as is near, each with its name or its number."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bowstring.drawings.areas import cut_to, draw_area
from bowstring.drawings.boxes import Box
from bowstring.drawings.labels import Label
from bowstring.drawings.paper import Paper
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point
from bowstring.report.forms.answer import Answer
from bowstring.words import say

_AROUND = 56.0
"""Drawing units: what is farther than this beside or over the arc, or behind its string, isn't on its plan."""

_WIDEST_NAME, _LONGEST = 110.0, 80.0


@dataclass(frozen=True)
class Shown:
    """An obstacle as far as the plan shows it."""

    name: str
    stops: str
    outline: list[Point]


def obstacles_near(answer: Answer, paper: Paper, around: float = _AROUND) -> list[Shown]:
    """Return the obstacles of which there is something within ``around`` (drawing units) of the arc."""
    samples = [*paper.samples(), paper.point(0.0, 0.0), paper.point(0.0, answer["parallel"] or 0.0)]
    xs, ys = [x for x, _y in samples], [y for _x, y in samples]
    near = Box(min(xs) - around, min(ys) - around, max(xs) + around, max(ys) + around)
    every = (
        Shown(one["name"], one["stops"], cut_to([paper.point(x, y) for x, y in one["outline"]], near))
        for one in answer["site"]["obstacles"]
    )
    return [one for one in every if one.outline]


def draw_obstacles(sketch: Sketch, shown: list[Shown]) -> None:
    """Draw what is in the way, under everything else."""
    for one in shown:
        draw_area(sketch, one.outline, one.stops)


def name_obstacles(sketch: Sketch, shown: list[Shown], string: float) -> list[str]:
    """Write each obstacle's name beside it, or its number where there is no room; return the rows of a legend."""
    legend: list[str] = []
    for one in shown:
        places = list(_beside(one.outline, string))
        if any(sketch.fits(Label(one.name, "word", [spot], way, 4.0, _WIDEST_NAME)) for spot, way in places):
            continue
        number = f"({len(legend) + 1})"
        legend.append(say("draw.obstacle.row", number=number, name=one.name))
        if not any(sketch.fits(Label(number, "word", [spot], way, 3.0)) for spot, way in places):
            spots = [spot for spot, _way in places]
            sketch.label(Label(number, "word", spots, places[0][1], 4.0))  # with a line to it where it stands off
    return legend


def _beside(outline: list[Point], string: float) -> Iterator[tuple[Point, Point]]:
    """The places at which a name may stand, each with its direction from there: under it, over it, beside it.

    ``string``: how far down the string from A to B lies.
    """
    xs, ys = [x for x, _y in outline], [y for _x, y in outline]
    x, y = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    ends = [((x, max(ys)), (0.0, 1.0)), ((x, min(ys)), (0.0, -1.0))]
    yield from ends if y > string else reversed(ends)  # first on the side away from the string: there is more room
    yield (max(xs), y), (1.0, 0.0)
    yield (min(xs), y), (-1.0, 0.0)


def words_of(answer: Answer, shown: list[Shown]) -> Iterator[str]:
    """Yield what is said of those that the plan doesn't show."""
    there = {one.name for one in shown}
    away = [one["name"] for one in answer["site"]["obstacles"] if one["name"] not in there]
    if away:
        yield say("draw.obstacle.away", names=", ".join(away))
