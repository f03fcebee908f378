"""Joints square to the curve: how many panels, how long outside and inside, and what is wrong with them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from bowstring.forming.slab import Slab

NEAR = Fraction(1, 10**9)


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
