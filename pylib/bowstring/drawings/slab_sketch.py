"""The slab in the making: its edges, stakes and joints, and what may be written beside them."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from bowstring.drawings.areas import cut_to, draw_area
from bowstring.drawings.boxes import Box, text_width
from bowstring.drawings.building import HATCH, draw_face
from bowstring.drawings.labels import FAINT, LINE, Label
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.slab_shape import DOTTED, PHONE, Room, shape_of
from bowstring.drawings.svg import Point
from bowstring.report.alone import called, edges_of
from bowstring.report.forms.answer import Answer
from bowstring.words import say

LEFT, RIGHT = PHONE.left, PHONE.right
"""Between which all is written: with the picture's margin a phone's width."""

APART = 18.0
"""Least distance of two stakes, drawing units: of more that stand nearer only some are drawn."""

_CUTS_APART = 7.0

_NEAR = 74.0
"""A text at a corner is no wider, where it can be broken."""

SHARES = {"A": -1.0, "B": 1.0}
"""Where a slab's ends are."""

_TITLES = {"corners": "forming.title.corners"}
_FAR, _TALL = 130.0, 340.0

_AROUND = 24.0
"""Drawing units over and under the slab, within which what stands in it is drawn."""


class SlabSketch:
    """A drawing of the slab. Shares run from -1 at A to 1 at B, sides are ``outside`` and ``inside``."""

    def __init__(self, answer: Answer, page: str, id: str, room: Room = PHONE) -> None:
        self.page, self.room = page, room
        self.answer, self.shape = answer, shape_of(answer, room)
        self.edges = edges_of(answer)
        rows = {row["key"]: row for row in answer["build"]}
        told = [rows[page]] if page in rows else list(rows.values())
        title = called(answer, page) if page in rows else say(_TITLES.get(page, "build.draw_title"))
        lines = [f"{called(answer, row['key'])}: {row['text']}. {row['more']}".rstrip(". ") + "." for row in told]
        self.sketch = Sketch(id=id, title=title, description=" ".join(lines))
        whole = answer["staked"]["arc_length"]
        self.share = {stake["name"]: 2 * stake["along"] / whole - 1 for stake in answer["stakes"]}
        for left in (room.left - _FAR, room.right):
            self.sketch.ground.take_box(Box(left, -_TALL / 2, left + _FAR, _TALL))
        self.sketch.see((room.left, 0.0), (room.right, 0.0))
        self._stands: list[tuple[str, list[Point]]] = []
        self._body()

    def _body(self) -> None:
        """The slab and its edges, or the line alone."""
        shape, drawing = self.shape, self.sketch.drawing
        if not shape.known:
            drawing.path(shape.curve("outside"), "line arc")
            self._taken(shape.samples("outside"))
            return
        out, back = shape.curve("outside"), shape.curve("inside", 1.0, -1.0)
        drawing.path([*out, ("L", *back[0][1:]), *back[1:], ("Z",)], "slab")
        if shape.sides:
            ends = [[shape.on("outside", share), shape.on("inside", share)] for share in (-1.0, 1.0)]
            self.sketch.lines(ends, "line arc")
        elif not shape.filled:
            ends = [[shape.on("outside", share), shape.on("inside", share)] for share in (-1.0, 1.0)]
            self.sketch.lines(ends, "string")
        for side in ("outside", "inside"):
            drawing.path(shape.curve(side), "line arc")
            self._taken(shape.samples(side))
        self._standing()
        self._old()
        for part in (0.33, 0.67):  # nothing is written on the slab while there is room beside it
            self.sketch.ground.take_lines([shape.between(-1 + step / 30, part) for step in range(61)])

    def _standing(self) -> None:
        """What stands in the concrete or in the dig, as much of it as is near."""
        if self.edges is None:
            return
        points = [*self.shape.samples("outside"), *self.shape.samples("inside")]
        ys = [y for _x, y in points]
        near = Box(self.room.left, min(ys) - _AROUND, self.room.right, max(ys) + _AROUND)
        for one in self.edges["standing"]:
            whole = [self.shape.at(share, off * self.shape.across) for share, off in one["places"]]
            outline = cut_to(whole, near)
            if outline:
                draw_area(self.sketch, outline, one["stops"])
                self._stands.append((one["name"], outline))

    def _old(self) -> None:
        """The face of the concrete that stands already at an end, hatched past it."""
        for end in self.edges["ends"]["against"] if self.edges else ():
            share = SHARES[end]
            (x, y), (ax, ay) = self.shape.on("outside", share), self.shape.ahead(share)
            behind = (ax * share, ay * share)
            face = draw_face(self.sketch.drawing, (x, y), self.shape.on("inside", share), behind)
            hatched = [(x + behind[0] * HATCH, y + behind[1] * HATCH) for x, y in face]
            self._taken([*face, *reversed(hatched)])

    def _old_named(self) -> None:
        """Its name beside it, once, where that has room; on the first screen else under all."""
        text, labels = say("ends.draw"), []
        for end in self.edges["ends"]["against"] if self.edges else ():
            share = SHARES[end]
            (ax, ay), (ox, oy) = self.shape.ahead(share), self.shape.outward(share)
            for side, out in (("inside", -1.0), ("outside", 1.0)):
                (x, y), past = self.shape.on(side, share), HATCH * share
                spot = (x + ax * past, y + ay * past)
                aways = ((ax * share, ay * share), (ox * out, oy * out))
                labels += [Label(text, "word", [spot], toward, 6.0, _NEAR) for toward in aways]
        if labels and not any(self.sketch.fits(label, LINE, "quiet") for label in labels) and not self.page:
            self.foot(say("ends.draw_hatched"))

    def _taken(self, points: Sequence[Point]) -> None:
        self.sketch.ground.take_lines(points)
        self.sketch.see(*points)

    def finish(self) -> str:
        """Return the drawing as SVG, with what stands in the way named, and the word that it isn't to scale where it
        isn't."""
        self._old_named()
        for name, outline in self._stands:
            xs, ys = [x for x, _y in outline], [y for _x, y in outline]
            spots = [((min(xs) + max(xs)) / 2, y) for y in (max(ys), min(ys))]
            self.sketch.label(Label(name, "word", spots, (0.0, 1.0), 6.0, _NEAR))
        if not self.shape.true:
            self.foot(say("build.draw_not_to_scale"))
        return self.sketch.finish()

    def plain(self) -> None:
        """The slab with its ends named, where nothing else is known of what a page is about."""
        self.corners()
        self.ends()

    def stakes(self) -> None:
        """The stakes on their line, so many of them as can be told apart."""
        at = {name: self.shape.on("stakes", share) for name, share in self.share.items()}
        for name in apart(at, ("A", "B")):
            self.sketch.stake(name, at[name], "end-stake" if name in "AB" else "stake")

    def corners(self) -> None:
        """Squares at the four corners."""
        for name, share in (("A", -1.0), ("B", 1.0)):
            for side in ("outside", "inside"):
                self.sketch.stake(name, self.shape.on(side, share), "stake")

    def ends(self) -> None:
        """A and B, beside their stakes."""
        side = "stakes" if self.shape.known or self.shape.stakes else "outside"
        for name, share in (("A", -1.0), ("B", 1.0)):
            self.name(name, self.shape.on(side, share), share)

    def name(
        self, text: str, at: Point, share: float, kind: str = "end", classes: str = "", *, low: bool = False
    ) -> None:
        """A name at an end of the slab, past it; ``low``: toward the center, too."""
        (ax, ay), (ox, oy) = self.shape.ahead(share), self.shape.outward(share)
        down = -0.9 if low else 0.35
        way = (ax * share + ox * down, ay * share + oy * down)
        size = math.hypot(*way)
        self.sketch.label(Label(text, kind, [at], (way[0] / size, way[1] / size), 9.0), classes, text)

    def beside(self, side: str, text: str, shares: Sequence[float] = (0.0,), kind: str = "number", classes: str = "",
               reach: float = 9.0) -> None:  # fmt: skip
        """A text outside the outer edge, or inside the inner one, at the first of some shares that has room."""
        self._beside([self.shape.on(side, share) for share in shares], shares, side, text, kind, classes, reach)

    def beside_line(self, text: str, way: int) -> None:
        """A text between the line and where a side might be."""
        self._beside([self.shape.at(0.0, 0.0)], (0.0,), "outside" if way > 0 else "inside", text, "word", "", 7.0)

    def _beside(self, spots: Sequence[Point], shares: Sequence[float], side: str, text: str, kind: str, classes: str,
                reach: float) -> None:  # fmt: skip
        way, width = (1.0 if side == "outside" else -1.0), self.room.right - self.room.left
        if way < 0:
            radius = self.shape.line + self.shape.off(side, 0.0)
            width = min(width, max(1.4 * radius, _NEAR))
            reach += _hollow(radius, min(text_width(text, kind), width) / 2)
            reach += 5.0 if self.edges and self.edges["edge"] == side else 0.0
        for more in range(0, 64 if way < 0 else 22, 7):
            for at, share in zip(spots, shares, strict=True):
                out = self.shape.outward(share)
                label = Label(text, kind, [at], (out[0] * way, out[1] * way), reach + more, width)
                if self.sketch.fits(label, FAINT, classes, led=False):
                    return
        self.sketch.label(Label(text, kind, spots, (0.0, -way), reach, width), classes)

    def near(
        self, text: str, at: Point, toward: Point, kind: str = "number", classes: str = "", reach: float = 8.0
    ) -> None:
        """A text close to a place, on the side of it that is nearest to a direction and free."""
        first = math.atan2(toward[1], toward[0])
        for more in (0.0, 6.0):
            for turn in (0, 22, -22, 45, -45, 68, -68, 90, -90, 125, -125):
                angle = first + math.radians(turn)
                label = Label(text, kind, [at], (math.cos(angle), math.sin(angle)), reach + more, _NEAR)
                if self.sketch.fits(label, LINE, classes):
                    return
        self.sketch.label(Label(text, kind, [at], toward, reach, _NEAR), classes)

    def flow(self, tail: Point, tip: Point) -> None:
        """An arrow of what runs by itself, water or concrete: not in the accent, since nobody measures it."""
        length = math.dist(tail, tip)
        if length < 4.0:
            return
        x, y = (tip[0] - tail[0]) / length, (tip[1] - tail[1]) / length
        neck = (tip[0] - x * 9.0, tip[1] - y * 9.0)
        self.sketch.lines([[tail, neck]], "string")
        corners = ((neck[0] - y * 4.5, neck[1] + x * 4.5), (neck[0] + y * 4.5, neck[1] - x * 4.5))
        self.sketch.drawing.path([("M", tip), ("L", corners[0]), ("L", corners[1]), ("Z",)], "solid")

    def dotted(self, way: int) -> None:
        """Dots where a side of the slab might be."""
        points = self.shape.samples("outside", more=way * DOTTED)
        self.sketch.drawing.lines([points], "line soft dash")
        self._taken(points)

    def cuts(self, joints: Sequence[float]) -> None:
        """Dashes across the slab at shares, so many of them as can be told apart."""
        pieces: list[list[Point]] = []
        for share in joints:
            piece = [self.shape.on("outside", share), self.shape.on("inside", share)]
            if not pieces or math.dist(piece[0], pieces[-1][0]) >= _CUTS_APART:
                pieces.append(piece)
        self.sketch.drawing.lines(pieces, "line cut")
        for piece in pieces:
            self.sketch.ground.take_lines(piece, FAINT)

    def across(self, share: float, classes: str = "arrow", tick: float = 4.0) -> tuple[Point, Point]:
        """A measure across the slab with a tick at each end, in the accent; return its ends."""
        top, foot = self.shape.on("outside", share), self.shape.on("inside", share)
        (ax, ay) = self.shape.ahead(share)
        ticks = [[(x - ax * tick, y - ay * tick), (x + ax * tick, y + ay * tick)] for x, y in (top, foot)]
        self.sketch.lines([[top, foot], *ticks], classes)
        return top, foot

    def toward(self, end: str, text: str, top: float) -> None:
        """A line of words in the middle, with an arrow toward an end."""
        way = (1 if end == "B" else -1) * self.shape.turn
        wide = text_width(text, "number")
        y = top + 13.0
        self.sketch.words(text, (self.room.middle - way * 17.0, y), "number")
        start = self.room.middle + way * (wide / 2 - 11.0)
        self.flow((start, y - 5.0), (start + way * 30.0, y - 5.0))

    def foot(self, text: str, kind: str = "word", classes: str = "quiet") -> None:
        """A line of words under everything else."""
        edge = self.sketch.edge
        wide = self.room.right - self.room.left
        self.sketch.paragraph(text, (self.room.middle, edge.bottom + 2.0), wide, kind, "middle", classes)


def _hollow(radius: float, half: float) -> float:
    """How far an inner edge sinks over half a text under its middle: so much lower the text stands."""
    return radius - math.sqrt(radius * radius - half * half) if half < 0.8 * radius else 0.0


def apart(at: Mapping[str, Point], ends: tuple[str, str]) -> Iterator[str]:
    """Yield the names of places that stand far enough from each other, the ends' always."""
    kept = [at[name] for name in ends]
    yield from ends
    for name, point in at.items():
        if name not in ends and all(math.dist(point, other) >= APART for other in kept):
            kept.append(point)
            yield name
