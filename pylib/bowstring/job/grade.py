"""The tops of the slab's forms, as a job says them; no stake of the layout hangs on any of it."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.job.reader import Reader
from bowstring.job.terms import SLOPE_ALONG
from bowstring.units.slopes import STEEPEST

SIDES = ("inside", "outside", "left", "right")
"""The two edges of a slab: of a curve, or for who walks along the line."""

MOST_GROUND, NAME = 200, 40


@dataclass(frozen=True)
class GroundRead:
    """A height that was measured of the ground, metres, in the same levels as the tops; ``edge``: one of ``SIDES``."""

    stake: str
    edge: str
    level: float


@dataclass(frozen=True)
class GradeSaid:
    """What is said of the tops; heights in metres, slopes as rise over run.

    Attributes:
        start: the top at A on the outer edge, 0 where it isn't said: all others are told above it; end: at B.
        slope: along the center line, never negative; high: the end that is higher, never assumed.
        on_line: it runs along the drawn line instead.
        cross: across the slab; low: the edge that is lower, of ``SIDES``; crown: how far the middle stands over both.
        most_running, most_cross: what the job allows; demanded: past them the sheet stops.
        instrument: the height of the instrument.
    """

    start: float | None = None
    end: float | None = None
    slope: float | None = None
    high: str | None = None
    cross: float | None = None
    low: str | None = None
    crown: float | None = None
    most_running: float | None = None
    most_cross: float | None = None
    demanded: bool = False
    instrument: float | None = None
    on_line: bool = False
    ground: tuple[GroundRead, ...] = ()


def read_grade(reader: Reader, *, fills: bool) -> GradeSaid:
    """Return what a job says of the tops; ``fills``: its slab has one edge. Raises ``BadJob``."""
    keys = ("from", "to", "slope", "high", "cross", "low", "crown", "limit", "cross_limit", "stops", "instrument",
            "ground", "along")  # fmt: skip
    grade = reader.inside("grade", keys)
    if grade is None:
        return GradeSaid()
    rows = grade.rows("ground", MOST_GROUND)
    return GradeSaid(
        start=_level(grade, "from"),
        end=_level(grade, "to"),
        slope=grade.slope("slope", STEEPEST),
        high=grade.choice("high", ("A", "B")),
        cross=grade.slope("cross", STEEPEST),
        low=grade.choice("low", SIDES),
        crown=grade.length("crown", bare=False),
        most_running=grade.slope("limit", STEEPEST),
        most_cross=grade.slope("cross_limit", STEEPEST),
        demanded=bool(grade.flag("stops")),
        instrument=_level(grade, "instrument"),
        on_line=grade.choice("along", SLOPE_ALONG) is not None,
        ground=_all_ground(grade, [_ground(grade, row, one, fills=fills) for row, one in enumerate(rows)]),
    )


def _all_ground(grade: Reader, rows: list[GroundRead]) -> tuple[GroundRead, ...]:
    """The heights of the ground, none of a place that has one already: nobody knows which of two holds."""
    for row, one in enumerate(rows):
        if any((one.stake, one.edge) == (other.stake, other.edge) for other in rows[:row]):
            raise bad(grade.field(f"ground[{row}].stake"), "job.ground_twice", stake=one.stake)
    return tuple(rows)


def _ground(grade: Reader, row: int, value: object, *, fills: bool) -> GroundRead:
    one = grade.within(f"ground[{row}]", value, ("stake", "edge", "level"))
    stake, level = one.text("stake", NAME), _level(one, "level")
    edge = one.choice("edge", SIDES) or ("outside" if fills else None)  # such a slab has one edge
    if fills and edge == "inside":
        raise bad(one.field("edge"), "job.ground_inside")
    if not stake or edge is None or level is None:
        raise bad(one.field("stake" if not stake else "edge" if edge is None else "level"), "job.ground_half")
    return GroundRead(stake, edge, level)


def _level(reader: Reader, name: str) -> float | None:
    return reader.coordinate(name, reader.job[name]) if name in reader.job else None
