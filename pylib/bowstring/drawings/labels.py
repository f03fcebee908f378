"""Where labels stand: what is taken already, and a place for each label that covers no other."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cache, cached_property
from itertools import pairwise

from bowstring.drawings.boxes import ASCENT, DESCENT, LEADING, Box, Segment, stack, text_width
from bowstring.drawings.svg import SIZES, Point

FAINT, LINE, LEADER = 0, 1, 2
"""How hard a line is avoided: a faint one may run behind a text before the text leaves its place."""
_PAD = 1.5
_CELL = 24.0
_ANGLES = (0, 18, -18, 36, -36, 60, -60, 90, -90)
_STANDOFFS = (0, 5, 10, 18, 28, 40, 54, 70, 90, 112)
_LEADER = 9.0  # a label farther from its point than this gets a line to it


@dataclass(frozen=True)
class Label:
    """A text that belongs to a point: ``spots`` are the points it may belong to, best first.

    A text wider than ``width`` stands in lines, one under the other; a length is never broken.
    """

    text: str
    kind: str
    spots: Sequence[Point]
    toward: Point
    reach: float = 7.0
    width: float = math.inf

    @cached_property
    def lines(self) -> list[str]:
        """The text's lines, from the top."""
        return [self.text] if self.width == math.inf else stack(self.text, self.kind, self.width)


@dataclass(frozen=True)
class Placed:
    """A label with its place: the middle of its first line's baseline, its box, and its line where it stands off."""

    label: Label
    at: Point
    box: Box
    leader: Segment | None


@dataclass
class Ground:
    """What a drawing has taken already. Boxes are never covered, lines only where nothing else is free."""

    boxes: list[Box] = field(default_factory=list)
    _cells: dict[tuple[int, int], list[tuple[Box | None, Segment | None, int]]] = field(default_factory=dict)

    def take_box(self, box: Box) -> None:
        """Take a rectangle: no label will share area with it."""
        self.boxes.append(box)
        for cell in _cells(box):
            self._cells.setdefault(cell, []).append((box, None, LEADER))

    def take_lines(self, points: Sequence[Point], hard: int = LINE) -> None:
        """Take a polyline: labels avoid it where they can, a leader harder than a line."""
        for segment in pairwise(points):
            for cell in _along(segment):
                self._cells.setdefault(cell, []).append((None, segment, hard))

    def taken(self, box: Box, least: int) -> bool:
        """Say whether a box (with a little air) hits a taken box or a line at least so hard."""
        wide = Box(box.left - _PAD, box.top - _PAD, box.right + _PAD, box.bottom + _PAD)
        for cell in _cells(wide):
            for other, segment, hard in self._cells.get(cell, ()):
                if other is not None:
                    if wide.overlaps(other):
                        return True
                elif segment is not None and hard >= least and wide.crosses(segment):
                    return True
        return False

    def blocked(self, line: Segment) -> bool:
        """Say whether a leader would run over a taken box or another leader."""
        for cell in _along(line):
            for other, segment, hard in self._cells.get(cell, ()):
                if other is not None and other.crosses(line):
                    return True
                if hard == LEADER and segment is not None and _meet(line, segment):
                    return True
        return False

    def place(self, label: Label) -> Placed:
        """Return a place for a label that covers no taken box, and take it. There always is one."""
        tries = (self._search(label, least) for least in (FAINT, LINE, LEADER))
        placed = next(filter(None, tries), None) or self._march(label)
        self.take_box(placed.box)
        if placed.leader is not None:
            self.take_lines(placed.leader, LEADER)
        return placed

    def beside(self, words: Sequence[Label], least: int = FAINT) -> list[Placed] | None:
        """Return places for labels that have to stand together at one spot, each straight in its direction.

        The labels share their list of spots; the first spot that has room for all of them without touching a
        line at least so hard is taken. ``None`` when there is no such spot.
        """
        for spot in words[0].spots:
            placed = [_at(label, spot, 0, label.reach) for label in words]
            if not any(self.taken(one.box, least) for one in placed):
                for one in placed:
                    self.take_box(one.box)
                return placed
        return None

    def _search(self, label: Label, least: int) -> Placed | None:
        for spot, angle, standoff in _candidates(len(label.spots)):
            placed = _at(label, label.spots[spot], angle, label.reach + standoff)
            if self.taken(placed.box, least):
                continue
            if placed.leader is None or not self.blocked(placed.leader):
                return placed
        return None

    def _march(self, label: Label) -> Placed:
        """Go straight out until a free box is found: beyond all boxes at the latest."""
        reach = label.reach
        while True:
            placed = _at(label, label.spots[0], 0, reach)
            if not self.taken(placed.box, LEADER + 1):
                return placed
            reach += 4.0


@cache
def _candidates(spots: int) -> list[tuple[int, int, int]]:
    every = [(spot, angle, standoff) for spot in range(spots) for angle in _ANGLES for standoff in _STANDOFFS]
    return sorted(every, key=lambda one: 8 * one[0] + round(0.35 * abs(one[1]), 6) + one[2])


def _at(label: Label, spot: Point, angle: int, reach: float) -> Placed:
    """Put the label with its box's edge ``reach`` from the spot, ``angle`` degrees off its direction."""
    turn = math.radians(angle)
    x = label.toward[0] * math.cos(turn) - label.toward[1] * math.sin(turn)
    y = label.toward[0] * math.sin(turn) + label.toward[1] * math.cos(turn)
    wide, size = max(text_width(line, label.kind) for line in label.lines) / 2, SIZES[label.kind]
    high = (ASCENT + DESCENT + LEADING * (len(label.lines) - 1)) * size / 2
    support = min(wide / abs(x) if abs(x) > 1e-9 else math.inf, high / abs(y) if abs(y) > 1e-9 else math.inf)
    # rounded here, so that a host and a browser whose cosines differ in the last bit choose alike
    middle = (round(spot[0] + x * (reach + support), 2), round(spot[1] + y * (reach + support), 2))
    box = Box(middle[0] - wide, middle[1] - high, middle[0] + wide, middle[1] + high)
    near = box.nearest(spot)
    gap = math.dist(near, spot)
    leader = None
    if gap > _LEADER + label.reach / 2:
        inset = 0.6 * label.reach / gap
        start = (spot[0] + (near[0] - spot[0]) * inset, spot[1] + (near[1] - spot[1]) * inset)
        leader = (start, near)
    return Placed(label, (middle[0], middle[1] - high + ASCENT * size), box, leader)


def _cells(box: Box) -> list[tuple[int, int]]:
    return _cells_of(box.left, box.top, box.right, box.bottom)


def _cells_of(left: float, top: float, right: float, bottom: float) -> list[tuple[int, int]]:
    # Asked some thousand times for a sheet: a list costs less than a generator.
    columns = range(math.floor(left / _CELL), math.floor(right / _CELL) + 1)
    rows = range(math.floor(top / _CELL), math.floor(bottom / _CELL) + 1)
    return [(column, row) for column in columns for row in rows]


def _along(segment: Segment) -> set[tuple[int, int]]:
    """Return the cells near a segment: those of its pieces' boxes, each piece shorter than a cell."""
    (x, y), (x2, y2) = segment
    cell = math.floor(x / _CELL), math.floor(y / _CELL)
    if cell == (math.floor(x2 / _CELL), math.floor(y2 / _CELL)):  # most are short
        return {cell}
    pieces = max(1, math.ceil(math.dist(*segment) / _CELL))
    cells: set[tuple[int, int]] = set()
    across, down = x, y
    for piece in range(1, pieces + 1):
        end = piece / pieces
        right, bottom = x + (x2 - x) * end, y + (y2 - y) * end
        left, right_most = (across, right) if across < right else (right, across)
        top, low = (down, bottom) if down < bottom else (bottom, down)
        cells.update(_cells_of(left, top, right_most, low))
        across, down = right, bottom
    return cells


def _meet(one: Segment, other: Segment) -> bool:
    def side(a: Point, b: Point, c: Point) -> float:
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    (a, b), (c, d) = one, other
    return side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0


def spread(positions: Sequence[float], gap: float) -> list[float]:
    """Return places for labels along a strip: in order, ``gap`` apart or more, each near its own.

    ``positions`` must not fall. Neighbours that would touch form a group around their mean (least squares).
    """
    groups: list[list[float]] = []  # sum of (position - rank * gap), count
    for rank, position in enumerate(positions):
        groups.append([position - rank * gap, 1.0])
        while len(groups) > 1 and groups[-2][0] / groups[-2][1] > groups[-1][0] / groups[-1][1]:
            total, count = groups.pop()
            groups[-1][0] += total
            groups[-1][1] += count
    starts = [total / count for total, count in groups for _ in range(int(count))]
    return [start + rank * gap for rank, start in enumerate(starts)]
