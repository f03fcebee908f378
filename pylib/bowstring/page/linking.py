"""A job's link for the page, or why there is none."""

from __future__ import annotations

from bowstring.errors import BadJob
from bowstring.job.form import JobForm
from bowstring.job.link import write_link
from bowstring.words import say


def link_of(job: JobForm) -> tuple[str, str]:
    """Return a job's link, or an empty one and why there is none: a job may hold more. Raises ``BadJob``."""
    try:
        return write_link(job), ""
    except BadJob as refusal:
        if refusal.field != "link":
            raise
        return "", say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)
