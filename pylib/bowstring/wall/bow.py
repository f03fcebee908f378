"""Lesson 1: bow, string and arrow, and how string and arrow give the radius."""

from __future__ import annotations

from math import cos, radians, sin

from bowstring.wall.board import LEFT, NAME, RIGHT, Board, Sheet, width_of
from bowstring.wall.hand_sum import bow_sum
from bowstring.wall.job_ends import bent_note
from bowstring.wall.shape import Frame, Given, arc_of, outline
from bowstring.words import say

_CENTER, _RADIUS = (970.0, 436.0), 248.0
_BENT = (0.2, 1.0)
"""Mid-ordinate over half the chord between which arrow and string have room for their numbers."""


def bow_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """The bow at the left; at the right its whole circle, with what two lines that cross tell."""
    half, out, _square, down, radius = bow_sum(given)
    board = Board(id, say("lesson.1.told", radius=given.show(given.arc.radius)), kick)
    board.head(say("lesson.1.question"))
    _bow(board)
    _circle(board, given, (half, out, down, radius))
    return board.finish()


def _bow(board: Board) -> None:
    """A bow that is bent so that its three parts are told from the back of a room."""
    arc = arc_of(2.0, 0.7)
    frame = Frame(outline(arc), (62.0, 246.0, 558.0, 420.0))
    points = frame.arc(arc)
    left, right, foot, top = points[0], points[-1], (310.0, 420.0), points[32]
    board.stroke("lesson.1.bow")
    board.line(points, "bow")
    board.text(say("lesson.1.bow_word"), (310, 222), NAME, "middle", "num")
    board.stroke("lesson.1.string")
    board.line([left, right], "string")
    board.text(say("lesson.1.string_word"), (310, 470), NAME, "middle", "num")
    board.stroke("lesson.1.arrow")
    board.arrow(foot, (top[0], top[1] + 12))
    for feather in (0, 12, 24):
        board.line([(292, 420 - feather), (310, 404 - feather), (328, 420 - feather)], "hatch")
    board.text(say("lesson.1.arrow_word"), (344, 344), NAME, "start", "hot")
    board.text(say("lesson.1.sagitta_word"), (344, 392), 36, "start", "hot")
    board.stroke("lesson.1.job_word")
    board.text(say("lesson.1.on_the_job"), (LEFT, 524), 30, "start", room=600)


def _circle(board: Board, given: Given, numbers: tuple[str, str, str, str]) -> None:
    half, out, down, radius = numbers
    x, y = _CENTER
    shown, way = given.shape(*_BENT)
    scale = _RADIUS / shown.arc.radius
    chord_y = y - scale * shown.arc.radius * shown.arc.cosine
    reach, tall = scale * shown.half, scale * shown.sagitta
    board.stroke("lesson.1.circle")
    board.circle(_CENTER, _RADIUS, "ghost")
    bent_note(board, way)
    frame = Frame(outline(shown.arc), (x - reach, chord_y - tall, x + reach, chord_y))
    board.line(frame.arc(shown.arc), "arc")
    board.stroke("lesson.1.halves", half=half)
    board.line([(x - reach, chord_y), (x + reach, chord_y)], "string")
    beside = max(reach / 2, width_of(half, NAME) / 2) + 8
    for side in (-1, 1):
        board.text(half, (x + side * beside, chord_y + 42), NAME, "middle")
    board.stroke("lesson.1.out", out=out)
    board.arrow((x, chord_y), (x, chord_y - tall + 4))
    if tall > 80:
        board.text(out, (x + 26, chord_y - tall / 2 + 14), NAME, "start", "hot")
    else:
        beside = min(1154.0, RIGHT - width_of(out, NAME))
        board.line([(x + 16, chord_y - tall / 2), (beside - 8, chord_y - tall / 2)], "hatch")
        board.text(out, (beside, chord_y - tall / 2 + 14), NAME, "start", "hot")
    board.stroke("lesson.1.guess")
    board.line([(x, chord_y), (x, y + _RADIUS)], "dash")
    board.stroke("lesson.1.crossed", half=half, out=out, down=down)
    board.text(down, (x - 20, (chord_y + y + _RADIUS) / 2 + 16), 46, "end", "num")
    board.text(f"{half} × {half} = {out} × {down}", (LEFT, 598), 46, "start", "tell", room=640)
    board.head(say("lesson.1.answer"))
    board.stroke("lesson.1.radius", down=down, out=out, radius=radius)
    turn = radians(20)
    end = (x + _RADIUS * cos(turn), y + _RADIUS * sin(turn))
    board.line([_CENTER, end], "string")
    board.dot(_CENTER, 10, "disc")
    board.text(radius, (x + 60, y + 124), 46, "start", "num")
    words = say("lesson.1.sum", down=down, out=out, radius=radius, shown=given.show(given.arc.radius))
    board.text(words, (LEFT, 658), 34, "start", "tell", room=660)
