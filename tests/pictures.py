"""PNG read into its dots, by the format's own words (ISO/IEC 15948): what a test looks at is what a browser painted."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator
from typing import Any

import numpy as np

SIGNATURE = b"\x89PNG\r\n\x1a\n"
CHANNELS = {2: 3, 6: 4}


def parts_of(png: bytes) -> Iterator[tuple[str, bytes]]:
    """Yield a file's parts by name, each held against its check."""
    assert png.startswith(SIGNATURE)
    at = len(SIGNATURE)
    while at < len(png):
        (length,) = struct.unpack(">I", png[at : at + 4])
        named = png[at + 4 : at + 8 + length]
        (check,) = struct.unpack(">I", png[at + 8 + length : at + 12 + length])
        assert check == zlib.crc32(named)
        yield named[:4].decode(), named[4:]
        at += 12 + length


def dots_of(png: bytes) -> np.ndarray[Any, Any]:
    """Return a picture in color as rows of its red dots, 0 to 255."""
    parts = list(parts_of(png))
    width, height, depth, colour, _, _, laced = struct.unpack(">IIBBBBB", dict(parts)["IHDR"])
    assert depth == 8 and colour in CHANNELS and not laced
    step = CHANNELS[colour]
    raw = zlib.decompress(b"".join(part for name, part in parts if name == "IDAT"))
    rows, above, line = [], np.zeros(width * step, np.uint8), width * step + 1
    for start in range(0, height * line, line):
        above = _row(raw[start], np.frombuffer(raw, np.uint8, width * step, start + 1), above, step)
        rows.append(above[::step])
    return np.array(rows, np.uint8)


def _row(kind: int, told: np.ndarray[Any, Any], above: np.ndarray[Any, Any], step: int) -> np.ndarray[Any, Any]:
    """Return a row's bytes from what is told of them; nearly all rows are told in one of the first three ways."""
    if kind == 0:
        return told
    if kind == 1:
        return np.add.accumulate(told.reshape(-1, step), dtype=np.uint8).reshape(-1)
    if kind == 2:
        return told + above
    row, up = bytearray(told.tobytes()), above.tobytes()
    for at in range(len(row)):
        left = row[at - step] if at >= step else 0
        corner = up[at - step] if at >= step else 0
        row[at] = (row[at] + _guess(kind, left, up[at], corner)) & 255
    return np.frombuffer(bytes(row), np.uint8)


def _guess(kind: int, left: int, up: int, corner: int) -> int:
    if kind == 4:
        ahead = left + up - corner
        return min((left, up, corner), key=lambda one: abs(ahead - one))
    return (left + up) // 2
