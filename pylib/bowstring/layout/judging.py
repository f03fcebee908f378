"""A stake that was got, judged: how far it stands off the arc, and off the fair curve through its neighbours."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, pi, sqrt

from bowstring.analysis.accuracy import NORMAL_95
from bowstring.analysis.error_model import error_model
from bowstring.construction import Standing, Step
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, left_of, unit_vector
from bowstring.job.job import Job
from bowstring.layout.demand import LIKELY_TOLERANCE
from bowstring.layout.got import step_of
from bowstring.layout.layout import Layout
from bowstring.units.sizes import FOOT

READS_APART = 1.0
"""Tape marks by which readings at one mark may miss the place that meets them best; past it one is misread."""

STANDS_OFF = 2
"""Tape marks by which any stake may stand off, however finely it is driven."""

FAR_OFF = FOOT / 2
"""Metres: what is farther off its place is a misread tape before it is a mark that moved (common practice, no
source)."""


@dataclass(frozen=True)
class Judged:
    """One row of what was got, in metres.

    Attributes:
        name: the mark as the job names it; stake: that of its step, if that drives one.
        off: how far the named mark is from where the sheet would have put it.
        across: how far the stake is off the arc, along: how far past its place toward B.
        within: whether it is inside the tolerance. Without one ``False`` where nobody drives a stake so badly, nor
            sets another mark, and otherwise ``None``.
        usual: without a tolerance, whether a stake usually stands as near, ``None`` with one or without a stake.
        fair: whether its bump is inside the fair limit, ``None`` where there is none or no stake.
        bump: how far off the mid-ordinate over its two neighbours as they will stand, positive outward.
        doubt: its readings disagree by more than tapes do.
    """

    name: str
    step: Step
    standing: Standing
    stake: str | None
    off: float
    across: float | None
    along: float
    bump: float | None
    within: bool | None
    usual: bool | None
    fair: bool | None
    doubt: bool


def judge(layout: Layout, name: str) -> Judged:
    """Return what stands at a mark of the job's ``got``."""
    job, standing = layout.job, layout.recipe.standing[name]
    step = step_of(layout.recipe, name)
    stake = step.stake if step.stake in {one.name for one in layout.stakes} else None
    across = None if stake is None else layout.misses.by_stake[stake]
    bump = None if stake is None else bump_of(layout, stake)
    off = distance(layout.recipe.at[name], standing.planned[name])
    unasked = across is not None and job.tolerance is None
    return Judged(
        name=name,
        step=step,
        standing=standing,
        stake=stake,
        off=off,
        across=across,
        along=0.0 if stake is None else _along(layout, stake),
        bump=bump,
        within=_within(job, off, across),
        usual=abs(across or 0.0) <= usually_off(job) if unasked else None,
        fair=None if bump is None or job.fair is None else abs(bump) <= job.fair,
        doubt=standing.apart > READS_APART * job.tape.mark,
    )


def _within(job: Job, off: float, across: float | None) -> bool | None:
    if across is None:
        return False if off > FAR_OFF else None
    if job.tolerance is None:
        return False if abs(across) > LIKELY_TOLERANCE else None
    return abs(across) <= job.tolerance


def usually_off(job: Job) -> float:
    """Return what a stake stands off by at most, 95 of 100: its driving, and the tape that is read at it."""
    errors = error_model(job.tape.mark, job.tape.feet, job.site.tape_class, 0.0, job.site.errors, job.driven)
    return max(NORMAL_95 * hypot(errors.stake, errors.pull), STANDS_OFF * job.tape.mark)


def _along(layout: Layout, stake: str) -> float:
    """How far past its place a stake stands along the arc."""
    arc = layout.staked
    (fraction,) = (one.fraction for one in layout.stakes if one.name == stake)
    whole = 2 * arc.radius * pi
    past = arc.along(layout.recipe.at[stake]) - arc.arc_length * fraction
    return (past + whole / 2) % whole - whole / 2


def bump_of(layout: Layout, stake: str) -> float:
    """Return how far a stake is off the mid-ordinate over the string between its neighbours, metres, + outward."""
    names = [one.name for one in layout.stakes]
    place = names.index(stake)
    at = layout.recipe.at
    before, here, after = (at[names[place + step]] for step in (-1, 0, 1))
    return _off_string(layout.staked, before, here, after)


def _off_string(arc: Arc, before: Point, here: Point, after: Point) -> float:
    string = distance(before, after)
    way = unit_vector(before, after)
    along, out = way.dot(here.minus(before)), left_of(way).dot(here.minus(before))
    return out - ordinate(arc.radius, string, along)


def ordinate(radius: float, string: float, along: float) -> float:
    """Return the ordinate of an arc up to a half circle over a string, so far along it, metres.

    >>> ordinate(5.0, 6.0, 3.0)
    1.0
    """
    half = min(string / 2, radius)
    x = min(abs(along - string / 2), radius)
    there, end = sqrt((radius - x) * (radius + x)), sqrt((radius - half) * (radius + half))
    return (half - x) * (half + x) / (there + end) if there + end else 0.0
