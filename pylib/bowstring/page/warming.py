"""What other faces need is imported in small parts while nobody waits: a key then waits for one part at most."""

from __future__ import annotations

import importlib

WARMED = (
    "bowstring.drawings.svg",
    "bowstring.report.answer",
    "bowstring.layout.comparison",
    "bowstring.report.cards",
    "bowstring.page.staking",
    "bowstring.drawings.step",
    "bowstring.report.cautions",
    "bowstring.faces.numbers_later",
    "bowstring.page.linking",
    "bowstring.page.got",
    "bowstring.faces.checks",
    "bowstring.faces.build",
    "bowstring.faces.paper",
    "bowstring.drawings.qr",
    "bowstring.faces.why",
)
"""Modules that the faces need, in the order in which somebody comes to them; each imports what it needs itself."""


def warm(part: int) -> bool:
    """Import one part, and tell whether there is another one after it; raises ``IndexError`` where there is none."""
    importlib.import_module(WARMED[part])
    return part + 1 < len(WARMED)
