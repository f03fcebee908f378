"""No key in a slab's field lays the arc out again: the answer keeps its layout, and reads the slab anew."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring import BadJob, answer, answering
from bowstring.page import answering as page_answering
from bowstring.page.answering import LastAnswer
from bowstring.page.fields import FIELDS, fields_of_job, job_of_fields
from bowstring.page.slab_fields import is_of_slab
from bowstring.report import answer as report_answer
from bowstring.report.answer import formed
from bowstring.report.parts import FORMED, PARTS
from slab_jobs import ALL, WALK

BARE = {key: value for key, value in WALK.items() if key not in ("edge", "slab", "joints", "grade")}
CHANGES: list[dict[str, str]] = [
    {"edge": "inside"}, {"edge": ""}, {"slab-thickness": "5 in"}, {"slab-waste": ""}, {"slab-end_width": "4 ft"},
    {"board-lengths": "8', 16'"}, {"board-gap": "2 ft"}, {"joints-every": "6 ft"}, {"joints-panels": "9"},
    {"grade-slope": "3"}, {"grade-high": "A"}, {"grade-from": "10 ft", "grade-to": "11 ft", "grade-slope": ""},
    {"slab-depths": "2: 4 in; 30: 4-1/2 in"},
    {"slab-apron-from": "3", "slab-apron-to": "12", "slab-apron-thickness": "6 in"},
    {"grade-ground": "A outside 0.2"}, {"grade-limit": "1", "grade-stops": "yes"},
]  # fmt: skip


def layout_in(answered: Any) -> Any:
    return answered._work.layout


@pytest.mark.parametrize("change", CHANGES)
def test_a_key_in_a_slabs_field_keeps_the_layout(change: dict[str, str]) -> None:
    last, fields = LastAnswer(), fields_of_job(WALK)
    before = last.for_fields(fields)
    dict(before)  # every part of it is worked out
    after = last.for_fields({**fields, **change})
    assert after is not before and layout_in(after) is layout_in(before)
    assert dict(after) == answer(job_of_fields({**fields, **change}), whole=False)


def test_parts_that_hang_on_no_slab_are_worked_out_once() -> None:
    before = answering(WALK)
    dict(before)
    after = formed(before, ALL)
    for part in PARTS:
        if part not in FORMED:
            assert after[part] is before[part]  # type: ignore[literal-required]
    assert dict(after) == answer(ALL, whole=False)
    assert dict(before) == answer(WALK, whole=False), "the first stays as it is"


@pytest.mark.parametrize("job", [BARE, WALK])
def test_a_slab_may_come_and_go(job: dict[str, Any]) -> None:
    other = WALK if job is BARE else BARE
    assert dict(formed(answering(job), other)) == answer(other, whole=False)  # type: ignore[arg-type]


@pytest.mark.parametrize("job", [WALK, {**WALK, "drawn_to": "centre", "edge": "centre"}])
@pytest.mark.parametrize("width", ["6 ft", "", "80 ft"])
def test_a_key_in_the_width_keeps_what_is_laid_out(job: dict[str, Any], width: str) -> None:
    """On a center line the stakes' sheet says the width, too."""
    last, fields = LastAnswer(), fields_of_job(job)  # type: ignore[arg-type]
    before = last.for_fields(fields)
    dict(before)  # every part of it is worked out
    after = last.for_fields({**fields, "width": width})
    assert layout_in(after).recipe is layout_in(before).recipe
    assert dict(after) == answer(job_of_fields({**fields, "width": width}), whole=False)
    assert dict(last.for_fields(fields)) == answer(job, whole=False)  # type: ignore[arg-type]


@pytest.mark.parametrize("change", [{"offset": "6 in", "toward": "centre"}, {"arc-chord": "40 ft"}, {"side": "right"}])
def test_what_a_stake_may_hang_on_lays_it_out_again(change: dict[str, str]) -> None:
    last, fields = LastAnswer(), fields_of_job(WALK)
    before = last.for_fields(fields)
    after = last.for_fields({**fields, **change, "edge": "inside"})
    assert layout_in(after) is not layout_in(before)
    assert dict(after) == answer(job_of_fields({**fields, **change, "edge": "inside"}), whole=False)


def test_piece_by_piece_a_key_of_the_slab_drops_nothing_that_was_begun(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(page_answering, "PIECE", 0.0)
    begun: list[object] = []
    pieces = report_answer.answering_in_pieces
    monkeypatch.setattr(
        report_answer, "answering_in_pieces", lambda *job, **how: begun.append(job) or pieces(*job, **how)
    )
    last, fields = LastAnswer(), fields_of_job(BARE)
    for row in range(4):
        assert last.goes_on({**fields, "slab-waste": f"{row}"})
    other = {**fields, "slab-thickness": "4 in"}
    while last.goes_on(other):
        pass
    assert len(begun) == 1
    assert dict(last.for_fields(other)) == answer(job_of_fields(other), whole=False)
    assert not last.goes_on({**other, "slab-waste": "9"}) and len(begun) == 1


def test_a_slab_that_cannot_be_read_is_refused_and_costs_no_layout() -> None:
    last, fields = LastAnswer(), fields_of_job(WALK)
    before = last.for_fields(fields)
    for _ in range(2):
        with pytest.raises(BadJob):
            last.for_fields({**fields, "slab-thickness": "4"})
        with pytest.raises(BadJob):
            last.goes_on({**fields, "slab-thickness": "4"})
    assert layout_in(last.for_fields({**fields, "slab-thickness": "5 in"})) is layout_in(before)


def test_the_link_and_the_entries_are_those_of_the_slab_that_stands() -> None:
    last, fields = LastAnswer(), fields_of_job(WALK)
    first = last.link(fields)
    changed = {**fields, "slab-thickness": "5 in"}
    assert last.link(changed) != first and last.link(fields) == first
    typed = {row["field"]: row["typed"] for row in last.for_fields(changed)["readings"]}
    assert typed["slab.thickness"] == "5 in"


def test_an_answer_that_is_whole_already_can_t_be_formed_anew() -> None:
    with pytest.raises(TypeError):
        formed(answer(WALK), ALL)  # type: ignore[arg-type]


def test_every_change_is_of_a_field_of_the_slab() -> None:
    known = {field.id for field in FIELDS}
    assert all(name in known and is_of_slab(name) for change in CHANGES for name in change)
