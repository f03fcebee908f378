"""How many sheets of plywood faces of one height take: whole rows, and sheets that the rest is ripped out of."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor

DUST = 1e-9


@dataclass(frozen=True)
class Sheets:
    """Sheets laid end to end along each face, row on row.

    Attributes:
        rows: of sheets as high as they are or hardly lower; each: sheets of those rows, a number a face.
        strip: how high what is ripped for the upper row is, metres, 0 where there is none.
        ripped: sheets out of which the strips of all faces come.
    """

    rows: int
    each: tuple[int, ...]
    strip: float
    ripped: int


def sheets_of(lengths: tuple[float, ...], height: float, sheet: tuple[float, float], saw: float) -> Sheets:
    """Return the sheets of faces so long and as high, metres; ``sheet``: its width, which stands upright, and its
    length; ``saw``: what a cut takes, and what is no row of its own.

    Strips from one sheet may be a saw cut too low together: halves of a sheet are halves. Where no two come out of one,
    it is a row as the others, cut down.

    >>> sheets_of((42.0, 41.0), 4 + 2 / 12, (4.0, 8.0), 1 / 96)
    Sheets(rows=1, each=(6, 6), strip=0.16666666666666696, ripped=1)
    """
    across, along = sheet
    rows = floor((height + saw - DUST) / across)
    rest = max(height - rows * across, 0.0)
    strip = rest if rest >= saw else 0.0
    of_one = floor((across + 2 * saw) / (strip + saw) + DUST)
    if strip and of_one < 2:
        rows, strip = rows + 1, 0.0
    pieces = [ceil(length / along - DUST) for length in lengths]
    ripped = -(-sum(pieces) // of_one) if strip else 0
    return Sheets(rows, tuple(rows * count for count in pieces), strip, ripped)
