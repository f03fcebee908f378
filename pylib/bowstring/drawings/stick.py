"""The story stick: one strip with every mark from its zero end, to be copied onto a lath."""

from __future__ import annotations

import math
from itertools import pairwise

from bowstring.drawings.boxes import text_width
from bowstring.drawings.labels import spread
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import SIZES, Point
from bowstring.report.forms.answer import Answer
from bowstring.words import say

_LENGTH = 320.0
_WIDE = 30.0
_GAP = 1.35 * SIZES["number"]


def stick_svg(answer: Answer, *, id: str, width_mm: float | None = None) -> str:
    """Return the story stick as SVG, its zero end on top and distances along it to scale.

    Args:
        answer: ``bowstring.answer``'s dict; ``answer["stick"]`` holds its length and marks, metres.
        id: prefix of the ids inside, unique on the page.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Raises ``ValueError`` when a distance is not finite, is negative or lies past the stick's end.
    """
    stick = answer["stick"]
    marks = sorted(stick["marks"], key=lambda mark: mark["distance"])
    length = stick["length"]
    for mark in marks:
        distance = mark["distance"]
        if not (math.isfinite(distance) and 0 <= distance <= length * (1 + 1e-9)):
            raise ValueError(f"a mark off the stick: {mark!r}")
    listed = ", ".join(say("draw.stick.mark", label=mark["label"], shown=mark["shown"]) for mark in marks)
    moved = [stake["name"] for stake in answer["stakes"] if stake["miss"]]
    stale = [say("draw.stick.stale", names=", ".join(moved))] if moved else []
    sketch = Sketch(
        id=id,
        stopped=bool(answer["stops"]),
        title=say("draw.stick.title"),
        description=" ".join([say("draw.stick.desc", marks=listed), *stale]),
    )
    tall = max(_LENGTH, _GAP * (len(marks) + 1))
    places = [tall * mark["distance"] / length if length else 0.0 for mark in marks]
    labels = _label_places([0.0, *places])
    sketch.lines([[(0.0, 0.0), (0.0, tall), (_WIDE, tall), (_WIDE, 0.0), (0.0, 0.0)]], "arc")
    right = 30.0 + _WIDE
    _row(sketch, (_WIDE, 0.0), labels[0], say("draw.stick.zero"), "0", right)
    widest = max((text_width(mark["shown"], "number") for mark in marks), default=0.0)
    for mark, place, label in zip(marks, places, labels[1:], strict=True):
        sketch.lines([[(0.0, place), (_WIDE, place)]], "arrow")
        _row(sketch, (_WIDE, place), label, mark["label"], mark["shown"], right, widest)
    edge = sketch.edge
    top = edge.bottom + 8.0
    for note in (say("draw.stick.note"), *stale):
        top = sketch.paragraph(note, (0.0, top), max(edge.right, 240.0))
    return sketch.finish(width_mm=width_mm)


def _label_places(places: list[float]) -> list[float]:
    """Return the labels' heights: in order, never touching, each as near its mark as can be."""
    heights = spread(places, _GAP)
    assert all(upper < lower for upper, lower in pairwise(heights))
    return heights


def _row(sketch: Sketch, mark: Point, height: float, label: str, shown: str, right: float, widest: float = 0.0) -> None:
    """Write a mark's number and label at a height, with a line from the mark."""
    sketch.lines([[mark, (mark[0] + 6, mark[1]), (right - 10, height), (right - 4, height)]], "soft")
    baseline = height + 0.36 * SIZES["number"]
    box = sketch.words(shown, (right, baseline), "number", "start")
    sketch.words(label, (max(box.right, right + widest) + 10, baseline), "word", "start")
