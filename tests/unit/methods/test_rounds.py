"""Round distances along a chord or a tangent, where a job asks for no others: which ones, how wide the gaps."""

from __future__ import annotations

from itertools import pairwise
from math import dist, hypot
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

import bowstring
from bowstring.job.job import read_job
from bowstring.layout.layout import Layout, lay_out
from helping import answer_to

FOOT = 0.3048
ROUND_FEET, ROUND_METRES = {100, 50, 20, 10, 5, 2, 1, 0.5, 0.25}, {50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1}


def laid(unit: str, chord: float, sagitta: float, **more: Any) -> Layout:
    job = {"unit": unit, "arc": {"chord": chord, "sagitta": sagitta}, "method": "ordinates", **more}
    return lay_out(read_job(job))


def from_the_middle(layout: Layout, unit: float) -> list[float]:
    return [layout.recipe.at[stake.name].x / unit - layout.staked.chord / unit / 2 for stake in layout.stakes[1:-1]]


def test_the_ordinates_of_a_walk_by_hand() -> None:
    """Chord 26 ft, rise 2 ft: R = (13² + 2²)/4 = 43.25 ft. Every 2 ft both ways: 10 ft off mid-chord the ordinate is
    root(43.25² - 10²) - 41.25 = 0.828 ft = 9.94 in, to an eighth 9-7/8."""
    layout = laid("ft", 26, 2)
    places = [-12, -10, -8, -6, -4, -2, 0, 2, 4, 6, 8, 10, 12]
    assert from_the_middle(layout, FOOT) == pytest.approx(places, abs=1e-9)
    told: Any = answer_to({"arc": {"chord": "26 ft", "sagitta": "2 ft"}, "method": "ordinates", "side": "left",
                                  "drawn_to": "face"}, whole=False)  # fmt: skip
    middle, first, second = [step for step in told["steps"] if step["level"]][:3]
    assert middle["kind"] == "string_middle" and [one["shown"] for one in middle["measures"]] == ["13' 0\""]
    assert first["measures"][0]["shown"] == "12' 0\""
    assert [one["shown"] for one in second["measures"]] == ["10' 0\"", '9-7/8"']
    assert "from the string's midpoint toward A mark 10' 0\"" in second["text"]
    (table,) = told["tables"]
    assert table["rows"][1][1:3] == ["midpoint toward A", "10' 0\""]
    assert table["rows"][6][1:3] == ["at its midpoint", "0"]


def test_in_metres_every_metre() -> None:
    assert from_the_middle(laid("m", 9, 0.6), 1) == pytest.approx([-4, -3, -2, -1, 0, 1, 2, 3, 4], abs=1e-9)
    assert from_the_middle(laid("mm", 9000, 600), 1) == pytest.approx([-4, -3, -2, -1, 0, 1, 2, 3, 4], abs=1e-9)


def test_a_flat_arc_that_wants_few_stakes_has_them_farther_apart() -> None:
    """200 ft over a rise of 6 in: the quarters' sagitta is 1-1/2 in, the eighths' under four eighths. So it is halved
    twice, down to 50 ft; and the stakes stand every 50 ft."""
    layout = laid("ft-in", 200, 0.5)
    assert layout.levels == 2 and from_the_middle(layout, FOOT) == pytest.approx([-50, 0, 50])


def test_no_stake_stands_right_beside_an_end() -> None:
    """12.2 ft either way: one at 12 would be 0.2 ft from the end."""
    assert max(from_the_middle(laid("ft", 24.4, 2), FOOT)) == pytest.approx(10)
    assert max(from_the_middle(laid("ft", 25.2, 2), FOOT)) == pytest.approx(12)


def test_toward_a_steep_end_they_stand_closer() -> None:
    """A half circle of 20 ft: over 18 ft it stands root(400 - 324) = 8.7 ft up; the gap from there to the end is parted
    at 19, then 19.5, then 19.75 ft, from where it is root(400 - 390.06) = 3.15 ft down to it."""
    layout = laid("ft", 40, 20)
    places = from_the_middle(layout, FOOT)
    assert places[-6:] == pytest.approx([14, 16, 18, 19, 19.5, 19.75], abs=1e-9)
    at = [layout.recipe.at[stake.name] for stake in layout.stakes]
    assert max(dist(one, other) for one, other in pairwise(at)) <= 4 * FOOT


def test_the_gap_that_no_round_distance_closes_is_told() -> None:
    """A half circle of 100 ft: 3 in from its end it is hypot(0.25, root(100² - 99.75²)) = 7.07 ft down to it."""
    told: Any = answer_to({"unit": "ft", "arc": {"chord": 200, "sagitta": 100}, "method": "ordinates",
                                  "side": "left", "drawn_to": "face", "tape": {"length": 300}},
                                 whole=False)  # fmt: skip
    last = told["stakes"][-2]
    gap = hypot(last["x"] / FOOT - 200, last["y"] / FOOT)
    assert gap == pytest.approx(7.07, abs=0.005)
    assert [note for note in told["notes"] if "7.07 ft" in note and "steep" in note]
    flat: Any = answer_to({"unit": "ft", "arc": {"chord": 40, "sagitta": 5}, "method": "ordinates",
                                  "side": "left", "drawn_to": "face"}, whole=False)  # fmt: skip
    assert not [note for note in flat["notes"] if "steep" in note]


@pytest.mark.parametrize(("start", "inside"), [("A", [2, 4, 6, 8, 10]), ("B", [10, 8, 6, 4, 2])])
def test_tangent_offsets_stand_at_round_distances_from_their_end(start: str, inside: list[float]) -> None:
    layout = laid("ft", 12, 1.2, method="tangent", tangent_from=start)
    along = [step.measures[0].length / FOOT for step in layout.recipe.steps if step.stake]
    assert sorted(along) == pytest.approx(sorted(inside)[: len(along)], abs=1e-9)
    assert len(along) == 5


def test_from_both_tangents_they_count_from_both_ends_to_the_middle() -> None:
    layout = laid("ft", 20.8, 2, method="tangent")
    along = [step.measures[0].length / FOOT for step in layout.recipe.steps if step.stake]
    assert sorted(along) == pytest.approx([2, 2, 4, 4, 6, 6, 8, 8, 10.4], abs=1e-9)


@settings(max_examples=max(60, settings.default.max_examples // 2))
@given(
    unit=st.sampled_from(["ft", "m"]), chord=st.floats(1, 150), ratio=st.floats(0.01, 0.5),
    way=st.sampled_from([{}, {"parallel": -2}, {"method": "tangent"}]),
)  # fmt: skip
def test_every_place_is_round_and_every_gap_the_usual_one_or_steep(
    unit: str, chord: float, ratio: float, way: dict[str, Any]
) -> None:
    assume(ratio < 0.4999 or "method" in way)
    try:
        layout = laid(unit, chord, chord * ratio, **way)
    except bowstring.BadJob as bad:
        assert bad.key == "method.too_small" and chord * ratio < 0.05
        return
    size, steps, least = (FOOT, ROUND_FEET, 0.25) if unit == "ft" else (1, ROUND_METRES, 0.1)
    if "method" in way:
        along = [step.measures[0].length / size for step in layout.recipe.steps if step.stake]
        half = len(along) // 2  # from both ends to the middle, whose place is what it is
        along, at = along[:half], [layout.recipe.at[stake.name] for stake in layout.stakes[: half + 2]]
        line = [0.0, *along, layout.staked.chord / 2 / size]
    else:
        along = from_the_middle(layout, size)
        at = [layout.recipe.at[stake.name] for stake in layout.stakes]
        line = [point.x / size for point in at]
    assert all(any(one / step == pytest.approx(round(one / step), abs=1e-6) for step in steps) for one in along)
    usual, halved = 1.2 if unit == "m" else 4 * FOOT, layout.staked.part(2**layout.levels).chord
    widest = (usual if halved <= usual else 1.25 * halved) * (1 + 1e-9)
    for (one, other), (x, x2) in zip(pairwise(at), pairwise(line), strict=True):
        # Wider only where the curve is so steep that even the closest round distances are too far apart.
        assert dist(one, other) <= widest or abs(x2 - x) < 1.25 * least + 1e-9


def test_an_arc_shorter_than_the_first_round_distance_still_takes_a_stake() -> None:
    """Chord 2.4 ft on a radius of 13.1 ft: every round distance lies past it."""
    job = {"unit": "ft", "arc": {"radius": 13.1, "chord": 2.4}, "side": "left", "drawn_to": "face"}
    for method in ("tangent", "ordinates"):
        for end in ("A", "B", "both"):
            told = answer_to({**job, "method": method, "tangent_from": end}, whole=False)
            assert len(told["stakes"]) > 2
