"""What is drawn on a wall: one picture of 1280 by 720, built up in strokes, all of it large and heavy.

Sizes, weights and colors are told in DEVELOPERS.md, "Conventions of drawing"; ``site/wall.css`` has them as styles.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import atan2, cos, hypot, pi, sin
from typing import NamedTuple, TypedDict

from bowstring.drawings.boxes import advance
from bowstring.drawings.svg import Command, Drawing, Look, Point
from bowstring.words import say

WIDE, HIGH = 1280.0, 720.0
LEFT, RIGHT = 48.0, 1232.0
"""Where words begin and end: a wall's edges are often lost."""
LEAST = 24.0
"""The smallest text: a thirtieth of the height, where a forty-fifth is asked for."""
HEADLINE, KICK, NAME, NUMBER, QUIET = 44.0, 26.0, 40.0, 40.0, 28.0
_NARROW = 0.87
"""What the wall's own fonts take of the width of the drawings' widest, with a little to spare."""
_HEAD = (32.0, 17.0)  # an arrow's head: how long, half how wide

_CLASSES = (
    *("ground", "plain", "arc", "cut", "bow", "hotarc", "string", "thin", "dash", "ghost", "shaft", "hatch"),
    *("fill", "stands", "now", "box", "disc", "ok", "tick", "water", "body"),
    *("in", "hot", "quiet", "halo", "num", "tell"),
)
LOOK = Look("wall-drawing", "w-", "", frozenset(_CLASSES))


class Stroke(TypedDict):
    """What comes with one stroke: the sentence over the picture from then on, and what is said."""

    sentence: str
    said: str


class Sheet(NamedTuple):
    """One picture with its strokes; ``svg`` has a group for each, by its place in ``strokes`` from 1 on.

    ``zoom``: scale, x and y that bring it into the picture before it, where it is a part of that one.
    """

    svg: str
    strokes: list[Stroke]
    zoom: tuple[float, float, float] | None = None


def width_of(words: str, size: float) -> float:
    """Return how wide a line of text is on the wall, rather too wide than too narrow."""
    return _NARROW * size * advance(words)


def fitting(words: str, size: float, room: float) -> float:
    """Return the size, or what makes the words fit where they are wider than ``room``; never under ``LEAST``."""
    return max(LEAST, min(size, size * room / max(width_of(words, size), 1.0)))


class Board:
    """One picture while it is drawn. What is added before the first stroke stands there from the beginning."""

    def __init__(self, id: str, title: str, kick: Sequence[tuple[str, str]]) -> None:
        """``title``: what the finished picture tells; ``kick``: the line at the top, texts with their classes (``box``:
        a number in a frame)."""
        self._drawing = Drawing(id=id, title=title, description=title, look=LOOK)
        self._said: list[str] = []
        self._heads: list[tuple[int, str]] = []
        self._drawing.group({"s": "0"})
        x = LEFT
        scale = min(
            1.0, (RIGHT - LEFT) / sum(width_of(words, KICK) + 14 + 30 * ("box" in classes) for words, classes in kick)
        )
        size = max(LEAST, KICK * scale)
        for words, classes in kick:
            x = self._kick(words, classes, x, size)

    def _kick(self, words: str, classes: str, x: float, size: float) -> float:
        wide = width_of(words, size)
        if classes != "box":
            self.text(words, (x, 50), size, "start", classes)
            return x + wide + 14
        self.rect((x, 23, x + wide + 20, 60), "box")
        self.text(words, (x + 10, 50), size, "start")
        return x + wide + 44

    # --- strokes

    def head(self, sentence: str) -> None:
        """Put a sentence over the picture from the next stroke on."""
        self._heads.append((len(self._said) + 1, sentence))

    def stroke(self, key: str, **values: object) -> None:
        """Begin the next stroke; the sentence of ``key`` is what is said at it."""
        self._said.append(say(key, **values))
        self._drawing.group({"s": str(len(self._said))})

    def until(self, last: int) -> None:
        """Go on with what is gone again after the stroke ``last`` of this sheet."""
        self._drawing.group({"s": str(len(self._said)), "to": str(last)})

    @property
    def count(self) -> int:
        """How many strokes there are so far."""
        return len(self._said)

    def finish(self) -> Sheet:
        """Return the picture with its strokes."""
        for number, (start, sentence) in enumerate(self._heads):
            data = {"s": str(start), "head": "1"}
            if number + 1 < len(self._heads):
                data["to"] = str(self._heads[number + 1][0] - 1)
            self._drawing.group(data)
            size = fitting(sentence, HEADLINE, RIGHT - LEFT)
            self._drawing.sized(sentence, (LEFT, 113), size, "start")
        strokes: list[Stroke] = []
        for number, said in enumerate(self._said, 1):
            sentence = next((words for start, words in reversed(self._heads) if start <= number), "")
            strokes.append({"sentence": sentence, "said": said})
        return Sheet(self._drawing.finish((0, 0, WIDE, HIGH)), strokes)

    # --- words

    def text(
        self, words: str, at: Point, size: float, anchor: str = "middle", classes: str = "", room: float = RIGHT - LEFT
    ) -> float:
        """Write a line, smaller where it is wider than ``room``; return its size.

        Of its classes ``num`` is a number that a learner works out, ``tell`` words that would tell one: on the
        learner's paper (``learner.py``) the first is a blank, the other isn't there.
        """
        size = fitting(words, size, room)
        self._drawing.sized(words, at, size, anchor, classes)
        return size

    def boxed(self, words: str, centre: Point, size: float = NUMBER) -> None:
        """Write a number in a frame: one that is given or measured, and known to a learner."""
        half = width_of(words, size) / 2 + 16
        self.rect((centre[0] - half, centre[1] - 0.66 * size, centre[0] + half, centre[1] + 0.66 * size), "box")
        self.text(words, (centre[0], centre[1] + 0.36 * size), size, "middle")

    def disc(self, number: int, at: Point) -> None:
        """The number of a move, white on a disc."""
        self._drawing.dot(at, 20, "disc")
        self.text(str(number), (at[0], at[1] + 9.5), 26, "middle", "in")

    def ticked(self, at: Point, radius: float = 19.0) -> None:
        """The sign of a reading that proves something."""
        self._drawing.dot(at, radius, "ok")
        x, y = at
        self.line([(x - 9, y), (x - 2, y + 8), (x + 10, y - 8)], "tick")

    def warned(self, at: Point) -> None:
        """The sign of what a reading hardly tells."""
        self._drawing.dot(at, 24, "fill")
        self.text("!", (at[0], at[1] + 13), 36, "middle", "in")

    # --- lines and marks

    def line(self, points: Sequence[Point], classes: str) -> None:
        """Draw an open line through points."""
        self._drawing.lines([points], classes)

    def shape(self, points: Sequence[Point], classes: str) -> None:
        """Draw a closed area."""
        commands: list[Command] = [("L" if place else "M", point) for place, point in enumerate(points)]
        self._drawing.path([*commands, ("Z",)], classes)

    def rect(self, sides: tuple[float, float, float, float], classes: str) -> None:
        """Draw an upright rectangle: left, top, right, bottom."""
        left, top, right, bottom = sides
        self.shape([(left, top), (right, top), (right, bottom), (left, bottom)], classes)

    def dot(self, at: Point, radius: float, classes: str) -> None:
        """Draw a disc."""
        self._drawing.dot(at, radius, classes)

    def circle(self, centre: Point, radius: float, classes: str) -> None:
        """Draw a whole circle as a line."""
        turns = [pi * step / 60 for step in range(121)]
        self.line([(centre[0] + radius * cos(turn), centre[1] + radius * sin(turn)) for turn in turns], classes)

    def stake(self, at: Point, half: float = 16.0, look: str = "stands") -> None:
        """A stake: hollow where it stands, filled where it is set just now."""
        self._drawing.square(at, half, look)

    def arrow(self, tail: Point, tip: Point) -> None:
        """The mid-ordinate's arrow, with a smaller head where it is short."""
        along = hypot(tip[0] - tail[0], tip[1] - tail[1])
        if along < 1e-6:
            return
        x, y = (tip[0] - tail[0]) / along, (tip[1] - tail[1]) / along
        size = min(1.0, along / (1.6 * _HEAD[0]))
        long, half = _HEAD[0] * size, _HEAD[1] * max(size, 0.5)
        neck = (tip[0] - x * long, tip[1] - y * long)
        self.line([tail, neck], "shaft")
        self.shape([tip, (neck[0] - y * half, neck[1] + x * half), (neck[0] + y * half, neck[1] - x * half)], "fill")

    def corner(self, at: Point, along: Point, out: Point, size: float = 22.0) -> None:
        """The sign of a right angle at a point, between two directions of length 1."""
        first = (at[0] + along[0] * size, at[1] + along[1] * size)
        third = (at[0] + out[0] * size, at[1] + out[1] * size)
        self.line([first, (first[0] + third[0] - at[0], first[1] + third[1] - at[1]), third], "thin")

    def swing(self, centre: Point, start: Point, end: Point, classes: str) -> None:
        """An arc about a centre, the short way."""
        radius = hypot(start[0] - centre[0], start[1] - centre[1])
        first, last = (atan2(one[1] - centre[1], one[0] - centre[0]) for one in (start, end))
        turn = (last - first + pi) % (2 * pi) - pi
        steps = [first + turn * step / 40 for step in range(41)]
        self.line([(centre[0] + radius * cos(one), centre[1] + radius * sin(one)) for one in steps], classes)
