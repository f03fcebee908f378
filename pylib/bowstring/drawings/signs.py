"""Two small pictures without a word: where the curve lies as seen from A, and what stands on which line."""

from __future__ import annotations

from bowstring.drawings.svg import Command, Drawing, Point
from bowstring.report.forms.answer import Answer
from bowstring.words import say

_ROUND = 0.5523  # of the radius: how far a quarter circle's handles reach


def hand_sign(answer: Answer, *, id: str) -> str:
    """Return somebody at A who faces B, and the curve on its hand; none is drawn where that isn't known."""
    side = answer["side"]
    drawing = Drawing(id=id, title=say("paper.sign_hand"), description=answer["hand"])
    flip = 1.0 if side == "right" else -1.0
    drawing.lines([[(0.0, 8.0), (0.0, 56.0)]], "line string dash")
    if side:
        drawing.path([("M", (0.0, 8.0)), ("C", (flip * 15, 20.0), (flip * 15, 44.0), (0.0, 56.0))], "line arc")
    for y in (8.0, 56.0):
        drawing.square((0.0, y), 5.0, "stake end-stake")
    drawing.dot((0.0, 76.0), 6.0, "solid")
    drawing.lines([[(-10.0, 80.0), (10.0, 80.0)]], "line arc")
    if side:
        drawing.lines([[(flip * 10, 76.0), (flip * 26, 76.0)]], "line arc")
        drawing.path([("M", (flip * 36, 76.0)), ("L", (flip * 24, 68.0)), ("L", (flip * 24, 84.0)), ("Z",)], "solid")
    return drawing.finish((-38.0, 0.0, 38.0, 88.0))


def line_sign(answer: Answer, *, id: str) -> str:
    """Return the drawing's line with the concrete that it belongs to, and what is driven with its point on its line."""
    drawing = Drawing(id=id, title=say("paper.sign_line"), description=answer["on_line"]["point"])
    drawn = 46.0
    at = 18.0 if answer["offset"] else drawn
    _concrete(drawing, answer["drawn_to"], drawn)
    drawing.lines([[(0.0, drawn), (78.0, drawn)]], "line arc")
    if at != drawn:
        drawing.lines([[(0.0, at), (78.0, at)]], "line string dash")
    driven = answer["driven"]
    held = answer["on_line"]["pins"] == "back"  # a board goes between it and the drawing's line
    if held:
        drawing.path(_box(4.0, at, 74.0, drawn), "stake")
        drawing.path(_circle((39.0, at - 8.0), 8.0), "stake")
    elif driven == "pin":
        drawing.path(_circle((39.0, at), 11.0), "stake")
    elif driven == "board":
        drawing.path(_box(4.0, at - 8.0, 74.0, at), "stake")
        drawing.path(_box(31.0, at - 22.0, 47.0, at - 8.0), "stake")
    else:
        drawing.square((39.0, at), 11.0, "stake")
    if driven == "hub":
        drawing.dot((39.0, at), 2.6, "solid")
    elif driven != "board" and not held:
        drawing.lines([[(39.0, at - 16), (39.0, at + 16)], [(23.0, at), (55.0, at)]], "line")
    return drawing.finish((0.0, 0.0, 78.0, 88.0))


def _concrete(drawing: Drawing, drawn_to: str | None, line: float) -> None:
    """Hatching beside a face or a back, on both sides of a centre line, none at a gutter's lines."""
    low = {"face": line, "back": line, "centre": line - 18.0}.get(drawn_to or "")
    if low is None:
        return
    high = line + (18.0 if drawn_to == "centre" else 34.0)
    step = 9.0
    pieces: list[list[Point]] = []
    for number in range(1, 13):
        x = number * step
        # from the lower edge up to the right, cut at the sides
        start, end = (max(0.0, x - (high - low)), min(78.0, x))
        if start < 78.0:
            pieces.append([(start, low + x - start), (end, low + x - end)])
    drawing.lines(pieces, "line soft")


def _circle(middle: Point, radius: float) -> list[Command]:
    (x, y), k = middle, radius * _ROUND
    r = radius
    return [
        ("M", (x + r, y)),
        ("C", (x + r, y + k), (x + k, y + r), (x, y + r)),
        ("C", (x - k, y + r), (x - r, y + k), (x - r, y)),
        ("C", (x - r, y - k), (x - k, y - r), (x, y - r)),
        ("C", (x + k, y - r), (x + r, y - k), (x + r, y)),
        ("Z",),
    ]


def _box(left: float, top: float, right: float, bottom: float) -> list[Command]:
    return [("M", (left, top)), ("L", (right, top)), ("L", (right, bottom)), ("L", (left, bottom)), ("Z",)]
