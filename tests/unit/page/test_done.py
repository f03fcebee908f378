"""A job keeps the steps that are done, the page the cards: either way the same work stands."""

from __future__ import annotations

import json

import pytest

from bowstring import answer
from bowstring.page.calls import handle

JOB = {"arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face", "levels": "2"}


@pytest.mark.parametrize("method", ["halving", "tapes", "ordinates"])
def test_cards_that_are_done_come_back_from_a_job_file(method: str) -> None:
    fields = {**JOB, "method": method, "done": "1 2 3 4"}
    answered = json.loads(handle("face", json.dumps({"fields": fields, "face": "stakes"})))
    assert answered["card"] == 5, "the next one is open"
    file = json.loads(handle("job_file", json.dumps({"fields": fields})))
    job = json.loads(file["text"])
    numbers = [step["number"] for step in answer(job)["steps"]]
    assert job["done"] and job["done"] == numbers[: len(job["done"])], "steps, counted without the locate ticket"
    opened = json.loads(handle("open_file", json.dumps({"text": file["text"]})))
    assert opened["fields"]["done"] == "1 2 3 4"


def test_a_job_file_of_a_job_that_nobody_began_says_nothing_of_it() -> None:
    file = json.loads(handle("job_file", json.dumps({"fields": JOB})))
    assert "done" not in json.loads(file["text"])
