"""What a sheet's parts are made of: paragraphs, lists, tables, drawings and headings in titled sections."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

MANY = 24
"""Longer tables of stakes are for levels beyond what a crew sets by hand; the sheet then shows the telling ones
only."""


@dataclass(frozen=True)
class Paragraph:
    """A paragraph; ``kind`` is ``plain``, ``caution``, ``stop`` (not to be built from), ``key`` (what must not be
    missed) or ``worked``."""

    text: str
    kind: str = "plain"


@dataclass(frozen=True)
class Items:
    """A list of sentences; ``numbered`` from ``first`` on, or with ``kind`` ``caution`` or ``stop``."""

    texts: Sequence[str]
    kind: str = "plain"
    first: int | None = None


@dataclass(frozen=True)
class Table:
    """A table; the first column names the row."""

    head: Sequence[str]
    rows: Sequence[Sequence[str]]
    caption: str = ""


@dataclass(frozen=True)
class Drawing:
    """A drawing by its kind (see ``drawn``; ``mistake``: drawn when it is asked for) and level."""

    kind: str
    level: int = 0


@dataclass(frozen=True)
class Heading:
    """A heading within a section."""

    text: str


Block = Heading | Paragraph | Items | Table | Drawing


@dataclass(frozen=True)
class Section:
    """A titled part of the sheet; ``key`` names it for links and styles."""

    key: str
    title: str
    blocks: Sequence[Block]
