"""Pieces that every drawing is made of: arrows, stakes, dimensions, rows of words, labels.

A sketch keeps what is drawn and what is taken together, so that a label can't be written without a place of
its own.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from bowstring.drawings.boxes import LEADING, Box, text_box, text_width, wrap
from bowstring.drawings.labels import FAINT, LINE, Ground, Label, Placed
from bowstring.drawings.svg import SIZES, Drawing, Point
from bowstring.words import say

ROW = 19.0
"""Height of a row of words, drawing units."""
MARGIN = 8.0
LEAST_HEAD = 180.0
"""The narrowest that a warning over a drawing is broken to, drawing units."""
HALF = {"new": 5.0, "stake": 4.0, "older": 3.4, "end-stake": 5.0}
"""Half the side of a stake's square, by how it is drawn."""


class Sketch:
    """A drawing in the making."""

    def __init__(self, *, id: str, title: str, description: str, stopped: bool = False) -> None:
        """Start an empty sketch; the arguments are ``Drawing``'s. ``stopped``: nobody may build from it yet."""
        self._stop = say("draw.stopped") if stopped else ""
        self.drawing = Drawing(id=id, title=title, description=f"{self._stop} {description}".strip())
        self.ground = Ground()
        self.placed: list[Placed] = []
        self.texts: list[Box] = []
        self._edge: Box | None = None
        self._leaders: list[tuple[Point, Point]] = []
        self._stakes: list[tuple[Point, float, str, str]] = []
        self._words: list[tuple[str, Point, str, str, str, str]] = []

    def see(self, *points: Point) -> None:
        """Make the finished drawing include these points."""
        for x, y in points:
            self.cover(Box(x, y, x, y))

    def cover(self, box: Box) -> None:
        """Make the finished drawing include a box."""
        self._edge = box if self._edge is None else self._edge.join(box)

    @property
    def edge(self) -> Box:
        """Everything drawn so far. Raises ``ValueError`` while that is nothing."""
        if self._edge is None:
            raise ValueError("nothing is drawn yet")
        return self._edge

    def lines(self, pieces: Sequence[Sequence[Point]], classes: str) -> None:
        """Draw polylines that labels keep clear of."""
        self.drawing.lines(pieces, f"line {classes}".strip())
        for piece in pieces:
            self.ground.take_lines(piece)
            self.see(*piece)

    def arrow(self, tail: Point, tip: Point, *, feathers: bool = True) -> None:
        """Draw a sagitta as what its name says: an arrow, feathers on the string and its head on the arc."""
        length = math.dist(tail, tip)
        if length == 0.0:
            return
        x, y = (tip[0] - tail[0]) / length, (tip[1] - tail[1]) / length
        head = min(7.0, 0.45 * length)
        neck = (tip[0] - x * head, tip[1] - y * head)
        pieces: list[list[Point]] = [[tail, neck]]
        if feathers and length > 22:
            for step in (0.0, 3.5):
                root = (tail[0] + x * (3.5 + step), tail[1] + y * (3.5 + step))
                pieces += [
                    [root, (root[0] - x * 3.5 - y * side * 3.5, root[1] - y * 3.5 + x * side * 3.5)] for side in (1, -1)
                ]
        self.lines(pieces, "arrow")
        wing = 0.38 * head
        corners = ((neck[0] - y * wing, neck[1] + x * wing), (neck[0] + y * wing, neck[1] - x * wing))
        self.drawing.path([("M", tip), ("L", corners[0]), ("L", corners[1]), ("Z",)], "head")
        self.see(tip, *corners)

    def stake(self, name: str, at: Point, look: str) -> None:
        """Draw a stake as it is seen from above, a square; ``look`` is a key of ``HALF``."""
        half = HALF[look]
        self._stakes.append((at, half, "stake" if look == "stake" else f"stake {look}", name))
        box = Box(at[0] - half, at[1] - half, at[0] + half, at[1] + half)
        self.ground.take_box(box)
        self.cover(box)

    def mark(self, at: Point) -> None:
        """Draw a mark on the ground that is no stake of the layout, a cross; no label covers it."""
        x, y = at
        self.lines([[(x - 4, y - 4), (x + 4, y + 4)], [(x - 4, y + 4), (x + 4, y - 4)]], "")
        self.ground.take_box(Box(x - 4.5, y - 4.5, x + 4.5, y + 4.5))

    def cut(self, at: Point, along: Point) -> None:
        """Draw the sign that a line is cut short: a zigzag across it, whose unit direction is ``along``."""
        (x, y), (ax, ay) = at, along
        shape = ((-9.0, 0.0), (-2.5, 0.0), (-1.0, 4.5), (1.0, -4.5), (2.5, 0.0), (9.0, 0.0))
        self.lines([[(x - ay * over + ax * on, y + ax * over + ay * on) for over, on in shape]], "")

    def corner(self, at: Point, along: Point, out: Point, size: float = 9.0) -> None:
        """Draw the sign of a right angle between two unit directions."""
        (x, y), (ax, ay), (ox, oy) = at, along, out
        one, two = (x + ax * size, y + ay * size), (x + ox * size, y + oy * size)
        self.lines([[one, (one[0] + ox * size, one[1] + oy * size), two]], "")

    def label(self, label: Label, classes: str = "", data: str = "") -> None:
        """Write a label where it covers nothing, with a line to its point when it stands off."""
        self._write(self.ground.place(label), classes, data)

    def fits(self, label: Label, least: int = FAINT, classes: str = "", data: str = "", *, led: bool = True) -> bool:
        """Write a label where it stands straight in its direction, or say that it would cover a line so hard.

        ``led``: with a line to its point where it stands off.
        """
        placed = self.ground.beside([label], least)
        for one in placed or ():
            self._write(one if led else Placed(one.label, one.at, one.box, None), classes, data)
        return placed is not None

    def sagitta_beside(self, foot: Point, tip: Point, shown: str) -> bool:
        """Write a sagitta's word at its arrow's left and its length at the right, or say that there is no room."""
        both = self.ground.beside(_word_and_length(foot, tip, shown))
        for placed in both or ():
            self._write(placed, "", "")
        return both is not None

    def sagitta(self, foot: Point, tip: Point, shown: str) -> None:
        """Write a sagitta's word at its arrow's left and its length at the right, or both where there is room."""
        pair = _word_and_length(foot, tip, shown)
        spots = pair[0].spots
        text = say("draw.sagitta.shown", shown=shown)
        length = math.dist(foot, tip) or 1.0
        away = ((foot[0] - tip[0]) / length, (foot[1] - tip[1]) / length)
        behind = Label(text, "number", [foot], away, 6.0)
        both = self.ground.beside(pair) or self.ground.beside(pair, LINE) or self.ground.beside([behind])
        if both is None:
            lines = max(text_width(shown, "number"), 64.0)
            both = [self.ground.place(Label(text, "number", spots, (1.0, 0.0), 6.0, lines))]
        for placed in both:
            self._write(placed, "", "")

    def _write(self, placed: Placed, classes: str, data: str) -> None:
        label = placed.label
        self.placed.append(placed)
        self._note(placed.box)
        if placed.leader is not None:
            self._leaders.append(placed.leader)
        (x, y), leading = placed.at, LEADING * SIZES[label.kind]
        for index, line in enumerate(label.lines):
            self._words.append((line, (x, y + index * leading), label.kind, "middle", classes, data))

    def words(self, text: str, at: Point, kind: str = "word", anchor: str = "middle", classes: str = "") -> Box:
        """Write a line of text at a place that the caller knows to be free, and return its box."""
        box = text_box(text, kind, at, anchor)
        self._words.append((text, at, kind, anchor, classes, ""))
        self.ground.take_box(box)
        self._note(box)
        return box

    def _note(self, box: Box) -> None:
        self.texts.append(box)
        self.cover(box)

    def paragraph(
        self, text: str, at: Point, width: float, kind: str = "word", anchor: str = "start", classes: str = ""
    ) -> float:
        """Write text in lines no wider than ``width``, downward; return where the next may start."""
        x, top = at
        height = LEADING * SIZES[kind]
        for line in wrap(text, kind, width):
            if line:
                self.words(line, (x, top + 0.98 * SIZES[kind]), kind, anchor, classes)
            top += height
        return top

    def dimension(self, start: Point, end: Point, text: str, away: int, kind: str = "number", spread: str = "") -> None:
        """Draw a level measure line with end ticks, its text under it (``away`` +1) or over it (-1).

        ``spread`` is written instead where the text is wider than the line; it may be wider than the line
        itself.
        """
        (x, y), (x2, _) = start, end
        self.lines([[start, end], [(x, y - 4), (x, y + 4)], [(x2, y - 4), (x2, y + 4)]], "soft")
        fits = text_width(text, kind) + 4 <= abs(x2 - x)
        chosen = text if fits or not spread else spread
        self.words(chosen, ((x + x2) / 2, y + self.baseline(away, kind)), kind)

    def halves(self, start: float, end: float, y: float, half: str, away: int) -> None:
        """Draw the measure lines of a level string's two halves, or one for both where they are too short."""
        middle = (start + end) / 2
        if text_width(half, "number") + 8 <= abs(middle - start):
            self.dimension((start, y), (middle, y), half, away)
            self.dimension((middle, y), (end, y), half, away)
        else:
            self.lines([[(middle, y - 4), (middle, y + 4)]], "soft")
            self.dimension((start, y), (end, y), say("draw.half.each", shown=half), away)

    @staticmethod
    def baseline(away: int, kind: str) -> float:
        """Return where a text's baseline stands, relative to a line that it sits under (+1) or over (-1)."""
        return 1.08 * SIZES[kind] if away > 0 else -0.42 * SIZES[kind]

    def _head(self) -> None:
        """Write over everything that nobody may build from this, where that is so."""
        if not self._stop:
            return
        edge, height = self.edge, LEADING * SIZES["end"]
        lines = wrap(self._stop, "end", max(edge.right - edge.left, LEAST_HEAD))
        for number, line in enumerate(lines, 1):
            at = ((edge.left + edge.right) / 2, edge.top - MARGIN - height * (len(lines) - number))
            self.words(line, at, "end")

    def finish(self, *, width_mm: float | None = None, within: Box | None = None) -> str:
        """Return the SVG text, its edge a margin outside everything that was drawn, or that of a box.

        Lines lie undermost, stakes on them, words on top.
        """
        self._head()
        self.drawing.lines(self._leaders, "line soft")
        for centre, half, look, name in self._stakes:
            self.drawing.square(centre, half, look, {"stake": name})
        for text, at, kind, anchor, classes, data in self._words:
            self.drawing.text(text, at, kind, anchor, classes, {"for": data} if data else None)
        if within:
            box = (within.left, within.top, within.right, within.bottom)
        else:
            edge = self.edge
            box = (edge.left - MARGIN, edge.top - MARGIN, edge.right + MARGIN, edge.bottom + MARGIN)
        return self.drawing.finish(box, width_mm=width_mm)


def _word_and_length(foot: Point, tip: Point, shown: str) -> list[Label]:
    """The two labels of a sagitta's arrow."""
    parts = (0.5, 0.44, 0.38, 0.56, 0.32, 0.62, 0.27, 0.22, 0.16)
    spots = [(foot[0] + (tip[0] - foot[0]) * part, foot[1] + (tip[1] - foot[1]) * part) for part in parts]
    word = Label(say("draw.sagitta"), "number", spots, (-1.0, 0.0), 6.0)
    return [word, Label(shown, "number", spots, (1.0, 0.0), 6.0)]
