"""Stakes set by their cards' rounded numbers: their checks are in, and a slip among them is named."""

from __future__ import annotations

from functools import cache
from random import Random
from typing import Any

import pytest

from bowstring.geometry.plane import unit_vector
from bowstring.report.work import Work
from helping import SAID
from unit.analysis.card_crews import Planted, driven, found, read

FEET: dict[str, Any] = {**SAID, "arc": {"chord": "44 ft", "sagitta": "6' 3\""}, "tolerance": "1/4 in", "levels": 4}
METRES: dict[str, Any] = {**SAID, "unit": "m", "arc": {"chord": "17.3", "sagitta": "2.15"}, "tolerance": "10 mm"}
JOBS = {"feet": FEET, "metres": METRES}
CREWS, SLIPS, LIMITS = 30, 20, 3


@cache
def laid(job: str, method: str) -> Work:
    return Work({**JOBS[job], "method": method})


CASES = [("feet", "halving"), ("metres", "halving"), ("feet", "ordinates"), ("metres", "ordinates"), ("feet", "tapes")]


@pytest.mark.parametrize(("job", "method"), CASES)
def test_of_stakes_set_by_their_cards_at_most_one_row_in_twenty_reads_out(job: str, method: str) -> None:
    work, chance = laid(job, method), Random(f"{job} {method}")
    rows = [one.out for _crew in range(CREWS) for one in read(work, driven(work, chance), chance)]
    assert len(rows) >= 200 and sum(rows) <= 0.05 * len(rows), sum(rows) / len(rows)


@pytest.mark.parametrize(("job", "method"), CASES)
def test_stakes_just_where_the_cards_put_them_leave_room_in_every_row(job: str, method: str) -> None:
    """Without any error none is at its limit."""
    work = laid(job, method)
    tape, at = work.job.tape, {**work.layout.marks, **work.layout.rounded}
    for one in read(work, at, NoChance()):
        assert abs(one.out_by) <= one.limit - tape.mark / 2, one


class NoChance(Random):
    """Nothing goes wrong."""

    def gauss(self, mu: float = 0.0, sigma: float = 1.0) -> float:
        return mu + 0 * sigma


@pytest.mark.parametrize("carried", [True, False])
@pytest.mark.parametrize(("job", "method"), CASES)
def test_a_slip_of_three_limits_is_named(job: str, method: str, carried: bool) -> None:
    """In 19 of 20 of those that a check sees: first in most, else beside what can't be told from it."""
    work, chance = laid(job, method), Random(f"{job} {method} {carried}")
    names = [stake.name for stake in work.layout.stakes if stake.level]
    limits = [(one.check.follows, one.limit) for one in read(work, work.layout.marks, NoChance())]
    seen = named = first = 0
    for _trial in range(SLIPS):
        mark = chance.choice(names)
        far = LIMITS * max(limit for follows, limit in limits if mark in follows) * chance.choice((-1, 1))
        out = unit_vector(work.layout.staked.centre, work.layout.marks[mark])
        taped = read(work, driven(work, chance, Planted(mark, out.plus(out, far - 1), carried)), chance)
        if not any(one.out for one in taped):
            continue  # beside an end one check alone follows it, and that by a half
        seen += 1
        told = [one.mark for one in found(work, taped)]
        named += mark in told
        first += told[:1] == [mark]
    assert seen >= 0.85 * SLIPS and named >= 0.94 * seen and first >= 0.8 * seen, (seen, named, first)
