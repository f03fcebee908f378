"""Right triangles on a string: what a long side that is taped a little wrong does to the line that is squared off."""

from __future__ import annotations

from math import hypot

from bowstring.geometry.plane import Point as Place
from bowstring.units.sizes import FOOT, INCH
from bowstring.wall.board import LEFT, NAME, RIGHT, Board, Sheet
from bowstring.wall.shape import Frame, Given, outline
from bowstring.words import say

FEET = ((3, 4, 5), (5, 12, 13), (8, 15, 17), (15, 20, 25))
METRES = ((0.9, 1.2, 1.5), (1.5, 3.6, 3.9), (2.4, 4.5, 5.1), (4.5, 6.0, 7.5))
FAR = {True: 20 * FOOT, False: 6.0}
SLIP = {True: INCH / 8, False: 0.005}
_LARGER = 20
"""How many times larger a lean is drawn."""
_LEAN_DRAWN = 1 / 8
_FOOT_Y, _TOP_Y = 572.0, 252.0


def lean(along: float, out: float, error: float) -> float:
    """Return the sine of a line's lean whose triangle's long side is taped an error (metres) too long: by the law of
    cosines, without the difference of squares."""
    long = hypot(along, out)
    return (2 * long * error + error * error) / (2 * along * out)


def square_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """Four triangles on one string, each with its long side a little too long."""
    feet, tape = given.tape.feet, given.tape
    far, slip, size = FAR[feet], SLIP[feet], given.size
    error, at_far = tape.show_near(slip), tape.show(far)
    board = Board(id, say("lesson.2.told"), kick)
    board.head(say("lesson.2.question", error=error))
    board.stroke("lesson.2.string", error=error)
    board.line([(40, _FOOT_Y), (1250, _FOOT_Y)], "string")
    board.text(say("lesson.2.slip", error=error, far=at_far, times=_LARGER), (LEFT, 160), 28, "start", "quiet")
    board.text(say("lesson.2.sides"), (LEFT, 686), 28, "start", "quiet")
    scale = (_FOOT_Y - _TOP_Y) / far
    x = 40.0
    shapes = FEET if feet else METRES
    for number, (along, out, long) in enumerate(shapes):
        x += scale * along * size + (68 if number else 60)
        name = "-".join(f"{side:g}" for side in (along, out, long))
        off = lean(along * size, out * size, slip) * far
        board.stroke("lesson.2.one", sides=name, off=tape.show_small(off), far=at_far)
        foot = (x, _FOOT_Y)
        board.shape([foot, (x - scale * along * size, _FOOT_Y), (x, _FOOT_Y - scale * out * size)], "body")
        board.line([foot, (x, _TOP_Y)], "dash")
        board.shape([foot, (x, _TOP_Y), (x + _LARGER * scale * off, _TOP_Y)], "fill")
        board.text(name, (x - scale * along * size / 2, _FOOT_Y + 52), NAME if number else 36)
        board.text(tape.show_small(off), (x + 10, _TOP_Y - 18), NAME, "middle", "hot num")
        x += 96
    board.head(say("lesson.2.answer"))
    board.stroke("lesson.2.big")
    return board.finish()


def cost_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """The same lean at M and near an end: at M the stake slides along the arc, near the end it leaves it."""
    shown, _way = given.shape(0.45, 0.6)
    arc = shown.arc
    frame = Frame(outline(arc), (150.0, 250.0, 1130.0, 560.0))
    ends = [frame.at(Place(x, 0.0)) for x in (0.0, shown.chord)]
    board = Board(id, say("lesson.2.cost_told"), kick)
    board.head(say("lesson.2.cost"))
    board.stroke("lesson.2.arc")
    board.line(ends, "string")
    board.line(frame.arc(arc), "arc")
    for at in ends:
        board.stake(at)
    slip = lean(3 * given.size, 4 * given.size, SLIP[given.tape.feet])
    for part, key, side in ((0.5, "middle", 1), (0.16, "end", -1)):
        place, real = arc.point_at(part), given.arc.point_at(part)
        foot, tip = frame.at(Place(place.x, 0.0)), frame.at(place)
        leaned = frame.at(Place(place.x + side * place.y * _LEAN_DRAWN, place.y))
        slid = real.y * slip
        off = abs(given.arc.miss(Place(real.x + side * slid, real.y)))
        values = {"slid": given.small(slid), "off": given.small(off)}
        board.stroke(f"lesson.2.at_{key}", **values)
        board.line([foot, tip], "dash")
        board.corner(foot, (-side, 0), (0, -1))
        board.line([foot, leaned], "shaft")
        board.stake(tip, 12)
        board.stake(leaned, 14, "now")
        y, classes = (622, "num") if key == "middle" else (674, "hot num")  # only the second one costs something
        board.text(say(f"lesson.2.{key}_word", **values), (LEFT, y), 34, "start", classes)
    board.text(say("lesson.2.exaggerated"), (RIGHT, 160), 28, "end", "quiet")
    return board.finish()
