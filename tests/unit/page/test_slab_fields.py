"""What the form says of the slab: a field for every key, both directions, and no text that can be read two ways."""

from __future__ import annotations

from typing import Any, get_type_hints

import pytest

from bowstring import BadJob, answer, read_link, write_link
from bowstring.job.form import ApronForm, BoardForm, GradeForm, JointsForm, SlabForm
from bowstring.job.forming import MOST_LENGTHS
from bowstring.job.terms import BOARD_LEVELS, EDGES, SLAB_KEYS
from bowstring.page.fields import FIELDS, all_fields, field_of, fields_of_job, job_of_fields
from bowstring.page.form import form_html
from bowstring.page.labels import label_of
from bowstring.page.slab_fields import heights_of, is_of_slab, without_slab
from bowstring.page.unit import unit_note
from bowstring.words import say
from slab_jobs import ALL, DEEP, METRIC, WALK

AS_TEXTS = {
    **DEEP["slab"],
    "apron": {"from": "12", "to": "22 ft", "thickness": "6 in"},
    "depths": [{**row, "at": f"{row['at']}"} for row in DEEP["slab"]["depths"]],
}
ARC = {"arc-radius": "62 ft", "arc-chord": "48 ft"}


@pytest.mark.parametrize("job", [WALK, ALL, {**DEEP, "slab": AS_TEXTS}])
def test_a_slab_comes_back_from_its_fields(job: dict[str, Any]) -> None:
    fields = fields_of_job(job)
    again = job_of_fields(fields)
    for key, value in job.items():
        assert again[key] == value, key  # type: ignore[literal-required]
    assert fields_of_job(again) == fields
    assert answer(again) == answer(job)


def test_numbers_of_a_slab_come_back_with_their_value() -> None:
    one, other = answer(METRIC), answer(job_of_fields(fields_of_job(METRIC)))
    assert {**one, "readings": []} == {**other, "readings": []}
    assert fields_of_job({**METRIC, "edge": "center"}) == fields_of_job(METRIC)


def test_each_key_of_a_slab_has_a_field() -> None:
    places = {field.place for field in FIELDS}
    for group, form in (("slab", SlabForm), ("board", BoardForm), ("joints", JointsForm), ("grade", GradeForm)):
        keys = {f"{group}.{key}" for key in get_type_hints(form)}
        if group == "slab":  # a group of its own, with a field for each of its keys
            keys = keys - {"slab.apron"} | {f"slab.apron.{key}" for key in get_type_hints(ApronForm)}
        assert keys <= places
    assert {field.id for field in all_fields({}) if is_of_slab(field.id)} == {
        field.id for field in FIELDS if field.place.split(".")[0] in ("width", *SLAB_KEYS)
    }


def test_choices_of_a_slab_are_the_jobs_own_words() -> None:
    lows = ("inside", "outside", "left", "right")
    words = {"edge": EDGES, "board-level": BOARD_LEVELS, "grade-high": ("A", "B"), "grade-low": lows}
    for field in FIELDS:
        if field.id in words:
            assert {choice for choice in field.choices if choice} == set(words.pop(field.id))
    assert words == {}


def test_the_link_of_a_walk_fits_in_two_text_messages() -> None:
    link = write_link(WALK)
    assert len(link) + len("#") + 40 <= 306
    read = read_link(link)
    assert {key: read[key] for key in WALK} == WALK  # type: ignore[literal-required]
    whole = read_link(write_link(ALL))
    assert {key: whole[key] for key in ALL} == ALL  # type: ignore[literal-required]


@pytest.mark.parametrize(
    ("text", "lengths"),
    [
        ("8', 10', 12'", ["8'", "10'", "12'"]),
        ("8; 10\n12", ["8", "10", "12"]),
        ("2.4 m, 3 m;", ["2.4 m", "3 m"]),
        ("7' 6\", 8'", ["7' 6\"", "8'"]),
    ],
)
def test_boards_stand_in_one_text(text: str, lengths: list[str]) -> None:
    assert job_of_fields({**ARC, "board-lengths": text})["board"] == {"lengths": lengths}


@pytest.mark.parametrize("text", ["8,10", "2,4; 3,0", "8 ft, 6 in", "10 ft; 7 ft, 6 in"])
def test_boards_that_could_be_one_or_two_are_refused(text: str) -> None:
    with pytest.raises(BadJob) as refusal:
        job_of_fields({**ARC, "board-lengths": text})
    assert refusal.value.key == "form.stock_comma" and field_of(refusal.value.field) == "board-lengths"


@pytest.mark.parametrize("text", ["A out 0.4; q1 IN -1 ft 3 in", "A fuera 0.4\nq1 dentro -1 ft 3 in"])
def test_heights_of_the_ground_stand_in_one_text(text: str) -> None:
    rows = job_of_fields({**ARC, "grade-ground": text})["grade"]["ground"]
    assert rows == [
        {"stake": "A", "edge": "outside", "level": "0.4"},
        {"stake": "q1", "edge": "inside", "level": "-1 ft 3 in"},
    ]


@pytest.mark.parametrize("text", ["A left 0.4; q1 RIGHT -1 ft 3 in", "A izquierda 0.4\nq1 derecha -1 ft 3 in"])
def test_heights_of_the_ground_are_at_an_edge_by_its_hand_too(text: str) -> None:
    rows = job_of_fields({**ARC, "grade-ground": text})["grade"]["ground"]
    assert [(row["stake"], row["edge"]) for row in rows] == [("A", "left"), ("q1", "right")]


@pytest.mark.parametrize("text", ['0: 4-1/2"; 12\' 6": 4 in', '0 : 4-1/2"\n12\' 6":4 in;'])
def test_measured_depths_stand_in_one_text(text: str) -> None:
    rows = job_of_fields({**ARC, "slab-depths": text})["slab"]["depths"]
    assert rows == [{"at": "0", "depth": '4-1/2"'}, {"at": "12' 6\"", "depth": "4 in"}]


@pytest.mark.parametrize("text", ["12' 4 in", "12':", ": 4 in", "1: 2: 3 in", "0: 4 in; 12' 4 in"])
def test_a_depth_without_its_place_or_itself_is_refused(text: str) -> None:
    with pytest.raises(BadJob) as refusal:
        job_of_fields({**ARC, "slab-depths": text})
    assert refusal.value.key == "form.depth_row" and field_of(refusal.value.field) == "slab-depths"


def test_depths_and_aprons_with_bare_numbers_come_back_and_are_asked_about_in_another_unit() -> None:
    """A bare place means something else once the unit is another; a depth has its unit always."""
    fields = fields_of_job(DEEP)
    assert fields["slab-depths"] == "0: 4-1/2 in; 17' 6\": 6-1/4 in; 40.5: 3-1/2 in"
    assert answer(job_of_fields(fields))["pour"] == answer(DEEP)["pour"]
    note = unit_note({**fields, "unit": "m", "unit_before": "ft-in"})
    assert say("form.slab_depths") in note and say("form.slab_apron_from") in note
    assert say("form.slab_apron_to") not in note
    sure = {"unit": "m", "unit_before": "ft-in", "slab-depths": "0: 4 in; 12 ft: 5 in", "slab-apron-from": "3 ft"}
    assert unit_note(sure) == ""
    metres = fields_of_job({**METRIC, "slab": {"thickness": "100 mm", "depths": [{"at": 1.5, "depth": "110 mm"}]}})
    assert metres["slab-depths"] == "1.5: 110 mm"


def test_a_slab_with_one_edge_needs_no_edge_beside_a_height_of_the_ground() -> None:
    """Any other is asked for it, where its heights are typed."""
    assert heights_of("A 98.60; A-2 99 ft", "x") == [
        {"stake": "A", "level": "98.60"},
        {"stake": "A-2", "level": "99 ft"},
    ]
    fills = job_of_fields({**ARC, "slab-fills": "yes", "slab-thickness": "4 in", "grade-ground": "A 98.60"})
    assert answer(fills)["stakes"] and fields_of_job(fills)["grade-ground"] == "A 98.60"
    with pytest.raises(BadJob) as refusal:
        answer(job_of_fields({**ARC, "width": "4 ft", "grade-ground": "A 98.60"}))
    assert refusal.value.key == "job.ground_half" and field_of(refusal.value.field) == "grade-ground"


@pytest.mark.parametrize("text", ["A", "A outside", "outside 0.4", "A outside 0.4; M"])
def test_a_height_without_its_stake_its_edge_or_itself_is_refused(text: str) -> None:
    with pytest.raises(BadJob) as refusal:
        job_of_fields({**ARC, "grade-ground": text})
    assert refusal.value.key == "form.height_row" and field_of(refusal.value.field) == "grade-ground"


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({"slab-depths": "3: 4"}, "slab-depths"),
        ({"slab-depths": "3: 4 in; x: 4 in"}, "slab-depths"),
        ({"slab-apron-from": "3"}, "slab-apron-to"),
        ({"slab-apron-from": "3", "slab-apron-to": "2", "slab-apron-thickness": "6 in"}, "slab-apron-to"),
        ({"board-lengths": "8; ten"}, "board-lengths"),
        ({"board-lengths": "; ".join(["8"] * (MOST_LENGTHS + 1))}, "board-lengths"),
        ({"grade-ground": "A outside x"}, "grade-ground"),
        ({"slab-thickness": "4"}, "slab-thickness"),
        ({"slab-base": "4"}, "slab-base"),
        ({"grade-slope": "two"}, "grade-slope"),
        ({"grade-slope": "40"}, "grade-slope"),
        ({"joints-panels": "9.5"}, "joints-panels"),
        ({"slab-step": "1/400"}, "slab-step"),
    ],
)
def test_what_is_wrong_with_a_slab_comes_back_to_its_field(typed: dict[str, str], field: str) -> None:
    with pytest.raises(BadJob) as refusal:
        answer(job_of_fields({**ARC, **typed}))
    assert field_of(refusal.value.field, typed) == field


def test_a_plain_number_is_one_in_the_job() -> None:
    job = job_of_fields({**ARC, "slab-waste": "8", "slab-step": "0.25", "joints-panels": "9", "grade-slope": "2 %"})
    assert job["slab"] == {"waste": 8, "step": 0.25} and job["joints"] == {"panels": 9}
    assert job["grade"] == {"slope": "2 %"}


def test_the_fields_without_the_slab_keep_what_is_laid_out() -> None:
    fields = fields_of_job(ALL)
    left = without_slab(fields)
    assert "width" not in left and left["arc-chord"] == fields["arc-chord"]
    assert set(fields) - set(left) == {name for name in fields if is_of_slab(name)}


def test_bare_numbers_of_a_slab_under_another_unit_are_told() -> None:
    typed = {"unit": "m", "unit_before": "ft-in", "grade-ground": "A outside 0.4", "board-lengths": "8; 10"}
    note = unit_note(typed)
    assert say("form.grade_ground") in note and say("form.board_lengths") in note
    assert unit_note({**typed, "grade-ground": "A outside 1 ft", "board-lengths": "8 ft"}) == ""
    assert label_of("edge") == say("form.edge.short")


def test_a_walls_numbers_are_asked_as_a_walls() -> None:
    """Its height is that above its footing; at B it has a thickness, and a row of heights says what to write."""
    for key in ("form.slab_end_width", "form.slab_end_width.help", "form.slab_thickness.help"):
        assert say(key) != say(f"{key}.of_wall")
    assert "Above its footing" in say("form.slab_thickness.help.of_wall")
    html = form_html()
    assert f'<span data-poured="wall">{say("form.slab_thickness.help.of_wall")}</span>' in html
    assert f'<span data-poured="wall">{say("form.slab_end_width.of_wall")}</span>' in html
    with pytest.raises(BadJob) as refusal:
        job_of_fields({**ARC, "grade-ground": "A outside 0.4; 5.1"})
    assert refusal.value.wrong == "Row 2: write stake, side, height."
