"""Another arc of a job's line taken to be staked: what was said and done of the one before is kept with its piece."""

from __future__ import annotations

from typing import cast

from bowstring.job.form import JobForm, PieceForm
from bowstring.job.terms import WORK_KEYS


def staking(job: JobForm, at: int) -> JobForm:
    """Return a job whose line's piece ``at`` (counted from 1) is staked; the job itself isn't changed.

    Whether that piece is an arc is asked where the job is read.

    >>> line = [{"arc": {"radius": "9 m"}}, {"arc": {"radius": "7 m"}, "work": {"levels": 2}}]
    >>> staking({"line": line, "levels": 3}, 2)
    {'line': [{'arc': {'radius': '9 m'}, 'work': {'levels': 3}}, {'arc': {'radius': '7 m'}}], 'levels': 2, 'at': 2}
    """
    pieces = [dict(piece) for piece in job["line"]]
    before = staked_in(job) - 1
    if at - 1 == before:
        return job
    held = {key: value for key, value in job.items() if key in WORK_KEYS}
    if held:
        pieces[before]["work"] = held
    taken = cast("dict[str, object]", pieces[at - 1].pop("work", {}))
    rest = {key: value for key, value in job.items() if key not in WORK_KEYS}
    work = {key: value for key, value in taken.items() if key in WORK_KEYS}
    return cast("JobForm", {**rest, "line": cast("list[PieceForm]", pieces), **work, "at": at})


def staked_in(job: JobForm) -> int:
    """Return which piece of a job's line is staked, counted from 1: the one it names, or the first arc."""
    if "at" in job:
        return job["at"]
    return next((number for number, piece in enumerate(job["line"], 1) if "arc" in piece), 1)
