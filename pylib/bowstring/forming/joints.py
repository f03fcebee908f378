"""Joints square to the curve: how many panels, how long outside and inside, and what is wrong with them."""

from __future__ import annotations

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

LEAST_CORNER = 60.0
"""Degrees (a paving association's wiki): a sharper corner breaks off."""

DEPTH = 0.25
"""Of the thickness: a joint is cut so deep, at least."""

ISOLATION = {True: 0.0127, False: 0.012}
"""Metres, on a tape in feet and on one in metres: how wide an isolation joint is, and the strip in it."""

NARROW = 2 * FOOT
"""No slab is narrower (a paving association's wiki): a curb or a band is, and panels as long as wide don't suit it."""


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


@dataclass(frozen=True)
class Panels:
    """Panels between radial joints at equal angles.

    Attributes:
        count: how many; there is a joint less.
        outer, inner: where each panel ends along the edges, metres from their start.
        widths: at the start, at each joint and at the end, metres.
        corner: the least angle between a joint and an edge, radians: square where the width is the same all along.
    """

    count: int
    outer: tuple[float, ...]
    inner: tuple[float, ...]
    widths: tuple[float, ...]
    corner: float = pi / 2

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
        """Whether all are alike."""
        return len(set(self.widths)) == 1

    @property
    def ratio(self) -> float:
        """The longest side over the shortest, of the panel where that is the most."""
        sides = zip(_parts(self.outer), _parts(self.inner), self.widths, self.widths[1:], strict=False)
        return max(max(four) / min(four) for four in sides)

    def outside_marks(self) -> tuple[float, ...]:
        """Return where the joints stand along the outer form, metres from its start."""
        return self.outer[:-1]


def _parts(marks: tuple[float, ...]) -> list[float]:
    return [marks[0], *(after - before for before, after in pairwise(marks))]


def panels(slab: Slab | Taper, count: int) -> Panels:
    """Return a slab in so many panels of equal angles; raises ``ValueError`` for fewer than one."""
    if count < 1:
        raise ValueError("a slab is at least one panel")
    shares = [place / count for place in range(1, count + 1)]
    outer, inner = (tuple(along(slab, edge, share) for share in shares) for edge in ("outside", "inside"))
    widths = tuple(width_at(slab, share) for share in (0.0, *shares))
    return Panels(count, outer, inner, widths, corner(slab))


def offered(slab: Slab | Taper, most: float) -> tuple[Panels, ...]:
    """Return the fewest panels of at most ``most`` metres along the outer edge, and one panel fewer where there can be:
    longer ones that a crew may prefer.

    Raises ``ValueError`` where ``most`` isn't above 0.
    """
    if most <= 0:
        raise ValueError("panels need a length")
    count = max(1, ceil(Fraction(along(slab, "outside", 1.0)) / Fraction(most) - NEAR))
    made = panels(slab, count)
    while made.outside > most * (1 + 1e-8):  # of panels at equal angles along an edge that tapers some are longer
        count += 1
        made = panels(slab, count)
    return (made, panels(slab, count - 1)) if count > 1 else (made,)
