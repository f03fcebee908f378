"""Which far corner of a pad stands elsewhere by three lengths: held against corners moved and taped by coordinates."""

from __future__ import annotations

from math import dist, hypot

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bowstring.analysis.far_corners import far_corners

KEYS = ("A-B-2", "B-A-2", "A-2-B-2")
CHORD, SIDES, LIMIT = 6.0, 4.5, 0.004
LIMITS = dict.fromkeys(KEYS, LIMIT)
moves = st.floats(-0.3, 0.3)


def taped(
    a: tuple[float, float], b: tuple[float, float], chord: float = CHORD, sides: float = SIDES
) -> dict[str, float]:
    """How far over each length reads with A-2 and B-2 moved: toward B along the string, and back from it."""
    far_a, far_b = (a[0], -SIDES - a[1]), (CHORD + b[0], -SIDES - b[1])
    diagonal = hypot(CHORD, SIDES)
    return dict(zip(KEYS, (dist((0, 0), far_b) - diagonal, dist((CHORD, 0), far_a) - diagonal,
                           dist(far_a, far_b) - CHORD), strict=True))  # fmt: skip


@given(moves, moves, st.booleans())
def test_one_corner_that_is_moved_is_named_with_where_it_stands(toward: float, back: float, is_a: bool) -> None:
    """B-2's own way toward A-2 is A's way of the string turned over."""
    over = taped((toward, back), (0, 0)) if is_a else taped((0, 0), (-toward, back))
    key = "B-A-2" if is_a else "A-B-2"
    assume(abs(over[key]) > 1.1 * LIMIT)
    found = far_corners(CHORD, SIDES, over, LIMITS)
    assert found is not None and len(found.corners) == 1
    one = found.corners[0]
    assert (one.corner, one.other) == (("A-2", "B-2") if is_a else ("B-2", "A-2"))
    least = (7.5 + 6) * LIMIT / 4.5
    assert one.toward == pytest.approx(toward if abs(toward) > LIMIT else 0.0, abs=1e-5) or abs(toward) < 1.1 * LIMIT
    assert one.back == pytest.approx(back if abs(back) > least else 0.0, abs=1e-5) or abs(back) < 1.1 * least


@given(moves, moves)
def test_sides_that_both_lean_are_both_named(first: float, last: float) -> None:
    """Each as long as it should be, and turned: their corners are on circles about A and B."""
    drop = [SIDES - (SIDES**2 - lean**2) ** 0.5 for lean in (first, last)]
    over = taped((first, -drop[0]), (last, -drop[1]))
    assume(all(abs(over[key]) > 1.1 * LIMIT for key in ("A-B-2", "B-A-2")))
    found = far_corners(CHORD, SIDES, over, LIMITS)
    assert found is not None and [one.corner for one in found.corners] == ["A-2", "B-2"]
    assert [one.toward for one in found.corners] == pytest.approx([first, -last], abs=1e-5)


@given(moves, moves, moves, moves)
def test_it_never_blames_a_corner_for_readings_that_it_doesnt_explain(
    x: float, back: float, x2: float, back2: float
) -> None:
    """Wherever both corners stand: what is told, taped by coordinates, reads as was read, within the limits."""
    over = taped((x, back), (x2, back2))
    found = far_corners(CHORD, SIDES, over, LIMITS)
    if found is None:
        assert all(abs(one) <= LIMIT * 1.001 for one in over.values())
        return
    moved = {"A-2": (0.0, 0.0), "B-2": (0.0, 0.0)}
    for one in found.corners:
        moved[one.corner] = (one.toward if one.corner == "A-2" else -one.toward, one.back)
    if not found.corners:
        return
    again = taped(moved["A-2"], moved["B-2"])
    slack = 4 * LIMIT + 0.3**2 / SIDES  # a lean's own drop isn't told, nor what is less than the limits make
    assert all(abs(again[key] - over[key]) <= slack + LIMIT * 7.5 / 4.5 for key in KEYS)


def test_all_in_says_nothing_and_the_across_alone_blames_nobody() -> None:
    assert far_corners(CHORD, SIDES, dict.fromkeys(KEYS, 0.003), LIMITS) is None
    found = far_corners(CHORD, SIDES, {"A-B-2": 0.0, "B-A-2": 0.001, "A-2-B-2": 0.05}, LIMITS)
    assert found is not None and found.across and not found.corners


def test_readings_that_no_triangle_has_blame_nobody() -> None:
    found = far_corners(CHORD, SIDES, {"A-B-2": 0.0, "B-A-2": 9.0, "A-2-B-2": 0.0}, LIMITS)
    assert found is not None and not found.corners and not found.across
    long = far_corners(CHORD, SIDES, {"A-B-2": 0.1, "B-A-2": 0.1, "A-2-B-2": 0.0}, LIMITS)
    assert long is not None and not long.corners  # both sides too long: no lean explains it
