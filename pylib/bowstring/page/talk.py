"""What the page's script and its Python tell one another, as JSON.

Without ``from __future__ import annotations``, as the answer's forms are.
"""

from collections.abc import Mapping
from typing import Any, Literal, TypedDict, final

Asked = Mapping[str, Any]
"""A question of the page's script: what it may hold is told by the function that answers it."""


@final
class ErrorRow(TypedDict):
    """Why a field can't be used: its id, or ``None``, its place in the job, and the text (``line``: with its label)."""

    id: str | None
    field: str
    text: str
    line: str


@final
class ComputedSheet(TypedDict):
    """A job's sheet and site plan as HTML, its link or why it has none, and how each field was read."""

    sign: Literal["computed"]
    sheet: str
    site_plan: str
    link: str
    link_note: str
    stop: bool
    unit_note: str
    example: bool
    echoes: dict[str, str]
    errors: list[ErrorRow]


@final
class RefusedSheet(TypedDict):
    """Why there is no sheet, and how the other fields were read."""

    sign: Literal["refused"]
    site_plan: str
    errors: list[ErrorRow]
    echoes: dict[str, str]
    unit_note: str


@final
class State(TypedDict):
    """What the bar says of the job: a sign by its name (``computed``, ``ask``, ``stop``, ``refused``), and a text."""

    sign: str
    text: str


class Face(TypedDict):
    """One face as HTML, and what the bar says; each face may tell more."""

    sign: Literal["computed", "refused"]
    html: str
    state: State
