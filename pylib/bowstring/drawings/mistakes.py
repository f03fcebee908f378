"""One blunder drawn: the arc, where the stakes belong, and where they would stand."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from bowstring.drawings.labels import Label
from bowstring.drawings.paper import Paper, figures_of, stretch_of
from bowstring.drawings.plan import WIDEST, hand_words
from bowstring.drawings.sketch import MARGIN, Sketch
from bowstring.drawings.svg import Point
from bowstring.drawings.turn import turn_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.checks import MistakeRow
from bowstring.words import say

_WIDTH, _HEIGHT = 250.0, 230.0
_NARROWEST = 150.0
MOST_DRAWN = 13
"""Stakes that are drawn and named: more would leave the crosses between them no room."""

_LEAST, _MOST = 26.0, 110.0
"""Drawing units: the longest way from a stake to where it would stand is drawn no shorter and no longer than this."""

_SAME_PLACE = 2.0
"""Drawing units: a stake that would stand so near its place gets no cross."""

Pair = tuple[str, Point, Point]
"""A stake's name, where it belongs and where it would stand, metres in the answer's frame."""


def mistakes_svg(answer: Answer, kind: str, *, id: str, width_mm: float | None = None) -> str:
    """Return the drawing of one blunder as SVG.

    Args:
        answer: ``bowstring.answer``'s dict.
        kind: which of its ``mistakes``.
        id: prefix of the ids inside, unique on the page.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Raises ``KeyError`` for a blunder that isn't there, ``ValueError`` when a figure is not finite.
    """
    row = next((one for one in answer["mistakes"] if one["kind"] == kind), None)
    if row is None:
        raise KeyError(kind)
    pairs = _drawn(answer, row)
    if not all(math.isfinite(value) for _name, *places in pairs for place in places for value in place):
        raise ValueError("a stake that can't be drawn")
    width = _WIDTH
    while True:
        sketch = _sketch(answer, row, pairs, width, id)
        excess = sketch.edge.right - sketch.edge.left + 2 * MARGIN - WIDEST
        if excess <= 0 or width <= _NARROWEST:
            return sketch.finish(width_mm=width_mm)
        width = max(width - excess - 1.0, _NARROWEST)


def _sketch(answer: Answer, row: MistakeRow, pairs: Sequence[Pair], width: float, id: str) -> Sketch:
    paper, times = _paper(answer, pairs, width)
    names = [name for name, _right, _wrong in pairs]
    true = {name: paper.point(*right) for name, right, _wrong in pairs}
    wrong = {name: paper.point(x + times * (x2 - x), y + times * (y2 - y)) for name, (x, y), (x2, y2) in pairs}
    sketch = Sketch(
        id=id, title=say("mistake.draw.title"), description=_description(answer, row), stopped=bool(answer["stops"])
    )
    _lines(sketch, paper, list(true.values()), list(wrong.values()))
    _names(sketch, answer, paper, true)
    # The figure stands at the stake that it tells of, or nowhere.
    far = row["moved_at"]
    if far in names:
        away = _away(true[far], wrong[far])
        text = say("mistake.draw.off", shown=row["moved_shown"])
        sketch.label(Label(text, "number", [wrong[far]], away, 8.0, 70.0))
    _foot(sketch, answer, paper, times, len(pairs))
    return sketch


def _drawn(answer: Answer, row: MistakeRow) -> list[Pair]:
    """The ends, the stakes that the blunder's figures name, and as many others as there is room for, evenly."""
    belongs = {stake["name"]: (stake["x"], stake["y"]) for stake in answer["stakes"]}
    stands = {stake["name"]: (stake["x"], stake["y"]) for stake in row["stakes"]}
    every = [name for name in belongs if name in stands]
    step = max(1.0, (len(every) - 1) / (MOST_DRAWN - 1))
    kept = {every[round(number * step)] for number in range(min(MOST_DRAWN, len(every)))}
    if row["moved_at"] in stands and row["moved_at"] not in kept:
        # In place of its nearest neighbour, so that the names keep their room.
        at = every.index(row["moved_at"])
        others = [name for name in every[1:-1] if name in kept]  # in order: of two as near, always the first goes
        kept.discard(min(others, key=lambda name: abs(every.index(name) - at)))
        kept.add(row["moved_at"])
    return [(name, belongs[name], stands[name]) for name in every if name in kept]


def _paper(answer: Answer, pairs: Sequence[Pair], width: float) -> tuple[Paper, float]:
    """The map that has room for both places of every stake, and how many times too large the way between is drawn."""
    figures = figures_of(answer)
    chord, rise = figures["chord"], figures["sagitta"]
    half_angle = math.radians(figures["central_angle"]) / 2
    bulge = figures["radius"] if half_angle > math.pi / 2 else chord / 2
    stretch = stretch_of(rise, chord)
    scale = min(width / (2 * bulge), _HEIGHT / (rise * stretch))
    far = max(math.hypot(x2 - x, (y2 - y) * stretch) for _name, (x, y), (x2, y2) in pairs) * scale
    mirrored = all(math.isclose(y2, -y, abs_tol=1e-9 * figures["radius"]) for _name, (_x, y), (_x2, y2) in pairs)
    times = 1.0
    if 0 < far < _LEAST:
        times = _round(_LEAST / far)
    elif far > _MOST and not mirrored:  # a curve on the other hand is itself to be seen
        times = 1 / _round(far / _MOST)
    if mirrored:
        scale = min(scale, _HEIGHT / (2 * rise * stretch))
    paper = Paper(scale, stretch, figures["radius"], half_angle, chord, rise, turn=turn_of(answer["side"]))
    return paper, times


def _round(factor: float) -> float:
    """Return the next round factor from ``factor`` up: 1, 2 or 5 times a power of ten."""
    power = 10.0 ** math.floor(math.log10(factor))
    return next(step * power for step in (1, 2, 5, 10) if step * power >= factor)


def _description(answer: Answer, row: MistakeRow) -> str:
    told = say("mistake.draw.desc", text=row["text"], told=row["told"], hand=hand_words(answer))
    return f"{told} {say('mistake.draw.each', name=row['moved_at'], shown=row['moved_shown'])}"


def _lines(sketch: Sketch, paper: Paper, true: Sequence[Point], wrong: Sequence[Point]) -> None:
    sketch.drawing.path(paper.curve(), "line soft dash")
    samples = paper.samples()
    sketch.ground.take_lines(samples)
    sketch.see(*samples)
    sketch.lines([[paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)]], "soft")
    for right, other in zip(true, wrong, strict=True):
        if math.dist(right, other) > _SAME_PLACE:
            sketch.lines([[right, other]], "arrow")
            sketch.mark(other)


def _names(sketch: Sketch, answer: Answer, paper: Paper, places: Mapping[str, Point]) -> None:
    """The true stakes with their names, outside the arc."""
    length = answer["staked"]["arc_length"]
    rows = {stake["name"]: stake for stake in answer["stakes"]}
    for name, at in places.items():
        sketch.stake(name, at, "stake" if rows[name]["level"] else "end-stake")
    for name, at in places.items():
        if rows[name]["level"]:
            sketch.label(Label(name, "name", [at], paper.outward(paper.angle_of(rows[name], length)), 8.0), "", name)
        else:
            way = paper.turn * (-1.0 if name == "A" else 1.0)
            sketch.label(Label(name, "end", [at], (way * 0.92, -0.39), 9.5), "", name)


def _away(true: Point, wrong: Point) -> Point:
    """The unit direction from a stake's place on past where it would stand."""
    size = math.dist(true, wrong)
    return ((wrong[0] - true[0]) / size, (wrong[1] - true[1]) / size) if size > _SAME_PLACE else (0.0, 1.0)


def _foot(sketch: Sketch, answer: Answer, paper: Paper, times: float, drawn: int) -> None:
    """What square and cross mean, on which hand the curve belongs, and what is not to scale."""
    edge = sketch.edge
    left, top, width = edge.left, edge.bottom + 10.0, max(edge.right - edge.left, _WIDTH)
    top = sketch.paragraph(say("mistake.draw.square"), (left, top), width)
    top = sketch.paragraph(say("mistake.draw.cross"), (left, top), width)
    words = [answer["hand"]]
    if paper.stretch > 1:
        words.append(say("draw.stretch.level", factor=f"{paper.stretch:,}"))
    if times > 1:
        words.append(say("mistake.draw.larger", factor=f"{times:,.0f}"))
    elif times < 1:
        words.append(say("mistake.draw.smaller", factor=f"{1 / times:,.0f}"))
    if drawn < len(answer["stakes"]):
        words.append(say("mistake.draw.some"))
    for line in words:
        top = sketch.paragraph(line, (left, top + 2.0), width)
