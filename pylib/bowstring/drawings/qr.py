"""A link as a QR code, drawn as SVG: the one module that knows segno, imported when somebody asks for a code.

Dark on light whatever the page's scheme, since many cameras read nothing else, with the quiet zone that the standard
wants (ISO/IEC 18004, 6.3.8: four modules) in the drawing itself.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from html import escape

import segno

from bowstring.words import say

QUIET = 4
"""Modules of blank around the code."""

MOST_SIDE = 149
"""The most modules of a side (version 33), the quiet zone left out: across a phone's 360 pixels each is over two, which
another phone's camera still tells apart at arm's length."""

MOST_PRINTED = 73
"""The most modules of a side on paper (version 14): over a third of a millimeter each, four dots of a printer."""

LEVELS = ("m", "l")
"""Error correction, the better first: M stands some 15 % of harm (a scratch, the sun), L 7 %."""


@dataclass(frozen=True)
class Code:
    """A code: its modules by rows, dark ones true; ``level``: the correction that it has room for."""

    rows: tuple[tuple[bool, ...], ...]
    level: str

    @property
    def side(self) -> int:
        return len(self.rows)


def code_of(text: str, most: int = MOST_SIDE) -> Code | None:
    """Return a text's code, or ``None`` where the text is too long for one of ``most`` modules a side.

    >>> code = code_of("https://example.org/#b2")
    >>> (code.side, code.level) if code else None
    (25, 'm')
    """
    for level in LEVELS:
        try:
            made = segno.make(text, error=level, micro=False, boost_error=False)
        except segno.DataOverflowError:
            continue
        rows = tuple(tuple(bool(module & 1) for module in row) for row in made.matrix)
        if len(rows) <= most:
            return Code(rows, level)
    return None


def qr_svg(code: Code, *, id: str) -> str:
    """Return a code as SVG, a drawing unit a module."""
    side = code.side + 2 * QUIET
    path = "".join(f"M{left} {top}h{width}v1h-{width}z" for left, top, width in _runs(code.rows))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" id="{escape(id)}" class="qr" viewBox="0 0 {side} {side}" role="img" '
        f'aria-label="{escape(say("hand_over.qr_title"))}" shape-rendering="crispEdges">'
        f'<path fill="#fff" d="M0 0h{side}v{side}h-{side}z"/><path fill="#000" d="{path}"/></svg>'
    )


def _runs(rows: Sequence[Sequence[bool]]) -> Iterator[tuple[int, int, int]]:
    """Yield the dark modules that stand together in a row: left, top, how many."""
    for top, row in enumerate(rows):
        start = None
        for left, dark in enumerate((*row, False)):
            if dark and start is None:
                start = left
            elif not dark and start is not None:
                yield start + QUIET, top + QUIET, left - start
                start = None
