"""What a job keeps of the work: read and kept, left out of links, and nothing of it moves a number."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring import BadJob, answer, read_link, write_link
from bowstring.job.job import read_job
from bowstring.job.record import Read, Record
from bowstring.job.terms import RECORD_KEYS
from bowstring.page.beside import done_of, is_beside
from bowstring.page.fields import fields_of_job, job_of_fields
from helping import SAID, answer_to

PLAIN: dict[str, Any] = {"bowstring": 1, **SAID, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "method": "halving"}
RECORD: dict[str, Any] = {
    "done": [1, 2, 4, 3],
    "read": [{"check": "A-Q2", "value": "29' 4-3/8\""}, {"check": "Q1-Q2", "value": 19.5}],
    "by": "the morning crew",
    "date": "2028-02-29",
    "parent": "Walk by the pond",
    "ticket": "B-4417",
    "called": "2028-02-24",
}


def test_it_is_read_and_kept() -> None:
    record = read_job({**PLAIN, **RECORD}).record
    assert record.done == (1, 2, 3, 4)
    assert [one.check for one in record.read] == ["A-Q2", "Q1-Q2"]
    assert [one.value for one in record.read] == pytest.approx([(29 + 4.375 / 12) * 0.3048, 19.5 * 0.3048])
    assert (record.by, record.date, record.parent) == ("the morning crew", "2028-02-29", "Walk by the pond")
    assert (record.ticket, record.called) == ("B-4417", "2028-02-24")
    assert read_job(PLAIN).record == Record()


@pytest.mark.parametrize(("unit", "metres"), [("ft-in", 0.9144), ("ft", 0.9144), ("m", 3.0), ("mm", 0.003)])
def test_what_a_check_read_is_in_the_job_s_unit(unit: str, metres: float) -> None:
    read = read_job({**PLAIN, "unit": unit, "read": [{"check": "A-M", "value": "3"}]}).record.read
    assert read == (Read("A-M", pytest.approx(metres)),)
    assert read_job({**PLAIN, "read": [{"check": "flat", "value": 0}]}).record.read == (Read("flat", 0.0),)


def test_the_answer_is_the_same_with_and_without_it_but_for_what_was_read() -> None:
    plain = answer_to(PLAIN)
    told = answer_to({**PLAIN, **RECORD, "done": [step["number"] for step in plain["steps"]]})
    assert (told["read"]["count"], told["read"]["by"], told["read"]["date"]) == (1, RECORD["by"], RECORD["date"])
    assert (plain["read"]["count"], plain["read"]["by"], plain["read"]["date"]) == (0, "", "")
    assert told["located"] == {"ticket": "B-4417", "called": "2028-02-24"}
    assert plain["located"] == {"ticket": "", "called": ""}
    assert {**told, "read": plain["read"], "located": plain["located"]} == plain


@pytest.mark.parametrize("value", ["-3 m", "good"])
def test_a_reading_that_is_no_length_refuses_no_job_and_is_told_at_its_check(value: str) -> None:
    told, plain = answer_to({**PLAIN, "read": [{"check": "A-Q2", "value": value}]}), answer_to(PLAIN)
    (row,) = told["read"]["rows"]
    assert row["verdict"] == "unread" and row["typed"] == [value] and row["wrong"]
    assert {**told, "read": plain["read"]} == plain


def test_steps_that_are_done_were_done_with_a_method() -> None:
    unsaid = {key: value for key, value in PLAIN.items() if key != "method"}
    with pytest.raises(BadJob) as refused:
        answer({**unsaid, "levels": 2, "done": [1]})
    assert refused.value.field == "done" and refused.value.remedy == "Name the method the steps were done with."
    assert answer_to({**unsaid, "done": []}) == answer_to(unsaid)


def test_forms_cards_that_are_done_stand_by_their_marks() -> None:
    marks = ["form_hubs-0a1b2c3d", "form_dig-ffffffff"]
    record = read_job({**PLAIN, "done": [1, marks[0], 2, marks[1], marks[0]]}).record
    assert record.done == (1, 2) and record.formed == tuple(marks)
    for wrong in ("form_hubs", "hubs-0a1b2c3d", "form_hubs-0A1B2C3D", "form_hubs-0a1b2c3d4"):
        with pytest.raises(BadJob) as refused:
            read_job({**PLAIN, "done": [1, wrong]})
        assert refused.value.field == "done[1]"
    assert write_link({**PLAIN, "done": [1, *marks]}) == write_link(PLAIN)
    whole = {**PLAIN, "done": [1, *marks]}
    assert read_link(write_link(whole, whole=True)) == whole


def test_a_link_leaves_it_out_unless_it_is_asked_for() -> None:
    job = {**PLAIN, **RECORD}
    assert write_link(job) == write_link(PLAIN)
    assert not RECORD_KEYS & read_link(write_link(job)).keys()  # type: ignore[operator]
    assert read_link(write_link(job, whole=True)) == job
    none = {**PLAIN, "done": [], "read": [], "by": "", "date": "", "parent": "", "ticket": "", "called": ""}
    assert write_link(none, whole=True) == write_link(PLAIN)


def test_a_job_with_it_opens_in_the_form_with_what_was_done_and_read() -> None:
    fields = fields_of_job({**PLAIN, **RECORD})
    kept = {name: text for name, text in fields.items() if is_beside(name)}
    assert {name: text for name, text in fields.items() if name not in kept} == fields_of_job(PLAIN)
    assert kept == {
        "done": "1 2 4 3",
        "by": "the morning crew",
        "date": "2028-02-29",
        "ticket": "B-4417",
        "called": "2028-02-24",
        "parent": RECORD["parent"],
        "read-0-check": "A-Q2",
        "read-0-value": "29' 4-3/8\"",
        "read-1-check": "Q1-Q2",
        "read-1-value": "19.5",
    }
    job = job_of_fields(fields)
    assert job["method"] == "halving" and (job["by"], job["date"]) == (RECORD["by"], RECORD["date"])
    assert (job["ticket"], job["called"]) == (RECORD["ticket"], RECORD["called"])
    assert job["parent"] == RECORD["parent"]
    assert job["read"] == [RECORD["read"][0], {"check": "Q1-Q2", "value": "19.5"}]
    assert done_of(fields) == (1, 2, 3, 4)


HEDGE = {
    "name": "hedge",
    "stops": "tape",
    "outline": [["4 ft", "3 ft"], ["34 ft", "3 ft"], ["34 ft", "3.4 ft"], ["4 ft", "3.4 ft"]],
}
TRUNK = {"name": "oak", "stops": "tape", "at": ["19 ft", "2 ft"], "diameter": "3 ft"}
POND = {
    "name": "pond",
    "stops": "feet",
    "outline": [["10 ft", "-9 ft"], ["28 ft", "-9 ft"], ["28 ft", "4 ft"], ["10 ft", "4 ft"]],
}


@pytest.mark.parametrize("obstacle", [HEDGE, TRUNK, POND], ids=lambda one: one["name"])
def test_once_a_step_is_done_another_method_is_only_suggested(obstacle: dict[str, Any]) -> None:
    done = {**PLAIN, "done": [1, 2]}
    told = answer_to({**done, "ground": [obstacle]})
    assert told["method"] == "halving" and told["method_said"] is True
    assert {step["kind"] for step in told["steps"] if step["level"]} <= {"stake", "stake_crossed", "stake_back"}
    open_ground = answer_to(done)
    assert [(one["name"], one["x"], one["y"]) for one in told["stakes"]] == [
        (one["name"], one["x"], one["y"]) for one in open_ground["stakes"]
    ]


def test_the_suggestion_is_another_method_where_one_serves_better() -> None:
    told = answer_to({**PLAIN, "done": [1, 2], "ground": [POND]})
    assert told["advice"]["method"] == "tapes" and told["method"] == "halving"
    assert told["stops"]  # nobody steps into the pond for halving, whatever is done already
