"""Lesson 6: quarters measured straight up draw a parabola, which a circle isn't."""

from __future__ import annotations

from math import degrees, sqrt

from bowstring.drawings.svg import Point
from bowstring.geometry.plane import Point as Place
from bowstring.wall.bend import miss_at
from bowstring.wall.board import LEFT, NAME, Board, Sheet
from bowstring.wall.shape import Frame, Given, outline
from bowstring.words import say

_STEPS = 64


class Gap:
    """The circle over the parabola with the same string and mid-ordinate; x counts from the middle, metres."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.radius = given.arc.radius

    def parabola(self, x: float) -> float:
        """How high the parabola is."""
        return self.given.sagitta * (1 - (x / self.given.half) ** 2)

    def circle(self, x: float) -> float:
        """How high the circle is: s less what it falls by x from its top."""
        return self.given.sagitta - x * x / (self.radius + sqrt(max(self.radius**2 - x * x, 0.0)))

    def at(self, x: float) -> float:
        """How far the circle stands over the parabola."""
        return self.circle(x) - self.parabola(x)

    def widest(self) -> float:
        """Where that is most, found to a thousandth of half the string."""
        return max((self.given.half * part / 1000 for part in range(1001)), key=self.at)


def parabola_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """The mid-ordinate, its quarter, a quarter of that, all straight up; parabola, circle, and why they part."""
    gap = Gap(given)
    times = _times(gap)
    shown = given.show(given.sagitta / 4), given.show(given.sagitta / 16)
    frame = Frame(outline(given.arc), (78.0, 250.0, 1202.0, 440.0))

    def up(x: float, y: float) -> Point:
        return frame.at(Place(given.half + x, y))

    xs = [given.half * (step / (_STEPS // 2) - 1) for step in range(_STEPS + 1)]
    flat = [up(x, gap.parabola(x)) for x in xs]
    round_ = [up(x, gap.parabola(x) + times * gap.at(x)) for x in xs]
    half, widest = given.small(gap.at(given.half / 2)), gap.widest()
    board = Board(id, say("lesson.6.told", times=times), kick)
    board.head(say("lesson.6.question"))
    board.stroke("lesson.6.string", out=given.show(given.sagitta))
    foot, top = up(0, 0), up(0, given.sagitta)
    board.line([up(-given.half, 0), up(given.half, 0)], "string")
    board.arrow(foot, (top[0], top[1] + 16))
    board.boxed(given.show(given.sagitta), (foot[0] + 110, (foot[1] + top[1]) / 2 + 16), 34)
    for at in (up(-given.half, 0), top, up(given.half, 0)):
        board.stake(at)
    board.stroke("lesson.6.quarter", out=shown[0])
    x, out = -given.half / 2, given.sagitta / 4
    board.line([up(-given.half, 0), top], "thin")
    board.arrow(up(x, given.sagitta / 2), up(x, given.sagitta / 2 + out))
    at = up(x, given.sagitta / 2)
    board.text(shown[0], (at[0] + 4, at[1] + 44), 34, "start", "hot num")
    board.stroke("lesson.6.again", out=shown[1])
    board.line([up(-given.half, 0), up(x, given.sagitta * 0.75), top], "thin")
    for part in (-0.75, -0.25):
        middle = given.sagitta * (0.375 if part < -0.5 else 0.875)
        board.line([up(part * given.half, middle), up(part * given.half, middle + out / 4)], "shaft")
    board.stroke("lesson.6.parabola")
    board.line(flat, "hotarc")
    board.text(say("lesson.6.parabola_word"), up(given.half * 0.36, 0.06 * given.sagitta), NAME, "start", "hot")
    board.stroke("lesson.6.circle", times=times)
    board.line(round_, "arc")
    place = up(-given.half * 0.62, gap.parabola(given.half * 0.62) + times * gap.at(given.half * 0.62))
    board.text(say("lesson.6.circle_word"), (place[0] - 20, place[1] - 22), NAME, "end")
    for x, size in ((given.half / 2, 36), (widest, 46)):
        board.stroke("lesson.6.apart" if x == given.half / 2 else "lesson.6.most", gap=given.small(gap.at(x)))
        low, high = up(x, gap.parabola(x)), up(x, gap.parabola(x) + times * gap.at(x))
        board.line([low, high], "arc")
        words, room = given.small(gap.at(x)), 1232 - high[0] - 10
        if x == given.half / 2:
            board.text(words, (high[0] + 10, high[1] - 58), size, "middle", "num")
        else:
            board.text(words, (high[0] + 10, high[1] - 16), size, "start", "num", room=room)
    _why(board, given, times, half)
    return board.finish()


def _times(gap: Gap) -> int:
    """How many times larger the gap is drawn: as much as stays under the mid-ordinate."""
    most = gap.at(gap.widest())
    return next((times for times in (10, 5, 2) if times * most < 0.3 * gap.given.sagitta), 1)


def _why(board: Board, given: Given, times: int, half: str) -> None:
    """What the picture says in words: the gap's scale, why the miss is another than along the arc, and a road."""
    square = given.small(miss_at(given, 2 * degrees(given.arc.half_angle)))
    board.stroke("lesson.6.scale", times=times)
    board.text(say("lesson.6.scale_word", times=times), (LEFT, 508), 32, "start")
    board.stroke("lesson.6.differ", here=half, there=square)
    board.text(say("lesson.6.differ_word", here=half, there=square), (LEFT, 562), 32, "start", "tell")
    board.stroke("lesson.6.because")
    board.text(say("lesson.6.because_word"), (LEFT, 616), 32, "start", "tell")
    board.head(say("lesson.6.answer"))
    board.stroke("lesson.6.road")
    board.text(say("lesson.6.road_word"), (LEFT, 670), 32, "start")
