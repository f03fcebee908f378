"""A stake that was got, judged: how far it stands off the arc, and off the fair curve through its neighbours."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi, sqrt

from bowstring.construction import Standing, Step
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, left_of, unit_vector
from bowstring.layout.got import step_of
from bowstring.layout.layout import Layout

READS_APART = 1.0
"""Tape marks by which readings at one mark may miss the place that meets them best; past it one is misread."""


@dataclass(frozen=True)
class Judged:
    """One row of what was got, in metres.

    Attributes:
        name: the mark as the job names it; stake: that of its step, if that drives one.
        off: how far the named mark is from where the sheet would have put it.
        across: how far the stake is off the arc, along: how far past its place toward B.
        within, fair: whether it is inside the job's limits, ``None`` where there is none or no stake.
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
    fair: bool | None
    doubt: bool


def judge(layout: Layout, name: str) -> Judged:
    """Return what stands at a mark of the job's ``got``."""
    job, standing = layout.job, layout.recipe.standing[name]
    step = step_of(layout.recipe, name)
    stake = step.stake if step.stake in {one.name for one in layout.stakes} else None
    across = None if stake is None else layout.misses.by_stake[stake]
    bump = None if stake is None else bump_of(layout, stake)
    return Judged(
        name=name,
        step=step,
        standing=standing,
        stake=stake,
        off=distance(layout.recipe.at[name], standing.planned[name]),
        across=across,
        along=0.0 if stake is None else _along(layout, stake),
        bump=bump,
        within=None if across is None or job.tolerance is None else abs(across) <= job.tolerance,
        fair=None if bump is None or job.fair is None else abs(bump) <= job.fair,
        doubt=standing.apart > READS_APART * job.tape.mark,
    )


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
