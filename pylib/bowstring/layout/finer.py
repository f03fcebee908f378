"""Ways to work finer with the same method: another thing driven, then a finer mark read; and what each comes to."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row, spread_by
from bowstring.units.tape import Tape

SURE = 0.9
"""Nine layouts of ten: often enough to build on (common practice, no source)."""

MOST_TRIED = 65
"""Stakes: of longer layouts nothing is tried, nobody waits for it."""

FINER = {"pin": ("marked", "hub"), "board": ("marked", "hub"), "marked": ("hub",), "hub": ()}
"""What is truer than what is driven, in the order of the trouble that it takes."""


@dataclass(frozen=True)
class Finer:
    """One way to work: what is driven, the tape read, and the chance that all stakes are within the tolerance."""

    driven: str
    tape: Tape
    chance: float


def finer_way(layout: Layout, row: Row) -> Finer | None:
    """Return the least change after which the tolerance surely holds, otherwise the one after which it holds most
    often; ``None`` where there is no tolerance or nothing does better than the job's own way."""
    tolerance = layout.job.tolerance
    if tolerance is None or row.accuracy is None or row.recipe is None or len(layout.stakes) > MOST_TRIED:
        return None
    best = Finer(layout.job.driven, layout.job.tape, row.accuracy.together.chance(tolerance))
    own = best
    for driven, tape in _ways(layout):
        _errors, accuracy = spread_by(layout.job, layout.setting, row.recipe, layout.stakes, driven, tape)
        found = Finer(driven, tape, accuracy.together.chance(tolerance))
        if found.chance > best.chance:
            best = found
        if best.chance >= SURE:
            break
    return None if best is own else best


def _ways(layout: Layout) -> Iterator[tuple[str, Tape]]:
    """A job that gives its own figure for driving or reading isn't told what another would be."""
    job, driven = layout.job, layout.job.driven
    if "stake" not in job.site.errors:
        for other in FINER[driven]:
            driven = other
            yield driven, job.tape
    finer = job.tape.finer() if "read" not in job.site.errors else None
    while finer:
        yield driven, finer
        finer = finer.finer()
