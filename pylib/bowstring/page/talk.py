"""What the page's script and its Python tell one another, as JSON.

Without ``from __future__ import annotations``, as the answer's forms are.
"""

from collections.abc import Mapping
from typing import Any, TypedDict, final

from bowstring.errors import BadJob
from bowstring.words import say

Asked = Mapping[str, Any]
"""A question of the page's script: what it may hold is told by the function that answers it."""


@final
class ErrorRow(TypedDict):
    """Why a field can't be used: its id, or ``None``, its place in the job, and the text (``line``: with its label)."""

    id: str | None
    field: str
    text: str
    line: str


def refused(refusal: BadJob) -> dict[str, object]:
    """Return the answer to a question about a job that can't be used."""
    return {"error": say("page.error_text", wrong=refusal.wrong, remedy=refusal.remedy)}
