"""The loose end of a strip on closely set stakes, at once: what ``strip`` works out in some fifty milliseconds, from
three series in the square of the gap that were fitted to it (a test holds them to it, to a thousandth)."""

from __future__ import annotations

from dataclasses import dataclass

_MISS = (0.0491061, 0.005243, 0.001764)
_FIRST = (1.2678745, -0.036844, -0.01078)
_SECOND = (0.9281369, -0.053621, -0.012174)


def _series(of: tuple[float, float, float], gap: float) -> float:
    return of[0] + of[1] * gap**2 + of[2] * gap**4


@dataclass(frozen=True)
class LooseEnd:
    """A strip of ``radius`` metres on stakes ``gap`` metres apart, loose at its end.

    Raises ``ValueError`` where the stakes stand farther apart than a radius.
    """

    radius: float
    gap: float

    def __post_init__(self) -> None:
        if not 0 < self.gap <= self.radius:
            raise ValueError("stakes stand closer than a radius")

    @property
    def miss(self) -> float:
        """How far inside the arc the last bay runs, metres: about 0.049 a²/R.

        >>> round(LooseEnd(17.3736, 0.9144).miss / 0.0254, 3)
        0.093
        """
        share = self.gap / self.radius
        return _series(_MISS, share) * share**2 * self.radius

    @property
    def tightest(self) -> float:
        """The curvature at the first stake in, over that of the arc: 1.27, the tightest of all."""
        return _series(_FIRST, self.gap / self.radius)

    def held(self, stiffness: float) -> float:
        """Return the push on the end stake, newtons: the moment at the next one over the gap (``stiffness`` E I)."""
        return stiffness * self.tightest / (self.radius * self.gap)

    def pulled(self, stiffness: float) -> float:
        """Return the pull at the first stake in, the other way, newtons: (2 M1 - M2)/gap."""
        second = _series(_SECOND, self.gap / self.radius)
        return stiffness * (2 * self.tightest - second) / (self.radius * self.gap)
