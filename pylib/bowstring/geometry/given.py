"""One given of the drawing: which measure of the arc it settles, and when an arc agrees with it.

On a drawing a whole number, a fraction, and feet and inches are exact; a place typed after the point is a rounding.
So a length agrees within one mark of the tape, or within half a unit of its last place after the point, whichever is
more. An angle agrees within half of its last second, minute or decimal typed, or within what changes the arc's length
by a mark.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import degrees, inf

from bowstring.geometry.arc import MEASURES, Arc, degree_by_chord, radius_by_chord, radius_of_degree

FIELDS = ("radius", "diameter", "degree", *MEASURES[1:])
"""The givens' fields in the order that decides ties; ``diameter`` and ``degree`` stand in the radius' place."""

ANGLES = frozenset({"central_angle", "degree"})
DUST = 1e-12
"""A computed given that agrees to this part of itself agrees."""

SLACK = 1 + 1e-9
"""A given that differs by just what it may still agrees."""


@dataclass(frozen=True)
class Given:
    """One measure from the drawing.

    Attributes:
        field: one of ``FIELDS``.
        value: metres, or degrees for the central angle and the degree of curve.
        place: one unit of the last place typed after the point, in the same unit, 0 without one; of an angle its last
            second, minute or decimal.
        by_chord: a degree of curve over a chord of 100 ft, not over so much arc.
    """

    field: str
    value: float
    place: float = 0.0
    by_chord: bool = False

    @property
    def measure(self) -> str:
        """The arc's measure that this settles."""
        return "radius" if self.field in ("diameter", "degree") else self.field

    @property
    def settles(self) -> float:
        """The value of that measure."""
        if self.field == "diameter":
            return self.value / 2
        if self.field == "degree":
            return radius_by_chord(self.value) if self.by_chord else radius_of_degree(self.value)
        return self.value

    def computed(self, arc: Arc) -> float | None:
        """Return what an arc has for this field (``None`` where it has none)."""
        if self.field == "diameter":
            return 2 * arc.radius
        if self.field == "degree":
            return degree_by_chord(arc.radius) if self.by_chord else arc.degree_of_curve
        value: float | None = getattr(arc, self.field)
        return value

    def one_mark(self, arc: Arc, mark: float) -> float:
        """Return what a mark of the tape is in this field: of an angle, what changes the arc's length by one."""
        if self.field == "central_angle":
            return degrees(mark / arc.radius)
        if self.field == "degree":  # the arc's length goes with the radius, and that against the degree
            return arc.degree_of_curve * mark / arc.arc_length
        return mark

    def off_by(self, arc: Arc, mark: float) -> float:
        """Return how far an arc is from this given, as a part of what it may differ."""
        return self._apart(arc) / max(self.one_mark(arc, mark), self.place / 2)

    def agrees(self, arc: Arc, mark: float) -> bool:
        """Whether an arc has this given."""
        return self.off_by(arc, mark) <= SLACK

    def over_a_mark(self, arc: Arc, mark: float) -> bool:
        """Whether an arc is further from this given than a mark tells, agreeing or not."""
        return self._apart(arc) > self.one_mark(arc, mark) * SLACK

    def _apart(self, arc: Arc) -> float:
        computed = self.computed(arc)
        if computed is None:
            return inf
        off = abs(self.value - computed)
        # A number out of another program may carry digits down to the float's last: its dust is no disagreement.
        return 0.0 if off <= DUST * self.value else off
