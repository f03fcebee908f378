"""How far every mark may be off, source by source: what the moves' own spreads are put together from.

Each thing that can go wrong is a source with a standard deviation of 1; each mark carries by how much each source moves
it, in metres. A mark that is set from others takes over what moves those, so whatever two stakes have in common is in
both.

The second-order part of each move (the curvature of its circles, the cosine of its turns) is estimated beside, as the
shift of the mean that the marks' own scatter causes: where it isn't small beside the scatter, the first order isn't to
be relied on.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Protocol

from bowstring.construction.marks import Marks
from bowstring.geometry.plane import Point, left_of

SCALE = 0
"""The source that all pulls share."""

Shifts = dict[int, tuple[float, float]]
"""How each source, by its number, moves a mark at one standard deviation: metres in x and y."""

NO_SHIFT = (0.0, 0.0)


class Errors(Protocol):
    """Standard deviations: metres; ``scale`` a part of one; ``angle`` radians; ``pull`` is both ends' readings."""

    @property
    def read(self) -> float: ...

    @property
    def pull(self) -> float: ...

    @property
    def scale(self) -> float: ...

    @property
    def stake(self) -> float: ...

    @property
    def line(self) -> float: ...

    @property
    def angle(self) -> float: ...


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


class Scatter(ABC):
    """What every mark of a construction may be off, source by source.

    ``shifts`` and ``mean_shift`` hold, by mark, what each source moves it by and the shift of its mean, metres. A
    move's ``spread`` returns the first for its mark and sets the second.
    """

    def __init__(self, at: Marks, errors: Errors, known: Mapping[str, float]) -> None:
        """``known``: the standard deviation in x and in y of marks that aren't exact, metres."""
        self.at = at
        self.errors = errors
        self.sources = [Source("scale", errors.scale)]
        self.shifts: dict[str, Shifts] = {}
        self.mean_shift: dict[str, Point] = {}
        for mark in at:
            self.shifts[mark] = {}
            if known.get(mark):
                self.add_in_x_and_y(self.shifts[mark], Source("known", known[mark], mark=mark))

    @abstractmethod
    def turn_of_square(self, mark: str) -> float:
        """Return the deviation in radians of the offset to a mark that is squared off a string."""

    def add(self, shifts: Shifts, source: Source, way: Point) -> None:
        """A source of its own: ``way`` is where the mark goes for one metre (or radian) of it."""
        shifts[len(self.sources)] = (way.x * source.size, way.y * source.size)
        self.sources.append(source)

    def add_in_x_and_y(self, shifts: Shifts, source: Source) -> None:
        """A source in x and another like it in y."""
        self.add(shifts, source, Point(1.0, 0.0))
        self.add(shifts, source, Point(0.0, 1.0))

    def add_pull(self, shifts: Shifts, start: str, mark: str, way: Point) -> None:
        """The readings at both ends of a tape held at ``start`` that goes along ``way``."""
        self.add(shifts, Source("read", self.errors.pull, start, mark, mark), way)

    def add_scale(self, shifts: Shifts, way: Point, length: float) -> None:
        """What the tape's scale does to ``length`` metres along ``way``."""
        part = length * self.errors.scale
        if part:
            _add_shift(shifts, SCALE, way, part)

    def turning(self, start: str, end: str, across: Point, part: float, way: Point) -> Shifts:
        """What a line's turning does: ``part`` of how far its end goes across it beyond its start, along ``way``."""
        shifts: Shifts = {}
        for mark, sign in ((end, part), (start, -part)):
            for source, (x, y) in self.shifts[mark].items():
                _add_shift(shifts, source, way, sign * (across.x * x + across.y * y))
        return shifts

    def turn_variance(self, start: str, end: str, across: Point, whole: float) -> float:
        """The variance in square radians of the direction of a line of ``whole`` metres."""
        one, other = self.shifts[start], self.shifts[end]
        return sum(
            (across.x * (other.get(source, NO_SHIFT)[0] - one.get(source, NO_SHIFT)[0])
             + across.y * (other.get(source, NO_SHIFT)[1] - one.get(source, NO_SHIFT)[1])) ** 2
            for source in one.keys() | other.keys()
        ) / (whole * whole)  # fmt: skip

    def mean_shift_of(self, mark: str) -> Point:
        """The shift of a mark's mean, metres."""
        return self.mean_shift.get(mark, Point(0.0, 0.0))

    def solved(
        self,
        mark: str,
        rows: tuple[Point, Point],
        pulls: tuple[tuple[str | None, float], ...],
        given: tuple[tuple[int, Shifts], ...] = (),
    ) -> Shifts:
        """A mark held by two conditions: row · (its shift) = what moves the condition. A pull's condition moves with
        the mark that it is held at, its reading and the scale; ``given`` are the shifts of those that are no pull."""
        (a, b), det = rows, rows[0].cross(rows[1])
        # The shifts that meet one condition by a metre and leave the other alone.
        ways = (Point(b.y / det, -b.x / det), Point(-a.y / det, a.x / det))
        shifts: Shifts = {}
        for (held, length), row, way in zip(pulls, rows, ways, strict=True):
            if held is None:
                continue
            for source, shift in self.shifts[held].items():
                _add_shift(shifts, source, way, row.x * shift[0] + row.y * shift[1])
            self.add_pull(shifts, held, mark, way)
            self.add_scale(shifts, way, length)
        for number, moved_sway in given:
            row, way = rows[number], ways[number]
            for source, shift in moved_sway.items():
                _add_shift(shifts, source, way, row.x * shift[0] + row.y * shift[1])
        mean_shift = Point(0.0, 0.0)
        for (held, length), row, way in zip(pulls, rows, ways, strict=True):
            if held is None:
                continue
            # Aside of its tape the mark comes down the tape's circle: the square of it over twice the length.
            side = left_of(row)
            aside = sum(
                (side.x * (x - self.shifts[held].get(source, NO_SHIFT)[0])
                 + side.y * (y - self.shifts[held].get(source, NO_SHIFT)[1])) ** 2
                for source, (x, y) in shifts.items()
            )  # fmt: skip
            mean_shift = mean_shift.plus(way, row.dot(self.mean_shift_of(held)) - aside / (2 * length))
        self.mean_shift[mark] = mean_shift
        return shifts


def _add_shift(shifts: Shifts, source: int, way: Point, by: float) -> None:
    """Let a source move a mark by so many metres more along ``way``."""
    before = shifts.get(source, NO_SHIFT)
    shifts[source] = (before[0] + way.x * by, before[1] + way.y * by)


def weighted_sum(*parts: tuple[float, Shifts]) -> Shifts:
    """Return the sum of shifts, each with its weight."""
    shifts: Shifts = {}
    for weight, part in parts:
        if not shifts and weight == 1.0:
            shifts = dict(part)
            continue
        for source, (x, y) in part.items():
            before = shifts.get(source, NO_SHIFT)
            shifts[source] = (before[0] + weight * x, before[1] + weight * y)
    return shifts


def projected(shifts: Shifts, way: Point) -> Shifts:
    """Return the part of each shift that goes along a unit vector."""
    return {source: (way.x * (part := way.x * x + way.y * y), way.y * part) for source, (x, y) in shifts.items()}


def mean_of(one: Point, other: Point) -> Point:
    """Return half of one shift and half of the other."""
    return Point(0.5 * one.x + 0.5 * other.x, 0.5 * one.y + 0.5 * other.y)
