"""Which arc of a job's line is staked."""

from __future__ import annotations

from bowstring.job.form import JobForm


def staked_in(job: JobForm) -> int:
    """Return which piece of a job's line is staked, counted from 1: the one it names, or the first arc.

    >>> staked_in({"line": [{"straight": "3 m"}, {"arc": {"radius": "9 m"}}]})
    2
    """
    if "at" in job:
        return job["at"]
    return next((number for number, piece in enumerate(job["line"], 1) if "arc" in piece), 1)
