"""By how much a check's reading may be out: what 95 of 100 stay within by the error model, and which tell most."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import erf, hypot, sqrt

from bowstring.analysis.accuracy import NORMAL_95
from bowstring.analysis.checks import Check
from bowstring.analysis.spread import Spread
from bowstring.construction import SCALE
from bowstring.geometry.plane import Point, distance, unit_vector

PART = 0.95
"""Of the readings stay within what is expected."""

HALVINGS = 40
"""Of what lies between the two bounds of a limit: as fine as a float is."""

RECOMMENDED = 3
"""How many checks a crew in a hurry is told to make."""


def expected_out(check: Check, spread: Spread) -> float:
    """Return metres within which a check's reading stays at 95 %: the scatter of its marks, which it follows, and its
    own reading at both ends, by the tape that the stakes were set with.

    What moves both of its marks alike cancels; so does the tape's scale as far as the marks stand off by it.
    """
    moved = {SCALE: -spread.errors.scale * check.distance}
    for mark, weight in check.follows.items():
        for source, (x, y) in spread.shifts.get(mark, {}).items():
            moved[source] = moved.get(source, 0.0) + weight * (check.way.x * x + check.way.y * y)
    return NORMAL_95 * hypot(spread.errors.pull, *moved.values())


def expected_about(usual: float, expected: float) -> float:
    """Return metres within which a reading stays at 95 % that is out by ``usual`` without any error, and then stays
    within ``expected`` of that.

    >>> [round(expected_about(usual, 1.96), 2) for usual in (0.0, 0.5, -3.0)]
    [1.96, 2.18, 4.64]
    """
    far, sigma = abs(usual), expected / NORMAL_95
    if not sigma:
        return far
    low, high = max(far, expected), far + expected
    for _round in range(HALVINGS):
        middle = (low + high) / 2
        inside = (erf((middle - far) / sigma / sqrt(2)) + erf((middle + far) / sigma / sqrt(2))) / 2
        low, high = (low, middle) if inside > PART else (middle, high)
    return high


def expected_between(start: str, end: str, at: Mapping[str, Point], spread: Spread) -> float:
    """Return metres within which any distance between two marks stays when it is read once more, at 95 %."""
    line = unit_vector(at[start], at[end])
    return expected_out(
        Check("step", start, end, distance(at[start], at[end]), 0.0, None, 0, line, {start: -1.0, end: 1.0}), spread
    )


@dataclass(frozen=True)
class Judged:
    """A check with what its reading may be out by, metres.

    Attributes:
        expected: what 95 of 100 readings stay within by the error model, were every number exact.
        allowed: with every stake of it at the edge of the tolerance, the worse way; ``None`` without a tolerance.
        blind: that is less than a tape mark: the tape can't tell.
        usual: how far over what is printed stakes read that stand just where the cards' rounded numbers put them.
        limit: what 95 of 100 readings stay within of what is printed, the cards and each reading being rounded.
        judges: what is expected is no more than half of what must be read; otherwise a good reading says little.
    """

    check: Check
    expected: float
    allowed: float | None
    blind: bool
    usual: float = 0.0
    limit: float = 0.0

    @property
    def shows(self) -> bool:
        """Whether a sheet has it: one that can tell, and the gap that closes, which sees what goes wrong along."""
        return not self.blind or self.check.kind == "closing"

    @property
    def judges(self) -> bool:
        return self.expected <= self.check.distance / 2

    @property
    def tells(self) -> float:
        """How many times what is expected anyway a check is out when its stakes are all off by as much."""
        return self.check.per_tolerance / self.expected if self.expected else 0.0


def judged(
    checks: Sequence[Check], usual: Sequence[float], spread: Spread, tolerance: float | None, mark: float
) -> list[Judged]:
    """Return each check with its limits, in order; ``usual``: what each reads over what is printed where every stake
    stands as its card says, rounded as the card is."""
    found = []
    for check, over in zip(checks, usual, strict=True):
        allowed = None if tolerance is None else tolerance * check.per_tolerance
        blind = allowed is not None and allowed < mark
        expected = expected_out(check, spread)
        # A reading is called out at the nearest mark: up to half of one is never on the tape.
        found.append(Judged(check, expected, allowed, blind, over, expected_about(over, expected) + mark / 2))
    return found


def printed(checks: Sequence[Judged]) -> list[Judged]:
    """Return the checks that a sheet has: those that judge; only where none does, those that can't."""
    shown = [one for one in checks if one.shows]
    if not any(one.judges for one in shown):
        return shown
    return [one for one in shown if one.judges or one.check.kind == "closing"]


def recommended(checks: Sequence[Judged]) -> list[Judged]:
    """Return the checks to make if no more are made: those that can judge and tell most, one of each kind first; the
    closing gap before all others, since it holds what went wrong on the whole way."""
    able = [one for one in checks if one.judges and one.shows]
    # Mirror images differ in the last digits; rounded, they keep the order of the sheet.
    able.sort(key=lambda one: (one.check.kind != "closing", -round(one.tells, 6)))
    best: list[Judged] = []
    kinds: set[str] = set()
    for one in able:
        if one.check.kind not in kinds:
            kinds.add(one.check.kind)
            best.append(one)
    best += [one for one in able if one not in best]
    return best[:RECOMMENDED]
