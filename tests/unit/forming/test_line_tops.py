"""The tops along a line: as an arc alone has them, as its own elevations climb, and at kinks without a step."""

from __future__ import annotations

from math import hypot, isclose, radians, tan

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bowstring.forming.band import INNER, OUTER, Band
from bowstring.forming.grades import Grade
from bowstring.forming.line.edges import NoEdge
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.tops import HANDS, LineGrade, NotOnEdge
from bowstring.forming.slab import Slab
from unit.forming.walked import bends, straights

FOOT = 0.3048
SLOPES, CROSSES = st.floats(-0.08, 0.08), st.floats(-0.03, 0.03)


def creek() -> LineSlab:
    """20 ft straight, R 31 70° left, R 24 40° right, 8.5 ft straight; 6 ft wide, the line in its middle."""
    pieces = (Straight(20.0), Bend.of(31.0, radians(70)), Bend.of(24.0, radians(-40)), Straight(8.5))
    return LineSlab(Line(pieces), 3.0, 3.0)


@pytest.mark.parametrize("turn", [0.8, -0.8])
@pytest.mark.parametrize("crown", [0.0, 0.1])
def test_one_arc_has_the_tops_of_an_arc_alone(turn: float, crown: float) -> None:
    """Of the line the start is the left edge's top, of the arc alone the outer one's."""
    outer_left = turn < 0
    line = LineGrade(LineSlab(Line((Bend.of(62.0, turn),)), *((0.0, 5.0) if outer_left else (5.0, 0.0))), 7.0, 0.02,
                     0.015 if outer_left else -0.015, crown)  # fmt: skip
    start = 7.0 if outer_left else 7.0 + 5.0 * 0.015
    alone = Grade(Band.of(Slab(57.0, 5.0, 0.8)), start, line.running * 1.0, 0.015, crown)
    outer, inner = HANDS if outer_left else HANDS[::-1]
    for share in (0.0, 0.3, 0.5, 1.0):
        for hand, across in ((outer, OUTER), (inner, INNER)):
            off = line.slab.width / 2 * (1 if hand == "left" else -1)
            assert line.top(share * line.slab.line.length, off) == pytest.approx(alone.top(share, across), abs=1e-12)
            assert line.top_at(0, share, hand) == pytest.approx(alone.top(share, across), abs=1e-12)
        assert line.top(share * line.slab.line.length, 0.0) == pytest.approx(alone.top(share, 0.5), abs=1e-12)
    assert line.slope(0, inner) == pytest.approx(alone.slope_at(INNER)) == pytest.approx(0.02 * 59.5 / 57)
    assert line.steepest == (0, inner) and line.across_slope == pytest.approx(alone.across_slope())
    assert line.most_running(0.05) == pytest.approx(alone.most_running(0.05))


def test_the_creek_walk_by_hand() -> None:
    """Middle: 20 + 31 x 70° + 24 x 40° + 8.5 = 83.1288 ft, up 2 % of it; the left edge of the left turn has R 28."""
    grade = LineGrade(creek(), 0.0, 0.02, -0.015)
    assert grade.slab.line.length == pytest.approx(83.1288, abs=5e-5)
    assert grade.top(grade.slab.line.length, 3.0) == pytest.approx(1.6626, abs=5e-5)
    assert grade.top(0.0, -3.0) == pytest.approx(0.09)
    assert grade.top(20.0, 3.0) == pytest.approx(0.4) and grade.top(20.0, -3.0) == pytest.approx(0.49)
    slopes = [grade.slope(number, hand) for number in range(4) for hand in HANDS]
    assert slopes == pytest.approx([0.02, 0.02, 0.62 / 28, 0.62 / 34, 0.48 / 27, 0.48 / 21, 0.02, 0.02])
    assert grade.steepest == (2, "right") and grade.most_running(0.05) == pytest.approx(0.05 * 21 / 24)


@given(st.lists(st.one_of(straights(), bends()), min_size=1, max_size=5), st.floats(0, 3), st.floats(0.3, 3),
       SLOPES, CROSSES, st.floats(0.05, 0.95))  # fmt: skip
def test_a_stated_slope_is_the_derivative_of_its_own_elevations(
    pieces: list[Straight | Bend], left: float, right: float, running: float, cross: float, part: float
) -> None:
    """Two places an edge, by the tops at stations and offsets from the middle and the distance between them on the
    ground: the slope between them is the stated one to 0.01 % of rise over run."""
    try:
        slab = LineSlab(Line(tuple(pieces)), left, right)
    except NoEdge:
        assume(False)
    grade, line = LineGrade(slab, 1.0, running, cross), slab.line
    for number, piece in enumerate(pieces):
        station, step = line.stations[number] + part * piece.length, 1e-4 * piece.length
        for hand, off in (("left", left), ("right", -right)):
            ends = [line.at(at).aside(off).point for at in (station - step, station + step)]
            tops = [grade.top(at, off - (left - right) / 2) for at in (station - step, station + step)]
            gone = ends[1].minus(ends[0])
            assert (tops[1] - tops[0]) / hypot(*gone) == pytest.approx(grade.slope(number, hand), abs=1e-5)
    worst = max(abs(grade.slope(number, hand)) for number in range(len(pieces)) for hand in HANDS)
    assert abs(grade.slope(*grade.steepest)) == pytest.approx(worst)
    assert grade.across_slope == pytest.approx(abs(cross), abs=1e-9)


@given(st.floats(-60, 60), SLOPES, CROSSES)
def test_at_a_kink_the_forms_have_no_step_and_climb_as_stated(kink: float, running: float, cross: float) -> None:
    assume(abs(kink) > 0.1)
    slab = LineSlab(Line((Straight(12.0), Bend.of(15.0, 0.9, radians(kink)), Straight(9.0, radians(-kink)))), 1.0, 1.5)
    grade = LineGrade(slab, 2.0, running, cross)
    for hand in HANDS:
        lengths = grade.edge(hand).lengths
        for number in range(2):
            assert grade.top_at(number, 1.0, hand) == pytest.approx(grade.top_at(number + 1, 0.0, hand))
        for number in range(3):
            near, far = (grade.top_at(number, share, hand) for share in (0.4, 0.6))
            assert (far - near) / (0.2 * lengths[number]) == pytest.approx(grade.slope(number, hand), abs=1e-9)
    assert grade.across_slope >= abs(cross)


def test_a_kink_twists_the_slab() -> None:
    """Two straights, 30° left, 2 m wide about the line: both edges c = tan 15° short or long of the corner. Where the
    left one ends, 2c before the right one's corner, they differ by 2c of climb more than by the fall across, nearly."""
    slab = LineSlab(Line((Straight(10.0), Straight(10.0, radians(30)))), 1.0, 1.0)
    grade, back = LineGrade(slab, 0.0, 0.02, 0.015), tan(radians(15))
    assert [round(one, 12) for one in slab.left_edge.lengths] == [round(10 - back, 12)] * 2
    station = 10 - back
    by_hand = 0.02 * 10 * (1 - station / (10 + back)) / 2
    assert grade.top(station, 1.0) - grade.top(station, -1.0) == pytest.approx(2 * (0.015 + by_hand))
    assert grade.across_slope == pytest.approx(0.015 + by_hand) and isclose(by_hand, 0.02 * back, rel_tol=0.03)
    with pytest.raises(NotOnEdge):
        grade.top(9.9, 0.0)
    with pytest.raises(ValueError, match="across"):
        grade.top(5.0, 1.1)


def test_tops_that_both_ends_meet() -> None:
    grade = LineGrade.between(creek(), 4.0, 5.6, 0.015)
    assert grade.top(0.0, 3.0) == 4.0 and grade.top(grade.slab.line.length, 3.0) == pytest.approx(5.6)
    assert grade.running == pytest.approx(1.6 / 83.1288, abs=1e-6)
