"""The prepared library: whatever the whole one answers, it answers too, and equal sources make equal bytes."""

from __future__ import annotations

import json
import math
import re
import subprocess
import tempfile
from pathlib import Path
from typing import Any

import pytest

from bad_job_keys import ALL
from bowstring import BadJob, answer
from bowstring.demo import DEMO
from bowstring.page.calls import handle
from bowstring.page.facing import FACES
from bowstring.page.fields import fields_of_job
from builder import library, npm, website
from halving_jobs import JOBS

ANSWERING = Path(__file__).with_name("answering.mjs")
GOOD = {"example": dict(DEMO), **{name: {"bowstring": 1, **job} for name, job in JOBS.items()}}
TOO_DEEP = {"deep-title", "deep-chord", "deep-arc"}  # for a writer of JSON, too
BAD = {name: job for name, job, _ in ALL if name not in TOO_DEEP}
# Everything that the page asks about a job while it's looked at: a call, and a face's name behind it.
QUESTIONS: dict[str, dict[str, Any]] = {
    "numbers": {},
    "numbers_later": {"panel": "way"},
    "sheet": {"address": ""},
    **{f"face {name}": {"face": name, "card": None, "panel": "", "address": ""} for name in FACES},
}
PLACE = re.compile(r"-?\d+\.\d+")
NEAR = 1e-12  # the host's and the browser's arithmetic differ in a float's last bits


@pytest.fixture(scope="module")
def answered(site: Path, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """What the page's own Python says to every job, by its name: under Node, from the site's files."""
    (version,) = site.glob("v-*")
    jobs = tmp_path_factory.mktemp("jobs") / "jobs.json"
    wanted = {**GOOD, **BAD}
    asked = {"jobs": [json.dumps(job) for job in wanted.values()], "questions": QUESTIONS}
    jobs.write_text(json.dumps(asked), "utf-8")
    parts = [version / "python" / name for name in website.LIBRARY_MARKS]
    command = [npm.node(), ANSWERING, version / "pyodide", *parts, website.lock(), jobs]
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True, encoding="utf-8")
    assert done.returncode == 0, done.stderr[-2000:]
    texts = json.loads(done.stdout)
    return dict(zip(wanted, map(json.loads, texts), strict=True))


def unlike(one: Any, other: Any, place: str = "") -> list[str]:
    """Return the places at which two JSON values differ, numbers by more than their last bits."""
    if isinstance(one, dict) and isinstance(other, dict) and one.keys() == other.keys():
        return [line for key in one for line in unlike(one[key], other[key], f"{place}.{key}")]
    if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        return [line for row, value in enumerate(one) for line in unlike(value, other[row], f"{place}[{row}]")]
    if isinstance(one, float) and isinstance(other, float | int):
        return [] if math.isclose(one, other, rel_tol=NEAR, abs_tol=NEAR) else [f"{place}: {one!r} and {other!r}"]
    return [] if one == other else [f"{place}: {one!r} and {other!r}"]


def test_every_good_job_has_the_answer_and_the_faces_that_it_has_elsewhere(answered: dict[str, Any]) -> None:
    for name, job in GOOD.items():
        assert unlike(json.loads(json.dumps(answer(job))), answered[name]["answer"]) == [], name
        for call, question in QUESTIONS.items():
            told = json.loads(handle(call.split()[0], json.dumps({"fields": fields_of_job(job), **question})))
            assert unlike(taken_apart(told), taken_apart(answered[name]["shown"][call])) == [], (name, call)


def taken_apart(told: Any) -> Any:
    """Return what is told with its HTML as the words that are read, the tags without numbers, and the tags' numbers.

    A place on paper may fall to the other side of a rounding; a number that is read may not.
    """
    if isinstance(told, dict):
        return {key: taken_apart(value) for key, value in told.items()}
    if not isinstance(told, str) or "<" not in told:
        return told
    tags = re.findall("<[^>]*>", told)
    places = [round(float(number), 1) for tag in tags for number in PLACE.findall(tag)]
    return [re.sub("<[^>]*>", "\n", told), [PLACE.sub("", tag) for tag in tags], len(places), places]


def test_every_bad_job_is_refused_with_the_same_sentence(answered: dict[str, Any]) -> None:
    assert len(BAD) > 200
    for name, job in BAD.items():
        with pytest.raises(BadJob) as caught:
            answer(job)
        refusal = caught.value
        assert answered[name] == {"refused": [refusal.field, refusal.wrong, refusal.remedy]}, name


def test_equal_sources_make_equal_bytes(site: Path) -> None:
    (folder,) = site.glob("v-*/python")
    with tempfile.TemporaryDirectory() as work:
        library.write(Path(work), Path(work))
        for name in website.LIBRARY_MARKS:
            assert (Path(work) / name).read_bytes() == (folder / name).read_bytes()
