"""The form: every field of a job can be typed, what was typed becomes the same job, and errors find their field."""

from __future__ import annotations

import re
from html import unescape
from html.parser import HTMLParser
from typing import Any

import pytest

from bowstring import BadJob, answer
from bowstring.demo import DEMO
from bowstring.geometry.given import FIELDS as GIVENS
from bowstring.job.found import HOLDS, TAPED
from bowstring.job.job import DRAWN_TO, DRIVEN, KEYS, TOWARD
from bowstring.job.terms import CLASSES, DEGREE_BY, RECORD_KEYS, SIDES, STOPS, TANGENT_FROM
from bowstring.methods.catalogue import BY_NAME
from bowstring.methods.ends import STARTS
from bowstring.page.fields import FIELDS, MARKS, all_fields, field_of, fields_of_job, job_of_fields
from bowstring.page.form import form_html
from bowstring.page.labels import label_of
from bowstring.page.rows import LEAST, MOST, REMOVED
from bowstring.units.lengths import UNITS, read_length
from bowstring.units.tape import make_tape

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
        "driven": "pin",
        "diameter": "16 mm",
        "width": "1.2",
        "drawn_to": "back",
        "tolerance": "6 mm",
        "fair": "2 mm",
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
    {
        "unit": "m",
        "arc": {"chord": "12", "sagitta": "1.2"},
        "method": "tapes",
        "levels": 3,
        "tape": {"length": "30 m", "class": "II"},
        "hands": "3",
        "ground": [
            {"name": "shed", "stops": "tape", "outline": [["3", "-2.5"], ["5 m", "-2.5"], ["5", "-0.5"]]},
            {"stops": "feet", "outline": [["6 ft 2 in", "-9"], ["7", "-9"], ["7", "-8.25"]]},
            {"name": "oak", "stops": "tape", "at": ["6 m", "-2.25"], "diameter": "0.8"},
        ],
        "room": {"behind": "8", "inside": "9", "outside": "0"},
        "known": [{"name": "hydrant", "x": "0.5", "y": "-2", "sigma": "5 mm"}, {"name": "B", "x": "12", "y": "0"}],
        "fall": {"along": "2 %", "across": "-1.5"},
        "errors": {"read": "1 mm", "scale": "0.0002", "stake": "2 mm", "line": "1 mm", "angle": "0.01"},
        "tapes_from": ["B", "hydrant"],
        "control": {
            "marks": [{"mark": "A", "n": "100", "e": "200"}, {"mark": "B", "n": "100", "e": "212"}],
            "axes": "n-e",
        },
    },
    {"unit": "m", "arc": {"chord": "12", "sagitta": "1.2"}, "method": "ordinates", "stations": ["2.5", "6", "9 m"]},
    {"unit": "m", "arc": {"chord": "12", "sagitta": "1.2"}, "method": "ordinates", "levels": 3, "halve_first": "1"},
    {"unit": "m", "arc": {"chord": "12", "sagitta": "1.2"}, "method": "ordinates", "parallel": "-2.4"},
    {"unit": "m", "arc": {"chord": "12", "sagitta": "1.2"}, "method": "tangent", "tangent_from": "A"},
    {
        "unit": "m",
        "arc": {"chord": "12", "sagitta": "1.2"},
        "method": "angles",
        "spacing": "2",
        "first_gap": "0.75",
        "control": {"marks": [{"mark": "A", "x": "-3", "y": "5"}, {"mark": "B", "x": "9", "y": "5"}]},
    },
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


@pytest.mark.parametrize("levels", [1, 9, 12])
def test_levels_are_a_whole_number_of_one_digit_or_two(levels: int) -> None:
    assert job_of_fields({"arc-chord": "38 ft", "arc-sagitta": "5 ft", "levels": str(levels)})["levels"] == levels


def test_a_larger_flag_beside_the_givens_is_the_jobs_own() -> None:
    fields = fields_of_job({"unit": "m", "arc": {"radius": "5", "chord": "6", "greater": True}})
    assert fields["greater"] and job_of_fields(fields)["greater"] is True
    assert "greater" not in fields_of_job({"arc": {"radius": "5", "chord": "6"}, "greater": False})


def test_the_form_holds_every_key_of_a_job() -> None:
    heads = {re.split(r"[.\[]", field.place)[0] for field in all_fields({})}
    pieces = {"before", "after", "kink"}  # a line's, beside the arc that is staked
    assert heads - pieces == set(KEYS) - {"bowstring", "line", "at", *RECORD_KEYS}
    assert {f"arc.{name}" for name in GIVENS} <= {field.place for field in FIELDS}


def test_choices_are_the_jobs_own_words() -> None:
    for name, words in (
        ("unit", UNITS),
        ("drawn_to", DRAWN_TO),
        ("driven", DRIVEN),
        ("toward", TOWARD),
        ("side", SIDES),
        ("turn", SIDES),
        ("arc-degree_by", DEGREE_BY),
        ("start", STARTS),
        ("found-tape", TAPED),
        ("found-hold", HOLDS),
        ("method", BY_NAME),
        ("tangent_from", TANGENT_FROM),
        ("tape-class", CLASSES),
        ("ground-0-stops", (*STOPS, REMOVED)),  # what is removed is no part of a job
    ):
        assert {choice for choice in BY_ID[name].choices if choice} == set(words), name


@pytest.mark.parametrize("unit", UNITS)
def test_marks_are_the_tapes_own(unit: str) -> None:
    assert [make_tape(unit, mark).listed_mark() for mark in MARKS[unit]] == list(MARKS[unit])
    finest = make_tape(unit, MARKS[unit][-1])
    assert finest.finer() is None


def test_blank_fields_are_not_in_the_job() -> None:
    assert job_of_fields({field.id: "  " for field in all_fields({})}) == {"bowstring": 1}


def test_a_diameter_left_in_its_field_is_no_hubs() -> None:
    """Somebody drove pins, and chose hubs then: the field keeps what was typed, the job has it no more."""
    typed = {"arc-chord": "38 ft", "arc-sagitta": "5 ft", "diameter": "5/8 in"}
    assert "diameter" not in job_of_fields({**typed, "driven": "hub"})
    assert job_of_fields({**typed, "driven": "pin"})["diameter"] == job_of_fields(typed)["diameter"] == "5/8 in"


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
        ({"tapes_from-0": "A"}, "tapes_from-1"),
        ({"tapes_from-1": "hydrant"}, "tapes_from-0"),
    ],
)
def test_values_that_count_only_together_are_asked_for(typed: dict[str, str], blank: str) -> None:
    with pytest.raises(BadJob) as refusal:
        job_of_fields({"arc-chord": "38 ft", "arc-sagitta": "5 ft", **typed})
    assert field_of(refusal.value.field, typed) == blank


@pytest.mark.parametrize(
    ("typed", "key"),
    [
        ({"ground-2-outline": "1,5; 2,0; 3,5"}, "form.outline_comma"),  # three corners, or three decimals
        ({"ground-2-outline": "1 ft, 2 ft; 3 ft; 4 ft, 5 ft"}, "form.outline_pair"),
        ({"ground-2-outline": "1 ft, 2 ft, 3 ft"}, "form.outline_pair"),
        ({"ground-2-outline": "1 ft, ; 2 ft, 3 ft"}, "form.outline_pair"),
        ({"ground-2-at": "1,5"}, "form.outline_comma"),
        ({"ground-2-at": "1 ft"}, "form.outline_pair"),
        ({"ground-2-at": "1 ft, 2 ft; 3 ft, 4 ft"}, "form.place_one"),
        ({"stations": "4,8; 9"}, "form.stations_comma"),
        ({"control-marks-1-x": "3", "control-marks-0-n": "4"}, "form.control_both"),
    ],
)
def test_what_can_be_read_two_ways_is_refused_at_its_field(typed: dict[str, str], key: str) -> None:
    with pytest.raises(BadJob) as refusal:
        job_of_fields({"arc-chord": "38 ft", "arc-sagitta": "5 ft", **typed})
    assert refusal.value.key == key
    assert field_of(refusal.value.field, typed) == next(reversed(typed))


def test_a_wrong_corner_comes_back_to_its_outline() -> None:
    typed = {"arc-chord": "38 ft", "arc-sagitta": "5 ft", "ground-1-stops": "feet"}
    typed |= {"ground-1-outline": "1 ft, 2 ft; 3 ft, 4 5 6; 7 ft, 2 ft"}
    with pytest.raises(BadJob) as refusal:
        answer(job_of_fields(typed))
    assert refusal.value.field.startswith("ground[0].outline[1]")
    assert field_of(refusal.value.field, typed) == "ground-1-outline"


def test_a_round_obstacle_needs_its_middle_and_its_diameter_and_no_corners() -> None:
    plain = {"arc-chord": "38 ft", "arc-sagitta": "5 ft", "ground-1-stops": "tape"}
    for more, field in (
        ({"ground-1-at": "5 ft, -2 ft"}, "ground-1-diameter"),
        ({"ground-1-diameter": "2 ft"}, "ground-1-at"),
        ({"ground-1-at": "5 ft, -2 ft", "ground-1-diameter": "1/8 in"}, "ground-1-diameter"),
        ({"ground-1-at": "5 ft, -2 ft", "ground-1-diameter": "2 ft", "ground-1-outline": "1 ft, 2 ft"}, "ground-1-at"),
    ):
        with pytest.raises(BadJob) as refusal:
            answer(job_of_fields({**plain, **more}))
        assert field_of(refusal.value.field, {**plain, **more}) == field, more


def test_corners_are_parted_by_semicolons_and_by_lines_alike() -> None:
    flat = {"ground-0-outline": "1 ft, -2 ft; 3' 6\", -2 ft; 3 ft,0"}
    lines = {"ground-0-outline": " 1 ft, -2 ft\n3' 6\", -2 ft;\n3 ft, 0\n"}
    (one,), (other,) = job_of_fields(flat)["ground"], job_of_fields(lines)["ground"]  # type: ignore[misc]
    assert one == other == {"outline": [["1 ft", "-2 ft"], ["3' 6\"", "-2 ft"], ["3 ft", "0"]]}


@pytest.mark.parametrize(
    "usual",
    [{"centre": ""}, {"tangent_from": "both"}, {"start": "ends"}, {"tapes_from-0": "A", "tapes_from-1": "B"}],
)
def test_one_job_has_one_form(usual: dict[str, str]) -> None:
    typed = {"arc-chord": "38 ft", "arc-sagitta": "5 ft"}
    assert job_of_fields({**typed, **usual}) == job_of_fields(typed)


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("text", ["3,5", "40 ft, 6 in", "12,345.5 mm", "-1,5 m", "1 ft"])
def test_a_comma_in_a_job_s_corner_keeps_its_meaning_in_the_form(unit: str, text: str) -> None:
    try:
        true = read_length(text, unit, "x", signed=True, zero=True).metres
    except BadJob:
        return  # no job that can be used has it
    ground = [{"stops": "feet", "outline": [[text, "900 m"], [-0.00001, 0], [7, "2 m"]]}]
    again = job_of_fields(fields_of_job({"unit": unit, "arc": {"chord": "38 ft"}, "ground": ground}))
    ((corner, *_),) = (one["outline"] for one in again["ground"])  # type: ignore[attr-defined]
    assert read_length(corner[0], unit, "x", signed=True, zero=True).metres == true


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
    assert set(labels) == {field.id for field in all_fields({}) if field.kind not in ("choice", "flag", "kept")}


def test_fields_keep_what_was_typed_as_text() -> None:
    evil = '"><img src=x onerror=alert(1)></textarea></script>&amp;'
    texts = {field.id: evil for field in all_fields({}) if field.kind not in ("choice", "flag", "mark")}
    page = Page(form_html(texts))
    assert "img" not in page.tags and "script" not in page.tags
    assert page.controls["ends-A"][0]["value"] == evil
    boxes = [field for field in all_fields({}) if field.kind in ("note", "outline", "heights", "depths")]
    written = [unescape(text) for text in re.findall("<textarea[^>]*>([^<]*)</textarea>", form_html(texts)) if text]
    assert len(boxes) == 4 and written == [evil] * len(boxes)


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
    last = LEAST["got"] + 2
    page = Page(form_html({f"got-{last}-stake": "M", "ground-3-name": "shed"}))
    assert {f"got-{last}-sagitta", f"got-{last + 1}-stake"} <= set(page.controls)
    assert {"ground-3-outline", "ground-4-outline"} <= set(page.controls)
    assert f"got-{last + 2}-stake" not in page.controls and "ground-5-name" not in page.controls
    full = Page(form_html({f"ground-{MOST['ground'] - 1}-name": "shed"}))
    assert f"ground-{MOST['ground']}-name" not in full.controls


def test_an_obstacle_that_blocks_nothing_any_more_is_no_part_of_the_job_and_those_after_it_keep_their_fields() -> None:
    from bowstring.page.fields import field_of
    from bowstring.page.rows import site_of_fields

    typed = {"ground-0-name": "oak", "ground-0-stops": "removed", "ground-0-at": "14 ft, 6 ft",
             "ground-0-diameter": "18 in", "ground-1-name": "pole", "ground-1-stops": "tape",
             "ground-1-at": "20 ft, 6 ft", "ground-1-diameter": "1 ft"}  # fmt: skip
    assert [one["name"] for one in site_of_fields(typed)["ground"]] == ["pole"]  # type: ignore[attr-defined]
    assert field_of("ground[0].diameter", typed) == "ground-1-diameter"
    unsaid = {**typed, "ground-0-stops": ""}  # still to be said what it blocks: never dropped
    assert len(site_of_fields(unsaid)["ground"]) == 2  # type: ignore[arg-type]
