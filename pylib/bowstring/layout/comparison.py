"""All methods side by side for one job, and which one to take."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.layout.changes import Change, changes_of
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row, row_of, spread_of
from bowstring.methods import catalogue

__all__ = ["Advice", "Change", "Row", "advise", "compare", "spread_of"]


def compare(layout: Layout, own: Row) -> list[Row]:
    """Return a row for each method, in the order of the catalogue; ``own``: that of the layout's method.

    Ordinates from the parallel string that a job names have a row of their own, after those from the chord.
    """
    rows: list[Row] = []
    for method in catalogue.METHODS:
        parallel = layout.parallel if method.stand.parallel else None
        if method is own.method and not own.parallel:
            rows.append(own)
        else:
            rows.append(row_of(layout, method, 0))
        if parallel:
            rows.append(own if own.parallel else row_of(layout, method, 0, parallel))
    return rows


@dataclass(frozen=True)
class Advice:
    """Which method to take, and why.

    Attributes:
        row: the method to take, or ``None`` when none is possible.
        reason: ``only`` possible one; ``plain``: the only one without an instrument or reckoning; ``fewest`` readings
            of those that are good enough; ``truest`` of those possible; ``none``.
        holds: whether its worst stake is within the tolerance at 95 %, ``None`` without one.
        rivals: how many others were good enough.
        changes: where nothing is possible, each single change that would do.
    """

    row: Row | None
    reason: str
    holds: bool | None
    rivals: int
    changes: tuple[Change, ...] = ()


def advise(layout: Layout, rows: Sequence[Row]) -> Advice:
    """Return which method to take.

    Only methods that are possible and whose figures can be relied on; those that need no instrument and don't build
    up their errors come first, as long as one of them holds the tolerance or none does. With a tolerance all that hold
    it are equally good, without one (or where none does) all whose expected miss is within a tape mark of the least;
    among those the one with the fewest readings, then the least miss. A method that is known to miss is never advised:
    the rule of thumb's readings are those of halving and its stakes aren't. Where no everyday method is possible,
    ordinates from smaller chords are looked at too.

    >>> from bowstring.job.job import read_job
    >>> from bowstring.layout.layout import lay_out
    >>> layout = lay_out(read_job({"unit": "m", "arc": {"chord": 40, "sagitta": 10}, "tape": {"length": 22}}))
    >>> advise(layout, compare(layout, row_of(layout, layout.method))).row.method.name
    'ordinates'
    """
    tolerance = layout.job.tolerance
    rows = _candidates(layout, rows)
    sound = [row for row in rows if row.sound]
    if not sound:
        return Advice(None, "none", None, 0, tuple(changes_of(layout, rows)))
    choice = _everyday_first(sound, tolerance)
    good, holds = _good(choice, tolerance, layout.job.tape.mark)
    best = min(good, key=lambda row: (row.measurements, row.expected))
    return Advice(best, _reason(best, len(good), len(choice), len(sound)), holds, len(good) - 1)


def _candidates(layout: Layout, rows: Sequence[Row]) -> list[Row]:
    """The rows that may be advised: those of a mix without its halving too, and mixes where nothing plain will do.

    Who names a parallel string wants it for a reason: then ordinates are from it, not from the chord.
    """
    found = [row for row in rows if row.method.exact and not _from_chord(layout, row)]
    if layout.setting.halve_first and not layout.parallel:
        found.append(row_of(layout, layout.method, halve_first=0))
    if not any(row.sound and row.method.everyday for row in found):
        found += _mixes(layout, found)
    return found


def _from_chord(layout: Layout, row: Row) -> bool:
    """Whether a row's ordinates are from the chord itself though the job names a parallel string."""
    return bool(layout.parallel and row.method.stand.parallel and not (row.parallel or row.halve_first))


def _everyday_first(sound: list[Row], tolerance: float | None) -> list[Row]:
    """The everyday ones alone, unless only another holds the tolerance."""
    everyday = [row for row in sound if row.method.everyday]
    if everyday and (tolerance is None or min(row.expected for row in everyday) <= tolerance
                     or min(row.expected for row in sound) > tolerance):  # fmt: skip
        return everyday
    return sound


def _good(rows: list[Row], tolerance: float | None, mark: float) -> tuple[list[Row], bool | None]:
    """Those that are good enough, and whether they hold the tolerance, if there is one."""
    holding = [row for row in rows if tolerance is not None and row.expected <= tolerance]
    least = min(row.expected for row in rows)
    good = holding or [row for row in rows if row.expected <= least + mark]
    return good, None if tolerance is None else bool(holding)


def _reason(best: Row, good: int, choice: int, possible: int) -> str:
    """Why the best of so many that are good, of a choice, of those possible."""
    if choice > 1:
        return "fewest" if good > 1 else "truest"
    return "only" if possible == 1 else "plain" if best.method.everyday else "truest"


def _mixes(layout: Layout, rows: Sequence[Row]) -> list[Row]:
    """Halve once or twice, then go on from the smaller chords; those that aren't among the rows."""
    there = [(row.method, row.halve_first) for row in rows]
    return [
        row_of(layout, method, halve_first=times)
        for method in catalogue.METHODS if method.stand.halve_first
        for times in (1, 2) if times < max(layout.levels, 2) and (method, times) not in there
    ]  # fmt: skip
