"""A job's link for the page, or why there is none."""

from __future__ import annotations

from bowstring.errors import BadJob
from bowstring.job.form import JobForm
from bowstring.job.link import write_link
from bowstring.words import say

TITLE = 60
"""Most characters of a title that a copy repeats."""


def parent_of(title: str, id: str) -> str:
    """Return what a copy of a job names it by: its title and the end of its link; at most what ``parent`` may have.

    >>> parent_of("Lodge drive", "7f3kq1")
    'Lodge drive 7f3kq1'
    """
    return f"{title[:TITLE].strip()} {id}".strip()


def link_of(job: JobForm) -> tuple[str, str]:
    """Return a job's link, or an empty one and why there is none: a job may hold more. Raises ``BadJob``."""
    try:
        return write_link(job), ""
    except BadJob as refusal:
        if refusal.field != "link":
            raise
        return "", say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)
