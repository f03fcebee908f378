"""One method for one job: whether it is possible on this ground, what it takes, and how true its stakes will be."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, partial
from math import inf

from bowstring.analysis.accuracy import Accuracy, accuracy_of
from bowstring.analysis.error_model import ErrorModel, error_model
from bowstring.analysis.reach import Blocked, blocks_of, longest_pull, measurements_of, readings_of
from bowstring.analysis.replay import TooSmall, misses, replay
from bowstring.analysis.triangles import Square
from bowstring.construction import Recipe, Stake
from bowstring.errors import BadJob
from bowstring.job.job import Job
from bowstring.layout.crossing import past_what_blocks
from bowstring.layout.layout import Layout, stakes_of_method
from bowstring.layout.limits import limits_of, squares_here
from bowstring.methods.method import Method, stakes_for, why_none
from bowstring.methods.setting import Parallel, Setting
from bowstring.units.angles import to_second
from bowstring.units.tape import Tape

MOST_COMPARED = 7
"""Levels: of longer layouts the other methods are looked at with so many halvings' stakes; nobody sets more by hand."""


@dataclass(frozen=True)
class Row:
    """One method for a job.

    Attributes:
        halve_first, parallel: how often the arc is halved before, or the parallel string, for ordinates.
        none: the key of the sentence that says why there is no such layout for this arc, or ``None``.
        blocks: what the ground, the tape or the room doesn't allow.
        few_hands: whether it takes more people than there are.
        stakes: how many layout points, the ends included; recipe: how they are set, ``None`` where it can't be.
        measurements, longest_pull: readings, and metres.
        behind: how far its marks reach behind the chord, metres.
        shift: metres, the largest known miss: of the shown numbers, and of the rule of thumb.
        spread: works out the error model at its longest pull and how true its stakes will be; ``None`` where there is
            no such layout.
    """

    method: Method
    halve_first: int
    parallel: Parallel | None
    none: str | None
    blocks: tuple[Blocked, ...] = ()
    few_hands: bool = False
    stakes: int = 0
    recipe: Recipe | None = None
    measurements: int = 0
    longest_pull: float = 0.0
    behind: float = 0.0
    shift: float = 0.0
    spread: Callable[[], tuple[ErrorModel, Accuracy]] | None = None

    @cached_property
    def _spread(self) -> tuple[ErrorModel, Accuracy] | None:
        """Worked out when it is asked for: of a method that can't be done here nobody may ever ask."""
        return self.spread() if self.spread else None

    @property
    def errors(self) -> ErrorModel | None:
        """The error model at its longest pull."""
        return self._spread[0] if self._spread else None

    @property
    def accuracy(self) -> Accuracy | None:
        """How true its stakes will be."""
        return self._spread[1] if self._spread else None

    @property
    def possible(self) -> bool:
        """Whether it can be done here, by these people."""
        return self.none is None and not self.blocks and not self.few_hands

    def stands_for(self, other: Row) -> bool:
        """Whether both are one row of a comparison: the same method, from a parallel string or not."""
        return self.method is other.method and (self.parallel is None) == (other.parallel is None)

    @property
    def expected(self) -> float:
        """Metres: what the worst stake stays within at 95 %, the known shift included."""
        return self.accuracy.miss_95 + self.shift if self.accuracy else inf

    @property
    def fair_95(self) -> float:
        """Metres off the mid-ordinate over its two neighbours that the least fair stake stays within at 95 %."""
        return self.accuracy.fair_95 if self.accuracy else inf

    @property
    def sound(self) -> bool:
        """Whether it is possible and its figures can be relied on."""
        return self.possible and self.accuracy is not None and self.accuracy.reliable


def known_errors(job: Job) -> dict[str, float]:
    """Return the standard deviations of the marks that aren't exact, the ends included, metres."""
    return {mark.name: mark.sigma for mark in job.site.known if mark.sigma}


def spread_of(
    job: Job, setting: Setting, recipe: Recipe, stakes: Sequence[Stake], squares: Mapping[str, Square] | None = None
) -> tuple[ErrorModel, Accuracy]:
    """Return the error model at a recipe's longest pull, and how true its stakes will be."""
    return spread_by(job, setting, recipe, stakes, job.driven, job.tape, squares)


def spread_by(
    job: Job,
    setting: Setting,
    recipe: Recipe,
    stakes: Sequence[Stake],
    driven: str,
    tape: Tape,
    squares: Mapping[str, Square] | None = None,
) -> tuple[ErrorModel, Accuracy]:
    """Return the same for something else driven, or read on another tape than the job's."""
    site = job.site
    errors = error_model(tape.mark, job.tape.feet, site.tape_class, longest_pull(recipe), site.errors, driven)
    squares = squares_here(job, setting, recipe) if squares is None else squares
    return errors, accuracy_of(setting.arc, recipe, stakes, errors, known=known_errors(job), squares=squares)


@dataclass(frozen=True)
class Written:
    """A method's recipe for a job: ``driven`` stakes, of which ``stakes`` are looked at."""

    setting: Setting
    stakes: Sequence[Stake]
    driven: int
    recipe: Recipe


def write(
    layout: Layout, method: Method, halve_first: int, parallel: Parallel | None = None, finer: int = 0
) -> Written | str:
    """Return a method's recipe, or the key of the sentence that says why there is none.

    ``finer``: every gap halved so often.
    """
    job, levels = layout.job, layout.levels + finer
    own = method is layout.method and not finer
    setting = layout.setting.ordinates_from(halve_first, parallel).crossing(())
    if own and (setting.halve_first, setting.parallel) == (layout.setting.halve_first, layout.setting.parallel):
        return Written(layout.setting, layout.stakes, len(layout.stakes), layout.recipe)
    none = why_none(method, setting)  # before the number of stakes: it may be too large for that very reason
    if none:
        return none
    try:
        if finer:
            setting = setting.in_equal_steps()
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
        setting = setting.in_equal_steps()
        stakes = stakes_for(method, setting, levels=MOST_COMPARED, spacing=None)
    setting, recipe = past_what_blocks(job, method, setting, stakes, layout.recipe_of_ends)
    return Written(setting, stakes, driven, recipe)


def read_by(layout: Layout, row: Row, tape: Tape) -> Row:
    """Return the row of a layout's own method for whoever reads it on a coarser tape than the job's."""
    assert row.recipe is not None
    spread = partial(spread_by, layout.job, layout.setting, row.recipe, layout.stakes, layout.job.driven, tape)
    known = {name: value for name, value in vars(row).items() if name != "_spread"}
    return Row(**{**known, "spread": spread})


def row_of(layout: Layout, method: Method, halve_first: int | None = None, parallel: Parallel | None = None) -> Row:
    """Return what a method would be for a layout's job; ``halve_first`` and ``parallel`` stand in for the job's own."""
    if halve_first is None:
        own = method is layout.method
        halve_first, parallel = (layout.setting.halve_first, layout.setting.parallel) if own else (0, None)
    written = write(layout, method, halve_first, parallel)
    if isinstance(written, str):
        return Row(method, halve_first, parallel, written)
    return measured(layout, method, written)


def measured(layout: Layout, method: Method, written: Written) -> Row:
    """Return the row of a recipe that was written: what it meets on the ground, takes, and comes to."""
    job, setting, stakes, recipe = layout.job, written.setting, written.stakes, written.recipe
    try:
        shifts = misses(setting.arc, recipe.to_set(stakes), replay(recipe, job.tape.round, to_second))
    except TooSmall:
        return Row(method, setting.halve_first, setting.parallel, "too_small")
    squares = squares_here(job, setting, recipe)
    return Row(
        method=method,
        halve_first=setting.halve_first,
        parallel=setting.parallel,
        none=None,
        blocks=tuple(blocks_of(setting.arc, recipe, limits_of(job), squares)),
        few_hands=method.hands > job.site.hands,
        stakes=written.driven,
        recipe=recipe,
        measurements=measurements_of(recipe.steps) + (written.driven - len(stakes)) * readings_of(recipe.steps[-1]),
        longest_pull=longest_pull(recipe),
        behind=max(-min(point.y for point in recipe.at.values()), 0.0),
        shift=abs(shifts.worst),
        spread=partial(spread_of, job, setting, recipe, stakes, squares),
    )
