"""Where a mark really stands, by what the crew read at it.

What was read counts first: two readings fix a mark, more are met as nearly as can be (least squares), and on a line one
does. Where fewer were read, the place is the one that meets them and comes nearest to all else that the sheet asks of
the mark: its other readings, and the line, the square or the sight that it was kept on.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import atan2, cos, hypot, sin, sqrt
from typing import Protocol

from bowstring.construction.marks import Marks, exact
from bowstring.construction.move import PULL, Move
from bowstring.construction.steps import Measure
from bowstring.construction.stood import Stood
from bowstring.geometry.plane import Point, cross_of_tapes, distance

WEAK = 1 / 8
"""Two readings that are so nearly in line that what one is off by moves the mark eight times as far don't fix it, where
the step has another that does (common practice, no source)."""

BLIND = 1e-3
"""So nearly in line they fix nothing at all."""

MEETS = 1e-6
"""Metres: a mark that comes so near to its only line of sight is on it."""

_ROUNDS, _STILL = 300, 1e-15


class Told(Protocol):
    """What was read at a step's marks."""

    @property
    def as_before(self) -> bool:
        """Whether it is taken as it stands however weakly it fixes the mark: the job's older keys."""

    def readings(self, names: Mapping[str, str]) -> tuple[Measure, ...]:
        """Return what was read, metres; ``names``: the marks of the step by their part in it."""


class BadReading(ValueError):
    """Readings that can't be used; ``row``: the name under which they were told."""

    row = ""


class DontMeet(BadReading):
    """Readings that leave a gap; the mark's name is its text, ``crossing`` whether they are two tapes that cross."""

    crossing = False


class NotFixed(BadReading):
    """Readings that don't say where the mark stands; ``needs``: the marks between which to tape besides, if any."""

    def __init__(self, mark: str, needs: tuple[str, str] | None = None) -> None:
        super().__init__(mark)
        self.needs = needs


class NoSuchReading(BadReading):
    """A reading that is none of the step's marks', by its number among those told."""

    def __init__(self, number: int) -> None:
        super().__init__()
        self.number = number


@dataclass(frozen=True)
class Standing:
    """What was made of the readings at one step.

    Attributes:
        moves: the step's moves, with its marks where they stand; meant: as the sheet has them.
        planned: where its marks would stand by the sheet.
        told: what was read; asked: between the same marks, what the sheet asks.
        apart: metres by which what was read disagrees with itself, at the reading that is farthest off.
        other: what was not read, as it must read now, with what the sheet asked.
    """

    moves: tuple[Move, ...]
    meant: tuple[Move, ...]
    planned: Marks
    told: tuple[Measure, ...]
    asked: tuple[Measure, ...]
    apart: float
    other: tuple[tuple[Measure, float], ...]


def stand(
    moves: Sequence[Move], measured: Iterable[tuple[str, str]], told: Sequence[Measure], at: Mapping[str, Point],
    truth: Mapping[str, Point], *, as_before: bool = False,
) -> Standing:  # fmt: skip
    """Return where the marks of a step stand. ``at``: the marks before it; ``truth``: where marks belong.

    Raises ``DontMeet``, ``NotFixed`` and ``NoSuchReading``.
    """
    planned = dict(at)
    for move in moves:
        planned[move.mark] = truth.get(move.mark, move.place(planned, exact))
    new = [move.mark for move in moves]
    names = {name.casefold(): name for name in planned}
    told = [
        Measure(names.get(one.start.casefold(), ""), names.get(one.end.casefold(), ""), one.length) for one in told
    ]  # fmt: skip
    for number, reading in enumerate(told):
        ends = {reading.start, reading.end}
        if len(ends) < 2 or not ends <= planned.keys() or ends.isdisjoint(new):
            raise NoSuchReading(number)
    pairs = list(dict.fromkeys(_pairs(moves, measured)))
    read = {frozenset((one.start, one.end)) for one in told}
    left = [pair for pair in pairs if frozenset(pair) not in read]
    real: Marks = dict(at)
    stood: list[Move] = []
    apart = 0.0
    for move in moves:
        spot = _Spot(move, planned, real, told, left, as_before)
        real[move.mark], off = spot.found()
        apart = max(apart, off)
        stood.append(Stood(move.mark, real[move.mark], move))
    return Standing(
        tuple(stood), tuple(moves), planned, tuple(told),
        tuple(Measure(one.start, one.end, distance(planned[one.start], planned[one.end])) for one in told), apart,
        tuple((Measure(*pair, distance(real[pair[0]], real[pair[1]])), distance(planned[pair[0]], planned[pair[1]]))
              for pair in left),
    )  # fmt: skip


def _pairs(moves: Sequence[Move], measured: Iterable[tuple[str, str]]) -> Iterator[tuple[str, str]]:
    """Every pair of marks between which a step tapes, named once."""
    seen = set()
    pulls = [(start, end) for move in moves for kind, start, end in move.lines if kind == PULL]
    for pair in (*measured, *pulls):
        if frozenset(pair) not in seen:
            seen.add(frozenset(pair))
            yield pair


Miss = Callable[[Point], tuple[float, Point]]
"""By how many metres a place misses a condition, and the way in which that grows fastest."""


def _taped(other: Point, length: float) -> Miss:
    def miss(point: Point) -> tuple[float, Point]:
        off = distance(other, point)
        way = Point((point.x - other.x) / off, (point.y - other.y) / off) if off else Point(1.0, 0.0)
        return off - length, way

    return miss


def _kept(origin: Point, normal: Point) -> Miss:
    return lambda point: (normal.dot(point.minus(origin)), normal)


class _Spot:
    """One mark of a step: what was read at it, and what else the sheet asks of it."""

    def __init__(
        self, move: Move, planned: Mapping[str, Point], real: Mapping[str, Point], told: Sequence[Measure],
        left: Sequence[tuple[str, str]], as_before: bool,
    ) -> None:  # fmt: skip
        self.move, self.mark, self.as_before = move, move.mark, as_before
        self.begin = self._begin(planned, real)
        self.read = [(real[other], one.length) for one in told
                     if (other := _other(self.mark, one.start, one.end)) in real]  # fmt: skip
        self.left = [(pair, real[other]) for pair in left if (other := _other(self.mark, *pair)) in real]
        self.lines = move.keeps_on(real)
        self.soft = [
            *(_taped(point, distance(planned[pair[0]], planned[pair[1]])) for pair, point in self.left),
            *(_kept(*line) for line in self.lines),
        ]

    def _begin(self, planned: Mapping[str, Point], real: Mapping[str, Point]) -> Point:
        """Where the move itself puts the mark from where the others stand: the truth where none of them moved."""
        if all(real[mark] == planned[mark] for mark in self.move.uses):
            return planned[self.mark]
        return self.move.place(real, exact)

    def found(self) -> tuple[Point, float]:
        """Return where it stands, and by how many metres its readings disagree."""
        if self.move.on_line:
            return self._on_line()
        if not self.read:
            return self._nearest(), 0.0
        if len(self.read) == 1:
            return self._on_circle(), 0.0
        self._refuse_weak()
        if len(self.read) == 2:
            return self._crossing(), 0.0
        point = _solved([_taped(*one) for one in self.read], self.begin)
        return point, max(abs(distance(point, other) - length) for other, length in self.read)

    def _on_line(self) -> tuple[Point, float]:
        ((origin, normal),) = self.lines
        way = Point(normal.y, -normal.x)
        if not self.read:
            return self.begin, 0.0
        misses = [_taped(*one) for one in self.read]
        t = way.dot(self.begin.minus(origin))
        for _ in range(_ROUNDS):
            rows = [miss(origin.plus(way, t)) for miss in misses]
            slopes = [grows.dot(way) for _off, grows in rows]
            weight = sum(slope * slope for slope in slopes)
            if weight < BLIND:
                raise NotFixed(self.mark)
            step = sum(slope * off for slope, (off, _grows) in zip(slopes, rows, strict=True)) / weight
            t -= step
            if abs(step) <= _STILL * max(abs(t), 1.0):
                break
        point = origin.plus(way, t)
        off = max(abs(miss(point)[0]) for miss in misses)
        if len(misses) == 1 and off > MEETS:
            raise DontMeet(self.mark)
        return point, off

    def _nearest(self) -> Point:
        """Nothing was read here: as near as can be to all that the sheet asks, from where the others stand."""
        if all(abs(miss(self.begin)[0]) <= _STILL for miss in self.soft):
            return self.begin
        return _solved(self.soft, self.begin) if len(self.soft) > 2 else self.begin

    def _on_circle(self) -> Point:
        """One reading: round its other end, to where all else comes nearest."""
        ((centre, radius),) = self.read
        way = self.begin.minus(centre)
        if not hypot(way.x, way.y):
            raise NotFixed(self.mark)
        turn = atan2(way.y, way.x)
        if not self.soft:
            raise NotFixed(self.mark)
        for _ in range(_ROUNDS):
            along = Point(-sin(turn), cos(turn))
            rows = [miss(centre.plus(Point(cos(turn), sin(turn)), radius)) for miss in self.soft]
            slopes = [radius * grows.dot(along) for _off, grows in rows]
            weight = sum(slope * slope for slope in slopes)
            if weight < (BLIND * radius) ** 2:
                raise NotFixed(self.mark)
            step = sum(slope * off for slope, (off, _grows) in zip(slopes, rows, strict=True)) / weight
            turn -= max(min(step, 0.2), -0.2)
            if abs(step) <= _STILL:
                break
        point = centre.plus(Point(cos(turn), sin(turn)), radius)
        if len(self.soft) == 1 and abs(self.soft[0](point)[0]) > MEETS:
            raise DontMeet(self.mark)
        return point

    def _crossing(self) -> Point:
        """Two readings: where both tapes meet, on the hand of the step."""
        (one, first), (other, second) = self.read
        left = other.minus(one).cross(self.begin.minus(one)) > 0
        point = cross_of_tapes(one, first, other, second, left)
        if point is None:
            gap = DontMeet(self.mark)
            gap.crossing = True
            raise gap
        return point

    def _refuse_weak(self) -> None:
        """Readings that are nearly in line say where a mark is along them, and hardly where across."""
        ways = [self._way(point) for point, _length in self.read]
        firm = _firmness(ways)
        if firm >= WEAK:
            return
        better = max(((_firmness([*ways, self._way(point)]), pair) for pair, point in self.left), default=(0.0, None))
        if firm < BLIND or (better[0] >= 2 * firm and not self.as_before):
            raise NotFixed(self.mark, better[1] if better[0] > firm else None)

    def _way(self, other: Point) -> Point:
        return _taped(other, 0.0)(self.begin)[1]


def _other(mark: str, start: str, end: str) -> str:
    """The mark at a reading's other end, empty where this one is at neither."""
    return end if start == mark else start if end == mark else ""


def _firmness(ways: Sequence[Point]) -> float:
    """How firmly readings along these ways fix a place: by how much the least telling of their mixes reads off, for a
    mark that is off by one."""
    xx, xy, yy = (sum(one.x * one.x for one in ways), sum(one.x * one.y for one in ways),
                  sum(one.y * one.y for one in ways))  # fmt: skip
    mean, half = (xx + yy) / 2, hypot((xx - yy) / 2, xy)
    return sqrt(max(mean - half, 0.0))


def _solved(misses: Sequence[Miss], begin: Point) -> Point:
    """Return the place with the least sum of squares, by damped Gauss-Newton from ``begin``."""
    point, damping = begin, 0.0
    least = sum(miss(point)[0] ** 2 for miss in misses)
    for _ in range(_ROUNDS):
        rows = [miss(point) for miss in misses]
        xx, xy, yy, x, y = 0.0, 0.0, 0.0, 0.0, 0.0
        for off, way in rows:
            xx, xy, yy = xx + way.x * way.x, xy + way.x * way.y, yy + way.y * way.y
            x, y = x + way.x * off, y + way.y * off
        xx, yy = xx + damping, yy + damping
        det = xx * yy - xy * xy
        if not det:
            damping = 1e-6
            continue
        step = Point(-(yy * x - xy * y) / det, -(xx * y - xy * x) / det)
        there = point.plus(step)
        sum_there = sum(miss(there)[0] ** 2 for miss in misses)
        if sum_there > least * (1 + 1e-12) and hypot(step.x, step.y) > 1e-12:
            damping = max(damping * 8, 1e-6)
            continue
        point, least, damping = there, sum_there, damping / 8 if damping > 1e-9 else 0.0
        if hypot(step.x, step.y) <= _STILL * max(hypot(point.x, point.y), 1.0):
            break
    return point
