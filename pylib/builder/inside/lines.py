"""Code without the columns of its instructions: a fault's lines are told, and half of what they took is saved."""

from types import CodeType

NO_COLUMNS, NOTHING = 13, 15
"""Kinds of entries in a code's table of places (Objects/locations.md in CPython's source)."""

LONGEST = 8
"""Code units that one entry tells of."""


def without_columns(code: CodeType, *, lines: bool = True) -> CodeType:
    """Return the code with its lines alone, or with no place at all; that of its functions and classes, too."""
    parts = tuple(without_columns(part, lines=lines) if isinstance(part, CodeType) else part for part in code.co_consts)
    return code.replace(co_consts=parts, co_linetable=_table(code, lines=lines))


def _table(code: CodeType, *, lines: bool) -> bytes:
    table = bytearray()
    before = code.co_firstlineno
    for start, end, line in code.co_lines():
        left = (end - start) // 2
        while left:
            length = min(left, LONGEST)
            left -= length
            if line is None or not lines:
                table.append(_first(NOTHING, length))
            else:
                table.append(_first(NO_COLUMNS, length))
                table += _signed(line - before)
                before = line
    return bytes(table)


def _first(kind: int, length: int) -> int:
    return 0x80 | kind << 3 | length - 1


def _signed(number: int) -> bytes:
    """Return a signed number as the table has it: its sign last, six bits a byte, the lowest first."""
    left = -number << 1 | 1 if number < 0 else number << 1
    written = bytearray()
    while left >= 64:
        written.append(0x40 | left & 63)
        left >>= 6
    return bytes(written + bytes([left]))
