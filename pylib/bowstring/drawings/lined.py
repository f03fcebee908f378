"""A line of several pieces as the build shows it: the line, the slab between its edges, where its pieces meet.

It reads the answer's ``lined`` alone, and where there are joints where they stand. A and B are the ends of the arc that
is staked, as on every other drawing; the line's own ends are named in words.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate, pairwise

from bowstring.drawings.areas import cut_to, draw_area
from bowstring.drawings.boxes import Box, text_width
from bowstring.drawings.building import HATCH, draw_face
from bowstring.drawings.labels import FAINT, LINE, Label
from bowstring.drawings.line_shape import LineShape, shape_of
from bowstring.drawings.paper import round_length
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.stepdiscs import RADIUS, draw_discs
from bowstring.drawings.svg import Point
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_lined import LinedJoints, LinedPart, LinedPiece, LinedRun
from bowstring.words import say

WIDE, HIGH = 360.0, 190.0
"""Drawing units: a phone's width, and how high the line may reach on its first screen."""

_SIDES, _ROUND = 34.0, 8.0
"""Left free at both sides for what is named there, and at the picture's own edge."""

_NARROW = 5.0
"""A slab that is narrower on paper is a line: its edges would run into each other."""

_DISC_SHARES = (0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74)
_DISC_OFF = (4.0, 10.0, 18.0)
_HAND_OFF = (6.0, 14.0, 24.0, 36.0)
_BAR, _BAR_HIGH, _TICK = 74.0, 22.0, 4.0
_CUTS_APART = 7.0
_AROUND, _NAMED = 24.0, 74.0
"""How far off the slab what stands there is shown, and from which width on its name stands in lines."""
_APART = 11.0
"""Least distance of two joins' squares, drawing units: of more that stand nearer only some are drawn."""

_CUT_ON = ("", "joints", "grades", "pour")
"""Pages that show the joints."""


def lined_svg(answer: Answer, page: str = "", *, id: str, wide: float = WIDE, high: float = HIGH) -> str:
    """Return the drawing of a page, or of the first screen, as SVG; ``id``: prefix of the ids inside.

    Raises ``ValueError`` where there is no line, or one that can't be drawn.
    """
    part = answer["lined"]
    if part is None:
        raise ValueError("no line of several pieces")
    rows = [row for row in answer["build"] if page in ("", row["key"])]
    told = [f"{say('build.' + row['key'])}: {row['text']}. {row['more']}".rstrip(". ") + "." for row in rows]
    title = say(f"build.{page}") if page else say("lined.draw_title")
    drawn = _Drawn(title, answer["unit"], told, page, answer["joints"])
    return _Made(part, drawn, id, wide, high).finish()


def typed_svg(part: LinedPart, unit: str, *, id: str, high: float) -> str:
    """Return the drawing of a line that is only typed yet, as SVG: itself and the slab along it, nothing of the build;
    ``unit``: in which it is shown.

    Raises ``ValueError`` for one that can't be drawn.
    """
    return _Made(part, _Drawn(say("lined.draw_title"), unit), id, WIDE, high).finish()


def _kink(piece: LinedPiece) -> str:
    """The kink where a piece begins, with how far off it looks; empty for none."""
    if not piece["kink_shown"]:
        return ""
    return " " + say("lined.draw_kink", kink=piece["kink_shown"], looks=piece["looks_shown"])


@dataclass(frozen=True)
class _Drawn:
    """What a drawing is of: its title, the unit of its bar, what is told of it beside the pieces, the page (empty: the
    whole), the joints."""

    title: str
    unit: str
    told: Sequence[str] = ()
    page: str = ""
    joints: JointsPart | LinedJoints | None = None


class _Made:
    """The drawing in the making."""

    def __init__(self, part: LinedPart, drawn: _Drawn, id: str, wide: float, high: float) -> None:
        self.part, self.page, self.joints, self.unit = part, drawn.page, drawn.joints, drawn.unit
        self.left, self.right = -wide / 2 + _ROUND, wide / 2 - _ROUND
        self.shape: LineShape = shape_of(part["shape"], wide - 2 * _SIDES, high)
        told = [*drawn.told, *(say("lined.draw_piece", name=piece["name"], text=piece["text"], kink=_kink(piece))
                                for piece in part["pieces"])]  # fmt: skip
        self.sketch = Sketch(id=id, title=drawn.title, description=" ".join(told))
        for side in (self.left - wide, self.right):
            self.sketch.ground.take_box(Box(side, -2 * high, side + wide, 2 * high))
        self.sketch.see((self.left, 0.0), (self.right, 0.0))

    def finish(self) -> str:
        runs, edges = self.part["shape"]["line"], self._edges()
        if edges:
            self._slab(*edges)
            self._cuts(*edges)
        self._standing()
        if edges:
            self._old(*edges)
        self._line(runs)
        for run in runs:
            self.sketch.ground.take_lines(self.shape.samples([run]))
        self.sketch.see(*self.shape.samples(runs))
        self._joins(runs)
        self._ends(runs)
        self._discs(runs)
        if edges and self.page == "edges":
            self._hands(*edges)
        self._bar()
        self._old_named()
        return self.sketch.finish()

    def _edges(self) -> tuple[list[LinedRun], list[LinedRun]] | None:
        """Both edges' runs, ``None`` where there is no slab or where it is no wider than a line on paper."""
        left, right = self.part["shape"]["left"], self.part["shape"]["right"]
        if not left or not right:
            return None
        apart = math.dist(self.shape.place(left[0], 0.0), self.shape.place(right[0], 0.0))
        return (left, right) if apart >= _NARROW else None

    def _slab(self, left: list[LinedRun], right: list[LinedRun]) -> None:
        """The slab, tinted, and its edges and ends."""
        out, there = self.shape.curve(left), self.shape.samples(right)
        ends = [[self.shape.samples(left)[end], there[end]] for end in (0, -1)]
        back = [("L", point) for point in reversed(there)]
        self.sketch.drawing.path([*out, *back, ("Z",)], "slab")
        self.sketch.lines(ends, "string")
        for runs in (left, right):
            self.sketch.drawing.path(self.shape.curve(runs), "line string")
            points = self.shape.samples(runs)
            self.sketch.ground.take_lines(points)
            self.sketch.see(*points)

    def _old(self, left: list[LinedRun], right: list[LinedRun]) -> None:
        """The face of the concrete that stands already at an end, hatched past it."""
        for end in self.part["against"]:
            place, way = (0, -1.0) if end == "A" else (-1, 1.0)
            ends = [(runs[place], 0.0 if end == "A" else runs[place]["length"]) for runs in (left, right)]
            (x, y), (x2, y2) = (self.shape.place(*one) for one in ends)
            ax, ay = self.shape.ahead(*ends[0])
            behind = (ax * way, ay * way)
            face = draw_face(self.sketch.drawing, (x, y), (x2, y2), behind)
            hatched = [(x + behind[0] * HATCH, y + behind[1] * HATCH) for x, y in face]
            self.sketch.ground.take_lines([*face, *reversed(hatched)])
            self.sketch.see(*face, *hatched)

    def _old_named(self) -> None:
        """What the hatching is, under all of the whole line's picture: beside it the ends' own names stand."""
        if self.part["against"] and self._edges() and not self.page:
            at = (0.0, self.sketch.edge.bottom + 2.0)
            self.sketch.paragraph(say("ends.draw_hatched"), at, self.right - self.left, "word", "middle", "quiet")

    def _standing(self) -> None:
        """What stands in the concrete or in the dig, as much of it as is near the line, and its name."""
        rows, shape = self.part["standing"], self.part["shape"]
        if not rows:
            return
        ys = [y for hand in (shape["left"], shape["right"]) for _x, y in self.shape.samples(hand)]
        near = Box(self.left, min(ys) - _AROUND, self.right, max(ys) + _AROUND)
        for one in rows:
            outline = cut_to([self.shape.at((corner["x"], corner["y"])) for corner in one["outline"]], near)
            if outline:
                draw_area(self.sketch, outline, one["stops"])
                xs, levels = [x for x, _y in outline], [y for _x, y in outline]
                spots = [((min(xs) + max(xs)) / 2, y) for y in (max(levels), min(levels))]
                self.sketch.label(Label(one["name"], "word", spots, (0.0, 1.0), 6.0, _NAMED))

    def _line(self, runs: Sequence[LinedRun]) -> None:
        """The line in the accent; the arc that is staked is the strong one."""
        for number, run in enumerate(runs, 1):
            strong = " strong" if number == self.part["at"] else ""
            self.sketch.drawing.path(self.shape.curve([run]), f"line arrow{strong}")

    def _joins(self, runs: Sequence[LinedRun]) -> None:
        """A square at each piece's end, filled at a kink; the ends of the staked arc are the large ones."""
        at = self.part["at"]
        places = [self.shape.place(runs[0], 0.0), *(self.shape.place(run, run["length"]) for run in runs)]
        kinks = {piece["number"] - 1 for piece in self.part["pieces"] if piece["kink"]}
        own = {at - 1: "A", at: "B"}
        kept: list[Point] = []
        for number in sorted(range(len(places)), key=lambda one: (one not in own, one not in kinks)):
            if number not in own and any(math.dist(places[number], other) < _APART for other in kept):
                continue
            kept.append(places[number])
            look = "new" if number in kinks else "end-stake" if number in own else "stake"
            self.sketch.stake(own.get(number, str(number)), places[number], look)

    def _ends(self, runs: Sequence[LinedRun]) -> None:
        """A and B at the staked arc's ends, and the line's own ends in words where these are others."""
        at = self.part["at"]
        own = runs[at - 1]
        names = [("A", own, 0.0, -1, "end"), ("B", own, own["length"], 1, "end")]
        if at > 1:
            names.append((say("lined.draw_start"), runs[0], 0.0, -1, "word"))
        if at < len(runs):
            names.append((say("lined.draw_end"), runs[-1], runs[-1]["length"], 1, "word"))
        for text, run, along, way, kind in names:
            spot = self.shape.place(run, along)
            (ax, ay), (lx, ly) = self.shape.ahead(run, along), self.shape.left(run, along)
            # At a join there is line on both sides: the name stands square off it, on the outside of the curve.
            out = -math.copysign(1.0, run["curvature"]) if run["curvature"] else 1.0
            inner = kind == "end" and (at > 1 if way < 0 else at < len(runs))
            toward = (lx * out, ly * out) if inner else (ax * way, ay * way)
            reach = self._half() + 4.0 if inner else 8.0
            self.sketch.label(Label(text, kind, [spot], toward, reach), "" if kind == "end" else "quiet", text)

    def _half(self) -> float:
        """Half the slab's width on paper, or as much as a stake's square."""
        left, right = self.part["shape"]["left"], self.part["shape"]["right"]
        if not left or not right:
            return 5.0
        line = self.part["shape"]["line"][0]
        start = self.shape.place(line, 0.0)
        return max(5.0, *(math.dist(start, self.shape.place(runs[0], 0.0)) for runs in (left, right)))

    def _discs(self, runs: Sequence[LinedRun]) -> None:
        """The pieces' numbers beside them, so many of them as have room; that of the staked arc always."""
        half, at = self._half(), self.part["at"]
        for number in sorted(range(1, len(runs) + 1), key=lambda one: one != at):
            run = runs[number - 1]
            spots = [self._off(run, share, way * (half + off + RADIUS))
                     for off in _DISC_OFF for share in _DISC_SHARES for way in (1, -1)]  # fmt: skip
            if number == at or any(self._is_free(spot) for spot in spots):
                first = next((spot for spot in spots if self._is_free(spot)), spots[0])
                draw_discs(self.sketch, [(number, [first])])
                self.sketch.see((first[0], first[1] - RADIUS), (first[0], first[1] + RADIUS))

    def _off(self, run: LinedRun, share: float, off: float) -> Point:
        along = run["length"] * share
        (x, y), (lx, ly) = self.shape.place(run, along), self.shape.left(run, along)
        return (x + lx * off, y + ly * off)

    def _is_free(self, at: Point) -> bool:
        box = Box(at[0] - RADIUS, at[1] - RADIUS, at[0] + RADIUS, at[1] + RADIUS)
        return not self.sketch.ground.taken(box, LINE)

    def _cuts(self, left: list[LinedRun], right: list[LinedRun]) -> None:
        """Dashes across the slab where its joints are, so many of them as can be told apart."""
        joints = self.joints
        if self.page not in _CUT_ON or joints is None or "left" not in joints:
            return
        kept: list[list[Point]] = []
        for one, other in zip(joints["left"], joints["right"], strict=True):
            piece = [self._along(left, one), self._along(right, other)]
            if not kept or math.dist(piece[0], kept[-1][0]) >= _CUTS_APART:
                kept.append(piece)
        self.sketch.drawing.lines(kept, "line cut")
        for piece in kept:
            self.sketch.ground.take_lines(piece, FAINT)

    def _along(self, runs: Sequence[LinedRun], along: float) -> Point:
        """The place so many metres along an edge."""
        ends = [0.0, *accumulate(run["length"] for run in runs)]
        for run, (first, last) in zip(runs, pairwise(ends), strict=True):
            if along <= last:
                return self.shape.place(run, max(0.0, along - first))
        return self.shape.place(runs[-1], runs[-1]["length"])

    def _hands(self, left: list[LinedRun], right: list[LinedRun]) -> None:
        """Which edge is the left one, and which the right, where there is room beside it: the page says it, too."""
        for hand, way, runs in (("left", 1.0, left), ("right", -1.0, right)):
            text = say(f"lined.draw_{hand}")
            spots = [(run, run["length"] * share) for run in sorted(runs, key=lambda one: -one["length"])
                     for share in _DISC_SHARES]  # fmt: skip
            labels = []
            for reach in _HAND_OFF:
                for run, along in spots:
                    x, y = self.shape.left(run, along)
                    at = self.shape.place(run, along)
                    labels.append(Label(text, "number", [at], (x * way, y * way), reach))
            next((label for label in labels if self.sketch.fits(label, LINE)), None)

    def _bar(self) -> None:
        """A bar of a round length, in the first corner that is free, or else under everything."""
        number, unit, metres = round_length(_BAR / self.shape.scale, self.unit)
        text = say(f"draw.scale.number.{unit}", number=f"{number:g}")
        wide, edge = metres * self.shape.scale, self.sketch.edge
        room = max(wide, text_width(text, "word"))
        corners = [(y, side) for y in (edge.top + _BAR_HIGH, edge.bottom - _TICK) for side in ("start", "end")]
        for y, side in [*corners, (edge.bottom + _BAR_HIGH + 6.0, "start")]:
            x = self.left + _TICK if side == "start" else self.right - _TICK - room
            if not self.sketch.ground.taken(Box(x, y - _BAR_HIGH, x + room, y + _TICK), LINE):
                break
        x = x if side == "start" else x + room - wide
        ticks = [[(end, y - _TICK), (end, y + _TICK)] for end in (x, x + wide)]
        self.sketch.lines([[(x, y), (x + wide, y)], *ticks], "")
        self.sketch.words(text, (x if side == "start" else x + wide, y - 6.0), "word", side)
