"""How a text that somebody typed is shown inside a message: short, on one line, with nothing hidden in it."""

from __future__ import annotations

ECHO_LIMIT = 40
"""The most characters of somebody's text that a message repeats (escapes and the cut mark included)."""

_CUT = "\N{HORIZONTAL ELLIPSIS}"


def visible(text: str) -> str:
    r"""Return ``text`` with every character that can't be seen written as ``<U+202E>``.

    These are the ones that ``str.isprintable`` refuses: control, bidirectional-control, line-breaking,
    surrogate and unassigned characters, and every space but the plain one.

    >>> visible("A\u202eB")
    'A<U+202E>B'
    """
    return "".join(sign if sign.isprintable() else f"<U+{ord(sign):04X}>" for sign in text)


def quoted(text: str) -> str:
    """Return ``text`` in quotation marks, cut to ``ECHO_LIMIT`` characters: one line of printable text."""
    shown = visible(text[: ECHO_LIMIT + 1])
    if len(shown) > ECHO_LIMIT:
        shown = _whole_escapes(text, ECHO_LIMIT - len(_CUT)) + _CUT
    return f"\N{LEFT DOUBLE QUOTATION MARK}{shown}\N{RIGHT DOUBLE QUOTATION MARK}"


def _whole_escapes(text: str, room: int) -> str:
    """Return as much of the visible ``text`` as fits in ``room`` characters, no escape cut through."""
    kept = ""
    for sign in text:
        piece = visible(sign)
        if len(kept) + len(piece) > room:
            break
        kept += piece
    return kept
