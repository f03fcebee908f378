"""While nobody has said which unit bare numbers are in, nothing leaves the page that has a number of theirs."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

import bowstring.page
from bowstring.page.beside import is_beside
from bowstring.page.build import KEPT_BESIDE
from bowstring.page.calls import CALLS, handle
from bowstring.words import say

# Who reads fields that no unit was changed under: a link's, a file's, a class's own, those of panels one by one; the
# pieces' panel is asked only where it isn't open, see below.
UNASKED = {"fields", "unit", "calls", "class_numbers", "measuring", "pieces_told"}
TYPED = {"unit": "ft-in", "arc-chord": "38", "arc-sagitta": "5", "drawn_to": "face", "side": "left"}
OPEN = {**TYPED, "unit": "m", "unit_before": "ft-in"}
REFUSED = say("page.error_text", wrong=say("page.unit_open.wrong"), remedy=say("page.unit_open.remedy"))
# What each question about a job is asked with; those that aren't about one.
ASKED: list[tuple[str, dict[str, object]]] = [
    *(("hand_over", {"what": what}) for what in ("qr", "messages", "files")),
    *(("hand_file", {"kind": kind}) for kind in ("people", "svg", "png", "dxf", "instrument-n-e", "instrument-x-y")),
    ("job_file", {}),
    ("set_back", {}),
    ("fold", {"key": "accuracy"}),
    ("mistake", {"kind": "burned_foot"}),
]
OTHERS = {"numbers", "numbers_later", "face", "sheet", "link", "wall", "called"}  # each below
NO_JOB = {"warm", "example", "open_link", "open_file", "outline", "line_at"}  # the last moves texts as they are


def ask(call: str, fields: dict[str, str] = OPEN, **more: object) -> Any:
    return json.loads(handle(call, json.dumps({"fields": fields, "address": "https://example.org/", **more})))


def test_every_question_of_the_page_is_looked_at_here() -> None:
    assert {call for call, _more in ASKED} | OTHERS | NO_JOB >= CALLS.keys() - {"spelled"}


@pytest.mark.parametrize(("call", "more"), ASKED)
def test_nothing_is_given_away(call: str, more: dict[str, object]) -> None:
    assert ask(call, **more) == {"error": REFUSED}
    assert "error" not in ask(call, {**TYPED, "unit": "m"}, **more)  # somebody has said that it holds


def test_whatever_lays_out_the_job_asks_first() -> None:
    files = Path(bowstring.page.__file__).parent.glob("*.py")
    assert {file.stem for file in files if "job_of_fields(" in file.read_text("utf-8")} <= UNASKED


def test_a_line_is_not_told_in_its_panel() -> None:
    """Its lengths and its drawing would be of one unit or the other."""
    line = {"arc-radius": "31", "arc-central_angle": "70", "side": "right", "before-0-straight": "20"}
    told = ask("numbers", {**line, "unit": "ft-in"}, panel="pieces")["echoes"]
    assert "line-drawn" in told and "line-long" in told
    still = ask("numbers", {**line, "unit": "m", "unit_before": "ft-in"}, panel="pieces")["echoes"]
    assert not {"line-drawn", "line-long", "line-ends"} & still.keys()


def test_there_is_no_link_and_it_is_said_why() -> None:
    assert ask("link") == {"link": "", "link_note": say("page.unit_first")}
    assert ask("link", TYPED)["link"]


@pytest.mark.parametrize("face", ["stakes", "checks", "build", "paper", "why"])
def test_the_job_is_called_by_no_number_of_theirs(face: str) -> None:
    assert ask("called", jobs=[OPEN, TYPED])["names"] == ["", "Chord 38' 0\", mid-ordinate 5' 0\""]
    assert ask("face", face=face, card=None, panel="").get("called", "") == ask("numbers")["called"] == ""


@pytest.mark.parametrize("face", ["stakes", "checks", "build", "paper", "why"])
def test_every_face_is_stopped(face: str) -> None:
    shown = ask("face", face=face, card=None, panel="")
    assert shown["state"]["sign"] == "stop" and say("page.unit_first") in shown["html"]


def test_the_numbers_stay_stopped_when_the_layout_is_asked() -> None:
    later = ask("numbers_later", panel="way")
    assert later["state"] == {"text": say("numbers.state_stopped"), "sign": "stop"} and later["site_plan"] == ""
    assert ask("numbers_later", in_pieces=True)["state"]["sign"] == "stop"


def test_the_long_sheet_says_which_numbers_and_no_step() -> None:
    assert "Chord" in ask("sheet")["sheet"] and "Step" not in ask("sheet")["sheet"]


def test_the_wall_shows_no_number_of_the_job() -> None:
    shown = json.dumps(ask("wall", figure=0))
    assert say("wall.stopped") in shown and "38.000 m" not in shown


def test_the_unit_before_is_kept_with_the_job_and_is_no_part_of_it() -> None:
    assert is_beside("unit_before") and "unit_before" in KEPT_BESIDE.split("|")
    settled = {**TYPED, "unit_before": "ft"}  # bare numbers are read alike in both
    assert ask("link", settled) == ask("link", TYPED)
    assert "unit_before" not in ask("job_file", settled)["text"]
