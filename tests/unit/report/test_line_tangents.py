"""Where the staked arc of a line has no straight that is its tangent, no step may run one on unsaid."""

from __future__ import annotations

import pytest

from bowstring import BadJob, answering
from bowstring.job.form import JobForm
from bowstring.job.job import read_job
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.pieces import staked_at
from bowstring.words import say

KINK = {"kink": "40 right"}


def job_of(at: int, kinks: dict[int, dict[str, str]], **more: str) -> JobForm:
    """A straight, an arc, an arc and a straight; ``kinks`` by the piece's number, from 1."""
    pieces: list[dict[str, object]] = [
        {"straight": "20 ft"},
        {"arc": {"radius": "31 ft", "central_angle": "70"}, "turn": "left"},
        {"arc": {"radius": "24 ft", "central_angle": "40"}, "turn": "right"},
        {"straight": "8 ft"},
    ]
    line = [{**piece, **kinks.get(number, {})} for number, piece in enumerate(pieces, 1)]
    return {"bowstring": 1, "drawn_to": "centre", "line": line, "at": at, **more}  # type: ignore[typeddict-item]


@pytest.mark.parametrize(("kinks", "start"), [({}, "one-end"), ({2: KINK}, "ends"), ({2: {"kink": "0"}}, "one-end")])
def test_past_a_kink_the_straight_before_is_not_taken_for_the_tangent(
    kinks: dict[int, dict[str, str]], start: str
) -> None:
    assert read_job(job_of(2, kinks)).start == start


@pytest.mark.parametrize(
    ("at", "kinks", "start", "end"),
    [(2, {2: KINK}, "one-end", "A"), (2, {2: KINK}, "corner", "A"), (3, {4: KINK}, "corner", "B")],
)
def test_whoever_starts_from_a_straight_past_a_kink_is_stopped(
    at: int, kinks: dict[int, dict[str, str]], start: str, end: str
) -> None:
    answer = answering(job_of(at, kinks, start=start))
    assert say("line.kink_at_end", end=end) in answer["stops"]
    assert answer["ways_out"][0]["panel"] == "ends"
    assert answering(job_of(at, kinks, start="ends"))["stops"] == []
    assert answering(job_of(at, {}, start=start))["stops"] == []


def test_an_arc_before_the_staked_one_is_told_to_be_no_straight() -> None:
    told = say("line.arc_at_end", end="A", piece=2)
    assert told in answering(job_of(3, {}))["cautions"]
    assert told not in answering(job_of(3, {}, start="ends"))["cautions"]


def test_the_form_takes_another_arc_past_a_kink_from_its_ends_and_comes_back() -> None:
    fields = fields_of_job(job_of(2, {3: KINK}))
    taken = staked_at(fields, 3)
    assert (fields["start"], taken["start"]) == ("one-end", "ends")
    assert answering(job_of_fields(taken))["stops"] == []
    assert answering(job_of_fields(taken))["side"] == "left"
    assert staked_at(taken, 2) == fields


def test_beside_an_arc_of_three_points_the_side_of_an_offset_is_asked_again() -> None:
    job = job_of(3, {}, offset="2 ft", toward="outside")
    points = [["0", "0"], ["10 ft", "2 ft"], ["20 ft", "0"]]
    line = [job["line"][0], {"arc": {"points": points}}, *job["line"][2:]]
    fields = fields_of_job({**job, "line": line})  # type: ignore[typeddict-item]
    taken = staked_at(fields, 2)
    assert (fields["toward"], taken["offset"], "toward" in taken) == ("outside", "2 ft", False)
    with pytest.raises(BadJob) as refused:
        answering(job_of_fields(taken))
    assert refused.value.field == "toward"
