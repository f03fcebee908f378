"""Plain numbers that are written as fractions: a plant sells by 1/4 yd³."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring import BadJob, read_link, write_link
from bowstring.job.job import read_job
from helping import answer_to

JOB: dict[str, Any] = {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face", "levels": 2}


@pytest.mark.parametrize(("typed", "value"), [
    ("1/4", 0.25), ("1/2", 0.5), ("1-1/2", 1.5), ("1 1/2", 1.5), ("½", 0.5), (" 3/4 ", 0.75), ("0.25", 0.25), (2, 2.0),
])  # fmt: skip
def test_the_plants_step_and_the_trucks_load_take_fractions(typed: object, value: float) -> None:
    for name in ("step", "truck"):
        read = read_job({**JOB, "slab": {name: typed}}).forming.slab
        assert getattr(read, name) == pytest.approx(value, rel=1e-12)
    job = {**JOB, "slab": {"step": typed}}
    assert read_job(read_link(write_link(job))).forming.slab.step == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize("typed", ["1/0", "1/400", "1/4%", "/4", "1/", "1/2/3", "a/b", "1" * 50 + "/2", "-1/4", "99/1"])
def test_no_fraction_is_made_of_what_is_none(typed: str) -> None:
    with pytest.raises(BadJob) as refused:
        read_job({**JOB, "slab": {"step": typed}})
    assert refused.value.field == "slab.step"


def test_of_a_percent_a_fraction_would_be_read_two_ways() -> None:
    with pytest.raises(BadJob):
        read_job({**JOB, "slab": {"waste": "1/4"}})


def test_an_order_goes_up_to_the_step_that_was_written_as_a_fraction() -> None:
    slab = {"width": "4' 6\"", "edge": "inside", "slab": {"thickness": "4 in", "step": "1/4"}}
    as_decimal = {**slab, "slab": {"thickness": "4 in", "step": 0.25}}
    assert answer_to({**JOB, **slab})["pour"] == answer_to({**JOB, **as_decimal})["pour"]
