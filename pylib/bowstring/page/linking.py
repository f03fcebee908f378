"""A job's link for the page: whole, with the address that it opens at."""

from __future__ import annotations

from bowstring.errors import BadJob
from bowstring.job.form import JobForm
from bowstring.job.link import write_link
from bowstring.page.fields import job_of_fields
from bowstring.page.talk import Asked
from bowstring.report.forms.answer import Answer
from bowstring.report.linked import with_method
from bowstring.words import say


def whole_link(asked: Asked, answered: Answer) -> tuple[str, str]:
    """Return the link of what stands in the fields with the page's address before it, and why there is none."""
    link, why_none = link_of(with_method(job_of_fields(asked["fields"]), answered))
    address = str(asked.get("address") or "")
    return (f"{address}#{link}" if address and link else link), why_none


def link_of(job: JobForm) -> tuple[str, str]:
    """Return a job's link, or an empty one and why there is none: a job may hold more. Raises ``BadJob``."""
    try:
        return write_link(job), ""
    except BadJob as refusal:
        if refusal.field != "link":
            raise
        return "", say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)
