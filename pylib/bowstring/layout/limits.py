"""What there is on the site of a job, for whoever holds a construction against it."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.analysis.obstructions import Limits, Obstructions
from bowstring.analysis.squaring import kit_of
from bowstring.analysis.triangles import Square, squares_of
from bowstring.construction import Recipe
from bowstring.job.job import Job
from bowstring.methods.setting import Setting


def limits_of(job: Job) -> Limits:
    """Return the tape, the room, the obstacles and the crew's squares of a job."""
    return Limits(job.site.tape_length, job.site.room, job.site.obstacles, kit_of(job.tape, job.site.tape_length))


def squares_here(job: Job, setting: Setting, recipe: Recipe) -> Mapping[str, Square]:
    """Return how each offset of a recipe is squared on a job's ground, by its mark."""
    limits = limits_of(job)
    return squares_of(recipe, limits.kit, Obstructions(setting.arc, limits))
