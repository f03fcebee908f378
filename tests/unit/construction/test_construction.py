"""The moves of a construction, and halving and the ends as recipes of them."""

from math import cos, degrees, dist, pi, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.construction import Along, CrossTapes, Measure, Recipe, SquareOff, Take, play
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, unit_vector
from bowstring.job.got import Got
from bowstring.methods.ends import STARTS, find_ends
from bowstring.methods.halving import (
    LEVEL_LETTERS,
    OffTheArc,
    halve,
    sagitta_to_arc,
    stakes_of,
)

ARCS = st.builds(Arc.of_angle, st.floats(0.5, 5000), st.floats(1e-4, 0.9 * pi))


def halved(arc: Arc, levels: int, got: dict[str, Got] | None = None) -> Recipe:
    recipe = Recipe({"A": Point(0.0, 0.0), "B": Point(arc.chord, 0.0)})
    recipe.got = got or {}
    halve(recipe, arc, levels)
    return recipe


def test_square_off_turns_left_and_right():
    at = {"O": Point(0.0, 0.0), "E": Point(4.0, 0.0)}
    assert SquareOff("L", "O", "O", "E", 3.0).place(at, float) == Point(0.0, 3.0)
    assert SquareOff("R", "O", "O", "E", 3.0, left=False).place(at, float) == Point(0.0, -3.0)


def test_along_produces_the_line_backwards():
    at = {"O": Point(0.0, 0.0), "E": Point(0.0, 4.0)}
    assert Along("P", "O", "E", -2.5).place(at, float) == Point(0.0, -2.5)


def test_two_tapes_cross_in_the_3_4_5():
    at = {"O": Point(0.0, 0.0), "E": Point(5.0, 0.0)}
    crossing = CrossTapes("P", "O", 3.0, "E", 4.0).place(at, float)
    assert crossing == pytest.approx(Point(1.8, 2.4), abs=1e-15)
    gap = CrossTapes("P", "O", 1.0, "E", 3.0).place(at, float)  # a metre is left between their tips
    assert gap == pytest.approx(Point(1.5, 0.0), abs=1e-15)


def test_a_replay_rounds_lengths_but_neither_what_stands_nor_the_ends():
    recipe = Recipe()
    recipe.do("have", 0, [Take("A", Point(0.0, 0.0)), Take("B", Point(10.3, 0.0))])
    recipe.do("one", 1, [SquareOff("P", "A", "A", "B", 2.6)])
    recipe.got = {"Q": Got("Q", measures=(Measure("A", "Q", 2.6),))}
    recipe.do("other", 1, [SquareOff("Q", "A", "A", "B", 2.4)])
    at = play(recipe.steps, round)
    assert (at["B"].x, at["P"].y, at["Q"].y) == (10.3, 3.0, 2.6)


@given(ARCS, st.integers(1, 6))
def test_every_stake_of_a_halving_stands_on_the_arc_at_equal_parts_of_it(arc, levels):
    at = halved(arc, levels).at
    for stake in stakes_of(levels):
        turned = arc.half_angle * (2 * stake.fraction - 1)
        # By the centre and the radius, which the construction never uses.
        true = (arc.chord / 2 + arc.radius * sin(turned), arc.radius * (cos(turned) - cos(arc.half_angle)))
        assert dist(at[stake.name], true) < 1e-9 * max(1.0, arc.radius)


def test_names_never_change_when_a_level_is_added():
    for levels in range(1, 9):
        fewer = {stake.name: stake.fraction for stake in stakes_of(levels)}
        more = {stake.name: stake.fraction for stake in stakes_of(levels + 1)}
        assert fewer.items() <= more.items()
        assert len(more) == 2 ** (levels + 1) + 1


def test_names_can_be_called_out():
    """No letter twice, none that reads as a digit, none that is an end or sounds like one (ay, bee and their
    rhymes)."""
    assert len(set(LEVEL_LETTERS)) == len(LEVEL_LETTERS) == 12
    assert not set(LEVEL_LETTERS[:7]) & set("ABCDEGKOPTIVJ")


def test_stakes_stand_in_order_along_the_arc():
    names = [stake.name for stake in stakes_of(3)]
    assert names == ["A", "R1", "Q1", "R2", "M", "R3", "Q2", "R4", "B"]


@given(ARCS, st.floats(0.9, 1.1))
def test_what_was_got_at_the_middle_is_brought_back_onto_the_arc(arc, part):
    got = {"M": Got("M", sagitta=arc.sagitta * part)}
    at = halved(arc, 3, got).at
    scale = max(1.0, arc.radius)
    assert arc.miss(at["M"]) == pytest.approx(arc.sagitta * (part - 1), abs=1e-9 * scale) or arc.half_angle > pi / 2
    for stake in stakes_of(3):
        if stake.name != "M":
            assert abs(arc.miss(at[stake.name])) < 1e-9 * scale


def test_half_chords_that_were_got_place_the_stake_where_the_tapes_cross():
    arc = Arc.of_angle(20.0, 0.6)
    at = halved(arc, 2, {"Q1": Got("Q1", half_chords=(6.2, 6.3))}).at
    assert distance(at["A"], at["Q1"]) == pytest.approx(6.2, abs=1e-12)
    assert distance(at["Q1"], at["M"]) == pytest.approx(6.3, abs=1e-12)


def test_a_chord_moved_off_the_circle_has_no_sagitta_to_it():
    arc = Arc.of_angle(1.0, 1.0)
    with pytest.raises(OffTheArc):
        sagitta_to_arc(arc, Point(30.0, 30.0), Point(31.0, 35.0))


@given(ARCS)
def test_sagitta_to_arc_of_the_whole_chord_is_the_sagitta(arc):
    found = sagitta_to_arc(arc, Point(0.0, 0.0), Point(arc.chord, 0.0))
    assert found == pytest.approx(arc.sagitta, rel=1e-11)


@pytest.mark.parametrize("start", STARTS)
@pytest.mark.parametrize("outward", [0.0, 0.04, -0.04, 3.0, -3.0])
@pytest.mark.parametrize("half_angle", [0.02, 0.7, pi / 2, 1.9, 2.7])
def test_the_ends_come_out_where_the_staked_arc_begins_and_ends(start, outward, half_angle):
    drawn = Arc.of_angle(12.0, half_angle)
    if start == "corner" and not drawn.has_corner:
        return
    staked = drawn.concentric(outward) if outward else drawn
    recipe = Recipe()
    find_ends(recipe, drawn, staked, start)
    # Replayed from the marks that are taken as given alone.
    at = play(recipe.steps)
    assert at["A"] == pytest.approx(Point(0.0, 0.0), abs=1e-12)
    assert at["B"] == pytest.approx(Point(staked.chord, 0.0), abs=1e-12)
    if outward:
        # Concentric: each end's offset runs along its radius.
        centre = staked.centre
        for end, drawn_end in (("A", "A0"), ("B", "B0")):
            assert distance(centre, at[drawn_end]) == pytest.approx(drawn.radius, rel=1e-12)
            assert distance(at[drawn_end], at[end]) == pytest.approx(abs(outward), rel=1e-9)
            toward, to_end = unit_vector(centre, at[drawn_end]), unit_vector(centre, at[end])
            assert toward == pytest.approx(to_end, abs=1e-12)


def test_the_corner_start_measures_both_tangents():
    drawn = Arc.of_angle(10.0, 0.5)
    recipe = Recipe()
    find_ends(recipe, drawn, drawn, "corner")
    lengths = [measure.length for step in recipe.steps for measure in step.measures]
    assert lengths[:2] == pytest.approx([drawn.tangent_length] * 2, rel=1e-12)


def test_an_offset_moves_chord_and_sagitta_but_not_by_itself():
    """Chord 168 ft, sagitta 33 ft, stakes 1-1/2 in outside: chord 2.04 in more, sagitta 0.40 in (computed)."""
    from bowstring.geometry.pairs import arcs_of

    arc = arcs_of(("chord", "sagitta"), 168 * 0.3048, 33 * 0.3048)[0]
    moved = arc.concentric(1.5 * 0.0254)
    assert (moved.chord - arc.chord) / 0.0254 == pytest.approx(2.042, abs=0.0005)
    assert (moved.sagitta - arc.sagitta) / 0.0254 == pytest.approx(0.401, abs=0.0005)
    assert degrees(moved.half_angle) == degrees(arc.half_angle)
