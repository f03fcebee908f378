"""Halving past something in its middle: which stakes are set by their two half chords alone.

Two tapes from the ends of a chord need neither its string nor its middle. They cross the flatter the flatter the arc
is: what a half chord is out by moves the stake across by the half chord over the mid-ordinate times as much.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from bowstring.analysis.error_model import error_model
from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.reach import blocks_of
from bowstring.construction import Recipe, Stake, Step, Told
from bowstring.geometry.plane import distance
from bowstring.job.job import Job
from bowstring.layout.limits import limits_of
from bowstring.methods.method import Method, recipe_of
from bowstring.methods.setting import Setting

PART_OF_TOLERANCE = 1 / 3
"""A crossing serves where its readings and rounding stay within this part of the tolerance."""

MARKS = 2
"""And within so many tape marks where no tolerance is said."""


def set_aside(job: Job, setting: Setting, recipe: Recipe) -> frozenset[str]:
    """Return the stakes of halving whose own way something blocks and whose half chords are free and true enough."""
    if not job.site.obstacles and not job.site.room:
        return frozenset()
    limits = limits_of(job)
    ground = Obstructions(setting.arc, limits)
    sliding = {number: step for number, step in enumerate(recipe.steps, 1) if _slides(recipe, step)}
    if not sliding:
        return frozenset()
    blocked = {block.step for block in blocks_of(setting.arc, recipe, limits)}
    return frozenset(
        step.names["stake"]
        for number, step in sliding.items()
        if number in blocked and _free(ground, recipe, step) and crossing_error(job, recipe, step) <= most_out(job)
    )


def _slides(recipe: Recipe, step: Step) -> bool:
    """Whether a stake is slid over its middle; one that was got by what only halving knows was, too, and stays so."""
    told = recipe.told_of(step.sets) if step.kind == "stake_got" else None
    return step.kind in ("stake", "stake_back") or (told is not None and not recipe.got[told].as_before)


def most_out(job: Job) -> float:
    """Return how far out a crossing may be for a job, metres."""
    return MARKS * job.tape.mark if job.tolerance is None else job.tolerance * PART_OF_TOLERANCE


def crossing_error(job: Job, recipe: Recipe, step: Step) -> float:
    """Return how far out across the arc a stake set by its half chords is, metres: one standard deviation of the
    readings, and the rounding of the number that is held.

    Two pulls share what they say across, so of both ends' readings one is left.
    """
    start, stake, end = (recipe.at[step.names[part]] for part in ("start", "stake", "end"))
    half_chord, sagitta = distance(start, stake), abs(step.sagitta or 0.0)
    if not sagitta:
        return float("inf")
    errors = error_model(job.tape.mark, job.tape.feet, job.site.tape_class, 0.0, job.site.errors)
    rounded = max(abs(job.tape.round(length) - length) for length in (half_chord, distance(end, stake)))
    return (errors.read + rounded) * half_chord / sagitta


def _free(ground: Obstructions, recipe: Recipe, step: Step) -> bool:
    start, stake, end = (recipe.at[step.names[part]] for part in ("start", "stake", "end"))
    return ground.tapeable(start, stake) and ground.tapeable(end, stake)


def past_what_blocks(
    job: Job,
    method: Method,
    setting: Setting,
    stakes: Sequence[Stake],
    ends: Recipe,
    got: Mapping[str, Told] | None = None,
) -> tuple[Setting, Recipe]:
    """Return a method's setting and its recipe after ``ends``, with those stakes set by their half chords that need it.

    Raises as ``recipe_of`` does.
    """
    recipe = recipe_of(method, setting, stakes, _after(ends), got)
    crossed = set_aside(job, setting, recipe)
    if crossed:
        setting = setting.crossing(crossed)
        recipe = recipe_of(method, setting, stakes, _after(ends), got)
    return setting, recipe


def _after(ends: Recipe) -> Recipe:
    recipe = Recipe(ends.at)
    recipe.steps = list(ends.steps)
    return recipe
