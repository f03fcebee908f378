"""How a level's sagitta is kept square to its string: equal half chords, a triangle or a square.

Not to scale, and says so. The string lies across the paper as in the plan: the curve above it (left hand) or
below.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from bowstring.views.labels import Label
from bowstring.views.paper import Answer
from bowstring.views.sketch import Sketch
from bowstring.views.strings import String, row_of, strings_of
from bowstring.views.svg import Point
from bowstring.words import say

WIDTH = 270.0
"""Length of the string on paper."""
HIGHEST, LOWEST = 150.0, 52.0
"""Limits of a right triangle's height on paper."""
_FLATTEST, _STEEPEST = 0.34, 0.6  # height of the picture as a part of the string


def triangle_svg(
    answer: Answer, level: int, *, id: str, way: str | None = None, width_mm: float | None = None
) -> str:
    """Return the drawing for keeping one level's sagitta square, as SVG.

    Args:
        answer: ``bowstring.answer``'s dict.
        level: from 1 to the number of halving rows.
        id: prefix of the ids inside, unique on the page.
        way: ``slide``, ``triangle`` or ``square``; the row's own way when ``None``.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Where the level's strings differ, it is drawn for the first of them and says so. Raises ``KeyError`` for a
    level or a way that isn't there (``has_triangle`` tells of one).
    """
    row = row_of(answer, level)
    strings = strings_of(answer, level)
    string = strings[0]
    squaring: Mapping[str, Any] = row["squaring"]
    way = str(squaring["way"]) if way is None else way
    if way == "triangle" and not has_triangle(answer, level):
        raise KeyError(f"no triangle at level {level}")
    draw = {"slide": _slide, "triangle": _triangle, "square": _square}[way]
    start, name, end = string.names
    alone = len({one.numbers for one in strings}) > 1
    description = [
        say(
            f"draw.triangle.{way}.desc",
            start=start,
            name=name,
            end=end,
            sagitta=string.sagitta,
            **{key: squaring.get(f"{key}_shown") for key in ("along", "out", "long_side")},
        ),
        *([slide_words(string)] if way == "slide" else []),
        *([say("draw.triangle.alone", name=name)] if alone else []),
        say("draw.not_to_scale"),
    ]
    title = say("draw.triangle.title", level=level)
    sketch = Sketch(id=id, title=title, description=" ".join(description))
    notes = draw(sketch, row, string, up_of(answer))
    if alone:
        notes.append(say("draw.triangle.alone", name=name))
    edge = sketch.edge
    top = edge.bottom + 6.0
    for note in (*notes, say("draw.not_to_scale")):
        top = sketch.paragraph(note, (edge.left, top), max(edge.right - edge.left, WIDTH))
    return sketch.finish(width_mm=width_mm)


def has_triangle(answer: Answer, level: int) -> bool:
    """Say whether a level has a right triangle that can be drawn.

    One whose leg out is the arc's own sagitta is of no use once the stake's sagitta is another.
    """
    row, string = row_of(answer, level), strings_of(answer, level)[0]
    squaring: Mapping[str, Any] = row["squaring"]
    if any(squaring.get(key) is None for key in ("along", "out", "long_side")):
        return False
    return string.nominal or not _to_stake(row)


def _to_stake(row: Mapping[str, Any]) -> bool:
    """Whether the leg out ends at the stake itself."""
    return abs(float(row["squaring"]["out"]) - float(row["sagitta"])) <= 1e-6 * float(row["sagitta"])


def slide_words(string: String) -> str:
    """Say what both half chords must read, or what was found instead, as far as it is known."""
    if string.half_chord is not None:
        return say("draw.triangle.slide", half_chord=string.half_chord)
    if string.half_chords is not None:
        return say("draw.triangle.found", first=string.half_chords[0], second=string.half_chords[1])
    return say("draw.triangle.slide.alike")


def up_of(answer: Answer) -> int:
    """Return -1 when the curve is drawn above the string (left hand), +1 below."""
    return 1 if answer.get("side", "left") == "right" else -1


def string_and_names(
    sketch: Sketch,
    names: tuple[str, str, str],
    up: int,
    height: float,
    origin: Point = (0.0, 0.0),
    *,
    aside: bool = False,
) -> tuple[Point, Point, Point, Point]:
    """Draw a string with its end stakes and the new stake at a height over its middle.

    ``origin`` is where the string starts; ``aside`` puts the new stake's name beside it. Returns start,
    middle, end and the new stake's place.
    """
    x, y = origin
    start, middle, end, tip = origin, (x + WIDTH / 2, y), (x + WIDTH, y), (x + WIDTH / 2, y + up * height)
    toward = (1.0, 0.0) if aside else (0.0, float(up))
    looks = ((start, "end-stake", (-1.0, 0.0)), (tip, "new", toward), (end, "end-stake", (1.0, 0.0)))
    for name, (at, look, _) in zip(names, looks, strict=True):
        sketch.stake(name, at, look)
    sketch.lines([[start, end]], "string")
    for name, (at, _, way) in zip(names, looks, strict=True):
        sketch.label(Label(name, "end", [at], way, 10.0), "", name)
    return start, middle, end, tip


def room_of(row: Mapping[str, Any], up: int) -> tuple[float, float]:
    """Return how much room ``isosceles`` needs over and under its string, drawing units."""
    curve, free = _height(row) + 32.0, 68.0
    return (curve, free) if up < 0 else (free, curve)


def _height(row: Mapping[str, Any]) -> float:
    return WIDTH * min(max(float(row["sagitta"]) / float(row["chord"]), _FLATTEST), _STEEPEST)


def isosceles(
    sketch: Sketch, row: Mapping[str, Any], string: String, up: int, origin: Point = (0.0, 0.0)
) -> None:
    """Draw one string of a level with its sagitta and both half chords, and the numbers that it reads."""
    height = _height(row)
    start, middle, end, tip = string_and_names(sketch, string.names, up, height, origin)
    sketch.lines([[start, tip, end]], "")
    sketch.arrow(middle, (tip[0], tip[1] - 5.0 * up))
    sketch.corner(middle, (-1.0, 0.0), (0.0, float(up)))
    away = -up
    near, far = origin[1] + away * 16.0, origin[1] + away * 40.0
    for left, right in ((start[0], middle[0]), (middle[0], end[0])):
        sketch.dimension((left, near), (right, near), string.half, away)
    if string.chord is not None:
        sketch.dimension((start[0], far), (end[0], far), say("draw.chord", shown=string.chord), away)
    sketch.sagitta(middle, tip, string.sagitta)
    size = math.hypot(WIDTH / 2, height)
    for text, corner, side in zip(string.half_chords or (), (start, end), (-1.0, 1.0), strict=False):
        spots = [_between(corner, tip, part) for part in (0.5, 0.4, 0.6)]
        sketch.label(Label(text, "number", spots, (side * height / size, up * WIDTH / 2 / size), 4.0))


def _between(one: Point, other: Point, part: float) -> Point:
    return (one[0] + (other[0] - one[0]) * part, one[1] + (other[1] - one[1]) * part)


def _slide(sketch: Sketch, row: Mapping[str, Any], string: String, up: int) -> list[str]:
    isosceles(sketch, row, string, up)
    return [slide_words(string)]


def _triangle(sketch: Sketch, row: Mapping[str, Any], string: String, up: int) -> list[str]:
    """The leg along lies on the string, so the long side ends between the string's start and its middle."""
    squaring: Mapping[str, Any] = row["squaring"]
    along, out, sagitta = (float(value) for value in (squaring["along"], squaring["out"], row["sagitta"]))
    # The triangle keeps its own shape, so that the longer leg looks it, unless it is too flat for its words.
    leg = min(WIDTH / 2 * 0.9, HIGHEST * along / out)
    rise = max(leg * out / along, LOWEST)
    same = _to_stake(row)
    tip_height = rise if same else rise * min(max(sagitta / out, 0.4), 0.62) if sagitta < out else rise * 1.35
    _, middle, _, tip = string_and_names(sketch, string.names, up, tip_height, aside=not same)
    foot, top = (middle[0] - leg, 0.0), (middle[0], up * rise)
    away = -up
    if not same:
        sketch.lines([[middle, (top[0], up * max(rise, tip_height))]], "soft dash")
    sketch.lines([[foot, top]], "arc")
    sketch.lines([[foot, middle], [middle, top]], "arc")
    sketch.corner(middle, (-1.0, 0.0), (0.0, float(up)))
    text = say("draw.triangle.along", shown=squaring["along_shown"])
    sketch.dimension((foot[0], away * 16.0), (middle[0], away * 16.0), text, away)
    size = math.hypot(leg, rise)
    spots = [_between(foot, top, part) for part in (0.5, 0.4, 0.6)]
    long_side = say("draw.triangle.long_side", shown=squaring["long_side_shown"])
    sketch.label(Label(long_side, "number", spots, (-rise / size, up * leg / size), 5.0))
    _heights(sketch, row, string, top, tip, same)
    whole = squaring.get("whole")
    return [say("draw.triangle.whole", whole=whole)] if whole else []


def _heights(
    sketch: Sketch, row: Mapping[str, Any], string: String, top: Point, tip: Point, same: bool
) -> None:
    """The leg out and the sagitta as measure lines: the taller one nearer, its number above the other."""
    out = str(row["squaring"]["out_shown"])
    x = tip[0] + 40.0
    if same:
        _upright(sketch, x, tip[1], 0.0, say("draw.triangle.out.stake", name=string.names[1], shown=out))
        return
    heights = [
        (top[1], say("draw.triangle.out", shown=out)),
        (tip[1], say("draw.sagitta.shown", shown=string.sagitta)),
    ]
    tall, short = sorted(heights, key=lambda one: -abs(one[0]))
    _upright(sketch, x + 24.0, short[0], 0.0, short[1])
    _upright(sketch, x, tall[0], short[0], tall[1])
    sketch.lines([[(top[0] + 9.0, top[1]), (x - 6.0, top[1])]], "soft dash")


def _upright(sketch: Sketch, x: float, y: float, above: float, text: str) -> None:
    """A measure line from the string out to ``y``, its number at its right, farther out than ``above``."""
    sketch.lines([[(x, 0.0), (x, y)], [(x - 4, 0.0), (x + 4, 0.0)], [(x - 4, y), (x + 4, y)]], "soft")
    spots = [(x, above + (y - above) * part) for part in (0.5, 0.6, 0.7, 0.4)]
    sketch.label(Label(text, "number", spots, (1.0, 0.0), 5.0))


def _square(sketch: Sketch, row: Mapping[str, Any], string: String, up: int) -> list[str]:
    _, middle, _, tip = string_and_names(sketch, string.names, up, 82.0)
    x, blade, tongue, wide = middle[0], 84.0, 58.0, 9.0
    corners = [
        (x, 0.0),
        (x - blade, 0.0),
        (x - blade, up * wide),
        (x - wide, up * wide),
        (x - wide, up * tongue),
        (x, up * tongue),
    ]
    sketch.lines([[*corners, corners[0]]], "")
    sketch.arrow(middle, (tip[0], tip[1] - 5.0 * up), feathers=False)
    spots = [_between(middle, tip, part) for part in (0.5, 0.4, 0.6)]
    text = say("draw.sagitta.shown", shown=string.sagitta)
    sketch.label(Label(text, "number", spots, (1.0, 0.0), 6.0))
    away = -up
    for left, right in ((0.0, x), (x, WIDTH)):
        sketch.dimension((left, away * 16.0), (right, away * 16.0), string.half, away)
    return [say("draw.triangle.square")]
