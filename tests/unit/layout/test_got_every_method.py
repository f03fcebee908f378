"""What was got, for every method: the stake stands where its readings say, and all that come after stand on the arc."""

from __future__ import annotations

import random
from math import hypot

import pytest

from bowstring import BadJob
from bowstring.construction import play
from bowstring.geometry.plane import distance
from helping import about
from slipped import METHODS, job_of, laid_out, slipped, told

MOST = 0.04
"""Metres: how far a stake is set elsewhere."""

TURNS = 6


def holds_afterwards(layout, at, step):
    """Every stake but the one that slipped is on the arc; every measure is the distance of its marks."""
    made = {mark for one in layout.recipe.steps for mark in one.sets}
    begin = {name: point for name, point in layout.recipe.at.items() if name not in made}
    played = play(layout.recipe.steps, start=begin)
    stood = set(step.sets)
    for mark in stood:
        assert distance(played[mark], at[mark]) < 1e-9, mark
    for stake in layout.stakes:
        if stake.name not in stood:
            assert abs(layout.staked.miss(played[stake.name])) < 1e-9, stake.name
    for one in layout.recipe.steps:
        for measure in one.measures:
            assert measure.length == pytest.approx(distance(played[measure.start], played[measure.end]), abs=1e-9)


@pytest.mark.parametrize("name", METHODS)
def test_later_stakes_stand_on_the_arc_whatever_was_got(name):
    rng = random.Random(name)
    plain = laid_out(job_of(name))
    steps = [step for step in plain.recipe.steps if step.level and step.sets]
    for turn in range(TURNS):
        step = steps[turn] if turn < 2 else rng.choice(steps)
        at = slipped(plain, step, rng, MOST)
        mark = rng.choice(step.sets)
        with about(name, turn, step.kind, mark):
            layout = laid_out(job_of(name, got=[told(step, mark, at)]))
            holds_afterwards(layout, at, step)
            assert layout.recipe.standing[mark].apart < 1e-9


@pytest.mark.parametrize("name", METHODS)
def test_stakes_that_stand_elsewhere_one_after_another(name):
    """The second is set from where the first really stands, and slips too."""
    rng = random.Random("second " + name)
    plain = laid_out(job_of(name))
    number = [i for i, step in enumerate(plain.recipe.steps) if step.level and step.sets][:-1]
    for _ in range(3):
        first, second = sorted(rng.sample(number, 2))
        with about(name, first, second):
            at = slipped(plain, plain.recipe.steps[first], rng, MOST / 2)
            rows = [told(plain.recipe.steps[first], plain.recipe.steps[first].sets[-1], at)]
            once = laid_out(job_of(name, got=rows))
            step = once.recipe.steps[second]
            at = slipped(once, step, rng, MOST / 2)
            rows.append(told(step, step.sets[-1], at))
            twice = laid_out(job_of(name, got=rows))
            stood = {*plain.recipe.steps[first].sets, *step.sets}
            for stake in twice.stakes:
                if stake.name not in stood:
                    assert abs(twice.staked.miss(twice.recipe.at[stake.name])) < 1e-9
            for mark in step.sets:
                assert distance(twice.recipe.at[mark], at[mark]) < 1e-9


@pytest.mark.parametrize("name", METHODS)
def test_what_was_got_as_told_changes_no_number(name):
    plain = laid_out(job_of(name))
    for step in [step for step in plain.recipe.steps if step.level and step.sets][::3]:
        with about(name, step.kind):
            layout = laid_out(job_of(name, got=[told(step, step.sets[-1], plain.recipe.at)]))
            for mine, theirs in zip(layout.recipe.steps, plain.recipe.steps, strict=True):
                for one, other in zip(mine.measures, theirs.measures, strict=True):
                    assert one.length == pytest.approx(other.length, abs=1e-7), (mine.kind, one)


@pytest.mark.parametrize("name", ["tapes", "coordinates", "ordinates"])
def test_where_no_stake_hangs_on_another_every_other_number_stays(name):
    plain = laid_out(job_of(name))
    step = next(step for step in plain.recipe.steps if step.stake == "K2")
    at = slipped(plain, step, random.Random(1), MOST)
    layout = laid_out(job_of(name, got=[told(step, "K2", at)]))
    for mine, theirs in zip(layout.recipe.steps, plain.recipe.steps, strict=True):
        assert mine.stands == (mine.stake == "K2")
        assert mine.stands or mine == theirs


def test_one_reading_is_enough_and_the_rest_counts_as_told():
    """An offset of 20 mm more on a foot that is where it was told: K2 stands 20 mm farther off the chord."""
    plain = laid_out(job_of("ordinates"))
    off = distance(plain.recipe.at["foot K2"], plain.recipe.at["K2"])
    row = {"stake": "k2", "measures": [{"from": "foot k2", "to": "K2", "distance": off + 0.02}]}
    at = laid_out(job_of("ordinates", got=[row])).recipe.at
    assert at["K2"].minus(plain.recipe.at["K2"]) == pytest.approx((0.0, 0.02), abs=1e-12)


def test_a_sagitta_as_a_measure_is_the_sagitta_of_the_older_form():
    new = {"stake": "M", "measures": [{"from": "mid M", "to": "M", "distance": 2.03}]}
    one, other = (laid_out(job_of("halving", got=[row])) for row in (new, {"stake": "M", "sagitta": 2.03}))
    assert one.recipe.at == other.recipe.at


def test_half_chords_as_measures_are_those_of_the_older_form():
    halves = [6.35, 6.33]
    new = {"stake": "M", "measures": [{"from": "A", "to": "M", "distance": 6.35},
                                      {"from": "M", "to": "B", "distance": 6.33}]}  # fmt: skip
    one, other = (laid_out(job_of("halving", got=[row])) for row in (new, {"stake": "M", "half_chords": halves}))
    for mark, point in one.recipe.at.items():
        assert point == pytest.approx(other.recipe.at[mark], abs=1e-9), mark


def test_more_readings_than_needed_are_met_as_nearly_as_can_be():
    """Offset and both half chords, one of them misread by 30 mm: the place has the least sum of squares of its misses,
    found here by trying the places around it."""
    plain = laid_out(job_of("halving"))
    at = plain.recipe.at
    row = told(next(step for step in plain.recipe.steps if step.stake == "M"), "M", at)
    row["measures"] = [one for one in row["measures"] if "M" in (one["from"], one["to"])]
    assert len(row["measures"]) == 3
    row["measures"][1]["distance"] += 0.03
    layout = laid_out(job_of("halving", got=[row]))
    here = layout.recipe.at["M"]
    others = {**at, "mid M": layout.recipe.at["mid M"]}

    def squares(x: float, y: float) -> float:
        ends = [one["from"] if one["to"] == "M" else one["to"] for one in row["measures"]]
        return sum(
            (hypot(others[end].x - x, others[end].y - y) - one["distance"]) ** 2
            for end, one in zip(ends, row["measures"], strict=True)
        )

    least = squares(*here)
    for dx, dy in ((1e-4, 0), (-1e-4, 0), (0, 1e-4), (0, -1e-4), (1e-4, 1e-4), (-1e-4, 1e-4)):
        assert squares(here.x + dx, here.y + dy) > least
    assert 0.003 < layout.recipe.standing["M"].apart < 0.03


def reading(start: str, end: str, distance: object) -> dict[str, object]:
    return {"from": start, "to": end, "distance": distance}


REFUSED = {
    "tapes that don't meet": ("halving", "M", [reading("A", "M", 3), reading("M", "B", 3)], "measures", "don't meet"),
    "nearly in line": (
        "halving, a flat arc", "Q1", [reading("A", "Q1", 7.53), reading("Q1", "M", 7.53)], "measures", "mid Q1 to Q1",
    ),
    "not of this step": ("ordinates", "K2", [reading("A", "K1", 3)], "measures[0].to", "isn't a reading at K2"),
    "of marks not set yet": ("produced", "K2", [reading("K4", "K2", 3)], "measures[0].to", "isn't a reading"),
    "no such stake": ("ordinates", "K40", [reading("A", "K40", 3)], "stake", "No stake"),
    "an end": ("ordinates", "B", [reading("A", "B", 12.1)], "stake", "chord you measured"),
    "nothing read": ("ordinates", "K2", [], "measures", "Nothing measured"),
    "one mark": ("ordinates", "K2", [reading("K2", "K2", 3)], "measures[0].to", "from one mark to another"),
    "twice": ("tapes", "K2", [reading("A", "K2", 3), reading("K2", "A", 4)], "measures[1].distance", "twice"),
    "no length": ("tapes", "K2", [{"from": "A", "to": "K2"}], "measures[0].distance", "Nothing is given"),
    "so far off that nothing leads back": (
        "angles", "K2", [reading("K1", "K2", 9)], "measures", "back onto the arc",
    ),
}  # fmt: skip


@pytest.mark.parametrize("case", REFUSED)
def test_what_fixes_no_place_is_refused_at_its_field(case):
    name, stake, measures, field, words = REFUSED[case]
    with pytest.raises(BadJob) as refused:
        laid_out(job_of(name, got=[{"stake": stake, "measures": measures}]))
    assert refused.value.field == f"got[0].{field}" and words in str(refused.value)


@pytest.mark.parametrize(("read", "refused"), [(0.0045, False), (0.007, True)])
def test_a_stake_near_its_string_may_stand_on_either_side(read, refused):
    """3.1 mm off the string is under four marks of 1 mm; 7 mm is 3.9 mm off if it is on that side, 10.1 otherwise."""
    job = job_of("halving", levels=1, arc={"chord": 12, "sagitta": 0.0031})
    job["got"] = [{"stake": "M", "measures": [reading("mid M", "M", read)]}]
    if not refused:
        assert laid_out(job).recipe.at["M"].y == pytest.approx(read, abs=1e-12)
        return
    with pytest.raises(BadJob) as told_so:
        laid_out(job)
    assert told_so.value.field == "got[0].measures[0].distance" and "either side" in str(told_so.value)


def test_two_rows_of_one_step_are_refused():
    rows = [{"stake": mark, "measures": [reading("A", "foot K2", 4)]} for mark in ("K2", "foot K2")]
    with pytest.raises(BadJob) as refused:
        laid_out(job_of("ordinates", got=rows))
    assert "same step" in str(refused.value)
