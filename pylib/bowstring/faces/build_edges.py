"""The page of the build's edges."""

from __future__ import annotations

from bowstring.report.forms.answer import Answer


def page_html(answer: Answer) -> str:
    """Return the inside of the page, under its drawing."""
    return ""
