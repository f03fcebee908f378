"""Where places along a line of several pieces lie in the sweep of its slab."""

from __future__ import annotations

from bisect import bisect_right
from functools import partial

from bowstring.forming.deep import Deep
from bowstring.forming.line.sweep import Sweep
from bowstring.report.forming.deepness import Along, deep_of
from bowstring.report.lined.plan import LinePlan

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
    return sweep.share_across(*place_of(sweep, station))


def _near(sweep: Sweep, station: float) -> float:
    """The same of a depth: inside the corner of a kink, where the front is square next."""
    try:
        return _share(sweep, station)
    except ValueError:
        piece, share = place_of(sweep, station)
        low, high = sweep.square[piece]
        return sweep.share_across(piece, min(max(share, low), high))


def place_of(sweep: Sweep, station: float) -> tuple[int, float]:
    """Return the piece on which a station lies, from 0, and the share of it."""
    line = sweep.slab.line
    piece = min(bisect_right(line.stations, station), len(line.pieces)) - 1
    return piece, (station - line.stations[piece]) / line.pieces[piece].length


def deep_along(plan: LinePlan) -> Deep | None:
    """Return how deep the slab of a line is, ``None`` where there is none, it says no thickness, or can't be as it
    says."""
    return None if plan.slab is None else deep_of(plan.plan, along_line(Sweep(plan.slab)))
