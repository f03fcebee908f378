"""Lesson 6: quarters measured straight up draw a parabola, which a circle isn't."""

from __future__ import annotations

from math import degrees, sqrt

from bowstring.drawings.svg import Point
from bowstring.geometry.plane import Point as Place
from bowstring.wall.bend import miss_at
from bowstring.wall.board import LEFT, NAME, Board, Sheet, width_of
from bowstring.wall.job_ends import bent_note
from bowstring.wall.shape import Frame, Given, outline
from bowstring.words import say

_STEPS = 64
_LEAST = 0.2
"""Mid-ordinate over half the chord: what is flatter is drawn more bent, and says so."""


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


class _Places:
    """Where heights over the string are on the board; x counts from the middle. A flat arc is stretched upward."""

    def __init__(self, gap: Gap) -> None:
        given = gap.given
        drawn, self.way = given.shape(_LEAST)
        self._gap, self.times, self._stretch = gap, _times(gap, drawn), drawn.sagitta / given.sagitta
        self._frame = Frame(outline(drawn.arc), (78.0, 250.0, 1202.0, 440.0))

    def up(self, x: float, y: float, apart: float = 0.0) -> Point:
        """Return where a height is; ``apart`` is drawn as many times larger as the gap."""
        half = self._gap.given.half
        return self._frame.at(Place(half + x, y * self._stretch + self.times * apart))

    def parabola(self, x: float) -> Point:
        """Return the parabola's point."""
        return self.up(x, self._gap.parabola(x))

    def circle(self, x: float) -> Point:
        """Return the circle's point, as far outside as it is drawn."""
        return self.up(x, self._gap.parabola(x), self._gap.at(x))


def parabola_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """The mid-ordinate, its quarter, a quarter of that, all straight up; parabola, circle, and why they part."""
    gap = Gap(given)
    places = _Places(gap)
    board = Board(id, say(_scaled("lesson.6.told", places.times), times=places.times), kick)
    board.head(say("lesson.6.question"))
    _quarters(board, given, places)
    board.stroke("lesson.6.parabola")
    xs = [given.half * (step / (_STEPS // 2) - 1) for step in range(_STEPS + 1)]
    board.line([places.parabola(x) for x in xs], "hotarc")
    at = places.up(given.half * 0.36, 0.06 * given.sagitta)
    board.text(say("lesson.6.parabola_word"), at, NAME, "start", "hot")
    board.stroke(_scaled("lesson.6.circle", places.times), times=places.times)
    board.line([places.circle(x) for x in xs], "arc")
    x, y = places.circle(-given.half * 0.62)
    board.text(say("lesson.6.circle_word"), (x - 20, y - 22), NAME, "end")
    _gaps(board, given, gap, places)
    _why(board, given, places.times, given.small(gap.at(given.half / 2)))
    return board.finish()


def _scaled(key: str, times: int) -> str:
    """The sentence of a gap that is drawn larger than it is, or as it is."""
    return key if times > 1 else f"{key}_true"


def _quarters(board: Board, given: Given, places: _Places) -> None:
    """The string with its mid-ordinate, a quarter of it, and a quarter of that."""
    up = places.up
    shown = given.show(given.sagitta / 4), given.show(given.sagitta / 16)
    board.stroke("lesson.6.string", out=given.show(given.sagitta))
    bent_note(board, places.way)
    left, right, foot, top = up(-given.half, 0), up(given.half, 0), up(0, 0), up(0, given.sagitta)
    board.line([left, right], "string")
    board.arrow(foot, (top[0], top[1] + 16))
    board.boxed(given.show(given.sagitta), (foot[0] + 110, (foot[1] + top[1]) / 2 + 16), 34)
    for at in (left, top, right):
        board.stake(at)
    board.stroke("lesson.6.quarter", out=shown[0])
    x, out = -given.half / 2, given.sagitta / 4
    board.line([left, top], "thin")
    at = up(x, given.sagitta / 2)
    board.arrow(at, up(x, given.sagitta / 2 + out))
    if width_of(shown[0], 34) < foot[0] - at[0] - 24:
        board.text(shown[0], (at[0] + 4, at[1] + 44), 34, "start", "hot num")
    else:  # a narrow picture: outside it
        board.text(shown[0], (left[0] - 28, at[1]), 34, "end", "hot num")
    board.stroke("lesson.6.again", out=shown[1])
    board.line([left, up(x, given.sagitta * 0.75), top], "thin")
    for part, middle in ((-0.75, 0.375 * given.sagitta), (-0.25, 0.875 * given.sagitta)):
        board.line([up(part * given.half, middle), up(part * given.half, middle + out / 4)], "shaft")


def _gaps(board: Board, given: Given, gap: Gap, places: _Places) -> None:
    """How far they are apart, halfway and where it is most."""
    for x, key in ((given.half / 2, "apart"), (gap.widest(), "most")):
        words = given.small(gap.at(x))
        board.stroke(f"lesson.6.{key}", gap=words)
        high = places.circle(x)
        board.line([places.parabola(x), high], "arc")
        if key == "apart":
            board.text(words, (high[0] + 10, high[1] - 58), 36, "middle", "num")
        else:
            board.text(words, (high[0] + 10, high[1] - 16), 46, "start", "num", room=1232 - high[0] - 10)


def _times(gap: Gap, drawn: Given) -> int:
    """How many times larger the gap is drawn: as much as stays under the mid-ordinate, no more than ten times where the
    arc is drawn as it is."""
    most = gap.at(gap.widest())
    larger = (200, 100, 50, 20, 10, 5, 2) if drawn.sagitta > gap.given.sagitta else (10, 5, 2)
    return next((times for times in larger if times * most < 0.3 * drawn.sagitta), 1)


def _why(board: Board, given: Given, times: int, half: str) -> None:
    """What the picture says in words: the gap's scale, why the miss is another than along the arc, and a road."""
    square = given.small(miss_at(given, 2 * degrees(given.arc.half_angle)))
    board.stroke(_scaled("lesson.6.scale", times), times=times)
    board.text(say(_scaled("lesson.6.scale_word", times), times=times), (LEFT, 508), 32, "start")
    board.stroke("lesson.6.differ", here=half, there=square)
    board.text(say("lesson.6.differ_word", here=half, there=square), (LEFT, 562), 32, "start", "tell")
    board.stroke("lesson.6.because")
    board.text(say("lesson.6.because_word"), (LEFT, 616), 32, "start", "tell")
    board.head(say("lesson.6.answer"))
    board.stroke("lesson.6.road")
    board.text(say("lesson.6.road_word"), (LEFT, 670), 32, "start")
