"""The string parallel to the chord that ordinates are taken from, on the plan and on the drawing of the method."""

from __future__ import annotations

from bowstring.drawings.labels import Label
from bowstring.drawings.paper import Paper
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point
from bowstring.methods.parallel import ENDS
from bowstring.report.forms.answer import Answer
from bowstring.words import say


def places_of_string(answer: Answer, paper: Paper) -> list[Point]:
    """Return where the parallel string's ends lie on paper; none where the sheet's ordinates aren't from one."""
    off = answer["parallel"]
    return [] if off is None else [paper.point(0.0, off), paper.point(paper.chord, off)]


def draw_string(sketch: Sketch, answer: Answer, paper: Paper) -> None:
    """Draw the parallel string, and what it is set by."""
    ends = places_of_string(answer, paper)
    if ends:
        chord = [paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)]
        sketch.lines([ends], "string")
        sketch.lines([list(pair) for pair in zip(chord, ends, strict=True)], "soft dash")
        for at in ends:
            sketch.mark(at)


def name_string(sketch: Sketch, answer: Answer, paper: Paper) -> None:
    """Name its ends."""
    for at, end, way in zip(places_of_string(answer, paper), ENDS, (-paper.turn, paper.turn), strict=False):
        away = -0.5 if (answer["parallel"] or 0.0) > 0 else 0.5
        sketch.label(Label(ENDS[end], "name", [at], (0.86 * way, away), 8.0), "", ENDS[end])


def words_of_string(answer: Answer) -> str:
    """Return what the parallel string is, empty without one."""
    off, first = answer["parallel"], ENDS["A"]
    if off is None:
        return ""
    measures = (measure for step in answer["steps"] for measure in step["measures"])
    shown = next(one["shown"] for one in measures if "distance" in one and (one["from"], one["to"]) == ("A", first))
    key = "draw.parallel" if off > 0 else "draw.parallel.behind"
    return say(key, start=first, end=ENDS["B"], shown=shown)
