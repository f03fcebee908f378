"""The circle through three points. Printed in a public programming-task collection, source not named fully:
recomputed at 50 digits."""

from __future__ import annotations

import math
from itertools import permutations

import pytest

from helping import metres

POINTS = ((22.83, 2.07), (14.39, 30.24), (33.65, 17.31))


@pytest.mark.parametrize("order", list(permutations(range(3))))
def test_task_collections_circle(order: tuple[int, int, int]) -> None:
    """Printed centre (18.98, 16.27), source not named fully; recomputed at 50 digits, exactly (18.9785156601,
    16.2654107977), R 14.7086239783."""
    (ax, ay), (mx, my), (bx, by) = (POINTS[i] for i in order)
    one = metres({"points": [[ax, ay], [mx, my], [bx, by]]})
    assert abs(one["radius"] - 14.7086239783) <= 0.5e-10
    assert one["chord"] == pytest.approx(math.dist((ax, ay), (bx, by)), rel=1e-12)
    # From the chord's middle toward the arc's middle (the hand of the middle point), the centre is sagitta -
    # radius away.
    ux, uy = (bx - ax) / one["chord"], (by - ay) / one["chord"]
    hand = 1 if ux * (my - ay) - uy * (mx - ax) > 0 else -1
    away = one["sagitta"] - one["radius"]
    centre = ((ax + bx) / 2 - hand * uy * away, (ay + by) / 2 + hand * ux * away)
    assert abs(centre[0] - 18.98) <= 0.005 and abs(centre[1] - 16.27) <= 0.005
    assert math.dist(centre, (18.9785156601, 16.2654107977)) <= 1e-9


def test_the_three_arcs_of_the_triangle_close_the_circle() -> None:
    """Computed identity. Each point in turn as the middle: the three central angles add up to twice a full turn."""
    turns = [
        metres({"points": [list(POINTS[i]) for i in order]})["central_angle"]
        for order in ((0, 1, 2), (1, 2, 0), (2, 0, 1))
    ]
    assert sum(turns) == pytest.approx(720, rel=1e-12)
