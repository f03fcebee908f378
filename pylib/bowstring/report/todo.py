"""What to do so that the tolerance holds, told before any percentage: what is driven now, and what would do better."""

from __future__ import annotations

from math import floor

from bowstring.layout.finer import SURE, Finer, finer_way
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.units.tape import Tape
from bowstring.units.worst import worst_shown
from bowstring.words import say

SHARES = ((0.99, 99, 100), (0.95, 19, 20))
"""Chances from which on they are told so finely; below in tenths, never more than they are."""


def report_todo(layout: Layout, row: Row) -> list[str]:
    """Return the sentences: how far off to expect the worst stake, and how to work for the tolerance."""
    accuracy, job = row.accuracy, layout.job
    assert accuracy is not None
    tolerance = job.tolerance
    chance = None if tolerance is None else accuracy.together.chance(tolerance)
    if chance is not None and chance >= SURE:
        return [_holds(layout, Finer(job.driven, job.tape, chance))]
    worst = worst_shown(job.shown, accuracy.miss_95, tolerance)
    lines = [say("todo.expect", driven=say(f"todo.{job.driven}"), worst=worst)]
    if job.shown.coarser(job.tape):
        return lines  # what a finer mark would do is nothing for a tape that hasn't got it
    finer = finer_way(layout, row)
    if finer:
        lines.append(_holds(layout, finer))
    elif chance is not None:
        lines.append(say("todo.no_finer", share=share(chance), tolerance=_tolerance(layout)))
    return lines


def _holds(layout: Layout, way: Finer) -> str:
    driven, own = say(f"todo.{way.driven}"), layout.job
    if way.tape is not own.tape:
        driven = say("todo.read_to", driven=driven, mark=way.tape.seen_in(own.shown.unit).show_mark())
    key = "todo.holds" if way.chance >= SURE else "todo.at_best"
    return say(key, driven=driven, tolerance=_tolerance(layout), share=share(way.chance))


def _tolerance(layout: Layout) -> str:
    tape, tolerance = layout.job.shown, layout.job.tolerance
    assert tolerance is not None
    return shown_exactly(tape, tolerance)


def shown_exactly(tape: Tape, length: float) -> str:
    """Return a length as the tape reads it where it stands on a mark, otherwise finer than the mark."""
    return tape.show(length) if abs(tape.round(length) - length) < tape.mark / 1000 else tape.show_small(length)


def share(chance: float) -> str:
    """Return a chance as so many layouts of so many, rounded down."""
    for least, part, of in SHARES:
        if chance >= least:
            return say("todo.share", part=part, of=of)
    part = floor(chance * 10 + 1e-9)
    if part < 2:
        return say("todo.share_one", of=10) if part else say("todo.hardly")
    return say("todo.share", part=part, of=10)
