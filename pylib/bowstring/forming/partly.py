"""A part of a slab, from its first end to a share of its angle: how long its edges are, and how large it is."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import atan2, pi

from bowstring.forming.edge import Edge
from bowstring.forming.slab import Slab, Taper
from bowstring.geometry.arc import Arc

HALVES = 60
"""Bisections: a share of 1 to the last bits of a float."""


def width_at(slab: Slab | Taper, share: float) -> float:
    """Return the width at a share of the angle, metres."""
    return slab.width if isinstance(slab, Slab) else slab.width(share)


def along(slab: Slab | Taper, edge: str, share: float) -> float:
    """Return how far it is along the ``outside`` or ``inside`` edge to a share of the angle, metres."""
    if isinstance(slab, Slab):
        return (slab.outer if edge == "outside" else slab.inner) * slab.angle * share
    whole = slab.outside if edge == "outside" else slab.inside
    if share <= 0:
        return 0.0
    return Edge(Arc.of_angle(slab.radius, slab.angle * share / 2), whole.first, whole.offset(share)).length


def area_to(slab: Slab | Taper, share: float) -> float:
    """Return the area of the part, square metres."""
    if isinstance(slab, Slab):
        return slab.area * share
    if share <= 0:
        return 0.0
    return Taper(slab.radius, slab.first, slab.width(share), slab.angle * share, slab.lies).area


def bands_to(slab: Slab | Taper, wide: float, share: float) -> float:
    """Return the area of a part that lies within ``wide`` metres of an edge, square metres; all of it where the bands
    along both edges meet.

    Half of ro² - (ro - b)² and of (ri + b)² - ri² are together b (ro + ri), with b the width of a band: a polynomial of
    the second degree on either side of where the bands meet, so that Simpson's rule is exact.
    """

    def dense(at: float) -> float:
        width = width_at(slab, at)
        return min(wide, width / 2) * (2 * slab.middle if isinstance(slab, Slab) else _both_radii(slab, at))

    first, last = width_at(slab, 0.0), width_at(slab, 1.0)
    meet = (2 * wide - first) / (last - first) if last != first else 0.0
    stops = [0.0, *([meet] if 0 < meet < share else []), share]
    thirds = ((to - at) / 6 * (dense(at) + 4 * dense((at + to) / 2) + dense(to)) for at, to in pairwise(stops))
    return slab.angle * sum(thirds)


def _both_radii(slab: Taper, share: float) -> float:
    return slab.outside.radius(share) + slab.inside.radius(share)


def share_of(part: float, measure: Callable[[float], float]) -> float:
    """Return the share of the angle up to which a part of a whole lies, 0 to 1; ``measure`` tells how much lies up to a
    share, and grows with it.

    >>> round(share_of(0.25, lambda share: share * share), 9)
    0.5
    """
    low, high, wanted = 0.0, 1.0, part * measure(1.0)
    if part >= 1:
        return 1.0
    for _ in range(HALVES):
        middle = (low + high) / 2
        low, high = (middle, high) if measure(middle) < wanted else (low, middle)
    return (low + high) / 2


def leaning(edge: Edge, share: float) -> float:
    """Return the angle between the radius and an edge at a share of the angle, radians: square on an arc."""
    change = (edge.last - edge.first) / (2 * edge.line.half_angle)
    return atan2(edge.radius(share), change)


def corner(slab: Slab | Taper) -> float:
    """Return the least angle between a radial joint and an edge, radians."""
    if isinstance(slab, Slab):
        return pi / 2
    angles = (leaning(edge, share) for edge in (slab.outside, slab.inside) for share in (0.0, 1.0))
    return min(min(one, pi - one) for one in angles)


def turned(slab: Slab | Taper) -> float:
    """Return how far the outer edge turns from end to end, radians: what is set along it at a distance is so much
    longer a metre."""
    if isinstance(slab, Slab):
        return slab.angle
    return slab.angle + leaning(slab.outside, 1.0) - leaning(slab.outside, 0.0)
