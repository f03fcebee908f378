"""Code without the places of its instructions: a fault is told by its function, and by the line where that begins.

A place for each instruction would be a fiftieth of a saved page; the functions of this house are a few lines long.
"""

from types import CodeType

NO_COLUMNS, NOTHING = 13, 15
"""Kinds of entries in a code's table of places (Objects/locations.md in CPython's source)."""

LONGEST = 8
"""Code units that one entry tells of."""

_SAME_LINE = b"\0"  # how far from the line before


def at_their_first_line(code: CodeType, *, told: bool = True) -> CodeType:
    """Return the code with all of it on its first line, or on no line at all (``told``); that of its functions and
    classes, too."""
    parts = tuple(at_their_first_line(one, told=told) if isinstance(one, CodeType) else one for one in code.co_consts)
    return code.replace(co_consts=parts, co_linetable=_table(len(code.co_code) // 2, told=told))


def _table(units: int, *, told: bool) -> bytes:
    """The table of places of so many code units: without an entry for each, a traceback couldn't be written."""
    kind, after = (NO_COLUMNS, _SAME_LINE) if told else (NOTHING, b"")
    lengths = [LONGEST] * (units // LONGEST) + [units % LONGEST] * bool(units % LONGEST)
    return b"".join(bytes([0x80 | kind << 3 | length - 1]) + after for length in lengths)
