"""A job without a title is called by the first numbers of its arc, in all languages and units."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from bowstring.page.called import called
from bowstring.page.calls import Calls, handle
from bowstring.words import speak
from in_node import run

ARC = {"arc-chord": "44 ft", "arc-sagitta": "6"}
SIDES = {f"arc-three_sides-{row}": "10" for row in range(3)}
POINTS = {f"arc-points-{row}-{axis}": "1" for row in range(3) for axis in range(2)}


@pytest.mark.parametrize(
    ("fields", "name"),
    [
        ({}, ""),
        ({"title": "Lodge drive", "unit": "ft"}, ""),
        (ARC, "Chord 44' 0\", mid-ordinate 6' 0\""),
        ({"arc-chord": " 44 "}, "Chord 44' 0\""),
        ({"arc-chord": "4x"}, ""),
        ({**ARC, "arc-radius": "40"}, "Radius 40' 0\", chord 44' 0\""),
        ({"unit": "m", "arc-chord": "12.5", "arc-central_angle": "60"}, "Chord 12.500 m, central angle 60°00'00\""),
        (SIDES, "Three taped sides"),
        ({**SIDES, "arc-three_sides-1": ""}, ""),
        (POINTS, "Three points"),
    ],
)
def test_only_what_is_known_is_in_the_name(fields: dict[str, str], name: str) -> None:
    assert called(fields) == name


def test_it_is_said_in_the_language_and_unit_of_the_device() -> None:
    assert called({"unit": "m", "arc-chord": "12"}, "ft-in").startswith("Chord 39' 4-")
    try:
        speak("spanish")
        assert called(ARC) == "Cuerda del arco 44' 0\", flecha 6' 0\""
    finally:
        speak("english")


def test_every_face_and_the_list_of_jobs_have_it() -> None:
    calls, name = Calls(), called(ARC)
    asked = {"fields": {**ARC, "side": "left"}}
    assert json.loads(calls.handle("numbers", json.dumps(asked)))["called"] == name
    for face in ("stakes", "checks"):
        assert json.loads(calls.handle("face", json.dumps({**asked, "face": face})))["called"] == name
    assert json.loads(calls.handle("face", json.dumps({"fields": {}, "face": "checks"})))["called"] == ""
    assert json.loads(handle("called", json.dumps({"jobs": [ARC, {}]}))) == {"names": [name, ""]}


def test_a_line_has_no_arcs_name_before_python_is_up(tmp_path: Path) -> None:
    """The list of jobs and what is kept had the numbers of whichever arc was staked."""
    line = {"arc-radius": "30 ft", "before-0-straight": "14 ft", "after-0-straight": "8 ft"}
    asked = [line, {**line, "title": "Creek"}, {}]
    names = run(
        tmp_path,
        """
        const { nameOf } = await page("form.js");
        const { desk } = JSON.parse(words);
        told(given[0].map((fields) => nameOf(fields, desk.untitled)));
        """,
        asked,
    )
    assert names == ["Job without a title", "Creek", "Job without a title"]
    assert called(line) == "Line of 3 pieces"  # as soon as Python says it
