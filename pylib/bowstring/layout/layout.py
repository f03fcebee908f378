"""A layout: a job carried through, from its givens to the marks, all as numbers. What is said of it comes after."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise

from bowstring.analysis.checks import Check, find_checks
from bowstring.analysis.checks_counted import find_counted_checks
from bowstring.analysis.checks_ground import tapeable_checks
from bowstring.analysis.gaps import telling_gaps
from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.proving import proving_on
from bowstring.analysis.replay import Misses, TooSmall, misses, replay
from bowstring.analysis.rule import rule_misses
from bowstring.analysis.taped import independent
from bowstring.construction import STRING, Recipe, Stake
from bowstring.errors import BadJob, bad
from bowstring.geometry.arc import Arc
from bowstring.geometry.givens import Settled, settle
from bowstring.geometry.plane import Point, distance
from bowstring.geometry.three import through_points, through_sides
from bowstring.job.job import Job
from bowstring.layout.crossing import past_what_blocks
from bowstring.layout.frame import before_of, setting_of
from bowstring.layout.got import take_up
from bowstring.layout.ground import Ground, meet_ground
from bowstring.layout.limits import limits_of
from bowstring.layout.strings import parallel_of, rounds_of, usual_gap
from bowstring.methods.catalogue import BY_NAME, USUAL
from bowstring.methods.ends import find_ends
from bowstring.methods.halving import MOST_LEVELS, stakes_of
from bowstring.methods.method import Method, stakes_for, why_none
from bowstring.methods.setting import FITS, MOST_STAKES, NoSuchStakes, Parallel, Setting
from bowstring.units.angles import to_second

FEW_MARKS = 4
"""A sagitta under this many tape marks is mostly rounding."""


@dataclass(frozen=True)
class Layout:
    """Everything that was worked out for a job, in metres and radians.

    Attributes:
        settled: the arc as drawn and how the givens settled it.
        hand_from_points: ``left`` or ``right`` where three points say on which hand the curve is.
        ground: what the chord found on the ground made of it, or ``None``.
        drawn: the arc on the drawing's line (over the found chord, where that was taken).
        staked: the concentric arc on which the stakes stand.
        method, setting: how it is set out, and what that works from.
        parallel: the parallel string that the job names, whether or not this layout's ordinates are from it.
        levels: how often it is halved, or would be.
        recipe: the steps and where every mark stands; recipe_of_ends: those that find the ends, alone.
        checks, marks: the checks, and every mark with theirs.
        misses: how far the stakes stand off (0 unless something was got).
        rule, rule_at: the rule of thumb's misses and marks; rounding, rounded: those of the shown numbers.
    """

    job: Job
    settled: Settled
    hand_from_points: str | None
    ground: Ground | None
    drawn: Arc
    staked: Arc
    method: Method
    setting: Setting
    parallel: Parallel | None
    levels: int
    stakes: tuple[Stake, ...]
    recipe: Recipe
    recipe_of_ends: Recipe
    checks: tuple[Check, ...]
    marks: Mapping[str, Point]
    misses: Misses
    rule: Misses
    rule_at: Mapping[str, Point]
    rounding: Misses
    rounded: Mapping[str, Point]

    @property
    def side(self) -> str | None:
        """The hand on which the curve lies for somebody at A who faces B, ``None`` where nothing says it."""
        return self.job.side or self.hand_from_points

    @property
    def string_used(self) -> bool:
        """Whether a step goes by the string from A to B itself, once that is up."""
        return any(
            kind == STRING and {start, end} == {"A", "B"}
            for step in self.recipe.steps if step.level
            for move in step.moves for kind, start, end in move.lines
        )  # fmt: skip

    @property
    def slope(self) -> tuple[float, float]:
        """The ground's fall in percent, along and across, for a tape that lies on it; none for one that is held level,
        as the chord found says it is."""
        site, found = self.job.site, self.job.found
        return (0.0, 0.0) if found and found.held_level else (site.along, site.across)

    @property
    def halved(self) -> tuple[Stake, ...]:
        """The stakes that halving drives, or would drive: the rule of thumb's too."""
        return stakes_of(self.levels)

    def along(self, stake: Stake) -> float:
        """Return the arc length in metres from A to a stake: to where it really stands, once anything was got."""
        if self.job.got and stake.level:
            return self.staked.along(self.marks[stake.name])
        return self.staked.arc_length * stake.fraction

    @property
    def widest_gap(self) -> float:
        """The longest straight way in metres between neighbouring stakes."""
        if self.method.halves and not self.job.got:
            return self.staked.part(2**self.levels).chord
        return max(distance(self.marks[one.name], self.marks[other.name]) for one, other in pairwise(self.stakes))


def lay_out(job: Job) -> Layout:
    """Return the layout of a job that was read; raises ``BadJob`` where its values together make none.

    A job that names no method is halved here; ``layout.taken`` finds the method that is advised for it.

    >>> from bowstring.job.job import read_job
    >>> layout = lay_out(read_job({"unit": "m", "arc": {"chord": 40, "sagitta": 10}, "levels": 1}))
    >>> {stake.name: layout.marks[stake.name].y for stake in layout.stakes}
    {'A': 0.0, 'M': 10.0, 'B': 0.0}
    """
    settled, hand = _settled(job)
    ground, drawn = _drawn(job, settled)
    staked = drawn.concentric(job.outward) if job.outward else drawn
    method, setting, parallel, levels = _ready(job, drawn, staked)
    stakes = stakes_of_method(method, job, setting, levels)
    ends, in_the_way = Recipe(setting.known), Obstructions(staked, limits_of(job))
    find_ends(ends, drawn, staked, job.start, proving_on(in_the_way, job.tape.feet), before_of(job, job.side or hand))
    setting, recipe = _construct(job, ends, method, setting, stakes)
    if method.halves:
        checks, marks = find_checks(staked, stakes, recipe.at)
    else:
        checks, marks = find_counted_checks(staked, stakes, recipe, method.stand.alike)
    own = independent(checks, recipe.steps, marks)
    checks, marks = tapeable_checks(staked, stakes, recipe, own, marks, in_the_way)
    if checks is not own:  # others were found instead
        checks = independent(checks, recipe.steps, marks)
    checks = telling_gaps(checks, job.tape.mark)
    try:
        rounded = replay(recipe, job.tape.round, to_second)
    except TooSmall:
        raise bad("method", "method.too_small") from None
    rule, rule_at = rule_misses(staked, stakes_of(levels), levels)
    return Layout(
        job=job,
        settled=settled,
        hand_from_points=hand,
        ground=ground,
        drawn=drawn,
        staked=staked,
        method=method,
        setting=setting,
        parallel=parallel,
        levels=levels,
        stakes=stakes,
        recipe=recipe,
        recipe_of_ends=ends,
        checks=checks,
        marks=marks,
        misses=misses(staked, stakes, recipe.at),
        rule=rule,
        rule_at=rule_at,
        rounding=misses(staked, recipe.to_set(stakes), rounded),
        rounded=rounded,
    )


def _settled(job: Job) -> tuple[Settled, str | None]:
    """Return the arc that a job's givens settle, and the hand on which three points say that it is."""
    if job.points:
        arc, bulges_left = through_points(*job.points)
        return Settled(arc, None, ()), "left" if bulges_left else "right"
    if job.sides:
        return Settled(through_sides(*job.sides), None, ()), None
    return settle(list(job.givens), job.greater, job.tape.mark, job.tape.show), None


def _drawn(job: Job, settled: Settled) -> tuple[Ground | None, Arc]:
    """Return what the chord found makes of the arc, if one was, and the arc to build, which the job's start and offset
    have to fit."""
    if job.found and job.start != "ends":
        # The ends would be set again from what is there and never read the chord found.
        raise bad("start", "start.found_needs_ends")
    ground = meet_ground(settled.arc, job) if job.found else None
    drawn = ground.arc if ground else settled.arc
    if job.start == "corner" and not drawn.has_corner:
        raise bad("start", "start.no_corner")
    if drawn.radius + job.outward <= 0:
        raise bad("offset", "offset.over_radius", radius=job.tape.show(drawn.radius))
    return ground, drawn


def _ready(job: Job, drawn: Arc, staked: Arc) -> tuple[Method, Setting, Parallel | None, int]:
    """Return a job's method, what it works from, its parallel string and its levels."""
    method, too_small = BY_NAME[job.site.method or USUAL], None
    try:
        levels = job.levels or _levels_for(job, staked, method)
    except BadJob as refusal:
        levels, too_small = MOST_LEVELS, refusal
    setting = setting_of(job, drawn, staked, rounds_of(job, staked, levels))
    parallel = parallel_of(job, setting)
    setting = setting.ordinates_from(setting.halve_first, parallel if method.stand.parallel else None)
    _meet_method(method, setting)
    if too_small:
        raise too_small
    return method, setting, parallel, levels


def _meet_method(method: Method, setting: Setting) -> None:
    """What rules a method out for an arc whatever its stakes comes before any complaint about their number."""
    none = why_none(method, setting)
    if none:
        raise bad("method", f"method.{none}")


def _too_small(job: Job, method: Method, gap: float) -> BadJob:
    """A spacing narrower than the narrowest gap, metres, that the method can make."""
    key, most = ("job.spacing_too_small", MOST_LEVELS) if method.halves else ("job.spacing_too_many", MOST_STAKES)
    return bad("spacing", key, most=most, gap=job.tape.show(gap))


def _levels_for(job: Job, staked: Arc, method: Method) -> int:
    """Return the levels of the spacing asked for, or of the usual one, which also stops before sagittae too small."""
    if job.spacing is not None:
        for levels in range(1, MOST_LEVELS + 1):
            if staked.part(2**levels).chord <= job.spacing * FITS:
                return levels
        raise _too_small(job, method, staked.part(2**MOST_LEVELS).chord)
    widest = usual_gap(job)
    levels = 1
    while (
        levels < MOST_LEVELS
        and staked.part(2**levels).chord > widest * FITS
        and staked.part(2**levels).sagitta >= FEW_MARKS * job.tape.mark
    ):
        levels += 1
    return levels


def stakes_of_method(method: Method, job: Job, setting: Setting, levels: int, plain: bool = False) -> tuple[Stake, ...]:
    """Return the stakes that a method drives for a job; raises ``BadJob`` where there are too many.

    ``plain``: without the stations and the first gap that were chosen for the job's own method.
    """
    spacing = None if job.levels else job.spacing
    stations, first_gap = ((), None) if plain else (job.site.stations, job.site.first_gap)
    try:
        return stakes_for(method, setting, levels=levels, spacing=spacing, stations=stations, first_gap=first_gap)
    except NoSuchStakes as most:
        raise _too_small(job, method, most.gap) from None


def _construct(
    job: Job, ends: Recipe, method: Method, setting: Setting, stakes: tuple[Stake, ...]
) -> tuple[Setting, Recipe]:
    none = why_none(method, setting, stakes)
    if none:
        raise bad("method", f"method.{none}")
    if not job.got:
        return past_what_blocks(job, method, setting, stakes, ends)
    return take_up(job, ends, method, setting, stakes)
