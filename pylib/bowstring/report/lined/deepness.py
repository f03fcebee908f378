"""Where places along a line of several pieces lie in the sweep of its slab, and where its apron's ends are."""

from __future__ import annotations

from bisect import bisect_right
from functools import partial

from bowstring.forming.deep import Deep
from bowstring.forming.line.sweep import Sweep
from bowstring.report.forming.apron import ApronEnd, end_of
from bowstring.report.forming.deepness import Along, deep_of
from bowstring.report.lined.jointing import jointing_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

ON_JOIN = 1e-9
"""Metres: a station that near to where two pieces meet is that."""


def along_line(sweep: Sweep) -> Along:
    """Return how places are told along a line: by its stations."""
    return Along(sweep.slab.line.length, True, partial(_share, sweep), partial(_near, sweep))


def _share(sweep: Sweep, station: float) -> float:
    """The share of the sweep at a station; raises ``ValueError`` where no front stands square there."""
    line = sweep.slab.line
    if station <= 0 or station >= line.length:
        return 0.0 if station <= 0 else 1.0
    for join, one in enumerate(line.joins):
        if abs(station - one.station) <= ON_JOIN:
            return sweep.share_on_join(join)
    return sweep.share_across(*_place(sweep, station))


def _near(sweep: Sweep, station: float) -> float:
    """The same of a depth: inside the corner of a kink, where the front is square next."""
    try:
        return _share(sweep, station)
    except ValueError:
        piece, share = _place(sweep, station)
        low, high = sweep.square[piece]
        return sweep.share_across(piece, min(max(share, low), high))


def _place(sweep: Sweep, station: float) -> tuple[int, float]:
    """The piece on which a station lies, and the share of it."""
    line = sweep.slab.line
    piece = min(bisect_right(line.stations, station), len(line.pieces)) - 1
    return piece, (station - line.stations[piece]) / line.pieces[piece].length


def deep_along(plan: LinePlan) -> Deep | None:
    """Return how deep the slab of a line is, ``None`` where there is none, it says no thickness, or can't be as it
    says."""
    return None if plan.slab is None else deep_of(plan.plan, along_line(Sweep(plan.slab)))


def ends_along(plan: LinePlan) -> list[ApronEnd]:
    """Return the ends of a line's apron, with the joints near them; raises ``ValueError`` where it can't be there."""
    apron, slab, tape = plan.said.slab.apron, plan.slab, plan.tape
    if apron is None or slab is None:
        return []
    sweep, jointing = Sweep(slab), jointing_of(plan)
    joints: list[float] = []
    if jointing is not None and not jointing.stopped:
        stations = slab.line.stations
        for mark in jointing.chosen.marks[:-1]:
            share = 1.0 if mark.share is None else mark.share
            joints.append(stations[mark.piece] + share * slab.line.pieces[mark.piece].length)
    ends = []
    for at in (apron.start, apron.end):
        front = sweep.front(_share(sweep, at))
        left, right = (tape.show_running(along) for along in front)
        where = say("deep.end_line", at=tape.show_running(at), left=left, right=right)
        ends.append(end_of(plan.plan, at, slab.line.length, where, joints))
    return ends
