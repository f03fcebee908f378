"""The plan in a wide, low box, for a sheet of paper: the arc, the string, the stakes and what is in the way."""

from __future__ import annotations

import math

from bowstring.drawings.boxes import Box, text_width
from bowstring.drawings.labels import FAINT, Label
from bowstring.drawings.obstacles import Shown, draw_obstacles, name_obstacles, obstacles_near, words_of
from bowstring.drawings.offstring import draw_string, name_string
from bowstring.drawings.paper import Leg, Paper, fit, gap_between, legs_of, places_of_ends, reach_of, round_length
from bowstring.drawings.plan import (
    draw_arcs,
    draw_stakes,
    hand_words,
    name_drawn_ends,
    plan_description,
    plan_title,
    stakes_on_paper,
)
from bowstring.drawings.sketch import MARGIN, Sketch
from bowstring.drawings.straights import draw_straights, name_straights
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.stakes import StakeRow
from bowstring.words import say

WIDE = 670.0
"""Drawing units: the width of the box, one to a pixel on a sheet of paper."""
NARROW = 440.0
"""Drawing units: the width of the box where the sheet is looked at on a phone; its words are over 9 pixels there."""

_AROUND = 30.0
_ABOVE = 22.0
"""Drawing units over the arc and under the string that names and the chord's length take at least."""

_BAR, _HIGH = 60.0, 16.0  # how long the bar is at most, how high its row
_SHRUNK = 0.05  # so much higher than its box a drawing is shrunk into it instead
_ROOM_FOR_NUMBER = 40.0
_WITHOUT_NUMBERS = 115.0  # so low a box has room for the stakes alone
_PER_NAME = 26.0
_TRIES = 4
_HALO = 2.0
_UNBROKEN = "\u00a0"


def low_plan_svg(answer: Answer, *, id: str, height: float, wide: float = WIDE) -> str:
    """Return the plan as SVG, ``wide`` by ``height`` drawing units or a little higher where labels need it.

    Raises ``ValueError`` when a figure is not finite.
    """
    labels = 2 * _ABOVE
    for straights in (True, False):
        tall = height - labels
        for _ in range(_TRIES):
            paper = _paper(answer, tall, straights, wide)
            sketch = _drawn(answer, id, paper, straights, height > _WITHOUT_NUMBERS, wide)
            total = sketch.edge.bottom - sketch.edge.top + 2 * MARGIN
            if total <= (1.0 + _SHRUNK) * height:
                return _boxed(sketch, height, wide)
            # what is beside a flat arc may be higher than the arc: all of it shrinks alike, but for the labels
            rise = paper.rise * paper.scale * paper.stretch
            tall = min(tall, rise) * (height - labels) / (total - labels)
    return _boxed(sketch, height, wide)


def _boxed(sketch: Sketch, height: float, wide: float) -> str:
    """Finish a sketch in the middle of its box."""
    edge = sketch.edge
    side = max(0.0, (wide - 2 * MARGIN - (edge.right - edge.left)) / 2)
    rest = max(0.0, height - 2 * MARGIN - (edge.bottom - edge.top)) / 2
    sketch.cover(Box(edge.left - side, edge.top - rest, edge.right + side, edge.bottom + rest))
    return sketch.finish()


def _drawn(answer: Answer, id: str, paper: Paper, straight: bool, numbers: bool, wide: float) -> Sketch:
    stopped = bool(answer["stops"])  # then no number of a step stands anywhere
    told = hand_words(answer) if stopped else plan_description(answer, paper)
    sketch = Sketch(id=id, title=plan_title(answer), description=told)
    legs: list[Leg] = legs_of(answer, paper) if straight and not paper.off else []
    near = obstacles_near(answer, paper, _AROUND)
    draw_obstacles(sketch, near)
    draw_arcs(sketch, answer, paper)
    draw_stakes(sketch, answer, paper, newest=None)
    start, end = paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)
    sketch.lines([[start, end]], "string")
    draw_string(sketch, answer, paper)
    draw_straights(sketch, legs)
    if answer["offset"]:
        for at in places_of_ends(answer, paper):
            sketch.mark(at)
    if numbers and not stopped:
        _numbers(sketch, answer, paper)
    _names(sketch, answer, paper)
    name_drawn_ends(sketch, answer, paper)
    name_straights(sketch, legs)
    name_string(sketch, answer, paper)
    legend = [*name_obstacles(sketch, near, start[1]), *words_of(answer, near)]
    _clear(sketch, near)
    _scale(sketch, answer, paper, legend, wide)
    return sketch


def _paper(answer: Answer, height: float, straight: bool, wide: float) -> Paper:
    """The map for the low box; without the corner of the straights where the arc would get too small."""
    room = wide - 150.0
    alone = fit(answer, room, height)
    reach = reach_of(answer)
    if not reach:
        return alone
    with_corner = fit(answer, room, height, reach)
    if straight and with_corner.scale * with_corner.stretch > 0.6 * alone.scale * alone.stretch:
        return with_corner
    return alone.without_corner()


def _numbers(sketch: Sketch, answer: Answer, paper: Paper) -> None:
    """The mid-ordinate's arrow and the chord's length: what shows at once that this is the right arc."""
    shown = answer["staked_shown"]
    middle, tip = paper.point(paper.chord / 2, 0.0), paper.on_arc(0.0)
    sketch.arrow(middle, (tip[0], tip[1] + 4.0))
    lines = [say("draw.chord", shown=shown["chord"])]
    if abs(tip[1] - middle[1]) > _ROOM_FOR_NUMBER and not sketch.sagitta_beside(middle, tip, shown["sagitta"]):
        lines.append(say("draw.sagitta.shown", shown=shown["sagitta"]))  # inside a narrow arc it has no room
    text = " ".join(line.replace(" ", _UNBROKEN) for line in lines) if lines[1:] else lines[0]
    spots = [paper.point(paper.chord * part, 0.0) for part in (0.5, 0.3, 0.7)]
    broken = max(text_width(line, "number") for line in lines)
    sketch.label(Label(text, "number", spots, (0.0, 1.0), 7.0, broken if lines[1:] else math.inf))


def _clear(sketch: Sketch, near: list[Shown]) -> None:
    """Clear the ground under each label that stands on what is in the way: a letter in its hatching is hard to read."""
    for one in near:
        xs, ys = [x for x, _y in one.outline], [y for _x, y in one.outline]
        over = Box(min(xs), min(ys), max(xs), max(ys))
        for box in [text for text in sketch.texts if text.overlaps(over)]:
            left, right = box.left - _HALO, box.right + _HALO
            corners = ((right, box.top), (right, box.bottom), (left, box.bottom))
            sketch.drawing.path([("M", (left, box.top)), *(("L", corner) for corner in corners), ("Z",)], "in")


def _names(sketch: Sketch, answer: Answer, paper: Paper) -> None:
    """Name the stakes, as many rounds of them (or every so many-th) as there is room for."""
    length = answer["staked"]["arc_length"]
    for stake in _named(answer, paper):
        at, name = paper.point(stake["x"], stake["y"]), stake["name"]
        if stake["level"] == 0:
            way = paper.turn * (-1.0 if name == "A" else 1.0)
            sketch.label(Label(name, "end", [at], (way * 0.9, 0.43), 9.0), "", name)
        else:
            sketch.label(Label(name, "name", [at], paper.outward(paper.angle_of(stake, length)), 7.0), "", name)


def _named(answer: Answer, paper: Paper) -> list[StakeRow]:
    """The stakes that are named, ends first; only so many that names stand apart."""
    stakes = stakes_on_paper(answer)
    room = max(3, int(answer["staked"]["arc_length"] * paper.scale / _PER_NAME))
    deepest = max(stake["level"] for stake in stakes)
    while deepest > 1 and sum(stake["level"] <= deepest for stake in stakes) > room:
        deepest -= 1
    some = sorted((stake for stake in stakes if stake["level"] <= deepest), key=lambda stake: stake["level"])
    every = -(-len(some) // room)
    return [stake for number, stake in enumerate(some) if stake["level"] == 0 or number % every == 0]


def _scale(sketch: Sketch, answer: Answer, paper: Paper, legend: list[str], wide: float) -> None:
    """A bar of known length, what is not to scale, and the names of what is in the way: in a free corner of the box, or
    else under everything."""
    number, unit, metres = round_length(_BAR / paper.scale, answer["unit"])
    told = [say(f"draw.scale.number.{unit}", number=f"{number:g}")]
    if paper.stretch != 1:
        told.append(say("draw.stretch.level", factor=f"{paper.stretch:,}"))
    if answer["offset"] and not gap_between(answer, paper)[1]:
        told.append(say("draw.low.gap"))
    words, bar, edge = " · ".join([*told, *legend]), metres * paper.scale, sketch.edge
    taken, middle = bar + 7.0 + text_width(words, "word"), (edge.left + edge.right) / 2
    half = wide / 2 - MARGIN
    sketch.cover(Box(middle - half, edge.top, middle + half, edge.bottom))
    corners = [(x, y) for y in (edge.top, edge.bottom - _HIGH) for x in (middle - half, middle + half - taken)]
    free = (at for at in corners if not sketch.ground.taken(Box(*at, at[0] + taken, at[1] + _HIGH), FAINT))
    x, y = next(free, (middle - half, edge.bottom + 6.0)) if taken < half else (middle - half, edge.bottom + 6.0)
    y += _HIGH / 2
    sketch.lines([[(x, y), (x + bar, y)], [(x, y - 4), (x, y + 4)], [(x + bar, y - 4), (x + bar, y + 4)]], "")
    sketch.paragraph(words, (x + bar + 7, y - 8), 2 * half - bar - 7)
