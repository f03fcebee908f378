"""How a level's sagitta is kept square to its string: equal half chords, a triangle or a square.

Not to scale, and says so. The string lies across the paper as in the plan: the curve above it, what is
toward A on the side where A stands.
"""

from __future__ import annotations

import math

from bowstring.drawings.boxes import Box, text_width
from bowstring.drawings.labels import Label
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.strings import String, row_of, strings_of
from bowstring.drawings.svg import Point
from bowstring.drawings.turn import turn_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.halving import LevelRow
from bowstring.words import say

WIDTH = 270.0
"""Length of the string on paper where it stands under a level."""
WIDEST = 266.0
"""Drawing units: no triangle's drawing is wider, so that its words are 8 points high on 58 mm of paper."""
_ALONE, _UNDER_TRIANGLE = 222.0, 186.0  # length of the string where it is drawn alone
_LEFT, _RIGHT = -15.0, 235.0  # what a label may reach to
HIGHEST, LOWEST = 140.0, 76.0
"""Limits of a right triangle's height on paper."""
_FLATTEST = 0.34  # height of the picture as a part of the string
_STEEPEST = 0.6  # and of a string alone, whose sagitta's number finds room beside the sagitta so
_LINE = 100.0  # width of a long side's text before it goes on in another line


def triangle_svg(answer: Answer, level: int, *, id: str, way: str | None = None, width_mm: float | None = None) -> str:
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
    squaring = row["squaring"]
    way = squaring["way"] if way is None else way
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
            along=squaring["along_shown"],
            out=squaring["out_shown"],
            long_side=squaring["long_side_shown"],
        ),
        *([slide_words(string)] if way == "slide" else []),
        *([say("draw.triangle.alone", name=name)] if alone else []),
        say("draw.not_to_scale"),
    ]
    title = say("draw.triangle.title", level=level)
    sketch = Sketch(id=id, title=title, description=" ".join(description), stopped=bool(answer["stops"]))
    turn = turn_of(answer["side"])
    for ends in ((_LEFT - 240.0, _LEFT), (_RIGHT, _RIGHT + 240.0)):
        left, right = sorted(turn * x for x in ends)
        sketch.ground.take_box(Box(left, -400.0, right, 400.0))
    notes = draw(sketch, row, string, turn)
    if alone:
        notes.append(say("draw.triangle.alone", name=name))
    edge = sketch.edge
    top = edge.bottom + 6.0
    for note in (*notes, say("draw.not_to_scale")):
        top = sketch.paragraph(note, (edge.left, top), max(edge.right - edge.left, _RIGHT - _LEFT))
    return sketch.finish(width_mm=width_mm)


def has_triangle(answer: Answer, level: int) -> bool:
    """Say whether a level has a right triangle that can be drawn.

    One whose leg out is the arc's own sagitta is of no use once the stake's sagitta is another.
    """
    row, string = row_of(answer, level), strings_of(answer, level)[0]
    squaring = row["squaring"]
    if squaring["along"] is None or squaring["out"] is None or squaring["long_side"] is None:
        return False
    return string.nominal or not _to_stake(row["sagitta"], squaring["out"])


def _to_stake(sagitta: float, out: float) -> bool:
    """Whether the leg out ends at the stake itself."""
    return abs(out - sagitta) <= 1e-6 * sagitta


def slide_words(string: String) -> str:
    """Say what both half chords must read, or what was found instead, as far as it is known."""
    if string.half_chord is not None:
        return say("draw.triangle.slide", half_chord=string.half_chord)
    if string.half_chords is not None:
        return say("draw.triangle.found", first=string.half_chords[0], second=string.half_chords[1])
    return say("draw.triangle.slide.alike")


def string_and_names(
    sketch: Sketch,
    names: tuple[str, str, str],
    turn: int,
    height: float,
    origin: Point = (0.0, 0.0),
    *,
    width: float = WIDTH,
    aside: bool = False,
    lift: tuple[int, int] = (0, 0),
) -> tuple[Point, Point, Point, Point]:
    """Draw a string with its end stakes and the new stake at a height over its middle.

    ``turn``: which way the string runs on paper, 1 to the right, -1 to the left; ``origin`` is where it starts;
    ``aside`` puts the new stake's name beside it; ``lift`` the start's and the end's name above (-1) or under (1) it.
    Returns start, middle, end and the new stake's place.
    """
    x, y = origin
    start, middle, end, tip = (
        origin,
        (x + turn * width / 2, y),
        (x + turn * width, y),
        (x + turn * width / 2, y - height),
    )
    toward = (float(turn), 0.0) if aside else (0.0, -1.0)
    first, last = (
        (way * 0.45, 0.9 * high) if high else (float(way), 0.0) for high, way in zip(lift, (-turn, turn), strict=True)
    )
    looks = ((start, "end-stake", first), (tip, "new", toward), (end, "end-stake", last))
    for name, (at, look, _) in zip(names, looks, strict=True):
        sketch.stake(name, at, look)
    sketch.lines([[start, end]], "string")
    for name, (at, _, way) in zip(names, looks, strict=True):
        sketch.label(Label(name, "end", [at], way, 10.0), "", name)
    return start, middle, end, tip


def room_of(row: LevelRow) -> tuple[float, float]:
    """Return how much room ``isosceles`` needs over and under its string, drawing units."""
    return _height(row, WIDTH) + 32.0, 68.0


def _height(row: LevelRow, width: float, flattest: float = _FLATTEST) -> float:
    return width * min(max(row["sagitta"] / row["chord"], flattest), _STEEPEST)


def isosceles(
    sketch: Sketch,
    row: LevelRow,
    string: String,
    turn: int,
    origin: Point = (0.0, 0.0),
    *,
    width: float = WIDTH,
    lift: tuple[int, int] = (0, 0),
) -> None:
    """Draw one string of a level with its sagitta and both half chords, and the numbers that it reads."""
    height = _height(row, width, _FLATTEST if width == WIDTH else _STEEPEST)
    start, middle, end, tip = string_and_names(sketch, string.names, turn, height, origin, width=width, lift=lift)
    sketch.lines([[start, tip, end]], "")
    sketch.arrow(middle, (tip[0], tip[1] + 5.0))
    sketch.corner(middle, (-float(turn), 0.0), (0.0, -1.0))
    near, far = origin[1] + 16.0, origin[1] + 40.0
    sketch.halves(start[0], end[0], near, string.half, 1)
    if string.chord is not None:
        sketch.dimension((start[0], far), (end[0], far), say("draw.chord", shown=string.chord), 1)
    sketch.sagitta(middle, tip, string.sagitta)
    size = math.hypot(width / 2, height)
    for text, corner, side in zip(string.half_chords or (), (start, end), (-turn, turn), strict=False):
        spots = [_between(corner, tip, part) for part in (0.5, 0.4, 0.6)]
        sketch.label(Label(text, "number", spots, (side * height / size, -width / 2 / size), 4.0))


def _between(one: Point, other: Point, part: float) -> Point:
    return (one[0] + (other[0] - one[0]) * part, one[1] + (other[1] - one[1]) * part)


def _slide(sketch: Sketch, row: LevelRow, string: String, turn: int) -> list[str]:
    isosceles(sketch, row, string, turn, width=_ALONE, lift=(-1, -1))
    return [slide_words(string)]


def _triangle(sketch: Sketch, row: LevelRow, string: String, turn: int) -> list[str]:
    """The leg along lies on the string, so the long side ends between the string's start and its middle."""
    squaring = row["squaring"]
    along, out, sagitta = squaring["along"], squaring["out"], row["sagitta"]
    assert along is not None and out is not None  # has_triangle was asked
    # The triangle keeps its own shape, so that the longer leg looks it, unless it is too flat for its words.
    leg = min(_UNDER_TRIANGLE / 2 * 0.92, HIGHEST * along / out)
    rise = max(leg * out / along, LOWEST)
    same = _to_stake(sagitta, out)
    # half as high, or half as high again: each height's number finds room beside it
    tip_height = rise if same else rise * 0.5 if sagitta < out else rise * 1.55
    _, middle, _, tip = string_and_names(
        sketch, string.names, turn, tip_height, width=_UNDER_TRIANGLE, aside=not same, lift=(-1, 1)
    )
    foot, top = (middle[0] - turn * leg, 0.0), (middle[0], -rise)
    if not same:
        sketch.lines([[middle, (top[0], -max(rise, tip_height))]], "soft dash")
    sketch.lines([[foot, top]], "arc")
    sketch.lines([[foot, middle], [middle, top]], "arc")
    sketch.corner(middle, (-float(turn), 0.0), (0.0, -1.0))
    text = say("draw.triangle.along", shown=squaring["along_shown"])
    sketch.dimension((foot[0], 16.0), (middle[0], 16.0), text, 1)
    size = math.hypot(leg, rise)
    spots = [_between(foot, top, part) for part in (0.5, 0.4, 0.6)]
    long_side = say("draw.triangle.long_side", shown=squaring["long_side_shown"])
    sketch.label(Label(long_side, "number", spots, (-turn * rise / size, -leg / size), 5.0, _LINE))
    _heights(sketch, row, string, top, tip, same, turn)
    whole = squaring["whole"]
    return [say("draw.triangle.whole", whole=whole)] if whole else []


def _heights(sketch: Sketch, row: LevelRow, string: String, top: Point, tip: Point, same: bool, turn: int) -> None:
    """The leg out and the sagitta as measure lines: the taller one nearer, its number above the other."""
    out = row["squaring"]["out_shown"]
    if same:
        x = tip[0] + turn * 16.0
        _upright(sketch, x, tip[1], turn, say("draw.triangle.out.stake", name=string.names[1], shown=out))
        return
    heights = [
        (top[1], say("draw.triangle.out", shown=out)),
        (tip[1], say("draw.sagitta.shown", shown=string.sagitta)),
    ]
    tall, short = sorted(heights, key=lambda one: -abs(one[0]))
    x = tip[0] + turn * (text_width(string.names[1], "end") + 16.0)
    beside = x + turn * 10.0
    for at, height in ((x, tall[0]), (beside, short[0])):
        _line_up(sketch, at, height)
    _name_upright(sketch, beside, (short[0], 0.0), short[1], turn)
    _name_upright(sketch, x, (tall[0], short[0]), tall[1], turn)
    sketch.lines(
        [[(top[0] + turn * 9.0, top[1]), ((x if tall[0] == top[1] else beside) - turn * 6.0, top[1])]], "soft dash"
    )


def _upright(sketch: Sketch, x: float, y: float, turn: int, text: str) -> None:
    """A measure line from the string out to ``y``, its number beside it."""
    _line_up(sketch, x, y)
    _name_upright(sketch, x, (y, 0.0), text, turn)


def _line_up(sketch: Sketch, x: float, y: float) -> None:
    sketch.lines([[(x, 0.0), (x, y)], [(x - 4, 0.0), (x + 4, 0.0)], [(x - 4, y), (x + 4, y)]], "soft")


def _name_upright(sketch: Sketch, x: float, between: tuple[float, float], text: str, turn: int) -> None:
    """A height's number on the side of its line that is away from the string's start."""
    spots = [(x, between[1] + (between[0] - between[1]) * part) for part in (0.5, 0.6, 0.7, 0.4)]
    sketch.label(Label(text, "number", spots, (float(turn), 0.0), 5.0, _RIGHT - turn * x - 8.0))


def _square(sketch: Sketch, row: LevelRow, string: String, turn: int) -> list[str]:
    start, middle, end, tip = string_and_names(sketch, string.names, turn, 82.0, width=_ALONE, lift=(-1, -1))
    x, blade, tongue, wide = middle[0], 66.0, 46.0, 9.0
    corners = [
        (x, 0.0),
        (x - turn * blade, 0.0),
        (x - turn * blade, -wide),
        (x - turn * wide, -wide),
        (x - turn * wide, -tongue),
        (x, -tongue),
    ]
    sketch.lines([[*corners, corners[0]]], "")
    sketch.arrow(middle, (tip[0], tip[1] + 5.0), feathers=False)
    spots = [_between(middle, tip, part) for part in (0.5, 0.4, 0.6)]
    text = say("draw.sagitta.shown", shown=string.sagitta)
    sketch.label(Label(text, "number", spots, (1.0, 0.0), 6.0, _LINE))
    sketch.halves(start[0], end[0], 16.0, string.half, 1)
    return [say("draw.triangle.square")]
