"""Joints along a line: one wherever two pieces meet, on the miter at a kink, and between them square to the line; one
wherever the job needs it besides, as at an apron's ends."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import pairwise
from math import atan2, ceil, pi
from typing import NamedTuple

from bowstring.forming.joints import NEAR
from bowstring.forming.joints import spread as panels_of
from bowstring.forming.line.edges import Edge
from bowstring.forming.line.pieces import Hand
from bowstring.forming.line.sides import Side, point_on
from bowstring.forming.line.sweep import Front, Sweep
from bowstring.geometry.plane import distance

TRIES = 12
"""So many panels more are tried in a piece for one beside a kink that is longer than the others."""

LEAST_SIDE = 0.1
"""Of the width: a joint nearer than that to the inner corner of a kink isn't made."""


Stops = tuple[tuple[float, ...], ...]
"""Of each piece the shares of it where a joint has to stand."""


class Mark(NamedTuple):
    """The end of a panel.

    Attributes:
        piece: the number of the piece, from 0, on which the panel lies.
        share: of that piece, for a joint square to it; ``None`` where the piece itself ends there.
        front: along both edges, metres.
        length: across the slab, metres.
    """

    piece: int
    share: float | None
    front: Front
    length: float


@dataclass(frozen=True)
class LinePanels:
    """Panels along a line, each between two marks; the last one's mark is the line's end.

    Attributes:
        sweep: of the slab.
        counts: into how many panels each piece is parted, as far as a kink leaves room for its joints.
        stops: of each piece the shares of it where a joint has to stand besides, in order.
    """

    sweep: Sweep
    counts: tuple[int, ...]
    stops: Stops = ()

    @cached_property
    def marks(self) -> tuple[Mark, ...]:
        """In order."""
        found = []
        for piece, count in enumerate(self.counts):
            for share in _shares(self.sweep, piece, count, _fixed(self.stops, piece)):
                found.append(Mark(piece, share, self.sweep.across(piece, share), self.sweep.slab.width))
            found.append(Mark(piece, None, *_end(self.sweep, piece)))
        return tuple(found)

    @property
    def count(self) -> int:
        """How many panels; there is a joint less."""
        return len(self.marks)

    @cached_property
    def sides(self) -> tuple[tuple[float, float], ...]:
        """Of each panel how long it is along the left and along the right edge, metres."""
        fronts = [Front(0.0, 0.0), *(mark.front for mark in self.marks)]
        return tuple((after.left - before.left, after.right - before.right) for before, after in pairwise(fronts))

    @property
    def longest(self) -> float:
        """The longest side of any along an edge, metres."""
        return max(max(two) for two in self.sides)

    @property
    def shortest(self) -> float:
        """The shortest, metres."""
        return min(min(two) for two in self.sides)

    @cached_property
    def ratios(self) -> tuple[float, ...]:
        """Of each panel its longest side over its shortest."""
        ends = [self.sweep.slab.width, *(mark.length for mark in self.marks)]
        fours = [(*two, *across) for two, across in zip(self.sides, pairwise(ends), strict=True)]
        return tuple(max(four) / min(four) for four in fours)

    @property
    def ratio(self) -> float:
        """The most of these."""
        return max(self.ratios)

    def corner(self, join: int) -> float:
        """Return the least angle between the joint where two pieces meet and an edge, radians: square but at a kink."""
        if self.sweep.slab.line.joins[join].tangent:
            return pi / 2
        slab, front = self.sweep.slab, self.sweep.on_join(join)
        left, right = point_on(slab.left_edge, front.left), point_on(slab.right_edge, front.right)
        across = atan2(left.y - right.y, left.x - right.x)
        angles = []
        for edge in (slab.left_edge, slab.right_edge):
            before, after = _headings(edge, join)
            angles += [abs((across - heading + pi) % (2 * pi) - pi) for heading in (before, after)]
        return min(min(angle, pi - angle) for angle in angles)

    def share(self, number: int) -> float:
        """Return the share of the sweep at which the panel ``number``, from 1, is full."""
        mark = self.marks[number - 1]
        if number == self.count:
            return 1.0
        if mark.share is None:
            return self.sweep.share_on_join(mark.piece)
        return self.sweep.share_across(mark.piece, mark.share)


def _headings(edge: Edge, join: int) -> tuple[float, float]:
    """Which way an edge goes before and after the place where two pieces meet."""
    before = [part.run for part in edge.runs if part.piece == join]
    after = [part.run for part in edge.runs if part.piece == join + 1]
    return before[-1].end.heading, after[0].start.heading


def _end(sweep: Sweep, piece: int) -> tuple[Front, float]:
    """Where a piece ends along both edges, and how long its end is."""
    front, slab = sweep.on_join(piece), sweep.slab
    if piece == len(sweep.square) - 1 or slab.line.joins[piece].tangent:
        return front, slab.width
    return front, distance(point_on(slab.left_edge, front.left), point_on(slab.right_edge, front.right))


def _sides(sweep: Sweep, piece: int) -> tuple[Side, Side]:
    """The longer and the shorter edge of a piece."""
    one, other = sweep.sides["left"][piece], sweep.sides["right"][piece]
    return (one, other) if one.length >= other.length else (other, one)


def _fixed(stops: Stops, piece: int) -> tuple[float, ...]:
    return stops[piece] if stops else ()


def _stretches(longer: Side, stops: Sequence[float]) -> list[tuple[float, float]]:
    """From where to where along its longer edge a piece has no joint that has to stand at a place of its own."""
    return list(pairwise([longer.begins, *(longer.at(stop) for stop in stops), longer.ends]))


def _shares(sweep: Sweep, piece: int, count: int, stops: Sequence[float]) -> list[float]:
    """Where the joints of a piece stand, as shares of it: even along its longer edge between those that are fixed."""
    longer, _shorter = _sides(sweep, piece)
    low, high = sweep.square[piece]
    stretches = _stretches(longer, stops)
    counts = panels_of([last - first for first, last in stretches], count)
    shares: list[float] = []
    for number, ((first, last), parts) in enumerate(zip(stretches, counts, strict=True)):
        shares += [longer.share(first + (last - first) * place / parts) for place in range(1, parts)]
        shares += [stops[number]] if number < len(stops) else []
    return [share for share in shares if low < share < high and _clear(sweep, piece, share)]


def _clear(sweep: Sweep, piece: int, share: float) -> bool:
    """Whether a joint stands clear of the inner corners of the kinks before and after its piece."""
    least = LEAST_SIDE * sweep.slab.width
    hands: tuple[Hand, Hand] = ("left", "right")
    return all(
        (side.before >= 0 or side.at(share) - side.begins >= least)
        and (side.after >= 0 or side.ends - side.at(share) >= least)
        for side in (sweep.sides[hand][piece] for hand in hands)
    )


def _longest(sweep: Sweep, piece: int, count: int, stops: Sequence[float]) -> float:
    """The longest side along an edge of a piece in so many panels, metres."""
    shares = _shares(sweep, piece, count, stops)
    found = 0.0
    for side in _sides(sweep, piece):
        places = [side.begins, *(side.at(share) for share in shares), side.ends]
        found = max(found, *(after - before for before, after in pairwise(places)))
    return found


def fewest(sweep: Sweep, most: float, stops: Stops = ()) -> LinePanels:
    """Return the fewest panels of each piece that are no longer than ``most`` metres along either edge; one that a kink
    makes longer may stay.

    Raises ``ValueError`` where ``most`` isn't above 0.
    """
    if most <= 0:
        raise ValueError("panels need a length")
    counts = []
    for piece in range(len(sweep.square)):
        fixed = _fixed(stops, piece)
        longer, _shorter = _sides(sweep, piece)
        least = sum(
            max(1, ceil(Fraction(last - first) / Fraction(most) - NEAR)) for first, last in _stretches(longer, fixed)
        )
        tried = range(least, least + TRIES + 1)
        fits = (count for count in tried if _longest(sweep, piece, count, fixed) <= most * (1 + 1e-8))
        counts.append(next(fits, least))
    return LinePanels(sweep, tuple(counts), stops)


def spread(sweep: Sweep, count: int, stops: Stops = ()) -> LinePanels:
    """Return so many panels, at least one in each piece and beside each joint that has to stand, spread so that the
    longest is as short as it can be."""
    pieces = range(len(sweep.square))
    stretches = [_stretches(_sides(sweep, piece)[0], _fixed(stops, piece)) for piece in pieces]
    counts = iter(panels_of([last - first for piece in stretches for first, last in piece], count))
    return LinePanels(sweep, tuple(sum(next(counts) for _stretch in piece) for piece in stretches), stops)
