"""What the job said of itself, and how each input was read."""

from __future__ import annotations

from bowstring.job.job import Job
from bowstring.report.forms.arc import OffsetPart, ReadingRow, TieRow
from bowstring.words import say


def report_ties(job: Job) -> dict[str, list[TieRow]]:
    """Return the answer's ``ties``: the distances from landmarks to each end, as they were given: an end is set by
    them, so nothing is rounded off."""
    return {
        end: [{"to": tie.to, "distance": tie.distance, "shown": job.shown.show_whole(tie.distance)} for tie in ties]
        for end, ties in job.ties.items()
    }


def report_readings(job: Job) -> list[ReadingRow]:
    """Return the answer's ``readings``: every input as it was typed and as it was taken."""
    return [{"field": one.field, "typed": one.typed, "text": one.text} for one in job.readings]


def report_offset(job: Job) -> OffsetPart | None:
    """Return the answer's ``offset``: how far from the drawn line the stakes stand, ``None`` where they stand on it."""
    if not job.outward:
        return None
    toward = "outside" if job.outward > 0 else "centre"
    shown = job.shown.both(abs(job.outward))
    text = say(f"offset.{toward}", shown=shown, driven=say(f"driven.{job.driven}"))
    return {
        "distance": abs(job.outward),
        "toward": toward,
        "shown": job.shown.show(abs(job.outward)),
        "text": text,
    }
