"""A job that came by a link, and what a copy of it says of where it came from."""

from __future__ import annotations

import json

from bowstring import read_link, write_link
from bowstring.demo import DEMO
from bowstring.page.beside import for_layout
from bowstring.page.calls import handle
from bowstring.page.fields import job_of_fields

JOB = {"bowstring": 1, "title": "Lodge drive", "arc": {"chord": "44 ft", "sagitta": "6 ft"}, "side": "left"}


def opened(job: dict[str, object]) -> dict[str, object]:
    told: dict[str, object] = json.loads(handle("open_link", json.dumps({"text": write_link(job)})))
    return told


def test_a_link_tells_what_a_copy_of_it_names() -> None:
    told, other = opened(JOB), opened({**JOB, "arc": {"chord": "45 ft", "sagitta": "6 ft"}})
    assert told["parent"] == f"Lodge drive {told['id']}"
    assert str(other["parent"]).startswith("Lodge drive ") and other["parent"] != told["parent"]


def test_a_parent_always_fits_in_a_job() -> None:
    told = opened({**JOB, "title": "A very long title of a job, " * 2 + "with eighty signs in it."})
    assert len(str(told["parent"])) <= 80
    job = job_of_fields({**told["fields"], "parent": str(told["parent"])})  # type: ignore[dict-item]
    assert read_link(write_link(job, whole=True))["parent"] == told["parent"]


def test_a_file_of_a_copy_names_its_parent_and_a_link_does_not() -> None:
    told = opened(DEMO)  # type: ignore[arg-type]
    fields = {**told["fields"], "parent": told["parent"]}  # type: ignore[dict-item]
    job = json.loads(json.loads(handle("job_file", json.dumps({"fields": fields})))["text"])
    assert job["parent"] == told["parent"]
    again = json.loads(handle("open_file", json.dumps({"text": json.dumps(job)})))
    assert again["fields"]["parent"] == told["parent"]
    link = json.loads(handle("link", json.dumps({"fields": fields})))["link"]
    assert "parent" not in read_link(link)


def test_a_job_as_it_was_sent_has_no_parent_of_its_own() -> None:
    told = opened(DEMO)  # type: ignore[arg-type]
    fields = {**told["fields"], "received": told["parent"]}  # type: ignore[dict-item]
    job = json.loads(json.loads(handle("job_file", json.dumps({"fields": fields})))["text"])
    assert "parent" not in job and "received" not in job


def test_no_stake_hangs_on_either() -> None:
    fields = {"arc-chord": "44 ft", "parent": "Lodge drive x", "received": "Lodge drive x"}
    assert for_layout(fields) == {"arc-chord": "44 ft"}
