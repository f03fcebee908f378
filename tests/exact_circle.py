"""An arc in 30-digit arithmetic, from its chord and sagitta: where everything on it belongs, worked out apart from the
package. The frame is the answer's: A at the origin, x toward B, y toward the arc's middle."""

from __future__ import annotations

from typing import Any

import mpmath


class Circle:
    """The same arc in 30 digits: chord and sagitta are exact as given."""

    def __init__(self, chord: float, sagitta: float) -> None:
        with mpmath.workdps(30):
            c, s = mpmath.mpf(chord), mpmath.mpf(sagitta)
            self.radius, self.half = (c * c / 4 + s * s) / (2 * s), 2 * mpmath.atan2(2 * s, c)
            self.centre = (c / 2, s - self.radius)

    def at(self, fraction: Any) -> tuple[float, float]:
        """Where a part of the arc's length from A ends."""
        with mpmath.workdps(30):
            turned = self.half * (2 * mpmath.mpf(fraction) - 1)
            x, y = self.centre
            return float(x + self.radius * mpmath.sin(turned)), float(y + self.radius * mpmath.cos(turned))

    def over(self, x: float) -> tuple[float, float]:
        """Where the arc stands over x metres of its chord (up to a half circle)."""
        with mpmath.workdps(30):
            aside = mpmath.mpf(x) - self.centre[0]
            return x, float(self.centre[1] + mpmath.sqrt(max(self.radius**2 - aside**2, 0)))

    def off_tangent(self, x: float, end: str) -> tuple[float, float]:
        """Where the arc stands over x metres of the tangent at an end."""
        with mpmath.workdps(30):
            # Half the chord of a half circle is its radius, to the last of the thirty digits.
            turn = mpmath.asin(min(mpmath.mpf(x) / self.radius, mpmath.mpf(1))) / (2 * self.half)
            return self.at(turn if end == "A" else 1 - turn)

    def miss(self, x: float, y: float) -> float:
        with mpmath.workdps(30):
            return float(mpmath.hypot(x - self.centre[0], y - self.centre[1]) - self.radius)
