"""Lesson 5: errors that add, by halving, and errors that don't, by ordinates."""

from __future__ import annotations

from math import hypot
from typing import NamedTuple

from bowstring.geometry.plane import Point as Place
from bowstring.methods.halving import stakes_of
from bowstring.wall.board import LEFT, NAME, Board, Sheet
from bowstring.wall.job_ends import bent_note
from bowstring.wall.shape import Frame, Given, outline
from bowstring.words import say

_LEVELS = 3
_LARGER = (20, 10, 5, 2)
"""How many times larger a miss may be drawn."""


class Moved(NamedTuple):
    """The stakes as they come to stand once one was set wrong: how far each is off the arc, metres; which were dragged
    along, and the most that one of them was."""

    off: dict[str, float]
    dragged: list[str]
    most: float


def moved(given: Given, wrong: str, mistake: float) -> Moved:
    """Return where halving brings the stakes when one is set a mistake (metres) too far out and all else right."""
    stakes = stakes_of(_LEVELS)
    names = [stake.name for stake in stakes]
    places = {names[0]: Place(0.0, 0.0), names[-1]: Place(given.chord, 0.0)}
    for level in range(1, _LEVELS + 1):
        step = len(names) // 2**level
        for index in range(step, len(names), 2 * step):
            start, end = places[names[index - step]], places[names[index + step]]
            out = given.arc.part(2 ** (level - 1)).sagitta + (mistake if names[index] == wrong else 0.0)
            places[names[index]] = _squared_off(start, end, out)
    off = {name: given.arc.miss(place) for name, place in places.items()}
    least = 1e-4 * mistake
    dragged = [name for name in names if name != wrong and abs(off[name]) > least]
    return Moved(off, dragged, max((abs(off[name]) for name in dragged), default=0.0))


def _squared_off(start: Place, end: Place, out: float) -> Place:
    x, y, long = end.x - start.x, end.y - start.y, hypot(end.x - start.x, end.y - start.y)
    return Place((start.x + end.x) / 2 - y / long * out, (start.y + end.y) / 2 + x / long * out)


def errors_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """M set wrong by an inch: by halving it drags all others along, by ordinates none."""
    shown, way = given.shape(0.2, 0.3)
    wrong = given.inch_shown
    times = next((times for times in _LARGER if times * given.inch <= 0.33 * shown.sagitta), 1)
    off = moved(given, "M", given.inch)
    board = Board(id, say("lesson.5.told", wrong=wrong, count=len(off.dragged)), kick)
    board.head(say("lesson.5.question", wrong=wrong))
    texts = {name: given.small(one).partition(" ")[0] for name, one in off.off.items()}
    board.stroke("lesson.5.halving", wrong=wrong)
    bent_note(board, way, 393.0)  # between the two rows
    _row(board, shown, 356.0, {name: times * one for name, one in off.off.items()}, wrong, texts)
    board.stroke("lesson.5.count", count=len(off.dragged))
    _count(board, "halving", 222.0, len(off.dragged))
    board.stroke("lesson.5.ordinates", wrong=wrong)
    none = {name: times * given.inch if name == "M" else 0.0 for name in off.off}
    _row(board, shown, 628.0, none, wrong, dict.fromkeys(off.off, "0"))
    board.stroke("lesson.5.none")
    _count(board, "ordinates", 494.0, 0)
    board.head(say("lesson.5.answer"))
    board.stroke("lesson.5.check", **_check(given))
    board.text(say("lesson.5.check_word", **_check(given)), (LEFT, 694), 28, "start", "quiet tell")
    if times > 1:
        board.text(say("lesson.5.larger", times=times), (LEFT, 160), 26, "start", "quiet", room=420)
    return board.finish()


def _check(given: Given) -> dict[str, str]:
    """What the half chords read when M stands a mistake too far out."""
    right = hypot(given.half, given.sagitta)
    return {"reads": given.show(hypot(given.half, given.sagitta + given.inch)), "right": given.show(right)}


def _count(board: Board, key: str, y: float, count: int) -> None:
    board.text(say(f"lesson.5.{key}_word"), (LEFT, y), NAME, "start", room=240)
    board.text(say("lesson.5.one_bad"), (LEFT, y + 50), 34, "start", "tell", room=240)
    board.text(
        say("lesson.5.dragged", count=count), (LEFT, y + 98), NAME, "start", "hot num" if count else "num", room=240
    )


def _row(board: Board, shown: Given, y: float, off: dict[str, float], wrong: str, texts: dict[str, str]) -> None:
    """The arc with its stakes, each off it by its miss, as large as it is drawn, with what it is in truth."""
    frame = Frame(outline(shown.arc), (330.0, 100.0, 1206.0, y))
    arc, adds = shown.arc, sum(value > 0 for value in off.values()) > 1
    scale = frame.scale
    stakes = stakes_of(_LEVELS)
    right = [frame.at(arc.point_at(stake.fraction)) for stake in stakes]
    tips = [(x, at_y - scale * off[stake.name]) for stake, (x, at_y) in zip(stakes, right, strict=True)]
    board.line([right[0], right[-1]], "string")
    board.line(frame.arc(arc), "ghost" if adds else "arc")
    if adds:
        board.line([tips[0], tips[4], tips[-1]], "thin")
        board.line(tips, "hotarc")
    else:
        for at, tip in zip(right[1:-1], tips[1:-1], strict=True):
            board.line([(at[0], right[0][1]), tip], "string")
    for stake, at, tip in zip(stakes, right, tips, strict=True):
        is_wrong, is_end = stake.name == "M", stake.level == 0
        if is_end:
            board.stake(at, 13)
            continue
        if off[stake.name]:
            board.stake(at, 9)
        board.stake(tip, 17 if is_wrong else 13, "now" if off[stake.name] else "stands")
        if is_wrong:
            board.text(wrong, (tip[0], tip[1] - 26), 36, "middle", "hot")
        else:
            side = -1 if stake.fraction < 0.5 else 1
            classes = "hot num" if off[stake.name] else "num"
            board.text(
                texts[stake.name], (tip[0] + side * 18, tip[1] - 16), 28, "end" if side < 0 else "start", classes
            )
