"""The job on the wall: every stake, the board sprung along them, and the few numbers that it took."""

from __future__ import annotations

from bowstring.drawings.svg import Point
from bowstring.geometry.plane import Point as Place
from bowstring.methods.halving import stakes_of
from bowstring.wall.board import NAME, Board, Sheet, fitting
from bowstring.wall.job_ends import LEAST_BENT, bent_note, kick_of
from bowstring.wall.shape import MOST_ROUNDS, Frame, Given, outline
from bowstring.words import say

_BOX = (108.0, 210.0, 1172.0, 420.0)
_NAMED = 3
"""Rounds whose stakes have their names written: more of them have no room."""
_SIZES = (0.0, 40.0, 34.0, 28.0)
_HALF = (16.0, 16.0, 12.0, 10.0)


def stakes_sheet(given: Given, id: str) -> Sheet:
    """The rounds one after another, the arc, the stakes and the numbers."""
    shown, way = given.shape(LEAST_BENT)
    frame = Frame(outline(shown.arc), _BOX)
    levels = min(given.levels, MOST_ROUNDS)
    stakes, count = stakes_of(levels), 2**given.levels - 1
    board = Board(id, say("wall.stakes.told", stakes=count, rounds=given.levels), kick_of(given))
    ends = [frame.at(Place(x, 0.0)) for x in (0.0, shown.chord)]
    board.line(ends, "string")
    bent_note(board, way, 160.0)
    for name, at in zip(given.ends, ends, strict=True):
        board.stake(at)
        board.text(name, (at[0], at[1] + 58), NAME)
    board.head(say("wall.stakes.one" if given.levels == 1 else "wall.stakes", rounds=given.levels, stakes=count))
    for level in range(1, levels + 1):
        board.stroke(f"wall.stakes.round_{level}", out=given.show(given.rounds[level - 1].sagitta))
        _round(board, frame, shown, level)
    board.stroke("wall.stakes.board")
    board.line(frame.arc(shown.arc), "arc")
    board.stroke("wall.stakes.driven")
    for stake in stakes:
        part = 1 - stake.fraction if given.mirrored else stake.fraction
        at = frame.at(shown.arc.point_at(part))
        board.stake(at, _HALF[min(stake.level, 3)])
        if 0 < stake.level <= _NAMED:
            _name(board, stake.name, at, part, stake.level)
    board.stroke("wall.stakes.numbers")
    _numbers(board, given, levels)
    return board.finish()


def _name(board: Board, name: str, at: Point, part: float, level: int) -> None:
    """A stake's name outside the arc."""
    away = (part - 0.5) * 2
    anchor = "middle" if abs(away) < 0.1 else "end" if away < 0 else "start"
    board.text(name, (at[0] + 22 * away, at[1] - 24), _SIZES[level], anchor)


def _round(board: Board, frame: Frame, shown: Given, level: int) -> None:
    """The strings of a round, and the arrow of each."""
    parts = 2 ** (level - 1)
    for number in range(parts):
        start, end = (frame.at(shown.arc.point_at(part / parts)) for part in (number, number + 1))
        tip = frame.at(shown.arc.point_at((number + 0.5) / parts))
        if level > 1:
            board.line([start, end], "thin")
        foot = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        board.arrow(foot, (tip[0], tip[1] + 16)) if level == 1 else board.line([foot, tip], "shaft")


def _numbers(board: Board, given: Given, levels: int) -> None:
    """Each round's number, large, with the stakes that it sets."""
    apart = 1130 / max(levels, 3)
    size = min(fitting(given.show(one.sagitta), 80, apart - 84) for one in given.rounds)
    for number, one in enumerate(given.rounds):
        x = 104 + apart * number
        board.disc(number + 1, (x + 22, 586))
        board.text(given.show(one.sagitta), (x + 56, 614), size, "start", "num")
        names = [stake.name for stake in stakes_of(number + 1) if stake.level == number + 1]
        told = ", ".join(names) if len(names) <= 2 else f"{names[0]}–{names[-1]}"
        board.text(say("wall.stakes.to", stakes=told), (x + 58, 668), 34, "start", room=apart - 70)
    if given.levels > levels:
        board.text(say("wall.stakes.more", last=given.levels), (1232, 160), 28, "end", "quiet")
