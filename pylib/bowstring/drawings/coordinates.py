"""Where things stand for an instrument or another drawing: as on a map, in the job's feet or in metres.

The answer's frame has y toward the curve whatever its hand; here y is to the left of A to B, as a map has it, so a
curve on the right lies at negative y. Where the drawing gives two marks' coordinates (``control``), these
are the drawing's.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from bowstring.report.forms.answer import Answer
from bowstring.units.sizes import FOOT

Place = tuple[float, float]


@dataclass(frozen=True)
class Coordinates:
    """Turns places of an answer's frame (metres) into easting and northing, or x and y, in ``unit``.

    Attributes:
        unit: ``ft`` or ``m``, of which ``size`` is the metres of one.
        drawn: they are the drawing's own; otherwise A is at 0, 0 and B along x.
        flip: -1 for a curve on the right of A to B.
    """

    unit: str
    size: float
    drawn: bool
    flip: float
    origin: Place
    along: Place

    def of(self, x: float, y: float) -> Place:
        """Return a place's x and y, which are its easting and its northing."""
        (ox, oy), (ux, uy), across = self.origin, self.along, y * self.flip
        return (ox + x * ux - across * uy) / self.size, (oy + x * uy + across * ux) / self.size


def unit_of(unit: str) -> tuple[str, float]:
    """Return ``ft`` or ``m`` for a job's unit, and the metres of one: what other programs count in."""
    return ("ft", FOOT) if unit in ("ft", "ft-in") else ("m", 1.0)


def coordinates(answer: Answer) -> Coordinates:
    """Return how an answer's places are told.

    Raises ``ValueError`` where nobody may build from it yet, since a place on the wrong hand looks like any other.
    """
    if answer["stops"] or answer["side"] is None:
        raise ValueError("no coordinates of a job that is stopped")
    unit, size = unit_of(answer["unit"])
    flip = -1.0 if answer["side"] == "right" else 1.0
    axes = answer["site"]["axes"]
    if axes is None:
        return Coordinates(unit, size, False, flip, (0.0, 0.0), (1.0, 0.0))
    first, last = (_east_north(answer["stakes"][end]["drawing"], axes) for end in (0, -1))
    dx, dy = last[0] - first[0], last[1] - first[1]
    length = hypot(dx, dy)
    return Coordinates(unit, size, True, flip, first, (dx / length, dy / length))


def _east_north(pair: list[float], axes: str) -> Place:
    return (pair[1], pair[0]) if axes == "n-e" else (pair[0], pair[1])
