"""What a thin strip does that is bent around stakes on an arc and left loose at its ends: the elastica.

The stakes hold it without friction, so they push square to it and nothing pulls along it; its loose ends carry no
moment. Then its curvature k follows k'' + k³/2 = 0 between stakes (Euler's elastica without a pull along the strip), k
and the heading go on unbroken over each stake, and k is 0 at the first one. Near its loose end it runs flatter than the
arc: for closely set stakes by about 0.049 a²/R in the first gap a.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from math import asin, cos, hypot, sin

GAPS = 8
"""Gaps from the loose end to where nothing is felt of it any more: each gap takes off three quarters."""
STEPS = 24
"""Runge-Kutta steps a gap: the places are good to a millionth of it."""
ROUNDS = 40
CLOSE = 1e-12
NUDGE = 1e-6

State = tuple[float, float, float, float, float]
"""Curvature, its change, heading, x and y."""


@dataclass(frozen=True)
class Strip:
    """A strip on stakes, as parts of the arc's radius.

    ``bends``: its curvature at each stake from the loose end, times R; ``miss``: the largest distance from the arc in
    the first gap, over R, positive where it runs inside.
    """

    bends: tuple[float, ...]
    miss: float

    @property
    def tightest(self) -> float:
        """The largest curvature at a stake, times R: how much tighter than the arc the strip is bent there."""
        return max(self.bends)


def _slope(state: State) -> State:
    bend, change, heading, _x, _y = state
    return change, -(bend**3) / 2, bend, cos(heading), sin(heading)


def _moved(state: State, slope: State, length: float) -> State:
    a, b = state, slope
    return (
        a[0] + length * b[0],
        a[1] + length * b[1],
        a[2] + length * b[2],
        a[3] + length * b[3],
        a[4] + length * b[4],
    )


def _run(bend: float, change: float, length: float) -> list[State]:
    """Return the states along a piece of elastica that begins in the origin along x, by Runge-Kutta's fourth order."""
    state: State = (bend, change, 0.0, 0.0, 0.0)
    states, step = [state], length / STEPS
    for _ in range(STEPS):
        one = _slope(state)
        two = _slope(_moved(state, one, step / 2))
        three = _slope(_moved(state, two, step / 2))
        four = _slope(_moved(state, three, step))
        mean = tuple((a + 2 * b + 2 * c + d) / 6 for a, b, c, d in zip(one, two, three, four, strict=True))
        state = _moved(state, mean, step)  # type: ignore[arg-type]
        states.append(state)
    return states


def _gap(first: float, last: float, chord: float) -> tuple[float, float, list[State]]:
    """Return a gap's piece: its headings off the chord at both ends (radians, positive where it bows outward), and its
    states.

    ``first`` and ``last``: curvatures at its ends; Newton's method on the change of curvature and the length.
    """
    change, length = (last - first) / chord, chord * (1 + (chord * (first + last)) ** 2 / 96)
    for _ in range(ROUNDS):
        states = _run(first, change, length)
        off = states[-1][0] - last, hypot(states[-1][3], states[-1][4]) - chord
        if max(map(abs, off)) < CLOSE:
            break
        columns = []
        for by_change, by_length in ((NUDGE, 0.0), (0.0, NUDGE)):
            end = _run(first, change + by_change, length + by_length)[-1]
            columns.append((end[0] - last - off[0], hypot(end[3], end[4]) - chord - off[1]))
        (a, c), (b, d) = ((one / NUDGE, other / NUDGE) for one, other in columns)
        det = a * d - b * c
        change -= (d * off[0] - b * off[1]) / det
        length -= (a * off[1] - c * off[0]) / det
    end = states[-1]
    begun = asin(end[4] / hypot(end[3], end[4]))  # the chord's heading, seen from the piece's own beginning
    return begun, end[2] - begun, states


@lru_cache(64)
def strip(gap: float) -> Strip:
    """Return the strip on stakes whose chords are ``gap`` of the arc's radius, 0 to 1.

    Raises ``ValueError`` outside that, ``ArithmeticError`` where no such strip is found.

    >>> round(strip(0.05).miss / 0.05**2, 3)
    0.049
    """
    if not 0 < gap <= 1:
        raise ValueError("stakes stand closer than a radius")
    turn = 2 * asin(gap / 2)
    bends = [0.0, *([1.0] * GAPS)]
    for _ in range(ROUNDS):
        off, rows = _joins(bends, gap, turn)
        if max(map(abs, off)) < 1e-10:
            return Strip(tuple(bends), _miss(bends, gap, turn))
        for place, by in enumerate(_three_diagonals(rows, off), 1):
            bends[place] -= by
    raise ArithmeticError("the strip on these stakes was not found")


def _joins(bends: list[float], gap: float, turn: float) -> tuple[list[float], list[tuple[float, float, float]]]:
    """Return how far the headings are from going on unbroken at each stake but the first, and how that changes with the
    curvature at the stake before, at it and at the one after. By symmetry the last one's heading is the arc's."""
    gaps = [_sides(first, last, gap) for first, last in pairwise(bends)]
    off, rows = [], []
    for place, (_start, end, _a, _b, end_by_first, end_by_last) in enumerate(gaps):
        if place + 1 == len(gaps):
            off.append(end - turn / 2)
            rows.append((end_by_first, end_by_last, 0.0))
        else:
            after = gaps[place + 1]
            off.append(end + after[0] - turn)
            rows.append((end_by_first, end_by_last + after[2], after[3]))
    return off, rows


def _sides(first: float, last: float, chord: float) -> tuple[float, float, float, float, float, float]:
    """Return a gap's two headings off its chord, and each one's change with its first and last curvature."""
    start, end, _ = _gap(first, last, chord)
    by_first, by_last = _gap(first + NUDGE, last, chord), _gap(first, last + NUDGE, chord)
    return (start, end, (by_first[0] - start) / NUDGE, (by_last[0] - start) / NUDGE,
            (by_first[1] - end) / NUDGE, (by_last[1] - end) / NUDGE)  # fmt: skip


def _three_diagonals(rows: list[tuple[float, float, float]], right: list[float]) -> list[float]:
    """Solve a system with three diagonals by elimination (Thomas)."""
    above: list[float] = []
    found: list[float] = []
    for place, (before, at, after) in enumerate(rows):
        under = before if place else 0.0
        pivot = at - under * (above[-1] if above else 0.0)
        above.append(after / pivot)
        found.append((right[place] - under * (found[-1] if found else 0.0)) / pivot)
    for place in range(len(found) - 2, -1, -1):
        found[place] -= above[place] * found[place + 1]
    return found


def _miss(bends: list[float], gap: float, turn: float) -> float:
    """Return the largest distance from the arc in the first gap, positive inside: the top of a parabola through three
    states."""
    begun, _end, states = _gap(bends[0], bends[1], gap)
    center = (gap / 2, cos(turn / 2))

    def inside(state: State) -> float:
        x, y = state[3], state[4]
        along, off = x * cos(begun) + y * sin(begun), y * cos(begun) - x * sin(begun)
        return 1 - hypot(along - center[0], off - center[1])

    return _top([inside(state) for state in states], abs)


def _top(values: list[float], size: Callable[[float], float]) -> float:
    place = max(range(1, len(values) - 1), key=lambda at: size(values[at]))
    before, at, after = values[place - 1 : place + 2]
    bend = before - 2 * at + after
    return at if bend == 0 else at - (after - before) ** 2 / (8 * bend)
