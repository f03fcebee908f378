"""Joints square to the curve: how many panels, how long outside and inside, and what is wrong with them.

Panels are even between the ends of a slab; where a joint has to stand at some place, even on each side of it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil, pi

from bowstring.forming.partly import along, corner, width_at
from bowstring.forming.slab import Slab, Taper

NEAR = Fraction(1, 10**9)

INCH, FOOT = 0.0254, 0.3048

USUAL_MOST = ((4 * INCH, 10 * FOOT), (5 * INCH, 12 * FOOT), (6 * INCH, 15 * FOOT))
"""Thickness, and the longest panel: a ready-mix association's table. It lies within 24 to 36 times the thickness (ACI
302.1R, as it is quoted); 15 ft is the most for flatwork outside."""

TIMES = 30.0
"""Times the thickness, for a slab that is thinner than the table's first."""

RATIO, NEAR_RATIO = 1.5, 1.3
"""The longest side of a panel over its shortest: the most (ACI 302.1R, as it is quoted), and where that is near."""

DUST = 1e-6
"""A share of a ratio of sides, far below what is printed of it: so little past a limit is a float's, not a panel's."""

LEAST_CORNER = 60.0
"""Degrees (a paving association's wiki): a sharper corner breaks off."""

DEPTH = 0.25
"""Of the thickness: a joint is cut so deep, at least."""

ISOLATION = {True: 0.0127, False: 0.012}
"""Metres, on a tape in feet and on one in metres: how wide an isolation joint is, and the strip in it."""

NARROW = 2 * FOOT
"""No slab is narrower (a paving association's wiki): a curb or a band is, and panels as long as wide don't suit it."""


def is_past(ratio: float, most: float = RATIO) -> bool:
    """Tell whether the longest side of a panel over its shortest is more than it may be: 6 over 4 isn't past 1.5.

    >>> is_past(1.5 + 1e-12), is_past(1.5001), is_past(1.31, NEAR_RATIO)
    (False, True, True)
    """
    return ratio > most * (1 + DUST)


def usual_most(thickness: float) -> float:
    """Return the longest usual panel of a slab so thick, both metres; between the table's rows by proportion.

    >>> round(usual_most(0.1016), 4), round(usual_most(0.1), 4)
    (3.048, 3.0)
    """
    first, last = USUAL_MOST[0], USUAL_MOST[-1]
    if thickness <= first[0] or thickness >= last[0]:
        return min(TIMES * thickness, last[1])
    low, high = next(two for two in pairwise(USUAL_MOST) if thickness <= two[1][0])
    return low[1] + (high[1] - low[1]) * (thickness - low[0]) / (high[0] - low[0])


def spread(lengths: Sequence[float], count: int) -> list[int]:
    """Return into how many panels each stretch of a length is parted, at least one each, so that the longest of
    ``count`` is as short as it can be.

    >>> spread([12.0, 10.0, 27.3], 11)
    [3, 2, 6]
    """
    counts = [1] * len(lengths)
    while sum(counts) < count:
        counts[max(range(len(lengths)), key=lambda one: lengths[one] / counts[one])] += 1
    return counts


@dataclass(frozen=True)
class Panels:
    """Panels between radial joints, at equal angles between the places where one has to stand.

    Attributes:
        shares: where each ends, as a share of the slab's angle.
        outer, inner: where each panel ends along the edges, metres from their start.
        widths: at the start, at each joint and at the end, metres.
        corner: the least angle between a joint and an edge, radians: square where the width is the same all along.
    """

    shares: tuple[float, ...]
    outer: tuple[float, ...]
    inner: tuple[float, ...]
    widths: tuple[float, ...]
    corner: float = pi / 2

    @property
    def count(self) -> int:
        """How many; there is a joint less."""
        return len(self.shares)

    @property
    def outside(self) -> float:
        """The length of the longest along the outer edge, metres."""
        return max(_parts(self.outer))

    @property
    def inside(self) -> float:
        """The length of the longest along the inner edge, metres."""
        return max(_parts(self.inner))

    @property
    def even(self) -> bool:
        """Whether the slab is as wide at each end of each."""
        return len(set(self.widths)) == 1

    @property
    def alike(self) -> bool:
        """Whether all are of one size."""
        angles = _parts(self.shares)
        return self.even and max(angles) - min(angles) <= float(NEAR)

    @property
    def ratios(self) -> tuple[float, ...]:
        """The longest side of each over its shortest."""
        sides = zip(_parts(self.outer), _parts(self.inner), self.widths, self.widths[1:], strict=False)
        return tuple(max(four) / min(four) for four in sides)

    @property
    def ratio(self) -> float:
        """The most of these."""
        return max(self.ratios)

    @property
    def odd(self) -> int:
        """The number of the panel whose shape is the worst, where it isn't one of the longest; else 0."""
        outside, ratios = _parts(self.outer), self.ratios
        worst = next(panel for panel, one in enumerate(ratios) if one >= max(ratios) * (1 - float(NEAR)))
        return worst + 1 if self.even and outside[worst] < max(outside) * (1 - float(NEAR)) else 0

    @property
    def odd_run(self) -> tuple[int, int]:
        """The numbers of the first and the last of the panels in a row as long as the odd one; zeros where none is."""
        if not self.odd:
            return 0, 0
        angles, first, last = _parts(self.shares), self.odd - 1, self.odd - 1
        while first and abs(angles[first - 1] - angles[first]) <= float(NEAR):
            first -= 1
        while last + 1 < len(angles) and abs(angles[last + 1] - angles[last]) <= float(NEAR):
            last += 1
        return first + 1, last + 1

    def outside_marks(self) -> tuple[float, ...]:
        """Return where the joints stand along the outer form, metres from its start."""
        return self.outer[:-1]


def _parts(marks: tuple[float, ...]) -> list[float]:
    return [marks[0], *(after - before for before, after in pairwise(marks))]


def panels(slab: Slab | Taper, count: int, fixed: Sequence[float] = ()) -> Panels:
    """Return a slab in so many panels, with a joint at each ``fixed`` share of its angle and equal angles between them:
    more panels where these alone make more.

    Raises ``ValueError`` for fewer than one, and for a place that isn't between the ends or after the one before.
    """
    if count < 1:
        raise ValueError("a slab is at least one panel")
    stops = [0.0, *fixed, 1.0]
    if any(after <= before for before, after in pairwise(stops)):
        raise ValueError("joints stand between the ends, one after another")
    edge = [along(slab, "outside", stop) for stop in stops]
    counts = spread([after - before for before, after in pairwise(edge)], count)
    shares = tuple(
        last if place == parts else first + (last - first) * place / parts
        for (first, last), parts in zip(pairwise(stops), counts, strict=True)
        for place in range(1, parts + 1)
    )
    outer, inner = (tuple(along(slab, edge, share) for share in shares) for edge in ("outside", "inside"))
    widths = tuple(width_at(slab, share) for share in (0.0, *shares))
    return Panels(shares, outer, inner, widths, corner(slab))


def offered(slab: Slab | Taper, most: float, fixed: Sequence[float] = ()) -> tuple[Panels, ...]:
    """Return the fewest panels of at most ``most`` metres along the outer edge, with joints at the ``fixed`` shares,
    and one panel fewer where there can be: longer ones that a crew may prefer.

    Raises ``ValueError`` where ``most`` isn't above 0.
    """
    if most <= 0:
        raise ValueError("panels need a length")
    edge = [along(slab, "outside", stop) for stop in (0.0, *fixed, 1.0)]
    count = sum(max(1, ceil(Fraction(after - before) / Fraction(most) - NEAR)) for before, after in pairwise(edge))
    made = panels(slab, count, fixed)
    while made.outside > most * (1 + 1e-8):  # of panels at equal angles along an edge that tapers some are longer
        count += 1
        made = panels(slab, count, fixed)
    return (made, panels(slab, count - 1, fixed)) if count > len(fixed) + 1 else (made,)
