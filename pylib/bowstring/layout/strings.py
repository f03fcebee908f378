"""Which strings ordinates and tangent offsets are measured along for a job, and where their stakes stand on them."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot

from bowstring.analysis.obstructions import SPARE, Limits
from bowstring.analysis.reach import blocks_of
from bowstring.construction import Recipe
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point
from bowstring.job.job import Job
from bowstring.layout.limits import limits_of
from bowstring.methods.parallel import set_parallel
from bowstring.methods.setting import FITS, Parallel, Rounds, Setting
from bowstring.units.sizes import FOUR_FEET

GAP_FEET, GAP_METRES = FOUR_FEET, 1.2
"""Metres: the widest straight gap when the job says none (4 ft, 1.2 m)."""

NEAR_LOST = (1 / 4, 1 / 3, 1 / 2, 2 / 3)
"""How far along the parallel string the mark is that proves a corner whose diagonal is blocked, as a part of it."""

NEAR_ENOUGH = 1.25
"""How much wider than those of halving the gaps on a flat arc may be, so that a round distance is among them."""


def usual_gap(job: Job) -> float:
    """Return the widest straight gap in metres that a job wants which says none."""
    return GAP_FEET if job.tape.feet else GAP_METRES


def rounds_of(job: Job, staked: Arc, levels: int) -> Rounds | None:
    """Return at which round distances stakes stand where the job asks for no others: the gaps are the usual ones, or,
    where a flat arc wants fewer, about those that so many rounds of halving leave."""
    if job.spacing is not None or job.levels is not None or job.usual_levels or job.site.stations:
        return None
    usual, left = usual_gap(job), staked.part(2**levels).chord
    return Rounds(usual if left <= usual * FITS else left * NEAR_ENOUGH, job.tape.feet)


def parallel_of(job: Job, setting: Setting) -> Parallel | None:
    """Return the parallel string that a job names, ``None`` where it names none."""
    return None if job.site.parallel is None else string_at(job, setting, job.site.parallel)


def string_at(job: Job, setting: Setting, distance: float) -> Parallel:
    """Return the string so many metres toward the curve: its ends crossed by two tapes where the ground lets these
    through, otherwise squared off the string A-B, otherwise with the one diagonal that is free."""
    limits, chord, fine = limits_of(job), setting.arc.chord, job.tape.mark / 2
    crossed = Parallel(distance, fine=fine)
    if hypot(chord, distance) <= limits.tape + SPARE and not _stopped(setting, crossed, limits):
        return crossed
    squared = Parallel(distance, squared=True, proved=chord <= limits.tape + SPARE, fine=fine)
    if not _stopped(setting, squared, limits):
        return squared
    leaning = (Parallel(distance, fine=fine, lost=lost, sight=sight) for lost in ("A", "B") for sight in _sights(lost))
    return next((one for one in leaning if not _stopped(setting, one, limits)), crossed)


def _sights(lost: str) -> Iterator[tuple[str, float]]:
    """Yield what could prove a corner that lost its diagonal, the tape that sees most of it first: from the far end as
    near to that corner as it can be, from its own end as far along the string."""
    far = "B" if lost == "A" else "A"
    yield from ((far, part) for part in NEAR_LOST)
    yield from ((lost, 1 - part) for part in NEAR_LOST)


def _stopped(setting: Setting, parallel: Parallel, limits: Limits) -> bool:
    """Whether something is in the way of setting it."""
    recipe = Recipe({"A": Point(0.0, 0.0), "B": Point(setting.arc.chord, 0.0)})
    set_parallel(recipe, setting.arc.chord, parallel)
    return next(blocks_of(setting.arc, recipe, limits), None) is not None
