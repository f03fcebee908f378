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
    assert sorted(name for name, text in scripts.items() if "ofTheDay" in text) == ["merging.js", "sent.js", "sizes.js"]


# A job that came by a link, in a page that has no fields but those beside the form.
OPENED = """
const { openJob } = await page('job.js');
const { progress } = await page('progress.js');
const box = new Map();
const keep = {
  works: true, watch() {}, open: null, has: (id) => box.has(id), read: (id) => box.get(id) ?? null,
  write: (id, fields) => box.set(id, fields) && true,
};
let back = null;
const undo = { offer: (_text, take) => (back = take) };
const none = () => {};
const said = { kept: {}, desk: {}, undo: {} };
const job = openJob({ keep, words: said, undo, changed: none, switched: none, listed: none });
const steps = progress({ touched: job.touched, undo, words: said, restore: job.restore });
job.open({ received: 'Lodge drive x' }, 'abcdef0123');
"""


def test_only_one_job_is_as_it_was_sent_after_a_tap_is_undone(tmp_path: Path) -> None:
    lines = """
    const row = { 'got-0-measures-0-from': 'A', 'got-0-measures-0-to': 'M', 'got-0-measures-0-distance': '19 ft' };
    steps.gotAt(2, row);
    const copied = [...box.values()];
    back();
    told([copied, [...box.values()]]);
    """
    copied, undone = run(tmp_path, OPENED + lines)
    assert copied[0] == {"received": "Lodge drive x"} and len(copied) == 2
    assert copied[1]["parent"] == "Lodge drive x" and copied[1]["done"] == "2" and "received" not in copied[1]
    assert undone == [{"received": "Lodge drive x"}, {"parent": "Lodge drive x"}]


def test_what_is_done_and_undone_in_a_job_as_it_was_sent_leaves_it_so(tmp_path: Path) -> None:
    lines = "steps.stands(2, {});\nback();\ntold([...box.values()]);\n"
    assert run(tmp_path, OPENED + lines) == [{"received": "Lodge drive x"}]
