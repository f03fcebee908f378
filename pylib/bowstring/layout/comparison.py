"""All methods side by side for one job: which are possible on this ground, how true each will be, which one to take."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil, inf

from bowstring.analysis.accuracy import Accuracy, accuracy_of
from bowstring.analysis.error_model import ErrorModel, error_model
from bowstring.analysis.reach import Blocked, Limits, blocks_of, longest_pull, measurements_of, needs_of
from bowstring.analysis.replay import TooSmall, misses, replay
from bowstring.analysis.squaring import METRIC_BLADE, SQUARE_BLADE
from bowstring.construction import Recipe, Stake
from bowstring.errors import BadJob
from bowstring.job.job import Job
from bowstring.layout.layout import Layout, stakes_of_method
from bowstring.methods.catalogue import METHODS, Method, recipe_of, stakes_for, why_none
from bowstring.methods.setting import Setting
from bowstring.units.sizes import FOOT

MOST_COMPARED = 7
"""Levels: of longer layouts the other methods are looked at with so many halvings' stakes; nobody sets more by hand."""

ROUND_TAPE = {True: 5 * FOOT, False: 1.0}
"""Metres: a longer tape is asked for in steps of 5 ft or 1 m."""

LONGEST_TAPE = 100.0
"""Metres: nobody has a longer tape (common practice, no source)."""

ROUND_ROOM = {True: FOOT / 2, False: 0.1}
"""Metres: more room is asked for in steps of 6 in or 0.1 m."""

MOST_FINER = 3
"""So many times may the gaps be halved to get by something: three make eight stakes of one."""

FROM_NEIGHBOUR = ("centre", "produced", "angles")
"""Methods that tape each stake from the one before: a shorter gap is a shorter pull, and one nearer to the arc. What
all others measure, a finer layout measures too."""


@dataclass(frozen=True)
class Row:
    """One method for a job.

    Attributes:
        none: the key of the sentence that says why there is no such layout for this arc, or ``None``.
        blocks: what the ground, the tape or the room doesn't allow.
        few_hands: whether it takes more people than there are.
        stakes: how many layout points, the ends included; recipe: how they are set, ``None`` where it can't be.
        measurements, longest_pull: readings, and metres.
        behind: how far its marks reach behind the chord, metres.
        shift: metres, the largest known miss: of the shown numbers, and of the rule of thumb.
        accuracy: how true its stakes will be.
    """

    method: Method
    halve_first: int
    none: str | None
    blocks: tuple[Blocked, ...] = ()
    few_hands: bool = False
    stakes: int = 0
    recipe: Recipe | None = None
    measurements: int = 0
    longest_pull: float = 0.0
    behind: float = 0.0
    shift: float = 0.0
    errors: ErrorModel | None = None
    accuracy: Accuracy | None = None

    @property
    def possible(self) -> bool:
        """Whether it can be done here, by these people."""
        return self.none is None and not self.blocks and not self.few_hands

    @property
    def expected(self) -> float:
        """Metres: what the worst stake stays within at 95 %, the known shift included."""
        return self.accuracy.miss_95 + self.shift if self.accuracy else inf

    @property
    def sound(self) -> bool:
        """Whether it is possible and its figures can be relied on."""
        return self.possible and self.accuracy is not None and self.accuracy.reliable


def limits_of(job: Job) -> Limits:
    """Return what there is on the site of a job."""
    return Limits(job.site.tape_length, job.site.room, job.site.obstacles)


def known_errors(job: Job) -> dict[str, float]:
    """Return the standard deviations of the marks that aren't exact, the ends included, metres."""
    return {mark.name: mark.sigma for mark in job.site.known if mark.sigma}


def spread_of(job: Job, setting: Setting, recipe: Recipe, stakes: Sequence[Stake]) -> tuple[ErrorModel, Accuracy]:
    """Return the error model at a recipe's longest pull, and how true its stakes will be."""
    tape, site = job.tape, job.site
    errors = error_model(tape.mark, tape.feet, site.tape_class, longest_pull(recipe), site.errors)
    blade = SQUARE_BLADE if tape.feet else METRIC_BLADE
    return errors, accuracy_of(setting.arc, recipe, stakes, errors, known=known_errors(job), blade=blade)


def compare(layout: Layout, own: Row) -> list[Row]:
    """Return a row for each method, in the order of the catalogue; ``own``: that of the layout's method."""
    return [own if method is own.method else row_of(layout, method) for method in METHODS]


@dataclass(frozen=True)
class _Written:
    """A method's recipe for a job: ``driven`` stakes, of which ``stakes`` are looked at."""

    setting: Setting
    stakes: Sequence[Stake]
    driven: int
    recipe: Recipe


def _write(layout: Layout, method: Method, halve_first: int, finer: int = 0) -> _Written | str:
    """Return a method's recipe, or the key of the sentence that says why there is none.

    ``finer``: every gap halved so often.
    """
    job, levels = layout.job, layout.levels + finer
    own = method is layout.method and not finer
    setting = layout.setting.halved_first(halve_first)
    if own and halve_first == layout.setting.halve_first:
        return _Written(setting, layout.stakes, len(layout.stakes), layout.recipe)
    try:
        if finer:
            stakes = stakes_for(method, setting, levels=levels, spacing=None)
        else:
            stakes = stakes_of_method(method, job, setting, levels, plain=not own)
    except BadJob:
        return "too_many"
    none = why_none(method, setting, stakes)
    if none:
        return none
    driven = len(stakes)
    if driven > 2**MOST_COMPARED + 1:
        stakes, levels = stakes_for(method, setting, levels=MOST_COMPARED, spacing=None), MOST_COMPARED
    ready = Recipe(layout.recipe_of_ends.at)
    ready.steps = list(layout.recipe_of_ends.steps)
    return _Written(setting, stakes, driven, recipe_of(method, setting, stakes, levels, ready))


def row_of(layout: Layout, method: Method, halve_first: int | None = None) -> Row:
    """Return what a method would be for a layout's job; ``halve_first`` stands in for the job's own."""
    mixed = (layout.setting.halve_first if method is layout.method else 0) if halve_first is None else halve_first
    written = _write(layout, method, mixed)
    return Row(method, mixed, written) if isinstance(written, str) else _row(layout, method, mixed, written)


def _row(layout: Layout, method: Method, mixed: int, written: _Written) -> Row:
    job, setting, stakes, recipe = layout.job, written.setting, written.stakes, written.recipe
    try:
        shifts = misses(setting.arc, stakes, replay(recipe, job.tape.round))
    except TooSmall:
        return Row(method, mixed, "too_small")
    errors, accuracy = spread_of(job, setting, recipe, stakes)
    each = measurements_of(recipe.steps[-1:]) - (method.name == "centre")  # its radius stays on the tape
    return Row(
        method=method,
        halve_first=mixed,
        none=None,
        blocks=tuple(blocks_of(setting.arc, recipe, limits_of(job))),
        few_hands=method.hands > job.site.hands,
        stakes=written.driven,
        recipe=recipe,
        measurements=measurements_of(recipe.steps) + (written.driven - len(stakes)) * each,
        longest_pull=longest_pull(recipe),
        behind=max(-min(point.y for point in recipe.at.values()), 0.0),
        shift=abs(shifts.worst),
        errors=errors,
        accuracy=accuracy,
    )


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


@dataclass(frozen=True)
class Change:
    """A single change that would make a method possible: a ``tape`` of ``size`` metres, an ``obstacle`` (``what``)
    moved, more ``hands``, more ``room`` (``what`` of ``size`` metres), more ``levels`` (stakes ``size`` metres apart).

    ``halve_first``: how often the arc is halved before, where the method is a mix.
    """

    kind: str
    what: str
    size: float
    method: Method
    halve_first: int = 0


def advise(layout: Layout, rows: Sequence[Row]) -> Advice:
    """Return which method to take.

    Only methods that are possible and whose figures can be relied on; those that need no instrument and don't build
    up their errors come first, as long as one of them holds the tolerance or none does. With a tolerance all that hold
    it are equally good, without one (or where none does) all whose expected miss is within a tape mark of the least;
    among those the one with the fewest readings, then the least miss. The rule of thumb is never advised: its readings
    are those of halving and its stakes aren't. Where no everyday method is possible, ordinates from smaller chords are
    looked at too.
    """
    tolerance, mark = layout.job.tolerance, layout.job.tape.mark
    rows = [row for row in rows if row.method.name != "rule"]
    if layout.setting.halve_first:
        rows.append(row_of(layout, layout.method, halve_first=0))
    if not any(row.sound and row.method.everyday for row in rows):
        rows += _mixes(layout, rows)
    sound = [row for row in rows if row.sound]
    if not sound:
        return Advice(None, "none", None, 0, tuple(_changes(layout, rows)))
    possible = len(sound)
    everyday = [row for row in sound if row.method.everyday]
    if everyday and (tolerance is None or min(row.expected for row in everyday) <= tolerance
                     or min(row.expected for row in sound) > tolerance):  # fmt: skip
        sound = everyday
    holding = [row for row in sound if tolerance is not None and row.expected <= tolerance]
    least = min(row.expected for row in sound)
    good = holding or [row for row in sound if row.expected <= least + mark]
    best = min(good, key=lambda row: (row.measurements, row.expected))
    if len(sound) == 1:
        reason = "only" if possible == 1 else "plain" if best.method.everyday else "truest"
    else:
        reason = "fewest" if len(good) > 1 else "truest"
    return Advice(best, reason, None if tolerance is None else bool(holding), len(good) - 1)


def _mixes(layout: Layout, rows: Sequence[Row]) -> list[Row]:
    """Halve once or twice, then ordinates from the smaller chords; those that aren't among the rows."""
    ordinates = next(row.method for row in rows if row.method.name == "ordinates")
    there = {row.halve_first for row in rows if row.method is ordinates}
    return [
        row_of(layout, ordinates, halve_first=times)
        for times in (1, 2) if times < max(layout.levels, 2) and times not in there
    ]  # fmt: skip


def _changes(layout: Layout, rows: Sequence[Row]) -> list[Change]:
    """Every single change that makes some method possible; one of a kind and place each: everyday methods first, then
    the least change."""
    found: dict[tuple[str, str], Change] = {}

    def weight(change: Change) -> tuple[bool, float]:
        return not change.method.everyday, change.size

    rows = sorted(rows, key=lambda row: not row.method.everyday)
    relied = [row for row in rows if row.accuracy is not None and row.accuracy.reliable]
    for change in (*_of_tools(layout, relied), *_moved(layout, relied), *_finer(layout, rows)):
        before = found.get((change.kind, change.what))
        if before is None or weight(change) < weight(before):
            found[change.kind, change.what] = change
    return list(found.values())


def _of_tools(layout: Layout, rows: Sequence[Row]) -> Iterator[Change]:
    """More people, a longer tape or more room, where nothing else is in a method's way."""
    feet = layout.job.tape.feet
    for row in rows:
        kinds = {block.kind for block in row.blocks}
        if row.few_hands:
            if not kinds:
                yield Change("hands", "", row.method.hands, row.method, row.halve_first)
            continue
        assert row.recipe is not None
        if kinds == {"tape"}:
            size = _rounded_up(needs_of(layout.setting.arc, row.recipe)["tape"], ROUND_TAPE[feet])
            if size <= LONGEST_TAPE:
                yield Change("tape", "", size, row.method, row.halve_first)
        elif len(kinds) == 1 and kinds <= {"behind", "inside", "outside"}:
            kind = next(iter(kinds))
            size = _rounded_up(needs_of(layout.setting.arc, row.recipe)[kind], ROUND_ROOM[feet])
            yield Change("room", kind, size, row.method, row.halve_first)


def _rounded_up(size: float, step: float) -> float:
    """Return the next whole number of steps, but for a float's dust."""
    return ceil(size / step - 1e-6) * step


def _moved(layout: Layout, rows: Sequence[Row]) -> Iterator[Change]:
    """One obstacle out of the way, where that alone stops a method: whether on both sides of a triangle, or on one."""
    limits = limits_of(layout.job)
    for obstacle in limits.obstacles:
        rest = Limits(limits.tape, limits.room, [one for one in limits.obstacles if one is not obstacle])
        for row in rows:
            if row.recipe is None or row.few_hands or not _perhaps_by(row, obstacle.name):
                continue
            if next(blocks_of(layout.setting.arc, row.recipe, rest), None) is None:
                yield Change("obstacle", obstacle.name, 0.0, row.method, row.halve_first)
                break


def _perhaps_by(row: Row, name: str) -> bool:
    """Whether nothing else stops a method; on a triangle's other side there may be something that isn't named."""
    return all(block.what == name or block.kind == "triangle" for block in row.blocks)


def _finer(layout: Layout, rows: Sequence[Row]) -> Iterator[Change]:
    """More stakes, for methods that go on from the stake before."""
    arc, limits = layout.setting.arc, limits_of(layout.job)
    for row in rows:
        if row.method.name not in FROM_NEIGHBOUR or row.few_hands or row.recipe is None:
            continue
        if any(row.recipe.steps[block.step - 1].stake is None for block in row.blocks):
            continue  # what comes before the stakes is in the way however many there are
        for times in range(1, min(MOST_FINER, MOST_COMPARED - layout.levels) + 1):
            written = _write(layout, row.method, 0, times)
            if isinstance(written, str) or next(blocks_of(arc, written.recipe, limits), None) is not None:
                continue
            if _row(layout, row.method, 0, written).sound:
                gap = arc.part(written.driven - 1).chord
                yield Change("levels", "", _rounded_up(gap, layout.job.tape.mark), row.method)
                break
