"""A unit changed under bare numbers converts nothing, and says what each number means now."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.unit import unit_note

FEET = {"unit": "ft", "arc-chord": "38", "arc-sagitta": "5.25", "drawn_to": "face", "side": "left"}


def plain(html: str) -> str:
    return re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]+>", "", html)))


def test_bare_numbers_are_told_with_both_meanings() -> None:
    text = plain(unit_note({**FEET, "unit": "m", "unit_before": "ft"}))
    assert "Chord 38: now" in text and "38.000 m" in text and "before 38.00 ft" in text
    assert "Mid-ordinate 5.25: now" in text


def test_numbers_with_a_unit_of_their_own_mean_the_same_and_aren_t_told() -> None:
    assert unit_note({**FEET, "unit": "m", "arc-chord": "38 ft", "arc-sagitta": "5.25 ft", "unit_before": "ft"}) == ""


def test_feet_and_inches_and_feet_read_bare_numbers_alike() -> None:
    assert unit_note({**FEET, "unit": "ft-in", "unit_before": "ft"}) == ""


def test_corners_and_stations_are_told_whole() -> None:
    typed = {"ground-0-outline": "3, -2; 5 m, -2; 4, -6", "stations": "2; 4"}
    text = plain(unit_note({**FEET, **typed, "unit": "m", "unit_before": "ft"}))
    assert "Obstacle 1: Corners, in order 3, -2; 5 m, -2; 4, -6: now 3.000 m, -2.000 m;" in text
    assert "before 3.00 ft, -2.00 ft; 16.40 ft, -2.00 ft;" in text  # 5 m are 16.404 ft
    assert "Ordinates at 2; 4: now 2.000 m; 4.000 m, before 2.00 ft; 4.00 ft" in text
    assert unit_note({"ground-0-outline": "3 m, -2 m; 5 m, -2 m; 4 m, -6 m", "unit": "m", "unit_before": "ft"}) == ""


def test_what_can_t_be_read_in_one_of_the_units_is_told_too() -> None:
    text = plain(unit_note({"unit": "ft-in", "tolerance": "0.02", "unit_before": "m"}))
    assert text == "" or "not readable" in text


def test_a_name_and_an_angle_are_no_lengths() -> None:
    assert unit_note({"unit": "m", "title": "38", "arc-central_angle": "60", "unit_before": "ft"}) == ""


def numbers(fields: dict[str, str], before: str = "") -> Any:
    """The face of the numbers as the page asks for it."""
    return json.loads(handle("numbers", json.dumps({"fields": {**fields, "unit_before": before}})))


def test_the_note_stands_on_the_numbers_until_somebody_says_which_unit_holds() -> None:
    shown = numbers({**FEET, "unit": "m"}, "ft")
    assert shown["sign"] == "computed"
    assert shown["unit_note"] and shown["unit_note"] == unit_note({**FEET, "unit": "m", "unit_before": "ft"})
    assert numbers({**FEET, "unit": "m"})["unit_note"] == numbers(FEET, "ft")["unit_note"] == ""


def test_markup_in_a_field_stays_text() -> None:
    shown = unit_note({"unit": "m", "arc-chord": "<b>38</b>", "arc-sagitta": "5", "unit_before": "ft"})
    assert "<b>38" not in shown


def test_an_unknown_unit_before_is_no_unit() -> None:
    assert numbers({**FEET, "unit": "m"}, "<b>")["unit_note"] == ""


@pytest.mark.parametrize(("unit", "usual"), [("ft", "0.01 ft"), ("m", "5 mm"), ("mm", "5 mm")])
def test_a_mark_of_another_unit_gives_way_to_the_usual_one_and_is_told(unit: str, usual: str) -> None:
    fields = {**fields_of_job(DEMO), "unit": unit}
    assert "mark" not in job_of_fields(fields)
    shown = numbers(fields, "ft-in")
    assert shown["sign"] == "computed" and shown["errors"] == []
    told = plain(shown["echoes"]["mark"])
    assert "1/16 in" in told and usual in told
    refused = numbers({**fields, "arc-chord": "-1"})
    assert refused["sign"] == "refused" and plain(refused["echoes"]["mark"]) == told


def test_a_mark_of_the_unit_s_own_stays_and_one_of_no_tape_is_refused() -> None:
    fields = {**fields_of_job(DEMO), "unit": "m", "mark": "0.001 m"}
    assert job_of_fields(fields)["mark"] == "0.001 m"
    assert "mark" not in numbers(fields)["echoes"]
    strange = numbers({**fields, "mark": "0.002 m"})
    assert strange["state"]["sign"] == "stop" and strange["errors"][0]["id"] == "mark"
    asked = {"fields": {**fields, "mark": "0.002 m"}, "face": "stakes"}
    assert json.loads(handle("face", json.dumps(asked)))["sign"] == "refused"
