"""The words for a job that is shown in another unit than its own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from bowstring.units.tape import Tape
from bowstring.words import say

if TYPE_CHECKING:  # the first face tells this too, before any job is read
    from bowstring.job.job import Job


def shown_in(job: Job) -> str:
    """Return in which unit a job is shown, and in which it is; empty where that is one."""
    return told_units(job.tape, job.shown)


def told_units(own: Tape, shown: Tape) -> str:
    """Return the same for the job's own tape and the one it is shown by; what rounding to a coarser one does, too."""
    if own.unit == shown.unit:
        return ""
    told = say("shown.in", shown=_name(shown), own=_name(own))
    if not shown.coarser(own):
        return told
    return " ".join([told, say("shown.coarser", mark=shown.show_mark(), own=own.show_mark())])


def _name(tape: Tape) -> str:
    return say(f"shown.unit_{tape.unit.replace('-', '_')}")
