"""A line of several pieces on paper, with the slab along it: to scale, turned so that it fits.

It lies as somebody sees it who stands at its start: that is at the left, and the first piece goes to the right. A line
that would stand too tall so is turned; it is never mirrored.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.drawings.svg import Command, Point
from bowstring.report.forms.build_lined import LinedPoint, LinedRun, LinedShape

_LONGEST_PIECE = math.pi / 7
_JOINED = 1e-3
_SAMPLES = 5
"""Points on each quarter of a turn, and at least on each run, that a line is kept clear by."""

_TURNS = tuple(math.radians(turn) for size in range(0, 181, 15) for turn in {size, -size})
"""By how much a picture may be turned, the least first."""

_GOOD = 0.9
"""Of the largest scale: rather a picture that is a little smaller than one that is turned more."""


@dataclass(frozen=True)
class LineShape:
    """Where a place of the line's frame lies on paper.

    Attributes:
        scale: drawing units a metre; turn: radians, above 0 to the left; middle: what lies at the paper's origin,
            metres of the turned frame.
    """

    scale: float
    turn: float
    middle: Point

    def at(self, point: Point) -> Point:
        """Return the place on paper of one in the line's frame."""
        x, y = _turned(point, self.turn)
        return ((x - self.middle[0]) * self.scale, (self.middle[1] - y) * self.scale)

    def place(self, run: LinedRun, along: float) -> Point:
        """Return the place on paper so many metres along a run."""
        return self.at(on_run(run, along))

    def ahead(self, run: LinedRun, along: float) -> Point:
        """Return the unit direction on paper in which a run goes there."""
        heading = heading_of(run) + run["curvature"] * along + self.turn
        return (math.cos(heading), -math.sin(heading))

    def left(self, run: LinedRun, along: float) -> Point:
        """Return the unit direction on paper square off a run, to its left."""
        x, y = self.ahead(run, along)
        return (y, -x)

    def samples(self, runs: Sequence[LinedRun]) -> list[Point]:
        """Return points along runs, near enough to each other to be taken for them."""
        return [self.at(point) for point in points_of(runs)]

    def curve(self, runs: Sequence[LinedRun]) -> list[Command]:
        """Return runs as straights and cubic curves; where one doesn't begin at the last one's end, a straight joins
        them."""
        last = self.place(runs[0], 0.0)
        made: list[Command] = [("M", last)]
        for run in runs:
            start = self.place(run, 0.0)
            if math.dist(start, last) > _JOINED:
                made.append(("L", start))
            last = self.place(run, run["length"])
            if not run["curvature"]:
                made.append(("L", last))
                continue
            count = max(1, math.ceil(abs(run["curvature"]) * run["length"] / _LONGEST_PIECE))
            step = run["length"] / count
            made += [self._piece(run, step * number, step) for number in range(count)]
        return made

    def _piece(self, run: LinedRun, along: float, step: float) -> Command:
        (x, y), (x2, y2) = self.place(run, along), self.place(run, along + step)
        (dx, dy), (dx2, dy2) = self.ahead(run, along), self.ahead(run, along + step)
        pull = 4 / 3 * math.tan(run["curvature"] * step / 4) / run["curvature"] * self.scale
        return ("C", (x + dx * pull, y + dy * pull), (x2 - dx2 * pull, y2 - dy2 * pull), (x2, y2))


def heading_of(run: LinedRun) -> float:
    """Return in which direction a run begins, radians."""
    start, end = _point(run["start"]), _point(run["end"])
    return math.atan2(end[1] - start[1], end[0] - start[0]) - run["curvature"] * run["length"] / 2


def on_run(run: LinedRun, along: float) -> Point:
    """Return the place so many metres along a run, in the line's frame."""
    half = run["curvature"] * along / 2
    chord = along * (math.sin(half) / half if half else 1.0)
    heading, (x, y) = heading_of(run) + half, _point(run["start"])
    return (x + chord * math.cos(heading), y + chord * math.sin(heading))


def points_of(runs: Sequence[LinedRun]) -> list[Point]:
    """Return points along runs in the line's frame."""
    found: list[Point] = []
    for run in runs:
        count = max(1, math.ceil(abs(run["curvature"]) * run["length"] / (math.pi / 2) * _SAMPLES))
        count = max(count, _SAMPLES if run["curvature"] else 1)
        found += [on_run(run, run["length"] * step / count) for step in range(count + 1)]
    return found


def shape_of(shape: LinedShape, wide: float, high: float) -> LineShape:
    """Return how a line lies on paper within ``wide`` and ``high`` drawing units, its middle at the origin.

    Raises ``ValueError`` for a line without a length.
    """
    points = points_of([*shape["line"], *shape["left"], *shape["right"]])
    first, last = points_of(shape["line"])[0], points_of(shape["line"])[-1]
    if not all(math.isfinite(value) for point in points for value in point) or _reach(points) <= 0:
        raise ValueError("a line that can't be drawn")
    fits = [(_scale(points, turn, wide, high), turn) for turn in _TURNS if _leads_right(first, last, turn)]
    best = max(scale for scale, _turn in fits)
    scale, turn = next((scale, turn) for scale, turn in fits if scale >= best * _GOOD)
    xs, ys = zip(*(_turned(point, turn) for point in points), strict=True)
    return LineShape(scale, turn, ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2))


def _leads_right(first: Point, last: Point, turn: float) -> bool:
    """Whether the start stands left of the end; of a line that ends where it begins neither does."""
    x, x2 = (_turned(point, turn)[0] for point in (first, last))
    return x2 >= x - 1e-6 or turn == 0.0


def _scale(points: Sequence[Point], turn: float, wide: float, high: float) -> float:
    xs, ys = zip(*(_turned(point, turn) for point in points), strict=True)
    across, down = max(xs) - min(xs), max(ys) - min(ys)
    return min(wide / across if across > 0 else math.inf, high / down if down > 0 else math.inf)


def _reach(points: Sequence[Point]) -> float:
    return max(math.dist(points[0], point) for point in points)


def _turned(point: Point, turn: float) -> Point:
    cosine, sine = math.cos(turn), math.sin(turn)
    return (point[0] * cosine - point[1] * sine, point[0] * sine + point[1] * cosine)


def _point(point: LinedPoint) -> Point:
    return (point["x"], point["y"])
