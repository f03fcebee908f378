"""All methods side by side for one job: which are possible on this ground, how true each will be, which one to take."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf

from bowstring.construction import Recipe, Stake
from bowstring.errors import BadJob
from bowstring.job import Job
from bowstring.layout import Layout, stakes_of_method
from bowstring.methods.catalogue import METHODS, Method, recipe_of, stakes_for, why_none
from bowstring.methods.setting import Setting
from bowstring.walks.accuracy import Accuracy, accuracy_of
from bowstring.walks.errors import Errors, errors_of
from bowstring.walks.reach import Blocked, Limits, blocks_of, longest_pull, measurements_of, needs_of
from bowstring.walks.replay import TooSmall, misses, replay
from bowstring.walks.squaring import METRIC_BLADE, SQUARE_BLADE

MOST_COMPARED = 7
"""Levels: of longer layouts the other methods are looked at with so many halvings' stakes; nobody sets more by hand."""

ROUND_TAPE = {True: 0.3048 * 5, False: 1.0}
"""Metres: a longer tape is asked for in steps of 5 ft or 1 m."""


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
    errors: Errors | None = None
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


def spread_of(job: Job, setting: Setting, recipe: Recipe, stakes: Sequence[Stake]) -> tuple[Errors, Accuracy]:
    """Return the error model at a recipe's longest pull, and how true its stakes will be."""
    tape, site = job.tape, job.site
    errors = errors_of(tape.mark, tape.feet, site.tape_class, longest_pull(recipe), site.errors)
    blade = SQUARE_BLADE if tape.feet else METRIC_BLADE
    return errors, accuracy_of(setting.arc, recipe, stakes, errors, known=known_errors(job), blade=blade)


def compare(layout: Layout, limits: Limits | None = None) -> list[Row]:
    """Return a row for each method, in the order of the catalogue; ``limits`` stand in for the job's own."""
    return [row_of(layout, method, limits) for method in METHODS]


def row_of(layout: Layout, method: Method, limits: Limits | None = None, halve_first: int | None = None) -> Row:
    """Return what a method would be for a layout's job."""
    job, setting = layout.job, layout.setting
    own = method is layout.method
    mixed = (setting.halve_first if own else 0) if halve_first is None else halve_first
    setting = setting.halved_first(mixed)
    try:
        stakes = layout.stakes if own and mixed == layout.setting.halve_first else (
            stakes_of_method(method, job, setting, layout.levels, plain=not own)
        )
    except BadJob:
        return Row(method, mixed, "too_many")
    none = why_none(method, setting, stakes)
    if none:
        return Row(method, mixed, none)
    driven = len(stakes)
    if own and mixed == layout.setting.halve_first:
        recipe = layout.recipe
    else:
        if driven > 2**MOST_COMPARED + 1:
            stakes = stakes_for(method, setting, levels=MOST_COMPARED, spacing=None)
        ready = Recipe(layout.recipe_of_ends.at)
        ready.steps = list(layout.recipe_of_ends.steps)
        recipe = recipe_of(method, setting, stakes, MOST_COMPARED if driven > len(stakes) else layout.levels, ready)
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
        blocks=tuple(blocks_of(setting.arc, recipe, limits or limits_of(job))),
        few_hands=method.hands > job.site.hands,
        stakes=driven,
        recipe=recipe,
        measurements=measurements_of(recipe.steps) + (driven - len(stakes)) * each,
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
        reason: ``only`` possible one; ``fewest`` readings of those that are good enough; ``truest`` of those possible;
            ``none``.
        holds: whether its worst stake is within the tolerance at 95 %, ``None`` without one.
        rivals: how many others were good enough.
        changes: where nothing is possible, each single change that would do: its kind, what, and the method.
    """

    row: Row | None
    reason: str
    holds: bool | None
    rivals: int
    changes: tuple[Change, ...] = ()


@dataclass(frozen=True)
class Change:
    """A single change that would make a method possible: a ``tape`` of ``size`` metres, an obstacle (``what``) moved,
    more ``hands``, more ``room`` (``what`` of ``size`` metres)."""

    kind: str
    what: str
    size: float
    method: Method


def advise(layout: Layout, rows: Sequence[Row]) -> Advice:
    """Return which method to take.

    Only methods that are possible and whose figures can be relied on; those that need no instrument and don't build
    up their errors come first, as long as one of them holds the tolerance or none does. With a tolerance all that hold
    it are equally good, without one (or where none does) all whose expected miss is within a tape mark of the least;
    among those the one with the fewest readings, then the least miss. The rule of thumb is never advised: its readings
    are those of halving and its stakes aren't.
    """
    tolerance, mark = layout.job.tolerance, layout.job.tape.mark
    sound = [row for row in rows if row.sound and row.method.name != "rule"]
    if not sound:
        sound = [row for row in _mixes(layout, rows) if row.sound]
    if not sound:
        return Advice(None, "none", None, 0, tuple(_changes(layout, rows)))
    everyday = [row for row in sound if row.method.everyday]
    if everyday and (tolerance is None or min(row.expected for row in everyday) <= tolerance
                     or min(row.expected for row in sound) > tolerance):  # fmt: skip
        sound = everyday
    holding = [row for row in sound if tolerance is not None and row.expected <= tolerance]
    least = min(row.expected for row in sound)
    good = holding or [row for row in sound if row.expected <= least + mark]
    best = min(good, key=lambda row: (row.measurements, row.expected))
    reason = "only" if len(sound) == 1 else "fewest" if len(good) > 1 else "truest"
    return Advice(best, reason, None if tolerance is None else bool(holding), len(good) - 1)


def _mixes(layout: Layout, rows: Sequence[Row]) -> list[Row]:
    """Halve once or twice, then ordinates from the smaller chords."""
    ordinates = next(row.method for row in rows if row.method.name == "ordinates")
    return [row_of(layout, ordinates, halve_first=times) for times in (1, 2) if times < max(layout.levels, 2)]


def _changes(layout: Layout, rows: Sequence[Row]) -> list[Change]:
    """Every single change that makes some method possible, everyday methods first; one of a kind and place each."""
    job, limits = layout.job, limits_of(layout.job)
    there = [row for row in rows if row.none is None and row.method.name != "rule"]
    there.sort(key=lambda row: not row.method.everyday)
    found: dict[tuple[str, str], Change] = {}

    def offer(change: Change) -> None:
        before = found.get((change.kind, change.what))
        if before is None or change.size < before.size:
            found[change.kind, change.what] = change

    for row in there:
        assert row.recipe is not None and row.accuracy is not None
        if not row.accuracy.reliable:
            continue
        needs = needs_of(layout.setting.arc, row.recipe)
        kinds = {block.kind for block in row.blocks}
        if row.few_hands:
            if not kinds:
                offer(Change("hands", "", row.method.hands, row.method))
            continue
        if kinds == {"tape"}:
            step = ROUND_TAPE[job.tape.feet]
            offer(Change("tape", "", -(-needs["tape"] // step) * step, row.method))
        elif len(kinds) == 1 and kinds <= {"behind", "inside", "outside"}:
            kind = next(iter(kinds))
            offer(Change("room", kind, needs[kind], row.method))
        elif kinds and len({block.what for block in row.blocks}) == 1 and all(block.what for block in row.blocks):
            offer(Change("obstacle", row.blocks[0].what, 0.0, row.method))
    for obstacle in limits.obstacles:
        if ("obstacle", obstacle.name) in found:
            continue
        rest = Limits(limits.tape, limits.room, [one for one in limits.obstacles if one is not obstacle])
        freed = next((row for row in compare(layout, rest) if row.sound and row.method.name != "rule"), None)
        if freed:
            offer(Change("obstacle", obstacle.name, 0.0, freed.method))
    return list(found.values())
