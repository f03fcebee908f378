"""How far a stake stands from the fair curve through its neighbours: the mid-ordinate over the string between them.

What moves a stake and both its neighbours alike moves the curve and leaves it fair, so only what they don't share is
left.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import hypot

from bowstring.construction import Marks, Shifts
from bowstring.geometry.plane import distance, left_of, unit_vector


def fair_deviations(at: Marks, shifts: Mapping[str, Shifts], names: Sequence[str]) -> list[float | None]:
    """Return for each stake, in order along the arc, the standard deviation in metres of its mid-ordinate over its two
    neighbours; ``None`` for the first and the last.

    >>> from bowstring.geometry.plane import Point
    >>> at = {"A": Point(0.0, 0.0), "K": Point(2.0, 1.0), "B": Point(4.0, 0.0)}
    >>> fair_deviations(at, {"A": {}, "K": {1: (0.0, 0.003), 2: (0.004, 0.0)}, "B": {}}, ["A", "K", "B"])
    [None, 0.003, None]
    """
    inner = [
        _deviation(at, shifts, *three) for three in zip(names, names[1:], names[2:], strict=False)
    ]  # fmt: skip
    return [None, *inner, None] if len(names) > 1 else [None] * len(names)


def _deviation(at: Marks, shifts: Mapping[str, Shifts], before: str, here: str, after: str) -> float:
    """The string's foot under the stake is ``part`` of the way along it: its shift is so much of each end's."""
    string = distance(at[before], at[after])
    if not string:
        return 0.0
    along = unit_vector(at[before], at[after])
    out, part = left_of(along), along.dot(at[here].minus(at[before])) / string
    moved: dict[int, float] = {}
    for mark, weight in ((here, 1.0), (before, part - 1), (after, -part)):
        for source, (x, y) in shifts[mark].items():
            moved[source] = moved.get(source, 0.0) + weight * (out.x * x + out.y * y)
    return hypot(*moved.values())
