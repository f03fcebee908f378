"""How the edges meet where a line has a kink: carried straight on outside of it, cut back inside until they meet.

Outside, each edge runs on along its tangent by d tan(k/2), d the edge's distance from the line and k the kink: the two
right triangles between the line's end there, the edge and the miter (elementary geometry). Inside, the edges
themselves are followed back to where they cross; two straights do so after d tan(k/2), too. An arc's edge is a circle,
and its crossing with a straight or a circle is found by the line through both crossings (the radical axis).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, inf, tan

from bowstring.forming.line.meets import crossings
from bowstring.forming.line.runs import Run, between, loop_area
from bowstring.geometry.plane import Point

POLISHES = 4
"""Newton's steps after the closed formula: each doubles the digits that two flat curves' crossing lost."""


class NoMiter(ValueError):
    """The edges inside of a kink don't meet: their pieces are too short for the width, or bend away."""


@dataclass(frozen=True)
class Meeting:
    """Where two edges meet inside of a kink: metres back from the first one's end, and on from the second's start."""

    before: float
    after: float


def reach(distance: float, kink: float) -> float:
    """Return how far the edges of two straights run on, or back, to their miter, metres: d tan(k/2), never negative.

    ``distance``: from the line to the edge, metres; ``kink``: radians; the signs of both are left out.

    >>> from math import radians
    >>> round(reach(2.0, radians(90)), 9)
    2.0
    """
    return abs(distance) * tan(abs(kink) / 2)


def meeting(first: Run, second: Run) -> Meeting:
    """Return where the edge that ends at a kink and the one that starts there cross, the crossing nearest to the kink.

    Raises ``NoMiter`` where they don't, or not between the ends of both.
    """
    found = [_polished(first, second, point) for point in crossings(first, second)]
    good = [one for one in found if 0 < one.before < first.length and 0 < one.after < second.length]
    if not good:
        raise NoMiter
    return min(good, key=lambda one: one.before + one.after)


def _polished(first: Run, second: Run, point: Point) -> Meeting:
    """Return how far along both runs a crossing stands, from a point near it: Newton's method in both lengths."""
    back, on = first.length + _from_end(first, point), second.along(point)
    best, miss = Meeting(first.length - back, on), inf
    for _ in range(POLISHES):
        here, there = first.at(back), second.at(on)
        gap = there.point.minus(here.point)
        if hypot(*gap) >= miss:
            break
        best, miss = Meeting(first.length - back, on), hypot(*gap)
        bottom = here.ahead.cross(there.ahead)
        if bottom == 0:
            break
        back, on = back + gap.cross(there.ahead) / bottom, on + gap.cross(here.ahead) / bottom
    return best


def _from_end(run: Run, point: Point) -> float:
    """How far past a run's end, along it, a point stands, metres; behind it below 0."""
    return Run(run.end, run.length, run.curvature).along(point)


def overlap(corner: Point, first: Run, second: Run, met: Meeting) -> float:
    """Return the area that both pieces would have inside of a kink, square metres: from the corner along the first
    piece's square end, back along its edge to the crossing, along the second one's edge and back to the corner."""
    one, other = first.part(first.length - met.before, 0.0), second.part(0.0, second.length - met.after)
    # Forward: the corner, the second's square end, its edge on to the crossing, the first's edge on to its square end.
    return abs(loop_area([between(corner, other.start.point), other, one, between(one.end.point, corner)]))
