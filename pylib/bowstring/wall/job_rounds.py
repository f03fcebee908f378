"""The job on the wall: the rounds' numbers side by side, where the quarter comes from, and the exact ratio."""

from __future__ import annotations

from math import degrees

from bowstring.wall.board import NAME, QUIET, Board, Sheet
from bowstring.wall.job_ends import kick_of
from bowstring.wall.shape import Given, share
from bowstring.words import say

_FOOT, _TALL = 500.0, 320.0
_LEFT, _APART = 150.0, 320.0


def rounds_sheet(given: Given, id: str) -> Sheet:
    """Each round's mid-ordinate at one scale, and what it is of the one before."""
    rounds = given.rounds
    scale = _TALL / rounds[0].sagitta
    board = Board(id, say("wall.rounds.told"), kick_of(given))
    board.head(say("wall.rounds"))
    for number, one in enumerate(rounds):
        x, shown = _LEFT + _APART * number, given.show(one.sagitta)
        last = number + 1 == len(rounds)
        board.stroke("wall.rounds.one" if number else "wall.rounds.first", round=number + 1, out=shown)
        board.line([(x - 60, _FOOT), (x + 60, _FOOT)], "string")
        board.arrow((x, _FOOT), (x, _FOOT - max(scale * one.sagitta, 6)))
        board.disc(number + 1, (x - 90, _FOOT + 42))
        board.text(shown, (x - 60, _FOOT + 57), 46, "start", "num", room=178)
        if not last:
            of_it = f"{rounds[number + 1].sagitta / one.sagitta:.4f}"
            board.stroke("wall.rounds.ratio", share=of_it)
            board.text(f"× {of_it}", (x + _APART / 2, _FOOT - 40), NAME, "middle", "hot num")
    board.stroke("wall.rounds.quarter")
    board.text(say("wall.rounds.squared"), (48, 618), 34, "start")
    turned = degrees(given.arc.half_angle) * 2
    exact = f"{share(given.arc.half_angle):.4f}"
    board.stroke("wall.rounds.exact", angle=f"{turned:.1f}", share=exact)
    words = say("wall.rounds.formula", angle=f"{turned:.1f}", share=exact)
    board.text(words, (48, 672), 34, "start", "num")
    board.text(say("wall.rounds.scale"), (1232, 160), QUIET, "end", "quiet")
    return board.finish()
