"""What the page's script keeps with a job: every field that a job can have, in the form or beside it, no other."""

from __future__ import annotations

import re

import pytest

from bowstring.demo import DEMO
from bowstring.page.build import KEPT_BESIDE
from bowstring.page.fields import fields_of_job
from bowstring.page.form import form_html
from card_jobs import JOBS, job

GOT = {"got": [{"stake": "M", "measures": [{"from": "A", "to": "M", "distance": "19 ft"}]}]}
DONE = {"done": [1, 2], "read": [{"check": "A-Q2", "value": "29 ft"}], "by": "A. B.", "date": "2026-05-31",
        "ticket": "B-4417", "called": "2026-05-28"}  # fmt: skip


def names_of(made: dict[str, object]) -> set[str]:
    """The fields of a job that the page's form hasn't got; its rows grow as copies of the first."""
    shown = set(re.findall(r'name="([^"]+)"', form_html()))
    return {one for one in fields_of_job(made) if re.sub(r"^(got|ground|known)-[0-9]+-", r"\1-0-", one) not in shown}


@pytest.mark.parametrize("name", JOBS)
def test_every_field_of_a_job_is_kept(name: str) -> None:
    for made in (job(name), job(name, **GOT), job(name, **DONE), {**DEMO, **GOT, **DONE}):
        assert [one for one in names_of(made) if not re.fullmatch(KEPT_BESIDE, one)] == []


def test_got_and_done_stand_beside_the_form() -> None:
    beside = names_of({**DEMO, **GOT, **DONE})
    assert {
        "done",
        "by",
        "date",
        "ticket",
        "called",
        "read-0-check",
        "read-0-value",
        "got-0-measures-0-distance",
    } <= beside


def test_no_other_name_is_kept() -> None:
    for name in ("strange", "done2", "read-0", "read-0-other", "got-0-measures-0-other", "stood-"):
        assert not re.fullmatch(KEPT_BESIDE, name)
    assert "?P" not in KEPT_BESIDE  # a name of a group that a browser can't read
