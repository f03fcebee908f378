"""The rule of thumb, squaring, checks and wind, each against a model that shares nothing with it."""

import re
from decimal import ROUND_HALF_UP, Decimal
from itertools import pairwise
from math import atan2, cos, dist, hypot, sin, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.analysis.checks import find_checks
from bowstring.analysis.replay import misses, replay
from bowstring.analysis.rule import alternate_reading, good_up_to, next_sagitta, rule_misses
from bowstring.analysis.squaring import slip, squaring_of
from bowstring.analysis.wind import string_bow
from bowstring.construction import Recipe
from bowstring.geometry.arc import Arc
from bowstring.geometry.pairs import arcs_of
from bowstring.geometry.plane import Point
from bowstring.methods.halving import halve, stakes_of
from bowstring.units.tape import make_tape
from helping import answer_to

FOOT, INCH = 0.3048, 0.0254
BROAD = arcs_of(("chord", "sagitta"), 168 * FOOT, 33 * FOOT)[0]
"""Chord 168 ft, sagitta 33 ft, of our own: steep enough that the quarter rule shows."""


def quartered(chord, sagitta, levels):
    """Stake the quarter rule out with complex numbers, recursively."""
    points = [0j, complex(chord)]
    for level in range(levels):
        after = []
        for start, end in pairwise(points):
            out = 1j * (end - start) / abs(end - start)
            after += [start, (start + end) / 2 + out * sagitta / 4**level]
        points = [*after, points[-1]]
    return points


@pytest.mark.parametrize("levels", [1, 2, 3, 5])
def test_the_rule_staked_out_misses_as_the_plain_model_says(levels):
    stakes = stakes_of(levels)
    found, _at = rule_misses(BROAD, stakes, levels)
    centre = complex(BROAD.chord / 2, BROAD.sagitta - BROAD.radius)
    plain = [abs(point - centre) - BROAD.radius for point in quartered(BROAD.chord, BROAD.sagitta, levels)]
    assert list(found.by_stake.values()) == pytest.approx(plain, abs=1e-11)
    assert abs(found.worst) == pytest.approx(max(map(abs, plain)), abs=1e-11)


def test_the_rules_quarter_stakes_stand_3_55_in_inside():
    """Computed: 3.551 in at two levels, at the quarter; 3.594 in at five, beside it."""
    two, _ = rule_misses(BROAD, stakes_of(2), 2)
    assert two.worst / INCH == pytest.approx(-3.551, abs=0.0005)
    assert two.at == "Q1"
    five, _ = rule_misses(BROAD, stakes_of(5), 5)
    assert five.worst / INCH == pytest.approx(-3.594, abs=0.0005)
    assert five.at != "Q1"


def test_mirror_images_name_the_first_stake():
    found, _ = rule_misses(BROAD, stakes_of(3), 3)
    names = list(found.by_stake)
    assert names.index(found.at) < len(names) // 2


def test_alternate_ordinates_show_the_rule_where_equal_gaps_do_not():
    levels = 4
    stakes = stakes_of(levels)
    _, at = rule_misses(BROAD, stakes, levels)
    gaps = [dist(at[a.name], at[b.name]) for a, b in pairwise(stakes)]
    assert max(gaps) - min(gaps) < 1e-9, "the rule's gaps are equal, so they can't show it"
    reading = alternate_reading(BROAD, stakes, at)
    assert reading is not None
    assert reading.true == pytest.approx(BROAD.radius * (1 - cos(BROAD.half_angle / 2 ** (levels - 1))), rel=1e-12)
    assert abs(reading.in_rule - reading.true) > 0.25 * INCH


def test_good_up_to_is_where_the_rule_just_holds():
    chord, tolerance = 30.0, 0.01
    ratio = good_up_to(chord, 4, tolerance)
    for part, holds in ((0.999, True), (1.001, False)):
        arc = arcs_of(("chord", "sagitta"), chord, ratio * part * chord)[0]
        found, _ = rule_misses(arc, stakes_of(4), 4)
        assert (abs(found.worst) <= tolerance) is holds


@given(st.floats(0.01, 3.0), st.floats(1e-4, 0.95))
def test_the_next_sagitta_by_hand_is_the_arcs_own(chord, ratio):
    arc = arcs_of(("chord", "sagitta"), chord, ratio * chord)[0]
    new_chord, sagitta = next_sagitta(arc.chord / 2, arc.sagitta)
    assert new_chord == pytest.approx(arc.part(2).chord, rel=1e-12)
    assert sagitta == pytest.approx(arc.part(2).sagitta, rel=1e-11)


def test_the_next_sagitta_worked_example():
    """Half chord 84, sagitta 33: new chord 90.250, next sagitta 8.546 (computed)."""
    new_chord, sagitta = next_sagitta(84.0, 33.0)
    assert (round(new_chord, 3), round(sagitta, 3)) == (90.25, 8.546)


WORKED = {
    "broad": {"arc": {"chord": "168'", "sagitta": "33'"}, "levels": 6},
    "low": {"arc": {"chord": "38' 3-5/8\"", "sagitta": "5' 3\""}, "mark": "1/16 in", "levels": 5},
    "flat": {"arc": {"chord": "300 ft", "sagitta": "4 in"}, "levels": 4},
    "tenths": {"unit": "ft", "arc": {"radius": "137.31 ft", "central_angle": "63°17'"}, "levels": 5},
    "steep feet": {"unit": "ft", "arc": {"radius": 20, "chord": 39.9}, "levels": 4},
    "flat metres": {"unit": "m", "mark": "0.001 m", "arc": {"chord": 100, "sagitta": 0.4}, "levels": 4},
    "metres": {"unit": "m", "arc": {"radius": "8.37 m", "arc_length": "13.3 m"}, "levels": 6},
    "beyond a half circle": {"unit": "m", "arc": {"radius": 8, "central_angle": 250}, "levels": 5},
    "millimetres": {"unit": "mm", "arc": {"radius": 6000, "central_angle": "71.3"}, "levels": 5},
    "nine tenths": {"unit": "mm", "mark": 1, "arc": {"radius": 6007, "central_angle": 324}, "levels": 6},
    "flat millimetres": {"unit": "mm", "arc": {"chord": 40000, "sagitta": 12}, "levels": 8},
    "long": {"unit": "ft", "arc": {"chord": "9876543 ft", "sagitta": "1234567 ft"}, "levels": 3},
}
FIGURE = r"([0-9]+(?:\.[0-9]+)?)"
CHORD_LINE = re.compile(rf"Short chord: square root of \({FIGURE}² \+ {FIGURE}²\) = {FIGURE} (ft|m|mm)\.")
STEEP_LINE = re.compile(
    rf"Next mid-ordinate: {FIGURE} × \({FIGURE} - {FIGURE}\) ÷ \(2 × {FIGURE}\) "
    rf"= {FIGURE} × {FIGURE} ÷ {FIGURE} = {FIGURE} (ft|m|mm), to the nearest mark (.+)\."
)
FLAT_LINE = re.compile(
    rf"Next mid-ordinate: {FIGURE} × {FIGURE} ÷ \(2 × \({FIGURE} \+ {FIGURE}\)\) "
    rf"= {FIGURE} × {FIGURE} ÷ {FIGURE} = {FIGURE} (ft|m|mm), to the nearest mark (.+)\."
)
IN_METRES = {"ft": FOOT, "m": 1.0, "mm": 0.001}


def to_the_digits_of(value, printed):
    """What a calculator shows, rounded to as many decimals as the printed figure has."""
    return value.quantize(printed, ROUND_HALF_UP)


@pytest.mark.parametrize("name", WORKED)
def test_a_line_worked_by_hand_comes_out_to_its_last_digit_with_the_figures_it_prints(name):
    job = WORKED[name]
    told = answer_to(job)
    tape = make_tape(job.get("unit", "ft-in"), job.get("mark"))
    forms = set()
    for before, row in pairwise(told["halving"]):
        first, second = row["by_hand"]
        *figures, unit = CHORD_LINE.fullmatch(first).groups()
        half, sagitta, chord = map(Decimal, figures)
        assert to_the_digits_of((half * half + sagitta * sagitta).sqrt(), chord) == chord
        half_digit = 0.05 if unit == "mm" else 0.00005
        assert abs(float(half) - before["half"] / IN_METRES[unit]) <= half_digit * 1.000001
        assert abs(float(sagitta) - before["sagitta"] / IN_METRES[unit]) <= half_digit * 1.000001

        steep, flat = STEEP_LINE.fullmatch(second), FLAT_LINE.fullmatch(second)
        found = steep or flat
        assert found, second
        forms.add("steep" if steep else "flat")
        a, b, c, d, e, f, g, printed = map(Decimal, found.groups()[:8])
        if steep:
            assert (a, b, c, d) == (chord, chord, half, sagitta)
            assert (e, f, g) == (chord, b - c, 2 * d)
            whole = a * (b - c) / (2 * d)
        else:
            assert (a, b, c, d) == (chord, sagitta, chord, half)
            assert (e, f, g) == (chord, sagitta, 2 * (c + d))
            whole = a * b / (2 * (c + d))
        assert to_the_digits_of(whole, printed) == printed
        assert to_the_digits_of(e * f / g, printed) == printed
        # The printed figure is the exact one's rounding too, and the mark is the nearest to either.
        exact = row["sagitta"] / IN_METRES[unit]
        assert abs(float(printed) - exact) <= 0.5000001 * 10.0 ** printed.as_tuple().exponent
        assert found[10] == row["sagitta_shown"] == tape.show(float(printed) * IN_METRES[unit])
    if name == "broad":
        assert forms == {"steep", "flat"}


ROOT_LINE = re.compile(
    rf"From the radius and half the chord: square root of \({FIGURE}² - {FIGURE}²\) = {FIGURE} (ft|m|mm)\."
)
FIRST_LINE = re.compile(
    rf"First mid-ordinate: {FIGURE}² ÷ \({FIGURE} \+ {FIGURE}\) = {FIGURE}² ÷ {FIGURE} = {FIGURE} (ft|m|mm), "
    r"to the nearest mark (.+)\."
)
OVER_LINE = re.compile(
    rf"First mid-ordinate, past a half circle: {FIGURE} \+ {FIGURE} = {FIGURE} (ft|m|mm), to the nearest mark (.+)\."
)


@pytest.mark.parametrize(
    ("arc", "unit"),
    [
        ({"radius": "62 ft 6 in", "chord": "41 ft 3 in"}, "ft-in"),
        ({"radius": "1000 m", "chord": "30 m"}, "m"),
        ({"radius": "8000", "central_angle": 200}, "mm"),
        ({"radius": "40 ft", "central_angle": 178}, "ft"),
        ({"points": [["0", "0"], ["6.2", "2.05"], ["13.1", "0.4"]]}, "m"),
    ],
)
def test_the_first_sagitta_worked_by_hand_comes_out_with_the_figures_it_prints(arc, unit):
    told = answer_to({"arc": arc, "unit": unit, "levels": 1, "side": "left"})
    root_line, line = told["halving"][0]["by_hand"]
    radius, half, root = map(Decimal, ROOT_LINE.fullmatch(root_line).groups()[:3])
    assert to_the_digits_of((radius * radius - half * half).sqrt(), root) == root
    under, over = FIRST_LINE.fullmatch(line), OVER_LINE.fullmatch(line)
    if told["arc"]["central_angle"] > 180:
        a, b, printed = map(Decimal, over.groups()[:3])
        assert (a, b) == (radius, root)
        whole, of_unit, shown = a + b, over[4], over[5]
    else:
        a, b, c, d, e, printed = map(Decimal, under.groups()[:6])
        assert (a, b, c, d, e) == (half, radius, root, half, radius + root)
        whole, of_unit, shown = a * a / e, under[7], under[8]
    assert to_the_digits_of(whole, printed) == printed
    exact = told["staked"]["sagitta"] / IN_METRES[of_unit]
    assert abs(float(printed) - exact) <= 0.5000001 * 10.0 ** printed.as_tuple().exponent
    assert shown == told["halving"][0]["sagitta_shown"]


def test_a_first_sagitta_that_the_drawing_gives_is_not_worked_out_unless_the_stakes_stand_off_its_line():
    job = {"arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "side": "left", "levels": 1}
    assert len(answer_to(job)["halving"][0]["by_hand"]) == 1
    assert len(answer_to({**job, "offset": "1-1/2 in", "toward": "outside"})["halving"][0]["by_hand"]) == 2


def test_the_worked_line_of_a_next_sagitta():
    """84² + 33²: 90.2497; 90.2497 × 6.2497 ÷ 66 = 8.5459 (computed)."""
    lines = answer_to(WORKED["broad"])["halving"][1]["by_hand"]
    assert lines[0].startswith("Short chord: square root of (84² + 33²) = 90.2")
    assert "= 8.5459 ft, to the nearest mark 8' 6-1/2\"." in lines[1]


def test_rounding_adds_up_over_levels():
    """Six levels held to 1/8 in: a miss of more than one level's own half mark, and never over 0.27 in."""
    worst = 0.0
    for tenths in range(40, 80):
        arc = arcs_of(("chord", "sagitta"), 100 * FOOT, tenths / 10 * FOOT)[0]
        recipe = Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0)})
        halve(recipe, arc, 6)
        mark = INCH / 8
        at = replay(recipe, lambda length, mark=mark: round(length / mark) * mark)
        worst = max(worst, abs(misses(arc, stakes_of(6), at).worst))
    assert 1.5 * INCH / 16 < worst < 0.27 * INCH


@pytest.mark.parametrize("ratio", [0.03, 0.1, 0.3, 0.5])
def test_a_side_slip_hardly_moves_its_stake_and_shows_one_level_on(ratio):
    """Stake M put a little along the arc from its place, then the next stake set with the number made for equal
    halves."""
    arc = arcs_of(("chord", "sagitta"), 20.0, ratio * 20.0)[0]
    aside = 0.05
    told = slip(arc, aside)
    # The tip slid square to the sagitta, so off the arc by nearly e^2 / 2R.
    tip = complex(arc.chord / 2 + aside, arc.sagitta)
    centre = complex(arc.chord / 2, arc.sagitta - arc.radius)
    assert abs(tip - centre) - arc.radius == pytest.approx(told.here, rel=1e-3)
    # The next stake, halfway of A-M', with the sagitta of an undisturbed half.
    on_arc = centre + (1j * arc.radius) * complex(cos(-aside / arc.radius), sin(-aside / arc.radius))
    out = 1j * on_arc / abs(on_arc)
    stake = on_arc / 2 + out * arc.part(2).sagitta
    assert abs(abs(stake - centre) - arc.radius) == pytest.approx(told.next_level, rel=1e-9)


def test_a_squaring_triangle_is_a_right_one_that_fits_its_chord():
    for chord, sagitta in ((38 * FOOT, 5.25 * FOOT), (168 * FOOT, 33 * FOOT), (12 * FOOT, 0.5 * FOOT)):
        arc = arcs_of(("chord", "sagitta"), chord, sagitta)[0]
        triangle = squaring_of(arc, INCH / 8, FOOT).triangle
        assert triangle is not None
        assert hypot(triangle.along, triangle.out) == pytest.approx(triangle.long_side, rel=1e-12)
        assert triangle.along <= chord / 2 * (1 + 1e-12)
        assert triangle.out >= sagitta * (1 - 1e-9)
        if triangle.whole:
            sides = [round(side / FOOT, 9) for side in (triangle.along, triangle.out, triangle.long_side)]
            assert all(side == int(side) for side in sides), "whole feet fall on marks"


def test_a_sagitta_of_28_ft_is_squared_by_24_32_40():
    """3-4-5 eight times: a leg out of 28 ft or more reaches the stake, one over 35 (a quarter past it) has no room, and
    of 21-28-35, 24-32-40 and 16-30-34 a mark in the long side turns 24-32-40 least (40/768; 35/588, 34/480)."""
    arc = arcs_of(("chord", "sagitta"), 168 * FOOT, 28 * FOOT)[0]
    triangle = squaring_of(arc, INCH / 8, FOOT).triangle
    assert triangle is not None and triangle.whole == "3-4-5"
    assert [round(side / FOOT, 6) for side in (triangle.along, triangle.out, triangle.long_side)] == [
        24,
        32,
        40,
    ]


def test_a_mark_in_the_long_side_turns_the_leg_as_computed():
    """1/8 in wrong in the long side puts a point 20 ft out 1.04 in off with 3-4-5 ft (computed)."""
    along, out, mark = 3 * FOOT, 4 * FOOT, INCH / 8
    turned = mark * 5 * FOOT / (along * out)
    assert turned * 20 * FOOT / INCH == pytest.approx(1.04, abs=0.005)


@pytest.mark.parametrize(
    ("job", "words", "blade"),
    [
        ({"arc": {"chord": "38 ft", "sagitta": "6 in"}}, "24-in blade", 24 * INCH),
        ({"unit": "ft", "arc": {"chord": "38 ft", "sagitta": "6 in"}}, "24-in blade", 24 * INCH),
        ({"unit": "m", "arc": {"chord": 12, "sagitta": 0.2}}, "600-mm blade", 0.6),
        ({"unit": "mm", "arc": {"chord": 12000, "sagitta": 200}}, "600-mm blade", 0.6),
    ],
)
def test_a_framing_square_has_the_jobs_own_size(job, words, blade):
    """A 24-in blade, or 600 mm: common practice, no source."""
    told = answer_to({**job, "levels": 1})
    (line,) = [way["text"] for way in told["halving"][0]["squaring"]["ways"] if "raming square" in way["text"]]
    assert words in line
    assert told["halving"][0]["squaring"]["way"] == "square"
    tape = make_tape(job.get("unit", "ft-in"), None)
    aside = told["arc"]["sagitta"] * tape.mark / blade
    assert f"goes {tape.show_cost(aside)} along the arc" in line
    other = {24 * INCH: 0.6, 0.6: 24 * INCH}[blade]
    arc = Arc.of_angle(told["arc"]["radius"], told["arc"]["central_angle"] * 3.141592653589793 / 360)
    ways = squaring_of(arc, tape.mark, FOOT, blade)
    assert ways.square.aside == pytest.approx(aside, rel=1e-9)
    assert ways.square.aside != pytest.approx(squaring_of(arc, tape.mark, FOOT, other).square.aside, rel=1e-3)


@pytest.mark.parametrize("half_angle", [0.1, 0.8, 1.8])
def test_what_a_check_may_be_out_by_is_what_moving_its_stakes_makes(half_angle):
    """Each stake moved a micrometre along its radius, the distance taken again."""
    arc = Arc.of_angle(15.0, half_angle)
    stakes = stakes_of(3)
    recipe = Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0)})
    halve(recipe, arc, 3)
    checks, marks = find_checks(arc, stakes, recipe.at)
    centre = complex(*arc.centre)
    step = 1e-6
    for check in checks:
        total = 0.0
        for stake in stakes:
            moved = dict(marks)
            place = complex(*marks[stake.name])
            out = (place - centre) / abs(place - centre) * step
            for name, parents in following(stake.name, marks).items():
                moved[name] = Point(marks[name].x + out.real * parents, marks[name].y + out.imag * parents)
            total += abs(dist(moved[check.start], moved[check.end]) - dist(marks[check.start], marks[check.end])) / step
        assert check.per_tolerance == pytest.approx(total, rel=1e-4, abs=1e-4), check


def following(stake, marks):
    """The marks that move with a stake, and by what part of it."""
    found = {stake: 1.0}
    for name in marks:
        pair = name.removeprefix("mid ").split("-")
        if name.startswith("mid ") and len(pair) == 2 and stake in pair:
            found[name] = 0.5
    return found


def test_no_check_repeats_what_a_step_measured():
    arc = Arc.of_angle(15.0, 0.9)
    recipe = Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0)})
    halve(recipe, arc, 4)
    measured = {frozenset((m.start, m.end)) for step in recipe.steps for m in step.measures}
    checks, _ = find_checks(arc, stakes_of(4), recipe.at)
    assert checks
    assert not measured & {frozenset((check.start, check.end)) for check in checks}


def test_wind_bows_a_string_with_the_square_of_its_length():
    """1.3-mm line, 15 lb, 10 mph: 3.6 in at 168 ft, 1.3 at 100, 0.32 at 50, 0.08 at 25 (computed elsewhere)."""
    bows = [string_bow(feet * FOOT) / INCH for feet in (168, 100, 50, 25)]
    assert bows == pytest.approx([3.6, 1.3, 0.32, 0.08], rel=0.03)


def test_the_ratio_of_one_sagitta_to_the_next_is_the_identitys():
    """Miss of the second sagitta by quartering: computed identity, 1/(4 cos^2(I/8))."""
    for ratio, miss in (
        (1 / 20, -0.248),
        (1 / 10, -0.971),
        (1 / 8, -1.493),
        (1 / 5, -3.576),
        (1 / 2, -14.645),
    ):
        arc = arcs_of(("chord", "sagitta"), 1.0, ratio)[0]
        assert 100 * (arc.sagitta / 4 / arc.part(2).sagitta - 1) == pytest.approx(miss, abs=0.0005)


def test_the_half_chord_is_the_square_root_of_its_legs():
    arc = BROAD
    assert arc.part(2).chord == pytest.approx(sqrt((arc.chord / 2) ** 2 + arc.sagitta**2), rel=1e-14)
    assert atan2(arc.sagitta, arc.chord / 2) == pytest.approx(arc.half_angle / 2, rel=1e-14)
