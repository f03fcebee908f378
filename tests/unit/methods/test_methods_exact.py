"""Every method puts every stake on the exact arc, by its moves alone too; where a method doesn't exist it is refused.

The places are worked out here from chord and sagitta in 30-digit arithmetic, not by the package's arc.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan2, cos, dist, hypot, pi, radians, sin
from typing import Any

import mpmath
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

import bowstring
from bowstring.analysis.error_model import ErrorModel
from bowstring.analysis.spread import Spread
from bowstring.construction import CrossTapes, Move, Shifts, Source, play
from bowstring.geometry.plane import left_of, unit_vector
from bowstring.job.job import read_job
from bowstring.layout.layout import Layout, lay_out
from bowstring.layout.limits import squares_here
from exact_circle import Circle

METHODS = ("centre", "halving", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
"""All but the rule of thumb, which is meant to miss."""

EXACT = 1e-9
"""Metres."""

DIGIT = 2.0**-52
ROUNDINGS = 16
"""How many roundings one move may make of numbers as large as the layout: its longest formula has some twelve."""

LONGEST_SWING = 1000.0
"""Metres: from a centre farther away the crossing's arithmetic loses more than the readings of a real swing would."""

TURNS_BACK = radians(90) - 0.05
"""Half the arc's angle from A to the last chained stake past which deflection angles are refused (``TURNING``)."""


FEW = settings(max_examples=max(30, settings.default.max_examples * 3 // 10))
"""Of each method three tenths of the arcs that other properties try: some hundreds in all."""


def arcs(most: float = 340.0) -> st.SearchStrategy[tuple[float, float]]:
    """Chords from 2 to 80 m with sagittas of 1e-5 of them up to so many degrees."""
    greatest = 0.5 / mpmath.tan(mpmath.radians(180 - most / 2) / 2)
    ratio = st.one_of(st.floats(-5, -1).map(lambda power: 10**power), st.floats(0.1, min(float(greatest), 5.7)))
    return st.tuples(st.floats(2, 80), ratio).map(lambda pair: (pair[0], pair[0] * pair[1]))


def job_of(chord: float, sagitta: float, **keys: Any) -> dict[str, Any]:
    return {"bowstring": 1, "unit": "m", "mark": 0.001, "arc": {"chord": chord, "sagitta": sagitta}, **keys}


def made(job: dict[str, Any]) -> Layout | bowstring.BadJob:
    try:
        return lay_out(read_job(job))
    except bowstring.BadJob as bad:
        return bad


def half_angle(chord: float, sagitta: float) -> float:
    return 2 * atan2(2 * sagitta, chord)


def by_moves_alone(layout: Layout) -> dict[str, Any]:
    """Where the marks come to stand by the steps' moves, from those that stand before: no table of where they go."""
    recipe = layout.recipe
    later = [step for step in recipe.steps if step.level]
    made_later = {mark for step in later for mark in step.sets}
    return dict(play(later, start={name: at for name, at in recipe.at.items() if name not in made_later}))


class Dusty(Spread):
    """The spread of last digits: two tapes' crossing loses some that no tape would.

    The crossing is worked out from the first mark: along the line of the two by the tapes' lengths, with a rounding of
    the first length L; then off it by the root of L² - along², which that turns into L/off times as much.
    """

    def of(self, move: Move) -> Shifts:
        shifts = super().of(move)
        if isinstance(move, CrossTapes):
            first, second, mark = (self.at[name] for name in (move.first, move.second, move.mark))
            across = left_of(unit_vector(first, second))
            length = max(move.from_first, dist(first, second))
            lost = ROUNDINGS * DIGIT * length * length / abs(across.dot(mark.minus(first)))
            self.add(shifts, Source("digit", lost, mark=move.mark), across)
        return shifts


def conditioned(layout: Layout) -> dict[str, float]:
    """How far arithmetic may carry each mark, metres: what a crew whose every reading, mark and angle is off by so many
    last digits would be, all of them the worst way round. The derivatives are those held to Monte Carlo elsewhere."""
    recipe = layout.recipe
    size = max(
        max(max(abs(at.x), abs(at.y)) for at in recipe.at.values()),
        max((measure.length for step in recipe.steps for measure in step.measures), default=0.0),
        layout.staked.chord,
    )
    digit = ROUNDINGS * DIGIT
    spread = Dusty(recipe.at, ErrorModel(digit * size, digit, digit * size, digit * size, digit), {},
                   squares_here(layout.job, layout.setting, recipe))  # fmt: skip
    spread.walk(recipe.steps)
    return {name: digit * size + sum(hypot(x, y) for x, y in shifts.values()) for name, shifts in spread.shifts.items()}


@pytest.mark.parametrize("method", METHODS)
@FEW
@given(arc=arcs(), levels=st.integers(1, 5))
def test_every_stake_is_on_the_arc_and_its_moves_alone_bring_it_there(
    method: str, arc: tuple[float, float], levels: int
) -> None:
    layout = made(job_of(*arc, method=method, centre="reachable", levels=levels))
    half = half_angle(*arc)
    if isinstance(layout, bowstring.BadJob):
        assert layout.field == "method"
        assert layout.wrong and layout.remedy
        assert refused_rightly(method, layout.key, half, arc, levels)
        return
    circle, gaps = Circle(*arc), 2**levels
    alone, allowed = by_moves_alone(layout), conditioned(layout)
    assert len(layout.stakes) == gaps + 1
    for number, stake in enumerate(layout.stakes):
        at = layout.recipe.at[stake.name]
        assert abs(circle.miss(*at)) <= EXACT
        if method == "ordinates":
            want = circle.over(arc[0] * number / gaps)
        elif method == "tangent":
            near = min(number, gaps - number)
            want = circle.off_tangent(arc[0] / 2 * near / (gaps / 2), "A" if number <= gaps / 2 else "B")
        else:
            want = circle.at(mpmath.mpf(number) / gaps)
        assert dist(at, want) <= EXACT, stake.name
        assert dist(at, alone[stake.name]) <= allowed[stake.name], stake.name
    # The allowance is for last digits: it hides no mistake that a tape could show, on any tape that somebody swings.
    if method != "centre" or circle.radius < LONGEST_SWING:
        assert max(allowed[stake.name] for stake in layout.stakes) < 2e-5


def refused_rightly(method: str, key: str, half: float, arc: tuple[float, float], levels: int) -> bool:
    """Whether a method is refused for the reason that is there, by this arc's own figures."""
    if key == "method.ordinates_overhang":
        return method == "ordinates" and half > pi / 2
    if key == "method.tangent_overhang":
        return method == "tangent" and half > pi / 2
    if key == "method.angles_turn_back":
        return method == "angles" and half * (2**levels - 2) / 2**levels > TURNS_BACK - 1e-9
    # Under the tape's own marks: some length of the construction is less than half a millimetre.
    return key == "method.too_small" and arc[0] / 2 ** (levels + 1) * max(half, 1e-9) < 0.001


@given(arc=arcs(), method=st.sampled_from(("ordinates", "tangent", "angles")), levels=st.integers(1, 4))
def test_where_a_method_does_not_exist_it_is_refused_and_only_there(
    arc: tuple[float, float], method: str, levels: int
) -> None:
    half = half_angle(*arc)
    assume(abs(half - pi / 2) > 1e-9 and arc[1] > 0.01)
    over = half > pi / 2
    if method == "angles":
        last = half * (2**levels - 2) / 2**levels
        assume(abs(last - TURNS_BACK) > 1e-9)
        over = last > TURNS_BACK and levels > 1
    layout = made(job_of(*arc, method=method, centre="reachable", levels=levels))
    assert isinstance(layout, bowstring.BadJob) is over
    if isinstance(layout, bowstring.BadJob):
        assert layout.field == "method"


@pytest.mark.parametrize(("angle", "there"), [(89.9, True), (90, True), (90.1, False), (179.9, False)])
@pytest.mark.parametrize("end", ["A", "B"])
def test_offsets_from_one_tangent_reach_a_quarter_turn(end: str, angle: float, there: bool) -> None:
    job = {"unit": "m", "arc": {"radius": 9, "central_angle": angle}, "method": "tangent", "tangent_from": end}
    layout = made(job | {"levels": 3})
    assert isinstance(layout, Layout) is there
    if isinstance(layout, bowstring.BadJob):
        assert (layout.field, layout.key) == ("method", "method.tangent_overhang_one")


WAYS: dict[str, dict[str, Any]] = {
    "tangent at A": {"method": "tangent", "tangent_from": "A"},
    "tangent at B": {"method": "tangent", "tangent_from": "B"},
    "tangents from the corner": {"method": "tangent", "start": "corner"},
    "tangent from a straight": {"method": "tangent", "start": "one-end", "tangent_from": "A"},
    "produced from the corner": {"method": "produced", "start": "corner"},
    "produced from a straight": {"method": "produced", "start": "one-end"},
    "tapes from known marks": {
        "method": "tapes", "tapes_from": ["Post", "Tree"],
        "known": [{"name": "Post", "x": -4, "y": 3}, {"name": "Tree", "x": 15, "y": -6}],
    },
    "tapes from an end and a mark": {
        "method": "tapes", "tapes_from": ["Tree", "A"], "known": [{"name": "Tree", "x": 15, "y": -6}],
    },
    "coordinates from a mark": {
        "method": "coordinates", "known": [{"name": "Post", "x": -4, "y": 3}],
        "control": {"marks": [{"mark": "Post", "x": 96, "y": 203}, {"mark": "A", "x": 100, "y": 200}]},
    },
    "a parallel behind the chord": {"method": "ordinates", "parallel": -2.5},
    "a parallel through the arc": {"method": "ordinates", "parallel": 0.7},
    "a parallel beyond the arc": {"method": "ordinates", "parallel": 8, "tape": {"length": 50}},
    "a parallel squared off the chord": {"method": "ordinates", "parallel": -2.5, "tape": {"length": 9}},
    "a parallel at equal gaps": {"method": "ordinates", "parallel": 8, "spacing": 1.3},
    "halved, then ordinates": {"method": "ordinates", "halve_first": 2, "spacing": 0.7},
    "first gap": {"method": "centre", "centre": "reachable", "first_gap": 0.4, "spacing": 1.3},
}  # fmt: skip


@pytest.mark.parametrize("way", WAYS)
@FEW
@given(chord=st.floats(10, 30), ratio=st.floats(0.04, 0.2), offset=st.sampled_from([0.0, 0.6, -0.6]))
def test_the_other_ways_are_exact_too(way: str, chord: float, ratio: float, offset: float) -> None:
    """Up to a quarter of a turn, on the drawn line and on lines beside it."""
    keys = {"levels": 3} if "spacing" not in WAYS[way] else {}
    if offset:
        keys |= {"offset": abs(offset), "toward": "outside" if offset > 0 else "centre"}
        assume("control" not in WAYS[way])  # its drawing coordinates are those of the staked ends
    layout = lay_out(read_job(job_of(chord, chord * ratio, **WAYS[way], **keys)))
    drawn = Circle(chord, chord * ratio)
    alone, allowed = by_moves_alone(layout), conditioned(layout)
    radius = float(drawn.radius) + offset
    assert layout.staked.radius == pytest.approx(radius, rel=1e-13)
    for stake in layout.stakes:
        at = layout.recipe.at[stake.name]
        # The staked arc's frame has its own A at the origin: the centre lies square below the middle of its chord.
        centre = radius * sin(float(drawn.half)), -radius * cos(float(drawn.half))
        assert abs(dist(at, centre) - radius) <= EXACT
        assert dist(at, alone[stake.name]) <= allowed[stake.name]
    # Of two marks and a stake that stand nearly in line no tapes tell exactly where it is.
    assume(max(allowed.values()) < 1e-9 or way != "tapes from known marks")
    assert max(allowed.values()) < 1e-9


@settings(max_examples=max(150, settings.default.max_examples))
@given(arc=arcs(), off=st.floats(-1, 2.5), levels=st.integers(1, 5), tape=st.sampled_from([5, 500]))
def test_ordinates_from_a_parallel_string_are_exact_all_round(
    arc: tuple[float, float], off: float, levels: int, tape: float
) -> None:
    """Up to a half circle at equal steps along the chord, past it at equal parts of the arc; whatever the side, and
    whether the string's ends are crossed from A and B or squared off the string between them."""
    assume(arc[1] > arc[0] / 1000 and abs(off * arc[0]) >= 0.05)
    job = job_of(*arc, method="ordinates", parallel=off * arc[0], levels=levels, tape={"length": tape})
    layout = made(job)
    assert isinstance(layout, Layout)
    circle, gaps = Circle(*arc), 2**levels
    over = half_angle(*arc) > pi / 2
    alone, allowed = by_moves_alone(layout), conditioned(layout)
    for number, stake in enumerate(layout.stakes):
        want = circle.at(mpmath.mpf(number) / gaps) if over else circle.over(arc[0] * number / gaps)
        assert dist(layout.recipe.at[stake.name], want) <= EXACT, stake.name
        assert dist(alone[stake.name], want) <= allowed[stake.name] + EXACT, stake.name
    for step in layout.recipe.steps:
        if step.stake:
            # By the step's own numbers: so far along the string, so far off it.
            at, (*along, out) = layout.recipe.at[step.stake], (measure.length for measure in step.measures)
            assert out == pytest.approx(abs(at.y - off * arc[0]), abs=EXACT)
            assert not along or along[0] == pytest.approx(min(abs(at.x), abs(at.x - arc[0])), abs=EXACT)
    assert max(allowed.values()) < 2e-5


@pytest.mark.parametrize("method", METHODS)
@FEW
@given(arc=arcs(170), levels=st.integers(1, 4))
def test_levels_are_so_many_halvings_gaps_equal_in_their_way(
    method: str, arc: tuple[float, float], levels: int
) -> None:
    assume(arc[1] > arc[0] / 100)
    layout = made(job_of(*arc, method=method, centre="reachable", levels=levels))
    assume(isinstance(layout, Layout))
    assert isinstance(layout, Layout)
    gaps = [second - first for first, second in pairwise(along_their_line(layout, method, *arc))]
    assert len(gaps) == 2**levels
    for gap in gaps:
        assert gap == pytest.approx(sum(gaps) / len(gaps), rel=1e-9)


def along_their_line(layout: Layout, method: str, chord: float, sagitta: float) -> list[float]:
    """How far each stake is along what a method steps off: the arc, the chord, the tangents out and back."""
    half = half_angle(chord, sagitta)
    radius = chord / 2 / sin(half)
    rows = []
    for stake in layout.stakes:
        at = layout.recipe.at[stake.name]
        if method == "ordinates":
            rows.append(at.x)
        elif method == "tangent":
            # The tangent at A is (cos, sin) of half the angle; that at B its mirror image.
            from_a, from_b = (x * cos(half) + at.y * sin(half) for x in (at.x, chord - at.x))
            rows.append(from_a if at.x <= chord / 2 else chord - from_b)
        else:
            rows.append(radius * atan2(at.x - chord / 2, at.y + radius * cos(half)))
    return rows


@pytest.mark.parametrize("method", METHODS)
@FEW
@given(arc=arcs(170), gaps=st.floats(1.5, 20))
def test_a_spacing_takes_the_fewest_stakes_that_keep_it(method: str, arc: tuple[float, float], gaps: float) -> None:
    """Every straight gap is within it, and with one step fewer (two along both tangents; half as many halves) one
    wouldn't be: worked out here on the circle."""
    chord, sagitta = arc
    assume(sagitta > chord / 50)
    spacing = chord / gaps
    layout = made(job_of(chord, sagitta, method=method, centre="reachable", spacing=spacing))
    assume(isinstance(layout, Layout))
    assert isinstance(layout, Layout)
    at = [layout.recipe.at[stake.name] for stake in layout.stakes]
    count = len(at) - 1
    assert max(dist(one, other) for one, other in pairwise(at)) <= spacing * (1 + 1e-9)
    fewer = count // 2 if method == "halving" else count - 2 if method == "tangent" else count - 1
    if method == "halving" and count == 2:
        return  # one level is the least
    if fewer > 0:
        assert widest(method, chord, sagitta, fewer) > spacing * (1 - 1e-9)


def widest(method: str, chord: float, sagitta: float, gaps: int) -> float:
    """The widest straight gap of so many steps, on the circle of 30 digits."""
    circle = Circle(chord, sagitta)
    if method == "ordinates":
        places = [circle.over(chord * number / gaps) for number in range(gaps + 1)]
    elif method == "tangent":
        half = gaps // 2
        places = [circle.off_tangent(chord / 2 * number / half, "A") for number in range(half + 1)]
    else:
        places = [circle.at(mpmath.mpf(number) / gaps) for number in range(gaps + 1)]
    return max(dist(one, other) for one, other in pairwise(places))
