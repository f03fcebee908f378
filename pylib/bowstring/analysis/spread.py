"""How far every mark may be off: first-order propagation through a construction, its correlations kept.

Each thing that can go wrong is a source with a standard deviation of 1; each mark carries by how much each source moves
it, in metres. A mark that is set from others takes over what moves those, so whatever two stakes have in common is in
both. A known shift (a slope not taken out, a string blown aside) goes through the same derivatives.

The second-order part of each move (the curvature of its circles, the cosine of its turns) is estimated beside, as the
shift of the mean that the marks' own scatter causes: where it isn't small beside the scatter, the first order isn't to
be relied on.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import hypot, sqrt

from bowstring.analysis.error_model import ErrorModel
from bowstring.analysis.squaring import turn_of_square
from bowstring.construction import Along, Bisect, CrossTapes, Marks, Move, Sight, SquareOff, Step, Take, TurnOff
from bowstring.geometry.plane import Point, distance, left_of, turned, unit_vector

SCALE = 0
"""The source that all pulls share."""

Sway = dict[int, tuple[float, float]]
"""How each source, by its number, moves a mark at one standard deviation: metres in x and y."""


@dataclass(frozen=True)
class Source:
    """One thing that can go wrong.

    Attributes:
        kind: ``scale``, ``read``, ``line``, ``square``, ``stake``, ``angle`` or ``known``.
        size: its standard deviation in its own unit: metres, radians, or a part of one.
        start, end: the marks of the pull or of the string that it belongs to, if any.
        mark: the mark that it moves first.
    """

    kind: str
    size: float
    start: str = ""
    end: str = ""
    mark: str = ""


class Spread:
    """What every mark of a construction may be off, source by source."""

    def __init__(self, at: Marks, errors: ErrorModel, known: Mapping[str, float], blade: float) -> None:
        """``known``: the standard deviation in x and in y of marks that aren't exact, metres; ``blade``: the length
        of the framing square that squares where no triangle finds room, metres."""
        self.at = at
        self.errors = errors
        self.blade = blade
        self.sources = [Source("scale", errors.scale)]
        self.sway: dict[str, Sway] = {}
        self.bend: dict[str, Point] = {}
        for mark in at:
            self.sway[mark] = {}
            if known.get(mark):
                self._add(self.sway[mark], Source("known", known[mark], mark=mark), Point(1.0, 0.0))
                self._add(self.sway[mark], Source("known", known[mark], mark=mark), Point(0.0, 1.0))

    def walk(self, steps: Iterable[Step]) -> None:
        """Carry the steps after the ends out: every mark that they set gets its sway."""
        for step in steps:
            if not step.level:
                continue
            for move in step.moves:
                sway = self._of(move)
                if move.mark in step.driven and self.errors.stake:
                    self._add(sway, Source("stake", self.errors.stake, mark=move.mark), Point(1.0, 0.0))
                    self._add(sway, Source("stake", self.errors.stake, mark=move.mark), Point(0.0, 1.0))
                self.sway[move.mark] = sway

    # One move each.

    def _of(self, move: Move) -> Sway:
        if isinstance(move, Take):
            return dict(self.sway.get(move.mark, {}))
        if isinstance(move, Bisect):
            return self._bisect(move)
        if isinstance(move, Along):
            return self._along(move)
        if isinstance(move, SquareOff):
            return self._slide(move) if move.slide else self._square(move)
        if isinstance(move, CrossTapes):
            return self._cross(move)
        if isinstance(move, TurnOff):
            return self._turn_off(move)
        return self._sight(move)

    def _bisect(self, move: Bisect) -> Sway:
        """Both ends tape toward the middle: the scale cancels, and of two pulls' errors half the difference is left."""
        u = unit_vector(self.at[move.start], self.at[move.end])
        sway = _mixed((0.5, self.sway[move.start]), (0.5, self.sway[move.end]))
        self._add(sway, Source("read", self.errors.read, move.start, move.end, move.mark), u)
        self._add(sway, Source("line", self.errors.line, move.start, move.end, move.mark), left_of(u))
        self.bend[move.mark] = _sum((0.5, self._bend(move.start)), (0.5, self._bend(move.end)))
        return sway

    def _along(self, move: Along) -> Sway:
        start, toward = self.at[move.start], self.at[move.toward]
        u, whole = unit_vector(start, toward), distance(start, toward)
        n = left_of(u)
        # The line turns as its two marks stand off it; the mark goes round by its length.
        sway = self._turning(move.start, move.toward, n, move.length / whole)
        self._add(sway, Source("read", self.errors.pull, move.start, move.mark, move.mark), u)
        self._add_scale(sway, u, move.length)
        self._add(sway, Source("line", self.errors.line, move.start, move.toward, move.mark), n)
        turn = self._turn_variance(move.start, move.toward, n, whole)
        self.bend[move.mark] = self._bend(move.start).plus(u, -move.length * turn / 2)
        return sway

    def _slide(self, move: SquareOff) -> Sway:
        """Halving: the tip is slid until both half chords read the same, so the middle's place along the string is
        not what keeps it square. With a half the string and h a half chord, the tip is aside by h/a of a reading."""
        start, end = self.at[move.start], self.at[move.end]
        u = unit_vector(start, end)
        n = left_of(u)
        half = distance(start, end) / 2
        length = move.length if move.left else -move.length
        base = {
            source: shift for source, shift in self.sway[move.foot].items()
            if not (self.sources[source].kind == "read" and self.sources[source].mark == move.foot)
        }  # fmt: skip
        turning = self._turning_only(move.start, move.end, n, -length / (2 * half), u)
        sway = _mixed((1.0, base), (1.0, turning))
        self._add(sway, Source("read", self.errors.pull, move.foot, move.mark, move.mark), n
                  if length >= 0 else Point(-n.x, -n.y))  # fmt: skip
        self._add_scale(sway, n, length)
        aside = hypot(half, length) / half * self.errors.read
        self._add(sway, Source("square", aside, move.start, move.end, move.mark), u)
        bend = _sum((0.5, self._bend(move.start)), (0.5, self._bend(move.end)))
        # Aside on a tape that is hooked at the middle, the tip comes down its circle; where the offset is shorter than
        # the slip it comes down all the way, by about half of that.
        both = aside * aside + self.errors.read**2
        down = both / (2 * max(abs(length), sqrt(both))) if both else 0.0
        self.bend[move.mark] = bend.plus(n, -down if length >= 0 else down)
        return sway

    def _square(self, move: SquareOff) -> Sway:
        start, end = self.at[move.start], self.at[move.end]
        u, whole = unit_vector(start, end), distance(start, end)
        n = left_of(u)
        length = move.length if move.left else -move.length
        turning = self._turning_only(move.start, move.end, n, -length / whole, u)
        sway = _mixed((1.0, self.sway[move.foot]), (1.0, turning))
        self._add(sway, Source("read", self.errors.pull, move.foot, move.mark, move.mark),
                  n if length >= 0 else Point(-n.x, -n.y))  # fmt: skip
        self._add_scale(sway, n, length)
        room = max(distance(self.at[move.foot], start), distance(self.at[move.foot], end))
        turn = turn_of_square(room, abs(length), self.errors.read, self.blade)
        self._add(sway, Source("square", turn, move.foot, move.mark, move.mark), Point(-u.x * length, -u.y * length))
        variance = turn * turn + self._turn_variance(move.start, move.end, n, whole)
        self.bend[move.mark] = self._bend(move.foot).plus(n, -length * variance / 2)
        return sway

    def _cross(self, move: CrossTapes) -> Sway:
        """Two tapes: each says how far the mark is from its own end, and the two together where it is."""
        first, second, mark = self.at[move.first], self.at[move.second], self.at[move.mark]
        rows = (unit_vector(first, mark), unit_vector(second, mark))
        pulls = ((move.first, move.from_first), (move.second, move.from_second))
        return self._solved(move.mark, rows, pulls, ())

    def _sight(self, move: Sight) -> Sway:
        """A line of sight and a tape from the stake before it."""
        here, back, mark = self.at[move.at], self.at[move.back], self.at[move.mark]
        sight, reach = unit_vector(here, mark), distance(here, mark)
        across = left_of(sight)
        rows = (across, unit_vector(self.at[move.chained], mark))
        turning = self._turning_only(move.at, move.back, left_of(unit_vector(here, back)),
                                     reach / distance(here, back), across)  # fmt: skip
        moved = _mixed((1.0, _projected(self.sway[move.at], across)), (1.0, turning))
        self._add(moved, Source("angle", self.errors.angle, move.at, move.mark, move.mark),
                  Point(across.x * reach, across.y * reach))  # fmt: skip
        return self._solved(move.mark, rows, ((None, 0.0), (move.chained, move.length)), ((0, moved),))

    def _turn_off(self, move: TurnOff) -> Sway:
        here, back = self.at[move.at], self.at[move.back]
        u = unit_vector(here, back)
        sight = turned(u, move.angle)
        across = left_of(sight)
        turning = self._turning_only(move.at, move.back, left_of(u), move.length / distance(here, back), across)
        sway = _mixed((1.0, self.sway[move.at]), (1.0, turning))
        self._add(sway, Source("read", self.errors.pull, move.at, move.mark, move.mark), sight)
        self._add_scale(sway, sight, move.length)
        self._add(sway, Source("angle", self.errors.angle, move.at, move.mark, move.mark),
                  Point(across.x * move.length, across.y * move.length))  # fmt: skip
        variance = self._turn_variance(move.at, move.back, left_of(u), distance(here, back)) + self.errors.angle**2
        self.bend[move.mark] = self._bend(move.at).plus(sight, -move.length * variance / 2)
        return sway

    # What they share.

    def _solved(
        self,
        mark: str,
        rows: tuple[Point, Point],
        pulls: tuple[tuple[str | None, float], ...],
        given: tuple[tuple[int, Sway], ...],
    ) -> Sway:
        """A mark held by two conditions: row · (its shift) = what moves the condition. A pull's condition moves with
        the mark that it is held at, its reading and the scale; ``given`` are the sways of those that are no pull."""
        (a, b), det = rows, rows[0].cross(rows[1])
        # The shifts that meet one condition by a metre and leave the other alone.
        ways = (Point(b.y / det, -b.x / det), Point(-a.y / det, a.x / det))
        sway: Sway = {}
        for (held, length), row, way in zip(pulls, rows, ways, strict=True):
            if held is None:
                continue
            for source, shift in self.sway[held].items():
                moved = row.x * shift[0] + row.y * shift[1]
                before = sway.get(source, (0.0, 0.0))
                sway[source] = (before[0] + way.x * moved, before[1] + way.y * moved)
            self._add(sway, Source("read", self.errors.pull, held, mark, mark), way)
            self._add_scale(sway, way, length)
        for number, moved_sway in given:
            row, way = rows[number], ways[number]
            for source, shift in moved_sway.items():
                moved = row.x * shift[0] + row.y * shift[1]
                before = sway.get(source, (0.0, 0.0))
                sway[source] = (before[0] + way.x * moved, before[1] + way.y * moved)
        bend = Point(0.0, 0.0)
        for (held, length), row, way in zip(pulls, rows, ways, strict=True):
            if held is None:
                continue
            # Aside of its tape the mark comes down the tape's circle: the square of it over twice the length.
            side = left_of(row)
            aside = sum(
                (side.x * (x - self.sway[held].get(source, (0.0, 0.0))[0])
                 + side.y * (y - self.sway[held].get(source, (0.0, 0.0))[1])) ** 2
                for source, (x, y) in sway.items()
            )  # fmt: skip
            bend = bend.plus(way, row.dot(self._bend(held)) - aside / (2 * length))
        self.bend[mark] = bend
        return sway

    def _add(self, sway: Sway, source: Source, way: Point) -> None:
        """A source of its own: ``way`` is where the mark goes for one metre (or radian) of it."""
        sway[len(self.sources)] = (way.x * source.size, way.y * source.size)
        self.sources.append(source)

    def _add_scale(self, sway: Sway, way: Point, length: float) -> None:
        part = length * self.errors.scale
        if part:
            before = sway.get(SCALE, (0.0, 0.0))
            sway[SCALE] = (before[0] + way.x * part, before[1] + way.y * part)

    def _turning(self, start: str, toward: str, across: Point, part: float) -> Sway:
        """A mark on a line at ``part`` of the way from ``start`` to ``toward``: it goes with the start, and turns with
        the line across it."""
        return _mixed((1.0, self.sway[start]), (1.0, self._turning_only(start, toward, across, part, across)))

    def _turning_only(self, start: str, end: str, across: Point, part: float, way: Point) -> Sway:
        """What a line's turning does: ``part`` of how far its end goes across it beyond its start, along ``way``."""
        sway: Sway = {}
        for mark, sign in ((end, part), (start, -part)):
            for source, (x, y) in self.sway[mark].items():
                moved = sign * (across.x * x + across.y * y)
                before = sway.get(source, (0.0, 0.0))
                sway[source] = (before[0] + way.x * moved, before[1] + way.y * moved)
        return sway

    def _turn_variance(self, start: str, end: str, across: Point, whole: float) -> float:
        """The variance in square radians of a line's direction."""
        one, other = self.sway[start], self.sway[end]
        return sum(
            (across.x * (other.get(source, (0.0, 0.0))[0] - one.get(source, (0.0, 0.0))[0])
             + across.y * (other.get(source, (0.0, 0.0))[1] - one.get(source, (0.0, 0.0))[1])) ** 2
            for source in one.keys() | other.keys()
        ) / (whole * whole)  # fmt: skip

    def _bend(self, mark: str) -> Point:
        return self.bend.get(mark, Point(0.0, 0.0))


def _mixed(*parts: tuple[float, Sway]) -> Sway:
    sway: Sway = {}
    for weight, part in parts:
        if not sway and weight == 1.0:
            sway = dict(part)
            continue
        for source, (x, y) in part.items():
            before = sway.get(source, (0.0, 0.0))
            sway[source] = (before[0] + weight * x, before[1] + weight * y)
    return sway


def _projected(sway: Sway, way: Point) -> Sway:
    return {source: (way.x * (part := way.x * x + way.y * y), way.y * part) for source, (x, y) in sway.items()}


def _sum(*parts: tuple[float, Point]) -> Point:
    return Point(sum(w * p.x for w, p in parts), sum(w * p.y for w, p in parts))
