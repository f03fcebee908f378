"""What a reading that differs from what was asked looks like: a foot, an inch, digits swapped, the string's other end.

Common practice, no source. A difference of a mark is none: that is how stakes stand.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import floor

from bowstring.construction import Marks, Measure, Move, exact
from bowstring.errors import BadJob
from bowstring.geometry.plane import Point, distance
from bowstring.units.lengths import read_length
from bowstring.units.sizes import FOOT, INCH
from bowstring.units.tape import Tape

NEAR_PART = 1 / 8
"""A whole foot is no more a foot's slip when this part of it is missing."""

NO_SLIP = 1.25
"""Tape marks: a smaller difference is how a stake stands."""

FAR = 5
"""Tape marks that another digit must change a length by: in the last places it explains nothing."""

EXACT = 1 + 1e-9
"""What is a mark off to the last digit is within it."""

WHOLE_IN_FEET = (("foot", FOOT), ("inch", INCH))
WHOLE_IN_METRES = (("metre", 1.0), ("decimetre", 0.1))
"""Metres that a tape is misread by, or held at."""


@dataclass(frozen=True)
class Slip:
    """What one reading looks like.

    Attributes:
        kind: ``foot``, ``inch``, ``metre``, ``decimetre`` (so much more or less), ``swapped`` (two digits),
            ``six_nine`` (one for the other), ``fraction`` (1/8 for 1/4), ``other_end`` (of the string) or
            ``other_hand``.
        start, end: the marks that it was read between; asked, read: metres.
    """

    kind: str
    start: str
    end: str
    asked: float
    read: float

    @property
    def more(self) -> bool:
        """Whether it was read longer than asked."""
        return self.read > self.asked


def slips_of(asked: float, read: float, tape: Tape) -> Iterator[str]:
    """Yield what a length looks like that was read where another one was asked, metres; the likeliest first.

    >>> from bowstring.units.tape import make_tape
    >>> list(slips_of(12 * FOOT, 13 * FOOT, make_tape("ft-in", None)))
    ['foot']
    """
    wanted = tape.round(asked)
    off = abs(read - wanted)
    if off <= NO_SLIP * tape.mark:
        return
    for kind, size in WHOLE_IN_FEET if tape.feet else WHOLE_IN_METRES:
        if abs(off - size) <= min(tape.mark, size * NEAR_PART) * EXACT:
            yield kind
    if tape.unit == "ft-in" and _same(read, _fraction_misread(wanted, tape), tape):
        yield "fraction"
    for kind, would_be in _digits(wanted, tape):
        if abs(would_be - wanted) > FAR * tape.mark and _same(read, would_be, tape):
            yield kind


def wrong_lengths(asked: float, tape: Tape) -> Iterator[tuple[str, float]]:
    """Yield what a length is held or read as by mistake, metres, each with its kind.

    >>> from bowstring.units.tape import make_tape
    >>> [kind for kind, length in wrong_lengths(12 * FOOT, make_tape("ft-in", None)) if length == 13 * FOOT]
    ['foot']
    """
    wanted = tape.round(asked)
    for kind, size in WHOLE_IN_FEET if tape.feet else WHOLE_IN_METRES:
        yield kind, wanted + size
        if wanted > size:
            yield kind, wanted - size
    for kind, would_be in _digits(wanted, tape):
        if abs(would_be - wanted) > FAR * tape.mark:
            yield kind, would_be


def _same(read: float, would_be: float | None, tape: Tape) -> bool:
    return would_be is not None and abs(read - would_be) <= tape.mark / 4


def _fraction_misread(length: float, tape: Tape) -> float | None:
    """The length with its fraction of an inch read on the coarser lines: 3/8 as 3/4, ``None`` where it has none."""
    whole = floor(length / INCH + 1e-9)
    part = Fraction(round((length / INCH - whole) * 64), 64)
    if part.numerator == 0 or part.denominator < 4 or part * 2 >= 1:
        return None
    return (whole + float(part * 2)) * INCH


def _digits(length: float, tape: Tape) -> Iterator[tuple[str, float]]:
    """Yield the lengths that come out when neighbouring digits change places, or a 6 is a 9."""
    text = tape.show(length)
    for place, (one, other) in enumerate(pairwise(text)):
        if one.isdigit() and other.isdigit() and one != other:
            yield from _read("swapped", text[:place] + other + one + text[place + 2 :], tape)
    for place, one in enumerate(text):
        if one in "69":
            yield from _read("six_nine", text[:place] + ("9" if one == "6" else "6") + text[place + 1 :], tape)


def _read(kind: str, text: str, tape: Tape) -> Iterator[tuple[str, float]]:
    try:
        yield kind, read_length(text, tape.unit, "got").metres
    except BadJob:
        return


def find_slips(
    told: Sequence[Measure], asked: Sequence[Measure], moves: Sequence[Move], planned: Marks,
    names: Mapping[str, str], tape: Tape,
) -> Iterator[Slip]:  # fmt: skip
    """Yield what the readings of one step look like, the likeliest first.

    ``moves``, ``planned``: its moves as the sheet has them, and where all marks would stand; ``names``: the marks that
    its sentence names.
    """
    pairs = list(zip(told, asked, strict=True))
    for read, want in pairs:
        for kind in slips_of(want.length, read.length, tape):
            yield Slip(kind, read.start, read.end, want.length, read.length)
    mirrored = _mirrored(moves, planned)
    for read, want in pairs:
        if abs(read.length - want.length) <= NO_SLIP * tape.mark:
            continue
        if any(_close(other, read, want, tape) for other in _from_other_ends(read, moves, planned, names)):
            yield Slip("other_end", read.start, read.end, want.length, read.length)
        there = distance(mirrored[read.start], mirrored[read.end])
        if _close(there, read, want, tape):
            yield Slip("other_hand", read.start, read.end, want.length, read.length)


def _close(would_be: float, read: Measure, want: Measure, tape: Tape) -> bool:
    """Whether a length explains a reading: nearer to it than a mark, and than what was asked."""
    return abs(would_be - read.length) <= tape.mark and abs(want.length - would_be) > 2 * tape.mark


def _from_other_ends(read: Measure, moves: Sequence[Move], planned: Marks, names: Mapping[str, str]) -> Iterator[float]:
    """How far it is to a reading's mark from the other marks that the step's sentence names."""
    new = {move.mark for move in moves}
    mark, base = (read.end, read.start) if read.end in new else (read.start, read.end)
    if base in new:
        return
    for part in ("start", "end", "first", "last", "other"):
        other = names.get(part)
        if other in planned and other not in new and other != base:
            yield distance(planned[str(other)], planned[mark])


def _mirrored(moves: Sequence[Move], planned: Marks) -> dict[str, Point]:
    """Where the marks stand with everything that goes off a line done to its other side."""
    at = dict(planned)
    for move in moves:
        at[move.mark] = move.mirrored().place(at, exact)
    return at
