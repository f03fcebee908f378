"""Lesson 3: halving. Every round is the same round, on a shorter string."""

from __future__ import annotations

from bowstring.geometry.plane import Point as Place
from bowstring.wall.board import LEFT, RIGHT, Board, Sheet
from bowstring.wall.shape import Frame, Given, Round, arc_of, outline
from bowstring.words import say

_DRAWN = ((0.28, 1), (0.17, 2))
"""How far each round's string is bent in the picture, and how it is numbered."""


def halving_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """Two rounds one over the other, the same four marks in both, and their numbers beside them."""
    board = Board(id, say("lesson.3.told"), kick)
    board.head(say("lesson.3.question"))
    for bent, number in _DRAWN:
        one = given.rounds[number - 1]
        y = 376.0 if number == 1 else 626.0
        board.stroke(f"lesson.3.round_{number}")
        _round(board, bent, y, number)
        board.stroke(f"lesson.3.numbers_{number}", half=given.show(one.half), out=given.show(one.sagitta))
        _numbers(board, given, one, y - 158, number > 1)
    board.stroke("lesson.3.half_of_it")
    board.line([(1190, 330), (1214, 330), (1214, 470), (1190, 470)], "shaft")
    board.shape([(1168, 470), (1192, 454), (1192, 486)], "fill")
    board.text(say("lesson.3.half_word"), (1200, 408), 32, "end", "hot tell")
    board.head(say("lesson.3.answer"))
    board.stroke("lesson.3.alike")
    x = LEFT + 20
    for mark, key in ((1, "middle"), (2, "off"), (0, "same")):
        if mark:
            board.disc(mark, (x, 152))
        else:
            board.ticked((x, 152))
        board.text(say(f"lesson.3.{key}_word"), (x + 30, 162), 28, "start")
        x += 30 + (270 if mark == 1 else 400)
    return board.finish()


def _round(board: Board, bent: float, y: float, number: int) -> None:
    arc = arc_of(2.0, bent)
    frame = Frame(outline(arc), (92.0, 40.0, 836.0, y))
    ends = [frame.at(Place(x, 0.0)) for x in (0.0, 2.0)]
    foot, top = frame.at(Place(1.0, 0.0)), frame.at(Place(1.0, bent))
    board.line(frame.arc(arc), "ghost")
    board.line(ends, "string")
    board.line([ends[0], top, ends[1]], "dash")
    board.corner(foot, (1, 0), (0, -1), 18)
    board.arrow(foot, (top[0], top[1] + 16))
    for at in ends:
        board.disc(1, ((at[0] * 2 + foot[0]) / 3, at[1]))
        board.ticked(((at[0] + 1.4 * top[0]) / 2.4, (at[1] + 1.4 * top[1]) / 2.4))
    board.disc(2, (foot[0] + 58, (foot[1] + top[1]) / 2 + 2))
    for name, at in zip(("A", "B" if number == 1 else "M"), ends, strict=True):
        board.stake(at)
        board.text(name, (at[0], at[1] + 54), 34)
    board.stake(top, 16, "now")
    board.text("M" if number == 1 else "Q1", (top[0] - 26, top[1] - 14), 34, "end", "hot")
    board.text(say("lesson.3.round", round=number), (LEFT, y - 144 if number == 1 else y - 120), 34, "start")


def _numbers(board: Board, given: Given, one: Round, y: float, fresh: bool) -> None:
    """A round's three numbers; ``fresh``: those that a learner works out."""
    for row, (mark, metres) in enumerate(((1, one.half), (2, one.sagitta), (0, one.half_chord))):
        at = (900.0, y + 56 * row)
        if mark:
            board.disc(mark, at)
        else:
            board.ticked(at)
        classes = "hot" if mark == 2 else ""
        if fresh:
            classes += " num"
        board.text(given.show(metres), (934, at[1] + 13), 38, "start", classes, room=RIGHT - 934 - 50)


def proof_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """What the half chords prove, and what they don't: square they tell by a lot, the length hardly."""
    arc = arc_of(2.0, 0.45)
    frame = Frame(outline(arc), (200.0, 260.0, 1080.0, 500.0))
    ends = [frame.at(Place(x, 0.0)) for x in (0.0, 2.0)]
    foot, top = frame.at(Place(1.0, 0.0)), frame.at(Place(1.0, 0.45))
    mistake = given.inch
    aside = [Round(given.arc.part(1)).half + side * mistake for side in (1, -1)]
    reads = [(half * half + given.sagitta**2) ** 0.5 for half in aside]
    far = given.sagitta + mistake
    long = (given.half**2 + given.sagitta**2) ** 0.5
    farther = (given.half**2 + far**2) ** 0.5 - long
    shown = given.inch_shown
    board = Board(id, say("lesson.3.proof_told"), kick)
    board.head(say("lesson.3.proof_question"))
    board.stroke("lesson.3.proof_right", long=given.show(long))
    board.line(frame.arc(arc), "ghost")
    board.line(ends, "string")
    board.line([ends[0], top, ends[1]], "dash")
    board.line([foot, top], "thin")
    for at in (*ends, top):
        board.stake(at)
    board.stroke("lesson.3.proof_aside", shown=shown, apart=given.small(reads[0] - reads[1]))
    board.arrow((top[0] + 18, top[1]), (top[0] + 96, top[1]))
    board.stake((top[0] + 114, top[1]), 16, "now")
    words = say("lesson.3.proof_square", shown=shown, apart=given.small(reads[0] - reads[1]))
    board.ticked((LEFT + 22, 598), 22)
    board.text(words, (LEFT + 62, 610), 36, "start", "tell")
    board.stroke("lesson.3.proof_far", shown=shown, same=given.small(farther))
    board.arrow((top[0], top[1] - 16), (top[0], top[1] - 74))
    board.stake((top[0], top[1] - 92), 16, "now")
    words = say("lesson.3.proof_length", shown=shown, same=given.small(farther))
    board.warned((LEFT + 22, 656))
    board.text(words, (LEFT + 62, 668), 36, "start", "tell")
    board.head(say("lesson.3.proof_answer"))
    board.stroke("lesson.3.proof_twice")
    return board.finish()
