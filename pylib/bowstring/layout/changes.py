"""Single changes that would make a method possible: a longer tape, more people, more room, no obstacle, more stakes,
a parallel string, another start."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil

from bowstring.analysis.reach import Limits, blocks_of, needs_of
from bowstring.errors import BadJob
from bowstring.job.job import Job
from bowstring.job.services import may_be_service
from bowstring.layout.layout import Layout, lay_out
from bowstring.layout.limits import limits_of
from bowstring.layout.rows import MOST_COMPARED, Row, measured, row_of, write
from bowstring.layout.strings import string_at
from bowstring.methods import catalogue
from bowstring.methods.method import Method
from bowstring.methods.setting import Parallel
from bowstring.units.sizes import FOOT

ROUND_TAPE = {True: 5 * FOOT, False: 1.0}
"""Metres: a longer tape is asked for in steps of 5 ft or 1 m."""

LONGEST_TAPE = 100.0
"""Metres: nobody has a longer tape (common practice, no source)."""

ROUND_ROOM = {True: FOOT / 2, False: 0.1}
"""Metres: more room is asked for in steps of 6 in or 0.1 m."""

ROUND_STRING = {True: 2 * FOOT, False: 0.5}
"""Metres: a parallel string is looked for in steps of 2 ft or 0.5 m."""

STRINGS_TRIED = 4
"""So many are tried on either side: what is farther off nobody squares from."""

FROM_STRAIGHTS = ("corner", "one-end")
"""The starts that set an end from a straight: what is in the way there needn't be in the way of the marked ends."""

MOST_FINER = 3
"""So many times may the gaps be halved to get by something: three make eight stakes of one."""


@dataclass(frozen=True)
class Change:
    """A single change that would make a method possible: a ``tape`` of ``size`` metres, an ``obstacle`` (``what``)
    moved, more ``hands``, more ``room`` (``what`` of ``size`` metres), more ``levels`` (stakes ``size`` metres apart),
    a ``string`` parallel to the chord (``size`` metres ``toward`` the curve or ``behind`` the chord), another ``start``
    (``what``: as a job says it).

    ``halve_first``: how often the arc is halved before, where the method is a mix; ``parallel``: the string that its
    ordinates are from, where it isn't the chord.
    """

    kind: str
    what: str
    size: float
    method: Method
    halve_first: int = 0
    parallel: Parallel | None = None


def changes_of(layout: Layout, rows: Sequence[Row]) -> list[Change]:
    """Every single change that makes some method possible; one of a kind and place each: everyday methods first, then
    the least change."""
    found: dict[tuple[str, str], Change] = {}

    def weight(change: Change) -> tuple[bool, float]:
        return not change.method.everyday, change.size

    rows = sorted(rows, key=lambda row: not row.method.everyday)
    relied = [row for row in rows if row.accuracy is not None and row.accuracy.reliable]
    for change in (
        *_started(layout), *_beside(layout), *_of_tools(layout, relied), *_moved(layout, relied), *_finer(layout, rows)
    ):  # fmt: skip
        before = found.get((change.kind, change.what))
        if before is None or weight(change) < weight(before):
            found[change.kind, change.what] = change
    return list(found.values())


def _started(layout: Layout) -> Iterator[Change]:
    """The other ways to find the ends, where the job starts from a corner or from one end and its straight and
    something is in the way of just that."""
    job = layout.job
    if job.start not in FROM_STRAIGHTS:
        return
    if next(blocks_of(layout.setting.arc, layout.recipe_of_ends, limits_of(job)), None) is None:
        return
    for start in ("ends", *(one for one in FROM_STRAIGHTS if one != job.start)):
        try:
            other = lay_out(Job(**{**vars(job), "start": start}))
        except BadJob:
            continue  # no corner, or a method that needs what this start has
        found = next((row for row in _plain_rows(other) if row.sound), None)
        if found:
            yield Change("start", start, 0.0, found.method, 0, found.parallel)


def _plain_rows(layout: Layout) -> Iterator[Row]:
    """Each method that keeps to the arc, everyday ones first, from the parallel string that the job names too."""
    for method in catalogue.METHODS:
        if method.exact:
            if layout.parallel and method.stand.parallel:
                yield row_of(layout, method, 0, layout.parallel)
            yield row_of(layout, method, 0)


def _beside(layout: Layout) -> Iterator[Change]:
    """A string parallel to the chord, the nearest that will do beyond the curve and behind the chord, where the job
    names none."""
    job, arc = layout.job, layout.setting.arc
    if layout.parallel or any(one.stand.parallel and one.hands > job.site.hands for one in catalogue.METHODS):
        return
    step = ROUND_STRING[job.tape.feet]
    first = ceil(arc.sagitta / step + 1e-6)
    for what, steps in (("toward", range(first, first + STRINGS_TRIED)), ("behind", range(-1, -1 - STRINGS_TRIED, -1))):
        for count in steps:
            parallel = string_at(job, layout.setting, count * step)
            found = [row for method in catalogue.METHODS if method.stand.parallel
                     if (row := row_of(layout, method, 0, parallel)).sound]  # fmt: skip
            if found:
                yield Change("string", what, abs(count * step), found[0].method, 0, parallel)
                break


def _of_tools(layout: Layout, rows: Sequence[Row]) -> Iterator[Change]:
    """More people, a longer tape or more room, where nothing else is in a method's way."""
    feet = layout.job.tape.feet
    for row in rows:
        kinds = {block.kind for block in row.blocks}
        if row.few_hands:
            if not kinds:
                yield Change("hands", "", float(row.method.hands), row.method, row.halve_first, row.parallel)
            continue
        assert row.recipe is not None
        if kinds == {"tape"}:
            size = _rounded_up(needs_of(layout.setting.arc, row.recipe)["tape"], ROUND_TAPE[feet])
            if size <= LONGEST_TAPE:
                yield Change("tape", "", size, row.method, row.halve_first, row.parallel)
        elif len(kinds) == 1 and kinds <= {"behind", "inside", "outside"}:
            kind = next(iter(kinds))
            size = _rounded_up(needs_of(layout.setting.arc, row.recipe)[kind], ROUND_ROOM[feet])
            yield Change("room", kind, size, row.method, row.halve_first, row.parallel)


def _rounded_up(size: float, step: float) -> float:
    """Return the next whole number of steps, but for a float's dust."""
    return ceil(size / step - 1e-6) * step


def _moved(layout: Layout, rows: Sequence[Row]) -> Iterator[Change]:
    """One obstacle out of the way, where that alone stops a method: whether on both sides of a triangle, or on one.

    Never what may be a service: that isn't a crew's to move.
    """
    limits = limits_of(layout.job)
    for obstacle in limits.obstacles:
        if may_be_service(obstacle.name):
            continue
        others = [one for one in limits.obstacles if one is not obstacle]
        rest = Limits(limits.tape, limits.room, others, limits.kit, limits.clear)
        for row in rows:
            if row.recipe is None or row.few_hands or not _perhaps_by(row, obstacle.name):
                continue
            if next(blocks_of(layout.setting.arc, row.recipe, rest), None) is None:
                yield Change("obstacle", obstacle.name, 0.0, row.method, row.halve_first, row.parallel)
                break


def _perhaps_by(row: Row, name: str) -> bool:
    """Whether nothing else stops a method; on a triangle's other side there may be something that isn't named."""
    return all(block.what == name or block.kind.startswith("triangle") for block in row.blocks)


def _finer(layout: Layout, rows: Sequence[Row]) -> Iterator[Change]:
    """More stakes, for methods that go on from the stake before."""
    arc, limits = layout.setting.arc, limits_of(layout.job)
    for row in rows:
        if not row.method.chained or row.few_hands or row.recipe is None:
            continue
        if any(row.recipe.steps[block.step - 1].stake is None for block in row.blocks):
            continue  # what comes before the stakes is in the way however many there are
        for times in range(1, min(MOST_FINER, MOST_COMPARED - layout.levels) + 1):
            written = write(layout, row.method, 0, finer=times)
            if isinstance(written, str) or next(blocks_of(arc, written.recipe, limits), None) is not None:
                continue
            if measured(layout, row.method, written).sound:
                gap = arc.part(written.driven - 1).chord
                yield Change("levels", "", _rounded_up(gap, layout.job.tape.mark), row.method)
                break
