"""What is poured is said, or asked where a thickness looks like a height: nothing is taken for a wall in silence."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

import bowstring
from bowstring.errors import BadJob
from bowstring.faces.numbers import numbers
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.slab_asked import open_question
from helping import SAID, answer_to

UNSAID: dict[str, Any] = {
    **SAID,
    "bowstring": 1,
    "arc": {"radius": "28 ft", "chord": "32 ft"},
    "width": "8 in",
    "edge": "outside",
    "slab": {"thickness": "3 ft 6 in"},
}
PARTS = ("edges", "boards", "joints", "grades", "pour")


def poured(what: str, **more: str) -> dict[str, Any]:
    return {**UNSAID, "slab": {**UNSAID["slab"], "poured": what, **more}}


def typed(job: dict[str, Any], **more: str) -> dict[str, str]:
    return {**fields_of_job(job), **{name.replace("_", "-", 1): text for name, text in more.items()}}  # type: ignore[arg-type]


def test_so_thick_and_unsaid_it_is_asked_and_no_number_is_told() -> None:
    told = answer_to(UNSAID)
    assert all(told[part] is None for part in PARTS)
    assert {row["state"] for row in told["build"]} == {"open"} and {row["panel"] for row in told["build"]} == {"slab"}
    assert told["build"][-1]["text"] == "3' 6\" thick: is it a wall?"
    assert told["form_cards"] == []
    assert open_question(told, fields_of_job(UNSAID)) == "poured"  # type: ignore[arg-type]


@pytest.mark.parametrize(("thickness", "asked"), [("15-3/4 in", True), ("15-5/8 in", False), ("4 in", False)])
def test_it_is_asked_over_four_tenths_of_a_meter(thickness: str, asked: bool) -> None:
    """15-3/4 in is 400.05 mm."""
    told = answer_to({**UNSAID, "slab": {"thickness": thickness}})
    assert (told["pour"] is None) == asked


def test_both_answers_settle_it() -> None:
    wall, slab = answer_to(poured("wall")), answer_to(poured("slab"))
    assert wall["pour"]["volume"] == slab["pour"]["volume"] > 0
    assert slab["boards"] is None  # so deep no board on stakes holds it, whatever it is called


def test_a_low_wall_is_one_too() -> None:
    told = answer_to(poured("wall", thickness="12 in"))
    assert told["boards"] is None and told["pour"]["low_text"] == "" and told["form_cards"] == []


def test_a_line_of_several_pieces_is_asked_too() -> None:
    line = [{"straight": "10 ft"}, {"arc": {"radius": "28 ft", "chord": "32 ft"}, "turn": "left"}]
    job = {key: value for key, value in UNSAID.items() if key not in ("arc", "side")}
    told = answer_to({**job, "line": line, "edge": "left"})
    assert all(told[part] is None for part in PARTS)
    assert told["build"][-1]["text"] == "3' 6\" thick: is it a wall?"
    said = answer_to({**job, "line": line, "edge": "left", "slab": poured("wall")["slab"]})
    assert said["pour"] is not None


@pytest.mark.parametrize(("more", "field"), [({"fills": True}, "slab.fills"),
                         ({"edge_width": "12 in", "edge_depth": "4 ft"}, "slab.edge_width")])  # fmt: skip
def test_what_only_a_slab_has_is_refused_of_a_wall(more: dict[str, Any], field: str) -> None:
    with pytest.raises(BadJob) as refused:
        bowstring.answer(poured("wall", **more))  # type: ignore[arg-type]
    assert refused.value.field == field


def test_an_old_link_is_read_and_asked() -> None:
    link = bowstring.write_link(UNSAID)  # type: ignore[arg-type]
    back = bowstring.read_link(link)
    assert "poured" not in back["slab"] and back["slab"]["thickness"]
    assert "is it a wall?" in answer_to(dict(back))["build"][-1]["text"]
    said = bowstring.read_link(bowstring.write_link(poured("wall")))  # type: ignore[arg-type]
    assert said["slab"]["poured"] == "wall"
    assert job_of_fields(typed(poured("wall")))["slab"]["poured"] == "wall"


def test_the_row_of_the_numbers_says_what_is_a_wall_and_what_its_numbers_are() -> None:
    wall = numbers(typed(poured("wall", footing_width="24 in", footing_depth="10 in")))
    assert wall["lines"]["slab"]["text"].startswith('The wall: 8" thick, 3\' 6" high, footing 2\' 0" x 10"')
    asked = numbers(typed(UNSAID))
    assert asked["lines"]["slab"]["text"] == "3' 6\" thick: is it a wall?"
    for what in ("wall", "slab"):
        assert f"slab-poured&quot;: &quot;{what}" in asked["slab"]


def test_swapped_numbers_and_a_narrow_footing_are_told_while_they_are_typed() -> None:
    """8 in typed as the height and 3 ft 6 in as the thickness: a wall 42 in thick."""
    swapped = numbers(typed(poured("wall", thickness="8 in"), width="3' 6\""))["slab"]
    assert "Are the two swapped?" in swapped and "narrower" not in swapped
    narrow = numbers(typed(poured("wall", footing_width="6 in", footing_depth="10 in")))["slab"]
    assert "narrower than the wall" in narrow and "swapped" not in narrow
    good = numbers(typed(poured("wall", footing_width="8 in", footing_depth="10 in")))["slab"]
    assert "narrower" not in good and "swapped" not in good


def test_stakes_in_a_walls_dig_are_told_before_one_is_driven() -> None:
    """A wall of 8 in inside the line on 24 in of footing, dug a foot past it: clear from 1 ft 8 in outside the line and
    2 ft 4 in inside it, and the build says the same."""
    wall = poured("wall", footing_width="24 in", footing_depth="10 in")
    told = numbers(typed(wall))
    plain = unescape(re.sub("<[^>]+>", "", told["slab"]))
    assert "over 1' 8\" outside, or 2' 4\" inside" in plain
    assert told["lines"]["slab"]["text"].endswith("your stakes stand in the dig")
    for offset, toward in (("19 in", "outside"), ("21 in", "outside"), ("27 in", "centre"), ("29 in", "centre")):
        job = {**wall, "offset": offset, "toward": toward}
        said = numbers(typed(job))["lines"]["slab"]["text"].endswith("in the dig")
        assert said == answer_to(job)["edges"]["dug_out"], (offset, toward)


CENTERED = {"drawn_to": "centre", "edge": "outside"}


@pytest.mark.parametrize(
    ("what", "asked"), [("wall", "Which side is the wall on?"), ("slab", "Which side is the slab on?")]
)
def test_the_panel_calls_it_what_it_is(what: str, asked: str) -> None:
    told = numbers(typed({**poured(what), **CENTERED}))["slab"]
    assert asked in told and ("wall" in told) == (what == "wall")


def test_what_only_a_slab_has_stays_in_its_fields_and_out_of_a_walls_job() -> None:
    """Hidden of a wall: a number in a field that nobody sees must neither refuse the job nor change its concrete."""
    left = {"slab-edge_width": "12 in", "slab-edge_depth": "14 in", "slab-depths": "0: 5 in", "slab-apron-from": "0",
            "slab-apron-to": "8'", "slab-apron-thickness": "6 in"}  # fmt: skip
    wall = typed(poured("wall"))
    assert job_of_fields({**wall, **left}) == job_of_fields(wall)
    slab = typed(poured("slab"))
    said = job_of_fields({**slab, **left})["slab"]
    assert {"edge_width", "edge_depth", "depths", "apron"} <= set(said)
