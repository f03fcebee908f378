"""The form: every field of a job can be typed, what was typed becomes the same job, and errors find their field."""

from __future__ import annotations

import re
from html.parser import HTMLParser
from typing import Any

import pytest

from bowstring import BadJob, answer
from bowstring.demo import DEMO
from bowstring.fieldjob import TAPED
from bowstring.givens import FIELDS as GIVENS
from bowstring.job import DRAWN_TO, DRIVEN, KEYS, SIDES, TOWARD
from bowstring.lengths import UNITS
from bowstring.methods.ends import STARTS
from bowstring.tape import make_tape
from bowstring.views.fields import FIELDS, LEAST_ROWS, MARKS, all_fields, field_of, fields_of_job, job_of_fields
from bowstring.views.form import form_html, label_of
from bowstring.walks.fieldfit import HOLDS

BY_ID = {field.id: field for field in all_fields({})}

# Jobs that together use every key that a form can hold; figures of our own.
JOBS: list[dict[str, Any]] = [
    DEMO,
    {
        "bowstring": 1,
        "title": "Yard",
        "note": "two\nlines",
        "unit": "m",
        "mark": "0.001 m",
        "arc": {"radius": "9.5", "chord": "12", "arc_length": "12.94"},
        "ends": {"A": "wall", "B": "post"},
        "side": "right",
        "offset": "38 mm",
        "toward": "outside",
        "driven": "board",
        "drawn_to": "back",
        "tolerance": "6 mm",
        "spacing": "1.5",
        "start": "corner",
        "ties": {"B": [{"to": "x", "distance": "1"}, {"to": "y", "distance": "2"}]},
    },
    {
        "arc": {"chord": "60 ft", "sagitta": "9 ft"},
        "levels": 3,
        "found": {"chord": ["60' 2\"", "60' 2-1/8\""], "tape": "ground", "fall": "0", "hold": "radius", "sure": True},
        "got": [{"stake": "M", "sagitta": "9' 1/4\""}, {"stake": "Q1", "half_chords": ["15' 10\"", "15' 10\""]}],
    },
    {"arc": {"points": [["0", "0"], ["10 ft", "-3 ft"], ["20 ft", "0"]]}, "start": "one-end"},
    {"unit": "ft", "arc": {"degree": "12", "central_angle": "45°40'"}},
    {"unit": "mm", "arc": {"sagitta": "900", "arc_length": "4000"}, "greater": True, "start": "neither"},
    {"unit": "ft", "arc": {"tangent_length": "20", "external": "4"}, "drawn_to": "unsure"},
]


@pytest.mark.parametrize("job", JOBS)
def test_a_job_comes_back_from_its_fields(job: dict[str, Any]) -> None:
    fields = fields_of_job(job)
    again = job_of_fields(fields)
    assert answer(again) == answer(job)
    assert fields_of_job(again) == fields
    for key, value in job.items():
        assert again[key] == value, key


def test_numbers_of_a_job_come_back_with_their_value() -> None:
    job: dict[str, Any] = {"unit": "m", "mark": 0.01, "arc": {"chord": 12, "sagitta": 1.25}}
    job |= {"tolerance": 0.00002, "levels": 2.0}
    fields = fields_of_job(job)
    assert fields["mark"] == "0.01 m" and fields["tolerance"] == "0.00002" and fields["levels"] == "2"
    one, other = answer(job), answer(job_of_fields(fields))
    assert {**one, "readings": []} == {**other, "readings": []}


def test_a_larger_flag_beside_the_givens_is_the_jobs_own() -> None:
    fields = fields_of_job({"unit": "m", "arc": {"radius": "5", "chord": "6", "greater": True}})
    assert fields["greater"] and job_of_fields(fields)["greater"] is True
    assert "greater" not in fields_of_job({"arc": {"radius": "5", "chord": "6"}, "greater": False})


def test_the_form_holds_every_key_of_a_job() -> None:
    heads = {re.split(r"[.\[]", field.place)[0] for field in all_fields({})}
    assert heads == set(KEYS) - {"bowstring"}
    assert {f"arc.{name}" for name in GIVENS} <= {field.place for field in FIELDS}


def test_choices_are_the_jobs_own_words() -> None:
    for name, words in (
        ("unit", UNITS),
        ("drawn_to", DRAWN_TO),
        ("driven", DRIVEN),
        ("toward", TOWARD),
        ("side", SIDES),
        ("start", STARTS),
        ("found-tape", TAPED),
        ("found-hold", HOLDS),
    ):
        assert {choice for choice in BY_ID[name].choices if choice} == set(words), name


@pytest.mark.parametrize("unit", UNITS)
def test_marks_are_the_tapes_own(unit: str) -> None:
    assert [make_tape(unit, mark).show_mark() for mark in MARKS[unit]] == list(MARKS[unit])
    finest = make_tape(unit, MARKS[unit][-1])
    assert finest.finer() is None


def test_blank_fields_are_not_in_the_job() -> None:
    assert job_of_fields({field.id: "  " for field in all_fields({})}) == {"bowstring": 1}


def test_a_stranger_among_the_fields_is_no_field() -> None:
    with pytest.raises(ValueError, match="no such fields"):
        job_of_fields({"arc-chords": "38 ft"})


@pytest.mark.parametrize(
    ("typed", "blank"),
    [
        ({"arc-points-0-0": "1", "arc-points-0-1": "2", "arc-points-1-0": "3"}, "arc-points-1-1"),
        ({"ties-B-1-to": "wall"}, "ties-B-0-to"),
        ({"ties-A-0-to": "wall", "ties-A-0-distance": "3 ft", "ties-A-1-to": "post"}, "ties-A-1-distance"),
        ({"found-chord-0": "38 ft"}, "found-chord-1"),
        ({"found-hold": "radius"}, "found-chord-0"),
        ({"found-sure": "yes", "found-chord-1": "38 ft"}, "found-chord-0"),
        ({"got-2-stake": "M", "got-2-half_chords-0": "9 ft"}, "got-2-half_chords-1"),
        ({"got-1-half_chords-1": "9 ft"}, "got-1-half_chords-0"),
    ],
)
def test_values_that_count_only_together_are_asked_for(typed: dict[str, str], blank: str) -> None:
    with pytest.raises(BadJob) as refusal:
        job_of_fields({"arc-chord": "38 ft", "arc-sagitta": "5 ft", **typed})
    assert field_of(refusal.value.field, typed) == blank


def test_an_error_in_a_row_after_blank_rows_stands_in_its_own_row() -> None:
    typed = {"arc-chord": "38 ft", "arc-sagitta": "5 ft"}
    typed |= {"got-1-stake": "M", "got-1-sagitta": "5 ft", "got-3-stake": "Q9", "got-3-sagitta": "1 ft"}
    with pytest.raises(BadJob) as refusal:
        answer(job_of_fields(typed))
    assert field_of(refusal.value.field, typed) == "got-3-stake"


def test_every_place_in_a_job_finds_a_field_or_none() -> None:
    for field in all_fields({}):
        assert field_of(field.place) == field.id
        assert label_of(field.id)
    assert field_of("arc") == "arc-chord"
    assert field_of("arc.greater") == field_of("greater") == "greater"
    assert field_of("found.chord") == "found-chord-0"
    assert field_of("ties.B[1]") == "ties-B-1-to"
    assert field_of("job") is None and field_of("bowstring") is None and field_of("") is None


class Page(HTMLParser):
    """Collects ids, names, references and the text of a piece of HTML; fails on tags that aren't closed."""

    VOID = ("input", "br", "meta", "link")

    def __init__(self, text: str) -> None:
        super().__init__()
        self.ids: list[str] = []
        self.refers: list[str] = []
        self.controls: dict[str, list[dict[str, str | None]]] = {}
        self.tags: list[str] = []
        self.words = ""
        self.open: list[str] = []
        self.feed(text)
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        found = dict(attrs)
        self.tags.append(tag)
        if tag not in self.VOID:
            self.open.append(tag)
        if found.get("id"):
            self.ids.append(str(found["id"]))
        for name in ("for", "aria-describedby", "aria-labelledby"):
            self.refers += (found.get(name) or "").split()
        if found.get("name") and tag in ("input", "textarea", "select"):
            self.controls.setdefault(str(found["name"]), []).append({"tag": tag, **found})

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.words += data


def test_the_form_has_one_control_for_each_field_with_a_label() -> None:
    page = Page(form_html())
    assert set(page.controls) == {field.id for field in all_fields({})}
    assert len(page.ids) == len(set(page.ids))
    assert set(page.refers) <= set(page.ids)
    labels = re.findall(r'<label for="([^"]+)"', form_html())
    assert set(labels) == {field.id for field in all_fields({}) if field.kind not in ("choice", "flag")}


def test_fields_keep_what_was_typed_as_text() -> None:
    evil = "\"><img src=x onerror=alert(1)></textarea></script>&amp;"
    texts = {field.id: evil for field in all_fields({}) if field.kind not in ("choice", "flag", "mark")}
    page = Page(form_html(texts))
    assert "img" not in page.tags and "script" not in page.tags
    assert page.controls["ends-A"][0]["value"] == evil
    assert page.words.count(evil) == 1  # the note


def test_choices_show_what_was_chosen_and_what_is_usual() -> None:
    empty, filled = Page(form_html()), Page(form_html({"side": "right", "start": "corner", "unit": "mm"}))

    def checked(page: Page, name: str) -> list[str | None]:
        return [one["value"] for one in page.controls[name] if "checked" in one]

    assert checked(empty, "start") == ["ends"] and checked(filled, "start") == ["corner"]
    assert checked(empty, "side") == [""] and checked(filled, "side") == ["right"]
    assert checked(empty, "drawn_to") == [] and checked(filled, "unit") == ["mm"]


def test_number_keys_are_only_asked_for_where_no_quote_is_needed() -> None:
    for unit, keys in (("ft-in", None), ("ft", "decimal"), ("m", "decimal"), ("mm", "decimal")):
        page = Page(form_html({"unit": unit}))
        assert page.controls["arc-chord"][0].get("inputmode") == keys
        assert page.controls["arc-points-0-0"][0].get("inputmode") is None
        assert page.controls["arc-central_angle"][0].get("inputmode") is None
        inputs = [one for name in BY_ID for one in page.controls[name] if one.get("type") == "text"]
        assert len(inputs) > 30 and all(one.get("autocomplete") == "off" for one in inputs)


def test_more_rows_than_usual_are_shown() -> None:
    page = Page(form_html({f"got-{LEAST_ROWS + 2}-stake": "M"}))
    assert f"got-{LEAST_ROWS + 2}-sagitta" in page.controls
