"""Joints square to the curve: how many panels, how long outside and inside, and what is wrong with them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil

from bowstring.forming.slab import Slab

NEAR = Fraction(1, 10**9)

INCH, FOOT = 0.0254, 0.3048

USUAL_MOST = ((4 * INCH, 10 * FOOT), (5 * INCH, 12 * FOOT), (6 * INCH, 15 * FOOT))
"""Thickness, and the longest panel: a ready-mix association's table. It lies within 24 to 36 times the thickness (ACI
302.1R, as it is quoted); 15 ft is the most for flatwork outside."""

TIMES = 30.0
"""Times the thickness, for a slab that is thinner than the table's first."""

RATIO, NEAR_RATIO = 1.5, 1.3
"""The longest side of a panel over its shortest: the most (ACI 302.1R, as it is quoted), and where that is near."""

DEPTH = 0.25
"""Of the thickness: a joint is cut so deep, at least."""

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
    """Equal panels between radial joints.

    Attributes:
        count: how many; there is a joint less.
        outside, inside: lengths along the two edges, metres.
        width: metres.
    """

    count: int
    outside: float
    inside: float
    width: float

    @property
    def ratio(self) -> float:
        """The longest side over the shortest."""
        sides = (self.outside, self.inside, self.width)
        return max(sides) / min(sides)

    def outside_marks(self) -> tuple[float, ...]:
        """Return where the joints stand along the outer form, metres from its start."""
        return tuple(self.outside * place for place in range(1, self.count))

    def inside_marks(self) -> tuple[float, ...]:
        """Return the same along the inner form."""
        return tuple(self.inside * place for place in range(1, self.count))


def panels(slab: Slab, count: int) -> Panels:
    """Return a slab in so many equal panels; raises ``ValueError`` for fewer than one."""
    if count < 1:
        raise ValueError("a slab is at least one panel")
    angle = slab.angle / count
    return Panels(count, slab.outer * angle, slab.inner * angle, slab.width)


def offered(slab: Slab, most: float) -> tuple[Panels, ...]:
    """Return the fewest equal panels of at most ``most`` metres along the outer edge, and one panel fewer where there
    can be: longer ones that a crew may prefer.

    Raises ``ValueError`` where ``most`` isn't above 0.
    """
    if most <= 0:
        raise ValueError("panels need a length")
    count = max(1, ceil(Fraction(slab.outer * slab.angle) / Fraction(most) - NEAR))
    return tuple(panels(slab, one) for one in (count, count - 1) if one)
