"""Stakes that stand off their place by design: the readings of the checks name the one that does."""

from __future__ import annotations

from functools import cache
from math import cos, sin, tau
from random import Random
from typing import Any

import pytest

from bowstring.analysis.checks import Check
from bowstring.analysis.mistakes import reading_of
from bowstring.analysis.suspects import Slip, Suspect, Taped, suspects
from bowstring.construction import Marks, exact
from bowstring.geometry.plane import Point
from bowstring.report.work import Work
from helping import SAID

MARKS = [{"mark": "A", "x": "100 ft", "y": "50 ft"}, {"mark": "B", "x": "122.8 ft", "y": "80.4 ft"}]
JOB: dict[str, Any] = {
    **SAID,
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""},
    "tolerance": "1/4 in",
    "levels": 3,
    "centre": "reachable",
    "control": {"marks": MARKS},
}
METHODS = ("halving", "ordinates", "tangent", "tapes", "centre", "produced", "angles", "coordinates")
TRIALS = 24


@cache
def laid(method: str) -> Work:
    return Work({**JOB, "method": method})


@cache
def checks_of(work: Work) -> list[tuple[Check, float]]:
    """Return each check that a sheet shows, with the limit that is printed."""
    tape = work.job.tape
    return [(one.check, max(tape.down(one.limit), tape.mark)) for one in work.judged if one.shows]


def moved(work: Work, mark: str, by: Point, along: bool) -> Marks:
    """Return where all marks stand when one stands off; ``along``: with whatever was set from it."""
    at = {**work.layout.marks, mark: work.layout.marks[mark].plus(by)}
    hanging = {mark}
    for step in work.layout.recipe.steps if along else ():
        for move in step.moves:
            if step.level and hanging & set(move.uses):
                hanging.add(move.mark)
                at[move.mark] = move.place(at, exact)
    return at


def taped(work: Work, at: Marks, chance: Random | None = None) -> list[Taped]:
    """Return what a crew reads, to a mark, with the scatter that a reading has."""
    tape = work.job.tape
    return [
        Taped(check, tape.round(reading_of(check, at) + (chance.gauss(0, limit / 3) if chance else 0.0)), limit)
        for check, limit in checks_of(work)
    ]


def found(work: Work, read: list[Taped], slips: list[Slip] | None = None) -> list[Suspect]:
    layout = work.layout
    return suspects(read, layout.recipe, layout.stakes, layout.marks, slips or [], layout.staked.centre)


@pytest.mark.parametrize("method", METHODS)
@pytest.mark.parametrize("along", [False, True])
def test_a_stake_off_by_three_to_ten_limits_is_among_the_first_two(method: str, along: bool) -> None:
    work, chance = laid(method), Random(f"{method} {along}")
    names = [stake.name for stake in work.layout.stakes if stake.level]
    first = among = seen = 0
    for _trial in range(TRIALS):
        stake, way = chance.choice(names), chance.uniform(0, tau)
        far = chance.uniform(3, 10) * max(limit for check, limit in checks_of(work) if stake in check.follows)
        read = taped(work, moved(work, stake, Point(far * cos(way), far * sin(way)), along), chance)
        if not any(one.out for one in read):
            continue  # along the arc, where no check looks
        seen += 1
        told = [one.mark for one in found(work, read)]
        assert not told or stake in told, (stake, told)
        among += stake in told[:2]
        first += told[:1] == [stake]
    assert seen >= TRIALS * 0.8
    assert first >= seen * 0.9
    assert among >= seen - 1  # one that went along the arc, where its checks hardly look, may have two others before it


@pytest.mark.parametrize("method", ["halving", "ordinates", "tapes"])
def test_what_explains_every_reading_leaves_each_within_its_limit(method: str) -> None:
    """Stakes off by design with a scatter of readings so large that some are out by chance: whatever is said to explain
    them is put there, and all is read again."""
    work, chance = laid(method), Random(method)
    names = [stake.name for stake in work.layout.stakes if stake.level]
    said = {True: 0, False: 0}
    for _trial in range(TRIALS):
        far, way = chance.uniform(0.003, 0.03), chance.uniform(0, tau)
        off = moved(work, chance.choice(names), Point(far * cos(way), far * sin(way)), along=chance.random() < 0.5)
        read = [
            Taped(one.check, one.reads + chance.gauss(0, 0.45 * one.limit), one.limit) for one in taped(work, off)
        ]  # fmt: skip
        for guess in found(work, read):
            at = moved(work, guess.mark, guess.shift, bool(guess.along))
            left = [abs(one.reads - reading_of(one.check, at)) / one.limit for one in read]
            assert (max(left) <= 1.0001) is guess.explains, (guess, max(left))
            said[guess.explains] += 1
    assert said[True] and said[False]


def test_how_far_it_is_off_is_told_too() -> None:
    work = laid("halving")
    out = work.layout.marks["Q1"].plus(work.layout.staked.centre, -1)
    size = (out.x**2 + out.y**2) ** 0.5
    read = taped(work, moved(work, "Q1", Point(out.x / size * 0.03, out.y / size * 0.03), along=False))
    (one,) = found(work, read)
    assert (one.mark, one.along) == ("Q1", ())
    assert one.far == pytest.approx(0.03, abs=0.006)


@pytest.mark.parametrize("method", ["halving", "ordinates", "tapes"])
def test_an_end_that_moved_is_named_where_no_stake_explains_it(method: str) -> None:
    """Which of the two it is nobody can tell when all stakes were set from them."""
    work = laid(method)
    read = taped(work, moved(work, "B", Point(0.12, 0.0), along=True))
    assert {one.mark for one in found(work, read)} == {"A", "B"}


def test_what_an_in_check_clears_is_no_suspect() -> None:
    """A to Q2 out, the mid-ordinate at Q2 in: Q2 by itself would put both out."""
    work = laid("halving")
    by_key = {one.check.key: one for one in taped(work, work.layout.marks)}
    out = by_key["A-Q2"]
    read = [Taped(out.check, out.reads + 5 * out.limit, out.limit), by_key["Q1-B"], by_key["R3-R4-Q2"]]
    alone = {one.mark for one in found(work, read[:1])}
    assert "Q2" in alone
    cleared = [one for one in found(work, read) if one.mark == "Q2"]
    assert all(one.along or abs(one.shift.x) > abs(one.shift.y) for one in cleared)


def test_a_known_slip_comes_before_a_stake_that_could_be_anywhere() -> None:
    work = laid("halving")
    at = moved(work, "Q1", Point(-0.05, 0.03), along=True)
    told = found(work, taped(work, at), [Slip("that", at), Slip("other", work.layout.marks)])
    assert told[0].mark == "that" and told[0].slip
    assert "other" not in {one.mark for one in told}


def test_nothing_is_suspect_where_all_is_in_and_where_nothing_explains_it() -> None:
    work, chance = laid("ordinates"), Random(4)
    assert found(work, taped(work, work.layout.marks)) == []
    read = [Taped(one.check, one.check.distance + chance.choice((-9, 9)) * one.limit, one.limit)
            for one in taped(work, work.layout.marks)]  # fmt: skip
    assert found(work, read) == []
