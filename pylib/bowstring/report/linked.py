"""The link of a job that was answered: it says which method was taken, so that whoever opens it sees the same sheet."""

from __future__ import annotations

from bowstring.job import link
from bowstring.job.form import JobForm
from bowstring.report.answer import answering
from bowstring.report.forms.answer import Answer


def write_link(job: JobForm, *, whole: bool = False) -> str:
    """Return the link text of a job (the part after ``#``), with the method that its answer takes.

    What was done and read, by whom and when, stays out of it unless it's asked for the ``whole`` job.

    Raises ``BadJob`` when the job can't be used, or when there is too much in it for a link.

    >>> from bowstring.job.link import read_link
    >>> read_link(write_link({"bowstring": 1, "arc": {"radius": "12 m", "chord": "9 m"}, "levels": 2}))["method"]
    'halving'
    """
    return link.write_link(job if "method" in job else with_method(job, answering(job)), whole=whole)


def with_method(job: JobForm, answered: Answer) -> JobForm:
    """Return a job that names the method of its answer, and how often that halves before."""
    if "method" in job:
        return job
    named: JobForm = {**job, "method": answered["method"]}
    if answered["halve_first"]:
        named["halve_first"] = answered["halve_first"]
    return named
