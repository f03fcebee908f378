"""All methods side by side for one job, and which one to take."""

from __future__ import annotations

from collections.abc import Generator, Sequence
from dataclasses import dataclass

from bowstring.layout.changes import Change, changes_of
from bowstring.layout.demand import Demand, decided, demand_of
from bowstring.layout.layout import Layout
from bowstring.layout.paused import finished
from bowstring.layout.rows import Row, row_of, spread_of
from bowstring.methods import catalogue

__all__ = ["Advice", "Change", "Row", "advise", "compare", "comparing", "spread_of"]


def compare(layout: Layout, own: Row) -> list[Row]:
    """Return a row for each method, in the order of the catalogue; ``own``: that of the layout's method.

    Ordinates from the parallel string that a job names have a row of their own, after those from the chord.
    """
    return finished(comparing(layout, own))


def comparing(layout: Layout, own: Row) -> Generator[Row, None, list[Row]]:
    """Do what ``compare`` does, with a pause after each method: gives its row."""
    rows: list[Row] = []
    for method in catalogue.METHODS:
        parallel = layout.parallel if method.stand.parallel else None
        if method is own.method and not own.parallel:
            rows.append(own)
        else:
            rows.append(row_of(layout, method, 0))
        if parallel:
            rows.append(own if own.parallel else row_of(layout, method, 0, parallel))
        yield rows[-1]
    return rows


@dataclass(frozen=True)
class Advice:
    """Which method to take, and why.

    Attributes:
        row: the method to take, or ``None`` when none is possible.
        reason: ``only`` possible one; ``plain``: the only one without an instrument or reckoning; ``fewest`` readings
            of those that are good enough; ``truest`` of those possible; ``none``.
        holds: whether its worst stake is within the tolerance at 95 %, ``None`` without one; fair: whether its least
            fair one is within that limit; decided: which of the two it hung on.
        rivals: how many others were good enough.
        changes: where nothing is possible, each single change that would do.
    """

    row: Row | None
    reason: str
    holds: bool | None
    rivals: int
    changes: tuple[Change, ...] = ()
    fair: bool | None = None
    decided: str | None = None


def advise(layout: Layout, rows: Sequence[Row]) -> Advice:
    """Return which method to take.

    Only methods that are possible and whose figures can be relied on; those that need no instrument and don't build
    up their errors come first, as long as one of them holds the tolerance or none does. With a tolerance all that hold
    it, and the fair curve through the neighbours, are equally good, without one (or where none does) all whose miss is
    within a tape mark of the least;
    among those the one with the fewest readings, then the least miss. A method that is known to miss is never advised:
    the rule of thumb's readings are those of halving and its stakes aren't. Where no everyday method is possible,
    ordinates from smaller chords are looked at too.

    >>> from bowstring.job.job import read_job
    >>> from bowstring.layout.layout import lay_out
    >>> layout = lay_out(read_job({"unit": "m", "arc": {"chord": 40, "sagitta": 10}, "tape": {"length": 22}}))
    >>> advise(layout, compare(layout, row_of(layout, layout.method))).row.method.name
    'ordinates'
    """
    demand = demand_of(layout.job)
    rows = _candidates(layout, rows)
    sound = [row for row in rows if row.sound]
    if not sound:
        return Advice(None, "none", None, 0, tuple(changes_of(layout, rows)))
    best, good, choice = _best(sound, demand, layout.job.tape.mark)
    reason = _reason(best, len(good), len(choice), len(sound))
    by_place, *_rest = _best(sound, demand.of_place, layout.job.tape.mark)
    return Advice(
        best, reason, demand.of_place.holds(best), len(good) - 1, (), demand.of_fair.holds(best),
        decided(demand, best, by_place),
    )  # fmt: skip


def _best(sound: list[Row], demand: Demand, mark: float) -> tuple[Row, list[Row], list[Row]]:
    """The row to take, those that are as good, and those that they were chosen from."""
    choice = _everyday_first(sound, demand)
    good = _good(choice, demand, mark)
    return min(good, key=lambda row: (row.measurements, row.expected)), good, choice


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


def _everyday_first(sound: list[Row], demand: Demand) -> list[Row]:
    """The everyday ones alone, unless only another holds what is asked."""
    everyday = [row for row in sound if row.method.everyday]
    if everyday and (any(demand.holds(row) for row in everyday) or not any(demand.holds(row) for row in sound)):
        return everyday
    return sound


def _good(rows: list[Row], demand: Demand, mark: float) -> list[Row]:
    """Those that hold what is asked, or those that come within a mark of the nearest to it."""
    least = min(demand.need(row) for row in rows)
    return [row for row in rows if demand.holds(row)] or [row for row in rows if demand.need(row) <= least + mark]


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
