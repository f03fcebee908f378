"""Cautions of stakes that were got: how far off they stand, and what looks like a slip."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.geometry.plane import distance
from bowstring.layout.judging import Judged, judge, usually_off
from bowstring.layout.layout import FEW_MARKS, Layout
from bowstring.report.caution import Caution, caution
from bowstring.report.got import first_capital, slip_of, told_slip
from bowstring.report.numbers import off_the_arc
from bowstring.report.places import place_name
from bowstring.words import say

OUT_OF_HAND = 1.05
"""A got sagitta this far from the wanted one, as a ratio, is told as a likely slip."""


def cautions_of_got(layout: Layout, name: str) -> Iterator[Caution]:
    """Yield what somebody should know of one mark that stands elsewhere."""
    judged = judge(layout, name)
    far = _far(layout, judged)
    yield from _stands(layout, judged, far)
    yield from _doubts(layout, judged, far)
    yield from _limits(layout, judged)


def _far(layout: Layout, judged: Judged) -> bool:
    """Whether a mid-ordinate is so far from the wanted one that it looks like a slip."""
    if judged.stake is None or judged.step.sagitta is None or layout.job.got[judged.name].sure:
        return False
    wanted, stands = abs(judged.step.sagitta), judged.step.measures[1].length
    few = FEW_MARKS * layout.job.tape.mark
    return max(wanted, stands) > OUT_OF_HAND * min(wanted, stands) and abs(wanted - stands) > few


def _stands(layout: Layout, judged: Judged, far: bool) -> Iterator[Caution]:
    """Where it stands, and what hangs on it."""
    tape = layout.job.shown
    if judged.stake is None:
        mark = first_capital(place_name(judged.name))
        yield caution("caution.got_helper", mark=mark, off=tape.show_near(judged.off))
    elif judged.step.sagitta is not None:
        wanted, stands = abs(judged.step.sagitta), judged.step.measures[1].length
        yield caution("caution.got_far" if far else "caution.got", stake=judged.stake, off=_off(layout, judged),
                      wanted=tape.show(wanted), stands=tape.show(stands))  # fmt: skip
        yield from _aside(layout, judged)
    else:
        key = "caution.got_stands" if layout.recipe.leaning_on(judged.step) else "caution.got_alone"
        yield caution(key, stake=judged.stake, off=_off(layout, judged))


def _doubts(layout: Layout, judged: Judged, far: bool) -> Iterator[Caution]:
    """Readings that disagree, and what looks like a slip."""
    tape, told = layout.job.shown, place_name(judged.name)
    if judged.doubt:
        yield caution("caution.got_apart", mark=told, apart=tape.show_near(judged.standing.apart))
    slip = None if far else slip_of(layout, judged)
    if slip:
        # What stands where it may is no reason to stop, whatever it looks like.
        key, mark = ("caution.got_likely", first_capital(told)) if judged.within else ("caution.got_slip", told)
        yield caution(key, mark=mark, slip=told_slip(tape, slip))


def _limits(layout: Layout, judged: Judged) -> Iterator[Caution]:
    """What it is off by against what may be: the tolerance and the fair curve, or what is usual."""
    job, tape, stake = layout.job, layout.job.shown, judged.stake
    if judged.within is False and (stake is None or job.tolerance is None):
        off = say("got.off_place", off=tape.show_near(judged.off)) if stake is None else _off(layout, judged)
        key = "caution.got_astray_sure" if job.got[judged.name].sure else "caution.got_astray"
        yield caution(key, mark=stake or place_name(judged.name), off=off)
    elif judged.within is False:
        shown, allowed = tape.show_past(judged.across or 0.0, job.tolerance or 0.0)
        off = off_the_arc(tape, judged.across or 0.0, shown)
        yield caution("caution.got_over", stake=stake, tolerance=allowed, off=off)
    elif judged.fair is False and judged.bump is not None:
        bump, fair = tape.show_past(judged.bump, job.fair or 0.0)
        yield caution("caution.got_bump", stake=judged.stake, bump=bump, fair=fair)
    elif judged.usual is False:
        yield caution("caution.got_unusual", stake=stake, usual=tape.show_cost(usually_off(job)))


def _off(layout: Layout, judged: Judged) -> str:
    return off_the_arc(layout.job.shown, judged.across or 0.0)


def _aside(layout: Layout, judged: Judged) -> Iterator[Caution]:
    """How far, toward its string's far end, a stake stands from the middle's square line.

    By the two half chords a, b over a string c: (a² - b²)/(2c).
    """
    at, names, tape = layout.recipe.at, judged.step.names, layout.job.shown
    start, end, here = at[names["start"]], at[names["end"]], at[names["stake"]]
    first, second = distance(start, here), distance(here, end)
    aside = (first - second) * (first + second) / (2 * distance(start, end))
    if abs(aside) > layout.job.tape.mark:
        nearer = names["end"] if aside > 0 else names["start"]
        yield caution("caution.got_aside", stake=judged.stake, aside=tape.show_near(aside), end=nearer)
