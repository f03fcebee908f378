"""A job's link for the page: whole, with the address that it opens at."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.errors import BadJob
from bowstring.page.answering import LastAnswer, link_of
from bowstring.page.fields import job_of_fields
from bowstring.page.talk import Asked
from bowstring.report.forms.answer import Answer
from bowstring.report.linked import with_method


def whole_link(asked: Asked, answered: Answer) -> tuple[str, str]:
    """Return the link of what stands in the fields with the page's address before it, and why there is none."""
    link, why_none = link_of(with_method(job_of_fields(asked["fields"]), answered))
    address = str(asked.get("address") or "")
    return (f"{address}#{link}" if address and link else link), why_none


def shown_link(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return ``{"link", "link_note"}`` for ``{"fields"}``: the part after ``#``; empty for a job that can't be used."""
    try:
        link, why_none = whole_link({**asked, "address": ""}, last.for_fields(asked["fields"]))
    except BadJob:
        return {"link": "", "link_note": ""}
    return {"link": link, "link_note": why_none}
