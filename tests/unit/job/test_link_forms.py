"""The forms of a link: what was written once is read for ever with its meaning, and what is newer is told to be."""

from __future__ import annotations

import hashlib
import json
import math
import random
from pathlib import Path
from typing import Any

import pytest

from bowstring import BadJob, answer, read_link, write_link
from bowstring.job import dictionary
from bowstring.job import link as plain
from bowstring.job.job import read_job
from helping import about, all_hold

BEFORE = {row["what"]: row for row in json.loads(Path(__file__).with_name("links_of_form_1.json").read_text("utf-8"))}
"""Links that the first form wrote, and the jobs that they have meant since."""

HASHES = {
    "DICTIONARY_1": "9ea4cf5043000890c85f85d5509ffc40a93a88a94ec10e7b4ad664f17f287fc3",
    "DICTIONARY_2": "edbd507b246f0cce3d821239f9e03248efd699cc3dffa69d23d78ddf2cb01325",
}

PLANNED = json.loads(Path(__file__).with_name("words_of_jobs.json").read_text("utf-8"))
"""Every key of a job and every word that a choice has, those that are planned too."""


def reads_as_it_did(link: str, job: dict[str, Any]) -> None:
    assert read_link(link) == job
    assert read_job(read_link(link))


def test_stakes_along_a_line_stand_at_equal_steps_where_the_first_form_named_none() -> None:
    """They stand at round distances since; a link that was kept shows the stakes that were driven by it."""
    told = answer(read_link(BEFORE["ordinates at the usual steps"]["link"]))
    xs, chord = [stake["x"] for stake in told["stakes"]], 38 * 0.3048
    assert xs == pytest.approx([chord * step / 16 for step in range(17)])
    since = dict(read_link(BEFORE["ordinates at the usual steps"]["link"]))
    assert since.pop("levels") == "usual"
    assert [stake["x"] for stake in answer(since)["stakes"]] != pytest.approx(xs)


def test_links_of_the_first_form_keep_their_meaning() -> None:
    assert len(BEFORE) >= 12 and all(row["link"].startswith("b1") for row in BEFORE.values())
    all_hold({what: (row["link"], row["job"]) for what, row in BEFORE.items()}, reads_as_it_did)


def test_the_first_form_meant_halving_where_it_named_no_method() -> None:
    jobs = [row["job"] for row in BEFORE.values()]
    assert sum(job["method"] == "halving" for job in jobs) >= 4
    assert [job.get("centre") == "reachable" for job in jobs] == [job["method"] == "centre" for job in jobs]
    assert any(job["method"] == "centre" for job in jobs)


@pytest.mark.parametrize("name", HASHES)
def test_no_dictionary_ever_changes(name: str) -> None:
    assert hashlib.sha256(getattr(dictionary, name)).hexdigest() == HASHES[name]


def test_the_dictionary_holds_every_key_and_every_word() -> None:
    text = dictionary.DICTIONARY_2.decode()
    assert [key for key in PLANNED["keys"].split() if f'"{key}":' not in text] == []
    assert [word for word in PLANNED["words"].split(", ") if f'"{word}"' not in text] == []


@pytest.mark.parametrize("row", BEFORE.values(), ids=BEFORE)
def test_what_is_written_now_reads_back_and_is_short(row: dict[str, Any]) -> None:
    link = plain.write_link(row["job"])
    assert link.startswith("b2") and read_link(link) == row["job"]
    assert len(link) <= len(row["link"]) + 10  # the method is said now


def test_all_links_together_are_shorter_than_they_were() -> None:
    links = [plain.write_link(row["job"]) for row in BEFORE.values()]
    assert sum(map(len, links)) < 0.8 * sum(len(row["link"]) for row in BEFORE.values())


def test_one_job_has_one_link_whatever_the_order_of_its_keys() -> None:
    job = {"bowstring": 1, "title": "Curb", "arc": {"chord": "9 m", "radius": "12 m"}, "side": "left", "levels": 2}
    other = dict(reversed({**job, "arc": {"radius": "12 m", "chord": "9 m"}}.items()))
    assert list(other) != list(job)
    assert write_link(job) == write_link(other)


def test_a_link_says_which_method_was_taken() -> None:
    job = {"bowstring": 1, "arc": {"radius": "12 m", "chord": "9 m"}, "side": "left"}
    told = answer(job)
    opened = read_link(write_link(job))
    assert opened["method"] == told["method"]
    assert answer(opened)["steps"] == told["steps"]
    for method in ("halving", "tapes"):
        with about(method):
            assert read_link(write_link({**job, "method": method})) == {**job, "method": method}


@pytest.mark.parametrize("form", ["b0", "b3", "b9"])
def test_other_forms_are_newer(form: str) -> None:
    with pytest.raises(BadJob) as refusal:
        read_link("https://example.org/#" + form + write_link({"arc": {"radius": "12 m", "chord": "9 m"}})[2:])
    assert refusal.value.key == "link.newer"


def test_a_job_too_large_for_a_link_says_so_and_names_the_file() -> None:
    chance = random.Random(3)
    ground = []
    for number in range(40):
        around = sorted(chance.uniform(0, 6.28) for _ in range(60))
        corners = [(7 * number + 3 * math.cos(turn), 9 + 3 * math.sin(turn)) for turn in around]
        ground.append(
            {"name": f"bed {number}", "stops": "feet", "outline": [[f"{x:.9f}", f"{y:.9f}"] for x, y in corners]}
        )
    job = {"unit": "m", "arc": {"radius": 12, "chord": 9}, "method": "halving", "ground": ground}
    assert len(read_job(job).site.obstacles) == 40
    with pytest.raises(BadJob) as refusal:
        write_link(job)
    assert (refusal.value.field, refusal.value.key) == ("link", "link.too_long")
    assert "file" in refusal.value.remedy
    assert write_link({**job, "ground": ground[:5]})
