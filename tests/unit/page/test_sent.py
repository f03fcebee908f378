"""A job that came by a link, and what a copy of it says of where it came from."""

from __future__ import annotations

import json
import re
from pathlib import Path

from bowstring import read_link, write_link
from bowstring.demo import DEMO
from bowstring.page.beside import NO_STAKE, OF_THE_DAY, PLAIN, for_layout
from bowstring.page.calls import handle
from bowstring.page.fields import job_of_fields
from builder import website
from in_node import run

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


SENT = {"arc-chord": "44 ft", "received": "Lodge drive x"}
SAME_WORK = "const { sameWork } = await page('sent.js');\ntold(given.map(([sent, own]) => sameWork(sent, own)));\n"


def test_a_job_stays_as_it_was_sent_whatever_was_done_and_read(tmp_path: Path) -> None:
    of_the_day = {name: "1" for name in (*PLAIN, "read-0-check", "read-0-value") if name != "unit_before"}
    worked = [{**SENT, name: text} for name, text in of_the_day.items()]
    changed = [{**SENT, "arc-chord": "45 ft"}, {**SENT, "unit_before": "m"}, {**SENT, "title": "x", **of_the_day}]
    told = run(tmp_path, SAME_WORK, *([SENT, own] for own in (*worked, *changed)))
    assert told == [True] * len(worked) + [False] * len(changed)


def test_what_no_stake_hangs_on_is_listed_once() -> None:
    """The scripts are told it by the build; the job's keys of the same are the record's."""
    assert all(re.fullmatch(OF_THE_DAY, name) for name in (*NO_STAKE, "by", "read-3-check", "anew"))
    assert not re.fullmatch(OF_THE_DAY, "unit_before") and set(NO_STAKE) < set(PLAIN)
    scripts = {file.name: file.read_text("utf-8") for file in website.SCRIPTS.glob("*.js")}
    assert [name for name, text in scripts.items() if re.search(r"ticket\|called|parent\|received", text)] == []
    assert sorted(name for name, text in scripts.items() if "ofTheDay" in text) == [
        "acting.js", "merging.js", "sent.js", "sizes.js",
    ]  # fmt: skip
