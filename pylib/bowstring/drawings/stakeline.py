"""Which point of what is driven stands on the line: seen from the side, the line plumb through that point."""

from __future__ import annotations

from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.stakeline import OnLinePart
from bowstring.words import say

_WIDE, _PAIR_WIDE, _TOP, _DEEP = 150.0, 70.0, -86.0, 44.0
"""Half the ground's width (of two pictures each), and how far the line goes up and things go down, drawing units."""

_PIN, _STAKE, _BOARD, _APART = 7.0, 18.0, 15.0, 160.0
"""Half a pin, half a stake, a board's thickness, and from one picture to the next."""


def stake_line_svg(answer: Answer, *, id: str, width_mm: float | None = None) -> str:
    """Return the drawing of an answer's ``on_line`` as SVG.

    ``id``: prefix of the ids inside, unique on the page; ``width_mm``: width on paper, otherwise the page decides.
    """
    part, driven = answer["on_line"], answer["driven"]
    name = say(f"draw.on_line.{driven}")
    description = say("draw.on_line.desc", driven=name, point=part["point"])
    stopped = bool(answer["stops"])
    sketch = Sketch(id=id, title=say("draw.on_line.title"), description=description, stopped=stopped)
    if driven == "pin":
        _pin(sketch, part)
    elif driven == "board":
        _board(sketch, on_board=answer["offset"] is None)
    elif driven == "marked":
        _stake(sketch, _STAKE, -40.0, say("draw.on_line.marked"))
        sketch.lines([[(-5.0, -46.0), (0.0, -40.0), (5.0, -46.0)]], "arrow")
        sketch.words(say("draw.on_line.mark"), (14.0, -52.0), "word", "start")
    else:
        _stake(sketch, _STAKE, -8.0, say("draw.on_line.hub"))
        sketch.lines([[(-4.0, -14.0), (4.0, -14.0)], [(0.0, -14.0), (0.0, -2.0)]], "arrow")
        sketch.words(say("draw.on_line.tack"), (14.0, -20.0), "word", "start")
    return sketch.finish(width_mm=width_mm)


def _scene(sketch: Sketch, x: float, wide: float) -> None:
    """The ground, and the line plumb over its point."""
    sketch.lines([[(x - wide, 0.0), (x + wide, 0.0)]], "")
    sketch.lines([[(x, _TOP), (x, _DEEP + 8)]], "arrow")
    sketch.words(say("draw.on_line.line"), (x, _TOP - 8), "number")
    sketch.words(say("draw.on_line.ground"), (x - wide, 16.0), "word", "start", "quiet")


def _box(sketch: Sketch, left: float, right: float, top: float, bottom: float) -> None:
    corners: list[Point] = [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)]
    sketch.lines([corners], "string")


def _stake(sketch: Sketch, half: float, top: float, name: str, wide: float = _WIDE) -> None:
    _scene(sketch, 0.0, wide)
    _box(sketch, -half, half, top, _DEEP)
    sketch.words(name, (half + 8, 30.0), "word", "start")


def _pin(sketch: Sketch, part: OnLinePart) -> None:
    """Twice: its centre on the line, and its edge on it where a board follows, with half of it told. Where it's known
    how it stands to a board, that alone: its edge on the line, or its centre half of it behind the board's back."""
    if part["pins"] == "past":
        _held_pin(sketch, part, 0.0, -_PIN)
    elif part["pins"] == "back":
        _held_pin(sketch, part, 0.0, 0.0)
    else:
        _stake(sketch, _PIN, -62.0, say("draw.on_line.pin"), _PAIR_WIDE)
        _held_pin(sketch, part, _APART, 0.0, named=False)
        sketch.words(say("draw.on_line.where_board"), (_APART + _PAIR_WIDE, _DEEP + 26), "word", "end")


def _held_pin(sketch: Sketch, part: OnLinePart, x: float, edge: float, *, named: bool = True) -> None:
    """A pin that a board stands against, ``edge`` off the line at ``x``; half of it told from there. ``named``: it is
    called by its name."""
    _scene(sketch, x, _PAIR_WIDE)
    left = x + edge
    _box(sketch, left, left + 2 * _PIN, -62.0, _DEEP)
    _box(sketch, left - _BOARD, left, -40.0, 6.0)
    sketch.words(say("draw.on_line.board"), (left - _BOARD - 6, -26.0), "word", "end")
    if named:
        sketch.words(say("draw.on_line.pin"), (left + 2 * _PIN + 8, 30.0), "word", "start")
    if part["half_shown"]:
        sketch.lines([[(left + _PIN, -72.0), (left + _PIN, -66.0)], [(left, -69.0), (left + _PIN, -69.0)]], "soft")
        sketch.words(part["half_shown"], (left + 2 * _PIN + 4, -64.0), "number", "start")


def _board(sketch: Sketch, *, on_board: bool) -> None:
    """The board between the concrete and its stake; the line at its concrete side, or at the stake's face."""
    _scene(sketch, 0.0, _WIDE)
    left = 0.0 if on_board else -_BOARD
    _box(sketch, left, left + _BOARD, -42.0, 6.0)
    _box(sketch, left + _BOARD, left + _BOARD + _STAKE, -56.0, _DEEP)
    sketch.words(say("draw.on_line.concrete"), (left - 8, -22.0), "word", "end")
    sketch.words(say("draw.on_line.board"), (left + _BOARD + _STAKE + 8, -34.0), "word", "start")
    sketch.words(say("draw.on_line.stake"), (left + _BOARD + _STAKE + 8, 30.0), "word", "start")
    sketch.lines([[(left + _BOARD / 2, -30.0), (left + _BOARD + _STAKE + 4, -38.0)]], "soft")
