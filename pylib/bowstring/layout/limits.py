"""What there is on the site of a job, for whoever holds a construction against it."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.analysis.obstructions import CLEAR, Limits, Obstructions
from bowstring.analysis.squaring import kit_of
from bowstring.analysis.triangles import Square, squares_of
from bowstring.construction import Recipe
from bowstring.job.job import Job
from bowstring.methods.setting import Setting


def limits_of(job: Job) -> Limits:
    """Return the tape, the room, the obstacles and the crew's squares of a job."""
    tape, site = job.tape, job.site
    return Limits(site.tape_length, site.room, site.obstacles, kit_of(tape, site.tape_length), CLEAR[tape.feet])


def squares_here(job: Job, setting: Setting, recipe: Recipe) -> Mapping[str, Square]:
    """Return how each offset of a recipe is squared on a job's ground, by its mark."""
    limits = limits_of(job)
    return squares_of(recipe, limits.kit, Obstructions(setting.arc, limits))
