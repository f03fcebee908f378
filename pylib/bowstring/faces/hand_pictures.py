"""The two pictures that ask which way the curve goes, mirrored: for somebody at A, or who walks toward the arc."""

from __future__ import annotations

from math import cos, sin

from bowstring.drawings.svg import Command, Drawing, Point
from bowstring.words import say

_WIDTH, _HEIGHT = 150.0, 300.0
_A, _B = (75.0, 214.0), (75.0, 40.0)
_HALF, _TURN = 0.79, 1.15


def hand_picture(hand: str, *, walking: bool) -> str:
    """Return the picture of a hand (``left`` or ``right``) as SVG; ``walking``: along the straight toward the arc."""
    way = -1.0 if hand == "left" else 1.0
    key = "numbers.picture_walking" if walking else "numbers.picture_standing"
    title = say(key, hand=say(f"numbers.hand.{hand}"))
    drawing = Drawing(id=f"hand-{'turn' if walking else 'side'}-{hand}", title=title, description=title)
    if walking:
        _walking(drawing, way)
    else:
        _standing(drawing, way)
    tip = (75.0 + way * 62.0, 262.0)
    drawing.lines([[(75.0 + way * 16.0, 262.0), (tip[0] - way * 16.0, 262.0)]], "line arrow strong")
    drawing.path(_triangle(tip, (tip[0] - way * 18.0, 252.0), (tip[0] - way * 18.0, 272.0)), "head")
    _person(drawing)
    return drawing.finish((0.0, 0.0, _WIDTH, _HEIGHT))


def _standing(drawing: Drawing, way: float) -> None:
    drawing.lines([[_A, _B]], "line soft dash")
    radius = (_A[1] - _B[1]) / 2 / sin(_HALF)
    middle, turns = (_A[1] + _B[1]) / 2, [_HALF * (step / 12 - 1) for step in range(25)]
    bow = [(75.0 + way * radius * (cos(turn) - cos(_HALF)), middle - radius * sin(turn)) for turn in turns]
    drawing.lines([bow], "line arc strong")
    for name, (x, y) in (("A", _A), ("B", _B)):
        drawing.square((x, y), 8.0, "stake end-stake")
        drawing.text(name, (x - way * 24.0, y + 7.0), "big")


def _walking(drawing: Drawing, way: float) -> None:
    start, radius = (75.0, 150.0), 96.0
    drawing.lines([[_A, start]], "line soft dash")
    turns = [_TURN * step / 16 for step in range(17)]
    bow = [(75.0 + way * radius * (1 - cos(turn)), start[1] - radius * sin(turn)) for turn in turns]
    drawing.lines([bow], "line arc strong")
    drawing.square(start, 8.0, "stake end-stake")
    drawing.text("A", (75.0 - way * 24.0, start[1] + 7.0), "big")


def _person(drawing: Drawing) -> None:
    """Somebody seen from above who looks up the paper: shoulders, head and nose."""
    ring: list[Command] = [
        ("M", (49.0, 264.0)),
        ("C", (49.0, 248.0), (101.0, 248.0), (101.0, 264.0)),
        ("C", (101.0, 280.0), (49.0, 280.0), (49.0, 264.0)),
        ("Z",),
    ]
    drawing.path(ring, "solid")
    drawing.dot((75.0, 259.0), 11.0, "stake")
    drawing.path(_triangle((75.0, 238.0), (69.0, 250.0), (81.0, 250.0)), "solid")


def _triangle(tip: Point, left: Point, right: Point) -> list[Command]:
    return [("M", tip), ("L", left), ("L", right), ("Z",)]
