"""Names that run from right to left, kept from turning what stands beside them.

Without it "4.20 m" beside a Hebrew or Arabic name may be shown on its other side, or with the digits of a neighbour.
Unicode's isolates (UAX 9: first strong isolate, pop directional isolate) hold in text, in a table of values and in a
drawing alike; programs that don't know them show nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

FSI, PDI = "\u2068", "\u2069"

_TURNS = re.compile("[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\U00010800-\U00010fff\U0001e800-\U0001efff]")
"""A sign of a script that runs from right to left, Arabic's digits among them."""


def isolated(text: str) -> str:
    """Return a text isolated from what will stand around it, where anything in it runs from right to left.

    >>> isolated("gate"), ascii(isolated("\u05d2\u05e9\u05e8"))
    ('gate', "'\\\\u2068\\\\u05d2\\\\u05e9\\\\u05e8\\\\u2069'")
    """
    if text.isascii() or FSI in text or not _TURNS.search(text):
        return text
    if "\n" in text:  # each line is shown by itself
        return "\n".join(isolated(line) for line in text.split("\n"))
    return FSI + text + PDI


def released(text: str) -> str:
    """Return a text with nothing in it isolated any more."""
    return text if text.isascii() else text.replace(FSI, "").replace(PDI, "")


def closed(lines: Iterable[str]) -> Iterator[str]:
    """Yield a text's lines, each with what it isolates opened and closed in it: a line is shown by itself."""
    depth = 0
    for line in lines:
        begun = depth
        for sign in line:
            depth = depth + 1 if sign == FSI else max(depth - 1, 0) if sign == PDI else depth
        yield FSI * begun + line + PDI * depth
