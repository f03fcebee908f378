"""The plan in a wide, low box, for a sheet of paper: the arc, the string, the stakes and what is in the way."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from bowstring.drawings.boxes import Box, text_width, wrap
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
from bowstring.drawings.svg import Point
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
_BETWEEN = 2.0
"""Drawing units between two names, so that a wider face than is reckoned with doesn't bring them together."""
_SMALLER = (1.0, 0.93, 0.86, 0.79, 0.72)
"""Of their usual height: the types in which the names may stand, so that as many of them as can be find room."""
_WORDS_WIDE = 190.0  # what is said beside the bar is broken into lines so wide where it has no room on one
_TRIES = 4
_LEAST_DEEP = 0.36
"""Of the box's height, how high the arc stays whatever stands around it: what is higher is shrunk into the box."""
_LEAST_WIDE = 0.8
"""Of the width that there is, what a stretched rise has to leave the arc."""
_STRETCHES = tuple(step * 10**power for power in range(9, -1, -1) for step in (5, 2, 1))
_HALO = 2.0
_UNBROKEN = "\u00a0"


def low_plan_svg(answer: Answer, *, id: str, height: float, wide: float = WIDE) -> str:
    """Return the plan as SVG, in the shape of ``wide`` by ``height`` or a little higher where labels need it.

    The names stand in the largest type in which all of them have room, otherwise in that in which most have; on a
    phone's narrow plan always in the usual one, since nothing can be read there in a smaller. Raises ``ValueError``
    when a figure is not finite.
    """
    sizes = _SMALLER if wide > NARROW else _SMALLER[:1]
    numbers = height > _WITHOUT_NUMBERS
    first = _fitted(answer, id, height, wide, numbers=numbers)
    every, best = len(stakes_on_paper(answer)), (first.named, first)
    for size in sizes[1:]:
        # In a larger box, shown as large as before, all type is smaller.
        high, across = height / size, wide / size
        if best[0] == every or first.could_name(answer, high, across) <= best[0]:
            continue
        fitted = _fitted(answer, id, high, across, numbers=numbers, around=first.around)
        best = max(best, (fitted.named, fitted), key=lambda one: one[0])
    return _boxed(best[1].sketch, best[1].height, best[1].wide)


@dataclass(frozen=True)
class _Fitted:
    """A drawing that goes into its box; ``around``: how high what stands around the arc is, ``straight``: whether the
    straights are in it, ``named``: how many stakes have their names beside their squares."""

    sketch: Sketch
    height: float
    wide: float
    around: float
    straight: bool
    named: int

    def could_name(self, answer: Answer, height: float, wide: float) -> int:
        """Return how many stakes would have their names in another box, at most."""
        tall = max((1.0 + _SHRUNK) * height - self.around, _LEAST_DEEP * height)
        paper = _paper(answer, tall, self.straight, wide)
        return len(_named(answer, paper))


def _fitted(
    answer: Answer, id: str, height: float, wide: float, *, numbers: bool, around: float = 2 * _ABOVE
) -> _Fitted:
    """Return the largest drawing that goes into a box; without the straights where they leave it too small."""
    for straight in (True, False) if reach_of(answer) else (False,):
        tall, before = max(height - around, _LEAST_DEEP * height), (0.0, 0.0)
        for _ in range(_TRIES):
            paper = _paper(answer, tall, straight, wide)
            sketch = _drawn(answer, id, paper, straight, numbers, wide)
            total = sketch.edge.bottom - sketch.edge.top + 2 * MARGIN
            rise = _deep(answer, paper) * paper.scale * paper.stretch
            if total <= (1.0 + _SHRUNK) * height:
                break
            # What is around the arc shrinks with it in part: as much as it did from the try before to this one.
            grows = (before[1] - total) / (before[0] - rise) if before[0] > rise else 1.0
            lowest = min(rise, _LEAST_DEEP * height, 0.5 * wide * _deep(answer, paper) / paper.chord)
            tall, before = max(0.4 * rise, lowest, rise - (total - height) / max(grows, 1.0)), (rise, total)
        else:
            continue
        break
    named = {one["name"] for one in _named(answer, paper)}
    far = sum(one.leader is not None and one.label.text in named for one in sketch.placed)
    return _Fitted(sketch, height, wide, total - rise, straight, len(named) - far)


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
    name_drawn_ends(sketch, answer, paper, aside=True)
    name_straights(sketch, legs)
    name_string(sketch, answer, paper)
    legend = [*name_obstacles(sketch, near, start[1]), *words_of(answer, near)]
    _clear(sketch, near)
    _scale(sketch, answer, paper, legend, wide)
    return sketch


def _deep(answer: Answer, paper: Paper, reach: float = 0.0) -> float:
    """How deep the arc is with the parallel string before or behind it, metres."""
    off = answer["parallel"] or 0.0
    return max(paper.rise, reach, off) + max(0.0, -off)


def _across(answer: Answer, room: float, height: float, reach: float = 0.0) -> Paper:
    """The map into a room with all of the string in it; stretched no more than leaves the arc most of the width."""
    paper = fit(answer, room, height, reach)
    widest = fit(answer, room, math.inf, reach).scale
    deep = _deep(answer, paper, reach)
    least = min(_LEAST_WIDE * widest, height / deep)
    stretch = next((one for one in _STRETCHES if one <= paper.stretch and height / (deep * one) >= least), 1)
    return paper.drawn(min(widest, height / (deep * stretch)), stretch)


def _paper(answer: Answer, height: float, straight: bool, wide: float) -> Paper:
    """The map for the low box; without the corner of the straights where the arc would get too small."""
    room = wide - 150.0
    alone = _across(answer, room, height)
    reach = reach_of(answer)
    if not reach:
        return alone
    with_corner = _across(answer, room, height, reach)
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
            # over the drawn arc's end, which is named beside itself
            sketch.label(Label(name, "end", [at], (way * 0.9, -0.43 if answer["offset"] else 0.43), 9.0), "", name)
        else:
            sketch.label(Label(name, "name", [at], paper.outward(paper.angle_of(stake, length)), 7.0), "", name)


def _named(answer: Answer, paper: Paper) -> list[StakeRow]:
    """The stakes that are named, ends first; only so many that names stand apart."""
    stakes = stakes_on_paper(answer)
    per = _BETWEEN + max(text_width(stake["name"], "name") for stake in stakes)
    room = max(3, int(answer["staked"]["arc_length"] * paper.scale / per) + 1)
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
    half, middle = wide / 2 - MARGIN, (edge.left + edge.right) / 2
    sketch.cover(Box(middle - half, edge.top, middle + half, edge.bottom))
    room = 2 * half - bar - 7.0
    (x, y), room = next(_corners(sketch, words, bar, half), ((middle - half, edge.bottom + 6.0), room))
    y += _HIGH / 2
    sketch.lines([[(x, y), (x + bar, y)], [(x, y - 4), (x, y + 4)], [(x + bar, y - 4), (x + bar, y + 4)]], "")
    sketch.paragraph(words, (x + bar + 7, y - 8), room)


def _corners(sketch: Sketch, words: str, bar: float, half: float) -> Iterator[tuple[Point, float]]:
    """The free corners of the box for the bar and its words, on one line or in several, with how wide these may be."""
    edge = sketch.edge
    for room in (half, _WORDS_WIDE):
        rows = wrap(words, "word", room)
        wide = max(text_width(row, "word") for row in rows) + 1.0
        taken, high = bar + 7.0 + wide, _HIGH * len(rows)
        for y in (edge.top, edge.bottom - high):
            for x in (edge.left, edge.right - taken):
                box = Box(x, y, x + taken, y + high)
                if taken < half and high <= edge.bottom - edge.top and not sketch.ground.taken(box, FAINT):
                    yield (x, y), wide
