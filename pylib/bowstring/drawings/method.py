"""How a method sets its stakes, as a drawing: every line that is taped or sighted, one stake's with its numbers."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from bowstring.drawings.labels import Label
from bowstring.drawings.obstacles import draw_obstacles, name_obstacles, obstacles_near, words_of
from bowstring.drawings.offstring import draw_string, places_of_string
from bowstring.drawings.paper import Paper, figures_of
from bowstring.drawings.plan import draw_arcs, draw_stakes, hand_words, name_stakes, paper_of, stakes_on_paper
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow
from bowstring.words import say

_HEIGHT = 210.0
_ROOM_BESIDE, _ROOM_BEHIND, _ROOM_OVER = 0.2, 110.0, 90.0
"""How far lines are drawn beyond the chord's ends (a part of it), behind it and over the arc (drawing units)."""

_TANGENT_SHOWN = 0.4
"""How much of the tangent is drawn where angles are turned off it, as a part of the chord."""

_WIDEST_NUMBER = 120.0

Box = tuple[float, float, float, float]


def method_svg(answer: Answer, *, id: str, width_mm: float | None = None) -> str:
    """Return the drawing of a method's steps as SVG.

    Args:
        answer: ``bowstring.answer``'s dict, of a method that goes round once.
        id: prefix of the ids inside, unique on the page.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Raises ``ValueError`` when a figure is not finite.
    """
    paper = paper_of(answer, _HEIGHT)
    steps = [step for step in answer["steps"] if step["level"]]
    drawn = {stake["name"] for stake in stakes_on_paper(answer)}
    shown = _shown(steps, drawn)
    sketch = Sketch(
        id=id, title=say("draw.way.title"), description=_description(answer, shown), stopped=bool(answer["stops"])
    )
    places = {mark["name"]: paper.point(mark["x"], mark["y"]) for mark in answer["marks"]}
    box = _box(answer, paper)
    near = obstacles_near(answer, paper)
    draw_obstacles(sketch, near)
    draw_arcs(sketch, answer, paper, "soft dash")
    draw_stakes(sketch, answer, paper, None)
    sketch.lines([[paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)]], "string")
    draw_string(sketch, answer, paper)
    if shown["deflection"]:
        sketch.lines([_tangent(answer, paper)], "soft dash")
    others = [step for step in steps if step is not shown and (step["stake"] is None or step["stake"] in drawn)]
    thin = [piece for step in others for piece in _lines(step, places, box)]
    sketch.lines([piece for piece, _cut in thin], "soft")
    _numbers(sketch, shown, places, box)
    name_stakes(sketch, answer, paper)
    _marks(sketch, answer, shown, places, box)
    legend = name_obstacles(sketch, near, paper.point(0.0, 0.0)[1])
    edge = sketch.edge
    width = max(edge.right - edge.left, 240.0)
    top = sketch.paragraph(say("draw.way.one", stake=shown["stake"]), (edge.left, edge.bottom + 8.0), width)
    if any(cut for _piece, cut in [*thin, *_lines(shown, places, box)]):
        top = sketch.paragraph(say("draw.way.cut"), (edge.left, top + 2.0), width)
    for row in [*legend, *words_of(answer, near)]:
        top = sketch.paragraph(row, (edge.left, top + 2.0), width)
    words = say("draw.scale") if paper.stretch == 1 else say("draw.stretch.level", factor=f"{paper.stretch:,}")
    sketch.paragraph(words, (edge.left, top + 2.0), width)
    return sketch.finish(width_mm=width_mm)


def _shown(steps: Sequence[StepRow], drawn: set[str]) -> StepRow:
    """The step whose numbers are written: in the first half of the arc, where there is room beside it."""
    stakes = [step for step in steps if step["stake"] in drawn and step["half_chord"] is None]
    stakes = stakes or [step for step in steps if step["stake"] in drawn]
    return stakes[len(stakes) // 3]


def _description(answer: Answer, shown: StepRow) -> str:
    return " ".join([say("draw.way.desc", hand=hand_words(answer)), shown["text"]])


def _box(answer: Answer, paper: Paper) -> Box:
    """What the drawing shows: the chord, the arc and a parallel string with some room around."""
    wide = paper.chord * paper.scale
    places = [*paper.samples(), *places_of_string(answer, paper)]
    xs = [x for x, _y in places]
    ys = [y for _x, y in places]
    beside = _ROOM_BESIDE * wide
    return min(xs) - beside, min(ys) - _ROOM_OVER, max(xs) + beside, max(ys) + _ROOM_BEHIND


def _lines(step: StepRow, places: Mapping[str, Point], box: Box) -> Iterator[tuple[list[Point], bool]]:
    """Yield each line of a step as far as the drawing shows it, and whether it was cut."""
    for start, end in _pairs(step):
        yield _inside(places[start], places[end], box)


def _pairs(step: StepRow) -> Iterator[tuple[str, str]]:
    for measure in step["measures"]:
        yield (measure["at"], measure["to"]) if "angle" in measure else (measure["from"], measure["to"])


def _inside(start: Point, end: Point, box: Box) -> tuple[list[Point], bool]:
    """A line's part inside a box (Liang and Barsky's clipping); one mark of it is inside."""
    low, high = 0.0, 1.0
    for axis in (0, 1):
        way = end[axis] - start[axis]
        for limit, sign in ((box[axis], -1.0), (box[axis + 2], 1.0)):
            ahead, room = sign * way, sign * (limit - start[axis])
            if ahead > 0:
                high = min(high, room / ahead)
            elif ahead < 0:
                low = max(low, room / ahead)
    low, high = max(low, 0.0), max(high, low)
    points = [(start[0] + part * (end[0] - start[0]), start[1] + part * (end[1] - start[1])) for part in (low, high)]
    return points, low > 0 or high < 1


def _numbers(sketch: Sketch, step: StepRow, places: Mapping[str, Point], box: Box) -> None:
    """The shown step's lines, with what is read on each and where one is cut off."""
    for measure, (start, end) in zip(step["measures"], _pairs(step), strict=True):
        points, cut = _inside(places[start], places[end], box)
        sketch.lines([points], "string" if "angle" in measure else "arrow")
        first, last = points
        length = math.dist(first, last) or 1.0
        along = ((last[0] - first[0]) / length, (last[1] - first[1]) / length)
        if cut:
            # The zigzag stands a little inside the end that goes on.
            far, back = (last, -14.0) if math.dist(first, places[start]) < 0.5 else (first, 14.0)
            sketch.cut((far[0] + back * along[0], far[1] + back * along[1]), along)
        spots = [(first[0] + part * length * along[0], first[1] + part * length * along[1])
                 for part in (0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8)]  # fmt: skip
        text = measure["text"]
        if "angle" in measure and step["deflection"]:
            # Whatever mark is sighted, the drawing shows the angle that the trade names.
            text = say("draw.way.deflection", angle=step["deflection"])
        sketch.label(Label(text, "number", spots, (-along[1], along[0]), 7.0, _WIDEST_NUMBER))


def _tangent(answer: Answer, paper: Paper) -> list[Point]:
    """The tangent at A, from which deflections are turned, for as far as it helps."""
    half, long = math.radians(figures_of(answer)["central_angle"] / 2), paper.chord * _TANGENT_SHOWN
    return [paper.point(0.0, 0.0), paper.point(long * math.cos(half), long * math.sin(half))]


def _marks(sketch: Sketch, answer: Answer, shown: StepRow, places: Mapping[str, Point], box: Box) -> None:
    """Marks that are no stakes: the centre, pegs, known marks, and the shown step's own."""
    stakes = {stake["name"] for stake in answer["stakes"]}
    known = {mark["name"] for mark in answer["site"]["known"]}
    pegs = {step["names"]["peg"] for step in answer["steps"] if "peg" in step["names"]}
    used = {mark for step in answer["steps"] for pair in _pairs(step) for mark in pair}
    own = set(shown["marks"]) | {mark for pair in _pairs(shown) for mark in pair}
    for name in sorted((known & used | pegs | own) - stakes):
        x, y = places[name]
        inside = box[0] - 1 <= x <= box[2] + 1 and box[1] - 1 <= y <= box[3] + 1
        if not inside:
            continue
        sketch.mark((x, y))
        if name in pegs | known or len(name) <= 2:
            sketch.label(Label(name, "name", [(x, y)], (0.7, 0.7), 8.0))
