"""A stake set with a known slip: it is told by the number that reads otherwise, or by the side that it stands on."""

from __future__ import annotations

import random
from math import isclose
from typing import Any

import pytest

from bowstring.analysis.mistakes import reading_of
from bowstring.construction import Marks, exact
from bowstring.geometry.plane import Point
from bowstring.layout.got import step_of
from bowstring.report.work import Work
from bowstring.units.sizes import FOOT
from helping import SAID, answer_to

PLAIN: dict[str, Any] = {**SAID, "arc": {"chord": "36 ft", "sagitta": "4' 6\""}, "tolerance": "1/4 in"}
POND: dict[str, Any] = {"unit": "m", "side": "right", "drawn_to": "face", "arc": {"chord": "17.3", "sagitta": "2.15"}}


def part_of(job: Any, at: Marks) -> Any:
    """What the checks say where the stakes stand ``at``, each reading to the nearest mark."""
    work = Work(job)
    shown = [one.check for one in work.judged if one.shows]
    read = [{"check": one.key, "value": work.job.tape.show(reading_of(one, at))} for one in shown]
    return answer_to({**job, "read": read})["read"]


def slipped(job: Any, mark: str, pull: int, by: float) -> Marks:
    """Where all marks stand when one length of a mark's step was held wrong."""
    work = Work(job)
    at, step = dict(work.layout.marks), step_of(work.layout.recipe, mark)
    right = step.measures[pull].length
    for move in step.moves:
        at[move.mark] = move.place(at, lambda length: length + by * isclose(length, right))
    return at


@pytest.mark.parametrize("method", ["ordinates", "tangent"])
@pytest.mark.parametrize("by", [FOOT, -FOOT])
def test_a_foot_along_the_string_names_that_number_and_the_foot(method: str, by: float) -> None:
    job = {**PLAIN, "method": method}
    suspects = part_of(job, slipped(job, "K5", 0, by))["suspects"]
    along = next(step for step in answer_to(job)["steps"] if step["stake"] == "K5")["measures"][0]
    reads = Work(job).job.tape.show(along["distance"] + by)
    assert {one["mark"] for one in suspects} == {"K5"}  # the string rows read the same a foot to either side
    if by < 0:  # a foot burned is a slip that is known, with its own sentence
        assert any(f"needs {along['shown']}, only {reads} was measured" in one["text"] for one in suspects)
        return
    (one,) = (one for one in suspects if one["kind"] == "stake")
    assert "K5's distance along the string from" in one["prove"] and f"it should be {along['shown']}." in one["prove"]
    assert one["prove"].endswith(f"If it reads {reads}, that's it: a foot off.")
    assert f"toward {'A' if method == 'ordinates' else 'B'}" in one["text"]


def test_a_foot_in_the_square_off_names_the_square_off() -> None:
    job = {**PLAIN, "method": "ordinates"}
    (one,) = part_of(job, slipped(job, "K5", 1, FOOT))["suspects"][:1]
    assert one["mark"] == "K5" and "the square-off to K5: it should be 3' 7-7/8\"." in one["prove"]
    assert "If it reads 4' 7-7/8\", that's it: a foot off." in one["prove"]


@pytest.mark.parametrize(("job", "method", "mark"), [(POND, "tapes", "K3"), (PLAIN, "ordinates", "K6")])
def test_a_stake_on_the_wrong_side_is_told_so_and_no_tape_is_named_that_reads_right(
    job: Any, method: str, mark: str
) -> None:
    job = {**job, "method": method}
    work = Work(job)
    at = dict(work.layout.marks)
    for move in step_of(work.layout.recipe, mark).moves:
        at[move.mark] = move.mirrored().place(at, exact)
    part = part_of(job, at)
    (one,) = part["suspects"]
    assert one["mark"] == mark and one["text"] in (
        f"{mark} is on the wrong side of {pair}." for pair in ("A to B", "B to A")
    )
    assert one["prove"] == ""
    assert all("Was the tape held" not in row["text"] for row in part["rows"])


@pytest.mark.parametrize("seed", range(8))
def test_the_wrong_side_is_told_over_the_other_stakes_own_errors(seed: int) -> None:
    """In a flat arc two tapes cross flat: what the others are off leaves more than a limit of a reading."""
    job = {**PLAIN, "unit": "m", "arc": {"radius": "18 m", "chord": "12 m"}, "method": "tapes"}
    work, chance = Work(job), random.Random(seed)
    at = {
        mark: place.plus(Point(chance.uniform(-0.003, 0.003), chance.uniform(-0.003, 0.003)))
        if mark[0] == "K"
        else place
        for mark, place in work.layout.marks.items()
    }
    at["K3"] = Point(at["K3"].x, -at["K3"].y)
    assert part_of(job, at)["suspects"][0]["text"] == "K3 is on the wrong side of A to B."


def test_what_is_named_reads_otherwise_by_more_than_a_mark() -> None:
    """Whatever length is told before the stake is pulled would read something else there."""
    job = {**PLAIN, "method": "halving"}
    for mark in ("Q1", "R2"):
        (one,) = part_of(job, slipped(job, mark, 1, 0.04))["suspects"][:1]
        step = next(step for step in answer_to(job)["steps"] if step["stake"] == mark)
        assert (
            one["mark"] == mark
            and f"the square-off to {mark}: it should be {step['measures'][1]['shown']}." in one["prove"]
        )
        assert "reads about" in one["prove"]


def test_one_thing_that_explains_every_reading_leaves_no_row_a_hint_of_its_own() -> None:
    job = {**PLAIN, "method": "ordinates"}
    part = part_of(job, slipped(job, "K5", 1, FOOT))
    assert len(part["suspects"]) == 1 and part["outs"] > 1
    assert all("held at" not in row["text"] and "misread" not in row["text"] for row in part["rows"])


def test_what_hangs_on_a_slip_is_set_again_too() -> None:
    """Halving's children by their right numbers from the wrong parent: one thing explains it."""
    job = {**PLAIN, "method": "halving", "levels": 4}
    work = Work(job)
    at = slipped(job, "R3", 1, 0.0762)
    for step in work.layout.recipe.steps:
        for move in step.moves:
            if step.level and step.stake in ("X5", "X6"):
                at[move.mark] = move.place(at, work.job.tape.round)
    (one,) = part_of(job, at)["suspects"]
    assert (one["mark"], one["again"]) == ("R3", ["X5", "X6"])
