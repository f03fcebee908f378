"""What there is on the site of a job, for whoever holds a construction against it."""

from __future__ import annotations

from bowstring.analysis.obstructions import Limits
from bowstring.analysis.squaring import kit_of
from bowstring.job.job import Job


def limits_of(job: Job) -> Limits:
    """Return the tape, the room, the obstacles and the crew's squares of a job."""
    return Limits(job.site.tape_length, job.site.room, job.site.obstacles, kit_of(job.tape, job.site.tape_length))
