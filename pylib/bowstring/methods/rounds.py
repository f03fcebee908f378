"""Round distances along a line: what a crew reads off the tape without a table, closer where the curve is steep to it.

Every 2, 5 or 10 ft, or 1 or 2 m (common practice, no source): the longest of these that keeps the straight gaps within
what is asked for. Where a flat arc wants few stakes the distances go on in the same way; toward a steep end they are
halved, down to 3 in or 0.1 m.
"""

from __future__ import annotations

from bowstring.construction import Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import distance
from bowstring.methods.setting import (
    FITS,
    MOST_STAKES,
    NoSuchStakes,
    Rounds,
    Setting,
    along_chord,
    along_tangent,
    counted,
)
from bowstring.units.sizes import FOOT

STEPS_IN_FEET = tuple(feet * FOOT for feet in (100, 50, 20, 10, 5, 2))
STEPS_IN_METRES = (50.0, 20.0, 10.0, 5.0, 2.0, 1.0)
"""Metres: the distances between stakes that may be chosen, long to short."""

CLOSER_IN_FEET = tuple(feet * FOOT for feet in (1, 0.5, 0.25))
CLOSER_IN_METRES = (0.5, 0.2, 0.1)
"""Metres: those that come between only where the curve is steep to its line."""

SLIVER = 0.25
"""A last stake nearer than this part of a step to the end of its line would stand beside another: it isn't driven."""


class _Line:
    """A line from which an arc is set off, from the middle of the arc or from an end: where it stands at a distance."""

    def __init__(self, arc: Arc, rounds: Rounds, reach: float, tangent: bool) -> None:
        """``reach``: metres: how far the line goes; ``tangent``: from A along the tangent, else from mid-chord to B."""
        self.arc, self.gap, self.reach, self.tangent = arc, rounds.gap * FITS, reach, tangent
        steps = STEPS_IN_FEET if rounds.feet else STEPS_IN_METRES
        closer = CLOSER_IN_FEET if rounds.feet else CLOSER_IN_METRES
        first = next((number for number, step in enumerate(steps) if step <= self.gap), len(steps) - 1)
        self.steps = (*steps[first:], *closer)

    def fraction(self, x: float) -> float:
        """The part of the arc's length at ``x`` metres along the line."""
        return along_tangent(self.arc, x) if self.tangent else along_chord(self.arc, self.arc.chord / 2 + x)

    def places(self) -> list[float]:
        """The distances between the line's start and its end, metres, in order."""
        return self._between(0.0, self.reach, self.steps)

    def _between(self, start: float, end: float, steps: tuple[float, ...]) -> list[float]:
        """The round distances between two places that keep the gaps, as far as there are steps short enough."""
        if not steps or (steps is not self.steps and not self._wide(start, end)):
            return []
        inner = self._multiples(start, end, steps[0])
        found, before = [], start
        for x in (*inner, end):
            found += self._between(before, x, steps[1:])
            if x < end:
                found.append(x)
            before = x
        return found

    def _multiples(self, start: float, end: float, step: float) -> list[float]:
        """The multiples of a step between two places, none beside either of them."""
        first, last = int(start / step), int(end / step) + 1
        if last - first > MOST_STAKES:
            raise NoSuchStakes(self.reach / MOST_STAKES)
        least = SLIVER * step
        return [x for number in range(first, last + 1) if start + least < (x := number * step) < end - least]

    def _wide(self, start: float, end: float) -> bool:
        one, other = (self.arc.point_at(self.fraction(x)) for x in (start, end))
        return distance(one, other) > self.gap


def round_ordinates(setting: Setting, rounds: Rounds) -> tuple[Stake, ...]:
    """Return the stakes at round distances from mid-chord both ways, with one over the middle and both ends."""
    arc = setting.arc
    line = _Line(arc, rounds, arc.chord / 2, tangent=False)
    ways = [line.fraction(x) for x in line.places()]
    return counted([*(1 - part for part in reversed(ways)), 0.5, *ways])


def round_offsets(setting: Setting, rounds: Rounds) -> tuple[Stake, ...]:
    """Return the stakes at round distances along the tangents from their ends; from both: to the arc's middle."""
    arc, start = setting.arc, setting.tangent_from
    if start == "both":
        line = _Line(arc, rounds, arc.chord / 2, tangent=True)
        ways = [line.fraction(x) for x in line.places()]
        return counted([*ways, 0.5, *(1 - part for part in reversed(ways))])
    line = _Line(arc, rounds, 2 * arc.radius * arc.sine * arc.cosine, tangent=True)
    # A line shorter than the first round distance still sets one stake, over its middle.
    ways = [line.fraction(x) for x in line.places() or [line.reach / 2]]
    return counted(ways if start == "A" else [1 - part for part in reversed(ways)])
