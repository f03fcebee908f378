"""What the page asks on its numbers face: the fields of the panels read back, and what the layout says later."""

from __future__ import annotations

from typing import Any

from bowstring.demo import DEMO
from bowstring.page.answering import LastAnswer
from bowstring.page.fields import fields_of_job
from bowstring.page.measuring import shown_later, shown_numbers

SAID = {"arc-chord": "38'", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face"}


def asked(fields: dict[str, str], **beside: object) -> dict[str, Any]:
    return shown_numbers({"fields": fields, **beside})


def test_each_field_of_a_panel_is_read_back() -> None:
    face = asked({**SAID, "spacing": "5", "tolerance": "1/4 in", "title": "Walk"})
    assert set(face["echoes"]) == {"spacing", "tolerance"} and face["errors"] == []
    assert "5&#x27; 0&quot;" in face["echoes"]["spacing"]


def test_all_that_is_wrong_is_told_at_once_and_on_the_lines() -> None:
    face = asked({**SAID, "spacing": "5 stone", "found-chord-0": "38'", "levels": "x"})
    wrong = {error["id"] for error in face["errors"]}
    assert {"spacing", "found-chord-1"} <= wrong or {"spacing", "levels"} <= wrong
    assert face["lines"]["fine"]["state"] == "wrong" and face["state"]["sign"] == "stop"


def test_a_wrong_measure_is_told_in_its_row_alone() -> None:
    face = asked({**SAID, "arc-radius": "x"})
    assert face["errors"] == [] and face["rows"]["arc-radius"]["state"] == "wrong"


def test_half_a_set_of_points_is_asked_for_in_its_panel() -> None:
    face = asked({"arc-points-0-0": "1"})
    assert [error["id"] for error in face["errors"]] == ["arc-points-0-1"]
    assert face["lines"]["rest"]["state"] == "wrong"


def test_a_changed_unit_is_told() -> None:
    assert asked({**SAID, "unit": "m", "spacing": "5", "unit_before": "ft-in"})["unit_note"]
    assert not asked({**SAID, "unit": "m"})["unit_note"]


def test_the_plan_is_made_only_where_it_is_looked_at() -> None:
    fields = fields_of_job(DEMO)
    last = LastAnswer()
    assert "site_plan" not in shown_later({"fields": fields}, last)
    assert "<svg" in str(shown_later({"fields": fields, "panel": "way"}, last)["site_plan"])
    none = shown_later({"fields": {}, "panel": "way"}, last)
    assert none["site_plan"] == "" and none["lines"] == {}


def test_the_plan_shows_the_work_and_not_a_far_centre() -> None:
    """The pond of the example lies 40 ft behind the chord; a wall beside the work is drawn on a plan of the work."""
    fields = {**SAID, "arc-sagitta": "8 in"}
    plan = str(shown_later({"fields": fields, "panel": "way"}, LastAnswer())["site_plan"])
    scale = float(plan.split('data-scale="')[1].split('"')[0])
    assert scale * 38 * 0.3048 > 200  # the chord takes most of the width
