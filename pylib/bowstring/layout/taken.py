"""A job laid out by its method: the one it names, or, where it names none, the one that is advised for it."""

from __future__ import annotations

from collections.abc import Generator, Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from bowstring.errors import BadJob
from bowstring.job.job import Job
from bowstring.layout.layout import Layout, lay_out
from bowstring.layout.paused import finished
from bowstring.methods import catalogue
from bowstring.methods.catalogue import BY_NAME, USUAL

if TYPE_CHECKING:  # a job that names its method compares none
    from bowstring.layout.comparison import Advice
    from bowstring.layout.rows import Row


@dataclass(frozen=True)
class Taken:
    """A job laid out.

    Attributes:
        layout: its layout; the layout's own job names the method, whether or not the job did.
        said: the job itself names it, or means it by its other words.
        by_rounds: it names none, and the rounds that it asks for mean halving.
        rows, advice: every method and the advised one, where they had to be worked out to choose; else ``None``.
        own: the row of the layout's own method, where that was worked out with them.
    """

    layout: Layout
    said: bool
    rows: Sequence[Row] | None = None
    advice: Advice | None = None
    own: Row | None = None
    by_rounds: bool = False


def take(job: Job) -> Taken:
    """Return a job laid out by the method that it names or means, otherwise by the advised one.

    Where no method is possible the job is halved, and its stops say what is in the way. Raises ``BadJob`` where the
    job's values together make no layout.

    >>> from bowstring.job.job import read_job
    >>> take(read_job({"unit": "m", "arc": {"chord": 40, "sagitta": 10}, "tape": {"length": 22}})).layout.method.name
    'ordinates'
    """
    return finished(taking(job))


def taking(job: Job) -> Generator[Row, None, Taken]:
    """Do what ``take`` does, with a pause after each method that is compared: gives its row."""
    said = job.site.method or _meant(job)
    if said:
        by_rounds = job.site.method is None and said == USUAL and not job.got
        return Taken(lay_out(_by(job, said, job.site.halve_first)), True, by_rounds=by_rounds)
    from bowstring.layout.comparison import advise, comparing
    from bowstring.layout.rows import row_of

    # What was got is got by the method that was taken for the job as it is drawn.
    plain = Job(**{**vars(job), "got": {}})
    layout = _to_compare_by(plain)
    own = row_of(layout, layout.method)
    rows = yield from comparing(layout, own)
    wanted = [row for row in rows if job.site.first_gap is None or row.method.stand.first_gap]
    advice = advise(layout, wanted)
    if advice.row is None or (advice.row.method is layout.method and not advice.row.halve_first):
        if job.got:
            return Taken(lay_out(_by(job, layout.method.name, 0)), False, rows, advice)
        return Taken(layout, False, rows, advice, own)
    return Taken(lay_out(_by(job, advice.row.method.name, advice.row.halve_first)), False, rows, advice)


def _meant(job: Job) -> str | None:
    """The method that a job's other words mean: what only one method knows of, or rounds of halving."""
    site = job.site
    if any(row.as_before for row in job.got.values()):
        return USUAL
    if site.stations or site.halve_first:
        return next(one.name for one in catalogue.METHODS if one.stand.stations and one.stand.halve_first)
    return USUAL if job.levels or job.usual_levels else None


def _by(job: Job, method: str, halve_first: int) -> Job:
    return Job(**{**vars(job), "site": job.site.by(method, halve_first)})


def _to_compare_by(job: Job) -> Layout:
    """A layout to compare the methods by: halving's, unless its numbers are too small to tape or its wishes differ."""
    reason: BadJob | None = None
    for name in _in_turn(job):
        try:
            return lay_out(_by(job, name, 0))
        except BadJob as refusal:
            # Nothing but the method may be at fault, or every other one would be refused for the same.
            if refusal.field != "method":
                raise
            reason = reason or refusal
    assert reason is not None
    raise reason


def _in_turn(job: Job) -> Iterator[str]:
    """The methods' names, the usual one first, those alone that can do what the job asks of the stakes."""
    names = [USUAL, *(one.name for one in catalogue.METHODS if one.exact and one.name != USUAL)]
    return (name for name in names if job.site.first_gap is None or BY_NAME[name].stand.first_gap)
