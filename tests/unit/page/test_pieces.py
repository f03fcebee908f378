"""The advice worked out piece by piece: the same as at once, and dropped where something else is typed in between."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bowstring import BadJob
from bowstring.demo import DEMO
from bowstring.page import answering
from bowstring.page.answering import LastAnswer
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job

PLAIN = {"arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face"}
JOBS: dict[str, dict[str, str]] = {
    "advised": PLAIN,
    "named": {**PLAIN, "method": "tapes"},
    "with obstacles": fields_of_job(DEMO),
    "got": {**PLAIN, "got-0-stake": "Q1", "got-0-measures-0-from": "A", "got-0-measures-0-to": "Q1",
            "got-0-measures-0-distance": "10 ft"},
    "none is possible": {**PLAIN, "tape-length": "3 ft"},
    "refused": {**PLAIN, "levels": "40"},
}  # fmt: skip


@pytest.fixture(autouse=True)
def one_at_a_time(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(answering, "PIECE", 0.0)


def later(calls: Calls, fields: dict[str, str], **more: object) -> dict[str, Any]:
    told: dict[str, Any] = json.loads(calls.handle("numbers_later", json.dumps({"fields": fields, **more})))
    return told


@pytest.mark.parametrize("name", JOBS)
def test_piece_by_piece_it_comes_to_the_same(name: str) -> None:
    calls, pieces = Calls(), 0
    while (told := later(calls, JOBS[name], in_pieces=True)) == {"more": True}:
        pieces += 1
    assert pieces >= (0 if name == "refused" else 8)
    assert told == later(Calls(), JOBS[name])
    face = {"fields": JOBS[name], "face": "stakes", "card": None, "panel": ""}
    assert calls.handle("face", json.dumps(face)) == Calls().handle("face", json.dumps(face))


def test_what_was_begun_is_dropped_when_a_field_changes() -> None:
    last, other = LastAnswer(), {**PLAIN, "arc-chord": "30 ft"}
    assert last.goes_on(PLAIN) and last.goes_on(PLAIN)
    assert last.goes_on(other)
    while last.goes_on(other):
        pass
    assert last.for_fields(other)["arc_shown"]["chord"] == "30' 0\""
    assert last.for_fields(PLAIN)["arc_shown"]["chord"] == "38' 0\""
    assert last.goes_on(other), "the answer is another job's now"


def test_cards_that_are_done_change_nothing_in_it() -> None:
    last = LastAnswer()
    while last.goes_on(PLAIN):
        pass
    assert not last.goes_on({**PLAIN, "done": "1 2"})


def test_a_job_that_can_t_be_used_is_refused_at_each_try() -> None:
    last = LastAnswer()
    for _ in range(2):
        with pytest.raises(BadJob):
            while last.goes_on(JOBS["refused"]):
                pass
