"""A part of a slab, from its first end to a share of its angle: how long its edges are, and how large it is."""

from __future__ import annotations

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


def share_of(slab: Slab | Taper, part: float) -> float:
    """Return the share of the angle up to which a part of the whole area lies, 0 to 1.

    >>> share_of(Taper(20.0, 1.0, 3.0, 0.5), 0.25) > 0.25
    True
    """
    if isinstance(slab, Slab):
        return part
    low, high = 0.0, 1.0
    for _ in range(HALVES):
        middle = (low + high) / 2
        low, high = (middle, high) if area_to(slab, middle) < part * slab.area else (low, middle)
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
